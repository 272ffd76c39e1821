//! `side-by-side.pdf`: original and wall at the same size, beside each other or one above the other, whichever makes them
//! larger; each with a bar in its own true scale.

use serde::Serialize;

use super::exhibit::{Exhibit, Head, original_mm, wall_mm};
use super::said::{large_area, length, measured, number};
use super::scale_bar::ScaleBar;
use crate::frame::float;
use crate::print::PrintError;
use crate::print::page::{Foot, Reading, Set};

/// What the template sets.
#[derive(Serialize)]
struct Content {
    head: Head,
    alt: String,
    /// Height by width of both.
    ratio: f64,
    /// Original and wall.
    figures: [Figure; 2],
    /// What is to be known, a sentence each.
    facts: Vec<String>,
    thanks: String,
    /// Whose picture it is.
    credit: Option<String>,
}

#[derive(Serialize)]
struct Figure {
    name: String,
    bar: ScaleBar,
}

/// Lays the pages out.
///
/// # Errors
/// [`PrintError::Typeset`].
pub(super) fn set(exhibit: &Exhibit) -> Result<Set, PrintError> {
    let (sources, grid) = (exhibit.sources(), exhibit.grid());
    let figure = |id: &str, mm: f64| Figure { name: exhibit.say(id), bar: ScaleBar::of(sources, mm) };
    let content = Content {
        head: exhibit.head("side-by-side").with_event_first(),
        alt: exhibit.say("comparison-both-alt"),
        ratio: float(grid.rows) / float(grid.columns),
        figures: [
            figure("comparison-original", exhibit.original_mm()[0]),
            figure("comparison-wall", exhibit.wall_mm()[0]),
        ],
        facts: facts(exhibit),
        thanks: exhibit.say("comparison-thanks"),
        credit: sources.credit(),
    };
    let pictures = vec![exhibit.original.clone(), exhibit.wall.clone()];
    exhibit.set(Reading { name: "side-by-side", foot: Foot::Line, content, pictures })
}

fn facts(exhibit: &Exhibit) -> Vec<String> {
    let words = exhibit.sources().words;
    let mut facts = vec![counted(exhibit), planned(exhibit)];
    let grid = exhibit.counted();
    for (id, [width, height]) in
        [("comparison-original-size", original_mm(&grid)), ("comparison-wall-size", wall_mm(&grid))]
    {
        let said = [
            ("width", length(exhibit.sources(), width).into()),
            ("height", length(exhibit.sources(), height).into()),
            ("area", large_area(exhibit.sources(), width * height).into()),
        ];
        facts.push(words.say(id, &said));
    }
    facts
}

/// How many squares there are, and how many of them were seen in their place.
pub(super) fn counted(exhibit: &Exhibit) -> String {
    let (grid, counts) = (exhibit.counted(), &exhibit.input.counts);
    let said = [
        ("squares", grid.hanging().into()),
        ("columns", grid.columns.into()),
        ("rows", grid.rows.into()),
        ("right", counts.right.into()),
    ];
    let id = if counts.right >= counts.cells && counts.cells > 0 {
        "comparison-all-right"
    } else {
        "comparison-right"
    };
    exhibit.sources().words.say(id, &said)
}

/// How many times as long everything was to be.
pub(super) fn planned(exhibit: &Exhibit) -> String {
    let (sources, grid) = (exhibit.sources(), exhibit.grid());
    let said = [
        ("scale", number(exhibit.planned_scale(), 2).into()),
        ("piece", length(sources, grid.piece_mm).into()),
        ("square", length(sources, grid.square_mm).into()),
    ];
    sources.words.say("comparison-planned", &said)
}

/// How many times as long it is, as far as it could be measured.
pub(super) fn measured_scale(exhibit: &Exhibit) -> String {
    let words = exhibit.sources().words;
    match exhibit.measured {
        None => words.say("comparison-not-measured", &[]),
        Some(found) => {
            let said = [("scale", measured(found.scale_factor, 2).into()), ("squares", found.squares.into())];
            words.say("comparison-measured", &said)
        }
    }
}
