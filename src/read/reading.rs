//! Result of reading a wall: the seam between what knows pixels and what follows.

use std::collections::BTreeSet;

use thiserror::Error;

use crate::frame::{Map, PhotoPx, Point, StraightPx, WallMm};
use crate::plan::{Cell, Turn};
use crate::words::{Sentence, Tell, told_in_english};

use super::lens::Lens;

/// Reason why a photo cannot be read.
#[derive(Clone, Debug, Error, PartialEq, Eq)]
pub enum ReadError {
    /// No code of any event.
    NoCodes,
    /// Codes of other events only, with their tags.
    Foreign(Vec<String>),
    /// Codes of other kinds only, with the texts of some of them, shortened.
    Other(Vec<String>),
    /// Hardly any light.
    TooDark,
    /// Squares, but nothing that says which part of the wall they hang on.
    CannotPlace,
    /// Squares, with codes too small or too blurred to be read.
    TooSmall,
}

told_in_english!(ReadError);

impl Tell for ReadError {
    fn sentence(&self) -> Sentence {
        match self {
            Self::NoCodes => Sentence::new("error-read-no-codes"),
            Self::Foreign(tags) => Sentence::new("error-read-foreign").with("tags", tags.join(", ")),
            Self::Other(texts) => Sentence::new("error-read-other").with("texts", texts.join(", ")),
            Self::TooDark => Sentence::new("error-read-too-dark"),
            Self::CannotPlace => Sentence::new("error-read-cannot-place"),
            Self::TooSmall => Sentence::new("error-read-too-small"),
        }
    }
}

/// Sight of one cell.
#[derive(Clone, Debug, PartialEq)]
pub enum Sight {
    /// Square of this event.
    Square {
        /// Cell where it belongs.
        home: Cell,
        /// How far it is turned clockwise from upright.
        turn: Turn,
    },
    /// Code that is not one of this event's squares.
    Stranger {
        /// Text of the code.
        text: String,
        /// How far it is turned clockwise from upright.
        turn: Turn,
    },
    /// Bare wall.
    Empty,
    /// Square whose code cannot be read.
    Unread,
    /// Outside the photo, or hidden by somebody or something in front of the wall.
    Unseen,
}

/// Reading of one cell of the wall.
#[derive(Clone, Debug, PartialEq)]
pub struct CellReading {
    /// Cell on the wall.
    pub cell: Cell,
    /// Sight of the cell.
    pub sight: Sight,
    /// Certainty of the sight, 0 … 1.
    pub certainty: f64,
    /// Corners of the paper, clockwise from the square's own top left, in the photo that `photo` names.
    ///
    /// Of the cell, clockwise from its top left, where no code was read; `None` where the cell is not in any
    /// photo.
    pub corners: Option<[Point<PhotoPx>; 4]>,
    /// Index, in [`WallReading::photos`], of the reading that shows it best.
    pub photo: usize,
}

/// Camera of one photo, from the wall: a homography, then the lens.
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct Camera {
    /// Homography: the wall as a pinhole without a lens would see it.
    pub wall_to_straight: Map<WallMm, StraightPx>,
    /// Distortion of the lens.
    pub lens: Lens,
}

impl Camera {
    /// Place in the photo of a place on the wall. Not finite behind the camera or beyond what the lens can
    /// show.
    #[must_use]
    pub fn wall_to_photo(&self, p: Point<WallMm>) -> Point<PhotoPx> {
        self.lens.straight_to_photo(self.wall_to_straight.apply(p))
    }

    /// Place on the wall that is seen at `p`; `None` where that is no place on the wall's plane in front of
    /// the camera.
    #[must_use]
    pub fn photo_to_wall(&self, p: Point<PhotoPx>) -> Option<Point<WallMm>> {
        let back = self.wall_to_straight.inverse()?;
        let at = back.apply(self.lens.photo_to_straight(p)?);
        at.is_finite().then_some(at)
    }
}

/// Squares that a photo shows away from the lattice of the wall, and what the photo therefore says nothing about.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Apart {
    /// Squares seen on another board, beyond a door or on a table, by the cell where they belong; sorted.
    pub squares: Vec<Cell>,
    /// Whether at least three of them hang side by side, as a part of the wall.
    pub is_part: bool,
    /// Cells of the wall that may belong to another part of it, so that their being bare says nothing; sorted.
    pub cells: Vec<Cell>,
}

impl CellReading {
    /// Whether the wall shows where no square that was read hangs farther out: it may go on elsewhere, and this may be no cell of it.
    #[must_use]
    pub fn is_beyond(&self) -> bool {
        self.sight == Sight::Empty && self.certainty <= BEYOND_CERTAINTY
    }
}

/// Certainty that a cell is empty, beyond the outermost squares that were read in a photo without cards.
pub(super) const BEYOND_CERTAINTY: f64 = 0.6;

/// One photo, or of a wall in parts one part of it in a photo.
#[derive(Clone, Debug, PartialEq)]
pub struct PhotoReading {
    /// Index of the photo that was read, from 0.
    pub photo: usize,
    /// Width of the upright photo in pixels.
    pub width: usize,
    /// Height of the upright photo in pixels.
    pub height: usize,
    /// Number of squares and cards identified in it.
    pub codes_read: usize,
    /// Camera, from the wall to the photo.
    pub camera: Camera,
    /// Whether the photo is a mirror image, as a front camera stores it. `camera` and all corners already say so.
    pub mirrored: bool,
    /// Side of a module in pixels, median over the squares that were read.
    pub px_per_module: f64,
    /// Maximum distance of a read square's middle from its cell's, in mm on the wall.
    pub worst_shift_mm: f64,
    /// Readings of all cells, row by row from the top.
    pub cells: Vec<CellReading>,
    /// What hangs or lies apart from the wall.
    pub apart: Apart,
}

/// Reading of the wall, from all its photos.
#[derive(Clone, Debug, PartialEq)]
pub struct WallReading {
    /// Readings of the photos, in the order given; of a photo that shows several parts of the wall, one for each.
    pub photos: Vec<PhotoReading>,
    /// Readings of all cells, row by row from the top, each from the photo that shows it best.
    pub cells: Vec<CellReading>,
    /// Cells where two photos show two different squares: something was moved between them.
    pub contradictions: Vec<Cell>,
    /// What hangs or lies apart from the wall and is named in none of its cells.
    pub apart: Apart,
}

impl WallReading {
    /// The readings of one photo, with their indices in [`photos`](Self::photos).
    pub fn of_photo(&self, photo: usize) -> impl Iterator<Item = (usize, &PhotoReading)> {
        self.photos.iter().enumerate().filter(move |(_, own)| own.photo == photo)
    }

    /// Number of photos.
    #[must_use]
    pub fn photo_count(&self) -> usize {
        self.photos.iter().map(|own| own.photo + 1).max().unwrap_or(0)
    }
}

impl Apart {
    /// Whether the lattice that was read goes as far as this cell, so that its being bare says something.
    #[must_use]
    pub fn reaches(&self, cell: Cell) -> bool {
        self.cells.binary_search(&cell).is_err()
    }

    /// What is apart in all of these photos together, as long as no cell of the wall tells otherwise.
    #[must_use]
    pub fn together<'a>(photos: impl IntoIterator<Item = &'a Self>, cells: &[CellReading]) -> Self {
        let hangs = |home: &Cell| {
            let named =
                |seen: &CellReading| matches!(&seen.sight, Sight::Square { home: own, .. } if own == home);
            cells.iter().any(named)
        };
        let unseen = |cell: &Cell| {
            let seen = cells.iter().find(|seen| seen.cell == *cell);
            seen.is_none_or(|seen| seen.sight == Sight::Unseen)
        };
        let (mut squares, mut untold, mut is_part) = (BTreeSet::new(), BTreeSet::new(), false);
        for photo in photos {
            is_part |= photo.is_part && photo.squares.iter().any(|home| !hangs(home));
            squares.extend(photo.squares.iter().filter(|home| !hangs(home)));
            untold.extend(photo.cells.iter().filter(|cell| unseen(cell)));
        }
        Self { squares: squares.into_iter().collect(), is_part, cells: untold.into_iter().collect() }
    }
}
