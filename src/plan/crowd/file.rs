//! `plan.json`: what is worked out from event.toml and the picture, for whoever wants the numbers. Written anew by `plan` and
//! `print`, read by neither.
//!
//! ```text
//! {"format":1, "event":{"name","tag"}, "grid":{"columns","rows","square_mm","piece_mm"},
//!  "pencils":[{"name","srgb","pieces","share","chance","count"}],        share of the whole picture, chance that a visitor holds it
//!  "levels": [{"level","name","pieces","finished","minutes_a_piece"}],    name: the organiser's own, or null
//!  "pieces":  [{"label","column","row","level","decided","score","complexity","regions","edge","shares","pencils"}],
//!  "evening":{"visitors","minutes","seats","assumed","seats_in_use","pace_minutes","can_finish","minutes_for_all","seats_for_all",
//!             "verdict","by","least","most"},
//!  "grids":  [{"columns","rows","width_mm","height_mm","lost"}],        others that suit the crowd
//!  "wall":   {"width_mm","height_mm","width_with_cards_mm","height_with_cards_mm","hang_mm","fits","paper_m2",
//!             "rows":[{"row","lower_mm","upper_mm","means":{"children-from-5","children-from-9","seated","adults"}}]},
//!  "supplies":{"sharpeners","erasers","tape_mm","cards","sheets":[{"document","sheets"}]}}
//! ```
//!
//! Lengths are in mm, shares 0 … 1, `edge` in sides of the piece; `pencils` of a piece are numbers into `pencils`, from 0, the one for
//! the largest area first. `means` are `floor`, `helper`, and for adults alone `stool` and `ladder`.

use std::collections::BTreeMap;

use serde::Serialize;

use super::{Evening, OtherGrid, People, RowHeight};
use crate::frame::float;
use crate::plan::level::Level;
use crate::plan::settings::{Pencil, Settings};

/// The format that this program writes.
pub const PLAN_FORMAT: u64 = 1;

/// One piece.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct PlannedPiece {
    /// What people call its cell.
    pub label: String,
    /// Its column from the left, from 0.
    pub column: usize,
    /// Its row from the top, from 0.
    pub row: usize,
    /// How hard it is to redraw.
    pub level: Level,
    /// Whether the organiser decided that.
    pub decided: bool,
    /// Its score.
    pub score: f64,
    /// The sum of its regions' perimetric complexities.
    pub complexity: f64,
    /// How many connected patches of one colour it has.
    pub regions: usize,
    /// How long its edges are, in sides of the piece.
    pub edge: f64,
    /// The part of its area that each pencil covers.
    pub shares: Vec<f64>,
    /// The numbers of the pencils that it needs.
    pub pencils: Vec<usize>,
}

/// How many sheets of paper a document takes.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct SheetCount {
    /// Its name, such as `squares`.
    pub document: String,
    /// How many sheets.
    pub sheets: usize,
}

/// The file, field for field.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct PlanFile {
    format: u64,
    event: EventPart,
    grid: GridPart,
    pencils: Vec<PencilPart>,
    levels: Vec<LevelPart>,
    pieces: Vec<PlannedPiece>,
    evening: EveningPart,
    grids: Vec<OtherPart>,
    wall: WallPart,
    supplies: SuppliesPart,
}

#[derive(Clone, Debug, PartialEq, Serialize)]
struct EventPart {
    name: String,
    tag: String,
}

#[derive(Clone, Debug, PartialEq, Serialize)]
struct GridPart {
    columns: usize,
    rows: usize,
    square_mm: f64,
    piece_mm: f64,
}

#[derive(Clone, Debug, PartialEq, Serialize)]
struct PencilPart {
    name: String,
    srgb: String,
    pieces: usize,
    share: f64,
    chance: f64,
    count: usize,
}

#[derive(Clone, Debug, PartialEq, Serialize)]
struct LevelPart {
    level: Level,
    name: Option<String>,
    pieces: usize,
    finished: usize,
    minutes_a_piece: f64,
}

#[derive(Clone, Debug, PartialEq, Serialize)]
struct EveningPart {
    visitors: usize,
    minutes: f64,
    seats: usize,
    assumed: Vec<&'static str>,
    seats_in_use: usize,
    pace_minutes: f64,
    can_finish: usize,
    minutes_for_all: f64,
    seats_for_all: Option<usize>,
    verdict: &'static str,
    by: usize,
    least: usize,
    most: usize,
}

#[derive(Clone, Debug, PartialEq, Serialize)]
struct OtherPart {
    columns: usize,
    rows: usize,
    width_mm: f64,
    height_mm: f64,
    lost: f64,
}

#[derive(Clone, Debug, PartialEq, Serialize)]
struct WallPart {
    width_mm: f64,
    height_mm: f64,
    width_with_cards_mm: f64,
    height_with_cards_mm: f64,
    hang_mm: f64,
    fits: Option<bool>,
    paper_m2: f64,
    rows: Vec<RowPart>,
}

#[derive(Clone, Debug, PartialEq, Serialize)]
struct RowPart {
    row: usize,
    lower_mm: f64,
    upper_mm: f64,
    means: BTreeMap<&'static str, &'static str>,
}

#[derive(Clone, Debug, PartialEq, Serialize)]
struct SuppliesPart {
    sharpeners: usize,
    erasers: usize,
    tape_mm: f64,
    cards: usize,
    sheets: Vec<SheetCount>,
}

impl PlanFile {
    /// The plan of an event: its settings, its pieces in the grid's order, what follows for the evening, and the sheets of paper
    /// that the kit's documents take.
    #[must_use]
    pub fn new(
        settings: &Settings,
        pencils: &[Pencil],
        pieces: Vec<PlannedPiece>,
        evening: &Evening,
        sheets: Vec<SheetCount>,
    ) -> Self {
        let grid = &settings.grid;
        Self {
            format: PLAN_FORMAT,
            event: EventPart { name: settings.name.clone(), tag: settings.tag.to_string() },
            grid: GridPart {
                columns: grid.columns,
                rows: grid.rows,
                square_mm: grid.square_mm,
                piece_mm: grid.piece_mm,
            },
            pencils: pencil_parts(pencils, &pieces, evening),
            levels: level_parts(settings, evening),
            pieces: pieces.into_iter().map(PlannedPiece::tidied).collect(),
            evening: EveningPart::of(evening),
            grids: evening.others.iter().map(OtherPart::of).collect(),
            wall: WallPart::of(evening),
            supplies: SuppliesPart {
                sharpeners: evening.supplies.sharpeners,
                erasers: evening.supplies.erasers,
                tape_mm: evening.supplies.tape_mm,
                cards: evening.supplies.cards,
                sheets,
            },
        }
    }

    /// The file's bytes; equal plans give equal bytes.
    ///
    /// # Errors
    /// Where a number is not finite.
    pub fn to_json(&self) -> Result<Vec<u8>, serde_json::Error> {
        let mut bytes = serde_json::to_vec_pretty(self)?;
        bytes.push(b'\n');
        Ok(bytes)
    }
}

fn pencil_parts(pencils: &[Pencil], pieces: &[PlannedPiece], evening: &Evening) -> Vec<PencilPart> {
    let part = |(number, pencil): (usize, &Pencil)| {
        let need = evening.supplies.pencils.get(number);
        let shares: f64 = pieces.iter().filter_map(|piece| piece.shares.get(number)).sum();
        PencilPart {
            name: pencil.name.clone(),
            srgb: pencil.hex(),
            pieces: pieces.iter().filter(|piece| piece.pencils.contains(&number)).count(),
            share: tidy(shares / float(pieces.len().max(1))),
            chance: tidy(need.map_or(0.0, |need| need.chance)),
            count: need.map_or(0, |need| need.count),
        }
    };
    pencils.iter().enumerate().map(part).collect()
}

fn level_parts(settings: &Settings, evening: &Evening) -> Vec<LevelPart> {
    let part = |level: Level| {
        let index = level.index();
        LevelPart {
            level,
            name: settings.levels.names.as_ref().map(|names| names[index].clone()),
            pieces: evening.pieces[index],
            finished: evening.time.finished[index],
            minutes_a_piece: evening.given.minutes_a_piece[index],
        }
    };
    Level::ALL.map(part).into()
}

impl PlannedPiece {
    fn tidied(self) -> Self {
        Self {
            score: tidy(self.score),
            complexity: tidy(self.complexity),
            edge: tidy(self.edge),
            shares: self.shares.iter().map(|share| tidy(*share)).collect(),
            ..self
        }
    }
}

impl EveningPart {
    fn of(evening: &Evening) -> Self {
        let (given, time) = (&evening.given, &evening.time);
        Self {
            visitors: given.visitors,
            minutes: given.minutes,
            seats: given.seats,
            assumed: given.assumed.iter().map(|what| what.word()).collect(),
            seats_in_use: time.seats_in_use,
            pace_minutes: tidy(time.pace_minutes),
            can_finish: time.can_finish,
            minutes_for_all: tidy(time.minutes_for_all),
            seats_for_all: time.seats_for_all,
            verdict: evening.verdict.word(),
            by: evening.verdict.by(),
            least: evening.range.least,
            most: evening.range.most,
        }
    }
}

impl OtherPart {
    fn of(other: &OtherGrid) -> Self {
        let OtherGrid { columns, rows, width_mm, height_mm, lost } = *other;
        Self { columns, rows, width_mm: tidy(width_mm), height_mm: tidy(height_mm), lost: tidy(lost) }
    }
}

impl WallPart {
    fn of(evening: &Evening) -> Self {
        let wall = &evening.wall;
        let row = |row: &RowHeight| RowPart {
            row: row.number,
            lower_mm: tidy(row.lower_mm),
            upper_mm: tidy(row.upper_mm),
            means: People::ALL
                .into_iter()
                .zip(row.means())
                .map(|(who, means)| (who.word(), means.word()))
                .collect(),
        };
        Self {
            width_mm: tidy(wall.width_mm),
            height_mm: tidy(wall.height_mm),
            width_with_cards_mm: tidy(wall.width_with_cards_mm),
            height_with_cards_mm: tidy(wall.height_with_cards_mm),
            hang_mm: tidy(wall.hang_mm),
            fits: wall.fit.map(|fit| fit.with_cards),
            paper_m2: tidy(evening.supplies.paper_m2),
            rows: wall.rows.iter().map(row).collect(),
        }
    }
}

/// Rounded to a ten-thousandth, so that files hold 44.45 and not 44.449999999999996.
fn tidy(value: f64) -> f64 {
    (value * 1e4).round() / 1e4
}
