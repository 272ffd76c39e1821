//! Opening of a photo: its format, its size, whether it is whole or cut off.

use std::io::Cursor;
use std::panic::{AssertUnwindSafe, catch_unwind};

use image::{DynamicImage, ImageDecoder, ImageFormat, ImageReader, Limits, RgbImage};
use rayon::prelude::*;
use thiserror::Error;

use crate::words::{Sentence, Tell, told_in_english};
use zune_jpeg::JpegDecoder;
use zune_jpeg::zune_core::colorspace::ColorSpace;
use zune_jpeg::zune_core::options::DecoderOptions;

use super::about::About;
use super::heif::{self, Family, HeicError};
use super::profile::{self, BAND};
use super::{Luma, Photo};

/// Maximum number of pixels of a photo. Phones make up to 200 million; more is a mistake or a trap.
pub const MAX_PIXELS: u64 = 250_000_000;
/// Maximum side of a photo, in pixels.
const MAX_SIDE: usize = 32_000;
/// Minimum number of pixels along the shorter side in which a wall could still be read.
const MIN_SIDE: usize = 64;

/// Reason why a file gives no photo.
#[derive(Debug, Error, PartialEq, Eq)]
pub enum PhotoError {
    /// The file cannot be read; why, and what to do.
    File(Sentence),
    /// No bytes.
    Empty,
    /// A picture coded by AV1.
    Avif,
    /// A film.
    Video,
    /// HEIC of a rare kind: what of it is not read.
    Heic(String),
    /// Bytes of no picture format that is read.
    Unknown,
    /// File that ends early.
    Truncated,
    /// File that is damaged or of a rare kind.
    Damaged(Sentence),
    /// More pixels than any phone makes.
    TooLarge {
        /// Pixels side by side.
        width: usize,
        /// Pixels one above the other.
        height: usize,
    },
    /// A thumbnail, or less.
    TooSmall {
        /// Pixels side by side.
        width: usize,
        /// Pixels one above the other.
        height: usize,
    },
}

told_in_english!(PhotoError);

impl Tell for PhotoError {
    fn sentence(&self) -> Sentence {
        let size = |id: &'static str, width: &usize, height: &usize| {
            Sentence::new(id).with("width", width.to_string()).with("height", height.to_string())
        };
        match self {
            Self::File(what) => what.clone(),
            Self::Empty => Sentence::new("error-photo-empty"),
            Self::Avif => Sentence::new("error-photo-avif"),
            Self::Video => Sentence::new("error-photo-video"),
            Self::Heic(said) => Sentence::new("error-photo-heic").with("said", said.as_str()),
            Self::Unknown => Sentence::new("error-photo-unknown"),
            Self::Truncated => Sentence::new("error-photo-truncated"),
            Self::Damaged(why) => Sentence::new("error-photo-damaged").with("why", why.clone()),
            Self::TooLarge { width, height } => size("error-photo-too-large", width, height)
                .with("most", (MAX_PIXELS / 1_000_000).to_string()),
            Self::TooSmall { width, height } => size("error-photo-too-small", width, height),
        }
    }
}

impl Photo {
    /// Opens a photo from its file's bytes and turns it upright.
    ///
    /// # Errors
    /// A [`PhotoError`] that says what is wrong with the file and what to do.
    pub fn open(bytes: &[u8]) -> Result<Self, PhotoError> {
        Self::open_within(bytes, MAX_PIXELS)
    }

    /// Opens a photo of at most `most_pixels` pixels, fewer than usual for want of memory, and turns it
    /// upright.
    ///
    /// # Errors
    /// As [`Photo::open`]; [`PhotoError::TooLarge`] beyond `most_pixels`.
    pub fn open_within(bytes: &[u8], most_pixels: u64) -> Result<Self, PhotoError> {
        let most = most_pixels.min(MAX_PIXELS);
        let about = About::read(bytes);
        let colour = match sniff(bytes)? {
            Kind::Heic => guarded(|| heic(bytes, most))?, // upright as it comes
            Kind::Plain(ImageFormat::Jpeg) => about.orientation.upright(guarded(|| jpeg(bytes, most))?),
            Kind::Plain(format) => about.orientation.upright(guarded(|| other(bytes, format, most))?),
        };
        let luma = Luma::of(&colour);
        Ok(Self { luma, colour, taken: about.taken, made: about.made })
    }
}

/// Decoder that a file is for.
enum Kind {
    Heic,
    Plain(ImageFormat),
}

/// Decoder for a file, from its first bytes.
fn sniff(bytes: &[u8]) -> Result<Kind, PhotoError> {
    if bytes.is_empty() {
        return Err(PhotoError::Empty);
    }
    match heif::family(bytes) {
        Some(Family::Heic) => return Ok(Kind::Heic),
        Some(Family::Avif) => return Err(PhotoError::Avif),
        Some(Family::Video) => return Err(PhotoError::Video),
        None => {}
    }
    match image::guess_format(bytes) {
        Ok(format @ (ImageFormat::Jpeg | ImageFormat::Png | ImageFormat::WebP | ImageFormat::Tiff)) => {
            Ok(Kind::Plain(format))
        }
        _ => Err(PhotoError::Unknown),
    }
}

/// Runs a decoder; a panic inside it is one more kind of damage, by the decoders' own release notes.
fn guarded(decode: impl FnOnce() -> Result<RgbImage, PhotoError>) -> Result<RgbImage, PhotoError> {
    catch_unwind(AssertUnwindSafe(decode))
        .unwrap_or_else(|_| Err(PhotoError::Damaged(Sentence::new("error-photo-gave-up"))))
}

fn check_size(width: usize, height: usize, most: u64) -> Result<(u32, u32), PhotoError> {
    let pixels =
        u64::try_from(width).ok().zip(u64::try_from(height).ok()).and_then(|(w, h)| w.checked_mul(h));
    if width > MAX_SIDE || height > MAX_SIDE || pixels.is_none_or(|p| p > most) {
        return Err(PhotoError::TooLarge { width, height });
    }
    if width.min(height) < MIN_SIDE {
        return Err(PhotoError::TooSmall { width, height });
    }
    match (u32::try_from(width), u32::try_from(height)) {
        (Ok(w), Ok(h)) => Ok((w, h)),
        _ => Err(PhotoError::TooLarge { width, height }),
    }
}

/// Decodes a JPEG, in strict mode: a file that ends early is refused, not filled up with grey.
fn jpeg(bytes: &[u8], most: u64) -> Result<RgbImage, PhotoError> {
    let options = DecoderOptions::default()
        .set_strict_mode(true)
        .set_max_width(usize::from(u16::MAX))
        .set_max_height(usize::from(u16::MAX))
        .jpeg_set_out_colorspace(ColorSpace::RGB);
    let mut decoder = JpegDecoder::new_with_options(Cursor::new(bytes), options);
    let damaged = |error: zune_jpeg::errors::DecodeErrors| {
        if ends_early(bytes) {
            PhotoError::Truncated
        } else {
            PhotoError::Damaged(Sentence::given(error.to_string()))
        }
    };
    decoder.decode_headers().map_err(damaged)?;
    let info = decoder.info().ok_or_else(|| PhotoError::Damaged(Sentence::new("error-photo-no-size")))?;
    let (width, height) = check_size(usize::from(info.width), usize::from(info.height), most)?;
    let pixels = decoder.decode().map_err(damaged)?;
    let mut picture = RgbImage::from_raw(width, height, pixels)
        .ok_or_else(|| PhotoError::Damaged(Sentence::new("error-photo-wrong-pixels")))?;
    profile::to_srgb(&mut picture, decoder.icc_profile().as_deref());
    Ok(picture)
}

/// Whether a JPEG lacks the marker that ends it. A second picture (a gain map) may follow the first, so the marker is
/// looked for anywhere near the end.
fn ends_early(bytes: &[u8]) -> bool {
    !bytes.windows(2).rev().take(64).any(|two| two == [0xff, 0xd9])
}

/// Decodes a HEIC file, upright.
fn heic(bytes: &[u8], most: u64) -> Result<RgbImage, PhotoError> {
    let side = |pixels: u32| usize::try_from(pixels).unwrap_or(usize::MAX);
    let told = |error: HeicError| match error {
        HeicError::Short => PhotoError::Truncated,
        HeicError::Large(width, height) => PhotoError::TooLarge { width: side(width), height: side(height) },
        HeicError::Kind(said) => PhotoError::Heic(said),
        HeicError::Damaged(said) => PhotoError::Damaged(Sentence::given(said)),
    };
    let (width, height) = heif::declared_size(bytes).map_err(told)?;
    check_size(side(width), side(height), most)?;
    heif::decode(bytes, most).map_err(told)
}

/// Decodes PNG, WebP or TIFF.
fn other(bytes: &[u8], format: ImageFormat, most: u64) -> Result<RgbImage, PhotoError> {
    let damaged = |error: image::ImageError| match error {
        image::ImageError::IoError(e) if e.kind() == std::io::ErrorKind::UnexpectedEof => {
            PhotoError::Truncated
        }
        error => PhotoError::Damaged(Sentence::given(error.to_string())),
    };
    let (width, height) =
        ImageReader::with_format(Cursor::new(bytes), format).into_dimensions().map_err(damaged)?;
    let side = |pixels: u32| usize::try_from(pixels).unwrap_or(usize::MAX);
    check_size(side(width), side(height), most)?;
    let mut limits = Limits::default();
    limits.max_alloc = Some(most * 8);
    let mut reader = ImageReader::with_format(Cursor::new(bytes), format);
    reader.limits(limits);
    let mut decoder = reader.into_decoder().map_err(damaged)?;
    let own = decoder.icc_profile().ok().flatten();
    let mut picture = DynamicImage::from_decoder(decoder).map_err(damaged)?.into_rgb8();
    profile::to_srgb(&mut picture, own.as_deref());
    Ok(picture)
}

impl Luma {
    /// Brightness of a colour picture: 0.299 R + 0.587 G + 0.114 B (ITU-R BT.601, as in JPEG's own Y),
    /// rounded.
    #[must_use]
    pub fn of(colour: &RgbImage) -> Self {
        let mut grey = vec![0; colour.as_raw().len() / 3];
        grey.par_chunks_mut(BAND).zip(colour.as_raw().par_chunks(3 * BAND)).for_each(|(grey, colour)| {
            for (level, rgb) in grey.iter_mut().zip(colour.chunks_exact(3)) {
                let [r, g, b] = [rgb[0], rgb[1], rgb[2]].map(u16::from);
                let [_, whole] = (77 * r + 150 * g + 29 * b + 128).to_le_bytes(); // at most 255 · 256 + 128
                *level = whole;
            }
        });
        let side = |n: u32| usize::try_from(n).unwrap_or(usize::MAX);
        Self { width: side(colour.width()), height: side(colour.height()), grey }
    }
}
