//! Photo intake: from a file's bytes to upright pixels, safely.
//!
//! In go the bytes of a JPEG, HEIC, PNG, WebP or TIFF file as a phone or a computer sends it; out comes a
//! [`Photo`], turned upright as its EXIF orientation says, or one sentence that says what is wrong and what
//! to do. Nothing that a file holds makes this panic, run without end or take more memory than [`MAX_PIXELS`]
//! stands for.
//!
//! ```
//! use everysquare::photo::{Photo, PhotoError};
//! assert!(matches!(Photo::open(b""), Err(PhotoError::Empty)));
//! assert!(matches!(Photo::open(b"a letter, not a picture"), Err(PhotoError::Unknown)));
//! ```

mod about;
mod file;
pub mod heif;
mod open;
pub mod profile;
mod sample;
mod turn;

pub use about::{About, MADE_WORDS};
pub use file::read;
pub use open::{MAX_PIXELS, PhotoError};
pub use turn::Orientation;

use image::RgbImage;

/// Grey picture, one byte a pixel, row by row.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Luma {
    /// Width in pixels.
    pub width: usize,
    /// Height in pixels.
    pub height: usize,
    /// Grey levels, `width * height`, row by row.
    pub grey: Vec<u8>,
}

/// A photo, turned upright.
#[derive(Clone, Debug)]
pub struct Photo {
    /// Brightness: what is read.
    pub luma: Luma,
    /// Colours: what is shown.
    pub colour: RgbImage,
    /// Time when it was taken, `YYYY-MM-DDTHH:MM:SS` by the camera's clock, if the file says so.
    pub taken: Option<String>,
    /// Whether the file says that it is a made picture and no photo.
    pub made: bool,
}
