//! Reference of white paper and black ink beside one code.
//!
//! Where a code lies and which of its modules are black is known. Blurred as the photo is, that gives for
//! each pixel its share of ink, 0 … 1; light is then white − ink · (white − black), a line fitted to hundreds
//! of pixels.

use rayon::prelude::*;

use crate::frame::{Module, PhotoPx, Point, WallMm, ceil_index, float, floor_index, median};
use crate::photo::Photo;
use crate::picture::colour::light_of_levels;
use crate::plan::code::{Modules, QUIET_ZONE, SIDE};
use crate::plan::{Cell, Printed};
use crate::read::{Camera, CellReading, Sight};

use super::super::hung::code_corners;

/// Number of samples along a module in the map of the ink.
const FINE: usize = 4;
/// Number of samples along the map of the ink: the code and its quiet zone.
const ACROSS: usize = (SIDE + 2 * QUIET_ZONE) * FINE;
/// Margin around the code whose pixels are used, in modules: the quiet zone has 4, and drawings begin beside it.
const MARGIN: f64 = 2.0;
/// Candidate blurs, standard deviations in pixels of the photo: from as sharp as a pixel's own square to a shaken hand.
const BLURS_PX: [f64; 9] = [0.4, 0.55, 0.7, 0.85, 1.0, 1.2, 1.5, 1.9, 2.5];
/// Maximum number of codes from which the blur is estimated; more change nothing.
const TRIED: usize = 24;
/// Minimum number of pixels for two numbers a channel.
const LEAST_PIXELS: usize = 40;
/// Number of rounds in which outliers among the pixels lose their weight.
const ROUNDS: usize = 4;

/// White and black at one place, in linear light, 0 … 1; red, green, blue.
#[derive(Copy, Clone, Debug, PartialEq)]
pub(super) struct Reference {
    pub cell: Cell,
    pub at: Point<WallMm>,
    pub white: [f64; 3],
    pub black: [f64; 3],
}

/// Code that was read: its place in the photo and on the wall, and its modules.
struct Code<'a> {
    /// Where its square hangs.
    cell: Cell,
    /// Its outer corners, clockwise in its own sense from its top left.
    corners: [Point<PhotoPx>; 4],
    modules: &'a Modules,
    at: Point<WallMm>,
}

impl Code<'_> {
    fn of<'a>(cell: &CellReading, camera: &Camera, printed: &'a Printed) -> Option<Code<'a>> {
        let Sight::Square { home, .. } = cell.sight else { return None };
        let modules = &printed.squares.get(printed.grid.index(home))?.modules;
        let corners = code_corners(cell.corners?, printed);
        let at = camera.photo_to_wall(corners[0].towards(corners[2], 0.5))?;
        Some(Code { cell: cell.cell, corners, modules, at })
    }

    fn px_per_module(&self) -> f64 {
        let [a, b, _, d] = self.corners;
        (b - a).cross(d - a).abs().sqrt() / float(SIDE)
    }

    /// Pixels of the photo in and around it: their places on the code, and their linear light.
    fn pixels(&self, photo: &Photo, light: &[f32; 256]) -> Vec<(Point<Module>, [f64; 3])> {
        let [a, b, c, d] = self.corners;
        let (u, v) = ((b - a) / float(SIDE), (d - a) / float(SIDE));
        let det = u.cross(v);
        let beyond = (u.length().value() + v.length().value()) * MARGIN;
        let range = |values: [f64; 4], count: u32| {
            let low = values.iter().copied().fold(f64::INFINITY, f64::min) - beyond;
            let high = values.iter().copied().fold(f64::NEG_INFINITY, f64::max) + beyond;
            let last = usize::try_from(count).unwrap_or(0);
            floor_index(low).min(last)..ceil_index(high).min(last)
        };
        let columns = range([a.x, b.x, c.x, d.x], photo.colour.width());
        let rows = range([a.y, b.y, c.y, d.y], photo.colour.height());
        let width = usize::try_from(photo.colour.width()).unwrap_or(0);
        let mut seen = Vec::with_capacity(rows.len() * columns.len());
        for y in rows {
            for x in columns.clone() {
                let off = Point::<PhotoPx>::new(float(x) + 0.5, float(y) + 0.5) - a;
                let at = Point::<Module>::new(off.cross(v) / det, u.cross(off) / det);
                let near = |m: f64| (-MARGIN..float(SIDE) + MARGIN).contains(&m);
                if near(at.x) && near(at.y) {
                    let start = (y * width + x) * 3;
                    let rgb = photo.colour.as_raw().get(start..start + 3).unwrap_or(&[0; 3]);
                    seen.push((at, [0, 1, 2].map(|i| f64::from(light[usize::from(rgb[i])]))));
                }
            }
        }
        seen
    }
}

/// References beside every code that was read. Paper that clips counts as bright as the file can say.
pub(super) fn references(
    photo: &Photo,
    cells: &[CellReading],
    camera: &Camera,
    printed: &Printed,
) -> Vec<Reference> {
    let codes: Vec<Code<'_>> =
        cells.iter().filter_map(|cell| Code::of(cell, camera, printed)).filter(is_sound).collect();
    let light = light_of_levels();
    let Some(blur_px) = blur(photo, &codes, &light) else { return Vec::new() };
    codes
        .par_iter()
        .filter_map(|code| {
            let pixels = inked(code, &code.pixels(photo, &light), blur_px);
            let [red, green, blue] = [0, 1, 2].map(|channel| line(&pixels, channel));
            let (red, green, blue) = (red?, green?, blue?);
            let white = [red.white, green.white, blue.white];
            let black = [red.black, green.black, blue.black];
            Some(Reference { cell: code.cell, at: code.at, white, black })
        })
        .collect()
}

fn is_sound(code: &Code<'_>) -> bool {
    let px = code.px_per_module();
    px.is_finite() && px > 0.1
}

/// Pixel: its share of ink, 0 … 1, and its linear light.
type Inked = (f64, [f64; 3]);

fn inked(code: &Code<'_>, pixels: &[(Point<Module>, [f64; 3])], blur_px: f64) -> Vec<Inked> {
    let ink = Ink::of(code.modules, blur_px / code.px_per_module());
    pixels.iter().map(|(at, light)| (ink.at(*at), *light)).collect()
}

/// Standard deviation of the blur that fits the codes best, in pixels; `None` without a code.
fn blur(photo: &Photo, codes: &[Code<'_>], light: &[f32; 256]) -> Option<f64> {
    let every = codes.len().div_ceil(TRIED).max(1);
    let tried: Vec<_> = codes.iter().step_by(every).map(|code| (code, code.pixels(photo, light))).collect();
    let misses = BLURS_PX.par_iter().map(|blur_px| {
        let miss = |(code, pixels): &(&Code<'_>, Vec<_>)| {
            let pixels = inked(code, pixels, *blur_px);
            line(&pixels, 1).map(|line| line.miss / (line.white - line.black).powi(2))
        };
        (median(tried.iter().filter_map(miss).collect()), *blur_px)
    });
    let misses: Vec<(Option<f64>, f64)> = misses.collect();
    let known = misses.into_iter().filter_map(|(miss, blur_px)| Some((miss?, blur_px)));
    known.min_by(|a, b| a.0.total_cmp(&b.0)).map(|(_, blur_px)| blur_px)
}

/// Line fitted to a code's pixels in one channel.
struct Line {
    white: f64,
    black: f64,
    /// Squared robust standard deviation of the residual.
    miss: f64,
}

/// Fits the line, robustly: outliers, such as a pencil's stroke over the code, lose their weight (Tukey's
/// biweight, Beaton & Tukey 1974).
///
/// `None` where there are too few pixels or black is not darker than white.
fn line(pixels: &[Inked], channel: usize) -> Option<Line> {
    if pixels.len() < LEAST_PIXELS {
        return None;
    }
    let (mut white, mut slope, mut spread) = (0.0, 0.0, f64::INFINITY);
    for _ in 0..ROUNDS {
        let [mut w, mut x, mut y, mut xx, mut xy] = [0.0; 5];
        for (ink, light) in pixels {
            let weight = weight((light[channel] - white - slope * ink) / spread);
            w += weight;
            x += weight * ink;
            y += weight * light[channel];
            xx += weight * ink * ink;
            xy += weight * ink * light[channel];
        }
        let det = w * xx - x * x;
        if det <= 1e-9 * w * w {
            return None;
        }
        (white, slope) = ((xx * y - x * xy) / det, (w * xy - x * y) / det);
        let off = pixels.iter().map(|(ink, light)| (light[channel] - white - slope * ink).abs());
        spread = TUKEY * 1.4826 * median(off.collect())?.max(1e-4);
    }
    let miss = (spread / TUKEY).powi(2);
    let black = white + slope;
    (white > 0.01 && black < 0.8 * white && white.is_finite()).then_some(Line { white, black, miss })
}

/// Residual at which a pixel has no weight, in standard deviations: 95 % as efficient as least squares on
/// normal noise.
const TUKEY: f64 = 4.685;

/// Tukey's biweight of a scaled residual; 1 in the first round, when the spread is unknown.
pub(super) fn weight(off: f64) -> f64 {
    if off.is_finite() { (1.0 - off * off).max(0.0).powi(2) } else { 0.0 }
}

/// Share of ink at a place after blurring.
struct Ink(Vec<f32>);

impl Ink {
    fn of(modules: &Modules, blur_modules: f64) -> Self {
        let dark = |at: usize| at.checked_sub(QUIET_ZONE * FINE).map(|at| at / FINE).filter(|at| *at < SIDE);
        let sharp = (0..ACROSS * ACROSS).map(|i| match (dark(i % ACROSS), dark(i / ACROSS)) {
            (Some(column), Some(row)) if modules.dark(column, row) => 1.0,
            _ => 0.0,
        });
        let weights = gauss(blur_modules * float(FINE));
        let rows = blurred(&sharp.collect::<Vec<f32>>(), &weights);
        Self(blurred(&rows, &weights)) // each turns rows into columns, both together turn nothing
    }

    fn at(&self, place: Point<Module>) -> f64 {
        let sample = |m: f64| ((m + float(QUIET_ZONE)) * float(FINE) - 0.5).clamp(0.0, float(ACROSS) - 1.001);
        let (x, y) = (sample(place.x), sample(place.y));
        let (i, j) = (floor_index(x), floor_index(y));
        let (across, down) = (x - float(i), y - float(j));
        let of = |i: usize, j: usize| f64::from(self.0[j * ACROSS + i]);
        let (upper, lower) = ((of(i, j), of(i + 1, j)), (of(i, j + 1), of(i + 1, j + 1)));
        let between = |(a, b): (f64, f64)| a + (b - a) * across;
        between(upper) + (between(lower) - between(upper)) * down
    }
}

/// Weights of a Gaussian from its centre on, which sum to 1 with their mirror image.
fn gauss(deviation: f64) -> Vec<f32> {
    let half: Vec<f64> = (0..=ceil_index(3.0 * deviation))
        .map(|i| (-0.5 * (float(i) / deviation.max(1e-3)).powi(2)).exp())
        .collect();
    let all = 2.0 * half.iter().sum::<f64>() - half.first().copied().unwrap_or(0.0);
    half.iter().map(|weight| crate::frame::narrow(weight / all)).collect()
}

/// One pass of the separable blur, along the rows, which become columns. Outside there is no ink.
fn blurred(from: &[f32], weights: &[f32]) -> Vec<f32> {
    let mut into = vec![0.0; ACROSS * ACROSS];
    for (y, row) in from.chunks_exact(ACROSS).enumerate() {
        for x in 0..ACROSS {
            let mut sum = weights[0] * row[x];
            for (i, weight) in weights.iter().enumerate().skip(1) {
                let left = x.checked_sub(i).map_or(0.0, |x| row[x]);
                sum += weight * (left + row.get(x + i).copied().unwrap_or(0.0));
            }
            into[x * ACROSS + y] = sum;
        }
    }
    into
}
