//! `everysquare print FOLDER fill`: squares for the gaps that the newest check shows, or for those that are named.

use super::super::beside::{same_squares, write_beside};
use super::super::newest::{Newest, newest};
use super::super::{CliError, Console};
use super::{Args, cells_of, named};
use crate::judge::State;
use crate::plan::{Folder, Grid};
use crate::print::event::Event;
use crate::print::fill::{Fill, Look, fill};
use crate::report::Report;
use crate::words::{Sentence, as_typed};

/// Prints the fillers, and says what to do with them.
pub(super) fn run(
    args: &Args,
    folder: &Folder,
    event: &Event,
    console: &mut Console,
) -> Result<(), CliError> {
    let settings = &event.settings;
    same_squares(folder, event)?;
    let (labels, said) = match &args.only {
        Some(only) => (named(only, settings)?, None),
        None => {
            let newest = newest(folder, settings).ok_or_else(|| {
                CliError::new(
                    Sentence::new("error-print-fill-no-check").with("folder", as_typed(folder.root())),
                )
            })?;
            (lacking(&newest.report, &settings.grid), Some(newest))
        }
    };
    if let Some(newest) = &said {
        tell_check(newest, labels.len(), console);
    }
    let cells = cells_of(&labels, event);
    if cells.is_empty() {
        return Ok(());
    }
    let look = if args.soft { Look::Coloured } else { Look::Outlined };
    let sources = event.sources(console.words());
    let made = fill(&sources, event.few(), &cells, look)?;
    write_beside(folder, settings, std::slice::from_ref(&made.document), console)?;
    explain(event, &made, look, console);
    Ok(())
}

/// The squares that a wall lacks: those that were seen nowhere though the spot they belong in was, and those that hang undrawn.
fn lacking(report: &Report, grid: &Grid) -> Vec<String> {
    let seen = |label: &&String| {
        let cell = report.cells.iter().find(|cell| cell.label == **label);
        cell.is_some_and(|cell| !matches!(cell.state, State::Unread | State::Unseen))
    };
    let missing = report.missing.iter().filter(seen);
    let labels = missing.chain(&report.white).filter(|label| grid.cell(label).is_some());
    labels.cloned().collect()
}

/// What the check says.
fn tell_check(newest: &Newest, count: usize, console: &mut Console) {
    let report = &newest.report;
    let unknown = report.summary.unread + report.summary.unseen;
    let numbers = [
        ("when", newest.when.as_str().into()),
        ("count", count.saturating_sub(report.white.len()).into()),
        ("white", report.white.len().into()),
        ("unknown", unknown.into()),
    ];
    console.say(if count == 0 { "print-fill-whole" } else { "print-fill-lacks" }, &numbers);
    if !report.white.is_empty() {
        console.say("print-fill-white", &numbers);
    }
    if unknown > 0 {
        console.say("print-fill-unknown", &numbers);
    }
}

/// What to do with what was printed.
fn explain(event: &Event, made: &Fill, look: Look, console: &mut Console) {
    let papers: usize = made.papers.iter().map(|(_, labels)| labels.len()).sum();
    if made.drawn > 0 {
        let id = if look == Look::Coloured { "print-fill-hang" } else { "print-fill-colour" };
        console.say(id, &[("count", made.drawn.into())]);
    }
    if papers > 0 {
        console.say("print-fill-papers", &[("count", papers.into())]);
        for (pencil, labels) in &made.papers {
            let name = event.facts.pencils[*pencil].name.as_str();
            let said = [
                ("count", labels.len().into()),
                ("colour", name.into()),
                ("labels", labels.join(", ").into()),
            ];
            let line = console.words().say("fill-paper-row", &said);
            console.line(&format!("  {line}"));
        }
    }
    console.say("print-fill-kept", &[]);
}
