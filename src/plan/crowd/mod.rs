//! Crowd and time: what the evening's numbers mean for the grid, the wall and the shopping list.
//!
//! ```text
//!  Settings (evening, wall) ─┐         ┌─ Time      how many pieces are finished, by level
//!                            ├─ evening ┼─ Verdict   whether the grid suits the crowd; other grids that do
//!  Work (pieces by level,     │         ├─ WallPlan  its size, the height of every row, who reaches it
//!        area of each pencil)┘         └─ Supplies  pencils, sharpeners, erasers, tape, paper on the wall
//! ```
//!
//! A pure function of numbers; what event.toml leaves out is assumed, and [`Given::assumed`] says so.
//!
//! ```
//! use everysquare::plan::crowd::{Verdict, Work, evening};
//! use everysquare::plan::{Grid, Level, RowsFrom, Settings, Tag};
//! let grid = Grid { columns: 10, rows: 8, square_mm: 127.0, piece_mm: 25.4, rows_from: RowsFrom::Bottom };
//! let mut settings = Settings::new("Open evening".to_owned(), Tag::new("K7M").ok_or("no tag")?, grid);
//! settings.evening.visitors = Some(60);
//! settings.evening.seats = Some(30);
//! settings.evening.minutes = Some(90.0);
//! let mut work = Work::none(2, 1.25);
//! (0..80).for_each(|_| work.add(Level::Easy, &[0.75, 0.25]));
//!
//! let evening = evening(&settings, &work);
//! assert_eq!(evening.time.can_finish, 192); // 30 seats × (90 minutes / 13 − ½)
//! assert_eq!(evening.verdict, Verdict::TooBigForCrowd(20)); // 60 visitors draw one each
//! assert_eq!(evening.supplies.pencils[1].count, 12); // of 30 people, each with chance ¼
//! # Ok::<(), &str>(())
//! ```

pub mod binomial;
mod file;
mod grids;
mod reach;
mod supplies;
mod time;

use super::level::Level;
use super::settings::{Room, Settings};

pub use file::{PLAN_FORMAT, PlanFile, PlannedPiece, SheetCount};
pub use grids::{
    OtherGrid, PIECES_A_VISITOR, Range, Verdict, WEIGHT_OF_COUNT, badness, grids_of, others, range, verdict,
};
pub use reach::{Fit, LOWEST_MM, Means, People, RowHeight, STOOL_MM, WallPlan, proposed_hang_mm, wall};
pub use supplies::{
    NOBODY_WAITS, PencilNeed, SEATS_A_SHARPENER, SEATS_AN_ERASER, Supplies, TAPE_A_CARD_MM, TAPE_A_SQUARE_MM,
    chances, pencils, supplies,
};
pub use time::{HAND_OUT_MINUTES, Time, part_of, time};

/// Number of visitors where nothing is said. Common practice, no source.
pub const USUAL_VISITORS: usize = 60;
/// Time of drawing where nothing is said, in minutes. Common practice, no source.
pub const USUAL_MINUTES: f64 = 90.0;
/// Number of seats where nothing is said. Common practice, no source.
pub const USUAL_SEATS: usize = 24;

/// What there is to draw.
#[derive(Clone, Debug, PartialEq)]
pub struct Work {
    /// How many pieces each level has, the easiest first.
    pub pieces: [usize; 4],
    /// For each level and pencil the sum of the parts of pieces that it covers: 2.5 is the area of two and a half pieces.
    pub areas: [Vec<f64>; 4],
    /// The picture's width divided by its height.
    pub shape: f64,
}

impl Work {
    /// No piece yet, of a picture of so many pencils and that shape.
    #[must_use]
    pub fn none(pencils: usize, shape: f64) -> Self {
        Self { pieces: [0; 4], areas: std::array::from_fn(|_| vec![0.0; pencils]), shape }
    }

    /// One piece more, with the part of its area that each pencil covers.
    pub fn add(&mut self, level: Level, shares: &[f64]) {
        self.pieces[level.index()] += 1;
        for (sum, share) in self.areas[level.index()].iter_mut().zip(shares) {
            *sum += share;
        }
    }

    /// How many pieces there are.
    #[must_use]
    pub fn count(&self) -> usize {
        sum(self.pieces)
    }

    /// How many pencils there are.
    #[must_use]
    pub fn pencils(&self) -> usize {
        self.areas[0].len()
    }
}

/// The evening's numbers, those that were left out filled in.
#[derive(Clone, Debug, PartialEq)]
pub struct Given {
    /// How many visitors are expected.
    pub visitors: usize,
    /// How long they draw, in minutes.
    pub minutes: f64,
    /// How many can draw at once.
    pub seats: usize,
    /// Minutes for a plain, an easy, a medium and a hard piece.
    pub minutes_a_piece: [f64; 4],
    /// The place there is for the wall.
    pub room: Option<Room>,
    /// What of this nobody said.
    pub assumed: Vec<Assumed>,
}

/// A number that nobody said.
#[derive(Copy, Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Assumed {
    /// [`USUAL_VISITORS`].
    Visitors,
    /// [`USUAL_MINUTES`].
    Minutes,
    /// [`USUAL_SEATS`].
    Seats,
    /// [`proposed_hang_mm`].
    Hang,
}

impl Assumed {
    /// Its name in event.toml.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Self::Visitors => "visitors",
            Self::Minutes => "minutes",
            Self::Seats => "seats",
            Self::Hang => "hang_mm",
        }
    }
}

impl Given {
    /// From event.toml.
    #[must_use]
    pub fn of(settings: &Settings) -> Self {
        let evening = &settings.evening;
        let left_out = [
            (Assumed::Visitors, evening.visitors.is_none()),
            (Assumed::Minutes, evening.minutes.is_none()),
            (Assumed::Seats, evening.seats.is_none()),
            (Assumed::Hang, evening.hang_mm.is_none()),
        ];
        Self {
            visitors: evening.visitors.unwrap_or(USUAL_VISITORS),
            minutes: evening.minutes.unwrap_or(USUAL_MINUTES),
            seats: evening.seats.unwrap_or(USUAL_SEATS),
            minutes_a_piece: evening.minutes_a_piece,
            room: evening.wall,
            assumed: left_out.into_iter().filter(|(_, out)| *out).map(|(what, _)| what).collect(),
        }
    }

    /// Whether nobody said it.
    #[must_use]
    pub fn assumes(&self, what: Assumed) -> bool {
        self.assumed.contains(&what)
    }
}

/// All that follows from the evening's numbers.
#[derive(Clone, Debug, PartialEq)]
pub struct Evening {
    /// The numbers themselves.
    pub given: Given,
    /// How many pieces each level has, the easiest first.
    pub pieces: [usize; 4],
    /// What the time allows.
    pub time: Time,
    /// Whether the grid suits the crowd.
    pub verdict: Verdict,
    /// How many pieces would suit the crowd.
    pub range: Range,
    /// Other grids that do, the best first; the settings' own is none of them.
    pub others: Vec<OtherGrid>,
    /// The finished wall.
    pub wall: WallPlan,
    /// What has to be there.
    pub supplies: Supplies,
}

/// Works out everything.
#[must_use]
pub fn evening(settings: &Settings, work: &Work) -> Evening {
    let given = Given::of(settings);
    let time = time(work, given.minutes_a_piece, given.seats, given.visitors, given.minutes);
    let range = range(given.visitors, time.can_finish);
    Evening {
        pieces: work.pieces,
        verdict: verdict(work.count(), given.visitors, &time),
        range,
        others: others(&settings.grid, work.shape, range, given.room),
        wall: wall(&settings.grid, settings.evening.hang_mm, given.room),
        supplies: supplies(&settings.grid, work, &given, time.seats_in_use),
        time,
        given,
    }
}

fn sum(pieces: [usize; 4]) -> usize {
    pieces.iter().sum()
}
