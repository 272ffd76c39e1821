//! `spare.pdf`: a page of blank squares without codes, for fresh starts: with tick marks, and a box to write the label in.

use serde::Serialize;

use super::marks::{Box, Line, TICK_MM, quarter_ticks, quiet_zone};
use super::page::{Heading, Page, Sheets, Sides};
use super::squares::division;
use super::{Document, Large, PrintError, Sources};

/// The document's name.
pub(super) const NAME: &str = "spare";

/// What all squares share, in mm from a square's top left corner.
#[derive(Serialize)]
struct Shared {
    ticks: Vec<Line>,
    /// Where the code of other squares is: the box for the label.
    label: Box,
    words: String,
}

/// One square.
#[derive(Serialize)]
struct Item {
    area: Box,
}

/// Typesets one page.
///
/// # Errors
/// [`PrintError::TooLarge`] where a square does not fit the paper whole.
pub fn spare(sources: &Sources) -> Result<Document, PrintError> {
    let Sources { settings, printed, words, .. } = *sources;
    let (side, paper) = (printed.grid.square_mm, settings.print.paper);
    let division = division(&settings.print, printed)?;
    if division.across * division.down > 1 {
        return Err(PrintError::too_large(Large::Square, side, 0.0, paper));
    }
    let layout = &division.layout;
    let heading = Heading::new(sources, NAME, Some(1), Sides::One);
    let items = layout.spots.iter().map(|spot| Item { area: (*spot).into() }).collect();
    let about = words.say("print-about-spare", &[("count", layout.spots.len().into())]);
    let pages = vec![Page { strip: heading.strip(layout, 1, false), about, back: false, items }];
    let shared = Shared {
        ticks: quarter_ticks(side, 0.0, TICK_MM),
        label: quiet_zone(printed.code_top_left, printed.module_mm),
        words: words.say("spare-label", &[]),
    };
    Sheets { name: NAME, shared, pages, pictures: Vec::new(), two_sided: false }.document(sources)
}
