//! Judgement of squares that lie anywhere: which of an event's are there, which are not, which lie there twice.
//!
//! Of several photos each square counts once: the same paper may be in two of them. In one photo two of a kind are two.

use std::collections::{BTreeMap, BTreeSet};

use crate::plan::{Cell, Grid};

/// Squares of an event in photos of a table or a floor.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Found {
    /// Squares that were seen, by the cell where they belong; sorted.
    pub here: Vec<Cell>,
    /// Squares that were not, without those that the picture does not ask for; sorted.
    pub lacking: Vec<Cell>,
    /// Squares of which one photo shows two or more; sorted.
    pub twice: Vec<Cell>,
}

impl Found {
    /// Squares of a wall, from those that each photo shows.
    #[must_use]
    pub fn of(photos: &[Vec<Cell>], grid: &Grid) -> Self {
        let mut most: BTreeMap<Cell, usize> = BTreeMap::new();
        for photo in photos {
            let mut own: BTreeMap<Cell, usize> = BTreeMap::new();
            for home in photo.iter().filter(|home| grid.holds(**home)) {
                *own.entry(*home).or_default() += 1;
            }
            for (home, count) in own {
                let known = most.entry(home).or_default();
                *known = count.max(*known);
            }
        }
        let lacking = grid.cells().filter(|cell| !most.contains_key(cell) && grid.asks_for(*cell)).collect();
        let twice = most.iter().filter(|(_, count)| **count > 1).map(|(home, _)| *home).collect();
        Self { here: most.into_keys().collect(), lacking, twice }
    }

    /// Squares that lie here and do not hang, where it is known which do.
    #[must_use]
    pub fn waiting(&self, up: &BTreeSet<Cell>) -> Vec<Cell> {
        self.here.iter().copied().filter(|home| !up.contains(home)).collect()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn every_square_is_here_or_lacking_and_a_paper_in_two_photos_is_one(
            photos in prop::collection::vec(prop::collection::vec(0_usize..12, 0..20), 0..4),
        ) {
            let grid = Grid::usual(4, 3);
            let cells: Vec<Cell> = grid.cells().collect();
            let photos: Vec<Vec<Cell>> = photos.iter().map(|own| own.iter().map(|n| cells[*n]).collect()).collect();
            let found = Found::of(&photos, &grid);
            prop_assert_eq!(found.here.len() + found.lacking.len(), 12);
            for cell in &cells {
                let times = photos.iter().map(|own| own.iter().filter(|home| *home == cell).count());
                let most = times.max().unwrap_or(0);
                prop_assert_eq!(found.here.contains(cell), most > 0);
                prop_assert_eq!(found.lacking.contains(cell), most == 0);
                prop_assert_eq!(found.twice.contains(cell), most > 1);
            }
        }
    }

    #[test]
    fn what_hangs_does_not_wait_and_a_border_lacks_nothing() {
        let grid = Grid::usual(4, 3).with_border();
        let cells: Vec<Cell> = grid.cells().filter(|cell| !grid.in_border(*cell)).collect();
        let found = Found::of(&[vec![cells[0], cells[1]]], &grid);
        assert_eq!(found.lacking.len(), cells.len() - 2);
        assert_eq!(found.waiting(&BTreeSet::from([cells[1]])), [cells[0]]);
    }
}
