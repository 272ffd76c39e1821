//! Other grids that fit crowd, time, place and picture.

use std::ops::RangeInclusive;

use super::simulated::{Expected, RUNS_TO_COMPARE, Scene};
use crate::frame::{ceil_index, float, floor_index};
use crate::plan::cards::RING_MM;
use crate::plan::cell::Grid;
use crate::plan::settings::{ACROSS, MOST_CELLS, Room, Visitors};

/// Maximum number of other grids that are proposed.
const MOST_PROPOSED: usize = 3;
/// Minimum difference of two proposals, as a share of their pieces; nearer ones are no choice.
const LEAST_APART: f64 = 0.08;
/// Badness of a grid that loses all of the picture.
const WEIGHT_OF_LOSS: f64 = 4.0;
/// Badness of a grid that has *e* times as many pieces as are aimed at, or as few.
pub const WEIGHT_OF_COUNT: f64 = 0.5;
/// Maximum share of the picture that a proposed grid may lose.
const MOST_LOST: f64 = 0.15;

/// Chance of becoming whole from which a grid suits a crowd.
pub const SURE: f64 = 0.8;
/// Maximum share of the visitors that goes without a piece in a grid that suits the crowd, on evenings when few come.
///
/// Some come to look. Common practice, no source.
const MOST_WITHOUT: f64 = 0.2;
/// Share of the visitors that goes without a piece below which it is not the room that is too small.
const FEW_WITHOUT: f64 = 0.05;

/// Whether the grid suits the crowd.
#[derive(Copy, Clone, Debug, PartialEq, Eq)]
pub enum Verdict {
    /// The mural nearly always becomes whole, and few go without a piece.
    Fits,
    /// The mural too often does not become whole, for lack of something.
    TooLarge(Lack),
    /// Many go without a piece even when few come, and with more pieces fewer would.
    TooSmall,
}

/// What there is too little of for a mural to become whole.
#[derive(Copy, Clone, Debug, PartialEq, Eq)]
pub enum Lack {
    /// Those who draw.
    Visitors,
    /// Those who hand out and hang.
    Helpers,
    /// Seats to draw at.
    Seats,
    /// Minutes.
    Time,
}

impl Verdict {
    /// Its name in plan.json.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Self::Fits => "fits",
            Self::TooLarge(Lack::Visitors) => "too-large-for-visitors",
            Self::TooLarge(Lack::Helpers) => "too-large-for-helpers",
            Self::TooLarge(Lack::Seats) => "too-large-for-seats",
            Self::TooLarge(Lack::Time) => "too-large-for-time",
            Self::TooSmall => "too-small",
        }
    }
}

/// Whether a scene's grid suits its crowd, where `expected` is what it comes to and `range` is how many pieces would suit.
#[must_use]
pub fn verdict(scene: &Scene, expected: &Expected, range: Range) -> Verdict {
    let room_for_more = float(range.most) > (1.0 + LEAST_APART) * float(scene.count());
    let without = expected.without_at_ends[0];
    if expected.whole < SURE {
        Verdict::TooLarge(lack(scene, expected))
    } else if room_for_more && without > MOST_WITHOUT * float(scene.visitors.least()) {
        Verdict::TooSmall
    } else {
        Verdict::Fits
    }
}

/// What there is too little of: visitors, where nearly all get a piece or where it becomes whole when many come; else helpers or seats, where more of them bring many squares up.
fn lack(scene: &Scene, expected: &Expected) -> Lack {
    let (least, most) = (scene.visitors.least(), scene.visitors.most());
    let few_go_without = 2.0 * float(expected.without.usual) <= FEW_WITHOUT * float(least + most);
    let when_most_come =
        || Scene { visitors: Visitors::exactly(most), ..scene.clone() }.expected_of(RUNS_TO_COMPARE);
    if few_go_without || least < most && when_most_come().whole >= SURE {
        return Lack::Visitors;
    }
    // what brings up half of the squares that are missing
    let enough = expected.mean_up + 0.5 * (float(scene.count()) - expected.mean_up);
    let helps = |more: &Scene| more.expected_of(RUNS_TO_COMPARE).mean_up >= enough;
    let helpers = Scene { giving_out: AMPLE.into(), hanging: AMPLE.into(), ..scene.clone() };
    if helps(&helpers) {
        Lack::Helpers
    } else if helps(&Scene { seats: 2 * scene.seats, ..helpers }) {
        Lack::Seats
    } else {
        Lack::Time
    }
}

/// More helpers than any line needs.
const AMPLE: usize = 20;

/// Range of the number of pieces that suits the crowd.
///
/// From a piece for four in five of those who draw, to what becomes whole on four evenings in five.
#[derive(Copy, Clone, Debug, PartialEq, Eq)]
pub struct Range {
    /// At least.
    pub least: usize,
    /// At most.
    pub most: usize,
}

/// Range of the number of pieces of a scene's mix that suits its crowd.
#[must_use]
pub fn range(scene: &Scene) -> Range {
    let parties = 0.5 * float(scene.visitors.least() + scene.visitors.most()) * scene.pieces_each.min(1.0);
    let is_sure = |count: usize| {
        let scene = Scene { pieces: part_of(scene.pieces, count), ..scene.clone() };
        scene.expected_of(RUNS_TO_COMPARE).whole >= SURE
    };
    // by halving: more pieces are never surer; more than all of them draw are not tried
    let (mut most, mut beyond) =
        (0, ceil_index(1.5 * float(scene.visitors.most()) * scene.pieces_each).min(MOST_CELLS) + 1);
    while beyond - most > 1 {
        let middle = usize::midpoint(most, beyond);
        if is_sure(middle) { most = middle } else { beyond = middle }
    }
    Range { least: ceil_index((1.0 - MOST_WITHOUT) * parties.min(float(most))), most }
}

/// So many pieces of the same mix of levels; rounding goes to the level that it leaves shortest, the easier one first. Pieces of which
/// there are none are all easy.
#[must_use]
pub fn part_of(pieces: [usize; 4], count: usize) -> [usize; 4] {
    let all: usize = pieces.iter().sum();
    if all == 0 {
        return [0, count, 0, 0];
    }
    let exact = pieces.map(|own| float(own) * float(count) / float(all));
    let mut part = exact.map(|own| floor_index(own + ROUNDING));
    while part.iter().sum::<usize>() < count {
        let short = |level: &usize| exact[*level] - float(part[*level]);
        let next = (0..4).rev().max_by(|a, b| short(a).total_cmp(&short(b))).unwrap_or(0);
        part[next] += 1;
    }
    part
}

/// Part of a piece that is the last bits of a division.
const ROUNDING: f64 = 1e-9;

/// Another grid of the same squares.
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct OtherGrid {
    /// Squares side by side.
    pub columns: usize,
    /// Squares one above the other.
    pub rows: usize,
    /// Width of all squares.
    pub width_mm: f64,
    /// Height of all squares.
    pub height_mm: f64,
    /// The part of the picture that no piece would show, 0 … 1.
    pub lost: f64,
    /// Chance that it is whole at the end, 0 … 1.
    pub whole: f64,
    /// Visitors who usually go without a piece.
    pub without: usize,
}

impl OtherGrid {
    /// How many pieces it has.
    #[must_use]
    pub fn count(&self) -> usize {
        self.columns * self.rows
    }
}

/// Up to three other grids, the best first, that suit the crowd (`range`, `scene`), the place and the picture's shape.
#[must_use]
pub fn others(grid: &Grid, shape: f64, range: Range, room: Option<Room>, scene: &Scene) -> Vec<OtherGrid> {
    let aim = (float(range.least.max(1)) * float(range.most.max(1))).sqrt();
    let badness = |other: &OtherGrid| badness(other.lost, other.count(), aim, WEIGHT_OF_COUNT);
    let mut possible: Vec<OtherGrid> = grids_of(range.least.max(1)..=range.most.min(MOST_CELLS))
        .filter(|both| *both != (grid.columns, grid.rows))
        .map(|(columns, rows)| other(columns, rows, grid.square_mm, shape))
        .filter(|other| other.lost <= MOST_LOST && room.is_none_or(|room| fits(other, room)))
        .collect();
    possible.sort_by(|a, b| badness(a).total_cmp(&badness(b)));
    let mut chosen: Vec<OtherGrid> = Vec::new();
    for other in possible {
        let apart = |own: &OtherGrid| (float(own.count()) / float(other.count())).ln().abs() >= LEAST_APART;
        if chosen.len() < MOST_PROPOSED && chosen.iter().all(apart) {
            chosen.push(other);
        }
    }
    for other in &mut chosen {
        let scene = Scene { pieces: part_of(scene.pieces, other.count()), ..scene.clone() };
        let expected = scene.expected_of(RUNS_TO_COMPARE);
        (other.whole, other.without) = (expected.whole, expected.without.usual);
    }
    chosen
}

/// All columns and rows whose number of cells lies in a range, both numbers within [`ACROSS`].
pub fn grids_of(cells: RangeInclusive<usize>) -> impl Iterator<Item = (usize, usize)> {
    let (least, most) = cells.into_inner();
    (1..=most.min(*ACROSS.end())).flat_map(move |columns| {
        (least.div_ceil(columns)..=(most / columns).min(*ACROSS.end())).map(move |rows| (columns, rows))
    })
}

/// Badness of a grid that loses a share of the picture, 0 … 1, and has `count` pieces where `aim` are aimed
/// at; 0 is perfect.
#[must_use]
pub fn badness(lost: f64, count: usize, aim: f64, weight_of_count: f64) -> f64 {
    WEIGHT_OF_LOSS * lost + weight_of_count * (float(count) / aim).ln().abs()
}

fn other(columns: usize, rows: usize, square_mm: f64, shape: f64) -> OtherGrid {
    let own = float(columns) / float(rows);
    let lost = 1.0 - (own / shape).min(shape / own);
    OtherGrid {
        columns,
        rows,
        width_mm: float(columns) * square_mm,
        height_mm: float(rows) * square_mm,
        lost,
        whole: 0.0,
        without: 0,
    }
}

fn fits(other: &OtherGrid, room: Room) -> bool {
    room.holds(other.width_mm + 2.0 * RING_MM, other.height_mm + 2.0 * RING_MM)
}
