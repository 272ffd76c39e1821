//! What a PDF asks of the printer's dialogue: no scaling, and which edge to flip on (ISO 32000-1, 12.2, viewer
//! preferences). Hints only: many dialogues keep what was chosen last, so every page says it in words too.

use crate::plan::settings::Flip;

/// Adds the hints to a PDF whose catalogue is its last object and has viewer preferences, as krilla writes it. Any other
/// file is given back as it is.
pub(super) fn with_hints(pdf: Vec<u8>, flip: Flip, two_sided: bool) -> Vec<u8> {
    let duplex = match (two_sided, flip) {
        (true, Flip::LongEdge) => "DuplexFlipLongEdge",
        (true, Flip::ShortEdge) => "DuplexFlipShortEdge",
        _ => "Simplex",
    };
    let hints = format!("/PrintScaling/None/Duplex/{duplex}");
    insert(&pdf, hints.as_bytes()).unwrap_or(pdf)
}

/// Inserts into the catalogue's viewer preferences. Only the table of objects lies behind the catalogue, so that its
/// offset, the last number of the file, is all that moves.
fn insert(pdf: &[u8], hints: &[u8]) -> Option<Vec<u8>> {
    let preferences = b"/ViewerPreferences<<";
    let at = last(pdf, preferences)? + preferences.len();
    let start = last(pdf, b"startxref\n")? + b"startxref\n".len();
    let length = pdf.get(start..)?.iter().take_while(|byte| byte.is_ascii_digit()).count();
    let (number, end) = (pdf.get(start..start + length)?, pdf.get(start + length..)?);
    let table: usize = std::str::from_utf8(number).ok()?.parse().ok()?;
    let is_last = last(pdf, b" obj\n").is_some_and(|object| object < at) && at < table;
    let moved = (table + hints.len()).to_string();
    let parts = [pdf.get(..at)?, hints, pdf.get(at..start)?, moved.as_bytes(), end];
    is_last.then(|| parts.concat())
}

/// Where a needle occurs last.
fn last(pdf: &[u8], needle: &[u8]) -> Option<usize> {
    pdf.windows(needle.len()).rposition(|window| window == needle)
}
