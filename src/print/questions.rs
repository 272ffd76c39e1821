//! `questions.pdf`: cards to cut out, a kind of learners a page, and `answers.pdf`: the same questions with their answers
//! and how to find them, to be kept apart.
//!
//! What is asked comes from [`crate::picture::questions`]; here it is put into words.

use serde::Serialize;

use super::layout::Layout;
use super::marks::Box;
use super::page::{Heading, Page, Reading, Sheets, Sides};
use super::{Document, Large, PrintError, Sources};
use crate::picture::questions::{Learners, Measure, Question, Unit, Value, questions};
use crate::words::{FluentValue, Words};

/// Width and height of a card, in mm: eight on letter or A4 paper.
const CARD_MM: [f64; 2] = [95.0, 60.0];

/// A card.
#[derive(Serialize)]
struct Item {
    area: Box,
    number: usize,
    /// Who it is for: 1, 2 or 3 small squares, or 0 for a star.
    marks: usize,
    learners: String,
    question: String,
    /// The word before the line for the answer.
    answer: String,
    /// Size of the question, in points.
    size: f64,
}

/// Nothing that all cards share.
#[derive(Serialize)]
struct Shared {}

/// What `answers.typ` sets.
#[derive(Serialize)]
struct Answers {
    title: String,
    intro: String,
    heads: [String; 4],
    parts: Vec<Part>,
}

#[derive(Serialize)]
struct Part {
    heading: String,
    rows: Vec<Row>,
}

#[derive(Serialize)]
struct Row {
    number: usize,
    question: String,
    answer: usize,
    working: String,
}

/// Typesets the cards.
///
/// # Errors
/// [`PrintError::TooLarge`] where no card fits the paper: not with the papers that there are; [`PrintError::Typeset`].
pub(super) fn document(sources: &Sources) -> Result<Document, PrintError> {
    let paper = sources.settings.print.paper;
    let [width, height] = CARD_MM;
    let layout = Layout::pack(paper, width, height)
        .ok_or_else(|| PrintError::too_large(Large::Card, width, 0.0, paper))?;
    let all = numbered(sources);
    let groups = Learners::ALL.map(|learners| of(&all, learners));
    let groups: Vec<_> = groups.iter().flat_map(|group| group.chunks(layout.spots.len())).collect();
    let heading = Heading::new(sources, "questions", Some(groups.len()), Sides::One);
    let pages = groups.iter().enumerate().map(|(page, group)| {
        let items: Vec<Item> = group
            .iter()
            .zip(&layout.spots)
            .map(|(asked, spot)| item(asked, (*spot).into(), sources))
            .collect();
        let asked: Vec<&str> = items.iter().map(|item| item.question.as_str()).collect();
        Page {
            strip: heading.strip(&layout, page + 1, false),
            about: sources.words.say("questions-about", &[("questions", asked.join(" ").into())]),
            back: false,
            items,
        }
    });
    let (pages, pictures) = (pages.collect(), Vec::new());
    Sheets { name: "questions", shared: Shared {}, pages, pictures, two_sided: false }.document(sources)
}

/// Typesets the answers.
///
/// # Errors
/// [`PrintError::Typeset`].
pub(super) fn answers(sources: &Sources) -> Result<Document, PrintError> {
    let words = sources.words;
    let all = numbered(sources);
    let part = |learners: Learners| {
        let [learners_said, ages] =
            ["learners", "ages"].map(|what| words.say(&format!("questions-{what}-{}", learners.word()), &[]));
        let row = |(number, question): &(usize, Question)| Row {
            number: *number,
            question: said("ask", question, sources),
            answer: question.answer,
            working: said("working", question, sources),
        };
        Part {
            heading: words
                .say("questions-heading", &[("learners", learners_said.into()), ("ages", ages.into())]),
            rows: of(&all, learners).iter().map(row).collect(),
        }
    };
    let heads = ["number", "question", "answer", "working"];
    let content = Answers {
        title: words.say("questions-answers", &[]),
        intro: words.say("questions-about-answers", &[]),
        heads: heads.map(|head| words.say(&format!("questions-{head}"), &[])),
        parts: Learners::ALL.map(part).into(),
    };
    Reading { name: "answers", content, pictures: Vec::new() }.document(sources)
}

/// The questions with their numbers from 1.
fn numbered(sources: &Sources) -> Vec<(usize, Question)> {
    (1..).zip(questions(sources.facts, &sources.printed.grid)).collect()
}

fn of(all: &[(usize, Question)], learners: Learners) -> Vec<(usize, Question)> {
    all.iter().filter(|(_, question)| question.learners == learners).cloned().collect()
}

fn item((number, question): &(usize, Question), area: Box, sources: &Sources) -> Item {
    let learners = question.learners;
    let (marks, size) = match learners {
        Learners::Counting => (1, 16.0),
        Learners::Multiplying => (2, 14.0),
        Learners::Ratio => (3, 13.0),
        Learners::Challenge => (0, 13.0),
    };
    Item {
        area,
        number: *number,
        marks,
        learners: sources.words.say(&format!("questions-learners-{}", learners.word()), &[]),
        question: said("ask", question, sources),
        answer: sources.words.say("questions-answer", &[]),
        size,
    }
}

/// The question, or its working, as a sentence.
fn said(part: &str, question: &Question, sources: &Sources) -> String {
    let mut filled: Vec<(&str, FluentValue<'static>)> =
        question.values.iter().map(|(name, value)| (*name, filled_in(value, sources))).collect();
    filled.push(("answer", question.answer.into()));
    if question.value("by").is_some() {
        let counted = sources.words.say("questions-sum", &filled);
        filled.push(("counted", counted.into()));
    }
    sources.words.say(&format!("questions-{part}-{}", question.kind), &filled)
}

/// What a sentence is filled in with.
fn filled_in(value: &Value, sources: &Sources) -> FluentValue<'static> {
    let Sources { printed, words, .. } = *sources;
    let name = |pencil: usize| sources.facts.pencils.get(pencil).map_or_else(String::new, |p| p.name.clone());
    match value {
        Value::Number(count) => (*count).into(),
        Value::Pencil(pencil) => name(*pencil).into(),
        Value::Pencils(pencils) => listed(pencils.iter().map(|pencil| name(*pencil)).collect(), words).into(),
        Value::Cell(cell) => printed.grid.label(*cell).into(),
        Value::Cells(cells) => {
            listed(cells.iter().map(|cell| printed.grid.label(*cell)).collect(), words).into()
        }
        Value::Sum(terms) => sum(terms, words).into(),
        Value::Length(length) => measured(*length, words).into(),
        Value::Choice(word) => (*word).into(),
    }
}

fn measured(Measure { count, unit }: Measure, words: &Words) -> String {
    let id = match unit {
        Unit::Inch => "questions-inch",
        Unit::Mm => "questions-mm",
    };
    words.say(id, &[("count", count.into())])
}

/// “3 + 0 + 5 = 8”; one number alone as it is.
fn sum(terms: &[usize], words: &Words) -> String {
    let total: usize = terms.iter().sum();
    if terms.len() < 2 {
        return total.to_string();
    }
    let terms: Vec<String> = terms.iter().map(usize::to_string).collect();
    words.say("questions-sum-total", &[("terms", terms.join(" + ").into()), ("total", total.into())])
}

/// “A1, B1 and C1”.
fn listed(mut names: Vec<String>, words: &Words) -> String {
    let Some(last) = names.pop() else { return words.say("questions-none", &[]) };
    if names.is_empty() {
        return last;
    }
    words.say("questions-and", &[("first", names.join(", ").into()), ("last", last.into())])
}
