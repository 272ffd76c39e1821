//! Questions that are answered by counting, with numbers up to about 20.

use super::subject::Subject;
use super::{Draft, Value, ask, number};

/// What a child of this age counts without losing its place. Common practice, no source.
const MOST: usize = 20;

/// In order of preference.
pub(super) fn drafts(subject: &Subject) -> Vec<Option<Draft>> {
    let (columns, rows) = (subject.grid.columns, subject.grid.rows);
    let mut pieces = needing(subject).into_iter();
    let mut lines = in_a_row(subject).into_iter();
    let countable = |count: usize| (2..=MOST).contains(&count);
    vec![
        pieces.next(),
        most_colours(subject),
        ask(countable(columns), "in-one-row", [number("columns", columns)], columns),
        lines.next(),
        ask(
            (3..=MOST).contains(&columns),
            "left-in-row",
            [number("columns", columns), number("hanging", columns.div_ceil(3)), number("row", 1)],
            columns - columns.div_ceil(3),
        ),
        ask(countable(rows), "in-one-column", [number("rows", rows)], rows),
        pieces.next(),
        ask(true, "colours", [number("pencils", subject.used.len())], subject.used.len()),
        lines.next(),
        one_colour(subject),
        ask(true, "corners", [number("squares", 2)], 8),
        ask(true, "sides", [number("squares", 3)], 12),
        ask(subject.count() <= MOST, "one-more", [number("squares", subject.count())], subject.count() + 1),
        ask(true, "hands", [number("helpers", 2), number("hands", 2)], 4),
        lines.next(),
        ask(true, "boxes-across", [], 4),
    ]
}

/// How many pieces need a pencil: small numbers, but more than one or two where that can be had.
fn needing(subject: &Subject) -> Vec<Draft> {
    let counts = subject.used.iter().map(|pencil| (*pencil, subject.holding(*pencil)));
    let mut few: Vec<_> = counts.filter(|(_, count)| *count <= MOST).collect();
    few.sort_by_key(|(_, count)| (*count < 3, *count));
    let drafts = few.into_iter().map(|(pencil, count)| {
        let [by, sum] = subject.by_line(|needed| needed.contains(&pencil));
        ask(true, "pieces-needing", [("colour", Value::Pencil(pencil)), by, sum], count)
    });
    drafts.flatten().collect()
}

/// How many pieces of one row need a pencil: each pencil once, each in another row.
fn in_a_row(subject: &Subject) -> Vec<Draft> {
    let rows: Vec<_> = subject.rows().collect();
    let drafts = subject.used.iter().enumerate().map(|(turn, pencil)| {
        let places = (0..rows.len()).filter_map(|step| rows.get((turn + step) % rows.len()));
        let counted = places.map(|(first, row)| {
            let cells = (0..).zip(row.iter()).filter(|(_, needed)| needed.contains(pencil));
            (first, cells.map(|(column, _)| column).collect::<Vec<usize>>())
        });
        let (first, found) = counted.into_iter().find(|(_, found)| (1..=MOST).contains(&found.len()))?;
        let row = subject.grid.row_number(first.row);
        let is_part = rows.len() > 1; // else it is the question about all pieces
        let cells = found.iter().map(|&column| crate::plan::Cell { column, ..*first }).collect();
        let values = [("colour", Value::Pencil(*pencil)), number("row", row), ("cells", Value::Cells(cells))];
        ask(is_part, "in-row-needing", values, found.len())
    });
    drafts.flatten().collect()
}

/// How many colours the first piece with the most of them needs.
fn most_colours(subject: &Subject) -> Option<Draft> {
    let most = subject.needs.iter().map(Vec::len).max()?;
    let (cell, needed) = subject.grid.cells().zip(&subject.needs).find(|(_, needed)| needed.len() == most)?;
    let values = [("piece", Value::Cell(cell)), ("colours", Value::Pencils(needed.clone()))];
    ask(most > 1, "colours-of-piece", values, most)
}

/// How many pieces need one pencil only.
fn one_colour(subject: &Subject) -> Option<Draft> {
    let count = subject.needs.iter().filter(|needed| needed.len() == 1).count();
    let [by, sum] = subject.by_line(|needed| needed.len() == 1);
    ask((1..=MOST).contains(&count), "one-colour", [by, sum], count)
}
