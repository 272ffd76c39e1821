//! Questions about the picture and its wall, for cards that learners of four kinds take up while they wait for a pencil.
//!
//! ```text
//!  PictureFacts ─┐
//!                ├─▶ Subject ─▶ counting, multiplying, ratio, challenge ─▶ the first CARDS of each that fit
//!  Grid ─────────┘
//! ```
//!
//! Every number comes from this picture and this grid. A question is asked only where its answer is a whole number and its
//! condition holds ("a quarter of the pieces need blue" only where it is exactly so); else the next one is taken. The last
//! ones of every kind need nothing of the picture, so that even one piece of one colour has its cards. A question is data:
//! the sentence and the working are put into words elsewhere, from the same values.
//!
//! *Needs* is what a piece's back says ([`super::PieceFacts::pencils`]), so that everybody counts the same.
//!
//! ```
//! use everysquare::picture::questions::{Learners, questions};
//! use everysquare::picture::{FewColours, Picture, PictureFacts};
//! use everysquare::plan::settings::{LevelSettings, Pencil};
//! use everysquare::plan::{Grid, RowsFrom};
//!
//! let grid = Grid { columns: 10, rows: 8, square_mm: 127.0, piece_mm: 25.4, rows_from: RowsFrom::Bottom };
//! let picture = Picture { pixels: image::RgbImage::new(100, 80) };
//! let few = FewColours::of(&picture, &[Pencil { name: "black".to_owned(), srgb: [0, 0, 0] }]);
//! let all = questions(&PictureFacts::of(&few, &grid, &LevelSettings::default()), &grid);
//! let squares = all.iter().find(|question| question.kind == "all-squares").ok_or("none")?;
//! assert_eq!((squares.learners, squares.answer), (Learners::Multiplying, 80));
//! # Ok::<(), Box<dyn std::error::Error>>(())
//! ```

mod challenge;
mod counting;
mod measure;
mod multiplying;
mod ratio;
mod subject;

use super::PictureFacts;
use crate::plan::{Cell, Grid};

pub use measure::{Measure, Unit, measures};
use subject::Subject;

/// Cards for each kind of learners: a sheet of letter or A4 paper holds as many.
pub const CARDS: usize = 8;

/// Who a question is for. The ages are common practice, no source.
#[derive(Copy, Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Learners {
    /// Counting; about 5 to 7 years.
    Counting,
    /// Multiplying, dividing and simple fractions; about 8 to 10 years.
    Multiplying,
    /// Ratio, length and area; about 11 to 13 years.
    Ratio,
    /// Patterns; anyone.
    Challenge,
}

impl Learners {
    /// All of them, the youngest first.
    pub const ALL: [Self; 4] = [Self::Counting, Self::Multiplying, Self::Ratio, Self::Challenge];

    /// The word for it in the names of sentences.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Self::Counting => "counting",
            Self::Multiplying => "multiplying",
            Self::Ratio => "ratio",
            Self::Challenge => "challenge",
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

/// A question with its one right answer.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Question {
    /// Who it is for.
    pub learners: Learners,
    /// What is asked: the name of the sentence.
    pub kind: &'static str,
    /// What the question and its working name.
    pub values: Vec<(&'static str, Value)>,
    /// The right answer.
    pub answer: usize,
}

impl Question {
    /// A value by its name.
    #[must_use]
    pub fn value(&self, name: &str) -> Option<&Value> {
        self.values.iter().find(|(own, _)| *own == name).map(|(_, value)| value)
    }
}

/// The questions about a picture and its wall: for each kind of learners at most [`CARDS`], in the order of
/// [`Learners::ALL`].
#[must_use]
pub fn questions(facts: &PictureFacts, grid: &Grid) -> Vec<Question> {
    let subject = Subject::of(facts, grid);
    let drafts = [
        (Learners::Counting, counting::drafts(&subject)),
        (Learners::Multiplying, multiplying::drafts(&subject)),
        (Learners::Ratio, ratio::drafts(&subject)),
        (Learners::Challenge, challenge::drafts(&subject)),
    ];
    let chosen = drafts.into_iter().flat_map(|(learners, drafts)| {
        let some = drafts.into_iter().flatten().take(CARDS);
        some.map(move |Draft { kind, values, answer }| Question { learners, kind, values, answer })
    });
    chosen.collect()
}

/// A question before it is known whether it is among the first.
struct Draft {
    kind: &'static str,
    values: Vec<(&'static str, Value)>,
    answer: usize,
}

/// A draft, where its condition holds.
fn ask<const N: usize>(
    holds: bool,
    kind: &'static str,
    values: [(&'static str, Value); N],
    answer: usize,
) -> Option<Draft> {
    holds.then(|| Draft { kind, values: values.into(), answer })
}

/// A count as a value.
fn number(name: &'static str, count: usize) -> (&'static str, Value) {
    (name, Value::Number(count))
}

/// The largest number that divides both; the other where one is 0.
fn common_divisor(a: usize, b: usize) -> usize {
    if b == 0 { a } else { common_divisor(b, a % b) }
}
