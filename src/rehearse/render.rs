//! From the wall to linear light in pixels: rays through every pixel, more of them where something changes.
//!
//! Rays through the corners of a pixel are followed to the wall; those within it are taken between them, which at
//! a pixel's size is exact to a thousandth of a pixel:
//!
//! ```text
//!   ┌─────────┐
//!   │ · · · · │   2 × 2 samples on plain paper or backing,
//!   │ · · · · │   4 × 4 near edges, tape, codes,
//!   │ · · · · │   4 × 4 too behind and beside what stands in front
//!   │ · · · · │
//!   └─────────┘
//! ```

use super::camera::{Camera, Ground, Room};
use super::front::Front;
use super::light::Lamp;
use super::wall::{Kind, Strike, Wall};
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
        let front = self.front.may_hide(middle, 10.0);
        let side = if front || kind == Kind::Mixed { MANY } else { FEW };
        let mut sum = [0.0_f32; 3];
        for i in 0..side * side {
            let part = |at: usize| (float(at) + 0.5) / float(side);
            let ground = pixel.at(part(i % side), part(i / side));
            let hidden = if front { self.front.strike(&ground) } else { None };
            let seen = hidden.unwrap_or_else(|| match kind {
                Kind::Plain(index) => {
                    let at = self.wall.layers[index].meet(&ground);
                    self.wall.colour(&Strike { layer: Some(index), at, left: 1.0 })
                }
                _ => self.wall.colour(&self.wall.strike(&ground)),
            });
            for (total, level) in sum.iter_mut().zip(seen) {
                *total += level;
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
