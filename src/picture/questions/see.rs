//! Questions that are answered by looking and by counting, with numbers up to about 20.

use super::joints::Joints;
use super::subject::Subject;
use super::{Draft, Shown, Value, ask, ask_of_key, number};
use crate::plan::{Cell, Grid, Turn};

/// Largest number that a child of this age counts without losing its place. Common practice, no source.
const MOST: usize = 20;
/// Number of colours of a piece up to which they are told apart at a glance. Common practice, no source.
const MOST_COLOURS: usize = 5;
/// Number of pieces side by side on a card: smaller ones than a third of an inch are hard to see.
const MOST_IN_A_ROW: usize = 10;

/// In order of preference.
pub(super) fn drafts(subject: &Subject, joints: &Joints) -> Vec<Option<Draft>> {
    let (columns, rows) = (subject.grid.columns, subject.grid.rows);
    let mut pieces = pieces_with(subject).into_iter();
    let mut lines = in_a_row(subject).into_iter();
    let countable = |count: usize| (2..=MOST).contains(&count);
    vec![
        colours_of_piece(subject),
        joints.next_piece(),
        lines.next(),
        joints.turned_piece("turned-piece", Turn::Half),
        ask(countable(columns), "in-one-row", [number("columns", columns)], columns),
        pieces.next(),
        ask(
            (3..=MOST).contains(&columns),
            "left-in-row",
            [number("columns", columns), number("hanging", columns.div_ceil(3))],
            columns - columns.div_ceil(3),
        ),
        lines.next(),
        ask(countable(rows), "in-one-column", [number("rows", rows)], rows),
        one_colour(subject),
        ask(
            countable(subject.used.len()),
            "colours",
            [("pencils", Value::Pencils(subject.used.clone()))],
            subject.used.len(),
        ),
        pieces.next(),
        ask(subject.count() < MOST, "one-more", [number("squares", subject.count())], subject.count() + 1),
        ask(true, "corners", [number("squares", 2)], 8),
        ask(true, "boxes-across", [], 4),
        ask(true, "sides", [number("squares", 3)], 12),
        ask(true, "tape", [number("squares", 2), number("strips", 4)], 8),
    ]
}

/// How many pieces of the picture have a colour: small numbers, but more than one or two where that can be had.
fn pieces_with(subject: &Subject) -> Vec<Draft> {
    let counts = subject.clear.iter().map(|pencil| (*pencil, subject.holding(*pencil)));
    let mut few: Vec<_> = counts.filter(|(_, count)| *count <= MOST && *count < subject.count()).collect();
    few.sort_by_key(|(_, count)| (*count < 3, *count));
    let drafts = few.into_iter().map(|(pencil, count)| {
        let [by, sum] = subject.by_line(|needed| needed.contains(&pencil));
        ask_of_key(true, "pieces-with", [("colour", Value::Pencil(pencil)), by, sum], count)
    });
    drafts.flatten().collect()
}

/// How many pieces of a stretch of one row have a colour, some but not all: each colour once, each in another row.
fn in_a_row(subject: &Subject) -> Vec<Draft> {
    let count = subject.grid.columns.min(MOST_IN_A_ROW);
    let mut taken = Vec::new();
    let mut drafts = Vec::new();
    for pencil in &subject.used {
        let Some((first, cells)) = stretch_with(subject, *pencil, count, &taken) else { continue };
        taken.push(first.row);
        let last = Cell { column: first.column + count - 1, ..first };
        let answer = cells.len();
        let values = [
            ("colour", Value::Pencil(*pencil)),
            ("first", Value::Cell(first)),
            ("last", Value::Cell(last)),
            ("cells", Value::Cells(cells)),
        ];
        let draft = ask(true, "in-row-with", values, answer);
        drafts.extend(draft.map(|draft| draft.showing(Shown::Row(first, count))));
    }
    drafts
}

/// The first stretch of so many pieces of which some have a colour and some do not, and those that have it: from the middle
/// of the picture downwards, then from its top, without the rows that are taken.
fn stretch_with(
    subject: &Subject,
    pencil: usize,
    count: usize,
    taken: &[usize],
) -> Option<(Cell, Vec<Cell>)> {
    let Grid { columns, rows, .. } = *subject.grid;
    let places = (0..rows).map(|step| (rows / 2 + step) % rows).filter(|row| !taken.contains(row));
    let stretches = places.flat_map(|row| (0..=columns - count).map(move |column| Cell { row, column }));
    let clear = stretches.filter(|first| subject.is_clear_in_row(pencil, *first, count));
    let mut found = clear.map(|first| (first, having(subject, pencil, first, count)));
    found.find(|(_, cells)| (2..count).contains(&cells.len()))
}

/// The pieces of a stretch of a row that have a colour.
fn having(subject: &Subject, pencil: usize, first: Cell, count: usize) -> Vec<Cell> {
    let from = subject.grid.index(first);
    let stretch = (first.column..).zip(subject.needs.iter().skip(from).take(count));
    stretch
        .filter(|(_, needed)| needed.contains(&pencil))
        .map(|(column, _)| Cell { column, ..first })
        .collect()
}

/// How many colours a piece has: the one with the most that everybody tells apart.
fn colours_of_piece(subject: &Subject) -> Option<Draft> {
    let pieces = subject.grid.cells().zip(&subject.needs).zip(&subject.clear_piece);
    let told = pieces.filter(|((_, needed), clear)| **clear && needed.len() <= MOST_COLOURS);
    let ((cell, needed), _) = told.max_by_key(|((_, needed), _)| needed.len())?;
    let values = [("piece", Value::Cell(cell)), ("colours", Value::Pencils(needed.clone()))];
    Some(ask(needed.len() > 1, "colours-of-piece", values, needed.len())?.showing(Shown::Piece(cell)))
}

/// How many pieces have one colour only.
fn one_colour(subject: &Subject) -> Option<Draft> {
    let count = subject.needs.iter().filter(|needed| needed.len() == 1).count();
    let [by, sum] = subject.by_line(|needed| needed.len() == 1);
    let all_clear = subject.clear_piece.iter().all(|clear| *clear);
    ask_of_key(
        all_clear && (1..=MOST).contains(&count) && count < subject.count(),
        "one-colour",
        [by, sum],
        count,
    )
}
