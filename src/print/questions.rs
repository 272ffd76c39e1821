//! `questions.pdf`: the picture key and cards to cut out, a rung a page, and `answers.pdf`: the same questions with their
//! answers and how to find them, to be kept apart.
//!
//! What is asked comes from [`crate::picture::questions`]; here it is put into words.

mod key;
mod said;
mod shown;

use serde::Serialize;

use super::layout::Layout;
use super::marks::Box;
use super::page::{Foot, Heading, Page, Reading, Sheets, Sides};
use super::typeset::Image;
use super::{Document, Large, PrintError, Sources};
use crate::picture::questions::{Question, Rung, Unit, questions};
use crate::plan::settings::Units;
use key::Key;
use said::{answered, said};
use shown::{Seen, Stage};

/// Width and height of a card, in mm: eight on letter or A4 paper.
const CARD_MM: [f64; 2] = [95.0, 60.0];

/// What lies on a page.
#[derive(Serialize)]
#[serde(tag = "is", rename_all = "lowercase")]
enum Item {
    Key(Key),
    Card(Card),
}

/// A card.
#[derive(Serialize)]
struct Card {
    area: Box,
    number: usize,
    /// Who it is for: 1, 2 or 3 small squares, or 0 for a star.
    marks: usize,
    rung: String,
    /// Words beside an ear, where somebody reads the card aloud.
    aloud: Option<String>,
    question: String,
    /// Words before the lines for a guess and for the answer.
    lines: Vec<String>,
    /// A request beside the answer.
    request: Option<String>,
    /// Largest size of the question, in points; it shrinks to fit.
    size: f64,
    /// Pieces of the picture on the card, and how much of it they leave for the question.
    shown: Seen,
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
    marks: usize,
    heading: String,
    rows: Vec<Row>,
}

#[derive(Serialize)]
struct Row {
    number: usize,
    question: String,
    answer: String,
    working: String,
}

/// Typesets the picture key and the cards.
///
/// # Errors
/// [`PrintError::TooLarge`] where no card fits the paper: not with the papers that there are; [`PrintError::Typeset`].
pub(super) fn document(sources: &Sources) -> Result<Document, PrintError> {
    let layout = layout(sources)?;
    let all = numbered(sources);
    let groups = Rung::ALL.map(|rung| of(&all, rung));
    let groups: Vec<_> = groups.iter().flat_map(|group| group.chunks(layout.spots.len())).collect();
    let heading = Heading::new(sources, "questions", Some(groups.len() + 1), Sides::One);
    let mut pictures = Vec::new();
    let mut pages = vec![key_page(sources, &heading, &mut pictures)];
    for group in groups {
        let cards: Vec<Card> = group
            .iter()
            .zip(&layout.spots)
            .map(|(asked, spot)| card(asked, (*spot).into(), sources, &mut pictures))
            .collect();
        let asked: Vec<&str> = cards.iter().map(|card| card.question.as_str()).collect();
        let about = sources.words.say("questions-about", &[("questions", asked.join(" ").into())]);
        let strip = heading.foot_line(layout.strip, pages.len() + 1);
        pages.push(Page { strip, about, back: false, items: cards.into_iter().map(Item::Card).collect() });
    }
    Sheets { name: "questions", shared: Shared {}, pages, pictures, two_sided: false }.document(sources)
}

/// Where the cards of a sheet lie.
fn layout(sources: &Sources) -> Result<Layout, PrintError> {
    let paper = sources.settings.print.paper;
    let [width, height] = CARD_MM;
    Layout::pack(paper, width, height).ok_or_else(|| PrintError::too_large(Large::Card, width, 0.0, paper))
}

/// Where the cards lie, and how many there are of each rung.
///
/// # Errors
/// As [`document`].
pub(super) fn layouts(sources: &Sources) -> Result<Vec<(Layout, usize)>, PrintError> {
    let (layout, all) = (layout(sources)?, numbered(sources));
    Ok(Rung::ALL.map(|rung| (layout.clone(), of(&all, rung).len())).into())
}

/// The page with the picture and its labels.
fn key_page(sources: &Sources, heading: &Heading, pictures: &mut Vec<Image>) -> Page<Item> {
    let layout = Layout::whole(sources.settings.print.paper);
    let items = layout.spots.iter().map(|room| Item::Key(Key::of(sources, (*room).into(), pictures)));
    Page {
        strip: heading.foot_line(layout.strip, 1),
        about: sources.words.say("questions-about-key", &key::values(sources)),
        back: false,
        items: items.collect(),
    }
}

/// Typesets the answers.
///
/// # Errors
/// [`PrintError::Typeset`].
pub(super) fn answers(sources: &Sources) -> Result<Document, PrintError> {
    let words = sources.words;
    let all = numbered(sources);
    let part = |rung: Rung| {
        let [rung_said, ages] =
            ["rung", "ages"].map(|what| words.say(&format!("questions-{what}-{}", rung.word()), &[]));
        let row = |(number, question): &(usize, Question)| Row {
            number: *number,
            question: said("ask", question, sources),
            answer: answered(question.answer, words),
            working: said("working", question, sources),
        };
        Part {
            marks: marks(rung),
            heading: words.say("questions-heading", &[("rung", rung_said.into()), ("ages", ages.into())]),
            rows: of(&all, rung).iter().map(row).collect(),
        }
    };
    let heads = ["number", "question", "answer", "working"];
    let content = Answers {
        title: words.say("questions-answers", &[]),
        intro: words.say("questions-about-answers", &[]),
        heads: heads.map(|head| words.say(&format!("questions-{head}"), &[])),
        parts: Rung::ALL.map(part).into(),
    };
    Reading { name: "answers", foot: Foot::Line, content, pictures: Vec::new() }.document(sources)
}

/// The questions with their numbers from 1.
fn numbered(sources: &Sources) -> Vec<(usize, Question)> {
    let unit = match sources.settings.print.units {
        Units::Inch => Unit::Inch,
        Units::Mm => Unit::Mm,
    };
    (1..).zip(questions(sources.facts, sources.picture, &sources.printed.grid, unit)).collect()
}

fn of(all: &[(usize, Question)], rung: Rung) -> Vec<(usize, Question)> {
    all.iter().filter(|(_, question)| question.rung == rung).cloned().collect()
}

/// The sign of a rung: so many small squares, or a star for 0.
fn marks(rung: Rung) -> usize {
    match rung {
        Rung::See => 1,
        Rung::Count => 2,
        Rung::Compare => 3,
        Rung::Explain => 0,
    }
}

fn card(
    (number, question): &(usize, Question),
    area: Box,
    sources: &Sources,
    pictures: &mut Vec<Image>,
) -> Card {
    let (rung, words) = (question.rung, sources.words);
    let say = |id: &str| words.say(id, &[]);
    let size = match rung {
        Rung::See => 17.0,
        Rung::Count => 16.0,
        Rung::Compare | Rung::Explain => 15.0,
    };
    let guess = (question.kind == "guess").then(|| say("questions-guess"));
    Card {
        area,
        number: *number,
        marks: marks(rung),
        rung: say(&format!("questions-rung-{}", rung.word())),
        aloud: (rung == Rung::See).then(|| say("questions-aloud")),
        question: unbroken(&said("ask", question, sources)),
        lines: guess.into_iter().chain([say("questions-answer")]).collect(),
        request: (rung == Rung::Explain).then(|| say("questions-request")),
        size,
        shown: Stage { sources, pictures }.seen(&question.shown),
    }
}

/// The question with spaces that no line ends at, where a sign joins what stands beside it: “10 : 8 = 5 : ☐”.
fn unbroken(question: &str) -> String {
    let signs = ["×", ":", "=", "+", "÷"];
    signs.iter().fold(question.to_owned(), |said, sign| {
        said.replace(&format!(" {sign} "), &format!("\u{a0}{sign}\u{a0}"))
    })
}
