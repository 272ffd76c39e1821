//! Ghost: the original's piece where a square is missing, as if drawn softly with a grey pencil.

use image::imageops::{FilterType, resize};
use image::{Rgb, RgbImage};

use crate::frame::{float, round_byte};
use crate::picture::Picture;
use crate::plan::{Cell, Grid};

/// Grey level of the paper under the pencil.
const PAPER: f64 = 240.0;
/// Darkness of the darkest area, 0 … 1: a quarter of the way to black shows shapes and is told from any
/// square at a glance.
const TONE: f64 = 0.22;
/// Darkness of a line between two colours, 0 … 1.
const LINE: f64 = 0.45;
/// Width of a line as a share of the square's side.
const LINE_WIDTH: f64 = 0.008;
/// Threshold of the sum of the channels' differences, in levels, above which there is a line between two
/// colours.
const EDGE: u32 = 48;

/// Ghost of a cell's piece, `side_px` × `side_px` pixels.
#[must_use]
pub fn ghost(picture: &Picture, grid: &Grid, cell: Cell, side_px: usize) -> RgbImage {
    let side = u32::try_from(side_px.max(1)).unwrap_or(u32::MAX);
    let piece = resize(&picture.piece(grid, cell).pixels, side, side, FilterType::Triangle);
    let width = crate::frame::round_index(LINE_WIDTH * float(side_px)).max(1);
    let step = u32::try_from(width).unwrap_or(1);
    RgbImage::from_fn(side, side, |x, y| {
        let own = piece.get_pixel(x, y);
        let [r, g, b] = own.0.map(f64::from);
        let dark = 1.0 - (0.299 * r + 0.587 * g + 0.114 * b) / 255.0; // ITU-R BT.601
        let near = |x: u32, y: u32| piece.get_pixel(x.min(side - 1), y.min(side - 1));
        let edge = apart(own, near(x + step, y)).max(apart(own, near(x, y + step))) > EDGE;
        let level = PAPER * (1.0 - TONE * dark) * if edge { 1.0 - LINE } else { 1.0 };
        Rgb([round_byte(level); 3])
    })
}

fn apart(a: &Rgb<u8>, b: &Rgb<u8>) -> u32 {
    a.0.iter().zip(b.0).map(|(a, b)| u32::from(a.abs_diff(b))).sum()
}
