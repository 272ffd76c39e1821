//! Pictures of the wall: as it is to be, straight from the front, and the photo with what is the matter marked in it.
//!
//! ```text
//!   Photo, Camera ─▶ straighten ─▶ wall.jpg       the wall as seen straight from the front
//!   Photo, Judgement ─▶ marked ─▶ marked.jpg      the photo, blank outside the wall and its cards, faults outlined and named
//!   FewColours, Grid ─▶ preview ─▶ picture-preview.png   before the evening: the picture with its grid, labels and pencils
//! ```
//!
//! All come out as plain pixels; [`jpeg`] makes files of them that hold nothing but the picture.

mod blocks;
pub mod drawing;
mod jpeg;
pub mod marked;
mod preview;
mod sample;
pub mod straighten;

pub use jpeg::{JpegError, jpeg};
pub use marked::{MARGIN_MM, Marking, marked};
pub use preview::{PREVIEW, preview};
pub use straighten::{Frontal, LONGEST_PX, Shot, Straightening, straighten};
