//! The words of an event itself: single sentences that take the place of the program's.
//!
//! The file is read before any of it is used, so that a mistake in it is told with its line and no page is printed with a gap.

use fluent_bundle::FluentResource;
use fluent_syntax::ast::{Entry, Expression, InlineExpression, Message, Pattern, PatternElement};
use fluent_syntax::parser::{ErrorKind, ParserError, parse};
use thiserror::Error;

use super::former::renamed;
use super::{LANGUAGES, Sentence, Tell, nearest, told_in_english};

/// Bytes of such a file; the program's own have less than a tenth of it.
const MOST_BYTES: usize = 1 << 20;
/// Braces within braces that are read; sentences need three. The parser calls itself for each.
const MOST_DEPTH: usize = 12;
/// Characters of a line that a message repeats.
const SHOWN: usize = 60;

/// A file of words that is refused: the line, from 1, what stands there, what may stand there.
#[derive(Clone, Debug, Error, PartialEq, Eq)]
pub enum WordsError {
    /// Too large to be a file of words.
    TooLarge,
    /// Not written as such a file is.
    Syntax {
        /// From 1.
        line: usize,
        /// What stands there.
        read: String,
        /// What may stand there.
        allowed: Sentence,
    },
    /// A word that the program does not have.
    Unknown {
        /// From 1.
        line: usize,
        /// Its name as it stands there.
        read: String,
        /// The name that is meant, if one is near.
        near: Option<String>,
    },
    /// A word that had this name once and has another now.
    Renamed {
        /// From 1.
        line: usize,
        /// Its name as it stands there.
        read: String,
        /// Its name now.
        now: String,
    },
    /// A word that stands there twice.
    Twice {
        /// From 1.
        line: usize,
        /// Its name.
        read: String,
    },
    /// Something that the program does not fill in.
    Variable {
        /// From 1.
        line: usize,
        /// Its name as it stands there.
        read: String,
        /// The sentence it stands in.
        word: String,
        /// What the program fills in there.
        known: Vec<String>,
    },
}

told_in_english!(WordsError);

impl Tell for WordsError {
    fn sentence(&self) -> Sentence {
        let at = |line: &usize| Sentence::new("error-words-at").with("line", line.to_string());
        match self {
            Self::TooLarge => Sentence::new("error-words-too-large").with("most", MOST_BYTES >> 20),
            Self::Syntax { line, read, allowed } => {
                at(line).with("read", read.as_str()).with("what", allowed.clone())
            }
            Self::Unknown { line, read, near } => {
                let what = match near {
                    Some(near) => Sentence::new("error-words-unknown-near").with("near", near.as_str()),
                    None => Sentence::new("error-words-unknown"),
                };
                at(line).with("read", read.as_str()).with("what", what)
            }
            Self::Renamed { line, read, now } => {
                let what = Sentence::new("error-words-renamed").with("now", now.as_str());
                at(line).with("read", read.as_str()).with("what", what)
            }
            Self::Twice { line, read } => {
                at(line).with("read", read.as_str()).with("what", Sentence::new("error-words-twice"))
            }
            Self::Variable { line, read, word, known } => {
                let what = match nearest(read.trim_start_matches('$'), known.iter().map(String::as_str)) {
                    Some(near) => Sentence::new("error-words-variable-near").with("near", format!("${near}")),
                    None if known.is_empty() => Sentence::new("error-words-variable-none"),
                    None => {
                        let known: Vec<String> = known.iter().map(|name| format!("${name}")).collect();
                        Sentence::new("error-words-variable-known").with("known", known.join(", "))
                    }
                };
                at(line).with("read", read.as_str()).with("what", what.with("word", word.as_str()))
            }
        }
    }
}

/// The sentences of an event's own file, every one of them known to the program.
pub(super) fn checked(text: &str) -> Result<FluentResource, WordsError> {
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    if text.len() > MOST_BYTES {
        return Err(WordsError::TooLarge);
    }
    readable(text)?;
    let entries = parse(text).map_err(|(_, faults)| explain(text, &faults))?.body;
    let known = parse(LANGUAGES[0].1).unwrap_or_else(|(file, _)| file).body;
    let mut seen: Vec<&str> = Vec::new();
    for entry in &entries {
        match entry {
            Entry::Message(message) => {
                look(text, message, &known, seen.iter().filter(|id| **id == message.id.name).count())?;
                seen.push(message.id.name);
            }
            Entry::Term(term) => {
                return Err(refused(
                    text,
                    line_of_id(text, &format!("-{}", term.id.name), 0),
                    "error-words-term",
                ));
            }
            _ => {}
        }
    }
    FluentResource::try_new(text.to_owned()).map_err(|(_, faults)| explain(text, &faults))
}

/// Refuses what the parser or a terminal should not meet: braces within braces without end, control characters.
fn readable(text: &str) -> Result<(), WordsError> {
    let mut depth = 0_usize;
    for (line, read) in (1..).zip(text.lines()) {
        if read.chars().any(|c| c.is_control() && c != '\t' && c != '\r') {
            return Err(refused(text, line, "error-words-control"));
        }
        if read.starts_with(|c: char| c.is_alphanumeric() || c == '-') {
            depth = 0; // a new sentence
        }
        for c in read.chars() {
            match c {
                '{' => depth += 1,
                '}' => depth = depth.saturating_sub(1),
                _ => {}
            }
            if depth > MOST_DEPTH {
                return Err(refused(text, line, "error-words-depth"));
            }
        }
    }
    Ok(())
}

/// Looks at one sentence of the file, the one of its name after so many before.
fn look(text: &str, message: &Message<&str>, known: &[Entry<&str>], before: usize) -> Result<(), WordsError> {
    let id = message.id.name;
    let line = line_of_id(text, id, before);
    let read = shown(id);
    let ids = known.iter().filter_map(|entry| match entry {
        Entry::Message(own) => Some(own),
        _ => None,
    });
    let Some(own) = ids.clone().find(|own| own.id.name == id) else {
        if let Some(now) = renamed(id, |now| ids.clone().any(|own| own.id.name == now)) {
            return Err(WordsError::Renamed { line, read, now });
        }
        let near = nearest(id, ids.map(|own| own.id.name)).map(str::to_owned);
        return Err(WordsError::Unknown { line, read, near });
    };
    if before > 0 {
        return Err(WordsError::Twice { line, read });
    }
    let (Some(pattern), true) = (&message.value, message.attributes.is_empty()) else {
        return Err(refused(text, line, "error-words-attribute"));
    };
    let mut parts = Parts::default();
    parts.of(pattern);
    if parts.others {
        return Err(refused(text, line, "error-words-reference"));
    }
    let mut filled = Parts::default();
    own.value.iter().for_each(|pattern| filled.of(pattern));
    let unknown = parts.variables.iter().find(|name| !filled.variables.contains(name));
    unknown.map_or(Ok(()), |name| {
        let line = line_of_variable(text, line, name);
        let known = filled.variables.iter().map(|name| (*name).to_owned()).collect();
        Err(WordsError::Variable { line, read: format!("${}", shown(name)), word: read, known })
    })
}

/// What stands in the braces of a sentence.
#[derive(Default)]
struct Parts<'a> {
    /// What the program fills in, each once, in the order in which it stands there.
    variables: Vec<&'a str>,
    /// Whether there is anything but that, numbers and texts in quotes.
    others: bool,
}

impl<'a> Parts<'a> {
    fn of(&mut self, pattern: &Pattern<&'a str>) {
        for element in &pattern.elements {
            if let PatternElement::Placeable { expression } = element {
                self.expression(expression);
            }
        }
    }

    fn expression(&mut self, expression: &Expression<&'a str>) {
        match expression {
            Expression::Inline(inline) => self.inline(inline),
            Expression::Select { selector, variants } => {
                self.inline(selector);
                variants.iter().for_each(|variant| self.of(&variant.value));
            }
        }
    }

    fn inline(&mut self, inline: &InlineExpression<&'a str>) {
        match inline {
            InlineExpression::VariableReference { id } if self.variables.contains(&id.name) => {}
            InlineExpression::VariableReference { id } => self.variables.push(id.name),
            InlineExpression::Placeable { expression } => self.expression(expression),
            InlineExpression::NumberLiteral { .. } => {}
            // an escaped control character would reach the terminal
            InlineExpression::StringLiteral { value } => self.others |= value.contains("\\u"),
            InlineExpression::FunctionReference { .. }
            | InlineExpression::MessageReference { .. }
            | InlineExpression::TermReference { .. } => self.others = true,
        }
    }
}

/// The first thing that the parser stumbled over, in an organiser's words.
fn explain(text: &str, faults: &[ParserError]) -> WordsError {
    let fault = faults.first();
    let at = fault.map_or(0, |fault| fault.pos.start.min(text.len()));
    let line = text.as_bytes()[..at].iter().filter(|byte| **byte == b'\n').count() + 1;
    let allowed = match fault.map(|fault| &fault.kind) {
        Some(ErrorKind::ExpectedToken('}') | ErrorKind::UnbalancedClosingBrace) => "error-words-braces",
        Some(ErrorKind::MissingDefaultVariant | ErrorKind::MultipleDefaultVariants) => "error-words-default",
        Some(ErrorKind::UnterminatedStringLiteral) => "error-words-quotes",
        Some(ErrorKind::ExpectedMessageField { .. } | ErrorKind::MissingValue) => "error-words-empty",
        Some(ErrorKind::ExpectedInlineExpression | ErrorKind::ForbiddenCallee) => "error-words-placeable",
        _ => "error-words-syntax",
    };
    refused(text, line, allowed)
}

fn refused(text: &str, line: usize, allowed: &'static str) -> WordsError {
    let there = text.lines().nth(line - 1).unwrap_or_default().trim();
    let read = shown(there);
    let allowed = Sentence::new(allowed);
    WordsError::Syntax { line, read, allowed }
}

/// What a message repeats of a line: its beginning, without what a terminal would obey.
fn shown(there: &str) -> String {
    let plain = |c: char| if c.is_control() { ' ' } else { c };
    let mut read: String = there.chars().take(SHOWN).map(plain).collect();
    if there.chars().count() > SHOWN {
        read.push('…');
    }
    read
}

/// The line on which a sentence begins that has so many of its name before it.
fn line_of_id(text: &str, id: &str, before: usize) -> usize {
    let begins = |line: &str| line.strip_prefix(id).is_some_and(|rest| rest.trim_start().starts_with('='));
    let mut lines = text.lines().zip(1..).filter(|(line, _)| begins(line));
    lines.nth(before).map_or(1, |(_, line)| line)
}

/// The line, from `from` on, on which a variable stands.
fn line_of_variable(text: &str, from: usize, name: &str) -> usize {
    let holds = |line: &str| {
        let is_more = |c: char| c.is_ascii_alphanumeric() || c == '-' || c == '_';
        line.match_indices(&format!("${name}")).any(|(at, all)| !line[at + all.len()..].starts_with(is_more))
    };
    let mut lines = text.lines().zip(1..).skip(from - 1);
    lines.find(|(line, _)| holds(line)).map_or(from, |(_, line)| line)
}

#[cfg(test)]
mod tests {
    use super::super::Words;
    use proptest::prelude::*;

    fn said(text: &str) -> String {
        Words::of("es").with_overrides(text).map_or_else(|error| error.to_string(), |_| "taken".to_owned())
    }

    #[test]
    fn a_word_of_an_event_takes_the_place_of_the_programs() {
        let own = "\u{feff}# ours\r\nprint-squares = Blank sheets\r\nreport-count-right = { $cells } all, { $count } right\r\n";
        let words = Words::of("es").with_overrides(own).unwrap();
        assert_eq!(words.say("print-squares", &[]), "Blank sheets");
        let counted = [("count", 3.into()), ("cells", 8.into())];
        assert_eq!(words.say("report-count-right", &counted), "8 all, 3 right");
        assert_eq!(words.say("print-pencils", &[]), Words::of("es").say("print-pencils", &[]));
    }

    #[test]
    fn a_mistake_is_told_with_its_line_and_what_is_allowed() {
        for (text, expected) in [
            (
                "\n\nprint-sqares = x\n",
                "templates/words.ftl, line 3: print-sqares: there’s no sentence with that name. Do you mean print-squares?",
            ),
            (
                "\nprint-ledger = x\n",
                "templates/words.ftl, line 2: print-ledger: this sentence is now called print-checklist.",
            ),
            (
                "print-tiles = x\n",
                "templates/words.ftl, line 1: print-tiles: this sentence is now called print-pieces.",
            ),
            ("qwertz = x\n", "templates/words.ftl, line 1: qwertz: there’s no sentence with that name"),
            (
                "print-squares = x
print-pencils = y
print-squares = z
",
                "templates/words.ftl, line 3: print-squares: this sentence is here twice. Keep one of them",
            ),
            (
                "print-ruler-mm = about\n    { $lenght } mm\n",
                "templates/words.ftl, line 2: $lenght: print-ruler-mm has nothing with this name to fill in. Do you mean $length?",
            ),
            (
                "print-event = { $zebra }\n",
                "templates/words.ftl, line 1: $zebra: print-event has nothing with this name to fill in. It has $tag, $event",
            ),
            (
                "print-squares = { $x }\n",
                "templates/words.ftl, line 1: $x: print-squares has nothing to fill in. Leave out the braces",
            ),
            ("print-squares\n", "templates/words.ftl, line 1: print-squares: "),
            ("print-squares = { $x\n", "templates/words.ftl, line "),
            ("-brand = x\n", "templates/words.ftl, line 1: -brand = x: "),
            (
                "print-squares = { print-pencils }\n",
                "templates/words.ftl, line 1: print-squares = { print-pencils }: ",
            ),
            ("print-squares = { \"\\u001B\" }\n", "templates/words.ftl, line 1: "),
            ("print-squares = \u{1b}[31m\n", "templates/words.ftl, line 1: print-squares =  [31m: "),
            ("print-squares = x\n    .title = y\n", "templates/words.ftl, line 1: print-squares = x: "),
            ("print-squares =\n", "templates/words.ftl, line "),
        ] {
            assert!(said(text).starts_with(expected), "{text:?}\n{}\n{expected}", said(text));
        }
        assert!(said(&format!("print-squares = {}", "{".repeat(100_000))).contains("braces"));
        assert!(said(&"# x\n".repeat(300_000)).contains("1 MB"));
    }

    proptest! {
        #[test]
        fn no_text_makes_it_fall(text in "([-a-z$={}\\[\\]*\" .#\\\\u\n]|print-squares|es ->){0,80}") {
            let _ = said(&text);
        }
    }
}
