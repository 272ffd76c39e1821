//! The lens: straight points bent and straightened again.

use everysquare::frame::{PhotoPx, Point, StraightPx};
use everysquare::read::lens::Lens;
use proptest::prelude::*;

use super::apart;

const WIDTH: f64 = 4032.0;
const HEIGHT: f64 = 3024.0;

/// Barrels and cushions beyond what phones have, never zero.
fn lens() -> impl Strategy<Value = Lens> {
    let coefficient = |most: f64| prop_oneof![-most..-0.001, 0.001..most];
    (coefficient(0.15), coefficient(0.05)).prop_map(|(k1, k2)| Lens {
        k1,
        k2,
        ..Lens::straight(WIDTH, HEIGHT)
    })
}

proptest! {
    #[test]
    fn what_is_bent_is_straightened_again(lens in lens(), x in 0.0..WIDTH, y in 0.0..HEIGHT) {
        let straight = Point::<StraightPx>::new(x, y);
        let photo = lens.straight_to_photo(straight);
        prop_assert!(photo.is_finite());
        let back = lens.photo_to_straight(photo).unwrap();
        prop_assert!(apart(back, straight) < 1e-6, "{straight:?} came back as {back:?}");
    }

    #[test]
    fn what_is_straightened_is_bent_again(lens in lens(), x in 0.0..WIDTH, y in 0.0..HEIGHT) {
        let photo = Point::<PhotoPx>::new(x, y);
        if let Some(straight) = lens.photo_to_straight(photo) {
            prop_assert!(apart(lens.straight_to_photo(straight), photo) < 1e-6);
        }
    }

    #[test]
    fn the_lens_moves_points_along_the_line_through_its_centre(lens in lens(), x in 0.0..WIDTH, y in 0.0..HEIGHT) {
        let straight = Point::<StraightPx>::new(x, y);
        let photo = lens.straight_to_photo(straight);
        let before = (straight.x - lens.centre.x, straight.y - lens.centre.y);
        let after = (photo.x - lens.centre.x, photo.y - lens.centre.y);
        prop_assert!((before.0 * after.1 - before.1 * after.0).abs() < 1e-6 * WIDTH);
        // r' = r (1 + k1 r² + k2 r⁴), the model of OpenCV's projectPoints; r is 1 at half the diagonal
        let r2 = before.0.hypot(before.1).powi(2) / (WIDTH.powi(2) + HEIGHT.powi(2)) * 4.0;
        let by = 1.0 + lens.k1 * r2 + lens.k2 * r2 * r2;
        prop_assert!((after.0.hypot(after.1) - before.0.hypot(before.1) * by).abs() < 1e-8);
    }

    #[test]
    fn beyond_the_fold_nothing_is_shown(k1 in -0.9..-0.2_f64, beyond in 1.001..50.0_f64, angle in 0.0..6.2_f64) {
        // r (1 + k1 r²) is largest at r = sqrt(−1 / (3 k1))
        let lens = Lens { k1, ..Lens::straight(WIDTH, HEIGHT) };
        let fold = (-1.0 / (3.0 * k1)).sqrt();
        let at = |r: f64| {
            let r = r * lens.scale;
            (lens.centre.x + r * angle.cos(), lens.centre.y + r * angle.sin())
        };
        let (x, y) = at(fold * beyond);
        prop_assert!(!lens.straight_to_photo(Point::new(x, y)).is_finite());
        let (x, y) = at(fold * (1.0 + k1 * fold * fold) * beyond);
        prop_assert_eq!(lens.photo_to_straight(Point::new(x, y)), None);
        let (x, y) = at(fold * 0.95);
        prop_assert!(lens.straight_to_photo(Point::new(x, y)).is_finite());
    }
}

#[test]
fn a_lens_without_distortion_changes_nothing() {
    let lens = Lens::straight(WIDTH, HEIGHT);
    for (x, y) in [(0.0, 0.0), (2016.0, 1512.0), (4032.0, 17.5)] {
        assert!(apart(lens.straight_to_photo(Point::new(x, y)), Point::new(x, y)) < 1e-9);
        assert!(apart(lens.photo_to_straight(Point::new(x, y)).unwrap(), Point::new(x, y)) < 1e-9);
    }
}
