//! Gallery: from photos of the wall to its picture, its measures and the comparison prints, which stay after
//! the event.
//!
//! ```text
//!   WallReading ─▶ Showing::new ─┐
//!   each Photo  ─▶ add           ├─▶ finish ─▶ Shown   the wall put together, measured, compared with the original
//!                                │               │
//!   Sources, earlier checks ─────┴───────────────┴─▶ print::comparison ─▶ display/<time>/
//! ```
//!
//! Photos come one by one, so that many need no more memory than two. The clock belongs to the caller.

mod compare;
mod figures;
pub mod from_home;
mod past;

use image::imageops::FilterType;
use image::{RgbImage, imageops};
use rayon::prelude::*;
use thiserror::Error;

use crate::display::assemble::{Arrangement, Missing, Parts};
use crate::display::hung::Hanging;
use crate::display::light::Light;
use crate::display::measure::Measured;
use crate::display::squares::{Gathering, Straightened, side_px};
use crate::display::{Cover, Covered, Frontal, Shot, Straightening, fill};
use crate::photo::Photo;
use crate::picture::Picture;
use crate::plan::settings::Choice;
use crate::plan::{Cell, Grid, Printed};
use crate::read::{Camera, PhotoReading, WallReading};
use crate::words::{Sentence, Tell, told_in_english};

pub use compare::{Compared, Suggestion};
pub use figures::{FIGURES_FORMAT, Figures, MeasuredFigures, SuggestionFigures};
pub use past::{Now, checks_until};

/// Maximum side of the wall's picture, in pixels.
///
/// A poster of three letter pages is 3,800 pixels wide at 150 dots an inch, and photos show no more.
const LONGEST_PX: usize = 4_096;

/// View of the wall.
#[derive(Copy, Clone, Debug, PartialEq, Eq)]
pub enum View {
    /// As it hangs, gaps and all.
    AsHung,
    /// Put together from its squares.
    Put(Arrangement),
}

impl Choice for View {
    const ALL: &'static [(Self, &'static str)] = &[
        (Self::AsHung, "as-hung"),
        (Self::Put(Arrangement::Straight), "straight"),
        (Self::Put(Arrangement::Closed), "closed"),
        (Self::Put(Arrangement::InOrder), "in-order"),
    ];
}

/// Treatment of the codes.
#[derive(Copy, Clone, Debug, PartialEq, Eq)]
pub enum Codes {
    /// Codes stay.
    Keep,
    /// Codes are painted over from their surroundings.
    Fill,
}

impl Choice for Codes {
    const ALL: &'static [(Self, &'static str)] = &[(Self::Keep, "keep"), (Self::Fill, "fill")];
}

impl Choice for Missing {
    const ALL: &'static [(Self, &'static str)] = &[(Self::Ghost, "ghost"), (Self::Open, "open")];
}

/// Manner in which everything is shown.
#[derive(Copy, Clone, Debug, PartialEq, Eq)]
pub struct Manner {
    /// View of the wall.
    pub view: View,
    /// Treatment of the codes.
    pub codes: Codes,
    /// Filling of cells where no square hangs.
    pub missing: Missing,
}

impl Default for Manner {
    fn default() -> Self {
        Self { view: View::Put(Arrangement::Closed), codes: Codes::Keep, missing: Missing::Ghost }
    }
}

/// Reason why there is nothing to show.
#[derive(Copy, Clone, Debug, Error, PartialEq, Eq)]
pub enum GalleryError {
    /// No square of this event was read.
    NoSquares,
}

told_in_english!(GalleryError);

impl Tell for GalleryError {
    fn sentence(&self) -> Sentence {
        match self {
            Self::NoSquares => Sentence::new("error-display-no-squares"),
        }
    }
}

/// Wall while its photos are drawn, one by one.
pub struct Showing<'a> {
    reading: &'a WallReading,
    printed: &'a Printed,
    manner: Manner,
    hanging: Hanging,
    side_px: usize,
    gathering: Gathering,
    as_hung: Option<Straightening<'a>>,
    /// Pictures of squares that were drawn at home, by the cell where they belong.
    from_home: Vec<(Cell, RgbImage)>,
}

/// Finished wall with its squares and measures.
#[derive(Clone, Debug)]
pub struct Shown {
    /// Squares as they hang.
    pub hanging: Hanging,
    /// Picture of the wall as it was asked for: the grid and nothing around it.
    pub wall: RgbImage,
    /// Picture with every square that was read in its own cell, codes and all: what is compared with the
    /// original.
    pub in_order: RgbImage,
    /// Rectified squares, upright, in the order of the cells.
    pub squares: Vec<Option<Straightened>>,
    /// Measures, where there are squares enough.
    pub measured: Option<Measured>,
    /// Cells that show a square drawn at home, which hangs nowhere.
    pub from_home: Vec<Cell>,
}

impl<'a> Showing<'a> {
    /// Empty wall for what was read in all photos.
    ///
    /// # Errors
    /// [`GalleryError::NoSquares`] where no square was read.
    pub fn new(reading: &'a WallReading, printed: &'a Printed, manner: Manner) -> Result<Self, GalleryError> {
        let cameras: Vec<&Camera> = reading.photos.iter().map(|photo| &photo.camera).collect();
        let hanging = Hanging::of(&reading.cells, &cameras, printed);
        if hanging.squares.is_empty() {
            return Err(GalleryError::NoSquares);
        }
        let grid = &printed.grid;
        let side_px = side_px(&reading.photos, grid, LONGEST_PX);
        let gathering = Gathering::new(&reading.cells, &hanging, grid, side_px);
        let frontal = Frontal { margin_mm: 0.0, px_per_mm: None, longest_px: LONGEST_PX };
        let as_hung = (manner.view == View::AsHung)
            .then(|| Straightening::new(&reading.cells, &cameras, grid, frontal));
        let from_home = Vec::new();
        Ok(Self { reading, printed, manner, hanging, side_px, gathering, as_hung, from_home })
    }

    /// The same with squares that were drawn at home: each stands in its own cell as long as it hangs nowhere and nothing hangs there.
    #[must_use]
    pub fn with_from_home(mut self, squares: Vec<(Cell, RgbImage)>) -> Self {
        let hangs = |home: Cell| self.hanging.squares.iter().any(|hung| hung.home == home || hung.at == home);
        self.from_home = squares.into_iter().filter(|(home, _)| !hangs(*home)).collect();
        self
    }

    /// Draws from a photo what it shows best; `covers` are those of the parts of the wall that it shows.
    ///
    /// What is covered in it goes into no picture; squares whose code was not read are compared with the
    /// pieces, and not shown.
    pub fn add(&mut self, number: usize, photo: Photo, covers: &[Cover]) {
        let parts: Vec<(usize, &PhotoReading)> = self.reading.of_photo(number).collect();
        let light = |own: &PhotoReading| Light::of(&photo, &own.cells, &own.camera, self.printed);
        let lights: Vec<Option<Light>> = parts.iter().map(|(_, own)| light(own)).collect();
        for (((index, own), light), cover) in parts.iter().zip(&lights).zip(covers) {
            self.gathering.look_under(*index, Shot::of(&photo, own, light.as_ref()), cover);
        }
        let covered = Covered::new(photo, covers);
        for ((index, own), light) in parts.iter().zip(&lights) {
            let shot = Shot::of(covered.photo(), own, light.as_ref());
            self.gathering.add(*index, shot);
            if let Some(wall) = &mut self.as_hung {
                wall.add(*index, shot);
            }
        }
    }

    /// Puts the wall together beside the picture that it was drawn from.
    #[must_use]
    pub fn finish(self, picture: &Picture) -> Shown {
        let Self { printed, manner, hanging, side_px, gathering, as_hung, from_home, .. } = self;
        let mut squares = gathering.finish();
        let from_home = put(from_home, &mut squares, side_px, &printed.grid);
        let parts = |squares: &[Option<Straightened>], arrangement, missing| {
            Parts { grid: &printed.grid, picture, hanging: &hanging, squares, side_px }
                .assemble(arrangement, missing)
        };
        let in_order = parts(&squares, Arrangement::InOrder, Missing::Open);
        if manner.codes == Codes::Fill {
            squares.par_iter_mut().flatten().filter(|square| square.named).for_each(|square| {
                fill::fill(&mut square.picture, printed);
            });
        }
        let wall = match (manner.view, as_hung) {
            (View::Put(arrangement), _) => parts(&squares, arrangement, manner.missing),
            (View::AsHung, Some(wall)) => wall.finish(),
            (View::AsHung, None) => parts(&squares, Arrangement::Straight, manner.missing),
        };
        let measured = Measured::of(&hanging, printed);
        Shown { hanging, wall, in_order, squares, measured, from_home }
    }
}

/// Puts squares that were drawn at home where nothing else is, and gives their cells.
fn put(
    from_home: Vec<(Cell, RgbImage)>,
    squares: &mut [Option<Straightened>],
    side_px: usize,
    grid: &Grid,
) -> Vec<Cell> {
    let side = u32::try_from(side_px).unwrap_or(1).max(1);
    let mut cells = Vec::new();
    for (home, picture) in from_home {
        if let Some(place) = squares.get_mut(grid.index(home)).filter(|place| place.is_none()) {
            let picture = imageops::resize(&picture, side, side, FilterType::Triangle);
            *place = Some(Straightened { picture, named: false, shown: true });
            cells.push(home);
        }
    }
    cells
}

/// Default number of pairs of a square and its piece.
const PAIRS: usize = 12;

impl Shown {
    /// Picture of the square that belongs in a cell, upright, wherever it hangs.
    #[must_use]
    pub fn square_of(&self, home: Cell, printed: &Printed) -> Option<&RgbImage> {
        let hung = self.hanging.squares.iter().filter(|hung| hung.home == home);
        let at = hung.map(|hung| hung.at).chain(self.from_home.iter().copied().filter(|cell| *cell == home));
        at.filter_map(|at| self.squares.get(printed.grid.index(at))?.as_ref()).map(|s| &s.picture).next()
    }

    /// Cells whose squares were read, spread evenly over the wall.
    #[must_use]
    pub fn spread(&self) -> Vec<Cell> {
        let mut homes: Vec<Cell> = self.hanging.squares.iter().map(|hung| hung.home).collect();
        homes.sort_unstable();
        homes.dedup();
        let count = PAIRS.min(homes.len());
        (0..count).filter_map(|i| homes.get((2 * i + 1) * homes.len() / (2 * count)).copied()).collect()
    }
}
