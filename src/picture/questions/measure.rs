//! Lengths that come out whole.

use crate::frame::{MM_PER_INCH, float, round_index};

/// A unit that people measure in.
#[derive(Copy, Clone, Debug, PartialEq, Eq)]
pub enum Unit {
    /// Inches of 25.4 mm.
    Inch,
    /// Millimetres.
    Mm,
}

/// A whole number of a unit.
#[derive(Copy, Clone, Debug, PartialEq, Eq)]
pub struct Measure {
    /// How many.
    pub count: usize,
    /// Of what.
    pub unit: Unit,
}

/// How far from a whole number a length in a file may lie and still be meant as one, in its unit: settings have at most
/// two decimals, so that nothing lies between this and a hundredth.
const ROUNDING: f64 = 1e-6;

/// A length in every unit in which it is a whole number.
///
/// ```
/// use everysquare::picture::questions::{Measure, Unit, measures};
/// assert_eq!(measures(127.0), [Measure { count: 5, unit: Unit::Inch }, Measure { count: 127, unit: Unit::Mm }]);
/// assert_eq!(measures(25.4), [Measure { count: 1, unit: Unit::Inch }]);
/// assert_eq!(measures(33.3), []);
/// ```
#[must_use]
pub fn measures(mm: f64) -> Vec<Measure> {
    let units = [(Unit::Inch, mm / MM_PER_INCH), (Unit::Mm, mm)];
    units.into_iter().filter_map(|(unit, length)| Some(Measure { count: whole(length)?, unit })).collect()
}

/// The whole number that a number is, if it is one above 0.
pub(super) fn whole(number: f64) -> Option<usize> {
    let nearest = round_index(number);
    (nearest > 0 && (number - float(nearest)).abs() < ROUNDING).then_some(nearest)
}
