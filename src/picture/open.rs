//! A picture out of a file's bytes, within limits, and back into a PNG without anything but its pixels.

use std::io::Cursor;
use std::panic::{AssertUnwindSafe, catch_unwind};

use image::{DynamicImage, ImageDecoder, ImageFormat, ImageReader, Limits, RgbImage, RgbaImage};
use thiserror::Error;

use super::Picture;
use super::svg::{Rendered, is_svg, render};
use crate::photo::heif::{self, Family, HeicError};
use crate::photo::profile;
use crate::words::{Sentence, Tell, told_in_english};

/// Pixels along one side.
const MOST_ACROSS: u32 = 20_000;
/// Pixels in all, 100 million: five times what tabloid paper shows at 300 dots an inch. Four bytes each are 400 MB.
const MOST_PIXELS: u64 = 100_000_000;
/// Bytes that a decoder may ask for: [`MOST_PIXELS`] at 16 bits for each of four colours.
const MOST_BYTES: u64 = 8 * MOST_PIXELS;

/// A file that is no picture, or none that can be used.
#[derive(Clone, Debug, Error, PartialEq, Eq)]
pub enum PictureError {
    /// No bytes.
    Empty,
    /// A kind that is not read.
    Format,
    /// A kind of the files that begin with `ftyp` that is not read: a film, AV1, a rare HEIC.
    Heic,
    /// More pixels than are needed.
    Large {
        /// Pixels side by side.
        width: u32,
        /// Pixels one above the other.
        height: u32,
    },
    /// The file ends too early.
    Short,
    /// The decoder gave up.
    Damaged(Sentence),
    /// An SVG drawing that cannot be read.
    Svg(Sentence),
    /// An SVG drawing that shows another file.
    Outside(String),
    /// An SVG drawing with a letter that no font here has.
    Letter(char),
    /// A kind of a format that the decoder does not know.
    Kind(String),
    /// It could not be written as PNG.
    Save(String),
}

told_in_english!(PictureError);

impl Tell for PictureError {
    fn sentence(&self) -> Sentence {
        match self {
            Self::Empty => Sentence::new("error-picture-empty"),
            Self::Format => Sentence::new("error-picture-format"),
            Self::Heic => Sentence::new("error-picture-heic"),
            Self::Large { width, height } => Sentence::new("error-picture-large")
                .with("width", *width)
                .with("height", *height)
                .with("most", MOST_ACROSS),
            Self::Short => Sentence::new("error-picture-short"),
            Self::Damaged(why) => Sentence::new("error-picture-damaged").with("why", why.clone()),
            Self::Svg(why) => Sentence::new("error-picture-svg").with("why", why.clone()),
            Self::Outside(named) => Sentence::new("error-picture-outside").with("named", named.as_str()),
            Self::Letter(letter) => Sentence::new("error-picture-letter").with("letter", letter.to_string()),
            Self::Kind(said) => Sentence::new("error-picture-kind").with("said", said.as_str()),
            Self::Save(said) => Sentence::new("error-picture-save").with("said", said.as_str()),
        }
    }
}

/// A picture out of a file, and what was done to it that the organiser should know of.
#[derive(Clone, Debug, PartialEq)]
pub struct Opened {
    /// The picture.
    pub picture: Picture,
    /// Whether it is a drawing with text, which was set in the program's own font.
    pub text_in_our_font: bool,
}

impl Picture {
    /// Reads a PNG, JPEG, WebP, TIFF or SVG file: turned upright as its EXIF orientation says, transparency over white, 16
    /// bits reduced to 8, wide-gamut colours taken to sRGB, the first picture of an animated one, an SVG drawing with some 12 million pixels.
    ///
    /// # Errors
    /// [`PictureError`] where the bytes are no picture, are damaged, or hold more than 20,000 pixels a side or 100 million
    /// in all (which is found out before any is decoded); where an SVG drawing needs anything from outside its file.
    pub fn open(bytes: &[u8]) -> Result<Self, PictureError> {
        Opened::from(bytes).map(|opened| opened.picture)
    }
}

impl Opened {
    /// Reads a picture as [`Picture::open`] does, and tells what was done to it.
    ///
    /// # Errors
    /// As there.
    pub fn from(bytes: &[u8]) -> Result<Self, PictureError> {
        if bytes.is_empty() {
            return Err(PictureError::Empty);
        }
        if is_svg(bytes) {
            let Rendered { pixels, text } = render(bytes)?;
            return Ok(Self { picture: Picture { pixels }, text_in_our_font: text });
        }
        // Decoders' own release notes speak of panics on hostile files.
        let decoded = catch_unwind(AssertUnwindSafe(|| decode(bytes)));
        let (image, own) =
            decoded.unwrap_or_else(|_| Err(PictureError::Damaged(Sentence::new("error-photo-gave-up"))))?;
        let mut pixels = over_white(image);
        profile::to_srgb(&mut pixels, own.as_deref());
        Ok(Self { picture: Picture { pixels }, text_in_our_font: false })
    }
}

impl Picture {
    /// The picture as a PNG file: its pixels and nothing else.
    ///
    /// # Errors
    /// [`PictureError::Save`] where the encoder refuses, which it does for a picture without pixels.
    pub fn to_png(&self) -> Result<Vec<u8>, PictureError> {
        let mut bytes = Cursor::new(Vec::new());
        self.pixels
            .write_to(&mut bytes, ImageFormat::Png)
            .map_err(|error| PictureError::Save(error.to_string()))?;
        Ok(bytes.into_inner())
    }
}

/// Picture of a file, upright, and the colour profile that is embedded in it.
fn decode(bytes: &[u8]) -> Result<(DynamicImage, Option<Vec<u8>>), PictureError> {
    let damaged = |error: image::ImageError| match error {
        image::ImageError::Unsupported(kind) => PictureError::Kind(kind.to_string()),
        other => PictureError::Damaged(Sentence::given(other.to_string())),
    };
    match heif::family(bytes) {
        Some(Family::Heic) => return Ok((heic(bytes)?, None)),
        Some(Family::Avif | Family::Video) => return Err(PictureError::Heic),
        None => {}
    }
    let mut reader = ImageReader::new(Cursor::new(bytes))
        .with_guessed_format()
        .map_err(|error| PictureError::Damaged(Sentence::given(error.to_string())))?;
    let read = [ImageFormat::Png, ImageFormat::Jpeg, ImageFormat::WebP, ImageFormat::Tiff];
    let format = reader.format().filter(|format| read.contains(format)).ok_or(PictureError::Format)?;
    if format == ImageFormat::Jpeg && !ends_whole(bytes) {
        return Err(PictureError::Short);
    }
    let mut limits = Limits::default();
    limits.max_alloc = Some(MOST_BYTES);
    reader.limits(limits);
    let mut decoder = reader.into_decoder().map_err(damaged)?;
    let (width, height) = decoder.dimensions();
    check_size(width, height)?;
    let orientation = decoder.orientation().unwrap_or(image::metadata::Orientation::NoTransforms);
    let own = decoder.icc_profile().ok().flatten();
    let mut image = DynamicImage::from_decoder(decoder).map_err(damaged)?;
    if image.width() == 0 || image.height() == 0 {
        return Err(PictureError::Damaged(Sentence::new("error-picture-no-pixels")));
    }
    image.apply_orientation(orientation);
    Ok((image, own))
}

/// A HEIC file, as iPhones store photos, upright.
fn heic(bytes: &[u8]) -> Result<DynamicImage, PictureError> {
    let told = |error: HeicError| match error {
        HeicError::Short => PictureError::Short,
        HeicError::Large(width, height) => PictureError::Large { width, height },
        HeicError::Kind(_) => PictureError::Heic,
        HeicError::Damaged(said) => PictureError::Damaged(Sentence::given(said)),
    };
    let (width, height) = heif::declared_size(bytes).map_err(told)?;
    check_size(width, height)?;
    heif::decode(bytes, MOST_PIXELS).map(DynamicImage::from).map_err(told)
}

fn check_size(width: u32, height: u32) -> Result<(), PictureError> {
    if width > MOST_ACROSS || height > MOST_ACROSS || u64::from(width) * u64::from(height) > MOST_PIXELS {
        return Err(PictureError::Large { width, height });
    }
    Ok(())
}

/// Whether a JPEG has an end-of-image marker behind its last start-of-scan marker (ITU-T T.81, annex B). Neither occurs
/// within compressed data. The decoder itself fills what is missing with grey and says nothing.
fn ends_whole(bytes: &[u8]) -> bool {
    let last = |marker: [u8; 2]| bytes.windows(2).rposition(|pair| pair == marker);
    last([0xff, 0xd9]).is_some_and(|end| last([0xff, 0xda]).is_none_or(|scan| scan < end))
}

/// What shows on white paper.
fn over_white(image: DynamicImage) -> RgbImage {
    if !image.color().has_alpha() {
        return image.into_rgb8();
    }
    let image: RgbaImage = image.into_rgba8();
    let mut pixels = RgbImage::new(image.width(), image.height());
    for (shown, pixel) in pixels.pixels_mut().zip(image.pixels()) {
        let [red, green, blue, alpha] = pixel.0.map(u32::from);
        let over = |colour: u32| (colour * alpha + 255 * (255 - alpha) + 127) / 255;
        shown.0 = [red, green, blue].map(|colour| u8::try_from(over(colour)).unwrap_or(u8::MAX));
    }
    pixels
}
