//! `everysquare check FOLDER PHOTO…`: reads photos of the wall and says what to fix.

use std::path::PathBuf;

use super::photos::{Covering, Seen, complain, each, look};
use super::{CliError, Console, Outcome, groups, progress};
use crate::check::{Check, Drawn, FRONTAL, Noticed};
use crate::display::{Cover, Covered, Straightening};
use crate::judge;
use crate::photo::Photo;
use crate::plan::crowd::Outlook;
use crate::plan::{Folder, Printed};
use crate::print::event::Event;
use crate::read::{self, Camera};
use crate::report::{Occasion, terminal};
use crate::words::Words;

/// The name of a check's folder: names sort as their times do.
pub(super) const CHECK_NAME: &str = "%Y-%m-%d_%H.%M.%S";
/// Steps of the progress bar for each photo: opened, read, marked.
const STEPS_A_PHOTO: u64 = 3;
/// Steps for the wall.
const STEPS_AT_THE_END: u64 = 1;

/// What is typed after `everysquare check`.
#[derive(Debug, clap::Args)]
pub struct Args {
    /// The event folder.
    #[arg(value_name = "FOLDER")]
    pub(super) folder: PathBuf,
    /// Photos of the wall.
    #[arg(value_name = "PHOTO", required = true)]
    photos: Vec<PathBuf>,
    /// People are not covered.
    #[arg(long)]
    uncovered: bool,
    /// Squares that are only begun are told too.
    #[arg(long)]
    begun: bool,
}

/// Reads, judges, tells, and writes the check's folder. What was found is told before anything is written, so that a full
/// disk takes nothing away.
pub fn run(args: &Args, console: &mut Console) -> Result<Outcome, CliError> {
    let folder = Folder::at(&args.folder);
    let printed = folder.printed()?;
    let photos = u64::try_from(args.photos.len()).unwrap_or(u64::MAX / 8);
    let covering = Covering::new(&folder, &printed, args.uncovered).asking(args.begun);
    let bar = progress::bar(console, photos * STEPS_A_PHOTO + STEPS_AT_THE_END, "check-working");
    let seen = look(&args.photos, &printed, &covering, console.words(), &|| bar.inc(1));
    let seen = match seen {
        Ok(seen) => seen,
        Err(error) => {
            bar.finish_and_clear();
            return Err(error);
        }
    };
    let files = seen.names();
    let Seen { paths, only, taken, made, readings, covers, refused } = seen;
    let occasion = Occasion { taken, made, files };
    let reading = read::together(readings);
    let noticed = Noticed::of(&covers, &reading).with_spares(folder.spares(&printed.grid));
    let mut check = Check::new(reading, &noticed, &printed, &occasion, console.words());
    let drawn = pictures(&check, &paths, (only, &covers), console.words(), &|| bar.inc(1));
    bar.finish_and_clear();
    check.report.forecast = forecast(&folder, &check, console.words());
    tell(&check, &refused, console);
    by_group(&folder, &check, &printed, console);
    check.report.forecast.iter().for_each(|told| console.tell(told.clone()));
    let now = jiff::ZonedDateTime::now().strftime(CHECK_NAME).to_string();
    let written = check.write(&folder, &now, &drawn?, console.words(), &[])?;
    let place = written.display().to_string();
    if args.uncovered {
        console.say("check-uncovered", &[]);
    }
    console.say("check-written", &[("folder", place.as_str().into())]);
    console.say("check-open", &[("page", written.join("report.html").display().to_string().into())]);
    Ok(match check.judgement.outcome() {
        judge::Outcome::AllRight => Outcome::Right,
        judge::Outcome::Fix => Outcome::ToFix,
        judge::Outcome::CannotTell => Outcome::Unclear,
    })
}

/// How far each group is, where the wall is shared out. A damaged file takes nothing else away.
fn by_group(folder: &Folder, check: &Check, printed: &Printed, console: &mut Console) {
    let Ok(Some(shared)) = groups::kept(folder, &printed.grid) else { return };
    groups::tell(&check.report, &shared, &printed.grid, console);
}

/// What to expect at the end, where the event is on and it is known when it began. A picture that cannot be opened takes nothing else away.
fn forecast(folder: &Folder, check: &Check, words: &Words) -> Option<String> {
    let settings = folder.settings().ok()?;
    settings.evening.start?;
    let taken = check.report.taken.clone();
    let stamp = taken.unwrap_or_else(|| jiff::ZonedDateTime::now().strftime(CHECK_NAME).to_string());
    let event = Event::open(folder, settings, words).ok()?;
    check.forecast(&Outlook::of(&event.settings, event.facts.work().pieces)?, &stamp, words)
}

/// Draws every photo marked, and the wall.
fn pictures(
    check: &Check,
    paths: &[PathBuf],
    (only, covers): (Option<Photo>, &[Vec<Cover>]),
    words: &Words,
    step: &(dyn Fn() + Sync),
) -> Result<Drawn, CliError> {
    let cameras: Vec<&Camera> = check.reading.photos.iter().map(|photo| &photo.camera).collect();
    let wall = Straightening::new(&check.reading.cells, &cameras, &check.judgement.grid, FRONTAL);
    let (mut wall, mut straight) = (Some(wall), None);
    let mut marks = Vec::new();
    let mut indices = 0..;
    each(paths, only.map(Ok), |_, photo| {
        let photo = photo?;
        let index = indices.next().unwrap_or(usize::MAX);
        let Some(covers) = covers.get(index) else { return Ok(()) };
        let photo = Covered::new(photo, covers);
        if index + 1 < paths.len() {
            let Some(wall) = &mut wall else { return Ok(()) };
            marks.extend(check.draw(&photo, index, &|_| None, wall, words)?);
        } else if let Some(wall) = wall.take() {
            let (marked, file) = check.draw_last(&photo, index, wall, words)?;
            marks.extend(marked);
            straight = Some(file);
            step();
        }
        step();
        Ok(())
    })?;
    Ok(Drawn { marked: marks, straight: straight.unwrap_or_default() })
}

fn tell(check: &Check, refused: &[CliError], console: &mut Console) {
    let drawn = terminal(&check.report, console.words(), console.screen().colour, console.screen().width);
    console.line(drawn.trim_end());
    complain(refused, console);
}
