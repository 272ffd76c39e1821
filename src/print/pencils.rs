//! `pencils.pdf`: how many pencils to have, what to lay out on each table, and which tile needs which.

use serde::Serialize;

use super::built_in::built_in;
use super::page::Reading;
use super::tile_back::hex;
use super::{Document, PrintError, Sources};
use crate::frame::{float, floor_index};
use crate::plan::crowd::{NOBODY_WAITS, chances, pencils};

/// Seats at a table that keeps a set of pencils of its own. Common practice, no source.
const SEATS_A_TABLE: usize = 6;
/// Width of a page's margins, of a label and of a pencil's column, in mm.
const MARGINS_MM: f64 = 34.0;
const LABEL_MM: f64 = 14.0;
const PENCIL_MM: f64 = 5.6;

/// What the template sets.
#[derive(Serialize)]
struct Content {
    title: String,
    intro: String,
    heads: [String; 6],
    pencils: Vec<Row>,
    sets: String,
    tiles_title: String,
    tiles_intro: String,
    tile_head: String,
    /// How many tiles stand side by side, and how wide a pencil's column is, in mm.
    across: usize,
    pencil_mm: f64,
    tiles: Vec<Tile>,
}

/// A pencil.
#[derive(Serialize)]
struct Row {
    number: usize,
    colour: String,
    name: String,
    tiles: usize,
    shared: usize,
    a_table: usize,
    all_tables: usize,
}

/// A tile and whether it needs each pencil: 0 no, 1 yes, 2 most of all.
#[derive(Serialize)]
struct Tile {
    label: String,
    needs: Vec<u8>,
}

/// Typesets the document.
///
/// # Errors
/// [`PrintError::Typeset`].
pub(super) fn document(sources: &Sources) -> Result<Document, PrintError> {
    let Sources { settings, words, facts, .. } = *sources;
    let evening = sources.evening();
    let seats = evening.time.seats_in_use;
    let tables = seats.div_ceil(SEATS_A_TABLE);
    let percent = floor_index(NOBODY_WAITS * 100.0 + 0.5);
    let (width, _) = settings.print.paper.size_mm();
    let block = LABEL_MM + float(facts.pencils.len()) * PENCIL_MM;
    let say = |id: &str| words.say(id, &[]);
    let content = Content {
        title: say("print-pencils"),
        intro: words.say("pencils-intro", &[("seats", seats.into()), ("percent", percent.into())]),
        heads: [
            "pencils-number",
            "pencils-name",
            "pencils-tiles",
            "pencils-shared",
            "pencils-a-table",
            "pencils-all-tables",
        ]
        .map(say),
        pencils: rows(sources, tables),
        sets: words
            .say("pencils-sets", &[("tables", tables.into()), ("seats", SEATS_A_TABLE.min(seats).into())]),
        tiles_title: say("pencils-tiles-title"),
        tiles_intro: say("pencils-tiles-intro"),
        tile_head: say("ledger-tile"),
        across: floor_index((width - MARGINS_MM) / block).clamp(1, settings.grid.columns),
        pencil_mm: PENCIL_MM,
        tiles: tiles(sources),
    };
    let template = built_in("pencils");
    Reading { name: "pencils", template, content, pictures: Vec::new() }.document(sources)
}

/// Every pencil: how many if all are shared, and how many if each table has its own.
fn rows(sources: &Sources, tables: usize) -> Vec<Row> {
    let facts = sources.facts;
    let evening = sources.evening();
    let chances = chances(&facts.work(), evening.given.minutes_a_tile);
    let at_a_table = pencils(&chances, SEATS_A_TABLE.min(evening.time.seats_in_use));
    let counted = facts.pencils.iter().zip(evening.supplies.pencils.iter().zip(at_a_table));
    counted
        .enumerate()
        .map(|(number, (pencil, (shared, own)))| Row {
            number: number + 1,
            colour: hex(pencil.srgb),
            name: pencil.name.clone(),
            tiles: facts.tiles_with(number),
            shared: shared.count,
            a_table: own.count,
            all_tables: own.count * tables,
        })
        .collect()
}

fn tiles(sources: &Sources) -> Vec<Tile> {
    let tiles = sources.printed.squares.iter().zip(&sources.facts.tiles);
    tiles
        .map(|(square, tile)| {
            let mut needs = vec![0; sources.facts.pencils.len()];
            for (rank, pencil) in tile.colours().into_iter().enumerate() {
                needs[pencil] = if rank == 0 { 2 } else { 1 };
            }
            Tile { label: square.label.clone(), needs }
        })
        .collect()
}
