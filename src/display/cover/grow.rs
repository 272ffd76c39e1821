//! Region growing: the tiles that a person hides.
//!
//! These look like nothing of the wall's own and reach in from outside, or from a group of cells that could
//! not be read.
//!
//! A freely drawn square has tiles that look like nothing of its own too. They are left alone unless somebody
//! was found: such a tile counts only where it is connected through such tiles to where somebody surely
//! stands.

use std::cell::OnceCell;

use crate::frame::float;
use crate::plan::{Cell, Grid, Printed};
use crate::read::{PhotoReading, Sight};

use super::looks::{Looks, PAPER, away};
use super::{Expected, TILES, is_code, is_hidden, turned};

/// Printer's black; cards lie between it and paper.
const BLACK: [u8; 3] = [33; 3];
/// Maximum distance, in levels, of a tile from the line between paper and the expected colour: pencils are pressed lightly and
/// strokes leave gaps, so a drawing lies between the two, and a cheap pencil has another tone.
const OWN: f64 = 52.0;
/// Radius, in tiles, within which a tile's expected colour may be found: hands shift what they draw by a tenth of a square.
const REACH: usize = 2;
/// Maximum distance from paper, in levels, of a tile that is not drawn on; it is no person's unless everything around should be darker …
const UNDRAWN: f64 = 30.0;
/// Minimum distance from paper of a colour that should cover its tile, in levels.
const FULL: f64 = 110.0;
/// Minimum share of foreign tiles in an unread cell that has somebody before it, where a neighbour has too.
const HIDDEN: f64 = 0.5;
/// Minimum share of foreign tiles in an unread cell that is passed through as a whole.
const PASSED: f64 = 0.1;
/// Minimum number of tiles on the wall itself that make somebody: a quarter of a square. Less is an arm's shadow, a strip of tape.
const SOMEONE: usize = TILES * TILES / 4;
/// Maximum covered share of a read square; beyond it all of it is covered.
const MOSTLY: f64 = 0.45;
/// Maximum size of a hole, in tiles, that is covered too: white stripes, a face as pale as paper.
const HOLE: usize = TILES * TILES;

/// Minimum share of a bare cell's side along which it must touch what is covered, to be doubted.
const TOUCHING: f64 = 0.3;
/// Number of bare cells in a row from somebody that are doubted: a shirt is two or three squares wide.
const DOUBTED: usize = 3;

/// Whether each tile, row by row, is hidden by a person; and whether there is somebody.
pub(super) fn grow(
    looks: &Looks,
    reading: &PhotoReading,
    printed: &Printed,
    expected: &(dyn Fn() -> Option<Expected> + Sync),
) -> (Vec<bool>, bool) {
    let growing = Growing {
        looks,
        grid: printed.grid,
        sights: sights(reading, &printed.grid),
        printed,
        asked: OnceCell::new(),
        expected,
    };
    let nobody = || (vec![false; looks.colours.len()], false);
    let seeds = growing.seeds();
    if seeds.is_empty() {
        return nobody();
    }
    let (grown, on_wall) = growing.flood(seeds);
    if on_wall < SOMEONE {
        return nobody();
    }
    let mut covered = growing.widened(&grown);
    growing.fill_holes(&mut covered);
    growing.fill_squares(&mut covered);
    growing.fill_bare(&mut covered);
    growing.fill_rim(&mut covered);
    (covered, true)
}

/// Sights of the cells, row by row.
fn sights(reading: &PhotoReading, grid: &Grid) -> Vec<Sight> {
    let mut sights = vec![Sight::Unseen; grid.count()];
    for cell in reading.cells.iter().filter(|cell| grid.holds(cell.cell)) {
        sights[grid.index(cell.cell)] = cell.sight.clone();
    }
    sights
}

struct Growing<'a> {
    looks: &'a Looks,
    grid: Grid,
    sights: Vec<Sight>,
    printed: &'a Printed,
    asked: OnceCell<Option<Expected>>,
    expected: &'a (dyn Fn() -> Option<Expected> + Sync),
}

impl Growing<'_> {
    /// Seeds: foreign tiles where somebody surely is.
    ///
    /// At the outer edge of what is seen, and in cells of which two beside each other are hidden.
    fn seeds(&self) -> Vec<usize> {
        let tiles = self.looks.tiles;
        let edge = (0..tiles.count()).filter(|tile| tiles.cell(*tile).is_none() && self.is_edge(*tile));
        let mut seeds: Vec<usize> = edge.filter(|tile| self.is_foreign(*tile)).collect();
        let hidden: Vec<Cell> = self.grid.cells().filter(|cell| self.may_hide(*cell)).collect();
        let beside = |one: &Cell, other: &Cell| {
            one != other && one.row.abs_diff(other.row) <= 1 && one.column.abs_diff(other.column) <= 1
        };
        let paired = |cell: &Cell| hidden.iter().any(|other| beside(cell, other));
        let paired: Vec<Cell> = hidden.iter().copied().filter(paired).collect();
        let foreign: Vec<(Cell, Vec<usize>)> = (paired.into_iter())
            .map(|cell| (cell, tiles.of_cell(cell).filter(|tile| self.is_foreign(*tile)).collect::<Vec<_>>()))
            .filter(|(_, foreign)| float(foreign.len()) >= HIDDEN * float(TILES * TILES))
            .collect();
        for (cell, own) in &foreign {
            if foreign.iter().any(|(other, _)| beside(cell, other)) {
                seeds.extend(own);
            }
        }
        seeds
    }

    /// Whether a cell was not read though it is in the photo.
    fn may_hide(&self, cell: Cell) -> bool {
        let seen = || self.looks.tiles.of_cell(cell).any(|tile| self.looks.colours[tile].is_some());
        is_hidden(&self.sights[self.grid.index(cell)]) && seen()
    }

    /// Whether a tile that is seen has none that is seen on one side.
    fn is_edge(&self, tile: usize) -> bool {
        self.looks.colours[tile].is_some()
            && (self.beside(tile).count() < 4
                || self.beside(tile).any(|other| self.looks.colours[other].is_none()))
    }

    /// 4-neighbours of a tile.
    fn beside(&self, tile: usize) -> impl Iterator<Item = usize> + use<> {
        let tiles = self.looks.tiles;
        let (x, y, columns) = (tile % tiles.columns, tile / tiles.columns, tiles.columns);
        let places = [
            (x > 0).then(|| tile - 1),
            (x + 1 < columns).then(|| tile + 1),
            (y > 0).then(|| tile - columns),
            (y + 1 < tiles.rows).then(|| tile + columns),
        ];
        places.into_iter().flatten()
    }

    /// Flood fill: everything foreign that is connected with the seeds, and its number of tiles on the wall
    /// itself.
    ///
    /// An unread cell is passed through as a whole where somebody reaches into it: it is covered in any case,
    /// and a sleeve over a drawing of its own colour would end the way.
    fn flood(&self, seeds: Vec<usize>) -> (Vec<bool>, usize) {
        let mut grown = vec![false; self.looks.tiles.count()];
        let mut asked = grown.clone();
        let mut open = seeds;
        open.iter().for_each(|seed| (grown[*seed], asked[*seed]) = (true, true));
        let mut on_wall = 0;
        let mut passed = vec![false; self.grid.count()];
        while let Some(tile) = open.pop() {
            if let Some((cell, ..)) = self.looks.tiles.cell(tile) {
                on_wall += usize::from(self.is_foreign(tile));
                let place = self.grid.index(cell);
                if is_hidden(&self.sights[place]) && !std::mem::replace(&mut passed[place], true) {
                    open.extend(self.reached(cell, &mut grown, &mut asked));
                }
            }
            for other in self.beside(tile) {
                if !std::mem::replace(&mut asked[other], true) && self.is_foreign(other) {
                    grown[other] = true;
                    open.push(other);
                }
            }
        }
        (grown, on_wall)
    }

    /// Tiles of an unread cell that were not grown yet, now grown, where enough of them are foreign.
    fn reached(&self, cell: Cell, grown: &mut [bool], asked: &mut [bool]) -> Vec<usize> {
        let own: Vec<usize> = self.looks.tiles.of_cell(cell).collect();
        if float(own.iter().filter(|tile| self.is_foreign(**tile)).count()) < PASSED * float(TILES * TILES) {
            return Vec::new();
        }
        let fresh: Vec<usize> = own.into_iter().filter(|tile| !grown[*tile]).collect();
        fresh.iter().for_each(|tile| (grown[*tile], asked[*tile]) = (true, true));
        fresh
    }

    /// Whether a tile looks like nothing that belongs there.
    fn is_foreign(&self, tile: usize) -> bool {
        let Some(colour) = self.looks.colours[tile] else { return false };
        let tiles = self.looks.tiles;
        let Some((cell, column, row)) = tiles.cell(tile) else {
            let grey = self.looks.cards[tile] && away_from_line(colour, PAPER, BLACK) <= OWN;
            return !grey && !self.looks.is_backing(colour);
        };
        match &self.sights[self.grid.index(cell)] {
            Sight::Stranger { .. } => false,
            Sight::Empty => !self.looks.is_backing(colour),
            Sight::Square { home, turn } => {
                let quarters = (4 - turn.quarters()) % 4;
                self.is_not_drawn(*home, turned((column, row), quarters), colour, true)
            }
            // nothing says which square it is; nearly always its own
            Sight::Unread | Sight::Unseen => self.is_not_drawn(cell, (column, row), colour, false),
        }
    }

    /// Whether a drawing of a piece has no such colour there: none between paper and a colour that is
    /// expected nearby.
    fn is_not_drawn(&self, home: Cell, (column, row): (usize, usize), colour: [u8; 3], read: bool) -> bool {
        let Some(expected) = self.asked.get_or_init(|| (self.expected)()) else { return !read };
        if read && is_code(self.printed, self.looks.tiles.side_mm, column, row) {
            return false;
        }
        let at_edge = [column, row].iter().any(|at| *at == 0 || *at + 1 == TILES);
        if at_edge && self.looks.is_backing(colour) {
            return false;
        }
        let near = |at: usize| at.saturating_sub(REACH)..(at + REACH + 1).min(TILES);
        let home = self.grid.index(home);
        let wanted = || near(row).flat_map(|y| near(column).map(move |x| expected.at(home, x, y)));
        if away(colour, PAPER) < UNDRAWN {
            return wanted().all(|wanted| away(wanted, PAPER) > FULL);
        }
        wanted().all(|wanted| away_from_line(colour, PAPER, wanted) > OWN)
    }

    /// The grown tiles and all around them: what a tile's mean hides stands at a person's edge.
    fn widened(&self, grown: &[bool]) -> Vec<bool> {
        let tiles = self.looks.tiles;
        let mut wide = grown.to_vec();
        for tile in (0..grown.len()).filter(|tile| grown[*tile]) {
            for side in self.beside(tile) {
                wide[side] = true;
                // the corners lie beside what is above and below
                if side.abs_diff(tile) == tiles.columns {
                    self.beside(side)
                        .filter(|corner| corner.abs_diff(side) == 1)
                        .for_each(|corner| wide[corner] = true);
                }
            }
        }
        wide
    }

    /// Covers holes of at most [`HOLE`] tiles.
    fn fill_holes(&self, covered: &mut [bool]) {
        let mut asked = covered.to_vec();
        for first in 0..covered.len() {
            if std::mem::replace(&mut asked[first], true) {
                continue;
            }
            let mut hole = vec![first];
            let mut next = 0;
            while let Some(tile) = hole.get(next).copied() {
                next += 1;
                for other in self.beside(tile) {
                    if !std::mem::replace(&mut asked[other], true) {
                        hole.push(other);
                    }
                }
            }
            if hole.len() <= HOLE {
                hole.iter().for_each(|tile| covered[*tile] = true);
            }
        }
    }

    /// Covers cells that seem bare beside somebody: a plain shirt in the wall's own colour looks like the wall.
    fn fill_bare(&self, covered: &mut [bool]) {
        for _ in 0..DOUBTED {
            let before = covered.to_vec();
            let bare = self.grid.cells().filter(|cell| self.sights[self.grid.index(*cell)] == Sight::Empty);
            for cell in bare {
                let own: Vec<usize> = self.looks.tiles.of_cell(cell).collect();
                let touches = |tile: &&usize| {
                    before[**tile]
                        || self
                            .beside(**tile)
                            .any(|other| self.looks.tiles.cell(other).is_some() && before[other])
                };
                if float(own.iter().filter(touches).count()) >= TOUCHING * float(TILES) {
                    own.iter().for_each(|tile| covered[*tile] = true);
                }
            }
        }
    }

    /// Covers the rim beside cells that are covered as a whole, except cards in sight.
    fn fill_rim(&self, covered: &mut [bool]) {
        let tiles = self.looks.tiles;
        let hidden = |cell: Cell| {
            self.may_hide(cell) || tiles.of_cell(cell).filter(|tile| covered[*tile]).count() == TILES * TILES
        };
        let hidden: Vec<bool> = self.grid.cells().map(hidden).collect();
        for tile in (0..covered.len()).filter(|tile| tiles.cell(*tile).is_none()) {
            let cell = tiles.nearest(tile % tiles.columns, tile / tiles.columns);
            covered[tile] |= hidden[self.grid.index(cell)] && !self.looks.cards[tile];
        }
    }

    /// Covers as a whole the squares of which more than [`MOSTLY`] is covered.
    fn fill_squares(&self, covered: &mut [bool]) {
        for cell in self.grid.cells() {
            let tiles: Vec<usize> = self.looks.tiles.of_cell(cell).collect();
            let own = tiles.iter().filter(|tile| covered[**tile]).count();
            if float(own) > MOSTLY * float(TILES * TILES) {
                tiles.iter().for_each(|tile| covered[*tile] = true);
            }
        }
    }
}

/// The distance of a colour from the line between two others, a fifth beyond the far end included: pencils are pressed hard too.
fn away_from_line(colour: [u8; 3], from: [u8; 3], to: [u8; 3]) -> f64 {
    let part = |of: [u8; 3]| [0, 1, 2].map(|i| f64::from(of[i]) - f64::from(from[i]));
    let (at, line) = (part(colour), part(to));
    let dot = |a: [f64; 3], b: [f64; 3]| a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    let long = dot(line, line);
    let along = if long > 0.0 { (dot(at, line) / long).clamp(0.0, 1.2) } else { 0.0 };
    let miss = [0, 1, 2].map(|i| at[i] - along * line[i]);
    dot(miss, miss).sqrt()
}
