//! `giving-back.pdf`: all squares small, by label, to point at when they are fetched, each with a box to tick. Never a name.
//!
//! ```text
//!   ┌────────┐  ┌────────┐  ┌────────┐
//!   │ words  │  │ square │  │ square │     a mural of 108 squares takes four pages
//!   │        │  └────────┘  └────────┘
//!   └────────┘   A1    ☐     B1    ☐
//! ```

use serde::Serialize;

use super::exhibit::{Exhibit, at_size};
use super::{Lacking, Pair};
use crate::print::languages::Languages;
use crate::print::layout::Layout;
use crate::print::marks::Box;
use crate::print::page::{Heading, Page, Set, Sheets, Sides, listed};
use crate::print::{Large, PrintError};

/// Width and height of a square's place, in mm: thirty on letter and A4 paper.
const PLACE_MM: [f64; 2] = [37.0, 44.0];
/// Side of a square in it.
const SQUARE_MM: f64 = 33.0;

/// What all places share, in mm from a place's top left corner.
#[derive(Serialize)]
struct Shared {
    square: Box,
    /// Label and box.
    below: Box,
    words: Vec<String>,
    event: String,
    made: Option<String>,
}

/// A square, or the words that begin a page.
#[derive(Serialize)]
struct Item {
    area: Box,
    /// The number of its picture; `None` for the words.
    picture: Option<usize>,
    label: String,
}

/// Lays the pages out.
///
/// # Errors
/// [`PrintError::Nothing`] where there is no square, [`PrintError::Typeset`].
pub(super) fn set(exhibit: &Exhibit) -> Result<Set, PrintError> {
    let (sources, grid) = (exhibit.sources(), exhibit.grid());
    let kept = &exhibit.input.kept;
    if kept.is_empty() {
        return Err(PrintError::Nothing(Lacking::Pairs));
    }
    let [width, height] = PLACE_MM;
    let paper = sources.settings.print.paper;
    let layout = Layout::pack(paper, width, height)
        .filter(|layout| layout.spots.len() > 1)
        .ok_or_else(|| PrintError::too_large(Large::Card, width.max(height), 0.0, paper))?;
    // the first place of each page is for the words
    let on_page = layout.spots.len() - 1;
    let heading = Heading::new(sources, "giving-back", Some(kept.len().div_ceil(on_page)), Sides::One);
    let (mut pictures, mut pages) = (Vec::new(), Vec::new());
    for on_sheet in kept.chunks(on_page) {
        let mut spots = layout.spots.iter();
        let words =
            spots.next().map(|spot| Item { area: (*spot).into(), picture: None, label: String::new() });
        let squares = on_sheet.iter().zip(spots).map(|(Pair { cell, square }, spot)| {
            pictures.push(at_size(square.clone(), [SQUARE_MM; 2]));
            Item { area: (*spot).into(), picture: Some(pictures.len() - 1), label: grid.label(*cell) }
        });
        let items: Vec<Item> = words.into_iter().chain(squares).collect();
        let labels = listed(items.iter().skip(1).map(|item| item.label.as_str()));
        let about = sources.words.say("print-about-giving-back", &[("labels", labels.into())]);
        pages.push(Page { strip: heading.strip(&layout, pages.len() + 1, false), about, back: false, items });
    }
    let shared = shared(exhibit);
    Sheets { name: "giving-back", shared, pages, pictures, two_sided: false }.set(sources)
}

fn shared(exhibit: &Exhibit) -> Shared {
    let [width, height] = PLACE_MM;
    let margin = (width - SQUARE_MM) / 2.0;
    let under = margin + SQUARE_MM;
    let sources = exhibit.sources();
    Shared {
        square: Box { x: margin, y: margin, width: SQUARE_MM, height: SQUARE_MM },
        below: Box { x: margin, y: under, width: SQUARE_MM, height: height - under },
        words: Languages::of(sources).say("giving-back-words", &[]),
        event: sources.settings.name.clone(),
        made: exhibit.made(),
    }
}
