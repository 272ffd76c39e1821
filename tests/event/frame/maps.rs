//! Maps from one frame into the next.

use std::f64::consts::FRAC_PI_2;

use everysquare::frame::{DisplayPx, Map, Point, SquareMm, StraightPx, Vector, WallMm};
use proptest::prelude::*;

use super::{apart, corners, on_wall, place, quad, view};

proptest! {
    #[test]
    fn there_and_back(wall_to_straight in view::<WallMm, StraightPx>(), p in on_wall()) {
        let back = wall_to_straight.inverse().unwrap();
        prop_assert!(apart(back.apply(wall_to_straight.apply(p)), p) < 1e-7);
        let again = back.inverse().unwrap();
        prop_assert!(apart(again.apply(p), wall_to_straight.apply(p)) < 1e-6);
    }

    #[test]
    fn one_after_the_other_is_the_same_as_both_at_once(
        first in view::<SquareMm, WallMm>(), scale in 0.1..4.0_f64, p in on_wall(),
    ) {
        let second = Map::<WallMm, StraightPx>::scale_then_shift(scale, 30.0, -20.0);
        prop_assert!(apart(first.then(&second).apply(p), second.apply(first.apply(p))) < 1e-7);
    }

    #[test]
    fn it_does_not_matter_which_two_of_three_are_joined_first(
        a in view::<SquareMm, WallMm>(), scale in 0.1..4.0_f64, radians in -3.0..3.0_f64, p in on_wall(),
    ) {
        let b = Map::<WallMm, StraightPx>::scale_then_shift(scale, -300.0, 20.0);
        let middle = Point::new(1000.0, 500.0);
        let c = Map::<StraightPx, StraightPx>::turn(radians, middle)
            .then(&Map::<StraightPx, DisplayPx>::scale_then_shift(0.5, 3.0, 4.0));
        let left = a.then(&b).then(&c);
        let right = a.then(&b.then(&c));
        prop_assert!(apart(left.apply(p), right.apply(p)) < 1e-7);
    }

    #[test]
    fn the_way_back_undoes_the_last_step_first(
        a in view::<SquareMm, WallMm>(), scale in 0.1..4.0_f64, radians in -3.0..3.0_f64, p in on_wall(),
    ) {
        let b = Map::<WallMm, WallMm>::turn(radians, Point::new(10.0, 20.0))
            .then(&Map::<WallMm, StraightPx>::scale_then_shift(scale, 5.0, 6.0));
        let there = a.then(&b).apply(p);
        let at_once = a.then(&b).inverse().unwrap().apply(there);
        let in_steps = a.inverse().unwrap().apply(b.inverse().unwrap().apply(there));
        prop_assert!(apart(at_once, in_steps) < 1e-6);
        prop_assert!(apart(at_once, p) < 1e-6);
    }

    #[test]
    fn the_identity_changes_nothing(map in view::<WallMm, StraightPx>(), p in on_wall()) {
        prop_assert_eq!(Map::identity().then(&map).apply(p), map.apply(p));
        prop_assert_eq!(map.then(&Map::identity()).apply(p), map.apply(p));
    }

    #[test]
    fn four_points_go_exactly_to_their_partners(from in quad::<WallMm>(), to in quad::<StraightPx>()) {
        let map = Map::from_four(from, to).unwrap();
        for (a, b) in from.iter().zip(&to) {
            prop_assert!(apart(map.apply(*a), *b) < 1e-7, "{:?} to {:?}, wanted {b:?}", a, map.apply(*a));
        }
    }

    #[test]
    fn straight_lines_stay_straight(map in view::<WallMm, StraightPx>(), a in on_wall(), b in on_wall(), t in 0.0..1.0_f64) {
        prop_assume!(apart(a, b) > 10.0);
        let (from, to, between) = (map.apply(a), map.apply(b), map.apply(a.towards(b, t)));
        prop_assert!((to - from).cross(between - from).abs() / apart(from, to) < 1e-7);
    }

    #[test]
    fn steps_are_the_slope_of_the_map(map in view::<WallMm, StraightPx>(), p in on_wall()) {
        const H: f64 = 1e-3;
        let [right, down] = map.steps_at(p);
        let slope = |by: Vector<WallMm>| (map.apply(p + by) - map.apply(p - by)) / (2.0 * H);
        prop_assert!((slope(Vector::new(H, 0.0)) - right).length().value() < 1e-6);
        prop_assert!((slope(Vector::new(0.0, H)) - down).length().value() < 1e-6);
    }

    #[test]
    fn scale_is_the_side_of_the_square_that_a_unit_square_covers(map in view::<WallMm, StraightPx>(), p in on_wall()) {
        const H: f64 = 1e-2;
        let around = [(-H, -H), (H, -H), (H, H), (-H, H)].map(|(x, y)| map.apply(p + Vector::new(x, y)));
        let area = (around[2] - around[0]).cross(around[3] - around[1]).abs() / 2.0;
        prop_assert!((map.scale_at(p) - area.sqrt() / (2.0 * H)).abs() < 1e-5);
    }

    #[test]
    fn four_quarter_turns_are_none(quarters in 0_u32..40, x in -50_i32..50, y in -50_i32..50, px in -50_i32..50) {
        // whole numbers, so that "exactly" can be asked for
        let [x, y, px] = [x, y, px].map(f64::from);
        let (centre, p) = (Point::<SquareMm>::new(x, y), Point::new(px, 7.0));
        let once = Map::quarter_turns(1, centre);
        let four = once.then(&once).then(&once).then(&once);
        prop_assert_eq!(four, Map::identity());
        prop_assert_eq!(four.apply(p), p);
        prop_assert_eq!(Map::quarter_turns(quarters, centre), Map::quarter_turns(quarters % 4, centre));
        let one_more = Map::quarter_turns(quarters, centre).then(&once);
        prop_assert_eq!(one_more, Map::quarter_turns(quarters + 1, centre));
    }

    #[test]
    fn quarter_turns_are_turns_by_right_angles(quarters in 0_u32..4, centre in place::<WallMm>(), p in place()) {
        let turned = Map::turn(f64::from(quarters) * FRAC_PI_2, centre).apply(p);
        prop_assert!(apart(Map::quarter_turns(quarters, centre).apply(p), turned) < 1e-9);
    }

    #[test]
    fn a_turn_leaves_its_centre_and_all_distances(
        radians in -7.0..7.0_f64, centre in place::<WallMm>(), a in place(), b in place(),
    ) {
        let turn = Map::turn(radians, centre);
        prop_assert!(apart(turn.apply(centre), centre) < 1e-9);
        prop_assert!((apart(turn.apply(a), turn.apply(b)) - apart(a, b)).abs() < 1e-9);
        prop_assert!(apart(turn.then(&Map::turn(-radians, centre)).apply(a), a) < 1e-9);
    }

    #[test]
    fn what_lies_behind_the_horizon_has_no_image(tilt in 0.0002..0.002_f64, beyond in 1.0..1e5_f64, y in -1e3..1e3_f64) {
        // the third coordinate is 1 − tilt·x: 0 on the horizon
        let corner = |x: f64, y: f64| Point::<StraightPx>::new(x / (1.0 - tilt * x), y / (1.0 - tilt * x));
        let seen = [corner(0.0, 0.0), corner(100.0, 0.0), corner(100.0, 100.0), corner(0.0, 100.0)];
        let map = Map::<WallMm, StraightPx>::from_four(corners(100.0, 100.0), seen).unwrap();
        prop_assert!(map.apply(Point::new(0.9 / tilt, y)).is_finite());
        prop_assert!(!map.apply(Point::new(1.0 / tilt + beyond, y)).is_finite());
    }
}

#[test]
fn a_quarter_turn_is_clockwise_as_seen() {
    let middle = Point::<SquareMm>::new(63.5, 63.5);
    let turned = Map::quarter_turns(1, middle).apply(Point::new(0.0, 0.0));
    assert_eq!(turned, Point::new(127.0, 0.0), "the top left corner goes to the top right");
}

#[test]
fn affine_maps_take_the_origin_and_the_unit_steps_where_they_are_told() {
    let (origin, x, y) = (Point::<StraightPx>::new(5.0, 6.0), Vector::new(2.0, 1.0), Vector::new(-1.0, 3.0));
    let map = Map::<WallMm, StraightPx>::affine(origin, x, y);
    assert_eq!(map.apply(Point::origin()), origin);
    assert_eq!(map.apply(Point::new(1.0, 0.0)), origin + x);
    assert_eq!(map.apply(Point::new(0.0, 1.0)), origin + y);
    assert!((map.scale_at(Point::origin()) - 7.0_f64.sqrt()).abs() < 1e-12, "2·3 − 1·(−1) = 7");
}

#[test]
fn maps_that_lose_a_dimension_are_refused() {
    let line = [0.0, 1.0, 2.0, 3.0].map(|t| Point::<WallMm>::new(t, 2.0 * t));
    assert!(Map::from_four(line, corners::<StraightPx>(10.0, 10.0)).is_none());
    let [a, b, ..] = corners::<WallMm>(10.0, 10.0);
    assert!(Map::from_four([a, b, b, a], corners::<StraightPx>(10.0, 10.0)).is_none());
    let flat =
        Map::<WallMm, StraightPx>::affine(Point::origin(), Vector::new(1.0, 2.0), Vector::new(2.0, 4.0));
    assert!(flat.inverse().is_none());
    let lost = Map::<WallMm, StraightPx>::scale_then_shift(f64::NAN, 0.0, 0.0);
    assert!(lost.inverse().is_none());
}
