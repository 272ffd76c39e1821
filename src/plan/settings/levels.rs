//! `[levels]` and `[[pieces]]`: how hard each piece is, as far as the organiser decides it.

use super::choice::Choice;
use super::error::{SettingsError, missing};
use super::section::Section;
use super::toml::{example, line, number, text};
use crate::plan::cell::{Cell, Grid, column_letters};
use crate::plan::level::{Level, balanced, bounded};
use crate::words::{Sentence, Words, one_of};

/// A score at which a level may begin; `src/picture/complexity.rs` says what the score is: 0 for one colour all over, 1 for a
/// straight edge, some 10 for eight shapes; a piece full of dots of 1 mm has some hundreds.
pub const BOUND: std::ops::RangeInclusive<f64> = 0.0..=1_000.0;
/// The scores at which easy, medium and hard begin where nothing is said. Chosen by looking at all 80 pieces of each of four drawn
/// pictures (the sample, a poster, a town at night, fish), sorted by score: up to 3.5 there are one to three shapes, from 9 on
/// many, or thin ones.
pub const USUAL_BOUNDS: [f64; 3] = [0.5, 3.5, 9.0];
/// Characters of a level's name: more do not fit the back of a piece.
pub const LEVEL_NAME_LENGTH: usize = 16;

/// `[levels]` and `[[pieces]]`.
#[derive(Clone, Debug, PartialEq)]
pub struct LevelSettings {
    /// What the four levels are called, the easiest first; `None` for the language's own words.
    pub names: Option<[String; 4]>,
    /// The scores at which easy, medium and hard begin, ascending; below the first a piece is plain.
    pub bounds: [f64; 3],
    /// Whether easy, medium and hard are made the same number of pieces, whatever the bounds.
    pub balanced: bool,
    /// Pieces whose level the organiser decided, in the file's order, each at most once.
    pub decided: Vec<(Cell, Level)>,
}

impl Default for LevelSettings {
    fn default() -> Self {
        Self { names: None, bounds: USUAL_BOUNDS, balanced: false, decided: Vec::new() }
    }
}

impl LevelSettings {
    /// Level of each score. Where balance is asked for, all that is not plain is divided into three parts as equal as ties allow.
    #[must_use]
    pub fn levels_of(&self, scores: &[f64]) -> Vec<Level> {
        if self.balanced { balanced(scores, self.bounds[0]) } else { bounded(scores, self.bounds) }
    }

    /// The level that the organiser decided on for a cell's piece.
    #[must_use]
    pub fn decided(&self, cell: Cell) -> Option<Level> {
        self.decided.iter().find(|(own, _)| *own == cell).map(|(_, level)| *level)
    }

    /// What people call a level: the organiser's own name, else the language's.
    #[must_use]
    pub fn word(&self, level: Level, words: &Words) -> String {
        let own = self.names.as_ref().map(|names| names[level.index()].clone());
        own.unwrap_or_else(|| words.say(&format!("level-{}", level.word()), &[]))
    }

    /// The level that a word means: one of the four that every event.toml understands, or the organiser's own name for it.
    fn named(names: Option<&[String; 4]>, word: &str) -> Option<Level> {
        let own = names.and_then(|names| names.iter().position(|name| name == word));
        own.map(|index| Level::ALL[index]).or_else(|| Level::named(word))
    }
}

pub(super) fn read(top: &Section, grid: &Grid) -> Result<LevelSettings, SettingsError> {
    let section = top.section("levels")?;
    let names = section.texts(
        "names",
        Sentence::new("error-settings-level-names").with("most", LEVEL_NAME_LENGTH.to_string()),
        are_names,
    )?;
    let (least, most) = (BOUND.start(), BOUND.end());
    let bounds = section.numbers(
        "bounds",
        Sentence::new("error-settings-bounds").with("least", *least).with("most", *most),
        |bounds: &[f64; 3]| {
            bounds.iter().all(|bound| BOUND.contains(bound)) && bounds[0] < bounds[1] && bounds[1] < bounds[2]
        },
    )?;
    let mut decided: Vec<(Cell, Level)> = Vec::new();
    for (piece, number) in top.list("pieces")?.iter().zip(1..) {
        let (cell, level) = one(piece, number, names.as_ref(), grid)?;
        if decided.iter().any(|(own, _)| *own == cell) {
            return Err(piece.refuse("label", Sentence::new("error-settings-piece-twice")));
        }
        decided.push((cell, level));
    }
    Ok(LevelSettings {
        names,
        bounds: bounds.unwrap_or(USUAL_BOUNDS),
        balanced: section.yes_or_no("balanced")?.unwrap_or(false),
        decided,
    })
}

fn are_names(names: &[String; 4]) -> bool {
    let fits = |name: &String| {
        let length = name.chars().count();
        (1..=LEVEL_NAME_LENGTH).contains(&length)
            && name.trim() == name
            && !name.chars().any(char::is_control)
    };
    let same = |a: &String, b: &String| a.to_lowercase() == b.to_lowercase();
    // “hard” for the easiest would leave [[pieces]] in doubt
    let in_place = |(at, name): (usize, &String)| {
        Level::named(&name.to_lowercase()).is_none_or(|level| level.index() == at)
    };
    names.iter().all(fits)
        && names.iter().enumerate().all(in_place)
        && names.iter().enumerate().all(|(i, a)| names[..i].iter().all(|b| !same(a, b)))
}

/// One `[[pieces]]`.
fn one(
    piece: &Section,
    number: usize,
    names: Option<&[String; 4]>,
    grid: &Grid,
) -> Result<(Cell, Level), SettingsError> {
    let which = |name: &str| {
        let which =
            Sentence::new("error-settings-of-piece").with("name", name).with("number", number.to_string());
        missing(which, Sentence::new("error-settings-piece-example"))
    };
    let last = column_letters(grid.columns - 1);
    let allowed =
        Sentence::new("error-settings-label").with("column", last).with("row", grid.rows.to_string());
    let cell = piece.text("label", allowed, |label| grid.cell(label))?.ok_or_else(|| which("label"))?;
    let words = match names {
        Some(names) => one_of(&names.each_ref().map(String::as_str)),
        None => Level::listed(),
    };
    let level = piece
        .text("level", Sentence::new("error-settings-choice").with("choices", words), |word| {
            LevelSettings::named(names, word)
        })?
        .ok_or_else(|| which("level"))?;
    Ok((cell, level))
}

pub(super) fn written(levels: &LevelSettings, grid: &Grid, words: &Words) -> String {
    let listed = |values: &[String]| format!("[{}]", values.join(", "));
    let say = |id: &str| words.say(id, &[]);
    let usual = Level::ALL.map(|level| text(&words.say(&format!("level-{}", level.word()), &[])));
    let names = match &levels.names {
        Some(names) => {
            line("names", &listed(&names.clone().map(|name| text(&name))), &say("event-level-names"))
        }
        None => example("names", &listed(&usual), &say("event-own-level-names")),
    };
    let mut table = [
        "[levels]\n".to_owned(),
        names,
        line("bounds", &listed(&levels.bounds.map(number)), &say("event-bounds")),
        line("balanced", &levels.balanced.to_string(), &say("event-balanced")),
    ]
    .concat();
    for (cell, level) in &levels.decided {
        let (label, level) = (text(&grid.label(*cell)), text(level.word()));
        table += &format!("\n[[pieces]]\nlabel = {label}\nlevel = {level}\n");
    }
    if levels.decided.is_empty() {
        let example = example("level", "\"hard\"", &say("event-pieces-level"));
        table += &format!("# {}\n# [[pieces]]\n# label = \"A1\"\n{example}", say("event-pieces"));
    }
    table
}
