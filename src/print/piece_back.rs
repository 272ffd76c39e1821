//! The back of a piece: what it is called, which way is up, when it is handed out, how hard it is, which pencils it takes.
//!
//! ```text
//!   ┌──────────────────┐
//!   │ ↑ this way up  1 │      at 25.4 mm in letters of 8 pt, larger on larger pieces; nothing nearer than
//!   │ D7    medium     │      2.5 mm to the cut line, so that paper that slips by 2 mm loses nothing
//!   │       ● ● ● ○    │
//!   │ ▪ sky blue       │      where pencils do not fit one below the other they stand in two columns, their
//!   │ ▪ dark green     │      names cut short; what then is left out is counted; small pieces leave out first
//!   │ ▪ white          │      the words, then the pencils, then the level
//!   └──────────────────┘
//! ```

use serde::Serialize;

use super::Sources;
use super::marks::Box;
use super::short::{MainWord, short_names};
use super::typeset::width_mm;
use crate::frame::{float, floor_index};
use crate::picture::PieceFacts;
use crate::picture::order::Band;
use crate::plan::Level;

/// White from the cut line, in mm: printers let the back slip by up to 2 mm (1 mm by a maker's own tolerance, doubled).
const EDGE_MM: f64 = 2.5;
/// Side of a back's inside at which letters have [`LEAST_PT`], in mm: that of a piece of one inch.
const USUAL_INSIDE_MM: f64 = 28.4;
/// The smallest letters, in points; larger pieces have larger ones, up to [`MOST_TIMES`] as large.
const LEAST_PT: f64 = 8.0;
const MOST_TIMES: f64 = 1.75;
/// Heights at the smallest letters, in mm: arrow, label and level, a pencil; of the capitals of 8 pt.
const ARROW_MM: f64 = 4.2;
const LABEL_MM: f64 = 7.2;
const LINE_MM: f64 = 3.36;
const CAPITALS_MM: f64 = 1.9;
/// Side of a swatch, and from its left edge to the name, at the smallest letters, in mm.
const SWATCH_MM: f64 = 2.2;
const TO_NAME_MM: f64 = 3.1;
/// White between two columns of pencils, in mm.
const COLUMN_GAP_MM: f64 = 1.0;
/// Across a mark of the level and from one to the next, at the smallest letters, in mm.
const MARK_MM: f64 = 1.9;
const MARK_STEP_MM: f64 = 2.6;

/// A back as it is drawn, in mm from the piece's outer corner.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub(super) struct Back {
    texts: Vec<Text>,
    arrow: Box,
    swatches: Vec<Swatch>,
    marks: Vec<Mark>,
}

/// A line of words with the top left of its first capital in a place.
#[derive(Clone, Debug, PartialEq, Serialize)]
struct Text {
    x: f64,
    y: f64,
    points: f64,
    bold: bool,
    words: String,
}

/// A pencil's colour.
#[derive(Clone, Debug, PartialEq, Serialize)]
struct Swatch {
    area: Box,
    colour: String,
}

/// One of four circles, as many of them filled as the level has steps.
#[derive(Clone, Debug, PartialEq, Serialize)]
struct Mark {
    area: Box,
    filled: bool,
}

/// What all backs share.
pub(super) struct Backs<'a> {
    sources: &'a Sources<'a>,
    /// Side of the inside, and how many times as large as the smallest everything is.
    inside: f64,
    times: f64,
    /// The pencils' names, in one column and in two.
    names: [Vec<String>; 2],
}

/// What people call a level: the organiser's word for it, or the language's.
pub(super) fn level_word(sources: &Sources, level: Level) -> String {
    sources.settings.levels.word(level, sources.words)
}

impl<'a> Backs<'a> {
    /// For pieces that are cut out with a side of `side_mm`.
    pub fn of(sources: &'a Sources<'a>, side_mm: f64) -> Self {
        let inside = side_mm - 2.0 * EDGE_MM;
        let times = (inside / USUAL_INSIDE_MM).clamp(1.0, MOST_TIMES);
        let main = MainWord::named(&sources.words.say("print-main-word", &[]));
        let names: Vec<&str> = sources.facts.pencils.iter().map(|pencil| pencil.name.as_str()).collect();
        let short = |columns: usize| {
            let room = column_mm(inside, columns) - TO_NAME_MM * times;
            short_names(&names, main, |name| width_mm(name, LEAST_PT * times, false) <= room)
        };
        Self { sources, inside, times, names: [short(1), short(2)] }
    }

    /// The back of one piece.
    pub fn back(&self, label: &str, piece: &PieceFacts) -> Back {
        let mut back = self.top(piece.band);
        self.add_label(&mut back, label);
        self.add_level(&mut back, piece.level);
        self.add_pencils(&mut back, piece);
        back
    }

    fn text(&self, x: f64, y: f64, points: f64, bold: bool, words: String) -> Text {
        Text { x: EDGE_MM + x, y: EDGE_MM + y, points, bold, words }
    }

    /// The arrow and, where there is room, what it means; and when the piece is handed out: 1 first, 2 in the middle, 3 last,
    /// + in reserve.
    fn top(&self, band: Band) -> Back {
        let (times, points) = (self.times, LEAST_PT * self.times);
        let arrow = Box { x: EDGE_MM, y: EDGE_MM, width: 2.6 * times, height: 3.2 * times };
        let words = self.sources.words.say("print-this-way-up", &[]);
        let sign = band.sign();
        let number_mm = width_mm(sign, points, true);
        let y = (3.2 - CAPITALS_MM) * times / 2.0;
        let from = 3.6 * times;
        let right = self.inside - number_mm;
        let mut texts = Vec::new();
        if from + width_mm(&words, points, false) + COLUMN_GAP_MM <= right {
            texts.push(self.text(from, y, points, false, words));
        }
        if from <= right {
            texts.push(self.text(right, y, points, true, sign.to_owned()));
        }
        Back { texts, arrow, swatches: Vec::new(), marks: Vec::new() }
    }

    /// Width of the label's column: the level stands beside it.
    fn label_mm(&self) -> f64 {
        (self.inside * 0.44).max((self.inside).min(8.0))
    }

    fn add_label(&self, back: &mut Back, label: &str) {
        let at_one_point = width_mm(label, 1.0, true);
        let most = (LABEL_MM - 1.6) * self.times / (CAPITALS_MM / LEAST_PT);
        let points = ((self.label_mm() - 0.5) / at_one_point).min(most).max(LEAST_PT);
        let y = ARROW_MM * self.times;
        back.texts.push(self.text(0.0, y, points, true, label.to_owned()));
    }

    fn add_level(&self, back: &mut Back, level: Level) {
        let (from, times) = (self.label_mm() + 0.5, self.times);
        let (room, points) = (self.inside - from, LEAST_PT * times);
        let y = ARROW_MM * times;
        let name = level_word(self.sources, level);
        let fits = |name: &str| width_mm(name, points, false) <= room;
        let word = short_names(&[&name], MainWord::First, fits).pop().unwrap_or_default();
        if word.chars().count() > 2 {
            back.texts.push(self.text(from, y, points, false, word));
        }
        let count = Level::ALL.len();
        if (float(count) - 1.0) * MARK_STEP_MM * times + MARK_MM * times > room {
            return;
        }
        let side = MARK_MM * times;
        back.marks.extend((0..count).map(|at| Mark {
            area: Box {
                x: EDGE_MM + from + float(at) * MARK_STEP_MM * times,
                y: EDGE_MM + y + 3.4 * times,
                width: side,
                height: side,
            },
            filled: at <= level.index(),
        }));
    }

    fn add_pencils(&self, back: &mut Back, piece: &PieceFacts) {
        let times = self.times;
        let top = (ARROW_MM + LABEL_MM) * times;
        let lines = floor_index((self.inside - top + 0.01) / (LINE_MM * times));
        let needed = &piece.pencils;
        let columns = if needed.len() <= lines { 1 } else { 2 };
        let room = lines * columns;
        if room == 0 {
            return;
        }
        let shown = if needed.len() > room { room - 1 } else { needed.len() };
        let place = |at: usize| {
            let x = float(at / lines) * (column_mm(self.inside, columns) + COLUMN_GAP_MM);
            (x, top + float(at % lines) * LINE_MM * times)
        };
        let points = LEAST_PT * times;
        let names = &self.names[columns - 1];
        for (at, &pencil) in needed.iter().take(shown).enumerate() {
            let (x, y) = place(at);
            let side = SWATCH_MM * times;
            let area = Box { x: EDGE_MM + x, y: EDGE_MM + y, width: side, height: side };
            back.swatches.push(Swatch { area, colour: self.sources.facts.pencils[pencil].hex() });
            let down = (SWATCH_MM - CAPITALS_MM) * times / 2.0;
            back.texts.push(self.text(
                x + TO_NAME_MM * times,
                y + down,
                points,
                false,
                names[pencil].clone(),
            ));
        }
        if shown < needed.len() {
            let (x, y) = place(shown);
            let more =
                self.sources.words.say("print-pencils-more", &[("count", (needed.len() - shown).into())]);
            back.texts.push(self.text(x, y + 0.15, points, true, more));
        }
    }
}

/// How wide each of one or two columns is.
fn column_mm(inside: f64, columns: usize) -> f64 {
    if columns == 1 { inside } else { (inside - COLUMN_GAP_MM) / 2.0 }
}
