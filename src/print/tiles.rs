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

use image::RgbImage;
use serde::Serialize;

use super::layout::{Area, Layout};
use super::marks::{Box, Line, quarter_ticks};
use super::page::{Heading, Page, Sheets};
use super::typeset::Pixels;
use super::{Document, PrintError, typeset};
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
/// Finest picture printed, in pixels a mm (300 a inch): more is not seen and makes large files.
const FINEST_PX_PER_MM: f64 = 300.0 / 25.4;

/// What all tiles share, in mm from the outer corner of a tile's border.
#[derive(Serialize)]
struct Shared {
    border: f64,
    side: f64,
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
pub(super) fn document(
    settings: &PrintSettings,
    printed: &Printed,
    picture: &Picture,
    words: &Words,
) -> Result<Document, PrintError> {
    let layout = layout(settings, printed)?;
    let two_sided = settings.flip != Flip::None;
    let sheets = layout.sheets(printed.squares.len());
    let pages = if two_sided { 2 * sheets } else { sheets };
    let name = words.say("print-tiles", &[]);
    let heading = Heading { printed, settings, words, document: name.clone(), pages, two_sided };
    let sides: &[bool] = if two_sided { &[false, true] } else { &[false] };
    let mut pictures = Vec::with_capacity(printed.squares.len());
    let mut filled = Vec::with_capacity(pages);
    for on_sheet in printed.squares.chunks(layout.spots.len()) {
        for &back in sides {
            let strip = heading.strip(&layout, filled.len() + 1, back);
            let mut pieces = Vec::with_capacity(on_sheet.len());
            for (square, spot) in on_sheet.iter().zip(&layout.spots) {
                pieces.push(if back {
                    back_of(square, spot, settings.flip, &layout)
                } else {
                    let (pixels, lies) = cut(&picture.pixels, &printed.grid, square.cell);
                    pictures.push(pixels);
                    front_of(square, spot, (pictures.len() - 1, lies))
                });
            }
            filled.push(Page { strip, back, pieces });
        }
    }
    let data = Sheets {
        title: super::title(words, &name, printed),
        paper: [layout.page.x, layout.page.y],
        shared: shared(printed.grid.tile_mm, words),
        pages: filled,
    };
    let (bytes, pages) = typeset::pdf(include_str!("templates/tiles.typ"), &data, pictures)?;
    Ok(Document { name: "tiles.pdf".to_owned(), bytes, pages, sheets, two_sided })
}

fn front_of(square: &PrintedSquare, spot: &Area, picture: (usize, Box)) -> Piece {
    Piece { area: (*spot).into(), label: square.label.clone(), picture: Some(picture), upside_down: false }
}

fn back_of(square: &PrintedSquare, spot: &Area, flip: Flip, layout: &Layout) -> Piece {
    Piece {
        area: spot.turned_over(flip, layout.page).into(),
        label: square.label.clone(),
        picture: None,
        upside_down: flip == Flip::ShortEdge,
    }
}

fn shared(side: f64, words: &Words) -> Shared {
    let moved = |t: Line| Line {
        x1: t.x1 + BORDER_MM,
        y1: t.y1 + BORDER_MM,
        x2: t.x2 + BORDER_MM,
        y2: t.y2 + BORDER_MM,
    };
    Shared {
        border: BORDER_MM,
        side,
        ticks: quarter_ticks(side, -TICK_START_MM, -TICK_END_MM).into_iter().map(moved).collect(),
        this_way_up: words.say("print-this-way-up", &[]),
    }
}

/// The pixels that a tile shows, whole ones, and where they lie within the tile in mm: a pixel that the tile's edge
/// cuts is there whole and reaches beyond. Pictures finer than [`FINEST_PX_PER_MM`] are thinned, without mixing colours.
fn cut(picture: &RgbImage, grid: &Grid, cell: Cell) -> (Pixels, Box) {
    let (x, width) = span(picture.width(), grid.columns, cell.column, grid.tile_mm);
    let (y, height) = span(picture.height(), grid.rows, cell.row, grid.tile_mm);
    let mut rgb = Vec::with_capacity(3 * x.taken.len() * y.taken.len());
    for row in &y.taken {
        for column in &x.taken {
            rgb.extend_from_slice(&picture.get_pixel(*column, *row).0);
        }
    }
    let count = |taken: &Vec<u32>| u32::try_from(taken.len()).unwrap_or(u32::MAX);
    let pixels = Pixels { width: count(&x.taken), height: count(&y.taken), rgb };
    (pixels, Box { x: x.from_mm, y: y.from_mm, width, height })
}

/// Pixels along one side of a tile.
struct Span {
    /// Which ones, in order.
    taken: Vec<u32>,
    /// Where the first begins, in mm from the tile's edge: 0 or less.
    from_mm: f64,
}

/// The pixels along one side of tile `tile` of `tiles`, and how long they are together in mm.
fn span(pixels: u32, tiles: usize, tile: usize, tile_mm: f64) -> (Span, f64) {
    let per_tile = f64::from(pixels) / float(tiles);
    let mm_per_px = tile_mm / per_tile;
    let (from, to) = (float(tile) * per_tile, float(tile + 1) * per_tile);
    let nearly = 1e-6; // a pixel that shows less than this much of itself does not show
    let whole = |index: usize| u32::try_from(index).unwrap_or(u32::MAX).min(pixels);
    let (first, last) = (whole(floor_index(from + nearly)), whole(ceil_index(to - nearly)));
    let finest = ceil_index(tile_mm * FINEST_PX_PER_MM);
    if mm_per_px >= 1.0 / FINEST_PX_PER_MM {
        let span = Span { taken: (first..last).collect(), from_mm: (f64::from(first) - from) * mm_per_px };
        return (span, f64::from(last - first) * mm_per_px);
    }
    let centre = |i: usize| from + (float(i) + 0.5) * per_tile / float(finest);
    let taken = (0..finest).map(|i| whole(floor_index(centre(i))).min(pixels - 1)).collect();
    (Span { taken, from_mm: 0.0 }, tile_mm)
}
