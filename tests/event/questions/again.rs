//! Every answer found again by another way: from the picture's pixels, from pieces laid side by side, from walls laid out cell
//! by cell, from lengths in millimetres.

use std::collections::BTreeSet;

use everysquare::picture::questions::{Answer, Measure, Question, Shown, Unit, Value};
use everysquare::plan::{Cell, Grid, Turn};
use image::RgbImage;
use image::imageops::{rotate90, rotate180, rotate270};

use super::event::{COLOURS, Event};

fn number(question: &Question, name: &str) -> usize {
    match question.value(name) {
        Some(Value::Number(count)) => *count,
        other => panic!("{question:?}: {name} is {other:?}"),
    }
}

fn colour(question: &Question, name: &str) -> [u8; 3] {
    match question.value(name) {
        Some(Value::Pencil(pencil)) => COLOURS[*pencil],
        other => panic!("{question:?}: {name} is {other:?}"),
    }
}

fn mm(measure: Measure) -> f64 {
    measure.count as f64 * unit_mm(measure.unit)
}

fn unit_mm(unit: Unit) -> f64 {
    if unit == Unit::Inch { 25.4 } else { 1.0 }
}

fn length(question: &Question, name: &str) -> Measure {
    match question.value(name) {
        Some(Value::Length(measure)) => *measure,
        other => panic!("{question:?}: {name} is {other:?}"),
    }
}

/// A number that must be whole.
fn whole(value: f64, question: &Question) -> usize {
    assert!((value - value.round()).abs() < 1e-6, "{question:?}: {value} is not whole");
    value.round() as usize
}

/// The answer found again: what the picture holds.
fn from_pixels(event: &Event, q: &Question) -> Option<usize> {
    let having = || event.count(|seen| seen.contains(&colour(q, "colour")));
    let given = || {
        assert_eq!(having(), number(q, "having"), "{q:?}");
        having()
    };
    let all = event.cells().count();
    Some(match q.kind {
        "pieces-with" | "guess" => having(),
        "colours-of-piece" => {
            let Some(Value::Cell(Cell { column, row })) = q.value("piece") else { panic!("{q:?}") };
            assert_eq!(q.shown, Shown::Piece(Cell { column: *column, row: *row }));
            event.seen(*column, *row).len()
        }
        "in-row-with" => {
            let (Some(Value::Cell(first)), Some(Value::Cell(last))) = (q.value("first"), q.value("last"))
            else {
                panic!("{q:?}")
            };
            assert_eq!(first.row, last.row, "{q:?}");
            assert_eq!(q.shown, Shown::Row(*first, last.column + 1 - first.column), "{q:?}");
            (first.column..=last.column)
                .filter(|column| event.seen(*column, first.row).contains(&colour(q, "colour")))
                .count()
        }
        "colours" => event.cells().flat_map(|(c, r)| event.seen(c, r)).collect::<BTreeSet<_>>().len(),
        "one-colour" => event.count(|seen| seen.len() == 1),
        "fraction-with" => {
            assert_eq!(having() * number(q, "of"), all * number(q, "part"), "exactly so: {q:?}");
            having()
        }
        "which-part" => (1..).find(|of| given() * of == all).unwrap(),
        "not-with" => all - given(),
        "percent-with" => whole(given() as f64 / all as f64 * 100.0, q),
        "both" => {
            event.count(|seen| seen.contains(&colour(q, "first")) && seen.contains(&colour(q, "second")))
        }
        "most-colours" => {
            let most = event.cells().map(|(c, r)| event.seen(c, r).len()).max().unwrap();
            assert_eq!(most, number(q, "colours"));
            event.count(|seen| seen.len() == most)
        }
        _ => return None,
    })
}

/// The part of two pieces' common side at which their outermost pixels are the same.
fn meets(left: &RgbImage, right: &RgbImage) -> f64 {
    let (far, height) = (left.width() - 1, left.height());
    let same = (0..height).filter(|y| left.get_pixel(far, *y) == right.get_pixel(0, *y));
    same.count() as f64 / f64::from(height)
}

fn turned(piece: &RgbImage, turn: Turn) -> RgbImage {
    match turn {
        Turn::None => piece.clone(),
        Turn::Quarter => rotate90(piece),
        Turn::Half => rotate180(piece),
        Turn::ThreeQuarters => rotate270(piece),
    }
}

/// The answer found again: the pieces of a card laid side by side, every choice and every turn tried.
fn from_the_card(event: &Event, q: &Question) -> Option<usize> {
    match &q.shown {
        Shown::Next(cell, choices) => {
            let joints: Vec<f64> =
                choices.iter().map(|choice| meets(&event.piece(*cell), &event.piece(*choice))).collect();
            let fitting: Vec<usize> = (0..choices.len()).filter(|at| joints[*at] > 0.8).collect();
            assert_eq!(fitting.len(), 1, "{q:?}: {joints:?}");
            assert!(
                joints.iter().enumerate().all(|(at, part)| at == fitting[0] || *part < 0.7),
                "{joints:?}"
            );
            // what fits is what the picture has there
            assert_eq!(choices[fitting[0]], Cell { column: cell.column + 1, ..*cell }, "{q:?}");
            Some(fitting[0])
        }
        Shown::Turned(first, count, at, turn) => {
            let cells = (0..*count).map(|step| Cell { column: first.column + step, ..*first });
            let mut row: Vec<RgbImage> = cells.map(|cell| event.piece(cell)).collect();
            row[*at] = turned(&row[*at], *turn);
            let whole = |row: &[RgbImage]| row.windows(2).all(|two| meets(&two[0], &two[1]) > 0.8);
            assert!(!whole(&row), "nothing is seen to be turned: {q:?}");
            let turns = if *turn == Turn::Half { &[Turn::Half][..] } else { &Turn::ALL[1..] };
            let ways = (0..*count).flat_map(|at| turns.iter().map(move |turn| (at, *turn)));
            let mending = ways.filter(|(at, turn)| {
                let mut tried = row.clone();
                tried[*at] = turned(&tried[*at], *turn);
                whole(&tried)
            });
            let mending: Vec<(usize, Turn)> = mending.collect();
            assert_eq!(mending.len(), 1, "{q:?}: {mending:?}");
            let (at, back) = mending[0];
            match q.answer {
                Answer::Turn(_, said) => assert_eq!(said, back, "{q:?}"),
                Answer::Letter(_) => assert_eq!(back, Turn::Half, "{q:?}"),
                other => panic!("{other:?}"),
            }
            Some(at)
        }
        _ => None,
    }
}

/// The answer found again: the wall laid out cell by cell.
fn from_the_wall(event: &Event, q: &Question) -> Option<usize> {
    let Grid { columns, rows, .. } = event.grid;
    let on_wall = |c: usize, r: usize| c < columns && r < rows;
    Some(match q.kind {
        "in-one-row" => event.cells().filter(|(_, row)| *row == 0).count(),
        "in-one-column" => event.cells().filter(|(column, _)| *column == 0).count(),
        "half-row" => {
            assert_eq!(columns % 2, 0, "{q:?}");
            (0..columns).step_by(2).count()
        }
        "left-in-row" => (number(q, "hanging")..columns).count(),
        "one-more" => (0..=columns * rows).skip(1).count() + 1,
        "all-squares" => event.cells().count(),
        "left" => event.cells().skip(number(q, "hanging")).count(),
        "full-rows" => event.cells().filter(|(_, row)| *row < number(q, "rows")).count(),
        "next-rows" => {
            assert_eq!(event.cells().filter(|(_, row)| *row < 2).count(), number(q, "two"), "{q:?}");
            event.cells().filter(|(_, row)| *row < 3).count()
        }
        "half-up" | "quarter-up" => {
            let of = if q.kind == "half-up" { 2 } else { 4 };
            let cells: Vec<_> = event.cells().collect();
            assert!(cells.chunks(of).all(|own| own.len() == of), "{q:?}");
            cells.chunks(of).count()
        }
        "fraction-up" => {
            let groups = event.cells().count() / number(q, "of");
            assert_eq!(groups * number(q, "of"), event.cells().count(), "comes out even: {q:?}");
            event.cells().take(groups * number(q, "part")).count()
        }
        "visitors" => {
            let cells: Vec<_> = event.cells().collect();
            assert!(cells.chunks(number(q, "each")).all(|own| own.len() == number(q, "each")));
            cells.chunks(number(q, "each")).count()
        }
        "percent-up" => whole(event.cells().count() as f64 * number(q, "percent") as f64 / 100.0, q),
        "columns-to-rows" => whole(rows as f64 * number(q, "first") as f64 / columns as f64, q),
        "edge" => {
            let inner = |c: usize, r: usize| c > 0 && r > 0 && on_wall(c + 1, r + 1);
            event.cells().filter(|(c, r)| !inner(*c, *r)).count()
        }
        "blocks" => event.blocks(2),
        "all-blocks" => (1..=columns.max(rows)).map(|side| event.blocks(side)).sum(),
        "seams" => {
            let right = event.cells().filter(|(c, r)| on_wall(c + 1, *r)).count();
            right + event.cells().filter(|(c, r)| on_wall(*c, r + 1)).count()
        }
        "chessboard" => event.cells().filter(|(c, r)| (c + r) % 2 == 0).count(),
        _ => return None,
    })
}

/// The answer found again: lengths and areas, measured in millimetres.
fn from_lengths(event: &Event, q: &Question) -> Option<usize> {
    let Grid { square_mm, piece_mm, .. } = event.grid;
    let enlarged = |power: i32| (square_mm / piece_mm).powi(power);
    let mural = event.grid.size();
    let is_side = |name: &str, side: f64| {
        assert!((mm(length(q, name)) - side).abs() < 1e-6, "{q:?}");
        unit_mm(length(q, name).unit)
    };
    let (square, piece) = (|| is_side("square", square_mm), || is_side("piece", piece_mm));
    Some(match q.kind {
        "scale" => {
            assert!((square() - piece()).abs() < 1e-6, "one unit: {q:?}");
            whole(enlarged(1), q)
        }
        "piece-to-square" => whole(number(q, "first") as f64 * enlarged(1), q),
        "pieces-on-square" => whole(square_mm * square_mm / (piece_mm * piece_mm), q),
        "larger" => whole(number(q, "length") as f64 * enlarged(1), q),
        "smaller" => whole(number(q, "length") as f64 / enlarged(1), q),
        "larger-patch" => whole(number(q, "length") as f64 * enlarged(2), q),
        "mural-width" => whole(mural.x / square(), q),
        "mural-height" => whole(mural.y / square(), q),
        "around" => whole((mural.x + mural.y + mural.x + mural.y) / square(), q),
        "area-step" => whole((square_mm * square_mm - piece_mm * piece_mm) / (square() * piece()), q),
        "inches-to-mm" => whole(number(q, "inches") as f64 * 25.4, q),
        _ => return None,
    })
}

/// The answer found again: questions that need nothing of the picture.
fn from_nothing(q: &Question) -> Option<usize> {
    let boxes = || (0..4).flat_map(|row| (0..4).map(move |column| (column, row)));
    let blocks = |side: i32| boxes().filter(|(c, r)| c + side <= 4 && r + side <= 4).count();
    let area = |side: usize| (0..side).flat_map(|row| (0..side).map(move |column| (row, column))).count();
    let tick_marks = 3;
    Some(match q.kind {
        "corners" | "sides" => (0..number(q, "squares")).flat_map(|_| 0..4).count(),
        "sides-of-squares" => (0..number(q, "squares")).map(|_| 4).sum(),
        "tape" => (0..number(q, "squares")).map(|_| number(q, "strips")).sum(),
        "boxes-across" => tick_marks + 1,
        "quarter-boxes" => boxes().count(),
        "boxes-of-two" => boxes().chain(boxes()).count(),
        "half-of-boxes" => boxes().filter(|(column, _)| *column < 2).count(),
        "part-of-boxes" => boxes().take(boxes().count() * number(q, "part") / number(q, "of")).count(),
        "percent-of-boxes" => boxes().take(boxes().count() * number(q, "percent") / 100).count(),
        "boxes-ratio" => boxes().skip(4).count() / 4,
        "boxes-of-squares" => (0..number(q, "squares")).map(|_| boxes().count()).sum(),
        "box-edge" => boxes().filter(|(c, r)| [*c, *r].iter().any(|at| *at == 0 || *at == 3)).count(),
        "box-blocks" => (1..=4).map(blocks).sum(),
        "folded" => (0..number(q, "times")).fold(1, |parts, _| parts + parts),
        "tables" => (0..number(q, "tables")).map(|_| number(q, "pencils")).sum(),
        "minutes" => (1..).take_while(|done| done * number(q, "each") <= number(q, "minutes")).count(),
        "longer-sides" => area(number(q, "times")),
        "millimetres" => number(q, "metres") * 100 * 10,
        "next-square" => {
            let [a, b, c] = ["a", "b", "c"].map(|name| number(q, name));
            assert_eq!((a + 1, b + 1, c + 1), (b, c, number(q, "side")), "{q:?}");
            assert_eq!([area(a), area(b), area(c)], ["aa", "bb", "cc"].map(|name| number(q, name)), "{q:?}");
            area(c + 1)
        }
        "square-step" => area(number(q, "to")) - area(number(q, "from")),
        "odd-numbers" => {
            let odd = || (1..=number(q, "last")).step_by(2);
            assert_eq!(odd().count(), number(q, "terms"), "{q:?}");
            odd().sum()
        }
        "hellos" => {
            let people = 0..number(q, "people");
            people.clone().flat_map(|a| people.clone().filter(move |b| a < *b)).count()
        }
        _ => return None,
    })
}

/// What an answer is a number of, as its question asks for it.
fn has_its_unit(q: &Question) -> bool {
    let asked = match q.value("unit") {
        Some(Value::Choice("inch")) => Some(Unit::Inch),
        Some(Value::Choice(_)) => Some(Unit::Mm),
        _ => None,
    };
    match q.kind {
        "mural-width" | "mural-height" | "around" => {
            matches!(q.answer, Answer::Length(Measure { unit, .. }) if Some(unit) == asked)
        }
        "larger" | "smaller" | "inches-to-mm" | "millimetres" => {
            matches!(q.answer, Answer::Length(Measure { unit: Unit::Mm, .. }))
        }
        "larger-patch" => matches!(q.answer, Answer::Area(Measure { unit: Unit::Mm, .. })),
        "area-step" => matches!(q.answer, Answer::Area(Measure { unit: Unit::Inch, .. })),
        "percent-with" => matches!(q.answer, Answer::Percent(_)),
        "which-part" => matches!(q.answer, Answer::OnePart(_)),
        "next-piece" | "turned-piece" => matches!(q.answer, Answer::Letter(_)),
        "turn-back" => matches!(q.answer, Answer::Turn(..)),
        _ => matches!(q.answer, Answer::Count(_)),
    }
}

/// Checks one question by all ways that know its kind; exactly one must.
pub fn recount(event: &Event, question: &Question) {
    let ways = [
        from_pixels(event, question),
        from_the_card(event, question),
        from_the_wall(event, question),
        from_lengths(event, question),
        from_nothing(question),
    ];
    let found: Vec<usize> = ways.into_iter().flatten().collect();
    let answer = question.answer.number();
    assert_eq!(found, [answer], "{question:?} on {:?}", event.grid);
    assert!(has_its_unit(question), "{question:?}");
    for (name, value) in &question.values {
        match value {
            Value::Sum(terms) => assert_eq!(terms.iter().sum::<usize>(), answer, "{question:?}"),
            Value::Cells(cells) => assert_eq!(cells.len(), answer, "{question:?}"),
            Value::Pencils(pencils) => assert_eq!(pencils.len(), answer, "{question:?}"),
            _ => assert!(!name.is_empty()),
        }
    }
}
