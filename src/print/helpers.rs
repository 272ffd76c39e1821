//! `helpers.pdf`: a page for each station, to be handed to whoever stands there: handing out, drawing tables, wall and phone; and
//! the cautions, for all of them.

use serde::Serialize;

use super::blocks::{Block, Writer};
use super::built_in::built_in;
use super::numbers::{level_rows, numbers, reach_rows};
use super::page::Reading;
use super::{Document, PrintError, Sources};
use crate::plan::crowd::Evening;

/// What the template sets.
#[derive(Serialize)]
struct Content {
    blocks: Vec<Block>,
}

/// Typesets the document.
///
/// # Errors
/// [`PrintError::Typeset`].
pub(super) fn document(sources: &Sources) -> Result<Document, PrintError> {
    let evening = sources.evening();
    let writer = Writer { sources, values: numbers(sources, &evening) };
    let pages = [hand_out(&writer, &evening), tables(&writer), wall(&writer, &evening), cautions(&writer)];
    let content = Content { blocks: pages.into_iter().flatten().collect() };
    let (template, pictures) = (built_in("helpers"), Vec::new());
    Reading { name: "helpers", template, content, pictures }.document(sources)
}

/// Sort, say, tick, keep the secret.
fn hand_out(w: &Writer, evening: &Evening) -> Vec<Block> {
    let heads = ["helpers-level", "helpers-tiles", "helpers-minutes", "helpers-last"];
    vec![
        w.title("helpers-hand-out"),
        w.text("helpers-hand-out-intro"),
        w.heading("helpers-sort"),
        w.list("helpers-sort", 2),
        Block::Table {
            heads: w.heads(&heads),
            widths: vec![1.0, 1.0, 1.0, 1.6],
            rows: level_rows(w.sources, evening).into_iter().map(Vec::from).collect(),
        },
        w.heading("helpers-say"),
        w.note("helpers-say-words"),
        w.heading("helpers-each"),
        w.steps("helpers-each", 5),
        w.heading("helpers-secret"),
        w.list("helpers-secret", 2),
        w.heading("helpers-if"),
        w.list("helpers-if", 3),
    ]
}

/// Set the tables, help without drawing.
fn tables(w: &Writer) -> Vec<Block> {
    vec![
        w.title("helpers-tables"),
        w.text("helpers-tables-intro"),
        w.heading("helpers-set"),
        w.list("helpers-set", 4),
        w.heading("helpers-help"),
        w.note("helpers-help-rule"),
        w.list("helpers-help", 5),
        w.heading("helpers-look"),
        w.list("helpers-look", 4),
        w.heading("helpers-wait"),
        w.list("helpers-wait", 2),
    ]
}

/// Cards, order, tape; photo, check.
fn wall(w: &Writer, evening: &Evening) -> Vec<Block> {
    let reach = ["helpers-who", "helpers-floor", "helpers-stool", "helpers-help-needed"];
    let check = ["right", "wrong", "turned", "empty", "unread", "unseen"];
    let said =
        |state: &&str| vec![w.say(&format!("state-{state}")), w.say(&format!("helpers-check-{state}"))];
    vec![
        w.title("helpers-wall"),
        w.text("helpers-wall-intro"),
        w.heading("helpers-hang"),
        w.steps("helpers-hang", 5),
        Block::Table {
            heads: w.heads(&reach),
            widths: vec![2.6, 1.0, 1.0, 1.0],
            rows: reach_rows(w.sources, evening),
        },
        w.heading("helpers-photo"),
        w.steps("helpers-photo", 6),
        w.heading("helpers-check"),
        w.text("helpers-check-intro"),
        Block::Table {
            heads: w.heads(&["helpers-check-says", "helpers-check-do"]),
            widths: vec![0.0, 1.0],
            rows: check.iter().map(said).collect(),
        },
    ]
}

/// What can hurt somebody or something.
fn cautions(w: &Writer) -> Vec<Block> {
    let part = |id: &str, count: usize| [w.heading(id), w.list(id, count)];
    [
        vec![w.title("helpers-cautions"), w.note("helpers-cautions-intro")],
        part("helpers-stools", 4).into(),
        part("helpers-cutters", 3).into(),
        part("helpers-tape", 2).into(),
        part("helpers-fire", 3).into(),
        part("helpers-pictures", 4).into(),
        part("helpers-room", 3).into(),
    ]
    .concat()
}
