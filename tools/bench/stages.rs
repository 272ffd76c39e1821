//! One check, stage by stage.

use everysquare::cli::sample;
use everysquare::display::{Frontal, LONGEST_PX, MarkedPart, Marking, Shot, jpeg, marked, straighten};
use everysquare::judge::{Judgement, advise, fixes, judge};
use everysquare::photo::Photo;
use everysquare::plan::Printed;
use everysquare::read::identify::Identifier;
use everysquare::read::{self, Reader, WallReading, finders, triples};
use everysquare::report::html::Straight;
use everysquare::report::{Occasion, Pictures, Report, html};
use everysquare::words::Words;

use super::cost::typed;
use super::table::{Told, timed};
use super::{Case, Outcome};

/// Margin around the straightened wall, in mm, as in a check.
const MARGIN_MM: f64 = 20.0;

/// Times the stages of a check and the check as a whole.
pub fn check(case: &Case, bytes: &[u8], rounds: usize) -> Outcome<Told> {
    let printed = case.printed()?;
    let mut seconds = Vec::new();
    let mut time = |stage: &str, spent: f64| seconds.push((stage.to_owned(), spent));

    let (spent, identifier) = timed(rounds, || Identifier::new(&printed));
    time("templates of the event's codes", spent);
    let identifier = identifier.ok_or("no templates")?;
    let reader = Reader::new(&printed);
    reader.prepare();
    let (spent, photo) = timed(rounds, || Photo::open(bytes));
    time("photo opened", spent);
    let photo = photo.ok_or("no photo")??;
    let (spent, found) = timed(rounds, || finders::find(&photo.luma));
    time("  finder patterns", spent);
    let found = found.unwrap_or_default();
    let (spent, _) = timed(rounds, || triples::detect(&photo.luma, &found, &identifier));
    time("  triples verified", spent);
    let (spent, wall) = timed(rounds, || reader.camera(&photo.luma));
    time("  all codes (with camera, seek)", spent);
    wall.ok_or("no wall")??;
    let (spent, reading) = timed(rounds, || reader.read(&photo));
    time("photo read (with empty cells)", spent);
    let reading = reading.ok_or("no reading")??;
    let remarks = vec![format!(
        "{} finder patterns, {} codes read, {:.2} px a module",
        found.len(),
        reading.codes_read,
        reading.px_per_module
    )];
    let reading = read::several(vec![reading]);
    let (spent, judgement) = timed(rounds, || judge(&reading, &printed.grid));
    time("judged", spent);
    let check = Check { printed: &printed, photo: &photo, reading: &reading };
    let judgement = judgement.ok_or("no judgement")?;
    let (spent, told) = timed(rounds, || check.told(&judgement));
    time("pictures and report", spent);
    told.ok_or("no report")??;
    Ok(Told::now(seconds, remarks))
}

/// The whole command, as it is typed, in an event's folder that is made the first time.
pub fn command(case: &Case) -> Outcome<Told> {
    let folder = case.photo().with_extension("event");
    let name = folder.to_str().ok_or("no path")?;
    if !folder.exists() {
        let picture = folder.with_extension("png");
        std::fs::write(&picture, sample::PICTURE_PNG)?;
        let (columns, rows) = (case.columns.to_string(), case.rows.to_string());
        let picture = picture.to_str().ok_or("no path")?;
        typed(&["new", name, "--picture", picture, "--columns", &columns, "--rows", &rows, "--tag", "K7M"]);
        typed(&["print", name]);
        return Ok(Told::default());
    }
    let photo = case.photo();
    let (spent, code) = timed(1, || typed(&["check", name, photo.to_str().unwrap_or_default()]));
    let remarks = vec![format!("exit code {}", code.unwrap_or_default())];
    Ok(Told::now(vec![("the command, from cold".to_owned(), spent)], remarks))
}

struct Check<'a> {
    printed: &'a Printed,
    photo: &'a Photo,
    reading: &'a WallReading,
}

impl Check<'_> {
    /// Everything that a check writes, in bytes.
    fn told(&self, judgement: &Judgement) -> Result<usize, everysquare::display::JpegError> {
        let (words, photo) = (Words::english(), self.photo);
        let (fixes, advice) = (fixes(judgement), advise(self.reading, judgement));
        let occasion = Occasion { taken: None, made: true, files: vec!["photo.jpg".to_owned()] };
        let read = (self.reading, judgement);
        let report = Report::new(read, (&fixes, &advice), self.printed, &occasion, &words);
        let shown = &self.reading.photos[0];
        let parts = [MarkedPart { reading: shown, index: 0, cover: None }];
        let marking = Marking { photo, parts: &parts, judgement, words: &words };
        let shots = [Shot::of(photo, shown, None)];
        let frontal = Frontal { margin_mm: MARGIN_MM, px_per_mm: None, longest_px: LONGEST_PX };
        let (marks, straight) = rayon::join(
            || jpeg(&marked(&marking)),
            || jpeg(&straighten(&shots, &self.reading.cells, &self.printed.grid, frontal)),
        );
        let (marks, straight) = ([marks?], straight?);
        let page = html(
            &report,
            &words,
            Pictures {
                marked: &marks,
                straight: Some(Straight { jpeg: &straight, margin_mm: 20.0 }),
                accent: "",
            },
        );
        Ok(report.to_json().len() + page.len() + marks[0].len() + straight.len())
    }
}
