//! Squares that nobody has drawn on are told, and no square that somebody drew on is called white.
//!
//! The thresholds were set on other seeds; those here were not looked at before.

use std::collections::BTreeSet;

use crate::common::evening::{Opened, event, opened, photo};
use crate::common::everysquare;
use everysquare::display::{Begun, Cover, Expected};
use everysquare::photo::Photo;
use everysquare::plan::Cell;
use everysquare::read::{Reader, Sight};
use everysquare::rehearse::{Faults, Options, Truth, make};
use everysquare::report::Report;

/// The made wall with these options: cells whose named square is white, in truth and as found.
fn walls(options: impl Fn(u64) -> Options, seeds: std::ops::Range<u64>) -> [usize; 2] {
    let place = tempfile::tempdir().unwrap();
    let Opened { printed, original, drawn } = opened(&event(place.path(), "K7M"));
    let expected = Expected::of(&original, &printed.grid);
    let mut counts = [0; 2];
    for seed in seeds {
        let made = make(&printed, &drawn, &options(seed)).unwrap();
        let photo = Photo::open(&made.jpeg).unwrap();
        let reading = Reader::new(&printed).read(&photo).unwrap();
        let cover = Cover::of(&photo, &reading, &printed, &|| Some(expected.clone()));
        let found: BTreeSet<Cell> = cover.white().iter().copied().collect();
        let named = |cell: &Cell| {
            let own = &reading.cells[printed.grid.index(*cell)];
            matches!(own.sight, Sight::Square { .. })
        };
        let truth: BTreeSet<Cell> = printed
            .grid
            .cells()
            .filter(|cell| made.truth.cells[printed.grid.index(*cell)].undrawn && named(cell))
            .collect();
        let wrong: Vec<&Cell> = found.difference(&truth).collect();
        assert!(wrong.is_empty(), "seed {seed}: {wrong:?} are drawn");
        counts[0] += truth.len();
        counts[1] += found.len();
    }
    counts
}

fn small(seed: u64) -> Options {
    Options { width: 2000, height: 1500, ..Options::varied(seed) }
}

#[test]
fn white_squares_are_found() {
    let options = |seed| Options {
        faults: Faults { undrawn: 8, swaps: 1, turns: 1, ..Faults::default() },
        ..small(seed)
    };
    let [truth, found] = walls(options, 2001..2011);
    assert!(truth >= 60 && 20 * found >= 17 * truth, "{found} of {truth}");
}

#[test]
fn no_drawn_square_is_called_white() {
    let options = |seed| Options {
        faults: Faults { misdrawn: 5, drawn_turned: 2, ..Faults::default() },
        people: usize::from(seed % 3 == 0),
        unsteady: if seed % 2 == 0 { 3.0 } else { 1.0 },
        ..small(seed)
    };
    assert_eq!(walls(options, 2021..2033), [0, 0]);
}

#[test]
fn a_wall_with_white_squares_is_all_right_and_says_which_are_white() {
    let place = tempfile::tempdir().unwrap();
    let folder = event(place.path(), "K7M");
    let file = photo(&folder, "5", &["--undrawn", "4", "--swaps", "0", "--turns", "0", "--missing", "0"]);
    let truth = std::fs::read_to_string(folder.join("rehearsals/5.answers.json")).unwrap();
    let truth: Truth = serde_json::from_str(&truth).unwrap();
    let white: BTreeSet<String> =
        truth.cells.iter().filter(|cell| cell.undrawn).map(|cell| cell.label.clone()).collect();
    let (code, out, _) = everysquare(&["check", folder.to_str().unwrap(), &file]);
    assert_eq!(code, 0, "{out}");
    let told = out.split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(told.contains("All 20 squares are in the right spot! 4 are still white:"), "{out}");
    let checks = std::fs::read_dir(folder.join("checks")).unwrap();
    let check = checks.map(|entry| entry.unwrap().path()).next().unwrap();
    let report = Report::from_json(&std::fs::read_to_string(check.join("report.json")).unwrap()).unwrap();
    assert_eq!(report.white.iter().cloned().collect::<BTreeSet<_>>(), white);
    let page = std::fs::read_to_string(check.join("report.html")).unwrap();
    assert!(page.contains("4 are still white"), "the page says it too");
}

/// Squares that are only begun, in truth, as found, and found though nobody stopped there.
fn begun(options: impl Fn(u64) -> Options, seeds: std::ops::Range<u64>) -> [usize; 3] {
    let place = tempfile::tempdir().unwrap();
    let Opened { printed, original, drawn } = opened(&event(place.path(), "K7M"));
    let expected = Expected::of(&original, &printed.grid);
    let mut counts = [0; 3];
    for seed in seeds {
        let made = make(&printed, &drawn, &options(seed)).unwrap();
        let photo = Photo::open(&made.jpeg).unwrap();
        let reading = Reader::new(&printed).read(&photo).unwrap();
        let cover = Cover::with(&photo, &reading, &printed, &|| Some(expected.clone()), Begun::Asked);
        for own in reading.cells.iter().filter(|own| matches!(own.sight, Sight::Square { .. })) {
            let truth = &made.truth.cells[printed.grid.index(own.cell)];
            let is_told = cover.begun().contains(&own.cell);
            counts[0] += usize::from(truth.begun);
            // of one whose first fifth is paper in the picture too, nothing shows
            counts[1] += usize::from(truth.begun && (is_told || cover.white().contains(&own.cell)));
            counts[2] += usize::from(!truth.begun && is_told && !truth.undrawn);
        }
    }
    counts
}

#[test]
fn squares_that_are_only_begun_are_found_and_no_others() {
    let half = |seed| Options { faults: Faults { begun: 8, turns: 1, ..Faults::default() }, ..small(seed) };
    let [truth, found, others] = begun(half, 2041..2051);
    println!("{found} of {truth}, {others}");
    assert!(truth >= 60 && 2 * found >= truth && others == 0, "{found} of {truth}, {others}");
    let whole = |seed| Options {
        faults: Faults { misdrawn: 4, drawn_turned: 2, undrawn: 2, ..Faults::default() },
        unsteady: if seed % 2 == 0 { 2.0 } else { 1.0 },
        ..small(seed)
    };
    let told = begun(whole, 2061..2071);
    println!("{told:?}");
    assert_eq!(told, [0, 0, 0]);
}
