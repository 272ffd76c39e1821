//! From the wall to linear light in pixels: rays through every pixel, more of them where something changes.
//!
//! Rays through the corners of a pixel are followed to the wall; those within it are taken between them, which at
//! a pixel's size is exact to a thousandth of a pixel:
//!
//! ```text
//!   ┌─────────┐
//!   │ · · · · │   2 × 2 samples on plain paper or backing;
//!   │ · · · · │   4 × 4 on codes, across edges, and across the outline of what stands in front;
//!   │ · · · · │   the outer four of these where they agree
//!   │ · · · · │
//!   └─────────┘
//! ```

use super::camera::{Camera, Ground, Room};
use super::front::Front;
use super::light::Lamp;
use super::wall::{Kind, Wall};
use crate::frame::{float, narrow};

/// All that the camera sees.
#[derive(Copy, Clone, Debug)]
pub(super) struct Scene<'a> {
    pub wall: &'a Wall,
    pub front: &'a Front,
    pub camera: &'a Camera,
}

/// What a pixel shows whose rays never meet the wall.
const ROOM: [f32; 3] = [0.25, 0.24, 0.22];
/// Samples along a pixel's side where nothing changes, and where something does.
const FEW: usize = 2;
const MANY: usize = 4;
/// How near to something in front, in mm, a pixel's middle is where the pixel may show it: half of the largest pixel.
const NEAR_FRONT_MM: f64 = 10.0;

impl Scene<'_> {
    /// Where the rays through the upper left corners of a row's pixels, and one more, meet the wall.
    pub fn grounds(&self, row: usize) -> Vec<Option<Ground>> {
        (0..=self.camera.width).map(|x| self.camera.look(float(x), float(row))).collect()
    }

    /// One row of pixels of linear light.
    pub fn row(
        &self,
        row: usize,
        above: &[Option<Ground>],
        below: &[Option<Ground>],
        lamp: &Lamp,
    ) -> Vec<[f32; 3]> {
        let y = float(row) + 0.5;
        (0..self.camera.width)
            .map(|column| {
                let corners = [above[column], above[column + 1], below[column], below[column + 1]];
                let [Some(a), Some(b), Some(c), Some(d)] = corners else { return ROOM };
                let pixel = Pixel { corners: [a, b, c, d] };
                let middle = pixel.at(0.5, 0.5);
                let seen = self.pixel(&pixel, &middle);
                let light = lamp.on(middle.x, middle.y, float(column) + 0.5, y);
                [0, 1, 2].map(|i| seen[i] * light[i])
            })
            .collect()
    }

    fn pixel(&self, pixel: &Pixel, middle: &Ground) -> [f32; 3] {
        let kind = self.wall.kind(middle);
        if self.front.may_hide(middle, NEAR_FRONT_MM) {
            let [a, b, c, d] = pixel.outer().map(|ground| self.front.strike(&ground));
            if a != b || a != c || a != d {
                return Self::mean(pixel, MANY, |ground| {
                    self.front.strike(ground).unwrap_or_else(|| self.wall.colour(&self.wall.strike(ground)))
                });
            }
            if let Some(colour) = a {
                return colour;
            }
        }
        match kind {
            Kind::Bare => Self::mean(pixel, FEW, |ground| self.wall.bare(ground)),
            Kind::Plain(index) => self.plain(index, pixel, middle),
            Kind::Mixed => self.mixed(pixel),
        }
    }

    /// A pixel on one paper: where the middle of the pixel meets it says where all of it does.
    fn plain(&self, index: usize, pixel: &Pixel, middle: &Ground) -> [f32; 3] {
        let layer = &self.wall.layers[index];
        let at = layer.meet(middle);
        let shade = layer.shade(at);
        Self::mean(pixel, FEW, |ground| {
            let [du, dv] = layer.place.step(ground.x - middle.x, ground.y - middle.y);
            self.wall.printed(index, [at[0] + du, at[1] + dv]).map(|level| level * shade)
        })
    }

    /// A pixel where anything may be: four outer samples, and all of them where those differ or a code is near.
    fn mixed(&self, pixel: &Pixel) -> [f32; 3] {
        let strikes = pixel.outer().map(|ground| self.wall.strike(&ground));
        let first = strikes[0].layer;
        if strikes.iter().any(|strike| strike.layer != first || self.wall.is_fine(strike)) {
            return Self::mean(pixel, MANY, |ground| self.wall.colour(&self.wall.strike(ground)));
        }
        let [a, b, c, d] = strikes.map(|strike| self.wall.colour(&strike));
        [0, 1, 2].map(|i| (a[i] + b[i] + c[i] + d[i]) / 4.0)
    }

    /// The mean over `side` × `side` rays.
    fn mean(pixel: &Pixel, side: usize, colour: impl Fn(&Ground) -> [f32; 3]) -> [f32; 3] {
        let mut sum = [0.0_f32; 3];
        for j in 0..side {
            for i in 0..side {
                let part = |at: usize| (float(at) + 0.5) / float(side);
                let seen = colour(&pixel.at(part(i), part(j)));
                for (total, level) in sum.iter_mut().zip(seen) {
                    *total += level;
                }
            }
        }
        let share = narrow(1.0 / float(side * side));
        sum.map(|total| total * share)
    }

    /// Whether a place on a layer is in sight: within the frame, and nothing lies over it or stands before it.
    pub fn sees(&self, layer: usize, at: [f64; 2]) -> bool {
        let place = self.wall.layers[layer].room(at);
        self.ray_in_frame(place).is_some_and(|ground| self.wall.strike(&ground).layer == Some(layer))
    }

    /// The ray to a place in the room; `None` where that is outside the frame or somebody stands before it.
    pub fn ray_in_frame(&self, place: Room) -> Option<Ground> {
        self.camera.see_in_frame(place)?;
        let ground = self.camera.ray_to(place)?;
        self.front.strike(&ground).is_none().then_some(ground)
    }
}

/// Where the rays through a pixel's corners meet the wall: top left, top right, bottom left, bottom right.
struct Pixel {
    corners: [Ground; 4],
}

impl Pixel {
    /// The outer four of its samples.
    fn outer(&self) -> [Ground; 4] {
        let (near, far) = (0.5 / float(MANY), 1.0 - 0.5 / float(MANY));
        [(near, near), (far, near), (near, far), (far, far)].map(|(x, y)| self.at(x, y))
    }

    fn at(&self, x: f64, y: f64) -> Ground {
        let [a, b, c, d] = &self.corners;
        let (p, q, r, s) = ((1.0 - x) * (1.0 - y), x * (1.0 - y), (1.0 - x) * y, x * y);
        Ground {
            x: a.x * p + b.x * q + c.x * r + d.x * s,
            y: a.y * p + b.y * q + c.y * r + d.y * s,
            slope_x: a.slope_x * p + b.slope_x * q + c.slope_x * r + d.slope_x * s,
            slope_y: a.slope_y * p + b.slope_y * q + c.slope_y * r + d.slope_y * s,
        }
    }
}
