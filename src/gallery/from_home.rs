//! Squares that were drawn at home: from a photo or scan of the page to the square alone, straight and in even light.
//!
//! ```text
//!   Photo ─▶ Reader::between_marks ─▶ which squares, and where ─▶ display::flat ─▶ FromHome
//! ```

use thiserror::Error;

use crate::display::flat::flattened;
use crate::frame::{Map, PhotoPx, SquareMm};
use crate::photo::Photo;
use crate::picture::Picture;
use crate::plan::marks::{MODULE_MM, around_square};
use crate::plan::{Cell, Printed};
use crate::read::marked::Marks;
use crate::read::place::Layout;
use crate::read::{ReadError, Reader};
use crate::words::{Sentence, Tell, told_in_english};

/// Number of pixels along a side below which a picture looks coarse when it is printed: 100 dots an inch on the usual square.
const COARSE_PX: u32 = 500;

/// Square that came back.
#[derive(Clone, Debug, PartialEq)]
pub struct FromHome {
    /// Cell where it belongs.
    pub home: Cell,
    /// Picture of it, upright.
    pub picture: Picture,
}

/// Reason why a photo gives no square.
#[derive(Clone, Debug, Error, PartialEq, Eq)]
pub enum FromHomeError {
    /// No code of this event can be read.
    Code,
    /// The photo cannot be read for another reason.
    Read(ReadError),
    /// Squares were read, with these labels, but not all four marks around any.
    Marks(Vec<String>),
}

told_in_english!(FromHomeError);

impl Tell for FromHomeError {
    fn sentence(&self) -> Sentence {
        match self {
            Self::Code => Sentence::new("error-receive-code"),
            Self::Read(error) => error.sentence(),
            Self::Marks(labels) => Sentence::new("error-receive-marks").with("labels", labels.join(", ")),
        }
    }
}

impl FromHome {
    /// Whether the photo was so small that the square looks coarse when it is printed.
    #[must_use]
    pub fn is_coarse(&self) -> bool {
        self.picture.pixels.width() < COARSE_PX
    }
}

/// Squares on the pages that a photo shows, in the order of their homes.
///
/// # Errors
/// A [`FromHomeError`] where there is none.
pub fn from_home(reader: &Reader, photo: &Photo) -> Result<Vec<FromHome>, FromHomeError> {
    let printed = reader.printed();
    let marks = marks(printed);
    let side = printed.grid.square_mm;
    let sheets = reader.between_marks(&photo.luma, &marks);
    let square = |(home, map): (Cell, Map<SquareMm, PhotoPx>)| {
        Some(FromHome { home, picture: Picture { pixels: flattened(photo, &map, side)? } })
    };
    let squares: Vec<FromHome> = sheets.into_iter().filter_map(square).collect();
    if squares.is_empty() {
        return Err(why_not(reader, photo));
    }
    Ok(squares)
}

/// Why a photo gives no square: its code may be read without the marks.
fn why_not(reader: &Reader, photo: &Photo) -> FromHomeError {
    let grid = &reader.printed().grid;
    match reader.scattered(&photo.luma) {
        Ok(seen) => FromHomeError::Marks(seen.squares.iter().map(|lying| grid.label(lying.home)).collect()),
        Err(ReadError::NoCodes) => FromHomeError::Code,
        Err(error) => FromHomeError::Read(error),
    }
}

/// Code and marks of a page to draw at home, about its square.
fn marks(printed: &Printed) -> Marks<SquareMm> {
    let to_square = Layout::of(printed).module_to_square();
    let code = Layout::module_corners().map(|corner| to_square.apply(corner));
    Marks { code, centres: around_square(printed.grid.square_mm), module_mm: MODULE_MM }
}
