//! `math-page.pdf`: the mural's lengths and areas for three kinds of learners, what was planned beside what was measured, and
//! the outlines of the picture over the mural. No number says how alike the two are: nothing is graded.

use serde::Serialize;

use super::exhibit::{Exhibit, original_mm, room, wall_mm, whole_at_size};
use super::said::{area, large_area, length, measured, measured_length, number};
use crate::display::measure::{Between, Measured, Run};
use crate::frame::float;
use crate::picture::questions::Rung;
use crate::plan::cell::column_letters;
use crate::print::PrintError;
use crate::print::blocks::{Block, Writer};
use crate::print::page::{Foot, Reading, Set};
use crate::print::typeset::Image;
use crate::words::Words;

/// Blocks of pieces in the table of the ratio's pattern: up to so many a side.
const BLOCKS: usize = 5;
/// Rows and columns that are named where they hang askew, those first that do most.
const MOST_RUNS: usize = 4;
/// What nobody sees from a step away and no tape measure shows, in mm.
const SEEN_MM: f64 = 2.0;
/// The largest part of a page's height that the view of edges takes; words stand around it.
const VIEW_HIGH: f64 = 0.36;

/// What the template sets.
#[derive(Serialize)]
struct Content {
    blocks: Vec<Block>,
    /// Width and height of the view of edges, in mm.
    view: [f64; 2],
}

/// Lays the pages out.
///
/// # Errors
/// [`PrintError::Typeset`].
pub(super) fn set(exhibit: &Exhibit) -> Result<Set, PrintError> {
    let writer = Writer { sources: exhibit.sources(), values: values(exhibit) };
    let mut blocks = vec![writer.title("print-math-page"), Block::Text { text: event(exhibit) }];
    blocks.extend(exhibit.made().map(|text| Block::Note { text }));
    blocks.extend(learners(&writer, exhibit));
    blocks.extend(pattern(&writer, exhibit));
    blocks.extend(planned_and_measured(&writer, exhibit));
    blocks.extend(outlines(&writer));
    let (view, picture) = view(exhibit);
    exhibit.set(Reading {
        name: "math-page",
        foot: Foot::Line,
        content: Content { blocks, view },
        pictures: vec![picture],
    })
}

fn event(exhibit: &Exhibit) -> String {
    exhibit.sources().settings.name.clone()
}

/// What every sentence may name.
fn values(exhibit: &Exhibit) -> Vec<(&'static str, crate::words::FluentValue<'static>)> {
    let (sources, grid) = (exhibit.sources(), exhibit.counted());
    let scale = exhibit.planned_scale();
    let ([width, height], [wall_width, wall_height]) = (original_mm(&grid), wall_mm(&grid));
    let around = |[width, height]: [f64; 2]| length(sources, 2.0 * (width + height));
    vec![
        ("squares", grid.count().into()),
        ("columns", grid.columns.into()),
        ("rows", grid.rows.into()),
        ("scale", number(scale, 2).into()),
        ("copies", number(scale * scale, 2).into()),
        ("piece", length(sources, grid.piece_mm).into()),
        ("square", length(sources, grid.square_mm).into()),
        ("width", length(sources, width).into()),
        ("height", length(sources, height).into()),
        ("wall-width", length(sources, wall_width).into()),
        ("wall-height", length(sources, wall_height).into()),
        ("area", area(sources, width * height).into()),
        ("wall-area", large_area(sources, wall_width * wall_height).into()),
        ("around", around([width, height]).into()),
        ("wall-around", around([wall_width, wall_height]).into()),
    ]
}

/// For each rung of learners what they can find out about this wall.
fn learners(w: &Writer, exhibit: &Exhibit) -> Vec<Block> {
    let grid = exhibit.counted();
    let count_both = if grid.columns > 1 && grid.rows > 1 {
        "comparison-multiplying-1"
    } else {
        "comparison-multiplying-row"
    };
    let parts = [
        (Rung::See, vec!["comparison-counting-1", "comparison-counting-2"]),
        (Rung::Count, vec![count_both, "comparison-multiplying-2", "comparison-multiplying-3"]),
        (
            Rung::Compare,
            vec!["comparison-ratio-1", "comparison-ratio-2", "comparison-ratio-3", "comparison-ratio-4"],
        ),
    ];
    let part = |(rung, ids): (Rung, Vec<&str>)| {
        let said = |what: &str| w.say(&format!("questions-{what}-{}", rung.word()));
        let heading = [("rung", said("rung").into()), ("ages", said("ages").into())];
        [
            Block::Heading { text: w.say_with("questions-heading", &heading) },
            Block::List { items: ids.into_iter().map(|id| w.say(id)).collect() },
        ]
    };
    parts.into_iter().flat_map(part).collect()
}

/// Sides grow by the factor, areas by its square: a table of blocks of pieces.
fn pattern(w: &Writer, exhibit: &Exhibit) -> Vec<Block> {
    let (sources, grid) = (exhibit.sources(), exhibit.grid());
    let row = |n: usize| {
        let (small, large) = (float(n) * grid.piece_mm, float(n) * grid.square_mm);
        vec![
            format!("{n} × {n}"),
            length(sources, small),
            length(sources, large),
            area(sources, small * small),
            area(sources, large * large),
        ]
    };
    let heads = [
        "comparison-block",
        "comparison-side-picture",
        "comparison-side-wall",
        "comparison-area-picture",
        "comparison-area-wall",
    ];
    vec![
        w.heading("comparison-pattern"),
        w.text("comparison-pattern-intro"),
        Block::Table { heads: w.heads(&heads), widths: vec![1.0; 5], rows: (1..=BLOCKS).map(row).collect() },
    ]
}

/// A table of what was planned and what was measured, and in words how straight everything hangs.
fn planned_and_measured(w: &Writer, exhibit: &Exhibit) -> Vec<Block> {
    let mut blocks = vec![w.title("comparison-measuring")];
    let Some(found) = exhibit.measured else {
        blocks.push(w.text("comparison-not-measured"));
        return blocks;
    };
    let (sources, grid) = (exhibit.sources(), exhibit.grid());
    let [width, height] = exhibit.wall_mm();
    let row = |id: &str, planned: f64, found| {
        vec![w.say(id), length(sources, planned), measured_length(sources, found)]
    };
    let rows = vec![
        vec![
            w.say("comparison-scale-factor"),
            number(exhibit.planned_scale(), 2),
            measured(found.scale_factor, 2),
        ],
        row("comparison-pitch", grid.square_mm, found.pitch),
        row("comparison-width", width, found.width),
        row("comparison-height", height, found.height),
    ];
    let count = [("count", found.squares.into())];
    blocks.push(Block::Text { text: w.say_with("comparison-measuring-intro", &count) });
    let heads = w.heads(&["comparison-what", "comparison-plan", "comparison-found"]);
    blocks.push(Block::Table { heads, widths: vec![1.6, 1.0, 1.2], rows });
    blocks.push(w.heading("comparison-straight"));
    blocks.push(Block::List { items: straight(exhibit, found) });
    blocks.push(w.text("comparison-straight-kind"));
    blocks
}

/// How rows and columns run, and where squares stand apart or over each other.
fn straight(exhibit: &Exhibit, found: &Measured) -> Vec<String> {
    let words = exhibit.sources().words;
    let grid = exhibit.grid();
    let row = |run: &Run| words.say("print-row", &[("row", grid.row_number(run.index).to_string().into())]);
    let column = |run: &Run| words.say("comparison-column", &[("column", column_letters(run.index).into())]);
    let mut all = Vec::new();
    let known = |index: usize, most: usize| index < most;
    for run in found.rows.iter().filter(|run| known(run.index, grid.rows)) {
        all.extend(askew(
            exhibit,
            &row(run),
            run,
            ["comparison-lower", "comparison-higher", "comparison-sinks", "comparison-rises"],
        ));
    }
    for run in found.columns.iter().filter(|run| known(run.index, grid.columns)) {
        all.extend(askew(
            exhibit,
            &column(run),
            run,
            ["comparison-right-of", "comparison-left-of", "comparison-leans-right", "comparison-leans-left"],
        ));
    }
    all.sort_by(|(a, _), (b, _)| b.total_cmp(a)); // stable: rows before columns, from the top and the left
    let mut said: Vec<String> = all.into_iter().take(MOST_RUNS).map(|(_, said)| said).collect();
    if said.is_empty() {
        said.push(words.say("comparison-all-straight", &[]));
    }
    said.extend(found.widest_gap.as_ref().and_then(|gap| between(exhibit, "comparison-gap", gap)));
    said.extend(found.largest_overlap.as_ref().and_then(|over| between(exhibit, "comparison-overlap", over)));
    said
}

/// What is to be said of a row or column: how far beside its place it lies, how far one end lies beside the other; each with
/// its size in mm.
fn askew(exhibit: &Exhibit, name: &str, run: &Run, ids: [&'static str; 4]) -> Vec<(f64, String)> {
    let words: &Words = exhibit.sources().words;
    let [plus, minus, lean_plus, lean_minus] = ids;
    let both = [(run.drift, plus, minus), (run.lean, lean_plus, lean_minus)];
    let seen = both.into_iter().filter(|(by, ..)| by.value.abs() > by.within.abs().max(SEEN_MM));
    let said = seen.map(|(by, plus, minus)| {
        let id = if by.value > 0.0 { plus } else { minus };
        let size = crate::display::measure::Quantity { value: by.value.abs(), within: by.within };
        let values = [("name", name.into()), ("by", measured_length(exhibit.sources(), size).into())];
        (size.value, words.say(id, &values))
    });
    said.collect()
}

fn between(exhibit: &Exhibit, id: &str, between: &Between) -> Option<String> {
    let grid = exhibit.grid();
    let [first, second] = between.cells;
    let values = [
        ("by", measured_length(exhibit.sources(), between.mm).into()),
        ("first", grid.label(first).into()),
        ("second", grid.label(second).into()),
    ];
    (grid.holds(first) && grid.holds(second)).then(|| exhibit.sources().words.say(id, &values))
}

/// The outlines of the picture over the mural.
fn outlines(w: &Writer) -> Vec<Block> {
    vec![
        w.heading("comparison-outlines"),
        w.text("comparison-edges"),
        Block::Drawing { about: w.say("comparison-edges-alt") },
    ]
}

/// The view of edges, and how large it is.
fn view(exhibit: &Exhibit) -> ([f64; 2], Image) {
    let [most_wide, most_high] = room(exhibit.sources());
    let overlap = exhibit.input.overlap;
    let (across, down) = (f64::from(overlap.width()), f64::from(overlap.height()));
    let scale = (most_wide / across).min(most_high * VIEW_HIGH / down);
    let size = [across * scale, down * scale];
    (size, whole_at_size(overlap, size))
}
