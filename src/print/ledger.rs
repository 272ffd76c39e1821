//! `ledger.pdf`: a list to tick off which tile is out, which square came back, which one hangs. No names of anybody.

use serde::Serialize;

use super::built_in::built_in;
use super::page::Reading;
use super::{Document, PrintError, Sources};
use crate::frame::floor_index;

/// What the template sets.
#[derive(Serialize)]
struct Content {
    title: String,
    intro: String,
    heads: [String; 4],
    /// How many tiles stand side by side.
    across: usize,
    rows: Vec<Row>,
}

/// A row of the wall.
#[derive(Serialize)]
struct Row {
    name: String,
    labels: Vec<String>,
}

/// Width of a page's margins, and of a tile with its three boxes, in mm.
const MARGINS_MM: f64 = 34.0;
const TILE_MM: f64 = 34.0;

/// Typesets the document.
///
/// # Errors
/// [`PrintError::Typeset`].
pub(super) fn document(sources: &Sources) -> Result<Document, PrintError> {
    let Sources { settings, printed, words, .. } = *sources;
    let (width, _) = settings.print.paper.size_mm();
    let fits = floor_index((width - MARGINS_MM) / TILE_MM).max(1);
    let columns = printed.grid.columns;
    // As many as make the last line of each row as full as the others.
    let across = columns.div_ceil(columns.div_ceil(fits));
    let rows = printed.squares.chunks(columns).enumerate().map(|(row, squares)| Row {
        name: words.say("print-row", &[("row", printed.grid.row_number(row).to_string().into())]),
        labels: squares.iter().map(|square| square.label.clone()).collect(),
    });
    let head = |id: &str| words.say(id, &[]);
    let content = Content {
        title: words.say("print-ledger", &[]),
        intro: words.say("ledger-intro", &[("tiles", printed.squares.len().into())]),
        heads: ["ledger-tile", "ledger-out", "ledger-back", "ledger-hung"].map(head),
        across,
        rows: rows.collect(),
    };
    let (template, pictures) = (built_in("ledger"), Vec::new());
    Reading { name: "ledger", template, content, pictures }.document(sources)
}
