//! The camera: found again from what it sees, also where squares hang askew or far from their place.

use everysquare::frame::{Map, PhotoPx, Point, StraightPx, Vector, WallMm, float};
use everysquare::read::Camera;
use everysquare::read::camera::Correspondence;
use everysquare::read::consensus::consensus;
use everysquare::read::lens::Lens;
use proptest::prelude::*;
use rand::{RngExt, SeedableRng};
use rand_chacha::ChaCha8Rng;

use super::{corners, view};

const COLUMNS: usize = 10;
const ROWS: usize = 8;
const SIDE_MM: f64 = 127.0;
/// A code of 21 modules of 0.6 mm, 8 mm from the lower right corner of its square.
const CODE_MM: f64 = 12.6;
const CODE_AT_MM: f64 = SIDE_MM - 8.0 - CODE_MM;

/// A wall of 80 squares seen from somewhat aside through a phone's lens.
fn camera() -> impl Strategy<Value = Camera> {
    (view::<WallMm, StraightPx>(), -0.08..0.08_f64, -0.03..0.03_f64).prop_map(|(wall_to_straight, k1, k2)| {
        Camera { wall_to_straight, lens: Lens { k1, k2, ..Lens::straight(4032.0, 3024.0) } }
    })
}

fn square_to_wall(column: usize, row: usize) -> [Point<WallMm>; 4] {
    let (x, y) = (float(column) * SIDE_MM + CODE_AT_MM, float(row) * SIDE_MM + CODE_AT_MM);
    let (right, down) = (x + CODE_MM, y + CODE_MM);
    [(x, y), (right, y), (right, down), (x, down)].map(|(x, y)| Point::new(x, y))
}

/// What the camera sees of 80 codes that hang `shift` beside their place.
fn anchors(camera: &Camera, mut shift: impl FnMut(usize) -> Vector<WallMm>) -> Vec<Correspondence> {
    let places = (0..ROWS).flat_map(|row| (0..COLUMNS).map(move |column| (column, row)));
    places
        .enumerate()
        .map(|(at, (column, row))| {
            let wall = square_to_wall(column, row);
            let by = shift(at);
            Correspondence { wall, photo: wall.map(|p| camera.wall_to_photo(p + by)) }
        })
        .collect()
}

/// Over the wall: how far from where it was the place seen lies, in mm; sorted.
fn errors_mm(truth: &Camera, found: &Camera) -> Vec<f64> {
    let mut errors: Vec<f64> = (0..=ROWS)
        .flat_map(|row| (0..=COLUMNS).map(move |column| (column, row)))
        .map(|(column, row)| Point::<WallMm>::new(float(column) * SIDE_MM, float(row) * SIDE_MM))
        .map(|p| {
            let seen: Point<PhotoPx> = truth.wall_to_photo(p);
            found.photo_to_wall(seen).map_or(f64::INFINITY, |back| back.distance(p).value())
        })
        .collect();
    errors.sort_by(f64::total_cmp);
    errors
}

fn median(errors: &[f64]) -> f64 {
    errors[errors.len() / 2]
}

/// Two numbers of a normal distribution (Box & Muller 1958).
fn normal(chance: &mut ChaCha8Rng) -> (f64, f64) {
    let (a, b): (f64, f64) =
        (chance.random_range(1e-12..1.0), chance.random_range(0.0..std::f64::consts::TAU));
    let far = (-2.0 * a.ln()).sqrt();
    (far * b.cos(), far * b.sin())
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(48))]

    #[test]
    fn squares_in_their_places_give_the_camera_back(truth in camera()) {
        let seen = anchors(&truth, |_| Vector::new(0.0, 0.0));
        let (found, agreeing) = consensus(&seen, Lens::straight(4032.0, 3024.0)).unwrap();
        prop_assert_eq!(agreeing.len(), seen.len());
        let errors = errors_mm(&truth, &found.fitted(&seen));
        // not 0: what is usual of phones counts for a little, however exact the squares are; most at the corners
        let worst = errors[errors.len() - 1];
        prop_assert!(median(&errors) < 0.1, "median {} mm", median(&errors));
        prop_assert!(worst < 2.0, "worst {worst} mm");
    }

    #[test]
    fn wall_to_photo_and_back(truth in camera(), x in 0.0..1270.0_f64, y in 0.0..1016.0_f64) {
        let p = Point::<WallMm>::new(x, y);
        let back = truth.photo_to_wall(truth.wall_to_photo(p)).unwrap();
        prop_assert!(back.distance(p).value() < 1e-6);
    }

    #[test]
    fn one_code_gives_a_camera_that_sees_it_where_it_is(truth in camera(), at in 0_usize..80) {
        let seen = anchors(&truth, |_| Vector::new(0.0, 0.0));
        let one = Camera::from_one(&seen[at], truth.lens).unwrap();
        prop_assert!(one.placement_error_mm(&seen[at]) < 0.05, "{} mm", one.placement_error_mm(&seen[at]));
    }
}

#[test]
fn a_shift_is_measured_on_the_wall() {
    let wall_to_straight = Map::scale_then_shift(2.5, 300.0, 200.0);
    let camera = Camera { wall_to_straight, lens: Lens::straight(4032.0, 3024.0) };
    let seen = anchors(&camera, |_| Vector::new(3.0, -4.0));
    assert!((camera.placement_error_mm(&seen[17]) - 5.0).abs() < 1e-9);
}

/// One wall of 80 squares hung carelessly, every fifth of them somewhere else: the median error of what is fitted to it.
fn careless(seed: u64) -> f64 {
    let mut chance = ChaCha8Rng::seed_from_u64(seed);
    let mut shake = |x: f64, y: f64| {
        Point::new(x + chance.random_range(-220.0..220.0), y + chance.random_range(-160.0..160.0))
    };
    let seen = [shake(500.0, 400.0), shake(3500.0, 400.0), shake(3500.0, 2600.0), shake(500.0, 2600.0)];
    let wall_to_straight = Map::from_four(corners(1270.0, 1016.0), seen).unwrap();
    let (k1, k2) = (chance.random_range(-0.08..0.08), chance.random_range(-0.03..0.03));
    let truth = Camera { wall_to_straight, lens: Lens { k1, k2, ..Lens::straight(4032.0, 3024.0) } };
    let seen = anchors(&truth, |at| {
        if at % 5 == 2 {
            // 40 to 100 mm away, any direction
            let angle: f64 = chance.random_range(0.0..std::f64::consts::TAU);
            Vector::new(chance.random_range(40.0..100.0), 0.0).turned(angle)
        } else {
            let (x, y) = normal(&mut chance);
            Vector::new(x, y) * (3.0 / 2.0_f64.sqrt()) // 3 mm root mean square
        }
    });
    let (found, _) = consensus(&seen, Lens::straight(4032.0, 3024.0)).unwrap();
    median(&errors_mm(&truth, &found.fitted(&seen)))
}

#[test]
fn squares_hung_carelessly_and_every_fifth_somewhere_else_hardly_bend_it() {
    let mut errors: Vec<f64> = (0..100).map(careless).collect();
    errors.sort_by(f64::total_cmp);
    let worst = errors[errors.len() - 1];
    assert!(median(&errors) < 1.0, "in half of the walls more than {} mm", median(&errors));
    assert!(worst < 2.0, "in one wall {worst} mm");
    println!(
        "median error over the wall: {:.2} mm in half of 100 walls, {worst:.2} mm in the worst",
        median(&errors)
    );
}
