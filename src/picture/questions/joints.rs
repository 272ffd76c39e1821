//! How the lines of the picture run on from piece to piece: questions without a number.
//!
//! ```text
//!   which one goes in the box?          which one is turned?
//!
//!    ┌────┬────┐   ┌────┐ ┌────┐ ┌────┐   ┌────┬────┬────┬────┐
//!    │  ╱─┤    │   │ ╲  │ │─╲  │ │   ─│   │ ╱──┼─╲  │ ╲──┼─╲  │
//!    │ ╱  │    │   │  ╲ │ │  ╲ │ │  ╱ │   │╱   │  ╲─┼╱   │  ╲ │
//!    └────┴────┘   └────┘ └────┘ └────┘   └────┴────┴────┴────┘
//!                    a      b      c         a    b    c    d
//! ```
//!
//! A question is asked only where the right piece's lines meet those beside it and any other piece's plainly do not.

use super::sight::pixel;
use super::subject::APART;
use super::{Answer, Draft, Shown, ask};
use crate::frame::{PicturePx, Point, float};
use crate::picture::Picture;
use crate::picture::colour::ciede2000;
use crate::picture::pieces::Crop;
use crate::plan::{Cell, Grid, Turn};

/// Number of places along a piece's side at which it is compared with its neighbour: every half millimetre of an inch.
const PLACES: usize = 50;
/// Depth at which a side is looked at, as a part of the piece's side, at least half a pixel.
const DEPTH: f64 = 0.01;
/// Least part of a joint at which the colours agree, so that everybody sees the lines meet.
const MEETS: f64 = 0.94;
/// Largest part of a joint at which the colours agree, so that everybody sees that they do not.
const BREAKS: f64 = 0.6;
/// Least part of a side that its rarest colour takes, so that a line is seen to cross it.
const CROSSED: f64 = 0.12;
/// Number of pieces in a row of which one is turned.
pub(super) const IN_A_ROW: usize = 4;
/// Number of pieces that a question may begin with, so that large grids take no longer than others.
const MOST_CELLS: usize = 250;
/// Number of pieces that are tried as wrong choices beside a piece.
const MOST_TRIED: usize = 100;
/// Number of pieces to choose from.
const CHOICES: usize = 3;

/// Colours along a piece's side: top and bottom from the left, left and right from the top.
type Side = Vec<[u8; 3]>;

/// The four sides of every piece.
pub(super) struct Joints<'a> {
    grid: &'a Grid,
    /// For each piece, in the grid's order: top, right, bottom, left.
    sides: Vec<[Side; 4]>,
}

impl<'a> Joints<'a> {
    pub fn of(picture: &Picture, grid: &'a Grid) -> Self {
        let crop = picture.crop(grid);
        let sides = grid.cells().map(|cell| sides(picture, &crop, cell)).collect();
        Self { grid, sides }
    }

    /// Cells spread over the picture, all of them where there are few.
    fn some_cells(&self) -> impl Iterator<Item = Cell> + use<> {
        self.grid.cells().step_by(self.grid.count().div_ceil(MOST_CELLS).max(1))
    }

    fn sides(&self, cell: Cell) -> Option<&[Side; 4]> {
        self.sides.get(self.grid.index(cell)).filter(|_| self.grid.holds(cell))
    }

    /// A piece whose neighbour at the right is to be found among three: one whose line goes on there, and two others whose
    /// own lines do not meet it.
    pub fn next_piece(&self) -> Option<Draft> {
        let found = self.some_cells().filter_map(|cell| {
            let next = Cell { column: cell.column + 1, ..cell };
            let [_, right, ..] = self.sides(cell)?;
            let [.., left] = self.sides(next)?;
            if !is_crossed(right) || agreeing(right, left) < MEETS {
                return None;
            }
            let others: Vec<Cell> = self.strangers(right, next).take(CHOICES - 1).collect();
            (others.len() == CHOICES - 1).then_some((cell, next, others))
        });
        let (cell, next, mut choices) = found.max_by_key(|(cell, ..)| self.interest(*cell))?;
        let place = self.grid.index(cell) % CHOICES;
        choices.insert(place.min(choices.len()), next);
        let draft = ask(true, "next-piece", [], Answer::Letter(place))?;
        Some(draft.showing(Shown::Next(cell, choices)))
    }

    /// Pieces with lines that plainly do not meet a side: those after a piece first.
    fn strangers(&self, right: &Side, next: Cell) -> impl Iterator<Item = Cell> {
        let (after, before): (Vec<Cell>, Vec<Cell>) = self.grid.cells().partition(|cell| *cell > next);
        after.into_iter().chain(before).take(MOST_TRIED).filter(move |cell| {
            let Some([_, _, _, left]) = self.sides(*cell) else { return false };
            is_crossed(left) && agreeing(right, left) <= BREAKS
        })
    }

    /// Four pieces side by side of which an inner one is turned, the first that shows best; `turn` is clockwise.
    pub fn turned_piece(&self, kind: &'static str, turn: Turn) -> Option<Draft> {
        let starts = self.some_cells().flat_map(|first| [1, 2].map(|at| (first, at)));
        let good = starts.filter(|(first, at)| self.is_seen_turned(*first, *at, turn) == Some(true));
        let (first, at) =
            good.max_by_key(|(first, at)| self.interest(Cell { column: first.column + at, ..*first }))?;
        let answer = match turn {
            Turn::Half | Turn::None => Answer::Letter(at),
            _ => Answer::Turn(at, Turn::from_quarters(4 - turn.quarters())),
        };
        Some(ask(true, kind, [], answer)?.showing(Shown::Turned(first, IN_A_ROW, at, turn)))
    }

    /// Whether a row's lines meet everywhere, and only around the piece that is turned they do not, and would not with any
    /// turn but the right one.
    fn is_seen_turned(&self, first: Cell, at: usize, turn: Turn) -> Option<bool> {
        let cells = (0..IN_A_ROW).map(|step| Cell { column: first.column + step, ..first });
        let row: Vec<&[Side; 4]> = cells.map(|cell| self.sides(cell)).collect::<Option<_>>()?;
        let joints = row.iter().zip(row.iter().skip(1));
        let whole = joints.into_iter().all(|([_, right, ..], [.., left])| agreeing(right, left) >= MEETS);
        let ([_, before, ..], [.., after]) = (row.get(at.checked_sub(1)?)?, row.get(at + 1)?);
        let crossed = is_crossed(before) && is_crossed(after);
        let turns = if turn == Turn::Half { vec![turn] } else { Turn::ALL.into_iter().skip(1).collect() };
        let breaks = |turn: &Turn| {
            let [left, right] = turned(row.get(at)?, *turn);
            Some(agreeing(before, &left) <= BREAKS && agreeing(&right, after) <= BREAKS)
        };
        Some(whole && crossed && turns.iter().all(|turn| breaks(turn) == Some(true)))
    }

    /// How much there is to look at along a piece's left and right side: the number of places where the colour changes.
    fn interest(&self, cell: Cell) -> usize {
        let changes = |side: &Side| side.iter().zip(side.iter().skip(1)).filter(|(a, b)| a != b).count();
        // many changes are hatching or noise, not lines
        self.sides(cell).map_or(0, |[_, right, _, left]| changes(right).min(4) + changes(left).min(4))
    }
}

/// The left and the right side of a piece that is turned clockwise.
fn turned([top, right, bottom, left]: &[Side; 4], turn: Turn) -> [Side; 2] {
    let back = |side: &Side| side.iter().rev().copied().collect();
    match turn {
        Turn::None => [left.clone(), right.clone()],
        Turn::Quarter => [bottom.clone(), top.clone()],
        Turn::Half => [back(right), back(left)],
        Turn::ThreeQuarters => [back(top), back(bottom)],
    }
}

/// The part of two sides at which they show the same colour.
fn agreeing(one: &Side, other: &Side) -> f64 {
    let same = |(a, b): &(&[u8; 3], &[u8; 3])| a == b || ciede2000(**a, **b) < APART;
    float(one.iter().zip(other).filter(same).count()) / float(PLACES)
}

/// Whether a line is seen to cross a side: two colours or more, each wide enough.
fn is_crossed(side: &Side) -> bool {
    let Some(first) = side.first() else { return false };
    let others = side.iter().filter(|colour| *colour != first && ciede2000(**colour, *first) >= APART);
    (CROSSED..=1.0 - CROSSED).contains(&(float(others.count()) / float(PLACES)))
}

/// The four sides of a piece: top, right, bottom, left.
fn sides(picture: &Picture, crop: &Crop, cell: Cell) -> [Side; 4] {
    let (corner, side) = (crop.piece_top_left(cell), crop.piece.value());
    let near = (DEPTH * side).max(0.5).min(side / 2.0);
    let far = side - near;
    let along = |place: usize| (float(place) + 0.5) / float(PLACES) * side;
    let colours = |at: &dyn Fn(f64) -> [f64; 2]| -> Side {
        let point = |place| {
            let [x, y] = at(along(place));
            Point::<PicturePx>::new(corner.x + x, corner.y + y)
        };
        (0..PLACES).map(|place| pixel(picture, point(place))).collect()
    };
    [colours(&|s| [s, near]), colours(&|s| [far, s]), colours(&|s| [s, far]), colours(&|s| [near, s])]
}
