//! `levels.pdf`: a label for the bag or box of each level: its word, its marks, how many pieces, and which.
//!
//! ```text
//!   ┌───────────────────────────────┐  cut out and stuck on the bag; whoever fills or tidies the bags
//!   │  medium                 ●●●○  │  finds on it what belongs in
//!   │  24 pieces                     │
//!   │  1: A8 C8 D8 …                │  in the order in which they are handed out: first, in the middle, last
//!   │  2: B5 …                      │
//!   └───────────────────────────────┘
//! ```

use serde::Serialize;

use super::layout::Layout;
use super::marks::Box;
use super::page::{Heading, Page, Sheets, Sides, listed};
use super::piece_back::level_word;
use super::typeset::{width_mm, wrapped};
use super::{Document, Large, PrintError, Sources};
use crate::frame::{float, floor_index};
use crate::picture::order::Band;
use crate::plan::Level;

/// A label, in mm: two on a sheet of letter or A4.
const WIDTH_MM: f64 = 180.0;
const HEIGHT_MM: f64 = 115.0;
/// White at its edges, and where the list of pieces begins, in mm.
const EDGE_MM: f64 = 8.0;
const LIST_FROM_MM: f64 = 50.0;
/// Sizes that the list may have, in points, the best first; and how far its lines are apart, in mm a point.
const LIST_POINTS: [f64; 6] = [18.0, 14.0, 12.0, 10.0, 9.0, 8.0];
const LINE_MM_A_POINT: f64 = 0.46;

/// Nothing that all labels share but their size.
#[derive(Serialize)]
struct Shared {
    edge: f64,
    list_from: f64,
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
    /// The list of pieces, line by line.
    lines: Vec<String>,
    points: f64,
    line: f64,
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
    let shared = Shared { edge: EDGE_MM, list_from: LIST_FROM_MM };
    Sheets { name: "levels", shared, pages, pictures: Vec::new(), two_sided: false }.document(sources)
}

/// What a bag holds.
struct Bag<'a> {
    word: String,
    /// How many of the marks are filled, and how many there are.
    marks: [usize; 2],
    /// Labels of its pieces in the order in which they are handed out, with the sign of their band; without one where that tells nothing.
    bands: Vec<(&'static str, Vec<&'a str>)>,
}

/// A bag for each level that there is, the easiest first, and one for a border in reserve.
fn bags<'a>(sources: &Sources<'a>) -> Vec<Bag<'a>> {
    let Sources { printed, facts, words, .. } = *sources;
    let label = |piece: usize| printed.squares[piece].label.as_str();
    let of_level = |level: Level| {
        let band = |band: Band| {
            let own = facts.of_level(level).filter(|piece| facts.pieces[*piece].band == band);
            (band.sign(), own.map(label).collect())
        };
        let marks = [level.index() + 1, Level::ALL.len()];
        Bag { word: level_word(sources, level), marks, bands: Band::ALL.map(band).into() }
    };
    let reserve: Vec<&str> = facts.in_reserve().map(label).collect();
    let reserve = (!reserve.is_empty()).then(|| Bag {
        word: words.say("print-border", &[]),
        marks: [0, 0],
        bands: vec![("", reserve)],
    });
    Level::ALL.into_iter().filter(|level| facts.count(*level) > 0).map(of_level).chain(reserve).collect()
}

fn item(sources: &Sources, bag: &Bag, area: Box) -> Item {
    let pieces: usize = bag.bands.iter().map(|(_, labels)| labels.len()).sum();
    let (lines, points) = fitting(sources, &bag.bands);
    Item {
        area,
        word: bag.word.clone(),
        filled: bag.marks[0],
        marks: bag.marks[1],
        count: sources.words.say("print-level-count", &[("pieces", pieces.into())]),
        lines,
        points,
        line: points * LINE_MM_A_POINT,
    }
}

/// The list in lines that fit the label, as large as possible, each band on lines of its own; where not even the smallest letters fit,
/// its end is counted.
fn fitting(sources: &Sources, bands: &[(&str, Vec<&str>)]) -> (Vec<String>, f64) {
    let signed = |(sign, labels): &(&str, Vec<&str>)| {
        let sign = (!sign.is_empty() && !labels.is_empty()).then(|| format!("{sign}:"));
        sign.into_iter().chain(labels.iter().map(|label| (*label).to_owned())).collect()
    };
    let bands: Vec<Vec<String>> = bands.iter().map(signed).collect();
    let labels: Vec<&str> = bands.iter().flatten().map(String::as_str).collect();
    let most_lines =
        |points: f64| floor_index((HEIGHT_MM - EDGE_MM - LIST_FROM_MM) / (points * LINE_MM_A_POINT));
    for points in LIST_POINTS {
        let of_band =
            |band: &Vec<String>| in_lines(&band.iter().map(String::as_str).collect::<Vec<_>>(), points);
        let lines: Vec<String> = bands.iter().flat_map(of_band).collect();
        if lines.len() <= most_lines(points) {
            return (lines, points);
        }
    }
    let points = LIST_POINTS[LIST_POINTS.len() - 1];
    let most = most_lines(points);
    let mut shown = labels.len();
    loop {
        let more = sources.words.say("print-level-more", &[("count", (labels.len() - shown).into())]);
        let some: Vec<&str> = labels.iter().take(shown).copied().chain([more.as_str()]).collect();
        let lines = in_lines(&some, points);
        if lines.len() <= most || shown == 0 {
            return (lines, points);
        }
        // too long by so many lines: of each about as many labels go as stand on it
        let too_many = float(lines.len() - most) / float(lines.len()) * float(shown);
        shown = shown.saturating_sub(floor_index(too_many).max(1));
    }
}

/// Names in lines of the label's width.
fn in_lines(names: &[&str], points: f64) -> Vec<String> {
    let room = WIDTH_MM - 2.0 * EDGE_MM;
    wrapped(names.iter().copied(), "   ", |line| width_mm(line, points, false) <= room)
}
