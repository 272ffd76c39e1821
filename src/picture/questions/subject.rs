//! What questions are asked about: which piece needs which pencils, and the grid.

use super::Value;
use super::measure::whole;
use crate::picture::PictureFacts;
use crate::plan::{Cell, Grid};

/// The part of a piece's area above which nobody overlooks a colour: 2 %, a spot of 3.6 mm on a piece of an inch.
/// Common practice, no source. A colour that covers less in some piece is asked about after the others.
const PLAIN_TO_SEE: f64 = 0.02;

/// The picture and its wall as questions see them.
pub(super) struct Subject<'a> {
    pub grid: &'a Grid,
    /// For each piece, in the grid's order, the pencils that it needs.
    pub needs: Vec<Vec<usize>>,
    /// The pencils that some piece needs; those that nobody overlooks first, then in their own order.
    pub used: Vec<usize>,
}

impl<'a> Subject<'a> {
    pub fn of(facts: &PictureFacts, grid: &'a Grid) -> Self {
        let needs: Vec<Vec<usize>> = facts.pieces.iter().map(|piece| piece.pencils.clone()).collect();
        let is_used = |pencil: &usize| needs.iter().any(|needed| needed.contains(pencil));
        let doubtful = |pencil: &usize| {
            let shares = facts.pieces.iter().filter_map(|piece| piece.shares.get(*pencil));
            shares.into_iter().any(|share| *share > 0.0 && *share < PLAIN_TO_SEE)
        };
        let mut used: Vec<usize> = (0..facts.pencils.len()).filter(is_used).collect();
        used.sort_by_key(doubtful);
        Self { grid, needs, used }
    }

    /// How many pieces there are.
    pub fn count(&self) -> usize {
        self.needs.len()
    }

    /// How many pieces need a pencil.
    pub fn holding(&self, pencil: usize) -> usize {
        self.needs.iter().filter(|needed| needed.contains(&pencil)).count()
    }

    /// How many pieces of each row, or of each column where there are fewer of these, are of a kind; and which of the two.
    pub fn by_line(&self, is_kind: impl Fn(&[usize]) -> bool) -> [(&'static str, Value); 2] {
        let Grid { columns, rows, .. } = *self.grid;
        let by_rows = rows <= columns;
        let mut lines = vec![0; rows.min(columns)];
        for (cell, needed) in self.grid.cells().zip(&self.needs) {
            let line = if by_rows { cell.row } else { cell.column };
            if let Some(count) = lines.get_mut(line).filter(|_| is_kind(needed)) {
                *count += 1;
            }
        }
        [("by", Value::Choice(if by_rows { "rows" } else { "columns" })), ("sum", Value::Sum(lines))]
    }

    /// Each row from the top: its first cell, and what its pieces need.
    pub fn rows(&self) -> impl Iterator<Item = (Cell, &[Vec<usize>])> {
        let cells = (0..self.grid.rows).map(|row| Cell { row, column: 0 });
        cells.zip(self.needs.chunks(self.grid.columns.max(1)))
    }

    /// How many times as long as a piece a square is, where that is a whole number above 1.
    pub fn scale(&self) -> Option<usize> {
        whole(self.grid.square_mm / self.grid.piece_mm).filter(|scale| *scale > 1)
    }
}
