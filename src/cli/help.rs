//! The help: every word of it comes from the words, so that it speaks the languages they do.
//!
//! What clap itself writes into a help page (headings, the usage line, default values) is replaced, never translated after
//! the fact.

use clap::{Arg, ArgAction, Command};

use super::crowd;
use crate::words::Words;

/// Where the options that every command has stand: behind all others.
const LAST: usize = 900;

/// Commands that take what is known of the crowd.
const CROWD: [&str; 2] = ["help-new", "help-plan"];

/// A command and all below it, explained by the words whose ids begin with `id`; `path` is how it is typed.
pub(super) fn worded(command: Command, id: &str, path: &str, words: &Words) -> Command {
    let say = |id: &str| words.say(id, &[]);
    let below: Vec<String> = command.get_subcommands().map(|sub| sub.get_name().to_owned()).collect();
    let has_version = command.get_version().is_some();
    let mut places = 0..;
    let mut command = command
        .about(say(id))
        .mut_args(|arg| {
            // under a heading of their own, clap sorts those without a place by their name
            let place = places.next().filter(|_| arg.is_positional());
            let arg = explained(arg, id, words);
            place.map_or(arg.clone(), |place| arg.display_order(place))
        })
        .disable_help_flag(true)
        .disable_version_flag(true)
        .arg(flag("help", 'h', ArgAction::Help, LAST + 1, words))
        .subcommand_help_heading(say("help-heading-commands"))
        .subcommand_value_name(say("help-value-command"));
    if has_version {
        command = command.arg(flag("version", 'V', ArgAction::Version, LAST + 2, words));
    }
    command = below.into_iter().fold(command, |command, name| {
        command.mut_subcommand(&name, |sub| {
            worded(sub, &format!("{id}-{name}"), &format!("{path} {name}"), words)
        })
    });
    let usage = usage(&command, path, words);
    let heading = say("help-heading-usage");
    command.override_usage(usage).help_template(format!(
        "{{before-help}}{{about-with-newline}}\n{heading}: {{usage}}\n\n{{all-args}}{{after-help}}"
    ))
}

/// The words about an argument of a command; what is typed about the crowd means the same wherever it is typed.
pub(super) fn explanation(command: &str, arg: &str) -> String {
    let of_crowd = CROWD.contains(&command) && crowd::NAMES.contains(&arg);
    if of_crowd { format!("help-crowd-{arg}") } else { format!("{command}-{arg}") }
}

/// An argument with its help, its heading and the names of its values in the words' language.
fn explained(arg: Arg, id: &str, words: &Words) -> Arg {
    let own = arg.get_id().as_str().replace('_', "-");
    let mut help = words.say(&explanation(id, &own), &[]);
    if arg.get_action().takes_values() {
        let joined = |values: Vec<String>| values.join(", ");
        let usual =
            joined(arg.get_default_values().iter().map(|value| value.to_string_lossy().into()).collect());
        let possible =
            joined(arg.get_possible_values().iter().map(|value| value.get_name().to_owned()).collect());
        for (id, values) in [("help-default", usual), ("help-possible", possible)] {
            if !values.is_empty() {
                help = words.say(id, &[("help", help.into()), ("values", values.into())]);
            }
        }
    }
    let named: Option<Vec<String>> = arg
        .get_value_names()
        .filter(|_| arg.get_action().takes_values())
        .map(|names| names.iter().map(|name| value_name(name, words)).collect());
    let heading =
        words.say(if arg.is_positional() { "help-heading-arguments" } else { "help-heading-options" }, &[]);
    let arg = arg.help(help).help_heading(heading).hide_default_value(true).hide_possible_values(true);
    let arg = if own == "language" { arg.display_order(LAST) } else { arg };
    match named {
        Some(named) => arg.value_names(named),
        None => arg,
    }
}

/// `FOLDER` in the words' language.
fn value_name(name: &str, words: &Words) -> String {
    words.say(&format!("help-value-{}", name.to_lowercase()), &[])
}

fn flag(name: &'static str, short: char, action: ArgAction, order: usize, words: &Words) -> Arg {
    let heading = words.say("help-heading-options", &[]);
    let help = words.say(if name == "help" { "help-help" } else { "help-version" }, &[]);
    Arg::new(name)
        .short(short)
        .long(name)
        .action(action)
        .display_order(order)
        .help(help)
        .help_heading(heading)
}

/// What can be typed, as one line.
fn usage(command: &Command, path: &str, words: &Words) -> String {
    let rendered = command.clone().bin_name(path).render_usage().to_string();
    let line = rendered.split_once(": ").map_or(rendered.as_str(), |(_, line)| line);
    line.replace("[OPTIONS]", &format!("[{}]", words.say("help-value-options", &[])))
}
