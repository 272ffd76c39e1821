//! Questions about the picture and its mural, for cards that visitors take up while they wait for a pencil.
//!
//! ```text
//!  PictureFacts ─┐
//!  Picture ──────┼─▶ Subject (Sight), Joints ─▶ see, count, compare, explain ─▶ the first CARDS of each that fit
//!  Grid ─────────┘
//! ```
//!
//! Numbers come from this picture and this grid wherever they can. A question is asked only where its answer is known and its
//! condition holds ("a quarter of the pieces have blue" only where it is exactly so); else the next one is taken. The last
//! ones of every rung need nothing of the picture, so that even one piece of one colour has its cards. A question is data:
//! the sentence and the working are put into words elsewhere, from the same values.
//!
//! A piece *has* a colour where anybody sees it there: no question is about a colour that covers less than 2 % of some piece
//! which it touches, that is seen at its very edge only, or that looks like another one of the picture. So a count by eye, the backs
//! of the pieces and the answer agree. Some questions have no number: which piece continues a line, which one is turned. They are
//! asked only where the lines leave one answer.
//!
//! ```
//! use everysquare::picture::questions::{Answer, Rung, Unit, questions};
//! use everysquare::picture::{FewColours, Picture, PictureFacts};
//! use everysquare::plan::settings::{LevelSettings, Pencil};
//! use everysquare::plan::Grid;
//!
//! let grid = Grid::usual(10, 8);
//! let picture = Picture { pixels: image::RgbImage::new(100, 80) };
//! let few = FewColours::of(&picture, &[Pencil { name: "black".to_owned(), srgb: [0, 0, 0] }]);
//! let facts = PictureFacts::of(&few, &grid, &LevelSettings::default());
//! let all = questions(&facts, &picture, &grid, Unit::Inch);
//! let squares = all.iter().find(|question| question.kind == "all-squares").ok_or("none")?;
//! assert_eq!((squares.rung, squares.answer), (Rung::Count, Answer::Count(80)));
//! # Ok::<(), Box<dyn std::error::Error>>(())
//! ```

mod compare;
mod count;
mod explain;
mod joints;
mod measure;
mod see;
mod sight;
mod subject;

use super::{Picture, PictureFacts};
use crate::plan::{Cell, Grid, Turn};

pub use measure::{Measure, Unit, measures};
use subject::Subject;

/// Number of cards of each rung: a sheet of letter or A4 paper holds as many.
pub const CARDS: usize = 8;

/// Who a question is for. The grades follow the Common Core State Standards for Mathematics (2010): counting and adding
/// within 20 in K–1, equal groups and halves within 100 in 2–3, scale, perimeter and fractions of a set in 4–6; ratio
/// notation and per cent (grade 6) are left to those who want them.
#[derive(Copy, Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Rung {
    /// Look, and count to 20; grades K–1. Somebody reads these aloud.
    See,
    /// Add, subtract, equal groups and halves within 100; grades 2–3.
    Count,
    /// How many times as long, around, parts of a whole; grades 4–6.
    Compare,
    /// Patterns, ratio, per cent, and how one knows; anyone.
    Explain,
}

impl Rung {
    /// All of them, the youngest first.
    pub const ALL: [Self; 4] = [Self::See, Self::Count, Self::Compare, Self::Explain];

    /// The word for it in the names of sentences.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Self::See => "see",
            Self::Count => "count",
            Self::Compare => "compare",
            Self::Explain => "explain",
        }
    }
}

/// Something that a sentence names.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Value {
    /// A count.
    Number(usize),
    /// A pencil, by its number.
    Pencil(usize),
    /// Pencils, by their numbers.
    Pencils(Vec<usize>),
    /// A cell, said by its label.
    Cell(Cell),
    /// Cells, said by their labels.
    Cells(Vec<Cell>),
    /// Numbers to be added.
    Sum(Vec<usize>),
    /// A length.
    Length(Measure),
    /// One of a few words that a sentence chooses by.
    Choice(&'static str),
}

/// The right answer, with what it is a number of.
#[derive(Copy, Clone, Debug, PartialEq, Eq)]
pub enum Answer {
    /// Of things, or of times.
    Count(usize),
    /// Of hundredths.
    Percent(usize),
    /// One part of so many equal ones: 4 is a quarter.
    OnePart(usize),
    /// A length.
    Length(Measure),
    /// An area, in squares of the unit.
    Area(Measure),
    /// One of the pieces on the card: 0 is a.
    Letter(usize),
    /// One of the pieces on the card, and how it has to be turned to be upright.
    Turn(usize, Turn),
}

impl Answer {
    /// The number alone.
    #[must_use]
    pub fn number(self) -> usize {
        match self {
            Self::Count(count) | Self::Percent(count) | Self::OnePart(count) => count,
            Self::Length(measure) | Self::Area(measure) => measure.count,
            Self::Letter(letter) | Self::Turn(letter, _) => letter,
        }
    }
}

impl From<usize> for Answer {
    fn from(count: usize) -> Self {
        Self::Count(count)
    }
}

/// Pieces of the picture that stand on a card.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub enum Shown {
    /// None.
    #[default]
    Nothing,
    /// Where to look is the picture key: the whole picture with the letters of its columns and the numbers of its rows.
    Key,
    /// One piece.
    Piece(Cell),
    /// Pieces side by side with the labels of the first and the last: the first, and how many.
    Row(Cell, usize),
    /// A piece with an empty box at its right, and the pieces to choose from.
    Next(Cell, Vec<Cell>),
    /// Pieces side by side, one of them turned clockwise: the first, how many, which one, how far.
    Turned(Cell, usize, usize, Turn),
}

/// A question with its one right answer.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Question {
    /// Who it is for.
    pub rung: Rung,
    /// What is asked: the name of the sentence.
    pub kind: &'static str,
    /// What the question and its working name.
    pub values: Vec<(&'static str, Value)>,
    /// What is seen on the card.
    pub shown: Shown,
    /// The right answer.
    pub answer: Answer,
}

impl Question {
    /// A value by its name.
    #[must_use]
    pub fn value(&self, name: &str) -> Option<&Value> {
        self.values.iter().find(|(own, _)| *own == name).map(|(_, value)| value)
    }
}

/// The questions about a picture and its mural: for each rung at most [`CARDS`], in the order of [`Rung::ALL`]. `facts` are
/// those of `picture`; lengths are in `unit` where they are whole numbers of it, and in millimetres else.
#[must_use]
pub fn questions(facts: &PictureFacts, picture: &Picture, grid: &Grid, unit: Unit) -> Vec<Question> {
    let subject = Subject::of(facts, picture, grid, unit);
    let joints = joints::Joints::of(picture, grid);
    let drafts = [
        (Rung::See, see::drafts(&subject, &joints)),
        (Rung::Count, count::drafts(&subject)),
        (Rung::Compare, compare::drafts(&subject)),
        (Rung::Explain, explain::drafts(&subject, &joints)),
    ];
    let chosen = drafts.into_iter().flat_map(|(rung, drafts)| {
        let some = drafts.into_iter().flatten().take(CARDS);
        some.map(move |Draft { kind, values, shown, answer }| Question { rung, kind, values, shown, answer })
    });
    chosen.collect()
}

/// A question before it is known whether it is among the first.
struct Draft {
    kind: &'static str,
    values: Vec<(&'static str, Value)>,
    shown: Shown,
    answer: Answer,
}

impl Draft {
    /// The same with pieces on its card.
    fn showing(self, shown: Shown) -> Self {
        Self { shown, ..self }
    }
}

/// A draft, where its condition holds.
fn ask<const N: usize>(
    holds: bool,
    kind: &'static str,
    values: [(&'static str, Value); N],
    answer: impl Into<Answer>,
) -> Option<Draft> {
    holds.then(|| Draft { kind, values: values.into(), shown: Shown::Nothing, answer: answer.into() })
}

/// A draft that is answered by the picture key, where its condition holds.
fn ask_of_key<const N: usize>(
    holds: bool,
    kind: &'static str,
    values: [(&'static str, Value); N],
    answer: usize,
) -> Option<Draft> {
    ask(holds, kind, values, answer).map(|draft| draft.showing(Shown::Key))
}

/// A count as a value.
fn number(name: &'static str, count: usize) -> (&'static str, Value) {
    (name, Value::Number(count))
}

/// The largest number that divides both; the other where one is 0.
fn common_divisor(a: usize, b: usize) -> usize {
    if b == 0 { a } else { common_divisor(b, a % b) }
}
