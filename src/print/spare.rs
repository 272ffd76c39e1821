//! `spare.pdf`: blank squares without codes, for fresh starts: with tick marks, and a box for the label, to be written in or printed.

use serde::Serialize;

use super::layout::Area;
use super::marks::{Box, Line, TICK_MM, quarter_ticks, quiet_zone};
use super::page::{Heading, Page, Sheets, Sides};
use super::squares::whole;
use super::{Document, PrintError, Sources};

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
    /// What stands in its box; nothing where it is to be written.
    label: String,
}

/// Typesets squares with these labels or, where there are none, a page of squares whose labels are to be written.
///
/// # Errors
/// [`PrintError::TooLarge`] where a square does not fit the paper whole.
pub fn spare(sources: &Sources, labels: &[String]) -> Result<Document, PrintError> {
    let Sources { printed, words, .. } = *sources;
    let side = printed.grid.square_mm;
    let layout = &whole(sources)?;
    let written = vec![String::new(); layout.spots.len()];
    let labels = if labels.is_empty() { &written } else { labels };
    let heading = Heading::new(sources, NAME, Some(layout.sheets(labels.len())), Sides::One);
    let mut pages = Vec::new();
    for on_sheet in labels.chunks(layout.spots.len()) {
        let item = |(label, spot): (&String, &Area)| Item { area: (*spot).into(), label: label.clone() };
        let about = words.say("print-about-spare", &[("count", on_sheet.len().into())]);
        let items = on_sheet.iter().zip(&layout.spots).map(item).collect();
        pages.push(Page { strip: heading.strip(layout, pages.len() + 1, false), about, back: false, items });
    }
    let shared = Shared {
        ticks: quarter_ticks(side, 0.0, TICK_MM),
        label: quiet_zone(printed.code_top_left, printed.module_mm),
        words: words.say("spare-label", &[]),
    };
    Sheets { name: NAME, shared, pages, pictures: Vec::new(), two_sided: false }.document(sources)
}
