//! Bilinear sampling of a photo's brightness.

use super::Luma;
use crate::frame::{PhotoPx, Point, Vector, float, floor_index, narrow, round_signed};

impl Luma {
    /// Brightness at a place, 0 … 255, bilinear between the centres of the four nearest pixels.
    ///
    /// Beyond the edge that of the nearest pixel; 0 where the place is no number or the picture is empty.
    #[must_use]
    pub fn at(&self, p: Point<PhotoPx>) -> f32 {
        let (Some(last_x), Some(last_y)) = (self.width.checked_sub(1), self.height.checked_sub(1)) else {
            return 0.0;
        };
        if !p.is_finite() {
            return 0.0;
        }
        let (x, y) = ((p.x - 0.5).max(0.0), (p.y - 0.5).max(0.0));
        let (i, j) = (floor_index(x).min(last_x), floor_index(y).min(last_y));
        let (right, below) = (usize::from(i < last_x), usize::from(j < last_y) * self.width);
        let at = j * self.width + i;
        let [a, b, c, d] = [at, at + right, at + below, at + below + right].map(|k| f32::from(self.grey[k]));
        let (fx, fy) = (beyond(x, i), beyond(y, j));
        let (top, bottom) = (a + (b - a) * fx, c + (d - c) * fx);
        top + (bottom - top) * fy
    }

    /// Brightness at `columns` × `rows` places, row by row from `first`, `right` and `down` apart, into
    /// `into`; as [`Luma::at`].
    pub fn lattice(
        &self,
        first: Point<PhotoPx>,
        [right, down]: [Vector<PhotoPx>; 2],
        [columns, rows]: [usize; 2],
        into: &mut Vec<f32>,
    ) {
        into.clear();
        let last = first + right * float(columns.saturating_sub(1)) + down * float(rows.saturating_sub(1));
        let others = [first + (last - first), first + right * float(columns), first + down * float(rows)];
        let inside = [first, last].iter().chain(&others).all(|p| self.holds(*p, 1.0));
        let step = [fixed(right.x), fixed(right.y)];
        for row in 0..rows {
            let start = first + down * float(row);
            if inside {
                let mut at = [fixed(start.x - 0.5), fixed(start.y - 0.5)];
                into.extend((0..columns).map(|_| {
                    let level = self.well_inside(at);
                    at = [at[0] + step[0], at[1] + step[1]];
                    level
                }));
            } else {
                into.extend((0..columns).map(|column| self.at(start + right * float(column))));
            }
        }
    }

    /// Brightness as [`Luma::at`], for places at least a pixel inside, in [`UNITS`] from the first pixel's
    /// centre.
    fn well_inside(&self, at: [i64; 2]) -> f32 {
        let [(i, fx), (j, fy)] = at.map(parts);
        let at = j * self.width + i;
        let (Some([a, b]), Some([c, d])) = (pair(&self.grey, at), pair(&self.grey, at + self.width)) else {
            return 0.0;
        };
        let (top, bottom) = (a + (b - a) * fx, c + (d - c) * fx);
        top + (bottom - top) * fy
    }

    /// Whether a place lies at least `margin` pixels inside the picture.
    #[must_use]
    pub fn holds(&self, p: Point<PhotoPx>, margin: f64) -> bool {
        p.x >= margin
            && p.y >= margin
            && p.x <= float(self.width) - margin
            && p.y <= float(self.height) - margin
    }
}

/// Fixed-point units a pixel in which places along a line are added up.
///
/// A real number would have to be cut into pixel and rest at each of them, which takes longer than all else
/// there.
const UNITS: f64 = 16_777_216.0;

fn fixed(px: f64) -> i64 {
    round_signed(px * UNITS)
}

/// Index of a pixel, and the distance beyond its centre, 0 … 1.
fn parts(units: i64) -> (usize, f32) {
    let [_, low, high, a, b, c, d, _] = units.to_le_bytes();
    let pixel = usize::try_from(u32::from_le_bytes([a, b, c, d])).unwrap_or(usize::MAX);
    (pixel, f32::from(u16::from_le_bytes([low, high])) / 65_536.0)
}

fn pair(grey: &[u8], at: usize) -> Option<[f32; 2]> {
    match grey.get(at..at + 2) {
        Some([a, b]) => Some([f32::from(*a), f32::from(*b)]),
        _ => None,
    }
}

/// Distance of a place beyond the centre of pixel `i`, at most 1: beyond the last pixel's lies nothing else.
fn beyond(x: f64, i: usize) -> f32 {
    narrow((x - float(i)).min(1.0))
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn a_slope_is_read_as_a_slope(x in 0.5..9.5_f64, y in 0.5..6.5_f64) {
            let luma = Luma { width: 10, height: 7, grey: (0..70_u8).map(|i| i % 10 * 20 + i / 10 * 9).collect() };
            let want = 20.0 * (x - 0.5) + 9.0 * (y - 0.5);
            prop_assert!((f64::from(luma.at(Point::new(x, y))) - want).abs() < 1e-3);
        }

        #[test]
        fn a_lattice_is_its_places(x in -3.0..9.0_f64, y in -3.0..9.0_f64, turn in 0.0..6.3_f64, step in 0.1..2.0_f64) {
            let luma = Luma { width: 10, height: 7, grey: (0..70_u8).map(|i| i.wrapping_mul(37)).collect() };
            let (right, down) = (Vector::new(step, 0.0).turned(turn), Vector::new(0.0, step).turned(turn));
            let mut seen = Vec::new();
            luma.lattice(Point::new(x, y), [right, down], [4, 3], &mut seen);
            for (k, level) in seen.iter().enumerate() {
                let at = Point::new(x, y) + right * float(k % 4) + down * float(k / 4);
                prop_assert!((level - luma.at(at)).abs() < 1e-2);
            }
        }

        #[test]
        fn anywhere_is_safe(x: f64, y: f64) {
            let luma = Luma { width: 2, height: 2, grey: vec![10, 20, 30, 40] };
            prop_assert!((0.0..=40.0).contains(&luma.at(Point::new(x, y))));
        }
    }

    #[test]
    fn beyond_the_edge_lies_the_nearest_pixel() {
        let luma = Luma { width: 2, height: 1, grey: vec![10, 20] };
        assert_eq!(luma.at(Point::new(-5.0, -5.0)), 10.0);
        assert_eq!(luma.at(Point::new(50.0, 0.5)), 20.0);
    }
}
