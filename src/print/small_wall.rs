//! A wall in small, with some of its spots marked: which pieces belong in a bag, which need a pencil.
//!
//! ```text
//!    8 ┌─┬─┬─┬─┐
//!    7 ├─┼─■─┼─┤      a full spot, or one with a small square in it
//!    6 ├─┼─┼▪┼─┤
//!      └─┴─┴─┴─┘
//!       A B C D       as many letters and numbers as have room
//! ```

use serde::Serialize;

use super::typeset::width_mm;
use crate::frame::{ceil_index, float};
use crate::plan::cell::column_letters;
use crate::plan::{Cell, Grid};

/// Letters in it, in points; room for them at the left and below, and how far apart two of them have to be, in mm.
const POINTS: f64 = 8.0;
const AXIS_MM: f64 = 5.0;
const APART_MM: f64 = 3.4;
/// The largest cell, in mm.
const MOST_CELL_MM: f64 = 14.0;
/// Part of a cell's side that a full mark covers, and a small one.
const FULL: f64 = 1.0;
const SMALL: f64 = 0.5;

/// A wall in small, in mm.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub(super) struct SmallWall {
    columns: usize,
    rows: usize,
    cell: f64,
    axis: f64,
    /// Letters below: the column, from 0, and its name. Numbers at the left: the row, from 0 at the top, and its number.
    letters: Vec<(usize, String)>,
    numbers: Vec<(usize, String)>,
    marks: Vec<Mark>,
}

/// A marked spot.
#[derive(Clone, Debug, PartialEq, Serialize)]
struct Mark {
    column: usize,
    row: usize,
    /// Part of the cell's side that is filled.
    part: f64,
    /// Its label, where all labels have room.
    label: String,
}

impl SmallWall {
    /// As large as a room of `width` × `height` mm allows, without marks.
    pub fn of(grid: &Grid, [width, height]: [f64; 2]) -> Self {
        let across = (width - AXIS_MM) / float(grid.columns);
        let down = (height - AXIS_MM) / float(grid.rows);
        let cell = across.min(down).min(MOST_CELL_MM);
        let every = |room: f64| ceil_index(room / cell).max(1);
        let widest = width_mm(&column_letters(grid.columns - 1), POINTS, false);
        let letters = (0..grid.columns).step_by(every(widest + 0.8)).map(|at| (at, column_letters(at)));
        let of_row = |row: &usize| (grid.row_number(*row) - 1).is_multiple_of(every(APART_MM));
        let numbers = (0..grid.rows).filter(of_row).map(|row| (row, grid.row_number(row).to_string()));
        Self {
            columns: grid.columns,
            rows: grid.rows,
            cell,
            axis: AXIS_MM,
            letters: letters.collect(),
            numbers: numbers.collect(),
            marks: Vec::new(),
        }
    }

    /// With marks in spots, full or small ones.
    pub fn marked(self, marks: impl Iterator<Item = (Cell, bool)>) -> Self {
        let marks = marks.map(|(Cell { column, row }, is_full)| Mark {
            column,
            row,
            part: if is_full { FULL } else { SMALL },
            label: String::new(),
        });
        Self { marks: marks.collect(), ..self }
    }

    /// Side of a spot, in mm.
    pub fn cell_mm(&self) -> f64 {
        self.cell
    }

    /// With the labels of the marked spots in them, if all of the wall's have room.
    pub fn labelled(mut self, grid: &Grid) -> Self {
        let fits = |cell| width_mm(&grid.label(cell), POINTS, true) + 0.8 <= self.cell;
        if self.cell >= APART_MM && grid.cells().all(fits) {
            for mark in &mut self.marks {
                mark.label = grid.label(Cell { column: mark.column, row: mark.row });
            }
        }
        self
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn it_keeps_within_its_room(columns in 1_usize..60, rows in 1_usize..60, width in 30.0..240.0_f64, height in 30.0..200.0_f64) {
            let SmallWall { cell, axis, .. } = SmallWall::of(&Grid::usual(columns, rows), [width, height]);
            prop_assert!(axis + cell * float(columns) <= width + 1e-9 && cell * float(rows) + axis <= height + 1e-9);
        }
    }

    #[test]
    fn labels_stand_where_all_have_room() {
        let grid = Grid::usual(10, 8);
        let marks = || std::iter::once((Cell { row: 7, column: 3 }, true));
        let large = SmallWall::of(&grid, [120.0, 120.0]).marked(marks()).labelled(&grid);
        assert_eq!(large.marks[0].label, "D1");
        assert_eq!(large.letters.len(), 10);
        let small = SmallWall::of(&grid, [30.0, 30.0]).marked(marks()).labelled(&grid);
        assert_eq!(small.marks[0].label, "");
    }
}
