//! `everysquare print FOLDER helped|large|home --only LABELS`, `spare`, `from-home`, `test-page`: squares and pieces for whoever needs them
//! another way, and what is printed before all else.

use super::super::beside::{same_squares, write_beside};
use super::super::receive::kept;
use super::super::{CliError, Console};
use super::{Args, cells_of, named};
use crate::plan::settings::Choice;
use crate::plan::{Cell, Folder};
use crate::print::Document;
use crate::print::event::Event;
use crate::print::fill::{Look, helped};
use crate::print::from_home::from_home;
use crate::print::home::home;
use crate::print::large::large;
use crate::print::signs::signs;
use crate::print::spare::spare;
use crate::print::test_page::test_page;
use crate::words::{Sentence, Words, as_typed};

/// The documents that this file prints.
pub(super) const NAMES: [&str; 7] = ["test-page", "signs", "helped", "large", "home", "from-home", "spare"];
/// What goes with `--only` besides [`AGAIN`](crate::print::AGAIN).
pub(super) const TAKE_ONLY: [&str; 6] = ["fill", "helped", "large", "home", "from-home", "spare"];
/// Those that are printed of spots which are named.
const OF_SPOTS: [&str; 3] = ["helped", "large", "home"];

/// What help a square has.
#[derive(Copy, Clone, Debug, Default, PartialEq, Eq)]
pub enum Help {
    /// Outlines with the names of colours.
    #[default]
    Names,
    /// Dotted outlines.
    Dots,
    /// Faint lines between the tick marks.
    Lines,
}

impl Choice for Help {
    const ALL: &'static [(Self, &'static str)] =
        &[(Self::Names, "names"), (Self::Dots, "dots"), (Self::Lines, "lines")];
}

/// Prints those of the documents that were asked for.
pub(super) fn run(
    args: &Args,
    wanted: &[String],
    folder: &Folder,
    event: &Event,
    console: &mut Console,
) -> Result<(), CliError> {
    let asks_for = |name: &str| wanted.iter().any(|own| own == name);
    let sources = event.sources(console.words());
    let (mut documents, mut remembered) = (Vec::new(), Vec::new());
    if asks_for("test-page") {
        documents.push(test_page(&sources)?);
    }
    if asks_for("signs") {
        documents.push(signs(&sources)?);
    }
    if asks_for("spare") {
        let labels = args.only.as_ref().map(|only| named(only, &event.settings)).transpose()?;
        documents.push(spare(&sources, labels.as_deref().unwrap_or_default())?);
        remembered = labels.unwrap_or_default();
    }
    if asks_for("from-home") {
        documents.push(returned(args, folder, event, console.words())?);
    }
    if OF_SPOTS.iter().any(|name| asks_for(name)) {
        let only =
            args.only.as_ref().ok_or_else(|| CliError::new(Sentence::new("error-print-needs-only")))?;
        let cells = cells_of(&named(only, &event.settings)?, event);
        if asks_for("home") {
            same_squares(folder, event)?;
            documents.push(home(&sources, &cells)?);
        }
        if asks_for("helped") {
            same_squares(folder, event)?;
            let look = match args.help_with.unwrap_or_default() {
                Help::Names => Look::Outlined,
                Help::Dots => Look::Dotted,
                Help::Lines => Look::Quartered,
            };
            documents.push(helped(&sources, event.few(), &cells, look)?);
        }
        if asks_for("large") {
            documents.push(large(&sources, event.few(), &cells)?);
        }
    }
    if !documents.is_empty() {
        write_beside(folder, &event.settings, &documents, console)?;
    }
    if !remembered.is_empty() {
        let grid = &event.settings.grid;
        let cells: Vec<Cell> = remembered.iter().filter_map(|label| grid.cell(label)).collect();
        folder.remember_spares(&cells, grid)?;
    }
    let place = [("folder", as_typed(folder.root()).into())];
    for name in ["test-page", "home", "helped"].into_iter().filter(|name| asks_for(name)) {
        console.say(&format!("print-{name}-next"), &place);
    }
    if asks_for("spare") {
        let labels = [("count", remembered.len().into()), ("labels", remembered.join(", ").into())];
        console.say(if remembered.is_empty() { "print-spare-next" } else { "print-spare-known" }, &labels);
    }
    Ok(())
}

/// The squares that came back from home, or those of them that are named, to hang.
fn returned(args: &Args, folder: &Folder, event: &Event, words: &Words) -> Result<Document, CliError> {
    same_squares(folder, event)?;
    let labels = args.only.as_ref().map(|only| named(only, &event.settings)).transpose()?;
    let mut squares = kept(folder, &event.settings.grid)?;
    if let Some(labels) = &labels {
        squares.retain(|(cell, _)| labels.contains(&event.settings.grid.label(*cell)));
    }
    if squares.is_empty() {
        let sentence = Sentence::new("error-print-none-from-home").with("folder", as_typed(folder.root()));
        return Err(CliError::new(sentence));
    }
    Ok(from_home(&event.sources(words), &squares)?)
}
