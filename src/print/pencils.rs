//! `pencils.pdf`: how many pencils to have, what to lay out on each table, and which piece needs which.

use serde::Serialize;

use super::page::{READING_MARGINS_MM, Reading};
use super::room::SEATS_A_TABLE;
use super::{Document, PrintError, Sources};
use crate::frame::{float, floor_index};
use crate::plan::crowd::{Evening, NOBODY_WAITS, PencilNeed, chances, pencils};

/// Width of a label and of a pencil's column, in mm.
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
    pieces_title: String,
    pieces_intro: String,
    piece_head: String,
    /// How many pieces stand side by side, and how wide a pencil's column is, in mm.
    across: usize,
    pencil_mm: f64,
    pieces: Vec<Piece>,
}

/// A pencil.
#[derive(Serialize)]
struct Row {
    number: usize,
    colour: String,
    name: String,
    pieces: usize,
    shared: String,
    a_table: String,
    all_tables: String,
}

/// A piece and whether it needs each pencil: 0 no, 1 yes, 2 most of all.
#[derive(Serialize)]
struct Piece {
    label: String,
    needs: Vec<u8>,
}

/// Typesets the document.
///
/// # Errors
/// [`PrintError::Typeset`].
pub(super) fn document(sources: &Sources) -> Result<Document, PrintError> {
    let Sources { settings, words, facts, .. } = *sources;
    let evening = sources.evening;
    let seats = seats_in_use(evening);
    let sets = Sets::of(sources, evening);
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
            "pencils-pieces",
            "pencils-shared",
            "pencils-a-table",
            "pencils-all-tables",
        ]
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
        piece_head: say("checklist-piece"),
        across: floor_index((width - READING_MARGINS_MM) / block).clamp(1, settings.grid.columns),
        pencil_mm: PENCIL_MM,
        pieces: pieces(sources),
    };
    Reading { name: "pencils", content, pictures: Vec::new() }.document(sources)
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
            number: number + 1,
            colour: pencil.hex(),
            name: pencil.name.clone(),
            pieces: facts.pieces_with(number),
            shared: pencil.counted(shared.count, sources.words),
            a_table: pencil.counted(own.count, sources.words),
            all_tables: pencil.counted(own.count * sets.tables, sources.words),
        })
        .collect()
}

fn pieces(sources: &Sources) -> Vec<Piece> {
    let pieces = sources.printed.squares.iter().zip(&sources.facts.pieces);
    pieces
        .map(|(square, piece)| {
            let mut needs = vec![0; sources.facts.pencils.len()];
            for (rank, pencil) in piece.pencils.iter().enumerate() {
                needs[*pencil] = if rank == 0 { 2 } else { 1 };
            }
            Piece { label: square.label.clone(), needs }
        })
        .collect()
}
