//! Lengths as people say them, in both units, the one that the event reads first: `4 ft 2 in (1.27 m)`.

use crate::frame::{MM_PER_INCH, float, round_index};
use crate::plan::settings::Units;
use crate::words::Words;

/// Inches from which feet are said: below, “30 in” is what a tape measure shows.
const FEET_FROM_INCHES: usize = 48;
/// Millimetres from which metres are said.
const METRES_FROM_MM: f64 = 1_000.0;

/// A length in both units.
pub(super) fn both(mm: f64, units: Units, words: &Words) -> String {
    let (first, second) = match units {
        Units::Inch => (inches(mm, words), metric(mm, words)),
        Units::Mm => (metric(mm, words), inches(mm, words)),
    };
    words.say("length-both", &[("first", first.into()), ("second", second.into())])
}

/// Whole millimetres, or metres with two decimals.
fn metric(mm: f64, words: &Words) -> String {
    if mm < METRES_FROM_MM - 0.5 {
        return words.say("length-mm", &[("mm", round_index(mm).into())]);
    }
    let hundredths = round_index(mm / 10.0);
    words.say("length-m", &[("metres", decimals(hundredths, 100).into())])
}

/// Feet and inches, or inches, to the nearest half inch.
fn inches(mm: f64, words: &Words) -> String {
    let halves = round_index(mm / MM_PER_INCH * 2.0);
    let (feet, rest) = if halves / 2 >= FEET_FROM_INCHES { (halves / 24, halves % 24) } else { (0, halves) };
    let whole = rest / 2;
    let inches = match (whole, rest.is_multiple_of(2)) {
        (_, true) => whole.to_string(),
        (0, false) => "½".to_owned(),
        (_, false) => format!("{whole}½"),
    };
    match (feet, rest) {
        (0, _) => words.say("length-in", &[("inches", inches.into())]),
        (_, 0) => words.say("length-ft", &[("feet", feet.into())]),
        _ => words.say("length-ft-in", &[("feet", feet.into()), ("inches", inches.into())]),
    }
}

/// A number of parts of one as a decimal number without zeros behind: 127 hundredths are `1.27`, 130 are `1.3`.
pub(super) fn decimals(count: usize, of: usize) -> String {
    (float(count) / float(of)).to_string()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_length_is_said_in_both_units() {
        let words = Words::english();
        let said = |mm: f64| both(mm, Units::Inch, &words).replace('\u{a0}', " ");
        assert_eq!(said(127.0), "5 in (127 mm)");
        assert_eq!(said(1270.0), "4 ft 2 in (1.27 m)");
        assert_eq!(said(1219.2), "4 ft (1.22 m)");
        assert_eq!(said(381.0), "15 in (381 mm)");
        assert_eq!(said(12.7), "½ in (13 mm)");
        assert_eq!(said(1003.3), "39½ in (1 m)");
        assert_eq!(both(2500.0, Units::Mm, &words).replace('\u{a0}', " "), "2.5 m (8 ft 2½ in)");
    }
}
