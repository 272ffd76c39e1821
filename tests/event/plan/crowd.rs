//! Crowd and time: each number by another way, and what must hold whatever the numbers are.

use everysquare::plan::crowd::{
    Assumed, Evening, Lack, Means, NOBODY_WAITS, People, STOOL_MM, SURE, Verdict, Work, chances, evening,
    paper_m2, part_of, pencils, proposed_hang_mm, wall,
};
use everysquare::plan::settings::{Room, Visitors, WallPart};
use everysquare::plan::{Cell, Grid, Level, Settings, Tag};
use proptest::prelude::*;
use rand::{RngExt, SeedableRng};
use rand_chacha::ChaCha8Rng;

fn grid(columns: usize, rows: usize) -> Grid {
    Grid::usual(columns, rows)
}

/// So many pieces of each level, all in two colours, 3 to 1.
fn work(pieces: [usize; 4], shape: f64) -> Work {
    let mut work = Work::none(2, shape);
    for (level, count) in Level::ALL.into_iter().zip(pieces) {
        (0..count).for_each(|_| work.add(level, &[0.75, 0.25]));
    }
    work
}

fn planned(
    grid: Grid,
    pieces: [usize; 4],
    visitors: usize,
    minutes: f64,
    seats: usize,
    room: Option<Room>,
) -> Evening {
    let mut settings = Settings::new("x".to_owned(), Tag::new("K7M").unwrap(), grid);
    settings.evening.visitors = Visitors::new(visitors, visitors);
    settings.evening.minutes = Some(minutes);
    settings.evening.seats = Some(seats);
    settings.evening.wall = room;
    evening(&settings, &work(pieces, grid.columns as f64 / grid.rows as f64))
}

prop_compose! {
    fn some_pieces()(plain in 0_usize..40, easy in 1_usize..60, medium in 0_usize..60, hard in 0_usize..40) -> [usize; 4] {
        [plain, easy, medium, hard]
    }
}

/// By another way: many moments, in each of which every seat takes a pencil by lot.
fn moments_without_waiting(chances: &[f64], counts: &[usize], seats: usize, chance: &mut ChaCha8Rng) -> f64 {
    const MOMENTS: usize = 20_000;
    let mut good = 0;
    for _ in 0..MOMENTS {
        let mut held = vec![0; chances.len()];
        for _ in 0..seats {
            let mut at: f64 = chance.random();
            let pencil = chances
                .iter()
                .position(|own| {
                    at -= own;
                    at < 0.0
                })
                .unwrap_or(0);
            held[pencil] += 1;
        }
        good += usize::from(held.iter().zip(counts).all(|(held, count)| held <= count));
    }
    good as f64 / MOMENTS as f64
}

#[test]
fn nobody_waits_in_as_many_moments_as_promised_and_with_one_pencil_less_of_each_somebody_does() {
    let mut chance = ChaCha8Rng::seed_from_u64(9);
    for (seats, chances) in [
        (30, vec![0.41, 0.14, 0.12, 0.13, 0.1, 0.1]),
        (12, vec![0.5, 0.5]),
        (100, vec![0.7, 0.2, 0.05, 0.03, 0.02]),
        (24, vec![1.0 / 12.0; 12]),
    ] {
        let counts: Vec<usize> = pencils(&chances, seats).iter().map(|need| need.count).collect();
        let good = moments_without_waiting(&chances, &counts, seats, &mut chance);
        assert!(good >= NOBODY_WAITS - 0.004, "{seats} seats, {chances:?}: {counts:?} are enough in {good}");
        let fewer: Vec<usize> = counts.iter().map(|count| count - 1).collect();
        let less = moments_without_waiting(&chances, &fewer, seats, &mut chance);
        assert!(less < NOBODY_WAITS, "{seats} seats, {chances:?}: {fewer:?} are enough in {less}");
    }
}

#[test]
fn whoever_draws_holds_a_pencil_as_long_as_its_colour_takes() {
    // 10 plain pieces of 6 minutes in colour 0; 5 hard ones of 22 in halves of 0 and 1; colour 2 is nowhere
    let mut work = Work::none(3, 1.0);
    (0..10).for_each(|_| work.add(Level::Plain, &[1.0, 0.0, 0.0]));
    (0..5).for_each(|_| work.add(Level::Hard, &[0.5, 0.5, 0.0]));
    let chances = chances(&work, [6.0, 10.0, 15.0, 22.0]);
    assert_eq!(chances, [115.0 / 170.0, 55.0 / 170.0, 0.0]);
    assert_eq!(pencils(&chances, 20)[2].count, 0);
    assert_eq!(everysquare::plan::crowd::chances(&Work::none(2, 1.0), [1.0; 4]), [0.0, 0.0]);
}

#[test]
fn what_nobody_said_is_assumed_and_said() {
    let settings = Settings::new("x".to_owned(), Tag::new("K7M").unwrap(), grid(10, 8));
    let evening = evening(&settings, &work([80, 0, 0, 0], 1.25));
    assert_eq!(
        evening.given.assumed,
        [
            Assumed::Visitors,
            Assumed::Minutes,
            Assumed::Seats,
            Assumed::GivingOut,
            Assumed::Hanging,
            Assumed::Hang
        ]
    );
    assert_eq!(evening.given.visitors, Visitors::exactly(100), "as many as the grid is for");
    assert!(
        planned(grid(10, 8), [0, 80, 0, 0], 60, 90.0, 30, None).given.assumed
            == [Assumed::GivingOut, Assumed::Hanging, Assumed::Hang]
    );
}

#[test]
fn too_large_and_too_small_are_told_apart_and_why() {
    let verdict = |pieces, visitors, minutes, seats| {
        planned(grid(10, 8), [0, pieces, 0, 0], visitors, minutes, seats, None).verdict
    };
    assert_eq!(verdict(80, 100, 90.0, 30), Verdict::Fits);
    assert_eq!(
        verdict(80, 60, 90.0, 30),
        Verdict::TooLarge(Lack::Visitors),
        "one each, and 20 spots stay empty"
    );
    assert_eq!(
        verdict(108, 60, 90.0, 24),
        Verdict::TooLarge(Lack::Visitors),
        "sixty who draw one each fill no 108 spots"
    );
    assert_eq!(verdict(80, 120, 90.0, 6), Verdict::TooLarge(Lack::Seats));
    assert_eq!(verdict(80, 300, 15.0, 60), Verdict::TooLarge(Lack::Time));
    assert_eq!(verdict(40, 150, 90.0, 30), Verdict::TooSmall);
    assert_eq!(
        verdict(80, 60, 5.0, 30),
        Verdict::TooLarge(Lack::Time),
        "nobody finishes anything in 5 minutes"
    );
    let helpers = |giving_out: usize, hanging: usize| {
        let mut settings = Settings::new("x".to_owned(), Tag::new("K7M").unwrap(), grid(10, 8));
        settings.evening.visitors = Visitors::new(96, 96);
        (settings.evening.giving_out, settings.evening.hanging) = (Some(giving_out), Some(hanging));
        evening(&settings, &work([0, 80, 0, 0], 1.25))
    };
    assert_eq!(helpers(1, 1).verdict, Verdict::TooLarge(Lack::Helpers));
    assert_eq!(helpers(3, 3).verdict, Verdict::Fits);
}

#[test]
fn heights_of_rows_go_up_from_the_floor() {
    let plan = wall(&grid(10, 8), &[], Some(600.0), Room::read("1.39x1.136m"));
    let lowest = plan.rows.last().unwrap();
    assert_eq!((lowest.number, lowest.lower_mm, lowest.upper_mm), (1, 600.0, 727.0));
    assert_eq!((plan.rows[0].number, plan.rows[0].upper_mm), (8, 600.0 + 1016.0));
    assert_eq!(plan.rows[0].means(), [Means::Helper, Means::Helper, Means::Helper, Means::Floor]);
    let fit = plan.fit.unwrap();
    assert!(fit.with_cards && fit.squares && fit.largest_square_mm == 127.0, "{fit:?}");
    let smaller = wall(&grid(10, 8), &[], None, Room::read("1.38x1.136m")).fit.unwrap();
    assert!(!smaller.with_cards && smaller.squares && smaller.largest_square_mm == 126.0, "{smaller:?}");
    let tiny = wall(&grid(10, 8), &[], None, Room::read("0.2x0.2m")).fit.unwrap();
    assert!(!tiny.squares && tiny.largest_square_mm == 8.0, "{tiny:?}");
    assert_eq!(People::Adults.means(People::Adults.reach_mm() + STOOL_MM), Means::Stool);
    assert_eq!(People::Adults.means(People::Adults.reach_mm() + STOOL_MM + 1.0), Means::Ladder);
}

#[test]
fn no_child_stands_on_a_stool_or_a_ladder_at_any_height() {
    for people in People::ALL.into_iter().filter(|people| people.are_children()) {
        for height in (0..4_000).map(f64::from) {
            let means = people.means(height);
            assert!(matches!(means, Means::Floor | Means::Helper), "{people:?} at {height} mm: {means:?}");
        }
    }
}

#[test]
fn rows_of_parts_are_as_high_as_on_the_highest() {
    let grid = grid(6, 4);
    let part = |first: (usize, usize), last: (usize, usize), bottom_mm| WallPart {
        first: Cell { row: first.0, column: first.1 },
        last: Cell { row: last.0, column: last.1 },
        place: None,
        bottom_mm,
        board: None,
    };
    // a low board, a high one, and one above the other half
    let parts = [
        part((0, 0), (3, 1), Some(500.0)),
        part((0, 2), (3, 3), Some(900.0)),
        part((0, 4), (1, 5), None),
        part((2, 4), (3, 5), Some(400.0)),
    ];
    let plan = wall(&grid, &parts, Some(1_500.0), None);
    let upper: Vec<(usize, f64)> = plan.rows.iter().map(|row| (row.number, row.upper_mm)).collect();
    let side = grid.square_mm;
    assert_eq!(
        upper,
        [(4, 1_500.0 + 2.0 * side), (3, 1_500.0 + side), (2, 900.0 + 2.0 * side), (1, 900.0 + side)]
    );
    let whole = wall(&grid, &[], Some(700.0), None);
    let as_one = wall(&grid, &[WallPart::whole(&grid, 700.0)], None, None);
    assert_eq!(whole.rows, as_one.rows);
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(48))]

    #[test]
    fn so_many_pieces_keep_the_mix(pieces in some_pieces(), count in 0_usize..300) {
        let all: usize = pieces.iter().sum();
        let part = part_of(pieces, count);
        prop_assert_eq!(part.iter().sum::<usize>(), count);
        for (part, whole) in part.into_iter().zip(pieces) {
            prop_assert!((part as f64 - whole as f64 * count as f64 / all as f64).abs() < 1.0);
        }
    }

    #[test]
    fn other_grids_fit_crowd_place_and_picture(
        pieces in some_pieces(), visitors in 1_usize..300, seats in 1_usize..100, width in 0.5_f64..8.0, height in 0.5_f64..4.0,
        given: bool, columns in 1_usize..30, rows in 1_usize..20,
    ) {
        let room = Room::read(&format!("{width:.3}x{height:.3}m")).filter(|_| given);
        let own = grid(columns, rows);
        let evening = planned(own, pieces, visitors, 90.0, seats, room);
        let shape = columns as f64 / rows as f64;
        prop_assert!(evening.others.len() <= 3);
        prop_assert!(evening.range.least <= evening.range.most);
        prop_assert!(evening.range.most <= visitors, "each draws one");
        for other in &evening.others {
            prop_assert!((other.columns, other.rows) != (columns, rows));
            prop_assert!((evening.range.least..=evening.range.most).contains(&other.count()));
            prop_assert_eq!((other.width_mm, other.height_mm), (other.columns as f64 * 127.0, other.rows as f64 * 127.0));
            // by another way: the picture, 1 high, and the grid's rectangle within it
            let scale = (shape / other.columns as f64).min(1.0 / other.rows as f64);
            let lost = 1.0 - scale * scale * (other.columns * other.rows) as f64 / shape;
            prop_assert!((other.lost - lost).abs() < 1e-9 && other.lost <= 0.15);
            prop_assert!(other.whole >= SURE - 0.05, "{other:?}");
            if let Some(room) = room {
                prop_assert!(other.width_mm + 120.0 <= room.width_mm + 1e-6 && other.height_mm + 120.0 <= room.height_mm + 1e-6);
            }
        }
    }

    #[test]
    fn the_proposed_height_keeps_low_walls_in_reach(rows in 1_usize..40) {
        let height = rows as f64 * 127.0;
        let hang = proposed_hang_mm(height, 127.0);
        prop_assert!((hang / 25.4).fract().min(1.0 - (hang / 25.4).fract()) < 1e-6, "whole inches: {hang}");
        prop_assert!((proposed_hang_mm(height, 125.0) / 10.0).fract() < 1e-6, "whole centimetres");
        prop_assert!(hang >= 370.0, "never on the floor");
        if height <= People::Adults.reach_mm() - 381.0 {
            prop_assert!(hang + height <= People::Adults.reach_mm());
            let plan = wall(&grid(3, rows), &[], None, None);
            prop_assert!(plan.rows.iter().all(|row| row.means()[3] == Means::Floor));
        }
        prop_assert!(proposed_hang_mm(height + 127.0, 127.0) <= hang, "a higher wall hangs no higher");
    }

    #[test]
    fn whoever_reaches_a_height_reaches_what_is_lower(height in 0.0_f64..3_000.0, less in 0.0_f64..500.0) {
        for people in People::ALL {
            prop_assert!(people.means(height - less) <= people.means(height));
        }
    }
}

#[test]
fn the_paper_of_parts_is_the_paper_of_the_wall() {
    let grid = grid(7, 5);
    let part = |first: (usize, usize), last: (usize, usize)| WallPart {
        first: Cell { row: first.0, column: first.1 },
        last: Cell { row: last.0, column: last.1 },
        place: None,
        bottom_mm: None,
        board: None,
    };
    let parts = [part((0, 0), (4, 2)), part((0, 3), (1, 6)), part((2, 3), (4, 6))];
    let sum: f64 = parts.iter().map(|part| paper_m2(&grid, part)).sum();
    let whole = paper_m2(&grid, &WallPart::whole(&grid, 0.0));
    assert!((sum - whole).abs() < 1e-9, "{sum} {whole}");
    // 35 squares of 127 mm, 12 edge cards of 127 x 60 mm, 4 corner cards of 60 x 60 mm
    assert!((whole - (35.0 * 0.127 * 0.127 + 12.0 * 0.127 * 0.06 + 4.0 * 0.06 * 0.06)).abs() < 1e-9);
}
