//! `plan.json`: what is worked out from event.toml and the picture, for whoever wants the numbers. Written anew by `plan` and
//! `print`, read by neither.
//!
//! ```text
//! {"format":2, "event":{"name","tag"}, "grid":{"columns","rows","square_mm","piece_mm"},
//!  "pencils":[{"name","srgb","pieces","share","chance","count"}],        share of the whole picture, chance that a visitor holds it
//!  "levels": [{"level","name","pieces","minutes_a_piece","last_call"}],    name: the organiser's own, or null
//!  "pieces":  [{"label","column","row","level","decided","band","loss","score","complexity","regions","edge","shares","pencils"}],
//!  "evening":{"visitors":{"least","most"},"arrivals","pieces_each","start","minutes","seats","assumed","evenings","expected",
//!             "verdict","least","most"},                                evenings: how many were played
//!  "helpers":{"giving_out":[{"from","helpers"}],"hanging":[…],                as they are planned for
//!             "needed":{"giving_out":[…],"hanging":[…]},
//!             "one_fewer":{"giving_out","hanging"}},                     as "expected", or null
//!  "grids":  [{"columns","rows","width_mm","height_mm","lost","whole","without"}],    others that suit the crowd
//!  "wall":   {"width_mm","height_mm","width_with_cards_mm","height_with_cards_mm","hang_mm","fits","paper_m2",
//!             "rows":[{"row","lower_mm","upper_mm","means":{"children-from-5","children-from-9","seated","adults"}}]},
//!  "supplies":{"sharpeners","erasers","tape_mm","cards","sheets":[{"document","sheets"}]}}
//! ```
//!
//! `expected`: `{"whole","whole_at","up":{"low","usual","high"},"without":{…},"longest_wait","longest_wait_to_hang","seats_taken"}`: the
//! chance of being whole; squares up and visitors without a piece at the end on 5, 50 and 95 of 100 evenings; the longest wait of a usual
//! evening. Times are in minutes, and counted from the start where they are a moment.
//!
//! Lengths are in mm, shares 0 … 1, `edge` in sides of the piece; `pencils` of a piece are numbers into `pencils`, from 0, the one for
//! the largest area first. `means` are `floor`, `helper`, and for adults alone `stool` and `ladder`.

use std::collections::BTreeMap;

use serde::Serialize;

use super::{Evening, Expected, OtherGrid, People, RUNS, RowHeight, Staff, Usual};
use crate::frame::float;
use crate::plan::clock::Clock;
use crate::plan::level::Level;
use crate::plan::settings::{Choice, Pencil, Settings};

/// The format that this program writes.
pub const PLAN_FORMAT: u64 = 2;

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
    /// When it is handed out: first, middle or last.
    pub band: &'static str,
    /// What is lost when it is missing: 1 minus the picture's mean structural similarity.
    pub loss: f64,
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
    helpers: HelpersPart,
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
    minutes_a_piece: f64,
    last_call: f64,
}

#[derive(Clone, Debug, PartialEq, Serialize)]
struct EveningPart {
    visitors: VisitorsPart,
    arrivals: &'static str,
    pieces_each: f64,
    start: Option<String>,
    minutes: f64,
    seats: usize,
    assumed: Vec<&'static str>,
    evenings: usize,
    expected: ExpectedPart,
    verdict: &'static str,
    least: usize,
    most: usize,
    #[serde(skip_serializing_if = "Option::is_none")]
    border: Option<BorderPart>,
}

#[derive(Clone, Debug, PartialEq, Serialize)]
struct BorderPart {
    pieces: usize,
    expected: ExpectedPart,
}

#[derive(Clone, Debug, PartialEq, Serialize)]
struct VisitorsPart {
    least: usize,
    most: usize,
}

#[derive(Clone, Debug, PartialEq, Serialize)]
struct ExpectedPart {
    whole: f64,
    whole_at: Option<f64>,
    up: Usual,
    without: Usual,
    longest_wait: f64,
    longest_wait_to_hang: f64,
    seats_taken: usize,
}

#[derive(Clone, Debug, PartialEq, Serialize)]
struct HelpersPart {
    giving_out: Vec<ShiftPart>,
    hanging: Vec<ShiftPart>,
    needed: ShiftsPart,
    one_fewer: OneFewerPart,
}

#[derive(Clone, Debug, PartialEq, Serialize)]
struct ShiftsPart {
    giving_out: Vec<ShiftPart>,
    hanging: Vec<ShiftPart>,
}

#[derive(Clone, Debug, PartialEq, Serialize)]
struct ShiftPart {
    from: f64,
    helpers: usize,
}

#[derive(Clone, Debug, PartialEq, Serialize)]
struct OneFewerPart {
    giving_out: Option<ExpectedPart>,
    hanging: Option<ExpectedPart>,
}

#[derive(Clone, Debug, PartialEq, Serialize)]
struct OtherPart {
    columns: usize,
    rows: usize,
    width_mm: f64,
    height_mm: f64,
    lost: f64,
    whole: f64,
    without: usize,
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
            helpers: HelpersPart::of(evening),
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
            minutes_a_piece: evening.given.minutes_a_piece[index],
            last_call: tidy(evening.last_call(level)),
        }
    };
    Level::ALL.map(part).into()
}

impl PlannedPiece {
    fn tidied(self) -> Self {
        Self {
            loss: (self.loss * 1e6).round() / 1e6,
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
        let given = &evening.given;
        Self {
            visitors: VisitorsPart { least: given.visitors.least(), most: given.visitors.most() },
            arrivals: given.arrivals.word(),
            pieces_each: given.pieces_each,
            start: given.start.map(Clock::written),
            minutes: given.minutes,
            seats: given.seats,
            assumed: given.assumed.iter().map(|what| what.word()).collect(),
            evenings: RUNS,
            expected: ExpectedPart::of(&evening.expected),
            verdict: evening.verdict.word(),
            least: evening.range.least,
            most: evening.range.most,
            border: evening.reserve.as_ref().map(|reserve| BorderPart {
                pieces: reserve.pieces,
                expected: ExpectedPart::of(&reserve.expected),
            }),
        }
    }
}

impl ExpectedPart {
    fn of(expected: &Expected) -> Self {
        Self {
            whole: tidy(expected.whole),
            whole_at: expected.whole_at.map(tidy),
            up: expected.up,
            without: expected.without,
            longest_wait: tidy(expected.longest_wait),
            longest_wait_to_hang: tidy(expected.longest_wait_to_hang),
            seats_taken: expected.seats_taken,
        }
    }
}

impl HelpersPart {
    fn of(evening: &Evening) -> Self {
        let one_fewer = |expected: &Option<Expected>| expected.as_ref().map(ExpectedPart::of);
        Self {
            giving_out: shift_parts(&evening.scene.giving_out),
            hanging: shift_parts(&evening.scene.hanging),
            needed: ShiftsPart {
                giving_out: shift_parts(&evening.needed.giving_out),
                hanging: shift_parts(&evening.needed.hanging),
            },
            one_fewer: OneFewerPart {
                giving_out: one_fewer(&evening.one_fewer.giving_out),
                hanging: one_fewer(&evening.one_fewer.hanging),
            },
        }
    }
}

fn shift_parts(staff: &Staff) -> Vec<ShiftPart> {
    staff.shifts().iter().map(|(from, helpers)| ShiftPart { from: *from, helpers: *helpers }).collect()
}

impl OtherPart {
    fn of(other: &OtherGrid) -> Self {
        let OtherGrid { columns, rows, width_mm, height_mm, lost, whole, without } = *other;
        let (width_mm, height_mm, lost) = (tidy(width_mm), tidy(height_mm), tidy(lost));
        Self { columns, rows, width_mm, height_mm, lost, whole: tidy(whole), without }
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
