//! Questions that are answered by adding, subtracting, equal groups, halves and quarters, with numbers up to 100.

use super::subject::Subject;
use super::{Draft, Value, ask, ask_of_key, number};

/// Largest number that is added and subtracted (CCSS 2.OA, 2.NBT).
pub(super) const MOST: usize = 100;
/// Largest factor (CCSS 3.OA).
const MOST_FACTOR: usize = 10;
/// Numbers of pieces that are worth a guess and are still counted.
const GUESSED: std::ops::RangeInclusive<usize> = 8..=40;

/// In order of preference.
pub(super) fn drafts(subject: &Subject) -> Vec<Option<Draft>> {
    let (columns, rows, count) = (subject.grid.columns, subject.grid.rows, subject.count());
    let (hanging, full) = (count * 5 / 8, rows / 2 + 1);
    let factors = (2..=MOST_FACTOR).contains(&columns) && rows <= MOST_FACTOR;
    let (few, sides) = (count <= MOST, rows.clamp(3, MOST_FACTOR));
    let colours = subject.used.len().clamp(2, MOST_FACTOR);
    vec![
        guess(subject),
        ask(factors && rows > 1, "all-squares", [number("columns", columns), number("rows", rows)], count),
        ask(few && count > 3, "left", [number("count", count), number("hanging", hanging)], count - hanging),
        ask(few && count > 2 && count.is_multiple_of(2), "half-up", [number("count", count)], count / 2),
        next_rows(columns, rows),
        not_with(subject).filter(|_| few),
        ask(true, "quarter-boxes", [], 16),
        ask(few && count > 4 && count.is_multiple_of(4), "quarter-up", [number("count", count)], count / 4),
        ask(
            columns > 2 && columns.is_multiple_of(2) && columns <= 40,
            "half-row",
            [number("columns", columns)],
            columns / 2,
        ),
        each_draws(count).filter(|_| few),
        ask(
            factors && rows > 2,
            "full-rows",
            [number("columns", columns), number("rows", full)],
            columns * full,
        ),
        ask(true, "half-of-boxes", [], 8),
        ask(true, "sides-of-squares", [number("squares", sides)], sides * 4),
        ask(true, "tables", [number("tables", 5), number("pencils", colours)], 5 * colours),
        ask(true, "folded", [number("times", 3)], 8),
        ask(true, "boxes-of-two", [], 32),
        ask(true, "minutes", [number("minutes", 60), number("each", 10)], 6),
    ]
}

/// A guess first, then the count: how many pieces have a colour.
fn guess(subject: &Subject) -> Option<Draft> {
    let (pencil, count) = subject
        .clear
        .iter()
        .map(|pencil| (*pencil, subject.holding(*pencil)))
        .filter(|(_, count)| GUESSED.contains(count) && *count < subject.count())
        .max_by_key(|(_, count)| *count)?;
    let [by, sum] = subject.by_line(|needed| needed.contains(&pencil));
    ask_of_key(true, "guess", [("colour", Value::Pencil(pencil)), by, sum], count)
}

/// "1 row has 10 squares, 2 rows have 20": the next number.
fn next_rows(columns: usize, rows: usize) -> Option<Draft> {
    let values = [number("columns", columns), number("two", 2 * columns)];
    ask((2..=2 * MOST_FACTOR).contains(&columns) && rows > 2, "next-rows", values, 3 * columns)
}

/// How many pieces do without the colour that is seen most, but not everywhere.
pub(super) fn not_with(subject: &Subject) -> Option<Draft> {
    let count = subject.count();
    let counts = subject.clear.iter().map(|pencil| (*pencil, subject.holding(*pencil)));
    let (pencil, holding) =
        counts.filter(|(_, holding)| *holding < count).max_by_key(|(_, holding)| *holding)?;
    let values = [("colour", Value::Pencil(pencil)), number("count", count), number("having", holding)];
    ask(holding > 1, "not-with", values, count - holding)
}

/// How many visitors it takes if each draws some squares.
pub(super) fn each_draws(count: usize) -> Option<Draft> {
    let each = [2, 5, 3, 4].into_iter().find(|each| count.is_multiple_of(*each) && count > *each)?;
    ask(true, "visitors", [number("count", count), number("each", each)], count / each)
}
