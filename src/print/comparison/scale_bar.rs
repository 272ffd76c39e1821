//! The bar below a picture that says how long a length in it is in truth.

use serde::Serialize;

use crate::frame::MM_PER_INCH;
use crate::plan::settings::Units;
use crate::print::Sources;
use crate::print::lengths::one;

/// The longest part of a picture's width that its bar takes.
const MOST: f64 = 0.4;
/// Lengths that people know: in millimetres, and in inches.
const METRIC: [f64; 16] =
    [1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0, 200.0, 500.0, 1e3, 2e3, 5e3, 1e4, 2e4, 5e4, 1e5];
const INCHES: [f64; 14] =
    [0.125, 0.25, 0.5, 1.0, 2.0, 4.0, 6.0, 12.0, 24.0, 60.0, 120.0, 240.0, 600.0, 1200.0];

/// A bar.
#[derive(Debug, PartialEq, Serialize)]
pub(super) struct ScaleBar {
    /// Its length as a part of the picture's width.
    pub share: f64,
    /// The length that it stands for.
    pub words: String,
}

impl ScaleBar {
    /// The longest bar that suits a picture of something so wide in truth.
    pub fn of(sources: &Sources, true_mm: f64) -> Self {
        let lengths: Vec<f64> = match sources.settings.print.units {
            Units::Mm => METRIC.to_vec(),
            Units::Inch => INCHES.map(|inches| inches * MM_PER_INCH).to_vec(),
        };
        let suits = |length: &&f64| **length <= true_mm * MOST;
        let shortest = lengths.first().copied().unwrap_or(1.0);
        let length = lengths.iter().rev().find(suits).copied().unwrap_or(shortest);
        Self { share: (length / true_mm).min(1.0), words: one(sources, length) }
    }
}
