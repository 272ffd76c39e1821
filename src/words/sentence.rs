//! A message id with arguments, not yet rendered in a language: it waits for a language.

use std::path::Path;

use super::{FluentValue, Words};

/// An id of the words files with its arguments, in no language yet.
///
/// ```
/// use everysquare::words::{Sentence, Words};
/// let sentence = Sentence::new("print-card-row").with("name", "7");
/// assert_eq!(sentence.tell(&Words::english()), "row 7 · goes left of this row");
/// ```
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Sentence(Kind);

#[derive(Clone, Debug, PartialEq, Eq)]
enum Kind {
    Words { id: &'static str, with: Vec<(&'static str, Argument)> },
    Given(String),
}

/// What is filled in.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Argument {
    /// A text, or a number that no word of the sentence depends on.
    Text(String),
    /// A count: words that follow it may depend on it.
    Count(usize),
    /// A part of the sentence that has words of its own.
    Part(Sentence),
}

impl Sentence {
    /// The sentence `id`, with nothing filled in.
    #[must_use]
    pub fn new(id: &'static str) -> Self {
        Self(Kind::Words { id, with: Vec::new() })
    }

    /// A text that is the same in every language: what was typed, a name, what the system said.
    #[must_use]
    pub fn given(text: impl Into<String>) -> Self {
        Self(Kind::Given(text.into()))
    }

    /// The sentence with one more argument.
    #[must_use]
    pub fn with(mut self, name: &'static str, value: impl Into<Argument>) -> Self {
        if let Kind::Words { with, .. } = &mut self.0 {
            with.push((name, value.into()));
        }
        self
    }

    /// The sentence in a language.
    #[must_use]
    pub fn tell(&self, words: &Words) -> String {
        match &self.0 {
            Kind::Given(text) => text.clone(),
            Kind::Words { id, with } => {
                let filled: Vec<(&str, FluentValue<'_>)> =
                    with.iter().map(|(name, value)| (*name, value.told(words))).collect();
                words.say(id, &filled)
            }
        }
    }
}

impl Argument {
    fn told(&self, words: &Words) -> FluentValue<'static> {
        match self {
            Self::Text(text) => text.clone().into(),
            Self::Count(count) => FluentValue::from(*count),
            Self::Part(sentence) => sentence.tell(words).into(),
        }
    }
}

impl From<&str> for Argument {
    fn from(text: &str) -> Self {
        Self::Text(text.to_owned())
    }
}

impl From<String> for Argument {
    fn from(text: String) -> Self {
        Self::Text(text)
    }
}

impl From<&Path> for Argument {
    fn from(path: &Path) -> Self {
        Self::Text(path.display().to_string())
    }
}

impl From<usize> for Argument {
    fn from(count: usize) -> Self {
        Self::Count(count)
    }
}

impl From<u32> for Argument {
    fn from(number: u32) -> Self {
        Self::Text(number.to_string())
    }
}

impl From<f64> for Argument {
    fn from(number: f64) -> Self {
        Self::Text(number.to_string())
    }
}

impl From<Sentence> for Argument {
    fn from(part: Sentence) -> Self {
        Self::Part(part)
    }
}

/// What can be told to a person, in her language. Every error that somebody may see can.
pub trait Tell {
    /// What is to be told, in no language yet.
    fn sentence(&self) -> Sentence;

    /// It in a language.
    fn tell(&self, words: &Words) -> String {
        self.sentence().tell(words)
    }
}

impl Tell for Sentence {
    fn sentence(&self) -> Sentence {
        self.clone()
    }
}

/// Several choices as a sentence lists them: `letter, tabloid, a4 or a3`.
///
/// ```
/// use everysquare::words::{Words, one_of};
/// assert_eq!(one_of(&["a4", "a3", "letter"]).tell(&Words::english()), "a4, a3 or letter");
/// assert_eq!(one_of(&["mm"]).tell(&Words::english()), "mm");
/// ```
#[must_use]
pub fn one_of(choices: &[&str]) -> Sentence {
    match choices.split_last() {
        None => Sentence::given(""),
        Some((last, [])) => Sentence::given(*last),
        Some((last, before)) => {
            Sentence::new("words-one-of").with("before", before.join(", ")).with("last", *last)
        }
    }
}

/// Gives errors that can be told a `Display` that tells them in English.
macro_rules! told_in_english {
    ($($error:ty),+) => {$(
        impl std::fmt::Display for $error {
            fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
                f.write_str(&$crate::words::in_english(self))
            }
        }
    )+};
}
pub(crate) use told_in_english;
