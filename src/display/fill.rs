//! Inpainting of a code from what surrounds it on its square.
//!
//! ```text
//!        top
//!     ┌───────┐
//! left│ ▣   ▣ │right
//!     │ ▣     │
//!     └───────┘
//!       bottom
//! ```
//!
//! Colours are interpolated smoothly from each edge of the box to the one opposite (a Coons patch, Coons
//! 1967), each edge's colours the mean of a strip beside it; the crayon's grain is mirrored in from beside
//! the box.

use image::RgbImage;

use crate::frame::{ceil_index, float, floor_index, round_byte, round_index};
use crate::plan::Printed;
use crate::plan::code::{QUIET_ZONE, SIDE};

/// Width painted out beyond the quiet zone, in mm: the fine line around it and the blur of a photo.
const BEYOND_MM: f64 = 0.8;
/// Width of the strip whose mean gives an edge's colours, in mm: a few strokes of a crayon.
const STRIP_MM: f64 = 3.0;
/// Half width of the box filter whose residual is the grain, in mm.
const GRAIN_MM: f64 = 2.0;

/// Rectangle of a picture in whole pixels; `right` and `bottom` are exclusive.
#[derive(Copy, Clone, Debug, PartialEq, Eq)]
struct Part {
    left: usize,
    top: usize,
    right: usize,
    bottom: usize,
}

/// Paints the code out of the picture of an upright square. A picture that is hardly larger than its code stays as it is.
pub fn fill(square: &mut RgbImage, printed: &Printed) {
    let side = usize::try_from(square.width().min(square.height())).unwrap_or(0);
    let per_mm = float(side) / printed.grid.square_mm;
    let margin = float(QUIET_ZONE) * printed.module_mm + BEYOND_MM;
    let code = float(SIDE) * printed.module_mm;
    let from = |mm: f64| floor_index((mm - margin) * per_mm).min(side);
    let to = |mm: f64| ceil_index((mm + code + margin) * per_mm).min(side);
    let (x, y) = (printed.code_top_left.x, printed.code_top_left.y);
    let part = Part { left: from(x), top: from(y), right: to(x), bottom: to(y) };
    let surroundings = Surroundings { square, side, part, strip: round_index(STRIP_MM * per_mm).max(1) };
    if part.right - part.left < 2 || (part.right - part.left) * 2 > side {
        return;
    }
    let painted = surroundings.painted(round_index(GRAIN_MM * per_mm).max(1));
    let width = part.right - part.left;
    for (i, colour) in painted.into_iter().enumerate() {
        let pixel = |at: usize| u32::try_from(at).unwrap_or(u32::MAX);
        square.put_pixel(pixel(part.left + i % width), pixel(part.top + i / width), image::Rgb(colour));
    }
}

type Colour = [f64; 3];

struct Surroundings<'a> {
    square: &'a RgbImage,
    side: usize,
    part: Part,
    strip: usize,
}

impl Surroundings<'_> {
    fn at(&self, x: usize, y: usize) -> Colour {
        let start = (y * self.side + x) * 3;
        let pixel = self.square.as_raw().get(start..start + 3).unwrap_or(&[0; 3]);
        [0, 1, 2].map(|i| f64::from(pixel[i]))
    }

    /// Mean colour of a rectangle of the square; `None` where nothing is left of it.
    fn mean(&self, part: Part) -> Option<Colour> {
        let (right, bottom) = (part.right.min(self.side), part.bottom.min(self.side));
        let places = (part.top..bottom).flat_map(|y| (part.left..right).map(move |x| (x, y)));
        let (mut sum, mut count) = ([0.0; 3], 0);
        for (x, y) in places {
            let own = self.at(x, y);
            sum.iter_mut().zip(own).for_each(|(sum, own)| *sum += own);
            count += 1;
        }
        (count > 0).then(|| sum.map(|sum| sum / float(count)))
    }

    /// Colours along the two horizontal edges (`across`), or along the two vertical ones, at each pixel.
    fn edges(&self, across: bool) -> [Vec<Colour>; 2] {
        let Part { left, top, right, bottom } = self.part;
        let (from, to) = if across { (left, right) } else { (top, bottom) };
        let edge = |first: bool| -> Vec<Option<Colour>> {
            (from..to).map(|at| self.mean(self.beside(across, first, at))).collect()
        };
        let (one, other) = (edge(true), edge(false));
        let either = |a: &[Option<Colour>], b: &[Option<Colour>]| -> Vec<Colour> {
            a.iter().zip(b).map(|(a, b)| a.or(*b).unwrap_or([255.0; 3])).collect()
        };
        [either(&one, &other), either(&other, &one)]
    }

    /// Rectangle of the strip beside one edge whose mean is the colour at a pixel of it.
    fn beside(&self, across: bool, first: bool, at: usize) -> Part {
        let Part { left, top, right, bottom } = self.part;
        let (near, far) = (at.saturating_sub(self.strip), at + self.strip + 1);
        let strip = |before: usize, after: usize| {
            if first { (before.saturating_sub(self.strip), before) } else { (after, after + self.strip) }
        };
        if across {
            let (top, bottom) = strip(top, bottom);
            Part { left: near, top, right: far, bottom }
        } else {
            let (left, right) = strip(left, right);
            Part { left, top: near, right, bottom: far }
        }
    }

    /// New colours of the box, row by row.
    fn painted(&self, reach: usize) -> Vec<[u8; 3]> {
        let Part { left, top, right, bottom } = self.part;
        let ([upper, lower], [first, last]) = (self.edges(true), self.edges(false));
        let (width, height) = (right - left, bottom - top);
        let middle = |a: Colour, b: Colour| [0, 1, 2].map(|i| (a[i] + b[i]) / 2.0);
        let corners = [
            [middle(upper[0], first[0]), middle(upper[width - 1], last[0])],
            [middle(lower[0], first[height - 1]), middle(lower[width - 1], last[height - 1])],
        ];
        let mut painted = Vec::with_capacity(width * height);
        for y in 0..height {
            for x in 0..width {
                let (u, v) = ((float(x) + 0.5) / float(width), (float(y) + 0.5) / float(height));
                let grain = self.grain(x, y, reach);
                let colour = [0, 1, 2].map(|i| {
                    let along = upper[x][i] * (1.0 - v) + lower[x][i] * v;
                    let across = first[y][i] * (1.0 - u) + last[y][i] * u;
                    let [above, below] = corners.map(|[a, b]| a[i] * (1.0 - u) + b[i] * u);
                    let (low, high) = (along.min(across), along.max(across));
                    let smooth = (along + across - above * (1.0 - v) - below * v).clamp(low, high);
                    round_byte((smooth + grain[i]).clamp(0.0, 255.0))
                });
                painted.push(colour);
            }
        }
        painted
    }

    /// Grain: residual of the mean around, mirrored in from the side where there is more room.
    fn grain(&self, x: usize, y: usize, reach: usize) -> Colour {
        let Part { left, top, right, .. } = self.part;
        let from_left = left >= self.side - right;
        let column =
            if from_left { left.checked_sub(x + 1 + reach) } else { Some(2 * right - left - x + reach) };
        let Some(column) = column.filter(|column| column + reach < self.side) else { return [0.0; 3] };
        let row = top + y;
        let around = Part {
            left: column.saturating_sub(reach),
            top: row.saturating_sub(reach),
            right: column + reach + 1,
            bottom: row + reach + 1,
        };
        let (own, mean) = (self.at(column, row), self.mean(around).unwrap_or([0.0; 3]));
        let mut grain = [0.0; 3];
        // an edge of the drawing is no grain
        grain
            .iter_mut()
            .zip(own)
            .zip(mean)
            .for_each(|((grain, own), mean)| *grain = (own - mean).clamp(-24.0, 24.0));
        grain
    }
}
