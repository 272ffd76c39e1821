//! `display.json`, format 1: what was measured and noticed, for programs.
//!
//! Fields come in the order of the structs; lengths in mm to a hundredth, with half the width of their interval of 95 %.

use serde::Serialize;

use crate::display::measure::{Between, Measured, Quantity, Run};
use crate::plan::cell::column_letters;
use crate::plan::{Grid, Printed};
use crate::words::Words;

use super::Suggestion;

/// Number of the format that is written.
pub const FIGURES_FORMAT: u64 = 1;

/// Contents of `display.json`, field for field.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Figures {
    /// Always [`FIGURES_FORMAT`].
    pub format: u64,
    /// Name of the event.
    pub name: String,
    /// Tag in its codes.
    pub tag: String,
    /// Whether a photo says that it is a made picture and no photo.
    pub made: bool,
    /// Time when the first photo was taken, as its camera says.
    pub taken: Option<String>,
    /// Names of the photos.
    pub photos: Vec<String>,
    /// Number of squares that were read.
    pub squares: usize,
    /// Measures of the wall; null where too few squares were read.
    pub measured: Option<MeasuredFigures>,
    /// Structural similarity of wall and original, 0 … 1; null where nothing can be compared.
    pub likeness: Option<f64>,
    /// Sentences on what may be worth taping anew.
    pub retape: Vec<String>,
    /// Drawings that look like another piece: suggestions, nothing more.
    pub suggestions: Vec<SuggestionFigures>,
}

/// Suggestion that a drawing looks like another piece.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct SuggestionFigures {
    /// Label of the cell where the square hangs.
    pub cell: String,
    /// Label of the square whose paper it is; null where its code was not read.
    pub square: Option<String>,
    /// Label of the piece that its drawing looks like.
    pub piece: String,
    /// Angle of the drawing against its paper, clockwise, in degrees.
    pub turn_degrees: u32,
    /// Lead as a multiple of what is asked for before anything is said.
    pub lead: f64,
    /// Sentence for people.
    pub say: String,
}

impl SuggestionFigures {
    /// Figures of a suggestion, labels and sentence included.
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

/// Measures of the wall.
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
    /// Figures of what was measured, rounded.
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
    /// Figures that are known before anything is measured.
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
