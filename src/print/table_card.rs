//! `table-card.pdf`: the card that stands on every table and shows in six pictures what to do, to both sides of the table and
//! also to those who do not read.
//!
//! ```text
//!  the sheet, printed side up            standing, seen from its end
//!  ┌─────────────────────┐
//!  │ foot                │                        ╱╲   ridge
//!  ├┄┄┄┄┄┄┄┄┄┄┄┄┄┄┄┄┄┄┄┄┄┤  fold back             ╱  ╲
//!  │ face, upside down   │                      ╱    ╲     both faces are read upright
//!  ├┄┄┄┄┄┄┄┄┄┄┄┄┄┄┄┄┄┄┄┄┄┤  ridge, fold back     ╱      ╲
//!  │ face                │                    ╱        ╲
//!  ├┄┄┄┄┄┄┄┄┄┄┄┄┄┄┄┄┄┄┄┄┄┤  fold back         ╱══════════╲
//!  │ foot: the ruler     │                    feet, one over the other and taped
//!  └─────────────────────┘
//! ```
//!
//! The ridge is the middle of the sheet, so that both faces are equally long and the card stands straight.

use serde::Serialize;

use super::blocks::joined;
use super::languages::Languages;
use super::layout::{Area, MARGINS_MM, STRIP_GAP_MM, STRIP_MM, Strip};
use super::marks::{Box, Line};
use super::page::{Heading, Page, Sheets, Sides};
use super::{Document, PrintError, Sources};
use crate::plan::crowd::Given;
use crate::plan::settings::{Choice, Paper, Pencil};
use crate::words::Words;

/// Visitors who share one card: a table's side has two of them, and a card has two faces. Common practice, no source.
pub const SEATS_PER_CARD: usize = 4;
/// How far each foot reaches under the card on letter and A4 paper, in mm: the strip with the ruler lies on one, clear of the
/// fold. Larger paper has longer feet, so that the card does not fall over.
const FOOT_MM: f64 = MARGINS_MM[0] + STRIP_MM + STRIP_GAP_MM + 4.0;
/// How far the feet lie over each other on letter and A4 paper, in mm: two strips of tape side by side hold it. The base is then
/// 40 mm wide.
const OVERLAP_MM: f64 = 14.0;
/// White between a fold and what is printed, in mm: a fold that is 2 mm off spares it.
const CLEAR_MM: f64 = 4.0;
/// The largest step's name in English and Spanish has two lines of this size on letter paper, in points; larger paper has
/// larger words.
const WORDS_PT: f64 = 12.0;
/// How many times as much height words take in two languages, the second one smaller.
const SECOND: f64 = 1.6;
/// Steps.
const STEPS: usize = 6;

/// What all cards share; they are all alike.
#[derive(Serialize)]
struct Shared {
    /// What it is about and what to do, in each language.
    title: Vec<String>,
    steps: Vec<Vec<String>>,
    /// The name of a square that is really on the wall.
    label: String,
    /// Where squares have their code.
    corner: &'static str,
    /// Three of the picture's pencils.
    pencils: Vec<String>,
    title_size: f64,
    title_high: f64,
    words_size: f64,
    words_high: f64,
}

/// One card, as it lies flat.
#[derive(Serialize)]
struct Item {
    folds: Vec<Fold>,
    /// How far the other foot reaches.
    overlap: Fold,
    faces: [Face; 2],
}

#[derive(Serialize)]
struct Fold {
    line: Line,
    words: String,
}

#[derive(Serialize)]
struct Face {
    area: Box,
    upside_down: bool,
}

/// Where a sheet is folded, in mm from its top: a foot, the ridge, a foot.
#[must_use]
pub fn folds_mm(paper: Paper) -> [f64; 3] {
    let (_, height) = paper.size_mm();
    let foot = FOOT_MM * larger(paper);
    [foot, height / 2.0, height - foot]
}

/// How many times as wide as letter paper; letters and feet grow with it. A4, a little narrower, counts as letter.
fn larger(paper: Paper) -> f64 {
    (paper.size_mm().0 / Paper::Letter.size_mm().0).max(1.0)
}

/// How many cards so many seats need.
#[must_use]
pub fn cards_for(seats: usize) -> usize {
    seats.div_ceil(SEATS_PER_CARD).max(1)
}

/// Typesets the document.
///
/// # Errors
/// [`PrintError::Typeset`].
pub(super) fn document(sources: &Sources) -> Result<Document, PrintError> {
    let count = cards_for(Given::of(sources.settings).seats);
    let heading = Heading::new(sources, "table-card", Some(count), Sides::One);
    let strip = Strip::along_the_bottom(sources.settings.print.paper);
    let shared = shared(sources);
    let steps: Vec<&str> = shared.steps.iter().flatten().map(String::as_str).collect();
    let about = sources.words.say("steps-about", &[("steps", steps.join(" ").into())]);
    let page = |number: usize| Page {
        strip: heading.foot_line(strip, number),
        about: about.clone(),
        back: false,
        items: vec![item(sources)],
    };
    let pages = (1..=count).map(page).collect();
    Sheets { name: "table-card", shared, pages, pictures: Vec::new(), two_sided: false }.document(sources)
}

fn shared(sources: &Sources) -> Shared {
    let Sources { settings, printed, facts, .. } = *sources;
    let larger = larger(settings.print.paper);
    let join = settings.print.join;
    let languages = Languages::of(sources);
    let in_each = |id: &str| languages.say(joined(id, join), &[]);
    let both = if languages.second.is_some() { SECOND } else { 1.0 };
    let own: Vec<_> = printed.squares.iter().filter(|square| printed.grid.asks_for(square.cell)).collect();
    let some = own.get(own.len() / 3);
    Shared {
        title: in_each("steps-title"),
        steps: (1..=STEPS).map(|step| in_each(&format!("steps-{step}"))).collect(),
        label: some.map(|square| square.label.clone()).unwrap_or_default(),
        corner: settings.code.corner.word(),
        pencils: facts.pencils.iter().take(3).map(Pencil::hex).collect(),
        title_size: (WORDS_PT + 3.0) * larger,
        title_high: 8.0 * larger * both,
        words_size: WORDS_PT * larger,
        words_high: 13.0 * larger * both,
    }
}

fn item(sources: &Sources) -> Item {
    let paper = sources.settings.print.paper;
    let (width, height) = paper.size_mm();
    let folds = folds_mm(paper);
    let [top, ridge, bottom] = folds;
    let margin = MARGINS_MM[0];
    let across = |y: f64| Line { x1: MARGINS_MM[1], y1: y, x2: width - MARGINS_MM[1], y2: y };
    let face = |from: f64, upside_down: bool| Face {
        area: Area::new(margin, from + CLEAR_MM, width - 2.0 * margin, height / 2.0 - top - 2.0 * CLEAR_MM)
            .into(),
        upside_down,
    };
    let say = |words: &Words, id: &str| words.say(id, &[]);
    let fold = |y: f64, id: &str| Fold { line: across(y), words: say(sources.words, id) };
    Item {
        folds: vec![fold(top, "steps-fold"), fold(ridge, "steps-ridge"), fold(bottom, "steps-fold")],
        overlap: fold(top - OVERLAP_MM * larger(paper), "steps-overlap"),
        faces: [face(top, true), face(ridge, false)],
    }
}
