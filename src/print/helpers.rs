//! `helpers.pdf`: a page for each station, to be handed to whoever stands there: handing out, drawing tables, wall and phone; and
//! the cautions, for all of them.

use serde::Serialize;

use super::blocks::{Block, Writer};
use super::numbers::{level_table, numbers, reach_table};
use super::page::{Foot, Reading};
use super::{Document, PrintError, Sources};
use crate::plan::crowd::Evening;

/// What the template sets.
#[derive(Serialize)]
struct Content {
    blocks: Vec<Block>,
}

/// How far a scale factor may be off a whole number and counts as one: it is said with one digit behind the point.
const WHOLE: f64 = 0.05;

/// Typesets the document.
///
/// # Errors
/// [`PrintError::Typeset`].
pub(super) fn document(sources: &Sources) -> Result<Document, PrintError> {
    let evening = sources.evening;
    let writer = Writer { sources, values: numbers(sources, evening) };
    let pages = [hand_out(&writer, evening), tables(&writer), wall(&writer, evening), cautions(&writer)];
    let content = Content { blocks: pages.into_iter().flatten().collect() };
    Reading { name: "helpers", foot: Foot::Line, content, pictures: Vec::new() }.document(sources)
}

/// Sort, say, tick, keep the secret.
fn hand_out(w: &Writer, evening: &Evening) -> Vec<Block> {
    let mut order = w.list("helpers-order", 3);
    if let Block::List { items } = &mut order
        && evening.reserve.is_some()
    {
        items.push(w.say("helpers-order-border"));
    }
    vec![
        w.title("helpers-hand-out"),
        w.text("helpers-hand-out-intro"),
        w.text("helpers-label"),
        w.heading("helpers-sort"),
        w.list("helpers-sort", 2),
        level_table(w, evening),
        w.heading("helpers-say"),
        w.note("helpers-say-words"),
        w.heading("helpers-each"),
        w.steps("helpers-each", 5),
        w.heading("helpers-order"),
        order,
        w.heading("helpers-secret"),
        w.list("helpers-secret", 2),
        w.heading("helpers-if"),
        w.list("helpers-if", 6),
    ]
}

/// Set the tables, help without drawing.
fn tables(w: &Writer) -> Vec<Block> {
    let mut help = w.list("helpers-help", 5);
    let grid = &w.sources.printed.grid;
    let scale = grid.square_mm / grid.piece_mm;
    // nobody multiplies by 5.1 while drawing
    if let Block::List { items } = &mut help
        && (scale - scale.round()).abs() < WHOLE
    {
        items.push(w.say("helpers-help-scale"));
    }
    vec![
        w.title("helpers-tables"),
        w.text("helpers-tables-intro"),
        w.heading("helpers-set"),
        w.list("helpers-set", 4),
        w.heading("helpers-help"),
        w.note("helpers-help-rule"),
        help,
        w.heading("helpers-look"),
        w.list("helpers-look", 4),
        w.heading("helpers-wait"),
        w.list("helpers-wait", 2),
    ]
}

/// Cards, order, tape; photo, check.
fn wall(w: &Writer, evening: &Evening) -> Vec<Block> {
    let check = ["right", "wrong", "turned", "empty", "unread", "unseen"];
    let said =
        |state: &&str| vec![w.say(&format!("state-{state}")), w.say(&format!("helpers-check-{state}"))];
    let grid = &w.sources.printed.grid;
    let free = grid.kept_free.told(grid, "helpers-wall-free", w.sources.words);
    let free = free.map(|text| Block::Text { text });
    let head = [w.title("helpers-wall"), w.text("helpers-wall-intro"), w.text("helpers-label")];
    let rest = [
        w.heading("helpers-hang"),
        w.steps("helpers-hang", 5),
        reach_table(w, evening),
        w.heading("helpers-photo"),
        w.steps("helpers-photo", 6),
        w.heading("helpers-check"),
        w.text("helpers-check-intro"),
        Block::Table {
            heads: w.heads(&["helpers-check-says", "helpers-check-do"]),
            widths: vec![0.0, 1.0],
            rows: check.iter().map(said).collect(),
        },
    ];
    head.into_iter().chain(free).chain(rest).collect()
}

/// What can hurt somebody or something.
fn cautions(w: &Writer) -> Vec<Block> {
    let part = |id: &str, count: usize| [w.heading(id), w.list(id, count)];
    [
        vec![w.title("helpers-cautions"), w.note("helpers-cautions-intro")],
        part("helpers-stools", 4).into(),
        part("helpers-cutters", 3).into(),
        part("helpers-tape", 2).into(),
        part("helpers-fire", 4).into(),
        part("helpers-pictures", 4).into(),
        part("helpers-room", 3).into(),
    ]
    .concat()
}
