//! Any picture in a few pencil colours, in the shape of the grid, without anything that nobody can draw.
//!
//! ```text
//!  picture ─fit─▶ grid's shape ─shrink─▶ paper's resolution ─choose─▶ pencils ─label─▶ votes ─settle─▶ numbers ─clean─▶ FewColours
//!                                            └ a picture with no more colours than pencils keeps its pixels ───┘
//! ```

use image::{Rgb, RgbImage};
use thiserror::Error;

use super::choose::Colours;
use super::clean::{Least, clean};
use super::colour::Seen;
use super::few::FewColours;
use super::fit::{Fit, Fitted};
use super::grey::greyed;
use super::label::{votes_of_drawing, votes_of_photo};
use super::loss::{FITTING, Lost, fitting, keeping, lost};
use super::raster::Raster;
use super::shrink::Shrink;
use super::slivers::give_away_slivers;
use super::vote::{Place, Vote, doubled, doublings, settle};
use super::{Picture, name};
use crate::frame::{float, round_index};
use crate::plan::Grid;
use crate::plan::settings::{COLOURS, Pencil};
use crate::words::{Sentence, Tell, Words, told_in_english};

/// Manner of counting a picture's votes.
#[derive(Copy, Clone, Debug)]
struct Manner {
    /// Function by which pixels vote.
    votes: fn(&RgbImage, &[[u8; 3]]) -> Raster<Vote>,
    /// Standard deviation of the blur of the votes, on the piece, in mm.
    smooth_mm: f64,
    /// Minimum standard deviation of that blur, in pixels of the picture itself: smooths steps where these
    /// are large.
    smooth_px: f64,
    /// Minimum area that stays, in square millimetres.
    least_mm2: f64,
}

/// Manner for drawings: their edges stay as they are, and so does an eye.
const DRAWING: Manner = Manner { votes: votes_of_drawing, smooth_mm: 0.12, smooth_px: 0.6, least_mm2: 0.0 };
/// Manner for photos: their edges fray, and grain makes specks of them.
const PHOTO: Manner = Manner { votes: votes_of_photo, smooth_mm: 0.55, smooth_px: 1.0, least_mm2: 4.0 };
/// Minimum share of pixels with a neighbour of nearly equal colour, in drawings; photos have less.
const EVEN_IN_A_DRAWING: f64 = 0.4;

/// Pencils that a picture is drawn with.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Pencils {
    /// As few colours, of [`FITTING`], as show all of the picture, see [`super::loss`].
    Fitting,
    /// Number of colours to be chosen for this picture.
    Chosen(usize),
    /// Number of greys to be chosen for this picture.
    Greys(usize),
    /// Pencils of the organiser's own.
    Own(Vec<Pencil>),
}

/// Request for a reduction.
#[derive(Clone, Debug, PartialEq)]
pub struct Wanted<'a> {
    /// Grid of the wall.
    pub grid: &'a Grid,
    /// Way in which the picture comes to the grid's shape.
    pub fit: Fit,
    /// Pencils that it is drawn with.
    pub pencils: Pencils,
}

/// Reduced picture, and what became of it on the way.
#[derive(Clone, Debug, PartialEq)]
pub struct Reduced {
    /// Picture in a few colours, in the grid's shape exactly.
    pub few: FewColours,
    /// Share of the picture that was cut away, 0 … 1.
    pub lost: f64,
    /// Share of the result that was added around the picture, 0 … 1.
    pub added: f64,
    /// Number of pixels along a piece's side before.
    pub own_piece_px: f64,
    /// Number of pixels along a piece's side now.
    pub piece_px: usize,
    /// Areas of the picture that no pencil shows, the largest first.
    pub not_shown: Vec<Lost>,
    /// Number of pencils that would show all of them; `None` where all is shown, where no number does, or where the pencils are the
    /// organiser's own.
    pub keeps: Option<usize>,
    /// The picture before, in the grid's shape, at most [`BEFORE_PX`] pixels wide and high.
    pub before: RgbImage,
}

/// Number of pixels of the longer side of [`Reduced::before`] at most.
pub const BEFORE_PX: usize = 3_000;

/// Maximum number of rounds of cleaning the picture and then its pieces: what an area loses at a cut line may leave a speck beyond it.
const MOST_ROUNDS: usize = 4;

/// Reason why a picture cannot be drawn.
#[derive(Clone, Debug, Error, PartialEq, Eq)]
pub enum ReduceError {
    /// Nothing on it.
    OneColour,
    /// Nothing left of it.
    OnePencil(String),
}

told_in_english!(ReduceError);

impl Tell for ReduceError {
    fn sentence(&self) -> Sentence {
        match self {
            Self::OneColour => Sentence::new("error-reduce-one-colour"),
            Self::OnePencil(pencil) => {
                Sentence::new("error-reduce-one-pencil").with("pencil", pencil.as_str())
            }
        }
    }
}

/// Reduces a picture.
///
/// # Errors
/// [`ReduceError`] where fewer than two colours would be left.
pub fn reduce(picture: Picture, wanted: &Wanted, words: &Words) -> Result<Reduced, ReduceError> {
    let picture = match wanted.pencils {
        Pencils::Greys(_) => greyed(picture),
        _ => picture,
    };
    let first = picture.pixels.get_pixel(0, 0);
    if picture.pixels.pixels().all(|pixel| pixel == first) {
        return Err(ReduceError::OneColour);
    }
    let fitted = Fitted::to(picture, wanted.grid, wanted.fit);
    let Numbered { pencils, mut numbers, manner, colours } = numbered(&fitted, wanted);
    let seen: Vec<Seen> = pencils.iter().map(|pencil| Seen::of(pencil.srgb)).collect();
    let least = Least::on_piece(wanted.grid.piece_mm, fitted.piece_px, manner.least_mm2);
    for _ in 0..MOST_ROUNDS {
        clean(&mut numbers, &seen, least);
        if !give_away_slivers(&mut numbers, fitted.piece_px, &seen) {
            break;
        }
    }
    let own = matches!(wanted.pencils, Pencils::Own(_));
    let few = FewColours::from_numbers(pencils, numbers);
    let few = if own { few } else { few.in_order_of_area().named(words) };
    if few.areas().iter().filter(|area| **area > 0).count() < 2 {
        let only = few.pencils.first().map(|pencil| pencil.name.clone()).unwrap_or_default();
        return Err(ReduceError::OnePencil(only));
    }
    let shown: Vec<[u8; 3]> = few.pencils.iter().map(|pencil| pencil.srgb).collect();
    let not_shown = colours.as_ref().map(|colours| lost(colours.areas(), &shown)).unwrap_or_default();
    let more = shown.len() + 1..=*COLOURS.end();
    let keeps = colours.filter(|_| !not_shown.is_empty() && !own).and_then(|colours| keeping(&colours, more));
    Ok(Reduced {
        before: before(&fitted),
        not_shown,
        keeps,
        few,
        lost: fitted.crop.lost,
        added: fitted.added,
        own_piece_px: fitted.crop.piece.value(),
        piece_px: fitted.piece_px,
    })
}

/// Every pixel with the number of its pencil.
struct Numbered {
    pencils: Vec<Pencil>,
    /// At the resolution wanted.
    numbers: Raster<u8>,
    manner: Manner,
    /// The picture's own colours; `None` where each has its pencil.
    colours: Option<Colours>,
}

/// The picture before, small enough to be looked at.
fn before(fitted: &Fitted) -> RgbImage {
    let longer = fitted.crop.size.x.max(fitted.crop.size.y);
    let by = (float(BEFORE_PX) / longer).min(1.0);
    let px = |length: f64| round_index(length * by).max(1);
    resampled(fitted, (px(fitted.crop.size.x), px(fitted.crop.size.y)))
}

/// Pencils, every pixel's number, the manner of counting, and the picture's own colours.
fn numbered(fitted: &Fitted, wanted: &Wanted) -> Numbered {
    let size = (wanted.grid.columns * fitted.piece_px, wanted.grid.rows * fitted.piece_px);
    let shrinks = fitted.crop.piece.value() >= float(fitted.piece_px);
    let most = match &wanted.pencils {
        Pencils::Fitting => *FITTING.end(),
        Pencils::Chosen(count) | Pencils::Greys(count) => *count,
        Pencils::Own(pencils) => pencils.len(),
    };
    let own = match &wanted.pencils {
        Pencils::Own(pencils) => Some(pencils.clone()),
        _ => None,
    };
    if let Some((colours, numbers)) = exactly(&fitted.picture.pixels, most, own.as_deref()) {
        let numbers = flat(numbers, colours.len(), fitted, size, shrinks);
        return Numbered { pencils: colours, numbers, manner: DRAWING, colours: None };
    }
    let pixels = if shrinks { shrunk(fitted, size) } else { fitted.picture.pixels.clone() };
    let colours = Colours::of(&pixels);
    let chosen = || match wanted.pencils {
        Pencils::Fitting => fitting(&colours, FITTING),
        _ => colours.choose(most),
    };
    let pencils = own.unwrap_or_else(|| chosen().into_iter().map(name::unnamed).collect());
    let shown: Vec<[u8; 3]> = pencils.iter().map(|pencil| pencil.srgb).collect();
    let manner = if is_drawing(&pixels) && !colours.is_mixed { DRAWING } else { PHOTO };
    let votes = (manner.votes)(&pixels, &shown);
    let place = if shrinks { whole(size) } else { place(fitted, size, 1.0) };
    let smooth_px = manner.smooth_mm * float(fitted.piece_px) / wanted.grid.piece_mm * place.step;
    let numbers = settle(&votes, shown.len(), &place, smooth_px.max(manner.smooth_px));
    Numbered { pencils, numbers, manner, colours: Some(colours) }
}

/// Pencils and numbers of a picture that has no more colours than are wanted, or only those of the
/// organiser's pencils.
fn exactly(pixels: &RgbImage, most: usize, own: Option<&[Pencil]>) -> Option<(Vec<Pencil>, Raster<u8>)> {
    let mut colours: Vec<[u8; 3]> = own.unwrap_or_default().iter().map(|pencil| pencil.srgb).collect();
    let mut values = Vec::with_capacity(pixels.as_raw().len() / 3);
    let mut last = ([0; 3], None);
    for pixel in pixels.pixels() {
        if last.1.is_none() || last.0 != pixel.0 {
            let known = colours.iter().position(|colour| *colour == pixel.0);
            let number = match known {
                Some(number) => number,
                None if own.is_none() && colours.len() < most => {
                    colours.push(pixel.0);
                    colours.len() - 1
                }
                None => return None,
            };
            last = (pixel.0, u8::try_from(number).ok());
        }
        values.push(last.1?);
    }
    let pencils = own.map_or_else(|| colours.into_iter().map(name::unnamed).collect(), <[Pencil]>::to_vec);
    Some((pencils, Raster { width: usize::try_from(pixels.width()).ok()?, values }))
}

/// Numbers of a picture of flat colours at the resolution wanted.
fn flat(
    numbers: Raster<u8>,
    count: usize,
    fitted: &Fitted,
    size: (usize, usize),
    shrinks: bool,
) -> Raster<u8> {
    if shrinks {
        return Shrink::new(&fitted.crop, size.0, size.1).most(&numbers, count);
    }
    let times = doublings(fitted.crop.piece.value() / float(fitted.piece_px));
    let larger = (0..times).fold(numbers, |numbers, _| doubled(&numbers));
    let factor = float(1 << times);
    settle(&larger.map(Vote::whole), count, &place(fitted, size, factor), DRAWING.smooth_px * factor.sqrt())
}

/// Place of the grid's pixels among those of a picture that has `factor` times the fitted one's.
fn place(fitted: &Fitted, size: (usize, usize), factor: f64) -> Place {
    let crop = &fitted.crop;
    let step = crop.piece.value() / float(fitted.piece_px) * factor;
    Place { start: (crop.top_left.x * factor, crop.top_left.y * factor), step, size }
}

fn whole(size: (usize, usize)) -> Place {
    Place { start: (0.0, 0.0), step: 1.0, size }
}

/// Part of the picture that the grid takes, in as many pixels as are wanted.
fn shrunk(fitted: &Fitted, size: (usize, usize)) -> RgbImage {
    if fitted.keeps_pixels() && fitted.crop.lost == 0.0 {
        return fitted.picture.pixels.clone();
    }
    resampled(fitted, size)
}

/// The same, whether or not the pixels could stay as they are.
fn resampled(fitted: &Fitted, (width, height): (usize, usize)) -> RgbImage {
    let light = Shrink::new(&fitted.crop, width, height).light(&fitted.picture.pixels);
    let across = u32::try_from(width).unwrap_or(0);
    let down = u32::try_from(height).unwrap_or(0);
    let mut pixels = RgbImage::new(across, down);
    pixels.pixels_mut().zip(light.values).for_each(|(pixel, light)| *pixel = shown(light));
    pixels
}

fn shown(light: [f32; 3]) -> Rgb<u8> {
    let srgb: palette::Srgb<u8> = palette::LinSrgb::new(light[0], light[1], light[2]).into_encoding();
    Rgb([srgb.red, srgb.green, srgb.blue])
}

/// Whether enough pixels equal their right neighbours, but for what JPEG makes of even areas, for a drawing.
fn is_drawing(pixels: &RgbImage) -> bool {
    let even = |a: &Rgb<u8>, b: &Rgb<u8>| a.0.iter().zip(b.0).all(|(a, b)| a.abs_diff(b) <= 1);
    let pairs = pixels.rows().flat_map(|row| {
        let row: Vec<&Rgb<u8>> = row.collect();
        row.windows(2).map(|pair| even(pair[0], pair[1])).collect::<Vec<_>>()
    });
    let (alike, all) = pairs.fold((0, 0), |(alike, all), even| (alike + usize::from(even), all + 1));
    float(alike) >= EVEN_IN_A_DRAWING * float(all)
}
