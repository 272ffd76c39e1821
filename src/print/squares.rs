//! `squares.pdf`: the blank squares of paper, one a cell; on their backs what to call them and which way is up.

use serde::Serialize;

use super::layout::{Area, Layout};
use super::marks::{Box, Code, Line, quiet_zone, square_ticks};
use super::page::{Heading, Page, Sheets, Sides, listed};
use super::{Document, PrintError, Sources};
use crate::frame::Point;
use crate::plan::settings::{Flip, PrintSettings};
use crate::plan::{Printed, PrintedSquare};
use crate::words::Words;

/// White between the code's quiet zone and the label beside it, in mm.
const LABEL_GAP_MM: f64 = 1.0;
/// Room that the longest labels need beside the code, in mm: six letters at 8 pt and the gaps.
const LABEL_LEAST_MM: f64 = 14.0;
/// How high a letter is at 8 pt, in mm.
const LABEL_HEIGHT_MM: f64 = 2.0;

/// What all squares of an event share, in mm from a square's top left corner.
#[derive(Serialize)]
struct Shared {
    side: f64,
    ticks: Vec<Line>,
    quiet: Box,
    label: Label,
    this_way_up: String,
}

/// Where the small label stands.
#[derive(Serialize)]
struct Label {
    x: f64,
    /// Half its height.
    y: f64,
    /// Whether it ends at `x`; else it begins there.
    ends: bool,
}

/// One side of a square.
#[derive(Serialize)]
struct Piece {
    area: Box,
    label: String,
    /// On fronts.
    code: Option<Code>,
    /// On backs: the text of the code, and whether the back stands upside down on its page.
    text: String,
    upside_down: bool,
}

/// Where everything goes.
///
/// # Errors
/// [`PrintError::TooLarge`] where not one square fits the paper.
pub(super) fn layout(settings: &PrintSettings, printed: &Printed) -> Result<Layout, PrintError> {
    let side = printed.grid.square_mm;
    Layout::pack(settings.paper, side, side)
        .ok_or_else(|| PrintError::too_large("square", side, 0.0, settings.paper))
}

/// Typesets the document.
///
/// # Errors
/// As [`layout`], and [`PrintError::Typeset`].
pub(super) fn document(sources: &Sources) -> Result<Document, PrintError> {
    let Sources { settings, printed, words, .. } = *sources;
    let flip = settings.print.flip;
    let layout = layout(&settings.print, printed)?;
    let two_sided = flip != Flip::None;
    let sheets = layout.sheets(printed.squares.len());
    let sides: &[bool] = if two_sided { &[false, true] } else { &[false] };
    let heading = Heading::new(
        sources,
        "squares",
        Some(sheets * sides.len()),
        if two_sided { Sides::Two } else { Sides::One },
    );
    let mut pages = Vec::with_capacity(sheets * sides.len());
    for on_sheet in printed.squares.chunks(layout.spots.len()) {
        let labels = listed(on_sheet.iter().map(|square| square.label.as_str()));
        for &back in sides {
            let strip = heading.strip(&layout, pages.len() + 1, back);
            let pieces = on_sheet.iter().zip(&layout.spots).map(|(square, spot)| {
                if back { back_of(square, spot, flip, &layout) } else { front_of(square, spot, printed) }
            });
            let id = if back { "print-about-backs" } else { "print-about-squares" };
            let about = words.say(id, &[("labels", labels.as_str().into())]);
            pages.push(Page { strip, about, back, pieces: pieces.collect() });
        }
    }
    let (template, shared) = (include_str!("templates/squares.typ"), shared(printed, words));
    Sheets { name: "squares", template, shared, pages, pictures: Vec::new(), two_sided }.document(sources)
}

fn front_of(square: &PrintedSquare, spot: &Area, printed: &Printed) -> Piece {
    let Point { x, y, .. } = printed.code_top_left;
    Piece {
        area: (*spot).into(),
        label: square.label.clone(),
        code: Some(Code::at(&square.modules, printed.module_mm, x, y)),
        text: square.text.clone(),
        upside_down: false,
    }
}

fn back_of(square: &PrintedSquare, spot: &Area, flip: Flip, layout: &Layout) -> Piece {
    Piece {
        area: spot.turned_over(flip, layout.page).into(),
        label: square.label.clone(),
        code: None,
        text: square.text.clone(),
        upside_down: flip == Flip::ShortEdge,
    }
}

fn shared(printed: &Printed, words: &Words) -> Shared {
    let side = printed.grid.square_mm;
    let quiet = quiet_zone(printed.code_top_left, printed.module_mm);
    Shared {
        side,
        ticks: square_ticks(side, &quiet),
        label: label(side, &quiet),
        quiet,
        this_way_up: words.say("print-this-way-up", &[]),
    }
}

/// Where the small label stands: beside the quiet zone, or above or below it on squares too narrow for that.
fn label(side: f64, quiet: &Box) -> Label {
    let (right, bottom) = (quiet.x + quiet.width, quiet.y + quiet.height);
    let in_right_half = quiet.x + right > side;
    let room = if in_right_half { quiet.x } else { side - right };
    if room >= LABEL_LEAST_MM {
        let x = if in_right_half { quiet.x - LABEL_GAP_MM } else { right + LABEL_GAP_MM };
        return Label { x, y: (quiet.y + bottom) / 2.0, ends: in_right_half };
    }
    let out = LABEL_GAP_MM + LABEL_HEIGHT_MM / 2.0;
    let y = if quiet.y + bottom > side { quiet.y - out } else { bottom + out };
    Label { x: if in_right_half { right } else { quiet.x }, y, ends: in_right_half }
}
