//! Every sentence that is shown or printed, one Fluent file a language.
//!
//! ```text
//!   en.ftl ─┐                          ┌─▶ say(id, arguments)     what a person reads
//!   es.ftl ─┼─▶ Words::of("es") ─▶ Words ─▶ tell(&Sentence)       the same for a sentence that was thought of elsewhere
//!   words.ftl of an event ─▶ with_overrides ─┘
//! ```
//!
//! A word that a language lacks is said in English; `tests/house/words/mod.rs` keeps that from happening with the files that come with the
//! program. An event may bring words of its own, which take the place of single sentences: [`Words::with_overrides`].
//!
//! What the library has to say about an error is a [`Sentence`]: an id and its arguments, in no language yet. [`Tell`] makes
//! one of an error, and whoever shows it chooses the language.
//!
//! ```
//! use everysquare::words::{Sentence, Words};
//! let (english, spanish) = (Words::of("en"), Words::of("es"));
//! assert_eq!(english.say("legend-right", &[]), "right spot");
//! assert_eq!(spanish.say("legend-right", &[]), "en su lugar");
//!
//! let squares = Sentence::new("new-squares").with("count", 1_usize);
//! assert_eq!((squares.tell(&english), squares.tell(&spanish)), ("1 square".to_owned(), "1 cuadro".to_owned()));
//! ```
//!
//! Numbers are written the same way in both languages, with a decimal point: that is the usual in the USA and in Mexico, and
//! rulers, files and what is typed have points as well.

mod former;
mod near;
mod own;
mod sentence;
mod typed;
mod variant;

use std::sync::LazyLock;

pub use fluent_bundle::FluentValue;
use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource};
use unic_langid::{LanguageIdentifier, langid};

pub use near::nearest;
pub use own::WordsError;
pub(crate) use sentence::told_in_english;
pub use sentence::{Argument, Sentence, Tell, one_of};
pub use typed::as_typed;
pub use variant::whole;

/// The languages that come with the program: code (ISO 639-1) and words. The first has every word.
pub const LANGUAGES: [(&str, &str); 2] = [("en", include_str!("en.ftl")), ("es", include_str!("es.ftl"))];

/// Languages that say only what differs from another one: code (BCP 47), the other one's code, and the sentences that differ.
pub const VARIANTS: [(&str, &str, &str); 1] = [("en-GB", "en", include_str!("en-GB.ftl"))];

static ENGLISH: LazyLock<Words> = LazyLock::new(Words::english);

/// The sentences of one language.
pub struct Words {
    language: &'static str,
    /// The words of the language first, then those that it is a variant of, then English, where it is another.
    bundles: Vec<FluentBundle<FluentResource>>,
}

impl Words {
    /// English.
    #[must_use]
    pub fn english() -> Self {
        Self::of(LANGUAGES[0].0)
    }

    /// The language of a code such as `es` or `en-GB`; English where there are no words for it.
    #[must_use]
    pub fn of(code: &str) -> Self {
        let variant = VARIANTS.iter().find(|(own, ..)| *own == code);
        let code = variant.map_or(code, |(_, other, _)| *other);
        let at = LANGUAGES.iter().position(|(own, _)| *own == code).unwrap_or(0);
        let mut bundles: Vec<_> = variant.iter().map(|(own, _, text)| bundle((own, text))).collect();
        bundles.push(bundle(LANGUAGES[at]));
        if at != 0 {
            bundles.push(bundle(LANGUAGES[0]));
        }
        Self { language: variant.map_or(LANGUAGES[at].0, |(own, ..)| own), bundles }
    }

    /// The code of the language.
    #[must_use]
    pub fn language(&self) -> &'static str {
        self.language
    }

    /// The sentence `id` with its arguments filled in. A word that is missing shows as its own id, in brackets.
    #[must_use]
    pub fn say(&self, id: &str, arguments: &[(&str, FluentValue<'_>)]) -> String {
        let mut filled = FluentArgs::new();
        for (name, value) in arguments {
            filled.set(*name, value.clone());
        }
        for bundle in &self.bundles {
            if let Some(pattern) = bundle.get_message(id).and_then(|message| message.value()) {
                return bundle.format_pattern(pattern, Some(&filled), &mut Vec::new()).into_owned();
            }
        }
        format!("[{id}]")
    }

    /// These words with single ones replaced by an event's own, written as in the files of the program: `print-squares =
    /// Blank squares`. A sentence may leave out what the program fills in, and may not ask for anything else.
    ///
    /// # Errors
    /// [`WordsError`] with the line of what is no such file, is unknown, stands there twice, or asks for what the program does
    /// not fill in.
    pub fn with_overrides(mut self, text: &str) -> Result<Self, WordsError> {
        let own = own::checked(text)?;
        if let Some(bundle) = self.bundles.first_mut() {
            bundle.add_resource_overriding(own);
        }
        Ok(self)
    }
}

/// The English sentence of anything that can be told.
#[must_use]
pub fn in_english(what: &dyn Tell) -> String {
    what.tell(&ENGLISH)
}

fn bundle((code, text): (&str, &str)) -> FluentBundle<FluentResource> {
    let language: LanguageIdentifier = code.parse().unwrap_or(langid!("en"));
    let mut bundle = FluentBundle::new_concurrent(vec![language]);
    bundle.set_use_isolating(false);
    bundle.add_resource_overriding(resource(text));
    bundle
}

/// A file's sentences; those that cannot be read are left out. A test reads the program's own without errors.
fn resource(text: &str) -> FluentResource {
    match FluentResource::try_new(text.to_owned()) {
        Ok(resource) | Err((resource, _)) => resource,
    }
}

impl std::fmt::Debug for Words {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("Words").field("language", &self.language).finish_non_exhaustive()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_language_that_nobody_wrote_is_english() {
        assert_eq!(Words::of("xx").language(), "en");
        assert_eq!(Words::of("xx").say("legend-right", &[]), "right spot");
    }

    #[test]
    fn a_word_that_nobody_wrote_shows_its_id() {
        assert_eq!(Words::of("es").say("no-such-word", &[]), "[no-such-word]");
    }

    #[test]
    fn what_spanish_lacks_is_said_in_english() {
        let lacking = Words { language: "es", bundles: vec![bundle(("es", "")), bundle(LANGUAGES[0])] };
        assert_eq!(lacking.say("legend-right", &[]), "right spot");
    }
}
