//! `levels.pdf`: a label for the bag or box of each level: its word, its marks, how many pieces, and where they belong on the wall.
//!
//! ```text
//!   ┌─▬▬▬▬▬▬▬▬▬▬▬▬▬▬▬▬▬▬▬▬▬▬▬▬▬▬▬▬▬─┐  cut out and stuck on the bag; whoever fills or tidies the bags
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

/// What a label looks like, in mm from its own top left corner.
#[derive(Copy, Clone, Debug, Serialize)]
struct Form {
    size: [f64; 2],
    /// Where the level's word stands, as large as it fits, and how high its letters are at most.
    word: Box,
    most: f64,
    /// Right end of the marks and their middle; a mark's radius.
    marks: [f64; 3],
    /// Where the number of pieces stands, and how large, in points.
    count: [f64; 2],
    points: f64,
    /// Where the wall stands.
    wall: [f64; 2],
}

const fn area(x: f64, y: f64, width: f64, height: f64) -> Box {
    Box { x, y, width, height }
}

/// Forms of a label, the largest first: two on a sheet of letter or A4, three, four.
const FORMS: [Form; 3] = [
    Form {
        size: [180.0, 115.0],
        word: area(8.0, 10.0, 92.0, 24.0),
        most: 15.0,
        marks: [172.0, 22.0, 5.0],
        count: [8.0, 38.0],
        points: 18.0,
        wall: [52.0, 38.0],
    },
    Form {
        size: [180.0, 76.0],
        word: area(8.0, 9.0, 58.0, 12.0),
        most: 11.0,
        marks: [50.0, 29.0, 4.0],
        count: [8.0, 40.0],
        points: 15.0,
        wall: [72.0, 9.0],
    },
    Form {
        size: [94.0, 115.0],
        word: area(6.0, 9.0, 46.0, 14.0),
        most: 9.0,
        marks: [88.0, 16.0, 3.4],
        count: [6.0, 26.0],
        points: 14.0,
        wall: [5.0, 36.0],
    },
];
/// White at a label's edges, in mm; the band of the picture's colours lies in it at the top.
const EDGE_MM: f64 = 5.0;
const BAND_MM: f64 = 2.0;
/// Smallest side of a spot, in mm, that one finds by its letter and its number. Common practice, no source.
const LEAST_CELL_MM: f64 = 4.5;

/// Typesets the document.
///
/// # Errors
/// [`PrintError::TooLarge`] where no label fits the paper: not with the papers that there are; [`PrintError::Typeset`].
pub(super) fn document(sources: &Sources) -> Result<Document, PrintError> {
    let present: Vec<Bag> = bags(sources);
    let (form, layout) = chosen(sources, present.len())?;
    let heading = Heading::new(sources, "levels", Some(layout.sheets(present.len())), Sides::One);
    let mut pages = Vec::new();
    for on_sheet in present.chunks(layout.spots.len()) {
        let strip = heading.foot_line(layout.strip, pages.len() + 1);
        let levels = listed(on_sheet.iter().map(|bag| bag.word.as_str()));
        let about = sources.words.say("print-about-levels", &[("levels", levels.into())]);
        let items = on_sheet.iter().zip(&layout.spots);
        let items = items.map(|(bag, spot)| item(sources, &form, bag, (*spot).into())).collect();
        pages.push(Page { strip, about, back: false, items });
    }
    let band = area(EDGE_MM, EDGE_MM / 2.0, form.size[0] - 2.0 * EDGE_MM, BAND_MM);
    Sheets { name: "levels", shared: Shared { form, band }, pages, pictures: Vec::new(), two_sided: false }
        .document(sources)
}

/// Where the labels lie, and how many there are.
///
/// # Errors
/// As [`document`].
pub(super) fn layout(sources: &Sources) -> Result<(Layout, usize), PrintError> {
    let count = bags(sources).len();
    Ok((chosen(sources, count)?.1, count))
}

/// The largest form of those that take the fewest sheets and show the wall large enough; where none does, the largest of all.
fn chosen(sources: &Sources, count: usize) -> Result<(Form, Layout), PrintError> {
    let (paper, grid) = (sources.settings.print.paper, &sources.printed.grid);
    let [width, ..] = FORMS[0].size;
    let packed =
        FORMS.into_iter().filter_map(|form| Some((form, Layout::pack(paper, form.size[0], form.size[1])?)));
    let mut packed: Vec<(Form, Layout)> = packed.collect();
    let clear = |form: &Form| SmallWall::of(grid, room(form)).cell_mm() >= LEAST_CELL_MM;
    let best =
        (0..packed.len()).filter(|at| clear(&packed[*at].0)).min_by_key(|at| packed[*at].1.sheets(count));
    if packed.is_empty() {
        return Err(PrintError::too_large(Large::Card, width, 0.0, paper));
    }
    Ok(packed.swap_remove(best.unwrap_or(0)))
}

/// Room for the wall on a label.
fn room(form: &Form) -> [f64; 2] {
    [0, 1].map(|side| form.size[side] - EDGE_MM - form.wall[side])
}

/// What all labels share.
#[derive(Serialize)]
struct Shared {
    form: Form,
    band: Box,
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

fn item(sources: &Sources, form: &Form, bag: &Bag, area: Box) -> Item {
    let Sources { printed, words, .. } = *sources;
    let spots = bag.pieces.iter().map(|piece| (printed.squares[*piece].cell, true));
    Item {
        area,
        word: bag.word.clone(),
        filled: bag.marks[0],
        marks: bag.marks[1],
        count: words.say("print-level-count", &[("pieces", bag.pieces.len().into())]),
        wall: SmallWall::of(&printed.grid, room(form)).marked(spots).labelled(&printed.grid),
    }
}
