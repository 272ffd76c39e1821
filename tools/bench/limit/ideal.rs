//! The best that can be done: a reader that is told pose, blur, light and surroundings, and only has to say which of the event's
//! codes it is.
//!
//! What a module takes from the light is worked out once for each pixel; a code is the sum of its dark modules. The code
//! that leaves least of the photo unexplained is taken.

use everysquare::frame::{Point, ceil_index, float, floor_index, round_signed};
use everysquare::photo::Luma;
use everysquare::plan::{Modules, Printed};
use everysquare::read::pose::Pose;

use super::patch::{Scene, toned};

const SIDE: usize = 21;
/// Samples along a module's side.
const SAMPLES: usize = 4;

/// How much of each pixel's light each module takes: pixel and share.
fn shares(pose: &Pose, side: usize, blur_px: f64) -> Vec<Vec<(usize, f64)>> {
    let reach = ceil_index(3.5 * blur_px + 1.0);
    let area = pose.u.cross(pose.v).abs() / float(SAMPLES * SAMPLES);
    // a pixel is a square: its blur adds to the lens's
    let blur = blur_px.hypot((1.0_f64 / 12.0).sqrt());
    let bell = |d: f64| (-0.5 * (d / blur).powi(2)).exp() / (blur * std::f64::consts::TAU.sqrt());
    (0..SIDE * SIDE)
        .map(|module| {
            let mut seen = vec![0.0; side * side];
            for sample in 0..SAMPLES * SAMPLES {
                let part = |k: usize| (float(k) + 0.5) / float(SAMPLES);
                let at = pose.module_to_photo(Point::new(
                    float(module % SIDE) + part(sample % SAMPLES),
                    float(module / SIDE) + part(sample / SAMPLES),
                ));
                let (x, y) = (floor_index(at.x), floor_index(at.y));
                let around = |k: usize| k.saturating_sub(reach)..(k + reach + 1).min(side);
                for row in around(y) {
                    let down = area * bell(float(row) + 0.5 - at.y);
                    for column in around(x) {
                        seen[row * side + column] += down * bell(float(column) + 0.5 - at.x);
                    }
                }
            }
            seen.into_iter().enumerate().filter(|(_, share)| *share > 1e-4).collect()
        })
        .collect()
}

/// Which square's code explains the photo best.
pub fn best(printed: &Printed, scene: &Scene, (pose, blur_px): (&Pose, f64), luma: &Luma) -> Option<usize> {
    let side = luma.width;
    let blank = Scene {
        code: None,
        print: scene.print,
        over: scene.over,
        white: scene.white,
        around: scene.around,
        light: scene.light,
    };
    let white = blank.blurred(pose, side, blur_px);
    let full = Scene::DARK * scene.light.0;
    let shares = shares(pose, side, blur_px);
    let left = |code: &Modules| {
        let mut level = white.clone();
        for (module, seen) in shares.iter().enumerate() {
            if code.dark(module % SIDE, module / SIDE) {
                seen.iter().for_each(|(pixel, share)| level[*pixel] -= full * share);
            }
        }
        level
            .iter()
            .zip(&luma.grey)
            .map(|(level, grey)| (255.0 * toned(*level) - f64::from(*grey)).powi(2))
            .sum::<f64>()
    };
    (0..printed.squares.len()).min_by_key(|at| round_signed(1000.0 * left(&printed.squares[*at].modules)))
}
