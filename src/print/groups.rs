//! `groups.pdf`: for each group what goes into its envelope, where its squares are on the wall, and a list that stays in its classroom.
//!
//! Names of people are written by hand, on that list and nowhere else.

use serde::Serialize;

use super::blocks::{Block, Writer};
use super::numbers::{parts, side_by_side};
use super::page::{Foot, Reading, listed};
use super::piece_back::level_word;
use super::{Document, PrintError, Sources};
use crate::plan::groups::{Group, Groups};
use crate::plan::{Cell, Level};

/// The document's name.
pub(super) const NAME: &str = "groups";

/// Rows of a list that stand one below the other before it is divided.
const MOST_ROWS: usize = 22;

/// What the template sets.
#[derive(Serialize)]
struct Content {
    blocks: Vec<Block>,
}

/// Typesets the document.
///
/// # Errors
/// [`PrintError::Typeset`].
pub fn groups(sources: &Sources, groups: &Groups) -> Result<Document, PrintError> {
    let pages = groups.groups.iter().flat_map(|group| {
        let writer = Writer { sources, values: values(sources, group) };
        [envelope(&writer, group), list(&writer, group)].concat()
    });
    Reading {
        name: NAME,
        foot: Foot::Line,
        content: Content { blocks: pages.collect() },
        pictures: Vec::new(),
    }
    .document(sources)
}

/// What every sentence about a group may name.
fn values(sources: &Sources, group: &Group) -> Vec<(&'static str, crate::words::FluentValue<'static>)> {
    let (people, pieces) = (group.members.people, group.pieces.len());
    let each = if pieces >= people { pieces / people.max(1) } else { people.div_ceil(pieces.max(1)) };
    // how many people have one more than the others
    let more = if pieces >= people { pieces - each * people } else { 0 };
    vec![
        ("name", group.members.name.clone().into()),
        ("people", people.into()),
        ("pieces", pieces.into()),
        ("each", each.into()),
        ("more", more.into()),
        (
            "share",
            if pieces < people {
                "shared"
            } else if more == 0 {
                "same"
            } else {
                "more"
            }
            .into(),
        ),
        ("event", sources.settings.name.clone().into()),
    ]
}

/// The cover sheet: what goes in, where it hangs, what to do for whoever is absent.
fn envelope(w: &Writer, group: &Group) -> Vec<Block> {
    let Sources { settings, facts, words, .. } = *w.sources;
    let grid = &settings.grid;
    let label = |piece: usize| grid.label(facts.pieces[piece].cell);
    let own = |piece: &usize| group.pieces.binary_search(piece).is_ok();
    let of_level = |level: Level| facts.of_level(level).filter(own).map(label).collect::<Vec<String>>();
    let row = |level: Level| {
        let labels = of_level(level);
        (!labels.is_empty()).then(|| {
            vec![
                level_word(w.sources, level),
                labels.len().to_string(),
                listed(labels.iter().map(String::as_str)),
            ]
        })
    };
    let pencils = (0..facts.pencils.len())
        .filter(|pencil| group.pieces.iter().any(|piece| facts.pieces[*piece].pencils.contains(pencil)));
    let pencils = listed(pencils.map(|pencil| facts.pencils[pencil].name.as_str()));
    let cells: Vec<Cell> = grid.cells().collect();
    let spots = cells.iter().map(|cell| (grid.label(*cell), own(&grid.index(*cell))));
    vec![
        w.title("groups-envelope"),
        w.note("groups-share"),
        Block::Table {
            heads: w.heads(&["groups-level", "groups-count", "groups-labels"]),
            widths: vec![0.0, 0.0, 1.0],
            rows: Level::ALL.into_iter().filter_map(row).collect(),
        },
        Block::Text { text: words.say("groups-pencils", &[("pencils", pencils.into())]) },
        w.heading("groups-where"),
        Block::Wall { about: w.say("groups-where-about"), columns: grid.columns, spots: spots.collect() },
        w.heading("groups-do"),
        w.steps("groups-do", 4),
        w.heading("groups-absent"),
        w.list("groups-absent", 3),
    ]
}

/// The list that stays in the classroom.
fn list(w: &Writer, group: &Group) -> Vec<Block> {
    let Sources { settings, facts, .. } = *w.sources;
    let row = |piece: &usize| {
        let piece = &facts.pieces[*piece];
        let label = settings.grid.label(piece.cell);
        [label, level_word(w.sources, piece.level), String::new(), "☐".to_owned()]
    };
    let rows: Vec<[String; 4]> = group.pieces.iter().map(row).collect();
    let across = parts(rows.len(), MOST_ROWS, 2);
    let heads = ["groups-label", "groups-level", "groups-who", "groups-up"];
    vec![
        w.title("groups-list"),
        w.text("groups-list-intro"),
        Block::Form {
            heads: (0..across).flat_map(|_| w.heads(&heads)).collect(),
            widths: [0.0, 0.0, 1.0, 0.0].repeat(across),
            rows: side_by_side(&rows, across),
        },
    ]
}
