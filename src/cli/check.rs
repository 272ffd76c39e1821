//! `everysquare check FOLDER PHOTO…`: reads photos of the wall and says what to fix.

use std::path::{Path, PathBuf};

use super::{CliError, Console, Outcome, progress};
use crate::display::{Frontal, LONGEST_PX, Marking, Shot, Straightening, jpeg, marked};
use crate::judge::{self, Judgement, advise, fixes, judge};
use crate::photo::{self, Photo};
use crate::plan::folder::CheckFolder;
use crate::plan::{Folder, Printed};
use crate::read::book::Book;
use crate::read::{self, Camera, PhotoReading, WallReading};
use crate::report::{Occasion, Pictures, Report, html, terminal};
use crate::words::Words;

/// Margin of `wall.jpg` around the wall, in mm: squares that hang over the edge are seen whole.
const MARGIN_MM: f64 = 20.0;
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
    let mut check = Check::new(seen, &printed, console.words());
    let pictures = check.pictures(console.words(), &|| bar.inc(1));
    bar.finish_and_clear();
    check.tell(console);
    let written = check.write(&folder, &pictures?, console)?;
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

/// One check.
struct Check {
    paths: Vec<PathBuf>,
    only: Option<Photo>,
    refused: Vec<CliError>,
    reading: WallReading,
    judgement: Judgement,
    report: Report,
}

/// The pictures of a check, as JPEG files.
struct Drawn {
    marked: Vec<Vec<u8>>,
    straight: Vec<u8>,
}

impl Check {
    fn new(seen: Seen, printed: &Printed, words: &Words) -> Self {
        let Seen { paths, only, taken, made, readings, refused } = seen;
        let reading = read::several(readings);
        let judgement = judge(&reading, &printed.grid);
        let (fixes, advice) = (fixes(&judgement), advise(&reading, &judgement));
        let occasion = Occasion { taken, made, files: paths.iter().map(|path| name(path)).collect() };
        let report = Report::new((&reading, &judgement), (&fixes, &advice), printed, &occasion, words);
        Self { paths, only, refused, reading, judgement, report }
    }

    /// Draws every photo marked, and the wall.
    fn pictures(&mut self, words: &Words, step: &(dyn Fn() + Sync)) -> Result<Drawn, CliError> {
        let only = self.only.take();
        let (reading, judgement) = (&self.reading, &self.judgement);
        let cameras: Vec<&Camera> = reading.photos.iter().map(|photo| &photo.camera).collect();
        let frontal = Frontal { margin_mm: MARGIN_MM, px_per_mm: None, longest_px: LONGEST_PX };
        let mut wall = Straightening::new(&reading.cells, &cameras, &judgement.grid, frontal);
        let mut marks = Vec::new();
        each(&self.paths, only, |_, photo| {
            let (photo, index) = (&photo?, marks.len());
            let Some(own) = reading.photos.get(index) else { return Ok(()) };
            let marking = Marking { photo, reading: own, index, judgement, words };
            let shot = Shot { photo, camera: &own.camera };
            let (marked, ()) = rayon::join(|| jpeg(&marked(&marking)), || wall.add(index, shot));
            marks.push(marked?);
            step();
            Ok(())
        })?;
        let straight = jpeg(&wall.finish())?;
        step();
        Ok(Drawn { marked: marks, straight })
    }

    fn tell(&self, console: &mut Console) {
        let drawn = terminal(&self.report, console.words(), console.screen().colour);
        console.line(drawn.trim_end());
        for refused in &self.refused {
            let told = refused.line(console.words());
            console.complain(&told);
        }
    }

    /// Writes `checks/<time>/`.
    fn write(&self, folder: &Folder, drawn: &Drawn, console: &Console) -> Result<PathBuf, CliError> {
        let now = jiff::ZonedDateTime::now().strftime("%Y-%m-%d_%H.%M.%S").to_string();
        let into = folder.new_check_folder(&now)?;
        let pictures = Pictures { marked: &drawn.marked, straight: Some(&drawn.straight) };
        into.write("report.json", self.report.to_json().as_bytes())?;
        into.write("report.html", html(&self.report, console.words(), pictures).as_bytes())?;
        into.write("wall.jpg", &drawn.straight)?;
        write_marked(&into, &drawn.marked)?;
        Ok(into.finish()?)
    }
}

/// `marked.jpg`; of several photos `marked-1.jpg` and so on.
fn write_marked(into: &CheckFolder, marked: &[Vec<u8>]) -> Result<(), CliError> {
    for (number, picture) in (1..).zip(marked) {
        let name = if marked.len() == 1 { "marked.jpg".to_owned() } else { format!("marked-{number}.jpg") };
        into.write(&name, picture)?;
    }
    Ok(())
}
