//! Camera fit: a homography and two radial coefficients, from codes whose place on the wall is known or
//! assumed.
//!
//! Every square and card hangs a little beside its place, some far from it. So the residual is the distance
//! **on the wall**, in millimetres, and codes far off lose their weight (Geman & McClure 1987). Fitted by
//! Levenberg–Marquardt from a start that another stage gives.

use nalgebra::{Matrix3, SMatrix, SVector};

use super::lens::Lens;
use super::reading::Camera;
use crate::frame::{Map, PhotoPx, Point, StraightPx, Vector, WallMm, float};

/// Correspondence of a code between photo and wall: its four outer corners, in the same order.
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct Correspondence {
    /// Corners on the wall.
    pub wall: [Point<WallMm>; 4],
    /// Corners in the photo.
    pub photo: [Point<PhotoPx>; 4],
}

/// Number of unknowns: eight of the homography, two of the lens.
const UNKNOWNS: usize = 10;
pub(super) type Normal = SMatrix<f64, UNKNOWNS, UNKNOWNS>;
pub(super) type Unknowns = SVector<f64, UNKNOWNS>;

/// Standard deviation of a square's distance from its place, in mm: the weight of what is seen against the
/// priors.
pub(super) const USUAL_SHIFT_MM: f64 = 3.0;
/// Standard deviation of a square's rotation, in radians, and of its size, as a share: 0.05 is three degrees.
///
/// So two codes side by side tell directions by themselves, not by the line from one to the other. From
/// memory, no source.
const USUAL_TURN: f64 = 0.05;
/// Maximum total weight of the codes' directions and sizes, in codes.
///
/// The corners of paper curl alike, so their errors do not average out. Without it squares on the simulator's
/// walls were taken from farther beside their places.
const CODES_FOR_TURNS: f64 = 4.0;
/// Prior standard deviation of the lens's coefficients of r² and r⁴, where r is 1 at the photo's corner.
///
/// From memory, no source. Twenty codes outweigh it.
const USUAL_LENS: [f64; 2] = [0.15, 0.08];
/// Prior standard deviation of the perspective: how much nearer one end of the wall is, over half its size.
///
/// 0.4 is a view from far aside. From memory, no source.
const USUAL_PERSPECTIVE: f64 = 0.4;
/// Minimum distance from its place, in mm, at which a code has lost three quarters of its weight.
const LEAST_SPREAD_MM: f64 = 8.0;
/// Minimum number of codes for each of the lens's two coefficients to be told from noise.
const CODES_FOR_LENS: [usize; 2] = [8, 24];
/// Number of rounds of reweighting.
const ROUNDS: usize = 4;
/// Maximum number of Levenberg–Marquardt steps in a round.
const STEPS: usize = 8;

impl Camera {
    /// Affine camera that sees one code as it is seen; `None` where the code is degenerate or the lens cannot
    /// show it.
    #[must_use]
    pub fn from_one(anchor: &Correspondence, lens: Lens) -> Option<Self> {
        let mut to = [Point::origin(); 4];
        for (to, from) in to.iter_mut().zip(&anchor.photo) {
            *to = lens.photo_to_straight(*from)?;
        }
        let [a, b, c, d] = anchor.wall;
        let (x, y) = ((b - a) + (c - d), (d - a) + (c - b));
        let det = x.cross(y);
        let (u, v) = ((to[1] - to[0]) + (to[2] - to[3]), (to[3] - to[0]) + (to[2] - to[1]));
        // the steps on the wall of 1 mm right and 1 mm down, in terms of the code's own two sides
        let right = u * (y.y / det) - v * (x.y / det);
        let down = v * (x.x / det) - u * (y.x / det);
        let (from, at) = (a.towards(c, 0.5), to[0].towards(to[2], 0.5));
        let map = Map::<WallMm, StraightPx>::affine(at - right * from.x - down * from.y, right, down);
        Map::from_matrix(*map.matrix()).map(|wall_to_straight| Self { wall_to_straight, lens })
    }

    /// Distance of a code's centre from its place on the wall, in mm. Infinite where the camera cannot see
    /// it.
    #[must_use]
    pub fn placement_error_mm(&self, anchor: &Correspondence) -> f64 {
        let Some(seen) = self.shifts(anchor) else { return f64::INFINITY };
        let sum = seen.iter().fold(Vector::new(0.0, 0.0), |a, b| a + *b);
        (sum / 4.0).length().value()
    }

    /// Residuals of a code's four corners on the wall, seen minus place, in mm.
    fn shifts(&self, anchor: &Correspondence) -> Option<[Vector<WallMm>; 4]> {
        let back = self.wall_to_straight.inverse()?;
        let mut shifts = [Vector::new(0.0, 0.0); 4];
        for (shift, (wall, photo)) in shifts.iter_mut().zip(anchor.wall.iter().zip(&anchor.photo)) {
            let at = back.apply(self.lens.photo_to_straight(*photo)?);
            if !at.is_finite() {
                return None;
            }
            *shift = at - *wall;
        }
        Some(shifts)
    }

    /// Camera that fits the anchors best, beginning from this one.
    #[must_use]
    pub fn fitted(&self, anchors: &[Correspondence]) -> Self {
        let mut camera = *self;
        for round in 0..ROUNDS {
            let mut shifts: Vec<f64> = anchors.iter().map(|a| camera.placement_error_mm(a)).collect();
            let weights_from = shifts.clone();
            shifts.sort_by(f64::total_cmp);
            let median = shifts.get(shifts.len() / 2).copied().unwrap_or(0.0);
            let loose = [4.0, 3.0, 2.5, 2.5][round];
            let spread = (median * loose).clamp(LEAST_SPREAD_MM, 200.0);
            let weights: Vec<f64> =
                weights_from.iter().map(|s| (1.0 + (s / spread).powi(2)).powi(-2)).collect();
            camera = Fit::new(&camera, anchors).solve(camera, anchors, &weights);
        }
        camera
    }
}

/// Observation of one coordinate, with its residual and derivatives.
#[derive(Copy, Clone, Debug)]
pub(super) struct Said {
    /// Residual, in mm on the wall.
    pub(super) miss: f64,
    /// Derivatives by the camera's unknowns, in mm.
    pub(super) slope: Unknowns,
    /// Weight, where a code's centre has 1.
    pub(super) weight: f64,
}

/// Weighted least squares problem in normalised coordinates.
///
/// The wall's are about the anchors' middle in units of their spread, the photo's about the lens's centre in
/// units of its scale.
#[derive(Clone, Debug)]
pub(super) struct Fit {
    /// Camera at the start.
    from: Camera,
    middle: Point<WallMm>,
    spread: f64,
    lens: Lens,
    lens_free: [bool; 2],
    /// Weight of direction and size of one code.
    turns: f64,
}

impl Fit {
    pub(super) fn new(camera: &Camera, anchors: &[Correspondence]) -> Self {
        let count = float(anchors.len().max(1));
        let sum = anchors.iter().fold(Vector::new(0.0, 0.0), |a, b| a + (b.wall[0] - Point::origin()));
        let middle = Point::origin() + sum / count;
        let far = anchors.iter().map(|a| a.wall[0].distance(middle).value()).fold(300.0, f64::max);
        let lens_free = CODES_FOR_LENS.map(|least| anchors.len() >= least);
        let turns = (CODES_FOR_TURNS / count).min(1.0);
        Self { from: *camera, middle, spread: far, lens: camera.lens, lens_free, turns }
    }

    /// Scale at a place on the wall, in mm for a normalised unit of the photo.
    fn mm_at(&self, place: Point<WallMm>) -> f64 {
        self.lens.scale / self.from.wall_to_straight.scale_at(place).max(1e-9)
    }

    /// Normalised coordinates of a place on the wall.
    fn normal(&self, place: Point<WallMm>) -> [f64; 2] {
        [(place.x - self.middle.x) / self.spread, (place.y - self.middle.y) / self.spread]
    }

    /// Derivatives of a place by the camera's unknowns, right and down, in mm. `None` where the camera cannot
    /// see it.
    pub(super) fn slopes(&self, n: &Unknowns, place: Point<WallMm>) -> Option<[Unknowns; 2]> {
        let [x, y] = self.normal(place);
        let (_, slopes) = project(n, x, y)?;
        let mm = self.mm_at(place);
        Some(slopes.map(|slope| slope * mm))
    }

    /// Unknowns of a camera in normalised coordinates; `None` where the anchors' middle lies behind it.
    pub(super) fn unknowns(&self, camera: &Camera) -> Option<Unknowns> {
        let Point { x: cx, y: cy, .. } = self.lens.centre;
        let s = self.lens.scale;
        let out = Matrix3::new(1.0 / s, 0.0, -cx / s, 0.0, 1.0 / s, -cy / s, 0.0, 0.0, 1.0);
        let m = out * camera.wall_to_straight.matrix() * self.normal_to_wall();
        let last = m[(2, 2)];
        (last > 0.0).then(|| {
            let h = |r: usize, c: usize| m[(r, c)] / last;
            let Lens { k1, k2, .. } = camera.lens;
            Unknowns::from([h(0, 0), h(0, 1), h(0, 2), h(1, 0), h(1, 1), h(1, 2), h(2, 0), h(2, 1), k1, k2])
        })
    }

    fn normal_to_wall(&self) -> Matrix3<f64> {
        Matrix3::new(self.spread, 0.0, self.middle.x, 0.0, self.spread, self.middle.y, 0.0, 0.0, 1.0)
    }

    fn camera(&self, n: &Unknowns) -> Option<Camera> {
        let Point { x: cx, y: cy, .. } = self.lens.centre;
        let s = self.lens.scale;
        let back = Matrix3::new(s, 0.0, cx, 0.0, s, cy, 0.0, 0.0, 1.0);
        let h = Matrix3::new(n[0], n[1], n[2], n[3], n[4], n[5], n[6], n[7], 1.0);
        let wall_to_straight = Map::from_matrix(back * h * self.normal_to_wall().try_inverse()?)?;
        Some(Camera { wall_to_straight, lens: Lens { k1: n[8], k2: n[9], ..self.lens } })
    }

    /// Observations of a code at `n`: its centre (x, y), then its four corners (x, y each) about that. `None`
    /// where it falls behind the camera.
    pub(super) fn said(&self, n: &Unknowns, anchor: &Correspondence) -> Option<[Said; 10]> {
        let mm = self.mm_at(anchor.wall[0]);
        let mut corners = [Said { miss: 0.0, slope: Unknowns::zeros(), weight: 0.0 }; 8];
        for (k, (wall, photo)) in anchor.wall.iter().zip(&anchor.photo).enumerate() {
            let [x, y] = self.normal(*wall);
            let (at, slopes) = project(n, x, y)?;
            let seen = [photo.x - self.lens.centre.x, photo.y - self.lens.centre.y];
            for axis in 0..2 {
                let miss = (seen[axis] / self.lens.scale - at[axis]) * mm;
                corners[2 * k + axis] = Said { miss, slope: slopes[axis] * mm, weight: 0.0 };
            }
        }
        let mean = [0, 1].map(|axis| {
            let own = || corners.iter().skip(axis).step_by(2);
            Said {
                miss: own().map(|said| said.miss).sum::<f64>() / 4.0,
                slope: own().fold(Unknowns::zeros(), |sum, said| sum + said.slope) / 4.0,
                weight: 1.0,
            }
        });
        let half = anchor.wall[0].distance(anchor.wall[2]).value() / 2.0;
        // four corners are two codes' worth of direction and size
        let weight = self.turns * (USUAL_SHIFT_MM / (USUAL_TURN * half.max(1.0))).powi(2) / 2.0;
        let mut all = [mean[0]; 10];
        for (k, said) in all.iter_mut().enumerate() {
            let mean = &mean[k % 2];
            *said = match k.checked_sub(2) {
                None => *mean,
                Some(at) => {
                    let Said { miss, slope, .. } = corners[at];
                    Said { miss: miss - mean.miss, slope: slope - mean.slope, weight }
                }
            };
        }
        Some(all)
    }

    /// Normal equations (matrix, right side) and cost at `n`; `None` where an anchor falls behind the camera.
    fn equations(
        &self,
        n: &Unknowns,
        anchors: &[Correspondence],
        weights: &[f64],
    ) -> Option<(Normal, Unknowns, f64)> {
        let (mut left, mut right, mut cost) = (Normal::zeros(), Unknowns::zeros(), 0.0);
        for (anchor, weight) in anchors.iter().zip(weights) {
            for Said { miss, slope, weight: own } in self.said(n, anchor)? {
                let w = weight * own;
                left += slope * slope.transpose() * w;
                right += slope * (miss * w);
                cost += miss * miss * w;
            }
        }
        for (k, usual) in prior() {
            let w = (USUAL_SHIFT_MM / usual).powi(2);
            left[(k, k)] += w;
            right[k] -= w * n[k];
            cost += w * n[k] * n[k];
        }
        for (k, free) in (8..).zip(self.lens_free) {
            if !free {
                left[(k, k)] += 1e12;
            }
        }
        Some((left, right, cost))
    }

    fn solve(&self, start: Camera, anchors: &[Correspondence], weights: &[f64]) -> Camera {
        let Some(mut n) = self.unknowns(&start) else { return start };
        let equations = |n: &Unknowns| self.equations(n, anchors, weights);
        let Some((mut left, mut right, mut cost)) = equations(&n) else { return start };
        let mut damping = 1e-4;
        for _ in 0..STEPS {
            let mut damped = left;
            for k in 0..UNKNOWNS {
                damped[(k, k)] *= 1.0 + damping;
            }
            let Some(step) = damped.cholesky().map(|c| c.solve(&right)) else { break };
            match equations(&(n + step)) {
                Some((l, r, c)) if c <= cost => {
                    let settled = cost - c < 1e-6 * cost;
                    (n, left, right, cost) = (n + step, l, r, c);
                    damping *= 0.2;
                    if settled {
                        break;
                    }
                }
                _ => damping = (damping * 20.0).max(1e-3),
            }
        }
        self.camera(&n).unwrap_or(start)
    }
}

/// Priors: index of an unknown, and its standard deviation about 0.
pub(super) fn prior() -> impl Iterator<Item = (usize, f64)> {
    (6..UNKNOWNS).zip([USUAL_PERSPECTIVE, USUAL_PERSPECTIVE, USUAL_LENS[0], USUAL_LENS[1]])
}

/// Projection of the normalised place (x, y), and its derivatives by each unknown. `None` behind the camera
/// or where the lens folds back.
fn project(n: &Unknowns, x: f64, y: f64) -> Option<([f64; 2], [Unknowns; 2])> {
    let w = n[6] * x + n[7] * y + 1.0;
    if w <= 1e-3 {
        return None;
    }
    let (sx, sy) = ((n[0] * x + n[1] * y + n[2]) / w, (n[3] * x + n[4] * y + n[5]) / w);
    let r2 = sx * sx + sy * sy;
    let (k1, k2) = (n[8], n[9]);
    let by = 1.0 + r2 * (k1 + r2 * k2);
    if 1.0 + r2 * (3.0 * k1 + r2 * 5.0 * k2) <= 0.05 {
        return None;
    }
    let bend = 2.0 * (k1 + 2.0 * k2 * r2);
    let lens = [[by + bend * sx * sx, bend * sx * sy], [bend * sx * sy, by + bend * sy * sy]];
    let (px, py, p1) = (x / w, y / w, 1.0 / w);
    let along_x = [px, py, p1, 0.0, 0.0, 0.0, -px * sx, -py * sx];
    let along_y = [0.0, 0.0, 0.0, px, py, p1, -px * sy, -py * sy];
    let slopes = [0, 1].map(|axis| {
        let s = [sx, sy][axis];
        Unknowns::from_fn(|k, _| match k {
            8 => s * r2,
            9 => s * r2 * r2,
            _ => lens[axis][0] * along_x[k] + lens[axis][1] * along_y[k],
        })
    });
    Some(([sx * by, sy * by], slopes))
}
