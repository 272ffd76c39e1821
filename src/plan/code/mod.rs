//! The codes that are printed: QR version 1, error correction H (ISO/IEC 18004), alphanumeric.
//!
//! Texts, with `K7M` the event's tag: square `K7M-D7`, column card `K7M/D`, row card `K7M/7`, corner card `K7M.1`.
//!
//! ```text
//!      0     6 8       13    20
//!    0 ███████ F ······ ███████      █ the three finder patterns, light separators around them
//!      █     █ F ······ █     █      t timing: dark and light in turns
//!      █ ███ █ F ······ █ ███ █      F format: level and mask, twice
//!      █ ███ █ F ······ █ ███ █      D the dark module
//!      █ ███ █ F ······ █ ███ █      · 208 modules for 9 codewords of data and 17 of error correction
//!      █     █ F ······ █     █
//!    6 ███████ttttttttt ███████
//!              F ······
//!    8 FFFFFFtFF ······ FFFFFFFF
//!      ······t··············
//!   13         D············
//!      ███████ F ············
//! ```
//!
//! [`Modules::encode`] makes them with the mask of least penalty among those that show no fourth finder pattern, and reads them back
//! with [`Modules::text`].

mod encode;
mod link;
mod mask;

use std::fmt;

use rqrr::{Grid, SimpleGrid};
use thiserror::Error;

use crate::words::{Sentence, Tell, told_in_english};
pub use link::LinkCode;

/// Number of modules along one side of a version 1 code (ISO/IEC 18004).
pub const SIDE: usize = 21;
/// Width of the quiet zone that the standard asks for around a code, in modules.
pub const QUIET_ZONE: usize = 4;
/// Maximum number of alphanumeric characters in version 1 at level H (ISO/IEC 18004, table of capacities).
pub const CAPACITY: usize = 10;
/// Alphabet of a tag: capitals and digits without 0, 1, I and O, which are mistaken for each other.
pub const TAG_ALPHABET: &str = "23456789ABCDEFGHJKLMNPQRSTUVWXYZ";

/// A code that cannot be made.
#[derive(Debug, Error, PartialEq, Eq)]
pub enum CodeError {
    /// More text than the version holds, or a character outside the alphanumeric set.
    Text(String),
    /// Modules in a manifest that are not 111 hexadecimal digits.
    Hex(String),
}

told_in_english!(CodeError);

impl Tell for CodeError {
    fn sentence(&self) -> Sentence {
        match self {
            Self::Text(text) => Sentence::new("error-code-text")
                .with("text", text.as_str())
                .with("most", CAPACITY.to_string()),
            Self::Hex(text) => Sentence::new("error-code-hex").with("text", text.as_str()),
        }
    }
}

/// The three characters that all codes of one event begin with.
#[derive(Copy, Clone, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct Tag([u8; 3]);

impl Tag {
    /// Reads a tag; `None` unless it is three characters of [`TAG_ALPHABET`].
    #[must_use]
    pub fn new(text: &str) -> Option<Self> {
        let bytes: [u8; 3] = text.as_bytes().try_into().ok()?;
        bytes.iter().all(|b| TAG_ALPHABET.as_bytes().contains(b)).then_some(Self(bytes))
    }

    /// A tag out of a number: equal numbers give equal tags, 32,768 different ones.
    #[must_use]
    pub fn from_number(number: u64) -> Self {
        let pick = |shift: u32| {
            let [low, ..] = (number >> shift).to_le_bytes();
            TAG_ALPHABET.as_bytes()[usize::from(low % 32)]
        };
        Self([pick(0), pick(5), pick(10)])
    }

    /// The text in the code of a square.
    #[must_use]
    pub fn square(self, label: &str) -> String {
        format!("{self}-{label}")
    }

    /// The text in the code of a column's or row's card.
    #[must_use]
    pub fn edge(self, name: &str) -> String {
        format!("{self}/{name}")
    }

    /// The text in the code of a corner card, 1 … 4 clockwise from the top left.
    #[must_use]
    pub fn corner(self, number: usize) -> String {
        format!("{self}.{number}")
    }
}

impl fmt::Display for Tag {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.0.iter().try_for_each(|b| write!(f, "{}", char::from(*b)))
    }
}

/// The black and white elements of a version 1 code, row by row from its top left; `true` is dark.
#[derive(Clone, PartialEq, Eq)]
pub struct Modules([bool; SIDE * SIDE]);

impl fmt::Debug for Modules {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.0.chunks(SIDE).try_for_each(|row| {
            let drawn: String = row.iter().map(|dark| if *dark { '█' } else { '·' }).collect();
            writeln!(f, "{drawn}")
        })
    }
}

impl Modules {
    /// Reads the 111 hexadecimal digits of a manifest: 441 bits row by row, dark = 1, and three zero bits.
    ///
    /// # Errors
    /// [`CodeError::Hex`] where they are anything else.
    pub fn from_hex(hex: &str) -> Result<Self, CodeError> {
        // a digit more than fits: whatever else stands there need not be repeated
        let refuse = || CodeError::Hex(hex.chars().take(112).collect());
        if hex.len() != 111 {
            return Err(refuse());
        }
        let mut modules = [false; SIDE * SIDE];
        for (digit, four) in hex.chars().zip(modules.chunks_mut(4)) {
            let value = digit.to_digit(16).ok_or_else(refuse)?;
            for (bit, module) in four.iter_mut().enumerate() {
                *module = value >> (3 - bit) & 1 == 1;
            }
            if four.len() == 1 && value & 7 != 0 {
                return Err(refuse());
            }
        }
        Ok(Self(modules))
    }

    /// The 111 lower-case hexadecimal digits of a manifest.
    #[must_use]
    pub fn to_hex(&self) -> String {
        self.0
            .chunks(4)
            .map(|four| {
                let bits = four.iter().enumerate().map(|(i, dark)| u32::from(*dark) << (3 - i));
                char::from_digit(bits.sum(), 16).unwrap_or('0')
            })
            .collect()
    }

    /// Whether the module in a column and a row is dark; outside the code is white.
    #[must_use]
    pub fn dark(&self, column: usize, row: usize) -> bool {
        column < SIDE && row < SIDE && self.0[row * SIDE + column]
    }

    /// Modules, 21 × 21, row by row.
    #[must_use]
    pub fn as_slice(&self) -> &[bool] {
        &self.0
    }

    /// The text that the code says, read by a general decoder, which shares nothing with the encoder; `None` where it finds none.
    #[must_use]
    pub fn text(&self) -> Option<String> {
        decoded(SIDE, |column, row| self.dark(column, row))
    }
}

/// The text of a QR code of any version with `side` modules along a side, of which `dark` tells column and row, with error correction;
/// `None` where that fails.
#[must_use]
pub fn decoded(side: usize, dark: impl Fn(usize, usize) -> bool) -> Option<String> {
    let grid = SimpleGrid::from_func(side, dark);
    Grid::new(grid).decode().ok().map(|(_, text)| text)
}
