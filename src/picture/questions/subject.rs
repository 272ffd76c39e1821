//! What questions are asked about: which tile needs which pencils, and the grid.

use super::Value;
use super::measure::whole;
use crate::picture::PictureFacts;
use crate::plan::{Cell, Grid};

/// The part of a tile's area above which nobody overlooks a colour: 2 %, a spot of 3.6 mm on a tile of an inch.
/// Common practice, no source. A colour that covers less in some tile is asked about after the others.
const PLAIN_TO_SEE: f64 = 0.02;

/// The picture and its wall as questions see them.
pub(super) struct Subject<'a> {
    pub grid: &'a Grid,
    /// For each tile, in the grid's order, the pencils that it needs.
    pub needs: Vec<Vec<usize>>,
    /// The pencils that some tile needs; those that nobody overlooks first, then in their own order.
    pub used: Vec<usize>,
}

impl<'a> Subject<'a> {
    pub fn of(facts: &PictureFacts, grid: &'a Grid) -> Self {
        let needs: Vec<Vec<usize>> = facts.tiles.iter().map(|tile| tile.colours()).collect();
        let is_used = |pencil: &usize| needs.iter().any(|needed| needed.contains(pencil));
        let doubtful = |pencil: &usize| {
            let shares = facts.tiles.iter().filter_map(|tile| tile.shares.get(*pencil));
            shares.into_iter().any(|share| *share > 0.0 && *share < PLAIN_TO_SEE)
        };
        let mut used: Vec<usize> = (0..facts.pencils.len()).filter(is_used).collect();
        used.sort_by_key(doubtful);
        Self { grid, needs, used }
    }

    /// How many tiles there are.
    pub fn count(&self) -> usize {
        self.needs.len()
    }

    /// How many tiles need a pencil.
    pub fn holding(&self, pencil: usize) -> usize {
        self.needs.iter().filter(|needed| needed.contains(&pencil)).count()
    }

    /// How many tiles of each row, or of each column where there are fewer of these, are of a kind; and which of the two.
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

    /// Each row from the top: its first cell, and what its tiles need.
    pub fn rows(&self) -> impl Iterator<Item = (Cell, &[Vec<usize>])> {
        let cells = (0..self.grid.rows).map(|row| Cell { row, column: 0 });
        cells.zip(self.needs.chunks(self.grid.columns.max(1)))
    }

    /// How many times as long as a tile a square is, where that is a whole number above 1.
    pub fn scale(&self) -> Option<usize> {
        whole(self.grid.square_mm / self.grid.tile_mm).filter(|scale| *scale > 1)
    }
}
