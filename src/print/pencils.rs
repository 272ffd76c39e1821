//! `pencils.pdf`: how many pencils to have, what to lay out on each table, and a small wall a pencil that shows where it is needed.

use serde::Serialize;

use super::page::{Foot, Reading, listed, reading_room};
use super::room::SEATS_A_TABLE;
use super::small_wall::SmallWall;
use super::{Document, PrintError, Sources};
use crate::frame::{float, floor_index};
use crate::plan::crowd::{Evening, NOBODY_WAITS, PencilNeed, chances, pencils};
use crate::plan::settings::Pencil;
use crate::plan::{Cell, PrintedSquare};

/// Most walls beside each other, white between them, the narrowest cell of one that stands beside another, and the highest wall, in mm.
const MOST_ACROSS: usize = 3;
const APART_MM: f64 = 7.0;
const NARROWEST_MM: f64 = 2.6;
const HIGHEST_MM: f64 = 78.0;

/// What the template sets.
#[derive(Serialize)]
struct Content {
    title: String,
    intro: String,
    heads: [String; 5],
    pencils: Vec<Row>,
    sets: String,
    pieces_title: String,
    pieces_intro: String,
    /// How many walls stand side by side, and how far apart, in mm.
    across: usize,
    apart_mm: f64,
    walls: Vec<PencilWall>,
}

/// A pencil.
#[derive(Serialize)]
struct Row {
    colour: String,
    name: String,
    pieces: usize,
    shared: String,
    a_table: String,
    all_tables: String,
}

/// Where a pencil is needed.
#[derive(Serialize)]
struct PencilWall {
    colour: String,
    name: String,
    count: String,
    about: String,
    wall: SmallWall,
}

/// Typesets the document.
///
/// # Errors
/// [`PrintError::Typeset`].
pub(super) fn document(sources: &Sources) -> Result<Document, PrintError> {
    let Sources { words, evening, .. } = *sources;
    let seats = seats_in_use(evening);
    let sets = Sets::of(sources, evening);
    let percent = floor_index(NOBODY_WAITS * 100.0 + 0.5);
    let [width, _] = reading_room(sources.settings.print.paper, Foot::Line);
    let across = across(sources.settings.grid.columns, width);
    let say = |id: &str| words.say(id, &[]);
    let content = Content {
        title: say("print-pencils"),
        intro: words.say("pencils-intro", &[("seats", seats.into()), ("percent", percent.into())]),
        heads: ["pencils-name", "pencils-pieces", "pencils-shared", "pencils-a-table", "pencils-all-tables"]
            .map(say),
        pencils: rows(sources, evening, &sets),
        sets: words.say(
            "pencils-sets",
            &[
                ("shared-in-all", evening.supplies.pencils_in_all().into()),
                ("sets-in-all", sets.pencils_in_all().into()),
                ("tables", sets.tables.into()),
                ("seats", SEATS_A_TABLE.min(seats).into()),
            ],
        ),
        pieces_title: say("pencils-pieces-title"),
        pieces_intro: say("pencils-pieces-intro"),
        across,
        apart_mm: APART_MM,
        walls: walls(sources, share_of(width, across)),
    };
    Reading { name: "pencils", foot: Foot::Line, content, pictures: Vec::new() }.document(sources)
}

/// Seats that are taken at the busiest moment; at least one, for whoever tries it out.
fn seats_in_use(evening: &Evening) -> usize {
    evening.expected.seats_taken.max(1)
}

/// A set of pencils for each table in use; every document that counts pencils takes its numbers from here and from the
/// evening's supplies.
pub(super) struct Sets {
    /// Tables in use.
    pub tables: usize,
    /// The pencils of one table.
    pub at_a_table: Vec<PencilNeed>,
}

impl Sets {
    /// As many tables as the seats in use take.
    pub fn of(sources: &Sources, evening: &Evening) -> Self {
        let seats = seats_in_use(evening);
        let chances = chances(&sources.facts.work(), evening.given.minutes_a_piece);
        let at_a_table = pencils(&chances, SEATS_A_TABLE.min(seats));
        Self { tables: seats.div_ceil(SEATS_A_TABLE), at_a_table }
    }

    /// The pencils of all tables.
    pub fn pencils_in_all(&self) -> usize {
        self.at_a_table.iter().map(|need| need.count).sum::<usize>() * self.tables
    }
}

/// Every pencil: how many if all are shared, and how many if each table has its own.
fn rows(sources: &Sources, evening: &Evening, sets: &Sets) -> Vec<Row> {
    let facts = sources.facts;
    let needs = evening.supplies.pencils.iter().zip(&sets.at_a_table);
    facts
        .pencils
        .iter()
        .zip(needs)
        .enumerate()
        .map(|(number, (pencil, (shared, own)))| Row {
            colour: pencil.hex(),
            name: pencil.name.clone(),
            pieces: facts.pieces_with(number),
            shared: pencil.counted(shared.count, sources.words),
            a_table: pencil.counted(own.count, sources.words),
            all_tables: pencil.counted(own.count * sets.tables, sources.words),
        })
        .collect()
}

/// How many walls of so many columns stand beside each other on a page.
fn across(columns: usize, width_mm: f64) -> usize {
    let fits = |across: &usize| share_of(width_mm, *across) / float(columns) >= NARROWEST_MM;
    (1..=MOST_ACROSS).rev().find(fits).unwrap_or(1)
}

/// The width of one of so many walls beside each other.
fn share_of(width_mm: f64, across: usize) -> f64 {
    (width_mm - float(across - 1) * APART_MM) / float(across)
}

/// A wall for each pencil: full where it covers most of the piece, a small square where it is needed too.
fn walls(sources: &Sources, width_mm: f64) -> Vec<PencilWall> {
    let Sources { printed, facts, words, .. } = *sources;
    let empty = SmallWall::of(&printed.grid, [width_mm, HIGHEST_MM]);
    let wall = |(number, pencil): (usize, &Pencil)| {
        let squares = printed.squares.iter().zip(&facts.pieces);
        let squares = squares.filter(|(square, _)| !printed.grid.is_kept_free(square.cell));
        let needing = squares.filter_map(|(square, piece)| {
            let rank = piece.pencils.iter().position(|own| *own == number)?;
            Some((square, rank == 0))
        });
        let needing: Vec<(&PrintedSquare, bool)> = needing.collect();
        let labels = listed(needing.iter().map(|(square, _)| square.label.as_str()));
        let marks = needing
            .iter()
            .map(|(square, most): &(&PrintedSquare, bool)| -> (Cell, bool) { (square.cell, *most) });
        PencilWall {
            colour: pencil.hex(),
            name: pencil.name.clone(),
            count: words.say("print-level-count", &[("pieces", needing.len().into())]),
            about: words
                .say("pencils-wall-alt", &[("name", pencil.name.clone().into()), ("labels", labels.into())]),
            wall: empty.clone().marked(marks),
        }
    };
    facts.pencils.iter().enumerate().map(wall).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn wide_walls_stand_alone() {
        assert_eq!([10, 20, 30, 60].map(|columns| across(columns, 182.0)), [3, 3, 2, 1]);
    }
}
