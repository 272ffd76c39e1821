//! Pieces of the picture on a card: where each lies, in mm from the card's top left corner.
//!
//! ```text
//!   ┌──────────────────────────────┐ ── TOP_MM
//!   │ question                     │
//!   │                              │
//!   │ ┌──┬──┬──┬──┬──┬──┬──┬──┬──┐ │
//!   │ └──┴──┴──┴──┴──┴──┴──┴──┴──┘ │ ── FOOT_MM
//!   │ A8                        J8 │    labels or letters
//!   └──────────────────────────────┘
//! ```

use serde::Serialize;

use super::super::Sources;
use super::super::cut_out::Part;
use super::super::drawn::printed_part;
use super::super::marks::Box;
use super::super::typeset::Image;
use super::CARD_MM;
use super::said::letter;
use crate::frame::float;
use crate::picture::questions::Shown;
use crate::plan::{Cell, Turn};

/// White between a card's edge and what is on it, in mm.
const INSET_MM: f64 = 5.0;
/// Where the question begins: below the card's head.
const TOP_MM: f64 = 12.5;
/// Where pieces end: above their letters and the line for the answer.
const FOOT_MM: f64 = 44.5;
/// Where a question without pieces ends.
const END_MM: f64 = 48.0;
/// White between the question and the pieces below it, in mm.
const GAP_MM: f64 = 2.0;
/// Side of a piece that stands alone, of those to choose from, of those in a row of which one is turned, and the largest of
/// those in a longer row, in mm.
const ALONE_MM: f64 = 27.0;
const CHOICE_MM: f64 = 15.0;
const TURNED_MM: f64 = 16.0;
const ROW_MM: f64 = 12.0;
/// White between the pieces to choose from, in mm.
const APART_MM: f64 = 2.0;

/// What is seen on a card.
#[derive(Serialize)]
pub(super) struct Seen {
    /// Where the question may stand.
    question: Box,
    pieces: Vec<Piece>,
    /// An empty box for a piece.
    empty: Option<Box>,
}

/// A piece on a card.
#[derive(Serialize)]
struct Piece {
    area: Box,
    /// Which picture, and where it lies within the piece, in mm; it may reach beyond, and is cut.
    picture: (usize, Box),
    /// How far it is turned clockwise, in degrees.
    turned: u32,
    /// A letter or a label below it.
    name: Option<String>,
}

/// Puts pieces on cards and keeps their pictures.
pub(super) struct Stage<'a> {
    pub sources: &'a Sources<'a>,
    pub pictures: &'a mut Vec<Image>,
}

impl Stage<'_> {
    /// What is seen on a card.
    pub fn seen(&mut self, shown: &Shown) -> Seen {
        let wide = CARD_MM[0] - 2.0 * INSET_MM;
        let question = |width: f64, end: f64| Box { x: INSET_MM, y: TOP_MM, width, height: end - TOP_MM };
        let above = |side: f64| question(wide, FOOT_MM - side - GAP_MM);
        match shown {
            Shown::Nothing | Shown::Key => {
                Seen { question: question(wide, END_MM), pieces: Vec::new(), empty: None }
            }
            Shown::Piece(cell) => {
                let x = CARD_MM[0] - INSET_MM - ALONE_MM;
                let name = Some(self.sources.printed.grid.label(*cell));
                let piece = self.piece(*cell, x, ALONE_MM, Turn::None, name);
                Seen {
                    question: question(wide - ALONE_MM - GAP_MM, END_MM),
                    pieces: vec![piece],
                    empty: None,
                }
            }
            Shown::Row(first, count) => {
                let side = (wide / float(*count)).min(ROW_MM);
                Seen { question: above(side), pieces: self.row(*first, *count, side), empty: None }
            }
            Shown::Next(cell, choices) => {
                let empty = Box { x: INSET_MM + CHOICE_MM, ..standing(CHOICE_MM) };
                let pieces = self.choices(*cell, choices);
                Seen { question: above(CHOICE_MM), pieces, empty: Some(empty) }
            }
            Shown::Turned(first, count, at, turn) => {
                let from = (CARD_MM[0] - float(*count) * TURNED_MM) / 2.0;
                let pieces = (0..*count).map(|step| {
                    let turn = if step == *at { *turn } else { Turn::None };
                    let cell = Cell { column: first.column + step, ..*first };
                    self.piece(cell, from + float(step) * TURNED_MM, TURNED_MM, turn, Some(letter(step)))
                });
                Seen { question: above(TURNED_MM), pieces: pieces.collect(), empty: None }
            }
        }
    }

    /// Pieces side by side, the first and the last with their labels.
    fn row(&mut self, first: Cell, count: usize, side: f64) -> Vec<Piece> {
        let grid = self.sources.printed.grid;
        let piece = |step: usize| {
            let cell = Cell { column: first.column + step, ..first };
            let name = (step == 0 || step + 1 == count).then(|| grid.label(cell));
            self.piece(cell, INSET_MM + float(step) * side, side, Turn::None, name)
        };
        (0..count).map(piece).collect()
    }

    /// A piece at the left, and those to choose from at the right.
    fn choices(&mut self, cell: Cell, choices: &[Cell]) -> Vec<Piece> {
        let step = CHOICE_MM + APART_MM;
        let from = CARD_MM[0] - INSET_MM - float(choices.len()) * step + APART_MM;
        let mut pieces = vec![self.piece(cell, INSET_MM, CHOICE_MM, Turn::None, None)];
        pieces.extend(choices.iter().enumerate().map(|(at, choice)| {
            self.piece(*choice, from + float(at) * step, CHOICE_MM, Turn::None, Some(letter(at)))
        }));
        pieces
    }

    fn piece(&mut self, cell: Cell, x: f64, side: f64, turn: Turn, name: Option<String>) -> Piece {
        let Sources { picture, printed, .. } = *self.sources;
        let part = Part::of_piece(&picture.crop(&printed.grid), cell);
        let (image, lies) = printed_part(self.sources, &part, [side; 2]);
        self.pictures.push(image);
        let picture = (self.pictures.len() - 1, lies);
        Piece { area: Box { x, ..standing(side) }, picture, turned: turn.degrees(), name }
    }
}

/// The place of a piece that stands on the pieces' foot, at the card's left edge.
fn standing(side: f64) -> Box {
    Box { x: 0.0, y: FOOT_MM - side, width: side, height: side }
}
