//! Questions about patterns, for anyone who wants more.

use super::subject::Subject;
use super::{Draft, Value, ask, number};

/// Sizes of blocks that are still added by hand.
const MOST_SIZES: usize = 8;

/// In order of preference.
pub(super) fn drafts(subject: &Subject) -> Vec<Option<Draft>> {
    let (columns, rows, count) = (subject.grid.columns, subject.grid.rows, subject.count());
    let wall = || [number("columns", columns), number("rows", rows)];
    let many = columns > 1 && rows > 1;
    vec![
        ask(true, "next-square", [number("side", 6)], 36),
        ask(columns > 2 && rows > 2, "edge", wall(), edge(columns, rows)),
        ask(many, "blocks", wall(), (columns - 1) * (rows - 1)),
        both(subject),
        ask(many, "seams", wall(), rows * (columns - 1) + columns * (rows - 1)),
        ask(true, "square-step", [number("from", 9), number("to", 10)], 19),
        all_blocks(columns, rows),
        ask(
            count > 4,
            "chessboard",
            [
                number("count", count),
                ("odd", Value::Choice(if count.is_multiple_of(2) { "no" } else { "yes" })),
            ],
            count.div_ceil(2),
        ),
        most(subject),
        ask(true, "odd-numbers", [number("terms", 7), number("last", 13)], 49),
        ask(true, "box-edge", [], 12),
        ask(true, "box-blocks", [], 30),
        ask(true, "handshakes", [number("people", 6)], 15),
        ask(true, "area-step", [number("from", 3), number("to", 5)], 16),
        ask(true, "folded-lines", [number("times", 4)], 15),
    ]
}

/// Squares that touch the wall's edge.
fn edge(columns: usize, rows: usize) -> usize {
    (2 * (columns + rows)).saturating_sub(4)
}

/// How many square blocks of any size the wall holds.
fn all_blocks(columns: usize, rows: usize) -> Option<Draft> {
    let sizes = columns.min(rows);
    let blocks: Vec<usize> = (0..sizes).map(|smaller| (columns - smaller) * (rows - smaller)).collect();
    let answer = blocks.iter().sum();
    let values = [number("columns", columns), number("rows", rows), ("sum", Value::Sum(blocks))];
    ask((2..=MOST_SIZES).contains(&sizes), "all-blocks", values, answer)
}

/// How many pieces need both of two pencils: the first two that share some pieces, but not all of either's.
fn both(subject: &Subject) -> Option<Draft> {
    let pairs = subject
        .used
        .iter()
        .enumerate()
        .flat_map(|(at, first)| subject.used.iter().skip(at + 1).map(move |second| (*first, *second)));
    let mut pairs = pairs.map(|(first, second)| {
        let is_kind = move |needed: &[usize]| needed.contains(&first) && needed.contains(&second);
        let shared = subject.needs.iter().filter(|needed| is_kind(needed)).count();
        let own = subject.holding(first).min(subject.holding(second));
        let [by, sum] = subject.by_line(is_kind);
        let values = [("first", Value::Pencil(first)), ("second", Value::Pencil(second)), by, sum];
        ask(shared > 0 && shared < own, "both", values, shared)
    });
    pairs.find_map(|draft| draft)
}

/// How many pieces need as many pencils as any piece does.
fn most(subject: &Subject) -> Option<Draft> {
    let most = subject.needs.iter().map(Vec::len).max()?;
    let count = subject.needs.iter().filter(|needed| needed.len() == most).count();
    let [by, sum] = subject.by_line(|needed| needed.len() == most);
    ask(most > 1 && count < subject.count(), "most-colours", [number("colours", most), by, sum], count)
}
