//! Lengths as people read them: the unit of the settings first, the other in brackets.

use super::Sources;
use crate::frame::{MM_PER_INCH, float, round_index};
use crate::plan::settings::Units;
use crate::words::Words;

/// Parts of an inch that tape measures show and people find again.
const PARTS_OF_AN_INCH: usize = 8;
const INCHES_PER_FOOT: usize = 12;

/// A length in both units, such as `1.27 m (4 ft 2 in)`.
pub(super) fn both(sources: &Sources, mm: f64) -> String {
    let (metric, inches) = (metric(sources.words, mm), feet(sources.words, mm));
    let (first, second) = match sources.settings.print.units {
        Units::Inch => (inches, metric),
        Units::Mm => (metric, inches),
    };
    sources.words.say("length-both", &[("first", first.into()), ("second", second.into())])
}

/// A length in the unit of the settings.
pub(super) fn one(sources: &Sources, mm: f64) -> String {
    match sources.settings.print.units {
        Units::Inch => feet(sources.words, mm),
        Units::Mm => metric(sources.words, mm),
    }
}

/// Metres from one metre on, with three digits behind the point as a tape measure has them; else millimetres.
fn metric(words: &Words, mm: f64) -> String {
    if mm < 999.5 {
        return words.say("length-mm", &[("length", round_index(mm).to_string().into())]);
    }
    let metres = format!("{:.3}", mm / 1000.0);
    let tidy = metres.trim_end_matches('0').trim_end_matches('.');
    words.say("length-m", &[("length", tidy.into())])
}

/// Feet and inches to an eighth of an inch.
fn feet(words: &Words, mm: f64) -> String {
    let parts = round_index(mm / MM_PER_INCH * float(PARTS_OF_AN_INCH));
    let (whole, part) = (parts / PARTS_OF_AN_INCH, parts % PARTS_OF_AN_INCH);
    let (feet, inches) = (whole / INCHES_PER_FOOT, whole % INCHES_PER_FOOT);
    let inches = with_part(inches, part);
    if feet == 0 {
        return words.say("length-in", &[("length", inches.into())]);
    }
    words.say("length-ft", &[("feet", feet.to_string().into()), ("inches", inches.into())])
}

/// Whole inches to an eighth, without feet and unit, such as `25 1/8`.
pub(super) fn inches(mm: f64) -> String {
    let parts = round_index(mm / MM_PER_INCH * float(PARTS_OF_AN_INCH));
    with_part(parts / PARTS_OF_AN_INCH, parts % PARTS_OF_AN_INCH)
}

/// Whole millimetres, without unit.
pub(super) fn millimetres(mm: f64) -> String {
    round_index(mm).to_string()
}

/// A whole number and eighths, shortened.
fn with_part(whole: usize, eighths: usize) -> String {
    let fraction = match eighths {
        0 => return whole.to_string(),
        4 => "1/2".to_owned(),
        even if even % 2 == 0 => format!("{}/4", even / 2),
        odd => format!("{odd}/8"),
    };
    if whole == 0 { fraction } else { format!("{whole} {fraction}") }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn lengths_are_said_as_tape_measures_show_them() {
        let words = Words::english();
        assert_eq!(feet(&words, 1270.0), "4 ft 2 in");
        assert_eq!(feet(&words, 127.0), "5 in");
        assert_eq!(feet(&words, 609.5), "2 ft 0 in");
        assert_eq!(feet(&words, 100.0), "3 7/8 in");
        assert_eq!(metric(&words, 1270.0), "1.27 m");
        assert_eq!(metric(&words, 999.0), "999 mm");
        assert_eq!(metric(&words, 999.9), "1 m");
        assert_eq!((inches(12.7), inches(635.0), inches(6.35)), ("1/2".into(), "25".into(), "1/4".into()));
    }
}
