//! Boards: a wall that has to hang on several places beside each other, cut where the fewest outlines cross.
//!
//! ```text
//!   "4x6ft, door, 5x6ft"  ─▶  two boards that take 9 and 12 columns  ─▶  the cut, exact over all that fit
//! ```

use super::cell::{Cell, Grid};
use super::settings::{Room, WallPart};
use crate::frame::floor_index;

/// Maximum number of boards: a corridor with more is named in parts by hand.
pub const MOST_BOARDS: usize = 12;
/// Columns that make a part worth a board, where the wall can be cut so.
const NARROW: usize = 3;
/// A length that is the last bits of a sum, in mm.
const ROUNDING_MM: f64 = 1e-6;

/// Places beside each other, as somebody writes them: sizes, and words for what is between them, separated by commas.
///
/// ```
/// use everysquare::plan::boards::read;
/// let boards = read("4x6ft, door, 5x6ft").unwrap();
/// assert_eq!(boards.len(), 2);
/// assert_eq!(boards[1].width_mm, 1524.0);
/// assert!(read("door").is_none());
/// ```
#[must_use]
pub fn read(written: &str) -> Option<Vec<Room>> {
    // with a decimal comma it is one
    if let Some(room) = Room::read(written) {
        return Some(vec![room]);
    }
    let mut boards = Vec::new();
    for item in written.split(',').map(str::trim) {
        match Room::read(item) {
            Some(room) => boards.push(room),
            // a size that is out of range or mistyped is no door
            None if item.is_empty() || item.contains(|c: char| c.is_ascii_digit()) => return None,
            None => {}
        }
    }
    (1..=MOST_BOARDS).contains(&boards.len()).then_some(boards)
}

/// Number of columns that a board takes; 0 where it is too low for the rows.
#[must_use]
pub fn columns_of(grid: &Grid, board: Room) -> usize {
    if board.holds(0.0, grid.size().y) {
        floor_index((board.width_mm + ROUNDING_MM) / grid.square_mm)
    } else {
        0
    }
}

/// Number of columns that each board gets of a wall of `columns`, where they take at most so many each, from left to right, so that the
/// fewest outlines cross; `crossing[i]` of them cross the edge between columns `i` and `i + 1`. A board may stay bare. `None` where they
/// take too few together. No part is narrower than three columns where that can be; of equals fewer boards are used, then those
/// farther left.
#[must_use]
pub fn cut(columns: usize, boards: &[usize], crossing: &[usize]) -> Option<Vec<usize>> {
    (1..=NARROW).rev().find_map(|least| cut_wider(columns, boards, crossing, least))
}

/// The same with parts of at least `least` columns.
///
/// Exact: the best way to hang the first so many columns on the first so many boards is worked out from the ways before it.
fn cut_wider(columns: usize, boards: &[usize], crossing: &[usize], least: usize) -> Option<Vec<usize>> {
    // cost, boards used, and how many columns each board takes
    type Best = Option<(usize, usize, Vec<usize>)>;
    let mut best: Vec<Best> = vec![None; columns + 1];
    best[0] = Some((0, 0, Vec::new()));
    for most in boards {
        let mut next: Vec<Best> = vec![None; columns + 1];
        for (hung, before) in best.iter().enumerate().rev() {
            let Some((cost, used, widths)) = before else { continue };
            let widest = (*most).min(columns - hung);
            for width in std::iter::once(0).chain(least..=widest) {
                let is_cut = width > 0 && hung > 0;
                let more = if is_cut { crossing.get(hung - 1).copied().unwrap_or(0) } else { 0 };
                let (cost, used) = (cost + more, used + usize::from(width > 0));
                let place = &mut next[hung + width];
                if place.as_ref().is_none_or(|(lowest, fewest, _)| (cost, used) < (*lowest, *fewest)) {
                    let mut widths = widths.clone();
                    widths.push(width);
                    *place = Some((cost, used, widths));
                }
            }
        }
        best = next;
    }
    best.pop().flatten().map(|(_, _, widths)| widths)
}

/// The parts of a wall on boards that take so many columns each; boards that stay bare have none.
#[must_use]
pub fn parts(grid: &Grid, widths: &[usize]) -> Vec<WallPart> {
    let mut left = 0;
    let mut parts = Vec::new();
    for width in widths {
        if *width > 0 {
            parts.push(WallPart {
                first: Cell { row: 0, column: left },
                last: Cell { row: grid.rows - 1, column: left + width - 1 },
                place: None,
                bottom_mm: None,
                board: None,
            });
        }
        left += width;
    }
    parts
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    /// The least cost over all ways, each tried.
    fn by_trying(
        columns: usize,
        boards: &[usize],
        crossing: &[usize],
        least: usize,
        hung: usize,
    ) -> Option<usize> {
        let Some((most, rest)) = boards.split_first() else { return (hung == columns).then_some(0) };
        let widths = (0..=(*most).min(columns - hung)).filter(|width| *width == 0 || *width >= least);
        let ways = widths.filter_map(|width| {
            let own = if width > 0 && hung > 0 { crossing[hung - 1] } else { 0 };
            Some(own + by_trying(columns, rest, crossing, least, hung + width)?)
        });
        ways.min()
    }

    proptest! {
        #[test]
        fn the_cut_is_the_cheapest_of_all(
            crossing in prop::collection::vec(0_usize..9, 11),
            columns in 1_usize..12,
            boards in prop::collection::vec(0_usize..7, 1..5),
            least in 1_usize..4,
        ) {
            let own = cut_wider(columns, &boards, &crossing, least);
            let tried = by_trying(columns, &boards, &crossing, least, 0);
            prop_assert_eq!(own.is_some(), tried.is_some());
            if let (Some(widths), Some(least)) = (own, tried) {
                prop_assert_eq!(widths.iter().sum::<usize>(), columns);
                prop_assert!(widths.iter().zip(&boards).all(|(width, most)| width <= most));
                let (mut hung, mut cost) = (0, 0);
                for width in widths.iter().filter(|width| **width > 0) {
                    cost += if hung > 0 { crossing[hung - 1] } else { 0 };
                    hung += width;
                }
                prop_assert_eq!(cost, least);
            }
        }
    }

    #[test]
    fn a_wall_is_cut_between_two_boards_where_little_crosses() {
        let crossing = [5, 5, 5, 1, 5, 0, 5];
        assert_eq!(cut(8, &[5, 4], &crossing), Some(vec![4, 4]));
        assert_eq!(cut(8, &[3, 4], &crossing), None);
        // a single column on a board of its own only where there is no other way
        assert_eq!(cut(8, &[8, 4], &[0, 5, 5, 5, 5, 5, 5]), Some(vec![8, 0]));
        assert_eq!(cut(8, &[7, 4], &[5, 5, 5, 4, 5, 5, 0]), Some(vec![4, 4]));
        assert_eq!(cut(8, &[7, 1], &crossing), Some(vec![7, 1]));
        assert_eq!(cut(8, &[8, 8], &crossing), Some(vec![8, 0]));
    }

    #[test]
    fn boards_are_read_and_what_is_no_size_is_refused() {
        assert!(read("4x6ft, 5x").is_none());
        assert!(read("4x6ft,, 5x6ft").is_none());
        assert_eq!(read("1.2x1.8m").map(|boards| boards.len()), Some(1));
        let grid = Grid::usual(10, 8);
        assert_eq!(columns_of(&grid, read("4x6ft").unwrap()[0]), 9);
        assert_eq!(columns_of(&grid, read("4x3ft").unwrap()[0]), 0);
    }
}
