//! Pictures of the wall: as it is to be, straight from the front, and the photo with what is the matter marked in it.
//!
//! ```text
//!   Photo, Camera ─▶ straighten ─▶ wall.jpg       the wall as seen straight from the front
//!   Photo, Judgement ─▶ marked ─▶ marked.jpg      the photo, blank outside the wall and its cards, faults outlined and named
//!   Photo, PhotoReading ─▶ cover ─▶ Covered       the photo without whoever stands before the wall: the first two are drawn from it
//!   drawings, FewColours ─▶ likeness              whether each drawing is its paper's piece
//!   Photo of a sheet ─▶ flat                      a square that was drawn elsewhere, straight and in even light
//!   wall, original ─▶ overlap                     the original's edges over the wall
//!   FewColours, Grid ─▶ preview ─▶ picture-preview.png   before the evening: the picture with its grid, labels and pencils
//!   Moment … ─▶ filling ─▶ filling.gif            the evening: the wall filling up, a second a check
//! ```
//!
//! All come out as plain pixels; [`jpeg`] makes files of them that hold nothing but the picture.

pub mod assemble;
mod blocks;
pub mod cover;
pub mod drawing;
pub mod fill;
mod filling;
pub mod flat;
mod ghost;
pub mod hung;
mod jpeg;
pub mod light;
pub mod likeness;
pub mod marked;
pub mod measure;
pub mod overlap;
pub mod patches;
mod preview;
pub mod retape;
mod sample;
pub mod scattered;
pub mod squares;
pub mod straighten;

pub use cover::MARGIN_MM;
pub use cover::{Begun, Cover, Covered, Expected};
pub use filling::{FillingError, MOST_BYTES, MOST_MOMENTS, Moment, evenly, filling};
pub use jpeg::{JpegError, jpeg};
pub use marked::{MarkedPart, Marking, marked};
pub use preview::{PREVIEW, preview};
pub use straighten::{Frontal, LONGEST_PX, Shot, Straightening, straighten};
