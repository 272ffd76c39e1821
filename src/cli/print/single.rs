//! `everysquare print FOLDER helped|large --only LABELS` and `spare`: squares and pieces for whoever needs them another way.

use super::super::event::Event;
use super::super::{CliError, Console};
use super::{Args, cells_of, named, same_squares, write_beside};
use crate::plan::Folder;
use crate::plan::settings::Choice;
use crate::print::fill::{Look, helped};
use crate::print::large::large;
use crate::print::spare::spare;
use crate::words::Sentence;

/// The documents that this file prints.
pub(super) const NAMES: [&str; 3] = ["helped", "large", "spare"];

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
    let mut documents = Vec::new();
    if asks_for("spare") {
        documents.push(spare(&sources)?);
    }
    if asks_for("helped") || asks_for("large") {
        let only =
            args.only.as_ref().ok_or_else(|| CliError::new(Sentence::new("error-print-needs-only")))?;
        let cells = cells_of(&named(only, &event.settings)?, event);
        if asks_for("helped") {
            same_squares(folder, &event.settings)?;
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
    if asks_for("helped") {
        console.say("print-helped-next", &[]);
    }
    if asks_for("spare") {
        console.say("print-spare-next", &[]);
    }
    Ok(())
}
