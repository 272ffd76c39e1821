//! `everysquare check FOLDER PHOTO…`: reads photos of the wall and says what to fix.

use std::path::{Path, PathBuf};

use super::{CliError, Console, Outcome, progress};
use crate::check::{Check, Drawn, FRONTAL};
use crate::display::{Straightening, jpeg};
use crate::judge;
use crate::photo::{self, Photo};
use crate::plan::{Folder, Printed};
use crate::read::book::Book;
use crate::read::{self, Camera, PhotoReading};
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
}

/// Reads, judges, tells, and writes the check's folder. What was found is told before anything is written, so that a full
/// disk takes nothing away.
pub fn run(args: &Args, console: &mut Console) -> Result<Outcome, CliError> {
    let folder = Folder::at(&args.folder);
    let printed = folder.printed()?;
    let photos = u64::try_from(args.photos.len()).unwrap_or(u64::MAX / 8);
    let bar = progress::bar(console, photos * STEPS_A_PHOTO + STEPS_AT_THE_END, "check-working");
    let seen = look(&args.photos, &printed, console.words(), &|| bar.inc(1));
    let seen = match seen {
        Ok(seen) => seen,
        Err(error) => {
            bar.finish_and_clear();
            return Err(error);
        }
    };
    let Seen { paths, only, taken, made, readings, refused } = seen;
    let occasion = Occasion { taken, made, files: paths.iter().map(|path| name(path)).collect() };
    let check = Check::new(read::several(readings), &printed, &occasion, console.words());
    let drawn = pictures(&check, &paths, only, console.words(), &|| bar.inc(1));
    bar.finish_and_clear();
    tell(&check, &refused, console);
    let now = jiff::ZonedDateTime::now().strftime(CHECK_NAME).to_string();
    let written = check.write(&folder, &now, &drawn?, console.words(), &[])?;
    let place = written.display().to_string();
    console.say("check-written", &[("folder", place.as_str().into())]);
    console.say("check-open", &[("page", written.join("report.html").display().to_string().into())]);
    Ok(match check.judgement.outcome() {
        judge::Outcome::AllRight => Outcome::Right,
        judge::Outcome::Fix => Outcome::ToFix,
        judge::Outcome::CannotTell => Outcome::Unclear,
    })
}

/// Photos that were read, and what kept others from it.
struct Seen {
    paths: Vec<PathBuf>,
    /// The photo itself, if there is only one; of several, each is opened again when its picture is drawn, so that 40 of them
    /// need no more memory than two.
    only: Option<Photo>,
    taken: Option<String>,
    made: bool,
    readings: Vec<PhotoReading>,
    refused: Vec<CliError>,
}

/// Opens and reads every photo. One that cannot be read is no reason to stop, unless it is the last hope.
fn look(
    paths: &[PathBuf],
    printed: &Printed,
    words: &Words,
    step: &(dyn Fn() + Sync),
) -> Result<Seen, CliError> {
    let book = Book::new(printed);
    let mut seen = Seen {
        paths: Vec::new(),
        only: None,
        taken: None,
        made: false,
        readings: Vec::new(),
        refused: Vec::new(),
    };
    each(paths, None, |path, photo| {
        step();
        let read = photo.and_then(|photo| {
            let reading = read::photo(&photo, printed, &book);
            Ok((reading.map_err(|error| CliError::about(path, error))?, photo))
        });
        step();
        match read {
            Ok((reading, photo)) => {
                seen.paths.push(path.clone());
                seen.taken = seen.taken.take().or_else(|| photo.taken.clone());
                seen.made |= photo.made;
                seen.readings.push(reading);
                seen.only = (paths.len() == 1).then_some(photo);
            }
            Err(error) => seen.refused.push(error),
        }
        Ok(())
    })?;
    if !seen.readings.is_empty() {
        return Ok(seen);
    }
    Err(CliError::all(&seen.refused, words))
}

/// Does something with every photo in turn, while the next one is being opened on another core. `first` is the first one
/// where it is open already.
fn each(
    paths: &[PathBuf],
    first: Option<Photo>,
    mut work: impl FnMut(&PathBuf, Result<Photo, CliError>) -> Result<(), CliError> + Send,
) -> Result<(), CliError> {
    let mut opened = first.map(Ok).or_else(|| paths.first().map(|path| open(path)));
    for (path, next) in paths.iter().zip(1..) {
        let Some(photo) = opened.take() else { break };
        let (done, then) = rayon::join(|| work(path, photo), || paths.get(next).map(|path| open(path)));
        done?;
        opened = then;
    }
    Ok(())
}

fn open(path: &Path) -> Result<Photo, CliError> {
    let bytes = photo::read(path).map_err(|error| CliError::about(path, error))?;
    Photo::open(&bytes).map_err(|error| CliError::about(path, error))
}

/// A file's name without the folders it lies in.
fn name(path: &Path) -> String {
    path.file_name().map(|name| name.to_string_lossy().into_owned()).unwrap_or_default()
}

/// Draws every photo marked, and the wall.
fn pictures(
    check: &Check,
    paths: &[PathBuf],
    only: Option<Photo>,
    words: &Words,
    step: &(dyn Fn() + Sync),
) -> Result<Drawn, CliError> {
    let cameras: Vec<&Camera> = check.reading.photos.iter().map(|photo| &photo.camera).collect();
    let mut wall = Straightening::new(&check.reading.cells, &cameras, &check.judgement.grid, FRONTAL);
    let mut marks = Vec::new();
    each(paths, only, |_, photo| {
        marks.extend(check.draw(&photo?, marks.len(), &mut wall, words)?);
        step();
        Ok(())
    })?;
    let straight = jpeg(&wall.finish())?;
    step();
    Ok(Drawn { marked: marks, straight })
}

fn tell(check: &Check, refused: &[CliError], console: &mut Console) {
    let drawn = terminal(&check.report, console.words(), console.screen().colour);
    console.line(drawn.trim_end());
    for refused in refused {
        let told = refused.line(console.words());
        console.complain(&told);
    }
}
