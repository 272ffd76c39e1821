//! `everysquare plan FOLDER --visitors 120 --minutes 90 --seats 30`: says what the evening's numbers mean, and writes plan.json.

mod said;

pub(super) use said::join_told;

use std::path::PathBuf;

use super::crowd::CrowdArgs;
use super::place::PlaceArgs;
use super::progress::bar;
use super::{CliError, Console, Outcome};
use crate::plan::crowd::{PlanFile, SheetCount};
use crate::plan::settings::{EveningSettings, NewValue, set};
use crate::plan::{Folder, Settings};
use crate::print::event::Event;
use crate::print::{Document, Sources, names_of, part_of_kit};
use crate::words::{Sentence, Tell};

/// What is typed after `everysquare plan`.
#[derive(Debug, clap::Args)]
pub struct Args {
    /// The event folder.
    #[arg(value_name = "FOLDER")]
    pub(super) folder: PathBuf,
    #[command(flatten)]
    crowd: CrowdArgs,
    #[command(flatten)]
    place: PlaceArgs,
    /// Keep the numbers.
    #[arg(long)]
    save: bool,
}

/// Works everything out, writes plan.json and, where that was asked for, event.toml; says it.
pub fn run(args: &Args, console: &mut Console) -> Result<Outcome, CliError> {
    let folder = Folder::at(&args.folder);
    let mut settings = folder.settings()?;
    args.crowd.check(&settings.evening)?;
    let changed = if args.save { Some(args.saved(&folder, &settings.evening)?) } else { None };
    args.override_in(&mut settings);
    let mut event = Event::open(&folder, settings, console.words())?;
    let hung = args.place.hung(&event.settings.grid, &event.facts.crossings)?;
    let changed = match (changed, &hung) {
        (Some(text), Some(hung)) => Some(hung.kept(&text, console.words())?),
        (changed, _) => changed,
    };
    hung.iter().for_each(|hung| hung.settle(&mut event.settings));
    let sources = event.sources(console.words());
    // paper is counted by setting the kit: any other count could differ from what comes out of the printer
    let bar = bar(
        console,
        u64::try_from(names_of(event.settings.print.join).count()).unwrap_or(u64::MAX),
        "print-working",
    );
    let kit = part_of_kit(&sources, &[], &|| bar.inc(1));
    bar.finish_and_clear();
    let documents = kit.as_ref().map_or(&[][..], |kit| &kit.documents);
    let counted = kit.as_ref().map(|_| documents).map_err(|error| error.tell(console.words()));
    let said = said::plan(&sources, counted, console.screen().width);
    let plan = plan_json(&sources, documents)?;
    if let Some(changed) = changed {
        Folder::write_whole(&folder.event_toml(), changed.as_bytes())?;
    }
    Folder::write_whole(&folder.plan_json(), &plan)?;
    console.line(said.trim_end());
    if let Some(told) = hung.and_then(|hung| hung.told(console.words())) {
        console.tell(told);
    }
    console.line("");
    explain(args, &folder, &event.settings, console);
    Ok(Outcome::Right)
}

/// Says what was written.
fn explain(args: &Args, folder: &Folder, settings: &Settings, console: &mut Console) {
    let evening = &settings.evening;
    let file = |path: PathBuf| [("file", path.display().to_string().into())];
    console.say("plan-written", &file(folder.plan_json()));
    if args.save {
        console.say("plan-saved", &file(folder.event_toml()));
    } else if args.given(evening).next().is_some() || args.place.wall.is_some() {
        console.say("plan-not-saved", &[]);
    }
}

/// plan.json: what is worked out for an event's settings and pieces, and the sheets that the kit's documents take.
pub(super) fn plan_json(sources: &Sources, documents: &[Document]) -> Result<Vec<u8>, CliError> {
    let sheets = documents.iter().map(|document| SheetCount {
        document: document.name.trim_end_matches(".pdf").to_owned(),
        sheets: document.sheets,
    });
    let facts = sources.facts;
    let pieces = facts.planned(&sources.settings.grid);
    let plan = PlanFile::new(sources.settings, &facts.pencils, pieces, sources.evening, sheets.collect());
    Ok(plan.to_json()?)
}

impl Args {
    /// The numbers that were typed, under their names in event.toml.
    fn given(&self, evening: &EveningSettings) -> impl Iterator<Item = (&'static str, NewValue)> {
        let crowd = self.crowd.given(evening).into_iter().filter_map(|(name, value)| Some((name, value?)));
        crowd.chain(self.place.given())
    }

    /// event.toml with the typed numbers in it.
    fn saved(&self, folder: &Folder, evening: &EveningSettings) -> Result<String, CliError> {
        if self.given(evening).next().is_none() && self.place.wall.is_none() {
            return Err(CliError::new(Sentence::new("error-plan-save")));
        }
        let text = folder.event_text()?;
        Ok(self.given(evening).try_fold(text, |text, (name, value)| set(&text, name, value))?)
    }

    /// What was typed counts instead of what event.toml says.
    fn override_in(&self, settings: &mut Settings) {
        self.crowd.override_in(&mut settings.evening);
        self.place.override_in(&mut settings.evening);
    }
}
