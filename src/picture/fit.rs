//! The picture brought to the grid's shape, at the resolution that paper needs.
//!
//! ```text
//!   crop  ┌──┬────┬──┐     pad  ┌────┐          the grid's shape is kept exactly: every piece is a square
//!         │░░│    │░░│          │    │ added    of the same whole number of pixels
//!         │░░│    │░░│          ├────┤
//!         └──┴────┴──┘          │    │
//!         cut      cut          ├────┤
//!                               │    │ added
//!                               └────┘
//! ```

use image::{Rgb, RgbImage, imageops};

use super::Picture;
use super::pieces::Crop;
use crate::frame::{ceil_index, float, floor_index, round_index};
use crate::plan::Grid;
use crate::plan::settings::Choice;

/// How a picture of another shape than the grid's comes to it.
#[derive(Copy, Clone, Debug, PartialEq, Eq, Default)]
pub enum Fit {
    /// What is too much is cut away, half on either side.
    #[default]
    Crop,
    /// What is missing is added, half on either side.
    Pad,
}

impl Choice for Fit {
    const ALL: &'static [(Self, &'static str)] = &[(Self::Crop, "crop"), (Self::Pad, "pad")];
}

/// Pixels along a piece's side that paper needs: one inch at 200 dots an inch.
const PIECE_PX: usize = 200;
/// Pixels along a piece's side from which a picture is left at its own resolution: one inch at 96 dots an inch. Below, it is
/// enlarged with smooth edges.
const CLEAR_PIECE_PX: usize = 96;
/// Pixels of the whole picture at most; a wall of more than 200 squares gets fewer than [`PIECE_PX`] a piece.
const MOST_PX: f64 = 8e6;
/// The part of a drawing's border that one colour has to cover to be what is added outside it; else that is white.
const PLAIN_BORDER: f64 = 0.9;

/// A picture of the grid's shape, and the part of it that the grid takes.
#[derive(Clone, Debug, PartialEq)]
pub struct Fitted {
    /// The picture, with what was added to it.
    pub picture: Picture,
    /// What of it the grid shows.
    pub crop: Crop,
    /// The part of what is shown that was added, 0 … 1.
    pub added: f64,
    /// Whole pixels along a piece's side that it is to have.
    pub piece_px: usize,
}

impl Fitted {
    /// Brings a picture to a grid's shape.
    #[must_use]
    pub fn to(picture: Picture, grid: &Grid, fit: Fit) -> Self {
        let own_px = float(picture.pixels.as_raw().len() / 3);
        let picture = match fit {
            Fit::Crop => picture,
            Fit::Pad => padded(picture, grid),
        };
        let crop = picture.crop(grid);
        let added = match fit {
            Fit::Crop => 0.0,
            Fit::Pad => (1.0 - own_px / (crop.size.x * crop.size.y)).max(0.0),
        };
        let piece_px = piece_px(crop.piece.value(), grid.columns * grid.rows);
        Self { picture, crop, added, piece_px }
    }

    /// Whether its pixels stay as they are: the grid takes whole ones, as many as are wanted.
    #[must_use]
    pub fn keeps_pixels(&self) -> bool {
        let whole = |value: f64| (value - value.round()).abs() < 1e-6;
        let at = self.crop.top_left;
        (self.crop.piece.value() - float(self.piece_px)).abs() < 1e-6 && whole(at.x) && whole(at.y)
    }
}

/// Pixels along a piece's side: its own if these are neither too few nor too many.
fn piece_px(own: f64, cells: usize) -> usize {
    let most = floor_index((MOST_PX / float(cells.max(1))).sqrt()).clamp(1, PIECE_PX);
    let own = round_index(own);
    if (CLEAR_PIECE_PX.min(most)..=most).contains(&own) { own } else { most }
}

/// The picture with what is missing added on two sides.
fn padded(picture: Picture, grid: &Grid) -> Picture {
    let (width, height) = picture.size();
    let (columns, rows) = (float(grid.columns), float(grid.rows));
    let side = (f64::from(width) / columns).max(f64::from(height) / rows);
    let px = |length: f64, least: u32| u32::try_from(ceil_index(length - 1e-6)).unwrap_or(least).max(least);
    let (across, down) = (px(side * columns, width), px(side * rows, height));
    if (across, down) == (width, height) {
        return picture;
    }
    let mut pixels = RgbImage::from_pixel(across, down, surround(&picture.pixels));
    let (left, top) = ((across - width) / 2, (down - height) / 2);
    imageops::replace(&mut pixels, &picture.pixels, i64::from(left), i64::from(top));
    Picture { pixels }
}

/// The colour of what is added: that of the border where it has one, else white as paper.
fn surround(pixels: &RgbImage) -> Rgb<u8> {
    let (right, below) = (pixels.width() - 1, pixels.height() - 1);
    let across = (0..=right).flat_map(|x| [(x, 0), (x, below)]);
    let border: Vec<[u8; 3]> = across
        .chain((0..=below).flat_map(|y| [(0, y), (right, y)]))
        .map(|(x, y)| pixels.get_pixel(x, y).0)
        .collect();
    let mut counts = std::collections::BTreeMap::<[u8; 3], usize>::new();
    border.iter().for_each(|colour| *counts.entry(*colour).or_default() += 1);
    let most = counts.into_iter().max_by_key(|(_, count)| *count);
    let plain = most.filter(|(_, count)| float(*count) >= PLAIN_BORDER * float(border.len()));
    Rgb(plain.map_or([255; 3], |(colour, _)| colour))
}
