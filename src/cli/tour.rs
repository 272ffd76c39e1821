//! `everysquare tour [FOLDER]`: a whole evening on the sample event, by typing the other commands.

use std::ffi::OsString;
use std::path::{Path, PathBuf};

use super::{CliError, Console, Outcome, mistyped, sample, typed};
use crate::plan::settings::{Choice, Language};
use crate::plan::{Folder, Settings};
use crate::rehearse::{CellTruth, Truth};
use crate::report::Report;
use crate::words::{Sentence, as_typed};

/// Where the tour goes if no folder is named.
const FOLDER: &str = "everysquare-tour";
/// The seed of the tour's rehearsal, and the faults asked for.
const REHEARSAL: [&str; 10] =
    ["--seed", "5", "--swaps", "3", "--turns", "2", "--missing", "4", "--scribbled", "1"];
/// The photo that this rehearsal makes.
const PHOTO: &str = "5.jpg";
/// What is said to be true of it.
const TRUTH: &str = "5.answers.json";

/// What is typed after `everysquare tour`.
#[derive(Debug, clap::Args)]
pub struct Args {
    /// Where the sample event is put.
    #[arg(value_name = "FOLDER", default_value = FOLDER)]
    folder: PathBuf,
}

/// Puts the sample there, prints it, makes a photo of its wall, checks that, compares with the truth, and makes what stays.
pub fn run(args: &Args, console: &mut Console) -> Result<Outcome, CliError> {
    let folder = Folder::at(&args.folder);
    let place = as_typed(&args.folder);
    console.say("tour-begins", &[("folder", place.as_str().into())]);
    put_sample(&folder, console.language())?;
    console.line("");
    console.say("tour-sample", &[]);

    console.line("");
    console.say("tour-print", &[]);
    type_in(&["print"], &[&args.folder], &[], console)?;

    console.line("");
    console.say("tour-rehearse", &[]);
    type_in(&["rehearse"], &[&args.folder], &REHEARSAL, console)?;

    console.line("");
    console.say("tour-check", &[]);
    let photo = folder.rehearsals().join(PHOTO);
    type_in(&["check"], &[&args.folder, &photo], &[], console)?;

    compare(&folder, console)?;

    console.line("");
    console.say("tour-display", &[]);
    type_in(&["display"], &[&args.folder, &photo], &["--view", "in-order"], console)?;
    console.line("");
    console.say("tour-ends", &[("folder", place.as_str().into())]);
    Ok(Outcome::Right)
}

/// The sample event, into an empty place or over an earlier tour's; never over another event.
fn put_sample(folder: &Folder, language: Language) -> Result<(), CliError> {
    if folder.event_toml().exists() {
        let there = folder.settings().ok();
        let samples = Language::ALL.iter().map(|(language, _)| sample::event_toml(*language));
        let samples = samples.collect::<Result<Vec<_>, _>>()?;
        let is_ours = samples.iter().any(|sample| Settings::from_toml(sample).ok() == there);
        if there.is_none() || !is_ours {
            return Err(CliError::new(Sentence::new("error-tour-taken").with("folder", folder.root())));
        }
    }
    Ok(sample::write_in(folder, language)?)
}

/// Shows a command line and obeys it.
fn type_in(
    command: &[&str],
    paths: &[&Path],
    options: &[&str],
    console: &mut Console,
) -> Result<Outcome, CliError> {
    let words = command.iter().chain(options).map(OsString::from);
    let mut argv = vec![OsString::from("everysquare")];
    argv.extend(words);
    argv.splice(2..2, paths.iter().map(|path| path.as_os_str().to_owned()));
    let options_from = 2 + paths.len();
    let plain = |at: usize| at < 2 || at >= options_from;
    let shown: Vec<String> = (0..)
        .zip(&argv)
        .map(
            |(at, word)| {
                if plain(at) { word.to_string_lossy().into_owned() } else { as_typed(Path::new(word)) }
            },
        )
        .collect();
    console.line(&format!("\n$ {}", shown.join(" ")));
    let typed = typed(argv, console)
        .map_err(|error| CliError::new(Sentence::given(mistyped::told(&error, console.words()))))?;
    typed.command.run(console)
}

/// Says in how many cells the report agrees with the truth about the made photo.
fn compare(folder: &Folder, console: &mut Console) -> Result<(), CliError> {
    let truth = Folder::read_picture(&folder.rehearsals().join(TRUTH))?;
    let truth: Truth = serde_json::from_slice(&truth)?;
    let report = Folder::read_picture(&latest_check(folder)?.join("report.json"))?;
    let report = Report::from_json(&String::from_utf8_lossy(&report))?;
    let agrees = |(cell, truth): (&crate::report::json::ReportCell, &CellTruth)| {
        cell.label == truth.label
            && (cell.state == truth.state || truth.accept.contains(&cell.state))
            && (cell.found.is_none() || cell.found == truth.hung)
    };
    let right = report.cells.iter().zip(&truth.cells).filter(|pair| agrees((pair.0, pair.1))).count();
    console.line("");
    console.say("tour-compared", &[("right", right.into()), ("cells", truth.cells.len().into())]);
    Ok(())
}

/// The folder of the latest check.
fn latest_check(folder: &Folder) -> Result<PathBuf, CliError> {
    let mut checks: Vec<PathBuf> =
        std::fs::read_dir(folder.checks())?.filter_map(|entry| Some(entry.ok()?.path())).collect();
    checks.sort();
    checks.pop().ok_or_else(|| CliError::new(Sentence::new("error-tour-no-check")))
}
