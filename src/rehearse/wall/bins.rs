//! Which layers can be met where: the wall's plane in small bins, each with its layers from the topmost down.

use super::SHADOW_MM;
use super::layer::{Body, Layer};
use crate::frame::{ceil_index, float, floor_index};
use crate::rehearse::boards::Boards;
use crate::rehearse::camera::{Camera, Ground};

/// Side of a bin in mm: small against a paper, large against a pixel.
const BIN_MM: f64 = 4.0;
/// How far bins reach beyond the cells, in mm: the ring of cards with what hangs askew in it.
const AROUND_MM: f64 = 120.0;

/// What is to be expected in a bin.
#[derive(Copy, Clone, Debug, PartialEq, Eq)]
pub(in crate::rehearse) enum Kind {
    /// Nothing but the backing.
    Bare,
    /// One paper, away from its edges and its code.
    Plain(usize),
    /// Anything.
    Mixed,
}

#[derive(Clone, Debug)]
pub(super) struct Bins {
    across: usize,
    down: usize,
    lists: Vec<Vec<usize>>,
    kinds: Vec<Kind>,
    /// The largest side in mm of a pixel on the wall.
    pub pixel_mm: f64,
}

impl Bins {
    /// Sorts layers into bins.
    pub fn sort(layers: &[Layer], boards: &Boards, camera: &Camera) -> Self {
        let size = boards.size();
        let across = ceil_index((size[0] + 2.0 * AROUND_MM) / BIN_MM);
        let down = ceil_index((size[1] + 2.0 * AROUND_MM) / BIN_MM);
        let (slope, footprint) = obliqueness(boards, camera);
        let mut bins = Self {
            pixel_mm: footprint,
            across,
            down,
            lists: vec![Vec::new(); across * down],
            kinds: vec![Kind::Bare; across * down],
        };
        let mut closed = vec![false; across * down];
        for (index, layer) in layers.iter().enumerate().rev() {
            let margin = layer.bend.most() * slope + 1.5 * footprint + BIN_MM * 0.71;
            bins.add(index, layer, margin, &mut closed);
        }
        bins
    }

    fn add(&mut self, index: usize, layer: &Layer, margin: f64, closed: &mut [bool]) {
        let [x, y] = layer.place.centre;
        let reach = layer.place.width.hypot(layer.place.height) / 2.0 + margin + SHADOW_MM;
        let range = |at: f64, count: usize| {
            let low = floor_index((at - reach + AROUND_MM) / BIN_MM).min(count);
            low..ceil_index((at + reach + AROUND_MM) / BIN_MM).min(count)
        };
        for row in range(y, self.down) {
            for column in range(x, self.across) {
                let bin = row * self.across + column;
                if closed[bin] {
                    continue;
                }
                let middle = |i: usize| (float(i) + 0.5) * BIN_MM - AROUND_MM;
                let at = layer.place.within(middle(column), middle(row));
                let outside = layer.outside(at);
                if outside > margin + SHADOW_MM {
                    continue;
                }
                let inside = outside < -margin;
                let plain = inside && self.lists[bin].is_empty() && calm(layer, at, margin);
                self.kinds[bin] = if plain { Kind::Plain(index) } else { Kind::Mixed };
                self.lists[bin].push(index);
                closed[bin] = inside;
            }
        }
    }

    fn bin(&self, ground: &Ground) -> Option<usize> {
        let (x, y) = ((ground.x + AROUND_MM) / BIN_MM, (ground.y + AROUND_MM) / BIN_MM);
        if !(x >= 0.0 && y >= 0.0) {
            return None;
        }
        let (column, row) = (floor_index(x), floor_index(y));
        (column < self.across && row < self.down).then_some(row * self.across + column)
    }

    /// The layers that a ray can strike or whose shadow it can meet, topmost first.
    pub fn candidates(&self, ground: &Ground) -> &[usize] {
        self.bin(ground).map_or(&[], |bin| &self.lists[bin])
    }

    pub fn kind(&self, ground: &Ground) -> Kind {
        self.bin(ground).map_or(Kind::Bare, |bin| self.kinds[bin])
    }
}

/// Whether a bin on a paper is clear of its code and of what was painted over it.
fn calm(layer: &Layer, at: [f64; 2], margin: f64) -> bool {
    match &layer.body {
        Body::Sheet(sheet) => {
            let blot = if sheet.scribble.is_some() { 3.5 } else { 0.0 };
            sheet.code.distance(at[0], at[1]) > margin + blot
        }
        Body::Tape(_) => false,
    }
}

/// The steepest slope at which the camera sees the wall, and the largest size in mm of a pixel on it.
fn obliqueness(boards: &Boards, camera: &Camera) -> (f64, f64) {
    let (mut slope, mut footprint) = (0.1_f64, 0.1_f64);
    for [x, y] in boards.sounded() {
        if let Some(ground) = camera.ray_to([x, y, 0.0]) {
            slope = slope.max(ground.slope_x.hypot(ground.slope_y));
        }
        // A pixel's longer side on the wall is larger than the root of its area by the slope.
        if let Some(px) = camera.px_per_mm(x, y) {
            footprint = footprint.max(1.0 / px);
        }
    }
    let slope = slope.min(6.0);
    (slope, (footprint * (1.0 + slope)).min(20.0))
}
