//! The camera: a pinhole somewhere in the room, and Brown's radial lens (D. C. Brown, 1966) in focal coordinates.
//!
//! A point of the room is first taken into the camera's axes, divided by its depth, bent by
//! 1 + k1 r² + k2 r⁴, then enlarged by the focal length in pixels:
//!
//! ```text
//!   room (x, y, z) mm ─ position, axes ─▶ (x/z, y/z) ─ lens ─▶ (x', y') ─ focal px ─▶ photo px
//! ```

use super::RehearseError;
use super::boards::Boards;
use super::fold::Fold;
use super::options::{Options, Pose};
use crate::frame::{PhotoPx, Point, ceil_index, float, floor_index, median};
use crate::plan::Printed;
use crate::plan::code::SIDE;

/// A place or a direction in the room, in mm: right, down, into the wall.
pub(super) type Room = [f64; 3];

/// Steps in the table that undoes the lens. Between two of them it runs straight; at 4096 the error is below
/// 1e-6 px for any lens within the options' range.
const TABLE: usize = 4096;

/// The largest picture that is made, longer and shorter side.
const LARGEST: (usize, usize) = (8000, 6000);

/// The camera.
#[derive(Clone, Debug)]
pub(super) struct Camera {
    pub width: usize,
    pub height: usize,
    pub position: Room,
    /// Unit vectors in the room: the photo's right, its down, and where the camera looks.
    pub axes: [Room; 3],
    pub focal_px: f64,
    pub k1: f64,
    pub k2: f64,
    /// r without the lens over r with it, by r² with the lens.
    straighten: Vec<f64>,
    /// The largest r² with the lens that the table holds.
    reach: f64,
    /// The largest r² without the lens that still is in the table.
    straight_reach: f64,
    /// How the wall stands in the room.
    fold: Fold,
}

/// Where a ray meets the wall's plane, and how far it moves along the wall for each mm that it has come nearer.
#[derive(Copy, Clone, Debug, Default)]
pub(super) struct Ground {
    pub x: f64,
    pub y: f64,
    pub slope_x: f64,
    pub slope_y: f64,
}

pub(super) fn dot(a: Room, b: Room) -> f64 {
    a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
}

fn cross(a: Room, b: Room) -> Room {
    [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]]
}

fn mix(a: Room, by: f64, b: Room, by_b: f64) -> Room {
    [a[0] * by + b[0] * by_b, a[1] * by + b[1] * by_b, a[2] * by + b[2] * by_b]
}

/// Undoes the lens for one radius by Newton's steps; `None` where the lens folds back before it gets there.
fn straight_radius(bent: f64, k1: f64, k2: f64) -> Option<f64> {
    let mut r = bent;
    for _ in 0..60 {
        let r2 = r * r;
        let slope = 1.0 + 3.0 * k1 * r2 + 5.0 * k2 * r2 * r2;
        if slope < 0.05 {
            return None;
        }
        let step = (r * (1.0 + k1 * r2 + k2 * r2 * r2) - bent) / slope;
        r -= step;
        if step.abs() < 1e-14 {
            return Some(r);
        }
    }
    Some(r)
}

impl Camera {
    /// A camera in a direction from the wall, `distance` from the point `aim` on it.
    fn new(
        (pose, fold): (&Pose, &Fold),
        size: (usize, usize),
        aim: [f64; 2],
        distance: f64,
    ) -> Result<Self, RehearseError> {
        let (yaw, pitch) = (pose.yaw_degrees.to_radians(), pose.pitch_degrees.to_radians());
        let forward = [-yaw.sin() * pitch.cos(), pitch.sin(), yaw.cos() * pitch.cos()];
        let level = cross([0.0, 1.0, 0.0], forward);
        let level = mix(level, 1.0 / dot(level, level).sqrt(), level, 0.0);
        let plumb = cross(forward, level);
        // A camera that is tilted clockwise has its right pointing a little down.
        let (sin, cos) = pose.roll_degrees.to_radians().sin_cos();
        let axes = [mix(level, cos, plumb, sin), mix(plumb, cos, level, -sin), forward];
        let (w, h) = (float(size.0), float(size.1));
        let focal_px = w.max(h) / 2.0 / (pose.view_degrees.to_radians() / 2.0).tan();
        let reach = (w.hypot(h) / 2.0 / focal_px * 1.05).powi(2);
        let lens = RehearseError::Lens { k1: pose.k1, k2: pose.k2 };
        let radius = |i: usize| (reach * float(i) / float(TABLE)).sqrt();
        let straight: Option<Vec<f64>> =
            (0..=TABLE).map(|i| straight_radius(radius(i), pose.k1, pose.k2)).collect();
        let straight = straight.ok_or(lens)?;
        let ratio = |(i, r): (usize, &f64)| if i == 0 { 1.0 } else { r / radius(i) };
        Ok(Self {
            width: size.0,
            height: size.1,
            position: mix(fold.room([aim[0], aim[1], 0.0]), 1.0, forward, -distance),
            axes,
            focal_px,
            k1: pose.k1,
            k2: pose.k2,
            straighten: straight.iter().enumerate().map(ratio).collect(),
            reach,
            straight_reach: straight.last().map_or(0.0, |r| r * r),
            fold: fold.clone(),
        })
    }

    /// Where a point of the wall laid flat is seen; `None` where it is behind the camera or far outside the frame.
    pub fn see(&self, place: Room) -> Option<Point<PhotoPx>> {
        let from = mix(self.fold.room(place), 1.0, self.position, -1.0);
        let depth = dot(self.axes[2], from);
        if depth < 1.0 {
            return None;
        }
        let (x, y) = (dot(self.axes[0], from) / depth, dot(self.axes[1], from) / depth);
        let r2 = x * x + y * y;
        if r2 > self.straight_reach {
            return None;
        }
        let by = self.focal_px * (1.0 + self.k1 * r2 + self.k2 * r2 * r2);
        Some(Point::new(float(self.width) / 2.0 + x * by, float(self.height) / 2.0 + y * by))
    }

    /// As [`Camera::see`], and only within the frame and where no other board stands before it.
    pub fn see_in_frame(&self, place: Room) -> Option<Point<PhotoPx>> {
        let (w, h) = (float(self.width), float(self.height));
        let seen = self.see(place).filter(|p| p.x >= 0.0 && p.y >= 0.0 && p.x < w && p.y < h)?;
        let leaf = |x: f64| self.fold.leaf(x);
        let is_first = || self.look(seen.x, seen.y).is_some_and(|ground| leaf(ground.x) == leaf(place[0]));
        (self.fold.is_flat() || is_first()).then_some(seen)
    }

    /// Where the ray of a place in the photo meets the wall, laid flat; `None` where it never does.
    pub fn look(&self, x: f64, y: f64) -> Option<Ground> {
        let x = (x - float(self.width) / 2.0) / self.focal_px;
        let y = (y - float(self.height) / 2.0) / self.focal_px;
        let at = ((x * x + y * y) / self.reach).min(1.0) * float(TABLE);
        let step = floor_index(at).min(TABLE - 1);
        let part = at - float(step);
        let by = self.straighten[step] * (1.0 - part) + self.straighten[step + 1] * part;
        let (x, y) = (x * by, y * by);
        let [right, down, ahead] = &self.axes;
        let along = |i: usize| right[i] * x + down[i] * y + ahead[i];
        self.towards([along(0), along(1), along(2)])
    }

    /// Where a ray in a direction meets the wall first, laid flat.
    fn towards(&self, along: Room) -> Option<Ground> {
        if self.fold.is_flat() {
            return meeting(self.position, along).map(|(_, ground)| ground);
        }
        let met = self.fold.flat(self.position, along).filter_map(|(position, along, [from, to])| {
            meeting(position, along).filter(|(_, ground)| (from..to).contains(&ground.x))
        });
        met.min_by(|(one, _), (other, _)| one.total_cmp(other)).map(|(_, ground)| ground)
    }

    /// The ray from the camera to a place of the wall laid flat.
    pub fn ray_to(&self, place: Room) -> Option<Ground> {
        self.towards(mix(self.fold.room(place), 1.0, self.position, -1.0))
    }

    /// Pixels a mm at a place on the wall: the square root of the area that a square mm covers; `None` out of sight.
    pub fn px_per_mm(&self, x: f64, y: f64) -> Option<f64> {
        let corner = |dx: f64, dy: f64| self.see([x + dx, y + dy, 0.0]);
        let quad = [corner(-0.5, -0.5)?, corner(0.5, -0.5)?, corner(0.5, 0.5)?, corner(-0.5, 0.5)?];
        Some(area(&quad).sqrt())
    }
}

/// How far away, in lengths of `along`, a ray meets the plane of the places without depth, and where; `None` where it does not from before
/// it.
fn meeting(position: Room, along: Room) -> Option<(f64, Ground)> {
    let depth = -position[2];
    if along[2] < 1e-3 {
        return None;
    }
    let (slope_x, slope_y) = (along[0] / along[2], along[1] / along[2]);
    let (x, y) = (position[0] + depth * slope_x, position[1] + depth * slope_y);
    Some((depth / along[2], Ground { x, y, slope_x, slope_y }))
}

/// The area of a polygon in square pixels.
pub(super) fn area(corners: &[Point<PhotoPx>; 4]) -> f64 {
    let [a, b, c, d] = corners;
    ((*c - *a).cross(*d - *b) / 2.0).abs()
}

/// The camera that the options ask for.
pub(super) fn framed(printed: &Printed, boards: &Boards, options: &Options) -> Result<Camera, RehearseError> {
    let camera = fitted(boards, &options.pose, (options.width, options.height))?;
    let Some(least) = options.min_px_per_module else { return Ok(camera) };
    let now = median_px_per_module(printed, boards, &camera);
    if now >= least {
        return Ok(camera);
    }
    // One per cent more than needed: papers stand off the wall and are not where they belong.
    let by = least / now.max(1e-6) * 1.01;
    let (width, height) = (ceil_index(float(options.width) * by), ceil_index(float(options.height) * by));
    if width.max(height) > LARGEST.0 || width.min(height) > LARGEST.1 {
        return Err(RehearseError::TooManyPixels { px: least, width, height });
    }
    fitted(boards, &options.pose, (width, height))
}

/// The median over the cells in sight of the pixels that a module takes where the code should hang.
fn median_px_per_module(printed: &Printed, boards: &Boards, camera: &Camera) -> f64 {
    let half = float(SIDE) * printed.module_mm / 2.0;
    let sizes = printed.grid.cells().filter_map(|cell| {
        let [[left, top], ..] = boards.corners(cell);
        let (x, y) = (left + printed.code_top_left.x + half, top + printed.code_top_left.y + half);
        camera.see_in_frame([x, y, 0.0])?;
        camera.px_per_mm(x, y)
    });
    median(sizes.collect()).map_or(0.0, |px| px * printed.module_mm)
}

/// The wall's outline in the photo: left, top, right, bottom as parts of the frame.
fn outline(boards: &Boards, camera: &Camera) -> Option<[f64; 4]> {
    let mut bounds = [f64::INFINITY, f64::INFINITY, f64::NEG_INFINITY, f64::NEG_INFINITY];
    for [x, y] in boards.outline() {
        let p = camera.see([x, y, 0.0])?;
        let (x, y) = (p.x / float(camera.width), p.y / float(camera.height));
        bounds = [bounds[0].min(x), bounds[1].min(y), bounds[2].max(x), bounds[3].max(y)];
    }
    Some(bounds)
}

/// Stands the camera so that the wall fills the frame as asked and its outline's middle lies where asked.
fn fitted(boards: &Boards, pose: &Pose, size: (usize, usize)) -> Result<Camera, RehearseError> {
    // A wall that overfills the frame is first framed whole; then the camera steps closer.
    let whole = pose.fill.min(0.9);
    let [wide, high] = boards.size();
    let mut aim = [wide / 2.0, high / 2.0];
    let mut distance = 3.0 * wide.max(high);
    let no_view = RehearseError::View { percent: (pose.fill * 100.0).round() };
    for round in 0..80 {
        let camera = Camera::new((pose, boards.fold()), size, aim, distance)?;
        let Some([left, top, right, bottom]) = outline(boards, &camera) else {
            distance *= 1.3;
            continue;
        };
        let off = [(left + right) / 2.0 - 0.5, (top + bottom) / 2.0 - 0.5];
        let fills = (right - left).max(bottom - top);
        let off = [off[0] - pose.off_centre[0], off[1] - pose.off_centre[1]];
        let settled = (fills / whole - 1.0).abs() < 1e-6 && off[0].hypot(off[1]) < 1e-6;
        if settled && round > 0 {
            return Camera::new((pose, boards.fold()), size, aim, distance * whole / pose.fill);
        }
        let to = [(0.5 + off[0]) * float(size.0), (0.5 + off[1]) * float(size.1)];
        let (Some(there), Some(here)) =
            (camera.look(to[0], to[1]), camera.look(float(size.0) / 2.0, float(size.1) / 2.0))
        else {
            return Err(no_view);
        };
        aim = [aim[0] + (there.x - here.x) * 0.8, aim[1] + (there.y - here.y) * 0.8];
        distance *= 1.0 + (fills / whole - 1.0) * 0.8;
    }
    Err(no_view)
}
