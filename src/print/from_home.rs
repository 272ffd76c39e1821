//! `from-home.pdf`: squares that were drawn elsewhere and came back as photos, at size, each with its code, to hang.

use image::RgbImage;
use serde::Serialize;

use super::marks::{Box, Code, quiet_zone};
use super::page::{Heading, Page, Sheets, Sides, listed};
use super::squares::{LabelPlace, code, label_place, whole};
use super::typeset::Image;
use super::{Document, PrintError, Sources};
use crate::plan::Cell;

/// The document's name.
pub(super) const NAME: &str = "from-home";

/// Maximum number of pixels along a square's side: 240 dots an inch on the usual one.
const MOST_PX: u32 = 1_200;

/// What all squares share, in mm from a square's top left corner.
#[derive(Serialize)]
struct Shared {
    quiet: Box,
    label: LabelPlace,
}

/// One square.
#[derive(Serialize)]
struct Item {
    area: Box,
    label: String,
    code: Code,
    picture: usize,
}

/// Typesets squares as they came back.
///
/// # Errors
/// [`PrintError::TooLarge`] where a square does not fit the paper whole, and [`PrintError::Typeset`].
pub fn from_home(sources: &Sources, squares: &[(Cell, RgbImage)]) -> Result<Document, PrintError> {
    let Sources { printed, words, .. } = *sources;
    let side = printed.grid.square_mm;
    let layout = &whole(sources)?;
    let quiet = quiet_zone(printed.code_top_left, printed.module_mm);
    let heading = Heading::new(sources, NAME, Some(layout.sheets(squares.len())), Sides::One);
    let (mut pictures, mut pages) = (Vec::with_capacity(squares.len()), Vec::new());
    for on_sheet in squares.chunks(layout.spots.len()) {
        let mut items = Vec::with_capacity(on_sheet.len());
        for ((cell, picture), spot) in on_sheet.iter().zip(&layout.spots) {
            let square = &printed.squares[printed.grid.index(*cell)];
            pictures.push(Image::to_look_at(picture.clone(), MOST_PX, MOST_PX));
            let (label, picture) = (square.label.clone(), pictures.len() - 1);
            items.push(Item { area: (*spot).into(), label, code: code(square, printed, &quiet), picture });
        }
        let labels = listed(items.iter().map(|item| item.label.as_str()));
        let about = words.say("print-about-from-home", &[("labels", labels.into())]);
        pages.push(Page { strip: heading.strip(layout, pages.len() + 1, false), about, back: false, items });
    }
    let shared = Shared { quiet, label: label_place(side, &quiet) };
    Sheets { name: NAME, shared, pages, pictures, two_sided: false }.document(sources)
}
