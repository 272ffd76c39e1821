//! The code of any text, for a phone that comes near: a link on a screen.
//!
//! Squares and cards have the small code of [`super::Modules`]; a link is longer and is read from a hand's breadth, so it may
//! be as large as it likes.

use qrcode::types::Color;
use qrcode::{EcLevel, QrCode};

/// A square of modules, row by row; `true` is dark. Around it belongs a quiet zone of four modules (ISO/IEC 18004).
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LinkCode {
    side: usize,
    dark: Vec<bool>,
}

impl LinkCode {
    /// Encodes a text at level M; `None` where it is longer than any code holds (2,331 bytes).
    ///
    /// ```
    /// use everysquare::plan::code::LinkCode;
    /// let code = LinkCode::new("http://192.168.1.20:8417/abc/").unwrap();
    /// assert!(code.dark(0, 0) && !code.dark(code.side(), 0));
    /// ```
    #[must_use]
    pub fn new(text: &str) -> Option<Self> {
        let code = QrCode::with_error_correction_level(text, EcLevel::M).ok()?;
        let side = code.width();
        let dark = code.into_colors().into_iter().map(|colour| colour == Color::Dark).collect();
        Some(Self { side, dark })
    }

    /// Modules along one side.
    #[must_use]
    pub fn side(&self) -> usize {
        self.side
    }

    /// Whether the module in a column and a row is dark; outside the code is white.
    #[must_use]
    pub fn dark(&self, column: usize, row: usize) -> bool {
        column < self.side && row < self.side && self.dark[row * self.side + column]
    }
}
