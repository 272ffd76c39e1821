//! `everysquare plan FOLDER --visitors 120 --minutes 90 --seats 30`: says what the evening's numbers mean, and writes plan.json.

mod said;

use std::ops::RangeInclusive;
use std::path::PathBuf;

use super::mistyped::{Refused, within};
use super::{CliError, Console, Outcome};
use crate::picture::{FewColours, Picture, PictureFacts};
use crate::plan::crowd::{Evening, PlanFile, SheetCount, evening};
use crate::plan::settings::{HANG_MM, MINUTES, NewValue, Room, SEATS, VISITORS, set};
use crate::plan::{Folder, Settings};
use crate::print::{Document, Overrides, Sources, kit, template_names};
use crate::report::lines::paragraph;
use crate::words::{Sentence, Tell};

/// What is typed after `everysquare plan`.
#[derive(Debug, clap::Args)]
pub struct Args {
    /// The event folder.
    #[arg(value_name = "FOLDER")]
    pub(super) folder: PathBuf,
    /// How many visitors.
    #[arg(long, value_name = "N", value_parser = |text: &str| whole(text, &VISITORS))]
    visitors: Option<usize>,
    /// How long they draw.
    #[arg(long, value_name = "MINUTES", value_parser = |text: &str| number(text, &MINUTES))]
    minutes: Option<f64>,
    /// How many can draw at once.
    #[arg(long, value_name = "N", value_parser = |text: &str| whole(text, &SEATS))]
    seats: Option<usize>,
    /// The place for the wall.
    #[arg(long, value_name = "SIZE", value_parser = room)]
    wall: Option<Room>,
    /// The wall's lower edge over the floor.
    #[arg(long, value_name = "MM", value_parser = |text: &str| number(text, &HANG_MM))]
    hang: Option<f64>,
    /// Keep the numbers.
    #[arg(long)]
    save: bool,
}

/// Works everything out, writes plan.json and, where that was asked for, event.toml; says it.
pub fn run(args: &Args, console: &mut Console) -> Result<Outcome, CliError> {
    let folder = Folder::at(&args.folder);
    let mut settings = folder.settings()?;
    let changed = if args.save { Some(args.saved(&folder)?) } else { None };
    args.override_in(&mut settings);
    let bytes = folder.picture_bytes(&settings)?;
    let picture =
        Picture::open(&bytes).map_err(|error| CliError::about(&folder.picture_file(&settings), error))?;
    let facts =
        PictureFacts::of(&FewColours::chosen(&picture, &settings.picture), &settings.grid, &settings.levels);
    let printed = settings.printed()?;
    let sources = Sources {
        settings: &settings,
        printed: &printed,
        picture: &picture,
        facts: &facts,
        words: console.words(),
        templates: &Overrides::new(folder.templates()?, &template_names())?,
    };
    // paper is counted by setting the kit: no other count could not differ from it
    let kit = kit(&sources).map(|kit| kit.documents);
    let evening = evening(&settings, &facts.work());
    let sheets = kit.as_deref().map_err(|error| error.tell(console.words()));
    let said = said::plan(&settings, &facts, &evening, sheets, console.words());
    if let Some(changed) = changed {
        Folder::write_whole(&folder.event_toml(), changed.as_bytes())?;
    }
    write_plan_json(&folder, &settings, &facts, &evening, kit.as_deref().unwrap_or_default())?;
    console.line(said.trim_end());
    console.line("");
    explain(args, &folder, console);
    Ok(Outcome::Right)
}

/// Says what was written.
fn explain(args: &Args, folder: &Folder, console: &mut Console) {
    let file = |path: PathBuf| [("file", path.display().to_string().into())];
    let mut text = String::new();
    paragraph(&mut text, "", &console.words().say("plan-written", &file(folder.plan_json())));
    if args.save {
        paragraph(&mut text, "", &console.words().say("plan-saved", &file(folder.event_toml())));
    } else if args.given().next().is_some() {
        paragraph(&mut text, "", &console.words().say("plan-not-saved", &[]));
    }
    console.line(text.trim_end());
}

/// Writes plan.json: what is worked out for these settings and tiles, and the sheets that the kit's documents take.
pub(super) fn write_plan_json(
    folder: &Folder,
    settings: &Settings,
    facts: &PictureFacts,
    evening: &Evening,
    documents: &[Document],
) -> Result<(), CliError> {
    let count = |document: &Document| SheetCount {
        document: document.name.trim_end_matches(".pdf").to_owned(),
        sheets: document.sheets,
    };
    let sheets = documents.iter().map(count).collect();
    let plan = PlanFile::new(settings, &facts.pencils, facts.planned(&settings.grid), evening, sheets);
    Ok(Folder::write_whole(&folder.plan_json(), &plan.to_json()?)?)
}

impl Args {
    /// The numbers that were typed, under their names in event.toml.
    fn given(&self) -> impl Iterator<Item = (&'static str, NewValue)> {
        let all = [
            ("evening.visitors", self.visitors.map(NewValue::Whole)),
            ("evening.minutes", self.minutes.map(NewValue::Number)),
            ("evening.seats", self.seats.map(NewValue::Whole)),
            ("evening.wall", self.wall.map(|room| NewValue::Text(room.written()))),
            ("evening.hang_mm", self.hang.map(NewValue::Number)),
        ];
        all.into_iter().filter_map(|(name, value)| Some((name, value?)))
    }

    /// event.toml with the typed numbers in it.
    fn saved(&self, folder: &Folder) -> Result<String, CliError> {
        if self.given().next().is_none() {
            return Err(CliError::new(Sentence::new("error-plan-save")));
        }
        let text = folder.event_text()?;
        Ok(self.given().try_fold(text, |text, (name, value)| set(&text, name, value))?)
    }

    /// What was typed counts instead of what event.toml says.
    fn override_in(&self, settings: &mut Settings) {
        let evening = &mut settings.evening;
        evening.visitors = self.visitors.or(evening.visitors);
        evening.minutes = self.minutes.or(evening.minutes);
        evening.seats = self.seats.or(evening.seats);
        evening.wall = self.wall.or(evening.wall);
        evening.hang_mm = self.hang.or(evening.hang_mm);
    }
}

fn whole(text: &str, range: &RangeInclusive<usize>) -> Result<usize, Refused> {
    within("typed-whole-from", text, range)
}

fn number(text: &str, range: &RangeInclusive<f64>) -> Result<f64, Refused> {
    within("typed-number-from", text, range)
}

fn room(text: &str) -> Result<Room, Refused> {
    Room::read(text).ok_or_else(|| Refused::new(Room::allowed()))
}
