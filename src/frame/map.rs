//! Projective maps (homographies) from one frame into another.

use std::marker::PhantomData;

use nalgebra::{DMatrix, Matrix2, Matrix3, SMatrix, SVector, Vector3};

use super::{Frame, Point, Vector};

/// Projective map (homography) from frame `A` into frame `B`: a 3 × 3 matrix up to scale, acting on columns
/// (x, y, 1).
///
/// Maps compose only where the frame between them is the same:
///
/// ```compile_fail
/// use everysquare::frame::{DisplayPx, Map, PhotoPx, StraightPx, WallMm};
/// let a = Map::<WallMm, StraightPx>::scale_then_shift(1.0, 0.0, 0.0);
/// let b = Map::<PhotoPx, DisplayPx>::scale_then_shift(1.0, 0.0, 0.0);
/// let _ = a.then(&b); // the lens is missing between the two
/// ```
///
/// and take only points of the frame they start from:
///
/// ```compile_fail
/// use everysquare::frame::{Map, PhotoPx, Point, StraightPx, WallMm};
/// let wall_to_straight = Map::<WallMm, StraightPx>::scale_then_shift(1.0, 0.0, 0.0);
/// let _ = wall_to_straight.apply(Point::<PhotoPx>::new(1.0, 2.0));
/// ```
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct Map<A: Frame, B: Frame> {
    matrix: Matrix3<f64>,
    frames: PhantomData<(A, B)>,
}

impl<A: Frame, B: Frame> Map<A, B> {
    /// Map with the given matrix, scaled by a positive number so that its last entry is ±1 where that entry
    /// is not about 0.
    ///
    /// What lies in front is what the matrix takes to a positive third coordinate; the sign is the caller's.
    /// `None` where an entry is not finite or the matrix cannot be inverted.
    #[must_use]
    pub fn from_matrix(matrix: Matrix3<f64>) -> Option<Self> {
        let largest = matrix.amax();
        if !largest.is_finite() || largest == 0.0 {
            return None;
        }
        let last = matrix[(2, 2)].abs();
        let by = if last > largest * 1e-9 { last } else { largest };
        let matrix = matrix / by;
        let map = Self { matrix, frames: PhantomData };
        matrix.try_inverse().map(|_| map)
    }

    /// Similarity without rotation: `p` ↦ (`scale`·x + `right`, `scale`·y + `down`).
    #[must_use]
    pub fn scale_then_shift(scale: f64, right: f64, down: f64) -> Self {
        Self { matrix: Matrix3::new(scale, 0.0, right, 0.0, scale, down, 0.0, 0.0, 1.0), frames: PhantomData }
    }

    /// Affine map that takes the origin to `origin` and the unit steps along x and y to `x` and `y`.
    #[must_use]
    pub fn affine(origin: Point<B>, x: Vector<B>, y: Vector<B>) -> Self {
        Self {
            matrix: Matrix3::new(x.x, y.x, origin.x, x.y, y.y, origin.y, 0.0, 0.0, 1.0),
            frames: PhantomData,
        }
    }

    /// Map from four correspondences, in order. `None` where three of either side lie on a line.
    ///
    /// Direct linear transformation with the last entry fixed to 1 after a shift of both to their first
    /// point.
    #[must_use]
    pub fn from_four(from: [Point<A>; 4], to: [Point<B>; 4]) -> Option<Self> {
        let (from_0, to_0) = (from[0], to[0]);
        let mut left = SMatrix::<f64, 8, 8>::zeros();
        let mut right = SVector::<f64, 8>::zeros();
        for (i, (a, b)) in from.iter().zip(&to).enumerate() {
            let (a, b) = (*a - from_0, *b - to_0);
            let x = [a.x, a.y, 1.0, 0.0, 0.0, 0.0, -a.x * b.x, -a.y * b.x];
            let y = [0.0, 0.0, 0.0, a.x, a.y, 1.0, -a.x * b.y, -a.y * b.y];
            for j in 0..8 {
                left[(2 * i, j)] = x[j];
                left[(2 * i + 1, j)] = y[j];
            }
            right[2 * i] = b.x;
            right[2 * i + 1] = b.y;
        }
        let h = left.lu().solve(&right)?;
        let between = Matrix3::new(h[0], h[1], h[2], h[3], h[4], h[5], h[6], h[7], 1.0);
        let back = Matrix3::new(1.0, 0.0, to_0.x, 0.0, 1.0, to_0.y, 0.0, 0.0, 1.0);
        let away = Matrix3::new(1.0, 0.0, -from_0.x, 0.0, 1.0, -from_0.y, 0.0, 0.0, 1.0);
        Self::from_matrix(back * between * away)
    }

    /// Map that fits four correspondences or more best: least squares of the algebraic error in coordinates about the means of both sides,
    /// in units of their spread (the normalised direct linear transformation; Hartley 1997). `None` where there are fewer than four, or
    /// they lie on a line.
    #[must_use]
    pub fn fitted(pairs: &[(Point<A>, Point<B>)]) -> Option<Self> {
        if pairs.len() < 4 {
            return None;
        }
        let from = normal(pairs.iter().map(|(a, _)| [a.x, a.y]))?;
        let to = normal(pairs.iter().map(|(_, b)| [b.x, b.y]))?;
        let mut rows = DMatrix::<f64>::zeros(2 * pairs.len(), 9);
        for (i, (a, b)) in pairs.iter().enumerate() {
            let (a, b) = (from * Vector3::new(a.x, a.y, 1.0), to * Vector3::new(b.x, b.y, 1.0));
            let along_x = [a.x, a.y, 1.0, 0.0, 0.0, 0.0, -a.x * b.x, -a.y * b.x, -b.x];
            let along_y = [0.0, 0.0, 0.0, a.x, a.y, 1.0, -a.x * b.y, -a.y * b.y, -b.y];
            for j in 0..9 {
                rows[(2 * i, j)] = along_x[j];
                rows[(2 * i + 1, j)] = along_y[j];
            }
        }
        let own = (rows.transpose() * rows).symmetric_eigen();
        let mut by_value: Vec<usize> = (0..9).collect();
        by_value.sort_by(|a, b| own.eigenvalues[*a].total_cmp(&own.eigenvalues[*b]));
        let [least, next, ..] = by_value.as_slice() else { return None };
        if own.eigenvalues[*next] < 1e-12 {
            return None; // more than one map fits
        }
        let h = own.eigenvectors.column(*least);
        let between = Matrix3::new(h[0], h[1], h[2], h[3], h[4], h[5], h[6], h[7], h[8]);
        let matrix = to.try_inverse()? * between * from;
        // what was seen lies in front
        let (first, _) = pairs.first()?;
        let depth = (matrix * Vector3::new(first.x, first.y, 1.0)).z;
        Self::from_matrix(if depth < 0.0 { -matrix } else { matrix })
    }

    /// Image of `p`. A point on or behind the horizon has none and gives coordinates that are not finite.
    #[must_use]
    pub fn apply(&self, p: Point<A>) -> Point<B> {
        let q = self.matrix * Vector3::new(p.x, p.y, 1.0);
        if q.z <= 0.0 {
            return Point::new(f64::NAN, f64::NAN);
        }
        Point::new(q.x / q.z, q.y / q.z)
    }

    /// Jacobian at `p`: the images of the unit steps along x and along y.
    #[must_use]
    pub fn steps_at(&self, p: Point<A>) -> [Vector<B>; 2] {
        let m = &self.matrix;
        let q = m * Vector3::new(p.x, p.y, 1.0);
        let along = |k: usize| {
            Vector::new(
                (m[(0, k)] * q.z - q.x * m[(2, k)]) / (q.z * q.z),
                (m[(1, k)] * q.z - q.y * m[(2, k)]) / (q.z * q.z),
            )
        };
        [along(0), along(1)]
    }

    /// Scale at `p`, in units of `B` for one of `A`: the square root of the area that a unit square covers.
    #[must_use]
    pub fn scale_at(&self, p: Point<A>) -> f64 {
        let [x, y] = self.steps_at(p);
        Matrix2::new(x.x, y.x, x.y, y.y).determinant().abs().sqrt()
    }

    /// Composition: first this map, then `next`.
    #[must_use]
    pub fn then<C: Frame>(&self, next: &Map<B, C>) -> Map<A, C> {
        Map { matrix: next.matrix * self.matrix, frames: PhantomData }
    }

    /// Inverse map. `None` where the map has lost a dimension.
    #[must_use]
    pub fn inverse(&self) -> Option<Map<B, A>> {
        Map::from_matrix(self.matrix.try_inverse()?)
    }

    /// Matrix of the map, acting on columns (x, y, 1).
    #[must_use]
    pub fn matrix(&self) -> &Matrix3<f64> {
        &self.matrix
    }
}

impl<A: Frame> Map<A, A> {
    /// Identity map.
    #[must_use]
    pub fn identity() -> Self {
        Self { matrix: Matrix3::identity(), frames: PhantomData }
    }

    /// Rotation by `quarters` quarter turns clockwise, as seen, about `centre`; exact, without sines.
    #[must_use]
    pub fn quarter_turns(quarters: u32, centre: Point<A>) -> Self {
        let (x, y) = match quarters % 4 {
            0 => (Vector::new(1.0, 0.0), Vector::new(0.0, 1.0)),
            1 => (Vector::new(0.0, 1.0), Vector::new(-1.0, 0.0)),
            2 => (Vector::new(-1.0, 0.0), Vector::new(0.0, -1.0)),
            _ => (Vector::new(0.0, -1.0), Vector::new(1.0, 0.0)),
        };
        let origin = centre - x * centre.x - y * centre.y;
        Self::affine(origin, x, y)
    }

    /// Rotation clockwise, as seen, by an angle in radians about `centre`.
    #[must_use]
    pub fn turn(radians: f64, centre: Point<A>) -> Self {
        let x = Vector::new(1.0, 0.0).turned(radians);
        let y = Vector::new(0.0, 1.0).turned(radians);
        Self::affine(centre - x * centre.x - y * centre.y, x, y)
    }
}

/// Shift and scale that take points to a mean of 0 and a mean square of 1 a coordinate; `None` where all are one.
fn normal(points: impl Iterator<Item = [f64; 2]> + Clone) -> Option<Matrix3<f64>> {
    let count = super::float(points.clone().count().max(1));
    let sum = points.clone().fold([0.0, 0.0], |sum, p| [sum[0] + p[0], sum[1] + p[1]]);
    let [x, y] = sum.map(|sum| sum / count);
    let power = points.map(|p| (p[0] - x).powi(2) + (p[1] - y).powi(2)).sum::<f64>() / count;
    let by = (2.0 / power).sqrt();
    by.is_finite().then(|| Matrix3::new(by, 0.0, -x * by, 0.0, by, -y * by, 0.0, 0.0, 1.0))
}
