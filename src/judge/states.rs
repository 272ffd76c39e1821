//! What state each cell is in.
//!
//! A square in its own cell and upright is `right`; in its own cell and turned, `turned`; any other square is
//! `wrong`, turned or not. Where two photos contradict each other nobody knows what hangs there now, so the
//! cell is `unread`: a square is never called right on half of the evidence. In a border in reserve nothing has to hang; a cell of it
//! where no square was read is `reserve` and counts for nothing. A cell that is kept free is `free` unless a square was read in it, which
//! is `wrong` there, whichever it is.

use serde::{Deserialize, Serialize};

use crate::frame::{PhotoPx, Point};
use crate::plan::{Cell, Grid, Turn};
use crate::read::{Apart, CellReading, Sight, WallReading};

/// The state of one cell.
#[derive(Copy, Clone, Debug, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum State {
    /// Its own square, upright.
    Right,
    /// Another square, or one of another event.
    Wrong,
    /// Its own square, turned.
    Turned,
    /// The wall behind shows.
    Empty,
    /// Something hangs there whose code could not be read, or about which two photos disagree.
    Unread,
    /// In no photo.
    Unseen,
    /// In the border in reserve, and no square was read there: none has to hang.
    Reserve,
    /// Kept free, and no square was read there.
    Free,
}

impl State {
    /// The six that a summary counts, in its order.
    pub const ALL: [Self; 6] =
        [Self::Right, Self::Wrong, Self::Turned, Self::Empty, Self::Unread, Self::Unseen];

    /// Its name in `report.json`, and the end of its sentence's id in `words`.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::Right => "right",
            Self::Wrong => "wrong",
            Self::Turned => "turned",
            Self::Empty => "empty",
            Self::Unread => "unread",
            Self::Unseen => "unseen",
            Self::Reserve => "reserve",
            Self::Free => "free",
        }
    }
}

/// One cell, judged.
#[derive(Clone, Debug, PartialEq)]
pub struct JudgedCell {
    /// Which.
    pub cell: Cell,
    /// What people call it.
    pub label: String,
    /// How it stands with it.
    pub state: State,
    /// The cell where the square that hangs here belongs; `None` where no square of this event was read.
    pub found: Option<Cell>,
    /// How far what hangs here is turned clockwise from upright.
    pub turn: Turn,
    /// How surely it was read, 0 … 1.
    pub certainty: f64,
    /// As in [`CellReading::corners`].
    pub corners: Option<[Point<PhotoPx>; 4]>,
    /// Which photo shows it best, from 0.
    pub photo: usize,
}

/// How many cells are in which state; those in reserve and those that are kept free are not counted.
#[derive(Copy, Clone, Debug, PartialEq, Eq, Default, Serialize, Deserialize)]
pub struct Summary {
    /// Its own square, upright.
    pub right: usize,
    /// Another square.
    pub wrong: usize,
    /// Its own square, turned.
    pub turned: usize,
    /// No square.
    pub empty: usize,
    /// Could not be read.
    pub unread: usize,
    /// In no photo.
    pub unseen: usize,
    /// All of them.
    pub cells: usize,
}

impl Summary {
    /// Cells of which nobody knows what hangs there.
    #[must_use]
    pub fn unknown(&self) -> usize {
        self.unread + self.unseen
    }

    /// What it comes to. Spare copies and foreign squares are among the wrong ones.
    #[must_use]
    pub fn outcome(&self) -> Outcome {
        if self.wrong + self.turned + self.empty > 0 {
            Outcome::Fix
        } else if self.unknown() > 0 {
            Outcome::CannotTell
        } else {
            Outcome::AllRight
        }
    }
}

/// A code that is none of this event's squares.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Stranger {
    /// What it says.
    pub text: String,
    /// Where it hangs.
    pub cell: Cell,
}

/// The whole wall, judged.
#[derive(Clone, Debug, PartialEq)]
pub struct Judgement {
    /// The wall.
    pub grid: Grid,
    /// Every cell, row by row from the top.
    pub cells: Vec<JudgedCell>,
    /// How many are in which state.
    pub summary: Summary,
    /// Squares that were seen nowhere, by the cell where they belong, without those that the picture does not ask for. As many of them as
    /// there are unknown cells may hang there all the same.
    pub missing: Vec<Cell>,
    /// Squares that were seen more than once, by the cell where they belong.
    pub twice: Vec<Cell>,
    /// What hangs there without belonging to this event.
    pub strangers: Vec<Stranger>,
    /// Cells where two photos show two different squares.
    pub contradictions: Vec<Cell>,
    /// Squares that are in a photo, apart from the wall, and cells of which nothing is known for that reason. Such squares are not
    /// missing.
    pub apart: Apart,
    /// Cells in which something hangs that cannot be read, and whose square was drawn on spare paper without a code: nobody but a person
    /// can say whether it is that one. Such squares are not missing.
    pub spare: Vec<Cell>,
}

/// What a check comes to.
#[derive(Copy, Clone, Debug, PartialEq, Eq)]
pub enum Outcome {
    /// Every cell holds its own square, upright.
    AllRight,
    /// Something is to be fixed.
    Fix,
    /// Nothing wrong was found, but some cells could not be told.
    CannotTell,
}

impl Outcome {
    /// The exit code of `check`.
    #[must_use]
    pub fn code(self) -> u8 {
        match self {
            Self::AllRight => 0,
            Self::Fix => 1,
            Self::CannotTell => 2,
        }
    }
}

impl Judgement {
    /// One cell; `None` where the wall has no such cell.
    #[must_use]
    pub fn at(&self, cell: Cell) -> Option<&JudgedCell> {
        if self.grid.holds(cell) { self.cells.get(self.grid.index(cell)) } else { None }
    }

    /// How many of the missing squares cannot hang in an unknown cell, however those are filled.
    #[must_use]
    pub fn surely_missing(&self) -> usize {
        self.missing.len().saturating_sub(self.summary.unknown())
    }

    /// The same with squares that are known to be drawn on spare paper, without a code, by the cell where they belong.
    #[must_use]
    pub fn with_spares(mut self, squares: &[Cell]) -> Self {
        let may_hang = |cell: &Cell| {
            let is_unread = self.at(*cell).is_some_and(|at| at.state == State::Unread);
            is_unread && self.missing.contains(cell) && !self.contradictions.contains(cell)
        };
        let spare: Vec<Cell> = squares.iter().copied().filter(may_hang).collect();
        self.missing.retain(|home| !spare.contains(home));
        self.spare = spare;
        self
    }

    /// Number of squares that hang in their places in the border in reserve.
    #[must_use]
    pub fn border_up(&self) -> usize {
        let in_place = |at: &&JudgedCell| matches!(at.state, State::Right | State::Turned);
        self.cells.iter().filter(in_place).filter(|at| self.grid.in_border(at.cell)).count()
    }

    /// What it comes to.
    #[must_use]
    pub fn outcome(&self) -> Outcome {
        self.summary.outcome()
    }
}

/// Judges a reading of the wall `grid`. A cell that the reading leaves out is `unseen`.
#[must_use]
pub fn judge(reading: &WallReading, grid: &Grid) -> Judgement {
    let mut cells: Vec<JudgedCell> = grid.cells().map(|cell| unseen(cell, grid)).collect();
    let mut strangers = Vec::new();
    for seen in reading.cells.iter().filter(|seen| grid.holds(seen.cell)) {
        let contradicted = reading.contradictions.contains(&seen.cell);
        cells[grid.index(seen.cell)] = judge_cell(seen, contradicted, grid);
        if let (Sight::Stranger { text, .. }, false) = (&seen.sight, contradicted) {
            strangers.push(Stranger { text: text.clone(), cell: seen.cell });
        }
    }
    strangers.sort_by_key(|stranger| stranger.cell);
    let times = times_seen(&cells, grid);
    let seen = |wanted: fn(usize) -> bool| {
        grid.cells().filter(|cell| wanted(times[grid.index(*cell)])).collect::<Vec<_>>()
    };
    let mut contradictions: Vec<Cell> =
        reading.contradictions.iter().copied().filter(|cell| grid.holds(*cell)).collect();
    contradictions.sort();
    contradictions.dedup();
    let apart = apart(&reading.apart, grid);
    let is_missing = |home: &Cell| !apart.squares.contains(home) && grid.asks_for(*home);
    let missing = seen(|n| n == 0).into_iter().filter(is_missing).collect();
    Judgement {
        grid: *grid,
        summary: count(&cells),
        missing,
        twice: seen(|n| n > 1),
        strangers,
        contradictions,
        cells,
        apart,
        spare: Vec::new(),
    }
}

/// What of it is on the wall `grid`.
fn apart(of: &Apart, grid: &Grid) -> Apart {
    let on_grid = |cells: &[Cell]| cells.iter().copied().filter(|cell| grid.holds(*cell)).collect();
    Apart { squares: on_grid(&of.squares), is_part: of.is_part, cells: on_grid(&of.cells) }
}

fn unseen(cell: Cell, grid: &Grid) -> JudgedCell {
    JudgedCell {
        cell,
        label: grid.label(cell),
        state: without_square(cell, grid).unwrap_or(State::Unseen),
        found: None,
        turn: Turn::None,
        certainty: 0.0,
        corners: None,
        photo: 0,
    }
}

/// State of a cell that the picture asks no square for, where none was read in it; `None` for all others.
fn without_square(cell: Cell, grid: &Grid) -> Option<State> {
    match () {
        () if grid.is_kept_free(cell) => Some(State::Free),
        () if grid.in_border(cell) => Some(State::Reserve),
        () => None,
    }
}

fn judge_cell(seen: &CellReading, contradicted: bool, grid: &Grid) -> JudgedCell {
    let none_read = |state: State| without_square(seen.cell, grid).unwrap_or(state);
    let (state, found, turn) = match &seen.sight {
        _ if contradicted => (State::Unread, None, Turn::None),
        Sight::Square { home, turn } if *home == seen.cell && grid.is_kept_free(*home) => {
            (State::Wrong, Some(*home), *turn)
        }
        Sight::Square { home, turn } if *home == seen.cell && *turn == Turn::None => {
            (State::Right, Some(*home), *turn)
        }
        Sight::Square { home, turn } if *home == seen.cell => (State::Turned, Some(*home), *turn),
        Sight::Square { home, turn } if grid.holds(*home) => (State::Wrong, Some(*home), *turn),
        Sight::Stranger { turn, .. } => (State::Wrong, None, *turn),
        Sight::Square { .. } => (State::Unread, None, Turn::None),
        Sight::Unread => (none_read(State::Unread), None, Turn::None),
        Sight::Empty => (none_read(State::Empty), None, Turn::None),
        Sight::Unseen => (none_read(State::Unseen), None, Turn::None),
    };
    JudgedCell {
        state,
        found,
        turn,
        certainty: seen.certainty,
        corners: seen.corners,
        photo: seen.photo,
        ..unseen(seen.cell, grid)
    }
}

/// How often each square was seen, in the order of the cells where they belong.
fn times_seen(cells: &[JudgedCell], grid: &Grid) -> Vec<usize> {
    let mut times = vec![0; grid.count()];
    for home in cells.iter().filter_map(|cell| cell.found) {
        times[grid.index(home)] += 1;
    }
    times
}

fn count(cells: &[JudgedCell]) -> Summary {
    let of = |state| cells.iter().filter(|cell| cell.state == state).count();
    Summary {
        right: of(State::Right),
        wrong: of(State::Wrong),
        turned: of(State::Turned),
        empty: of(State::Empty),
        unread: of(State::Unread),
        unseen: of(State::Unseen),
        cells: cells.len() - of(State::Reserve) - of(State::Free),
    }
}
