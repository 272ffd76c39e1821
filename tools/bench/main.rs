//! How long one check of a 12-megapixel photo takes, stage by stage, and how much memory: `tools/bench/run`.
//!
//! The photos are made (`rehearse`), of 80 and of 192 squares, and lie in `target/bench/` afterwards. Every figure comes
//! from a process of its own, so that the peak of memory belongs to it alone (`VmHWM`, Linux only). Beside it, in the same
//! run: the bare decoding of the same JPEG, and a general reader of codes given the whole photo.
//!
//! `tools/bench/run plan` times 500 evenings, curves and groups. `tools/bench/run cost` times walls of 12 to 3,000 cells and checks of 1 to 40 photos, and draws both. `tools/bench/peers` makes
//! walls of many finenesses (`walls`), reads them here and has other people's readers read them.

#![allow(clippy::print_stdout, reason = "a tool's answers")]

mod cost;
mod peers;
mod plan;
mod plot;
mod stages;
mod table;
mod walls;

use std::error::Error;
use std::path::{Path, PathBuf};
use std::time::Duration;

use everysquare::cli::sample;
use everysquare::picture::Picture;
use everysquare::plan::{Grid, Printed, Settings, Tag};
use everysquare::rehearse::{Faults, Options, make};

type Outcome<T> = Result<T, Box<dyn Error>>;

/// Columns and rows of the walls.
const WALLS: [(usize, usize); 2] = [(10, 8), (16, 12)];
/// A 12-megapixel phone's photo.
const PHOTO: (usize, usize) = (4032, 3024);
const SEED: u64 = 12;
/// How often each stage is timed, if nothing is typed; the median is told.
const ROUNDS: usize = 5;
/// The general reader's patience.
const PATIENCE: Duration = Duration::from_secs(20);

/// One wall and its photo.
struct Case {
    columns: usize,
    rows: usize,
}

impl Case {
    fn printed(&self) -> Outcome<Printed> {
        let (columns, rows) = (self.columns, self.rows);
        let grid = Grid::usual(columns, rows);
        let tag = Tag::new("K7M").ok_or("no tag")?;
        Ok(Settings::new("Bench".to_owned(), tag, grid).printed()?)
    }

    fn photo(&self) -> PathBuf {
        Path::new("target/bench").join(format!("{}x{}.jpg", self.columns, self.rows))
    }

    fn make(&self) -> Outcome<()> {
        let faults = Faults { swaps: 3, turns: 2, missing: 4, ..Faults::default() };
        let options = Options { width: PHOTO.0, height: PHOTO.1, faults, ..Options::varied(SEED) };
        let made = make(&self.printed()?, &Picture::open(sample::PICTURE_PNG)?, &options)?;
        std::fs::create_dir_all("target/bench")?;
        Ok(std::fs::write(self.photo(), made.jpeg)?)
    }
}

fn main() -> Outcome<()> {
    let typed: Vec<String> = std::env::args().skip(1).collect();
    let words: Vec<&str> = typed.iter().map(String::as_str).collect();
    match words.as_slice() {
        [] => compare(ROUNDS),
        ["cost"] => cost::compare(),
        ["plan"] => plan::show(),
        ["plan-work"] => tell(&plan::work()?),
        ["cost-wall", columns, rows] => tell(&cost::wall(columns.parse()?, rows.parse()?)?),
        ["cost-photos", count] => tell(&cost::photos(count.parse()?)?),
        ["walls", folder] => walls::make_all(Path::new(folder)),
        ["walls-read", folder] => walls::read_all(Path::new(folder)),
        [rounds] => compare(rounds.parse()?),
        [job, columns, rows, rounds] => {
            let case = Case { columns: columns.parse()?, rows: rows.parse()? };
            tell(&work(job, &case, rounds.parse()?)?)
        }
        _ => {
            Err("tools/bench/run [ROUNDS], tools/bench/run cost, tools/bench/run plan, tools/bench/peers"
                .into())
        }
    }
}

/// A process's figures, for the one that asked.
fn tell(told: &table::Told) -> Outcome<()> {
    println!("{}", serde_json::to_string(told)?);
    Ok(())
}

/// One job, in a process of its own.
fn work(job: &str, case: &Case, rounds: usize) -> Outcome<table::Told> {
    let bytes = std::fs::read(case.photo())?;
    match job {
        "check" => stages::check(case, &bytes, rounds),
        "command" => stages::command(case),
        "decode" => peers::decode(&bytes, rounds),
        "general" => peers::general(&bytes),
        _ => Err(format!("no job {job}").into()),
    }
}

fn compare(rounds: usize) -> Outcome<()> {
    println!(
        "made photos of {} x {} px, median of {rounds}, {} threads",
        PHOTO.0,
        PHOTO.1,
        rayon::current_num_threads()
    );
    for (columns, rows) in WALLS {
        let case = Case { columns, rows };
        case.make()?;
        println!("\n{} squares, {}", columns * rows, case.photo().display());
        let decoding = table::show("decode", table::ask("decode", &case, rounds, Duration::MAX)?, None);
        table::show("check", table::ask("check", &case, rounds, Duration::MAX)?, decoding);
        // apart: rounds hold on to memory, and to what the first of them worked out
        let once = table::ask("check", &case, 1, Duration::MAX)?;
        table::memory("one check", &once);
        // the first one only makes the event
        table::ask("command", &case, 1, Duration::MAX)?;
        let told: Outcome<Vec<table::Told>> =
            (0..rounds).map(|_| table::ask("command", &case, 1, Duration::MAX)).collect();
        table::show("command", table::median(told?), decoding);
        table::memory("bare decoding", &table::ask("decode", &case, 1, Duration::MAX)?);
        table::show("general", table::ask("general", &case, 1, PATIENCE)?, decoding);
    }
    Ok(())
}
