//! `wall-map.pdf`: where everything goes on the wall: a drawing to scale with the distances for strings or pencil lines; tables of them
//! only where the drawing has no room for all.

use serde::Serialize;

use super::lengths::{both, distances, one};
use super::numbers::Example;
use super::page::{Foot, Reading};
use super::wall_drawing::Drawing;
use super::{Document, PrintError, Sources};
use crate::frame::float;
use crate::plan::Settings;
use crate::plan::cards::{EDGE_CARD_MOST_MM, RING_MM};
use crate::plan::cell::column_letters;
use crate::plan::crowd::{WallPlan, boards_told, part_hang_mm};
use crate::plan::settings::{Choice, Units, WallPart};
use crate::words::FluentValue;

/// Lines that stand side by side in the table of columns.
const MOST_BLOCKS: usize = 3;
/// Columns from which the table is worth dividing.
const ROWS_IN_A_BLOCK: usize = 12;

/// What the template sets.
#[derive(Serialize)]
struct Content {
    title: String,
    maps: Maps,
}

/// Maps of all parts of the wall.
#[derive(Serialize)]
pub(super) struct Maps {
    facts: Vec<String>,
    sheets: Vec<Sheet>,
    how_title: String,
    how: Vec<String>,
    columns_title: String,
    columns_heads: Vec<String>,
    rows_title: String,
    rows_heads: Vec<String>,
}

/// One part of the wall, or all of it.
#[derive(Serialize)]
struct Sheet {
    /// Nothing where the wall is one piece.
    heading: String,
    alt: String,
    drawing: Drawing,
    /// The distances again where the drawing has no room for all of them.
    tables: Option<Tables>,
}

/// Distances of columns and rows, line by line.
#[derive(Serialize)]
struct Tables {
    columns: Vec<Vec<String>>,
    blocks: usize,
    rows: Vec<Vec<String>>,
}

impl Sheet {
    fn of(sources: &Sources, part: &WallPart, heading: String) -> Self {
        let grid = &sources.settings.grid;
        let hang_mm = part_hang_mm(part, grid, sources.settings.evening.hang_mm);
        let drawing = Drawing::of(sources, part, hang_mm);
        let size = [("columns", part.columns().to_string().into()), ("rows", part.rows().to_string().into())];
        Self {
            heading,
            alt: sources.words.say("wall-map-alt", &size),
            tables: (!drawing.has_all).then(|| Tables::of(sources, part, hang_mm)),
            drawing,
        }
    }
}

impl Tables {
    fn of(sources: &Sources, part: &WallPart, hang_mm: f64) -> Self {
        let columns = columns(sources, part);
        let blocks = columns.len().div_ceil(ROWS_IN_A_BLOCK).min(MOST_BLOCKS);
        Self { columns, blocks, rows: rows(sources, part, hang_mm) }
    }
}

/// A sheet for each part of the wall.
fn sheets(sources: &Sources, wall: &WallPlan) -> Vec<Sheet> {
    let Settings { grid, parts, .. } = sources.settings;
    if parts.is_empty() {
        return vec![Sheet::of(sources, &WallPart::whole(grid, wall.hang_mm), String::new())];
    }
    let numbered = parts.iter().zip(1_usize..);
    numbered.map(|(part, number)| Sheet::of(sources, part, part_name(sources, part, number))).collect()
}

/// What people call a part: its number, its place where it has one, and its spots.
pub(super) fn part_name(sources: &Sources, part: &WallPart, number: usize) -> String {
    let (from, to) = part.ends(&sources.settings.grid);
    let mut named: Vec<(&str, FluentValue)> =
        vec![("number", number.to_string().into()), ("from", from.into()), ("to", to.into())];
    named.extend(part.place.as_ref().map(|place| ("place", place.clone().into())));
    sources.words.say(if part.place.is_some() { "wall-map-part-at" } else { "wall-map-part" }, &named)
}

/// Typesets the document.
///
/// # Errors
/// [`PrintError::Typeset`].
pub(super) fn document(sources: &Sources) -> Result<Document, PrintError> {
    let content = Content { title: sources.words.say("print-wall-map", &[]), maps: Maps::of(sources) };
    Reading { name: "wall-map", foot: Foot::Line, content, pictures: Vec::new() }.document(sources)
}

impl Maps {
    /// Those of the parts in the settings.
    pub fn of(sources: &Sources) -> Self {
        let say = |id: &str| sources.words.say(id, &[]);
        let wall = &sources.evening.wall;
        Self {
            facts: facts(sources, wall),
            sheets: sheets(sources, wall),
            how_title: say("wall-map-how-title"),
            how: how(sources),
            columns_title: say("wall-map-columns-title"),
            columns_heads: heads(sources, "wall-map-column", "wall-map-from-left"),
            rows_title: say("wall-map-rows-title"),
            rows_heads: row_heads(sources),
        }
    }
}

/// Sizes and heights, a sentence each.
fn facts(sources: &Sources, wall: &WallPlan) -> Vec<String> {
    let words = sources.words;
    let length = |mm: f64| both(sources, mm).into();
    let Example { label, column, row } = Example::of(sources);
    let from = sources.printed.grid.rows_from.word().into();
    let named =
        words.say("wall-map-label", &[("label", label), ("column", column), ("row", row), ("from", from)]);
    let parts = sources.settings.parts.len();
    if parts > 0 {
        let boards = boards_told(sources.settings, words)
            .map(|boards| words.say("wall-map-boards", &[("boards", boards.into())]));
        let parts = words.say("wall-map-parts", &[("count", parts.into())]);
        return [named, parts].into_iter().chain(boards).collect();
    }
    let mut facts = vec![
        named,
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
    let grid = &sources.settings.grid;
    facts.extend(grid.kept_free.told(grid, "wall-map-free", words));
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

/// For every column of a part the distance of its left edge from that of the first, and that of the last one's right edge.
fn columns(sources: &Sources, part: &WallPart) -> Vec<Vec<String>> {
    let grid = &sources.settings.grid;
    let line = |column: usize| {
        let name = if column <= part.last.column {
            sources.words.say("wall-map-left-of", &[("column", column_letters(column).into())])
        } else {
            sources.words.say("wall-map-right-of", &[("column", column_letters(column - 1).into())])
        };
        let mut cells = vec![name];
        cells.extend(distances(sources, float(column - part.first.column) * grid.square_mm));
        cells
    };
    (part.first.column..=part.last.column + 1).map(line).collect()
}

fn row_heads(sources: &Sources) -> Vec<String> {
    let mut all = heads(sources, "wall-map-row", "wall-map-lower");
    all.extend(heads(sources, "wall-map-row", "wall-map-upper").into_iter().skip(1));
    all
}

/// For every row of a part, the highest first, its lower and its upper edge over the floor.
fn rows(sources: &Sources, part: &WallPart, hang_mm: f64) -> Vec<Vec<String>> {
    let grid = &sources.settings.grid;
    let row = |row: usize| {
        let lower_mm = hang_mm + float(part.last.row - row) * grid.square_mm;
        let mut cells = vec![grid.row_number(row).to_string()];
        cells.extend(distances(sources, lower_mm));
        cells.extend(distances(sources, lower_mm + grid.square_mm));
        cells
    };
    (part.first.row..=part.last.row).map(row).collect()
}

/// How lines are made, and where the cards go, a sentence each.
fn how(sources: &Sources) -> Vec<String> {
    let ring = one(sources, RING_MM);
    let side = sources.settings.grid.square_mm.min(EDGE_CARD_MOST_MM);
    let said = [("ring", ring.into()), ("side", one(sources, side).into())];
    let lines = ["wall-map-columns-intro", "wall-map-rows-intro"];
    let cards = ["wall-map-column-cards", "wall-map-row-cards", "wall-map-corner-cards"];
    [lines.as_slice(), &cards].concat().into_iter().map(|id| sources.words.say(id, &said)).collect()
}
