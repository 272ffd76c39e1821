//! Modules to text: a decoder for version 1, level H, alphanumeric, without error correction. It shares nothing with the
//! encoder, so that a fault of either shows.
//!
//! Everything here is from ISO/IEC 18004: format information and its BCH code, masks, placement of codewords,
//! Reed–Solomon over GF(2⁸) with x⁸ + x⁴ + x³ + x² + 1.

use super::{Modules, SIDE};

/// Number of codewords in version 1-H; 9 of them are data.
const CODEWORDS: usize = 26;
const DATA: usize = 9;
/// Mask of the format information.
const FORMAT_MASK: u32 = 0b101_0100_0001_0010;
/// Generator of the format's BCH (15, 5) code.
const FORMAT_GENERATOR: u32 = 0b101_0011_0111;
/// Level H as the format says it.
const LEVEL_H: u32 = 0b10;
/// The 45 characters of the alphanumeric mode, in the order of their values.
const ALPHANUMERIC: &[u8; 45] = b"0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:";

impl Modules {
    /// The text that the code says; `None` where a single module of its data or of its format is wrong, or where it is not
    /// version 1, level H, one segment of alphanumeric characters.
    #[must_use]
    pub fn text(&self) -> Option<String> {
        let (level, mask) = self.format()?;
        if level != LEVEL_H {
            return None;
        }
        let codewords = self.codewords(mask);
        is_reed_solomon(&codewords).then(|| message(&codewords[..DATA]))?
    }

    /// Level and mask, where both copies of the format agree and are a word of the BCH code.
    fn format(&self) -> Option<(u32, u32)> {
        // Most significant bit first, around the top left finder pattern and along the two others.
        let around =
            (0..6).map(|x| (x, 8)).chain([(7, 8), (8, 8), (8, 7)]).chain((0..6).rev().map(|y| (8, y)));
        let along = (14..SIDE).rev().map(|y| (8, y)).chain((13..SIDE).map(|x| (x, 8)));
        let bits = |places: &mut dyn Iterator<Item = (usize, usize)>| {
            places.fold(0, |bits: u32, (x, y)| bits << 1 | u32::from(self.dark(x, y)))
        };
        let format = bits(&mut { around });
        if format != bits(&mut { along }) {
            return None;
        }
        let word = format ^ FORMAT_MASK;
        let mut rest = word;
        for bit in (10..15).rev() {
            if rest >> bit & 1 == 1 {
                rest ^= FORMAT_GENERATOR << (bit - 10);
            }
        }
        (rest == 0).then_some((word >> 13, word >> 10 & 0b111))
    }

    /// The codewords in the order in which they are placed: up and down in columns two modules wide, from the right.
    fn codewords(&self, mask: u32) -> [u8; CODEWORDS] {
        let pairs =
            (0..SIDE).rev().step_by(2).map(|right| if right <= 6 { right.saturating_sub(1) } else { right });
        let mut codewords = [0; CODEWORDS];
        let mut placed = 0;
        for (nth, right) in pairs.take(SIDE / 2).enumerate() {
            for step in 0..SIDE {
                let y = if nth % 2 == 0 { SIDE - 1 - step } else { step };
                for x in [right, right.saturating_sub(1)] {
                    if is_function(x, y) || placed == CODEWORDS * 8 {
                        continue;
                    }
                    let bit = u8::from(self.dark(x, y) != is_masked(mask, x, y));
                    codewords[placed / 8] |= bit << (7 - placed % 8);
                    placed += 1;
                }
            }
        }
        codewords
    }
}

/// Whether a module belongs to a finder pattern, separator, timing pattern or the format.
fn is_function(x: usize, y: usize) -> bool {
    let (low, high) = (9, SIDE - 8);
    x == 6 || y == 6 || (x < low && y < low) || (x < low && y >= high) || (x >= high && y < low)
}

/// Whether a mask turns a module over.
fn is_masked(mask: u32, x: usize, y: usize) -> bool {
    let (i, j) = (y, x); // the standard's names
    0 == match mask {
        0b000 => (i + j) % 2,
        0b001 => i % 2,
        0b010 => j % 3,
        0b011 => (i + j) % 3,
        0b100 => (i / 2 + j / 3) % 2,
        0b101 => (i * j) % 2 + (i * j) % 3,
        0b110 => ((i * j) % 2 + (i * j) % 3) % 2,
        _ => ((i + j) % 2 + (i * j) % 3) % 2,
    }
}

/// Whether the codewords, as a polynomial, are 0 at the first powers of 2, one for each codeword of error correction.
fn is_reed_solomon(codewords: &[u8; CODEWORDS]) -> bool {
    let mut root = 1;
    (0..CODEWORDS - DATA).all(|_| {
        let value = codewords.iter().fold(0, |value, codeword| product(value, root) ^ codeword);
        root = product(root, 2);
        value == 0
    })
}

/// The product in GF(2⁸).
fn product(a: u8, b: u8) -> u8 {
    let (mut a, mut sum) = (a, 0);
    for bit in 0..8 {
        if b >> bit & 1 == 1 {
            sum ^= a;
        }
        a = a << 1 ^ if a & 0x80 == 0 { 0 } else { 0x1d };
    }
    sum
}

/// The text of one alphanumeric segment.
fn message(data: &[u8]) -> Option<String> {
    let mut bits = data.iter().flat_map(|byte| (0..8).rev().map(move |bit| usize::from(byte >> bit & 1)));
    let mut take = |count: usize| (0..count).try_fold(0, |value, _| Some(value << 1 | bits.next()?));
    if take(4)? != 0b0010 {
        return None;
    }
    let length = take(9)?;
    let mut text = String::with_capacity(length.min(10));
    for _ in 0..length / 2 {
        let pair = take(11)?;
        for value in [pair / 45, pair % 45] {
            text.push(char::from(*ALPHANUMERIC.get(value)?));
        }
    }
    if length % 2 == 1 {
        text.push(char::from(*ALPHANUMERIC.get(take(6)?)?));
    }
    let terminator = take(4)?;
    (terminator == 0).then_some(text)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn exactly_the_data_region_is_left() {
        let left = (0..SIDE * SIDE).filter(|i| !is_function(i % SIDE, i / SIDE)).count();
        assert_eq!(left, CODEWORDS * 8);
    }

    proptest! {
        #[test]
        fn what_is_encoded_is_read_back(text in "[0-9A-Z $%*+\\-./:]{1,10}") {
            prop_assert_eq!(Modules::encode(&text).unwrap().text(), Some(text));
        }

        #[test]
        fn one_wrong_module_of_data_or_format_is_noticed(text in "[0-9A-Z]{3}[-/.][A-Z]{0,3}[0-9]{1,3}", at in 0_usize..441) {
            let mut modules = Modules::encode(&text).unwrap();
            modules.0[at] = !modules.0[at];
            let (x, y) = (at % SIDE, at / SIDE);
            let format = (x == 8 && y != 6 && !(9..=13).contains(&y)) || (y == 8 && x != 6 && !(9..=12).contains(&x));
            if format || !is_function(x, y) {
                prop_assert_eq!(modules.text(), None);
            }
        }
    }
}
