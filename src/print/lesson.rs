//! `lesson.pdf`: a lesson with this picture, on four pages for whoever teaches it: aims and timing, words and talk, entries for everyone and
//! questions about one's own piece, exit question, answers and what may follow.
//!
//! Every number is worked out from this picture. The field for the local standard is left empty: it is the teacher's.

use serde::Serialize;

use super::blocks::{Block, Writer};
use super::numbers::{Example, decimals};
use super::page::{Foot, Reading, listed};
use super::piece_back::level_word;
use super::{Document, PrintError, Sources};
use crate::frame::{MM_PER_INCH, float, round_index};
use crate::plan::Level;
use crate::plan::lengths::exact;
use crate::plan::settings::Units;
use crate::words::FluentValue;

/// The document's name.
pub(super) const NAME: &str = "lesson";

/// Minutes of the parts of one lesson of 40 minutes, and of two.
const ONE: [usize; 5] = [5, 5, 20, 5, 5];
const TWO: [[usize; 4]; 2] = [[5, 10, 20, 5], [5, 20, 10, 5]];
/// Minutes of drawing in one lesson.
const DRAWING: usize = ONE[2];
/// Another scale factor, for those who want more.
const OTHER_SCALE: usize = 3;

/// What the template sets.
#[derive(Serialize)]
struct Content {
    blocks: Vec<Block>,
}

/// Typesets the document.
///
/// # Errors
/// [`PrintError::Typeset`].
pub fn lesson(sources: &Sources) -> Result<Document, PrintError> {
    let writer = Writer { sources, values: values(sources) };
    let pages = [overview(&writer), talk(&writer), everyone(&writer), exit(&writer)];
    Reading {
        name: NAME,
        foot: Foot::Line,
        content: Content { blocks: pages.concat() },
        pictures: Vec::new(),
    }
    .document(sources)
}

/// Every number that a sentence may name.
fn values(sources: &Sources) -> Vec<(&'static str, FluentValue<'static>)> {
    let Sources { settings, facts, .. } = *sources;
    let grid = settings.grid.within_border();
    let scale = grid.square_mm / grid.piece_mm;
    let length = |mm: f64| FluentValue::from(exact(mm, settings.print.units, sources.words));
    // two lines on a piece: the first is looked for on the square, the second is found from there
    let [line, other_line] = match settings.print.units {
        Units::Inch => [MM_PER_INCH / 2.0, MM_PER_INCH * 0.75],
        Units::Mm => [10.0, 15.0],
    };
    let levels = Level::ALL.map(|level| facts.count(level));
    let minutes = settings.evening.minutes_a_piece;
    let in_time: Vec<Level> = Level::ALL
        .into_iter()
        .filter(|level| facts.count(*level) > 0 && minutes[level.index()] <= float(DRAWING))
        .collect();
    let names: Vec<String> = in_time.iter().map(|level| level_word(sources, *level)).collect();
    let hundredths = |value: f64| decimals(round_index(value * 100.0), 100);
    vec![
        ("event", settings.name.clone().into()),
        ("squares", grid.count().into()),
        ("columns", grid.columns.into()),
        ("rows", grid.rows.into()),
        ("colours", facts.pencils.len().into()),
        ("scale", hundredths(scale).into()),
        ("area-scale", hundredths(scale * scale).into()),
        ("piece", length(grid.piece_mm)),
        ("square", length(grid.square_mm)),
        ("piece-around", length(4.0 * grid.piece_mm)),
        ("square-around", length(4.0 * grid.square_mm)),
        ("mural-width", length(float(grid.columns) * grid.square_mm)),
        ("mural-height", length(float(grid.rows) * grid.square_mm)),
        ("line", length(line)),
        ("line-larger", length(line * scale)),
        ("line-on-square", length(other_line * scale)),
        ("line-smaller", length(other_line)),
        ("other-scale", OTHER_SCALE.into()),
        ("other-side", length(float(OTHER_SCALE) * grid.piece_mm)),
        ("other-area", (OTHER_SCALE * OTHER_SCALE).into()),
        ("drawing", DRAWING.into()),
        ("in-time", in_time.iter().map(|level| facts.count(*level)).sum::<usize>().into()),
        ("label", Example::of(sources).label),
        ("levels", listed(names.iter().map(String::as_str)).into()),
        ("support", (levels[0] + levels[1]).into()),
        ("core", levels[2].into()),
        ("more", levels[3].into()),
    ]
}

/// Aims, the standard's field, timing.
fn overview(w: &Writer) -> Vec<Block> {
    vec![
        w.title("lesson-title"),
        w.text("lesson-intro"),
        w.heading("lesson-aims"),
        w.list("lesson-aims", 4),
        Block::Form {
            heads: w.heads(&["lesson-standard", "lesson-standard-write"]),
            widths: vec![0.0, 1.0],
            rows: vec![vec![String::new(); 2]],
        },
        w.heading("lesson-one"),
        timed(w, &ONE, w.steps("lesson-one", 5)),
        w.text("lesson-in-time"),
        w.heading("lesson-two"),
        w.text("lesson-two-first"),
        timed(w, &TWO[0], w.steps("lesson-two-first", 4)),
        w.text("lesson-two-second"),
        timed(w, &TWO[1], w.steps("lesson-two-second", 4)),
    ]
}

/// Steps of a lesson, each with its minutes.
fn timed(w: &Writer, minutes: &[usize], steps: Block) -> Block {
    let rows = minutes.iter().zip(items(steps)).map(|(minutes, step)| vec![minutes.to_string(), step]);
    Block::Table {
        heads: w.heads(&["lesson-minutes", "lesson-what"]),
        widths: vec![0.0, 1.0],
        rows: rows.collect(),
    }
}

/// What a block of steps says, step by step.
fn items(steps: Block) -> Vec<String> {
    if let Block::Steps { items } = steps { items } else { Vec::new() }
}

/// Words to use, and what to talk about.
fn talk(w: &Writer) -> Vec<Block> {
    let words = [
        ["lesson-word-grid", "lesson-word-grid-means", "lesson-word-grid-here"],
        ["lesson-word-label", "lesson-word-label-means", "lesson-word-label-here"],
        ["lesson-word-scale", "lesson-word-scale-means", "lesson-word-scale-here"],
        ["lesson-word-similar", "lesson-word-similar-means", "lesson-word-similar-here"],
        ["lesson-word-perimeter", "lesson-word-perimeter-means", "lesson-word-perimeter-here"],
        ["lesson-word-area", "lesson-word-area-means", "lesson-word-area-here"],
        ["lesson-word-fraction", "lesson-word-fraction-means", "lesson-word-fraction-here"],
    ];
    let part = |id: &str, count: usize| [w.heading(id), w.list(id, count)];
    [
        vec![
            w.title("lesson-words"),
            Block::Table {
                heads: w.heads(&["lesson-word", "lesson-means", "lesson-here"]),
                widths: vec![0.0, 1.0, 1.0],
                rows: words.map(|ids| w.heads(&ids)).into(),
            },
        ],
        part("lesson-before", 3).into(),
        part("lesson-while", 3).into(),
        part("lesson-after", 3).into(),
    ]
    .concat()
}

/// Three ways in, and questions about one's own piece.
fn everyone(w: &Writer) -> Vec<Block> {
    let ways = [
        ["lesson-support", "lesson-support-pieces", "lesson-support-do"],
        ["lesson-core", "lesson-core-pieces", "lesson-core-do"],
        ["lesson-more", "lesson-more-pieces", "lesson-more-do"],
    ];
    let question = |(number, text): (usize, String)| vec![(number + 1).to_string(), text, String::new()];
    vec![
        w.title("lesson-everyone"),
        w.text("lesson-everyone-intro"),
        Block::Table {
            heads: w.heads(&["lesson-way", "lesson-pieces", "lesson-do"]),
            widths: vec![0.0, 1.0, 2.0],
            rows: ways.map(|ids| w.heads(&ids)).into(),
        },
        w.heading("lesson-own"),
        w.text("lesson-own-intro"),
        Block::Form {
            heads: w.heads(&["lesson-number", "lesson-question", "lesson-answer"]),
            widths: vec![0.0, 1.4, 1.0],
            rows: items(w.steps("lesson-own", 6)).into_iter().enumerate().map(question).collect(),
        },
    ]
}

/// The exit question, answers, how to see that it was understood, what may follow.
fn exit(w: &Writer) -> Vec<Block> {
    vec![
        w.title("lesson-exit"),
        w.note("lesson-exit-question"),
        w.text("lesson-exit-answer"),
        w.heading("lesson-seen"),
        w.list("lesson-seen", 3),
        w.heading("lesson-answers"),
        w.steps("lesson-answers", 6),
        w.heading("lesson-follow"),
        w.list("lesson-follow", 3),
    ]
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn lessons_have_40_minutes() {
        assert_eq!(ONE.iter().sum::<usize>(), 40);
        assert!(TWO.iter().all(|lesson| lesson.iter().sum::<usize>() == 40));
    }
}
