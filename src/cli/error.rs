//! An error as the person at the keyboard meets it: one sentence.

use std::error::Error;
use std::fmt;
use std::path::Path;

use crate::words::{Sentence, Words, in_english};

/// One sentence with what was seen and what to do. Any error of the library becomes one with `?`.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct CliError {
    sentence: Sentence,
}

impl CliError {
    /// The sentence itself.
    #[must_use]
    pub fn new(sentence: impl Into<Sentence>) -> Self {
        Self { sentence: sentence.into() }
    }

    /// An error with the file it is about named first.
    #[must_use]
    pub fn about(path: &Path, error: &dyn Error) -> Self {
        Self::new(Sentence::new("error-about").with("path", path).with("what", error.to_string()))
    }

    /// The line that the program complains with.
    #[must_use]
    pub fn line(&self, words: &Words) -> String {
        words.say("error-line", &[("what", self.sentence.tell(words).into())])
    }
}

impl fmt::Display for CliError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&in_english(&self.sentence))
    }
}

// `CliError` itself is no `Error`: that is what makes room for this.
impl<E: Error> From<E> for CliError {
    fn from(error: E) -> Self {
        Self::new(error.to_string())
    }
}
