//! What is printed beside a kit, and what is said of documents that were made.

use super::{CliError, Console};
use crate::plan::settings::{Choice, Flip, Units};
use crate::plan::{Folder, Settings};
use crate::print::Document;
use crate::print::event::Event;
use crate::words::{Sentence, as_typed};

/// Refuses where squares printed now would have other codes, or codes in another place, than those of the kit.
pub(super) fn same_squares(folder: &Folder, event: &Event) -> Result<(), CliError> {
    let (manifest, grid) = (folder.manifest()?, &event.settings.grid);
    let is_all_there = manifest.not_printed(grid).is_empty();
    if is_all_there && event.prints_as(&manifest.printed_but(grid.rows_from, grid.kept_free)?) {
        return Ok(());
    }
    Err(CliError::new(Sentence::new("error-print-changed").with("folder", as_typed(folder.root()))))
}

/// Writes documents beside the kit, and says so.
pub(super) fn write_beside(
    folder: &Folder,
    settings: &Settings,
    documents: &[Document],
    console: &mut Console,
) -> Result<(), CliError> {
    for document in documents {
        Folder::write_whole(&folder.print().join(&document.name), &document.bytes)?;
    }
    console.say("print-made", &[("folder", folder.print().display().to_string().into())]);
    documents.iter().for_each(|document| say_document(document, console));
    choose_paper(settings, documents, console);
    Ok(())
}

/// A document's name, its pages and sheets.
pub(super) fn say_document(document: &Document, console: &mut Console) {
    let id = if document.two_sided { "print-made-two-sided" } else { "print-made-one-sided" };
    let counts = [
        ("name", document.name.as_str().into()),
        ("pages", document.pages.into()),
        ("sheets", document.sheets.into()),
    ];
    let line = console.words().say(id, &counts);
    console.line(&format!("  {line}"));
}

/// Says what to choose in the printer's dialogue for documents of which some may be two-sided.
pub(super) fn choose_paper(settings: &Settings, documents: &[Document], console: &mut Console) {
    let two_sided = documents.iter().filter(|document| document.two_sided);
    let two_sided: Vec<&str> = two_sided.map(|document| document.name.as_str()).collect();
    let choose = match (two_sided.is_empty(), settings.print.flip) {
        (false, Flip::LongEdge) => "print-choose-long-edge",
        (false, Flip::ShortEdge) => "print-choose-short-edge",
        _ => "print-choose-one-sided",
    };
    let paper = console.words().say(&format!("print-paper-{}", settings.print.paper.word()), &[]);
    console.say(choose, &[("paper", paper.into()), ("documents", two_sided.join(", ").into())]);
    if !documents.iter().any(|document| document.true_size) {
        return;
    }
    let length = match settings.print.units {
        Units::Inch => "4 in",
        Units::Mm => "100 mm",
    };
    let id = if two_sided.is_empty() { "print-ruler-check-one-sided" } else { "print-ruler-check" };
    console.say(id, &[("length", length.into())]);
}
