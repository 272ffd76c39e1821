//! Consensus: the first camera, from codes that agree with each other where they hang.

use super::camera::Correspondence;
use super::lens::Lens;
use super::reading::Camera;
use crate::frame::{Length, WallMm};

/// Maximum distance of an inlier from its place, in mm: squares and cards hang within some 15.
const AGREES_MM: f64 = 25.0;
/// Growth of that distance for each mm from the nearest inlier, while there are fewer than 6 inliers.
const DRIFT: f64 = 0.12;
/// Maximum number of anchors tried as seeds.
const SEEDS: usize = 12;

/// Camera with the most inliers, and these. `None` where there are no anchors.
///
/// Grown from one anchor outwards, each time fitted again: a few that hang elsewhere do not bend it.
#[must_use]
pub fn consensus(anchors: &[Correspondence], lens: Lens) -> Option<(Camera, Vec<Correspondence>)> {
    let step = anchors.len().div_ceil(SEEDS).max(1);
    let mut best: Option<(Camera, Vec<Correspondence>)> = None;
    for seed in anchors.iter().step_by(step) {
        let Some(camera) = Camera::from_one(seed, lens) else { continue };
        let camera = grown(camera, seed, anchors);
        let agreeing: Vec<Correspondence> =
            anchors.iter().filter(|a| camera.placement_error_mm(a) < AGREES_MM).copied().collect();
        let enough = agreeing.len() * 10 >= anchors.len() * 9;
        if best.as_ref().is_none_or(|(_, most)| agreeing.len() > most.len()) {
            best = Some((camera, agreeing));
        }
        if enough {
            break;
        }
    }
    best
}

fn grown(mut camera: Camera, seed: &Correspondence, anchors: &[Correspondence]) -> Camera {
    let away = |a: &Correspondence| -> Length<WallMm> { a.wall[0].distance(seed.wall[0]) };
    let mut waiting: Vec<&Correspondence> = anchors.iter().filter(|a| *a != seed).collect();
    waiting.sort_by(|a, b| away(a).value().total_cmp(&away(b).value()));
    let mut agreeing = vec![*seed];
    let mut at = 0;
    while at < waiting.len() {
        let batch = (agreeing.len() / 3).clamp(1, waiting.len() - at);
        let known = agreeing.len();
        for anchor in &waiting[at..at + batch] {
            let near =
                agreeing.iter().map(|a| a.wall[0].distance(anchor.wall[0]).value()).fold(f64::MAX, f64::min);
            let slack = if known < 6 { near * DRIFT } else { 0.0 };
            if camera.placement_error_mm(anchor) < AGREES_MM + slack {
                agreeing.push(**anchor);
            }
        }
        if agreeing.len() > known {
            camera = camera.fitted(&agreeing);
        }
        at += batch;
    }
    camera
}
