//! What is said to somebody who mistyped: one sentence with what was seen and what can be typed.
//!
//! clap finds the mistake and says which kind it is; the sentence is ours, so that it comes in every language of the words.

use std::convert::Infallible;
use std::error::Error;
use std::fmt::Display;
use std::num::{ParseFloatError, ParseIntError};
use std::ops::RangeInclusive;
use std::str::FromStr;

use clap::error::{ContextKind, ContextValue, ErrorKind};

use crate::plan::settings::Choice;
use crate::words::{Sentence, Tell, Words, one_of, told_in_english};

/// A value that an option does not take: what it does take.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Refused(Sentence);

told_in_english!(Refused);

impl Error for Refused {}

impl Tell for Refused {
    fn sentence(&self) -> Sentence {
        self.0.clone()
    }
}

impl Refused {
    /// Says what is allowed.
    pub fn new(allowed: Sentence) -> Self {
        Self(allowed)
    }

    /// One word out of a few is allowed.
    pub fn choice<T: Choice>() -> Self {
        Self(Sentence::new("typed-choice").with("choices", T::listed()))
    }
}

/// The name of a document, which may be typed as its file is called.
///
/// # Errors
/// None.
pub(super) fn document(typed: &str) -> Result<String, Infallible> {
    Ok(typed.strip_suffix(".pdf").unwrap_or(typed).to_owned())
}

/// A number within `range`; `id` is the sentence that says what is allowed.
pub(super) fn within<T>(id: &'static str, text: &str, range: &RangeInclusive<T>) -> Result<T, Refused>
where
    T: FromStr + PartialOrd + Display,
{
    let (least, most) = (range.start().to_string(), range.end().to_string());
    let allowed = Sentence::new(id).with("least", least).with("most", most);
    text.parse().ok().filter(|value| range.contains(value)).ok_or(Refused(allowed))
}

/// The whole line about a mistake, or the help where nothing was typed.
pub(super) fn told(error: &clap::Error, words: &Words) -> String {
    if error.kind() == ErrorKind::DisplayHelpOnMissingArgumentOrSubcommand {
        return error.render().to_string().trim_end().to_owned();
    }
    Sentence::new("typed-wrong").with("what", sentence(error)).tell(words)
}

/// What was wrong; clap's own sentence for kinds that nothing here can cause.
fn sentence(error: &clap::Error) -> Sentence {
    let text = |kind| match error.get(kind) {
        Some(ContextValue::String(text)) => text.as_str(),
        _ => "",
    };
    let (arg, value) = (text(ContextKind::InvalidArg), text(ContextKind::InvalidValue));
    let about = |id| Sentence::new(id).with("arg", arg).with("value", value);
    match error.kind() {
        ErrorKind::UnknownArgument => unknown(arg, error),
        ErrorKind::InvalidSubcommand => command(text(ContextKind::InvalidSubcommand), error),
        ErrorKind::InvalidValue if value.is_empty() => about("typed-no-value"),
        ErrorKind::InvalidValue | ErrorKind::ValueValidation => about("typed-value").with("why", why(error)),
        ErrorKind::TooManyValues => about("typed-too-many"),
        ErrorKind::ArgumentConflict => conflict(arg, error),
        ErrorKind::MissingRequiredArgument => {
            Sentence::new("typed-missing").with("args", listed(error, ContextKind::InvalidArg))
        }
        ErrorKind::InvalidUtf8 => Sentence::new("typed-not-text"),
        _ => Sentence::given(clap_says(error)),
    }
}

fn unknown(arg: &str, error: &clap::Error) -> Sentence {
    let near = listed(error, ContextKind::SuggestedArg);
    let id = match (near.as_str(), arg.starts_with('-')) {
        ("", true) => "typed-unknown",
        ("", false) => "typed-one-too-many",
        _ => return Sentence::new("typed-unknown-near").with("arg", arg).with("near", near),
    };
    Sentence::new(id).with("arg", arg)
}

fn command(typed: &str, error: &clap::Error) -> Sentence {
    let near = listed(error, ContextKind::SuggestedSubcommand);
    match near.as_str() {
        "" => Sentence::new("typed-no-command").with("command", typed),
        _ => Sentence::new("typed-no-command-near").with("command", typed).with("near", near),
    }
}

fn conflict(arg: &str, error: &clap::Error) -> Sentence {
    let other = listed(error, ContextKind::PriorArg);
    if other.is_empty() || other == arg {
        return Sentence::new("typed-twice").with("arg", arg);
    }
    Sentence::new("typed-conflict").with("arg", arg).with("other", other)
}

/// Why a value does not suit.
fn why(error: &clap::Error) -> Sentence {
    let possible = listed(error, ContextKind::ValidValue);
    if !possible.is_empty() {
        let possible: Vec<&str> = possible.split(", ").collect();
        return Sentence::new("typed-choice").with("choices", one_of(&possible));
    }
    match error.source() {
        Some(source) => match source.downcast_ref::<Refused>() {
            Some(refused) => refused.sentence(),
            None if source.is::<ParseIntError>() => Sentence::new("typed-whole"),
            None if source.is::<ParseFloatError>() => Sentence::new("typed-number"),
            None => Sentence::given(source.to_string()),
        },
        None => Sentence::given(clap_says(error)),
    }
}

/// What clap knows of a kind, in a row.
fn listed(error: &clap::Error, kind: ContextKind) -> String {
    match error.get(kind) {
        Some(ContextValue::String(text)) => text.clone(),
        Some(ContextValue::Strings(texts)) => texts.join(", "),
        _ => String::new(),
    }
}

/// clap's own sentence, in English, on one line.
fn clap_says(error: &clap::Error) -> String {
    let rendered = error.render().to_string();
    let sentence = rendered.split("\n\nUsage:").next().unwrap_or_default();
    let sentence = sentence.split("\n\nFor more").next().unwrap_or_default();
    let lines = sentence.trim_start_matches("error: ").lines().map(str::trim);
    lines.filter(|line| !line.is_empty()).collect::<Vec<_>>().join(" ")
}

#[cfg(test)]
mod tests {
    use std::ffi::OsString;

    use super::super::{Console, Screen, run};

    /// What the program complains of.
    fn said(line: &str) -> String {
        use std::io::Write;
        use std::sync::{Arc, Mutex};
        #[derive(Clone, Default)]
        struct Kept(Arc<Mutex<Vec<u8>>>);
        impl Write for Kept {
            fn write(&mut self, bytes: &[u8]) -> std::io::Result<usize> {
                self.0.lock().unwrap().write(bytes)
            }
            fn flush(&mut self) -> std::io::Result<()> {
                Ok(())
            }
        }
        let err = Kept::default();
        let mut console = Console::new(Box::new(std::io::sink()), Box::new(err.clone()), Screen::plain());
        assert_eq!(run(line.split(' ').map(OsString::from), &mut console), 2, "{line}");
        let text = String::from_utf8(err.0.lock().unwrap().clone()).unwrap();
        text.trim_end().to_owned()
    }

    #[test]
    fn every_kind_of_mistake_has_its_sentence_in_both_languages() {
        for (line, english, spanish) in [
            (
                "everysquare pirnt x",
                "there’s no command “pirnt”. Do you mean print?",
                "no existe el comando “pirnt”. ¿Quiso decir print?",
            ),
            ("everysquare qwertz", "there’s no command “qwertz”", "no existe el comando “qwertz”"),
            ("everysquare print x --colums 3", "there’s no option --colums", "no existe la opción --colums"),
            (
                "everysquare new x --picture p --colums 3",
                "there’s no option --colums. Do you mean --columns?",
                "no existe la opción --colums. ¿Quiso decir --columns?",
            ),
            (
                "everysquare tour a b",
                "we didn’t expect “b”. If a folder name has spaces, put it in quotes",
                "“b” está de más",
            ),
            ("everysquare check", "add <FOLDER>, <PHOTO>...", "agregue <CARPETA>, <FOTO>..."),
            (
                "everysquare new x --picture",
                "--picture <FILE> needs a value after it",
                "después de --picture <ARCHIVO> va un valor",
            ),
            (
                "everysquare new x --picture p --columns many",
                "“many” doesn’t work for --columns <N>: it must be a whole number",
                "“many” no sirve para --columns <N>: debe ser un número entero",
            ),
            (
                "everysquare rehearse x --fill much",
                "“much” doesn’t work for --fill <PART>: it must be a number",
                "“much” no sirve para --fill <PARTE>: debe ser un número",
            ),
            (
                "everysquare print x --language xx",
                "“xx” doesn’t work for --language <LANGUAGE>: use en, en-GB or es",
                "“xx” no sirve para --language <IDIOMA>: escriba en, en-GB o es",
            ),
            (
                "everysquare new x --picture p --squares 9 --rows 3",
                "use --squares <N> or --rows <N>, not both",
                "use --squares <N> o --rows <N>, no las dos a la vez",
            ),
            ("everysquare tour --language en --language en", "--language <LANGUAGE> is there twice", ""),
        ] {
            let told = said(line);
            let ending = " (type “everysquare --help” to see what you can type)";
            assert_eq!(told, format!("everysquare: {english}{ending}"), "{line}");
            if !spanish.is_empty() {
                let line = if line.contains("--language") {
                    line.replace("everysquare ", "everysquare --language=es ")
                } else {
                    line.replace("everysquare ", "everysquare --language es ")
                };
                let told = said(&line);
                assert!(told.starts_with(&format!("everysquare: {spanish}")), "{line}\n{told}");
            }
        }
    }
}
