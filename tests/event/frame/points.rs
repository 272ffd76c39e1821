//! Points, steps and lengths of one frame.

use everysquare::frame::{Length, Point, Vector, WallMm};
use proptest::prelude::*;

use super::{apart, place};

proptest! {
    #[test]
    fn a_step_leads_from_one_point_to_the_other(a in place::<WallMm>(), b in place()) {
        prop_assert!(apart(a + (b - a), b) < 1e-9);
        prop_assert!(apart(b - (b - a), a) < 1e-9);
        prop_assert_eq!(-(b - a), a - b);
    }

    #[test]
    fn distance_is_the_same_both_ways_and_never_shorter_by_a_detour(
        a in place::<WallMm>(), b in place(), c in place(),
    ) {
        prop_assert_eq!(a.distance(b), b.distance(a));
        prop_assert!(apart(a, b) <= apart(a, c) + apart(c, b) + 1e-9);
        prop_assert_eq!(a.distance(a), Length::new(0.0));
    }

    #[test]
    fn half_way_is_as_far_from_both(a in place::<WallMm>(), b in place()) {
        let middle = a.towards(b, 0.5);
        prop_assert!((apart(a, middle) - apart(middle, b)).abs() < 1e-9);
        prop_assert!(apart(a.towards(b, 1.0), b) < 1e-9);
    }

    #[test]
    fn a_turned_step_keeps_its_length_and_its_angle(
        a in place::<WallMm>(), b in place(), radians in -6.3..6.3_f64,
    ) {
        let step = b - a;
        let turned = step.turned(radians);
        prop_assert!((turned.length().value() - step.length().value()).abs() < 1e-9);
        let square = step.dot(step).max(1.0);
        prop_assert!((step.dot(turned) - step.dot(step) * radians.cos()).abs() < 1e-12 * square);
        prop_assert!((step.cross(turned) - step.dot(step) * radians.sin()).abs() < 1e-12 * square);
    }

    #[test]
    fn lengths_add_and_their_ratio_is_a_number(a in 0.1..1e4_f64, b in 0.1..1e4_f64) {
        let (long, short) = (Length::<WallMm>::new(a), Length::<WallMm>::new(b));
        prop_assert!(((long + short - short).value() - a).abs() < 1e-9);
        prop_assert!((short * (long / short) - long).value().abs() < 1e-9);
        prop_assert_eq!(long > short, a > b);
    }
}

#[test]
fn clockwise_is_as_seen_with_y_downwards() {
    let right = Vector::<WallMm>::new(1.0, 0.0);
    let down = Vector::new(0.0, 1.0);
    assert!(right.cross(down) > 0.0, "down lies clockwise of right");
    let quarter = right.turned(std::f64::consts::FRAC_PI_2);
    assert!((quarter - down).length().value() < 1e-15);
}

#[test]
fn a_coordinate_that_is_no_number_is_not_finite() {
    assert!(Point::<WallMm>::new(1.0, 2.0).is_finite());
    assert!(!Point::<WallMm>::new(f64::NAN, 0.0).is_finite());
    assert!(!Point::<WallMm>::new(0.0, f64::INFINITY).is_finite());
}
