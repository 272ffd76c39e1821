//! Where the program writes: sentences on standard output, complaints on standard error.

use std::io::{self, ErrorKind, IsTerminal, Write};
use std::ops::RangeInclusive;

use super::{CliError, language};
use crate::plan::settings::{Choice, Language};
use crate::report::lines::{WIDTH, paragraphs};
use crate::words::{FluentValue, Sentence, Words};

/// Characters that a line may have: what is narrower or wider is a mistake of whoever says so.
const WIDTHS: RangeInclusive<usize> = 20..=1000;
/// Longest line of a sentence, in characters: longer ones lose the eye on the way back.
const LONGEST_LINE: usize = 100;

/// What is known of the place where the output appears.
#[derive(Copy, Clone, Debug, PartialEq, Eq)]
pub struct Screen {
    /// Whether a person watches, and no file or pipe takes it.
    pub terminal: bool,
    /// Whether colours may be used.
    pub colour: bool,
    /// Characters in a line.
    pub width: usize,
}

impl Screen {
    /// A file or a pipe: no colours, the usual width.
    #[must_use]
    pub fn plain() -> Self {
        Self { terminal: false, colour: false, width: WIDTH }
    }

    /// As the environment has it: colours on a terminal unless `NO_COLOR` is set or `TERM` is `dumb`; the width from `COLUMNS`,
    /// else from the terminal itself.
    #[must_use]
    pub fn of_environment() -> Self {
        let terminal = io::stdout().is_terminal();
        let set = |name: &str| std::env::var(name).ok().filter(|value| !value.is_empty());
        let plain = set("NO_COLOR").is_some() || set("TERM").is_some_and(|term| term == "dumb");
        let own = || terminal_size::terminal_size().map(|(width, _)| usize::from(width.0));
        let width = set("COLUMNS").and_then(|columns| columns.parse().ok()).or_else(own);
        let width = width.filter(|width| WIDTHS.contains(width));
        Self { terminal, colour: terminal && !plain, width: width.unwrap_or(WIDTH) }
    }
}

/// Where a command writes, and the words it writes with. A reader that has gone away (`| head`) is no error.
pub struct Console {
    out: Box<dyn Write>,
    err: Box<dyn Write>,
    screen: Screen,
    words: Words,
    /// The first error of standard output; nothing is written there after it.
    failed: Option<io::Error>,
}

impl Console {
    /// Standard output and standard error, in the language of the system.
    #[must_use]
    pub fn standard() -> Self {
        let mut console = Self::new(Box::new(io::stdout()), Box::new(io::stderr()), Screen::of_environment());
        console.speak(Words::of(language::of_environment().word()));
        console
    }

    /// Any two places, in English.
    #[must_use]
    pub fn new(out: Box<dyn Write>, err: Box<dyn Write>, screen: Screen) -> Self {
        Self { out, err, screen, words: Words::english(), failed: None }
    }

    /// Writes one or more lines.
    pub fn line(&mut self, text: &str) {
        if self.failed.is_none() {
            self.failed = writeln!(self.out, "{text}").err();
        }
    }

    /// Writes the sentence `id` with its arguments filled in; on a terminal its lines break between words.
    pub fn say(&mut self, id: &str, arguments: &[(&str, FluentValue<'_>)]) {
        let sentence = self.words.say(id, arguments);
        self.tell(sentence);
    }

    /// Writes a sentence that was put into words elsewhere, broken as [`Console::say`] breaks its own.
    pub fn tell(&mut self, sentence: String) {
        let sentence = self.broken(sentence);
        self.line(&sentence);
    }

    /// A sentence in lines that fit the terminal; whole where a file or a pipe takes it.
    fn broken(&self, sentence: String) -> String {
        if !self.screen.terminal {
            return sentence;
        }
        paragraphs(&sentence, self.screen.width.min(LONGEST_LINE))
    }

    /// Changes the words that it writes with.
    pub fn speak(&mut self, words: Words) {
        self.words = words;
    }

    /// The language that it speaks.
    #[must_use]
    pub fn language(&self) -> Language {
        Language::named(self.words.language()).unwrap_or_default()
    }

    /// Writes a line on standard error, without what a terminal would obey: it may repeat what stands in somebody's file. Where even
    /// that fails there is nobody left to tell.
    pub fn complain(&mut self, text: &str) {
        let plain = |c: char| if c.is_control() && c != '\n' { ' ' } else { c };
        let text = self.broken(text.chars().map(plain).collect());
        let _ = writeln!(self.err, "{text}");
    }

    /// What is known of the place where the output appears.
    #[must_use]
    pub fn screen(&self) -> Screen {
        self.screen
    }

    /// The words.
    #[must_use]
    pub fn words(&self) -> &Words {
        &self.words
    }

    /// Makes sure that all is written.
    ///
    /// # Errors
    /// Where standard output could not take it, unless its reader has gone away.
    pub fn finish(&mut self) -> Result<(), CliError> {
        let failed = self.failed.take().or_else(|| self.out.flush().err());
        match failed {
            Some(error) if error.kind() != ErrorKind::BrokenPipe => {
                Err(CliError::new(Sentence::new("error-output").with("why", error.to_string())))
            }
            _ => Ok(()),
        }
    }
}

impl std::fmt::Debug for Console {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("Console").field("screen", &self.screen).finish_non_exhaustive()
    }
}
