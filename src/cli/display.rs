//! `everysquare display FOLDER PHOTO…`: the wall's picture beside the original, its measures, and the prints that stay.

mod said;

use std::path::{Path, PathBuf};

use super::check::CHECK_NAME;
use super::mistyped::{Refused, document, within};
use super::photos::{Covering, Seen, complain, each, look};
use super::receive::kept;
use super::{CliError, Console, Outcome, progress};
use crate::check::Noticed;
use crate::display::assemble::Missing;
use crate::display::jpeg;
use crate::display::retape::retape;
use crate::display::{Moment, filling};
use crate::gallery::{
    Codes, Compared, Figures, Manner, MeasuredFigures, Now, Showing, Shown, SuggestionFigures, View,
    checks_until,
};
use crate::judge::{Advice, Judgement, Summary, advise, judge};
use crate::photo::Photo;
use crate::plan::settings::{Choice, Units};
use crate::plan::{Cell, Folder, Grid, Printed};
use crate::print::comparison::{Comparison, ON_REQUEST, Pair, PastCheck, Poster, Print, comparison, known};
use crate::print::event::Event;
use crate::read::{self, WallReading};
use crate::report::sentences::Sentences;
use crate::words::{Sentence, Words};

/// Steps of the progress bar for each photo: opened, read, drawn.
const STEPS_A_PHOTO: u64 = 3;
/// Steps for what follows: the wall, and its prints.
const STEPS_AT_THE_END: u64 = 7;
/// Widths of a poster, in mm: from a post card to a hall's wall.
const POSTER_MM: std::ops::RangeInclusive<f64> = 100.0..=10_000.0;

/// What is typed after `everysquare display`.
#[derive(Debug, clap::Args)]
pub struct Args {
    /// The event folder.
    #[arg(value_name = "FOLDER")]
    pub(super) folder: PathBuf,
    /// Photos of the wall.
    #[arg(value_name = "PHOTO", required = true)]
    photos: Vec<PathBuf>,
    /// How the wall is shown.
    #[arg(long, value_name = "WHICH", value_parser = chosen::<View>, default_value = "closed")]
    view: View,
    /// What becomes of the codes.
    #[arg(long, value_name = "WHICH", value_parser = chosen::<Codes>, default_value = "keep")]
    codes: Codes,
    /// What stands where no square hangs.
    #[arg(long, value_name = "WHICH", value_parser = chosen::<Missing>, default_value = "ghost")]
    missing: Missing,
    /// Only these prints.
    #[arg(long, value_name = "DOCUMENT", value_parser = document)]
    only: Vec<String>,
    /// Squares to show beside their pieces.
    #[arg(long, value_name = "LABEL")]
    pair: Vec<String>,
    /// Width of the poster.
    #[arg(long, value_name = "MM", value_parser = poster_mm)]
    poster_width: Option<f64>,
    /// People are not covered.
    #[arg(long)]
    uncovered: bool,
    /// The original as a poster too.
    #[arg(long)]
    poster_original: bool,
}

/// A wall that was shown, and what is told of it.
struct Told<'a> {
    shown: &'a Shown,
    compared: &'a Compared,
    retape: Vec<String>,
    units: Units,
    /// Number of cells where a square should hang.
    cells: usize,
}

/// Reads, shows, measures, tells, and writes the folder, whole or not at all.
pub fn run(args: &Args, console: &mut Console) -> Result<Outcome, CliError> {
    known(&args.only)?;
    let folder = Folder::at(&args.folder);
    let printed = folder.printed()?;
    let event = Event::open(&folder, folder.settings()?, console.words())?;
    let photos = u64::try_from(args.photos.len()).unwrap_or(u64::MAX / 8);
    let bar = progress::bar(console, photos * STEPS_A_PHOTO + STEPS_AT_THE_END, "display-working");
    let now = jiff::ZonedDateTime::now().strftime(CHECK_NAME).to_string();
    let work = Work { args, folder: &folder, printed: &printed, event: &event, now: &now };
    let done = work.done(console, &|| bar.inc(1));
    bar.finish_and_clear();
    let Done { seen, shown, compared, prints, moving, notes, cells } = done?;
    let units = event.settings.print.units;
    let retape = shown.measured.as_ref().map(|m| retape(m, &printed.grid, units, console.words()));
    let told = Told { shown: &shown, compared: &compared, retape: retape.unwrap_or_default(), units, cells };
    said::tell(&told, &printed, args.view, console);
    notes.into_iter().for_each(|note| console.tell(note));
    complain(&seen.refused, console);
    let figures = figures(&seen, &told, &printed, console);
    let into = folder.new_display_folder(&now)?;
    into.write("display.json", &serde_json::to_vec_pretty(&figures)?)?;
    into.write("wall.jpg", &jpeg(&shown.wall)?)?;
    for print in &prints {
        into.write(&print.document.name, &print.document.bytes)?;
        into.write(&print.screen_name, &print.screen)?;
    }
    if let Some(moving) = moving {
        into.write("filling.gif", &moving)?;
    }
    if args.uncovered {
        console.say("check-uncovered", &[]);
    }
    list(&into.finish()?, &prints, console);
    Ok(Outcome::Right)
}

/// What the command works on.
struct Work<'a> {
    args: &'a Args,
    folder: &'a Folder,
    printed: &'a Printed,
    event: &'a Event,
    now: &'a str,
}

/// What came of it.
struct Done {
    seen: Seen,
    shown: Shown,
    compared: Compared,
    prints: Vec<Print>,
    moving: Option<Vec<u8>>,
    /// What a better photo would show.
    notes: Vec<String>,
    /// Number of cells where a square should hang.
    cells: usize,
}

impl Work<'_> {
    fn done(&self, console: &Console, step: &(dyn Fn() + Sync)) -> Result<Done, CliError> {
        let covering = Covering::new(self.folder, self.printed, self.args.uncovered);
        let mut seen = look(&self.args.photos, self.printed, &covering, console.words(), step)?;
        let reading = read::together(std::mem::take(&mut seen.readings));
        let judgement = judge(&reading, &self.printed.grid);
        let noticed = Noticed::of(&seen.covers, &reading);
        let mut notes = self.notes(&noticed, (&reading, &judgement), console.words());
        let shown = self.show(&reading, &mut seen, step)?;
        notes.extend(from_home(&shown, &self.printed.grid, console.words()));
        step();
        let compared = Compared::of(&shown, &reading, self.event.few(), self.printed);
        let summary = judgement.summary;
        let now = Now { name: self.now, wall: &shown.wall, summary, photos: &seen.names(), made: seen.made };
        let checks = checks_until(self.folder, &self.printed.grid, &now);
        let pairs = self.pairs(&shown)?;
        let poster = Poster { width_mm: self.args.poster_width, original: self.args.poster_original };
        let input = Comparison {
            sources: self.event.sources(console.words()),
            wall: &shown.wall,
            overlap: &compared.overlap,
            measured: shown.measured.as_ref(),
            counts: summary,
            pairs: &pairs,
            kept: &self.kept(&shown),
            date: self.now.get(..10).map(str::to_owned),
            checks: &checks,
            poster,
            made: seen.made,
        };
        let words = console.words();
        let (prints, moving) =
            rayon::join(|| comparison(&input, &self.args.only, step), || moving(&checks, words));
        Ok(Done { prints: prints?, moving: moving?, seen, shown, compared, notes, cells: summary.cells })
    }

    /// What a better photo would show: squares of another part of the wall, what somebody hides, and what is not drawn yet.
    fn notes(
        &self,
        noticed: &Noticed,
        (reading, judgement): (&WallReading, &Judgement),
        words: &Words,
    ) -> Vec<String> {
        let say = Sentences { words, grid: &self.printed.grid };
        let is_apart = |one: &Advice| matches!(one, Advice::Apart { .. } | Advice::OtherPart { .. });
        let apart = advise(reading, judgement).into_iter().filter(is_apart);
        let someone = noticed.asks_to_step_aside(judgement).then(|| words.say("display-someone", &[]));
        let white = noticed.still_white(judgement);
        let white = (!white.is_empty()).then(|| say.white(&white));
        apart.map(|one| say.advice(&one)).chain(someone).chain(white).collect()
    }

    /// Looks at every photo once more and puts the wall together.
    fn show(
        &self,
        reading: &WallReading,
        seen: &mut Seen,
        step: &(dyn Fn() + Sync),
    ) -> Result<Shown, CliError> {
        let Args { view, codes, missing, .. } = *self.args;
        let from_home = kept(self.folder, &self.printed.grid)?;
        let mut showing =
            Showing::new(reading, self.printed, Manner { view, codes, missing })?.with_from_home(from_home);
        let (mut index, covers) = (0, std::mem::take(&mut seen.covers));
        each(&seen.paths, seen.only.take().map(Ok), |_, photo: Result<Photo, CliError>| {
            if let Some(covers) = covers.get(index) {
                showing.add(index, photo?, covers);
            }
            index += 1;
            step();
            Ok(())
        })?;
        Ok(showing.finish(self.event.picture()))
    }

    /// The squares that prints on request are asked for: those that were named, or all that were read. Nobody prints so many pages unasked.
    fn kept(&self, shown: &Shown) -> Vec<Pair> {
        if !self.args.only.iter().any(|name| ON_REQUEST.contains(&name.as_str())) {
            return Vec::new();
        }
        let grid = &self.printed.grid;
        let asked = |cell: &Cell| {
            let named = |label: &String| label.eq_ignore_ascii_case(&grid.label(*cell));
            self.args.pair.is_empty() || self.args.pair.iter().any(named)
        };
        let pair = |cell: Cell| Some(Pair { cell, square: shown.square_of(cell, self.printed)?.clone() });
        grid.cells().filter(asked).filter_map(pair).collect()
    }

    /// The squares that were asked for, or some from all over the wall.
    fn pairs(&self, shown: &Shown) -> Result<Vec<Pair>, CliError> {
        let grid = &self.printed.grid;
        let square = |cell: Cell| Some(Pair { cell, square: shown.square_of(cell, self.printed)?.clone() });
        if self.args.pair.is_empty() {
            return Ok(shown.spread().into_iter().filter_map(square).collect());
        }
        let asked = self.args.pair.iter().map(|label| {
            let unknown = || CliError::new(Sentence::new("error-display-pair").with("read", label.as_str()));
            grid.cell(&label.to_uppercase()).and_then(square).ok_or_else(unknown)
        });
        asked.collect()
    }
}

/// Which squares were drawn at home and stand in their places.
fn from_home(shown: &Shown, grid: &Grid, words: &Words) -> Option<String> {
    let labels: Vec<String> = shown.from_home.iter().map(|cell| grid.label(*cell)).collect();
    (!labels.is_empty()).then(|| words.say("display-from-home", &[("labels", labels.join(", ").into())]))
}

/// The wall filling up over the evening; `None` where it was seen only once.
fn moving(checks: &[PastCheck], words: &Words) -> Result<Option<Vec<u8>>, CliError> {
    let moments: Vec<Moment<'_>> = (checks.iter())
        .filter_map(|check| {
            let Summary { right, cells, .. } = check.summary;
            Some(Moment { when: &check.when, right, cells, picture: check.picture.as_ref()? })
        })
        .collect();
    if moments.len() < 2 {
        return Ok(None);
    }
    Ok(Some(filling(&moments, words)?))
}

fn figures(seen: &Seen, told: &Told<'_>, printed: &Printed, console: &Console) -> Figures {
    let suggestions = told.compared.suggestions.iter();
    Figures {
        made: seen.made,
        taken: seen.taken.clone(),
        photos: seen.names(),
        squares: told.shown.hanging.squares.len(),
        measured: told.shown.measured.as_ref().map(|measured| MeasuredFigures::of(measured, &printed.grid)),
        likeness: Some((told.compared.likeness * 1_000.0).round() / 1_000.0),
        retape: told.retape.clone(),
        suggestions: suggestions
            .map(|suggestion| SuggestionFigures::of(suggestion, &printed.grid, console.words()))
            .collect(),
        ..Figures::of(printed)
    }
}

/// Says what was written.
fn list(written: &Path, prints: &[Print], console: &mut Console) {
    console.say("display-written", &[("folder", written.display().to_string().into())]);
    for print in prints {
        let counted = [("name", print.document.name.as_str().into()), ("pages", print.document.pages.into())];
        let line = console.words().say("display-print", &counted);
        console.line(&format!("  {line}"));
    }
}

/// One word out of a few.
fn chosen<T: Choice>(text: &str) -> Result<T, Refused> {
    T::named(text).ok_or_else(Refused::choice::<T>)
}

fn poster_mm(text: &str) -> Result<f64, Refused> {
    within("typed-number-from", text, &POSTER_MM)
}
