//! Codes of any size: where they lie, how many modules they have a side, and what they say.
//!
//! A square's code has 21 modules a side; one on a poster or in somebody's book may have more. Its finder
//! patterns then lie farther apart than 14 modules; how far is counted along the timing pattern, or where
//! that fails told from the patterns' own width and the timing that suits best:
//!
//! ```text
//!   ▣ ▪ ▪ ▪ ▪ ▪ ▣     three patterns of like size          triples
//!   ▪         │       dark and light in turn between them  timing
//!   ▪         │
//!   ▪         ◀───    the outermost dark modules           fourth corner
//!   ▣ ▲ ▲ ▲ ▲
//! ```
//!
//! The fourth corner is where the lines along the outermost modules meet: under tilt it lies elsewhere than
//! three patterns say. Four correspondences give a homography, and the modules are decoded with error
//! correction (ISO/IEC 18004).

use rayon::prelude::*;

use super::finders::Finder;
use super::foreign::decoded;
use super::triples::{Outline, UPRIGHT};
use crate::frame::{Map, Module, PhotoPx, Point, Vector, float, round_index};
use crate::photo::Luma;

/// Code of any kind in the photo.
#[derive(Clone, Debug, PartialEq)]
pub struct Located {
    /// Number of modules along a side.
    pub side: usize,
    /// Outer corners, clockwise from the code's own top left.
    pub corners: [Point<PhotoPx>; 4],
    /// Text of the code; `None` where it cannot be decoded.
    pub text: Option<String>,
}

/// Range of modules a side: versions 1 to 16.
const SIDES: std::ops::RangeInclusive<usize> = 21..=81;
/// Modules a side from one version to the next.
const VERSION: usize = 4;
/// Distance from a code's edge to the centre of a finder pattern, in modules.
const IN: f64 = 3.5;
/// Maximum number of patterns looked at, those with most hits. All three limits: printed rings without end
/// took seconds.
const PATTERNS: usize = 600;
/// Maximum number of patterns of like size that are tried as partners of one, the nearest.
const PARTNERS: usize = 24;
/// Maximum number of triples in all, those that fit best.
const MOST: usize = 3_000;
/// Maximum ratio of a code's sides; less than for an event's own, since nothing else says that it is one.
const NARROW: f64 = 2.0;
/// Maximum error of the version told from the patterns' widths, in versions.
const OFF: usize = 2;
/// Minimum mean correlation of the two timing patterns with dark and light in turn. Right ones have 0.7 and
/// more.
const IN_TURN: f32 = 0.4;
/// Score, on the scale of that correlation, of a triple whose timing patterns give the same number of
/// modules.
const COUNTED: f32 = 0.8;
/// Distance beyond the code's edge from which its outermost modules are looked for, in modules.
const BEYOND: f64 = 2.5;
/// Distance within the code's edge to which its outermost modules are looked for, in modules.
const WITHIN: f64 = 3.0;
/// Distance of samples along a line, in modules.
const STEP: f64 = 0.1;
/// Maximum distance of an inlier from a line, in modules.
const NEAR: f64 = 0.3;

/// All codes that these finder patterns belong to, surest first; `finders` holds those with most hits first.
#[must_use]
pub fn locate(luma: &Luma, finders: &[Finder]) -> Vec<Located> {
    let finders = &finders[..finders.len().min(PATTERNS)];
    let mut seen: Vec<(f32, [usize; 3], Located)> = threes(finders)
        .par_iter()
        .filter_map(|three| {
            let (sure, located) = one(luma, three.map(|at| &finders[at]))?;
            Some((sure, *three, located))
        })
        .collect();
    seen.sort_by(|a, b| b.0.total_cmp(&a.0));
    let mut taken = vec![false; finders.len()];
    let mut codes = Vec::new();
    for (_, three, located) in seen {
        if three.iter().all(|at| !taken[*at]) {
            three.iter().for_each(|at| taken[*at] = true);
            codes.push(located);
        }
    }
    codes
}

/// Triples (corner, right, below) of patterns of like size at about a right angle, those most like a code
/// first.
fn threes(finders: &[Finder]) -> Vec<[usize; 3]> {
    let far = float(SIDES.end() - 7) * 1.25;
    let mut threes: Vec<(f64, [usize; 3])> = (0..finders.len())
        .into_par_iter()
        .flat_map_iter(|corner| {
            let mut partners: Vec<(f64, usize)> = Vec::new();
            for (at, other) in finders.iter().enumerate().filter(|(at, _)| *at != corner) {
                let away = (other.centre - finders[corner].centre).length().value();
                let size = finders[corner].module[0].max(finders[corner].module[1]);
                if away > 7.0 * size && away < far * size && alike(other, &finders[corner]) {
                    partners.push((away, at));
                }
            }
            partners.sort_by(|a, b| a.0.total_cmp(&b.0));
            partners.truncate(PARTNERS);
            let pairs = partners.iter().flat_map(|a| partners.iter().map(move |b| (a.1, b.1)));
            let rated: Vec<(f64, [usize; 3])> = pairs
                .filter_map(|(right, below)| {
                    let three = [corner, right, below];
                    Some((misfit(three.map(|at| &finders[at]))?, three))
                })
                .collect();
            rated
        })
        .collect();
    threes.sort_by(|a, b| a.0.total_cmp(&b.0));
    threes.truncate(MOST);
    threes.into_iter().map(|(_, three)| three).collect()
}

/// Whether two patterns are alike enough in size to be of one code.
fn alike(a: &Finder, b: &Finder) -> bool {
    (0..2).all(|k| (0.6..1.67).contains(&(a.module[k] / b.module[k])))
}

/// Misfit of a triple: 0 for a square's corners with the same number of modules both ways; `None` where no
/// code looks so.
fn misfit([corner, right, below]: [&Finder; 3]) -> Option<f64> {
    let Outline { ratio, sine, .. } = Outline::of(right.centre - corner.centre, below.centre - corner.centre);
    let [wide, high] = apart(&[corner, right, below]);
    let looks = sine > UPRIGHT && ratio < NARROW && (0.6..1.67).contains(&(wide / high));
    looks.then(|| ratio.ln() - sine.ln() + (wide / high).ln().abs())
}

/// Number of modules between the patterns, from their widths along rows and along columns.
fn apart([corner, right, below]: &[&Finder; 3]) -> [f64; 2] {
    let [wide, high] = Outline::of(right.centre - corner.centre, below.centre - corner.centre).runs;
    let mean = |k: usize| (corner.module[k] * right.module[k] * below.module[k]).cbrt();
    [wide / mean(0), high / mean(1)]
}

/// Code of a triple with its score; `None` where the timing does not fit.
fn one(luma: &Luma, three: [&Finder; 3]) -> Option<(f32, Located)> {
    let (turn, side) = counted(luma, three).map(|side| (COUNTED, side)).or_else(|| guessed(luma, three))?;
    let map = homography(luma, &Affine::new(three, side))?;
    let size = float(side);
    let corners =
        [(0.0, 0.0), (size, 0.0), (size, size), (0.0, size)].map(|(x, y)| map.apply(Point::new(x, y)));
    let middle = |k: usize| float(k) + 0.5;
    let levels: Vec<f32> = (0..side * side)
        .map(|k| luma.at(map.apply(Point::new(middle(k % side), middle(k / side)))))
        .collect();
    let text = decoded(&levels, side);
    let decoded = if text.is_some() { 1.0 } else { 0.0 };
    Some((turn + decoded, Located { side, corners, text }))
}

/// Number of modules a side, where both timing patterns have the same number of light modules.
///
/// From one pattern's dark edge to the next it is counted how often it turns light, which perspective does
/// not change.
fn counted(luma: &Luma, three: [&Finder; 3]) -> Option<usize> {
    let [wide, high] = apart(&three);
    let modules = (wide * high).sqrt();
    let [corner, right, below] = three.map(|finder| finder.centre);
    let (u, v) = ((right - corner) / modules, (below - corner) / modules);
    let steps = round_index(modules / STEP);
    let lights = |from: Point<PhotoPx>, to: Point<PhotoPx>| {
        let level: Vec<f32> =
            (0..=steps).map(|k| luma.at(from.towards(to, float(k) / float(steps)))).collect();
        let (low, high) = level.iter().fold((f32::MAX, f32::MIN), |(l, h), x| (l.min(*x), h.max(*x)));
        let (dark, light) = (low + 0.4 * (high - low), low + 0.6 * (high - low));
        let mut lit = false;
        let mut count = 0_usize;
        for level in level {
            if lit && level < dark {
                lit = false;
            } else if !lit && level > light {
                (lit, count) = (true, count + 1);
            }
        }
        count
    };
    let across = lights(corner + v * (IN - 0.5), right + v * (IN - 0.5));
    let down = lights(corner + u * (IN - 0.5), below + u * (IN - 0.5));
    let side = 2 * across + 13;
    let version = side.checked_sub(*SIDES.start()).filter(|more| more % VERSION == 0);
    (across == down && version.is_some() && SIDES.contains(&side)).then_some(side)
}

/// Number of modules a side by the patterns' own widths and the timing that suits best, with its correlation.
fn guessed(luma: &Luma, three: [&Finder; 3]) -> Option<(f32, usize)> {
    let [wide, high] = apart(&three);
    let told = (wide * high).sqrt() + 7.0 - float(*SIDES.start());
    let version = round_index(told / float(VERSION));
    let sides = (version.saturating_sub(OFF)..=version + OFF).map(|v| SIDES.start() + VERSION * v);
    sides
        .filter(|side| SIDES.contains(side))
        .map(|side| (timing(luma, &Affine::new(three, side)), side))
        .max_by(|a, b| a.0.total_cmp(&b.0))
        .filter(|(turn, _)| *turn >= IN_TURN)
}

/// Affine pose of a code with `side` modules a side, from a triple; without perspective.
struct Affine {
    corner: Point<PhotoPx>,
    u: Vector<PhotoPx>,
    v: Vector<PhotoPx>,
    side: f64,
    /// Centres of the patterns: corner, right, below.
    seen: [Point<PhotoPx>; 3],
}

impl Affine {
    fn new([corner, right, below]: [&Finder; 3], side: usize) -> Self {
        let side = float(side);
        let step = |to: &Finder| (to.centre - corner.centre) / (side - 2.0 * IN);
        let seen = [corner.centre, right.centre, below.centre];
        Self { corner: corner.centre, u: step(right), v: step(below), side, seen }
    }

    fn at(&self, x: f64, y: f64) -> Point<PhotoPx> {
        self.corner + self.u * (x - IN) + self.v * (y - IN)
    }
}

/// Mean correlation of both timing patterns with dark and light in turn.
fn timing(luma: &Luma, code: &Affine) -> f32 {
    let last = round_index(code.side) - 8;
    let along = |place: &dyn Fn(f64) -> Point<PhotoPx>| {
        // what is expected has no mean over an odd number of modules only nearly, so it is taken out
        let seen: Vec<(f32, f32)> = (8..last)
            .map(|k| (luma.at(place(float(k) + 0.5)), if k % 2 == 0 { -1.0 } else { 1.0 }))
            .collect();
        correlation(&seen)
    };
    let across = along(&|x| code.at(x, 6.5));
    let down = along(&|y| code.at(6.5, y));
    f32::midpoint(across, down)
}

fn correlation(pairs: &[(f32, f32)]) -> f32 {
    let (mut a, mut b, mut count) = (0.0, 0.0, 0.0_f32);
    for pair in pairs {
        (a, b, count) = (a + pair.0, b + pair.1, count + 1.0);
    }
    let (a, b) = (a / count.max(1.0), b / count.max(1.0));
    let (mut ab, mut aa, mut bb) = (0.0, 0.0_f32, 0.0_f32);
    for pair in pairs {
        let (x, y) = (pair.0 - a, pair.1 - b);
        (ab, aa, bb) = (ab + x * y, aa + x * x, bb + y * y);
    }
    ab / (aa.max(1.0) * bb).sqrt().max(f32::MIN_POSITIVE)
}

/// Homography from modules to photo, from the triple's centres and the corner where the outermost modules'
/// lines meet.
///
/// Without perspective where no such lines show.
fn homography(luma: &Luma, code: &Affine) -> Option<Map<Module, PhotoPx>> {
    let half = half_dark(luma, code);
    let right = border(luma, &|out, along| code.at(out, along), code.side, half);
    let below = border(luma, &|out, along| code.at(along, out), code.side, half);
    // x = a + b · y and y = c + d · x
    let ([a, b], [c, d]) = (right.unwrap_or([code.side, 0.0]), below.unwrap_or([code.side, 0.0]));
    let x = (a + b * c) / (1.0 - b * d);
    let y = c + d * x;
    let far = code.side - IN;
    let modules =
        [(IN, IN), (far, IN), (code.side, code.side), (IN, far)].map(|(x, y)| Point::<Module>::new(x, y));
    let [corner, right, below] = code.seen;
    Map::from_four(modules, [corner, right, code.at(x, y), below])
}

/// Threshold between dark and light, in grey levels, from the patterns' centres and the light rings around
/// them.
fn half_dark(luma: &Luma, code: &Affine) -> f32 {
    let far = code.side - IN;
    let mut sum = 0.0;
    for (x, y) in [(IN, IN), (far, IN), (IN, far)] {
        let ring = [(-2.0, 0.0), (2.0, 0.0), (0.0, -2.0), (0.0, 2.0)];
        let light = ring.iter().map(|(dx, dy)| luma.at(code.at(x + dx, y + dy))).sum::<f32>() / 4.0;
        sum += f32::midpoint(light, luma.at(code.at(x, y)));
    }
    sum / 3.0
}

/// Line along the outermost dark modules of one side: the place outwards where it begins, and its slope.
///
/// `place` takes how far outwards and how far along. The best line through two points, then least squares
/// over its inliers; `None` where too few points are inliers of any line.
fn border(luma: &Luma, place: &dyn Fn(f64, f64) -> Point<PhotoPx>, side: f64, half: f32) -> Option<[f64; 2]> {
    let steps = round_index((BEYOND + WITHIN) / STEP);
    let dark = |out: f64, along: f64| luma.at(place(out, along)) < half;
    let points: Vec<[f64; 2]> = (0..2 * round_index(side))
        .filter_map(|k| {
            let along = (float(k) + 0.5) / 2.0;
            let mut outs = (0..steps).map(|step| side + BEYOND - float(step) * STEP);
            // what is dark from the beginning lies outside of the code
            if dark(outs.next()?, along) {
                return None;
            }
            outs.find(|out| dark(*out, along)).map(|out| [out + STEP / 2.0, along])
        })
        .collect();
    let on = |[a, b]: [f64; 2], p: &[f64; 2]| (p[0] - a - b * p[1]).abs() < NEAR;
    let mut best: (usize, Option<[f64; 2]>) = (0, None);
    for p in points.iter().filter(|p| p[1] < 7.0) {
        for q in points.iter().filter(|q| q[1] > side / 2.0) {
            let slope = (q[0] - p[0]) / (q[1] - p[1]);
            let line = [p[0] - slope * p[1], slope];
            let count = points.iter().filter(|p| on(line, p)).count();
            if count > best.0 {
                best = (count, Some(line));
            }
        }
    }
    let line = best.1.filter(|_| 3 * best.0 > points.len())?;
    fitted(&points.into_iter().filter(|p| on(line, p)).collect::<Vec<_>>())
}

/// Least squares line through points of (outwards, along): offset and slope.
pub(super) fn fitted(points: &[[f64; 2]]) -> Option<[f64; 2]> {
    let count = float(points.len());
    let mean = |k: usize| points.iter().map(|p| p[k]).sum::<f64>() / count;
    let (out, along) = (mean(0), mean(1));
    let spread = points.iter().map(|p| (p[1] - along).powi(2)).sum::<f64>();
    let slope = points.iter().map(|p| (p[0] - out) * (p[1] - along)).sum::<f64>() / spread;
    slope.is_finite().then_some([out - slope * along, slope])
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(48))]
        #[test]
        fn levels_of_no_code_are_decoded_as_nothing_and_stop_nothing(version in 0_usize..16, seed: u32) {
            let side = SIDES.start() + VERSION * version;
            let mut state = seed;
            let levels: Vec<f32> = (0..side * side)
                .map(|_| {
                    state = state.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
                    f32::from(state.to_le_bytes()[3])
                })
                .collect();
            prop_assert_eq!(decoded(&levels, side), None);
        }
    }

    #[test]
    fn without_patterns_there_is_no_code() {
        let luma = Luma { width: 50, height: 50, grey: vec![200; 2500] };
        assert!(locate(&luma, &[]).is_empty());
    }
}
