//! Squares that lie anywhere in a photo, named and drawn: the command and the helper's page find them alike.

use crate::display::scattered::{Named, scattered};
use crate::display::{JpegError, jpeg};
use crate::photo::Photo;
use crate::plan::{Cell, Grid};
use crate::read::Scattered;

/// Side of a module in pixels below which squares are missed: on made tables all are found from 2 on.
const SMALL_PX: f64 = 2.0;

/// What a photo of a table or a floor shows.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Seen {
    /// Squares, each by the cell where it belongs; copies of one count each.
    pub homes: Vec<Cell>,
    /// The squares' own paper in the photo, each with its label, as a JPEG file.
    pub picture: Vec<u8>,
    /// Whether codes are so small that some may be missed.
    pub small: bool,
}

impl Seen {
    /// Draws what was read.
    ///
    /// # Errors
    /// [`JpegError`].
    pub fn of(photo: &Photo, read: &Scattered, grid: &Grid) -> Result<Self, JpegError> {
        let named: Vec<Named> = read
            .squares
            .iter()
            .map(|one| Named { label: grid.label(one.home), corners: one.corners })
            .collect();
        Ok(Self {
            homes: read.squares.iter().map(|one| one.home).collect(),
            picture: jpeg(&scattered(photo, &named))?,
            small: read.px_per_module < SMALL_PX,
        })
    }
}
