//! `rehang.pdf`: the mural goes to another place: piles, the order of taking down and of putting up, the map of the new place.

use serde::Serialize;

use super::blocks::{Block, Writer};
use super::page::{Foot, Reading, reading_room};
use super::wall_map::{Maps, part_name};
use super::{Document, PrintError, Sources};
use crate::frame::float;
use crate::plan::cell::{Cell, Grid};
use crate::plan::rehang::{Pile, coming_down, parts_of, piles};
use crate::plan::settings::WallPart;

/// The document's name.
pub(super) const NAME: &str = "rehang";

/// White between two parts in the drawing; the largest cell, and the highest part, in mm.
const APART_MM: f64 = 8.0;
const MOST_CELL_MM: f64 = 9.0;
const HIGHEST_MM: f64 = 52.0;
/// Most piles whose two tables stand on one page.
const MOST_ON_A_PAGE: usize = 10;

/// What the template sets.
#[derive(Serialize)]
struct Content {
    blocks: Vec<Block>,
    places: Vec<Place>,
    map_title: String,
    map: Maps,
}

/// Where the mural hangs, or will.
#[derive(Serialize)]
struct Place {
    name: String,
    cell: f64,
    apart: f64,
    parts: Vec<Part>,
}

/// A part of it, in cells.
#[derive(Serialize)]
struct Part {
    columns: usize,
    rows: usize,
    piles: Vec<Area>,
}

/// Where a pile hangs in a part, in cells from its top left corner.
#[derive(Serialize)]
struct Area {
    x: usize,
    y: usize,
    width: usize,
    height: usize,
    number: usize,
}

/// Typesets the document. `today` are the parts in which the wall hangs now, none where it hangs in one piece; those of the settings are
/// the ones in which it will hang.
///
/// # Errors
/// [`PrintError::Typeset`].
pub fn rehang(sources: &Sources, today: &[WallPart]) -> Result<Document, PrintError> {
    let (grid, hang_mm) = (&sources.settings.grid, sources.evening.wall.hang_mm);
    let today = parts_of(today, grid, hang_mm);
    let there = parts_of(&sources.settings.parts, grid, hang_mm);
    let piles = piles(&today, &there);
    let writer = Writer {
        sources,
        values: vec![
            ("squares", grid.hanging().into()),
            ("piles", piles.len().into()),
            ("first", named(grid, piles.first().and_then(|pile| going_up(grid, pile).next())).into()),
        ],
    };
    let [width, _] = reading_room(sources.settings.print.paper, Foot::Line);
    let content = Content {
        blocks: blocks(&writer, &piles, &today, &there),
        places: vec![
            place(&writer, "rehang-today", &today, &piles, |pile| pile.from, width),
            place(&writer, "rehang-there", &there, &piles, |pile| pile.to, width),
        ],
        map_title: writer.say("rehang-map"),
        map: Maps::of(sources),
    };
    Reading { name: NAME, foot: Foot::Line, content, pictures: Vec::new() }.document(sources)
}

fn blocks(w: &Writer, piles: &[Pile], today: &[WallPart], there: &[WallPart]) -> Vec<Block> {
    let heads = |ids: [&str; 5]| ids.map(|id| w.say(id)).into();
    let widths = vec![0.0, 0.0, 1.0, 0.0, 0.0];
    let grid = &w.sources.settings.grid;
    let of_part = |parts: &[WallPart], at: usize| match parts {
        [_] => w.say("rehang-whole"),
        parts => part_name(w.sources, &parts[at], at + 1),
    };
    let down = coming_down(piles).into_iter().map(|at| {
        let pile = &piles[at];
        let ends =
            [going_up(grid, pile).next_back(), going_up(grid, pile).next()].map(|cell| named(grid, cell));
        row(at, going_up(grid, pile).count(), of_part(today, pile.from), ends)
    });
    let up = piles.iter().enumerate().map(|(at, pile)| {
        let ends =
            [going_up(grid, pile).next(), going_up(grid, pile).next_back()].map(|cell| named(grid, cell));
        row(at, going_up(grid, pile).count(), of_part(there, pile.to), ends)
    });
    let ends = ["rehang-first", "rehang-last"];
    vec![
        w.title("print-rehang"),
        w.text("rehang-intro"),
        Block::Drawing { about: w.say("rehang-about") },
        w.heading("rehang-before"),
        w.boxes("rehang-before", 4),
        w.title("rehang-down"),
        w.note("rehang-caution"),
        w.steps("rehang-down", 5),
        Block::Table {
            heads: heads(["rehang-pile", "rehang-squares", "rehang-from", ends[0], ends[1]]),
            widths: widths.clone(),
            rows: down.collect(),
        },
        if piles.len() > MOST_ON_A_PAGE { w.title("rehang-up") } else { w.heading("rehang-up") },
        w.steps("rehang-up", 5),
        Block::Table {
            heads: heads(["rehang-pile", "rehang-squares", "rehang-to", ends[0], ends[1]]),
            widths,
            rows: up.collect(),
        },
    ]
}

/// A pile as the tables have it: its number, how many squares, the part, and the squares that come first and last.
fn row(at: usize, squares: usize, part: String, [first, last]: [String; 2]) -> Vec<String> {
    vec![(at + 1).to_string(), squares.to_string(), part, first, last]
}

/// The squares of a pile in the order in which they go up; nothing hangs where a spot is kept free.
fn going_up(grid: &Grid, pile: &Pile) -> impl DoubleEndedIterator<Item = Cell> + use<> {
    let grid = *grid;
    pile.going_up().filter(move |cell| !grid.is_kept_free(*cell))
}

fn named(grid: &Grid, cell: Option<Cell>) -> String {
    cell.map_or_else(String::new, |cell| grid.label(cell))
}

/// The parts beside each other, as large as there is room, with the piles that they have.
fn place(
    w: &Writer,
    name: &str,
    parts: &[WallPart],
    piles: &[Pile],
    of: impl Fn(&Pile) -> usize,
    width_mm: f64,
) -> Place {
    let columns: usize = parts.iter().map(WallPart::columns).sum();
    let rows = parts.iter().map(WallPart::rows).max().unwrap_or(1);
    let gaps = float(parts.len().saturating_sub(1)) * APART_MM;
    let cell = ((width_mm - gaps) / float(columns)).min(HIGHEST_MM / float(rows)).min(MOST_CELL_MM);
    let part = |(at, part): (usize, &WallPart)| {
        let own = piles.iter().enumerate().filter(|(_, pile)| of(pile) == at);
        let area = |(number, pile): (usize, &Pile)| Area {
            x: pile.first.column - part.first.column,
            y: pile.first.row - part.first.row,
            width: pile.last.column - pile.first.column + 1,
            height: pile.last.row - pile.first.row + 1,
            number: number + 1,
        };
        Part { columns: part.columns(), rows: part.rows(), piles: own.map(area).collect() }
    };
    Place { name: w.say(name), cell, apart: APART_MM, parts: parts.iter().enumerate().map(part).collect() }
}
