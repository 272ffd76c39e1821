//! Squares of the event away from the lattice of the wall: on another board, beyond a door, on a table.
//!
//! ```text
//!     A B C D         E F G H        a gap that is no whole number of squares: E to H fit no place of the lattice that A to D
//!    ┌─┬─┬─┬─┐       ┌─┬─┬─┬─┐       make. Where that lattice is bare beyond D says nothing about E to H.
//!    └─┴─┴─┴─┘       └─┴─┴─┴─┘
//! ```
//!
//! In: codes that were found by their finder patterns, and the wall as the search left it. Out: [`Apart`], and the codes that it comes
//! from. Squares that hang in places of the lattice, but belong to a lattice that goes on beyond the wall's edge, are taken out of the wall.

use std::collections::{BTreeMap, BTreeSet};

use super::camera::Correspondence;
use super::identify::Detection;
use super::lens::Lens;
use super::place::{Site, site_of};
use super::reading::{Apart, Camera};
use super::search::{Bounds, Search, WallState, off};
use super::seek::CellDetection;
use crate::frame::{Vector, WallMm, median};
use crate::plan::{Cell, Printed, Turn};

/// Minimum certainty of a name without a place on the wall to support it; the reader's own walls never had a wrong one above.
const SURE: f64 = 0.99;
/// Minimum distance from the lattice of the others, in sides of a square, from which a block of squares is not on it: 15 mm, twice as far
/// as single squares hang askew.
pub(super) const BESIDE: f64 = 0.12;
/// Maximum number of codes around which another lattice is looked for: a wall in more parts than these is rare, and each costs as much as
/// a small wall.
const MOST_PARTS: usize = 8;
/// Minimum number of squares in one lattice that make a part of the wall; fewer lie on a table or are held in a hand.
pub(super) const PART: usize = 3;

/// Minimum number of squares in a block that is another board though fewer hang at home than in it.
const BOARD: usize = 6;

/// To the four neighbours of a place: columns right, rows down.
pub(super) const STEPS: [(i64, i64); 4] = [(1, 0), (0, 1), (-1, 0), (0, -1)];

/// Finds what is apart from the wall, and takes out of the wall the squares that only seem to hang in places of its lattice.
pub(super) fn take_out(
    search: &Search<'_>,
    known: &mut WallState,
    bounds: &Bounds,
    printed: &Printed,
) -> (Apart, Vec<Detection>) {
    let mut codes: Vec<Detection> = outside(search, known, bounds, printed);
    let mut found = codes.clone();
    let (mut squares, mut parts) = (BTreeSet::new(), BTreeSet::new());
    for _ in 0..MOST_PARTS {
        let Some(seed) = codes.first().copied() else { break };
        let part = around(search, &seed, known, (bounds, printed));
        codes.retain(|code| part.iter().all(|own| own.is_clear_of(code)));
        found.extend(part.iter().copied());
        let homes: BTreeSet<Cell> = part.iter().filter_map(Detection::home).collect();
        if homes.len() >= PART {
            parts.extend(homes.iter().copied());
        }
        squares.extend(homes);
    }
    squares.extend(codes.iter().filter_map(Detection::home));
    let shifted = take_out_shifted(search, known, !parts.is_empty());
    parts.extend(shifted.iter().filter_map(Detection::home));
    found.extend(shifted);
    squares.extend(parts.iter().copied());
    let hanging: BTreeSet<Cell> = known.squares.values().filter_map(|seen| seen.found.home()).collect();
    squares.retain(|home| !hanging.contains(home));
    let cells = printed.grid.cells().filter(|cell| {
        !known.squares.contains_key(&site_of(*cell))
            && (squares.contains(cell) || is_nearer(*cell, &parts, known))
    });
    let is_part = squares.iter().any(|home| parts.contains(home));
    (Apart { cells: cells.collect(), squares: squares.into_iter().collect(), is_part }, found)
}

/// Named codes that hang in no place of the wall.
fn outside(search: &Search<'_>, known: &WallState, bounds: &Bounds, printed: &Printed) -> Vec<Detection> {
    let on_wall =
        |code: &Detection| search.hangs(&known.camera, code).is_some_and(|(site, _)| bounds.hold(site));
    let sure = search.detections.iter().filter(|code| code.home().is_some() && is_sure(code, printed));
    sure.filter(|code| !is_taken(known, code) && !on_wall(code)).copied().collect()
}

/// Cells side by side whose own squares hang in no place of the wall, or are claimed by another part: they are that part's, and what
/// shows in their places here is worth no long search.
pub(super) fn elsewhere(
    search: &Search<'_>,
    known: &WallState,
    bounds: &Bounds,
    printed: &Printed,
) -> BTreeSet<Site> {
    let outside = outside(search, known, bounds, printed);
    let homes: BTreeSet<Site> =
        outside.iter().chain(search.claimed).filter_map(Detection::home).map(site_of).collect();
    // a single one may have been swapped with what hangs in its cell
    let beside =
        |site: &Site| STEPS.iter().filter(|(right, down)| homes.contains(&site.step(*right, *down))).count();
    homes.iter().filter(|site| !known.squares.contains_key(site) && beside(site) > 1).copied().collect()
}

/// A code outside the wall, and all squares that hang around it in a lattice of its own.
fn around(
    search: &Search<'_>,
    seed: &Detection,
    known: &WallState,
    (bounds, printed): (&Bounds, &Printed),
) -> Vec<Detection> {
    let mut found = lattice_of(search, seed, known.camera.lens, (bounds, printed));
    found.retain(|code| !is_taken(known, code));
    if found.iter().all(|own| own.is_clear_of(seed)) {
        found.push(*seed);
    }
    found
}

/// All squares with a sure name that hang in the lattice which a code alone says.
pub(super) fn lattice_of(
    search: &Search<'_>,
    seed: &Detection,
    lens: Lens,
    (bounds, printed): (&Bounds, &Printed),
) -> Vec<Detection> {
    let origin = Site { row: 0, column: 0 };
    let anchor =
        Correspondence { wall: search.layout.code_corners(origin, Turn::None), photo: seed.pose.corners() };
    let Some(camera) = Camera::from_one(&anchor, lens) else { return Vec::new() };
    // where the wall's cells would be if it hangs at home
    let home = seed.home().map_or(origin, site_of);
    let from_seed = |site: Site| site.step(-home.column, -home.row);
    let around = Bounds { first: from_seed(bounds.first), last: from_seed(bounds.last) };
    let part =
        search.search_outwards(WallState { start: vec![anchor], ..WallState::new(camera) }, |_| around);
    part.squares.into_values().map(|seen| seen.found).filter(|code| is_sure(code, printed)).collect()
}

/// Whether a name is sure without a place on the wall to support it.
pub(super) fn is_sure(code: &Detection, printed: &Printed) -> bool {
    code.evidence.certainty(printed.squares.len() + printed.cards.len()) >= SURE
}

/// Whether a code is that of a square on the wall.
fn is_taken(known: &WallState, code: &Detection) -> bool {
    !known.squares.values().all(|seen| seen.found.is_clear_of(code))
}

/// Takes blocks of squares out of the wall that hang together as they belong, but all equally far from their cells: where the wall is
/// known to hang in parts, where the block lies beside the lattice of the others, or where no other square hangs next to it and
/// more hang at home. Gives those squares.
fn take_out_shifted(search: &Search<'_>, known: &mut WallState, in_parts: bool) -> Vec<Detection> {
    let side = search.layout.side;
    let offs = |sites: &mut dyn Iterator<Item = (&Site, &CellDetection)>| -> [f64; 2] {
        let all: Vec<_> =
            sites.filter_map(|(site, seen)| off(&search.layout, &known.camera, *site, &seen.found)).collect();
        let middle =
            |along: fn(&Vector<WallMm>) -> f64| median(all.iter().map(along).collect()).unwrap_or(0.0);
        [middle(|by| by.x), middle(|by| by.y)]
    };
    let at_home = |(site, seen): &(&Site, &CellDetection)| shift(**site, seen) == Some((0, 0));
    let [right, down] = offs(&mut known.squares.iter().filter(at_home));
    let beside = |block: &BTreeSet<Site>| {
        let [x, y] = offs(&mut known.squares.iter().filter(|(site, _)| block.contains(site)));
        (x - right).hypot(y - down) > BESIDE * side
    };
    let home = known.squares.iter().filter(at_home).count();
    let alone = |block: &BTreeSet<Site>| {
        let hangs = |site: &Site| known.squares.contains_key(site) && !block.contains(site);
        (home > block.len() || is_board(block))
            && !block.iter().any(|site| STEPS.iter().any(|(right, down)| hangs(&site.step(*right, *down))))
    };
    let taken_out = |block: BTreeSet<Site>| {
        if in_parts || beside(&block) {
            return Some(block);
        }
        let board = with_misplaced(block, known);
        alone(&board).then_some(board)
    };
    let out: BTreeSet<Site> = shifted_blocks(known).into_iter().filter_map(taken_out).flatten().collect();
    let found = out.iter().filter_map(|site| Some(known.squares.get(site)?.found)).collect();
    if !out.is_empty() {
        known.squares.retain(|site, _| !out.contains(site));
        known.camera = known.camera.fitted(&search.correspondences(known));
    }
    found
}

/// Blocks of at least [`PART`] upright squares, side by side, that share a shift from their cells that is not zero.
fn shifted_blocks(known: &WallState) -> Vec<BTreeSet<Site>> {
    let mut free: BTreeMap<Site, (i64, i64)> = (known.squares.iter())
        .filter_map(|(site, seen)| Some((*site, shift(*site, seen).filter(|by| *by != (0, 0))?)))
        .collect();
    let mut blocks = Vec::new();
    while let Some((first, by)) = free.pop_first() {
        let (mut block, mut waiting) = (BTreeSet::from([first]), vec![first]);
        while let Some(site) = waiting.pop() {
            for (right, down) in STEPS {
                let next = site.step(right, down);
                if free.get(&next) == Some(&by) {
                    free.remove(&next);
                    block.insert(next);
                    waiting.push(next);
                }
            }
        }
        if block.len() >= PART {
            blocks.push(block);
        }
    }
    blocks
}

/// A block with what hangs in its rectangle or next to it and does not belong there: swapped and turned squares hang on the same board, and
/// so does what they part from the others.
fn with_misplaced(mut block: BTreeSet<Site>, known: &WallState) -> BTreeSet<Site> {
    while let Some(rectangle) = Bounds::around(block.iter().copied()) {
        let hanging = known.squares.iter().filter(|(site, _)| rectangle.hold(**site));
        let (at_home, all): (Vec<_>, Vec<_>) =
            hanging.partition(|(site, seen)| shift(**site, seen) == Some((0, 0)));
        // where as many hang at home the two lattices run through each other
        if 4 * at_home.len() > block.len() || 2 * block.len() < all.len() {
            break;
        }
        let wider = Bounds { first: rectangle.first.step(-1, -1), last: rectangle.last.step(1, 1) };
        let is_away = |(site, seen): &(&Site, &CellDetection)| shift(**site, seen) != Some((0, 0));
        let beside = known.squares.iter().filter(|(site, _)| wider.hold(**site)).filter(is_away);
        let before = block.len();
        block.extend(all.iter().map(|(site, _)| **site).chain(beside.map(|(site, _)| *site)));
        if block.len() == before {
            break;
        }
    }
    block
}

/// Whether a block is so large and so broad that nobody hung it askew: a row may be begun in the wrong column.
fn is_board(block: &BTreeSet<Site>) -> bool {
    let is_broad = Bounds::around(block.iter().copied())
        .is_some_and(|Bounds { first, last }| last.row > first.row && last.column > first.column);
    block.len() >= BOARD && is_broad
}

/// Rows down and columns to the right from where an upright square belongs to where it hangs; `None` for others.
fn shift(hangs: Site, seen: &CellDetection) -> Option<(i64, i64)> {
    let home = site_of(seen.found.home().filter(|_| seen.turn == Turn::None)?);
    Some((hangs.row - home.row, hangs.column - home.column))
}

/// Whether a cell lies no farther from a part that hangs apart than from the squares on the wall, both where they belong.
fn is_nearer(cell: Cell, parts: &BTreeSet<Cell>, known: &WallState) -> bool {
    let cell = site_of(cell);
    let away = |other: &Site| (other.row - cell.row).abs().max((other.column - cell.column).abs());
    let part = parts.iter().map(|home| away(&site_of(*home))).min();
    let wall = known.squares.keys().map(away).min();
    part.is_some_and(|part| wall.is_none_or(|wall| part <= wall))
}
