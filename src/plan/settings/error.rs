//! Why an event.toml is refused.

use std::ops::Range;

use thiserror::Error;
use toml_edit::TomlError;

/// An event.toml that is refused: where, what was read, what is allowed.
#[derive(Clone, Debug, Error, PartialEq, Eq)]
pub enum SettingsError {
    /// No TOML.
    #[error("event.toml, line {line}: {read}: {message}")]
    Syntax {
        /// From 1.
        line: usize,
        /// The line as it stands there.
        read: String,
        /// What the parser says.
        message: String,
    },
    /// A value of the wrong kind or out of range.
    #[error("event.toml, line {line}: {read}: {allowed}")]
    Refused {
        /// From 1.
        line: usize,
        /// The setting as it stands there.
        read: String,
        /// What may stand there.
        allowed: String,
    },
    /// A name that means nothing here.
    #[error("event.toml, line {line}: {read} is not a setting{}: {hint}", within(.section))]
    Unknown {
        /// From 1.
        line: usize,
        /// The name as it stands there.
        read: String,
        /// The table it stands in; empty for the top of the file.
        section: String,
        /// What may be meant.
        hint: String,
    },
    /// A setting that has no usual value is left out.
    #[error("event.toml has no {name}: add {example}")]
    Missing {
        /// What is missing.
        name: String,
        /// What to write, for instance.
        example: String,
    },
    /// A change asked for a setting that does not exist.
    #[error("{0} is not a setting of event.toml")]
    NoSuchSetting(String),
}

fn within(section: &str) -> String {
    if section.is_empty() { String::new() } else { format!(" of [{section}]") }
}

/// What is wrong with a text that is no TOML, in an organiser's words where the parser's are not.
pub(super) fn syntax(text: &str, error: &TomlError) -> SettingsError {
    let line = line_of(text, error.span());
    let read = text.lines().nth(line - 1).map(|line| shortened(line.trim())).filter(|line| !line.is_empty());
    let message = match error.message() {
        said if said.contains("duplicate key") => "this name stands here twice: keep one of them".to_owned(),
        said if said.contains("must be quoted") => "a text must stand in quotes, such as \"a4\"".to_owned(),
        said => format!("this is not TOML: {}", said.replace('\n', ", ")),
    };
    SettingsError::Syntax { line, read: read.unwrap_or_else(|| "an empty line".to_owned()), message }
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
