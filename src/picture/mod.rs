//! The picture that is redrawn: loaded, cut into tiles.

use image::RgbImage;

/// The picture, in the colours it is drawn with.
#[derive(Clone, Debug, PartialEq)]
pub struct Picture {
    /// Its pixels.
    pub pixels: RgbImage,
}
