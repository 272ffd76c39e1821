//! Questions about patterns, ratio and per cent, for anyone who wants more and likes to say how one knows.

use super::joints::Joints;
use super::subject::Subject;
use super::{Answer, Draft, Measure, Unit, Value, ask, ask_of_key, common_divisor, number};
use crate::plan::Turn;

/// Sizes of blocks, and numbers of a pattern, that are still worked out by hand.
const BY_HAND: std::ops::RangeInclusive<usize> = 5..=12;
/// Sizes of blocks that are still added by hand.
const MOST_SIZES: usize = 8;
/// Area of a patch of colour on the piece that is looked for on the square, in mm².
const PATCH_MM2: usize = 30;

/// In order of preference.
pub(super) fn drafts(subject: &Subject, joints: &Joints) -> Vec<Option<Draft>> {
    let (columns, rows, count) = (subject.grid.columns, subject.grid.rows, subject.count());
    let mural = || [number("columns", columns), number("rows", rows)];
    let many = columns > 1 && rows > 1;
    let side = block_side(subject);
    vec![
        next_square(side),
        joints.turned_piece("turn-back", Turn::Quarter),
        ask(columns > 2 && rows > 2, "edge", mural(), edge(columns, rows)),
        both(subject),
        larger_patch(subject),
        ask(many, "blocks", mural(), (columns - 1) * (rows - 1)),
        columns_to_rows(columns, rows),
        percent_with(subject),
        chessboard(count),
        most(subject),
        ask(many, "seams", mural(), rows * (columns - 1) + columns * (rows - 1)),
        square_step(columns, rows),
        all_blocks(columns, rows),
        area_step(subject),
        piece_to_square(subject),
        percent_up(count),
        odd_numbers(side),
        hellos(rows.clamp(4, 10)),
        ask(
            true,
            "longer-sides",
            [number("times", subject.scale().unwrap_or(3))],
            subject.scale().unwrap_or(3).pow(2),
        ),
        ask(true, "box-edge", [], 12),
        ask(true, "box-blocks", [], 30),
        ask(true, "percent-of-boxes", [number("percent", 25)], 4),
        ask(true, "boxes-ratio", [], 3),
    ]
}

/// Side of the largest square block that the mural holds, or else of the longest line of squares, or else the scale factor;
/// the first that is neither too easy nor too large to work out.
fn block_side(subject: &Subject) -> usize {
    let (columns, rows) = (subject.grid.columns, subject.grid.rows);
    let sides = [columns.min(rows), columns.max(rows), subject.scale().unwrap_or(0)];
    sides.into_iter().find(|side| BY_HAND.contains(side)).unwrap_or(6)
}

/// Square numbers up to the one before a block's side: what comes next?
fn next_square(side: usize) -> Option<Draft> {
    let before = |steps: usize| (side - steps, (side - steps).pow(2));
    let ((a, aa), (b, bb), (c, cc)) = (before(3), before(2), before(1));
    let values = [
        number("a", a),
        number("aa", aa),
        number("b", b),
        number("bb", bb),
        number("c", c),
        number("cc", cc),
        number("side", side),
    ];
    ask(true, "next-square", values, side * side)
}

/// By how much the square over the longer side exceeds that over the shorter one, or over the next smaller one.
fn square_step(columns: usize, rows: usize) -> Option<Draft> {
    let to = columns.max(rows);
    let from = if columns == rows { to - 1 } else { columns.min(rows) };
    let values = [number("from", from), number("to", to)];
    ask(from > 1 && to <= 20, "square-step", values, to * to - from * from)
}

/// The sum of as many odd numbers as a block's side.
fn odd_numbers(terms: usize) -> Option<Draft> {
    ask(true, "odd-numbers", [number("terms", terms), number("last", 2 * terms - 1)], terms * terms)
}

/// How often so many visitors say hello, each pair once.
fn hellos(people: usize) -> Option<Draft> {
    let terms: Vec<usize> = (1..people).rev().collect();
    let answer: usize = terms.iter().sum();
    ask(true, "hellos", [number("people", people), ("sum", Value::Sum(terms))], answer)
}

/// Squares at the mural's edge.
fn edge(columns: usize, rows: usize) -> usize {
    (2 * (columns + rows)).saturating_sub(4)
}

/// How many squares of a checkerboard are black.
fn chessboard(count: usize) -> Option<Draft> {
    let odd = ("odd", Value::Choice(if count.is_multiple_of(2) { "no" } else { "yes" }));
    ask(count > 4, "chessboard", [number("count", count), odd], count.div_ceil(2))
}

/// How many square blocks of any size the mural holds.
fn all_blocks(columns: usize, rows: usize) -> Option<Draft> {
    let sizes = columns.min(rows);
    let blocks: Vec<usize> = (0..sizes).map(|smaller| (columns - smaller) * (rows - smaller)).collect();
    let answer: usize = blocks.iter().sum();
    let values = [number("columns", columns), number("rows", rows), ("sum", Value::Sum(blocks))];
    ask((2..=MOST_SIZES).contains(&sizes), "all-blocks", values, answer)
}

/// How many pieces have both of two colours: the first two that share some pieces, but not all of either's.
fn both(subject: &Subject) -> Option<Draft> {
    let clear = subject.clear.iter().enumerate();
    let pairs =
        clear.flat_map(|(at, first)| subject.clear.iter().skip(at + 1).map(move |second| (*first, *second)));
    let mut pairs = pairs.map(|(first, second)| {
        let is_kind = move |needed: &[usize]| needed.contains(&first) && needed.contains(&second);
        let shared = subject.needs.iter().filter(|needed| is_kind(needed)).count();
        let own = subject.holding(first).min(subject.holding(second));
        let [by, sum] = subject.by_line(is_kind);
        let values = [("first", Value::Pencil(first)), ("second", Value::Pencil(second)), by, sum];
        ask_of_key(shared > 0 && shared < own, "both", values, shared)
    });
    pairs.find_map(|draft| draft)
}

/// How many pieces have as many colours as any piece does.
fn most(subject: &Subject) -> Option<Draft> {
    let most = subject.needs.iter().map(Vec::len).max()?;
    let count = subject.needs.iter().filter(|needed| needed.len() == most).count();
    let [by, sum] = subject.by_line(|needed| needed.len() == most);
    let all_clear = subject.clear_piece.iter().all(|clear| *clear);
    let holds = all_clear && most > 1 && count < subject.count();
    ask_of_key(holds, "most-colours", [number("colours", most), by, sum], count)
}

/// The area of a patch of colour on the square.
fn larger_patch(subject: &Subject) -> Option<Draft> {
    let scale = subject.scale()?;
    let area = Measure { count: PATCH_MM2 * scale * scale, unit: Unit::Mm };
    ask(true, "larger-patch", [number("scale", scale), number("length", PATCH_MM2)], Answer::Area(area))
}

/// By how much a square's area exceeds a piece's, in square inches, or in mm² where those are not whole.
fn area_step(subject: &Subject) -> Option<Draft> {
    let (piece, square) = subject.piece_and_square()?;
    let count = (square.count * square.count).checked_sub(piece.count * piece.count)?;
    let values = [
        ("piece", Value::Length(piece)),
        ("square", Value::Length(square)),
        number("from", piece.count),
        number("to", square.count),
    ];
    ask(
        piece.unit == Unit::Inch && count > 0,
        "area-step",
        values,
        Answer::Area(Measure { count, unit: piece.unit }),
    )
}

/// "10 : 8 = 5 : …"
fn columns_to_rows(columns: usize, rows: usize) -> Option<Draft> {
    let divisor = common_divisor(columns, rows);
    let values = [
        number("columns", columns),
        number("rows", rows),
        number("first", columns / divisor),
        number("divisor", divisor),
    ];
    ask(divisor > 1 && columns != rows, "columns-to-rows", values, rows / divisor)
}

/// "30 mm : 100 mm = 3 : …", where the square is not a whole number of times as long.
fn piece_to_square(subject: &Subject) -> Option<Draft> {
    let (piece, square) = subject.piece_and_square()?;
    let divisor = common_divisor(piece.count, square.count);
    let (first, second) = (piece.count / divisor, square.count / divisor);
    let values = [
        ("piece", Value::Length(piece)),
        ("square", Value::Length(square)),
        number("first", first),
        number("divisor", divisor),
    ];
    ask(first > 1 && divisor > 1, "piece-to-square", values, second)
}

/// What per cent of the pieces have a colour, where that is a whole number.
fn percent_with(subject: &Subject) -> Option<Draft> {
    let count = subject.count();
    subject.clear.iter().find_map(|pencil| {
        let holding = subject.holding(*pencil);
        let values = [("colour", Value::Pencil(*pencil)), number("count", count), number("having", holding)];
        let neat = (holding * 100).is_multiple_of(count) && (2..count).contains(&holding) && count > 3;
        ask(neat, "percent-with", values, Answer::Percent((holding * 100).checked_div(count)?))
    })
}

/// How many squares are up when so many per cent of them are.
fn percent_up(count: usize) -> Option<Draft> {
    let percent = [75, 60, 40, 25, 50].into_iter().find(|percent| (count * percent).is_multiple_of(100))?;
    ask(true, "percent-up", [number("count", count), number("percent", percent)], count * percent / 100)
}
