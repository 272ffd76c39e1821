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

mod check;
mod console;
mod error;
mod new;
mod plan;
mod print;
mod progress;
mod rehearse;
pub mod sample;
mod tour;

use std::ffi::OsString;
use std::panic::AssertUnwindSafe;

use clap::error::ErrorKind;
use clap::{CommandFactory, FromArgMatches, Parser, Subcommand};

use crate::words::Words;

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

#[derive(Debug, Parser)]
#[command(name = "everysquare", version, about = "", disable_help_subcommand = true)]
struct Typed {
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
    Rehearse(rehearse::Args),
    Check(check::Args),
}

impl Command {
    fn run(&self, console: &mut Console) -> Result<Outcome, CliError> {
        match self {
            Self::Tour(args) => tour::run(args, console),
            Self::New(args) => new::run(args, console),
            Self::Plan(args) => plan::run(args, console),
            Self::Print(args) => print::run(args, console),
            Self::Rehearse(args) => rehearse::run(args, console),
            Self::Check(args) => check::run(args, console),
        }
    }
}

/// Runs the program with its arguments, the program's own name first, and gives its exit code.
pub fn run(argv: impl IntoIterator<Item = OsString>, console: &mut Console) -> u8 {
    let outcome = match typed(argv, console) {
        Err(error) if error.use_stderr() => {
            console.complain(&mistyped(&error));
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
            console.complain(&format!("everysquare: {error}"));
            ERROR
        }
    }
}

/// What was typed, as what is meant.
fn typed(argv: impl IntoIterator<Item = OsString>, console: &Console) -> Result<Typed, clap::Error> {
    let command = worded(Typed::command(), "help", console.words());
    command.try_get_matches_from(argv).and_then(|matches| Typed::from_arg_matches(&matches))
}

/// Runs the program so that a fault of its own ends in one sentence and exit code 2. Decoders of hostile files may panic inside
/// `catch_unwind`; that is said by whoever called them, so nothing is printed when a panic begins.
pub fn without_panic(program: impl FnOnce() -> u8) -> u8 {
    std::panic::set_hook(Box::new(|_| {}));
    std::panic::catch_unwind(AssertUnwindSafe(program)).unwrap_or_else(|fault| {
        let said = fault.downcast_ref::<String>().map(String::as_str).or(fault.downcast_ref::<&str>().copied());
        Console::standard().complain(&format!(
            "everysquare: the program met a fault of its own and stopped; no file is half-written. Please report it with what \
             you typed: {}",
            said.unwrap_or("no message")
        ));
        ERROR
    })
}

/// What is said to somebody who mistyped: one sentence; the whole help where nothing was typed.
fn mistyped(error: &clap::Error) -> String {
    let rendered = error.render().to_string();
    if error.kind() == ErrorKind::DisplayHelpOnMissingArgumentOrSubcommand {
        return rendered.trim_end().to_owned();
    }
    let sentence = rendered.split("\n\nUsage:").next().unwrap_or_default();
    let sentence = sentence.split("\n\nFor more").next().unwrap_or_default();
    let lines: Vec<&str> = sentence.trim_start_matches("error: ").lines().map(str::trim).collect();
    let typed: Vec<&str> = lines.into_iter().filter(|line| !line.is_empty()).collect();
    format!("everysquare: {} (everysquare --help shows what can be typed)", typed.join(" "))
}

/// A command with its help and that of all below it taken from the words.
fn worded(command: clap::Command, id: &str, words: &Words) -> clap::Command {
    let about = words.say(id, &[]);
    let below: Vec<String> = command.get_subcommands().map(|sub| sub.get_name().to_owned()).collect();
    let command = command.about(about).mut_args(|arg| {
        let own = arg.get_id().as_str().replace('_', "-");
        if ["help", "version"].contains(&own.as_str()) {
            return arg;
        }
        arg.help(words.say(&format!("{id}-{own}"), &[]))
    });
    below.into_iter().fold(command, |command, name| {
        command.mut_subcommand(&name, |sub| worded(sub, &format!("{id}-{name}"), words))
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_command_and_argument_is_explained_in_words() {
        fn look(command: &mut clap::Command) {
            let help = command.render_long_help().to_string();
            assert!(!help.contains("[help"), "{help}");
            command.get_subcommands_mut().for_each(look);
        }
        look(&mut worded(Typed::command(), "help", &Words::english()));
    }

    #[test]
    fn the_arguments_are_consistent() {
        Typed::command().debug_assert();
    }
}
