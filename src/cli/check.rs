//! `everysquare check FOLDER PHOTO…`: reads photos of the wall and says what to fix.

use std::path::{Path, PathBuf};

use super::{CliError, Console, Outcome, progress};
use crate::display::{Marking, Shot, jpeg, marked, straighten};
use crate::judge::{self, Judgement, advise, fixes, judge};
use crate::photo::{self, Photo};
use crate::plan::folder::CheckFolder;
use crate::plan::{Folder, Printed};
use crate::read::book::Book;
use crate::read::{self, PhotoReading, WallReading};
use crate::report::{Occasion, Pictures, Report, html, terminal};
use crate::words::Words;

/// Margin of `wall.jpg` around the wall, in mm: squares that hang over the edge are seen whole.
const MARGIN_MM: f64 = 20.0;
/// Steps of the progress bar for each photo: opened, read, marked.
const STEPS_A_PHOTO: u64 = 3;
/// Steps for the wall and the report.
const STEPS_AT_THE_END: u64 = 2;

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
    let check = Check::new(seen, &printed, console);
    let pictures = check.pictures(console, &|| bar.inc(1));
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
    names: Vec<String>,
    photos: Vec<Photo>,
    readings: Vec<PhotoReading>,
    refused: Vec<CliError>,
}

/// Opens and reads every photo. One that cannot be read is no reason to stop, unless it is the last hope.
fn look(paths: &[PathBuf], printed: &Printed, words: &Words, step: &dyn Fn()) -> Result<Seen, CliError> {
    let book = Book::new(printed);
    let mut seen = Seen { names: Vec::new(), photos: Vec::new(), readings: Vec::new(), refused: Vec::new() };
    for path in paths {
        match look_at(path, printed, &book, step) {
            Ok((photo, reading)) => {
                seen.names.push(name(path));
                seen.photos.push(photo);
                seen.readings.push(reading);
            }
            Err(error) => seen.refused.push(error),
        }
    }
    if !seen.readings.is_empty() {
        return Ok(seen);
    }
    Err(CliError::all(&seen.refused, words))
}

fn look_at(
    path: &Path,
    printed: &Printed,
    book: &Book,
    step: &dyn Fn(),
) -> Result<(Photo, PhotoReading), CliError> {
    let bytes = photo::read(path).map_err(|error| CliError::about(path, error))?;
    let photo = Photo::open(&bytes).map_err(|error| CliError::about(path, error))?;
    step();
    let reading = read::photo(&photo, printed, book).map_err(|error| CliError::about(path, error))?;
    step();
    Ok((photo, reading))
}

/// A file's name without the folders it lies in.
fn name(path: &Path) -> String {
    path.file_name().map(|name| name.to_string_lossy().into_owned()).unwrap_or_default()
}

/// One check.
struct Check {
    photos: Vec<Photo>,
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
    fn new(seen: Seen, printed: &Printed, console: &Console) -> Self {
        let Seen { names, photos, readings, refused } = seen;
        let reading = read::several(readings);
        let judgement = judge(&reading, &printed.grid);
        let (fixes, advice) = (fixes(&judgement), advise(&reading, &judgement));
        let occasion = Occasion {
            taken: photos.iter().find_map(|photo| photo.taken.clone()),
            made: photos.iter().any(|photo| photo.made),
            files: names,
        };
        let report =
            Report::new((&reading, &judgement), (&fixes, &advice), printed, &occasion, console.words());
        Self { photos, refused, reading, judgement, report }
    }

    fn pictures(&self, console: &Console, step: &dyn Fn()) -> Result<Drawn, CliError> {
        let mut drawn = Vec::new();
        for (index, (photo, reading)) in self.photos.iter().zip(&self.reading.photos).enumerate() {
            let judgement = &self.judgement;
            drawn.push(jpeg(&marked(&Marking { photo, reading, index, judgement, words: console.words() }))?);
            step();
        }
        let shots: Vec<Shot<'_>> = self
            .photos
            .iter()
            .zip(&self.reading.photos)
            .map(|(photo, reading)| Shot { photo, camera: &reading.camera })
            .collect();
        let straight = straighten(&shots, &self.reading.cells, &self.judgement.grid, MARGIN_MM, None);
        step();
        let straight = jpeg(&straight)?;
        step();
        Ok(Drawn { marked: drawn, straight })
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
