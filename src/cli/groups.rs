//! `everysquare groups FOLDER "3A 26, 3B 24, club 12"`: shares the wall out among groups; without a list, says how far each one is.

use std::path::PathBuf;

use super::beside::write_beside;
use super::mistyped::Refused;
use super::newest::newest;
use super::{CliError, Console, Outcome};
use crate::plan::groups::{Group, Groups, GroupsError, Spread, divide, read};
use crate::plan::settings::Choice;
use crate::plan::{Folder, Grid, Level};
use crate::print::event::Event;
use crate::print::groups::groups as typeset;
use crate::report::Report;
use crate::words::{Sentence, Words, as_typed};

/// What is typed after `everysquare groups`.
#[derive(Debug, clap::Args)]
pub struct Args {
    /// The event folder.
    #[arg(value_name = "FOLDER")]
    pub(super) folder: PathBuf,
    /// The groups.
    #[arg(value_name = "GROUPS")]
    groups: Option<String>,
    /// How their pieces lie.
    #[arg(long, value_name = "HOW", value_parser = spread, requires = "groups")]
    spread: Option<Spread>,
}

fn spread(typed: &str) -> Result<Spread, Refused> {
    Spread::named(typed).ok_or_else(|| Refused::new(Spread::listed()))
}

/// Shares out and prints, or tells.
pub fn run(args: &Args, console: &mut Console) -> Result<Outcome, CliError> {
    let folder = Folder::at(&args.folder);
    let event = Event::open(&folder, folder.settings()?, console.words())?;
    let levels: Vec<Level> = event.facts.pieces.iter().map(|piece| piece.level).collect();
    let (grid, minutes) = (&event.settings.grid, event.settings.evening.minutes_a_piece);
    let Some(typed) = &args.groups else {
        return Ok(progress(&folder, &event, &shared_out(&folder, grid)?, console));
    };
    let shared = divide(grid, &levels, minutes, &read(typed)?, args.spread.unwrap_or_default())?;
    Folder::write_whole(&folder.groups_json(), shared.to_json(grid).as_bytes())?;
    table(&shared, &levels, minutes, console);
    map(&shared, grid, console);
    print(&folder, &event, &shared, console)?;
    console.say("groups-next", &[("folder", as_typed(folder.root()).into())]);
    Ok(Outcome::Right)
}

/// The groups of a folder; `None` where it was never shared out.
///
/// # Errors
/// [`GroupsError::File`] where it was, but not this wall.
pub(super) fn kept(folder: &Folder, grid: &Grid) -> Result<Option<Groups>, CliError> {
    if !folder.groups_json().exists() {
        return Ok(None);
    }
    let text = folder.groups_text().ok_or(GroupsError::File)?;
    Ok(Some(Groups::from_json(&text, grid)?))
}

/// The groups of a folder that has some.
///
/// # Errors
/// As [`kept`], and where it was never shared out.
pub(super) fn shared_out(folder: &Folder, grid: &Grid) -> Result<Groups, CliError> {
    kept(folder, grid)?.ok_or_else(|| {
        CliError::new(Sentence::new("error-groups-none").with("folder", as_typed(folder.root())))
    })
}

/// Prints what goes with groups.
pub(super) fn print(
    folder: &Folder,
    event: &Event,
    shared: &Groups,
    console: &mut Console,
) -> Result<(), CliError> {
    let document = typeset(&event.sources(console.words()), shared)?;
    write_beside(folder, &event.settings, &[document], console)
}

/// Who has how much.
fn table(shared: &Groups, levels: &[Level], minutes: [f64; 4], console: &mut Console) {
    let words = console.words();
    let heads = ["groups-number", "groups-name", "groups-people", "groups-pieces", "groups-minutes"];
    let heads = heads.map(|id| words.say(id, &[])).into_iter();
    let levels_heads = Level::ALL.map(|level| words.say(&format!("level-{}", level.word()), &[]));
    let mut rows: Vec<Vec<String>> = vec![heads.chain(levels_heads).collect()];
    for (number, group) in shared.groups.iter().enumerate() {
        let each = group.minutes_each(levels, minutes);
        let mut row = vec![
            (number + 1).to_string(),
            group.members.name.clone(),
            group.members.people.to_string(),
            group.pieces.len().to_string(),
            format!("{each:.0}"),
        ];
        row.extend(group.of_levels(levels).map(|count| count.to_string()));
        rows.push(row);
    }
    let widths: Vec<usize> = (0..rows[0].len())
        .map(|column| rows.iter().map(|row| row[column].chars().count()).max().unwrap_or(0))
        .collect();
    for row in rows {
        let cells = row.iter().zip(&widths).enumerate();
        let said = cells.map(
            |(column, (cell, width))| {
                if column < 2 { format!("{cell:<width$}") } else { format!("{cell:>width$}") }
            },
        );
        let said: Vec<String> = said.collect();
        console.line(format!("  {}", said.join("  ")).trim_end());
    }
    console.line("");
}

/// The wall with the number of each spot's group.
fn map(shared: &Groups, grid: &Grid, console: &mut Console) {
    let wide = shared.groups.len().to_string().len() + 1;
    for row in 0..grid.rows {
        let spot = |column: usize| {
            let group = shared.of_piece(row * grid.columns + column).map_or(0, |group| group + 1);
            format!("{group:>wide$}")
        };
        let spots: String = (0..grid.columns).map(spot).collect();
        console.line(&format!("{:>4} {spots}", grid.row_number(row)));
    }
    console.line("");
}

/// How far each group is, by the newest check.
fn progress(folder: &Folder, event: &Event, shared: &Groups, console: &mut Console) -> Outcome {
    let Some(newest) = newest(folder, &event.settings) else {
        console.say("groups-no-check", &[("folder", as_typed(folder.root()).into())]);
        return Outcome::Unclear;
    };
    console.say("groups-as-of", &[("when", newest.when.as_str().into())]);
    tell(&newest.report, shared, &event.settings.grid, console);
    Outcome::Right
}

/// Says how far each group is.
pub(super) fn tell(report: &Report, shared: &Groups, grid: &Grid, console: &mut Console) {
    let lines = told(report, shared, grid, console.words());
    lines.into_iter().for_each(|line| console.tell(line));
}

/// How many squares of each group are up, and which are to come.
fn told(report: &Report, shared: &Groups, grid: &Grid, words: &Words) -> Vec<String> {
    let cells: Vec<_> = grid.cells().collect();
    let group = |group: &Group| {
        let label = |piece: &usize| grid.label(cells[*piece]);
        let labels: Vec<String> = group.pieces.iter().map(label).collect();
        let up = |label: &&String| report.cells.iter().any(|cell| cell.found.as_ref() == Some(*label));
        let count = labels.iter().filter(up).count();
        let to_come: Vec<&str> =
            labels.iter().filter(|label| report.missing.contains(label)).map(String::as_str).collect();
        let said = [
            ("name", group.members.name.as_str().into()),
            ("up", count.into()),
            ("pieces", labels.len().into()),
            ("labels", to_come.join(", ").into()),
        ];
        words.say(if to_come.is_empty() { "groups-all-up" } else { "groups-to-come" }, &said)
    };
    shared.groups.iter().map(group).collect()
}
