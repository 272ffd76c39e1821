//! Structural similarity (SSIM) of two pictures of the same size.
//!
//! Wang, Bovik, Sheikh & Simoncelli, 2004, "Image quality assessment: from error visibility to structural
//! similarity", IEEE Transactions on Image Processing 13 (4): at every place means, variances and covariance
//! of the two under a Gaussian window of 11 × 11 pixels (standard deviation 1.5), K1 = 0.01, K2 = 0.03,
//! levels from 0 to 255:
//!
//! ```text
//!             (2 μx μy + C1) (2 σxy + C2)
//!   SSIM = ──────────────────────────────────        C1 = (K1 · 255)²,  C2 = (K2 · 255)²
//!           (μx² + μy² + C1) (σx² + σy² + C2)
//! ```
//!
//! 1 is the same picture, about 0 nothing in common. It is computed on luma (ITU-R BT.601, 0.299, 0.587,
//! 0.114), not rounded; the mean leaves out the five pixels at the edges where the window reaches beyond, as
//! the paper's own programs do.
//!
//! ```
//! use everysquare::picture::structure::ssim;
//! let picture = image::RgbImage::from_fn(40, 30, |x, y| image::Rgb([(x * 6) as u8, (y * 8) as u8, 90]));
//! assert_eq!(ssim(&picture, &picture).map(|alike| alike.mean), Some(1.0));
//! ```

use image::RgbImage;
use image::imageops::{FilterType, resize, thumbnail};
use rayon::prelude::*;

use crate::frame::{float, narrow, round_index};

/// Reach of the window, in pixels from its centre to its rim.
pub(super) const REACH: usize = 5;
/// Standard deviation of the window, in pixels.
const DEVIATION: f64 = 1.5;
const C1: f64 = 2.55 * 2.55;
const C2: f64 = 7.65 * 7.65;
/// Number of rows in a band, the unit of parallel work: enough that the rows around, done twice, weigh
/// little.
const BAND: usize = 64;
/// Longest side of the pictures that [`wall_likeness`] compares, in pixels.
///
/// On a wall of 10 × 8 squares of 127 mm a pixel is then 7 mm wide: strokes of crayon are means within a
/// pixel, and what is compared is where colours are. With pixels of 2 mm grain dominates, since where the
/// original is even the formula counts little else; half as large and the window is wider than a square.
/// Tried on made grain (`tests/event/picture/structure.rs`); no source.
const WALL_PX: f64 = 192.0;

/// Structural similarity of two pictures.
#[derive(Clone, Debug, PartialEq)]
pub struct Alike {
    /// Mean SSIM over all places whose window lies within the pictures; over all places where none does.
    pub mean: f64,
    /// SSIM of every pixel, row by row; at the edges the pictures go on mirrored.
    pub map: Vec<f32>,
}

/// SSIM of two pictures. `None` where their sizes differ or they have no pixels.
#[must_use]
pub fn ssim(one: &RgbImage, other: &RgbImage) -> Option<Alike> {
    if one.dimensions() != other.dimensions() || one.is_empty() {
        return None;
    }
    let side = |pixels: u32| usize::try_from(pixels).unwrap_or(0);
    let (width, height) = (side(one.width()), side(one.height()));
    let pair = Pair { width, height, x: luma(one), y: luma(other), bell: bell() };
    let mut map = vec![0.0; width * height];
    map.par_chunks_mut(width * BAND).enumerate().for_each(|(band, into)| pair.band(band * BAND, into));
    let inner = |all: usize| if all > 2 * REACH { REACH..all - REACH } else { 0..all };
    let rows = if width > 2 * REACH { inner(height) } else { 0..height };
    let columns = if height > 2 * REACH { inner(width) } else { 0..width };
    let count = float(rows.len() * columns.len());
    let of_row = |y: usize| map[y * width..][columns.clone()].iter().map(|own| f64::from(*own)).sum::<f64>();
    let mean = rows.map(of_row).sum::<f64>() / count;
    Some(Alike { mean, map })
}

/// Similarity of a straightened wall and the original, 0 nothing in common … 1 the same; for pictures of the
/// same part, of any sizes.
///
/// Both are first made 192 pixels long, each pixel the mean of what it covers: neither photo's resolution nor
/// the crayons' grain then moves the figure.
#[must_use]
pub fn wall_likeness(wall: &RgbImage, original: &RgbImage) -> f64 {
    if wall.is_empty() || original.is_empty() {
        return 0.0;
    }
    let (w, h) = (f64::from(wall.width()), f64::from(wall.height()));
    let scale = WALL_PX / w.max(h);
    let px = |side: f64| u32::try_from(round_index(side * scale).max(1)).unwrap_or(1);
    let size = (px(w), px(h));
    let small = |picture: &RgbImage| {
        if picture.width() >= size.0 && picture.height() >= size.1 {
            thumbnail(picture, size.0, size.1)
        } else {
            resize(picture, size.0, size.1, FilterType::Triangle)
        }
    };
    ssim(&small(wall), &small(original)).map_or(0.0, |alike| alike.mean.max(0.0))
}

fn luma(picture: &RgbImage) -> Vec<f32> {
    let grey = |pixel: &[u8]| {
        f32::from(pixel[0]) * 0.299 + f32::from(pixel[1]) * 0.587 + f32::from(pixel[2]) * 0.114
    };
    picture.as_raw().par_chunks_exact(3).map(grey).collect()
}

/// Weights of the window along one direction, from its centre out; with the mirrored half they sum to 1.
fn bell() -> [f64; REACH + 1] {
    let height: [f64; REACH + 1] =
        std::array::from_fn(|i| (-float(i * i) / (2.0 * DEVIATION * DEVIATION)).exp());
    let sum = height[0] + 2.0 * height[1..].iter().sum::<f64>();
    height.map(|own| own / sum)
}

/// Two pictures in luma, row by row, and the window.
struct Pair {
    width: usize,
    height: usize,
    x: Vec<f32>,
    y: Vec<f32>,
    bell: [f64; REACH + 1],
}

/// Number of running sums: x, y, x² + y², xy. In f64, because f32 loses the variance of bright paper (error
/// 2e-4).
const KINDS: usize = 4;

impl Pair {
    /// SSIM map of the rows from `first` on, as many as fit in `into`.
    fn band(&self, first: usize, into: &mut [f32]) {
        let width = self.width;
        let mut down = vec![0.0; KINDS * (width + 2 * REACH)];
        let mut across = vec![0.0; KINDS * width];
        let mut weighed = vec![0.0; KINDS * width];
        for (row, into) in into.chunks_exact_mut(width).enumerate() {
            self.down(first + row, &mut weighed);
            for (padded, own) in down.chunks_exact_mut(width + 2 * REACH).zip(weighed.chunks_exact(width)) {
                padded[REACH..REACH + width].copy_from_slice(own);
                for i in 1..=REACH {
                    padded[REACH - i] = own[mirrored(-signed(i), width)];
                    padded[REACH + width - 1 + i] = own[mirrored(signed(width - 1 + i), width)];
                }
            }
            for (out, padded) in across.chunks_exact_mut(width).zip(down.chunks_exact(width + 2 * REACH)) {
                self.across(padded, out);
            }
            let (x, rest) = across.split_at(width);
            let (y, rest) = rest.split_at(width);
            let (squares, product) = rest.split_at(width);
            for i in 0..width {
                into[i] = narrow(alike(x[i], y[i], squares[i], product[i]));
            }
        }
    }

    /// Vertical pass: weighted sums of a row and those above and below it.
    fn down(&self, row: usize, into: &mut [f64]) {
        let width = self.width;
        into.fill(0.0);
        let (to_x, rest) = into.split_at_mut(width);
        let (to_y, rest) = rest.split_at_mut(width);
        let (to_squares, to_product) = rest.split_at_mut(width);
        for off in -signed(REACH)..=signed(REACH) {
            let from = mirrored(signed(row) + off, self.height) * width;
            let weight = self.bell[off.unsigned_abs()];
            let (x, y) = (&self.x[from..from + width], &self.y[from..from + width]);
            for i in 0..width {
                let (x, y) = (f64::from(x[i]), f64::from(y[i]));
                to_x[i] += weight * x;
                to_y[i] += weight * y;
                to_squares[i] += weight * (x * x + y * y);
                to_product[i] += weight * (x * y);
            }
        }
    }

    fn across(&self, padded: &[f64], out: &mut [f64]) {
        let width = out.len();
        for (i, weight) in self.bell.iter().enumerate() {
            let left = &padded[REACH - i..REACH - i + width];
            let right = &padded[REACH + i..REACH + i + width];
            match i {
                0 => out.iter_mut().zip(left).for_each(|(out, own)| *out = weight * own),
                _ => {
                    for ((out, a), b) in out.iter_mut().zip(left).zip(right) {
                        *out += weight * (a + b);
                    }
                }
            }
        }
    }
}

#[inline]
fn alike(x: f64, y: f64, squares: f64, product: f64) -> f64 {
    // rounded alike, so that a picture is exactly like itself
    let both = squares - (x * x + y * y);
    let shared = product - x * y;
    ((2.0 * x * y + C1) * (2.0 * shared + C2)) / ((x * x + y * y + C1) * (both + C2))
}

fn signed(count: usize) -> isize {
    isize::try_from(count).unwrap_or(isize::MAX)
}

/// Index within `0..count` of a place beyond an end: the picture goes on mirrored, its outermost pixel twice.
fn mirrored(at: isize, count: usize) -> usize {
    let round = 2 * signed(count).max(1);
    let at = at.rem_euclid(round);
    let within = if at < signed(count) { at } else { round - 1 - at };
    within.unsigned_abs().min(count.saturating_sub(1))
}
