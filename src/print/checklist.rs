//! `checklist.pdf`: a list to tick off which piece is out and which square is up. No names of anybody.

use serde::Serialize;

use super::page::{READING_MARGINS_MM, Reading};
use super::{Document, PrintError, Sources};
use crate::frame::floor_index;
use crate::plan::PrintedSquare;

/// What the template sets.
#[derive(Serialize)]
struct Content {
    title: String,
    intro: String,
    heads: [String; 3],
    /// How many pieces stand side by side.
    across: usize,
    rows: Vec<Row>,
}

/// A row of the wall.
#[derive(Serialize)]
struct Row {
    name: String,
    labels: Vec<String>,
}

/// Width of a piece with its two boxes, in mm.
const PIECE_MM: f64 = 34.0;

/// Typesets the document.
///
/// # Errors
/// [`PrintError::Typeset`].
pub(super) fn document(sources: &Sources) -> Result<Document, PrintError> {
    let Sources { settings, printed, words, .. } = *sources;
    let (width, _) = settings.print.paper.size_mm();
    let fits = floor_index((width - READING_MARGINS_MM) / PIECE_MM).max(1);
    let columns = printed.grid.columns;
    // As many as make the last line of each row as full as the others.
    let across = columns.div_ceil(columns.div_ceil(fits));
    let label = |square: &PrintedSquare| match printed.grid.in_border(square.cell) {
        true => format!("{}\u{a0}+", square.label),
        false => square.label.clone(),
    };
    let rows = printed.squares.chunks(columns).enumerate().map(|(row, squares)| Row {
        name: words.say("print-row", &[("row", printed.grid.row_number(row).to_string().into())]),
        labels: squares.iter().map(label).collect(),
    });
    let head = |id: &str| words.say(id, &[]);
    let intro = words.say("checklist-intro", &[("pieces", printed.squares.len().into())]);
    let content = Content {
        title: words.say("print-checklist", &[]),
        intro: if printed.grid.border { format!("{intro} {}", head("checklist-border")) } else { intro },
        heads: ["checklist-piece", "checklist-out", "checklist-hung"].map(head),
        across,
        rows: rows.collect(),
    };
    Reading { name: "checklist", content, pictures: Vec::new() }.document(sources)
}
