//! `levels.pdf`: a label for the bag or box of each level: its word, its marks, how many pieces, and where they belong on the wall.
//!
//! ```text
//!   ┌───────────────────────────────┐  cut out and stuck on the bag; whoever fills or tidies the bags
//!   │  medium                 ●●●○  │  finds on it what belongs in
//!   │  24 pieces   ┌─┬─┬─┬─┬─┐      │
//!   │              ├─■─┼─■─■─┤      │  the wall in small, with the spots of its pieces
//!   │              └─┴─■─┴─┴─┘      │
//!   └───────────────────────────────┘
//! ```

use serde::Serialize;

use super::layout::Layout;
use super::marks::Box;
use super::page::{Heading, Page, Sheets, Sides, listed};
use super::piece_back::level_word;
use super::small_wall::SmallWall;
use super::{Document, Large, PrintError, Sources};
use crate::plan::Level;

/// A label, in mm: two on a sheet of letter or A4.
const WIDTH_MM: f64 = 180.0;
const HEIGHT_MM: f64 = 115.0;
/// White at its edges; where the wall begins, from the label's top and from its left, in mm.
const EDGE_MM: f64 = 8.0;
const WALL_FROM_MM: [f64; 2] = [34.0, 52.0];

/// Nothing that all labels share but their size.
#[derive(Serialize)]
struct Shared {
    edge: f64,
    wall_from: [f64; 2],
}

/// A label.
#[derive(Serialize)]
struct Item {
    area: Box,
    word: String,
    /// How many of the four marks are filled.
    filled: usize,
    marks: usize,
    count: String,
    wall: SmallWall,
}

/// Typesets the document.
///
/// # Errors
/// [`PrintError::Typeset`].
pub(super) fn document(sources: &Sources) -> Result<Document, PrintError> {
    let paper = sources.settings.print.paper;
    let layout = Layout::pack(paper, WIDTH_MM, HEIGHT_MM)
        .ok_or_else(|| PrintError::too_large(Large::Card, WIDTH_MM, 0.0, paper))?;
    let present: Vec<Bag> = bags(sources);
    let heading = Heading::new(sources, "levels", Some(layout.sheets(present.len())), Sides::One);
    let mut pages = Vec::new();
    for on_sheet in present.chunks(layout.spots.len()) {
        let strip = heading.strip(&layout, pages.len() + 1, false);
        let levels = listed(on_sheet.iter().map(|bag| bag.word.as_str()));
        let about = sources.words.say("print-about-levels", &[("levels", levels.into())]);
        let items = on_sheet.iter().zip(&layout.spots);
        let items = items.map(|(bag, spot)| item(sources, bag, (*spot).into())).collect();
        pages.push(Page { strip, about, back: false, items });
    }
    let shared = Shared { edge: EDGE_MM, wall_from: WALL_FROM_MM };
    Sheets { name: "levels", shared, pages, pictures: Vec::new(), two_sided: false }.document(sources)
}

/// What a bag holds.
struct Bag {
    word: String,
    /// How many of the marks are filled, and how many there are.
    marks: [usize; 2],
    /// Its pieces, by their place in the grid's order.
    pieces: Vec<usize>,
}

/// A bag for each level that there is, the easiest first, and one for a border in reserve.
fn bags(sources: &Sources) -> Vec<Bag> {
    let Sources { facts, words, .. } = *sources;
    let of_level = |level: Level| Bag {
        word: level_word(sources, level),
        marks: [level.index() + 1, Level::ALL.len()],
        pieces: facts.of_level(level).collect(),
    };
    let reserve =
        Bag { word: words.say("print-border", &[]), marks: [0, 0], pieces: facts.in_reserve().collect() };
    Level::ALL.into_iter().map(of_level).chain([reserve]).filter(|bag| !bag.pieces.is_empty()).collect()
}

fn item(sources: &Sources, bag: &Bag, area: Box) -> Item {
    let Sources { printed, words, .. } = *sources;
    let [down, across] = WALL_FROM_MM;
    let room = [WIDTH_MM - EDGE_MM - across, HEIGHT_MM - EDGE_MM / 2.0 - down];
    let spots = bag.pieces.iter().map(|piece| (printed.squares[*piece].cell, true));
    Item {
        area,
        word: bag.word.clone(),
        filled: bag.marks[0],
        marks: bag.marks[1],
        count: words.say("print-level-count", &[("pieces", bag.pieces.len().into())]),
        wall: SmallWall::of(&printed.grid, room).marked(spots).labelled(&printed.grid),
    }
}
