//! JPEG files without metadata.

use image::RgbImage;
use jpeg_encoder::{ColorType, Encoder, SamplingFactor};
use thiserror::Error;

use crate::words::{Sentence, Tell, told_in_english};

/// Quality of the JPEG files, 0 … 100: at 85 the rings around letters stay out of sight and a wall takes
/// about half a megabyte.
const QUALITY: u8 = 85;

/// A picture that makes no JPEG file.
#[derive(Debug, Error, PartialEq, Eq)]
pub enum JpegError {
    /// JPEG (ISO/IEC 10918-1) counts at most 65,535 pixels a side, and no picture has none.
    Size(u32, u32),
}

told_in_english!(JpegError);

impl Tell for JpegError {
    fn sentence(&self) -> Sentence {
        let Self::Size(width, height) = self;
        Sentence::new("error-jpeg-size").with("width", *width).with("height", *height)
    }
}

/// JPEG file of a picture: no EXIF, no time, no place, nothing of the photo it came from but what is seen.
///
/// # Errors
/// [`JpegError::Size`] where a side has no pixels or too many.
pub fn jpeg(picture: &RgbImage) -> Result<Vec<u8>, JpegError> {
    let (width, height) = picture.dimensions();
    let refused = || JpegError::Size(width, height);
    let side = |pixels: u32| u16::try_from(pixels).map_err(|_| refused());
    let mut file = Vec::new();
    let mut encoder = Encoder::new(&mut file, QUALITY);
    encoder.set_sampling_factor(SamplingFactor::F_2_2); // half as fine in colour, as phones' cameras store it
    encoder.encode(picture.as_raw(), side(width)?, side(height)?, ColorType::Rgb).map_err(|_| refused())?;
    Ok(file)
}
