//! An error as the person at the keyboard meets it: one sentence.

use std::fmt;
use std::path::Path;

use crate::words::{Sentence, Tell, Words, in_english};

/// One sentence with what was seen and what to do. Any error of the library becomes one with `?`.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct CliError {
    sentence: Sentence,
}

impl CliError {
    /// The sentence itself.
    #[must_use]
    pub fn new(sentence: Sentence) -> Self {
        Self { sentence }
    }

    /// An error with the file it is about named first.
    #[must_use]
    pub fn about(path: &Path, error: impl Into<Self>) -> Self {
        Self::new(Sentence::new("error-about").with("path", path).with("what", error.into().sentence))
    }

    /// Several errors, each on a line of its own.
    #[must_use]
    pub fn all(errors: &[Self], words: &Words) -> Self {
        let sentences: Vec<String> = errors.iter().map(|error| error.sentence.tell(words)).collect();
        Self::new(Sentence::given(sentences.join("\n             ")))
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

// `CliError` itself cannot be told: that is what makes room for this.
impl<E: Tell> From<E> for CliError {
    fn from(error: E) -> Self {
        Self::new(error.sentence())
    }
}

/// What a file that the program itself wrote holds is no JSON of that kind, or cannot be written as such.
impl Tell for serde_json::Error {
    fn sentence(&self) -> Sentence {
        Sentence::new("error-json").with("said", self.to_string())
    }
}

/// What the system says, in its own words.
impl Tell for std::io::Error {
    fn sentence(&self) -> Sentence {
        Sentence::new("error-system").with("said", self.to_string())
    }
}
