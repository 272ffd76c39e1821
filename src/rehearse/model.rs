//! The picture that visitors draw from, enlarged until no hand would follow its pixels.
//!
//! Each new pixel takes the colour that has the most weight around it (quadratic B-spline over 3 × 3 old pixels), so
//! slanting edges become smooth and no colour appears that the picture does not have.

use image::{Rgb, RgbImage};
use rayon::prelude::*;

use crate::frame::{ceil_index, float, floor_index};
use crate::plan::Grid;

/// Pixels that a piece should have along a side.
const PIECE_PX: f64 = 96.0;

/// The picture with at least [`PIECE_PX`] pixels along every piece.
pub(super) fn enlarged(picture: &RgbImage, grid: &Grid) -> RgbImage {
    let (w, h) = picture.dimensions();
    let across = f64::from(w) / float(grid.columns);
    let down = f64::from(h) / float(grid.rows);
    let factor = ceil_index(PIECE_PX / across.min(down).max(1.0)).clamp(1, 16);
    if factor == 1 || w == 0 || h == 0 {
        return picture.clone();
    }
    let by = u32::try_from(factor).unwrap_or(1);
    let (wide, high) = (w * by, h * by);
    let part = 1.0 / f64::from(by);
    let mut out = RgbImage::new(wide, high);
    out.enumerate_rows_mut().collect::<Vec<_>>().into_par_iter().for_each(|(_, row)| {
        for (x, y, pixel) in row {
            *pixel = weightiest(picture, (f64::from(x) + 0.5) * part, (f64::from(y) + 0.5) * part);
        }
    });
    out
}

fn weightiest(picture: &RgbImage, x: f64, y: f64) -> Rgb<u8> {
    let (w, h) = picture.dimensions();
    let (column, row) = (floor_index(x), floor_index(y));
    let weights = |t: f64| [0.5 * (1.0 - t).powi(2), 0.75 - (t - 0.5).powi(2), 0.5 * t * t];
    let (across, down) = (weights(x - float(column)), weights(y - float(row)));
    let mut found: [(Rgb<u8>, f64); 9] = [(Rgb([0; 3]), 0.0); 9];
    let at = |middle: usize, step: usize, count: u32| {
        u32::try_from((middle + step).saturating_sub(1)).unwrap_or(0).min(count - 1)
    };
    for (j, down) in down.iter().enumerate() {
        for (i, across) in across.iter().enumerate() {
            let colour = *picture.get_pixel(at(column, i, w), at(row, j, h));
            let slot = found.iter_mut().find(|(other, weight)| *weight == 0.0 || *other == colour);
            if let Some((other, weight)) = slot {
                *other = colour;
                *weight += across * down;
            }
        }
    }
    let most = found.iter().max_by(|a, b| a.1.total_cmp(&b.1));
    most.map_or(Rgb([0; 3]), |(colour, _)| *colour)
}
