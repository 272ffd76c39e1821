//! `wall-map.pdf`: where everything goes on the wall: a drawing to scale, and the distances for strings or pencil lines.

use serde::Serialize;

use super::lengths::{both, distances, one};
use super::numbers::Example;
use super::page::Reading;
use super::wall_drawing::Drawing;
use super::{Document, PrintError, Sources};
use crate::frame::float;
use crate::plan::cards::{EDGE_CARD_MOST_MM, RING_MM};
use crate::plan::cell::column_letters;
use crate::plan::crowd::{RowHeight, WallPlan};
use crate::plan::settings::{Choice, Units};

/// Lines that stand side by side in the table of columns.
const MOST_BLOCKS: usize = 3;
/// Columns from which the table is worth dividing.
const ROWS_IN_A_BLOCK: usize = 12;

/// What the template sets.
#[derive(Serialize)]
struct Content {
    title: String,
    facts: Vec<String>,
    alt: String,
    drawing: Drawing,
    columns_title: String,
    columns_intro: String,
    columns_heads: Vec<String>,
    columns: Vec<Vec<String>>,
    blocks: usize,
    rows_title: String,
    rows_intro: String,
    rows_heads: Vec<String>,
    rows: Vec<Vec<String>>,
    cards_title: String,
    cards: Vec<String>,
}

/// Typesets the document.
///
/// # Errors
/// [`PrintError::Typeset`].
pub(super) fn document(sources: &Sources) -> Result<Document, PrintError> {
    let words = sources.words;
    let say = |id: &str| words.say(id, &[]);
    let grid = &sources.settings.grid;
    let lines = columns(sources);
    let wall = &sources.evening.wall;
    let size = [("columns", grid.columns.to_string().into()), ("rows", grid.rows.to_string().into())];
    let content = Content {
        title: say("print-wall-map"),
        facts: facts(sources, wall),
        alt: words.say("wall-map-alt", &size),
        drawing: Drawing::of(sources, wall),
        columns_title: say("wall-map-columns-title"),
        columns_intro: say("wall-map-columns-intro"),
        columns_heads: heads(sources, "wall-map-column", "wall-map-from-left"),
        blocks: lines.len().div_ceil(ROWS_IN_A_BLOCK).min(MOST_BLOCKS),
        columns: lines,
        rows_title: say("wall-map-rows-title"),
        rows_intro: say("wall-map-rows-intro"),
        rows_heads: row_heads(sources),
        rows: rows(sources, wall),
        cards_title: say("print-edge-cards"),
        cards: cards(sources),
    };
    Reading { name: "wall-map", content, pictures: Vec::new() }.document(sources)
}

/// Sizes and heights, a sentence each.
fn facts(sources: &Sources, wall: &WallPlan) -> Vec<String> {
    let words = sources.words;
    let length = |mm: f64| both(sources, mm).into();
    let Example { label, column, row } = Example::of(sources);
    let from = sources.printed.grid.rows_from.word().into();
    let mut facts = vec![
        words.say("wall-map-label", &[("label", label), ("column", column), ("row", row), ("from", from)]),
        words
            .say("wall-map-squares", &[("width", length(wall.width_mm)), ("height", length(wall.height_mm))]),
        words.say(
            "wall-map-with-cards",
            &[("width", length(wall.width_with_cards_mm)), ("height", length(wall.height_with_cards_mm))],
        ),
        words.say(
            if sources.settings.evening.hang_mm.is_some() {
                "wall-map-hang"
            } else {
                "wall-map-hang-proposed"
            },
            &[("height", length(wall.hang_mm))],
        ),
    ];
    let fit = wall.fit.map(|fit| {
        let room = [
            ("width", both(sources, fit.room.width_mm).into()),
            ("height", both(sources, fit.room.height_mm).into()),
        ];
        let id = match (fit.with_cards, fit.squares) {
            (true, _) => "wall-map-fits",
            (false, true) => "wall-map-fits-without-cards",
            (false, false) => "wall-map-does-not-fit",
        };
        words.say(id, &room)
    });
    facts.extend(fit);
    facts.extend(sources.settings.grid.border.then(|| words.say("wall-map-border", &[])));
    facts
}

/// A table's heads: what a line is, and its distance in both units, the one of the settings first.
fn heads(sources: &Sources, what: &str, distance: &str) -> Vec<String> {
    let said = |unit: &str| {
        let unit = sources.words.say(unit, &[]);
        sources.words.say(distance, &[("unit", unit.into())])
    };
    let [first, second] = units(sources);
    vec![sources.words.say(what, &[]), said(first), said(second)]
}

fn units(sources: &Sources) -> [&'static str; 2] {
    match sources.settings.print.units {
        Units::Inch => ["unit-inch", "unit-mm"],
        Units::Mm => ["unit-mm", "unit-inch"],
    }
}

/// For every column the distance of its left edge, and that of the last one's right edge.
fn columns(sources: &Sources) -> Vec<Vec<String>> {
    let grid = &sources.settings.grid;
    let line = |column: usize| {
        let name = if column < grid.columns {
            sources.words.say("wall-map-left-of", &[("column", column_letters(column).into())])
        } else {
            sources.words.say("wall-map-right-of", &[("column", column_letters(column - 1).into())])
        };
        let mut cells = vec![name];
        cells.extend(distances(sources, float(column) * grid.square_mm));
        cells
    };
    (0..=grid.columns).map(line).collect()
}

fn row_heads(sources: &Sources) -> Vec<String> {
    let mut all = heads(sources, "wall-map-row", "wall-map-lower");
    all.extend(heads(sources, "wall-map-row", "wall-map-upper").into_iter().skip(1));
    all
}

/// For every row, the highest first, its lower and its upper edge over the floor.
fn rows(sources: &Sources, wall: &WallPlan) -> Vec<Vec<String>> {
    let row = |row: &RowHeight| {
        let mut cells = vec![row.number.to_string()];
        cells.extend(distances(sources, row.lower_mm));
        cells.extend(distances(sources, row.upper_mm));
        cells
    };
    wall.rows.iter().map(row).collect()
}

/// Where the cards go, a sentence a kind.
fn cards(sources: &Sources) -> Vec<String> {
    let ring = one(sources, RING_MM);
    let side = sources.settings.grid.square_mm.min(EDGE_CARD_MOST_MM);
    let said = [("ring", ring.into()), ("side", one(sources, side).into())];
    ["wall-map-column-cards", "wall-map-row-cards", "wall-map-corner-cards"]
        .map(|id| sources.words.say(id, &said))
        .into()
}
