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
    pub fn new(sentence: impl Into<Sentence>) -> Self {
        Self { sentence: sentence.into() }
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
        Self::new(sentences.join("\n             "))
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

macro_rules! told {
    ($($error:ty),+ $(,)?) => {$(
        impl From<$error> for CliError {
            fn from(error: $error) -> Self {
                Self::new(error.sentence())
            }
        }
    )+};
}

told!(
    crate::plan::folder::FolderError,
    crate::plan::settings::SettingsError,
    crate::plan::manifest::ManifestError,
    crate::plan::code::CodeError,
    crate::words::WordsError,
    crate::photo::PhotoError,
    crate::read::ReadError,
    crate::rehearse::RehearseError,
    crate::display::JpegError,
    crate::print::TemplateError,
    crate::print::PrintError,
);

macro_rules! in_english {
    ($($error:ty),+ $(,)?) => {$(
        impl From<$error> for CliError {
            fn from(error: $error) -> Self {
                Self::new(error.to_string())
            }
        }
    )+};
}

in_english!(
    crate::picture::PictureError,
    crate::picture::grid::GridError,
    crate::picture::ReduceError,
    serde_json::Error,
    std::io::Error,
);
