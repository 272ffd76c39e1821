//! The original's edges over the straightened wall: how far what was drawn agrees with what was to be drawn.
//!
//! ```text
//!   halo  line  halo
//!   ░░░░░██████░░░░░      the line is where two pencils meet in the original; its middle is found between the pixels, so that
//!    sky  edge  sea       it is as smooth as the picture is
//! ```
//!
//! For adults who plan the next evening, or talk about this one: it shows where lines met, and ranks nothing and nobody.
//!
//! The pencils' areas are smoothed a little. The share of a pencil then goes from 1 to 0 across an edge as the Gaussian's integral,
//! and how much the first pencil has over the second says how far away the edge is.

use image::{GrayImage, Luma, RgbImage};
use imageproc::filter::gaussian_blur_f32;
use rayon::prelude::*;

use crate::frame::{float, floor_index, narrow, round_byte};
use crate::picture::colour::ciede2000;
use crate::picture::{Crop, FewColours};
use crate::plan::Grid;

/// Width of a line as a share of the picture's longer side; 2560 pixels get 3. Half as wide is lost on a
/// projector.
const LINE_PART: f64 = 0.0012;
/// Minimum width of a line, in pixels.
const THINNEST_PX: f64 = 1.2;
/// Width of the halo on either side, in lines.
const HALO: f64 = 1.0;
/// Opacity of the halo, 0 … 1.
const HALO_COVER: f64 = 0.7;
const LIGHT: [u8; 3] = [255; 3];
/// Candidate colours for lines: magenta, ink, cyan, orange. Pencils seldom look like the first.
const LINES: [[u8; 3]; 4] = [[214, 0, 120], [20, 20, 24], [0, 150, 190], [235, 110, 0]];

/// Picture of the wall with the original's edges over it, as large as `wall`, which shows the grid and
/// `margin_mm` around it.
#[must_use]
pub fn overlap(wall: &RgbImage, original: &FewColours, grid: &Grid, margin_mm: f64) -> RgbImage {
    let across = grid.size().x + 2.0 * margin_mm;
    let crop = Crop::of(original.size(), grid);
    let (width, height) = wall.dimensions();
    // the original's pixels for one of the wall's
    let step = across / f64::from(width.max(1)) * crop.piece.value() / grid.square_mm;
    let line = (f64::from(width.max(height)) * LINE_PART).max(THINNEST_PX);
    let margin = margin_mm / grid.square_mm * crop.piece.value();
    let place = Place { x: crop.top_left.x - margin, y: crop.top_left.y - margin, step };
    // steps of the original's own pixels must not show
    let smooth = line.max(1.0 / step);
    let lead = leads(original, &place, (width, height), smooth);
    let colours: Vec<[u8; 3]> = original.pencils.iter().map(|pencil| pencil.srgb).collect();
    let colour = line_colour(&colours);
    let covers = Covers::new(line, smooth);
    let mut drawn = wall.clone();
    let margin_px = margin_mm / across * f64::from(width);
    let row_bytes = usize::try_from(width).unwrap_or(0) * 3;
    drawn.par_chunks_mut(row_bytes.max(1)).enumerate().for_each(|(y, row)| {
        let in_rows = inside(y, margin_px, height);
        for (x, pixel) in row.chunks_exact_mut(3).enumerate() {
            let at = y * (row_bytes / 3) + x;
            let Some([halo, line]) = lead.get(at).map(|lead| covers.at(*lead)) else { continue };
            if in_rows && inside(x, margin_px, width) && halo > 0.0 {
                for (own, (light, ink)) in pixel.iter_mut().zip(LIGHT.iter().zip(colour)) {
                    let behind = f64::from(*own) + (f64::from(*light) - f64::from(*own)) * halo * HALO_COVER;
                    *own = round_byte(behind + (f64::from(ink) - behind) * line);
                }
            }
        }
    });
    drawn
}

fn inside(at: usize, margin: f64, all: u32) -> bool {
    let middle = float(at) + 0.5;
    middle > margin && middle < f64::from(all) - margin
}

/// Colour of [`LINES`] that looks least like any pencil or paper (CIEDE2000).
fn line_colour(pencils: &[[u8; 3]]) -> [u8; 3] {
    let least = |line: &[u8; 3]| {
        pencils.iter().chain([&LIGHT]).map(|own| ciede2000(*own, *line)).fold(f64::INFINITY, f64::min)
    };
    LINES.into_iter().max_by(|a, b| least(a).total_cmp(&least(b))).unwrap_or(LINES[0])
}

/// Place of the wall's pixels in the original: its top left corner and a pixel's step, in the original's
/// pixels.
struct Place {
    x: f64,
    y: f64,
    step: f64,
}

impl Place {
    /// Index of the pencil at each pixel of the wall, row by row; beyond the picture its outermost pixels go
    /// on.
    fn pencils(&self, original: &FewColours, (width, height): (u32, u32)) -> Vec<u8> {
        let side = |pixels: u32| usize::try_from(pixels).unwrap_or(0);
        let (w, h) = (side(original.size().0), side(original.size().1));
        let at = |start: f64, i: usize, all: usize| {
            floor_index(start + (float(i) + 0.5) * self.step).min(all.saturating_sub(1))
        };
        let columns: Vec<usize> = (0..side(width)).map(|x| at(self.x, x, w)).collect();
        let row = |y: usize| {
            let own = at(self.y, y, h) * w;
            columns.iter().map(move |x| original.index().get(own + x).copied().unwrap_or(0))
        };
        (0..side(height)).flat_map(row).collect()
    }
}

/// Lead at every pixel, row by row: the smoothed share of the pencil with most minus that with second most, 0
/// at an edge … 255.
fn leads(original: &FewColours, place: &Place, size: (u32, u32), smooth: f64) -> Vec<u8> {
    let numbers = place.pencils(original, size);
    let mut used: Vec<u8> = numbers.clone();
    used.sort_unstable();
    used.dedup();
    let share = |pencil: &u8| {
        let own = numbers.iter().map(|own| if own == pencil { u8::MAX } else { 0 }).collect();
        let area = GrayImage::from_raw(size.0, size.1, own)
            .unwrap_or_else(|| GrayImage::from_pixel(1, 1, Luma([0])));
        gaussian_blur_f32(&area, narrow(smooth)).into_raw()
    };
    let (mut first, mut second) = (vec![0_u8; numbers.len()], vec![0_u8; numbers.len()]);
    // two at a time: many pencils on a large wall would need much memory
    for pair in used.chunks(2) {
        let shares: Vec<Vec<u8>> = pair.par_iter().map(share).collect();
        for share in shares {
            for ((first, second), own) in first.iter_mut().zip(&mut second).zip(share) {
                if own > *first {
                    *second = *first;
                    *first = own;
                } else {
                    *second = own.max(*second);
                }
            }
        }
    }
    first.iter().zip(&second).map(|(first, second)| first - second).collect()
}

/// Table from a lead to the opacity of halo and line, 0 … 1.
struct Covers([[f64; 2]; 256]);

impl Covers {
    fn new(line: f64, smooth: f64) -> Self {
        let mut covers = [[0.0; 2]; 256];
        for (lead, covers) in covers.iter_mut().enumerate() {
            let away = distance(float(lead) / 255.0) * smooth;
            let soft = |reach: f64| (reach - away + 0.5).clamp(0.0, 1.0);
            *covers = [soft(line * (0.5 + HALO)), soft(line / 2.0)];
        }
        Self(covers)
    }

    fn at(&self, lead: u8) -> [f64; 2] {
        self.0[usize::from(lead)]
    }
}

/// Distance from an edge, in standard deviations, at which one side has this lead, 0 … 1.
///
/// The inverse of erf(x / √2), by Winitzki's approximation (2008), right to 0.2 %.
fn distance(lead: f64) -> f64 {
    const A: f64 = 0.147;
    let log = (1.0 - lead * lead).max(1e-12).ln();
    let half = 2.0 / (std::f64::consts::PI * A) + log / 2.0;
    ((half * half - log / A).sqrt() - half).max(0.0).sqrt() * std::f64::consts::SQRT_2
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_lead_tells_the_distance() {
        // the normal distribution's table: within 0.5, 1 and 2 deviations lie 38.29, 68.27 and 95.45 %
        for (within, deviations) in [(0.0, 0.0), (0.3829, 0.5), (0.6827, 1.0), (0.9545, 2.0)] {
            assert!((distance(within) - deviations).abs() < 0.01, "{within}: {}", distance(within));
        }
    }

    #[test]
    fn a_line_looks_like_no_pencil() {
        let pink = [[220, 10, 110], [180, 0, 90], [255, 255, 255]];
        assert_ne!(line_colour(&pink), LINES[0]);
        let others = [LINES[1], LINES[2], LINES[3]].map(|line| line.map(|level| level / 16 * 16));
        assert_eq!(line_colour(&others), LINES[0]);
    }

    #[test]
    fn beyond_the_margin_nothing_is_drawn() {
        assert!(
            !inside(9, 10.0, 100) && inside(10, 10.0, 100) && inside(89, 10.0, 100) && !inside(90, 10.0, 100)
        );
    }
}
