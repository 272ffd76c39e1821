//! From a file's bytes to upright pixels, safely.

use image::RgbImage;

/// A grey picture, one byte a pixel, row by row.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Luma {
    /// Pixels side by side.
    pub width: usize,
    /// Pixels one above the other.
    pub height: usize,
    /// `width * height` grey levels.
    pub grey: Vec<u8>,
}

/// A photo, turned upright.
#[derive(Clone, Debug)]
pub struct Photo {
    /// What is read.
    pub luma: Luma,
    /// What is shown.
    pub colour: RgbImage,
    /// When it was taken, `YYYY-MM-DDTHH:MM:SS` by the camera's clock, if the file says so.
    pub taken: Option<String>,
    /// Whether the file says that it is a made picture and no photo (as `rehearse` writes).
    pub made: bool,
}
