//! Questions about the picture: every answer is found again by another way, from the picture's pixels and from walls laid
//! out cell by cell, over random pictures and grids; each kind of question is met.

mod again;
mod event;

use std::collections::BTreeSet;

use everysquare::picture::questions::{Answer, CARDS, Measure, Question, Rung, Shown, Unit, Value};
use everysquare::plan::{Cell, Grid};
use everysquare::words::Words;
use proptest::prelude::*;

use again::recount;
use event::{COLOURS, Event};

fn check(event: &Event) {
    for unit in [Unit::Inch, Unit::Mm] {
        check_in(event, unit);
    }
}

fn check_in(event: &Event, unit: Unit) {
    let all = event.questions_in(&COLOURS, unit);
    assert_eq!(all, event.questions_in(&COLOURS, unit), "the same picture, the same questions");
    for rung in Rung::ALL {
        let own: Vec<_> = all.iter().filter(|question| question.rung == rung).collect();
        assert!((4..=CARDS).contains(&own.len()), "{rung:?}: {} on {:?}", own.len(), event.grid);
        for (at, question) in own.iter().enumerate() {
            let same = |other: &&&Question| (other.kind, &other.values) == (question.kind, &question.values);
            assert!(!own[at + 1..].iter().any(|other| same(&other)), "twice: {question:?}");
        }
    }
    let order: Vec<_> = all.iter().map(|question| question.rung).collect();
    assert!(order.is_sorted());
    for question in &all {
        recount(event, question);
    }
}

/// Sides of squares and pieces that people use, and some that nobody would.
const SIZES: [(f64, f64); 8] = [
    (127.0, 25.4),
    (100.0, 20.0),
    (150.0, 30.0),
    (100.0, 30.0),
    (101.6, 25.4),
    (120.0, 25.4),
    (133.3, 27.1),
    (152.4, 50.8),
];

fn events() -> impl Strategy<Value = Event> {
    let pieces = proptest::collection::vec((0usize..6, 0usize..6, 0usize..6), 400);
    (1usize..=20, 1usize..=20, 0..SIZES.len(), pieces, 1usize..=6, 1usize..=40).prop_map(
        |(columns, rows, size, pieces, colours, run)| {
            let (square_mm, piece_mm) = SIZES[size];
            Event::new(columns, rows, square_mm, piece_mm, |piece| {
                let (a, b, c) = pieces[piece];
                // runs of plain pieces between the mixed ones, so that neat fractions occur
                if piece / run % 2 == 0 { [a % colours; 3] } else { [a % colours, b % colours, c % colours] }
            })
        },
    )
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(200))]
    #[test]
    fn every_answer_is_found_again_by_another_way(event in events()) {
        check(&event);
    }

    #[test]
    fn neat_parts_of_the_pieces_are_found_and_true(
        columns in 2usize..=16, rows in 2usize..=16, of in 2usize..=10, part in 1usize..=9, size in 0..SIZES.len()
    ) {
        let (square_mm, piece_mm) = SIZES[size];
        let with_blue = columns * rows * part / of;
        check(&Event::new(columns, rows, square_mm, piece_mm, |piece| [0, usize::from(piece < with_blue), 0]));
    }
}

#[test]
fn a_picture_of_one_colour_and_a_wall_of_one_square_have_cards_too() {
    for (columns, rows) in [(1, 1), (1, 2), (2, 1), (40, 1), (1, 40), (3, 2), (54, 55), (16, 12)] {
        for (square_mm, piece_mm) in SIZES {
            check(&Event::new(columns, rows, square_mm, piece_mm, |_| [1; 3]));
        }
    }
}

/// Hills and a sun: lines that run on from piece to piece.
fn landscape(columns: usize, rows: usize) -> Event {
    let grid = Grid::usual(columns, rows);
    let side = 40;
    let (width, height) = (f64::from(side) * columns as f64, f64::from(side) * rows as f64);
    Event::drawn(grid, side, |x, y| {
        let (x, y) = (f64::from(x), f64::from(y));
        let hill = |at: f64, high: f64, long: f64| y > height * at - high * (x / long).sin();
        let sun = (x - width * 0.7).hypot(y - height * 0.3) < height * 0.2;
        match (hill(0.8, 25.0, 33.0), hill(0.55, 40.0, 61.0), sun) {
            (true, ..) => COLOURS[1],
            (_, true, _) => COLOURS[4],
            (.., true) => COLOURS[3],
            _ => COLOURS[0],
        }
    })
}

#[test]
fn lines_that_run_on_make_cards_without_a_number() {
    for (columns, rows) in [(4, 3), (10, 8), (12, 16), (16, 12), (20, 5)] {
        let event = landscape(columns, rows);
        check(&event);
        let kinds: BTreeSet<&str> = event.questions().iter().map(|question| question.kind).collect();
        for kind in ["next-piece", "turned-piece"] {
            assert!(kinds.contains(kind), "{kind} on {columns} × {rows}: {kinds:?}");
        }
    }
    let kinds: BTreeSet<&str> = landscape(16, 12).questions().iter().map(|question| question.kind).collect();
    assert!(kinds.contains("turn-back"), "{kinds:?}");
}

/// The colours that any question names.
fn named(all: &[Question]) -> BTreeSet<usize> {
    let pencils = all.iter().flat_map(|question| &question.values).filter_map(|(_, value)| match value {
        Value::Pencil(pencil) => Some(*pencil),
        _ => None,
    });
    pencils.collect()
}

/// Where the dot of [`with_a_dot`] is.
const DOTTED: Cell = Cell { row: 4, column: 2 };

/// A band of colour 2 across the picture, and far below it a dot of that colour, so many pixels a side, in a piece of 40.
fn with_a_dot(dot: u32) -> Event {
    let grid = Grid::usual(6, 5);
    let at = |start: usize| (start as u32 * 40 + 10)..(start as u32 * 40 + 10 + dot);
    Event::drawn(grid, 40, |x, y| match (x, y) {
        (x, y) if at(DOTTED.column).contains(&x) && at(DOTTED.row).contains(&y) => COLOURS[2],
        (x, 50..110) if x > 50 => COLOURS[2],
        (_, y) => COLOURS[usize::from(y > 70)],
    })
}

/// Whether a question that is answered by the picture key, or by pieces on its card, asks whether the dot's piece has colour 2.
fn asks_about_the_dot(question: &Question) -> bool {
    let names_it = question.values.iter().any(|(_, value)| *value == Value::Pencil(2));
    match question.shown {
        Shown::Piece(cell) => cell == DOTTED,
        Shown::Row(first, count) => {
            names_it
                && first.row == DOTTED.row
                && (first.column..first.column + count).contains(&DOTTED.column)
        }
        _ => names_it || matches!(question.kind, "one-colour" | "most-colours"),
    }
}

#[test]
fn nobody_is_asked_about_a_colour_that_might_be_overlooked() {
    // 12 × 12 of 1,600 pixels are 9 %; 5 × 5 are 1.6 %, less than everybody sees
    let (plain, small) = (with_a_dot(12), with_a_dot(5));
    check(&plain);
    check(&small);
    assert!(plain.questions().iter().any(asks_about_the_dot));
    let asked: Vec<Question> = small.questions().into_iter().filter(asks_about_the_dot).collect();
    assert!(asked.is_empty(), "{asked:?}");
}

#[test]
fn nobody_is_asked_about_a_colour_that_is_seen_at_an_edge_only() {
    // below the band a sliver of its colour, 2 pixels of 40: 5 % of the pieces there, half hidden by the line between pieces
    let grid = Grid::usual(6, 5);
    let with_a_sliver = |sliver: u32| {
        Event::drawn(grid, 40, |x, y| match (x, y) {
            (60.., y) if (50..80 + sliver).contains(&y) => COLOURS[2],
            (_, y) => COLOURS[usize::from(y > 60)],
        })
    };
    let (plain, thin) = (with_a_sliver(20), with_a_sliver(2));
    check(&plain);
    check(&thin);
    assert!(named(&plain.questions()).contains(&2));
    let in_the_row = |question: &Question| matches!(question.shown, Shown::Row(first, _) if first.row == 1);
    let others: Vec<Question> =
        thin.questions().into_iter().filter(|question| !in_the_row(question)).collect();
    assert!(!named(&others).contains(&2), "{:?}", named(&others));
}

#[test]
fn nobody_is_asked_to_tell_colours_that_look_alike() {
    let alike = [[250, 250, 250], [90, 90, 90], [104, 104, 104]];
    let grid = Grid::usual(6, 5);
    let event = Event::drawn(grid, 12, |x, y| alike[((x / 9 + y / 12) % 3) as usize]);
    let all = event.questions_in(&alike, Unit::Inch);
    assert!(!named(&all).contains(&1) && !named(&all).contains(&2), "{:?}", named(&all));
    for kind in ["colours-of-piece", "one-colour", "most-colours"] {
        assert!(all.iter().all(|question| question.kind != kind), "{kind}");
    }
    assert!(all.len() > 4 * 4);
}

#[test]
fn nobody_is_asked_to_count_colours_in_a_photo() {
    let grid = Grid::usual(6, 5);
    // every tone from white to blue
    let event = Event::drawn(grid, 40, |x, y| [250 - x as u8, 250 - y as u8, 250]);
    assert!(named(&event.questions()).is_empty());
}

/// The sentences of a file whose names begin so, with all their ways in a row.
fn asked(file: &str) -> Vec<(String, String)> {
    let mut all: Vec<(String, String)> = Vec::new();
    let mut goes_on = false;
    for line in file.lines() {
        if let Some((kind, words)) =
            line.strip_prefix("questions-ask-").and_then(|rest| rest.split_once(" = "))
        {
            all.push((kind.to_owned(), words.to_owned()));
            goes_on = true;
        } else if goes_on && line.starts_with([' ', '}']) {
            all.last_mut().unwrap().1 += line;
        } else {
            goes_on = false;
        }
    }
    all
}

#[test]
fn a_card_asks_one_thing_in_short_sentences_and_says_where_to_look() {
    let (english, spanish) =
        (include_str!("../../../src/words/en.ftl"), include_str!("../../../src/words/es.ftl"));
    let seen: Vec<Question> = [landscape(10, 8), landscape(4, 3), with_a_dot(12)]
        .iter()
        .flat_map(Event::questions)
        .filter(|question| question.shown == Shown::Key)
        .collect();
    assert!(!seen.is_empty());
    for (file, key) in [(english, "picture key"), (spanish, "guía de la imagen")] {
        let all = asked(file);
        assert!(all.len() > 60, "{}", all.len());
        for (kind, words) in &all {
            assert_eq!(words.matches('?').count(), 1, "{kind}: {words}");
            for sentence in words.split(['.', '?']) {
                assert!(sentence.split_whitespace().count() <= 25, "{kind}: {sentence}");
            }
            let keyed = seen.iter().any(|question| question.kind == kind);
            assert!(!keyed || words.to_lowercase().contains(key), "{kind} does not say where to look");
        }
    }
    // a wall may be any wall, and what a piece needs is for those who draw it
    for (kind, words) in asked(english) {
        assert!(!words.contains(" wall"), "{kind}: {words}");
        assert!(!words.contains("need {") && !words.contains("pieces need"), "{kind}: {words}");
    }
}

#[test]
fn every_kind_of_question_is_asked_somewhere_and_has_its_words() {
    let kinds: BTreeSet<&str> =
        [(1, 1, 1), (10, 8, 3), (40, 1, 2), (4, 5, 4), (16, 12, 6), (7, 3, 2), (2, 9, 5)]
            .into_iter()
            .flat_map(|(columns, rows, colours)| {
                SIZES.into_iter().flat_map(move |(square_mm, piece_mm)| {
                    let paint =
                        move |piece: usize| [piece % colours, piece * 7 / 3 % colours, piece / 5 % colours];
                    let asked = Event::new(columns, rows, square_mm, piece_mm, paint).questions();
                    asked.into_iter().map(|question| question.kind)
                })
            })
            .chain(
                [landscape(16, 12), landscape(10, 8)]
                    .iter()
                    .flat_map(Event::questions)
                    .map(|asked| asked.kind),
            )
            .collect();
    let words = include_str!("../../../src/words/en.ftl");
    let written = words.lines().filter_map(|line| line.strip_prefix("questions-ask-")?.split(' ').next());
    let never: Vec<&str> = written.filter(|kind| !kinds.contains(kind)).collect();
    assert!(never.is_empty(), "written, but not asked here: {never:?}");
    for kind in kinds {
        for part in ["ask", "working"] {
            let id = format!("questions-{part}-{kind}");
            assert_ne!(Words::english().say(&id, &[]), format!("[{id}]"));
        }
    }
}

#[test]
fn the_harbour_s_questions_know_its_numbers() {
    // 80 pieces, 20 of them with a blue stripe: a quarter exactly
    let event = Event::new(10, 8, 127.0, 25.4, |piece| [0, usize::from(piece < 20), 0]);
    let all = event.questions();
    let answer =
        |kind: &str| all.iter().find(|question| question.kind == kind).map(|question| question.answer);
    let inches = |count| Answer::Length(Measure { count, unit: Unit::Inch });
    let expected = [
        ("pieces-with", Answer::Count(20)),
        ("all-squares", Answer::Count(80)),
        ("fraction-with", Answer::Count(20)),
        ("scale", Answer::Count(5)),
        ("pieces-on-square", Answer::Count(25)),
        ("mural-width", inches(50)),
        ("mural-height", inches(40)),
        ("around", inches(180)),
        ("edge", Answer::Count(32)),
        ("blocks", Answer::Count(63)),
        ("next-square", Answer::Count(64)),
        ("percent-with", Answer::Percent(25)),
    ];
    for (kind, wanted) in expected {
        assert_eq!(answer(kind), Some(wanted), "{kind}");
    }
}

#[test]
fn a_metric_event_s_questions_know_no_inches() {
    for (square_mm, piece_mm) in SIZES {
        let all = Event::new(10, 8, square_mm, piece_mm, |piece| [piece % 3, 0, 0])
            .questions_in(&COLOURS, Unit::Mm);
        let inches = |question: &Question| {
            let of_inches = |measure: Measure| measure.unit == Unit::Inch;
            let in_answer = matches!(question.answer, Answer::Length(m) | Answer::Area(m) if of_inches(m));
            in_answer
                || question.kind == "inches-to-mm"
                || question.values.iter().any(|(_, value)| matches!(value, Value::Length(m) if of_inches(*m)))
        };
        let found: Vec<&Question> = all.iter().filter(|question| inches(question)).collect();
        assert!(found.is_empty(), "{found:?}");
    }
}
