//! `event.toml`: what the organiser decides.

use super::cell::Grid;
use super::code::Tag;

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
    /// The codes on the squares.
    pub code: CodeSettings,
    /// How the kit is printed.
    pub print: PrintSettings,
}

/// `[picture]` and `[[pencils]]`.
#[derive(Clone, Debug, PartialEq)]
pub struct PictureSettings {
    /// The file's name within the event folder.
    pub file: String,
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
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct PrintSettings {
    /// The paper in the printer.
    pub paper: Paper,
    /// How the printer turns the paper over.
    pub flip: Flip,
    /// The unit that people read.
    pub units: Units,
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
    /// Not at all: backs are pages of their own, not mirrored.
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

impl CodeSettings {
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

    /// The smallest module that a phone at the wall still resolves, in mm: 1.5 px a module in a 4032 × 3024 photo whose
    /// frame the wall fills to 85 %, rounded to 0.05 mm and kept in 0.5 … 1.2 mm.
    ///
    /// ```
    /// use everysquare::plan::settings::CodeSettings;
    /// use everysquare::plan::{Grid, RowsFrom};
    /// let grid = Grid { columns: 10, rows: 8, square_mm: 127.0, tile_mm: 25.4, rows_from: RowsFrom::Bottom };
    /// assert_eq!(CodeSettings::module_mm_for(&grid), 0.6);
    /// ```
    #[must_use]
    pub fn module_mm_for(grid: &Grid) -> f64 {
        let size = grid.size();
        let (long, short) = (size.x.max(size.y), size.x.min(size.y));
        let px_per_mm = (4032.0 * 0.85 / long).min(3024.0 * 0.85 / short);
        ((1.5 / px_per_mm / 0.05).round() * 0.05 * 100.0).round().clamp(50.0, 120.0) / 100.0
    }
}
