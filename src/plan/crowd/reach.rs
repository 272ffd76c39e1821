//! How high everything hangs, and who reaches it.
//!
//! ```text
//!    upper_mm ┬──────┬──────┬   a row is reached by whoever reaches its upper edge:
//!             │  A8  │  B8  │   that is where the tape goes
//!    lower_mm ┼──────┼──────┼
//!             │  A7  │  B7  │
//!             └──────┴──────┴ ← hang_mm over the floor
//!   ═══════════════════════════ floor
//! ```

use crate::frame::{MM_PER_INCH, float, floor_index};
use crate::plan::cards::RING_MM;
use crate::plan::cell::Grid;
use crate::plan::settings::{Room, WallPart};

/// Height of a stool with one step, in mm. Common practice, no source.
pub const STOOL_MM: f64 = 230.0;
/// Minimum height of the wall's lower edge that is proposed, in mm.
///
/// The lowest that people reach for without kneeling, 15 inches (2010 ADA Standards for Accessible Design,
/// 308.2.1).
pub const LOWEST_MM: f64 = 381.0;
/// Height of the middle of what hangs on a wall to be looked at, in mm. Common practice in galleries, no
/// source.
const EYES_MM: f64 = 1_450.0;

/// Who hangs squares.
#[derive(Copy, Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum People {
    /// Children from 5 years on, standing.
    Children5,
    /// Children from 9 years on, standing.
    Children9,
    /// Adults who are seated, as in a wheelchair.
    Seated,
    /// Adults, standing.
    Adults,
}

impl People {
    /// All of them, in the order in which they are listed.
    pub const ALL: [Self; 4] = [Self::Children5, Self::Children9, Self::Seated, Self::Adults];

    /// How high nearly all of them reach, in mm.
    ///
    /// - Children: the height below which 5 % of girls of that age are (CDC Growth Charts 2000, stature for age: 1,004 mm at
    ///   60.5 months, 1,232 mm at 108.5), times 1.15 for the raised arm's grip (from memory: adults have 1.18, small children less),
    ///   rounded down to 10 mm.
    /// - Seated adults: 48 inches, unobstructed (2010 ADA Standards for Accessible Design, 308.2.1). Seated children reach less:
    ///   40 inches at 5 to 8 years, 44 at 9 to 12 (the same standards, advisory table at 308.1).
    /// - Adults: the vertical grip reach below which 5 % of British women are (Pheasant, Bodyspace; from memory).
    #[must_use]
    pub fn reach_mm(self) -> f64 {
        match self {
            Self::Children5 => 1_150.0,
            Self::Children9 => 1_410.0,
            Self::Seated => 1_219.2,
            Self::Adults => 1_790.0,
        }
    }

    /// What they need to reach a height. Children never climb, whoever stands beside them: stools and ladders are for adults.
    #[must_use]
    pub fn means(self, height_mm: f64) -> Means {
        let reach = self.reach_mm();
        match self {
            _ if height_mm <= reach => Means::Floor,
            Self::Children5 | Self::Children9 | Self::Seated => Means::Helper,
            Self::Adults if height_mm <= reach + STOOL_MM => Means::Stool,
            Self::Adults => Means::Ladder,
        }
    }

    /// Whether they are children.
    #[must_use]
    pub fn are_children(self) -> bool {
        matches!(self, Self::Children5 | Self::Children9)
    }

    /// Its name in plan.json.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Self::Children5 => "children-from-5",
            Self::Children9 => "children-from-9",
            Self::Seated => "seated",
            Self::Adults => "adults",
        }
    }
}

/// What somebody needs to hang a square.
#[derive(Copy, Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Means {
    /// Nothing: from the floor.
    Floor,
    /// A stool with one step; adults only.
    Stool,
    /// A step ladder; adults only.
    Ladder,
    /// Somebody else who hangs it for them.
    Helper,
}

impl Means {
    /// Its name in plan.json.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Self::Floor => "floor",
            Self::Stool => "stool",
            Self::Ladder => "ladder",
            Self::Helper => "helper",
        }
    }
}

/// One row of squares over the floor.
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct RowHeight {
    /// The number that people give to it.
    pub number: usize,
    /// Its lower edge over the floor.
    pub lower_mm: f64,
    /// Its upper edge over the floor.
    pub upper_mm: f64,
}

impl RowHeight {
    /// What each of [`People::ALL`] needs to hang a square in it.
    #[must_use]
    pub fn means(&self) -> [Means; 4] {
        People::ALL.map(|people| people.means(self.upper_mm))
    }
}

/// The finished wall.
#[derive(Clone, Debug, PartialEq)]
pub struct WallPlan {
    /// Width of all squares.
    pub width_mm: f64,
    /// Height of all squares.
    pub height_mm: f64,
    /// Width with the cards around them.
    pub width_with_cards_mm: f64,
    /// Height with the cards around them.
    pub height_with_cards_mm: f64,
    /// The squares' lower edge over the floor.
    pub hang_mm: f64,
    /// Every row, the highest first; where the wall hangs in parts, on the part where it is highest.
    pub rows: Vec<RowHeight>,
    /// How it fits the place there is; `None` where nothing is known of that.
    pub fit: Option<Fit>,
}

/// How a wall fits the place there is for it.
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct Fit {
    /// The place there is.
    pub room: Room,
    /// Whether all squares and cards fit.
    pub with_cards: bool,
    /// Whether at least all squares fit.
    pub squares: bool,
    /// The largest side of squares with which this grid and its cards fit, rounded down to whole mm; 0 where none do.
    pub largest_square_mm: f64,
}

/// Height of a part's lower edge over the floor, in mm: what is said for it, else `hang_mm`, which is said for the wall, else what its own
/// height proposes.
#[must_use]
pub fn part_hang_mm(part: &WallPart, grid: &Grid, hang_mm: Option<f64>) -> f64 {
    part.bottom_mm.or(hang_mm).unwrap_or_else(|| proposed_hang_mm(part.size(grid).y, grid.square_mm))
}

/// The rows of a part that hangs `hang_mm` over the floor, the highest first.
#[must_use]
pub fn part_rows(part: &WallPart, grid: &Grid, hang_mm: f64) -> Vec<RowHeight> {
    let row = |row: usize| {
        let lower_mm = hang_mm + float(part.last.row - row) * grid.square_mm;
        RowHeight { number: grid.row_number(row), lower_mm, upper_mm: lower_mm + grid.square_mm }
    };
    (part.first.row..=part.last.row).map(row).collect()
}

/// Every row of the wall where it is highest, so that whoever reaches it there reaches it on every part.
fn highest_rows(parts: &[WallPart], grid: &Grid, hang_mm: Option<f64>) -> Vec<RowHeight> {
    let all: Vec<RowHeight> =
        parts.iter().flat_map(|part| part_rows(part, grid, part_hang_mm(part, grid, hang_mm))).collect();
    let highest = |row: usize| {
        let own = all.iter().filter(|own| own.number == grid.row_number(row));
        own.max_by(|a, b| a.upper_mm.total_cmp(&b.upper_mm)).copied()
    };
    (0..grid.rows).filter_map(highest).collect()
}

/// Works out the wall's size and heights; without parts it hangs in one piece.
#[must_use]
pub fn wall(grid: &Grid, parts: &[WallPart], said_mm: Option<f64>, room: Option<Room>) -> WallPlan {
    let size = grid.size();
    let hang_mm = said_mm.unwrap_or_else(|| proposed_hang_mm(size.y, grid.square_mm));
    let rows = match parts {
        [] => part_rows(&WallPart::whole(grid, hang_mm), grid, hang_mm),
        parts => highest_rows(parts, grid, said_mm),
    };
    WallPlan {
        width_mm: size.x,
        height_mm: size.y,
        width_with_cards_mm: size.x + 2.0 * RING_MM,
        height_with_cards_mm: size.y + 2.0 * RING_MM,
        hang_mm,
        rows,
        fit: room.map(|room| Fit::of(grid, room)),
    }
}

/// The height of the lower edge for a wall of a height: its middle before the eyes, but lower where the uppermost row would be out
/// of adults' reach, and never below [`LOWEST_MM`]; rounded down to whole inches where squares measure whole inches, else to whole
/// centimetres, so that every row's height is one that a tape shows.
#[must_use]
pub fn proposed_hang_mm(height_mm: f64, square_mm: f64) -> f64 {
    let at_eyes = EYES_MM - height_mm / 2.0;
    let in_reach = People::Adults.reach_mm() - height_mm;
    let hang_mm = at_eyes.min(in_reach).max(LOWEST_MM);
    let inches = square_mm / MM_PER_INCH;
    let step_mm = if (inches - inches.round()).abs() < ROUNDING_MM { MM_PER_INCH } else { 10.0 };
    float(floor_index(hang_mm / step_mm + ROUNDING_MM)) * step_mm
}

impl Fit {
    /// What of a wall fits a place.
    #[must_use]
    pub fn of(grid: &Grid, room: Room) -> Self {
        let size = grid.size();
        let fits = |more: f64| room.holds(size.x + more, size.y + more);
        let across = (room.width_mm - 2.0 * RING_MM) / float(grid.columns);
        let down = (room.height_mm - 2.0 * RING_MM) / float(grid.rows);
        let largest_square_mm = float(floor_index(across.min(down) + ROUNDING_MM));
        Self { room, with_cards: fits(2.0 * RING_MM), squares: fits(0.0), largest_square_mm }
    }
}

/// A length that is the last bits of a sum, in mm.
const ROUNDING_MM: f64 = 1e-6;
