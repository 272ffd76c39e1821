//! The program: what was typed becomes what is meant, a command runs, its outcome becomes an exit code.
//!
//! ```text
//!  argv ──clap──▶ Args of one command ──run──▶ Outcome ──▶ 0 all right · 1 something to fix · 2 could not tell, or an error
//!                                       │
//!                                       └──▶ Console: sentences for people
//! ```
//!
//! A command is a file with `Args` (clap) and `run(&Args, &mut Console) -> Result<Outcome, CliError>`, a line in `Command`
//! and one in `Command::run`, and its `help-…` sentences in `words/en.ftl`: `help-new` for the command `new`,
//! `help-new-columns` for its `--columns`.

mod beside;
mod check;
mod console;
mod crowd;
mod display;
mod error;
mod find;
mod groups;
mod help;
mod language;
mod mistyped;
mod new;
mod newest;
mod photos;
mod place;
mod plan;
mod print;
mod progress;
mod receive;
mod rehang;
mod rehearse;
pub mod sample;
mod serve;
mod test_page;
mod tour;

use std::ffi::OsString;
use std::panic::AssertUnwindSafe;
use std::path::Path;

use clap::{CommandFactory, FromArgMatches, Parser, Subcommand};

use crate::plan::settings::{Choice, Language};
use crate::words::{Sentence, Words};

pub use console::{Console, Screen};
pub use error::CliError;

/// How a command ended that did what it was asked to.
#[derive(Copy, Clone, Debug, PartialEq, Eq)]
pub enum Outcome {
    /// All is right.
    Right,
    /// There is something to fix.
    ToFix,
    /// It could not be told.
    Unclear,
}

impl Outcome {
    /// The program's exit code.
    #[must_use]
    pub fn code(self) -> u8 {
        match self {
            Self::Right => 0,
            Self::ToFix => 1,
            Self::Unclear => 2,
        }
    }
}

/// The exit code of an error, whoever made it.
const ERROR: u8 = 2;
/// How the program is called.
const NAME: &str = "everysquare";

#[derive(Debug, Parser)]
#[command(name = NAME, version, about = "", disable_help_subcommand = true)]
struct Typed {
    /// The language before a folder is known.
    #[arg(long, global = true, value_name = "LANGUAGE", value_parser = language::named)]
    language: Option<Language>,
    #[command(subcommand)]
    command: Command,
}

/// Every command, in the order in which an evening needs them.
#[derive(Debug, Subcommand)]
enum Command {
    Tour(tour::Args),
    New(new::Args),
    Plan(plan::Args),
    Print(print::Args),
    #[command(name = "test-page")]
    TestPage(test_page::Args),
    Groups(groups::Args),
    Rehearse(rehearse::Args),
    Check(check::Args),
    Find(find::Args),
    Receive(receive::Args),
    Display(display::Args),
    Rehang(rehang::Args),
    Serve(serve::Args),
}

impl Command {
    /// The event folder that it works on, whose language and words are spoken from here on.
    fn folder(&self) -> Option<&Path> {
        match self {
            Self::Tour(_) | Self::New(_) => None,
            Self::Plan(args) => Some(&args.folder),
            Self::Print(args) => Some(&args.folder),
            Self::TestPage(args) => Some(&args.folder),
            Self::Find(args) => Some(&args.folder),
            Self::Receive(args) => Some(&args.folder),
            Self::Groups(args) => Some(&args.folder),
            Self::Rehearse(args) => Some(&args.folder),
            Self::Check(args) => Some(&args.folder),
            Self::Display(args) => Some(&args.folder),
            Self::Rehang(args) => Some(&args.folder),
            Self::Serve(args) => Some(&args.folder),
        }
    }

    /// Refuses a file where the event folder belongs: mostly it is a photo, and the two were exchanged.
    fn is_no_file(&self, folder: &Path) -> Result<(), CliError> {
        if !folder.is_file() {
            return Ok(());
        }
        let sentence = match self {
            Self::Check(_) => Sentence::new("error-folder-first").with("command", "check"),
            Self::TestPage(_) => Sentence::new("error-folder-first").with("command", "test-page"),
            Self::Find(_) => Sentence::new("error-folder-first").with("command", "find"),
            Self::Receive(_) => Sentence::new("error-folder-first").with("command", "receive"),
            Self::Display(_) => Sentence::new("error-folder-first").with("command", "display"),
            _ => Sentence::new("error-folder-file"),
        };
        Err(CliError::new(sentence.with("path", folder)))
    }

    fn run(&self, console: &mut Console) -> Result<Outcome, CliError> {
        if let Some(folder) = self.folder() {
            self.is_no_file(folder)?;
            language::speak_for(folder, console)?;
        }
        match self {
            Self::Tour(args) => tour::run(args, console),
            Self::New(args) => new::run(args, console),
            Self::Plan(args) => plan::run(args, console),
            Self::Print(args) => print::run(args, console),
            Self::TestPage(args) => test_page::run(args, console),
            Self::Find(args) => find::run(args, console),
            Self::Receive(args) => receive::run(args, console),
            Self::Groups(args) => groups::run(args, console),
            Self::Rehang(args) => rehang::run(args, console),
            Self::Rehearse(args) => rehearse::run(args, console),
            Self::Check(args) => check::run(args, console),
            Self::Display(args) => display::run(args, console),
            Self::Serve(args) => serve::run(args, console),
        }
    }
}

/// Runs the program with its arguments, the program's own name first, and gives its exit code.
pub fn run(argv: impl IntoIterator<Item = OsString>, console: &mut Console) -> u8 {
    let argv: Vec<OsString> = help_asked(argv.into_iter().collect());
    if let Some(language) = language::typed(&argv) {
        console.speak(Words::of(language.word()));
    }
    let outcome = match typed(argv, console) {
        Err(error) if error.use_stderr() => {
            let told = mistyped::told(&error, console.words());
            console.complain(&told);
            return ERROR;
        }
        Err(help_or_version) => {
            console.line(help_or_version.render().to_string().trim_end());
            Ok(Outcome::Right)
        }
        Ok(typed) => typed.command.run(console),
    };
    match outcome.and_then(|outcome| console.finish().map(|()| outcome)) {
        Ok(outcome) => outcome.code(),
        Err(error) => {
            let told = error.line(console.words());
            console.complain(&told);
            ERROR
        }
    }
}

/// `help` and `help COMMAND` as what they mean: `--help` and `COMMAND --help`.
fn help_asked(mut argv: Vec<OsString>) -> Vec<OsString> {
    if argv.get(1).is_some_and(|word| word == "help") {
        argv.remove(1);
        argv.truncate(2);
        argv.push("--help".into());
    }
    argv
}

/// What was typed, as what is meant.
fn typed(argv: impl IntoIterator<Item = OsString>, console: &Console) -> Result<Typed, clap::Error> {
    let command = help::worded(Typed::command(), "help", NAME, console.words());
    let command = command.term_width(console.screen().width).max_term_width(100);
    command.try_get_matches_from(argv).and_then(|matches| Typed::from_arg_matches(&matches))
}

/// Runs the program so that a fault of its own ends in one sentence and exit code 2. Decoders of hostile files may panic inside
/// `catch_unwind`; that is said by whoever called them, so nothing is printed when a panic begins.
pub fn without_panic(program: impl FnOnce() -> u8) -> u8 {
    std::panic::set_hook(Box::new(|_| {}));
    std::panic::catch_unwind(AssertUnwindSafe(program)).unwrap_or_else(|fault| {
        let said =
            fault.downcast_ref::<String>().map(String::as_str).or(fault.downcast_ref::<&str>().copied());
        let mut console = Console::standard();
        let told = CliError::new(Sentence::new("error-fault").with("said", said.unwrap_or("?")))
            .line(console.words());
        console.complain(&told);
        ERROR
    })
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeSet;

    use super::*;

    /// What the help asks of the words: the ids of all that are there.
    fn help_ids(command: &clap::Command, id: &str, ids: &mut BTreeSet<String>) {
        ids.insert(id.to_owned());
        for arg in command.get_arguments() {
            ids.insert(help::explanation(id, &arg.get_id().as_str().replace('_', "-")));
            let valued = arg.get_action().takes_values();
            let names = arg.get_value_names().into_iter().flatten().filter(|_| valued);
            ids.extend(names.map(|name| format!("help-value-{}", name.to_lowercase())));
        }
        for sub in command.get_subcommands() {
            help_ids(sub, &format!("{id}-{}", sub.get_name()), ids);
        }
    }

    #[test]
    fn every_command_argument_and_value_is_explained_and_nothing_else_is() {
        let mut asked: BTreeSet<String> = ["arguments", "commands", "options", "usage"]
            .map(|heading| format!("help-heading-{heading}"))
            .into();
        asked.extend(["default", "possible", "help", "version"].map(|own| format!("help-{own}")));
        asked.extend(["command", "options"].map(|own| format!("help-value-{own}")));
        help_ids(&Typed::command(), "help", &mut asked);
        let english = crate::words::LANGUAGES[0].1.lines();
        let there = english.filter_map(|line| line.split_once(" =").map(|(id, _)| id.to_owned()));
        let there: BTreeSet<String> = there.filter(|id| id == "help" || id.starts_with("help-")).collect();
        assert_eq!(asked.difference(&there).collect::<Vec<_>>(), Vec::<&String>::new(), "not explained");
        assert_eq!(there.difference(&asked).collect::<Vec<_>>(), Vec::<&String>::new(), "explains nothing");
    }

    #[test]
    fn no_word_of_the_help_is_claps_own() {
        fn pages(command: &mut clap::Command, all: &mut String) {
            all.push_str(&command.render_help().to_string());
            command.get_subcommands_mut().for_each(|sub| pages(sub, all));
        }
        let mut command = help::worded(Typed::command(), "help", NAME, &Words::of("es"));
        command.build();
        let mut all = String::new();
        pages(&mut command, &mut all);
        for clap in [
            "Usage",
            "Options",
            "Arguments",
            "Commands",
            "OPTIONS",
            "COMMAND",
            "default:",
            "possible",
            "Print ",
        ] {
            assert!(!all.contains(clap), "{clap}\n{all}");
        }
        assert!(!all.contains("[help"), "{all}");
        assert!(all.contains("Uso: everysquare rehearse [OPCIONES] <CARPETA>"), "{all}");
    }

    #[test]
    fn the_arguments_are_consistent() {
        Typed::command().debug_assert();
        help::worded(Typed::command(), "help", NAME, &Words::english()).debug_assert();
    }
}
