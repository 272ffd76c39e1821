//! The lens: radial distortion with two coefficients.
//!
//! The model of OpenCV's `projectPoints` with k1 and k2: with r the distance from the centre in units of `scale`,
//! photo = centre + (straight − centre) · (1 + k1 r² + k2 r⁴).

use crate::frame::{PhotoPx, Point, StraightPx};

/// Radial distortion about a centre.
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct Lens {
    /// Centre of the distortion, at equal coordinates in both frames.
    pub centre: Point<PhotoPx>,
    /// Distance at which r is 1, in pixels: half the photo's diagonal.
    pub scale: f64,
    /// Coefficient of r².
    pub k1: f64,
    /// Coefficient of r⁴.
    pub k2: f64,
}

/// Maximum number of Newton steps towards the straight point; each doubles the number of right digits.
const STEPS: usize = 20;

impl Lens {
    /// Lens without distortion for a photo of `width` × `height` pixels.
    #[must_use]
    pub fn straight(width: f64, height: f64) -> Self {
        Self {
            centre: Point::new(width / 2.0, height / 2.0),
            scale: width.hypot(height) / 2.0,
            k1: 0.0,
            k2: 0.0,
        }
    }

    /// Place in the photo of a straight point. Not finite beyond the distance where the distortion folds
    /// back.
    #[must_use]
    pub fn straight_to_photo(&self, p: Point<StraightPx>) -> Point<PhotoPx> {
        let (x, y) = ((p.x - self.centre.x) / self.scale, (p.y - self.centre.y) / self.scale);
        let r2 = x * x + y * y;
        if 1.0 + r2 * (3.0 * self.k1 + r2 * 5.0 * self.k2) <= 0.0 {
            return Point::new(f64::NAN, f64::NAN);
        }
        let by = self.scale * (1.0 + r2 * (self.k1 + r2 * self.k2));
        Point::new(self.centre.x + x * by, self.centre.y + y * by)
    }

    /// Straight point that the lens puts at `p`; `None` where it puts none there.
    #[must_use]
    pub fn photo_to_straight(&self, p: Point<PhotoPx>) -> Option<Point<StraightPx>> {
        let (x, y) = ((p.x - self.centre.x) / self.scale, (p.y - self.centre.y) / self.scale);
        let bent = x.hypot(y);
        let mut r = bent;
        for _ in 0..STEPS {
            let r2 = r * r;
            let miss = r * (1.0 + r2 * (self.k1 + r2 * self.k2)) - bent;
            let slope = 1.0 + r2 * (3.0 * self.k1 + r2 * 5.0 * self.k2);
            if slope <= 0.0 {
                return None;
            }
            let step = miss / slope;
            r -= step;
            if step.abs() < 1e-13 {
                break;
            }
        }
        let by = if bent > 0.0 { self.scale * r / bent } else { self.scale };
        let straight = Point::new(self.centre.x + x * by, self.centre.y + y * by);
        straight.is_finite().then_some(straight)
    }
}
