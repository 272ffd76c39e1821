//! A part of a picture whose edges do not fall on pixels, at exact size on paper.

use image::RgbImage;

use super::marks::Box;
use crate::frame::{ceil_index, floor_index};
use crate::picture::Crop;
use crate::plan::Cell;

/// An upright rectangle on a picture, in its pixels.
#[derive(Copy, Clone, Debug, PartialEq)]
pub(super) struct Part {
    /// Its left edge.
    pub left: f64,
    /// Its top edge.
    pub top: f64,
    /// How wide it is.
    pub width: f64,
    /// How high it is.
    pub height: f64,
}

impl Part {
    /// One piece of the picture.
    pub fn of_piece(crop: &Crop, cell: Cell) -> Self {
        let (corner, side) = (crop.piece_top_left(cell), crop.piece.value());
        Self { left: corner.x, top: corner.y, width: side, height: side }
    }

    /// The pixels that the part shows, whole ones, and where they lie within the part in mm, when it is printed `mm` wide and
    /// high: a pixel that an edge cuts is there whole and reaches beyond.
    pub fn cut_out(&self, pixels: &RgbImage, mm: [f64; 2]) -> (RgbImage, Box) {
        let (left, right) = whole(self.left, self.width, pixels.width());
        let (top, bottom) = whole(self.top, self.height, pixels.height());
        let [across, down] = [mm[0] / self.width, mm[1] / self.height];
        let lies = Box {
            x: (f64::from(left) - self.left) * across,
            y: (f64::from(top) - self.top) * down,
            width: f64::from(right - left) * across,
            height: f64::from(bottom - top) * down,
        };
        (copied(pixels, [left, right], [top, bottom]), lies)
    }
}

/// The pixels between two columns and two rows, copied row by row: pixel by pixel takes five times as long.
fn copied(pixels: &RgbImage, [left, right]: [u32; 2], [top, bottom]: [u32; 2]) -> RgbImage {
    let across = |columns: u32| usize::try_from(columns).unwrap_or(0) * 3;
    let rows = pixels.as_raw().chunks_exact(across(pixels.width()).max(1));
    let down = |rows: u32| usize::try_from(rows).unwrap_or(0);
    let rows = rows.skip(down(top)).take(down(bottom - top));
    let mut copied = Vec::with_capacity(across(right - left) * down(bottom - top));
    rows.filter_map(|row| row.get(across(left)..across(right))).for_each(|row| copied.extend_from_slice(row));
    // the stretches lie within the picture, so that there is a pixel for every place
    RgbImage::from_raw(right - left, bottom - top, copied).unwrap_or_default()
}

/// The whole pixels that a stretch of `length` from `start` touches: first, and the one beyond the last.
fn whole(start: f64, length: f64, pixels: u32) -> (u32, u32) {
    let nearly = 1e-6; // a pixel that shows less than this much of itself does not show
    let index = |value: usize| u32::try_from(value).unwrap_or(u32::MAX).min(pixels);
    let first = index(floor_index(start + nearly)).min(pixels.saturating_sub(1));
    (first, index(ceil_index(start + length - nearly)).max(first + 1))
}
