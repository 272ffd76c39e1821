//! `everysquare find FOLDER PHOTO…`: which squares lie on a table or a floor: whether the stack is complete, what waits to be hung, whose
//! they are.

use std::collections::BTreeSet;
use std::path::PathBuf;

use super::check::CHECK_NAME;
use super::newest::newest;
use super::photos::{complain, read_each};
use super::{CliError, Console, Outcome, groups, progress};
use crate::display::jpeg;
use crate::display::scattered::{Named, scattered};
use crate::judge::found::Found;
use crate::plan::groups::Group;
use crate::plan::{Cell, Folder, Grid, Printed, Settings};
use crate::read::{Lying, Reader, Scattered};
use crate::report::Report;
use crate::words::Words;

/// Side of a module in pixels below which squares are missed: on made tables all are found from 2 on.
const SMALL_PX: f64 = 2.0;
/// Number of labels up to which what is lacking is listed; beyond, a list says nothing that its number does not.
const MOST_LISTED: usize = 60;

/// What is typed after `everysquare find`.
#[derive(Debug, clap::Args)]
pub struct Args {
    /// The event folder.
    #[arg(value_name = "FOLDER")]
    pub(super) folder: PathBuf,
    /// Photos of squares.
    #[arg(value_name = "PHOTO", required = true)]
    photos: Vec<PathBuf>,
}

/// Reads every photo, tells, and keeps the pictures. One photo that shows nothing is no reason to stop, unless it is the last hope.
pub fn run(args: &Args, console: &mut Console) -> Result<Outcome, CliError> {
    let folder = Folder::at(&args.folder);
    let (printed, settings) = (folder.printed()?, folder.settings()?);
    let reader = Reader::new(&printed);
    let bar = progress::bar(console, u64::try_from(args.photos.len()).unwrap_or(u64::MAX), "check-working");
    let read = read_each(&args.photos, console.words(), |photo| {
        let seen = reader.scattered(&photo.luma);
        bar.inc(1);
        let Scattered { squares, px_per_module } = seen?;
        let picture = jpeg(&scattered(photo, &named(&squares, &printed.grid)))?;
        let homes: Vec<Cell> = squares.iter().map(|one| one.home).collect();
        Ok((homes, picture, px_per_module < SMALL_PX))
    });
    bar.finish_and_clear();
    let (seen, refused) = read?;
    let photos: Vec<Vec<Cell>> = seen.iter().map(|(homes, ..)| homes.clone()).collect();
    let found = Found::of(&photos, &printed.grid);
    let lines = told(&found, &printed, (&folder, &settings), console.words())?;
    lines.into_iter().for_each(|line| console.tell(line));
    if seen.iter().any(|(.., small)| *small) && !found.lacking.is_empty() {
        console.say("find-closer", &[]);
    }
    complain(&refused, console);
    let now = jiff::ZonedDateTime::now().strftime(CHECK_NAME).to_string();
    let into = folder.new_found_folder(&now)?;
    for (number, (_, picture, _)) in (1..).zip(&seen) {
        let name = if seen.len() == 1 { "squares.jpg".to_owned() } else { format!("squares-{number}.jpg") };
        into.write(&name, picture)?;
    }
    console.say("find-written", &[("folder", into.finish()?.display().to_string().into())]);
    Ok(match (found.lacking.is_empty() && found.twice.is_empty(), refused.is_empty()) {
        (true, true) => Outcome::Right,
        (false, true) => Outcome::ToFix,
        (_, false) => Outcome::Unclear,
    })
}

fn named(squares: &[Lying], grid: &Grid) -> Vec<Named> {
    squares.iter().map(|one| Named { label: grid.label(one.home), corners: one.corners }).collect()
}

/// What lies here, what does not, what lies here twice; of an event that has been checked, what waits to be hung; whose it is.
fn told(
    found: &Found,
    printed: &Printed,
    (folder, settings): (&Folder, &Settings),
    words: &Words,
) -> Result<Vec<String>, CliError> {
    let grid = &printed.grid;
    let listed = |cells: &[Cell]| -> String {
        cells.iter().map(|cell| grid.label(*cell)).collect::<Vec<_>>().join(", ")
    };
    let say = |id: &str, cells: &[Cell]| {
        words.say(id, &[("count", cells.len().into()), ("labels", listed(cells).into())])
    };
    let all = found.here.len() + found.lacking.len();
    let here = [("count", found.here.len().into()), ("all", all.into())];
    let mut lines = vec![words.say(if found.lacking.is_empty() { "find-all" } else { "find-here" }, &here)];
    if (1..=MOST_LISTED).contains(&found.lacking.len()) {
        lines.push(say("find-lacking", &found.lacking));
    }
    if !found.twice.is_empty() {
        lines.push(say("find-twice", &found.twice));
    }
    if let Some(newest) = newest(folder, settings) {
        let waiting = found.waiting(&up(&newest.report, grid));
        let id = if waiting.is_empty() { "find-none-waiting" } else { "find-waiting" };
        let said = [
            ("count", waiting.len().into()),
            ("labels", listed(&waiting).into()),
            ("when", newest.when.as_str().into()),
        ];
        lines.push(words.say(id, &said));
    }
    if let Some(shared) = groups::kept(folder, grid)? {
        let cells: Vec<Cell> = grid.cells().collect();
        let of_group = |group: &Group| {
            let own: Vec<Cell> = group.pieces.iter().filter_map(|piece| cells.get(*piece).copied()).collect();
            let here: Vec<Cell> = found.here.iter().copied().filter(|home| own.contains(home)).collect();
            let name = ("name", group.members.name.as_str().into());
            (!here.is_empty()).then(|| {
                words.say(
                    "find-group",
                    &[name, ("count", here.len().into()), ("labels", listed(&here).into())],
                )
            })
        };
        lines.extend(shared.groups.iter().filter_map(of_group));
    }
    Ok(lines)
}

/// Squares that hang, as a check saw them.
fn up(report: &Report, grid: &Grid) -> BTreeSet<Cell> {
    report.cells.iter().filter_map(|cell| grid.cell(cell.found.as_deref()?)).collect()
}
