//! Questions about scale, length, area, ratio and per cent.

use super::measure::whole;
use super::subject::Subject;
use super::{Draft, Measure, Unit, Value, ask, common_divisor, measures, number};

/// A line on the piece, in mm, that is looked for on the square.
const LINE_MM: usize = 12;
/// A patch of colour on the piece, in mm², that is looked for on the square.
const PATCH_MM2: usize = 30;

/// In order of preference.
pub(super) fn drafts(subject: &Subject) -> Vec<Option<Draft>> {
    let scale = subject.scale();
    let scaled = |kind, piece_side: usize, answer: fn(usize, usize) -> usize| {
        scale.and_then(|scale| {
            ask(true, kind, [number("scale", scale), number("length", piece_side)], answer(piece_side, scale))
        })
    };
    vec![
        scale_factor(subject),
        scale.and_then(|scale| ask(true, "pieces-on-square", [number("scale", scale)], scale * scale)),
        scaled("larger", LINE_MM, |line, scale| line * scale),
        across(subject, Unit::Inch),
        across(subject, Unit::Mm),
        percent_needing(subject),
        columns_to_rows(subject),
        scale.and_then(|scale| {
            let line = 8 * scale;
            ask(true, "smaller", [number("scale", scale), number("length", line)], 8)
        }),
        scaled("larger-patch", PATCH_MM2, |patch, scale| patch * scale * scale),
        piece_to_square(subject),
        around(subject),
        percent_hanging(subject.count()),
        inches_to_mm(subject),
        ask(true, "longer-sides", [number("times", 2)], 4),
        ask(true, "longer-sides", [number("times", 3)], 9),
        ask(true, "percent-of-boxes", [number("percent", 25)], 4),
        ask(true, "boxes-ratio", [], 3),
        ask(true, "millimetres", [number("metres", 2)], 2_000),
    ]
}

/// How many times as long, in the first unit in which both sides are whole.
fn scale_factor(subject: &Subject) -> Option<Draft> {
    let (piece, square) = same_unit(subject)?;
    let values = [("piece", Value::Length(piece)), ("square", Value::Length(square))];
    ask(
        square.count > piece.count && square.count.is_multiple_of(piece.count),
        "scale",
        values,
        square.count / piece.count,
    )
}

/// "30 mm to 100 mm is as 3 to …", where the square is not a whole number of times as long.
fn piece_to_square(subject: &Subject) -> Option<Draft> {
    let (piece, square) = same_unit(subject)?;
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

/// The sides of piece and square in a unit in which both are whole.
fn same_unit(subject: &Subject) -> Option<(Measure, Measure)> {
    let squares = measures(subject.grid.square_mm);
    measures(subject.grid.piece_mm).into_iter().find_map(|piece| {
        squares.iter().find(|square| square.unit == piece.unit).map(|square| (piece, *square))
    })
}

/// How wide the wall is, or how high where it has one column only.
fn across(subject: &Subject, unit: Unit) -> Option<Draft> {
    let square = measures(subject.grid.square_mm).into_iter().find(|square| square.unit == unit)?;
    // the width in inches, the height in millimetres, so that the two cards ask about two things
    let (columns, rows) = (subject.grid.columns, subject.grid.rows);
    let wide = columns > 1 && (unit == Unit::Inch || rows == 1);
    let (kind, count) = if wide { ("wall-width", columns) } else { ("wall-height", rows) };
    let [unit, whole] = in_unit(count * square.count, square.unit);
    let values = [number("squares", count), ("square", Value::Length(square)), unit, whole];
    ask(count > 1, kind, values, count * square.count)
}

/// The unit of an answer as a sentence chooses by it, and the answer with its unit.
fn in_unit(count: usize, unit: Unit) -> [(&'static str, Value); 2] {
    let word = match unit {
        Unit::Inch => "inch",
        Unit::Mm => "mm",
    };
    [("unit", Value::Choice(word)), ("whole", Value::Length(Measure { count, unit }))]
}

/// How long a strip of paper is that goes once around the wall.
fn around(subject: &Subject) -> Option<Draft> {
    let (columns, rows) = (subject.grid.columns, subject.grid.rows);
    let square = measures(subject.grid.square_mm).into_iter().next()?;
    let length = 2 * (columns + rows) * square.count;
    let [unit, whole] = in_unit(length, square.unit);
    let values =
        [number("columns", columns), number("rows", rows), ("square", Value::Length(square)), unit, whole];
    ask(columns * rows > 1, "around", values, length)
}

/// "10 columns to 8 rows is as 5 to …"
fn columns_to_rows(subject: &Subject) -> Option<Draft> {
    let (columns, rows) = (subject.grid.columns, subject.grid.rows);
    let divisor = common_divisor(columns, rows);
    let values = [
        number("columns", columns),
        number("rows", rows),
        number("first", columns / divisor),
        number("divisor", divisor),
    ];
    ask(divisor > 1 && columns != rows, "columns-to-rows", values, rows / divisor)
}

/// What per cent of the pieces need a pencil, where that is a whole number.
fn percent_needing(subject: &Subject) -> Option<Draft> {
    let count = subject.count();
    subject.used.iter().find_map(|pencil| {
        let holding = subject.holding(*pencil);
        let values = [("colour", Value::Pencil(*pencil)), number("count", count), number("needing", holding)];
        let neat = (holding * 100).is_multiple_of(count) && holding < count && count > 3;
        ask(neat, "percent-needing", values, (holding * 100).checked_div(count)?)
    })
}

/// How many squares hang when so many per cent of them do.
fn percent_hanging(count: usize) -> Option<Draft> {
    let percent = [75, 60, 40, 25, 50].into_iter().find(|percent| (count * percent).is_multiple_of(100))?;
    ask(true, "percent-hanging", [number("count", count), number("percent", percent)], count * percent / 100)
}

/// An inch is 25.4 mm, so five of them are 127 mm; the square's side where that is five inches or a multiple.
fn inches_to_mm(subject: &Subject) -> Option<Draft> {
    let side = measures(subject.grid.square_mm).into_iter().find(|side| side.unit == Unit::Inch);
    let inches = side.map(|side| side.count).filter(|count| count.is_multiple_of(5)).unwrap_or(10);
    let mm = whole(crate::frame::float(inches) * crate::frame::MM_PER_INCH)?;
    ask(true, "inches-to-mm", [number("inches", inches)], mm)
}
