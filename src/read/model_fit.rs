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

use super::bands::banded;
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
pub(super) const EDGES: usize = 20;
/// The same at usual blurs; an axis of that length takes half the time.
const FEW_EDGES: usize = 10;
/// Number of unknowns: six of the pose, the blur, seven of light, the contrast.
const UNKNOWNS: usize = 15;
/// Number of linear unknowns: seven of light, the contrast.
pub(super) const LIGHTS: usize = 8;
/// Unit of offsets from the centre, in modules, so that all unknowns of the pose have about the same weight.
pub(super) const ARM: f64 = 8.0;
/// Ridge term for the pose's matrix and for a change of the blur, as a share of the pixels' own weight.
const STIFFNESS: f64 = 0.01;
/// Ridge term per pixel for the four side-light coefficients.
const SIDES_LEAST: f64 = 1e-5;
/// Maximum change of an unknown in one step: in modules, and for the blur as a share of it.
const LONGEST: f64 = 0.5;

/// Pixels under a code, or blocks of them: places and levels in the same order.
#[derive(Debug)]
pub(super) struct Pixels {
    pub(super) at: Vec<Point<PhotoPx>>,
    pub(super) level: Vec<f32>,
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

/// What the residuals of a fit look like.
#[derive(Copy, Clone, Debug)]
pub(super) struct Residual {
    /// Mean squared residual over finder patterns and timing, and over the other modules.
    pub(super) known_and_rest: [f64; 2],
    /// Power of the residual that looks like modules of another colour, over that of pure noise: 1 where all
    /// is noise.
    pub(super) flips: f64,
}

/// Fit of one code to the pixels.
#[derive(Clone, Debug)]
pub(super) struct ModelFit {
    /// Pose after the fit.
    pub(super) pose: Pose,
    /// Standard deviation of the blur, in pixels of the photo.
    pub(super) blur: f64,
    /// Residual sum of squares, in grey levels squared, with one contrast for the whole code.
    pub(super) power: f64,
    /// Residual sum of squares of light alone, without the code.
    pub(super) without: f64,
    /// Darkness of the ink, as a share of the paper's brightness.
    pub(super) ink: f64,
    /// Number of pixels (blocks) fitted.
    pub(super) pixels: usize,
    /// Whether what is little dark shows as paper.
    is_clipped: bool,
    fit: Fit,
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
    let code = &Darkness::of(code);
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
        power: fit.residual,
        without: fit.without,
        ink: fit.light[LIGHTS - 1] / fit.light[0].max(1.0),
        pixels: pixels.level.len(),
        is_clipped: drowned > 0.0,
        fit,
    })
}

impl ModelFit {
    /// Residual of each pixel with one contrast for the whole code.
    pub(super) fn errors(&self, pixels: &Pixels) -> Vec<f64> {
        let model = |lit: &[f64; LIGHTS]| lit.iter().zip(&self.fit.light).map(|(a, b)| a * b).sum::<f64>();
        self.fit.lit.iter().zip(&pixels.level).map(|(lit, level)| f64::from(*level) - model(lit)).collect()
    }

    /// Residual of each pixel with a contrast for each column or row of modules; with one contrast where the code is clipped.
    pub(super) fn banded(&self, pixels: &Pixels, code: &Modules) -> Vec<f64> {
        let banded =
            if self.is_clipped { None } else { banded(pixels, code, &self.pose, self.blur, &self.fit) };
        banded.unwrap_or_else(|| self.errors(pixels))
    }

    /// What residuals look like.
    pub(super) fn residual(&self, pixels: &Pixels, errors: &[f64]) -> Residual {
        residual(pixels, errors, &self.pose, self.blur)
    }
}

/// Residual sum of squares, in grey levels squared.
pub(super) fn power(errors: &[f64]) -> f64 {
    errors.iter().map(|error| error * error).sum()
}

type Normal = SMatrix<f64, UNKNOWNS, UNKNOWNS>;
type Unknowns = SVector<f64, UNKNOWNS>;

/// Linearised model at one pose and blur, with the light that suits it best.
#[derive(Clone, Debug)]
pub(super) struct Fit {
    normal: Normal,
    right: Unknowns,
    /// Coefficients of the light, in the order of `lit`: constant, two slopes, four sides, contrast.
    pub(super) light: [f64; LIGHTS],
    pub(super) residual: f64,
    without: f64,
    pub(super) sides_least: f64,
    /// Row of the linear model for each pixel: light, then the code.
    lit: Vec<[f64; LIGHTS]>,
}

/// Sums of the products of all unknowns, by pairs; the lower half. The derivatives by pose and blur are those of a contrast of 1.
struct Sums {
    products: [[f64; UNKNOWNS]; UNKNOWNS],
    with_level: [f64; UNKNOWNS],
    power: f64,
}

/// Number of unknowns of pose and blur; those of light come after them.
const POSES: usize = UNKNOWNS - LIGHTS;

impl Fit {
    fn at(pixels: &Pixels, code: &Darkness, drowned: f32, pose: &Pose, blur: f64) -> Option<Self> {
        let wide = widths(pose, blur);
        let fits = |edges: usize| {
            wide.iter().all(|w| w.is_finite() && *w > 1e-3 && 2.0 * REACH * *w + 2.0 < float(edges))
        };
        if fits(FEW_EDGES) {
            Self::with_edges::<FEW_EDGES>(pixels, code, drowned, (pose, blur, wide))
        } else if fits(EDGES) {
            Self::with_edges::<EDGES>(pixels, code, drowned, (pose, blur, wide))
        } else {
            None
        }
    }

    /// Model at a pose and blur where no pixel's reach has more than `N` edges along an axis.
    fn with_edges<const N: usize>(
        pixels: &Pixels,
        code: &Darkness,
        drowned: f32,
        (pose, blur, wide): (&Pose, f64, [f64; 2]),
    ) -> Option<Self> {
        let mut sums =
            Sums { products: [[0.0; UNKNOWNS]; UNKNOWNS], with_level: [0.0; UNKNOWNS], power: 0.0 };
        let mut lit = Vec::with_capacity(pixels.at.len());
        for (at, level) in pixels.at.iter().zip(&pixels.level) {
            let m = pose.photo_to_module(*at)?;
            let (x, y) = (Axis::<N>::at(m.x, wide[0]), Axis::<N>::at(m.y, wide[1]));
            let [dark, along, down, wider] = look(code, f64::from(drowned), &x, &y, blur);
            let (u, v) = ((m.x - HALF) / ARM, (m.y - HALF) / ARM);
            let own = [1.0, u, v, x.beyond[0], x.beyond[1], y.beyond[0], y.beyond[1], dark];
            let [a, b, c, d, e, f, g, h] = own;
            let row = [along, along * u, along * v, down, down * u, down * v, wider, a, b, c, d, e, f, g, h];
            sums.add(&row, f64::from(*level));
            lit.push(own);
        }
        Self::of(&sums, lit)
    }

    fn of(sums: &Sums, lit: Vec<[f64; LIGHTS]>) -> Option<Self> {
        let Sums { products, with_level, power } = sums;
        // a side that lets nothing in has no say
        let least = SIDES_LEAST * float(lit.len());
        let mut lights =
            SMatrix::<f64, LIGHTS, LIGHTS>::from_fn(|k, l| products[POSES + k.max(l)][POSES + k.min(l)]);
        let level = SVector::<f64, LIGHTS>::from_fn(|k, _| with_level[POSES + k]);
        let plain_sums = lights;
        for k in 3..LIGHTS - 1 {
            lights[(k, k)] += least;
        }
        let light = lights.cholesky()?.solve(&level);
        let plain = lights.fixed_view::<7, 7>(0, 0).into_owned().cholesky()?;
        let plain_level = level.fixed_rows::<7>(0).into_owned();
        let without = power - plain_level.dot(&plain.solve(&plain_level));
        let residual = power - 2.0 * level.dot(&light) + light.dot(&(plain_sums * light));
        let contrast = light[LIGHTS - 1];
        let scale = |k: usize| if k < POSES { contrast } else { 1.0 };
        let product = |k: usize, l: usize| products[k.max(l)][k.min(l)];
        let normal = Normal::from_fn(|k, l| scale(k) * scale(l) * product(k, l));
        let right = Unknowns::from_fn(|k, _| {
            let modelled: f64 = (0..LIGHTS).map(|l| product(k, POSES + l) * light[l]).sum();
            scale(k) * (with_level[k] - modelled)
        });
        Some(Self { normal, right, light: light.into(), residual, without, sides_least: least, lit })
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

impl Sums {
    fn add(&mut self, row: &[f64; UNKNOWNS], level: f64) {
        for (k, (sums, own)) in self.products.iter_mut().zip(row).enumerate() {
            for (sum, other) in sums[..=k].iter_mut().zip(row) {
                *sum += own * other;
            }
        }
        for (sum, own) in self.with_level.iter_mut().zip(row) {
            *sum += own * level;
        }
        self.power += level * level;
    }
}

/// Darkness of a code's modules, 0 or 1, row by row, with light ones beyond the right edge, so that any `EDGES` of a row can be taken.
#[derive(Debug)]
struct Darkness(Vec<[f64; SIDE + EDGES]>);

impl Darkness {
    fn of(code: &Modules) -> Self {
        let dark = |column: usize, row: usize| column < SIDE && code.dark(column, row);
        let level = |is_dark: bool| if is_dark { 1.0 } else { 0.0 };
        Self((0..SIDE).map(|row| std::array::from_fn(|column| level(dark(column, row)))).collect())
    }

    /// `N` modules of a row.
    fn from<const N: usize>(&self, column: usize, row: usize) -> Option<&[f64; N]> {
        self.0.get(row)?.get(column..)?.first_chunk()
    }
}

/// Weights of the modules within a pixel's reach along one axis, at most `N`, with their derivatives by place and width.
pub(super) struct Axis<const N: usize> {
    pub(super) first: usize,
    pub(super) count: usize,
    pub(super) share: [f64; N],
    with_place: [f64; N],
    with_width: [f64; N],
    width: f64,
    /// Weight before the code's first module and after its last.
    pub(super) beyond: [f64; 2],
}

impl<const N: usize> Axis<N> {
    pub(super) fn at(place: f64, width: f64) -> Self {
        let reach = REACH * width;
        let first = floor_index(place - reach).min(SIDE - 1);
        let last = floor_index(place + reach).min(SIDE - 1);
        let mut axis = Self {
            first,
            count: (last + 1 - first).min(N),
            share: [0.0; N],
            with_place: [0.0; N],
            with_width: [0.0; N],
            width,
            beyond: [normal(-place / width).0, normal((place - float(SIDE)) / width).0],
        };
        let edge = |module: usize| {
            let z = (float(module) - place) / width;
            let (below, bell) = normal(z);
            [below, bell / width, z * bell / width]
        };
        let mut before = edge(first);
        for k in 0..axis.count.min(N) {
            let after = edge(first + k + 1);
            axis.share[k] = after[0] - before[0];
            axis.with_place[k] = before[1] - after[1];
            axis.with_width[k] = before[2] - after[2];
            before = after;
        }
        axis
    }
}

/// Darkness of a code at a pixel (negative) with its derivatives by x, y and blur.
fn look<const N: usize>(code: &Darkness, drowned: f64, x: &Axis<N>, y: &Axis<N>, blur: f64) -> [f64; 4] {
    // sums over the rows for each column first: columns are added up side by side
    let (mut share, mut place, mut width) = ([0.0; N], [0.0; N], [0.0; N]);
    for j in 0..y.count {
        let Some(dark) = code.from::<N>(x.first, y.first + j) else { continue };
        for k in 0..N {
            share[k] += y.share[j] * dark[k];
            place[k] += y.with_place[j] * dark[k];
            width[k] += y.with_width[j] * dark[k];
        }
    }
    let (mut level, mut along, mut down, mut wider) = (0.0, 0.0, 0.0, 0.0);
    for k in 0..x.count {
        level -= x.share[k] * share[k];
        along -= x.with_place[k] * share[k];
        down -= x.share[k] * place[k];
        wider -= x.with_width[k] * share[k] * x.width + x.share[k] * width[k] * y.width;
    }
    if level + drowned >= 0.0 && drowned > 0.0 {
        return [0.0; 4];
    }
    [level + drowned, along, down, wider / blur]
}

/// Standard deviation of the blur along the code's two axes, in modules.
pub(super) fn widths(pose: &Pose, blur: f64) -> [f64; 2] {
    let det = pose.u.cross(pose.v).abs();
    [pose.v.length().value(), pose.u.length().value()].map(|side| blur * side / det)
}

/// What residuals look like, in one pass over the pixels.
///
/// `flips` is the score test (C. R. Rao, 1948) of "this very code" against "whatever code", as a ratio to noise: the residual is
/// correlated with the change that each module of its own would make by having the other colour; the sum of squares of these, over
/// what noise of the residual's power lets expect.
fn residual(pixels: &Pixels, errors: &[f64], pose: &Pose, blur: f64) -> Residual {
    let wide = widths(pose, blur);
    let (mut alike, mut expected) = ([0.0; SIDE * SIDE], 0.0);
    let (mut sums, mut weights) = ([0.0; 2], [1e-9; 2]);
    for (at, error) in pixels.at.iter().zip(errors) {
        let Some(m) = pose.photo_to_module(*at) else { continue };
        let (x, y) = (Axis::<EDGES>::at(m.x, wide[0]), Axis::<EDGES>::at(m.y, wide[1]));
        let (mut known, mut all) = (0.0, 1e-9);
        for j in 0..y.count {
            for i in 0..x.count {
                let (column, row) = (x.first + i, y.first + j);
                let share = x.share[i] * y.share[j];
                all += share;
                if is_known(column, row) {
                    known += share;
                } else {
                    alike[row * SIDE + column] += share * error;
                    expected += share * share;
                }
            }
        }
        let known = known / all;
        for (k, weight) in [known, 1.0 - known].into_iter().enumerate() {
            sums[k] += weight * error * error;
            weights[k] += weight;
        }
    }
    let noise = power(errors) / float(errors.len().max(1));
    Residual {
        known_and_rest: [sums[0] / weights[0], sums[1] / weights[1]],
        flips: alike.iter().map(|a| a * a).sum::<f64>() / (expected * noise).max(f64::MIN_POSITIVE),
    }
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
