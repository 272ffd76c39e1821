//! What to tell the person with the phone: why something could not be told, and how the next photo would tell
//! it.
//!
//! Facts only; `report` has the sentences.

use std::collections::BTreeSet;

use crate::frame::float;
use crate::plan::{Cell, Grid, Turn};
use crate::read::{Apart, WallReading};

use super::states::{Judgement, State};

/// Fewest pixels a module at which every code was read in measurements with a soft, noisy camera (10 of 10
/// columns of 100 trials at 1.0; 98 % at 0.65). Halved, the advice to step closer would come too late to
/// help.
pub const FEW_PX_PER_MODULE: f64 = 1.0;
/// Minimum number and minimum share of cells that could not be read, for the photo to be what is wrong: fewer are looked at faster than
/// another photo is taken.
const MANY_UNREAD: usize = 6;
const MOSTLY_UNREAD: f64 = 0.3;
/// Of how many read squares at least one speaks of "the whole wall": fewer may be wrong by accident.
const WHOLE_WALL: usize = 4;

/// A side of the wall as it is seen.
#[derive(Copy, Clone, Debug, PartialEq, Eq)]
pub enum Side {
    /// Left.
    Left,
    /// Right.
    Right,
    /// Top.
    Upper,
    /// Bottom.
    Lower,
}

impl Side {
    /// The word for it in `words`.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::Left => "left",
            Self::Right => "right",
            Self::Upper => "upper",
            Self::Lower => "lower",
        }
    }
}

/// About how much of the wall.
#[derive(Copy, Clone, Debug, PartialEq, Eq)]
pub enum Part {
    /// Less than a fifth.
    Edge,
    /// A quarter.
    Quarter,
    /// A third.
    Third,
    /// Half.
    Half,
    /// Two thirds.
    TwoThirds,
    /// More.
    Most,
}

impl Part {
    /// The word for it in `words`.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::Edge => "edge",
            Self::Quarter => "quarter",
            Self::Third => "third",
            Self::Half => "half",
            Self::TwoThirds => "two-thirds",
            Self::Most => "most",
        }
    }

    /// The part that comes nearest to `strips` of `all`.
    fn of(strips: usize, all: usize) -> Self {
        let share = float(strips) / float(all.max(1));
        match share {
            s if s < 0.2 => Self::Edge,
            s if s < 7.0 / 24.0 => Self::Quarter,
            s if s < 5.0 / 12.0 => Self::Third,
            s if s < 7.0 / 12.0 => Self::Half,
            s if s < 0.75 => Self::TwoThirds,
            _ => Self::Most,
        }
    }
}

/// One thing worth saying.
#[derive(Clone, Debug, PartialEq)]
pub enum Advice {
    /// A strip along one side of the wall is in no photo: step back, or take another photo.
    StepBack {
        /// On which side.
        side: Side,
        /// How much of the wall.
        part: Part,
        /// How many columns or rows.
        strips: usize,
    },
    /// Squares are in the photo, but apart from the others: photograph each part of the wall by itself.
    Apart {
        /// Which squares, by the cell where they belong.
        squares: Vec<Cell>,
        /// Whether they hang side by side, as a part of the wall.
        is_part: bool,
    },
    /// Cells that no part of the wall in the photos reaches: photograph the part where they are too.
    OtherPart {
        /// Which.
        cells: Vec<Cell>,
    },
    /// Somebody seems to stand before the wall: ask everyone to step aside, and take another photo.
    StepAside,
    /// Cells that are hidden or outside without being a strip.
    Hidden {
        /// Which.
        cells: Vec<Cell>,
    },
    /// Cells could not be read in a photo whose modules have few pixels: go closer, or take two photos.
    GoCloser {
        /// Which photo, from 0.
        photo: usize,
        /// Its pixels a module.
        px_per_module: f64,
        /// How many cells could not be read in it.
        unread: usize,
    },
    /// Most of what is wrong is the photo: many cells could not be read, and its modules have few pixels. This comes first, before
    /// anything is done at the wall.
    TooSmall {
        /// How many cells could not be read.
        unread: usize,
        /// How many cells the wall has.
        cells: usize,
    },
    /// Cells could not be read though the photo is near enough: something covers the code, or glare does.
    Uncover {
        /// How many.
        unread: usize,
    },
    /// The photo is a mirror image, as front cameras store it; it was read all the same.
    Mirrored {
        /// Which photo, from 0.
        photo: usize,
    },
    /// Something was moved between two photos: take them again.
    Contradiction {
        /// Where.
        cells: Vec<Cell>,
    },
    /// Every square that was read hangs the same number of cells from its place: move the start of the wall,
    /// not the squares.
    Shifted {
        /// Cells too far to the right; negative: to the left.
        right: i64,
        /// Cells too far down; negative: up.
        down: i64,
    },
    /// Every square that was read hangs upside down or on its side in the same way.
    AllTurned {
        /// How far clockwise.
        turn: Turn,
    },
    /// Hardly a square hangs where it belongs: is this the right wall, and the right end to count rows from?
    AllWrong,
    /// Squares were drawn on spare paper: the cells where something hangs that may be one.
    OnSpare {
        /// Where.
        cells: Vec<Cell>,
    },
    /// Squares were seen nowhere, and some cells could not be told: they may hang there.
    MayHangUnseen {
        /// How many squares.
        missing: usize,
        /// How many cells.
        unknown: usize,
    },
}

impl Advice {
    /// Whether it is to be said before all else, in place of a list of things to do.
    #[must_use]
    pub fn is_lead(&self) -> bool {
        matches!(self, Self::TooSmall { .. })
    }
}

/// What to say about a reading and its judgement, the most useful first.
#[must_use]
pub fn advise(reading: &WallReading, judgement: &Judgement) -> Vec<Advice> {
    let small = too_small(reading, judgement);
    let coarse = if small.is_none() { too_coarse(reading, judgement) } else { Vec::new() };
    let mut advice = Vec::from_iter(small);
    if !judgement.contradictions.is_empty() {
        advice.push(Advice::Contradiction { cells: judgement.contradictions.clone() });
    }
    if !judgement.apart.squares.is_empty() {
        let Apart { squares, is_part, .. } = judgement.apart.clone();
        advice.push(Advice::Apart { squares, is_part });
    }
    if !judgement.apart.is_part && !judgement.apart.cells.is_empty() {
        let squares = &judgement.apart.squares;
        let cells =
            judgement.apart.cells.iter().filter(|cell| !squares.contains(cell)).copied().collect::<Vec<_>>();
        if !cells.is_empty() {
            advice.push(Advice::OtherPart { cells });
        }
    }
    advice.extend(out_of_view(judgement));
    advice.extend(coarse);
    advice.extend(whole_wall(judgement));
    if !judgement.spare.is_empty() {
        advice.push(Advice::OnSpare { cells: judgement.spare.clone() });
    }
    let unknown = judgement.summary.unknown().saturating_sub(judgement.spare.len());
    let missing = judgement.missing.len();
    if missing > 0 && unknown > 0 && !judgement.apart.is_part {
        advice.push(Advice::MayHangUnseen { missing, unknown });
    }
    let mirrored: BTreeSet<usize> =
        reading.photos.iter().filter(|own| own.mirrored).map(|own| own.photo).collect();
    advice.extend(mirrored.into_iter().map(|photo| Advice::Mirrored { photo }));
    advice
}

/// Strips of unseen columns and rows along the sides, then the unseen cells that are in none of them.
fn out_of_view(judgement: &Judgement) -> Vec<Advice> {
    let grid = judgement.grid;
    let unseen = |cell: Cell| {
        let is_unseen = judgement.at(cell).is_some_and(|at| at.state == State::Unseen);
        is_unseen && !judgement.apart.cells.contains(&cell)
    };
    let column_gone = |column: usize| {
        let gone = (0..grid.rows).filter(|row| unseen(Cell { row: *row, column })).count();
        2 * gone >= grid.rows
    };
    let row_gone = |row: usize| {
        let gone = (0..grid.columns).filter(|column| unseen(Cell { row, column: *column })).count();
        2 * gone >= grid.columns
    };
    let left = (0..grid.columns).take_while(|i| column_gone(*i)).count();
    let right = (left..grid.columns).rev().take_while(|i| column_gone(*i)).count();
    let upper = (0..grid.rows).take_while(|i| row_gone(*i)).count();
    let lower = (upper..grid.rows).rev().take_while(|i| row_gone(*i)).count();
    let sides = [
        (Side::Left, left, grid.columns),
        (Side::Right, right, grid.columns),
        (Side::Upper, upper, grid.rows),
        (Side::Lower, lower, grid.rows),
    ];
    let strips = sides.into_iter().filter(|(_, strips, _)| *strips > 0);
    let mut advice: Vec<Advice> = strips
        .map(|(side, strips, all)| Advice::StepBack { side, part: Part::of(strips, all), strips })
        .collect();
    let inside = |cell: &Cell| {
        (left..grid.columns - right).contains(&cell.column) && (upper..grid.rows - lower).contains(&cell.row)
    };
    let cells: Vec<Cell> = grid.cells().filter(inside).filter(|cell| unseen(*cell)).collect();
    if !cells.is_empty() {
        advice.push(Advice::Hidden { cells });
    }
    advice
}

/// Number of cells that could not be read, of one photo or of all; those that changed between photos do not count, nor squares on spare
/// paper.
fn unread(judgement: &Judgement, photo: Option<usize>) -> usize {
    let Judgement { contradictions, spare, .. } = judgement;
    let cells = judgement.cells.iter().filter(|at| at.state == State::Unread);
    let cells = cells.filter(|at| !contradictions.contains(&at.cell) && !spare.contains(&at.cell));
    cells.filter(|at| photo.is_none_or(|photo| at.photo == photo)).count()
}

/// Whether so many cells could not be read in photos with few pixels a module that the photo is what is wrong.
fn too_small(reading: &WallReading, judgement: &Judgement) -> Option<Advice> {
    let small = reading.photos.iter().enumerate().filter(|(_, of)| of.px_per_module < FEW_PX_PER_MODULE);
    let unread = small.map(|(photo, _)| unread(judgement, Some(photo))).sum::<usize>();
    let cells = judgement.summary.cells;
    let many = unread >= MANY_UNREAD && float(unread) >= MOSTLY_UNREAD * float(cells);
    many.then_some(Advice::TooSmall { unread, cells })
}

/// Why cells could not be read.
fn too_coarse(reading: &WallReading, judgement: &Judgement) -> Vec<Advice> {
    let mut advice = Vec::new();
    for (index, of) in reading.photos.iter().enumerate() {
        let unread = unread(judgement, Some(index));
        if unread > 0 && of.px_per_module < FEW_PX_PER_MODULE {
            advice.push(Advice::GoCloser { photo: of.photo, px_per_module: of.px_per_module, unread });
        }
    }
    let unread = unread(judgement, None);
    if advice.is_empty() && unread > 0 {
        advice.push(Advice::Uncover { unread });
    }
    advice
}

/// What is wrong with all squares alike.
fn whole_wall(judgement: &Judgement) -> Vec<Advice> {
    let read: Vec<_> =
        judgement.cells.iter().filter_map(|at| at.found.map(|home| (at.cell, home, at.turn))).collect();
    let Some(&(_, _, turn)) = read.first() else { return Vec::new() };
    if read.len() < WHOLE_WALL {
        return Vec::new();
    }
    let mut advice = Vec::new();
    if turn != Turn::None && read.iter().all(|(_, _, other)| *other == turn) {
        advice.push(Advice::AllTurned { turn });
    }
    if judgement.summary.right + judgement.summary.turned == 0 {
        advice.push(shift(&read, &judgement.grid).unwrap_or(Advice::AllWrong));
    }
    advice
}

/// The shift that all read squares share.
fn shift(read: &[(Cell, Cell, Turn)], grid: &Grid) -> Option<Advice> {
    let step = |from: usize, to: usize| i64::try_from(to).ok()?.checked_sub(i64::try_from(from).ok()?);
    let of = |(cell, home, _): &(Cell, Cell, Turn)| {
        Some((step(home.column, cell.column)?, step(home.row, cell.row)?))
    };
    let (right, down) = of(read.first()?)?;
    let shared = read.iter().all(|square| of(square) == Some((right, down)));
    (shared && grid.count() > WHOLE_WALL).then_some(Advice::Shifted { right, down })
}
