//! Points, maps, the lens and the camera: what must hold of every one of them.

mod camera;
mod lens;
mod maps;
mod points;

use everysquare::frame::{Frame, Map, Point};
use proptest::prelude::*;

/// A place within some metres of the origin.
fn place<F: Frame>() -> impl Strategy<Value = Point<F>> {
    (-2000.0..2000.0, -2000.0..2000.0).prop_map(|(x, y)| Point::new(x, y))
}

/// Four corners as a camera sees a rectangle from somewhat aside: convex, clockwise, none on a line.
fn quad<F: Frame>() -> impl Strategy<Value = [Point<F>; 4]> {
    let shake = || (-220.0..220.0, -160.0..160.0);
    (shake(), shake(), shake(), shake()).prop_map(|shakes| {
        let at = |x: f64, y: f64, by: (f64, f64)| Point::new(x + by.0, y + by.1);
        [
            at(500.0, 400.0, shakes.0),
            at(3500.0, 400.0, shakes.1),
            at(3500.0, 2600.0, shakes.2),
            at(500.0, 2600.0, shakes.3),
        ]
    })
}

/// A rectangle's corners, clockwise from its top left.
fn corners<F: Frame>(width: f64, height: f64) -> [Point<F>; 4] {
    [(0.0, 0.0), (width, 0.0), (width, height), (0.0, height)].map(|(x, y)| Point::new(x, y))
}

/// How a wall of 1270 × 1016 mm is seen.
fn view<A: Frame, B: Frame>() -> impl Strategy<Value = Map<A, B>> {
    quad().prop_map(|seen| Map::from_four(corners(1270.0, 1016.0), seen).unwrap())
}

/// A place on that wall.
fn on_wall<F: Frame>() -> impl Strategy<Value = Point<F>> {
    (0.0..1270.0, 0.0..1016.0).prop_map(|(x, y)| Point::new(x, y))
}

fn apart<F: Frame>(a: Point<F>, b: Point<F>) -> f64 {
    a.distance(b).value()
}
