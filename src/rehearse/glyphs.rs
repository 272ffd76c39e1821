//! The letters and digits on made papers: 5 × 7 dots each, since a made photo shows them a few pixels high.

/// Dots side by side in a glyph.
pub(super) const ACROSS: usize = 5;
/// Dots one above the other.
pub(super) const UP: usize = 7;
/// Dots from one glyph to the next.
pub(super) const ADVANCE: usize = 6;

/// Rows from the top; the highest of the five bits is the leftmost dot.
const DIGITS: [[u8; UP]; 10] = [
    [14, 17, 17, 17, 17, 17, 14],
    [4, 12, 4, 4, 4, 4, 14],
    [14, 17, 1, 2, 4, 8, 31],
    [30, 1, 1, 14, 1, 1, 30],
    [2, 6, 10, 18, 31, 2, 2],
    [31, 16, 30, 1, 1, 17, 14],
    [6, 8, 16, 30, 17, 17, 14],
    [31, 1, 2, 4, 4, 8, 8],
    [14, 17, 17, 14, 17, 17, 14],
    [14, 17, 17, 15, 1, 2, 12],
];

const LETTERS: [[u8; UP]; 26] = [
    [4, 10, 17, 17, 31, 17, 17],
    [30, 17, 17, 30, 17, 17, 30],
    [14, 17, 16, 16, 16, 17, 14],
    [28, 18, 17, 17, 17, 18, 28],
    [31, 16, 16, 30, 16, 16, 31],
    [31, 16, 16, 30, 16, 16, 16],
    [14, 17, 16, 23, 17, 17, 14],
    [17, 17, 17, 31, 17, 17, 17],
    [14, 4, 4, 4, 4, 4, 14],
    [1, 1, 1, 1, 17, 17, 14],
    [17, 18, 20, 24, 20, 18, 17],
    [16, 16, 16, 16, 16, 16, 31],
    [17, 27, 21, 21, 17, 17, 17],
    [17, 25, 21, 21, 19, 17, 17],
    [14, 17, 17, 17, 17, 17, 14],
    [30, 17, 17, 30, 16, 16, 16],
    [14, 17, 17, 17, 21, 18, 13],
    [30, 17, 17, 30, 20, 18, 17],
    [15, 16, 16, 14, 1, 1, 30],
    [31, 4, 4, 4, 4, 4, 4],
    [17, 17, 17, 17, 17, 17, 14],
    [17, 17, 17, 17, 10, 10, 4],
    [17, 17, 17, 21, 21, 27, 17],
    [17, 10, 10, 4, 10, 10, 17],
    [17, 17, 10, 4, 4, 4, 4],
    [31, 1, 2, 4, 8, 16, 31],
];

/// Whether the dot in a column and a row of a text, written in one line, is inked; unknown characters are blank.
pub(super) fn inked(text: &str, column: usize, row: usize) -> bool {
    let within = column % ADVANCE;
    if within >= ACROSS || row >= UP {
        return false;
    }
    let Some(byte) = text.as_bytes().get(column / ADVANCE) else { return false };
    let rows = match byte {
        b'0'..=b'9' => DIGITS[usize::from(byte - b'0')],
        b'A'..=b'Z' => LETTERS[usize::from(byte - b'A')],
        _ => return false,
    };
    rows[row] >> (ACROSS - 1 - within) & 1 == 1
}

/// Dots that a text is wide.
pub(super) fn width(text: &str) -> usize {
    (text.len() * ADVANCE).saturating_sub(ADVANCE - ACROSS)
}
