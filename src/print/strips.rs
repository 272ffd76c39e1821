//! `strips.pdf`: a piece and its square in one strip of paper (`join = "beside"`), so that nobody has to find the one for the other.
//!
//! ```text
//!   ┌───────────────────────┬┄┄┄┄┄┄┄┄┄┄┄┐   cut line; the dotted line is folded back before the square hangs, or cut, and
//!   ┆  ╵     ╵     ╵        ┊ D7  1 ▦   ┆   the stub goes home as a slip
//!   ╶                      ╴┊ ●●●○      ┆
//!   ┆                       ┊   ╷╷╷     ┆   the stub is on the side of the code: left on and hanging out, it lies over
//!   ╶        square        ╴┊ ╶[piece]╴ ┆   the half of the neighbor that has no code
//!   ┆                       ┊   ╵╵╵     ┆
//!   ╶                 ▒▒▒▒ ╴┊ ▪ blue    ┆   the piece's middle ticks are in line with the square's
//!   ┆  ╷     ╷     ╷  ▒▒▒▒  ┊ words     ┆
//!   └───────────────────────┴┄┄┄┄┄┄┄┄┄┄┄┘
//! ```
//!
//! One-sided. Strips lie upright on the page or turned by a quarter, whichever gives more on a sheet. They follow each other as they are
//! handed out, level by level, so that a pile is the order, and what is left of it is the list of what is not out.

use serde::Serialize;

use super::cut_out::Part;
use super::drawn::printed_part;
use super::layout::{Area, Layout, largest_beside_mm};
use super::marks::{Box, Code, Line, quiet_zone, square_ticks};
use super::page::{Heading, Page, Sheets, Sides, listed};
use super::pieces::{self, BORDER_MM};
use super::squares::{LabelPlace, code, label_place};
use super::stub::{PAD_MM, Stub, Stubs};
use super::typeset::Image;
use super::{Document, Large, PrintError, Sources};
use crate::frame::float;
use crate::picture::PictureFacts;
use crate::picture::order::Band;
use crate::plan::settings::{Choice, Corner, Flip, PrintSettings, STUB_MM};
use crate::plan::{Grid, Level, Printed, PrintedSquare};

/// The document's name.
pub(super) const NAME: &str = "strips";

/// Step by which stubs are made narrower until more strips fit a sheet.
const STUB_STEP_MM: f64 = 0.5;

/// How strips lie on pages.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Places {
    /// Places of whole strips.
    pub layout: Layout,
    /// Width of the stub.
    pub stub_mm: f64,
    /// Whether strips lie turned clockwise by a quarter.
    pub turned: bool,
    /// Whether the stub is on the left of the square.
    left: bool,
    side_mm: f64,
    piece_mm: f64,
}

/// Where everything goes.
///
/// # Errors
/// [`PrintError::TooLarge`] where not one strip fits the paper.
pub(super) fn places(
    settings: &PrintSettings,
    printed: &Printed,
    corner: Corner,
) -> Result<Places, PrintError> {
    let Grid { square_mm: side, piece_mm, .. } = printed.grid;
    let least = piece_mm + 2.0 * (BORDER_MM + PAD_MM);
    let too_large = || PrintError::TooLarge {
        what: Large::Strip,
        side_mm: side,
        largest_mm: largest_beside_mm(settings.paper, least),
        paper: settings.paper.word(),
    };
    if piece_mm + 2.0 * BORDER_MM > side {
        return Err(PrintError::too_large(Large::Piece, piece_mm, BORDER_MM, settings.paper));
    }
    let widths = (0..).map(|step| STUB_MM.max(least) - float(step) * STUB_STEP_MM);
    let widths = widths.take_while(|width| *width >= least).chain([least]);
    let mut best: Option<(Layout, f64, bool)> = None;
    // from the widest on, upright first: only more strips on a sheet are worth a narrower stub
    for (width, turned) in widths.flat_map(|width| [(width, false), (width, true)]) {
        let (across, down) = if turned { (side, side + width) } else { (side + width, side) };
        let Some(layout) = Layout::pack(settings.paper, across, down) else { continue };
        if best.as_ref().is_none_or(|(own, ..)| layout.spots.len() > own.spots.len()) {
            best = Some((layout, width, turned));
        }
    }
    let (layout, stub_mm, turned) = best.ok_or_else(too_large)?;
    let left = matches!(corner, Corner::TopLeft | Corner::BottomLeft);
    Ok(Places { layout, stub_mm, turned, left, side_mm: side, piece_mm })
}

impl Places {
    /// Left edge of the square within an upright strip.
    fn square_x(&self) -> f64 {
        if self.left { self.stub_mm } else { 0.0 }
    }

    /// Left edge of the stub within an upright strip.
    fn stub_x(&self) -> f64 {
        if self.left { 0.0 } else { self.side_mm }
    }

    /// Where an upright strip is folded, from its left.
    fn fold_x(&self) -> f64 {
        self.stub_x().max(self.square_x())
    }

    /// The piece with its border, within its stub: in the middle, level with the square's middle.
    fn piece(&self) -> Box {
        let side = self.piece_mm + 2.0 * BORDER_MM;
        Box { x: (self.stub_mm - side) / 2.0, y: (self.side_mm - side) / 2.0, width: side, height: side }
    }

    /// Where a square part of an upright strip lies on the page.
    fn on_page(&self, spot: &Area, x: f64, y: f64, side: f64) -> Area {
        let corner = spot.top_left;
        if self.turned {
            return Area::new(corner.x + self.side_mm - y - side, corner.y + x, side, side);
        }
        Area::new(corner.x + x, corner.y + y, side, side)
    }
}

/// Page, from 0, and places of a square and of its piece with the border.
pub(super) type Front = (usize, [Area; 2]);

/// Where the square and the piece of every strip lie, in the order of the printed squares.
pub(super) fn fronts(sources: &Sources, places: &Places) -> Vec<Front> {
    let order = order(sources.facts, sources.printed);
    let piece = places.piece();
    let spots = places.layout.fronts(Flip::None, order.len());
    let mut fronts: Vec<(usize, Front)> = order
        .into_iter()
        .zip(spots)
        .map(|(number, (page, spot))| {
            let square = places.on_page(&spot, places.square_x(), 0.0, places.side_mm);
            let piece = places.on_page(&spot, places.stub_x() + piece.x, piece.y, piece.width);
            (number, (page, [square, piece]))
        })
        .collect();
    fronts.sort_by_key(|(number, _)| *number);
    fronts.into_iter().map(|(_, front)| front).collect()
}

/// The printed squares by their place in the list, as they are handed out: level by level, the border in reserve last.
fn order(facts: &PictureFacts, printed: &Printed) -> Vec<usize> {
    let mut rank = vec![usize::MAX; printed.grid.count()];
    facts.order.iter().enumerate().for_each(|(place, piece)| rank[*piece] = place);
    let key = |number: &usize| {
        let (square, piece) = (&printed.squares[*number], &facts.pieces[*number]);
        let bag = if piece.band == Band::Reserve { Level::ALL.len() } else { piece.level.index() };
        (bag, rank[printed.grid.index(square.cell)])
    };
    let mut order: Vec<usize> = (0..printed.squares.len().min(facts.pieces.len())).collect();
    order.sort_by_key(key);
    order
}

/// What all strips share, in mm from the top left of an upright strip; ticks, code and label from that of its square, the piece's ticks
/// from the outer corner of its border.
#[derive(Serialize)]
struct Shared {
    side: f64,
    square_x: f64,
    ticks: Vec<Line>,
    quiet: Box,
    label: LabelPlace,
    stub: Box,
    fold: Line,
    fold_words: String,
    piece: Box,
    border: f64,
    piece_side: f64,
    piece_ticks: Vec<Line>,
    turned: bool,
    pad: f64,
}

/// One strip.
#[derive(Serialize)]
struct Item {
    area: Box,
    label: String,
    code: Code,
    /// Which picture, and where it lies within the piece, in mm; it may reach beyond, and is cut.
    picture: (usize, Box),
    stub: Stub,
}

/// Typesets the document.
///
/// # Errors
/// As [`places`], and [`PrintError::Typeset`].
pub(super) fn document(sources: &Sources) -> Result<Document, PrintError> {
    let Sources { settings, printed, facts, words, .. } = *sources;
    let places = places(&settings.print, printed, settings.code.corner)?;
    let layout = &places.layout;
    let order = order(facts, printed);
    let heading = Heading::new(sources, NAME, Some(layout.sheets(order.len())), Sides::One);
    let stubs = Stubs::of(sources, places.stub_mm, places.side_mm, &places.piece());
    let quiet = quiet_zone(printed.code_top_left, printed.module_mm);
    let crop = sources.picture.crop(&printed.grid);
    let mut pictures: Vec<Image> = Vec::with_capacity(order.len());
    let mut pages = Vec::new();
    for numbers in layout.stacked(order.len()) {
        let on_sheet: Vec<usize> = numbers.into_iter().map(|number| order[number]).collect();
        let squares: Vec<&PrintedSquare> = on_sheet.iter().map(|number| &printed.squares[*number]).collect();
        let labels = listed(squares.iter().map(|square| square.label.as_str()));
        let mut items = Vec::with_capacity(squares.len());
        for ((square, number), spot) in squares.iter().zip(&on_sheet).zip(&layout.spots) {
            let part = Part::of_piece(&crop, square.cell);
            let (image, lies) = printed_part(sources, &part, [places.piece_mm; 2]);
            pictures.push(image);
            items.push(Item {
                area: (*spot).into(),
                label: square.label.clone(),
                code: code(square, printed, &quiet),
                picture: (pictures.len() - 1, lies),
                stub: stubs.stub(square, &facts.pieces[*number]),
            });
        }
        let about = words.say("print-about-strips", &[("labels", labels.as_str().into())]);
        let strip = heading.strip_with(layout, pages.len() + 1, false, &labels);
        pages.push(Page { strip, about, back: false, items });
    }
    let shared = shared(&places, printed, quiet, words.say("strips-fold", &[]));
    Sheets { name: NAME, shared, pages, pictures, two_sided: false }.document(sources)
}

fn shared(places: &Places, printed: &Printed, quiet: Box, fold_words: String) -> Shared {
    let side = places.side_mm;
    let fold_x = places.fold_x();
    Shared {
        side,
        square_x: places.square_x(),
        ticks: square_ticks(side, &quiet),
        label: label_place(side, &quiet),
        quiet,
        stub: Box { x: places.stub_x(), y: 0.0, width: places.stub_mm, height: side },
        fold: Line { x1: fold_x, y1: 0.0, x2: fold_x, y2: side },
        fold_words,
        piece: places.piece(),
        border: BORDER_MM,
        piece_side: places.piece_mm,
        piece_ticks: pieces::ticks(printed.grid.piece_mm, 0),
        turned: places.turned,
        pad: PAD_MM,
    }
}

/// The line of each strip on a page that is folded.
pub(super) fn fold(places: &Places, spot: &Area) -> Line {
    let at = places.fold_x();
    let (corner, side) = (spot.top_left, places.side_mm);
    if places.turned {
        return Line { x1: corner.x, y1: corner.y + at, x2: corner.x + side, y2: corner.y + at };
    }
    Line { x1: corner.x + at, y1: corner.y, x2: corner.x + at, y2: corner.y + side }
}
