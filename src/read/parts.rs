//! The parts of a wall in one photo: boards that stand apart, each with a lattice and a camera of its own.
//!
//! ```text
//!     A B C D      ┌──┐     E F G H        the largest lattice is read first; what hangs apart from it is read as a wall of its own,
//!    ┌─┬─┬─┬─┐     │  │    ┌─┬─┬─┬─┐       and so on. Which cells a lattice reaches then follows from the parts that event.toml
//!    └─┴─┴─┴─┘     │  │    └─┴─┴─┴─┘       lists, or from where squares hang at home: of cells beyond those nothing is said.
//! ```
//!
//! Parts are rectangles, so squares that lie on a table beside each other are none: they belong among those that hang.

use std::collections::BTreeSet;

use rayon::prelude::*;

use super::apart::{BESIDE, PART, is_sure, lattice_of};
use super::area_finders::Seen;
use super::identify::Detection;
use super::lens::Lens;
use super::own_parts::OwnParts;
use super::place::{Site, cell_at, median_px, site_of};
use super::reader::{Reader, SMALL_PX, Wall};
use super::reading::Apart;
use super::search::{Bounds, Search, centre, off};
use super::seek::{CellDetection, seek_anywhere};
use super::{area_finders, triples};
use crate::photo::Luma;
use crate::plan::settings::WallPart;
use crate::plan::{Cell, Grid, Printed};

/// Maximum number of parts that are read in one photo: as many as apart from the first are looked for.
const MOST_PARTS: usize = 8;
/// Columns or rows without a square at home, from an edge of the wall on, that may hang on another board.
const LEFT_OUT: i64 = 2;
/// How far from the first wall's top left cell another board is looked for in its plane, in cells: some twelve metres.
const BESIDE_CELLS: i64 = 96;

/// All parts of the wall in a photo, the one that was read first in front; `codes` are those of the whole photo.
pub(super) fn all(reader: &Reader, luma: &Luma, first: Wall, codes: &[Detection]) -> Vec<Wall> {
    let printed = reader.printed();
    let search = reader.search(luma);
    let has_others = !first.apart.squares.is_empty() || !beside(&search, &first).is_empty();
    let mut walls = vec![first];
    walls.iter_mut().for_each(|wall| release(&search, wall, &printed.parts));
    if has_others || !printed.parts.is_empty() || may_be_more(&walls, printed) {
        read_others(reader, luma, &mut walls, codes);
        for seen in [Seen::Square, Seen::Slanting] {
            let lacks = lacks_squares(&walls, &printed.grid) && is_small(&walls);
            if !lacks || (seen == Seen::Slanting && walls.len() < 2 && printed.parts.is_empty()) {
                break;
            }
            let identifier = reader.identifier();
            let papers: Vec<_> = claimed(&walls).map(|own| search.layout.paper_corners(&own.pose)).collect();
            let sought = (area_finders::LEAST, seen);
            let candidates = area_finders::find_outside(luma, identifier, sought, &papers);
            let by_area = triples::verify(luma, (&candidates, area_finders::MOST_NAMELESS), identifier);
            read_others(reader, luma, &mut walls, &triples::together(codes.to_vec(), by_area));
        }
    }
    let mut known = 0;
    while known < walls.len() && may_be_more(&walls, printed) {
        known = walls.len();
        let in_plane = in_plane(&search, &walls);
        if !in_plane.is_empty() {
            read_others(reader, luma, &mut walls, &triples::together(codes.to_vec(), in_plane));
        }
    }
    if walls.len() > 1 || !printed.parts.is_empty() {
        let reach = reach(&search, &walls, &printed.grid, &printed.parts);
        settle(&search, &mut walls, &reach, &printed.grid);
    }
    walls
}

/// Lets go of squares in places of parts of which hardly any hangs at home in a wall: another board may stand so that its squares all but
/// fit this one's lattice, some columns away. Where no part is its own everything stays.
fn release(search: &Search<'_>, wall: &mut Wall, declared: &[WallPart]) {
    let own = OwnParts::of(&wall.squares, declared);
    let before = wall.squares.len();
    let Wall { squares, apart_codes, .. } = wall;
    squares.retain(|site, seen| {
        let stays = own.may_hold(*site);
        apart_codes.extend((!stays).then_some(seen.found));
        stays
    });
    if wall.squares.len() < before {
        wall.camera = wall.camera.fitted(&search.anchors(&wall.cards, &wall.squares));
    }
}

/// Whether a part is listed of which nothing was read; where none is listed, whether small squares may hang on a board that was not read:
/// the wall is known to hang in parts, or all that was read leaves out [`LEFT_OUT`] columns or rows.
fn may_be_more(walls: &[Wall], printed: &Printed) -> bool {
    let grid = &printed.grid;
    let homes: Vec<Vec<Cell>> = walls.iter().map(at_home).collect();
    if !printed.parts.is_empty() {
        return printed.parts.iter().any(|part| homes.iter().all(|cells| votes(cells, part) == 0));
    }
    let leaves_out = || {
        // where a card hangs in its place the wall goes on as far as that
        let cards = walls.iter().flat_map(|wall| &wall.cards);
        let at_cards = cards.map(|card| grid.nearest(card.wall[0].towards(card.wall[2], 0.5)));
        let cells: Vec<Cell> = homes.iter().flatten().copied().chain(at_cards).collect();
        let (all, own) = (Bounds::of(grid), rectangle(&cells));
        own.is_some_and(|Bounds { first, last }| {
            let before = (first.row - all.first.row).max(first.column - all.first.column);
            before.max(all.last.row - last.row).max(all.last.column - last.column) >= LEFT_OUT
        })
    };
    is_small(walls) && lacks_squares(walls, grid) && (walls.len() > 1 || leaves_out())
}

/// Named codes in the plane of the wall that was read last, beside all walls: boards mostly hang on one wall, and where its plane is known
/// codes are found that are too small for a line to cross their finder patterns. First on a few lines of cells that cross what that wall has:
/// mostly nothing hangs beside it; everywhere where those show a code.
fn in_plane(search: &Search<'_>, walls: &[Wall]) -> Vec<Detection> {
    let Some(newest) = walls.last() else { return Vec::new() };
    let Some(Bounds { first, last }) = rectangle(&at_home(newest)) else { return Vec::new() };
    let (camera, side) = (&newest.camera, search.layout.side);
    let papers: Vec<_> = claimed(walls).map(|own| search.layout.paper_corners(&own.pose)).collect();
    let is_free = |site: &Site| {
        let middle = camera.wall_to_photo(centre(*site, side));
        let is_near =
            camera.photo_to_wall(middle).is_some_and(|at| at.distance(centre(*site, side)).value() < side);
        search.luma.holds(middle, 0.0) && is_near && !papers.iter().any(|paper| middle.is_within(paper))
    };
    let third = (last.row - first.row) / 3;
    let lines = [first.row + third, last.row - third];
    let column = (first.column + last.column) / 2;
    let is_on_line = |site: &Site| lines.contains(&site.row) || site.column == column;
    let around = Bounds {
        first: Site { row: -BESIDE_CELLS, column: -BESIDE_CELLS },
        last: Site { row: BESIDE_CELLS, column: BESIDE_CELLS },
    };
    let (on_lines, others): (Vec<Site>, Vec<Site>) = around.sites().filter(is_free).partition(is_on_line);
    let seek = |site: &Site| seek_anywhere(search.luma, search.identifier, camera, &search.layout, *site);
    let seek_all = |sites: Vec<Site>| sites.par_iter().flat_map_iter(seek).collect::<Vec<Detection>>();
    let mut found = seek_all(on_lines);
    if !found.is_empty() {
        found.extend(seek_all(others));
    }
    found
}

/// Reads one part after the other, as long as codes enough are left to make one.
fn read_others(reader: &Reader, luma: &Luma, walls: &mut Vec<Wall>, codes: &[Detection]) {
    let (printed, search) = (reader.printed(), reader.search(luma));
    while walls.len() < MOST_PARTS {
        let claimed = surely_claimed(&search, walls);
        let mut rest = rest(walls, codes, &claimed);
        let lens = walls.first().map_or(search.lens, |wall| wall.camera.lens);
        if !is_enough(&rest, printed) {
            grow(&search, lens, walls, &mut rest, printed);
        }
        if !is_enough(&rest, printed) {
            return;
        }
        let Ok(mut next) = reader.wall_of(luma, rest, (&claimed, lens)) else { return };
        release(&search, &mut next, &printed.parts);
        let mut others = walls.clone();
        take_over(&search, &mut next, &mut others);
        if printed.parts.is_empty() {
            put_aside(&mut next, &mut others);
        }
        if !is_part(&next, &others, &printed.parts) {
            return;
        }
        others.push(next);
        *walls = others;
    }
}

/// Whether codes may make another part: squares enough with a sure name, or cards, which hang around a part.
fn is_enough(codes: &[Detection], printed: &Printed) -> bool {
    let sure = codes.iter().filter(|code| is_sure(code, printed));
    let (squares, cards): (Vec<&Detection>, Vec<&Detection>) = sure.partition(|code| code.home().is_some());
    squares.len() >= PART || cards.len() >= PART
}

/// Adds to codes what hangs around the few that have a sure name, each of which says a lattice: where codes are small, not many are found
/// before it is known where to look.
fn grow(search: &Search<'_>, lens: Lens, walls: &[Wall], codes: &mut Vec<Detection>, printed: &Printed) {
    let was_grown = |code: &Detection| walls.iter().any(|wall| wall.apart_codes.contains(code));
    let sure = codes.iter().filter(|code| code.home().is_some() && is_sure(code, printed));
    let seeds: Vec<Detection> = sure.filter(|code| !was_grown(code)).copied().collect();
    let bounds = Bounds::of(&printed.grid);
    for seed in seeds {
        let around = lattice_of(search, &seed, lens, (&bounds, printed));
        let is_new = |code: &Detection| claimed(walls).chain(codes.iter()).all(|own| own.is_clear_of(code));
        let around: Vec<Detection> = around.into_iter().filter(is_new).collect();
        codes.extend(around);
    }
}

/// Squares at home that hang beside their cells, where at least [`PART`] do: a board may stand so that its squares all but fit the lattice
/// of another.
fn beside(search: &Search<'_>, wall: &Wall) -> BTreeSet<Site> {
    let is_off = |(site, seen): &(&Site, &CellDetection)| {
        let at_home = seen.found.home().is_some_and(|home| site_of(home) == **site);
        at_home && off_mm(search, wall, **site, seen) > BESIDE * search.layout.side
    };
    let off: BTreeSet<Site> = wall.squares.iter().filter(is_off).map(|(site, _)| *site).collect();
    if off.len() < PART { BTreeSet::new() } else { off }
}

/// Squares of the walls that no other part may have: all but those that only seem to hang there.
fn surely_claimed(search: &Search<'_>, walls: &[Wall]) -> Vec<Detection> {
    let own = |wall: &Wall| {
        let beside = beside(search, wall);
        let surely = wall.squares.iter().filter(|(site, _)| !beside.contains(site));
        surely.map(|(_, seen)| seen.found).collect::<Vec<Detection>>()
    };
    walls.iter().flat_map(own).collect()
}

/// Moves to another part the squares of the walls that hang on it.
fn take_over(search: &Search<'_>, next: &mut Wall, walls: &mut [Wall]) {
    for wall in walls {
        let own = wall.clone();
        let mut moved: Vec<(Site, CellDetection)> = Vec::new();
        wall.squares.retain(|site, seen| {
            let is_taken = is_taken(search, next, &own, *site, seen);
            moved.extend(is_taken.then_some((*site, *seen)));
            !is_taken
        });
        if !moved.is_empty() {
            wall.camera = wall.camera.fitted(&search.anchors(&wall.cards, &wall.squares));
        }
        for (site, seen) in moved {
            next.squares.entry(site).or_insert(seen);
        }
    }
}

/// Takes away walls among whose cells another one lies that has more squares at home: theirs lie on a table.
fn put_aside(next: &mut Wall, walls: &mut Vec<Wall>) {
    let own = at_home(next);
    let Some(rectangle_of_next) = rectangle(&own) else { return };
    let lies = |wall: &Wall| {
        let cells = at_home(wall);
        cells.len() < own.len()
            && rectangle(&cells).is_some_and(|other| !disjoint(&rectangle_of_next, &other))
    };
    let (aside, stay): (Vec<Wall>, Vec<Wall>) = walls.drain(..).partition(lies);
    *walls = stay;
    for found in claimed(&aside) {
        next.apart_codes.push(*found);
        let lies = found.home().filter(|home| !own.contains(home));
        next.apart.squares.extend(lies);
        next.apart.cells.extend(lies.filter(|home| !next.squares.contains_key(&site_of(*home))));
    }
    for cells in [&mut next.apart.squares, &mut next.apart.cells] {
        cells.sort();
        cells.dedup();
    }
}

/// Whether a square of a wall is one of another part: seen in it, or at home in both and nearer to its cell there.
fn is_taken(search: &Search<'_>, next: &Wall, wall: &Wall, site: Site, seen: &CellDetection) -> bool {
    let is_seen = next.squares.values().any(|own| !own.found.is_clear_of(&seen.found));
    let at_home = seen.found.home().is_some_and(|home| site_of(home) == site);
    is_seen || (at_home && off_mm(search, next, site, seen) < off_mm(search, wall, site, seen))
}

/// Whether so many squares were seen nowhere that there may be another part.
fn lacks_squares(walls: &[Wall], grid: &Grid) -> bool {
    claimed(walls).filter_map(Detection::home).collect::<BTreeSet<Cell>>().len() + PART <= grid.count()
}

/// Whether modules are so small that codes may be missed by their finder patterns.
fn is_small(walls: &[Wall]) -> bool {
    median_px(claimed(walls).map(|code| code.pose.px_per_module())) < SMALL_PX
}

/// Squares that hang on any of the walls.
fn claimed(walls: &[Wall]) -> impl Iterator<Item = &Detection> {
    walls.iter().flat_map(|wall| wall.squares.values()).map(|seen| &seen.found)
}

/// Named codes that belong to none of the walls: those that were seen apart, and those that are left of the photo's. What has no name may
/// be a drawing on a square that was read.
fn rest(walls: &[Wall], codes: &[Detection], claimed: &[Detection]) -> Vec<Detection> {
    let cards = || walls.iter().flat_map(|wall| &wall.cards);
    let is_card =
        |code: &Detection| cards().any(|card| code.holds(card.photo[0].towards(card.photo[2], 0.5)));
    let mut rest: Vec<Detection> = Vec::new();
    let on_walls = walls.iter().flat_map(|wall| wall.squares.values()).map(|seen| &seen.found);
    for code in walls.iter().flat_map(|wall| &wall.apart_codes).chain(codes).chain(on_walls) {
        let is_new = code.owner.is_some() && rest.iter().all(|own| own.is_clear_of(code));
        if is_new && claimed.iter().all(|own| own.is_clear_of(code)) && !is_card(code) {
            rest.push(*code);
        }
    }
    rest
}

/// Cells where squares hang that belong there.
fn at_home(wall: &Wall) -> Vec<Cell> {
    let home =
        |(site, seen): (&Site, &CellDetection)| seen.found.home().filter(|home| site_of(*home) == *site);
    wall.squares.iter().filter_map(home).collect()
}

/// Rectangle around cells; `None` around none.
fn rectangle(cells: &[Cell]) -> Option<Bounds> {
    Bounds::around(cells.iter().map(|cell| site_of(*cell)))
}

/// Whether two rectangles have no place in common.
fn disjoint(a: &Bounds, b: &Bounds) -> bool {
    a.last.row < b.first.row
        || b.last.row < a.first.row
        || a.last.column < b.first.column
        || b.last.column < a.first.column
}

/// Whether what was read is another part of the wall: squares enough, in a rectangle of their own.
fn is_part(next: &Wall, walls: &[Wall], declared: &[WallPart]) -> bool {
    let own = at_home(next);
    let mut others = walls.iter().map(at_home);
    if own.len() < PART {
        return false;
    }
    if !declared.is_empty() {
        let others: Vec<Vec<Cell>> = others.collect();
        return declared.iter().any(|part| others.iter().all(|cells| votes(&own, part) > votes(cells, part)));
    }
    let own = rectangle(&own);
    own.is_some_and(|own| others.all(|cells| rectangle(&cells).is_none_or(|other| disjoint(&own, &other))))
}

/// Rectangles of the walls' cells: around the squares at home, and as far beyond them as others hang in places of the same lattice.
fn rectangles(search: &Search<'_>, walls: &[Wall]) -> Vec<Option<Bounds>> {
    let mut all: Vec<Option<Bounds>> = walls.iter().map(|wall| rectangle(&at_home(wall))).collect();
    for (at, wall) in walls.iter().enumerate() {
        let fits = |(site, seen): &(&Site, &CellDetection)| {
            off_mm(search, wall, **site, seen) <= BESIDE * search.layout.side
        };
        let sites: Vec<Site> = wall.squares.iter().filter(fits).map(|(site, _)| *site).collect();
        while let Some(wider) = all[at].and_then(|own| wider(&own, &sites)) {
            let others = all.iter().enumerate().filter(|(other, _)| *other != at);
            if !others.filter_map(|(_, other)| other.as_ref()).all(|other| disjoint(&wider, other)) {
                break;
            }
            all[at] = Some(wider);
        }
    }
    all
}

/// A rectangle with one row or column more, in which one of the places lies next to it; `None` where there is none.
fn wider(own: &Bounds, sites: &[Site]) -> Option<Bounds> {
    let Bounds { first, last } = *own;
    let sides = [
        Bounds { first: first.step(-1, 0), last },
        Bounds { first: first.step(0, -1), last },
        Bounds { first, last: last.step(1, 0) },
        Bounds { first, last: last.step(0, 1) },
    ];
    sides.into_iter().find(|wider| sites.iter().any(|site| wider.hold(*site) && !own.hold(*site)))
}

/// Distance of a square's middle from that of its cell, in mm.
fn off_mm(search: &Search<'_>, wall: &Wall, site: Site, seen: &CellDetection) -> f64 {
    off(&search.layout, &wall.camera, site, &seen.found).map_or(f64::INFINITY, |off| off.length().value())
}

/// Number of squares that hang in their places of a declared part.
fn votes(at_home: &[Cell], part: &WallPart) -> usize {
    at_home.iter().filter(|cell| part.holds(**cell)).count()
}

/// Which cells each wall reaches, in the order of the grid's cells.
fn reach(search: &Search<'_>, walls: &[Wall], grid: &Grid, declared: &[WallPart]) -> Vec<Vec<bool>> {
    if declared.is_empty() {
        let rectangles = rectangles(search, walls);
        return (0..walls.len())
            .map(|at| {
                grid.cells().map(|cell| rectangles[at].is_some_and(|own| own.hold(site_of(cell)))).collect()
            })
            .collect();
    }
    let owner = |part: &WallPart| {
        let voted = walls.iter().enumerate().map(|(at, wall)| (votes(&at_home(wall), part), at));
        let (most, at) = voted.max_by_key(|(votes, at)| (*votes, std::cmp::Reverse(*at)))?;
        (most > 0).then_some(at).or_else(|| walls.iter().position(|wall| has_cards(wall, part, grid)))
    };
    let owners: Vec<Option<usize>> = declared.iter().map(owner).collect();
    let own = |cell: Cell, at: usize| {
        declared.iter().zip(&owners).any(|(part, owner)| *owner == Some(at) && part.holds(cell))
    };
    (0..walls.len()).map(|at| grid.cells().map(|cell| own(cell, at)).collect()).collect()
}

/// Whether a card was read beside a part, with no cell of another part nearer to it.
fn has_cards(wall: &Wall, part: &WallPart, grid: &Grid) -> bool {
    let nearest =
        |card: &super::camera::Correspondence| grid.nearest(card.wall[0].towards(card.wall[2], 0.5));
    wall.cards.iter().any(|card| part.holds(nearest(card)))
}

/// Leaves to each wall what hangs in cells that it reaches, and puts the other squares on the walls that reach theirs; what hangs in no
/// cell of any is apart.
fn settle(search: &Search<'_>, walls: &mut [Wall], reach: &[Vec<bool>], grid: &Grid) {
    let reaches = |at: usize, site: Site| {
        let cell = cell_at(site).filter(|cell| grid.holds(*cell));
        cell.is_some_and(|cell| reach[at][grid.index(cell)])
    };
    let mut loose: Vec<Detection> = Vec::new();
    for (at, wall) in walls.iter_mut().enumerate() {
        wall.squares.retain(|site, seen| {
            let stays = reaches(at, *site);
            if !stays {
                loose.push(seen.found);
            }
            stays
        });
        wall.nameless.retain(|site, _| reaches(at, *site));
    }
    loose.retain(|found| {
        let place = walls.iter().enumerate().find_map(|(at, wall)| {
            let (site, turn) = search.hangs(&wall.camera, found)?;
            (reaches(at, site) && !wall.squares.contains_key(&site)).then_some((at, site, turn))
        });
        if let Some((at, site, turn)) = place {
            walls[at].nameless.remove(&site);
            walls[at].squares.insert(site, CellDetection { turn, found: *found });
        }
        place.is_none()
    });
    tell_apart(walls, &loose, reach, grid);
}

/// Notes with each wall the cells that it does not reach, and with the first what hangs on none.
fn tell_apart(walls: &mut [Wall], loose: &[Detection], reach: &[Vec<bool>], grid: &Grid) {
    let hanging: BTreeSet<Cell> = claimed(walls).filter_map(Detection::home).collect();
    let apart = walls.iter().flat_map(|wall| &wall.apart.squares).copied();
    let mut squares: BTreeSet<Cell> = apart.chain(loose.iter().filter_map(Detection::home)).collect();
    squares.retain(|home| !hanging.contains(home));
    let is_part = !squares.is_empty() && walls.iter().any(|wall| wall.apart.is_part);
    for (wall, reach) in walls.iter_mut().zip(reach) {
        let cells = grid.cells().zip(reach).filter(|(_, reached)| !**reached).map(|(cell, _)| cell);
        wall.apart = Apart { cells: cells.collect(), ..Apart::default() };
    }
    if let Some(first) = walls.first_mut() {
        first.apart.squares = squares.into_iter().collect();
        first.apart.is_part = is_part;
    }
}
