//! `checklist.pdf`: the wall with three boxes in each spot: its piece is out, its square is up, the square went back. No names of anybody.

use std::ops::Range;

use serde::Serialize;

use super::page::{Foot, Reading, reading_room};
use super::{Document, PrintError, Sources};
use crate::frame::{float, floor_index};
use crate::plan::cell::column_letters;
use crate::plan::{Cell, Grid};

/// Side of a box, in mm: the smallest that a pen ticks, and the largest that is needed.
const BOX_MM: [f64; 2] = [3.0, 4.2];
/// White between boxes and at a spot's edges, in mm.
const APART_MM: f64 = 0.4;
const EDGE_MM: f64 = 0.6;
/// Width of the rows' numbers, and the widest spot, in mm.
const NUMBERS_MM: f64 = 8.0;
const WIDEST_MM: f64 = 18.0;
/// What of a page's height is not the spots', in mm: title, words, letters; and the lowest spot.
const ABOVE_MM: f64 = 42.0;
const LOWEST_MM: f64 = 10.5;

/// What the template sets.
#[derive(Serialize)]
struct Content {
    title: String,
    intro: String,
    /// What each box means, from the left.
    boxes: [String; 3],
    /// Head of the rows' numbers.
    row: String,
    numbers_mm: f64,
    spot_mm: [f64; 2],
    box_mm: f64,
    apart_mm: f64,
    /// The wall; columns that have no room beside the others below them.
    blocks: Vec<Block>,
}

/// Columns beside each other.
#[derive(Serialize)]
struct Block {
    letters: Vec<String>,
    rows: Vec<Row>,
}

/// A row of the wall.
#[derive(Serialize)]
struct Row {
    number: String,
    spots: Vec<Spot>,
}

/// A spot.
#[derive(Serialize)]
struct Spot {
    label: String,
    /// Whether nothing hangs there, so that there is nothing to tick.
    free: bool,
}

/// Typesets the document.
///
/// # Errors
/// [`PrintError::Typeset`].
pub(super) fn document(sources: &Sources) -> Result<Document, PrintError> {
    let Sources { settings, printed, words, .. } = *sources;
    let grid = &printed.grid;
    let [width, height] = reading_room(settings.print.paper, Foot::Line);
    let across = across(grid.columns, width);
    let spot_mm = ((width - NUMBERS_MM) / float(across)).min(WIDEST_MM);
    let high_mm = ((height - ABOVE_MM) / float(grid.rows)).clamp(LOWEST_MM, spot_mm.max(LOWEST_MM));
    let [smallest, largest] = BOX_MM;
    let box_mm = ((spot_mm - 2.0 * EDGE_MM - 2.0 * APART_MM) / 3.0).clamp(smallest, largest);
    let head = |id: &str| words.say(id, &[]);
    let intro = words.say("checklist-intro", &[("pieces", grid.hanging().into())]);
    let starts = (0..grid.columns).step_by(across);
    let content = Content {
        title: head("print-checklist"),
        intro: [intro]
            .into_iter()
            .chain(grid.border.then(|| head("checklist-border")))
            .chain((grid.kept_free.count() > 0).then(|| head("checklist-free")))
            .collect::<Vec<_>>()
            .join(" "),
        boxes: ["checklist-out", "checklist-hung", "checklist-back"].map(head),
        row: head("wall-map-row"),
        numbers_mm: NUMBERS_MM,
        spot_mm: [spot_mm, high_mm],
        box_mm,
        apart_mm: ((spot_mm - 2.0 * EDGE_MM - 3.0 * box_mm) / 2.0).min(3.0 * APART_MM),
        blocks: starts.map(|first| block(grid, first..(first + across).min(grid.columns))).collect(),
    };
    Reading { name: "checklist", foot: Foot::Line, content, pictures: Vec::new() }.document(sources)
}

/// How many columns stand beside each other on a page of a width: about as many in each block.
fn across(columns: usize, width_mm: f64) -> usize {
    let narrowest = 3.0 * BOX_MM[0] + 2.0 * APART_MM + 2.0 * EDGE_MM;
    let fits = floor_index((width_mm - NUMBERS_MM) / narrowest).max(1);
    columns.div_ceil(columns.div_ceil(fits))
}

fn block(grid: &Grid, columns: Range<usize>) -> Block {
    let label = |cell: Cell| match grid.in_border(cell) {
        true => format!("{}\u{a0}+", grid.label(cell)),
        false => grid.label(cell),
    };
    let spot = |cell: Cell| Spot { label: label(cell), free: grid.is_kept_free(cell) };
    let row = |row: usize| Row {
        number: grid.row_number(row).to_string(),
        spots: columns.clone().map(|column| spot(Cell { row, column })).collect(),
    };
    Block { letters: columns.clone().map(column_letters).collect(), rows: (0..grid.rows).map(row).collect() }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn columns_beside_each_other_are_as_many_in_each_block() {
        assert_eq!([10, 16, 17, 40, 60].map(|columns| across(columns, 182.0)), [10, 8, 9, 14, 15]);
        assert_eq!([10, 15, 16].map(|columns| across(columns, 182.0)), [10, 15, 8]);
    }
}
