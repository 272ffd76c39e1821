//! `everysquare find FOLDER PHOTO…`: which squares lie on a table or a floor: whether the stack is complete, what waits to be hung, whose
//! they are.

use std::collections::BTreeSet;
use std::path::PathBuf;

use super::check::CHECK_NAME;
use super::newest::newest;
use super::photos::{complain, read_each};
use super::{CliError, Console, Outcome, groups, progress};
use crate::check::lying::Seen;
use crate::judge::found::Found;
use crate::plan::{Cell, Folder, Grid, Settings};
use crate::read::Reader;
use crate::report::Report;
use crate::report::found::{amiss, how_many, listed, of_groups};
use crate::words::Words;

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
        Ok(Seen::of(photo, &seen?, &printed.grid)?)
    });
    bar.finish_and_clear();
    let (seen, refused) = read?;
    let photos: Vec<Vec<Cell>> = seen.iter().map(|one| one.homes.clone()).collect();
    let found = Found::of(&photos, &printed.grid);
    let lines = told(&found, &printed.grid, (&folder, &settings), console.words())?;
    lines.into_iter().for_each(|line| console.tell(line));
    if seen.iter().any(|one| one.small) && !found.lacking.is_empty() {
        console.say("find-closer", &[]);
    }
    complain(&refused, console);
    let now = jiff::ZonedDateTime::now().strftime(CHECK_NAME).to_string();
    let into = folder.new_found_folder(&now)?;
    for (number, one) in (1..).zip(&seen) {
        let name = if seen.len() == 1 { "squares.jpg".to_owned() } else { format!("squares-{number}.jpg") };
        into.write(&name, &one.picture)?;
    }
    console.say("find-written", &[("folder", into.finish()?.display().to_string().into())]);
    Ok(match (found.lacking.is_empty() && found.twice.is_empty(), refused.is_empty()) {
        (true, true) => Outcome::Right,
        (false, true) => Outcome::ToFix,
        (_, false) => Outcome::Unclear,
    })
}

/// What lies here, what does not, what lies here twice; of an event that has been checked, what waits to be hung; whose it is.
fn told(
    found: &Found,
    grid: &Grid,
    (folder, settings): (&Folder, &Settings),
    words: &Words,
) -> Result<Vec<String>, CliError> {
    let mut lines = vec![how_many(found, words)];
    lines.extend(amiss(found, grid, words));
    if let Some(newest) = newest(folder, settings) {
        let waiting = found.waiting(&up(&newest.report, grid));
        let id = if waiting.is_empty() { "find-none-waiting" } else { "find-waiting" };
        let said = [
            ("count", waiting.len().into()),
            ("labels", listed(&waiting, grid).into()),
            ("when", newest.when.as_str().into()),
        ];
        lines.push(words.say(id, &said));
    }
    let shared = groups::kept(folder, grid)?;
    lines.extend(shared.iter().flat_map(|shared| of_groups(found, shared, grid, words)));
    Ok(lines)
}

/// Squares that hang, as a check saw them.
fn up(report: &Report, grid: &Grid) -> BTreeSet<Cell> {
    report.cells.iter().filter_map(|cell| grid.cell(cell.found.as_deref()?)).collect()
}
