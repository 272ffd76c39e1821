//! `everysquare display FOLDER PHOTO…`: the wall's picture beside the original, its measures, and the prints that stay.

use std::path::PathBuf;

use super::check::CHECK_NAME;
use super::event::Event;
use super::mistyped::Refused;
use super::photos::{Seen, each, look};
use super::{CliError, Console, Outcome, progress};
use crate::display::assemble::{Arrangement, Missing};
use crate::display::jpeg;
use crate::display::retape::{SEEN_MM, retape};
use crate::gallery::{Codes, Figures, Manner, MeasuredFigures, Showing, Shown, View};
use crate::photo::Photo;
use crate::plan::lengths::{both, one};
use crate::plan::settings::Choice;
use crate::plan::{Folder, Printed, Turn};
use crate::read::{self, WallReading};

/// Steps of the progress bar for each photo: opened, read, drawn.
const STEPS_A_PHOTO: u64 = 3;
/// Steps for what follows.
const STEPS_AT_THE_END: u64 = 2;

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
}

/// Reads, shows, measures, tells, and writes the folder.
pub fn run(args: &Args, console: &mut Console) -> Result<Outcome, CliError> {
    let folder = Folder::at(&args.folder);
    let printed = folder.printed()?;
    let event = Event::open(&folder, folder.settings()?, console.words())?;
    let manner = Manner { view: args.view, codes: args.codes, missing: args.missing };
    let photos = u64::try_from(args.photos.len()).unwrap_or(u64::MAX / 8);
    let bar = progress::bar(console, photos * STEPS_A_PHOTO + STEPS_AT_THE_END, "display-working");
    let seen = look(&args.photos, &printed, console.words(), &|| bar.inc(1));
    let seen = seen.inspect_err(|_| bar.finish_and_clear())?;
    let files = seen.names();
    let Seen { paths, only, taken, made, readings, refused } = seen;
    let reading = read::several(readings);
    let shown = show(&reading, &printed, manner, &event, &paths, only, &|| bar.inc(1));
    let shown = shown.inspect_err(|_| bar.finish_and_clear())?;
    bar.finish_and_clear();
    let units = event.settings.print.units;
    let retape = shown.measured.as_ref().map(|m| retape(m, &printed.grid, units, console.words()));
    let figures = Figures {
        made,
        taken,
        photos: files,
        squares: shown.hanging.squares.len(),
        measured: shown.measured.as_ref().map(|measured| MeasuredFigures::of(measured, &printed.grid)),
        retape: retape.clone().unwrap_or_default(),
        ..Figures::of(&printed)
    };
    tell(&shown, &printed, &event, retape.as_deref(), args.view, console);
    for refused in &refused {
        let told = refused.line(console.words());
        console.complain(&told);
    }
    let now = jiff::ZonedDateTime::now().strftime(CHECK_NAME).to_string();
    let into = folder.new_display_folder(&now)?;
    into.write("display.json", &serde_json::to_vec_pretty(&figures)?)?;
    into.write("wall.jpg", &jpeg(&shown.wall)?)?;
    let written = into.finish()?;
    console.say("display-written", &[("folder", written.display().to_string().into())]);
    Ok(Outcome::Right)
}

/// Looks at every photo once more and puts the wall together.
fn show(
    reading: &WallReading,
    printed: &Printed,
    manner: Manner,
    event: &Event,
    paths: &[PathBuf],
    only: Option<Photo>,
    step: &(dyn Fn() + Sync),
) -> Result<Shown, CliError> {
    let mut showing = Showing::new(reading, printed, manner)?;
    let mut index = 0;
    each(paths, only, |_, photo| {
        showing.add(index, &photo?);
        index += 1;
        step();
        Ok(())
    })?;
    let shown = showing.finish(event.picture());
    step();
    Ok(shown)
}

fn tell(
    shown: &Shown,
    printed: &Printed,
    event: &Event,
    retape: Option<&[String]>,
    view: View,
    console: &mut Console,
) {
    let squares = &shown.hanging.squares;
    let counted = [("squares", squares.len().into()), ("cells", printed.grid.count().into())];
    console.say("display-squares", &counted);
    let units = event.settings.print.units;
    if let Some(measured) = &shown.measured {
        let factor = measured.scale_factor;
        let said = [
            ("factor", format!("{:.2}", factor.value).into()),
            ("within", format!("{:.2}", factor.within).into()),
            ("planned", format!("{:.2}", printed.grid.square_mm / printed.grid.tile_mm).into()),
        ];
        console.say("display-scale", &said);
        let [width, height] =
            [measured.width, measured.height].map(|q| both(q.value, units, console.words()));
        console.say("display-size", &[("width", width.into()), ("height", height.into())]);
    }
    match retape {
        Some([]) => {
            let length = one(SEEN_MM, units, console.words());
            console.say("display-straight", &[("length", length.into())]);
        }
        sentences => sentences.unwrap_or_default().iter().for_each(|sentence| console.line(sentence)),
    }
    let astray = squares.iter().filter(|hung| hung.home != hung.at || hung.turn != Turn::None).count();
    if astray > 0 && view != View::Put(Arrangement::InOrder) {
        console.say("display-mixed", &[("squares", astray.into())]);
    }
}

/// One word out of a few.
fn chosen<T: Choice>(text: &str) -> Result<T, Refused> {
    T::named(text).ok_or_else(Refused::choice::<T>)
}
