//! Model fit: the fit of one code to the photo's own pixels, by a forward model of print, blur and light.
//!
//! In go a pose, good to a fraction of a module, and a code; out comes the residual that this very code
//! leaves of the pixels under the pose:
//!
//! ```text
//!   pixel = light · (1, x, y, four sides) + contrast · (the code's blurred darkness there) + noise
//! ```
//!
//! Fitted by Gauss–Newton in fifteen unknowns: the six of the pose, the blur, seven of light (the four sides
//! around the code may be drawn on, and blur lets that in), one of contrast. Pixels are taken as the photo
//! has them, not interpolated: at one pixel a module, interpolation is the largest error there is. Where a
//! module has many pixels, blocks of them are averaged.
//!
//! Finder patterns and timing are the same in all codes of the world. The residual over *them* says what
//! noise and model leave at this place; a wrong code leaves more than that over the rest.

use nalgebra::{SMatrix, SVector};

use super::pose::{HALF, Pose};
use super::template::single;
use crate::frame::{PhotoPx, Point, float, floor_index, round_index};
use crate::photo::Luma;
use crate::plan::Modules;
use crate::plan::code::SIDE;

/// Minimum number of blocks along a module's side after pixels are averaged in blocks.
const BLOCK_PX: f64 = 1.25;
/// Range of the blur's standard deviation, in pixels (blocks): a pixel's own area alone has 0.29.
const BLUR: (f64, f64) = (0.3, 2.4);
/// Reach of the blur, in standard deviations; what lies beyond is left out.
const REACH: f64 = 3.3;
/// Maximum number of module edges within one pixel's reach: twice the reach at a blur of 2.4 modules.
const EDGES: usize = 20;
/// Number of unknowns: six of the pose, the blur, seven of light, the contrast.
const UNKNOWNS: usize = 15;
/// Number of linear unknowns: seven of light, the contrast.
const LIGHTS: usize = 8;
/// Unit of offsets from the centre, in modules, so that all unknowns of the pose have about the same weight.
const ARM: f64 = 8.0;
/// Ridge term for the pose's matrix and for a change of the blur, as a share of the pixels' own weight.
const STIFFNESS: f64 = 0.01;
/// Ridge term per pixel for the four side-light coefficients.
const SIDES_LEAST: f64 = 1e-5;
/// Maximum change of an unknown in one step: in modules, and for the blur as a share of it.
const LONGEST: f64 = 0.5;

/// Pixels under a code, or blocks of them: places and levels in the same order.
#[derive(Debug)]
pub(super) struct Pixels {
    at: Vec<Point<PhotoPx>>,
    level: Vec<f32>,
    /// Side of a block, in pixels.
    block: f64,
}

impl Pixels {
    /// Pixels whose centres lie on the code; `None` where they are too few or a corner is not in the photo.
    pub(super) fn under(luma: &Luma, pose: &Pose) -> Option<Self> {
        let corners = pose.corners();
        if corners.iter().any(|c| !luma.holds(*c, 1.0)) {
            return None;
        }
        let least = |of: fn(&Point<PhotoPx>) -> f64| corners.iter().map(of).fold(f64::MAX, f64::min);
        let most = |of: fn(&Point<PhotoPx>) -> f64| corners.iter().map(of).fold(f64::MIN, f64::max);
        let size = floor_index(pose.px_per_module() / BLOCK_PX).max(1);
        let (left, top) = (floor_index(least(|p| p.x)), floor_index(least(|p| p.y)));
        let (right, bottom) = (floor_index(most(|p| p.x)), floor_index(most(|p| p.y)));
        let mut pixels = Self { at: Vec::new(), level: Vec::new(), block: float(size) };
        for y in (top..=bottom.min(luma.height - size)).step_by(size) {
            for x in (left..=right.min(luma.width - size)).step_by(size) {
                let half = float(size) / 2.0;
                let middle = Point::new(float(x) + half, float(y) + half);
                let Some(m) = pose.photo_to_module(middle) else { continue };
                let side = 2.0 * HALF;
                if m.x > 0.0 && m.y > 0.0 && m.x < side && m.y < side {
                    pixels.at.push(middle);
                    pixels.level.push(mean(luma, x, y, size));
                }
            }
        }
        (pixels.at.len() > 8 * UNKNOWNS).then_some(pixels)
    }
}

fn mean(luma: &Luma, x: usize, y: usize, size: usize) -> f32 {
    let rows = (y..y + size).flat_map(|row| &luma.grey[row * luma.width + x..row * luma.width + x + size]);
    rows.map(|grey| f32::from(*grey)).sum::<f32>() / single(float(size * size))
}

/// Fit of one code to the pixels.
#[derive(Copy, Clone, Debug)]
pub(super) struct ModelFit {
    /// Pose after the fit.
    pub(super) pose: Pose,
    /// Standard deviation of the blur, in pixels of the photo.
    pub(super) blur: f64,
    /// Residual sum of squares, in grey levels squared.
    pub(super) residual: f64,
    /// Mean squared residual over finder patterns and timing, and over the other modules.
    pub(super) known_and_rest: [f64; 2],
    /// Residual sum of squares of light alone, without the code.
    pub(super) without: f64,
    /// Power of the residual that looks like modules of another colour, over that of pure noise: 1 where all
    /// is noise.
    pub(super) flips: f64,
    /// Darkness of the ink, as a share of the paper's brightness.
    pub(super) ink: f64,
    /// Number of pixels (blocks) fitted.
    pub(super) pixels: usize,
}

/// Fits a code to the pixels, from a start of pose and blur (in pixels of the photo), in at most `steps`
/// steps.
///
/// `drowned` is the darkness, as a share of full dark, below which a place shows as paper. `None` where the
/// model cannot be set up at the start.
pub(super) fn fit(
    pixels: &Pixels,
    code: &Modules,
    drowned: f32,
    (pose, blur): (Pose, f64),
    steps: usize,
) -> Option<ModelFit> {
    let (low, high) = BLUR;
    let mut pose = pose;
    let mut blur = blur.clamp(low * pixels.block, high * pixels.block);
    let first = blur;
    let mut fit = Fit::at(pixels, code, drowned, &pose, blur)?;
    for _ in 0..steps {
        let Some((next_pose, next_blur, moved)) = fit.step(&pose, blur, first) else { break };
        let next_blur = next_blur.clamp(low * pixels.block, high * pixels.block);
        let Some(next) = Fit::at(pixels, code, drowned, &next_pose, next_blur) else { break };
        if next.residual > fit.residual {
            break;
        }
        (pose, blur, fit) = (next_pose, next_blur, next);
        if moved < 0.01 {
            break;
        }
    }
    Some(ModelFit {
        pose,
        blur,
        residual: fit.residual,
        known_and_rest: fit.known_and_rest,
        without: fit.without,
        flips: flips(pixels, &fit.errors, &pose, blur),
        ink: fit.light[LIGHTS - 1] / fit.light[0].max(1.0),
        pixels: pixels.level.len(),
    })
}

type Normal = SMatrix<f64, UNKNOWNS, UNKNOWNS>;
type Unknowns = SVector<f64, UNKNOWNS>;

/// Linearised model at one pose and blur, with the light that suits it best.
struct Fit {
    normal: Normal,
    right: Unknowns,
    /// Coefficients of the light, in the order of `Seen::lit`: constant, two slopes, four sides, contrast.
    light: [f64; LIGHTS],
    residual: f64,
    known_and_rest: [f64; 2],
    without: f64,
    sides_least: f64,
    /// Residual of each pixel, in grey levels.
    errors: Vec<f64>,
}

/// One pixel's share in the model.
struct Seen {
    /// Offset from the code's centre, in modules.
    at: [f64; 2],
    level: f64,
    /// Weight of its blur beyond the code's left, right, upper and lower edge.
    sides: [f64; 4],
    /// Darkness of the code there (negative), and its derivatives by x, y and blur.
    code: [f64; 4],
    /// Share of finder patterns and timing in what it sees, 0 … 1.
    known: f64,
}

impl Seen {
    /// Row of the linear model: light, then the code.
    fn lit(&self) -> [f64; LIGHTS] {
        let [left, right, above, below] = self.sides;
        [1.0, self.at[0] / ARM, self.at[1] / ARM, left, right, above, below, self.code[0]]
    }
}

impl Fit {
    fn at(pixels: &Pixels, code: &Modules, drowned: f32, pose: &Pose, blur: f64) -> Option<Self> {
        let det = pose.u.cross(pose.v);
        // blur along the code's two axes, in modules
        let wide = [pose.v.length().value(), pose.u.length().value()].map(|side| blur * side / det.abs());
        if !wide.iter().all(|w| w.is_finite() && *w > 1e-3 && 2.0 * REACH * *w + 2.0 < float(EDGES)) {
            return None;
        }
        let mut seen = Vec::with_capacity(pixels.at.len());
        for (at, level) in pixels.at.iter().zip(&pixels.level) {
            let m = pose.photo_to_module(*at)?;
            let (x, y) = (Axis::at(m.x, wide[0]), Axis::at(m.y, wide[1]));
            let (code, known) = look(code, f64::from(drowned), &x, &y, blur);
            let sides = [x.beyond[0], x.beyond[1], y.beyond[0], y.beyond[1]];
            seen.push(Seen { at: [m.x - HALF, m.y - HALF], level: f64::from(*level), sides, code, known });
        }
        Self::of(&seen)
    }

    fn of(seen: &[Seen]) -> Option<Self> {
        let mut sums = SMatrix::<f64, LIGHTS, LIGHTS>::zeros();
        let mut right = SVector::<f64, LIGHTS>::zeros();
        let mut power = 0.0;
        for s in seen {
            let row = SVector::from(s.lit());
            sums += row * row.transpose();
            right += row * s.level;
            power += s.level * s.level;
        }
        // a side that lets nothing in has no say
        let least = SIDES_LEAST * float(seen.len());
        for k in 3..7 {
            sums[(k, k)] += least;
        }
        let light = sums.cholesky()?.solve(&right);
        let plain = sums.fixed_view::<7, 7>(0, 0).into_owned().cholesky()?;
        let plain_right = right.fixed_rows::<7>(0).into_owned();
        let without = power - plain_right.dot(&plain.solve(&plain_right));
        let mut fit = Self {
            normal: Normal::zeros(),
            right: Unknowns::zeros(),
            light: light.into(),
            residual: 0.0,
            known_and_rest: [0.0; 2],
            without,
            sides_least: least,
            errors: Vec::with_capacity(seen.len()),
        };
        let mut weights = [1e-9; 2];
        for s in seen {
            let (x, y) = (s.at[0] / ARM, s.at[1] / ARM);
            let lit = s.lit();
            let error = s.level - lit.iter().zip(&fit.light).map(|(a, b)| a * b).sum::<f64>();
            let contrast = fit.light[LIGHTS - 1];
            let [_, along, down, blur] = s.code.map(|c| contrast * c);
            let pose = [along, along * x, along * y, down, down * x, down * y, blur];
            let row = Unknowns::from_iterator(pose.into_iter().chain(lit));
            fit.normal += row * row.transpose();
            fit.right += row * error;
            fit.residual += error * error;
            fit.errors.push(error);
            for (k, weight) in [s.known, 1.0 - s.known].into_iter().enumerate() {
                fit.known_and_rest[k] += weight * error * error;
                weights[k] += weight;
            }
        }
        fit.known_and_rest.iter_mut().zip(weights).for_each(|(sum, weight)| *sum /= weight);
        Some(fit)
    }

    /// One step of Gauss–Newton: next pose, next blur, and the largest change of an unknown.
    fn step(&self, pose: &Pose, blur: f64, first: f64) -> Option<(Pose, f64, f64)> {
        let mut normal = self.normal;
        let mut right = self.right;
        let own = (0..6).map(|k| normal[(k, k)]).sum::<f64>() / 6.0;
        for k in 10..14 {
            normal[(k, k)] += self.sides_least;
        }
        for k in [1, 2, 4, 5] {
            normal[(k, k)] += STIFFNESS * own;
        }
        let stiff = STIFFNESS * normal[(6, 6)];
        normal[(6, 6)] += stiff;
        right[6] += stiff * (first - blur);
        let change = normal.cholesky()?.solve(&right);
        let moved = (0..6).map(|k| change[k].abs()).fold(change[6].abs() / blur, f64::max);
        let by = if moved > LONGEST { LONGEST / moved } else { 1.0 };
        let at = |k: usize| change[k] * by;
        let arm = |k: usize| change[k] * by / ARM;
        let next = pose.undo([at(0), at(3)], [[arm(1), arm(2)], [arm(4), arm(5)]])?;
        Some((next, blur + at(6), moved * by))
    }
}

/// Weights of the modules within a pixel's reach along one axis, with their derivatives by place and width.
struct Axis {
    first: usize,
    count: usize,
    share: [f64; EDGES],
    with_place: [f64; EDGES],
    with_width: [f64; EDGES],
    width: f64,
    /// Weight before the code's first module and after its last.
    beyond: [f64; 2],
}

impl Axis {
    fn at(place: f64, width: f64) -> Self {
        let reach = REACH * width;
        let first = floor_index(place - reach).min(SIDE - 1);
        let last = floor_index(place + reach).min(SIDE - 1);
        let mut axis = Self {
            first,
            count: last + 1 - first,
            share: [0.0; EDGES],
            with_place: [0.0; EDGES],
            with_width: [0.0; EDGES],
            width,
            beyond: [normal(-place / width).0, normal((place - float(SIDE)) / width).0],
        };
        let edge = |module: usize| {
            let z = (float(module) - place) / width;
            let (below, bell) = normal(z);
            [below, bell / width, z * bell / width]
        };
        let mut before = edge(first);
        for k in 0..axis.count.min(EDGES) {
            let after = edge(first + k + 1);
            axis.share[k] = after[0] - before[0];
            axis.with_place[k] = before[1] - after[1];
            axis.with_width[k] = before[2] - after[2];
            before = after;
        }
        axis
    }
}

/// Darkness of a code at a pixel (negative) with its derivatives by x, y and blur; and the share of finder
/// patterns and timing in it.
fn look(code: &Modules, drowned: f64, x: &Axis, y: &Axis, blur: f64) -> ([f64; 4], f64) {
    let dark = code.as_slice();
    let (mut level, mut along, mut down, mut wider, mut known, mut all) = (0.0, 0.0, 0.0, 0.0, 0.0, 1e-9);
    for j in 0..y.count {
        let row = y.first + j;
        let (mut share, mut place, mut width, mut plain, mut whole) = (0.0, 0.0, 0.0, 0.0, 0.0);
        for i in 0..x.count {
            let column = x.first + i;
            if dark[row * SIDE + column] {
                share += x.share[i];
                place += x.with_place[i];
                width += x.with_width[i];
            }
            whole += x.share[i];
            if is_known(column, row) {
                plain += x.share[i];
            }
        }
        level -= y.share[j] * share;
        along -= y.share[j] * place;
        down -= y.with_place[j] * share;
        wider -= y.share[j] * width * x.width + y.with_width[j] * share * y.width;
        known += y.share[j] * plain;
        all += y.share[j] * whole;
    }
    if level + drowned >= 0.0 && drowned > 0.0 {
        return ([0.0; 4], known / all);
    }
    ([level + drowned, along, down, wider / blur], known / all)
}

/// Score test (C. R. Rao, 1948) of "this very code" against "whatever code", as a ratio to noise.
///
/// The residual is correlated with the change that each module of its own would make by having the other
/// colour; the sum of squares of these, over what noise of the residual's power lets expect.
fn flips(pixels: &Pixels, errors: &[f64], pose: &Pose, blur: f64) -> f64 {
    let det = pose.u.cross(pose.v).abs();
    let wide = [pose.v.length().value(), pose.u.length().value()].map(|side| blur * side / det);
    let (mut alike, mut power) = ([0.0; SIDE * SIDE], 0.0);
    for (at, error) in pixels.at.iter().zip(errors) {
        let Some(m) = pose.photo_to_module(*at) else { continue };
        let (x, y) = (Axis::at(m.x, wide[0]), Axis::at(m.y, wide[1]));
        for j in 0..y.count {
            for i in 0..x.count {
                let (column, row) = (x.first + i, y.first + j);
                if !is_known(column, row) {
                    let share = x.share[i] * y.share[j];
                    alike[row * SIDE + column] += share * error;
                    power += share * share;
                }
            }
        }
    }
    let noise = errors.iter().map(|e| e * e).sum::<f64>() / float(errors.len().max(1));
    alike.iter().map(|a| a * a).sum::<f64>() / (power * noise).max(f64::MIN_POSITIVE)
}

/// Whether a module belongs to a finder pattern with its separator, or to the timing: equal in every code.
fn is_known(column: usize, row: usize) -> bool {
    let (low, high) = (8, SIDE - 8);
    column == 6
        || row == 6
        || (column < low && row < low)
        || (column < low && row >= high)
        || (column >= high && row < low)
}

/// Table of the normal distribution: entries a unit, and its last argument.
const FINE: f64 = 64.0;
const END: f64 = 4.0;

/// Cumulative standard normal distribution at `z`, and its density there, from a table.
fn normal(z: f64) -> (f64, f64) {
    static TABLE: std::sync::OnceLock<Vec<(f64, f64)>> = std::sync::OnceLock::new();
    let table = TABLE.get_or_init(|| {
        (0..=round_index(2.0 * END * FINE) + 1)
            .map(|i| {
                let z = float(i) / FINE - END;
                (super::template::normal_below(z), (-0.5 * z * z).exp() / std::f64::consts::TAU.sqrt())
            })
            .collect()
    });
    if z <= -END {
        return (0.0, 0.0);
    }
    if z >= END {
        return (1.0, 0.0);
    }
    let at = (z + END) * FINE;
    let k = floor_index(at);
    let t = at - float(k);
    let (a, b) = (table[k], table[k + 1]);
    (a.0 + (b.0 - a.0) * t, a.1 + (b.1 - a.1) * t)
}
