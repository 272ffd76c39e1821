//! Pictures of the wall: straight from the front, and the photo with what is the matter marked in it.
//!
//! ```text
//!   Photo, Camera ─▶ straighten ─▶ wall.jpg       the wall as seen straight from the front
//!   Photo, Judgement ─▶ marked ─▶ marked.jpg      the photo, blank outside the wall and its cards, faults outlined and named
//! ```
//!
//! Both come out as plain pixels; [`jpeg`] makes files of them that hold nothing but the picture.

mod blocks;
pub mod drawing;
mod jpeg;
pub mod marked;
mod sample;
pub mod straighten;

pub use jpeg::{JpegError, jpeg};
pub use marked::{MARGIN_MM, Marking, marked};
pub use straighten::{Frontal, LONGEST_PX, Shot, Straightening, straighten};
