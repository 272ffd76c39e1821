//! Pose: where one code lies in the photo.

use crate::frame::{Module, PhotoPx, Point, Vector};
use crate::photo::Luma;
use crate::plan::code::SIDE;

/// Half a code's side, in modules: its centre as seen from its corner.
pub const HALF: f64 = 10.5;

/// Affine pose of a code: small enough that perspective within it does not show (12.6 mm seen from 2 m: 0.6
/// %).
///
/// ```text
///      ┌───────────┐
///      │ ▣       ▣ │      u: one module to the code's right
///      │     ·──u──│▶     v: one module to the code's bottom
///      │     │     │
///      │ ▣   v     │      the three finder patterns lie at −7 and +7 modules from the centre,
///      └─────┼─────┘      bottom right has none
///            ▼
/// ```
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct Pose {
    /// Centre of the code.
    pub centre: Point<PhotoPx>,
    /// Step of one module to the right, in the code's own sense.
    pub u: Vector<PhotoPx>,
    /// Step of one module down, in the code's own sense.
    pub v: Vector<PhotoPx>,
}

impl Pose {
    /// Affine pose of a code with these outer corners, clockwise in its own sense from its top left.
    #[must_use]
    pub fn of_corners([a, b, c, d]: [Point<PhotoPx>; 4]) -> Self {
        let span = 4.0 * HALF;
        Self {
            centre: a.towards(c, 0.5).towards(b.towards(d, 0.5), 0.5),
            u: ((b - a) + (c - d)) / span,
            v: ((d - a) + (c - b)) / span,
        }
    }

    /// Place in the photo of a place on the code.
    #[must_use]
    pub fn module_to_photo(&self, m: Point<Module>) -> Point<PhotoPx> {
        self.centre + self.u * (m.x - HALF) + self.v * (m.y - HALF)
    }

    /// Place on the code that is seen at `p`; `None` where the pose has collapsed to a line.
    #[must_use]
    pub fn photo_to_module(&self, p: Point<PhotoPx>) -> Option<Point<Module>> {
        let det = self.u.cross(self.v);
        let d = p - self.centre;
        let at = Point::new(HALF + d.cross(self.v) / det, HALF + self.u.cross(d) / det);
        at.is_finite().then_some(at)
    }

    /// Side of a module in pixels: the square root of its area.
    #[must_use]
    pub fn px_per_module(&self) -> f64 {
        self.u.cross(self.v).abs().sqrt()
    }

    /// Whether the code is seen as in a mirror.
    #[must_use]
    pub fn mirrored(&self) -> bool {
        self.u.cross(self.v) < 0.0
    }

    /// Pose of the same code seen in a mirror: right and down change places.
    #[must_use]
    pub fn mirror(&self) -> Self {
        Self { u: self.v, v: self.u, ..*self }
    }

    /// Outer corners of the code, clockwise in its own sense from its top left.
    #[must_use]
    pub fn corners(&self) -> [Point<PhotoPx>; 4] {
        [(0.0, 0.0), (2.0, 0.0), (2.0, 2.0), (0.0, 2.0)]
            .map(|(x, y)| self.module_to_photo(Point::new(x * HALF, y * HALF)))
    }

    /// Pose after undoing a small change of the code's own coordinates, `m ↦ centre + (1 + a)(m − centre) +
    /// d`. `None` where that would fold the code.
    pub(super) fn undo(&self, d: [f64; 2], a: [[f64; 2]; 2]) -> Option<Self> {
        let [[p, q], [r, s]] = [[1.0 + a[0][0], a[0][1]], [a[1][0], 1.0 + a[1][1]]];
        let det = p * s - q * r;
        if !(0.25..4.0).contains(&det) {
            return None;
        }
        let inverse = [[s / det, -q / det], [-r / det, p / det]];
        let back = |x: f64, y: f64| {
            self.u * (inverse[0][0] * x + inverse[0][1] * y)
                + self.v * (inverse[1][0] * x + inverse[1][1] * y)
        };
        Some(Self { centre: self.centre - back(d[0], d[1]), u: back(1.0, 0.0), v: back(0.0, 1.0) })
    }

    /// Brightness of the 441 modules at their centres, in grey levels, row by row.
    #[must_use]
    pub fn modules(&self, luma: &Luma) -> Vec<f32> {
        let middle = |i: usize| crate::frame::float(i) + 0.5;
        (0..SIDE * SIDE)
            .map(|i| luma.at(self.module_to_photo(Point::new(middle(i % SIDE), middle(i / SIDE)))))
            .collect()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn there_and_back(x in 0.0..21.0_f64, y in 0.0..21.0_f64, turn in 0.0..6.3_f64, size in 0.5..9.0_f64, flip: bool) {
            let u = Vector::new(size, 0.3).turned(turn);
            let v = Vector::new(0.1, if flip { -size } else { size }).turned(turn);
            let pose = Pose { centre: Point::new(100.0, 50.0), u, v };
            let m = Point::new(x, y);
            let back = pose.photo_to_module(pose.module_to_photo(m)).unwrap();
            prop_assert!(back.distance(m).value() < 1e-9);
            prop_assert_eq!(pose.mirrored(), flip);
        }

        #[test]
        fn a_change_is_undone(dx in -0.5..0.5_f64, dy in -0.5..0.5_f64, a in -0.1..0.1_f64, b in -0.1..0.1_f64) {
            let pose = Pose { centre: Point::new(9.0, 9.0), u: Vector::new(2.0, 0.1), v: Vector::new(-0.2, 1.8) };
            let undone = pose.undo([dx, dy], [[a, b], [b, -a]]).unwrap();
            // what the changed coordinates call m must lie where the pose had it
            let m = (3.0, 17.0);
            let (x, y) = (m.0 - HALF, m.1 - HALF);
            let changed = Point::new(HALF + (1.0 + a) * x + b * y + dx, HALF + b * x + (1.0 - a) * y + dy);
            let apart = undone.module_to_photo(changed).distance(pose.module_to_photo(Point::new(m.0, m.1)));
            prop_assert!(apart.value() < 1e-9);
        }
    }
}
