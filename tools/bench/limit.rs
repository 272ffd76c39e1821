//! How small a module may be: made walls at the edge of what a photo holds, and how much of them is read.
//!
//! `cargo run --release --example limit trials [FIRST [COUNT]]` makes single codes instead, COUNT a size and camera, a third of them
//! none of the event's; it prints how many were named, and for each bin of certainty how many guesses were right.
//! `… limit ideal [FIRST [COUNT]]` tells how small a module may be for 99 of 100 codes to be named, and how small for a reader
//! that is told pose, blur, light and surroundings.
//! `… limit same [FIRST [COUNT]]` prints a fingerprint of each wall's reading, `… limit same-photos EVENT…` of each photo in the
//! folder `photos` of these events: a change of the reader that is to change nothing leaves them as they are.
//!
//! `cargo run --release --example limit [FIRST [COUNT [CONDITION]]]` makes walls FIRST … FIRST + COUNT − 1 of each condition (or of the one
//! named), reads them, and prints a line each: readable codes named, codes named wrongly, walls not placed. With a
//! condition named, it says of each wall what was missed. The walls are made (`rehearse`), 6 × 5 to 12 × 9 squares with
//! modules of 0.6 mm, with squares in wrong cells, turned, missing, covered, torn, scribbled on and of other events.

#![allow(clippy::print_stdout, reason = "a tool's answers")]

#[path = "limit/ideal.rs"]
mod ideal;
#[path = "limit/patch.rs"]
mod patch;
#[path = "limit/phone.rs"]
mod phone;
#[path = "limit/same.rs"]
mod same;
#[path = "limit/trials.rs"]
mod trials;

use std::error::Error;
use std::path::Path;
use std::time::{Duration, Instant};

use everysquare::photo::Photo;
use everysquare::picture::Picture;
use everysquare::plan::settings::CodeSettings;
use everysquare::plan::{Grid, Printed, Settings, Tag, Turn};
use everysquare::read::{CellReading, Reader, Sight};
use everysquare::rehearse::{Backing, Cards, CellTruth, Faults, Options, Printer, Truth, make};
use rayon::prelude::*;

use patch::Sensor;

type Outcome<T> = Result<T, Box<dyn Error + Send + Sync>>;

const SHARP: Sensor = Sensor { blur_px: 0.7, noise: 0.03, quality: 85 };
const SOFT: Sensor = Sensor { blur_px: 1.0, noise: 0.05, quality: 75 };

/// One kind of wall and photo.
struct Condition {
    name: &'static str,
    px_per_module: f64,
    camera: Sensor,
    cards: Cards,
    printer: Printer,
    /// Whether a phone processes the photo, and a poster hangs beside the wall.
    phone: bool,
}

impl Condition {
    const fn new(name: &'static str, px_per_module: f64, camera: Sensor, cards: Cards) -> Self {
        let printer = Printer { ink_runs_mm: 0.0, density: 1.0, streaks: 0.0, draft: 0.0 };
        Self { name, px_per_module, camera, cards, printer, phone: false }
    }
}

const CONDITIONS: [Condition; 15] = [
    Condition::new("sharp-0.8", 0.8, SHARP, Cards::All),
    Condition::new("sharp-0.8-corners", 0.8, SHARP, Cards::Corners),
    Condition::new("soft-1.0", 1.0, SOFT, Cards::All),
    Condition::new("sharp-1.3-none", 1.3, SHARP, Cards::None),
    Condition::new("sharp-1.5-none", 1.5, SHARP, Cards::None),
    Condition::new("soft-1.5-none", 1.5, SOFT, Cards::None),
    Condition::new("sharp-2.0-none", 2.0, SHARP, Cards::None),
    Condition::new("soft-2.0-none", 2.0, SOFT, Cards::None),
    Condition { printer: Printer::PALE, ..Condition::new("pale-1.0", 1.0, SHARP, Cards::All) },
    Condition { printer: Printer::STREAKY, ..Condition::new("streaks-1.0", 1.0, SHARP, Cards::All) },
    Condition { printer: Printer::DRAFT, ..Condition::new("draft-1.0", 1.0, SHARP, Cards::All) },
    Condition { printer: Printer::RUNNY, ..Condition::new("runny-1.0", 1.0, SHARP, Cards::All) },
    Condition { phone: true, ..Condition::new("phone-1.2-none", 1.2, SHARP, Cards::None) },
    Condition { phone: true, ..Condition::new("phone-1.3-none", 1.3, SHARP, Cards::None) },
    Condition { phone: true, ..Condition::new("phone-soft-1.4-none", 1.4, SOFT, Cards::None) },
];

/// What the walls of a condition gave.
#[derive(Default)]
struct Score {
    /// Readable codes whose modules have as many pixels as the condition says or more; those of them that were named.
    readable: usize,
    named: usize,
    /// The same of smaller ones: a wall is not seen equally large everywhere.
    smaller: usize,
    smaller_named: usize,
    wrong: usize,
    unplaced: usize,
    walls: usize,
    reading: Duration,
    notes: Vec<String>,
}

impl Score {
    fn add(mut self, other: Self) -> Self {
        self.readable += other.readable;
        self.named += other.named;
        self.smaller += other.smaller;
        self.smaller_named += other.smaller_named;
        self.wrong += other.wrong;
        self.unplaced += other.unplaced;
        self.walls += other.walls;
        self.reading += other.reading;
        self.notes.extend(other.notes);
        self
    }
}

/// A number of 0 … below `below` out of a seed; `what` keeps different uses apart.
fn pick(seed: u64, what: u64, below: u64) -> u64 {
    let mut x = seed.wrapping_mul(0x9e37_79b9_7f4a_7c15) ^ what.wrapping_mul(0xd1b5_4a32_d192_ed03);
    x ^= x >> 31;
    x = x.wrapping_mul(0xbf58_476d_1ce4_e5b9);
    (x ^ (x >> 29)) % below
}

fn small(seed: u64, what: u64, below: u64) -> usize {
    usize::try_from(pick(seed, what, below)).unwrap_or(0)
}

/// Side of a module, in mm.
const MODULE_MM: f64 = 0.6;

fn plan(seed: u64) -> Outcome<Printed> {
    let (columns, rows) = (6 + small(seed, 1, 7), 5 + small(seed, 2, 5));
    let grid = Grid::usual(columns, rows);
    let mut settings = Settings::new(format!("Limit {seed}"), Tag::from_number(seed * 7919), grid);
    settings.code = CodeSettings { module_mm: MODULE_MM, ..CodeSettings::usual(&grid) };
    Ok(settings.printed()?)
}

fn options(seed: u64, condition: &Condition) -> Options {
    let mut options = Options::varied(seed);
    (options.width, options.height) = (640, 480);
    options.min_px_per_module = Some(condition.px_per_module);
    options.cards = condition.cards;
    options.printer = condition.printer;
    options.backing = [Backing::White, Backing::Grey, Backing::Coloured, Backing::Wood][small(seed, 8, 4)];
    let Sensor { blur_px, noise, quality } = condition.camera;
    (options.sensor.blur_px, options.sensor.noise, options.sensor.jpeg_quality) = (blur_px, noise, quality);
    options.sensor.sharpen = 0.0;
    options.sensor.mirrored = pick(seed, 7, 8) == 0;
    let permute_all = pick(seed, 9, 6) == 0;
    let some = |what: u64, most: u64| small(seed, what, most + 1);
    let moved = |what: u64, most: u64| if permute_all { 0 } else { some(what, most) };
    options.faults = Faults {
        swaps: moved(10, 3),
        cycles: moved(11, 1),
        turns: some(12, 4),
        missing: some(13, 4),
        scribbled: some(14, 1),
        covered: some(15, 1),
        torn: some(16, 1),
        duplicates: some(17, 1),
        strangers: some(18, 2),
        permute_all,
        ..Faults::default()
    };
    options
}

/// The made photo and its truth; kept in `target/bench/limit`, for making takes longer than reading.
fn made(seed: u64, condition: &Condition, printed: &Printed, picture: &Picture) -> Outcome<(Vec<u8>, Truth)> {
    let folder = Path::new("target/bench/limit");
    let file = folder.join(format!("{seed}-{}", condition.name.replace('.', "_")));
    let (photo, told) = (file.with_extension("jpg"), file.with_extension("json"));
    if let (Ok(jpeg), Ok(truth)) = (std::fs::read(&photo), std::fs::read(&told)) {
        return Ok((jpeg, serde_json::from_slice(&truth)?));
    }
    let made = make(printed, picture, &options(seed, condition))?;
    let jpeg = if condition.phone { phone::stored(&made.image, &made.truth, seed)? } else { made.jpeg };
    std::fs::create_dir_all(folder)?;
    std::fs::write(photo, &jpeg)?;
    std::fs::write(told, serde_json::to_vec(&made.truth)?)?;
    Ok((jpeg, made.truth))
}

fn one_wall(seed: u64, condition: &Condition, picture: &Picture) -> Outcome<Score> {
    let printed = plan(seed)?;
    let (jpeg, truth) = made(seed, condition, &printed, picture)?;
    let photo = Photo::open(&jpeg)?;
    let mut score = Score { walls: 1, ..Score::default() };
    for cell in truth.cells.iter().filter(|cell| cell.readable && cell.stranger.is_none()) {
        *(if large(cell, condition) { &mut score.readable } else { &mut score.smaller }) += 1;
    }
    let start = Instant::now();
    let reading = Reader::new(&printed).read(&photo);
    score.reading = start.elapsed();
    match reading {
        Ok(reading) => {
            for (truth, cell) in truth.cells.iter().zip(&reading.cells) {
                score.cell((seed, condition), &printed, truth, cell);
            }
        }
        Err(error) => {
            score.unplaced = 1;
            let (cells, took) = (printed.grid.count(), score.reading.as_secs_f64());
            score.notes.push(format!("wall {seed}, {cells} squares, {took:.1} s: {error}"));
        }
    }
    Ok(score)
}

/// So much smaller than a condition says may a module be and still count as of that size.
const ALIKE: f64 = 0.95;

/// Whether a code is seen as large as the condition says.
fn large(cell: &CellTruth, condition: &Condition) -> bool {
    cell.px_per_module.is_none_or(|px| px >= ALIKE * condition.px_per_module)
}

impl Score {
    fn cell(
        &mut self,
        (seed, condition): (u64, &Condition),
        printed: &Printed,
        truth: &CellTruth,
        cell: &CellReading,
    ) {
        let (found, degrees) = match &cell.sight {
            Sight::Square { home, turn } => (Some(printed.grid.label(*home)), turn.degrees()),
            _ => (None, Turn::None.degrees()),
        };
        let really = found == truth.hung && degrees == truth.hung_turn && truth.stranger.is_none();
        let readable = truth.readable && truth.stranger.is_none();
        let named = usize::from(readable && found.is_some() && really);
        *(if large(truth, condition) { &mut self.named } else { &mut self.smaller_named }) += named;
        self.wrong += usize::from(found.is_some() && !really);
        if (found.is_some() && !really) || (readable && found.is_none()) {
            let (hung, seen) = (&truth.hung, &cell.sight);
            self.notes.push(format!(
                "wall {seed} {}: {seen:?}, hung {hung:?} turned {}, {:?}, {:?} px",
                truth.label, truth.hung_turn, truth.condition, truth.px_per_module
            ));
        }
    }
}

fn main() -> Outcome<()> {
    let mut typed: Vec<String> = std::env::args().skip(1).collect();
    let what = typed.first().filter(|word| word.parse::<u64>().is_err()).cloned();
    if what.is_some() {
        typed.remove(0);
    }
    if what.as_deref() == Some("same-photos") {
        return same::photos(&typed);
    }
    let number = |at: usize, usual: u64| typed.get(at).map_or(Ok(usual), |word| word.parse());
    let (first, count) = (number(0, 1)?, number(1, 8)?);
    match what.as_deref() {
        None => walls(first, count, typed.get(2)),
        Some("trials") => {
            trials::say(&trials::trials(&trials::Event::new()?, first, count, &TRIED, &SENSORS, false)?);
            Ok(())
        }
        Some("features") => {
            let event = trials::Event::new()?;
            trials::features(&trials::trials(&event, first, count, &TRIED, &SENSORS, false)?);
            Ok(())
        }
        Some("same") => same::walls(first, count, &picture()?),
        Some("ideal") => trials::compare(first, count, &[SENSORS[0], SENSORS[1]]),
        Some(other) => Err(format!("{other}: trials, features, ideal, same, same-photos or a number").into()),
    }
}

/// Sizes of single codes, in pixels a module.
const TRIED: [f64; 8] = [0.65, 0.7, 0.8, 1.0, 1.15, 1.3, 1.6, 2.2];
/// Cameras for single codes: sharp and soft as for the walls, a good one in good light, and one out of focus.
const SENSORS: [Sensor; 4] = [
    SHARP,
    SOFT,
    Sensor { blur_px: 0.5, noise: 0.015, quality: 92 },
    Sensor { blur_px: 1.4, noise: 0.04, quality: 80 },
];

fn picture() -> Outcome<Picture> {
    Ok(Picture::open(include_bytes!("../../samples/harbour-evening/picture.png"))?)
}

fn walls(first: u64, count: u64, chosen: Option<&String>) -> Outcome<()> {
    let picture = picture()?;
    for condition in CONDITIONS.iter().filter(|c| chosen.is_none_or(|name| c.name == name)) {
        let scores: Outcome<Vec<Score>> =
            (first..first + count).into_par_iter().map(|seed| one_wall(seed, condition, &picture)).collect();
        let score = scores?.into_iter().fold(Score::default(), Score::add);
        for note in score.notes.iter().filter(|_| chosen.is_some()) {
            println!("{note}");
        }
        let share =
            100.0 * everysquare::frame::float(score.named) / everysquare::frame::float(score.readable.max(1));
        println!(
            "{}: {} of {} readable codes named ({share:.2} %), of smaller ones {} of {}; {} wrongly; {} of {} walls not placed; {:.2} s reading a wall",
            condition.name,
            score.named,
            score.readable,
            score.smaller_named,
            score.smaller,
            score.wrong,
            score.unplaced,
            score.walls,
            score.reading.as_secs_f64() / everysquare::frame::float(score.walls.max(1))
        );
    }
    Ok(())
}
