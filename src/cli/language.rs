//! Which language is spoken: what event.toml says on everything that has a folder; before that, what was typed or what the
//! system speaks.
//!
//! ```text
//!   the system: LC_ALL, LC_MESSAGES, LANG ─▶ --language ─▶ event.toml of the folder ─▶ its templates/words.ftl
//! ```

use std::ffi::OsString;
use std::path::Path;

use super::{CliError, Console};
use crate::plan::Folder;
use crate::plan::settings::{Choice, Language};
use crate::words::Words;

/// Where a system says which language it speaks: the first that is set rules (POSIX.1-2017, 8.2).
const VARIABLES: [&str; 3] = ["LC_ALL", "LC_MESSAGES", "LANG"];

/// The language that the system speaks.
pub(super) fn of_environment() -> Language {
    of_locale(|name| std::env::var(name).ok())
}

fn of_locale(variable: impl Fn(&str) -> Option<String>) -> Language {
    let locale = VARIABLES.iter().filter_map(|name| variable(name)).find(|value| !value.is_empty());
    let locale = locale.unwrap_or_default();
    let tag = locale.split(['.', '@']).next().unwrap_or_default();
    let code = tag.split(|c: char| !c.is_ascii_alphabetic()).next().unwrap_or_default();
    Language::named(tag).or_else(|| Language::named(code)).unwrap_or_default()
}

/// The language typed with `--language`, looked for before anything else is understood: help and mistakes are told in it.
pub(super) fn typed(argv: &[OsString]) -> Option<Language> {
    let words: Vec<&str> = argv.iter().filter_map(|word| word.to_str()).collect();
    let after = words.iter().position(|word| *word == "--language").and_then(|at| words.get(at + 1));
    let joined = words.iter().find_map(|word| word.strip_prefix("--language="));
    joined.or(after.copied()).and_then(Language::named)
}

/// Lets the console speak as the event of a folder wants: its language and its own words.
pub(super) fn speak_for(folder: &Path, console: &mut Console) -> Result<(), CliError> {
    let folder = Folder::at(folder);
    if let Some(language) = folder.language() {
        console.speak(Words::of(language.word()));
    }
    let words = words_for(&folder, console.words())?;
    console.speak(words);
    Ok(())
}

/// The words of a language as a folder has them: with its own in their place.
pub(super) fn words_for(folder: &Folder, spoken: &Words) -> Result<Words, CliError> {
    let words = Words::of(spoken.language());
    Ok(match folder.own_words()? {
        Some(own) => words.with_overrides(&own)?,
        None => words,
    })
}

/// A language as it is typed.
pub(super) fn named(text: &str) -> Result<Language, super::mistyped::Refused> {
    Language::named(text).ok_or_else(super::mistyped::Refused::choice::<Language>)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_first_variable_that_is_set_rules() {
        let said = |set: &[(&str, &str)]| {
            of_locale(|name| set.iter().find(|(own, _)| *own == name).map(|(_, value)| (*value).to_owned()))
        };
        assert_eq!(said(&[]), Language::English);
        assert_eq!(said(&[("LANG", "es_MX.UTF-8")]), Language::Spanish);
        assert_eq!(said(&[("LANG", "ES-419")]), Language::Spanish);
        assert_eq!(said(&[("LANG", "est")]), Language::English);
        assert_eq!(said(&[("LANG", "en_GB.UTF-8")]), Language::BritishEnglish);
        assert_eq!(said(&[("LANG", "en_GB@euro")]), Language::BritishEnglish);
        assert_eq!(said(&[("LANG", "en_US.UTF-8")]), Language::English);
        assert_eq!(said(&[("LANG", "en_AU.UTF-8")]), Language::English);
        assert_eq!(said(&[("LANG", "es_ES"), ("LC_ALL", "C.UTF-8")]), Language::English);
        assert_eq!(said(&[("LANG", "es_ES"), ("LC_ALL", "")]), Language::Spanish);
        assert_eq!(said(&[("LC_MESSAGES", "es"), ("LANG", "en_US")]), Language::Spanish);
    }

    #[test]
    fn a_typed_language_is_seen_wherever_it_stands() {
        let seen = |line: &str| typed(&line.split(' ').map(OsString::from).collect::<Vec<_>>());
        assert_eq!(seen("everysquare --language es new"), Some(Language::Spanish));
        assert_eq!(seen("everysquare new x --language=es --help"), Some(Language::Spanish));
        assert_eq!(seen("everysquare new x --language"), None);
        assert_eq!(seen("everysquare new x --language xx"), None);
    }
}
