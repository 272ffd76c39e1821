//! What questions are asked about: which piece has which colours, and the grid.

use super::Value;
use super::measure::{Measure, Unit, measures, whole};
use super::sight::Sight;
use crate::picture::colour::ciede2000;
use crate::picture::{Picture, PictureFacts, PieceFacts};
use crate::plan::{Cell, Grid};

/// Least part of a piece's area at which nobody overlooks a colour: 2 %, a spot of 3.6 mm on a piece of an inch.
/// Common practice, no source.
const PLAIN_TO_SEE: f64 = 0.02;
/// Largest part of a piece's area that nobody sees: a dot of a quarter of a millimetre on a piece of an inch. A larger one
/// might be counted by some and not by others.
const NOT_SEEN: f64 = 1e-4;
/// Least CIEDE2000 between two colours that children tell apart without comparing them side by side: twice the distance
/// below which `warnings` calls two pencils alike. Common practice, no source.
pub(super) const APART: f64 = 20.0;

/// The picture and its mural as questions see them.
pub(super) struct Subject<'a> {
    pub grid: &'a Grid,
    /// What people measure in.
    pub unit: Unit,
    /// For each piece, in the grid's order, the pencils that it needs.
    pub needs: Vec<Vec<usize>>,
    /// The pencils that some piece needs.
    pub used: Vec<usize>,
    /// Those of them that are counted alike by everybody, in every piece.
    pub clear: Vec<usize>,
    /// For each piece, whether everybody counts its colours alike.
    pub clear_piece: Vec<bool>,
    facts: &'a PictureFacts,
    sight: Sight,
    /// For each pencil, whether it looks like no other one of the picture, and the picture looks like its pencils.
    distinct: Vec<bool>,
}

impl<'a> Subject<'a> {
    pub fn of(facts: &'a PictureFacts, picture: &Picture, grid: &'a Grid, unit: Unit) -> Self {
        let needs: Vec<Vec<usize>> = facts.pieces.iter().map(|piece| piece.pencils.clone()).collect();
        let is_used = |pencil: &usize| needs.iter().any(|needed| needed.contains(pencil));
        let used: Vec<usize> = (0..facts.pencils.len()).filter(is_used).collect();
        let sight = Sight::of(picture, &facts.pencils, grid);
        let colour = |pencil: usize| facts.pencils.get(pencil).map_or([0; 3], |pencil| pencil.srgb);
        let alone = |pencil: usize| {
            let others = used.iter().filter(|other| **other != pencil);
            sight.is_flat
                && others.into_iter().all(|other| ciede2000(colour(pencil), colour(*other)) >= APART)
        };
        let distinct = (0..facts.pencils.len()).map(alone).collect();
        let mut subject = Self {
            grid,
            unit,
            needs,
            used,
            clear: Vec::new(),
            clear_piece: Vec::new(),
            facts,
            sight,
            distinct,
        };
        subject.clear = subject.used.iter().copied().filter(|pencil| subject.is_clear(*pencil)).collect();
        subject.clear_piece = facts.pieces.iter().map(|piece| subject.is_clear_piece(piece)).collect();
        subject
    }

    /// Whether everybody agrees on which pieces of the picture have a colour.
    fn is_clear(&self, pencil: usize) -> bool {
        self.facts.pieces.iter().all(|piece| self.is_clear_in(pencil, piece))
    }

    /// Whether everybody agrees on whether a piece has a colour.
    fn is_clear_in(&self, pencil: usize, piece: &PieceFacts) -> bool {
        let share = piece.shares.get(pencil).copied().unwrap_or(0.0);
        let needed = piece.pencils.contains(&pencil);
        let inside = self.sight.share(self.grid, piece.cell, pencil);
        let agreed = if needed { share.min(inside) >= PLAIN_TO_SEE } else { share <= NOT_SEEN };
        agreed && self.distinct.get(pencil) == Some(&true)
    }

    /// Whether everybody agrees on how many colours a piece has.
    fn is_clear_piece(&self, piece: &PieceFacts) -> bool {
        let agreed = |(pencil, share): (usize, &f64)| *share == 0.0 || self.is_clear_in(pencil, piece);
        piece.shares.iter().enumerate().all(agreed)
    }

    /// Whether everybody agrees on which pieces of a row, from a cell on, have a colour.
    pub fn is_clear_in_row(&self, pencil: usize, first: Cell, count: usize) -> bool {
        let from = self.grid.index(first);
        self.facts.pieces.iter().skip(from).take(count).all(|piece| self.is_clear_in(pencil, piece))
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

    /// A length in people's unit or, where it is no whole number of inches, in millimetres.
    fn measured(&self, mm: f64) -> Vec<Measure> {
        let known = |measure: &Measure| measure.unit == self.unit || measure.unit == Unit::Mm;
        measures(mm).into_iter().filter(known).collect()
    }

    /// A square's side.
    pub fn square(&self) -> Option<Measure> {
        self.measured(self.grid.square_mm).into_iter().next()
    }

    /// The sides of piece and square in a unit in which both are whole.
    pub fn piece_and_square(&self) -> Option<(Measure, Measure)> {
        let squares = self.measured(self.grid.square_mm);
        self.measured(self.grid.piece_mm).into_iter().find_map(|piece| {
            squares.iter().find(|square| square.unit == piece.unit).map(|square| (piece, *square))
        })
    }

    /// How many times as long as a piece a square is, where that is a whole number above 1.
    pub fn scale(&self) -> Option<usize> {
        whole(self.grid.square_mm / self.grid.piece_mm).filter(|scale| *scale > 1)
    }
}
