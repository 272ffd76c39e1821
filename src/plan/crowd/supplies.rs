//! What has to be there: pencils, sharpeners, erasers, tape; and how much paper hangs on the wall.
//!
//! **Pencils.** The model: whoever draws holds one pencil at a time, each for a time in proportion to the area of its colour; so at
//! any moment a visitor at a piece of `m` minutes holds colour c with a chance of its share of that piece, and over the evening with
//! `chance(c) = Σ m(piece) · share(piece, c) / Σ m(piece)`. With S seats in use, the number of those who hold c is binomial (S, chance).
//! As many pencils of c are proposed as let *nobody wait for any colour* in [`NOBODY_WAITS`] of moments: each of n colours may fall
//! short in (1 − [`NOBODY_WAITS`]) / n of them (Boole's inequality), so that all together do in no more.

use super::binomial::quantile;
use super::{Given, Work};
use crate::frame::float;
use crate::plan::cards::RING_MM;
use crate::plan::cell::{Cell, Grid};
use crate::plan::settings::WallPart;

/// Share of all moments in which nobody waits for a pencil.
pub const NOBODY_WAITS: f64 = 0.95;
/// Number of seats that share a pencil sharpener. Common practice, no source.
pub const SEATS_A_SHARPENER: usize = 6;
/// Number of seats that share an eraser. Common practice, no source.
pub const SEATS_AN_ERASER: usize = 3;
/// Length of tape for a square, in mm: four pieces of 30 mm, rolled behind the corners. Common practice, no
/// source.
pub const TAPE_A_SQUARE_MM: f64 = 120.0;
/// Length of tape for a card, in mm: two pieces of 30 mm. Common practice, no source.
pub const TAPE_A_CARD_MM: f64 = 60.0;

/// One pencil colour.
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct PencilNeed {
    /// The chance that somebody who draws holds it at a moment.
    pub chance: f64,
    /// How many of it there should be.
    pub count: usize,
}

/// What has to be there.
#[derive(Clone, Debug, PartialEq)]
pub struct Supplies {
    /// Of each pencil colour, in the pencils' order.
    pub pencils: Vec<PencilNeed>,
    /// Pencil sharpeners.
    pub sharpeners: usize,
    /// Erasers.
    pub erasers: usize,
    /// Tape for all squares and cards, in mm.
    pub tape_mm: f64,
    /// How many cards hang around the squares.
    pub cards: usize,
    /// Paper on the wall, squares and cards, in square metres: what a rule against fire asks for.
    pub paper_m2: f64,
}

impl Supplies {
    /// How many pencils there should be in all.
    #[must_use]
    pub fn pencils_in_all(&self) -> usize {
        self.pencils.iter().map(|need| need.count).sum()
    }
}

/// Works it out.
#[must_use]
pub fn supplies(grid: &Grid, work: &Work, given: &Given, seats_in_use: usize) -> Supplies {
    let cards = grid.columns + grid.rows + 4;
    let squares = float(grid.hanging());
    Supplies {
        pencils: pencils(&chances(work, given.minutes_a_piece), seats_in_use),
        sharpeners: seats_in_use.div_ceil(SEATS_A_SHARPENER),
        erasers: seats_in_use.div_ceil(SEATS_AN_ERASER),
        tape_mm: squares * TAPE_A_SQUARE_MM + float(cards) * TAPE_A_CARD_MM,
        cards,
        paper_m2: paper_m2(grid, &WallPart::whole(grid, 0.0)),
    }
}

/// Paper of a part on its wall, in square metres: its squares, and the cards that hang at the edges which it shares with the whole.
#[must_use]
pub fn paper_m2(grid: &Grid, part: &WallPart) -> f64 {
    let size = part.size(grid);
    let (last_column, last_row) = (grid.columns - 1, grid.rows - 1);
    let column_cards = if part.last.row == last_row { size.x * RING_MM } else { 0.0 };
    let row_cards = if part.first.column == 0 { size.y * RING_MM } else { 0.0 };
    let corners = [(0, 0), (0, last_column), (last_row, last_column), (last_row, 0)];
    let corners = corners.iter().filter(|(row, column)| part.holds(Cell { row: *row, column: *column }));
    let corner_cards = float(corners.count()) * RING_MM * RING_MM;
    (size.x * size.y + column_cards + row_cards + corner_cards) / 1e6
}

/// For each pencil, the chance that somebody who draws holds it; 0 for all where there is nothing to draw.
#[must_use]
pub fn chances(work: &Work, minutes_a_piece: [f64; 4]) -> Vec<f64> {
    let counted = work.areas.iter().zip(minutes_a_piece);
    let minutes: Vec<f64> = (0..work.pencils())
        .map(|pencil| counted.clone().map(|(areas, each)| areas[pencil] * each).sum())
        .collect();
    let all: f64 = minutes.iter().sum();
    minutes.into_iter().map(|own| if all > 0.0 { own / all } else { 0.0 }).collect()
}

/// How many of each pencil there should be for so many seats in use; at least one of each that is needed at all.
#[must_use]
pub fn pencils(chances: &[f64], seats: usize) -> Vec<PencilNeed> {
    let needed = chances.iter().filter(|chance| **chance > 0.0).count();
    let sure = 1.0 - (1.0 - NOBODY_WAITS) / float(needed.max(1));
    let need = |chance: &f64| PencilNeed {
        chance: *chance,
        count: if *chance > 0.0 { quantile(seats, *chance, sure).max(1) } else { 0 },
    };
    chances.iter().map(need).collect()
}
