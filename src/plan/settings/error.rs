//! Why an event.toml is refused.

use std::ops::Range;

use thiserror::Error;
use toml_edit::TomlError;

use crate::words::{Sentence, Tell, told_in_english};

/// An event.toml that is refused: where, what was read, what is allowed.
#[derive(Clone, Debug, Error, PartialEq, Eq)]
pub enum SettingsError {
    /// No TOML.
    Syntax {
        /// From 1.
        line: usize,
        /// The line as it stands there; nothing for an empty line.
        read: String,
        /// What is wrong there.
        message: Sentence,
    },
    /// A value of the wrong kind or out of range.
    Refused {
        /// From 1.
        line: usize,
        /// The setting as it stands there.
        read: String,
        /// What may stand there.
        allowed: Sentence,
    },
    /// A name that means nothing here.
    Unknown {
        /// From 1.
        line: usize,
        /// The name as it stands there.
        read: String,
        /// The table it stands in; empty for the top of the file.
        section: String,
        /// What may be meant.
        hint: Sentence,
    },
    /// A setting that has no usual value is left out.
    Missing {
        /// What is missing.
        name: Sentence,
        /// What to write, for instance.
        example: Sentence,
    },
    /// A change asked for a setting that does not exist.
    NoSuchSetting(String),
}

told_in_english!(SettingsError);

impl Tell for SettingsError {
    fn sentence(&self) -> Sentence {
        let at = |line: &usize, read: &str, what: Sentence| {
            Sentence::new("error-settings-at")
                .with("line", line.to_string())
                .with("read", read)
                .with("what", what)
        };
        match self {
            Self::Syntax { line, read, message } if read.is_empty() => {
                Sentence::new("error-settings-at-empty")
                    .with("line", line.to_string())
                    .with("what", message.clone())
            }
            Self::Syntax { line, read, message } => at(line, read, message.clone()),
            Self::Refused { line, read, allowed } => at(line, read, allowed.clone()),
            Self::Unknown { line, read, section, hint } => {
                let id = match section.as_str() {
                    "" => "error-settings-unknown",
                    _ => "error-settings-unknown-in",
                };
                Sentence::new(id)
                    .with("line", line.to_string())
                    .with("read", read.as_str())
                    .with("section", section.as_str())
                    .with("hint", hint.clone())
            }
            Self::Missing { name, example } => Sentence::new("error-settings-missing")
                .with("name", name.clone())
                .with("example", example.clone()),
            Self::NoSuchSetting(name) => Sentence::new("error-settings-no-such").with("name", name.as_str()),
        }
    }
}

/// What is wrong with a text that is no TOML, in an organiser's words where the parser's are not.
pub(super) fn syntax(text: &str, error: &TomlError) -> SettingsError {
    let line = line_of(text, error.span());
    let read = text.lines().nth(line - 1).map(|line| shortened(line.trim())).unwrap_or_default();
    let message = match error.message() {
        said if said.contains("duplicate key") => Sentence::new("error-settings-twice"),
        said if said.contains("must be quoted") => Sentence::new("error-settings-quotes"),
        said => Sentence::new("error-settings-no-toml").with("said", said.replace('\n', ", ")),
    };
    SettingsError::Syntax { line, read, message }
}

/// Characters of a value that a message repeats.
const SHOWN: usize = 60;

/// At most [`SHOWN`] characters of a text, on one line.
pub(super) fn shortened(text: &str) -> String {
    let plain = |c: char| if c.is_control() { ' ' } else { c };
    if text.chars().count() <= SHOWN {
        text.chars().map(plain).collect()
    } else {
        text.chars().take(SHOWN).map(plain).chain(std::iter::once('…')).collect()
    }
}

/// The line, from 1, on which a byte of `text` lies.
pub(super) fn line_of(text: &str, span: Option<Range<usize>>) -> usize {
    let before = span.map_or(0, |span| span.start.min(text.len()));
    1 + text.as_bytes()[..before].iter().filter(|byte| **byte == b'\n').count()
}

pub(super) fn missing(name: Sentence, example: Sentence) -> SettingsError {
    SettingsError::Missing { name, example }
}
