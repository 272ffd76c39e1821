//! The wall's picture as it grows, and the little pictures on the pages.
//!
//! ```text
//!   ┌──────────────────────────────┐
//!   │ margin                       │     Every photo is drawn straight at the same scale, and of it those cells are taken
//!   │   ┌──────┬──────┬──────┐     │     that it shows newest. The margin goes with the cell beside it.
//!   │   │      │      │      │     │
//! ```

use std::io::Cursor;
use std::ops::Range;

use image::imageops::{FilterType, crop_imm, resize};
use image::{Rgb, RgbImage};
use rayon::prelude::*;

use crate::check::{FRONTAL, MARGIN_MM};
use crate::display::{Frontal, JpegError, LONGEST_PX, jpeg};
use crate::frame::{float, floor_index, round_index};
use crate::picture::Picture;
use crate::plan::{Cell, Grid};

/// Longest side of the wall behind a page's map: as wide as a phone held upright has pixels, or a projector.
const MAP_PX: u32 = 1_280;
/// Side of a little picture: a cell at a third of a phone's width, on a screen with two pixels to each of CSS.
const LITTLE_PX: u32 = 240;
/// So much of the neighbours is seen around a cell, in mm: squares hang a little askew.
const AROUND_MM: f64 = 6.0;
/// Longest side of the marked photo as a phone shows it first; the whole one comes with the first zoom.
const MARKED_PX: u32 = 1_280;
/// What stands where no photo has shown the wall.
const NOWHERE: Rgb<u8> = Rgb([230; 3]);

/// The wall's picture.
#[derive(Clone, Debug)]
pub struct WallPicture {
    pixels: RgbImage,
    px_per_mm: f64,
    grid: Grid,
}

/// How each photo is drawn, so that all of them fit one picture.
#[must_use]
pub fn frontal() -> Frontal {
    Frontal { px_per_mm: Some(f64::INFINITY), ..FRONTAL }
}

impl WallPicture {
    /// A wall that no photo has shown.
    #[must_use]
    pub fn blank(grid: &Grid) -> Self {
        let size = grid.size();
        let (width_mm, height_mm) = (size.x + 2.0 * MARGIN_MM, size.y + 2.0 * MARGIN_MM);
        let px_per_mm = float(LONGEST_PX) / width_mm.max(height_mm);
        let side = |mm: f64| pixels(mm * px_per_mm).max(1);
        Self {
            pixels: RgbImage::from_pixel(side(width_mm), side(height_mm), NOWHERE),
            px_per_mm,
            grid: *grid,
        }
    }

    /// The wall as a check's `wall.jpg` shows it; `None` where that is of another shape.
    #[must_use]
    pub fn from_check(picture: &RgbImage, grid: &Grid) -> Option<Self> {
        let mut wall = Self::blank(grid);
        let (width, height) = wall.pixels.dimensions();
        let wanted = f64::from(height) / f64::from(width);
        let own = f64::from(picture.height()) / f64::from(picture.width().max(1));
        if (own / wanted - 1.0).abs() > 0.01 {
            return None;
        }
        wall.pixels = if picture.dimensions() == (width, height) {
            picture.clone()
        } else {
            resize(picture, width, height, FilterType::Triangle)
        };
        Some(wall)
    }

    /// Takes the cells that `cells` names from a photo drawn with [`frontal`], of them the pixels that the photo has: `shown`, row
    /// by row. Where it is cut, what was there before stays.
    pub fn take(&mut self, drawn: &RgbImage, shown: &[bool], cells: &[bool]) {
        if drawn.dimensions() != self.pixels.dimensions() {
            return;
        }
        let width = drawn.width();
        let has = |x: u32, y: u32| {
            let at = u64::from(y) * u64::from(width) + u64::from(x);
            usize::try_from(at).ok().and_then(|at| shown.get(at)) == Some(&true)
        };
        for cell in self.grid.cells().filter(|cell| cells.get(self.grid.index(*cell)) == Some(&true)) {
            let across = self.strip(cell.column, self.grid.columns, width);
            for y in self.strip(cell.row, self.grid.rows, drawn.height()) {
                for x in across.clone().filter(|x| has(*x, y)) {
                    self.pixels.put_pixel(x, y, *drawn.get_pixel(x, y));
                }
            }
        }
    }

    /// The pixels of a column or row, with the margin where it is the first or last.
    fn strip(&self, at: usize, all: usize, end: u32) -> Range<u32> {
        let edge =
            |at: usize| pixels((MARGIN_MM + float(at) * self.grid.square_mm) * self.px_per_mm).min(end);
        let from = if at == 0 { 0 } else { edge(at) };
        let to = if at + 1 == all { end } else { edge(at + 1) };
        from..to
    }

    /// The whole picture.
    #[must_use]
    pub fn pixels(&self) -> &RgbImage {
        &self.pixels
    }

    /// The wall without its margin, small enough for a page, as a JPEG file.
    ///
    /// # Errors
    /// [`JpegError`] where it has no pixels.
    pub fn map(&self) -> Result<Vec<u8>, JpegError> {
        let margin = pixels(MARGIN_MM * self.px_per_mm);
        let size = self.grid.size();
        let (width, height) =
            (pixels(size.x * self.px_per_mm).max(1), pixels(size.y * self.px_per_mm).max(1));
        let wall = crop_imm(&self.pixels, margin, margin, width, height).to_image();
        jpeg(&within(&wall, MAP_PX))
    }

    /// What hangs in a cell, as a JPEG file.
    ///
    /// # Errors
    /// [`JpegError`] where it has no pixels.
    pub fn cell(&self, cell: Cell) -> Result<Vec<u8>, JpegError> {
        let start = |at: usize| MARGIN_MM + float(at) * self.grid.square_mm - AROUND_MM;
        let px = |mm: f64| pixels(mm * self.px_per_mm);
        let side = px(self.grid.square_mm + 2.0 * AROUND_MM).max(1);
        let crop = crop_imm(&self.pixels, px(start(cell.column)), px(start(cell.row)), side, side).to_image();
        jpeg(&little(&crop))
    }
}

/// What belongs in each cell, row by row from the top, as JPEG files.
///
/// # Errors
/// [`JpegError`] where a piece has no pixels.
pub fn pieces(picture: &Picture, grid: &Grid) -> Result<Vec<Vec<u8>>, JpegError> {
    let cells: Vec<Cell> = grid.cells().collect();
    let piece = |cell: &Cell| {
        let piece = picture.piece(grid, *cell);
        let at = |px: f64| u32::try_from(floor_index(px)).unwrap_or(u32::MAX);
        let side = pixels(piece.side.value()).max(1);
        let crop =
            crop_imm(&picture.pixels, at(piece.top_left.x), at(piece.top_left.y), side, side).to_image();
        jpeg(&little(&crop))
    };
    cells.par_iter().map(piece).collect()
}

/// The picture as it was cut into pieces, as a JPEG file.
///
/// # Errors
/// [`JpegError`] where it has no pixels.
pub fn original(picture: &Picture, grid: &Grid) -> Result<Vec<u8>, JpegError> {
    let crop = picture.crop(grid);
    let at = |px: f64| u32::try_from(floor_index(px)).unwrap_or(u32::MAX);
    let (width, height) = (pixels(crop.size.x).max(1), pixels(crop.size.y).max(1));
    let (left, top) = (at(crop.top_left.x), at(crop.top_left.y));
    jpeg(&within(&crop_imm(&picture.pixels, left, top, width, height).to_image(), MAP_PX))
}

/// A picture no larger than a page shows it.
fn little(picture: &RgbImage) -> RgbImage {
    within(picture, LITTLE_PX)
}

/// A picture whose longer side is `most` pixels at most.
fn within(picture: &RgbImage, most: u32) -> RgbImage {
    let longest = picture.width().max(picture.height());
    if longest <= most {
        return picture.clone();
    }
    let side = |pixels: u32| (pixels * most / longest).max(1);
    resize(picture, side(picture.width()), side(picture.height()), FilterType::Triangle)
}

/// A marked photo for a phone's first look, of a JPEG file; empty where that cannot be opened.
#[must_use]
pub fn marked_small(marked: &[u8]) -> Vec<u8> {
    let opened = image::load_from_memory_with_format(marked, image::ImageFormat::Jpeg);
    opened.ok().and_then(|photo| jpeg(&within(&photo.into_rgb8(), MARKED_PX)).ok()).unwrap_or_default()
}

/// Width and height of a JPEG file in pixels; `None` where it is none.
#[must_use]
pub fn size_of(jpeg: &[u8]) -> Option<(u32, u32)> {
    image::ImageReader::with_format(Cursor::new(jpeg), image::ImageFormat::Jpeg).into_dimensions().ok()
}

fn pixels(count: f64) -> u32 {
    u32::try_from(round_index(count)).unwrap_or(u32::MAX)
}

#[cfg(test)]
mod tests {
    use super::*;

    const GRID: Grid = Grid::usual(3, 2);

    #[test]
    fn cells_and_their_margin_are_taken_from_the_photo_that_shows_them() {
        let mut wall = WallPicture::blank(&GRID);
        let (width, height) = wall.pixels.dimensions();
        assert_eq!(usize::try_from(width).unwrap(), LONGEST_PX);
        let red = RgbImage::from_pixel(width, height, Rgb([200, 0, 0]));
        let all = vec![true; red.as_raw().len() / 3];
        wall.take(&red, &all, &[true, false, false, false, false, true]);
        let is_red = |x: u32, y: u32| *wall.pixels.get_pixel(x, y) == Rgb([200, 0, 0]);
        assert!(is_red(0, 0) && is_red(width - 1, height - 1) && is_red(width / 4, height / 4));
        assert!(!is_red(width / 2, 0) && !is_red(width - 1, 0) && !is_red(0, height - 1));
        assert!(wall.map().is_ok() && wall.cell(Cell { row: 1, column: 2 }).is_ok());
    }

    #[test]
    fn where_a_photo_is_cut_the_picture_before_stays() {
        let mut wall = WallPicture::blank(&GRID);
        let (width, height) = wall.pixels.dimensions();
        let filled = |colour| RgbImage::from_pixel(width, height, Rgb(colour));
        let all = vec![true; filled([0; 3]).as_raw().len() / 3];
        wall.take(&filled([0, 90, 0]), &all, &[true; 6]);
        let left: Vec<bool> = (0..height).flat_map(|_| (0..width).map(|x| x < width / 6)).collect();
        wall.take(&filled([200, 0, 0]), &left, &[true; 6]);
        assert_eq!(*wall.pixels.get_pixel(width / 12, height / 2), Rgb([200, 0, 0]));
        assert_eq!(
            *wall.pixels.get_pixel(width / 4, height / 2),
            Rgb([0, 90, 0]),
            "the same cell, beyond the photo"
        );
    }

    #[test]
    fn a_check_s_picture_is_fitted_or_refused() {
        let (width, height) = WallPicture::blank(&GRID).pixels.dimensions();
        let half = RgbImage::from_pixel(width / 2, height / 2, Rgb([0, 90, 0]));
        assert_eq!(WallPicture::from_check(&half, &GRID).unwrap().pixels.dimensions(), (width, height));
        assert!(WallPicture::from_check(&RgbImage::new(100, 100), &GRID).is_none());
        assert!(WallPicture::from_check(&RgbImage::new(0, 0), &GRID).is_none());
    }
}
