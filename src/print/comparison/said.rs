//! Numbers of the comparison prints as people read them, in the unit of an event's settings.

use crate::display::measure::Quantity;
use crate::frame::MM_PER_INCH;
use crate::plan::settings::Units;
use crate::print::Sources;

/// Square millimetres in a square centimetre, a square metre and a square foot.
const MM2_PER_CM2: f64 = 100.0;
const MM2_PER_M2: f64 = 1e6;
const INCH2_PER_FOOT2: f64 = 144.0;

/// A number with at most so many digits behind the point, and no zeros at the end.
pub(super) fn number(value: f64, digits: usize) -> String {
    let said = format!("{value:.digits$}");
    if said.contains('.') { said.trim_end_matches('0').trim_end_matches('.').to_owned() } else { said }
}

/// A length to a tenth of a millimetre or a hundredth of an inch.
pub(super) fn length(sources: &Sources, mm: f64) -> String {
    let (id, said) = match sources.settings.print.units {
        Units::Mm => ("length-mm", number(mm, 1)),
        Units::Inch => ("length-in", number(mm / MM_PER_INCH, 2)),
    };
    sources.words.say(id, &[("length", said.into())])
}

/// A length that was measured, with how far off it may be; that is never said to be less than it is.
pub(super) fn measured_length(sources: &Sources, mm: Quantity) -> String {
    let (id, per, digits) = match sources.settings.print.units {
        Units::Mm => ("length-mm", 1.0, 1),
        Units::Inch => ("length-in", MM_PER_INCH, 2),
    };
    let scaled = Quantity { value: mm.value / per, within: mm.within / per };
    sources.words.say(id, &[("length", measured(scaled, digits).into())])
}

/// A measured number with how far off it may be, such as `5.02 ± 0.03`.
pub(super) fn measured(quantity: Quantity, digits: usize) -> String {
    let step = 10_f64.powi(-i32::try_from(digits).unwrap_or(0));
    let within = (quantity.within.abs() / step - 1e-6).ceil().max(1.0) * step;
    format!("{:.digits$} ± {within:.digits$}", quantity.value)
}

/// An area in square centimetres or square inches.
pub(super) fn area(sources: &Sources, mm2: f64) -> String {
    let (id, value) = match sources.settings.print.units {
        Units::Mm => ("comparison-cm2", mm2 / MM2_PER_CM2),
        Units::Inch => ("comparison-in2", mm2 / (MM_PER_INCH * MM_PER_INCH)),
    };
    sources.words.say(id, &[("area", number(value, if value < 100.0 { 2 } else { 0 }).into())])
}

/// The same, and in square metres or square feet behind it.
pub(super) fn large_area(sources: &Sources, mm2: f64) -> String {
    let (id, value) = match sources.settings.print.units {
        Units::Mm => ("comparison-m2", mm2 / MM2_PER_M2),
        Units::Inch => ("comparison-ft2", mm2 / (MM_PER_INCH * MM_PER_INCH) / INCH2_PER_FOOT2),
    };
    let large = sources.words.say(id, &[("area", number(value, 2).into())]);
    sources.words.say("length-both", &[("first", area(sources, mm2).into()), ("second", large.into())])
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_have_no_zeros_behind_and_an_error_is_never_made_small() {
        assert_eq!([number(5.0, 2), number(3.937, 2), number(100.0, 0)], ["5", "3.94", "100"]);
        assert_eq!(measured(Quantity { value: 5.021, within: 0.021 }, 2), "5.02 ± 0.03");
        assert_eq!(measured(Quantity { value: 128.26, within: 0.0 }, 1), "128.3 ± 0.1");
        assert_eq!(measured(Quantity { value: -0.5, within: 0.3 }, 1), "-0.5 ± 0.3");
    }
}
