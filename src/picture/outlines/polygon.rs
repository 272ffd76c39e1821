//! From an arc to the polygon with the fewest sides that stays within half a pixel of all its corners.
//!
//! A side may go straight from corner i to corner j where a line from i, within half a pixel of each corner between (in the greater of
//! the distances along x and y), ends in j: the directions that each corner leaves open are a cone, which narrows from corner to corner.
//! Of polygons with equally few sides, the one is taken whose sides lie best, by the root mean square of the corners' distances times the
//! side's length. Last, every vertex moves to where the lines of least squares of its two sides meet, at most half a pixel each way.

use super::corner;
use super::cracks::Arc;
use crate::frame::{PicturePx, Point, Vector};

/// The vertices of an arc's polygon. The ends of an open one are those of the arc.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Polygon {
    pub vertices: Vec<Point<PicturePx>>,
    pub closed: bool,
    /// Whether every vertex stays a corner.
    pub angular: bool,
}

/// How far a side may be off the arc's corners, in pixels along x or y.
const OFF_PX: f64 = 0.5;
/// Allowance for rounding in the last bits of a direction.
const ROUNDING: f64 = 1e-9;

/// The polygon of an arc; along the picture's own edge with all its corners, so that nothing is cut from the picture.
pub(super) fn of(arc: &Arc) -> Polygon {
    if arc.sides.contains(&None) {
        return turns(arc);
    }
    if !arc.closed {
        let chain = Chain::new(arc.corners.iter().copied().map(corner).collect());
        return Polygon { vertices: adjusted(&chain, &chain.sides(), false), closed: false, angular: false };
    }
    // cut where a first polygon, that begins anywhere, has a vertex half way round
    let open = &arc.corners[1..];
    let first = Chain::new(arc.corners.iter().copied().map(corner).collect()).sides();
    let start = first.get(first.len() / 2).copied().unwrap_or(0) % open.len();
    let around = (0..=open.len()).map(|i| corner(arc.corners[(start + i) % open.len()]));
    let chain = Chain::new(around.collect());
    Polygon { vertices: adjusted(&chain, &chain.sides(), true), closed: true, angular: false }
}

/// The polygon that turns where the arc does.
fn turns(arc: &Arc) -> Polygon {
    let count = arc.corners.len();
    let turns = |i: usize| {
        let before = if i == 0 { arc.corners[count - 2] } else { arc.corners[i - 1] };
        let after = if i == count - 1 { arc.corners[1] } else { arc.corners[i + 1] };
        before.0 != after.0 && before.1 != after.1
    };
    let ends = |i: usize| !arc.closed && (i == 0 || i == count - 1);
    let upto = if arc.closed { count - 1 } else { count };
    let vertices = (0..upto).filter(|i| ends(*i) || turns(*i)).map(|i| corner(arc.corners[i]));
    Polygon { vertices: vertices.collect(), closed: arc.closed, angular: true }
}

/// Corners in a row, with the sums that lines of least squares are worked out from.
struct Chain {
    points: Vec<Point<PicturePx>>,
    /// Sums over the points before each: 1, x, y, x², xy, y², from the first point.
    sums: Vec<[f64; 6]>,
}

impl Chain {
    fn new(points: Vec<Point<PicturePx>>) -> Self {
        let mut sums = vec![[0.0; 6]];
        let mut sum = [0.0; 6];
        for point in &points {
            let Vector { x, y, .. } = *point - points[0];
            for (sum, own) in sum.iter_mut().zip([1.0, x, y, x * x, x * y, y * y]) {
                *sum += own;
            }
            sums.push(sum);
        }
        Self { points, sums }
    }

    /// The vertices, as places of points, from the first to the last.
    fn sides(&self) -> Vec<usize> {
        let last = self.points.len() - 1;
        // the fewest sides to each point, how well they lie, and where the last of them begins
        let mut best: Vec<(usize, f64, usize)> = vec![(usize::MAX, 0.0, 0); self.points.len()];
        best[0] = (0, 0.0, 0);
        for from in 0..last {
            let (sides, lies, _) = best[from];
            let mut cone = Cone::default();
            let (_, ahead) = best.split_at_mut(from + 1);
            for (to, best) in (from + 1..).zip(ahead) {
                let step = self.points[to] - self.points[from];
                if cone.holds(step) {
                    let own = (sides + 1, lies + self.lies(from, to), from);
                    if (own.0, own.1) < (best.0, best.1) {
                        *best = own;
                    }
                }
                if !cone.narrow(step) {
                    break;
                }
            }
        }
        let mut vertices = vec![last];
        while let Some(at) = vertices.last().copied().filter(|at| *at > 0) {
            vertices.push(best[at].2);
        }
        vertices.reverse();
        vertices
    }

    /// Length of a side times the root mean square of the distances of the points along it.
    fn lies(&self, from: usize, to: usize) -> f64 {
        let start = self.points[from] - self.points[0];
        let side = self.points[to] - self.points[from];
        let [n, sx, sy, sxx, sxy, syy] = self.between(from, to);
        // sum of (cross product of the side with the point's step from its start)²
        let (a, b) = (-side.y, side.x);
        let c = -(a * start.x + b * start.y);
        let sum =
            a * a * sxx + 2.0 * a * b * sxy + b * b * syy + 2.0 * a * c * sx + 2.0 * b * c * sy + n * c * c;
        (sum.max(0.0) / n).sqrt()
    }

    fn between(&self, from: usize, to: usize) -> [f64; 6] {
        let (before, upto) = (self.sums[from], self.sums[to + 1]);
        [0, 1, 2, 3, 4, 5].map(|i| upto[i] - before[i])
    }

    /// The line of least squares through the points from one to another.
    fn line(&self, from: usize, to: usize) -> Line {
        let [n, sx, sy, sxx, sxy, syy] = self.between(from, to);
        let (mx, my) = (sx / n, sy / n);
        let (a, b, c) = (sxx / n - mx * mx, sxy / n - mx * my, syy / n - my * my);
        // the direction in which the points scatter most: the larger eigenvalue's
        let angle = (2.0 * b).atan2(a - c) / 2.0;
        let (x, y) = (-angle.sin(), angle.cos());
        Line { x, y, off: x * mx + y * my }
    }
}

/// Directions that are still open from a point: between the two, from the first clockwise to the second.
#[derive(Default)]
struct Cone(Option<[Vector<PicturePx>; 2]>);

impl Cone {
    fn holds(&self, step: Vector<PicturePx>) -> bool {
        self.0.is_none_or(|[first, last]| {
            cross(first, step) >= -ROUNDING && cross(step, last) >= -ROUNDING && dot(first, step) > 0.0
        })
    }

    /// Leaves open what comes within [`OFF_PX`] of a point; false where nothing is left.
    fn narrow(&mut self, to: Vector<PicturePx>) -> bool {
        if to.x.abs() <= OFF_PX && to.y.abs() <= OFF_PX {
            return true;
        }
        let around = [(-1.0, -1.0), (1.0, -1.0), (1.0, 1.0), (-1.0, 1.0)];
        let corners = around.map(|(x, y)| Vector::new(to.x + x * OFF_PX, to.y + y * OFF_PX));
        let outermost = |clockwise: f64| {
            corners
                .into_iter()
                .fold(to, |best, own| if cross(best, own) * clockwise > 0.0 { own } else { best })
        };
        let own = [outermost(-1.0), outermost(1.0)];
        let Some([first, last]) = self.0 else {
            self.0 = Some(own);
            return true;
        };
        let first = if cross(first, own[0]) > 0.0 { own[0] } else { first };
        let last = if cross(last, own[1]) < 0.0 { own[1] } else { last };
        self.0 = Some([first, last]);
        cross(first, last) >= -ROUNDING && dot(first, last) > 0.0
    }
}

/// The line of all points with x · `x` + y · `y` = `off`, from the chain's first point; (`x`, `y`) has the length 1.
struct Line {
    x: f64,
    y: f64,
    off: f64,
}

/// The vertices, moved to where the lines of their sides meet.
fn adjusted(chain: &Chain, vertices: &[usize], closed: bool) -> Vec<Point<PicturePx>> {
    let lines: Vec<Line> = vertices.windows(2).map(|side| chain.line(side[0], side[1])).collect();
    let at = |place: usize| chain.points[vertices[place]];
    let moved = |place: usize, before: &Line, after: &Line| {
        let from = at(place) - chain.points[0];
        at(place) + meeting(from, before, after)
    };
    let inner = (1..lines.len()).map(|place| moved(place, &lines[place - 1], &lines[place]));
    match (closed, lines.first(), lines.last()) {
        (true, Some(first), Some(last)) => std::iter::once(moved(0, last, first)).chain(inner).collect(),
        _ => std::iter::once(at(0)).chain(inner).chain([at(vertices.len() - 1)]).collect(),
    }
}

/// The step from a vertex to the place that is nearest to two lines, by least squares, at most [`OFF_PX`] each way.
fn meeting(from: Vector<PicturePx>, one: &Line, other: &Line) -> Vector<PicturePx> {
    // what each line is off, as a function of the step: x · step.x + y · step.y − off
    let rest = |line: &Line| line.off - line.x * from.x - line.y * from.y;
    let (p, q) = (rest(one), rest(other));
    let cost = |step: Vector<PicturePx>| {
        let off = |line: &Line, rest: f64| (line.x * step.x + line.y * step.y - rest).powi(2);
        off(one, p) + off(other, q)
    };
    let determinant = one.x * other.y - one.y * other.x;
    if determinant.abs() > ROUNDING {
        let x = (p * other.y - q * one.y) / determinant;
        let y = (one.x * q - other.x * p) / determinant;
        if x.abs() <= OFF_PX && y.abs() <= OFF_PX {
            return Vector::new(x, y);
        }
    }
    // along each side of the pixel the cost is a parabola
    let (a, b, c) = (
        one.x * one.x + other.x * other.x,
        one.x * one.y + other.x * other.y,
        one.y * one.y + other.y * other.y,
    );
    let (u, v) = (one.x * p + other.x * q, one.y * p + other.y * q);
    let along = |own: f64, fixed: f64, rest: f64| {
        if own > ROUNDING { ((rest - b * fixed) / own).clamp(-OFF_PX, OFF_PX) } else { 0.0 }
    };
    let sides = [-OFF_PX, OFF_PX]
        .into_iter()
        .flat_map(|fixed| [Vector::new(fixed, along(c, fixed, v)), Vector::new(along(a, fixed, u), fixed)]);
    sides.min_by(|one, other| cost(*one).total_cmp(&cost(*other))).unwrap_or(Vector::new(0.0, 0.0))
}

fn cross(a: Vector<PicturePx>, b: Vector<PicturePx>) -> f64 {
    a.x * b.y - a.y * b.x
}

fn dot(a: Vector<PicturePx>, b: Vector<PicturePx>) -> f64 {
    a.x * b.x + a.y * b.y
}

#[cfg(test)]
mod tests {
    use super::*;

    fn arc(corners: Vec<(usize, usize)>) -> Arc {
        let closed = corners.first() == corners.last();
        Arc { corners, closed, sides: [Some(0), Some(1)] }
    }

    /// Steps to the right and down, so many of each in turn.
    fn steps(runs: &[(usize, usize)]) -> Vec<(usize, usize)> {
        let mut corners = vec![(0, 0)];
        for (right, down) in runs {
            for (dx, dy) in [(1, 0)].repeat(*right).into_iter().chain([(0, 1)].repeat(*down)) {
                let (x, y) = corners[corners.len() - 1];
                corners.push((x + dx, y + dy));
            }
        }
        corners
    }

    #[test]
    fn a_stair_is_one_straight_line() {
        // from the middle of a run to that of another
        for (first, run) in [(1, (1, 1)), (1, (2, 1)), (4, (7, 1)), (2, (4, 1))] {
            let runs: Vec<_> =
                [(first, 1)].into_iter().chain([run; 30]).chain([(run.0 - first, 0)]).collect();
            let polygon = of(&arc(steps(&runs)));
            assert_eq!(polygon.vertices.len(), 2, "{run:?}: {:?}", polygon.vertices);
        }
    }

    #[test]
    fn a_corner_is_a_vertex_where_it_is() {
        let polygon = of(&arc(steps(&[(20, 15)])));
        assert_eq!(polygon.vertices, [(0.0, 0.0), (20.0, 0.0), (20.0, 15.0)].map(|(x, y)| Point::new(x, y)));
    }

    #[test]
    fn a_closed_square_has_four_corners() {
        let mut corners = steps(&[(9, 9)]);
        corners.extend((0..9).rev().map(|x| (x, 9)));
        corners.extend((0..9).rev().map(|y| (0, y)));
        let polygon = of(&arc(corners));
        assert!(polygon.closed);
        assert_eq!(polygon.vertices.len(), 4, "{:?}", polygon.vertices);
    }
}
