//! Lengths as people read them: inches first with metres in brackets where they chose inches, else metres alone.
//!
//! ```
//! use everysquare::plan::lengths::{both, one};
//! use everysquare::plan::settings::Units;
//! use everysquare::words::Words;
//! let words = Words::english();
//! assert_eq!(both(1270.0, Units::Mm, &words), "1.27 m");
//! assert_eq!(both(1270.0, Units::Inch, &words), "4 ft 2 in (1.27 m)");
//! assert_eq!(one(95.0, Units::Inch, &words), "3 3/4 in");
//! ```

use super::settings::Units;
use crate::frame::{MM_PER_INCH, float, round_index};
use crate::words::Words;

/// Parts of an inch that tape measures show and people find again.
const PARTS_OF_AN_INCH: usize = 8;
const INCHES_PER_FOOT: usize = 12;
/// Part of an eighth of an inch that is the last bits of a conversion.
const ROUNDING: f64 = 1e-6;
/// A square foot in square metres, exactly (0.3048²).
const SQUARE_METRES_A_SQUARE_FOOT: f64 = 0.092_903_04;

/// A length in inches with the metric one in brackets, such as `4 ft 2 in (1.27 m)`; metric alone where people read that.
#[must_use]
pub fn both(mm: f64, units: Units, words: &Words) -> String {
    pair(feet(mm, words), metric(mm, words), units, words)
}

fn pair(inches: String, metric: String, units: Units, words: &Words) -> String {
    match units {
        Units::Inch => words.say("length-both", &[("first", inches.into()), ("second", metric.into())]),
        Units::Mm => metric,
    }
}

/// A length to buy, such as `about 36 ft (11 m)`: whole feet and metres, rounded up.
#[must_use]
pub fn about(mm: f64, units: Units, words: &Words) -> String {
    let up = |unit_mm: f64| round_index((mm / unit_mm).ceil()).max(1);
    let foot = MM_PER_INCH * float(INCHES_PER_FOOT);
    let feet = words.say("length-ft", &[("feet", up(foot).into())]);
    let metres = words.say("length-m", &[("length", up(1000.0).to_string().into())]);
    words.say("length-about", &[("length", pair(feet, metres, units, words).into())])
}

/// An area of paper, such as `14 sq ft (1.29 m²)`.
#[must_use]
pub fn area(square_metres: f64, units: Units, words: &Words) -> String {
    let say = |id, digits: usize, value: f64| {
        let said = format!("{value:.digits$}");
        let tidy = if digits > 0 { said.trim_end_matches('0').trim_end_matches('.') } else { &said };
        words.say(id, &[("area", tidy.into())])
    };
    let feet = say("area-ft2", 0, square_metres / SQUARE_METRES_A_SQUARE_FOOT);
    pair(feet, say("area-m2", 2, square_metres), units, words)
}

/// A length in one unit.
#[must_use]
pub fn one(mm: f64, units: Units, words: &Words) -> String {
    match units {
        Units::Inch => feet(mm, words),
        Units::Mm => metric(mm, words),
    }
}

/// A length to calculate with: whole inches and eighths where it is so exactly and people read inches, else millimetres to a tenth.
#[must_use]
pub fn exact(mm: f64, units: Units, words: &Words) -> String {
    let eighths = mm / MM_PER_INCH * float(PARTS_OF_AN_INCH);
    if units == Units::Inch && (eighths - eighths.round()).abs() < ROUNDING {
        return words.say("length-in", &[("length", inches(mm).into())]);
    }
    let said = format!("{mm:.1}");
    words.say("length-mm", &[("length", said.trim_end_matches('0').trim_end_matches('.').into())])
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
    let said = with_part(inches, part);
    match (feet, inches, part) {
        (0, ..) => words.say("length-in", &[("length", said.into())]),
        (_, 0, 0) => words.say("length-ft", &[("feet", feet.into())]),
        _ => words.say("length-ft-in", &[("feet", feet.into()), ("inches", said.into())]),
    }
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
        assert_eq!(feet(609.5), "2 ft");
        assert_eq!(one(304.8, Units::Inch, &Words::of("es")), "1 pie");
        assert_eq!(one(1270.0, Units::Inch, &Words::of("es")), "4 pies 2 pulg");
        assert_eq!(about(10_900.0, Units::Inch, &words), "about 36 ft (11 m)");
        assert_eq!(about(10_900.0, Units::Mm, &words), "about 11 m");
        assert_eq!(area(1.29, Units::Inch, &words), "14 sq ft (1.29 m²)");
        assert_eq!(area(10.0, Units::Mm, &words), "10 m²");
        assert_eq!(feet(100.0), "3 7/8 in");
        assert_eq!(metric(1270.0), "1.27 m");
        assert_eq!(metric(999.0), "999 mm");
        assert_eq!(metric(999.9), "1 m");
        assert_eq!(exact(508.0, Units::Inch, &words), "20 in");
        assert_eq!(exact(9.525, Units::Inch, &words), "3/8 in");
        assert_eq!(exact(10.16, Units::Inch, &words), "10.2 mm");
        assert_eq!(exact(50.0, Units::Mm, &words), "50 mm");
        assert_eq!((inches(12.7), inches(635.0), inches(6.35)), ("1/2".into(), "25".into(), "1/4".into()));
    }
}
