//! `fill.pdf`: squares for the gaps that are left at the end, each with its own code, to be up in minutes.
//!
//! ```text
//!   ┌───────────────────────┐      to colour: the piece's areas in soft outline, each with its colour's name;
//!   │      sky              │      what is too small for a name is already softly coloured
//!   │    ╭──────╮   light   │      to hang: the piece in soft colours, as it is
//!   │   ╱ green ╲   blue    │
//!   │──╯         ╰──────────│      of one colour all over: to be cut from paper of that colour; its code is printed
//!   │ kept for …    D7  ▓▓  │      apart and glued on
//!   │                   ▓▓  │
//!   └───────────────────────┘      and each one says for whom its spot is kept
//! ```
//!
//! It belongs to no kit and changes no manifest: a square here has the code that the kit's has, in the same place, so that a check reads
//! it as that square.

pub(super) mod areas;
mod papers;

use serde::Serialize;

use self::areas::{Drawing, drawing};
use super::layout::{Area, Layout};
use super::marks::{Box, Code, Line, quiet_zone, square_ticks};
use super::page::{Heading, Page, Sheets, Sides, listed};
use super::squares::{LabelPlace, code, division, label_place, named, part_words};
use super::typeset::width_mm;
use super::{Document, PrintError, Sources};
use crate::picture::FewColours;
use crate::plan::PrintedSquare;

/// How a piece looks that is enlarged.
#[derive(Copy, Clone, Debug, PartialEq, Eq)]
pub enum Look {
    /// Outlines to colour, with the names of the colours.
    Outlined,
    /// Softly coloured.
    Coloured,
    /// Dotted outlines to trace.
    Dotted,
    /// Nothing but faint lines between the tick marks.
    Quartered,
    /// In full colour with dark outlines and a letter for each colour.
    Lettered,
}

/// What is printed for gaps, and what is not: papers that are cut.
#[derive(Clone, Debug, PartialEq)]
pub struct Fill {
    /// The pages.
    pub document: Document,
    /// How many squares are drawn on its pages.
    pub drawn: usize,
    /// Squares of one colour all over: the number of the pencil, and the labels.
    pub papers: Vec<(usize, Vec<String>)>,
}

/// Letters that say for whom a spot is kept, in points, and white around them, in mm.
const KEPT_POINTS: f64 = 8.0;
const KEPT_CLEAR_MM: f64 = 1.0;
/// How far that line is below the label's middle, in mm.
const KEPT_BELOW_MM: f64 = 3.4;
/// How high the white behind label and line is, in mm.
const KEPT_HEIGHT_MM: f64 = 7.4;
/// Letters of the note above these codes, in points.
const NOTE_POINTS: f64 = 11.0;

/// What all items share.
#[derive(Serialize)]
struct Shared {
    quiet: Box,
    ticks: Vec<Line>,
    label: LabelPlace,
    kept: Kept,
    kept_points: f64,
    note_points: f64,
}

/// The white behind the label and the line that says for whom a spot is kept, and where that line stands.
#[derive(Copy, Clone, Serialize)]
struct Kept {
    white: Box,
    x: f64,
    y: f64,
    ends: bool,
}

#[derive(Serialize)]
#[serde(tag = "kind", rename_all = "lowercase")]
enum Item {
    /// A square, or the part of one that begins at `from`.
    Square {
        area: Box,
        from: [f64; 2],
        label: String,
        part_words: String,
        kept: String,
        /// Whether it has tick marks.
        ticks: bool,
        code: Code,
        drawing: usize,
    },
    /// What to cut and glue.
    Note { area: Box, text: String, rows: Vec<String> },
    /// A code to glue on a paper.
    Paper { area: Box, cut: Box, code: Code, label: String, label_x: f64, colour: String, name: String },
}

/// Everything that items refer to.
#[derive(Serialize)]
struct All {
    #[serde(flatten)]
    shared: Shared,
    drawings: Vec<Drawing>,
}

/// Typesets fillers for cells of the wall, by their place in the grid, in the order in which they are given.
///
/// # Errors
/// [`PrintError::TooLarge`] where squares or codes fit the paper in no way, and [`PrintError::Typeset`].
pub fn fill(sources: &Sources, few: &FewColours, cells: &[usize], look: Look) -> Result<Fill, PrintError> {
    let is_plain = |cell: &usize| sources.facts.pieces[*cell].pencils.len() < 2;
    let (plain, drawn): (Vec<usize>, Vec<usize>) = cells.iter().copied().partition(is_plain);
    let shared = shared(sources);
    let blocked = [shared.quiet, shared.kept.white];
    let side = sources.printed.grid.square_mm;
    let pictures = drawn.iter().map(|cell| drawing(sources, few, (*cell, side), look, &blocked)).collect();
    let mut pages = squares(sources, &drawn, true)?;
    let mut papers: Vec<(usize, Vec<&PrintedSquare>)> = Vec::new();
    for cell in plain {
        let pencil = sources.facts.pieces[cell].pencils.first().copied().unwrap_or(0);
        let square = &sources.printed.squares[cell];
        match papers.iter_mut().find(|(own, _)| *own == pencil) {
            Some((_, squares)) => squares.push(square),
            None => papers.push((pencil, vec![square])),
        }
    }
    pages.extend(papers::codes(sources, &papers)?);
    let document = set(sources, NAME, pages, All { shared, drawings: pictures })?;
    let labels = |squares: &[&PrintedSquare]| squares.iter().map(|square| square.label.clone()).collect();
    let papers = papers.iter().map(|(pencil, squares)| (*pencil, labels(squares))).collect();
    Ok(Fill { document, drawn: drawn.len(), papers })
}

/// Typesets squares with help on them, for those who want some: the squares' own codes, and as much of the piece as a look shows.
///
/// # Errors
/// As [`fill`].
pub fn helped(
    sources: &Sources,
    few: &FewColours,
    cells: &[usize],
    look: Look,
) -> Result<Document, PrintError> {
    let shared = shared(sources);
    let (side, blocked) = (sources.printed.grid.square_mm, [shared.quiet, shared.kept.white]);
    let drawings = cells.iter().map(|cell| drawing(sources, few, (*cell, side), look, &blocked)).collect();
    let pages = squares(sources, cells, false)?;
    set(sources, HELPED, pages, All { shared, drawings })
}

/// Typesets pages that are laid out.
fn set(sources: &Sources, name: &'static str, pages: Vec<Laid>, shared: All) -> Result<Document, PrintError> {
    let heading = Heading::new(sources, name, Some(pages.len()), Sides::One);
    let numbered = pages.into_iter().enumerate().map(|(number, (layout, about, items))| {
        let strip = heading.strip(&layout, number + 1, false);
        Page { strip, about, back: false, items }
    });
    let pages = numbered.collect();
    Sheets { name, shared, pages, pictures: Vec::new(), two_sided: false }.document(sources)
}

/// The documents' names.
pub(super) const NAME: &str = "fill";
pub(super) const HELPED: &str = "helped";

/// A page: where its strip lies, what is on it in a sentence, its items.
type Laid = (Layout, String, Vec<Item>);

/// Squares with their pictures; `kept` says whether they say for whom their spots are kept.
fn squares(sources: &Sources, cells: &[usize], kept: bool) -> Result<Vec<Laid>, PrintError> {
    let Sources { settings, printed, words, .. } = *sources;
    if cells.is_empty() {
        return Ok(Vec::new());
    }
    let division = division(&settings.print, printed)?;
    let parts = division.parts();
    let quiet = quiet_zone(printed.code_top_left, printed.module_mm);
    let items: Vec<(usize, usize, usize)> = (cells.iter().enumerate())
        .flat_map(|(number, cell)| (0..parts.len()).map(move |part| (number, *cell, part)))
        .collect();
    let page = |on_page: &[(usize, usize, usize)]| {
        let item = |((number, cell, part), spot): (&(usize, usize, usize), &Area)| {
            let square = &printed.squares[*cell];
            Item::Square {
                area: (*spot).into(),
                from: [parts[*part].x, parts[*part].y],
                label: square.label.clone(),
                part_words: part_words(*part, parts.len(), words),
                kept: match kept {
                    true => words.say("fill-kept", &[("label", square.label.as_str().into())]),
                    false => String::new(),
                },
                ticks: parts.len() == 1 && !kept,
                code: code(square, printed, &quiet),
                drawing: *number,
            }
        };
        let names: Vec<String> = on_page
            .iter()
            .map(|(_, cell, part)| named(&printed.squares[*cell], *part, parts.len(), words))
            .collect();
        let labels = listed(names.iter().map(String::as_str));
        let id = if kept { "print-about-fill" } else { "print-about-helped" };
        let about = words.say(id, &[("labels", labels.into())]);
        (division.layout.clone(), about, on_page.iter().zip(&division.layout.spots).map(item).collect())
    };
    Ok(items.chunks(division.layout.spots.len()).map(page).collect())
}

/// What all squares share.
fn shared(sources: &Sources) -> Shared {
    let printed = sources.printed;
    let quiet = quiet_zone(printed.code_top_left, printed.module_mm);
    let label = label_place(printed.grid.square_mm, &quiet);
    let width = printed.squares.iter().map(|square| {
        let kept = sources.words.say("fill-kept", &[("label", square.label.as_str().into())]);
        width_mm(&kept, KEPT_POINTS, false).max(width_mm(&square.label, 8.0, true))
    });
    let width = width.fold(0.0, f64::max) + KEPT_CLEAR_MM;
    let x = if label.ends { label.x - width } else { label.x };
    let white = Box { x, y: label.y - KEPT_HEIGHT_MM / 2.0, width, height: KEPT_HEIGHT_MM };
    let kept = Kept { white, x: label.x, y: label.y + KEPT_BELOW_MM / 2.0, ends: label.ends };
    let label = LabelPlace { y: label.y - KEPT_BELOW_MM / 2.0, ..label };
    let ticks = square_ticks(printed.grid.square_mm, &quiet);
    Shared { quiet, ticks, label, kept, kept_points: KEPT_POINTS, note_points: NOTE_POINTS }
}
