//! `pieces.pdf`: the picture at exact size, cut into pieces for visitors to pick up.
//!
//! ```text
//!   ┌─────┬──┬──┬─────┐   cut line                 a piece is cut with a white border: the border bears the tick marks
//!   │     ╷  ╷  ╷     │                            and the piece's label, the picture itself is clean and exact
//!   │   ┌───────────┐ │
//!   ├  ╶┤           ├╴│   tick marks at the quarter points
//!   ├  ╶┤   piece    ├╴│
//!   ├  ╶┤           ├╴│
//!   │   └───────────┘ │
//!   │ D7  ╵  ╵  ╵     │
//!   └─────────────────┘
//! ```
//!
//! The border is why nothing has to bleed over the cut: a knife that strays by 2 mm takes white paper.
//!
//! Printers that turn the paper print the backs behind the fronts. With `flip = "none"` a piece's back stands beside it, to be
//! cut out in one item, folded at the dotted line and glued: nothing can slip. Pieces too large for that have their backs on
//! the next page, to be cut out and glued behind.

use serde::Serialize;

use super::cut_out::Part;
use super::drawn::printed_part;
use super::layout::{Area, Layout};
use super::marks::{Box, Line, quarter_ticks};
use super::page::{Heading, Page, Sheets, Sides, listed};
use super::piece_back::{Back, Backs};
use super::typeset::Image;
use super::{Document, Large, PrintError, Sources};
use crate::frame::{Point, Vector, float};
use crate::picture::PieceFacts;
use crate::plan::settings::{Flip, PrintSettings};
use crate::plan::{Printed, PrintedSquare};

/// White around a piece, in mm: room for tick marks and, at 8 pt, the label.
pub const BORDER_MM: f64 = 4.0;
/// Tick marks begin this far outside the piece, so that they never touch its colours, in mm.
const TICK_START_MM: f64 = 0.3;
/// Tick marks end this far outside the piece, in mm.
const TICK_END_MM: f64 = 2.3;
/// Where a label stands below a tick mark, that ends this far outside the piece, in mm.
const TICK_END_ABOVE_LABEL_MM: f64 = 0.8;
/// Where labels begin, in mm from the cut line, and how wide a letter of one is at most, in mm at 8 pt.
const LABEL_START_MM: f64 = 1.2;
const LETTER_MM: f64 = 2.0;

/// What all pieces share, in mm from the outer corner of a piece's border.
#[derive(Serialize)]
struct Shared {
    border: f64,
    side: f64,
    label_start: f64,
    ticks: Vec<Line>,
}

/// One side of a piece.
#[derive(Serialize)]
struct Item {
    /// The piece with its border.
    area: Box,
    label: String,
    /// Where it is cut, and where it is folded.
    cut: Option<Box>,
    fold: Option<Line>,
    /// On fronts: which picture, and where it lies within the piece, in mm; it may reach beyond, and is cut.
    picture: Option<(usize, Box)>,
    /// On backs.
    back: Option<Back>,
    upside_down: bool,
}

/// Where pieces and their backs lie.
pub(super) struct Places {
    /// Spots for a piece with its border, or for a piece and its back beside it.
    pub layout: Layout,
    /// Whether backs stand beside their fronts; else they have pages of their own.
    pub beside: bool,
}

/// Where everything goes.
///
/// # Errors
/// [`PrintError::TooLarge`] where not one piece fits the paper.
pub(super) fn places(settings: &PrintSettings, printed: &Printed) -> Result<Places, PrintError> {
    let side = printed.grid.piece_mm + 2.0 * BORDER_MM;
    let double = Layout::pack(settings.paper, 2.0 * side, side).filter(|_| settings.flip == Flip::None);
    if let Some(layout) = double {
        return Ok(Places { layout, beside: true });
    }
    let layout = Layout::pack(settings.paper, side, side).ok_or_else(|| {
        PrintError::too_large(Large::Piece, printed.grid.piece_mm, BORDER_MM, settings.paper)
    })?;
    Ok(Places { layout, beside: false })
}

impl Places {
    /// Page, from 0, and place of each piece with its border.
    pub fn fronts(&self, pieces: usize) -> Vec<(usize, Area)> {
        let flip = if self.beside { Flip::None } else { Flip::LongEdge };
        let mut fronts = self.layout.fronts(flip, pieces);
        if self.beside {
            fronts.iter_mut().for_each(|(_, area)| *area = halves(area)[0]);
        }
        fronts
    }
}

/// The left and the right half of a spot.
fn halves(spot: &Area) -> [Area; 2] {
    let (Point { x, y, .. }, Vector { x: width, y: height, .. }) = (spot.top_left, spot.size);
    [Area::new(x, y, width / 2.0, height), Area::new(x + width / 2.0, y, width / 2.0, height)]
}

/// Typesets the document.
///
/// # Errors
/// As [`places`], and [`PrintError::Typeset`].
pub(super) fn document(sources: &Sources) -> Result<Document, PrintError> {
    let Sources { settings, printed, facts, words, .. } = *sources;
    let flip = settings.print.flip;
    let places = places(&settings.print, printed)?;
    let layout = &places.layout;
    let sides: &[bool] = if places.beside { &[false] } else { &[false, true] };
    let count = layout.sheets(printed.squares.len()) * sides.len();
    let way = match (flip, places.beside) {
        (Flip::None, true) => Sides::Folded,
        (Flip::None, false) => Sides::Glued,
        _ => Sides::Two,
    };
    let heading = Heading::new(sources, "pieces", Some(count), way);
    let mut maker = Maker {
        sources,
        backs: Backs::of(sources, printed.grid.piece_mm + 2.0 * BORDER_MM),
        pictures: Vec::with_capacity(printed.squares.len()),
    };
    let mut pages = Vec::with_capacity(count);
    let pieces: Vec<_> = printed.squares.iter().zip(&facts.pieces).collect();
    for numbers in layout.stacked(pieces.len()) {
        let on_sheet: Vec<_> = numbers.into_iter().map(|number| pieces[number]).collect();
        let labels = listed(on_sheet.iter().map(|(square, _)| square.label.as_str()));
        for &back in sides {
            let strip = heading.strip(layout, pages.len() + 1, back);
            let mut items = Vec::with_capacity(2 * on_sheet.len());
            for ((square, piece), spot) in on_sheet.iter().zip(&layout.spots) {
                match (places.beside, back) {
                    (true, _) => {
                        let [left, right] = halves(spot);
                        items.push(maker.front(square, &left, spot, true));
                        items.push(maker.back(square, piece, &right, false));
                    }
                    (false, false) => items.push(maker.front(square, spot, spot, false)),
                    (false, true) => {
                        let area = spot.turned_over(flip, layout.page);
                        items.push(maker.back(square, piece, &area, way == Sides::Glued));
                    }
                }
            }
            let id = if back { "print-about-piece-backs" } else { "print-about-pieces" };
            let about = words.say(id, &[("labels", labels.as_str().into())]);
            pages.push(Page { strip, about, back, items });
        }
    }
    let (shared, pictures) = (shared(printed), maker.pictures);
    Sheets { name: "pieces", shared, pages, pictures, two_sided: way == Sides::Two }.document(sources)
}

/// Makes the sides of pieces, and keeps the pictures on their fronts.
struct Maker<'a> {
    sources: &'a Sources<'a>,
    backs: Backs<'a>,
    pictures: Vec<Image>,
}

impl Maker<'_> {
    fn front(&mut self, square: &PrintedSquare, area: &Area, spot: &Area, folded: bool) -> Item {
        let grid = &self.sources.printed.grid;
        let part = Part::of_piece(&self.sources.picture.crop(grid), square.cell);
        let (image, lies) = printed_part(self.sources, &part, [grid.piece_mm; 2]);
        self.pictures.push(image);
        let area = Box::from(*area);
        let right = area.x + area.width;
        Item {
            cut: Some((*spot).into()),
            fold: folded.then_some(Line { x1: right, y1: area.y, x2: right, y2: area.y + area.height }),
            area,
            label: square.label.clone(),
            picture: Some((self.pictures.len() - 1, lies)),
            back: None,
            upside_down: false,
        }
    }

    fn back(&self, square: &PrintedSquare, piece: &PieceFacts, area: &Area, is_cut: bool) -> Item {
        let area = Box::from(*area);
        Item {
            cut: is_cut.then_some(area),
            fold: None,
            area,
            label: square.label.clone(),
            picture: None,
            back: Some(self.backs.back(&square.label, piece)),
            upside_down: self.sources.settings.print.flip == Flip::ShortEdge,
        }
    }
}

fn shared(printed: &Printed) -> Shared {
    let longest = printed.squares.iter().map(|square| square.label.len()).max().unwrap_or(0);
    Shared {
        border: BORDER_MM,
        side: printed.grid.piece_mm,
        label_start: LABEL_START_MM,
        ticks: ticks(printed.grid.piece_mm, longest),
    }
}

/// The tick marks around a piece, from the outer corner of its border; short ones where labels of `letters` reach below.
pub(super) fn ticks(side: f64, letters: usize) -> Vec<Line> {
    let label_end = LABEL_START_MM + float(letters) * LETTER_MM;
    let long = quarter_ticks(side, -TICK_START_MM, -TICK_END_MM);
    let short = quarter_ticks(side, -TICK_START_MM, -TICK_END_ABOVE_LABEL_MM);
    let choose = |(long, short): (Line, Line)| {
        let t = if long.y1 > side && long.x1 + BORDER_MM < label_end { short } else { long };
        Line { x1: t.x1 + BORDER_MM, y1: t.y1 + BORDER_MM, x2: t.x2 + BORDER_MM, y2: t.y2 + BORDER_MM }
    };
    long.into_iter().zip(short).map(choose).collect()
}
