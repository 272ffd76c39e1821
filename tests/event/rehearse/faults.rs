//! What is asked for is what hangs, and what the truth says.

use std::collections::BTreeMap;

use everysquare::rehearse::{
    CellTruth, Condition, Faults, Options, Printer, RehearseError, State, Truth, make,
};
use proptest::prelude::*;

use super::{made, picture, printed, small};

fn tiny(seed: u64, faults: Faults) -> Options {
    Options { width: 160, height: 120, faults, ..small(seed) }
}

fn truth(columns: usize, rows: usize, seed: u64, faults: &Faults) -> Truth {
    made(&printed(columns, rows, 0.6), &tiny(seed, faults.clone())).truth
}

fn count(truth: &Truth, which: impl Fn(&CellTruth) -> bool) -> usize {
    truth.cells.iter().filter(|cell| which(cell)).count()
}

/// How many rounds of each length the displaced squares form, with no square hanging twice.
fn rounds(truth: &Truth) -> BTreeMap<usize, usize> {
    let hung: BTreeMap<&str, &str> = truth
        .cells
        .iter()
        .filter_map(|cell| Some((cell.label.as_str(), cell.hung.as_deref()?)))
        .filter(|(label, hung)| label != hung)
        .collect();
    let mut rounds = BTreeMap::new();
    for start in hung.keys() {
        let (mut at, mut length) = (hung[start], 1);
        while at != *start {
            at = hung[at];
            length += 1;
        }
        *rounds.entry(length).or_insert(0) += 1;
    }
    rounds.iter().map(|(length, cells)| (*length, cells / length)).collect()
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    #[test]
    fn the_faults_asked_for_are_there(
        seed in 0_u64..1_000_000,
        swaps in 0_usize..4, cycles in 0_usize..3, turns in 0_usize..5, missing in 0_usize..5,
        scribbled in 0_usize..3, covered in 0_usize..3, torn in 0_usize..3, strangers in 0_usize..3,
    ) {
        let faults = Faults { swaps, cycles, turns, missing, scribbled, covered, torn, strangers, ..Faults::default() };
        let truth = truth(7, 6, seed, &faults);
        prop_assert_eq!(count(&truth, |cell| cell.condition.is_none()), missing);
        prop_assert_eq!(count(&truth, |cell| cell.hung_turn != 0), turns);
        prop_assert_eq!(count(&truth, |cell| cell.hung_turn != 0 && cell.hung.as_ref() != Some(&cell.label)), 0);
        prop_assert_eq!(count(&truth, |cell| cell.stranger.is_some()), strangers);
        for (condition, asked) in
            [(Condition::Scribbled, scribbled), (Condition::Covered, covered), (Condition::Torn, torn)]
        {
            prop_assert_eq!(count(&truth, |cell| cell.condition == Some(condition)), asked);
        }
        let rounds = rounds(&truth);
        prop_assert_eq!(rounds.get(&2).copied().unwrap_or(0), swaps);
        prop_assert_eq!(rounds.get(&3).copied().unwrap_or(0), cycles);
        prop_assert_eq!(rounds.len(), usize::from(swaps > 0) + usize::from(cycles > 0));
    }

    #[test]
    fn states_follow_from_what_hangs(seed in 0_u64..1_000_000) {
        let faults = Faults {
            swaps: 3, turns: 3, missing: 2, scribbled: 2, covered: 2, torn: 2, duplicates: 1, strangers: 1,
            ..Faults::default()
        };
        let truth = truth(7, 6, seed, &faults);
        for cell in &truth.cells {
            let own = cell.hung.as_ref() == Some(&cell.label);
            let real = match (cell.condition, own, cell.hung_turn) {
                (None, _, _) => State::Empty,
                (_, true, 0) => State::Right,
                (_, true, _) => State::Turned,
                (_, false, _) => State::Wrong,
            };
            let seen = cell.code_seen.unwrap_or(1.0);
            let clear = seen >= 0.98 && cell.condition != Some(Condition::Scribbled);
            prop_assert_eq!(cell.readable, clear && cell.condition.is_some());
            if clear {
                prop_assert_eq!((cell.state, cell.accept.len()), (real, 0), "{:?}", cell);
            } else if cell.state == State::Unread {
                prop_assert!(seen < 0.7 || cell.condition == Some(Condition::Scribbled), "{:?}", cell);
            } else {
                prop_assert!(cell.accept.contains(&State::Unread), "{:?}", cell);
            }
            let named = matches!(cell.state, State::Right | State::Wrong | State::Turned);
            prop_assert_eq!(cell.found.clone(), cell.hung.clone().filter(|_| named));
        }
    }
}

#[test]
fn all_squares_can_hang_wrong() {
    for seed in 0..10 {
        let faults = Faults { permute_all: true, missing: 3, ..Faults::default() };
        let truth = truth(5, 4, seed, &faults);
        assert_eq!(count(&truth, |cell| cell.condition.is_none()), 3);
        assert_eq!(count(&truth, |cell| cell.hung.as_ref() == Some(&cell.label)), 0);
        let mut hung: Vec<_> = truth.cells.iter().filter_map(|cell| cell.hung.clone()).collect();
        hung.sort();
        hung.dedup();
        assert_eq!(hung.len(), 17, "seed {seed}: every square hangs once");
    }
}

#[test]
fn a_duplicate_hangs_beside_its_original() {
    for seed in 0..10 {
        let truth = truth(5, 4, seed, &Faults { duplicates: 2, missing: 2, ..Faults::default() });
        let twice: Vec<_> = truth
            .cells
            .iter()
            .filter(|cell| cell.hung.as_ref().is_some_and(|hung| *hung != cell.label))
            .collect();
        assert_eq!(twice.len(), 2);
        for copy in twice {
            let home = truth.cells.iter().find(|cell| Some(&cell.label) == copy.hung.as_ref()).unwrap();
            assert_eq!(home.hung, copy.hung, "seed {seed}: the original is in its place");
        }
    }
}

#[test]
fn tape_over_a_code_hides_about_half_of_it_and_paint_none() {
    for seed in 0..10 {
        let truth = truth(4, 3, seed, &Faults { covered: 3, scribbled: 3, ..Faults::default() });
        for cell in &truth.cells {
            let seen = cell.code_seen.unwrap();
            match cell.condition.unwrap() {
                Condition::Covered => assert!((0.1..0.7).contains(&seen), "{seen} of {cell:?}"),
                Condition::Scribbled => assert!(!cell.readable && cell.state == State::Unread),
                _ => {}
            }
        }
    }
}

#[test]
fn more_chance_for_one_thing_leaves_the_others_alone() {
    let few = truth(5, 4, 3, &Faults::default());
    let more = truth(5, 4, 3, &Faults { scribbled: 2, ..Faults::default() });
    for (a, b) in few.cells.iter().zip(&more.cells) {
        assert_eq!(a.corners_px, b.corners_px, "papers hang where they hung");
    }
}

#[test]
fn what_cannot_be_is_refused_with_advice() {
    let printed = printed(3, 2, 0.6);
    let refused = |faults: Faults| make(&printed, &picture(), &tiny(1, faults)).unwrap_err();
    let many = refused(Faults { missing: 7, ..Faults::default() });
    assert_eq!(many, RehearseError::TooManyFaults { asked: 7, cells: 6 });
    assert!(many.to_string().contains("take 7 spots, but the wall has 6. Ask for fewer"), "{many}");
    let swaps = refused(Faults { swaps: 2, cycles: 1, ..Faults::default() });
    assert_eq!(swaps, RehearseError::TooManyFaults { asked: 7, cells: 6 });
    let huge = refused(Faults { swaps: usize::MAX, missing: 3, ..Faults::default() });
    assert!(matches!(huge, RehearseError::TooManyFaults { cells: 6, .. }));
    assert_eq!(
        refused(Faults { missing: 5, duplicates: 1, ..Faults::default() }),
        RehearseError::NothingTwice
    );
    let both = refused(Faults { swaps: 1, permute_all: true, ..Faults::default() });
    assert_eq!(both, RehearseError::PermutedAndSwapped);
    let lonely = refused(Faults { missing: 5, permute_all: true, ..Faults::default() });
    assert_eq!(lonely, RehearseError::TooFewToPermute { squares: 1 });
}

/// Whether a place of the photo lies in a square, or so near that its blur may reach there.
fn near(cell: &CellTruth, x: f64, y: f64) -> bool {
    const REACH_PX: f64 = 12.0;
    let corners = cell.corners_px.unwrap();
    let ends = |axis: usize| {
        let own = corners.map(|corner| corner[axis]);
        (
            own.into_iter().fold(f64::MAX, f64::min) - REACH_PX,
            own.into_iter().fold(f64::MIN, f64::max) + REACH_PX,
        )
    };
    let ((left, right), (upper, lower)) = (ends(0), ends(1));
    x > left && x < right && y > upper && y < lower
}

#[test]
fn other_drawings_change_nothing_but_the_drawings() {
    let usual = Faults { swaps: 1, turns: 2, missing: 2, scribbled: 1, ..Faults::default() };
    let asked = Faults { misdrawn: 4, drawn_turned: 3, ..usual.clone() };
    for seed in 0..4 {
        let printed = printed(7, 6, 0.6);
        let before = made(&printed, &tiny(seed, usual.clone()));
        let after = made(&printed, &tiny(seed, asked.clone()));
        let off: Vec<&CellTruth> =
            after.truth.cells.iter().filter(|own| own.drawn.is_some() || own.drawn_turn.is_some()).collect();
        assert_eq!(count(&after.truth, |own| own.drawn.is_some()), 4, "seed {seed}");
        assert_eq!(count(&after.truth, |own| own.drawn_turn.is_some()), 3, "seed {seed}");
        for own in &off {
            assert_eq!(
                (own.state, own.hung.as_deref()),
                (State::Right, Some(own.label.as_str())),
                "seed {seed}"
            );
            assert_ne!(own.drawn, own.hung);
        }
        let mut without = after.truth.clone();
        without.options = before.truth.options.clone();
        for own in &mut without.cells {
            (own.drawn, own.drawn_turn) = (None, None);
        }
        assert_eq!(without, before.truth, "seed {seed}: all else is as it was");
        let mut changed = 0;
        for (x, y, pixel) in after.image.enumerate_pixels() {
            if before.image.get_pixel(x, y) != pixel {
                changed += 1;
                let seen = off.iter().any(|own| near(own, f64::from(x), f64::from(y)));
                assert!(seen, "seed {seed}: {x}, {y} is in no square with another drawing");
            }
        }
        assert!(changed > 0, "seed {seed}: something else is drawn");
    }
}

#[test]
fn files_of_before_other_drawings_can_be_read_and_new_ones_without_them_are_the_same() {
    let truth = truth(4, 3, 5, &Faults { swaps: 1, ..Faults::default() });
    let text = serde_json::to_string(&truth).unwrap();
    for word in ["drawn\"", "drawn_turn", "misdrawn", "unsteady", "printer"] {
        assert!(!text.contains(word), "{word} in {text}");
    }
    assert_eq!(serde_json::from_str::<Truth>(&text).unwrap(), truth);
}

#[test]
fn unsteady_hands_draw_another_picture_on_the_same_paper() {
    let printed = printed(4, 3, 0.6);
    let usual = made(&printed, &small(6));
    let untrue = made(&printed, &Options { unsteady: 2.0, ..small(6) });
    assert_eq!(usual.truth.cells, untrue.truth.cells);
    assert_ne!(usual.image, untrue.image);
    let refused = make(&printed, &picture(), &Options { unsteady: 5.0, ..small(6) }).unwrap_err();
    assert!(refused.to_string().contains("shaky"), "{refused}");
}

#[test]
fn an_old_printer_changes_codes_and_nothing_else() {
    let printed = printed(4, 3, 0.6);
    let good = made(&printed, &small(6));
    for printer in [Printer::PALE, Printer::STREAKY, Printer::DRAFT, Printer::RUNNY] {
        let old = made(&printed, &Options { printer, ..small(6) });
        assert_eq!(old.truth.cells, good.truth.cells);
        assert_ne!(old.image, good.image, "{printer:?}");
        let text = serde_json::to_string(&old.truth).unwrap();
        assert_eq!(serde_json::from_str::<Truth>(&text).unwrap().options.printer, printer);
    }
    for (printer, named) in [
        (Printer { ink_runs_mm: 0.5, ..Printer::default() }, "ink spreads"),
        (Printer { density: 0.0, ..Printer::default() }, "dark the ink"),
        (Printer { streaks: 1.5, ..Printer::default() }, "streaks"),
        (Printer { draft: f64::NAN, ..Printer::default() }, "rows of dots"),
    ] {
        let refused = make(&printed, &picture(), &Options { printer, ..small(6) }).unwrap_err();
        assert!(refused.to_string().contains(named), "{refused}");
    }
}
