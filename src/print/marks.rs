//! What is drawn on a item of paper, in mm from the item's own top left corner: tick marks and codes.

use serde::Serialize;

use super::layout::Area;
use crate::frame::Point;
use crate::plan::Modules;
use crate::plan::code::{QUIET_ZONE, SIDE};

/// How long a tick mark is on a square, in mm: long enough to find with a ruler, short enough to vanish under a drawing.
pub const TICK_MM: f64 = 3.0;
/// White kept between a tick mark and the code's quiet zone, in mm.
const TICK_CLEAR_MM: f64 = 0.3;

/// A straight line from (`x1`, `y1`) to (`x2`, `y2`), in mm.
#[derive(Copy, Clone, Debug, PartialEq, Serialize)]
pub struct Line {
    /// Where it starts, to the right.
    pub x1: f64,
    /// Where it starts, down.
    pub y1: f64,
    /// Where it ends, to the right.
    pub x2: f64,
    /// Where it ends, down.
    pub y2: f64,
}

/// An upright rectangle, in mm.
#[derive(Copy, Clone, Debug, PartialEq, Serialize)]
pub struct Box {
    /// Its left edge.
    pub x: f64,
    /// Its top edge.
    pub y: f64,
    /// How wide it is.
    pub width: f64,
    /// How high it is.
    pub height: f64,
}

impl From<Area> for Box {
    fn from(area: Area) -> Self {
        Self { x: area.top_left.x, y: area.top_left.y, width: area.size.x, height: area.size.y }
    }
}

impl Box {
    /// Whether a line along x or y comes within `clear_mm` of the rectangle.
    fn meets(&self, line: &Line, clear_mm: f64) -> bool {
        let (left, right) = (line.x1.min(line.x2), line.x1.max(line.x2));
        let (top, bottom) = (line.y1.min(line.y2), line.y1.max(line.y2));
        right > self.x - clear_mm
            && left < self.x + self.width + clear_mm
            && bottom > self.y - clear_mm
            && top < self.y + self.height + clear_mm
    }
}

/// Tick marks at the quarter points of every side of a square, from `start` to `end` mm inwards (negative: outwards).
///
/// ```text
///   ┌──┬──┬──┬──┐
///   ├           ┤      three a side, at ¼, ½ and ¾ of it
///   ├           ┤
///   ├           ┤
///   └──┴──┴──┴──┘
/// ```
#[must_use]
pub fn quarter_ticks(side_mm: f64, start: f64, end: f64) -> Vec<Line> {
    let at = |along: f64| {
        let (near, far) = ((start, end), (side_mm - start, side_mm - end));
        [
            Line { x1: along, y1: near.0, x2: along, y2: near.1 },
            Line { x1: far.0, y1: along, x2: far.1, y2: along },
            Line { x1: along, y1: far.0, x2: along, y2: far.1 },
            Line { x1: near.0, y1: along, x2: near.1, y2: along },
        ]
    };
    [0.25, 0.5, 0.75].into_iter().flat_map(|part| at(part * side_mm)).collect()
}

/// The tick marks of a square of paper: [`TICK_MM`] long, shorter where the code's quiet zone is in the way, and left out
/// where less than a millimetre would remain.
#[must_use]
pub fn square_ticks(side_mm: f64, quiet: &Box) -> Vec<Line> {
    let shortest_first = [1.0, 1.5, 2.0, 2.5, TICK_MM].map(|length| quarter_ticks(side_mm, 0.0, length));
    let count = shortest_first[0].len();
    let longest = |i: usize| {
        shortest_first.iter().rev().filter_map(|ticks| ticks.get(i)).find(|t| !quiet.meets(t, TICK_CLEAR_MM))
    };
    (0..count).filter_map(longest).copied().collect()
}

/// A code as it is drawn.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Code {
    /// Side of a module.
    pub module: f64,
    /// Left edge of the outer modules.
    pub x: f64,
    /// Top edge of the outer modules.
    pub y: f64,
    /// Its dark modules, merged: column, row, columns and rows of each rectangle.
    pub dark: Vec<[usize; 4]>,
}

impl Code {
    /// A code with its outer top left corner at (`x`, `y`) mm.
    #[must_use]
    pub fn at(modules: &Modules, module: f64, x: f64, y: f64) -> Self {
        Self { module, x, y, dark: rectangles(modules) }
    }

    /// A code with its middle at a place.
    #[must_use]
    pub fn centred(modules: &Modules, module: f64, x: f64, y: f64) -> Self {
        let half = code_side(module) / 2.0;
        Self::at(modules, module, x - half, y - half)
    }

    /// The code and the quiet zone around it.
    #[must_use]
    pub fn quiet_zone(&self) -> Box {
        quiet_zone(Point::<crate::frame::SquareMm>::new(self.x, self.y), self.module)
    }
}

/// Side of a code, in mm.
#[must_use]
pub fn code_side(module_mm: f64) -> f64 {
    crate::frame::float(SIDE) * module_mm
}

/// The rectangle that must stay white around a code with its outer corner at a place, and the code in it
/// (ISO/IEC 18004: four modules on every side).
#[must_use]
pub fn quiet_zone(top_left: Point<crate::frame::SquareMm>, module_mm: f64) -> Box {
    let white = crate::frame::float(QUIET_ZONE) * module_mm;
    let side = code_side(module_mm) + 2.0 * white;
    Box { x: top_left.x - white, y: top_left.y - white, width: side, height: side }
}

/// The dark modules as few rectangles that do not overlap: runs along rows, equal runs of rows below each other in one.
/// Drawn in one path, so that no hairline shows where two meet.
#[must_use]
pub fn rectangles(modules: &Modules) -> Vec<[usize; 4]> {
    let mut done: Vec<[usize; 4]> = Vec::new();
    for row in 0..SIDE {
        for (column, width) in runs(modules, row) {
            let above = done.iter_mut().find(|[c, r, w, h]| *c == column && *w == width && *r + *h == row);
            match above {
                Some([.., height]) => *height += 1,
                None => done.push([column, row, width, 1]),
            }
        }
    }
    done
}

/// First column and length of every run of dark modules in a row.
fn runs(modules: &Modules, row: usize) -> Vec<(usize, usize)> {
    let mut runs = Vec::new();
    let mut column = 0;
    while column < SIDE {
        let length = (column..SIDE).take_while(|c| modules.dark(*c, row)).count();
        if length > 0 {
            runs.push((column, length));
        }
        column += length + 1;
    }
    runs
}
