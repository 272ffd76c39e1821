//! An error as the person at the keyboard meets it: one sentence.

use std::error::Error;
use std::fmt;
use std::path::Path;

/// One sentence with what was seen and what to do. Any error of the library becomes one with `?`.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct CliError {
    sentence: String,
}

impl CliError {
    /// The sentence itself.
    #[must_use]
    pub fn new(sentence: impl Into<String>) -> Self {
        Self { sentence: sentence.into() }
    }

    /// An error with the file it is about named first.
    #[must_use]
    pub fn about(path: &Path, error: &dyn Error) -> Self {
        Self::new(format!("{}: {error}", path.display()))
    }
}

impl fmt::Display for CliError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.sentence)
    }
}

// `CliError` itself is no `Error`: that is what makes room for this.
impl<E: Error> From<E> for CliError {
    fn from(error: E) -> Self {
        Self::new(error.to_string())
    }
}
