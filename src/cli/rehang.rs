//! `everysquare rehang FOLDER --wall "4x6ft, door, 5x6ft"`: the mural goes to another place: prints how, and keeps the new parts.

use std::path::PathBuf;

use super::beside::write_beside;
use super::place::{Hung, PlaceArgs};
use super::{CliError, Console, Outcome};
use crate::plan::Folder;
use crate::plan::settings::set;
use crate::print::event::Event;
use crate::print::rehang::rehang;
use crate::words::{Sentence, as_typed};

/// What is typed after `everysquare rehang`.
#[derive(Debug, clap::Args)]
pub struct Args {
    /// The event folder.
    #[arg(value_name = "FOLDER")]
    pub(super) folder: PathBuf,
    #[command(flatten)]
    place: PlaceArgs,
    /// Keep the new place.
    #[arg(long)]
    save: bool,
}

/// Prints the way there; with `--save` checks compare with the new place from then on.
pub fn run(args: &Args, console: &mut Console) -> Result<Outcome, CliError> {
    let folder = Folder::at(&args.folder);
    let place = args.place.wall.as_ref().ok_or_else(|| CliError::new(Sentence::new("error-rehang-wall")))?;
    let mut event = Event::open(&folder, folder.settings()?, console.words())?;
    let hung = place.hung(&event.settings.grid, &event.facts.crossings)?;
    let today = event.settings.parts.clone();
    args.place.override_in(&mut event.settings.evening);
    hung.settle(&mut event.settings);
    let document = rehang(&event.sources(console.words()), &today)?;
    if args.save {
        save(args, &folder, &hung, console)?;
    }
    write_beside(&folder, &event.settings, &[document], console)?;
    if let Some(told) = hung.told(console.words()) {
        console.tell(told);
    }
    let id = if args.save { "rehang-saved" } else { "rehang-not-saved" };
    console.say(id, &[("folder", as_typed(folder.root()).into())]);
    Ok(Outcome::Right)
}

/// Writes the new place into event.toml.
fn save(args: &Args, folder: &Folder, hung: &Hung, console: &Console) -> Result<(), CliError> {
    let text = folder.event_text()?;
    let text = args.place.given().try_fold(text, |text, (name, value)| set(&text, name, value))?;
    let text = hung.kept(&text, console.words())?;
    Ok(Folder::write_whole(&folder.event_toml(), text.as_bytes())?)
}
