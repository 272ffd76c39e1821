//! The codes of the event as a photo shows them, and the comparison of what is seen with all of them at once.
//!
//! A code is compared on a lattice of two places a module, one module of quiet zone included. A [`Sheet`] holds every
//! code of the event as it looks there in one view: after a blur, and bleached by the sun or not. What all codes share (finder patterns, timing, the
//! first letters of the text) says *whether and where* there is a code; the rest says *which*:
//!
//! ```text
//!   seen = light · (1, x, y) + contrast · (shared part + what is this code's own) + noise
//! ```
//!
//! Light and shared part are projected out; the correlation of what is left with each code's own part is its score.
//! No error correction is needed: two codes of an event differ in at least 50 of 441 modules.

use std::sync::OnceLock;

use crate::frame::float;
use crate::plan::code::SIDE;
use crate::plan::{Cell, Modules, Printed};

/// Modules of quiet zone that are compared too. More would often be drawn on.
const MARGIN: usize = 1;
/// Places compared along a module's side.
const PER_MODULE: usize = 2;
/// Places compared along a code's side.
pub(super) const LATTICE: usize = (SIDE + 2 * MARGIN) * PER_MODULE;
/// Places compared in all.
pub(super) const PLACES: usize = LATTICE * LATTICE;
/// How a photo may show a code: blur as a standard deviation in modules, and how much darkness the light drowns.
///
/// A phone's 0.7–1.0 px, its pixels and the interpolation make 1.25 modules at 0.8 px a module and 0.2 at 6. In full sun
/// the sensor clips: of a bleached code only those places show that are darker than a share of full dark.
const VIEWS: [View; 9] = [
    View { blur: 0.2, drowned: 0.0 },
    View { blur: 0.35, drowned: 0.0 },
    View { blur: 0.5, drowned: 0.0 },
    View { blur: 0.7, drowned: 0.0 },
    View { blur: 0.95, drowned: 0.0 },
    View { blur: 1.25, drowned: 0.0 },
    View { blur: 0.5, drowned: 0.5 },
    View { blur: 0.7, drowned: 0.5 },
    View { blur: 0.7, drowned: 0.7 },
];
/// The view for finding the way: blurred enough to pull a pose in from a module away.
pub(super) const FIRST_VIEW: usize = 2;
/// So many of the best codes are told.
pub(super) const RANKED: usize = 3;

/// One way a photo may show a code.
#[derive(Copy, Clone, Debug)]
struct View {
    /// Standard deviation of the blur, in modules.
    blur: f64,
    /// Darkness below which nothing shows, as a share of full dark.
    drowned: f32,
}

/// Whose code it is.
#[derive(Copy, Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Whose {
    /// The square that belongs in a cell.
    Square(Cell),
    /// A card, by its place in [`Printed::cards`].
    Card(usize),
}

/// All codes of an event.
#[derive(Debug)]
pub struct Book {
    whose: Vec<Whose>,
    modules: Vec<Modules>,
    sheets: [OnceLock<Sheet>; VIEWS.len()],
}

/// All codes of an event in one view.
#[derive(Debug)]
pub struct Sheet {
    view: View,
    weights: Vec<[f32; SIDE]>,
    /// Orthonormal: constant, slope along x, slope along y.
    light: [Vec<f32>; 3],
    /// What all codes share, without light, of length 1.
    pub(super) shared: Vec<f32>,
    /// What is each code's own, without light and shared part, of length 1; one after the other.
    own: Vec<f32>,
    /// How strong each code's own part is against the shared part.
    strength: Vec<f32>,
}

/// The outcome of one comparison.
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct Match {
    /// Place in the book of the best code.
    pub best: usize,
    /// Correlation of what is seen with the best code's own part, −1 … 1.
    pub score: f32,
    /// The same for the second best code.
    pub second: f32,
    /// Correlation of what is seen with what all codes share, −1 … 1.
    pub shared: f32,
    /// The best code's own part as strong as it is seen, over what the shared part's strength lets expect: 1 for that very
    /// code, less for one that is only like it.
    pub strength: f32,
    /// The best codes, best first.
    pub(super) ranked: [usize; RANKED],
}

impl Book {
    /// The codes of all squares, then of all cards.
    #[must_use]
    pub fn new(printed: &Printed) -> Self {
        let squares = printed.squares.iter().map(|s| (Whose::Square(s.cell), s.modules.clone()));
        let cards = printed.cards.iter().enumerate().map(|(i, c)| (Whose::Card(i), c.modules.clone()));
        let (whose, modules) = squares.chain(cards).unzip();
        Self { whose, modules, sheets: Default::default() }
    }

    /// Whose the code at a place in the book is.
    #[must_use]
    pub fn whose(&self, at: usize) -> Whose {
        self.whose[at]
    }

    /// The sheet of one of the views.
    pub(super) fn sheet(&self, view: usize) -> &Sheet {
        self.sheets[view].get_or_init(|| Sheet::new(VIEWS[view], &self.modules))
    }

    /// The view whose shared part fits best what is seen.
    pub(super) fn view_of(&self, seen: &[f32]) -> usize {
        let fit = |view: &usize| self.sheet(*view).shared_fit(seen);
        (0..VIEWS.len()).max_by(|a, b| fit(a).total_cmp(&fit(b))).unwrap_or(FIRST_VIEW)
    }

    /// A code in one of the views, without light, of length 1.
    pub(super) fn drawn(&self, at: usize, view: usize) -> Vec<f32> {
        let sheet = self.sheet(view);
        let mut drawn = draw(&self.modules[at], &sheet.weights, sheet.view.drowned);
        sheet.darken(&mut drawn);
        normalise(&mut drawn);
        drawn
    }
}

impl Sheet {
    fn new(view: View, codes: &[Modules]) -> Self {
        let weights = weights(view.blur);
        let light = light();
        let mut own: Vec<f32> = Vec::with_capacity(codes.len() * PLACES);
        let mut shared = vec![0.0; PLACES];
        for code in codes {
            let drawn = draw(code, &weights, view.drowned);
            shared.iter_mut().zip(&drawn).for_each(|(s, d)| *s += d);
            own.extend(drawn);
        }
        let mut sheet = Self { view, weights, light, shared, own: Vec::new(), strength: Vec::new() };
        let mut shared = std::mem::take(&mut sheet.shared);
        sheet.darken(&mut shared);
        normalise(&mut shared);
        let mut strength = Vec::with_capacity(codes.len());
        for code in own.chunks_exact_mut(PLACES) {
            sheet.darken(code);
            let common = dot(code, &shared).max(f32::MIN_POSITIVE);
            project_out(code, &shared);
            strength.push(dot(code, code).sqrt() / common);
            normalise(code);
        }
        Self { shared, own, strength, ..sheet }
    }

    /// Takes the light (constant and slopes) out of what is seen.
    fn darken(&self, seen: &mut [f32]) {
        for part in &self.light {
            project_out(seen, part);
        }
    }

    /// Correlation of what is seen with what all codes share.
    pub(super) fn shared_fit(&self, seen: &[f32]) -> f32 {
        let power = dot(seen, seen) - self.light.iter().map(|part| dot(seen, part).powi(2)).sum::<f32>();
        if power <= 0.0 { 0.0 } else { dot(seen, &self.shared) / power.sqrt() }
    }

    /// Compares what is seen with every code.
    pub(super) fn compare(&self, seen: &[f32]) -> Match {
        let mut rest = seen.to_vec();
        self.darken(&mut rest);
        let power = dot(&rest, &rest).sqrt().max(f32::MIN_POSITIVE);
        let common = dot(&rest, &self.shared);
        project_out(&mut rest, &self.shared);
        let left = dot(&rest, &rest).sqrt().max(f32::MIN_POSITIVE);
        let mut ranked = [(-1.0_f32, 0); RANKED];
        for (at, own) in self.own.chunks_exact(PLACES).enumerate() {
            let score = dot(&rest, own) / left;
            if let Some(place) = ranked.iter().position(|(other, _)| score > *other) {
                ranked[place..].rotate_right(1);
                ranked[place] = (score, at);
            }
        }
        let [(score, best), (second, _), _] = ranked;
        let expected = common * self.strength.get(best).copied().unwrap_or(1.0);
        Match {
            best,
            score,
            second,
            shared: common / power,
            strength: score * left / expected.max(f32::MIN_POSITIVE),
            ranked: ranked.map(|(_, at)| at),
        }
    }
}

/// How far a place of the lattice lies from the code's centre, in modules.
pub(super) fn offset(place: usize) -> f64 {
    (float(place) + 0.5) / float(PER_MODULE) - float(MARGIN) - super::pose::HALF
}

/// How much of each module shows at each place of the lattice along one axis: a module convolved with a Gaussian.
fn weights(blur: f64) -> Vec<[f32; SIDE]> {
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

/// A code's darkness at each place, negated: dark is low. Darkness of less than `drowned` does not show.
fn draw(code: &Modules, weights: &[[f32; SIDE]], drowned: f32) -> Vec<f32> {
    let rows: Vec<Vec<f32>> = (0..SIDE)
        .map(|row| {
            let dark = |column: usize| if code.dark(column, row) { -1.0 } else { 0.0 };
            let line: [f32; SIDE] = std::array::from_fn(dark);
            weights.iter().map(|w| w.iter().zip(&line).map(|(a, b)| a * b).sum()).collect()
        })
        .collect();
    let mut drawn = Vec::with_capacity(PLACES);
    for w in weights {
        for column in 0..LATTICE {
            let level: f32 = w.iter().zip(&rows).map(|(a, row)| a * row[column]).sum();
            drawn.push((level + drowned).min(0.0));
        }
    }
    drawn
}

fn light() -> [Vec<f32>; 3] {
    let slope = |along: fn(usize) -> usize| (0..PLACES).map(|i| single(offset(along(i)))).collect();
    let mut parts = [vec![1.0; PLACES], slope(|i| i % LATTICE), slope(|i| i / LATTICE)];
    parts.iter_mut().for_each(|part| normalise(part)); // orthogonal already: the slopes are odd about the centre
    parts
}

/// The share of a standard normal distribution below `x`, to 1.5e-7 (Abramowitz & Stegun 1964, 7.1.26).
fn normal_below(x: f64) -> f64 {
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

/// The scalar product, in eight running sums so that it is done eight at a time.
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

/// Takes from `seen` what points along `part`, which has length 1.
fn project_out(seen: &mut [f32], part: &[f32]) {
    let along = dot(seen, part);
    seen.iter_mut().zip(part).for_each(|(s, p)| *s -= along * p);
}

fn normalise(part: &mut [f32]) {
    let length = dot(part, part).sqrt();
    if length > 0.0 {
        part.iter_mut().for_each(|p| *p /= length);
    }
}
