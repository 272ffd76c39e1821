//! `edge-cards.pdf`: what hangs around the wall, so that people and photos know which column and row is which.
//!
//! ```text
//!  a column's card, square_mm × 60        a row's card: the same      a corner's card, 60 × 60 and a strip
//!  ┌───────────────────────────┐          on end, the name in         ┌──────────────┐
//!  │              ┌┄┄┄┄┄┄┄┐    │          its upper half              │ corner 1 …   │ strip: words, on the side
//!  │     D        ┆ code  ┆    │                                      ├┄┄┄┄┄┄┄┄┄┄┄┄┄┄┤ away from the wall
//!  │              └┄┄┄┄┄┄┄┘    │                                      │     code     │
//!  └───────────────────────────┘                                      └──────────────┘
//! ```
//!
//! Column cards are printed on end where more of them fit a sheet so.

use serde::Serialize;

use super::layout::{Area, Layout};
use super::marks::{Box, Code, code_side};
use super::page::{Heading, Page, Sheets, Sides, listed};
use super::{Document, Large, PrintError, Sources};
use crate::frame::Vector;
use crate::plan::cards::{EDGE_CARD_MOST_MM, RING_MM};
use crate::plan::{Card, CardKind, Printed};
use crate::words::Words;

/// How high the strip on a corner's card is, in mm: its code and quiet zone leave no room for words.
pub const CORNER_STRIP_MM: f64 = 8.0;
/// White kept at the edges of a card and around its code, in mm.
const EDGE_MM: f64 = 4.0;
/// Room for the words below a name, in mm.
const CAPTION_MM: f64 = 6.0;
/// Cards narrower than this beside their code have no words, only the name, in mm.
const CAPTION_LEAST_MM: f64 = 50.0;

/// A card, in mm from its own top left corner as it hangs.
#[derive(Serialize)]
struct Item {
    /// The paper it takes on the page.
    area: Box,
    /// Width and height as it hangs.
    size: [f64; 2],
    /// Printed on end: turned clockwise by a quarter.
    turned: bool,
    code: Code,
    /// The rectangle that stays white around the code; drawn where it is not the card's own edge.
    quiet: Option<Box>,
    name: String,
    /// Where the name stands, as large as it fits.
    name_box: Option<Box>,
    caption: String,
    caption_box: Option<Box>,
    /// A line across the card, at this height: below or above it is the strip.
    fold: Option<f64>,
}

/// Nothing that all cards share.
#[derive(Serialize)]
struct Shared {}

/// The cards that have room for their code: all, but where squares are narrower than a code with its quiet zone only the
/// corners' ones.
pub(super) fn printable(printed: &Printed) -> impl Iterator<Item = &Card> {
    let side = printed.grid.square_mm;
    printed.cards.iter().filter(move |card| {
        card.kind == CardKind::Corner || code_side(card.module_mm) + 8.0 * card.module_mm <= side
    })
}

/// Typesets the document.
///
/// # Errors
/// [`PrintError::TooLarge`] where not one card fits the paper; [`PrintError::Typeset`].
pub(super) fn document(sources: &Sources) -> Result<Document, PrintError> {
    let Sources { printed, words, .. } = *sources;
    let sheets = sheets(sources)?;
    let heading = Heading::new(sources, "edge-cards", Some(sheets.len()), Sides::One);
    let page = |(number, sheet): (usize, Sheet)| {
        let strip = heading.strip(&sheet.layout, number, false);
        let names = listed(sheet.cards.iter().map(|card| card.text.as_str()));
        let about = words.say("print-about-cards", &[("names", names.into())]);
        let items = sheet.cards.iter().zip(&sheet.layout.spots);
        let items = items.map(|(card, spot)| item(card, (*spot).into(), printed, words)).collect();
        Page { strip, about, back: false, items }
    };
    let pages = (1..).zip(sheets).map(page).collect();
    Sheets { name: "edge-cards", shared: Shared {}, pages, pictures: Vec::new(), two_sided: false }
        .document(sources)
}

/// The cards of a sheet, each with its spot in the layout.
struct Sheet<'a> {
    layout: Layout,
    cards: Vec<&'a Card>,
}

/// Columns' and rows' cards, then the corners' ones: those where they all fit beside the last rows' cards, else on sheets of their own.
fn sheets<'a>(sources: &Sources<'a>) -> Result<Vec<Sheet<'a>>, PrintError> {
    let Sources { settings, printed, .. } = *sources;
    let paper = settings.print.paper;
    let (corners, edges): (Vec<&Card>, Vec<&Card>) =
        printable(printed).partition(|card| card.kind == CardKind::Corner);
    let side = printed.grid.square_mm.min(EDGE_CARD_MOST_MM);
    let too_large = || PrintError::too_large(Large::Card, side, 0.0, paper);
    let on_end = Layout::pack(paper, RING_MM, side);
    let lying = Layout::pack(paper, side, RING_MM);
    let edge_layout = on_end.into_iter().chain(lying).max_by_key(more_spots).ok_or_else(too_large)?;
    let corner_mm = Vector::new(RING_MM, RING_MM + CORNER_STRIP_MM);
    let corner_layout = Layout::pack(paper, corner_mm.x, corner_mm.y).ok_or_else(too_large)?;
    let chunks = edges.chunks(edge_layout.spots.len());
    let mut sheets: Vec<Sheet> =
        chunks.map(|cards| Sheet { layout: edge_layout.clone(), cards: cards.into() }).collect();
    let roomy = |spot: &Area| spot.size.x >= corner_mm.x - 1e-6 && spot.size.y >= corner_mm.y - 1e-6;
    match sheets.last_mut() {
        Some(last) if last.free().len() >= corners.len() && last.free().iter().all(roomy) => {
            last.layout.spots[last.cards.len()..].iter_mut().for_each(|spot| spot.size = corner_mm);
            last.cards.extend(corners);
        }
        _ => {
            let chunks = corners.chunks(corner_layout.spots.len());
            sheets.extend(chunks.map(|cards| Sheet { layout: corner_layout.clone(), cards: cards.into() }));
        }
    }
    Ok(sheets)
}

impl Sheet<'_> {
    /// Spots without a card.
    fn free(&self) -> &[Area] {
        &self.layout.spots[self.cards.len()..]
    }
}

/// Where the cards lie, sheet by sheet, and how many there are.
///
/// # Errors
/// As [`document`].
pub(super) fn layouts(sources: &Sources) -> Result<Vec<(Layout, usize)>, PrintError> {
    Ok(sheets(sources)?.into_iter().map(|sheet| (sheet.layout, sheet.cards.len())).collect())
}

fn more_spots(layout: &Layout) -> usize {
    layout.spots.len()
}

/// A card and what stands on it.
fn item(card: &Card, area: Box, printed: &Printed, words: &Words) -> Item {
    match card.kind {
        CardKind::Corner => corner(card, area, words),
        CardKind::Column | CardKind::Row => edge(card, area, printed, words),
    }
}

fn edge(card: &Card, area: Box, printed: &Printed, words: &Words) -> Item {
    let cell = printed.grid.square_mm;
    let side = cell.min(EDGE_CARD_MOST_MM);
    let Vector { y: wall_height, .. } = printed.grid.size();
    // from the edge of the card, which stands in the middle of its cell, instead of the wall's
    let own = |along: f64| along - (along / cell).floor() * cell - (cell - side) / 2.0;
    let column = card.kind == CardKind::Column;
    let (size, x, y) = if column {
        ([side, RING_MM], own(card.centre.x), card.centre.y - wall_height)
    } else {
        ([RING_MM, side], card.centre.x + RING_MM, own(card.centre.y))
    };
    let code = Code::centred(&card.modules, card.module_mm, x, y);
    let quiet = code.quiet_zone();
    let (width, height) = if column {
        (quiet.x - 2.0 * EDGE_MM, RING_MM - 2.0 * EDGE_MM)
    } else {
        (RING_MM - 2.0 * EDGE_MM, quiet.y - 2.0 * EDGE_MM)
    };
    let has_caption = width >= CAPTION_LEAST_MM && height > 3.0 * CAPTION_MM;
    let name_height = if has_caption { height - CAPTION_MM } else { height };
    let words_below = Box { x: EDGE_MM, y: EDGE_MM + name_height, width, height: CAPTION_MM };
    let id = if column { "print-card-column" } else { "print-card-row" };
    Item {
        turned: (area.width - size[0]).abs() > 1e-6,
        area,
        size,
        quiet: Some(quiet),
        code,
        name: card.name.clone(),
        name_box: Some(Box { x: EDGE_MM, y: EDGE_MM, width, height: name_height }),
        caption: words.say(id, &[("name", card.name.as_str().into())]),
        caption_box: has_caption.then_some(words_below),
        fold: None,
    }
}

fn corner(card: &Card, area: Box, words: &Words) -> Item {
    let above = card.centre.y < 0.0; // the strip points away from the wall
    let (top, strip_top) = if above { (CORNER_STRIP_MM, 0.0) } else { (0.0, RING_MM) };
    let middle = RING_MM / 2.0;
    Item {
        turned: false,
        area,
        size: [RING_MM, RING_MM + CORNER_STRIP_MM],
        code: Code::centred(&card.modules, card.module_mm, middle, top + middle),
        quiet: None,
        name: card.name.clone(),
        name_box: None,
        caption: words.say(&format!("print-card-corner-{}", card.name), &[]),
        caption_box: Some(Box { x: 0.0, y: strip_top, width: RING_MM, height: CORNER_STRIP_MM }),
        fold: Some(if above { CORNER_STRIP_MM } else { RING_MM }),
    }
}
