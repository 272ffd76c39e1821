//! Lengths as people read them: the unit that they chose first, the other in brackets.
//!
//! ```
//! use everysquare::plan::lengths::{both, one};
//! use everysquare::plan::settings::Units;
//! use everysquare::words::Words;
//! let words = Words::english();
//! assert_eq!(both(1270.0, Units::Mm, &words), "1.27 m (4 ft 2 in)");
//! assert_eq!(one(95.0, Units::Inch, &words), "3 3/4 in");
//! ```

use super::settings::Units;
use crate::frame::{MM_PER_INCH, float, round_index};
use crate::words::Words;

/// Parts of an inch that tape measures show and people find again.
const PARTS_OF_AN_INCH: usize = 8;
const INCHES_PER_FOOT: usize = 12;

/// A length in both units, such as `1.27 m (4 ft 2 in)`.
#[must_use]
pub fn both(mm: f64, units: Units, words: &Words) -> String {
    let (metric, inches) = (metric(mm, words), feet(mm, words));
    let (first, second) = match units {
        Units::Inch => (inches, metric),
        Units::Mm => (metric, inches),
    };
    words.say("length-both", &[("first", first.into()), ("second", second.into())])
}

/// A length in one unit.
#[must_use]
pub fn one(mm: f64, units: Units, words: &Words) -> String {
    match units {
        Units::Inch => feet(mm, words),
        Units::Mm => metric(mm, words),
    }
}

/// Metres from one metre on, with three digits behind the point as a tape measure has them; else millimetres.
fn metric(mm: f64, words: &Words) -> String {
    if mm < 999.5 {
        return words.say("length-mm", &[("length", round_index(mm).to_string().into())]);
    }
    let metres = format!("{:.3}", mm / 1000.0);
    let tidy = metres.trim_end_matches('0').trim_end_matches('.');
    words.say("length-m", &[("length", tidy.into())])
}

/// Feet and inches to an eighth of an inch.
fn feet(mm: f64, words: &Words) -> String {
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
#[must_use]
pub fn inches(mm: f64) -> String {
    let parts = round_index(mm / MM_PER_INCH * float(PARTS_OF_AN_INCH));
    with_part(parts / PARTS_OF_AN_INCH, parts % PARTS_OF_AN_INCH)
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
        let feet = |mm| one(mm, Units::Inch, &words);
        let metric = |mm| one(mm, Units::Mm, &words);
        assert_eq!(feet(1270.0), "4 ft 2 in");
        assert_eq!(feet(127.0), "5 in");
        assert_eq!(feet(609.5), "2 ft 0 in");
        assert_eq!(feet(100.0), "3 7/8 in");
        assert_eq!(metric(1270.0), "1.27 m");
        assert_eq!(metric(999.0), "999 mm");
        assert_eq!(metric(999.9), "1 m");
        assert_eq!((inches(12.7), inches(635.0), inches(6.35)), ("1/2".into(), "25".into(), "1/4".into()));
    }
}
