//! Animation of the wall filling up: small pictures, one a check, as one animated GIF (GIF89a) that can be
//! mailed.
//!
//! ```text
//!   Moment, Moment … ─▶ at most 24, evenly, first and last kept ─▶ at most 640 px wide, labelled ─▶ GIF under 5 MB
//! ```
//!
//! Every check is shown for a second, the last one for four; then it begins again. The same moments give the
//! same bytes.

use gif::{Encoder, Frame, Repeat};
use image::imageops::{self, FilterType};
use image::{Rgb, RgbImage};
use rayon::prelude::*;
use thiserror::Error;

use super::drawing::Canvas;
use crate::frame::{DisplayPx, Point, float, floor_index, round_index};
use crate::words::{Sentence, Tell, Words, told_in_english};

/// Maximum number of moments shown; of more, some are taken evenly.
pub const MOST_MOMENTS: usize = 24;
/// Maximum width of the picture, in pixels.
const WIDEST_PX: f64 = 640.0;
/// Maximum height of the picture, in pixels: a wall of one column stays small.
const HIGHEST_PX: f64 = 640.0;
/// Maximum size of the file, in bytes: what mail servers and messengers take without asking.
pub const MOST_BYTES: usize = 5_000_000;
/// Factor by which the picture's sides shrink for the next try, where a file is larger.
const SMALLER: f64 = 0.8;
/// Maximum number of tries: the last one has pictures of a hundred pixels, and no 24 of them take so much.
const TRIES: usize = 9;
/// Time that a moment is shown, in hundredths of a second.
const SHOWN: u16 = 100;
/// Time that the last moment is shown, in hundredths of a second.
const LAST_SHOWN: u16 = 400;
/// Speed of the search for a picture's 256 colours, from 1 (slow, good) to 30.
const SPEED: i32 = 10;
/// Height of the label as a share of the picture's height.
const LABEL_HIGH: f64 = 0.08;
/// Minimum height of the label, in pixels: below, it cannot be read.
const LABEL_LEAST_PX: f64 = 14.0;

/// One check of the wall, as a frame of the animation.
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct Moment<'a> {
    /// Time as people read it: `18:30`.
    pub when: &'a str,
    /// Number of squares in their place.
    pub right: usize,
    /// Number of cells.
    pub cells: usize,
    /// Picture of the wall at that time. All are drawn as large as the last one.
    pub picture: &'a RgbImage,
}

/// Reason why moments make no animation.
#[derive(Clone, Debug, Error, PartialEq, Eq)]
pub enum FillingError {
    /// There is none, or a picture has no pixels.
    Nothing,
    /// The file could not be made small enough.
    TooLarge,
    /// The encoder refused.
    Gif(String),
}

told_in_english!(FillingError);

impl Tell for FillingError {
    fn sentence(&self) -> Sentence {
        match self {
            Self::Nothing => Sentence::new("error-filling-nothing"),
            Self::TooLarge => Sentence::new("error-filling-large"),
            Self::Gif(said) => Sentence::new("error-filling-gif").with("said", said.as_str()),
        }
    }
}

/// Indices of at most `most` of `count` things, evenly, the first and the last among them, in order.
///
/// ```
/// use everysquare::display::evenly;
/// assert_eq!(evenly(9, 5).collect::<Vec<_>>(), [0, 2, 4, 6, 8]);
/// assert_eq!(evenly(3, 5).collect::<Vec<_>>(), [0, 1, 2]);
/// ```
pub fn evenly(count: usize, most: usize) -> impl Iterator<Item = usize> {
    let shown = count.min(most.max(1));
    let last = float(count.saturating_sub(1));
    let step = last / float(shown.saturating_sub(1).max(1));
    (0..shown)
        .map(move |at| if at + 1 == shown && at > 0 { count - 1 } else { round_index(float(at) * step) })
}

/// Animated GIF of the moments, at most [`MOST_BYTES`] long.
///
/// # Errors
/// [`FillingError::Nothing`] where there is nothing to show, [`FillingError::TooLarge`] where no try is small
/// enough, [`FillingError::Gif`] where the encoder refuses.
pub fn filling(moments: &[Moment], words: &Words) -> Result<Vec<u8>, FillingError> {
    let shown: Vec<&Moment> = evenly(moments.len(), MOST_MOMENTS).filter_map(|at| moments.get(at)).collect();
    let last = shown.last().ok_or(FillingError::Nothing)?;
    if shown.iter().any(|moment| moment.picture.is_empty()) {
        return Err(FillingError::Nothing);
    }
    let (width, height) = (f64::from(last.picture.width()), f64::from(last.picture.height()));
    let mut scale = (WIDEST_PX / width).min(HIGHEST_PX / height).min(1.0);
    for _ in 0..TRIES {
        let file = encode(&shown, [width * scale, height * scale], words)?;
        if file.len() <= MOST_BYTES {
            return Ok(file);
        }
        scale *= SMALLER;
    }
    Err(FillingError::TooLarge)
}

fn encode(shown: &[&Moment], size: [f64; 2], words: &Words) -> Result<Vec<u8>, FillingError> {
    let [width, height] = size.map(|px| u16::try_from(floor_index(px).max(1)).unwrap_or(u16::MAX));
    let frames: Vec<Frame> = shown
        .par_iter()
        .enumerate()
        .map(|(at, moment)| {
            let picture = labelled(moment, [width, height], words);
            let mut frame = Frame::from_rgb_speed(width, height, picture.as_raw(), SPEED);
            frame.delay = if at + 1 == shown.len() { LAST_SHOWN } else { SHOWN };
            frame.make_lzw_pre_encoded();
            frame
        })
        .collect();
    let refused = |error: gif::EncodingError| FillingError::Gif(error.to_string());
    let mut file = Vec::new();
    let mut encoder = Encoder::new(&mut file, width, height, &[]).map_err(refused)?;
    encoder.set_repeat(Repeat::Infinite).map_err(refused)?;
    for frame in &frames {
        encoder.write_lzw_pre_encoded_frame(frame).map_err(refused)?;
    }
    drop(encoder);
    Ok(file)
}

/// Picture at its size, with time and count in its upper left corner.
fn labelled(moment: &Moment, [width, height]: [u16; 2], words: &Words) -> RgbImage {
    let mut picture = imageops::resize(moment.picture, width.into(), height.into(), FilterType::Triangle);
    let said = [
        ("when", moment.when.into()),
        ("right", moment.right.to_string().into()),
        ("cells", moment.cells.to_string().into()),
    ];
    let high = (f64::from(height) * LABEL_HIGH).max(LABEL_LEAST_PX);
    let from = Point::<DisplayPx>::new(high / 2.0, high);
    Canvas::on(&mut picture).beside(
        from,
        &words.say("filling-label", &said),
        high,
        f64::from(width) - high,
        Rgb([20; 3]),
    );
    picture
}
