//! First camera: from cards that agree, from the lattice that squares make, from squares that hang where they belong, or from a single card.
//!
//! In: detections of cards with their places, and of squares without. Out: the state from which all cells are searched. The ways are
//! tried in the order of [`STARTS`].

use std::collections::{BTreeMap, BTreeSet};

use super::apart::is_sure;
use super::camera::Correspondence;
use super::consensus::consensus;
use super::identify::Detection;
use super::lattice::{self, Member};
use super::place::{Site, site_of};
use super::placement::{Placing, Vote, resolve, resolve_part};
use super::reading::{Camera, ReadError};
use super::search::{Bounds, Search, WallState};
use super::seek::CellDetection;
use crate::frame::float;
use crate::plan::{Printed, Turn};

/// Minimum number of agreeing cards that fix the wall's place without a square.
pub(super) const ENOUGH_CARDS: usize = 3;
/// Minimum number of squares that hang where they belong, all seen by one camera, that fix the wall's place: what squares say is never
/// believed by fewer.
const ENOUGH_AT_HOME: usize = 6;
/// Votes that a card in its place adds to a placing of the lattice.
const CARD_VOTES: f64 = 6.0;
/// Maximum distance of a card from its place on the lattice for its votes, in sides of a square.
const CARD_OFF: f64 = 0.4;
/// Maximum distance of a card from its place for it to hold the camera, in mm: squares and cards hang within some 15.
const CARD_AGREES_MM: f64 = 25.0;

/// Minimum number of codes in a lattice for it to be a wall though none of them has a name: drawings that look like codes do not lie a
/// square's side apart.
pub(super) const LATTICE_ALONE: usize = 5;
/// Share of a lattice's codes below which hardly any was read: then they are too small, whatever else may be missing.
const HARDLY_READ: f64 = 0.2;

/// Way to a first camera.
#[derive(Copy, Clone, Debug)]
enum Start {
    /// From cards that agree with each other, at least this many.
    Cards(usize),
    /// From the lattice that the squares make.
    Lattice,
    /// From named squares that hang where they belong, at least this many: the lattices of boards that stand side by side run into each
    /// other.
    AtHome(usize),
}

/// Ways to a first camera, in the order in which they are tried; the first that leads to one is taken.
const STARTS: [Start; 4] =
    [Start::Cards(ENOUGH_CARDS), Start::Lattice, Start::AtHome(ENOUGH_AT_HOME), Start::Cards(1)];

/// State of the search after the first way that leads to a camera.
///
/// # Errors
/// Why the lattice led to none, where the cards did not either.
pub(super) fn first(
    search: &Search<'_>,
    printed: &Printed,
    cards: &[Correspondence],
) -> Result<WallState, ReadError> {
    let mut why = ReadError::NoCodes;
    let mut bare = None;
    for start in STARTS {
        let state = match start {
            Start::Cards(at_least) => from_cards(search, printed, cards, at_least),
            Start::AtHome(at_least) => from_home(search, printed, at_least),
            Start::Lattice => from_lattice(search, printed, cards).map_err(|error| why = error).ok(),
        };
        let Some(state) = state else { continue };
        // cards below a board beside the wall stand in one line: by themselves they may lead nowhere
        if search.claimed.is_empty() || !state.squares.is_empty() {
            return Ok(state);
        }
        bare.get_or_insert(state);
    }
    bare.ok_or(why)
}

/// Starts from the cards; `None` where fewer than `at_least` agree.
fn from_cards(
    search: &Search<'_>,
    printed: &Printed,
    cards: &[Correspondence],
    at_least: usize,
) -> Option<WallState> {
    let (camera, agreeing) = consensus(cards, search.lens)?;
    if agreeing.len() < at_least {
        return None;
    }
    let state = WallState { cards: agreeing, ..WallState::new(camera) };
    Some(search.search_outwards(state, |_| Bounds::of(&printed.grid)))
}

/// Starts from named squares that hang where they belong; `None` where fewer than `at_least` agree.
fn from_home(search: &Search<'_>, printed: &Printed, at_least: usize) -> Option<WallState> {
    let sure = search.detections.iter().filter(|code| is_sure(code, printed));
    let anchor = |code: &Detection| {
        let wall = search.layout.code_corners(site_of(code.home()?), Turn::None);
        Some(Correspondence { wall, photo: code.pose.corners() })
    };
    let anchors: Vec<Correspondence> = sure.filter_map(anchor).collect();
    let (camera, start) = consensus(&anchors, search.lens)?;
    if start.len() < at_least {
        return None;
    }
    let state = WallState { start, ..WallState::new(camera) };
    Some(search.search_outwards(state, |_| Bounds::of(&printed.grid)))
}

/// Starts from the lattice that the squares make, and finds out which cell is which afterwards.
fn from_lattice(
    search: &Search<'_>,
    printed: &Printed,
    cards: &[Correspondence],
) -> Result<WallState, ReadError> {
    let members = lattice::largest(&search.layout, search.detections);
    let anchor = |m: &Member| Correspondence {
        wall: search.layout.code_corners(m.site, m.turn),
        photo: search.detections[m.code].pose.corners(),
    };
    let anchors: Vec<Correspondence> = members.iter().map(anchor).collect();
    let (camera, start) = consensus(&anchors, search.lens).ok_or(ReadError::NoCodes)?;
    let none = WallState { start, ..WallState::new(camera) };
    // a drawing that looks like a code must not make the wall seem larger than it is
    let is_named = |m: &&Member| search.detections[m.code].owner.is_some();
    let named: BTreeSet<Site> = members.iter().filter(is_named).map(|m| m.site).collect();
    let sites = if named.is_empty() { members.iter().map(|m| m.site).collect() } else { named };
    let bounds = |known: &WallState| floating_bounds(printed, &sites, known);
    let mut floating = search.search_outwards(none, bounds);
    let mut placing = place(printed, &floating, cards);
    // where not one code was read nearby, looking harder everywhere takes long and finds nothing
    if placing.is_none() && !floating.squares.is_empty() {
        floating = search.search_thoroughly(floating, bounds);
        placing = place(printed, &floating, cards);
    }
    let placing = placing.ok_or_else(|| why_not_placed(&floating, members.len()))?;
    Ok(settle(search, printed, &floating, placing, cards))
}

/// Why the cells of a lattice with so many codes are not known.
fn why_not_placed(floating: &WallState, codes: usize) -> ReadError {
    if codes >= LATTICE_ALONE && float(floating.squares.len()) < HARDLY_READ * float(codes) {
        ReadError::TooSmall
    } else {
        ReadError::CannotPlace
    }
}

/// One ring of cells around what is known, as long as that is no larger than the wall may be.
fn floating_bounds(printed: &Printed, sites: &BTreeSet<Site>, known: &WallState) -> Bounds {
    let most = i64::try_from(printed.grid.columns.max(printed.grid.rows)).unwrap_or(i64::MAX);
    let all = || sites.iter().chain(known.squares.keys());
    let span = |of: fn(&Site) -> i64| {
        let (low, high) = (all().map(of).min().unwrap_or(0), all().map(of).max().unwrap_or(0));
        let ring = i64::from(high - low + 1 < most);
        (low - ring, high + ring)
    };
    let ((top, bottom), (left, right)) = (span(|s| s.row), span(|s| s.column));
    Bounds { first: Site { row: top, column: left }, last: Site { row: bottom, column: right } }
}

/// Which cell is which.
fn place(printed: &Printed, floating: &WallState, cards: &[Correspondence]) -> Option<Placing> {
    let votes: Vec<Vote> = floating
        .squares
        .iter()
        .map(|(site, seen)| Vote { site: *site, turn: seen.turn, home: seen.found.home() })
        .collect();
    let side = printed.grid.square_mm;
    let placing = resolve(&printed.grid, &votes, |placing| {
        let to_lattice = placing.wall_to_lattice(side);
        let in_place = |card: &&Correspondence| {
            let wall = card.wall.map(|p| to_lattice.apply(p));
            floating.camera.placement_error_mm(&Correspondence { wall, ..**card }) < CARD_OFF * side
        };
        CARD_VOTES * float(cards.iter().filter(in_place).count())
    });
    placing.or_else(|| resolve_part(&printed.grid, &votes))
}

/// Moves all that is known from the floating lattice to the wall, and hunts on there.
fn settle(
    search: &Search<'_>,
    printed: &Printed,
    floating: &WallState,
    placing: Placing,
    cards: &[Correspondence],
) -> WallState {
    let to_lattice = placing.wall_to_lattice(printed.grid.square_mm);
    let wall_to_straight = to_lattice.then(&floating.camera.wall_to_straight);
    let camera = Camera { wall_to_straight, ..floating.camera };
    let moved = |all: &BTreeMap<Site, CellDetection>| {
        let turned = |seen: &CellDetection| CellDetection { turn: placing.turn(seen.turn), ..*seen };
        let moved = all.iter().map(|(site, seen)| (placing.site(*site), turned(seen)));
        // what hangs beyond the wall's edges is on another board
        moved.filter(|(site, _)| Bounds::of(&printed.grid).hold(*site)).collect()
    };
    let cards = cards.iter().filter(|c| camera.placement_error_mm(c) < CARD_AGREES_MM).copied().collect();
    let (squares, nameless) = (moved(&floating.squares), moved(&floating.nameless));
    let known = WallState { cards, squares, nameless, ..WallState::new(camera) };
    search.search_outwards(known, |_| Bounds::of(&printed.grid))
}
