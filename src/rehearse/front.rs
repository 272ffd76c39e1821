//! What stands between the camera and the wall: people and a ladder, as flat shapes in a plane of their own.

use rand::RngExt;
use rand_chacha::ChaCha8Rng;

use super::camera::{Camera, Ground};
use super::chance::{Purpose, stream};
use super::options::Options;
use crate::frame::float;
use crate::plan::Printed;

/// A stroke with round ends: all places within `radius` of the line from `from` to `to`.
#[derive(Copy, Clone, Debug)]
struct Limb {
    from: [f64; 2],
    to: [f64; 2],
    radius: f64,
    colour: [f32; 3],
}

impl Limb {
    /// The square of the distance from the line.
    fn distance2(&self, x: f64, y: f64) -> f64 {
        let along = [self.to[0] - self.from[0], self.to[1] - self.from[1]];
        let off = [x - self.from[0], y - self.from[1]];
        let long2 = along[0] * along[0] + along[1] * along[1];
        let t =
            if long2 > 0.0 { ((off[0] * along[0] + off[1] * along[1]) / long2).clamp(0.0, 1.0) } else { 0.0 };
        let miss = [off[0] - t * along[0], off[1] - t * along[1]];
        miss[0] * miss[0] + miss[1] * miss[1]
    }
}

/// All that stands in front of the wall.
#[derive(Clone, Debug, Default)]
pub(super) struct Front {
    /// How far in front of the wall, in mm.
    depth: f64,
    limbs: Vec<Limb>,
    /// Left, top, right, bottom of all of them.
    bounds: [f64; 4],
}

/// How far below the wall's lowest squares the floor is, in mm.
const FLOOR_MM: f64 = 800.0;

impl Front {
    /// Stands people and the ladder near the wall's sides.
    pub fn stand(printed: &Printed, options: &Options, camera: &Camera) -> Self {
        let mut rng = stream(options.seed, Purpose::Front);
        let size = printed.grid.size();
        let away = -camera.position[2];
        let depth = (0.2 * away).min(600.0);
        let nearer = 1.0 - depth / away;
        // A place in the plane of the shapes that hides a place on the wall.
        let hides = |x: f64| camera.position[0] + (x - camera.position[0]) * nearer;
        let floor = size.y + FLOOR_MM;
        let mut limbs = Vec::new();
        let beside = |rng: &mut ChaCha8Rng| {
            let in_from_side = rng.random_range(-0.16..0.1) * size.x;
            hides(if rng.random() { in_from_side } else { size.x - in_from_side })
        };
        for _ in 0..options.people {
            let x = beside(&mut rng);
            person(&mut limbs, x, floor, &mut rng);
        }
        if options.ladder {
            ladder(&mut limbs, beside(&mut rng), floor);
        }
        let mut bounds = [f64::INFINITY, f64::INFINITY, f64::NEG_INFINITY, f64::NEG_INFINITY];
        for limb in &limbs {
            for end in [limb.from, limb.to] {
                bounds[0] = bounds[0].min(end[0] - limb.radius);
                bounds[1] = bounds[1].min(end[1] - limb.radius);
                bounds[2] = bounds[2].max(end[0] + limb.radius);
                bounds[3] = bounds[3].max(end[1] + limb.radius);
            }
        }
        Self { depth, limbs, bounds }
    }

    /// Whether a ray, or one beside it by up to `margin` mm, may strike something.
    pub fn may_hide(&self, ground: &Ground, margin: f64) -> bool {
        let [x, y] = self.at(ground);
        let [left, top, right, bottom] = self.bounds;
        let near = x > left - margin && y > top - margin && x < right + margin && y < bottom + margin;
        near && self.limbs.iter().any(|limb| limb.distance2(x, y) < (limb.radius + margin).powi(2))
    }

    fn at(&self, ground: &Ground) -> [f64; 2] {
        [ground.x - self.depth * ground.slope_x, ground.y - self.depth * ground.slope_y]
    }

    /// The linear colour of what a ray strikes in front of the wall.
    pub fn strike(&self, ground: &Ground) -> Option<[f32; 3]> {
        let [x, y] = self.at(ground);
        self.limbs
            .iter()
            .rev()
            .find(|limb| limb.distance2(x, y) <= limb.radius * limb.radius)
            .map(|limb| limb.colour)
    }
}

fn person(limbs: &mut Vec<Limb>, x: f64, floor: f64, rng: &mut ChaCha8Rng) {
    let tall = rng.random_range(1050.0..1500.0);
    let cloth = [rng.random_range(0.02..0.3), rng.random_range(0.02..0.3), rng.random_range(0.02..0.3)];
    let hair = [0.03, 0.025, 0.02];
    let at = |right: f64, up: f64| [x + right * tall, floor - up * tall];
    let mut limb =
        |from, to, radius: f64, colour| limbs.push(Limb { from, to, radius: radius * tall, colour });
    limb(at(-0.06, 0.0), at(-0.05, 0.45), 0.045, [0.03, 0.04, 0.07]);
    limb(at(0.06, 0.0), at(0.05, 0.45), 0.045, [0.03, 0.04, 0.07]);
    limb(at(-0.13, 0.48), at(-0.11, 0.76), 0.03, cloth);
    limb(at(0.11, 0.76), at(0.2, 0.6), 0.03, cloth);
    limb(at(0.0, 0.52), at(0.0, 0.74), 0.1, cloth);
    limb(at(0.0, 0.9), at(0.0, 0.94), 0.06, hair);
}

fn ladder(limbs: &mut Vec<Limb>, x: f64, floor: f64) {
    let metal = [0.35, 0.36, 0.38];
    let rung = |i: usize| floor - 280.0 * float(i);
    for i in 1..8 {
        limbs.push(Limb {
            from: [x - 200.0, rung(i)],
            to: [x + 200.0, rung(i)],
            radius: 14.0,
            colour: metal,
        });
    }
    for side in [-200.0, 200.0] {
        limbs.push(Limb { from: [x + side, floor], to: [x + side, rung(8)], radius: 22.0, colour: metal });
    }
}
