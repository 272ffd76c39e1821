//! Conversions between real and whole numbers.
//!
//! Elsewhere lossy `as` is denied; whoever needs one calls these, which say what happens at the ends.

/// A count as a real number; exact below 2^53.
#[must_use]
#[allow(clippy::cast_precision_loss, reason = "counts of pixels and cells stay far below 2^53")]
pub fn float(count: usize) -> f64 {
    count as f64
}

/// The largest whole number not above `value`, 0 where `value` is negative or not a number.
#[must_use]
#[allow(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "`as` cuts off the fraction, which is the floor above 0; it saturates, and maps NaN and negative numbers to 0"
)]
pub fn floor_index(value: f64) -> usize {
    value as usize
}

/// The nearest whole number, 0 where `value` is negative or not a number.
#[must_use]
pub fn round_index(value: f64) -> usize {
    floor_index(value + 0.5)
}

/// The smallest whole number not below `value`, 0 where `value` is negative or not a number.
#[must_use]
pub fn ceil_index(value: f64) -> usize {
    floor_index(value.ceil())
}

/// The nearest whole number of either sign, saturating; 0 where `value` is not a number.
#[must_use]
#[allow(clippy::cast_possible_truncation, reason = "`as` saturates, which is what is promised")]
pub fn round_signed(value: f64) -> i64 {
    value.round() as i64
}

/// The nearest grey level, clamped to 0 … 255; 0 where `value` is not a number.
#[must_use]
#[allow(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "`as` cuts off the fraction, which is the floor above 0, and saturates"
)]
pub fn round_byte(value: f64) -> u8 {
    (value + 0.5) as u8
}

/// Single precision of a real number, rounded to the nearest; beyond its range infinite.
#[must_use]
#[allow(clippy::cast_possible_truncation, reason = "rounding is what is promised")]
pub fn narrow(value: f64) -> f32 {
    value as f32
}
