//! Other grids that fit crowd, time, place and picture.

use std::ops::RangeInclusive;

use super::reach::ROUNDING_MM;
use super::time::Time;
use crate::frame::{ceil_index, float, floor_index};
use crate::plan::cards::RING_MM;
use crate::plan::cell::Grid;
use crate::plan::settings::{ACROSS, MOST_CELLS, Room};

/// Number of pieces drawn a visitor where all goes well: one each, and one in ten stays for a second.
///
/// Families who share one make it fewer, so a plan that counts on more is too kind. Common practice, no
/// source.
pub const PIECES_A_VISITOR: f64 = 1.1;
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

/// Whether the grid suits the crowd.
#[derive(Copy, Clone, Debug, PartialEq, Eq)]
pub enum Verdict {
    /// Nearly every visitor gets a piece and all are finished.
    Fits,
    /// More pieces than time and seats allow: so many stay unfinished.
    TooBigForTime(usize),
    /// More pieces than the visitors draw at [`PIECES_A_VISITOR`] each: so many are left over when everybody has drawn one.
    TooBigForCrowd(usize),
    /// Fewer pieces than visitors who could draw one: so many go without.
    TooSmall(usize),
}

impl Verdict {
    /// Its name in plan.json.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Self::Fits => "fits",
            Self::TooBigForTime(_) => "too-big-for-time",
            Self::TooBigForCrowd(_) => "too-big-for-crowd",
            Self::TooSmall(_) => "too-small",
        }
    }

    /// How many pieces or visitors it is about.
    #[must_use]
    pub fn by(self) -> usize {
        match self {
            Self::Fits => 0,
            Self::TooBigForTime(by) | Self::TooBigForCrowd(by) | Self::TooSmall(by) => by,
        }
    }
}

/// Minimum share of those visitors who could draw that gets a piece in a grid that suits the crowd.
///
/// Some come to look. Common practice, no source.
const LEAST_PART_DRAWING: f64 = 0.8;

/// Range of the number of pieces that suits the crowd.
///
/// From a piece for four in five of the visitors, as far as the time allows, to what all of them can finish.
#[derive(Copy, Clone, Debug, PartialEq, Eq)]
pub struct Range {
    /// At least.
    pub least: usize,
    /// At most.
    pub most: usize,
}

/// Range of the number of pieces that suits `visitors` who all together finish `can_finish`.
#[must_use]
pub fn range(visitors: usize, can_finish: usize) -> Range {
    let most = can_finish.min(floor_index(PIECES_A_VISITOR * float(visitors)));
    Range { least: ceil_index(LEAST_PART_DRAWING * float(visitors.min(most))), most }
}

/// Whether so many pieces suit the crowd.
#[must_use]
pub fn verdict(pieces: usize, visitors: usize, time: &Time) -> Verdict {
    let Range { least, most } = range(visitors, time.can_finish);
    if pieces > time.can_finish {
        Verdict::TooBigForTime(pieces - time.can_finish)
    } else if pieces > most {
        Verdict::TooBigForCrowd(pieces - visitors)
    } else if pieces < least {
        Verdict::TooSmall(visitors.min(most) - pieces)
    } else {
        Verdict::Fits
    }
}

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
}

impl OtherGrid {
    /// How many pieces it has.
    #[must_use]
    pub fn count(&self) -> usize {
        self.columns * self.rows
    }
}

/// Up to three other grids, the best first, that suit the crowd (`range`), the place and the picture's shape.
#[must_use]
pub fn others(grid: &Grid, shape: f64, range: Range, room: Option<Room>) -> Vec<OtherGrid> {
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
    }
}

fn fits(other: &OtherGrid, room: Room) -> bool {
    other.width_mm + 2.0 * RING_MM <= room.width_mm + ROUNDING_MM
        && other.height_mm + 2.0 * RING_MM <= room.height_mm + ROUNDING_MM
}
