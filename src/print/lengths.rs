//! Lengths as people read them, in the unit of an event's settings: see [`crate::plan::lengths`].

use super::Sources;
use crate::frame::round_index;
use crate::plan::lengths;

pub(super) use lengths::inches;

/// A length in both units, such as `1.27 m (4 ft 2 in)`.
pub(super) fn both(sources: &Sources, mm: f64) -> String {
    lengths::both(mm, sources.settings.print.units, sources.words)
}

/// A length in the unit of the settings.
pub(super) fn one(sources: &Sources, mm: f64) -> String {
    lengths::one(mm, sources.settings.print.units, sources.words)
}

/// Whole millimetres, without unit.
pub(super) fn millimetres(mm: f64) -> String {
    round_index(mm).to_string()
}
