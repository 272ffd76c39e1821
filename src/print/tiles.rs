//! `tiles.pdf`: the picture at exact size, cut into tiles for visitors to pick up.
//!
//! ```text
//!   ┌─────┬──┬──┬─────┐   cut line                 a tile is cut with a white border: the border bears the tick marks
//!   │     ╷  ╷  ╷     │                            and the tile's label, the picture itself is clean and exact
//!   │   ┌───────────┐ │
//!   ├  ╶┤           ├╴│   tick marks at the quarter points
//!   ├  ╶┤   tile    ├╴│
//!   ├  ╶┤           ├╴│
//!   │   └───────────┘ │
//!   │ D7  ╵  ╵  ╵     │
//!   └─────────────────┘
//! ```

use image::imageops;
use serde::Serialize;

use super::layout::{Area, Layout};
use super::marks::{Box, Line, quarter_ticks};
use super::page::{Heading, Page, Sheets, listed};
use super::typeset::Image;
use super::{Document, PrintError, Sources};
use crate::frame::{ceil_index, float, floor_index};
use crate::picture::Picture;
use crate::plan::settings::{Flip, PrintSettings};
use crate::plan::{Cell, Grid, Printed, PrintedSquare};
use crate::words::Words;

/// White around a tile, in mm: room for tick marks and, at 8 pt, the label.
pub const BORDER_MM: f64 = 4.0;
/// Tick marks begin this far outside the tile, so that they never touch its colours, in mm.
const TICK_START_MM: f64 = 0.3;
/// Tick marks end this far outside the tile, in mm.
const TICK_END_MM: f64 = 2.3;
/// Where a label stands below a tick mark, that ends this far outside the tile, in mm.
const TICK_END_ABOVE_LABEL_MM: f64 = 0.8;
/// Where labels begin, in mm from the cut line, and how wide a letter of one is at most, in mm at 8 pt.
const LABEL_START_MM: f64 = 1.2;
const LETTER_MM: f64 = 2.0;
/// Finest picture printed, in pixels a mm (300 a inch): more is not seen and makes large files.
const FINEST_PX_PER_MM: f64 = 300.0 / 25.4;

/// What all tiles share, in mm from the outer corner of a tile's border.
#[derive(Serialize)]
struct Shared {
    border: f64,
    side: f64,
    label_start: f64,
    ticks: Vec<Line>,
    this_way_up: String,
}

/// One side of a tile.
#[derive(Serialize)]
struct Piece {
    /// The tile with its border.
    area: Box,
    label: String,
    /// On fronts: which picture, and where it lies within the tile, in mm; it may reach beyond, and is cut.
    picture: Option<(usize, Box)>,
    /// Nothing below the label on backs: tiles are too small.
    text: Option<String>,
    upside_down: bool,
}

/// Where everything goes; spots are tiles with their borders.
///
/// # Errors
/// [`PrintError::TooLarge`] where not one tile fits the paper.
pub(super) fn layout(settings: &PrintSettings, printed: &Printed) -> Result<Layout, PrintError> {
    let side = printed.grid.tile_mm + 2.0 * BORDER_MM;
    Layout::pack(settings.paper, side, side)
        .ok_or_else(|| PrintError::too_large("tile", printed.grid.tile_mm, BORDER_MM, settings.paper))
}

/// Typesets the document.
///
/// # Errors
/// As [`layout`], and [`PrintError::Typeset`].
pub(super) fn document(sources: &Sources) -> Result<Document, PrintError> {
    let Sources { settings, printed, picture, words, .. } = *sources;
    let flip = settings.print.flip;
    let layout = layout(&settings.print, printed)?;
    let two_sided = flip != Flip::None;
    let sheets = layout.sheets(printed.squares.len());
    let sides: &[bool] = if two_sided { &[false, true] } else { &[false] };
    let heading = Heading::new(sources, "tiles", Some(sheets * sides.len()), two_sided);
    let mut pictures = Vec::with_capacity(printed.squares.len());
    let mut pages = Vec::with_capacity(sheets * sides.len());
    for on_sheet in printed.squares.chunks(layout.spots.len()) {
        let labels = listed(on_sheet.iter().map(|square| square.label.as_str()));
        for &back in sides {
            let strip = heading.strip(&layout, pages.len() + 1, back);
            let mut pieces = Vec::with_capacity(on_sheet.len());
            for (square, spot) in on_sheet.iter().zip(&layout.spots) {
                pieces.push(if back {
                    back_of(square, spot, flip, &layout)
                } else {
                    let (pixels, lies) = cut(picture, &printed.grid, square.cell);
                    pictures.push(pixels);
                    front_of(square, spot, (pictures.len() - 1, lies))
                });
            }
            let id = if back { "print-about-backs" } else { "print-about-tiles" };
            let about = words.say(id, &[("labels", labels.as_str().into())]);
            pages.push(Page { strip, about, back, pieces });
        }
    }
    let (template, shared) = (include_str!("templates/tiles.typ"), shared(printed, words));
    Sheets { name: "tiles", template, shared, pages, pictures, two_sided }.document(sources)
}

fn front_of(square: &PrintedSquare, spot: &Area, picture: (usize, Box)) -> Piece {
    Piece {
        area: (*spot).into(),
        label: square.label.clone(),
        picture: Some(picture),
        text: None,
        upside_down: false,
    }
}

fn back_of(square: &PrintedSquare, spot: &Area, flip: Flip, layout: &Layout) -> Piece {
    Piece {
        area: spot.turned_over(flip, layout.page).into(),
        label: square.label.clone(),
        picture: None,
        text: None,
        upside_down: flip == Flip::ShortEdge,
    }
}

fn shared(printed: &Printed, words: &Words) -> Shared {
    let longest = printed.squares.iter().map(|square| square.label.len()).max().unwrap_or(0);
    Shared {
        border: BORDER_MM,
        side: printed.grid.tile_mm,
        label_start: LABEL_START_MM,
        ticks: ticks(printed.grid.tile_mm, longest),
        this_way_up: words.say("print-this-way-up", &[]),
    }
}

/// The tick marks around a tile, from the outer corner of its border; short ones where labels of `letters` reach below.
fn ticks(side: f64, letters: usize) -> Vec<Line> {
    let label_end = LABEL_START_MM + float(letters) * LETTER_MM;
    let long = quarter_ticks(side, -TICK_START_MM, -TICK_END_MM);
    let short = quarter_ticks(side, -TICK_START_MM, -TICK_END_ABOVE_LABEL_MM);
    let choose = |(long, short): (Line, Line)| {
        let t = if long.y1 > side && long.x1 + BORDER_MM < label_end { short } else { long };
        Line { x1: t.x1 + BORDER_MM, y1: t.y1 + BORDER_MM, x2: t.x2 + BORDER_MM, y2: t.y2 + BORDER_MM }
    };
    long.into_iter().zip(short).map(choose).collect()
}

/// The pixels that a tile shows, whole ones, and where they lie within the tile in mm: a pixel that the tile's edge
/// cuts is there whole and reaches beyond.
fn cut(picture: &Picture, grid: &Grid, cell: Cell) -> (Image, Box) {
    let crop = picture.crop(grid);
    let (corner, side) = (crop.tile_top_left(cell), crop.tile.value());
    let (width, height) = picture.size();
    let (left, right) = whole(corner.x, side, width);
    let (top, bottom) = whole(corner.y, side, height);
    let mm = |px: f64| px * grid.tile_mm / side;
    let lies = Box {
        x: mm(f64::from(left) - corner.x),
        y: mm(f64::from(top) - corner.y),
        width: mm(f64::from(right - left)),
        height: mm(f64::from(bottom - top)),
    };
    let pixels = imageops::crop_imm(&picture.pixels, left, top, right - left, bottom - top).to_image();
    let finest = |mm: f64| u32::try_from(ceil_index(mm * FINEST_PX_PER_MM)).unwrap_or(u32::MAX);
    (Image::of(pixels, finest(lies.width), finest(lies.height)), lies)
}

/// The whole pixels that a stretch of `length` from `start` touches: first, and the one beyond the last.
fn whole(start: f64, length: f64, pixels: u32) -> (u32, u32) {
    let nearly = 1e-6; // a pixel that shows less than this much of itself does not show
    let index = |value: usize| u32::try_from(value).unwrap_or(u32::MAX).min(pixels);
    let first = index(floor_index(start + nearly)).min(pixels - 1);
    (first, index(ceil_index(start + length - nearly)).max(first + 1))
}
