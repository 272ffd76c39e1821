//! Template of a code on the comparison lattice, and vector arithmetic on such templates.
//!
//! A template has 42 × 42 levels, row by row from the top left: two places along each side of each of the 21
//! × 21 modules. The quiet zone is not part of it.
//!
//! ```text
//!    ┌───────────────────────┐     one module:
//!    │ 21 modules            │      ┌─────┐
//!    │                       │      │ · · │
//!    │                       │      │ · · │
//!                                   └─────┘
//! ```

use std::ops::Range;

use crate::frame::float;
use crate::plan::Modules;
use crate::plan::code::SIDE;

/// Width of the quiet zone that is compared, in modules: none, since visitors often draw on it.
const MARGIN: usize = 0;
/// Number of places along a module's side.
pub(super) const PER_MODULE: usize = 2;
/// Number of places along a code's side.
pub(super) const LATTICE: usize = (SIDE + 2 * MARGIN) * PER_MODULE;
/// Number of places of a template, rows × columns.
pub(super) const PLACES: usize = LATTICE * LATTICE;

/// Offset of a place from the code's centre along one axis, in modules.
pub(super) fn offset(place: usize) -> f64 {
    (float(place) + 0.5) / float(PER_MODULE) - float(MARGIN) - super::pose::HALF
}

/// Weights of the modules at each place along one axis, places × modules: a module convolved with a Gaussian.
///
/// `blur` is the Gaussian's standard deviation, in modules.
pub(super) fn weights(blur: f64) -> Vec<[f32; SIDE]> {
    (0..LATTICE)
        .map(|place| {
            let at = offset(place) + super::pose::HALF;
            std::array::from_fn(|module| {
                let edge = |m: f64| normal_below((m - at) / blur);
                single(edge(float(module) + 1.0) - edge(float(module)))
            })
        })
        .collect()
}

/// Template of a code: its darkness at each place, negated, so that dark is low; row by row.
///
/// `drowned` is the darkness, as a share of full dark, below which a place shows as paper.
pub(super) fn draw(code: &Modules, weights: &[[f32; SIDE]], drowned: f32) -> Vec<f32> {
    let seen: Vec<Range<usize>> = weights.iter().map(felt).collect();
    let rows: Vec<[f32; LATTICE]> = (0..SIDE)
        .map(|row| {
            let dark = |column: usize| if code.dark(column, row) { -1.0 } else { 0.0 };
            let line: [f32; SIDE] = std::array::from_fn(dark);
            std::array::from_fn(|place| {
                let seen = seen[place].clone();
                weights[place][seen.clone()].iter().zip(&line[seen]).map(|(a, b)| a * b).sum()
            })
        })
        .collect();
    let mut drawn = Vec::with_capacity(PLACES);
    for (w, seen) in weights.iter().zip(&seen) {
        let mut line = [0.0_f32; LATTICE];
        for (weight, row) in w[seen.clone()].iter().zip(&rows[seen.clone()]) {
            line.iter_mut().zip(row).for_each(|(level, dark)| *level += weight * dark);
        }
        drawn.extend(line.iter().map(|level| (level + drowned).min(0.0)));
    }
    drawn
}

/// Range of modules with a noticeable weight at a place; the others add less than 0.001 grey levels each.
fn felt(weights: &[f32; SIDE]) -> Range<usize> {
    let shows = |weight: &f32| *weight > 2e-6;
    let first = weights.iter().position(shows).unwrap_or(0);
    first..weights.iter().rposition(shows).map_or(first, |last| last + 1)
}

/// Half side of the window of local normalisation, in places: 3½ modules, half a finder pattern.
const AROUND: usize = 7;
/// Minimum local standard deviation, as a share of the whole lattice's: what is flat stays flat.
const LEAST_CONTRAST: f32 = 0.35;

/// Local normalisation: each level minus the mean around it, divided by the standard deviation around it.
pub(super) fn even_out(levels: &mut [f32]) {
    let squares: Vec<f32> = levels.iter().map(|level| level * level).collect();
    let (mean, mean_square) = (around(levels), around(&squares));
    let spread = |mean: f32, square: f32| (square - mean * mean).max(0.0);
    let whole = spread(
        levels.iter().sum::<f32>() / single(float(PLACES)),
        squares.iter().sum::<f32>() / single(float(PLACES)),
    )
    .sqrt();
    for ((level, mean), square) in levels.iter_mut().zip(mean).zip(mean_square) {
        let contrast = spread(mean, square).sqrt().max(LEAST_CONTRAST * whole).max(f32::MIN_POSITIVE);
        *level = (*level - mean) / contrast;
    }
}

/// Box filter: the mean over the window around each place, clipped to the lattice.
fn around(levels: &[f32]) -> Vec<f32> {
    let rows: Vec<f32> = levels.chunks_exact(LATTICE).flat_map(mean_along).collect();
    let row = |y: usize| &rows[y * LATTICE..(y + 1) * LATTICE];
    let mut means = Vec::with_capacity(PLACES);
    let mut sums = [0.0_f32; LATTICE];
    (0..AROUND).for_each(|y| sums.iter_mut().zip(row(y)).for_each(|(sum, level)| *sum += level));
    for y in 0..LATTICE {
        let (from, to) = window(y);
        if y + AROUND < LATTICE {
            sums.iter_mut().zip(row(y + AROUND)).for_each(|(sum, level)| *sum += level);
        }
        if from > 0 {
            sums.iter_mut().zip(row(from - 1)).for_each(|(sum, level)| *sum -= level);
        }
        let part = 1.0 / single(float(to - from));
        means.extend(sums.iter().map(|sum| sum * part));
    }
    means
}

/// Window around a place along one axis: the first place, and the one after the last.
fn window(place: usize) -> (usize, usize) {
    (place.saturating_sub(AROUND), (place + AROUND + 1).min(LATTICE))
}

fn mean_along(line: &[f32]) -> [f32; LATTICE] {
    let mut sums = [0.0; LATTICE + 1];
    let mut sum = 0.0;
    for (before, level) in sums[1..].iter_mut().zip(line) {
        sum += level;
        *before = sum;
    }
    std::array::from_fn(|place| {
        let (from, to) = window(place);
        (sums[to] - sums[from]) / single(float(to - from))
    })
}

/// Cumulative standard normal distribution at `x`, to 1.5e-7 (Abramowitz & Stegun 1964, 7.1.26).
pub(super) fn normal_below(x: f64) -> f64 {
    let z = x.abs() / std::f64::consts::SQRT_2;
    let t = 1.0 / (1.0 + 0.327_591_1 * z);
    let poly = t
        * (0.254_829_592
            + t * (-0.284_496_736 + t * (1.421_413_741 + t * (-1.453_152_027 + t * 1.061_405_429))));
    let above = poly * (-z * z).exp() / 2.0;
    if x < 0.0 { above } else { 1.0 - above }
}

#[allow(
    clippy::cast_possible_truncation,
    reason = "weights and brightness need no more than single precision"
)]
pub(super) fn single(x: f64) -> f32 {
    x as f32
}

/// Scalar product, in eight running sums so that eight products are taken at a time.
pub(super) fn dot(a: &[f32], b: &[f32]) -> f32 {
    let mut sums = [0.0_f32; 8];
    let (a8, b8) = (a.chunks_exact(8), b.chunks_exact(8));
    let rest: f32 = a8.remainder().iter().zip(b8.remainder()).map(|(x, y)| x * y).sum();
    for (x, y) in a8.zip(b8) {
        for k in 0..8 {
            sums[k] += x[k] * y[k];
        }
    }
    rest + sums.iter().sum::<f32>()
}

/// Sum, in eight running sums as [`dot`].
pub(super) fn sum(levels: &[f32]) -> f32 {
    let mut sums = [0.0_f32; 8];
    let eights = levels.chunks_exact(8);
    let rest: f32 = eights.remainder().iter().sum();
    for eight in eights {
        sums.iter_mut().zip(eight).for_each(|(sum, level)| *sum += level);
    }
    rest + sums.iter().sum::<f32>()
}

/// Subtracts from `seen` its projection onto `part`, a vector of length 1.
pub(super) fn project_out(seen: &mut [f32], part: &[f32]) {
    let along = dot(seen, part);
    seen.iter_mut().zip(part).for_each(|(s, p)| *s -= along * p);
}

pub(super) fn normalise(part: &mut [f32]) {
    let length = dot(part, part).sqrt();
    if length > 0.0 {
        part.iter_mut().for_each(|p| *p /= length);
    }
}
