//! Questions that are answered by multiplying, dividing, subtracting, and with simple fractions.

use super::subject::Subject;
use super::{Draft, Value, ask, common_divisor, number};

/// Denominators that learners of this age know, those that make good questions first.
const PARTS: [usize; 7] = [4, 3, 5, 2, 10, 8, 6];

/// In order of preference.
pub(super) fn drafts(subject: &Subject) -> Vec<Option<Draft>> {
    let (columns, rows, count) = (subject.grid.columns, subject.grid.rows, subject.count());
    let hanging = count * 5 / 8;
    let full = rows / 2 + 1;
    let mut fractions = fraction_needing(subject).into_iter();
    let mut hung = fraction_hanging(count).into_iter();
    vec![
        ask(
            columns > 1 && rows > 1,
            "all-squares",
            [number("columns", columns), number("rows", rows)],
            count,
        ),
        fractions.next(),
        ask(count > 3, "left", [number("count", count), number("hanging", hanging)], count - hanging),
        which_part(subject),
        hung.next(),
        not_needing(subject),
        ask(
            columns > 1 && rows > 2,
            "full-rows",
            [number("columns", columns), number("rows", full)],
            columns * full,
        ),
        each_draws(count),
        fractions.next(),
        hung.next(),
        ask(true, "quarter-boxes", [], 16),
        ask(true, "sides-of-squares", [number("squares", 7)], 28),
        ask(true, "half-of-boxes", [], 8),
        ask(true, "folded", [number("times", 3)], 8),
        ask(true, "tables", [number("tables", 6), number("pencils", 8)], 48),
        ask(true, "boxes-of-squares", [number("squares", 5)], 80),
        ask(true, "minutes", [number("minutes", 60), number("each", 12)], 5),
        ask(true, "sheets", [number("squares", 18), number("each", 2)], 9),
    ]
}

/// A part of a whole in lowest terms, where its denominator is one of [`PARTS`].
fn neat(part: usize, whole: usize) -> Option<(usize, usize)> {
    let divisor = common_divisor(part, whole);
    let (part, of) = (part.checked_div(divisor)?, whole.checked_div(divisor)?);
    (part > 0 && part < of && PARTS.contains(&of)).then_some((part, of))
}

/// "Three quarters of the pieces need blue: how many?", where it is exactly so.
fn fraction_needing(subject: &Subject) -> Vec<Draft> {
    let count = subject.count();
    let drafts = subject.used.iter().map(|pencil| {
        let holding = subject.holding(*pencil);
        let (part, of) = neat(holding, count)?;
        let values = [
            ("colour", Value::Pencil(*pencil)),
            number("count", count),
            number("part", part),
            number("of", of),
            number("one", count / of),
        ];
        ask(true, "fraction-needing", values, holding)
    });
    drafts.flatten().collect()
}

/// "A quarter of the squares hang: how many?"
fn fraction_hanging(count: usize) -> Vec<Draft> {
    let parts = PARTS.into_iter().filter(|of| count.is_multiple_of(*of) && count > *of);
    let drafts = parts.map(|of| {
        let part = if of > 3 { of - 1 } else { 1 };
        let one = count / of;
        let values = [number("count", count), number("part", part), number("of", of), number("one", one)];
        ask(true, "fraction-hanging", values, part * one)
    });
    drafts.flatten().collect()
}

/// "20 of 80 pieces need blue. That is one … of them": the missing denominator.
fn which_part(subject: &Subject) -> Option<Draft> {
    let count = subject.count();
    subject.used.iter().find_map(|pencil| {
        let holding = subject.holding(*pencil);
        let of = count.checked_div(holding)?;
        let values = [("colour", Value::Pencil(*pencil)), number("count", count), number("needing", holding)];
        ask(count.is_multiple_of(holding) && (2..=20).contains(&of), "which-part", values, of)
    })
}

/// How many pieces do without the pencil that is needed most, but not everywhere.
fn not_needing(subject: &Subject) -> Option<Draft> {
    let count = subject.count();
    let counts = subject.used.iter().map(|pencil| (*pencil, subject.holding(*pencil)));
    let (pencil, holding) =
        counts.filter(|(_, holding)| *holding < count).max_by_key(|(_, holding)| *holding)?;
    let values = [("colour", Value::Pencil(pencil)), number("count", count), number("needing", holding)];
    ask(true, "not-needing", values, count - holding)
}

/// How many visitors it takes if each draws some squares.
fn each_draws(count: usize) -> Option<Draft> {
    let each = [2, 3, 4, 5].into_iter().find(|each| count.is_multiple_of(*each) && count > *each)?;
    ask(true, "visitors", [number("count", count), number("each", each)], count / each)
}
