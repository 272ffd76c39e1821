//! `event.toml`: what the organiser decides; made to be edited by hand.
//!
//! [`Settings::from_toml`] reads it and refuses what it does not know or cannot use, with the line, what was read and
//! what is allowed; [`Settings::to_toml`] writes a new one with comments; [`set`] changes one setting and keeps every
//! other byte.
//!
//! ```
//! use everysquare::plan::settings::{Settings, set};
//! let text = "name = \"Open evening\"\ntag = \"K7M\"\n[wall]\ncolumns = 10 # as wide as the hall\nrows = 8\n";
//! let settings = Settings::from_toml(text)?;
//! assert_eq!((settings.grid.columns, settings.grid.square_mm), (10, 127.0));
//!
//! let wider = set(text, "wall.columns", 12)?;
//! assert!(wider.contains("columns = 12 # as wide as the hall"));
//!
//! let refused = set(text, "wall.columns", 0).unwrap_err().to_string();
//! assert_eq!(refused, "event.toml, line 4: columns = 0: must be a whole number from 1 to 702");
//! # Ok::<(), everysquare::plan::settings::SettingsError>(())
//! ```

mod choice;
mod coming;
mod error;
mod evening;
mod known;
mod levels;
mod parts;
mod read;
mod section;
mod toml;
mod write;

use std::ops::RangeInclusive;

use super::cell::Grid;
use super::code::{QUIET_ZONE, SIDE, Tag};
use crate::frame::float;
use crate::words::Words;

pub use super::cell::{ACROSS, DEFAULT_PIECE_MM, DEFAULT_SQUARE_MM, MOST_CELLS};
pub use choice::Choice;
pub use coming::{Arrivals, VISITORS, Visitors};
pub use error::SettingsError;
pub use evening::{
    EveningSettings, HANG_MM, HELPERS, LONGEST_BY_CLOCK, MINUTES, MINUTES_A_PIECE, PIECES_EACH, ROOM_MM,
    Room, SEATS, SECONDS, USUAL_MINUTES_A_PIECE, USUAL_SECONDS,
};
pub use levels::{BOUND, LevelSettings, USUAL_BOUNDS};
pub use parts::{BOTTOM_MM, PLACE_LENGTH, WallPart, set_parts};
pub use write::{NewValue, set};

/// Minimum number of columns and rows of a wall with a border in reserve: something lies within it.
pub const LEAST_WITH_BORDER: usize = 3;
/// Side of a square of paper, in mm: from a sticky note to a poster.
pub const SQUARE_MM: RangeInclusive<f64> = 30.0..=1_000.0;
/// Side of a piece, in mm; a piece is also never larger than its square.
pub const PIECE_MM: RangeInclusive<f64> = 5.0..=300.0;
/// Side of a module on a square, in mm: below, a phone at arm's length does not resolve it.
pub const MODULE_MM: RangeInclusive<f64> = 0.3..=5.0;
/// Pencil colours: fewer than 2 is no picture, more than 24 is no longer a box of pencils.
pub const COLOURS: RangeInclusive<usize> = 2..=24;
/// Characters of a name.
pub const NAME_LENGTH: usize = 120;
/// Pencil colours where nothing is said.
pub const DEFAULT_COLOURS: usize = 6;
/// The picture's file where nothing is said.
pub const DEFAULT_PICTURE: &str = "picture.png";
/// Long and short side of a phone's photo of 12 megapixels.
pub const PHOTO_PX: [f64; 2] = [4032.0, 3024.0];
/// The part of a photo's frame that the wall is to fill.
pub const FRAME_FILLED: f64 = 0.85;
/// Pixels a module that reading aims at.
pub const PX_A_MODULE: f64 = 1.5;
/// From the cut edges to a code where nothing is said, in mm; at least 4 modules. Neighbours taped 3 mm askew leave
/// 87 % of codes in sight at 7 mm and 94 % at 9 mm (made wall of 78 squares).
pub const DEFAULT_INSET_MM: f64 = 8.0;

/// Everything that event.toml says, with what was left out filled in.
#[derive(Clone, Debug, PartialEq)]
pub struct Settings {
    /// What the evening is called.
    pub name: String,
    /// The three characters in every code of this event.
    pub tag: Tag,
    /// The picture.
    pub picture: PictureSettings,
    /// The wall's grid.
    pub grid: Grid,
    /// The parts that the wall hangs in, in the file's order; none where it is one piece.
    pub parts: Vec<WallPart>,
    /// The codes on the squares.
    pub code: CodeSettings,
    /// How the kit is printed.
    pub print: PrintSettings,
    /// How hard each piece is.
    pub levels: LevelSettings,
    /// The crowd, the time, the room.
    pub evening: EveningSettings,
    /// The language of all that is printed and shown.
    pub language: Language,
    /// The language that stands below it on what visitors read and take home; `None` for one language alone.
    pub second_language: Option<Language>,
}

/// The languages that come with the program.
#[derive(Copy, Clone, Debug, PartialEq, Eq, Default)]
pub enum Language {
    /// English as in the USA.
    #[default]
    English,
    /// English as in Great Britain.
    BritishEnglish,
    /// Spanish.
    Spanish,
}

/// `[picture]` and `[[pencils]]`.
#[derive(Clone, Debug, PartialEq)]
pub struct PictureSettings {
    /// The file's name within the event folder.
    pub file: String,
    /// Whose picture it is, as prints that show it say; `None` where nobody said.
    pub credit: Option<String>,
    /// How many pencil colours the picture is drawn with.
    pub colours: usize,
    /// The organiser's own pencils; empty where the colours are chosen by the program.
    pub pencils: Vec<Pencil>,
}

/// One of the organiser's pencils.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Pencil {
    /// What people call it.
    pub name: String,
    /// Its colour, red, green, blue.
    pub srgb: [u8; 3],
}

impl Pencil {
    /// Its colour as CSS writes it, such as `#2f6b3a`.
    #[must_use]
    pub fn hex(&self) -> String {
        hex(self.srgb)
    }

    /// Whether it is the white of the paper: nobody needs a pencil for it.
    #[must_use]
    pub fn is_paper(&self) -> bool {
        let [darkest, lightest] =
            [self.srgb.iter().min(), self.srgb.iter().max()].map(|level| level.map_or(0, |l| *l));
        darkest >= LEAST_OF_PAPER && lightest - darkest <= MOST_TINT_OF_PAPER
    }

    /// How many of it there should be, as people read it.
    #[must_use]
    pub fn counted(&self, count: usize, words: &Words) -> String {
        if self.is_paper() { words.say("pencils-paper", &[]) } else { count.to_string() }
    }
}

/// Level of sRGB that every channel of a white has at least, and by how much its channels may differ: a CIELAB lightness of 95 and
/// a chroma that nobody calls a colour. Common practice, no source.
const LEAST_OF_PAPER: u8 = 236;
const MOST_TINT_OF_PAPER: u8 = 16;

/// A colour as CSS writes it, such as `#2f6b3a`.
#[must_use]
pub fn hex([red, green, blue]: [u8; 3]) -> String {
    format!("#{red:02x}{green:02x}{blue:02x}")
}

/// `[code]`.
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct CodeSettings {
    /// Side of a module on a square, in mm.
    pub module_mm: f64,
    /// Which corner of an upright square the code stands in.
    pub corner: Corner,
    /// From the cut edges to the code's outer modules, in mm.
    pub inset_mm: f64,
}

/// A corner of an upright square.
#[derive(Copy, Clone, Debug, PartialEq, Eq, Default)]
pub enum Corner {
    /// Top left.
    TopLeft,
    /// Top right.
    TopRight,
    /// Bottom right.
    #[default]
    BottomRight,
    /// Bottom left.
    BottomLeft,
}

/// `[print]`.
#[derive(Copy, Clone, Debug, PartialEq, Eq, Default)]
pub struct PrintSettings {
    /// The paper in the printer.
    pub paper: Paper,
    /// How the printer turns the paper over.
    pub flip: Flip,
    /// The unit that people read.
    pub units: Units,
    /// Whether a piece and its square are printed as one.
    pub join: Join,
}

/// Width of a stub, at most, in mm: beside a square of five inches on letter paper there is that much. Wider ones have nothing more to say.
pub const STUB_MM: f64 = 63.0;

impl PrintSettings {
    /// Width of the stubs that squares are printed with, at most, in mm; `None` where they have none.
    #[must_use]
    pub fn stub_mm(&self) -> Option<f64> {
        (self.join == Join::Beside).then_some(STUB_MM)
    }
}

/// How a piece and its square are printed.
#[derive(Copy, Clone, Debug, PartialEq, Eq, Default)]
pub enum Join {
    /// On sheets of their own.
    ///
    /// The usual: squares need no colour and pieces little paper, which counts where a school's printer prints black.
    #[default]
    Apart,
    /// Side by side in one strip of paper, so that nobody has to find the one for the other.
    Beside,
}

/// A size of paper, printed upright (the short side across).
#[derive(Copy, Clone, Debug, PartialEq, Eq, Default)]
pub enum Paper {
    /// 8½ × 11 in, ANSI/ASME Y14.1 size A.
    #[default]
    Letter,
    /// 11 × 17 in, ANSI/ASME Y14.1 size B.
    Tabloid,
    /// 210 × 297 mm, ISO 216.
    A4,
    /// 297 × 420 mm, ISO 216.
    A3,
}

impl Paper {
    /// Width and height in mm, upright.
    #[must_use]
    pub fn size_mm(self) -> (f64, f64) {
        match self {
            Self::Letter => (215.9, 279.4),
            Self::Tabloid => (279.4, 431.8),
            Self::A4 => (210.0, 297.0),
            Self::A3 => (297.0, 420.0),
        }
    }
}

/// How the printer turns the paper over for its back.
#[derive(Copy, Clone, Debug, PartialEq, Eq, Default)]
pub enum Flip {
    /// About the long edge: columns mirror on an upright page.
    #[default]
    LongEdge,
    /// About the short edge: rows mirror on an upright page.
    ShortEdge,
    /// Not at all: printed on one side, without backs.
    None,
}

/// The unit that people read.
#[derive(Copy, Clone, Debug, PartialEq, Eq, Default)]
pub enum Units {
    /// Inches.
    #[default]
    Inch,
    /// Millimetres.
    Mm,
}

impl Settings {
    /// Settings for a new event: what was chosen, and the usual for all the rest.
    #[must_use]
    pub fn new(name: String, tag: Tag, grid: Grid) -> Self {
        Self {
            name,
            tag,
            picture: PictureSettings {
                file: DEFAULT_PICTURE.to_owned(),
                credit: None,
                colours: DEFAULT_COLOURS,
                pencils: Vec::new(),
            },
            grid,
            parts: Vec::new(),
            code: CodeSettings::usual(&grid),
            print: PrintSettings::default(),
            levels: LevelSettings::default(),
            evening: EveningSettings::default(),
            language: Language::default(),
            second_language: None,
        }
    }
}

impl CodeSettings {
    /// Where nothing is said: as small as the wall allows, bottom right.
    #[must_use]
    pub fn usual(grid: &Grid) -> Self {
        let module_mm = Self::usual_module_mm(grid);
        Self { module_mm, corner: Corner::default(), inset_mm: Self::usual_inset_mm(module_mm) }
    }

    /// Side of a module where nothing is said: [`CodeSettings::module_mm_for`], or what small squares have room for.
    #[must_use]
    pub fn usual_module_mm(grid: &Grid) -> f64 {
        let room = grid.square_mm / float(SIDE + 2 * QUIET_ZONE);
        Self::module_mm_for(grid).min((room / 0.05).floor() * 5.0 / 100.0)
    }

    /// From the cut edges to the code where nothing is said: [`DEFAULT_INSET_MM`], or the quiet zone where that is wider.
    #[must_use]
    pub fn usual_inset_mm(module_mm: f64) -> f64 {
        DEFAULT_INSET_MM.max(Self::least_inset_mm(module_mm))
    }

    /// The least distance from the cut edges to the code: its quiet zone.
    #[must_use]
    pub fn least_inset_mm(module_mm: f64) -> f64 {
        hundredths(float(QUIET_ZONE) * module_mm)
    }

    /// The largest distance from the cut edges that keeps the code and its quiet zone on the square.
    #[must_use]
    pub fn most_inset_mm(module_mm: f64, square_mm: f64) -> f64 {
        hundredths(square_mm - float(SIDE + QUIET_ZONE) * module_mm)
    }

    /// Where the top left corner of the code's top left module lies on an upright square: x and y in mm, `SquareMm`.
    #[must_use]
    pub fn top_left_mm(&self, square_mm: f64) -> (f64, f64) {
        let near = self.inset_mm;
        let far = square_mm - self.inset_mm - 21.0 * self.module_mm;
        match self.corner {
            Corner::TopLeft => (near, near),
            Corner::TopRight => (far, near),
            Corner::BottomRight => (far, far),
            Corner::BottomLeft => (near, far),
        }
    }

    /// The smallest module that a phone at the wall still resolves, in mm: [`PX_A_MODULE`] in a photo of [`PHOTO_PX`] whose
    /// frame the wall fills to [`FRAME_FILLED`], rounded to 0.05 mm and kept in 0.5 … 1.2 mm.
    ///
    /// ```
    /// use everysquare::plan::settings::CodeSettings;
    /// use everysquare::plan::Grid;
    /// let grid = Grid::usual(10, 8);
    /// assert_eq!(CodeSettings::module_mm_for(&grid), 0.6);
    /// ```
    #[must_use]
    pub fn module_mm_for(grid: &Grid) -> f64 {
        let size = grid.size();
        let (long, short) = (size.x.max(size.y), size.x.min(size.y));
        let [px_long, px_short] = PHOTO_PX.map(|px| px * FRAME_FILLED);
        let px_per_mm = (px_long / long).min(px_short / short);
        ((PX_A_MODULE / px_per_mm / 0.05).round() * 0.05 * 100.0).round().clamp(50.0, 120.0) / 100.0
    }
}

/// Rounded to a hundredth, so that 4 × 0.6 is 2.4 and nothing is refused for the last bit of a product.
fn hundredths(mm: f64) -> f64 {
    (mm * 100.0).round() / 100.0
}
