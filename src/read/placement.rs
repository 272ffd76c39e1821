//! Placement: which cell is which, when only squares show the lattice.
//!
//! The lattice has a top left code and an upright of its own. Four turns and a shift lead from it to the
//! wall; what the squares *say* votes for one of them, and so do cards that are in sight. Squares that all
//! hang in wrong places still vote with their uprights, and a lattice as large as the wall fits in one place
//! only.

use std::cmp::Reverse;
use std::collections::BTreeMap;

use super::place::{Site, site_of, whole};
use crate::frame::{Map, Point, WallMm};
use crate::plan::{Cell, Grid, Turn};

/// Vote of a square seen at a place of the floating lattice.
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct Vote {
    /// Place in the lattice where it hangs.
    pub site: Site,
    /// Turn against the lattice.
    pub turn: Turn,
    /// Cell where it belongs, if its code was named.
    pub home: Option<Cell>,
}

/// Placing of a floating lattice on the wall: quarter turns clockwise about the origin cell (0, 0), then a
/// shift by cells.
#[derive(Copy, Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Placing {
    /// Quarter turns clockwise.
    pub turn: Turn,
    /// Shift to the right, in columns.
    pub right: i64,
    /// Shift down, in rows.
    pub down: i64,
}

impl Placing {
    /// Place on the wall of a place in the lattice.
    #[must_use]
    pub fn site(&self, from: Site) -> Site {
        turned(from, self.turn).step(self.right, self.down)
    }

    /// Turn on the wall of a square that has turn `from` in the lattice.
    #[must_use]
    pub fn turn(&self, from: Turn) -> Turn {
        Turn::from_quarters(from.quarters() + self.turn.quarters())
    }

    /// Map from the wall to the floating lattice with cells of this side, in mm.
    #[must_use]
    pub fn wall_to_lattice(&self, side: f64) -> Map<WallMm, WallMm> {
        let middle = Point::new(side / 2.0, side / 2.0);
        let shift = Map::scale_then_shift(1.0, -whole(self.right) * side, -whole(self.down) * side);
        shift.then(&Map::quarter_turns(4 - self.turn.quarters(), middle))
    }
}

/// Place of a cell after quarter turns clockwise about the middle of cell (0, 0).
fn turned(site: Site, turn: Turn) -> Site {
    let Site { row, column } = site;
    match turn {
        Turn::None => site,
        Turn::Quarter => Site { row: column, column: -row },
        Turn::Half => Site { row: -row, column: -column },
        Turn::ThreeQuarters => Site { row: -column, column: row },
    }
}

/// Weight of a square that would hang upright, where one in its own cell has 1: a turned square is the
/// exception.
const UPRIGHT: f64 = 0.6;

/// Placing with the most votes; `None` where the runner-up has about as many, or none fits the wall.
///
/// `cards` rates what the cards in sight say for a placing, in votes.
#[must_use]
pub fn resolve(grid: &Grid, votes: &[Vote], cards: impl Fn(&Placing) -> f64) -> Option<Placing> {
    let mut rated: Vec<(f64, Placing)> =
        candidates(grid, votes).into_iter().map(|p| (rate(votes, &p) + cards(&p), p)).collect();
    rated.sort_by(|a, b| b.0.total_cmp(&a.0).then(a.1.cmp(&b.1)));
    let (first, best) = *rated.first()?;
    let second = rated.get(1).map_or(f64::NEG_INFINITY, |(rating, _)| *rating);
    let sure = first - second >= 1.0 && first > 0.0;
    // where squares hang in each other's places, a few at home in a wrong placing are chance
    let other = rated.iter().filter(|(_, p)| p.turn == best.turn).nth(1);
    let chance = other.is_some_and(|(rating, _)| {
        let lead = first - rating;
        lead < NO_CHANCE && lead < MOSTLY * crate::frame::float(votes.len())
    });
    (sure && !chance).then_some(best)
}

/// Placing that most squares at home agree on, though others would then hang beyond the wall's edges: they belong to another part of it, on
/// a board of its own. `None` where too few agree, or others speak for another placing.
#[must_use]
pub fn resolve_part(grid: &Grid, votes: &[Vote]) -> Option<Placing> {
    let mut counted: BTreeMap<Placing, usize> = BTreeMap::new();
    for placing in votes.iter().filter_map(at_home_by) {
        *counted.entry(placing).or_default() += 1;
    }
    let (best, most) = counted.iter().max_by_key(|(placing, count)| (**count, Reverse(**placing)))?;
    let second = counted.iter().filter(|(placing, _)| *placing != best).map(|(_, count)| *count).max();
    let lead = crate::frame::float(most - second.unwrap_or(0));
    let on_wall: Vec<Vote> = votes.iter().filter(|vote| is_on(grid, best.site(vote.site))).copied().collect();
    let agree = resolve(grid, &on_wall, |_| 0.0) == Some(*best);
    (lead >= NO_CHANCE && agree).then_some(*best)
}

/// The placing in which a square hangs upright where it belongs.
fn at_home_by(vote: &Vote) -> Option<Placing> {
    let (home, turn) = (site_of(vote.home?), Turn::from_quarters(4 - vote.turn.quarters()));
    let from = turned(vote.site, turn);
    Some(Placing { turn, right: home.column - from.column, down: home.row - from.row })
}

fn is_on(grid: &Grid, site: Site) -> bool {
    let within = |at: i64, count: usize| usize::try_from(at).is_ok_and(|at| at < count);
    within(site.row, grid.rows) && within(site.column, grid.columns)
}

/// Minimum lead in votes over the runner-up with the same turn, however many squares are seen. This or
/// [`MOSTLY`] suffices.
const NO_CHANCE: f64 = 4.0;
/// Minimum lead in votes over the runner-up with the same turn, as a share of all squares seen, however few.
const MOSTLY: f64 = 0.4;

/// Candidates: all placings that keep every square on the wall.
fn candidates(grid: &Grid, votes: &[Vote]) -> Vec<Placing> {
    let (columns, rows) =
        (i64::try_from(grid.columns).unwrap_or(i64::MAX), i64::try_from(grid.rows).unwrap_or(i64::MAX));
    let mut all = Vec::new();
    for turn in Turn::ALL {
        let sites: Vec<Site> = votes.iter().map(|v| turned(v.site, turn)).collect();
        let least = |of: fn(&Site) -> i64| sites.iter().map(of).min().unwrap_or(0);
        let most = |of: fn(&Site) -> i64| sites.iter().map(of).max().unwrap_or(0);
        let (left, right) = (-least(|s| s.column), columns - 1 - most(|s| s.column));
        let (up, down) = (-least(|s| s.row), rows - 1 - most(|s| s.row));
        for right in left..=right {
            all.extend((up..=down).map(|down| Placing { turn, right, down }));
        }
    }
    all
}

fn rate(votes: &[Vote], placing: &Placing) -> f64 {
    let at_home = |vote: &&Vote| {
        let Site { row, column } = placing.site(vote.site);
        vote.home.is_some_and(|home| {
            i64::try_from(home.row) == Ok(row) && i64::try_from(home.column) == Ok(column)
        })
    };
    let upright = votes.iter().filter(|vote| placing.turn(vote.turn) == Turn::None).count();
    let home = votes.iter().filter(at_home).count();
    crate::frame::float(home) + UPRIGHT * crate::frame::float(upright)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    const GRID: Grid = Grid::usual(6, 4);

    /// What a lattice shows of squares at these cells of the wall, when `placing` leads back to the wall.
    fn votes(placing: &Placing, squares: &[(Cell, Cell, Turn)]) -> Vec<Vote> {
        let back = Turn::from_quarters(4 - placing.turn.quarters());
        squares
            .iter()
            .map(|(cell, home, turn)| {
                let whole = |n: usize| i64::try_from(n).unwrap();
                let wall =
                    Site { row: whole(cell.row) - placing.down, column: whole(cell.column) - placing.right };
                let turn = Turn::from_quarters(turn.quarters() + back.quarters());
                Vote { site: turned(wall, back), turn, home: Some(*home) }
            })
            .collect()
    }

    fn placing(quarters: u32, right: i64, down: i64) -> Placing {
        Placing { turn: Turn::from_quarters(quarters), right, down }
    }

    proptest! {
        #[test]
        fn squares_in_their_cells_say_where_the_lattice_belongs(
            quarters in 0_u32..4, right in -9_i64..9, down in -9_i64..9, first in 0_usize..12, count in 3_usize..12,
        ) {
            let cells: Vec<Cell> = GRID.cells().skip(first).take(count).collect();
            let squares: Vec<_> = cells.iter().map(|c| (*c, *c, Turn::None)).collect();
            let truth = placing(quarters, right, down);
            prop_assert_eq!(resolve(&GRID, &votes(&truth, &squares), |_| 0.0), Some(truth));
        }

        #[test]
        fn a_whole_wall_of_misplaced_squares_fits_in_one_place(quarters in 0_u32..4, right in -9_i64..9, down in -9_i64..9, by in 1_usize..24) {
            let cells: Vec<Cell> = GRID.cells().collect();
            let squares: Vec<_> =
                cells.iter().enumerate().map(|(i, c)| (*c, cells[(i + by) % cells.len()], Turn::None)).collect();
            let truth = placing(quarters, right, down);
            prop_assert_eq!(resolve(&GRID, &votes(&truth, &squares), |_| 0.0), Some(truth));
        }

        #[test]
        fn the_way_there_and_the_map_back_agree(quarters in 0_u32..4, right in -9_i64..9, down in -9_i64..9, row in -5_i64..5, column in -5_i64..5) {
            let placing = placing(quarters, right, down);
            let side = 127.0;
            let middle = |s: Site| Point::<WallMm>::new((whole(s.column) + 0.5) * side, (whole(s.row) + 0.5) * side);
            let site = Site { row, column };
            let back = placing.wall_to_lattice(side).apply(middle(placing.site(site)));
            prop_assert!(back.distance(middle(site)).value() < 1e-9);
        }
    }

    #[test]
    fn squares_of_another_board_do_not_hide_where_this_one_belongs() {
        let cell = |row, column| Cell { row, column };
        let squares: Vec<_> = (0..4).flat_map(|row| [0, 1, 2].map(|column| cell(row, column))).collect();
        let mut seen =
            votes(&placing(0, 0, 0), &squares.iter().map(|c| (*c, *c, Turn::None)).collect::<Vec<_>>());
        // E1 and E2 hang on a board that happens to stand five columns farther on
        let beyond = |row: usize| Vote {
            site: Site { row: whole_of(row), column: 9 },
            turn: Turn::None,
            home: Some(cell(row, 4)),
        };
        seen.extend([beyond(2), beyond(3)]);
        assert_eq!(resolve(&GRID, &seen, |_| 0.0), None);
        assert_eq!(resolve_part(&GRID, &seen), Some(placing(0, 0, 0)));
        assert_eq!(resolve_part(&GRID, &seen[11..]), None);
    }

    fn whole_of(n: usize) -> i64 {
        i64::try_from(n).unwrap()
    }

    #[test]
    fn a_few_misplaced_squares_say_nothing() {
        let cell = |row, column| Cell { row, column };
        let squares = [(cell(0, 0), cell(3, 2), Turn::None), (cell(0, 1), cell(2, 5), Turn::None)];
        assert_eq!(resolve(&GRID, &votes(&placing(0, 0, 0), &squares), |_| 0.0), None);
        assert_eq!(resolve(&GRID, &[], |_| 0.0), None);
    }
}
