//! Why an event.toml is refused.

use std::ops::Range;

use thiserror::Error;

/// An event.toml that is refused: where, what was read, what is allowed.
#[derive(Clone, Debug, Error, PartialEq, Eq)]
pub enum SettingsError {
    /// No TOML.
    #[error("event.toml, line {line}: {message}")]
    Syntax {
        /// From 1.
        line: usize,
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

/// The line, from 1, on which a byte of `text` lies.
pub(super) fn line_of(text: &str, span: Option<Range<usize>>) -> usize {
    let before = span.map_or(0, |span| span.start.min(text.len()));
    1 + text.as_bytes()[..before].iter().filter(|byte| **byte == b'\n').count()
}
