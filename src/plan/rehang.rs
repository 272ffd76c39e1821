//! Taking a mural down and putting it up elsewhere: piles that lie in the order in which their squares go up again.
//!
//! ```text
//!   today, one wall          there, two boards         pile 1: A1–C4      pile 2: D1–E4
//!   ┌─┬─┬─┬─┬─┐              ┌─┬─┬─┐   ┌─┬─┐
//!   ├─┼─┼─┼─┼─┤      ─▶      ├─┼─┼─┤   ├─┼─┤          up:   lowest row first, from the left
//!   └─┴─┴─┴─┴─┘              └─┴─┴─┘   └─┴─┘          down: the same backwards, each square on the one before
//! ```
//!
//! What is taken down last lies on top and goes up first: nobody sorts anything.

use super::cell::{Cell, Grid};
use super::settings::WallPart;

/// Most squares of a pile that has more than one row: higher ones slide. Common practice, no source.
pub const MOST_IN_A_PILE: usize = 40;

/// Squares that hang together today and will hang together there: a rectangle of cells.
#[derive(Copy, Clone, Debug, PartialEq, Eq)]
pub struct Pile {
    /// Its top left cell.
    pub first: Cell,
    /// Its bottom right cell.
    pub last: Cell,
    /// The part of the wall from which it is taken, by its place in the list, and the one to which it goes.
    pub from: usize,
    /// The part to which it goes.
    pub to: usize,
}

impl Pile {
    /// Number of its squares.
    #[must_use]
    pub fn count(&self) -> usize {
        (self.last.row - self.first.row + 1) * (self.last.column - self.first.column + 1)
    }

    /// Its cells in the order in which they go up: the lowest row first, each row from the left. They come down in the opposite order.
    pub fn going_up(&self) -> impl DoubleEndedIterator<Item = Cell> + use<> {
        let Self { first, last, .. } = *self;
        let row = move |row| (first.column..=last.column).map(move |column| Cell { row, column });
        (first.row..=last.row).rev().flat_map(row)
    }
}

/// The piles of a wall that hangs in some parts today and will hang in others, in the order in which they go up: part by part, the
/// lowest rows first. Both lists of parts have every cell once.
#[must_use]
pub fn piles(today: &[WallPart], there: &[WallPart]) -> Vec<Pile> {
    let mut piles = Vec::new();
    for (to, new) in there.iter().enumerate() {
        let mut own: Vec<Pile> = Vec::new();
        for (from, old) in today.iter().enumerate() {
            own.extend(shared(old, new).into_iter().flat_map(|(first, last)| in_rows(first, last, from, to)));
        }
        own.sort_by_key(|pile| (usize::MAX - pile.last.row, pile.first.column));
        piles.extend(own);
    }
    piles
}

/// The piles by their place in the list, in the order in which they come down: part by part, the highest rows first.
#[must_use]
pub fn coming_down(piles: &[Pile]) -> Vec<usize> {
    let mut order: Vec<usize> = (0..piles.len()).collect();
    order.sort_by_key(|at| {
        let Pile { from, first, .. } = piles[*at];
        (from, first.row, first.column)
    });
    order
}

/// The corners of the rectangle that two parts share.
fn shared(one: &WallPart, other: &WallPart) -> Option<(Cell, Cell)> {
    let first =
        Cell { row: one.first.row.max(other.first.row), column: one.first.column.max(other.first.column) };
    let last = Cell { row: one.last.row.min(other.last.row), column: one.last.column.min(other.last.column) };
    (first.row <= last.row && first.column <= last.column).then_some((first, last))
}

/// A rectangle as piles of whole rows, about as many in each.
fn in_rows(first: Cell, last: Cell, from: usize, to: usize) -> impl Iterator<Item = Pile> {
    let (rows, columns) = (last.row - first.row + 1, last.column - first.column + 1);
    let most = (MOST_IN_A_PILE / columns).clamp(1, rows);
    let high = rows.div_ceil(rows.div_ceil(most));
    (first.row..=last.row).step_by(high).map(move |top| Pile {
        first: Cell { row: top, column: first.column },
        last: Cell { row: (top + high - 1).min(last.row), column: last.column },
        from,
        to,
    })
}

/// The parts of a wall, or all of it where it hangs in one piece, with its lower edge `hang_mm` over the floor.
#[must_use]
pub fn parts_of(parts: &[WallPart], grid: &Grid, hang_mm: f64) -> Vec<WallPart> {
    if parts.is_empty() { vec![WallPart::whole(grid, hang_mm)] } else { parts.to_vec() }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plan::boards;
    use proptest::prelude::*;

    /// Parts of a grid, cut after some columns.
    fn cut(grid: &Grid, cuts: &[usize]) -> Vec<WallPart> {
        let mut edges: Vec<usize> =
            cuts.iter().map(|cut| cut % grid.columns).chain([0, grid.columns]).collect();
        edges.sort_unstable();
        edges.dedup();
        let widths: Vec<usize> = edges.windows(2).map(|pair| pair[1] - pair[0]).collect();
        boards::parts(grid, &widths)
    }

    proptest! {
        #[test]
        fn every_square_lies_in_one_pile_that_comes_from_one_part_and_goes_to_one(
            columns in 1_usize..50,
            rows in 1_usize..30,
            cuts in prop::collection::vec(0_usize..50, 0..4),
            others in prop::collection::vec(0_usize..50, 0..4),
        ) {
            let grid = Grid::usual(columns, rows);
            let (today, there) = (cut(&grid, &cuts), cut(&grid, &others));
            let piles = piles(&today, &there);
            let mut seen: Vec<Cell> = piles.iter().flat_map(Pile::going_up).collect();
            seen.sort_unstable();
            prop_assert_eq!(seen, grid.cells().collect::<Vec<_>>());
            for pile in &piles {
                prop_assert!(pile.going_up().all(|cell| today[pile.from].holds(cell) && there[pile.to].holds(cell)));
                prop_assert!(pile.count() <= MOST_IN_A_PILE || pile.first.row == pile.last.row);
            }
            let mut down = coming_down(&piles);
            // nothing comes down below something of its own columns that still hangs on the same part
            for (at, later) in down.iter().enumerate() {
                for before in &down[..at] {
                    let (later, before) = (&piles[*later], &piles[*before]);
                    prop_assert!(later.from != before.from || later.first.row >= before.first.row);
                }
            }
            down.sort_unstable();
            prop_assert!(down.into_iter().eq(0..piles.len()));
        }
    }

    #[test]
    fn what_comes_down_last_goes_up_first() {
        let grid = Grid::usual(10, 8);
        let today = parts_of(&[], &grid, 800.0);
        let piles = piles(&today, &boards::parts(&grid, &[6, 4]));
        // 6 × 8 squares are too many for one pile
        assert_eq!(piles.iter().map(Pile::count).collect::<Vec<_>>(), [24, 24, 32]);
        let labels: Vec<String> = piles[2].going_up().map(|cell| grid.label(cell)).collect();
        assert_eq!((labels[0].as_str(), labels[4].as_str(), labels[31].as_str()), ("G1", "G2", "J8"));
        assert_eq!(grid.label(piles[0].going_up().next().unwrap()), "A1");
        assert_eq!(coming_down(&piles), [1, 2, 0]);
    }
}
