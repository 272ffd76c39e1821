//! Crowd and time: what the evening's numbers mean for the grid, the helpers, the wall and the shopping list.
//!
//! ```text
//!  Settings (evening, wall) ─┐         ┌─ Expected  how many squares are up at the end, who goes without, who waits how long
//!                            ├─ evening ┼─ Verdict   whether the grid suits the crowd; other grids that do
//!  Work (pieces by level,     │         ├─ Shifts    when how many helpers are needed
//!        area of each pencil)┘         ├─ WallPlan  its size, the height of every row, who reaches it
//!                                      └─ Supplies  pencils, sharpeners, erasers, tape, paper on the wall
//! ```
//!
//! What comes of an evening is found by playing it many times ([`Scene`], [`play`]). A pure function of numbers: the same settings give
//! the same answer. What event.toml leaves out is assumed, and [`Given::assumed`] says so.
//!
//! ```
//! use everysquare::plan::crowd::{Lack, Verdict, Work, evening};
//! use everysquare::plan::settings::Visitors;
//! use everysquare::plan::{Grid, Level, Settings, Tag};
//! let grid = Grid::usual(12, 9);
//! let mut settings = Settings::new("Open evening".to_owned(), Tag::new("K7M").ok_or("no tag")?, grid);
//! settings.evening.visitors = Visitors::new(60, 60);
//! settings.evening.seats = Some(24);
//! settings.evening.minutes = Some(90.0);
//! let mut work = Work::none(2, 4.0 / 3.0);
//! (0..108).for_each(|_| work.add(Level::Easy, &[0.75, 0.25]));
//!
//! let evening = evening(&settings, &work);
//! assert!((56..=60).contains(&evening.expected.up.usual)); // sixty visitors who draw one each
//! assert_eq!(evening.verdict, Verdict::TooLarge(Lack::Visitors));
//! assert_eq!(evening.supplies.pencils.len(), 2);
//! # Ok::<(), &str>(())
//! ```

pub mod binomial;
mod file;
mod forecast;
mod grids;
mod reach;
mod shifts;
mod simulated;
mod stations;
mod supplies;
mod told;

use super::clock::Clock;
use super::level::Level;
use super::settings::{Arrivals, Room, Settings, Visitors};
use crate::frame::{ceil_index, float};

pub use file::{PLAN_FORMAT, PlanFile, PlannedPiece, SheetCount};
pub use forecast::{Forecast, Outlook, Played};
pub use grids::{
    Lack, OtherGrid, Range, SURE, Verdict, WEIGHT_OF_COUNT, badness, grids_of, others, part_of, range,
    verdict,
};
pub use reach::{
    Fit, LOWEST_MM, Means, People, RowHeight, STOOL_MM, WallPlan, part_hang_mm, part_rows, proposed_hang_mm,
    wall,
};
pub use shifts::{COMFORTABLE_MINUTES, Shifts, needed};
pub use simulated::{Expected, PATIENCE_MINUTES, RUNS, Scene, Usual, normal};
pub use stations::{Happened, Staff, Stations, Trace, Wait, play};
pub use supplies::{
    NOBODY_WAITS, PencilNeed, SEATS_A_SHARPENER, SEATS_AN_ERASER, Supplies, TAPE_A_CARD_MM, TAPE_A_SQUARE_MM,
    chances, paper_m2, pencils, supplies,
};
pub use told::{ShiftSaid, boards_told, percent};

/// Visitors to a piece where nothing is said: one each, and one in five only looks or comes too late. Common practice, no source.
const USUAL_VISITORS_A_PIECE: f64 = 1.25;
/// Time of drawing where nothing is said, in minutes. Common practice, no source.
pub const USUAL_MINUTES: f64 = 90.0;
/// Number of seats where nothing is said. Common practice, no source.
pub const USUAL_SEATS: usize = 30;

/// What there is to draw.
#[derive(Clone, Debug, PartialEq)]
pub struct Work {
    /// How many pieces each level has, the easiest first.
    pub pieces: [usize; 4],
    /// For each level and pencil the sum of the parts of pieces that it covers: 2.5 is the area of two and a half pieces.
    pub areas: [Vec<f64>; 4],
    /// The picture's width divided by its height.
    pub shape: f64,
    /// How many pieces a border in reserve has of each level, the easiest first; they are in none of the numbers above.
    pub reserve: [usize; 4],
}

impl Work {
    /// No piece yet, of a picture of so many pencils and that shape.
    #[must_use]
    pub fn none(pencils: usize, shape: f64) -> Self {
        Self { pieces: [0; 4], areas: std::array::from_fn(|_| vec![0.0; pencils]), shape, reserve: [0; 4] }
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
        self.pieces.iter().sum()
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
    pub visitors: Visitors,
    /// How they come.
    pub arrivals: Arrivals,
    /// How many pieces a visitor draws.
    pub pieces_each: f64,
    /// When they begin, where it is known.
    pub start: Option<Clock>,
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
    /// As many as the grid has pieces for.
    Visitors,
    /// [`USUAL_MINUTES`].
    Minutes,
    /// [`USUAL_SEATS`].
    Seats,
    /// [`needed`].
    GivingOut,
    /// [`needed`].
    Hanging,
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
            Self::GivingOut => "giving_out",
            Self::Hanging => "hanging",
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
            (Assumed::GivingOut, evening.giving_out.is_none()),
            (Assumed::Hanging, evening.hanging.is_none()),
            (Assumed::Hang, evening.hang_mm.is_none()),
        ];
        Self {
            visitors: evening.visitors.unwrap_or_else(|| usual_visitors(settings.grid.asked())),
            arrivals: evening.arrivals.unwrap_or_default(),
            pieces_each: evening.pieces_each.unwrap_or(1.0),
            start: evening.start,
            minutes: evening.minutes.unwrap_or(USUAL_MINUTES),
            seats: evening.seats.unwrap_or(USUAL_SEATS),
            minutes_a_piece: evening.minutes_a_piece,
            // the sizes of boards say more than that of a place which the parts do not share
            room: evening.wall.filter(|_| settings.parts.iter().all(|part| part.board.is_none())),
            assumed: left_out.into_iter().filter(|(_, out)| *out).map(|(what, _)| what).collect(),
        }
    }

    /// Whether nobody said it.
    #[must_use]
    pub fn assumes(&self, what: Assumed) -> bool {
        self.assumed.contains(&what)
    }
}

/// As many visitors as a grid of so many pieces is for, in tens.
#[must_use]
pub fn usual_visitors(pieces: usize) -> Visitors {
    let tens = ceil_index(USUAL_VISITORS_A_PIECE * float(pieces) / 10.0).max(1);
    Visitors::exactly(10 * tens)
}

/// What a helper fewer costs at a station.
#[derive(Clone, Debug, PartialEq)]
pub struct OneFewer {
    /// What is to be expected then; `None` where there is only one helper.
    pub giving_out: Option<Expected>,
    /// The same at the wall.
    pub hanging: Option<Expected>,
}

/// All that follows from the evening's numbers.
#[derive(Clone, Debug, PartialEq)]
pub struct Evening {
    /// The numbers themselves.
    pub given: Given,
    /// How many pieces each level has, the easiest first.
    pub pieces: [usize; 4],
    /// The evening as it is played, with the helpers that were given, or else with those that are needed.
    pub scene: Scene,
    /// What it comes to.
    pub expected: Expected,
    /// Helpers that are needed.
    pub needed: Shifts,
    /// What one helper fewer costs.
    pub one_fewer: OneFewer,
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
    /// What a border in reserve brings; `None` where there is none.
    pub reserve: Option<Reserve>,
}

/// A border in reserve.
#[derive(Clone, Debug, PartialEq)]
pub struct Reserve {
    /// Number of its pieces.
    pub pieces: usize,
    /// What is to be expected where they are handed out after all others.
    pub expected: Expected,
}

/// Works out everything.
#[must_use]
pub fn evening(settings: &Settings, work: &Work) -> Evening {
    let given = Given::of(settings);
    let (scene, needed) = scene(settings, &given, work.pieces);
    let expected = scene.expected();
    let range = range(&scene);
    Evening {
        pieces: work.pieces,
        verdict: verdict(&scene, &expected, range),
        range,
        others: others(&settings.grid.within_border(), work.shape, range, given.room, &scene),
        one_fewer: one_fewer(&scene),
        reserve: reserve(&scene, work.reserve),
        wall: wall(&settings.grid, &settings.parts, settings.evening.hang_mm, given.room),
        supplies: supplies(&settings.grid, work, &given, expected.seats_taken),
        expected,
        needed,
        scene,
        given,
    }
}

/// The evening as it is played, and the helpers that it needs.
#[must_use]
pub fn scene(settings: &Settings, given: &Given, pieces: [usize; 4]) -> (Scene, Shifts) {
    let evening = &settings.evening;
    let mut scene = Scene {
        visitors: given.visitors,
        arrivals: given.arrivals,
        pieces_each: given.pieces_each,
        minutes: given.minutes,
        seats: given.seats,
        giving_out: Staff::always(1),
        hanging: Staff::always(1),
        giving_out_minutes: float(evening.giving_out_seconds) / 60.0,
        hanging_minutes: float(evening.hanging_seconds) / 60.0,
        patience_minutes: PATIENCE_MINUTES,
        pieces,
        minutes_a_piece: given.minutes_a_piece,
    };
    let needed = needed(&scene);
    scene.giving_out = evening.giving_out.map_or_else(|| needed.giving_out.clone(), Staff::always);
    scene.hanging = evening.hanging.map_or_else(|| needed.hanging.clone(), Staff::always);
    (scene, needed)
}

/// The evening played with the pieces of a border too.
fn reserve(scene: &Scene, border: [usize; 4]) -> Option<Reserve> {
    let pieces = border.iter().sum();
    let with = || Scene {
        pieces: std::array::from_fn(|level| scene.pieces[level] + border[level]),
        ..scene.clone()
    };
    (pieces > 0).then(|| Reserve { pieces, expected: with().expected() })
}

fn one_fewer(scene: &Scene) -> OneFewer {
    let with = |staff: &Staff, scene: Scene| (staff.most() > 1).then(|| scene.expected());
    OneFewer {
        giving_out: with(
            &scene.giving_out,
            Scene { giving_out: scene.giving_out.one_fewer(), ..scene.clone() },
        ),
        hanging: with(&scene.hanging, Scene { hanging: scene.hanging.one_fewer(), ..scene.clone() }),
    }
}

impl Evening {
    /// Last minute from the start at which a piece of a level is given out; 0 where there is no time for any.
    #[must_use]
    pub fn last_call(&self, level: Level) -> f64 {
        self.scene.last_call(self.given.minutes_a_piece[level.index()]).max(0.0)
    }
}
