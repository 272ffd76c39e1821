//! Width of a sheet divided by its height, from the four corners that one photo shows.
//!
//! The four corners of a rectangle fix its shape and the camera's focal length, if the camera's axis goes through the middle of the photo:
//! Zhang and He, "Whiteboard scanning and image enhancement", Digital Signal Processing 17 (2007), equations 11 to 14 and 20.

use nalgebra::{Matrix3, Vector3};

use super::Corners;
use crate::frame::{PicturePx, Point};

/// Focal lengths that cameras have, in longer sides of the photo: from a wide-angle phone's to a tele's. What the corners say beyond
/// them is noise.
const FOCAL: (f64, f64) = (0.5, 3.0);
/// Focal length of a phone's main camera in longer sides of the photo: 26 mm where a photo of 36 mm has it. From memory, no source.
const USUAL_FOCAL: f64 = 26.0 / 36.0;
/// How little the vanishing points have to say for the focal length to be taken from elsewhere: the sheet is seen from nearly straight above.
const HARDLY: f64 = 1e-3;
/// Ratios of the longer side of paper to the shorter: ISO 216's, letter's, tabloid's.
const PAPERS: [f64; 3] = [std::f64::consts::SQRT_2, 11.0 / 8.5, 17.0 / 11.0];
/// How far from such a ratio a sheet still is such paper. Letter and A lie 9 % apart.
const NEAR: f64 = 0.025;

/// Width by height as seen in a photo of so many pixels.
pub(super) fn seen(corners: &Corners, (width, height): (u32, u32)) -> f64 {
    let (width, height) = (f64::from(width), f64::from(height));
    let longer = width.max(height);
    // about the middle of the photo, in its longer sides
    let centred =
        |p: &Point<PicturePx>| Vector3::new((p.x - width / 2.0) / longer, (p.y - height / 2.0) / longer, 1.0);
    // the paper's numbering: 1 and 2 at the top from the left, 3 and 4 below them
    let [m1, m2, m4, m3] = corners.each_ref().map(centred);
    let k2 = m1.cross(&m4).dot(&m3) / m2.cross(&m4).dot(&m3);
    let k3 = m1.cross(&m4).dot(&m2) / m3.cross(&m4).dot(&m2);
    let (n2, n3) = (m2 * k2 - m1, m3 * k3 - m1);
    let focal = focal(&n2, &n3);
    let metric = Matrix3::from_diagonal(&Vector3::new(1.0 / (focal * focal), 1.0 / (focal * focal), 1.0));
    let length = |n: &Vector3<f64>| (n.transpose() * metric * n)[(0, 0)].sqrt();
    let ratio = length(&n2) / length(&n3);
    if ratio.is_finite() && ratio > 0.0 { ratio.clamp(0.1, 10.0) } else { 1.0 }
}

/// Focal length in longer sides of the photo.
fn focal(n2: &Vector3<f64>, n3: &Vector3<f64>) -> f64 {
    let both = n2.z * n3.z;
    let squared = -(n2.x * n3.x + n2.y * n3.y) / both;
    let is_sure = both.abs() > HARDLY && squared.is_finite() && squared > 0.0;
    let found = is_sure.then(|| squared.sqrt()).filter(|focal| (FOCAL.0..=FOCAL.1).contains(focal));
    found.unwrap_or(USUAL_FOCAL)
}

/// The shape of usual paper where it is that but for the corners' errors.
pub(super) fn usual(seen: f64) -> f64 {
    let shapes = PAPERS.into_iter().flat_map(|ratio| [ratio, 1.0 / ratio]);
    let apart = |shape: &f64| (seen / shape).ln().abs();
    shapes.min_by(|a, b| apart(a).total_cmp(&apart(b))).filter(|shape| apart(shape) <= NEAR).unwrap_or(seen)
}

#[cfg(test)]
mod tests {
    use super::*;
    use nalgebra::Rotation3;
    use proptest::prelude::*;

    /// Corners of a sheet of `width` by 1 in front of a camera.
    fn corners(width: f64, tilt: f64, turn: f64, roll: f64, focal: f64) -> Corners {
        let turned = Rotation3::from_euler_angles(tilt, turn, roll);
        [(-1.0, -1.0), (1.0, -1.0), (1.0, 1.0), (-1.0, 1.0)].map(|(x, y)| {
            let p =
                turned * Vector3::new(x * width / 2.0, y / 2.0, 0.0) + Vector3::new(0.02, -0.03, 2.2 * focal);
            Point::new(2000.0 + focal * 4000.0 * p.x / p.z, 1500.0 + focal * 4000.0 * p.y / p.z)
        })
    }

    proptest! {
        #[test]
        fn a_sheets_shape_is_seen_from_any_side(width in 0.5..2.0_f64, tilt in -0.7..0.7_f64, turn in -0.7..0.7_f64, roll in -0.3..0.3_f64, focal in 0.6..1.2_f64) {
            let seen = seen(&corners(width, tilt, turn, roll, focal), (4000, 3000));
            // where both sides are nearly parallel to the photo's plane, the focal length has to be guessed
            let bound = if tilt.abs() > 0.15 && turn.abs() > 0.15 { 0.01 } else { 0.16 };
            prop_assert!((seen / width).ln().abs() < bound, "{seen} for {width}");
        }
    }

    #[test]
    fn a_sheet_from_straight_above_is_measured() {
        let square = [(500.0, 500.0), (1500.0, 500.0), (1500.0, 1300.0), (500.0, 1300.0)];
        assert!((seen(&square.map(|(x, y)| Point::new(x, y)), (4000, 3000)) - 1.25).abs() < 1e-9);
    }

    #[test]
    fn usual_paper_has_its_own_shape_and_other_paper_keeps_its() {
        assert!((usual(1.42) - std::f64::consts::SQRT_2).abs() < 1e-12);
        assert!((usual(0.77) - 8.5 / 11.0).abs() < 1e-12);
        assert!((usual(1.0) - 1.0).abs() < 1e-12);
        assert!((usual(1.35) - 1.35).abs() < 1e-12);
    }
}
