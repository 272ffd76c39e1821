//! `report.json`, format 1: everything a check found, for programs and for the other reports.
//!
//! The fields come in the order of the structs; lists in the order of the cells, row by row from the top;
//! numbers are rounded here, so the same wall gives the same bytes. A reader should pass over fields it does
//! not know.

use std::path::Path;

use serde::{Deserialize, Serialize};

use crate::frame::{PhotoPx, Point};
use crate::judge::{Act, Advice, Fix, JudgedCell, Judgement, Outcome, State, Summary};
use crate::plan::settings::Units;
use crate::plan::{Cell, Folder, Printed};
use crate::read::WallReading;
use crate::words::Words;

use super::sentences::Sentences;

/// The format that is written and read.
pub const FORMAT: u64 = 1;

/// The file, field for field.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Report {
    /// Always [`FORMAT`].
    pub format: u64,
    /// Name and tag.
    pub event: ReportEvent,
    /// Present and true where a photo says that it is a made picture.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub made: bool,
    /// When the first photo was taken, as its camera says; null where it does not.
    pub taken: Option<String>,
    /// Each photo.
    pub photos: Vec<ReportPhoto>,
    /// How many cells are in which state.
    pub summary: Summary,
    /// Every cell.
    pub cells: Vec<ReportCell>,
    /// What to do, in order.
    pub fixes: Vec<ReportFix>,
    /// Squares that were seen nowhere.
    pub missing: Vec<String>,
    /// Squares that were seen more than once.
    pub twice: Vec<String>,
    /// What hangs there without belonging to this event.
    pub strangers: Vec<ReportStranger>,
    /// Figures of the wall.
    pub wall: ReportWall,
    /// The units that people read; the file itself is always in millimetres.
    #[serde(skip)]
    pub units: Units,
    /// What to tell the person with the phone; absent where there is nothing to say.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub advice: Vec<String>,
    /// What is to be said before all else, where the photo is what is wrong; absent where it is not.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub lead: Option<String>,
    /// What to expect at the event's end; absent where nothing is known of that.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub forecast: Option<String>,
    /// Spots whose squares nobody has drawn on yet; absent where there are none. No fault.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub white: Vec<String>,
    /// Spots whose squares are only begun; absent where there are none, or nobody asked. No fault.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub begun: Vec<String>,
    /// Of a border in reserve, how many squares hang in their places, and how many there are; absent where there is no border.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub border: Option<ReportBorder>,
    /// Squares that are in a photo, but apart from the wall; absent where there are none.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub apart: Vec<String>,
}

/// The event.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct ReportEvent {
    /// What the evening is called.
    pub name: String,
    /// The tag in its codes.
    pub tag: String,
}

/// A border in reserve.
#[derive(Copy, Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct ReportBorder {
    /// Squares that hang in their places.
    pub up: usize,
    /// Squares that there are.
    pub squares: usize,
}

/// One photo.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct ReportPhoto {
    /// Its file's name, without folders.
    pub file: String,
    /// Pixels across, upright.
    pub width: usize,
    /// Pixels down, upright.
    pub height: usize,
    /// How many squares and cards were identified in it.
    pub codes_read: usize,
}

/// One cell.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct ReportCell {
    /// What people call it.
    pub label: String,
    /// From the left, from 0.
    pub column: usize,
    /// From the top, from 0.
    pub row: usize,
    /// How it stands with it.
    pub state: State,
    /// The square that hangs there.
    pub found: Option<String>,
    /// How far it is turned clockwise from upright, in degrees.
    pub turn_degrees: u32,
    /// How surely that was read, 0 … 1, to a thousandth.
    pub certainty: f64,
    /// Clockwise from the square's own top left, in pixels of the upright photo, to a tenth.
    pub corners_px: Option<[[f64; 2]; 4]>,
    /// In which photo, from 0.
    pub photo: usize,
}

/// One thing to do.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct ReportFix {
    /// What kind of thing.
    #[serde(rename = "do")]
    pub act: Act,
    /// Where; from the first to the second where something moves.
    pub cells: Vec<String>,
    /// With which square, if it is one that is known.
    pub square: Option<String>,
    /// How far clockwise to turn it, if it is a turn.
    pub degrees: Option<u32>,
    /// One sentence.
    pub say: String,
}

/// A code that is none of this event's squares.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct ReportStranger {
    /// What it says.
    pub text: String,
    /// Where it hangs.
    pub cell: String,
}

/// Figures of the wall.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct ReportWall {
    /// A square's side over its piece's.
    pub scale_factor: f64,
    /// Width of all cells together.
    pub width_mm: f64,
    /// Height of all cells together.
    pub height_mm: f64,
    /// The largest distance of a square's middle from its cell's, to a tenth.
    pub worst_shift_mm: f64,
    /// Pixels that a module of a square takes, in the photo where it takes fewest, to a hundredth.
    pub photo_px_per_module: f64,
}

/// What the files say of the photos.
#[derive(Clone, Debug, PartialEq, Eq, Default)]
pub struct Occasion {
    /// When the first was taken.
    pub taken: Option<String>,
    /// Whether any is a made picture.
    pub made: bool,
    /// Each file's name, in the order of the reading's photos.
    pub files: Vec<String>,
}

impl Report {
    /// Puts down what was found.
    #[must_use]
    pub fn new(
        (reading, judgement): (&WallReading, &Judgement),
        (fixes, advice): (&[Fix], &[Advice]),
        printed: &Printed,
        occasion: &Occasion,
        words: &Words,
    ) -> Self {
        let say = Sentences { words, grid: &judgement.grid };
        let label = |cell: &Cell| judgement.grid.label(*cell);
        let strangers = judgement.strangers.iter();
        Self {
            format: FORMAT,
            event: ReportEvent { name: printed.name.clone(), tag: printed.tag.clone() },
            made: occasion.made,
            taken: occasion.taken.clone(),
            photos: photos(reading, occasion),
            summary: judgement.summary,
            cells: judgement.cells.iter().map(|at| cell(at, reading, &label)).collect(),
            fixes: fixes.iter().map(|fix| one_fix(fix, &label, &say)).collect(),
            missing: judgement.missing.iter().map(label).collect(),
            twice: judgement.twice.iter().map(label).collect(),
            strangers: strangers
                .map(|s| ReportStranger { text: s.text.clone(), cell: label(&s.cell) })
                .collect(),
            wall: wall(reading, judgement),
            units: printed.units,
            advice: advice.iter().filter(|one| !one.is_lead()).map(|one| say.advice(one)).collect(),
            lead: advice.iter().find(|one| one.is_lead()).map(|one| say.advice(one)),
            forecast: None,
            white: Vec::new(),
            begun: Vec::new(),
            border: judgement
                .grid
                .border
                .then(|| ReportBorder { up: judgement.border_up(), squares: judgement.grid.border_count() }),
            apart: judgement.apart.squares.iter().map(label).collect(),
        }
    }

    /// The file's text: indented, with a line's end at its end.
    #[must_use]
    pub fn to_json(&self) -> String {
        let mut text = serde_json::to_string_pretty(self).unwrap_or_default(); // structs with text keys always serialize
        text.push('\n');
        text
    }

    /// Reads a file's text.
    ///
    /// # Errors
    /// Where it is not JSON or a field is missing.
    pub fn from_json(text: &str) -> Result<Self, serde_json::Error> {
        serde_json::from_str(text)
    }

    /// The report in a check's folder; `None` where there is none, or none that can be read.
    #[must_use]
    pub fn of_check(check: &Path) -> Option<Self> {
        let bytes = Folder::read_of_check(check, "report.json")?;
        Self::from_json(&String::from_utf8(bytes).ok()?).ok()
    }

    /// What the check comes to.
    #[must_use]
    pub fn outcome(&self) -> Outcome {
        self.summary.outcome()
    }

    /// How many cells side by side and one above the other.
    #[must_use]
    pub fn size(&self) -> (usize, usize) {
        let last = |of: fn(&ReportCell) -> usize| self.cells.iter().map(of).max().map_or(0, |last| last + 1);
        (last(|cell| cell.column), last(|cell| cell.row))
    }
}

fn photos(reading: &WallReading, occasion: &Occasion) -> Vec<ReportPhoto> {
    let one = |i: usize| {
        let first = reading.of_photo(i).next().map(|(_, own)| (own.width, own.height));
        let (width, height) = first.unwrap_or_default();
        let codes_read = reading.of_photo(i).map(|(_, own)| own.codes_read).sum();
        ReportPhoto { file: occasion.files.get(i).cloned().unwrap_or_default(), width, height, codes_read }
    };
    (0..reading.photo_count()).map(one).collect()
}

fn cell(at: &JudgedCell, reading: &WallReading, label: &impl Fn(&Cell) -> String) -> ReportCell {
    ReportCell {
        label: at.label.clone(),
        column: at.cell.column,
        row: at.cell.row,
        state: at.state,
        found: at.found.as_ref().map(label),
        turn_degrees: at.turn.degrees(),
        certainty: to_places(at.certainty, 1000.0),
        corners_px: at.corners.and_then(corners),
        photo: reading.photos.get(at.photo).map_or(0, |own| own.photo),
    }
}

/// `None` where a corner is no place in a picture.
fn corners(corners: [Point<PhotoPx>; 4]) -> Option<[[f64; 2]; 4]> {
    let all_finite = corners.iter().all(|corner| corner.is_finite());
    all_finite.then(|| corners.map(|corner| [to_places(corner.x, 10.0), to_places(corner.y, 10.0)]))
}

fn one_fix(fix: &Fix, label: &impl Fn(&Cell) -> String, say: &Sentences<'_>) -> ReportFix {
    ReportFix {
        act: fix.act(),
        cells: fix.cells().iter().map(label).collect(),
        square: fix.square().as_ref().map(label),
        degrees: fix.degrees(),
        say: say.fix(fix),
    }
}

fn wall(reading: &WallReading, judgement: &Judgement) -> ReportWall {
    let size = judgement.grid.size();
    let finite = |of: fn(&crate::read::PhotoReading) -> f64| {
        reading.photos.iter().map(of).filter(|value| value.is_finite()).collect::<Vec<f64>>()
    };
    let fewest = finite(|photo| photo.px_per_module).into_iter().reduce(f64::min).unwrap_or(0.0);
    let worst = finite(|photo| photo.worst_shift_mm).into_iter().fold(0.0, f64::max);
    ReportWall {
        scale_factor: to_places(judgement.grid.square_mm / judgement.grid.piece_mm, 1000.0),
        width_mm: to_places(size.x, 1000.0),
        height_mm: to_places(size.y, 1000.0),
        worst_shift_mm: to_places(worst, 10.0),
        photo_px_per_module: to_places(fewest, 100.0),
    }
}

/// Rounded to one part in `parts`; 0 where it is no number. Never minus nought.
fn to_places(value: f64, parts: f64) -> f64 {
    let rounded = (value * parts).round() / parts;
    if rounded.is_finite() { rounded + 0.0 } else { 0.0 }
}
