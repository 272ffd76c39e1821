//! `large.pdf`: pieces enlarged for eyes that see little and hands that shake: dark outlines, a letter in each area, the letters' pencils.
//!
//! ```text
//!   ┌────────────────────┐
//!   │ D7                 │
//!   │  ┌───┬─────┬────┐  │      three times as large as a piece, with the same tick marks
//!   │  ├ A │  B  │ A  ┤  │
//!   │  └───┴─────┴────┘  │
//!   │  A ▪ light blue    │      in letters of 16 points
//!   └────────────────────┘
//! ```

use serde::Serialize;

use super::fill::Look;
use super::fill::areas::{Drawing, drawing, letter};
use super::layout::Layout;
use super::marks::{Box, Line, quarter_ticks};
use super::page::{Heading, Page, Sheets, Sides, listed};
use super::{Document, Large, PrintError, Sources};
use crate::frame::float;
use crate::picture::FewColours;

/// The document's name.
pub(super) const NAME: &str = "large";

/// How many times as large as a piece, where the paper has room, and else.
const TIMES: [f64; 3] = [3.0, 2.0, 1.5];
/// Narrowest item, for the names of pencils, and white at its edges.
const LEAST_WIDTH_MM: f64 = 88.0;
const EDGE_MM: f64 = 8.0;
/// Height of the label above, of a line of the list below, and white between.
const LABEL_MM: f64 = 12.0;
const LINE_MM: f64 = 9.0;
const GAP_MM: f64 = 7.0;
/// Where tick marks begin and end outside the picture.
const TICKS_MM: [f64; 2] = [-0.6, -4.5];

/// What all items share, in mm from an item's top left corner.
#[derive(Serialize)]
struct Shared {
    drawings: Vec<Drawing>,
    edge: f64,
    label: f64,
    picture: Box,
    ticks: Vec<Line>,
    list: f64,
    line: f64,
}

/// One piece.
#[derive(Serialize)]
struct Item {
    area: Box,
    label: String,
    drawing: usize,
    /// Letter, colour and name of each pencil.
    pencils: Vec<(String, String, String)>,
}

/// Typesets pieces of the wall's cells, by their place in the grid, in the order in which they are given.
///
/// # Errors
/// [`PrintError::TooLarge`] where not even half as large again fits the paper, and [`PrintError::Typeset`].
pub fn large(sources: &Sources, few: &FewColours, cells: &[usize]) -> Result<Document, PrintError> {
    let Sources { settings, printed, facts, words, .. } = *sources;
    let (piece, paper) = (printed.grid.piece_mm, settings.print.paper);
    let rows = cells.iter().map(|cell| facts.pieces[*cell].pencils.len()).max().unwrap_or(0);
    let size = |times: f64| {
        let side = times * piece;
        let height = 2.0 * EDGE_MM + LABEL_MM + side + GAP_MM + float(rows) * LINE_MM;
        (side, (side + 2.0 * EDGE_MM).max(LEAST_WIDTH_MM), height)
    };
    let fitting = TIMES
        .into_iter()
        .map(size)
        .find_map(|(side, width, height)| Layout::pack(paper, width, height).map(|layout| (side, layout)));
    let (side, layout) = fitting.ok_or_else(|| PrintError::too_large(Large::Piece, piece, EDGE_MM, paper))?;
    let sheets: Vec<&[usize]> = cells.chunks(layout.spots.len()).collect();
    let heading = Heading::new(sources, NAME, Some(sheets.len()), Sides::One);
    let mut drawings = Vec::with_capacity(cells.len());
    let mut pages = Vec::with_capacity(sheets.len());
    for on_sheet in sheets {
        let mut items = Vec::with_capacity(on_sheet.len());
        for (cell, spot) in on_sheet.iter().zip(&layout.spots) {
            drawings.push(drawing(sources, few, (*cell, side), Look::Lettered, &[]));
            let pencil = |number: &usize| {
                let pencil = &facts.pencils[*number];
                (letter(*number), pencil.hex(), pencil.name.clone())
            };
            let pencils = facts.pieces[*cell].pencils.iter().map(pencil).collect();
            let label = printed.squares[*cell].label.clone();
            items.push(Item { area: (*spot).into(), label, drawing: drawings.len() - 1, pencils });
        }
        let labels = listed(items.iter().map(|item| item.label.as_str()));
        let about = words.say("print-about-large", &[("labels", labels.into())]);
        pages.push(Page { strip: heading.strip(&layout, pages.len() + 1, false), about, back: false, items });
    }
    let [start, end] = TICKS_MM;
    let shared = Shared {
        drawings,
        edge: EDGE_MM,
        label: LABEL_MM,
        picture: Box { x: EDGE_MM, y: EDGE_MM + LABEL_MM, width: side, height: side },
        ticks: quarter_ticks(side, start, end),
        list: EDGE_MM + LABEL_MM + side + GAP_MM,
        line: LINE_MM,
    };
    Sheets { name: NAME, shared, pages, pictures: Vec::new(), two_sided: false }.document(sources)
}
