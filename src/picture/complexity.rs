//! How much drawing is in a piece: its regions, their edges, and a score.
//!
//! A **region** is a connected patch of one colour (neighbours share a side). Only edges between two colours are drawn, so only
//! they are measured: the piece's own border is no edge. At the border every colour is thought to go on straight, so a region cut
//! by the border has the drawn part of its outline, and a plain piece has none.
//!
//! The complexity of a region is the **perimetric complexity** of Attneave and Arnoult (Psychological Bulletin 53, 1956), in the
//! form of Pelli, Burns, Farell and Moore-Page (Vision Research 46, 2006): perimeter² / (4π area). A disc has 1, a square
//! 4/π = 1.27, an equilateral triangle 1.65, a stripe as long as the piece and a tenth as wide 3.2 (its two long sides).
//!
//! Regions that nobody redraws do not count: those whose area is less than [`LEAST_WIDTH`] times their whole outline, border
//! included. On a piece of an inch these are dots below 1 mm and strokes and slivers at the border below ½ mm.
//!
//! A piece's **score** counts doublings: the sum over its regions of log₂(1 + complexity), and a half more for each colour beyond
//! the first. So one colour all over has 0, a piece halved by a straight line 0.9, a disc in the middle 2, and twice as many shapes
//! have twice the score, while a thin stripe is not ten times as hard as a broad one.
//!
//! **Perimeters** come from the formula of Cauchy and Crofton: half the integral, over all directions, of how often parallel lines
//! cross the edge. Here there are 12 directions between pixels, (1,0), (3,1), (2,1), (1,1) and their mirror images, each with the
//! angles nearest to it as its weight; long straight edges come out right to −0.7 … +0.6 % at any angle. Steps between pixels cut
//! corners, and twice as long steps cut twice as much: so the same is measured with both, and twice the first minus the second has
//! no such loss (Richardson's extrapolation).
//!
//! What is left is the picture's **resolution**. Of discs, squares and equilateral triangles of a side of so many pixels, whatever
//! their angle and place, the complexity is right to: 160 and 80 px ± 2.5 %, 40 px ± 5 %, 20 px ± 12 %; on the average of all
//! angles to 1 %. Strokes 2 to 4 px wide read up to 20 % long. A piece of an inch has at most 192 px, one of the sample 96.
//!
//! ```
//! use everysquare::picture::complexity::Shapes;
//! let halves: Vec<u8> = (0..64 * 64).map(|i| u8::from(i % 64 < 32)).collect();
//! let shapes = Shapes::of(&halves, 64, 64);
//! assert_eq!(shapes.regions.len(), 2);
//! assert!((shapes.edge - 64.0).abs() < 0.5); // one straight edge of 64 px
//! ```

use std::collections::BTreeSet;
use std::f64::consts::PI;

use super::raster::Raster;
use crate::frame::float;

/// Minimum ratio of a region's area to its outline, in sides of the piece, for it to count.
///
/// A dot has a quarter of its width, a stroke half of it. Half a millimetre, the width of a pencil's line, is
/// 0.02 of a piece of an inch.
pub const LEAST_WIDTH: f64 = 0.01;
/// Score for each colour beyond the first: another pencil to fetch. Chosen by looking.
const COLOUR_WEIGHT: f64 = 0.5;
/// Maximum step between two compared pixels, along one axis.
const REACH: usize = 6;
/// Factors of [`STEPS`], and the weight of what is measured with each.
///
/// Corners are lost in proportion to the first, and 2 · 1 − 1 · 2 = 0.
const SCALES: [(usize, f64); 2] = [(1, 2.0), (2, -1.0)];
/// Steps between compared pixels in a quarter turn, by their angle; their mirror images complete the half turn.
const STEPS: [(usize, usize); 7] = [(1, 0), (3, 1), (2, 1), (1, 1), (1, 2), (1, 3), (0, 1)];

/// Connected component of one colour (neighbours share a side).
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct Region {
    /// Number of its colour.
    pub colour: u8,
    /// Area in pixels.
    pub pixels: usize,
    /// Length of its drawn edge, in pixels.
    pub perimeter: f64,
    /// Length of its part of the border, in pixels; not drawn.
    pub border: usize,
}

impl Region {
    /// Perimetric complexity: perimeter² / (4π area).
    #[must_use]
    pub fn complexity(&self) -> f64 {
        self.perimeter * self.perimeter / (4.0 * PI * float(self.pixels.max(1)))
    }
}

/// The regions of a picture or of a piece.
#[derive(Clone, Debug, PartialEq)]
pub struct Shapes {
    /// Regions, by their first pixel, row by row.
    pub regions: Vec<Region>,
    /// Length of all edges, in pixels; an edge between two regions counts once.
    pub edge: f64,
    /// Side of a square with as many pixels, in pixels.
    side: f64,
}

impl Shapes {
    /// Shapes in `width` × `height` pixels, given row by row as the number of each one's colour.
    ///
    /// Pixels that are missing at the end count as colour 0.
    #[must_use]
    pub fn of(colours: &[u8], width: usize, height: usize) -> Self {
        Self::with_ids(colours, width, height).0
    }

    /// The same, and the index of each pixel's region, row by row.
    pub(super) fn with_ids(colours: &[u8], width: usize, height: usize) -> (Self, Vec<usize>) {
        let (mut regions, ids) = regions(colours, width, height);
        let edge = measure_edges(&mut regions, &Bordered::new(&ids, width, height));
        (Self { regions, edge, side: float(width * height).sqrt() }, ids)
    }

    /// Regions that somebody redraws; where there are none, the largest.
    #[must_use]
    pub fn counted(&self) -> Vec<Region> {
        let counted: Vec<Region> =
            self.regions.iter().filter(|region| self.is_wide(region)).copied().collect();
        if counted.is_empty() {
            self.regions.iter().copied().max_by_key(|region| region.pixels).into_iter().collect()
        } else {
            counted
        }
    }

    /// Whether a region is wide enough to be redrawn.
    pub(super) fn is_wide(&self, region: &Region) -> bool {
        let outline = region.perimeter + float(region.border);
        float(region.pixels) >= LEAST_WIDTH * self.side * outline
    }

    /// Sum of the complexities of the regions that count.
    #[must_use]
    pub fn complexity(&self) -> f64 {
        self.counted().iter().map(Region::complexity).sum()
    }

    /// Score of how hard this is to redraw; 0 where one region is all there is.
    #[must_use]
    pub fn score(&self) -> f64 {
        let counted = self.counted();
        if counted.len() < 2 {
            return 0.0;
        }
        let colours: BTreeSet<u8> = counted.iter().map(|region| region.colour).collect();
        let doublings: f64 = counted.iter().map(|region| (1.0 + region.complexity()).log2()).sum();
        doublings + COLOUR_WEIGHT * float(colours.len() - 1)
    }
}

/// Connected components without their edges, and the index of each pixel's component, row by row.
fn regions(colours: &[u8], width: usize, height: usize) -> (Vec<Region>, Vec<usize>) {
    const NONE: usize = usize::MAX;
    const SIDES: usize = 4;
    let colour = |at: usize| colours.get(at).copied().unwrap_or(0);
    let mut ids = Raster { width, values: vec![NONE; width * height] };
    let mut regions = Vec::new();
    let mut open = Vec::new();
    for first in 0..ids.values.len() {
        if ids.values[first] != NONE {
            continue;
        }
        let (id, own) = (regions.len(), colour(first));
        let (mut pixels, mut border) = (0, 0);
        ids.values[first] = id;
        open.push(first);
        while let Some(at) = open.pop() {
            pixels += 1;
            border += SIDES;
            for beside in ids.beside(at) {
                border -= 1;
                if ids.values[beside] == NONE && colour(beside) == own {
                    ids.values[beside] = id;
                    open.push(beside);
                }
            }
        }
        regions.push(Region { colour: own, pixels, perimeter: 0.0, border });
    }
    (regions, ids.values)
}

/// The numbers of pixels' regions with [`REACH`] more pixels on every side, each as the nearest one inside.
struct Bordered {
    ids: Vec<usize>,
    width: usize,
    height: usize,
}

impl Bordered {
    fn new(ids: &[usize], width: usize, height: usize) -> Self {
        let inside = |at: usize, most: usize| at.saturating_sub(REACH).min(most.saturating_sub(1));
        let (wide, high) = (width + 2 * REACH, height + 2 * REACH);
        let from = |at: usize| inside(at / wide, height) * width + inside(at % wide, width);
        let ids =
            if ids.is_empty() { Vec::new() } else { (0..wide * high).map(|at| ids[from(at)]).collect() };
        Self { ids, width, height }
    }

    /// Calls `seen` with both ends of every step of (`dx`, `dy`) from one region into another whose middle lies on the picture,
    /// and with its weight: half where the middle lies on the border.
    fn each(&self, (dx, dy): (usize, usize), mirrored: bool, seen: &mut impl FnMut(usize, usize, f64)) {
        if self.ids.is_empty() {
            return;
        }
        let wide = self.width + 2 * REACH;
        for (y, of_row) in middles_inside(dy, self.height) {
            for (x, of_column) in middles_inside(dx, self.width) {
                let (from, to) = if mirrored { (x + dx, x) } else { (x, x + dx) };
                let (a, b) = (self.ids[y * wide + from], self.ids[(y + dy) * wide + to]);
                if a != b {
                    seen(a, b, of_row * of_column);
                }
            }
        }
    }
}

/// Along one axis, where a step of `step` pixels begins (counted with the border) whose middle lies on a picture of `side` pixels,
/// and its weight. The centre of pixel p lies at p + ½, so the middle of p and p + step at p + (1 + step) / 2.
fn middles_inside(step: usize, side: usize) -> impl Iterator<Item = (usize, f64)> {
    let odd = step % 2;
    let first = REACH - step.div_ceil(2);
    (0..side + odd).map(move |i| {
        let on_border = odd == 1 && (i == 0 || i == side);
        (first + i, if on_border { 0.5 } else { 1.0 })
    })
}

/// Adds to each region the length of its edge. Returns the length of all edges, in pixels.
fn measure_edges(regions: &mut [Region], bordered: &Bordered) -> f64 {
    let mut edge = 0.0;
    for (times, scale_weight) in SCALES {
        for (i, (dx, dy)) in STEPS.into_iter().enumerate() {
            let step = (dx * times, dy * times);
            // lines through pixels in this direction are 1 / length apart; a step of n such lengths sees each crossing n times
            let weight = scale_weight * angle_weight(i) / 2.0 / float(step.0).hypot(float(step.1));
            let mut seen = |a: usize, b: usize, part: f64| {
                regions[a].perimeter += part * weight;
                regions[b].perimeter += part * weight;
                edge += part * weight;
            };
            bordered.each(step, false, &mut seen);
            if dx > 0 && dy > 0 {
                bordered.each(step, true, &mut seen);
            }
        }
    }
    regions.iter_mut().for_each(|region| region.perimeter = region.perimeter.max(0.0));
    edge.max(0.0)
}

/// The angles that are nearest to a direction of [`STEPS`], in radians: half of those to the directions on both sides. Both ends
/// of the quarter turn have mirror images beyond.
fn angle_weight(i: usize) -> f64 {
    let angle = |i: usize| float(STEPS[i].1).atan2(float(STEPS[i].0));
    let before = if i == 0 { -angle(1) } else { angle(i - 1) };
    let after = if i + 1 == STEPS.len() { PI - angle(i - 1) } else { angle(i + 1) };
    (after - before) / 2.0
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_directions_fill_half_a_turn() {
        let mirrored = |(dx, dy): (usize, usize)| if dx > 0 && dy > 0 { 2.0 } else { 1.0 };
        let sum: f64 = STEPS.into_iter().enumerate().map(|(i, step)| mirrored(step) * angle_weight(i)).sum();
        assert!((sum - PI).abs() < 1e-12);
        let cut: f64 = SCALES.iter().map(|(times, weight)| float(*times) * weight).sum();
        assert!(cut.abs() < 1e-12, "what corners lose cancels");
    }

    #[test]
    fn nothing_has_no_regions_and_one_pixel_has_one() {
        assert_eq!(Shapes::of(&[], 0, 0).regions, []);
        let one = Shapes::of(&[3], 1, 1);
        assert_eq!(one.regions, [Region { colour: 3, pixels: 1, perimeter: 0.0, border: 4 }]);
        assert_eq!((one.edge, one.score()), (0.0, 0.0));
    }
}
