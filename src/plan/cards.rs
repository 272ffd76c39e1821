//! Edge cards around the wall: where each hangs and what its code says.

use super::cell::{Grid, column_letters};
use super::code::{CodeError, Modules, QUIET_ZONE, SIDE, Tag};
use crate::frame::{Point, Vector, WallMm, float};

/// Width of the ring of cards around the wall, in mm; corner cards are squares of this side.
pub const RING_MM: f64 = 60.0;
/// Side of a module on a column's or row's card, in mm.
pub const EDGE_MODULE_MM: f64 = 1.5;
/// Side of a module on a corner card, in mm.
pub const CORNER_MODULE_MM: f64 = 2.0;
/// Maximum length of a column's or row's card, in mm: on larger squares it stands in their middle. It fits
/// every paper upright.
pub const EDGE_CARD_MOST_MM: f64 = 190.0;

/// Maximum distance of an edge card's code from the middle of its card, to the right or down, in mm; the name
/// stands in the other half.
pub const EDGE_CODE_SHIFT_MM: f64 = 35.0;

/// Distance of an edge card's code from the middle of its card where squares have a side of `square_mm`, in
/// mm.
///
/// [`EDGE_CODE_SHIFT_MM`], less where the code and its quiet zone would stick out of the card (squares below
/// 117.5 mm).
#[must_use]
pub fn edge_code_shift_mm(square_mm: f64) -> f64 {
    let half_with_quiet_zone = (float(SIDE) / 2.0 + float(QUIET_ZONE)) * EDGE_MODULE_MM;
    let from_cut_edge = 2.0;
    (square_mm / 2.0 - half_with_quiet_zone - from_cut_edge).clamp(0.0, EDGE_CODE_SHIFT_MM)
}

/// Part of the wall that a card names.
#[derive(Copy, Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum CardKind {
    /// Below a column.
    Column,
    /// Left of a row.
    Row,
    /// Beyond a corner.
    Corner,
}

impl CardKind {
    /// Word for it in the manifest.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Self::Column => "column",
            Self::Row => "row",
            Self::Corner => "corner",
        }
    }

    /// Kind that a word of the manifest means.
    #[must_use]
    pub fn named(word: &str) -> Option<Self> {
        [Self::Column, Self::Row, Self::Corner].into_iter().find(|kind| kind.word() == word)
    }
}

/// Edge card.
#[derive(Clone, Debug, PartialEq)]
pub struct Card {
    /// Part of the wall that it names.
    pub kind: CardKind,
    /// The column's letters, the row's number, or the corner's number 1 … 4 clockwise from the top left.
    pub name: String,
    /// Text in its code.
    pub text: String,
    /// Modules of its code.
    pub modules: Modules,
    /// Side of one of its code's modules, in mm.
    pub module_mm: f64,
    /// Place on the wall of the centre of its code.
    pub centre: Point<WallMm>,
}

/// All cards of an event: columns from the left, rows from the top, corners clockwise from the top left.
///
/// # Errors
/// [`CodeError::Text`] where a name does not fit a code.
pub fn all_cards(grid: &Grid, tag: Tag) -> Result<Vec<Card>, CodeError> {
    let Vector { x: w, y: h, .. } = grid.size();
    let out = RING_MM / 2.0;
    let middle = |i: usize| (float(i) + 0.5) * grid.square_mm + edge_code_shift_mm(grid.square_mm);
    let columns = (0..grid.columns).map(|column| {
        let name = column_letters(column);
        (CardKind::Column, tag.edge(&name), name, Point::new(middle(column), h + out))
    });
    let rows = (0..grid.rows).map(|row| {
        let name = grid.row_number(row).to_string();
        (CardKind::Row, tag.edge(&name), name, Point::new(-out, middle(row)))
    });
    let at = [(-out, -out), (w + out, -out), (w + out, h + out), (-out, h + out)];
    let corners = (1..)
        .zip(at)
        .map(|(number, (x, y))| (CardKind::Corner, tag.corner(number), number.to_string(), Point::new(x, y)));
    columns
        .chain(rows)
        .chain(corners)
        .map(|(kind, text, name, centre)| {
            let module_mm = if kind == CardKind::Corner { CORNER_MODULE_MM } else { EDGE_MODULE_MM };
            Ok(Card { modules: Modules::encode(&text)?, kind, name, text, module_mm, centre })
        })
        .collect()
}
