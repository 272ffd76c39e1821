//! Every sentence that is shown or printed, one Fluent file a language.
//!
//! ```
//! use everysquare::words::Words;
//! let words = Words::english();
//! assert_eq!(words.say("state-right", &[]), "right");
//! ```

pub use fluent_bundle::FluentValue;
use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource};
use unic_langid::langid;

const ENGLISH: &str = include_str!("en.ftl");

/// The sentences of one language.
pub struct Words {
    bundle: FluentBundle<FluentResource>,
}

impl Words {
    /// English.
    #[must_use]
    pub fn english() -> Self {
        let mut bundle = FluentBundle::new_concurrent(vec![langid!("en")]);
        bundle.set_use_isolating(false);
        let resource = match FluentResource::try_new(ENGLISH.to_owned()) {
            Ok(resource) | Err((resource, _)) => resource, // a test reads the file without errors
        };
        bundle.add_resource_overriding(resource);
        Self { bundle }
    }

    /// The sentence `id` with its arguments filled in. A word that is missing shows as its own id, in brackets.
    #[must_use]
    pub fn say(&self, id: &str, arguments: &[(&str, FluentValue<'_>)]) -> String {
        let Some(pattern) = self.bundle.get_message(id).and_then(|message| message.value()) else {
            return format!("[{id}]");
        };
        let mut filled = FluentArgs::new();
        for (name, value) in arguments {
            filled.set(*name, value.clone());
        }
        let mut errors = Vec::new();
        self.bundle.format_pattern(pattern, Some(&filled), &mut errors).into_owned()
    }
}

impl std::fmt::Debug for Words {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str("Words")
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_file_is_read_without_errors() {
        assert!(FluentResource::try_new(ENGLISH.to_owned()).is_ok());
    }
}
