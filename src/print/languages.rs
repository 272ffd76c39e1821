//! The languages of what visitors read and take home: the event's own and, below it, the second one.

use super::Sources;
use crate::plan::settings::Choice;
use crate::words::{FluentValue, Words};

/// The event's words and, where it has a second language, those.
pub(super) struct Languages<'a> {
    own: &'a Words,
    /// Words of the second language.
    pub second: Option<Words>,
}

impl<'a> Languages<'a> {
    /// Those of an event.
    pub fn of(sources: &Sources<'a>) -> Self {
        let second = sources.settings.second_language;
        Self { own: sources.words, second: second.map(|language| Words::of(language.word())) }
    }

    /// The event's own words first.
    pub fn each(&self) -> impl Iterator<Item = &Words> {
        std::iter::once(self.own).chain(&self.second)
    }

    /// A sentence in each language.
    pub fn say(&self, id: &str, arguments: &[(&str, FluentValue<'_>)]) -> Vec<String> {
        self.each().map(|words| words.say(id, arguments)).collect()
    }
}
