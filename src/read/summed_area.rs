//! Summed-area tables (F. Crow: Summed-Area Tables for Texture Mapping, 1984): the sum over any upright rectangle of a picture in
//! four look-ups.
//!
//! ```text
//!     ┌────┬──────┐     each entry is the sum over all that lies above it and to its left, so the
//!     │    │      │     sum over the rectangle is
//!     ├────a──────b
//!     │    │ sum  │       d − b − c + a
//!     └────c──────d
//! ```

use std::num::Wrapping;
use std::ops::{Add, Mul, Range, Sub};

/// Number that a table adds up.
///
/// Whole numbers wrap: a table may overflow, the sum over a small rectangle does not mind.
pub(super) trait Level:
    Copy + Default + Add<Output = Self> + Sub<Output = Self> + Mul<Output = Self>
{
}

impl Level for Wrapping<i32> {}
impl Level for f64 {}

/// Table of one quantity, (height + 1) × (width + 1), row by row; the first row and column are zero.
#[derive(Debug)]
pub(super) struct Table<T> {
    width: usize,
    sums: Vec<T>,
}

/// Tables of a picture's levels and of their squares.
#[derive(Debug)]
pub(super) struct SummedArea<T> {
    pub(super) level: Table<T>,
    pub(super) square: Table<T>,
}

impl<T: Level> SummedArea<T> {
    /// Tables of a picture with `size` (width, height), row by row.
    pub(super) fn new<Row: Iterator<Item = T>>(
        (width, height): (usize, usize),
        rows: impl Iterator<Item = Row>,
    ) -> Self {
        let width = width + 1;
        let mut tables = [vec![T::default(); width * (height + 1)], vec![T::default(); width * (height + 1)]];
        for (y, row) in rows.take(height).enumerate() {
            let [level, square] = tables.each_mut().map(|sums| {
                let (before, here) = sums.split_at_mut((y + 1) * width);
                before[y * width + 1..].iter().zip(&mut here[1..width])
            });
            let (mut sum, mut sum_of_squares) = (T::default(), T::default());
            for ((value, (above, here)), (square_above, square)) in row.zip(level).zip(square) {
                sum = sum + value;
                sum_of_squares = sum_of_squares + value * value;
                *here = *above + sum;
                *square = *square_above + sum_of_squares;
            }
        }
        let [level, square] = tables.map(|sums| Table { width, sums });
        Self { level, square }
    }
}

impl<T: Level> Table<T> {
    /// Sums over `count` rectangles side by side, each one column to the right of the one before; `rows` and `columns` are those of
    /// the first.
    ///
    /// # Panics
    /// Where a rectangle reaches beyond the picture.
    pub(super) fn boxes(
        &self,
        rows: Range<usize>,
        columns: Range<usize>,
        count: usize,
    ) -> impl Iterator<Item = T> {
        let line = |y: usize, x: usize| &self.sums[y * self.width + x..][..count];
        let outer = line(rows.end, columns.end).iter().zip(line(rows.start, columns.start));
        let inner = line(rows.start, columns.end).iter().zip(line(rows.end, columns.start));
        outer.zip(inner).map(|((d, a), (b, c))| *d + *a - *b - *c)
    }

    /// Sum over one rectangle.
    ///
    /// # Panics
    /// Where it reaches beyond the picture.
    pub(super) fn sum(&self, rows: Range<usize>, columns: Range<usize>) -> T {
        let at = |y: usize, x: usize| self.sums[y * self.width + x];
        at(rows.end, columns.end) + at(rows.start, columns.start)
            - at(rows.start, columns.end)
            - at(rows.end, columns.start)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn four_look_ups_are_the_sum(
            levels in prop::collection::vec(0_i32..256, 42), top in 0_usize..6, left in 0_usize..7, high in 1_usize..6, wide in 1_usize..7,
        ) {
            let (rows, columns) = (top..(top + high).min(6), left..(left + wide).min(7));
            let inside = |i: usize| rows.contains(&(i / 7)) && columns.contains(&(i % 7));
            let sum: i32 = (0..42).filter(|i| inside(*i)).map(|i| levels[i]).sum();
            let squares: i32 = (0..42).filter(|i| inside(*i)).map(|i| levels[i].pow(2)).sum();
            let table = SummedArea::new((7, 6), levels.chunks(7).map(|row| row.iter().map(|level| Wrapping(*level))));
            prop_assert_eq!(table.level.sum(rows.clone(), columns.clone()), Wrapping(sum));
            prop_assert_eq!(table.square.sum(rows.clone(), columns.clone()), Wrapping(squares));
            let side_by_side: Vec<_> = table.level.boxes(rows.clone(), 0..columns.len(), 8 - columns.len()).collect();
            prop_assert_eq!(side_by_side[columns.start], Wrapping(sum));
            let real = SummedArea::new((7, 6), levels.chunks(7).map(|row| row.iter().map(|level| f64::from(*level))));
            prop_assert!((real.square.sum(rows, columns) - f64::from(squares)).abs() < 1e-6);
        }
    }

    #[test]
    fn a_table_that_overflows_still_tells_small_sums() {
        let bright = SummedArea::new((300, 300), (0..300).map(|_| (0..300).map(|_| Wrapping(255))));
        assert_eq!(bright.square.sum(290..300, 290..300), Wrapping(100 * 255 * 255));
    }
}
