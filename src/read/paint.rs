//! For tests: codes painted into a grey picture, blurred only by the pixels' own area.

use super::pose::Pose;
use crate::frame::{Point, Vector, float, round_byte};
use crate::photo::Luma;
use crate::plan::settings::Settings;
use crate::plan::{Grid, Modules, Printed, Tag};

/// Samples a side of each pixel.
const SAMPLES: usize = 4;
/// Grey levels of ink, of paper, and of what lies beyond the quiet zone.
const INK: f64 = 40.0;
const PAPER: f64 = 215.0;
const AROUND: f64 = 130.0;

/// A picture of `width` × `height` pixels with these codes, each with a quiet zone of 2 modules.
pub(super) fn paint(width: usize, height: usize, codes: &[(Pose, Modules)]) -> Luma {
    let level = |x: f64, y: f64| {
        for (pose, modules) in codes {
            let Some(m) = pose.photo_to_module(Point::new(x, y)) else { continue };
            if (-2.0..23.0).contains(&m.x) && (-2.0..23.0).contains(&m.y) {
                let inside = m.x >= 0.0 && m.y >= 0.0;
                let dark =
                    inside && modules.dark(crate::frame::floor_index(m.x), crate::frame::floor_index(m.y));
                return if dark { INK } else { PAPER };
            }
        }
        AROUND
    };
    let part = |k: usize| (float(k) + 0.5) / float(SAMPLES);
    let grey = (0..width * height)
        .map(|i| {
            let sum: f64 = (0..SAMPLES * SAMPLES)
                .map(|s| level(float(i % width) + part(s % SAMPLES), float(i / width) + part(s / SAMPLES)))
                .sum();
            round_byte(sum / float(SAMPLES * SAMPLES))
        })
        .collect();
    Luma { width, height, grey }
}

/// A pose with square modules of `px` pixels, turned clockwise by `degrees`.
pub(super) fn pose(x: f64, y: f64, px: f64, degrees: f64) -> Pose {
    let turned = |x: f64, y: f64| Vector::new(x, y).turned(degrees.to_radians());
    Pose { centre: Point::new(x, y), u: turned(px, 0.0), v: turned(0.0, px) }
}

/// An event of 10 × 8 squares.
pub(super) fn event(tag: &str) -> Printed {
    let grid = Grid::usual(10, 8);
    Settings::new("Painted".to_owned(), Tag::new(tag).unwrap(), grid).printed().unwrap()
}
