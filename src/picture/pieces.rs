//! Cutting the picture into pieces.

use image::{Rgb, RgbImage};

use super::Picture;
use crate::frame::{Length, PicturePx, Point, Vector, ceil_index, float, floor_index, round_byte};
use crate::plan::{Cell, Grid};

/// Pixels along a piece's side that are enough on paper: 100 mm at 600 dots an inch.
const MOST_PIECE_PX: usize = 2_400;

/// The part of the picture that a grid covers: its middle, as large as fits.
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct Crop {
    /// Its top left corner.
    pub top_left: Point<PicturePx>,
    /// Its width and height.
    pub size: Vector<PicturePx>,
    /// Side of one piece.
    pub piece: Length<PicturePx>,
    /// The part of the picture's area that no piece shows, 0 … 1.
    pub lost: f64,
}

impl Crop {
    /// What a grid covers of a picture of `width` × `height` pixels.
    #[must_use]
    pub fn of((width, height): (u32, u32), grid: &Grid) -> Self {
        let (width, height) = (f64::from(width), f64::from(height));
        let (columns, rows) = (float(grid.columns), float(grid.rows));
        let side = (width / columns).min(height / rows);
        let size = Vector::new((side * columns).min(width), (side * rows).min(height));
        let middle = Point::new(width / 2.0, height / 2.0);
        let lost = (1.0 - size.x * size.y / (width * height)).max(0.0);
        Self { top_left: middle - size / 2.0, size, piece: Length::new(side), lost }
    }

    /// The top left corner of a cell's piece.
    #[must_use]
    pub fn piece_top_left(&self, cell: Cell) -> Point<PicturePx> {
        let side = self.piece.value();
        self.top_left + Vector::new(float(cell.column) * side, float(cell.row) * side)
    }
}

/// One piece of the picture.
#[derive(Clone, Debug, PartialEq)]
pub struct Piece {
    /// Which cell it shows.
    pub cell: Cell,
    /// Its top left corner in the picture.
    pub top_left: Point<PicturePx>,
    /// Its side.
    pub side: Length<PicturePx>,
    /// Its pixels, as many as its side rounded up (at most 2,400), each the mean of what it covers. Where the side is whole
    /// and the corner lies between pixels, these are the picture's own.
    pub pixels: RgbImage,
}

impl Picture {
    /// The part of the picture that a grid covers.
    #[must_use]
    pub fn crop(&self, grid: &Grid) -> Crop {
        Crop::of(self.size(), grid)
    }

    /// The piece of one cell.
    #[must_use]
    pub fn piece(&self, grid: &Grid, cell: Cell) -> Piece {
        let crop = self.crop(grid);
        let (top_left, side) = (crop.piece_top_left(cell), crop.piece.value());
        let count = ceil_index(side - ROUNDING_PX).clamp(1, MOST_PIECE_PX);
        let step = side / float(count);
        let across: Vec<_> = (0..count).map(|i| covered(top_left.x + float(i) * step, step)).collect();
        let down: Vec<_> = (0..count).map(|i| covered(top_left.y + float(i) * step, step)).collect();
        let across_px = u32::try_from(count).unwrap_or(1);
        let mut pixels = RgbImage::new(across_px, across_px);
        let places = down.iter().flat_map(|y| across.iter().map(move |x| (x, y)));
        for (pixel, (x, y)) in pixels.pixels_mut().zip(places) {
            *pixel = self.mean(x, y);
        }
        Piece { cell, top_left, side: crop.piece, pixels }
    }

    /// The mean of the picture's pixels, each with the weight of its column and its row.
    fn mean(&self, columns: &[(usize, f64)], rows: &[(usize, f64)]) -> Rgb<u8> {
        let (width, height) = self.size();
        let (mut sum, mut weight) = ([0.0; 3], 0.0);
        for (y, of_row) in rows {
            for (x, of_column) in columns {
                let x = u32::try_from(*x).unwrap_or(width).min(width - 1);
                let y = u32::try_from(*y).unwrap_or(height).min(height - 1);
                let own = of_row * of_column;
                weight += own;
                for (sum, colour) in sum.iter_mut().zip(self.pixels.get_pixel(x, y).0) {
                    *sum += own * f64::from(colour);
                }
            }
        }
        Rgb(sum.map(|sum| round_byte(sum / weight)))
    }
}

/// Part of a pixel that is the last bits of a division and no part of the picture.
const ROUNDING_PX: f64 = 1e-6;

/// Which pixels the stretch of `length` from `start` covers, and how much of each; at least one.
pub(super) fn covered(start: f64, length: f64) -> Vec<(usize, f64)> {
    let end = start + length;
    let first = floor_index(start + ROUNDING_PX);
    let beyond = ceil_index(end - ROUNDING_PX).max(first + 1);
    (first..beyond).map(|i| (i, (end.min(float(i) + 1.0) - start.max(float(i))).max(ROUNDING_PX))).collect()
}
