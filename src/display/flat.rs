//! A sheet that was photographed by itself, straightened, its light evened out by the white paper around what is drawn.
//!
//! ```text
//!   · · · · · · ·
//!   ·┌─────────┐·      · places on white paper just outside the cut line: light there is a smooth surface over the sheet, found
//!   ·│ drawing │·        robustly, since a thumb or a shadow lies over some
//!   ·└─────────┘·
//!   · · · · · · ·
//! ```

use image::RgbImage;
use nalgebra::{Matrix6, Vector6};
use rayon::prelude::*;

use super::light::PAPER;
use super::sample::Source;
use crate::frame::{Map, PhotoPx, Point, SquareMm, float, round_index};
use crate::photo::Photo;
use crate::picture::colour::{level_of_light, light_of_levels};

/// Distances from the cut line of the places where the paper is white, in mm.
const WHITE_MM: [f64; 3] = [1.4, 2.1, 2.8];
/// Number of places along each side.
const ALONG: usize = 48;
/// Maximum and minimum number of pixels along the side of a straightened square.
const SIDES_PX: [usize; 2] = [64, 1_200];
/// Rounds of the fit, and how much darker than it, in natural logarithms of light, a place is that is no white paper: a tenth.
const ROUNDS: usize = 5;
const DARKER: f64 = 0.1;
/// Maximum factor by which light is evened out.
const MOST_GAIN: f64 = 8.0;

/// Logarithm of the light on white paper, for each channel, as a polynomial of the second degree in the place.
struct Surface([Vector6<f64>; 3]);

/// Picture of a square in a photo, upright, as fine as the photo shows it; `None` where it is not all in the photo.
#[must_use]
pub fn flattened(photo: &Photo, square_to_photo: &Map<SquareMm, PhotoPx>, side_mm: f64) -> Option<RgbImage> {
    let middle = Point::new(side_mm / 2.0, side_mm / 2.0);
    let seen_px = square_to_photo.scale_at(middle) * side_mm;
    let side = round_index(seen_px).clamp(SIDES_PX[0], SIDES_PX[1]);
    let source = Source::new(photo, round_index(seen_px / float(side)).clamp(1, 64));
    let surface = Surface::of(&source, square_to_photo, side_mm)?;
    let mm = side_mm / float(side);
    let mut pixels = vec![0; side * side * 3];
    let light = light_of_levels();
    let drawn = pixels.par_chunks_mut(side * 3).enumerate().map(|(row, line)| {
        for (column, pixel) in line.chunks_exact_mut(3).enumerate() {
            let at = Point::<SquareMm>::new((float(column) + 0.5) * mm, (float(row) + 0.5) * mm);
            let levels = source.at(square_to_photo.apply(at))?;
            let white = surface.at(at, side_mm);
            for ((level, own), white) in pixel.iter_mut().zip(levels).zip(white) {
                let gain = (PAPER / white).min(MOST_GAIN);
                *level = level_of_light(f64::from(light[usize::from(own)]) * gain);
            }
        }
        Some(())
    });
    drawn.collect::<Option<()>>()?;
    let side = u32::try_from(side).ok()?;
    RgbImage::from_raw(side, side, pixels)
}

impl Surface {
    /// Fit to the white paper around a square; `None` where too little of it is in the photo.
    fn of(source: &Source<'_>, square_to_photo: &Map<SquareMm, PhotoPx>, side_mm: f64) -> Option<Self> {
        let light = light_of_levels();
        let mut places: Vec<(Vector6<f64>, [f64; 3])> = Vec::new();
        for at in around(side_mm) {
            let Some(levels) = source.at(square_to_photo.apply(at)) else { continue };
            let own = levels.map(|level| f64::from(light[usize::from(level)]).max(1e-3).ln());
            places.push((terms(at, side_mm), own));
        }
        let mut kept = vec![true; places.len()];
        let mut fit = None;
        for _ in 0..ROUNDS {
            let own = || places.iter().zip(&kept).filter(|(_, kept)| **kept).map(|(place, _)| place);
            if own().count() < 4 * ALONG {
                return None;
            }
            let left = own().fold(Matrix6::zeros(), |sum, (terms, _)| sum + terms * terms.transpose());
            let solved = left.cholesky()?;
            let channel = |k: usize| {
                let right = own().fold(Vector6::zeros(), |sum, (terms, seen)| sum + terms * seen[k]);
                solved.solve(&right)
            };
            let surface = [channel(0), channel(1), channel(2)];
            let off = |(terms, seen): &(Vector6<f64>, [f64; 3])| seen[1] - surface[1].dot(terms);
            kept = places.iter().map(|place| off(place) > -DARKER).collect();
            fit = Some(Self(surface));
        }
        fit
    }

    /// Light on white paper at a place, for each channel.
    fn at(&self, at: Point<SquareMm>, side_mm: f64) -> [f64; 3] {
        let terms = terms(at, side_mm);
        [0, 1, 2].map(|k: usize| self.0[k].dot(&terms).exp())
    }
}

/// Terms of the polynomial, about the square's middle in units of half its side.
fn terms(at: Point<SquareMm>, side_mm: f64) -> Vector6<f64> {
    let [x, y] = [at.x, at.y].map(|own| 2.0 * own / side_mm - 1.0);
    Vector6::new(1.0, x, y, x * x, x * y, y * y)
}

/// Places on the white paper around a square.
fn around(side_mm: f64) -> impl Iterator<Item = Point<SquareMm>> {
    let along = (0..ALONG).map(move |k| (float(k) + 0.5) / float(ALONG) * side_mm);
    along.flat_map(move |t| {
        WHITE_MM.into_iter().flat_map(move |out| {
            [(t, -out), (t, side_mm + out), (-out, t), (side_mm + out, t)].map(|(x, y)| Point::new(x, y))
        })
    })
}
