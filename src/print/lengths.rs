//! Lengths as people read them, in the unit of an event's settings: see [`crate::plan::lengths`].

use super::Sources;
use crate::frame::round_index;
use crate::plan::lengths;
use crate::plan::settings::Units;

/// A length such as `4 ft 2 in (1.27 m)`; metric alone where the settings are.
pub(super) fn both(sources: &Sources, mm: f64) -> String {
    lengths::both(mm, sources.settings.print.units, sources.words)
}

/// A length in the unit of the settings.
pub(super) fn one(sources: &Sources, mm: f64) -> String {
    lengths::one(mm, sources.settings.print.units, sources.words)
}

/// A length as whole millimetres and as inches to an eighth, without units; that of the settings first.
pub(super) fn distances(sources: &Sources, mm: f64) -> [String; 2] {
    let (metric, inches) = (round_index(mm).to_string(), lengths::inches(mm));
    match sources.settings.print.units {
        Units::Inch => [inches, metric],
        Units::Mm => [metric, inches],
    }
}
