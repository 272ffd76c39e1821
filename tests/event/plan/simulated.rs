//! The evening as it is played: what must hold on every evening, and cases that were worked out by other means.

use everysquare::plan::crowd::{
    COMFORTABLE_MINUTES, Forecast, Happened, Outlook, PATIENCE_MINUTES, Scene, Staff, Stations, Trace,
    needed, play,
};
use everysquare::plan::settings::{Arrivals, Visitors};
use everysquare::plan::{Clock, Grid, Settings, Tag};
use everysquare::words::Words;
use proptest::collection::vec;
use proptest::prelude::*;

/// Times that are all different, so that nothing happens at once.
fn times(longest: f64, count: usize) -> impl Strategy<Value = Vec<f64>> {
    vec(0.01..longest, count)
}

fn some_staff() -> impl Strategy<Value = Staff> {
    (1_usize..5, vec((0.0_f64..100.0, 1_usize..5), 0..3)).prop_map(|(first, mut more)| {
        more.sort_by(|a, b| a.0.total_cmp(&b.0));
        Staff::changing(&[vec![(0.0, first)], more].concat())
    })
}

prop_compose! {
    fn some_stations()(
        giving_out in some_staff(), hanging in some_staff(), seats in 1_usize..12,
        mut last_calls in vec(10.0_f64..150.0, 1..60), unhurried: bool,
    ) -> Stations {
        last_calls.sort_by(f64::total_cmp);
        if unhurried {
            last_calls.fill(f64::INFINITY);
        }
        Stations { giving_out, seats, hanging, last_calls }
    }
}

prop_compose! {
    fn some_trace()(
        mut comes in vec(0.0_f64..100.0, 1..60), patience in vec(prop_oneof![0.0_f64..40.0, Just(f64::INFINITY)], 60),
        giving_out in times(6.0, 200), drawing in times(40.0, 200), hanging in times(6.0, 200), stays in vec(any::<bool>(), 60),
    ) -> Trace {
        comes.sort_by(f64::total_cmp);
        Trace { visitors: comes.into_iter().zip(patience).collect(), giving_out, drawing, hanging, stays }
    }
}

fn one_more(staff: &Staff) -> Staff {
    Staff::changing(&staff.shifts().iter().map(|(from, helpers)| (*from, helpers + 1)).collect::<Vec<_>>())
}

/// Each of `more` is there no later than the one of `fewer` in the same place, and there are at least as many.
fn no_later(more: &[f64], fewer: &[f64]) -> bool {
    more.len() >= fewer.len() && more.iter().zip(fewer).all(|(more, fewer)| more <= fewer)
}

fn given_out(happened: &Happened) -> Vec<f64> {
    happened.given_out.iter().map(|wait| wait.until).collect()
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(3_000))]

    #[test]
    fn a_helper_or_a_seat_more_never_has_a_square_up_later(
        stations in some_stations(), mut trace in some_trace(), one_each: bool,
    ) {
        if one_each {
            trace.stays.clear();
        } else {
            trace.visitors.iter_mut().for_each(|(_, patience)| *patience = f64::INFINITY);
        }
        let here = play(&stations, &trace);
        let more = [
            Stations { giving_out: one_more(&stations.giving_out), ..stations.clone() },
            Stations { hanging: one_more(&stations.hanging), ..stations.clone() },
            Stations { seats: stations.seats + 1, ..stations.clone() },
        ];
        for more in more {
            let there = play(&more, &trace);
            prop_assert!(no_later(&there.up, &here.up), "{more:?}: {:?} {:?}", there.up, here.up);
            prop_assert!(no_later(&given_out(&there), &given_out(&here)), "{more:?}");
        }
    }

    #[test]
    fn nobody_is_lost_and_every_piece_that_is_given_out_comes_up(stations in some_stations(), trace in some_trace()) {
        let happened = play(&stations, &trace);
        prop_assert_eq!(happened.served + happened.left.len() + happened.sent_away.len(), trace.visitors.len());
        prop_assert_eq!(happened.up.len(), happened.given_out.len());
        prop_assert_eq!(happened.up.len(), happened.taken_to_hang.len());
        prop_assert!(happened.up.len() <= stations.last_calls.len() && happened.up.is_sorted());
        prop_assert!(happened.seats_taken <= stations.seats);
        for (wait, last_call) in happened.given_out.iter().zip(&stations.last_calls) {
            prop_assert!(wait.until <= *last_call && wait.minutes() >= 0.0);
        }
    }

    /// Little's law: visitors in line, added up over time, are their waits (J. D. C. Little, Operations Research 9, 1961).
    #[test]
    fn who_stands_in_line_over_time_is_what_all_of_them_wait(stations in some_stations(), trace in some_trace()) {
        let one_each = Trace { stays: Vec::new(), ..trace };
        let happened = play(&stations, &one_each);
        let waits = happened.given_out.iter().chain(&happened.left).chain(&happened.sent_away);
        let sum: f64 = waits.map(|wait| wait.minutes()).sum();
        prop_assert!((sum - happened.waited).abs() < 1e-6 * (1.0 + sum), "{sum} {}", happened.waited);
    }

    #[test]
    fn nobody_waits_longer_than_her_patience(stations in some_stations(), trace in some_trace()) {
        let happened = play(&stations, &trace);
        for wait in &happened.left {
            let patience = trace.visitors.iter().filter(|(comes, _)| *comes == wait.since).map(|(_, patience)| *patience);
            prop_assert!(patience.into_iter().any(|patience| (wait.minutes() - patience).abs() < 1e-9));
        }
    }
}

#[test]
fn an_evening_that_is_worked_out_by_hand() {
    // three come at 0, 1, 2; one helper, 2 minutes each; two seats, 10 minutes each; one hangs, 3 minutes each
    let stations = Stations {
        giving_out: Staff::always(1),
        seats: 2,
        hanging: Staff::always(1),
        last_calls: vec![f64::INFINITY; 3],
    };
    let trace = Trace {
        visitors: vec![(0.0, f64::INFINITY), (1.0, f64::INFINITY), (2.0, f64::INFINITY)],
        giving_out: vec![2.0],
        drawing: vec![10.0],
        hanging: vec![3.0],
        stays: Vec::new(),
    };
    let happened = play(&stations, &trace);
    assert_eq!(given_out(&happened), [0.0, 2.0, 12.0], "the third waits for the first one's seat");
    assert_eq!(happened.up, [15.0, 18.0, 27.0]);
    assert_eq!(happened.waited, 1.0 + 10.0);
    let impatient = Trace { visitors: vec![(0.0, 9.0), (1.0, 9.0), (2.0, 9.0)], ..trace.clone() };
    let happened = play(&stations, &impatient);
    assert_eq!((happened.up.len(), happened.left[0].until), (2, 11.0));
    let late = Stations { last_calls: vec![11.0; 3], ..stations };
    let happened = play(&late, &trace);
    assert_eq!((happened.up.len(), happened.left.len(), happened.sent_away.len()), (2, 0, 1));
}

fn scene(visitors: usize, seats: usize, pieces: [usize; 4]) -> Scene {
    Scene {
        visitors: Visitors::new(visitors, visitors).unwrap(),
        arrivals: Arrivals::Drifting,
        pieces_each: 1.0,
        minutes: 90.0,
        seats,
        giving_out: Staff::always(6),
        hanging: Staff::always(6),
        giving_out_minutes: 1.2,
        hanging_minutes: 1.2,
        pieces,
        patience_minutes: PATIENCE_MINUTES,
        minutes_a_piece: [6.0, 10.0, 15.0, 22.0],
    }
}

#[test]
fn sixty_visitors_and_a_hundred_and_eight_pieces_are_told_as_they_are() {
    let expected = scene(60, 24, [15, 40, 35, 18]).expected();
    assert!((56..=60).contains(&expected.up.usual) && expected.whole == 0.0, "{expected:?}");
    assert!(expected.without.usual <= 4, "{expected:?}");
    let many = scene(200, 60, [15, 40, 35, 18]).expected();
    assert!(many.up.usual == 108 && many.whole > 0.95 && many.without.usual >= 85, "{many:?}");
}

#[test]
fn families_that_share_draw_fewer_and_those_who_stay_draw_more() {
    let with = |pieces_each| Scene { pieces_each, ..scene(60, 40, [10, 60, 40, 10]) }.expected().up.usual;
    let (shared, one, more) = (with(0.7), with(1.0), with(1.5));
    assert!((38..=42).contains(&shared), "{shared}");
    assert!((56..=60).contains(&one) && more >= one + 10 && more <= 90, "{one} {more}");
}

#[test]
fn where_some_leave_and_some_stay_a_helper_more_brings_no_fewer_on_the_average() {
    for (visitors, seats) in [(60, 12), (90, 24), (150, 40)] {
        let scene = Scene { pieces_each: 1.4, ..scene(visitors, seats, [15, 40, 35, 18]) };
        let up = |giving_out: usize, hanging: usize| {
            let expected = Scene { giving_out: giving_out.into(), hanging: hanging.into(), ..scene.clone() };
            expected.expected().mean_up
        };
        for (giving_out, hanging) in [(1, 1), (1, 2), (2, 1), (2, 2), (3, 2)] {
            let here = up(giving_out, hanging);
            assert!(up(giving_out + 1, hanging) >= here - 0.2 && up(giving_out, hanging + 1) >= here - 0.2);
        }
    }
}

#[test]
fn the_same_evening_has_the_same_numbers_each_time() {
    let scene = Scene { visitors: Visitors::new(60, 120).unwrap(), ..scene(1, 24, [15, 40, 35, 18]) };
    assert_eq!(scene.expected(), scene.expected());
    let expected = scene.expected();
    assert!(expected.up.low <= expected.up.usual && expected.up.usual <= expected.up.high);
    assert!(expected.without_at_ends[0] <= expected.without_at_ends[1]);
}

#[test]
fn the_helpers_that_are_proposed_keep_waits_short_and_fewer_do_not() {
    for arrivals in [Arrivals::AtOnce, Arrivals::Drifting, Arrivals::InClasses] {
        // more seats than anybody needs: what is left is waiting for helpers
        let scene = Scene { arrivals, ..scene(104, 200, [15, 40, 35, 18]) };
        let shifts = needed(&scene);
        let wait = |giving_out: Staff, hanging: Staff| {
            let expected = Scene { giving_out, hanging, ..scene.clone() }.expected();
            [expected.longest_wait, expected.longest_wait_to_hang]
        };
        let proposed = wait(shifts.giving_out.clone(), shifts.hanging.clone());
        assert!(proposed[0] <= 3.0 * COMFORTABLE_MINUTES, "{arrivals:?} {shifts:?}: {proposed:?}");
        assert!(
            shifts.giving_out.most() > 1,
            "{arrivals:?}: 104 who come within 90 minutes take 125 minutes to serve"
        );
        let fewer = wait(shifts.giving_out.one_fewer(), shifts.hanging.clone());
        assert!(
            fewer[0] > proposed[0] && fewer[0] > COMFORTABLE_MINUTES,
            "{arrivals:?}: {fewer:?} {proposed:?}"
        );
    }
}

#[test]
fn a_forecast_keeps_between_what_is_up_and_all_and_more_now_is_never_less_at_the_end() {
    let scene = scene(90, 30, [10, 30, 30, 10]);
    for minute in [0.0, 20.0, 45.0, 70.0, 89.0] {
        let mut before = 0;
        for up in (0..=80).step_by(8) {
            let told = Forecast::of(&scene, minute, up).unwrap();
            assert!(
                up <= told.low && told.low <= told.usual && told.usual <= told.high && told.high <= 80,
                "{told:?}"
            );
            assert!(told.usual >= before, "at {minute}: {told:?}");
            before = told.usual;
        }
    }
    assert!(Forecast::of(&scene, -1.0, 10).is_none() && Forecast::of(&scene, 90.0, 10).is_none());
    assert!(Forecast::of(&scene, 45.0, 200).is_some_and(|told| told.low == 200), "more than there are");
}

fn outlook(start: &str) -> Outlook {
    let grid = Grid::usual(10, 8);
    let mut settings = Settings::new("x".to_owned(), Tag::new("K7M").unwrap(), grid);
    assert_eq!(Outlook::of(&settings, [10, 30, 30, 10]), None, "nobody said when it begins");
    settings.evening.start = Clock::read(start);
    Outlook::of(&settings, [10, 30, 30, 10]).unwrap()
}

#[test]
fn a_forecast_is_told_while_the_event_is_on_and_at_no_other_time() {
    let (outlook, words) = (outlook("18:30"), Words::english());
    let told = |stamp: &str, up: usize| outlook.told(stamp, up, &words);
    let behind = told("2026-11-24_19.15.00", 10).unwrap();
    assert!(
        behind.contains(" of 80 squares are up at 8:00 PM (") && behind.contains("stop handing out at"),
        "{behind}"
    );
    assert!(told("2026-11-24T19:55:00", 40).unwrap().contains("too late to hand out more"));
    assert_eq!(told("2026-11-24_19.50.00", 80).unwrap(), "At this pace the mural is whole by 8:00 PM.");
    for stamp in ["2026-11-24_18.29.00", "2026-11-24_20.00.00", "2026-11-24_08.00.00", "no time", ""] {
        assert_eq!(told(stamp, 10), None, "{stamp}");
    }
}

#[test]
fn an_event_that_began_before_midnight_goes_on_after_it() {
    let (outlook, words) = (outlook("11:15 pm"), Words::english());
    assert!(outlook.told("2026-11-25_00.10.00", 30, &words).unwrap().contains("12:45 AM"));
    assert_eq!(outlook.told("2026-11-25_00.50.00", 30, &words), None);
}
