//! Uncertainty of a fitted camera: the standard deviation of a place on the wall, in mm.
//!
//! A camera that was fitted to a few codes in one corner is good there and worth nothing at the far end. How
//! good it is at a place follows from its codes (the covariance of a least squares fit):
//!
//! ```text
//!   doubt² = trace(J · C · Jᵀ)      J  how the place is seen changes with the camera's ten numbers
//!                                    C  their covariance: the inverse of the normal equations
//! ```
//!
//! A code says where its middle is to within the shift with which squares usually hang, and which way and how
//! large to within a few degrees. Where the doubt is large nothing is sought, and no cell is called empty.

use super::camera::{Correspondence, Fit, Normal, Said, USUAL_SHIFT_MM, Unknowns, prior};
use super::reading::Camera;
use crate::frame::{Point, WallMm};

/// Uncertainty of a camera all over the wall.
#[derive(Clone, Debug)]
pub struct Uncertainty {
    known: Option<(Fit, Unknowns, Normal)>,
}

impl Uncertainty {
    /// Uncertainty of a camera that was fitted to these codes.
    #[must_use]
    pub fn of(camera: &Camera, anchors: &[Correspondence]) -> Self {
        let fit = Fit::new(camera, anchors);
        let known = fit.unknowns(camera).and_then(|n| {
            let mut normal = Normal::zeros();
            for anchor in anchors {
                add(&mut normal, &fit, &n, camera, anchor);
            }
            for (k, usual) in prior() {
                normal[(k, k)] += usual.powi(-2);
            }
            Some((fit, n, normal.cholesky()?.inverse()))
        });
        Self { known }
    }

    /// Standard deviation of a place, in mm on the wall; infinite where the camera cannot see it or nothing
    /// is known.
    #[must_use]
    pub fn at(&self, place: Point<WallMm>) -> f64 {
        let doubt = || {
            let (fit, n, covariance) = self.known.as_ref()?;
            let slopes = fit.slopes(n, place)?;
            Some(slopes.iter().map(|slope| slope.dot(&(covariance * slope))).sum::<f64>().max(0.0).sqrt())
        };
        doubt().unwrap_or(f64::INFINITY)
    }
}

/// Adds a code's observations to the normal equations.
fn add(normal: &mut Normal, fit: &Fit, n: &Unknowns, camera: &Camera, anchor: &Correspondence) {
    // one that hangs elsewhere says little, as in the fit
    let shift = USUAL_SHIFT_MM.hypot(camera.placement_error_mm(anchor));
    for Said { slope, weight, .. } in fit.said(n, anchor).into_iter().flatten() {
        *normal += slope * slope.transpose() * (weight / shift.powi(2));
    }
}

#[cfg(test)]
mod tests {
    use super::super::lens::Lens;
    use super::*;
    use crate::frame::Map;

    fn camera() -> Camera {
        let lens = Lens::straight(4000.0, 3000.0);
        Camera { wall_to_straight: Map::scale_then_shift(1.6, 500.0, 300.0), lens }
    }

    /// Codes of 12.6 mm in cells of 127 mm.
    fn anchors(columns: std::ops::Range<u32>, rows: std::ops::Range<u32>) -> Vec<Correspondence> {
        let at = |k: u32, off: f64| f64::from(k) * 127.0 + 106.4 + off;
        let cells = rows.flat_map(|row| columns.clone().map(move |column| (column, row)));
        cells
            .map(|(column, row)| {
                let corner = |x: f64, y: f64| Point::new(at(column, x), at(row, y));
                let wall = [corner(0.0, 0.0), corner(12.6, 0.0), corner(12.6, 12.6), corner(0.0, 12.6)];
                Correspondence { wall, photo: wall.map(|p| camera().wall_to_photo(p)) }
            })
            .collect()
    }

    #[test]
    fn near_its_codes_a_camera_is_known_and_far_from_them_it_is_not() {
        let place = |column: f64, row: f64| Point::new(column * 127.0 + 63.5, row * 127.0 + 63.5);
        let one = Uncertainty::of(&camera(), &anchors(3..4, 3..4));
        assert!(
            one.at(place(4.0, 3.0)) < 15.0,
            "the neighbour can be looked for: {}",
            one.at(place(4.0, 3.0))
        );
        assert!(one.at(place(9.0, 3.0)) > 25.0, "six cells off: {}", one.at(place(9.0, 3.0)));
        let corner = Uncertainty::of(&camera(), &anchors(8..10, 6..8));
        assert!(corner.at(place(7.0, 5.0)) < 25.0, "{}", corner.at(place(7.0, 5.0)));
        assert!(corner.at(place(0.0, 0.0)) > 60.0, "{}", corner.at(place(0.0, 0.0)));
        let all = Uncertainty::of(&camera(), &anchors(0..10, 0..8));
        assert!(all.at(place(0.0, 0.0)) < 5.0, "{}", all.at(place(0.0, 0.0)));
    }

    #[test]
    fn without_codes_nothing_is_known() {
        assert!(Uncertainty::of(&camera(), &[]).at(Point::new(0.0, 0.0)) > 1e6);
    }
}
