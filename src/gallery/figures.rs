//! `display.json`, format 1: what was measured and noticed, for programs.
//!
//! Fields come in the order of the structs; lengths in mm to a hundredth, with half the width of their interval of 95 %.

use serde::Serialize;

use crate::display::measure::{Between, Measured, Quantity, Run};
use crate::plan::cell::column_letters;
use crate::plan::{Grid, Printed};
use crate::words::Words;

use super::Suggestion;

/// The format that is written.
pub const FIGURES_FORMAT: u64 = 1;

/// The file, field for field.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Figures {
    /// Always [`FIGURES_FORMAT`].
    pub format: u64,
    /// What the evening is called.
    pub name: String,
    /// The tag in its codes.
    pub tag: String,
    /// Whether a photo says that it is a made picture and no photo.
    pub made: bool,
    /// When the first photo was taken, as its camera says.
    pub taken: Option<String>,
    /// The photos' names.
    pub photos: Vec<String>,
    /// How many squares were read.
    pub squares: usize,
    /// What was measured; null where too few squares were read.
    pub measured: Option<MeasuredFigures>,
    /// How alike wall and original are, 0 … 1; null where nothing can be compared.
    pub likeness: Option<f64>,
    /// What may be worth taping anew, in sentences.
    pub retape: Vec<String>,
    /// Drawings that look like another piece: suggestions, nothing more.
    pub suggestions: Vec<SuggestionFigures>,
}

/// A suggestion.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct SuggestionFigures {
    /// The cell where the square hangs.
    pub cell: String,
    /// The square whose paper it is; null where its code was not read.
    pub square: Option<String>,
    /// The piece that its drawing looks like.
    pub piece: String,
    /// How far the drawing is turned against its paper, clockwise.
    pub turn_degrees: u32,
    /// How many times as clearly as is asked for before anything is said.
    pub lead: f64,
    /// One sentence.
    pub say: String,
}

impl SuggestionFigures {
    /// The same for programs.
    #[must_use]
    pub fn of(suggestion: &Suggestion, grid: &Grid, words: &Words) -> Self {
        Self {
            cell: grid.label(suggestion.at),
            square: suggestion.paper.map(|paper| grid.label(paper)),
            piece: grid.label(suggestion.likeness.piece),
            turn_degrees: suggestion.likeness.turn.degrees(),
            lead: (suggestion.likeness.lead * 100.0).round() / 100.0,
            say: suggestion.said.tell(words),
        }
    }
}

/// What was measured.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct MeasuredFigures {
    scale_factor: Figure,
    pitch_mm: Figure,
    width_mm: Figure,
    height_mm: Figure,
    rows: Vec<RunFigures>,
    columns: Vec<RunFigures>,
    widest_gap: Option<BetweenFigures>,
    largest_overlap: Option<BetweenFigures>,
}

#[derive(Clone, Debug, PartialEq, Serialize)]
struct Figure {
    value: f64,
    within: f64,
}

#[derive(Clone, Debug, PartialEq, Serialize)]
struct RunFigures {
    line: String,
    squares: usize,
    drift_mm: Figure,
    lean_mm: Figure,
}

#[derive(Clone, Debug, PartialEq, Serialize)]
struct BetweenFigures {
    cells: [String; 2],
    mm: Figure,
}

impl Figure {
    fn of(quantity: Quantity, parts: f64) -> Self {
        let rounded = |value: f64| (value * parts).round() / parts;
        Self { value: rounded(quantity.value), within: rounded(quantity.within) }
    }

    fn mm(quantity: Quantity) -> Self {
        Self::of(quantity, 100.0)
    }
}

impl MeasuredFigures {
    /// The same for programs.
    #[must_use]
    pub fn of(measured: &Measured, grid: &Grid) -> Self {
        let run = |run: &Run, line: String| RunFigures {
            line,
            squares: run.squares,
            drift_mm: Figure::mm(run.drift),
            lean_mm: Figure::mm(run.lean),
        };
        let between = |found: &Between| BetweenFigures {
            cells: found.cells.map(|cell| grid.label(cell)),
            mm: Figure::mm(found.mm),
        };
        let row = |own: &Run| run(own, grid.row_number(own.index).to_string());
        Self {
            scale_factor: Figure::of(measured.scale_factor, 10_000.0),
            pitch_mm: Figure::mm(measured.pitch),
            width_mm: Figure::mm(measured.width),
            height_mm: Figure::mm(measured.height),
            rows: measured.rows.iter().map(row).collect(),
            columns: measured.columns.iter().map(|own| run(own, column_letters(own.index))).collect(),
            widest_gap: measured.widest_gap.as_ref().map(between),
            largest_overlap: measured.largest_overlap.as_ref().map(between),
        }
    }
}

impl Figures {
    /// What is known before anything is measured.
    #[must_use]
    pub fn of(printed: &Printed) -> Self {
        Self {
            format: FIGURES_FORMAT,
            name: printed.name.clone(),
            tag: printed.tag.clone(),
            made: false,
            taken: None,
            photos: Vec::new(),
            squares: 0,
            measured: None,
            likeness: None,
            retape: Vec::new(),
            suggestions: Vec::new(),
        }
    }
}
