//! Seek: the code of the square that hangs in one cell, if there is one.
//!
//! The camera says where the code should be, for each of the four ways the square may be turned; the square may hang a
//! centimetre off and five degrees askew. For each way a patch around that place is straightened, every place of it is
//! rated as the middle of a finder pattern, and the places where three ratings stand together as in a code are looked at
//! closely by [`Identifier`].

use super::identify::{Found, Identifier};
use super::place::{Layout, Site, pose_of};
use super::pose::Pose;
use super::reading::Camera;
use crate::frame::{float, floor_index, round_byte};
use crate::photo::Luma;
use crate::plan::Turn;

/// How far from its place a square's code is looked for, in mm.
pub const REACH_MM: f64 = 12.0;
/// Directions looked along, in degrees from the cell's.
const ASKEW: [f64; 5] = [0.0, -2.5, 2.5, -5.0, 5.0];
/// Places rated a module.
const PER_MODULE: usize = 2;
/// Modules from a code's middle to that of a finder pattern, along both axes.
const FINDER: f64 = 7.0;
/// Half the width of a finder pattern with the light ring around it, in modules.
const RING: f64 = 4.5;
/// At most so many places are looked at closely, for each way a square may be turned.
const CLOSER: usize = 5;
/// The least sum of three ratings for a closer look; a clean code has 2.7, chance in a drawing seldom 1.2.
const PROMISING: f32 = 1.0;

/// What was found in a cell.
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct Sought {
    /// How the square is turned.
    pub turn: Turn,
    /// Its code, named or not.
    pub found: Found,
}

/// The best code in a cell; `None` where there is none to be seen.
#[must_use]
pub fn seek(
    luma: &Luma,
    identifier: &Identifier<'_>,
    camera: &Camera,
    layout: &Layout,
    site: Site,
) -> Option<Sought> {
    let mut best: Option<Sought> = None;
    for turn in Turn::ALL {
        let Some(expected) = pose_of(camera, layout.code_corners(site, turn)) else { continue };
        if !luma.holds(expected.centre, 0.0) {
            continue;
        }
        for rough in promising(luma, &expected, layout) {
            let Some(found) = identifier.identify(luma, rough) else { continue };
            if best.is_none_or(|b| found.rank() > b.found.rank()) {
                best = Some(Sought { turn, found });
            }
            if found.sure() {
                return best;
            }
        }
    }
    best
}

/// Places in a patch around the expected pose that look like a code's.
fn promising(luma: &Luma, expected: &Pose, layout: &Layout) -> Vec<Pose> {
    let reach = (REACH_MM / layout.module * float(PER_MODULE)).ceil() / float(PER_MODULE);
    let half = reach + FINDER * 1.1 + RING + 1.0;
    let places = 2 * floor_index(half * float(PER_MODULE));
    let half = float(places) / 2.0 / float(PER_MODULE);
    let step = 1.0 / float(PER_MODULE);
    let first = expected.centre + (expected.u + expected.v) * (step / 2.0 - half);
    let mut patch = Vec::new();
    luma.lattice(first, [expected.u * step, expected.v * step], [places, places], &mut patch);
    let ratings = Ratings::new(&patch, places);
    ratings.best_codes(reach, half).into_iter().map(|place| place.pose(expected)).collect()
}

/// A place that looks like a code's middle, in modules from the patch's middle, and askew by `degrees`.
#[derive(Copy, Clone)]
struct Place {
    rating: f32,
    x: f64,
    y: f64,
    degrees: f64,
}

impl Place {
    fn pose(&self, expected: &Pose) -> Pose {
        let (sin, cos) = self.degrees.to_radians().sin_cos();
        Pose {
            centre: expected.centre + expected.u * self.x + expected.v * self.y,
            u: expected.u * cos + expected.v * sin,
            v: expected.v * cos - expected.u * sin,
        }
    }
}

/// How much each place of a patch looks like the middle of a finder pattern: the correlation with 3, 5, 7 and 9 modules
/// wide squares in turn dark, light, dark and light, −1 … 1. Nearly the same for patterns a few degrees askew.
struct Ratings {
    places: usize,
    rating: Vec<f32>,
}

impl Ratings {
    fn new(patch: &[f32], places: usize) -> Self {
        let sums = Sums::new(patch, places);
        let width = places + 1;
        let mut rating = vec![0.0; width * width];
        let margin = 9;
        for y in margin..width.saturating_sub(margin) {
            for x in margin..width.saturating_sub(margin) {
                rating[y * width + x] = sums.rate(x, y);
            }
        }
        Self { places, rating }
    }

    fn at(&self, x: i64, y: i64) -> f32 {
        let width = self.places + 1;
        match (usize::try_from(x), usize::try_from(y)) {
            (Ok(x), Ok(y)) if x < width && y < width => self.rating[y * width + x],
            _ => 0.0,
        }
    }

    /// The places, best first, where three ratings stand as in a code; none within two modules of a better one.
    fn best_codes(&self, reach: f64, half: f64) -> Vec<Place> {
        let per = float(PER_MODULE);
        let reach = i64::try_from(floor_index(reach * per)).unwrap_or(0);
        let middle = i64::try_from(self.places / 2).unwrap_or(0);
        let mut promising: Vec<Place> = Vec::new();
        for degrees in ASKEW {
            let (sin, cos) = degrees.to_radians().sin_cos();
            let corner = |x: f64, y: f64| {
                let (x, y) = (x * FINDER * per, y * FINDER * per);
                [crate::frame::round_signed(x * cos - y * sin), crate::frame::round_signed(x * sin + y * cos)]
            };
            let corners = [corner(-1.0, -1.0), corner(1.0, -1.0), corner(-1.0, 1.0)];
            for y in middle - reach..=middle + reach {
                for x in middle - reach..=middle + reach {
                    let rating: f32 = corners.iter().map(|[dx, dy]| self.at(x + dx, y + dy)).sum();
                    if rating > PROMISING {
                        let place = |k: i64| super::place::whole(k) / per - half;
                        promising.push(Place { rating, x: place(x), y: place(y), degrees });
                    }
                }
            }
        }
        promising.sort_by(|a, b| b.rating.total_cmp(&a.rating));
        let mut kept: Vec<Place> = Vec::new();
        for place in promising {
            if kept.iter().all(|k| (k.x - place.x).abs().max((k.y - place.y).abs()) > 2.0) {
                kept.push(place);
                if kept.len() == CLOSER {
                    break;
                }
            }
        }
        kept
    }
}

/// Sums over rectangles of a patch, of levels and of their squares.
struct Sums {
    width: usize,
    level: Vec<u32>,
    square: Vec<u32>,
}

impl Sums {
    fn new(patch: &[f32], places: usize) -> Self {
        let width = places + 1;
        let (mut level, mut square) = (vec![0_u32; width * width], vec![0_u32; width * width]);
        for y in 0..places {
            let (mut row, mut row_of_squares) = (0, 0);
            for x in 0..places {
                let grey = u32::from(round_byte(f64::from(patch[y * places + x])));
                row += grey;
                row_of_squares += grey * grey;
                let at = (y + 1) * width + x + 1;
                level[at] = level[at - width] + row;
                square[at] = square[at - width].wrapping_add(row_of_squares);
            }
        }
        Self { width, level, square }
    }

    /// The sum over the square of side `2 * half` about the corner (x, y) between four places.
    fn square_sum(&self, sums: &[u32], x: usize, y: usize, half: usize) -> f32 {
        let at = |x: usize, y: usize| sums[y * self.width + x];
        let sum = at(x + half, y + half)
            .wrapping_add(at(x - half, y - half))
            .wrapping_sub(at(x + half, y - half))
            .wrapping_sub(at(x - half, y + half));
        super::book::single(f64::from(sum))
    }

    fn rate(&self, x: usize, y: usize) -> f32 {
        let [a3, a5, a7, a9] = [3, 5, 7, 9].map(|half| self.square_sum(&self.level, x, y, half));
        let (dark, light) = (a3 + a7 - a5, a5 - a3 + a9 - a7);
        let mean = a9 / 324.0;
        let power = self.square_sum(&self.square, x, y, 9) / 324.0 - mean * mean;
        if power < 4.0 {
            return 0.0;
        }
        // 132 places of the 324 are dark, 192 light
        (light / 192.0 - dark / 132.0) * (192.0_f32 * 132.0).sqrt() / 324.0 / power.sqrt()
    }
}
