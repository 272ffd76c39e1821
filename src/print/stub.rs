//! The stub of a strip: what its piece is called, when it is handed out and how hard it is, where its square hangs, which pencils it takes,
//! and what to bring when it is fetched.
//!
//! ```text
//!   ┌───────────────────┐
//!   │ D7          ┌┬┬┬┐ │   above the piece: label, band and level, and a small wall with its spot
//!   │ 1  ●●●○     ├┼■┼┤ │
//!   │             └┴┴┴┘ │
//!   │      [piece]      │
//!   │ ▪ blue   ▪ red    │   below it: pencils, in two columns where one is too short; what is then left out is counted
//!   │ Your square hangs │   and, where there is room, the words that make it a slip
//!   └───────────────────┘
//! ```

use serde::Serialize;

use super::Sources;
use super::languages::Languages;
use super::marks::{Box, Line};
use super::short::{MainWord, short_names};
use super::typeset::{width_mm, wrapped};
use crate::frame::{float, floor_index};
use crate::picture::PieceFacts;
use crate::plan::cell::column_letters;
use crate::plan::{Grid, Level, PrintedSquare};
use crate::words::Words;

/// White at a stub's edges.
pub(super) const PAD_MM: f64 = 4.0;
/// Height of a line of pencils, of its swatch's side, and from its left edge to the name.
const LINE_MM: f64 = 4.6;
const SWATCH_MM: f64 = 3.2;
const TO_NAME_MM: f64 = 4.4;
const NAME_POINTS: f64 = 9.0;
/// White between two columns of pencils, and between parts.
const GAP_MM: f64 = 1.5;
/// Height of the capitals of the label, at most, and letters of the band.
const LABEL_MM: f64 = 8.0;
const BAND_POINTS: f64 = 11.0;
/// Diameter of a mark of the level, and from one to the next.
const MARK_MM: f64 = 2.4;
const MARK_STEP_MM: f64 = 3.4;
/// Share of the inside's width that the small wall may have, and the narrowest cell of which lines are drawn.
const WALL_SHARE: f64 = 0.46;
const LEAST_CELL_MM: f64 = 1.2;
/// The words of the slip: their letters, and the height of a line.
const WORDS_POINTS: f64 = 8.5;
const WORDS_LINE_MM: f64 = 3.7;

/// A stub as it is drawn, in mm from its own top left corner.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub(super) struct Stub {
    /// The label, as large as its box.
    label: Box,
    band: Text,
    marks: Vec<(Box, bool)>,
    wall: Wall,
    swatches: Vec<(Box, String)>,
    names: Vec<Text>,
    words: Vec<Text>,
}

/// A line of words with the top left of its first capital in a place.
#[derive(Clone, Debug, PartialEq, Serialize)]
struct Text {
    x: f64,
    y: f64,
    points: f64,
    words: String,
}

/// A small wall.
#[derive(Clone, Debug, PartialEq, Serialize)]
struct Wall {
    area: Box,
    lines: Vec<Line>,
    spot: Box,
}

/// What all stubs of an event share.
pub(super) struct Stubs<'a> {
    sources: &'a Sources<'a>,
    /// Width of the inside, and heights from the top: of the part above the piece its end, of the part below it its start and end.
    inside: f64,
    above_end: f64,
    below: [f64; 2],
    /// The pencils' names, in one column and in two.
    names: [Vec<String>; 2],
    languages: Languages<'a>,
}

impl<'a> Stubs<'a> {
    /// For stubs of a width and a height around a piece with its border.
    pub fn of(sources: &'a Sources<'a>, width: f64, height: f64, piece: &Box) -> Self {
        let inside = width - 2.0 * PAD_MM;
        let main = MainWord::named(&sources.words.say("print-main-word", &[]));
        let names: Vec<&str> = sources.facts.pencils.iter().map(|pencil| pencil.name.as_str()).collect();
        let short = |columns: usize| {
            let room = column_mm(inside, columns) - TO_NAME_MM;
            short_names(&names, main, |name| width_mm(name, NAME_POINTS, false) <= room)
        };
        let below = [piece.y + piece.height + GAP_MM, height - PAD_MM];
        let (names, languages) = ([short(1), short(2)], Languages::of(sources));
        Self { sources, inside, above_end: piece.y - GAP_MM, below, names, languages }
    }

    /// The stub of one piece.
    pub fn stub(&self, square: &PrintedSquare, piece: &PieceFacts) -> Stub {
        let grid = &self.sources.printed.grid;
        let wall = self.wall(square, grid);
        let left = self.inside - wall.area.width - GAP_MM;
        let high = (self.above_end - PAD_MM).max(0.0);
        let label = Box { x: PAD_MM, y: PAD_MM, width: left, height: LABEL_MM.min(high * 0.55) };
        let y = label.y + label.height + GAP_MM;
        let band = Text { x: PAD_MM, y, points: BAND_POINTS, words: piece.band.sign().to_owned() };
        let from = PAD_MM + 4.5;
        let marks = (0..Level::ALL.len()).map(|at| {
            let area = Box { x: from + float(at) * MARK_STEP_MM, y, width: MARK_MM, height: MARK_MM };
            (area, at <= piece.level.index())
        });
        let words = self.words(square, grid);
        let words_from = self.below[1] - float(words.len()) * WORDS_LINE_MM;
        let (swatches, names) = self.pencils(piece, words_from);
        let marks = marks.collect();
        Stub { label, band, marks, wall, swatches, names, words }
    }

    /// The small wall at the right above the piece, with the square's spot.
    fn wall(&self, square: &PrintedSquare, grid: &Grid) -> Wall {
        let [columns, rows] = [grid.columns, grid.rows].map(float);
        let room = [self.inside * WALL_SHARE, (self.above_end - PAD_MM).max(1.0)];
        let cell = (room[0] / columns).min(room[1] / rows);
        let area = Box {
            x: PAD_MM + self.inside - cell * columns,
            y: PAD_MM,
            width: cell * columns,
            height: cell * rows,
        };
        let upright = |at: usize| {
            let x = area.x + float(at) * cell;
            Line { x1: x, y1: area.y, x2: x, y2: area.y + area.height }
        };
        let level = |at: usize| {
            let y = area.y + float(at) * cell;
            Line { x1: area.x, y1: y, x2: area.x + area.width, y2: y }
        };
        let lines: Vec<Line> = match cell >= LEAST_CELL_MM {
            true => (1..grid.columns).map(upright).chain((1..grid.rows).map(level)).collect(),
            false => Vec::new(),
        };
        let (x, y) = (float(square.cell.column) * cell, float(square.cell.row) * cell);
        Wall { lines, spot: Box { x: area.x + x, y: area.y + y, width: cell, height: cell }, area }
    }

    /// The words of the slip in lines: in both languages where there is room, else in the event's own; none where they would take the
    /// pencils' room.
    fn words(&self, square: &PrintedSquare, grid: &Grid) -> Vec<Text> {
        let said = [
            ("column", column_letters(square.cell.column).into()),
            ("row", grid.row_number(square.cell.row).to_string().into()),
        ];
        let fits = |line: &str| width_mm(line, WORDS_POINTS, false) <= self.inside;
        let lines = |words: &Words| wrapped(words.say("strips-slip", &said).split_whitespace(), " ", fits);
        let has_room = |lines: &[String]| {
            self.below[0] + 2.0 * LINE_MM + float(lines.len()) * WORDS_LINE_MM <= self.below[1]
        };
        let own = lines(self.sources.words);
        let both = self.languages.second.as_ref().map(|second| [own.clone(), lines(second)].concat());
        let Some(lines) = both.into_iter().chain([own]).find(|lines| has_room(lines)) else {
            return Vec::new();
        };
        let high = float(lines.len()) * WORDS_LINE_MM;
        let line = |(number, words): (usize, String)| Text {
            x: PAD_MM,
            y: self.below[1] - high + (float(number) + 0.35) * WORDS_LINE_MM,
            points: WORDS_POINTS,
            words,
        };
        lines.into_iter().enumerate().map(line).collect()
    }

    /// Swatches and names of a piece's pencils, down to a height.
    fn pencils(&self, piece: &PieceFacts, end: f64) -> (Vec<(Box, String)>, Vec<Text>) {
        let rows = floor_index(((end - self.below[0]) / LINE_MM).max(0.0) + 1e-6);
        let needed = &piece.pencils;
        let columns = if needed.len() <= rows { 1 } else { 2 };
        let room = rows * columns;
        let shown = if needed.len() > room { room.saturating_sub(1) } else { needed.len() };
        let place = |at: usize| {
            let x = PAD_MM + float(at / rows.max(1)) * (column_mm(self.inside, columns) + GAP_MM);
            (x, self.below[0] + float(at % rows.max(1)) * LINE_MM)
        };
        let text = |(x, y): (f64, f64), words: String| Text { x, y: y + 0.6, points: NAME_POINTS, words };
        let (mut swatches, mut names) = (Vec::new(), Vec::new());
        for (at, pencil) in needed.iter().take(shown).enumerate() {
            let (x, y) = place(at);
            let colour = self.sources.facts.pencils[*pencil].hex();
            swatches.push((Box { x, y, width: SWATCH_MM, height: SWATCH_MM }, colour));
            names.push(text((x + TO_NAME_MM, y), self.names[columns - 1][*pencil].clone()));
        }
        if shown < needed.len() && room > 0 {
            let count = needed.len() - shown;
            names.push(text(
                place(shown),
                self.sources.words.say("print-pencils-more", &[("count", count.into())]),
            ));
        }
        (swatches, names)
    }
}

/// Width of a column of pencils.
fn column_mm(inside: f64, columns: usize) -> f64 {
    (inside - float(columns - 1) * GAP_MM) / float(columns)
}
