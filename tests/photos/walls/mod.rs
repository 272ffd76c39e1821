//! The scoreboard of the walls by the independent simulator, with a ratchet.
//!
//! The photos are made, by a simulator that shares nothing with this project; they lie beside it in `../shared/walls` or
//! where `EVERYSQUARE_SHARED` says. Where they are not, these tests are ignored. Of each photo so many
//! readable squares must be named; none may be named wrongly; a better result fails too, until the floor is raised.

mod straightened;

use std::path::Path;

use everysquare::photo::Photo;
use everysquare::plan::{Manifest, Printed, RowsFrom, Turn};
use everysquare::read::{CellReading, Reader, Sight};
use serde_json::Value;

use crate::common::shared::shared;

/// What one photo gives.
#[derive(Clone, Debug, PartialEq, Eq)]
struct Score {
    /// Readable squares named.
    named: usize,
    /// Readable squares.
    readable: usize,
    /// Cells whose state is neither the true one nor one as fair.
    states_off: usize,
    /// Squares named that hang elsewhere, or not so.
    wrong: usize,
}

const fn score(named: usize, readable: usize, states_off: usize) -> Option<Score> {
    Some(Score { named, readable, states_off, wrong: 0 })
}

/// The floor. `None`: the wall cannot be placed in the photo yet.
const BOARD: [(&str, &str, Option<Score>); 11] = [
    ("heron-10x8", "easy-1", score(75, 75, 0)),
    ("heron-10x8", "easy-2", score(75, 75, 0)),
    ("heron-10x8", "phone-1", score(69, 70, 1)),
    ("heron-10x8", "phone-2", score(63, 63, 0)),
    ("heron-10x8", "phone-3", score(69, 70, 1)),
    ("heron-10x8", "phone-4", score(56, 57, 2)),
    ("heron-10x8", "phone-6", score(72, 72, 0)),
    ("tram-12x9", "phone-1", score(99, 99, 0)),
    ("tram-12x9", "phone-6", score(97, 97, 0)),
    ("lighthouse-16x12", "hard-5", score(138, 139, 4)),
    ("lighthouse-16x12", "hard-6", score(128, 131, 4)),
];

fn truth(folder: &Path, photo: &str) -> Value {
    serde_json::from_slice(&std::fs::read(folder.join(format!("photos/{photo}.truth.json"))).unwrap())
        .unwrap()
}

fn printed(folder: &Path) -> Printed {
    let bytes = std::fs::read(folder.join("print/manifest.json")).unwrap();
    Manifest::from_json(&bytes).unwrap().printed(RowsFrom::Bottom).unwrap()
}

fn read_photo(folder: &Path, photo: &str, printed: &Printed) -> Option<Vec<CellReading>> {
    let bytes = std::fs::read(folder.join(format!("photos/{photo}.jpg"))).unwrap();
    let photo = Photo::open(&bytes).unwrap();
    Some(Reader::new(printed).read(&photo).ok()?.cells)
}

/// State, square and turn of a cell in a truth file's terms.
fn told(printed: &Printed, cell: &CellReading) -> (&'static str, Option<String>, u32) {
    match &cell.sight {
        Sight::Square { home, turn } => {
            let state = match (*home == cell.cell, *turn) {
                (true, Turn::None) => "right",
                (true, _) => "turned",
                (false, _) => "wrong",
            };
            (state, Some(printed.grid.label(*home)), turn.degrees())
        }
        Sight::Stranger { .. } => ("wrong", None, 0),
        Sight::Empty => ("empty", None, 0),
        Sight::Unread => ("unread", None, 0),
        Sight::Unseen => ("unseen", None, 0),
    }
}

fn count(folder: &Path, name: &str) -> Option<Score> {
    let printed = printed(folder);
    let truth = truth(folder, name);
    let cells = read_photo(folder, name, &printed)?;
    let mut score = Score { named: 0, readable: 0, states_off: 0, wrong: 0 };
    for (cell, truth) in cells.iter().zip(truth["cells"].as_array().unwrap()) {
        let (state, found, degrees) = told(&printed, cell);
        let fair = truth["state"] == state || truth["accept"].as_array().unwrap().iter().any(|a| a == state);
        let readable = truth["readable"] == true;
        let hung = truth["hung"].as_str().map(str::to_owned);
        let really = found == hung && truth["hung_turn"].as_u64() == Some(u64::from(degrees));
        score.readable += usize::from(readable);
        score.named += usize::from(readable && found.is_some() && really);
        score.wrong += usize::from(found.is_some() && !really);
        score.states_off += usize::from(!fair);
        if !fair {
            println!("{name} {}: {state}, in truth {}", truth["label"], truth["state"]);
        }
        // every fault that can be seen is reported: a swap, a turn, an empty cell
        let fault = readable && (truth["state"] == "wrong" || truth["state"] == "turned");
        let empty = truth["state"] == "empty" && truth["accept"].as_array().unwrap().is_empty();
        let heron = folder.ends_with("heron-10x8");
        assert!(!(heron && (fault || empty)) || fair, "{name} {}: not reported", truth["label"]);
    }
    Some(score)
}

#[test]
#[ignore = "needs ../shared/walls"]
fn the_scoreboard_of_the_simulators_walls_holds() {
    let walls = shared("walls");
    let mut changed = Vec::new();
    for (wall, photo, floor) in BOARD {
        let found = count(&walls.join(wall), photo);
        println!("{wall} {photo}: {found:?}");
        if found != floor {
            changed.push(format!("{wall} {photo}: {found:?}, on the board {floor:?}"));
        }
        assert_eq!(found.map_or(0, |score| score.wrong), 0, "{wall} {photo}: named wrongly");
    }
    assert!(changed.is_empty(), "worse is a fault, better raises the floor:\n{}", changed.join("\n"));
}
