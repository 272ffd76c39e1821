//! What stands between the camera and the wall: people and a ladder, as flat shapes in a plane of their own.
//!
//! People are of many kinds, so that whoever looks for them in a photo has no single colour to look for: skin and hair in
//! several tones, clothes plain or striped, dark, white as paper or in a pencil's colour; some raise an arm over the squares,
//! some face the camera.

use rand::RngExt;
use rand_chacha::ChaCha8Rng;

use super::boards::Boards;
use super::camera::{Camera, Ground};
use super::chance::{Purpose, stream, stream_of};
use super::options::Options;
use crate::frame::float;

/// A stroke with round ends: all places within `radius` of the line from `from` to `to`.
#[derive(Copy, Clone, Debug)]
struct Limb {
    from: [f64; 2],
    to: [f64; 2],
    radius: f64,
    look: Look,
    /// Whether it is a person's.
    person: bool,
}

/// What a limb looks like.
#[derive(Copy, Clone, Debug)]
struct Look {
    colour: [f32; 3],
    /// Another colour in stripes, and the width of a stripe in mm.
    stripes: Option<([f32; 3], f64)>,
}

impl Look {
    fn plain(colour: [f32; 3]) -> Self {
        Self { colour, stripes: None }
    }

    /// The colour at a height: stripes lie level.
    fn at(&self, y: f64) -> [f32; 3] {
        match self.stripes {
            Some((other, wide)) if (y / wide).rem_euclid(2.0) < 1.0 => other,
            _ => self.colour,
        }
    }
}

/// Linear colours of skin, hair and of clothes that look like paper or like a pencil's stroke; from memory, no source.
const SKINS: [[f32; 3]; 5] =
    [[0.62, 0.42, 0.33], [0.50, 0.31, 0.21], [0.34, 0.19, 0.11], [0.19, 0.10, 0.06], [0.09, 0.05, 0.035]];
const HAIRS: [[f32; 3]; 4] =
    [[0.03, 0.025, 0.02], [0.10, 0.055, 0.03], [0.42, 0.29, 0.13], [0.30, 0.29, 0.28]];
const WHITE_CLOTH: [f32; 3] = [0.82, 0.82, 0.80];
const PENCIL_CLOTHS: [[f32; 3]; 5] =
    [[0.55, 0.05, 0.05], [0.04, 0.14, 0.50], [0.06, 0.30, 0.09], [0.80, 0.52, 0.05], [0.30, 0.10, 0.38]];

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
    pub fn stand(boards: &Boards, options: &Options, camera: &Camera) -> Self {
        let mut rng = stream(options.seed, Purpose::Front);
        let [wide, high] = boards.size();
        let away = -camera.position[2];
        let depth = (0.2 * away).min(600.0);
        let nearer = 1.0 - depth / away;
        // A place in the plane of the shapes that hides a place on the wall.
        let hides = |x: f64| camera.position[0] + (x - camera.position[0]) * nearer;
        let floor = high + FLOOR_MM;
        let mut limbs = Vec::new();
        let beside = |rng: &mut ChaCha8Rng| {
            let in_from_side = rng.random_range(-0.16..0.1) * wide;
            hides(if rng.random() { in_from_side } else { wide - in_from_side })
        };
        for number in 1..=options.people {
            let x = beside(&mut rng);
            let which = u64::try_from(number).unwrap_or(u64::MAX);
            let mut clothes = stream_of(options.seed, Purpose::Clothes, which);
            person(&mut limbs, x, floor, &mut rng, &mut clothes);
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
        let [_, y] = self.at(ground);
        self.first(ground).map(|limb| limb.look.at(y))
    }

    /// Whether a ray strikes a person.
    pub fn strikes_person(&self, ground: &Ground) -> bool {
        self.first(ground).is_some_and(|limb| limb.person)
    }

    fn first(&self, ground: &Ground) -> Option<&Limb> {
        let [x, y] = self.at(ground);
        let [left, top, right, bottom] = self.bounds;
        if !(x >= left && y >= top && x <= right && y <= bottom) {
            return None;
        }
        self.limbs.iter().rev().find(|limb| limb.distance2(x, y) <= limb.radius * limb.radius)
    }
}

/// One person; `rng` says where and how tall, `clothes` what they wear, so that neither changes the other.
fn person(limbs: &mut Vec<Limb>, x: f64, floor: f64, rng: &mut ChaCha8Rng, clothes: &mut ChaCha8Rng) {
    let tall = rng.random_range(1050.0..1500.0);
    let dark = [rng.random_range(0.02..0.3), rng.random_range(0.02..0.3), rng.random_range(0.02..0.3)];
    let skin = Look::plain(SKINS[clothes.random_range(0..SKINS.len())]);
    let hair = Look::plain(HAIRS[clothes.random_range(0..HAIRS.len())]);
    let trousers = Look::plain([0.03, 0.04, 0.07]);
    let pencil = PENCIL_CLOTHS[clothes.random_range(0..PENCIL_CLOTHS.len())];
    let cloth = match clothes.random_range(0..5) {
        0 => Look::plain(WHITE_CLOTH),
        1 => Look::plain(pencil),
        2 => Look { colour: WHITE_CLOTH, stripes: Some((pencil, clothes.random_range(15.0..45.0))) },
        3 => Look { colour: dark, stripes: Some((pencil, clothes.random_range(15.0..45.0))) },
        _ => Look::plain(dark),
    };
    let at = |right: f64, up: f64| [x + right * tall, floor - up * tall];
    let mut limb = |from, to, radius: f64, look| {
        limbs.push(Limb { from, to, radius: radius * tall, look, person: true });
    };
    limb(at(-0.06, 0.0), at(-0.05, 0.45), 0.045, trousers);
    limb(at(0.06, 0.0), at(0.05, 0.45), 0.045, trousers);
    let mut arm = |side: f64, raised: bool| {
        let (shoulder, elbow, hand) = if raised {
            (at(0.11 * side, 0.76), at(0.2 * side, 0.9), at(0.16 * side, 1.08))
        } else {
            (at(0.11 * side, 0.76), at(0.15 * side, 0.62), at(0.16 * side, 0.48))
        };
        limb(shoulder, elbow, 0.03, cloth);
        limb(elbow, hand, 0.024, skin);
        limb(hand, hand, 0.032, skin);
    };
    arm(-1.0, clothes.random_range(0..3) == 0);
    arm(1.0, clothes.random_range(0..3) == 0);
    limb(at(0.0, 0.52), at(0.0, 0.74), 0.1, cloth);
    limb(at(0.0, 0.8), at(0.0, 0.86), 0.03, skin);
    limb(at(0.0, 0.9), at(0.0, 0.94), 0.06, hair);
    if clothes.random() {
        limb(at(0.0, 0.885), at(0.0, 0.915), 0.048, skin);
    }
}

fn ladder(limbs: &mut Vec<Limb>, x: f64, floor: f64) {
    let look = Look::plain([0.35, 0.36, 0.38]);
    let rung = |i: usize| floor - 280.0 * float(i);
    for i in 1..8 {
        limbs.push(Limb {
            from: [x - 200.0, rung(i)],
            to: [x + 200.0, rung(i)],
            radius: 14.0,
            look,
            person: false,
        });
    }
    for side in [-200.0, 200.0] {
        let (from, to) = ([x + side, floor], [x + side, rung(8)]);
        limbs.push(Limb { from, to, radius: 22.0, look, person: false });
    }
}
