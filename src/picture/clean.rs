//! Cleaning: specks and slivers that nobody can draw at the piece's size vanish into their neighbours.
//!
//! ```text
//!   ████████          ████████     kept is what lies within reach of a disc of the minimum size that fits into the
//!   ████████▂▂▂▂  ▶   ████████▂    area: corners stay sharp, a hair at an edge loses its end,
//!   ████████          ████████     a speck or a hair that holds no such disc is gone
//! ```
//!
//! What has gone is given to the areas around it, ring by ring from outside; where several touch it, to the
//! one whose pencil looks most like its own. That is repeated until nothing changes, so that cleaning what is
//! clean changes nothing.

use super::colour::Seen;
use super::raster::Raster;
use crate::frame::{ceil_index, float, floor_index};

/// Minimum width of a thing on the piece, in mm: that of a pencil's line. Common practice, no source.
pub const LEAST_MM: f64 = 1.0;
/// Maximum distance of an area's corners from a disc that fits it, in radii of the disc.
///
/// The tip of a corner of 30 degrees lies 2.9 radii from the last disc.
const CORNER_RADII: f64 = 3.0;
/// Maximum number of rounds, whatever is left: two or three are usual.
const MOST_ROUNDS: usize = 12;
/// Chamfer distance of two pixels side by side; 7 diagonally (the weights of Gunilla Borgefors, 1986,
/// Computer Vision, Graphics, and Image Processing 34:344).
const BESIDE: u16 = 5;
const ASLANT: u16 = 7;

/// Minimum size of an area that stays.
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct Least {
    /// Minimum width at its widest, in pixels.
    pub width_px: f64,
    /// Minimum area, in pixels.
    pub area_px: f64,
}

impl Least {
    /// Minimum size of [`LEAST_MM`], and of an area in square millimetres, on pieces of `piece_mm` with
    /// `piece_px` pixels a side.
    #[must_use]
    pub fn on_piece(piece_mm: f64, piece_px: usize, area_mm2: f64) -> Self {
        let px_per_mm = float(piece_px) / piece_mm;
        Self { width_px: LEAST_MM * px_per_mm, area_px: area_mm2 * px_per_mm * px_per_mm }
    }
}

impl Least {
    /// Minimum width in whole pixels; none where all that has a pixel is wide enough.
    fn pixels(self) -> Option<usize> {
        (self.width_px >= 1.5).then(|| floor_index(self.width_px).max(2))
    }
}

/// Cleans a picture of pencils' numbers; `pencils` are their colours, by number.
pub fn clean(numbers: &mut Raster<u8>, pencils: &[Seen], least: Least) {
    let Some(across) = least.pixels() else { return };
    for _ in 0..MOST_ROUNDS {
        let mut kept = middles(numbers, across);
        if kept.iter().all(|kept| !kept) {
            return; // all of it is too fine: nothing to hold on to
        }
        grow(numbers, &mut kept, ceil_index(CORNER_RADII * least.width_px / 2.0));
        drop_small(numbers, &mut kept, least.area_px);
        if !give_away(numbers, kept, pencils) {
            return;
        }
    }
}

/// Whether each pixel is the centre of a disc of `across` pixels that lies within one area (an erosion).
fn middles(numbers: &Raster<u8>, across: usize) -> Vec<bool> {
    let wide = numbers.width;
    let radius = float(across.div_ceil(2)) - 0.5;
    let middles: Vec<bool> =
        distances(numbers, radius).into_iter().map(|far| far >= radius - ROUNDING).collect();
    if across % 2 == 1 {
        return middles;
    }
    // what is an even number of pixels wide has its middle between pixels: four of them are equally far from the edge
    let mut in_fours = vec![false; middles.len()];
    for place in 0..middles.len().saturating_sub(wide + 1) {
        let four = [place, place + 1, place + wide, place + wide + 1];
        if place % wide + 1 < wide && four.iter().all(|one| middles[*one]) {
            four.iter().for_each(|one| in_fours[*one] = true);
        }
    }
    in_fours
}

/// Maximum error of the distances below, in pixels.
const ROUNDING: f64 = 0.02;

/// Distance transform: the distance of each pixel's centre from the edge of its area, in pixels; clipped at
/// about `most`.
fn distances(numbers: &Raster<u8>, most: f64) -> Vec<f64> {
    let (wide, high) = (numbers.width, numbers.height());
    let most = u16::try_from(ceil_index(most * f64::from(BESIDE)) + 1).unwrap_or(u16::MAX / 2);
    let mut far = vec![most; numbers.values.len()];
    for (place, far) in far.iter_mut().enumerate() {
        let (x, own) = (place % wide, numbers.values[place]);
        let at_border = x == 0 || x + 1 == wide || place < wide || place + wide >= wide * high;
        if at_border || numbers.beside(place).any(|beside| numbers.values[beside] != own) {
            *far = 0;
        }
    }
    for place in 0..far.len() {
        far[place] = nearer(&far, place, wide, true);
    }
    for place in (0..far.len()).rev() {
        far[place] = nearer(&far, place, wide, false);
    }
    // from the middle of the outermost pixel it is half a pixel to the edge
    far.into_iter().map(|far| f64::from(far) / f64::from(BESIDE) + 0.5).collect()
}

/// Chamfer distance of a place by way of its neighbours that come before it, or after it.
fn nearer(far: &[u16], place: usize, wide: usize, before: bool) -> u16 {
    let x = place % wide;
    let (left, right) = (x > 0, x + 1 < wide);
    let by_way =
        |to: Option<usize>, step: u16| to.and_then(|to| far.get(to)).map_or(u16::MAX, |far| far + step);
    let ways = if before {
        [
            by_way(left.then(|| place - 1), BESIDE),
            by_way(place.checked_sub(wide), BESIDE),
            by_way(if left { place.checked_sub(wide + 1) } else { None }, ASLANT),
            by_way(if right && place >= wide { Some(place - wide + 1) } else { None }, ASLANT),
        ]
    } else {
        [
            by_way(right.then_some(place + 1), BESIDE),
            by_way(Some(place + wide), BESIDE),
            by_way(right.then_some(place + wide + 1), ASLANT),
            by_way(left.then_some(place + wide - 1), ASLANT),
        ]
    };
    ways.into_iter().fold(far[place], u16::min)
}

/// Geodesic dilation: adds to what is kept all of its own area that lies within `steps` steps.
fn grow(numbers: &Raster<u8>, kept: &mut [bool], steps: usize) {
    let mut rim: Vec<usize> = (0..kept.len())
        .filter(|place| kept[*place] && numbers.beside(*place).any(|beside| !kept[beside]))
        .collect();
    for step in 0..steps {
        let mut next = Vec::new();
        for place in rim {
            let own = numbers.values[place];
            let mut take = |to: usize| {
                if !kept[to] && numbers.values[to] == own {
                    kept[to] = true;
                    next.push(to);
                }
            };
            numbers.beside(place).for_each(&mut take);
            // beside and aslant in turns is nearly round; aslant never leaps over a corner where two others touch
            if step % 2 == 1 {
                let joined =
                    |to: &usize| numbers.corners(place, *to).into_iter().any(|at| numbers.values[at] == own);
                numbers.aslant(place).filter(joined).for_each(&mut take);
            }
        }
        if next.is_empty() {
            return;
        }
        rim = next;
    }
}

/// Drops connected components of fewer than `least` pixels.
fn drop_small(numbers: &Raster<u8>, kept: &mut [bool], least: f64) {
    if least <= 1.0 {
        return;
    }
    let mut seen = vec![false; kept.len()];
    for start in 0..kept.len() {
        if seen[start] || !kept[start] {
            continue;
        }
        let own = numbers.values[start];
        let (mut area, mut at) = (vec![start], 0);
        seen[start] = true;
        while let Some(place) = area.get(at).copied() {
            at += 1;
            for to in numbers.beside(place).filter(|to| kept[*to] && numbers.values[*to] == own) {
                if !std::mem::replace(&mut seen[to], true) {
                    area.push(to);
                }
            }
        }
        if float(area.len()) < least {
            area.iter().for_each(|place| kept[*place] = false);
        }
    }
}

/// Gives all that is not kept to the areas around it. Returns whether there was any.
pub(super) fn give_away(numbers: &mut Raster<u8>, mut kept: Vec<bool>, pencils: &[Seen]) -> bool {
    let colour = |number: u8| pencils.get(usize::from(number)).copied().unwrap_or_default();
    let mut rim: Vec<usize> = (0..kept.len())
        .filter(|place| !kept[*place] && numbers.beside(*place).any(|beside| kept[beside]))
        .collect();
    let mut any = false;
    while !rim.is_empty() {
        let given: Vec<(usize, u8)> = rim
            .iter()
            .filter_map(|place| {
                let own = numbers.values[*place];
                let takers = numbers
                    .beside(*place)
                    .filter(|beside| kept[*beside])
                    .map(|beside| numbers.values[beside]);
                let apart = |number: &u8| colour(own).apart_squared(colour(*number));
                // the end of a hair does not go back to what it grew from
                let takers = takers.filter(|number| *number != own);
                Some((*place, takers.min_by(|a, b| apart(a).total_cmp(&apart(b)).then(a.cmp(b)))?))
            })
            .collect();
        any |= !given.is_empty();
        for (place, number) in &given {
            numbers.values[*place] = *number;
            kept[*place] = true;
        }
        let around = given.iter().flat_map(|(place, _)| numbers.beside(*place));
        let mut next: Vec<usize> = around.filter(|place| !kept[*place]).collect();
        next.sort_unstable();
        next.dedup();
        rim = next;
    }
    any
}
