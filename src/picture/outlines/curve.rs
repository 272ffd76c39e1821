//! From a polygon to a curve: corners stay corners, everything else bends from the middle of one side to the middle of the next.

use super::polygon::Polygon;
use crate::frame::{PicturePx, Point};

/// A curve of straight lines and cubic Bézier curves.
#[derive(Clone, Debug, PartialEq)]
pub struct Curve {
    /// Where it starts.
    pub start: Point<PicturePx>,
    /// How it goes on.
    pub steps: Vec<Step>,
}

/// A part of a curve, from where the one before it ended.
#[derive(Copy, Clone, Debug, PartialEq)]
pub enum Step {
    /// Straight to a point.
    Line(Point<PicturePx>),
    /// A cubic Bézier curve: its two control points, its end.
    Bezier([Point<PicturePx>; 3]),
}

/// Tension of a vertex from which it stays a corner: there a curve would be more bent than a quarter of a circle.
const CORNER: f64 = 1.0;
/// Least tension of a curve; below it, bends are hardly seen.
const LEAST_TENSION: f64 = 0.55;
/// Side of the square around a vertex that a curve touches, in pixels: half a pixel leaves discs the area of their pixels, to 0.1 px of
/// their radius; with a whole one they lose 0.17 px.
const NEAR: f64 = 0.5;
/// How far beyond a window lines are left as they are, in pixels: a stroke along them does not reach in.
const BEYOND_PX: f64 = 2.0;
/// Straight pieces of a flattened Bézier curve.
const FLAT_PARTS: u32 = 16;

/// The curve of a polygon.
pub(super) fn of(polygon: &Polygon) -> Curve {
    let bent = |three| bent(three, polygon.angular);
    let vertices = &polygon.vertices;
    let count = vertices.len();
    if !polygon.closed {
        let start = vertices[0];
        let inner = vertices.windows(3).flat_map(|three| bent([three[0], three[1], three[2]]));
        let begin = vertices.get(1).map(|second| Step::Line(start.towards(*second, 0.5)));
        let end = Step::Line(vertices[count - 1]);
        return Curve { start, steps: begin.into_iter().chain(inner).chain([end]).collect() };
    }
    let around = (0..count)
        .flat_map(|i| bent([vertices[(i + count - 1) % count], vertices[i], vertices[(i + 1) % count]]));
    Curve { start: vertices[count - 1].towards(vertices[0], 0.5), steps: around.collect() }
}

/// From the middle of one side to the middle of the next, around a vertex.
fn bent([before, vertex, after]: [Point<PicturePx>; 3], angular: bool) -> Vec<Step> {
    let end = vertex.towards(after, 0.5);
    if angular || tension(before, vertex, after, 1.0) >= CORNER {
        return vec![Step::Line(vertex), Step::Line(end)];
    }
    let tension = tension(before, vertex, after, NEAR).clamp(LEAST_TENSION, CORNER);
    let part = 0.5 + tension / 2.0;
    vec![Step::Bezier([before.towards(vertex, part), after.towards(vertex, part), end])]
}

/// How far a curve has to reach towards a vertex to touch the square of a side in pixels around it, as a part of the way; 1 and more where
/// it would be no curve.
fn tension(before: Point<PicturePx>, vertex: Point<PicturePx>, after: Point<PicturePx>, square: f64) -> f64 {
    let (chord, side) = (after - before, vertex - before);
    let reach = (chord.x * side.y - chord.y * side.x).abs();
    // how far the square reaches in the direction across the chord, in the same measure
    let pixel = square * (chord.x.abs() + chord.y.abs());
    if pixel <= 0.0 {
        return CORNER; // there and back
    }
    4.0 / 3.0 * (1.0 - (pixel / reach.max(f64::MIN_POSITIVE)).min(1.0))
}

/// Whether a point lies beyond a side of a window: left, top, right or bottom.
fn is_beyond(point: Point<PicturePx>, side: usize, [left, top, right, bottom]: [f64; 4]) -> bool {
    match side {
        0 => point.x < left - BEYOND_PX,
        1 => point.y < top - BEYOND_PX,
        2 => point.x > right + BEYOND_PX,
        _ => point.y > bottom + BEYOND_PX,
    }
}

impl Curve {
    /// The same from its end to its start.
    #[must_use]
    pub fn backwards(&self) -> Self {
        let mut from = self.start;
        let mut steps: Vec<Step> = Vec::with_capacity(self.steps.len());
        for step in &self.steps {
            let (turned, end) = match *step {
                Step::Line(end) => (Step::Line(from), end),
                Step::Bezier([one, other, end]) => (Step::Bezier([other, one, from]), end),
            };
            steps.push(turned);
            from = end;
        }
        steps.reverse();
        Self { start: from, steps }
    }

    /// The same where it runs through a window (left, top, right, bottom), and as few lines as possible beyond it: whatever stays on one
    /// side of the window may go straight from its first point to its last.
    #[must_use]
    pub fn shortened_beyond(&self, window: [f64; 4]) -> Self {
        let mut from = self.start;
        let mut steps: Vec<Step> = Vec::new();
        // on which sides of the window all of the line lies that was written last, where it lies beyond
        let mut last = [false; 4];
        for step in &self.steps {
            let (points, end) = match *step {
                Step::Line(end) => (vec![from, end], end),
                Step::Bezier([one, other, end]) => (vec![from, one, other, end], end),
            };
            let own = [0, 1, 2, 3].map(|side| points.iter().all(|point| is_beyond(*point, side, window)));
            let both = [0, 1, 2, 3].map(|side| own[side] && last[side]);
            if both.contains(&true) {
                steps.pop();
                steps.push(Step::Line(end));
                last = both;
            } else {
                steps.push(if own.contains(&true) { Step::Line(end) } else { *step });
                last = own;
            }
            from = end;
        }
        Self { start: self.start, steps }
    }

    /// Points along the curve, close enough to each other to stand for it.
    #[must_use]
    pub fn flattened(&self) -> Vec<Point<PicturePx>> {
        let mut points = vec![self.start];
        for step in &self.steps {
            let from = points[points.len() - 1];
            match *step {
                Step::Line(end) => points.push(end),
                Step::Bezier([one, other, end]) => points.extend((1..=FLAT_PARTS).map(|i| {
                    let part = f64::from(i) / f64::from(FLAT_PARTS);
                    // De Casteljau
                    let (a, b, c) =
                        (from.towards(one, part), one.towards(other, part), other.towards(end, part));
                    let (d, e) = (a.towards(b, part), b.towards(c, part));
                    d.towards(e, part)
                })),
            }
        }
        points
    }

    /// The least upright rectangle that holds all its points, those that control its bends among them: left, top, right, bottom.
    #[must_use]
    pub fn bounds(&self) -> [f64; 4] {
        let points = self.steps.iter().flat_map(|step| match *step {
            Step::Line(end) => vec![end],
            Step::Bezier(points) => points.to_vec(),
        });
        let start = [self.start.x, self.start.y, self.start.x, self.start.y];
        points.fold(start, |[left, top, right, bottom], point| {
            [left.min(point.x), top.min(point.y), right.max(point.x), bottom.max(point.y)]
        })
    }
}
