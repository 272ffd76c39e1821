//! Questions about scale, length, what goes around, and parts of a whole.

use super::count::{MOST, each_draws, not_with};
use super::measure::whole;
use super::subject::Subject;
use super::{Answer, Draft, Measure, Unit, Value, ask, common_divisor, measures, number};
use crate::frame::{MM_PER_INCH, float};

/// Length of a line on the piece that is looked for on the square, in mm.
const LINE_MM: usize = 12;
/// Length of another one, in mm.
const SHORT_MM: usize = 8;
/// Denominators that learners of this age know (CCSS 4.NF), those that make good questions first.
const PARTS: [usize; 7] = [4, 3, 5, 10, 8, 6, 2];

/// In order of preference.
pub(super) fn drafts(subject: &Subject) -> Vec<Option<Draft>> {
    let (columns, rows, count) = (subject.grid.columns, subject.grid.rows, subject.count());
    let (scale, large) = (subject.scale(), count > MOST);
    let mut hung = fraction_up(count).into_iter();
    let boxes = columns.clamp(3, 12);
    vec![
        scale_factor(subject),
        scale.and_then(|scale| ask(true, "pieces-on-square", [number("scale", scale)], scale * scale)),
        across(subject, "mural-width", columns),
        fraction_with(subject),
        scale.and_then(|scale| {
            let values = [number("scale", scale), number("length", LINE_MM)];
            ask(true, "larger", values, millimetres(LINE_MM * scale))
        }),
        around(subject),
        across(subject, "mural-height", rows),
        hung.next(),
        which_part(subject),
        scale.and_then(|scale| {
            let values = [number("scale", scale), number("length", SHORT_MM * scale)];
            ask(true, "smaller", values, millimetres(SHORT_MM))
        }),
        inches_to_mm(subject),
        ask(
            large && columns > 1 && rows > 1,
            "all-squares",
            [number("columns", columns), number("rows", rows)],
            count,
        ),
        not_with(subject).filter(|_| large),
        each_draws(count).filter(|_| large),
        ask(true, "boxes-of-squares", [number("squares", boxes)], boxes * 16),
        ask(true, "part-of-boxes", [number("part", 3), number("of", 4)], 12),
        ask(true, "minutes", [number("minutes", 60), number("each", 12)], 5),
        ask(true, "millimetres", [number("metres", 2)], millimetres(2_000)),
    ]
}

fn millimetres(count: usize) -> Answer {
    Answer::Length(Measure { count, unit: Unit::Mm })
}

/// How many times as long, in the first unit in which both sides are whole.
fn scale_factor(subject: &Subject) -> Option<Draft> {
    let (piece, square) = subject.piece_and_square()?;
    let values = [("piece", Value::Length(piece)), ("square", Value::Length(square))];
    ask(
        square.count > piece.count && square.count.is_multiple_of(piece.count),
        "scale",
        values,
        square.count / piece.count,
    )
}

/// How wide the mural is, or how high.
fn across(subject: &Subject, kind: &'static str, squares: usize) -> Option<Draft> {
    let square = subject.square()?;
    let values = [number("squares", squares), ("square", Value::Length(square)), in_unit(square.unit)];
    let length = Measure { count: squares * square.count, unit: square.unit };
    ask(squares > 1, kind, values, Answer::Length(length))
}

/// The unit of an answer as a sentence chooses by it.
fn in_unit(unit: Unit) -> (&'static str, Value) {
    let word = match unit {
        Unit::Inch => "inch",
        Unit::Mm => "mm",
    };
    ("unit", Value::Choice(word))
}

/// How long a ribbon is that goes once around the mural.
fn around(subject: &Subject) -> Option<Draft> {
    let (columns, rows) = (subject.grid.columns, subject.grid.rows);
    let square = subject.square()?;
    let count = 2 * (columns + rows) * square.count;
    let values = [
        number("columns", columns),
        number("rows", rows),
        ("square", Value::Length(square)),
        in_unit(square.unit),
    ];
    ask(columns > 1 && rows > 1, "around", values, Answer::Length(Measure { count, unit: square.unit }))
}

/// A part of a whole in lowest terms, where its denominator is one of [`PARTS`].
fn neat(part: usize, whole: usize) -> Option<(usize, usize)> {
    let divisor = common_divisor(part, whole);
    let (part, of) = (part.checked_div(divisor)?, whole.checked_div(divisor)?);
    (part > 0 && part < of && PARTS.contains(&of)).then_some((part, of))
}

/// "3/4 of the pieces have blue: how many?", where it is exactly so.
fn fraction_with(subject: &Subject) -> Option<Draft> {
    let count = subject.count();
    subject.clear.iter().find_map(|pencil| {
        let holding = subject.holding(*pencil);
        let (part, of) = neat(holding, count)?;
        let values = [
            ("colour", Value::Pencil(*pencil)),
            number("count", count),
            number("part", part),
            number("of", of),
            number("one", count / of),
        ];
        ask(true, "fraction-with", values, holding)
    })
}

/// "3/4 of the squares are up: how many?"
fn fraction_up(count: usize) -> Vec<Draft> {
    let parts = PARTS.into_iter().filter(|of| count.is_multiple_of(*of) && count > *of && *of > 2);
    let drafts = parts.map(|of| {
        let (part, one) = (of - 1, count / of);
        let values = [number("count", count), number("part", part), number("of", of), number("one", one)];
        ask(true, "fraction-up", values, part * one)
    });
    drafts.flatten().collect()
}

/// "20 of 80 pieces have blue. That is one … of them": the missing denominator.
fn which_part(subject: &Subject) -> Option<Draft> {
    let count = subject.count();
    subject.clear.iter().find_map(|pencil| {
        let holding = subject.holding(*pencil);
        let of = count.checked_div(holding)?;
        let values = [("colour", Value::Pencil(*pencil)), number("count", count), number("having", holding)];
        let neat = count.is_multiple_of(holding) && holding > 1 && (2..=20).contains(&of);
        ask(neat, "which-part", values, Answer::OnePart(of))
    })
}

/// An inch is 25.4 mm, so five of them are 127 mm; the square's side where that is five inches or a multiple.
fn inches_to_mm(subject: &Subject) -> Option<Draft> {
    let side = measures(subject.grid.square_mm).into_iter().find(|side| side.unit == Unit::Inch);
    let inches = side.map(|side| side.count).filter(|count| count.is_multiple_of(5)).unwrap_or(10);
    let mm = whole(float(inches) * MM_PER_INCH)?;
    ask(subject.unit == Unit::Inch, "inches-to-mm", [number("inches", inches)], millimetres(mm))
}
