//! Settings that are one word out of a few.

use super::{Corner, Flip, Join, Language, Paper, Units};
use crate::plan::cell::RowsFrom;
use crate::plan::level::Level;
use crate::words::{Sentence, one_of};

/// A setting that is one word out of a few.
///
/// ```
/// use everysquare::plan::settings::{Choice, Paper};
/// use everysquare::words::Words;
/// assert_eq!(Paper::named("a4"), Some(Paper::A4));
/// assert_eq!(Paper::Tabloid.word(), "tabloid");
/// assert_eq!(Paper::listed().tell(&Words::english()), "letter, tabloid, a4 or a3");
/// ```
pub trait Choice: Copy + PartialEq + 'static {
    /// Every choice with its word, in the order in which they are named to people.
    const ALL: &'static [(Self, &'static str)];

    /// The choice that a word means.
    #[must_use]
    fn named(word: &str) -> Option<Self> {
        Self::ALL.iter().find(|(_, own)| *own == word).map(|(choice, _)| *choice)
    }

    /// Its word.
    #[must_use]
    fn word(self) -> &'static str {
        Self::ALL.iter().find(|(choice, _)| *choice == self).map_or("", |(_, word)| word)
    }

    /// All words, as a sentence lists them.
    #[must_use]
    fn listed() -> Sentence {
        let words: Vec<&str> = Self::ALL.iter().map(|(_, word)| *word).collect();
        one_of(&words)
    }
}

impl Choice for Corner {
    const ALL: &'static [(Self, &'static str)] = &[
        (Self::BottomRight, "bottom-right"),
        (Self::BottomLeft, "bottom-left"),
        (Self::TopRight, "top-right"),
        (Self::TopLeft, "top-left"),
    ];
}

impl Choice for Paper {
    const ALL: &'static [(Self, &'static str)] =
        &[(Self::Letter, "letter"), (Self::Tabloid, "tabloid"), (Self::A4, "a4"), (Self::A3, "a3")];
}

impl Choice for Flip {
    const ALL: &'static [(Self, &'static str)] =
        &[(Self::LongEdge, "long-edge"), (Self::ShortEdge, "short-edge"), (Self::None, "none")];
}

impl Choice for Join {
    const ALL: &'static [(Self, &'static str)] = &[(Self::Apart, "apart"), (Self::Beside, "beside")];
}

impl Choice for Units {
    const ALL: &'static [(Self, &'static str)] = &[(Self::Inch, "inch"), (Self::Mm, "mm")];
}

impl Choice for RowsFrom {
    const ALL: &'static [(Self, &'static str)] = &[(Self::Bottom, "bottom"), (Self::Top, "top")];
}

impl Choice for Language {
    const ALL: &'static [(Self, &'static str)] =
        &[(Self::English, "en"), (Self::BritishEnglish, "en-GB"), (Self::Spanish, "es")];

    /// The language of a tag, written as BCP 47 has it or as systems do: `en-GB`, `en_gb`. `en-US` is plain English.
    fn named(word: &str) -> Option<Self> {
        let tag = word.replace('_', "-");
        if tag.eq_ignore_ascii_case("en-US") {
            return Some(Self::English);
        }
        Self::ALL.iter().find(|(_, own)| own.eq_ignore_ascii_case(&tag)).map(|(language, _)| *language)
    }
}

impl Choice for Level {
    const ALL: &'static [(Self, &'static str)] =
        &[(Self::Plain, "plain"), (Self::Easy, "easy"), (Self::Medium, "medium"), (Self::Hard, "hard")];
}
