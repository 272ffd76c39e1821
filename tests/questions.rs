//! Questions about the picture: every answer is found again by another way, from the picture's pixels and from walls laid
//! out cell by cell, over random pictures and grids; each kind of question is met.

#![allow(
    clippy::unwrap_used,
    clippy::panic,
    clippy::cast_precision_loss,
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "a test that cannot go on fails"
)]

use std::collections::BTreeSet;

use everysquare::picture::questions::{CARDS, Learners, Measure, Question, Unit, Value, questions};
use everysquare::picture::{FewColours, Picture, PictureFacts};
use everysquare::plan::settings::{LevelSettings, Pencil};
use everysquare::plan::{Cell, Grid, RowsFrom};
use everysquare::words::Words;
use proptest::prelude::*;

/// Pixels along a piece's side.
const SIDE: u32 = 6;
const COLOURS: [[u8; 3]; 6] =
    [[250, 250, 250], [20, 60, 160], [200, 30, 40], [250, 210, 40], [30, 130, 60], [20, 20, 20]];

/// A grid and its picture, every pixel one of a few colours.
#[derive(Clone, Debug)]
struct Event {
    grid: Grid,
    picture: Picture,
}

impl Event {
    /// `paint` gives the colour of a piece's upper, middle and lower third.
    fn new(
        columns: usize,
        rows: usize,
        square_mm: f64,
        piece_mm: f64,
        paint: impl Fn(usize) -> [usize; 3],
    ) -> Self {
        let grid = Grid { columns, rows, square_mm, piece_mm, rows_from: RowsFrom::Bottom };
        let pixels = image::RgbImage::from_fn(columns as u32 * SIDE, rows as u32 * SIDE, |x, y| {
            let piece = (y / SIDE) as usize * columns + (x / SIDE) as usize;
            image::Rgb(COLOURS[paint(piece)[(y % SIDE * 3 / SIDE) as usize]])
        });
        Self { grid, picture: Picture { pixels } }
    }

    fn questions(&self) -> Vec<Question> {
        let pencils = COLOURS.map(|srgb| Pencil { name: format!("{srgb:?}"), srgb });
        let few = FewColours::of(&self.picture, &pencils);
        questions(&PictureFacts::of(&few, &self.grid, &LevelSettings::default()), &self.grid)
    }

    /// The colours seen in a piece, from its pixels.
    fn seen(&self, column: usize, row: usize) -> BTreeSet<[u8; 3]> {
        let (x0, y0) = (column as u32 * SIDE, row as u32 * SIDE);
        let places = (y0..y0 + SIDE).flat_map(|y| (x0..x0 + SIDE).map(move |x| (x, y)));
        places.map(|(x, y)| self.picture.pixels.get_pixel(x, y).0).collect()
    }

    /// How many pieces are of a kind.
    fn count(&self, is_kind: impl Fn(&BTreeSet<[u8; 3]>) -> bool) -> usize {
        self.cells().filter(|(column, row)| is_kind(&self.seen(*column, *row))).count()
    }

    fn cells(&self) -> impl Iterator<Item = (usize, usize)> + use<> {
        let Grid { columns, rows, .. } = self.grid;
        (0..rows).flat_map(move |row| (0..columns).map(move |column| (column, row)))
    }

    /// How many square blocks of a side lie wholly on the wall, tried place by place.
    fn blocks(&self, side: usize) -> usize {
        self.cells().filter(|(c, r)| c + side <= self.grid.columns && r + side <= self.grid.rows).count()
    }
}

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
    let needing = || event.count(|seen| seen.contains(&colour(q, "colour")));
    let all = event.cells().count();
    Some(match q.kind {
        "pieces-needing" => needing(),
        "colours-of-piece" => {
            let Some(Value::Cell(Cell { column, row })) = q.value("piece") else { panic!("{q:?}") };
            event.seen(*column, *row).len()
        }
        "in-row-needing" => {
            let row = event.grid.rows - number(q, "row"); // row 1 is the lowest
            (0..event.grid.columns).filter(|c| event.seen(*c, row).contains(&colour(q, "colour"))).count()
        }
        "colours" => event.cells().flat_map(|(c, r)| event.seen(c, r)).collect::<BTreeSet<_>>().len(),
        "one-colour" => event.count(|seen| seen.len() == 1),
        "fraction-needing" => {
            assert_eq!(needing() * number(q, "of"), all * number(q, "part"), "exactly so: {q:?}");
            needing()
        }
        "which-part" => {
            assert_eq!((needing(), all), (number(q, "needing"), number(q, "count")));
            (1..).find(|of| needing() * of == all).unwrap()
        }
        "not-needing" => {
            assert_eq!(needing(), number(q, "needing"));
            event.count(|seen| !seen.contains(&colour(q, "colour")))
        }
        "percent-needing" => {
            assert_eq!(needing(), number(q, "needing"));
            whole(needing() as f64 / all as f64 * 100.0, q)
        }
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

/// The answer found again: the wall laid out cell by cell.
fn from_the_wall(event: &Event, q: &Question) -> Option<usize> {
    let Grid { columns, rows, .. } = event.grid;
    let on_wall = |c: usize, r: usize| c < columns && r < rows;
    Some(match q.kind {
        "in-one-row" => event.cells().filter(|(_, row)| *row == 0).count(),
        "in-one-column" => event.cells().filter(|(column, _)| *column == 0).count(),
        "left-in-row" => (number(q, "hanging")..columns).count(),
        "one-more" => (0..=columns * rows).skip(1).count() + 1,
        "all-squares" => event.cells().count(),
        "left" => event.cells().skip(number(q, "hanging")).count(),
        "full-rows" => event.cells().filter(|(_, row)| *row < number(q, "rows")).count(),
        "fraction-hanging" => {
            let groups = event.cells().count() / number(q, "of");
            assert_eq!(groups * number(q, "of"), event.cells().count(), "comes out even: {q:?}");
            event.cells().take(groups * number(q, "part")).count()
        }
        "visitors" => {
            let cells: Vec<_> = event.cells().collect();
            assert!(cells.chunks(number(q, "each")).all(|own| own.len() == number(q, "each")));
            cells.chunks(number(q, "each")).count()
        }
        "percent-hanging" => whole(event.cells().count() as f64 * number(q, "percent") as f64 / 100.0, q),
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
    let wall = event.grid.size();
    let sides_agree = || {
        assert!((mm(length(q, "square")) - square_mm).abs() < 1e-6, "{q:?}");
        unit_mm(length(q, "square").unit)
    };
    Some(match q.kind {
        "scale" => {
            assert!((mm(length(q, "piece")) - piece_mm).abs() < 1e-6, "{q:?}");
            sides_agree();
            whole(enlarged(1), q)
        }
        "piece-to-square" => whole(number(q, "first") as f64 * enlarged(1), q),
        "pieces-on-square" => whole(square_mm * square_mm / (piece_mm * piece_mm), q),
        "larger" => whole(number(q, "length") as f64 * enlarged(1), q),
        "smaller" => whole(number(q, "length") as f64 / enlarged(1), q),
        "larger-patch" => whole(number(q, "length") as f64 * enlarged(2), q),
        "wall-width" => whole(wall.x / sides_agree(), q),
        "wall-height" => whole(wall.y / sides_agree(), q),
        "around" => whole((wall.x + wall.y + wall.x + wall.y) / sides_agree(), q),
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
        "hands" => (0..number(q, "helpers")).map(|_| number(q, "hands")).sum(),
        "boxes-across" => tick_marks + 1,
        "quarter-boxes" => boxes().count(),
        "half-of-boxes" => boxes().filter(|(column, _)| *column < 2).count(),
        "percent-of-boxes" => boxes().take(boxes().count() * number(q, "percent") / 100).count(),
        "boxes-ratio" => boxes().skip(4).count() / 4,
        "boxes-of-squares" => (0..number(q, "squares")).map(|_| boxes().count()).sum(),
        "box-edge" => boxes().filter(|(c, r)| [*c, *r].iter().any(|at| *at == 0 || *at == 3)).count(),
        "box-blocks" => (1..=4).map(blocks).sum(),
        "folded" => (0..number(q, "times")).fold(1, |parts, _| parts + parts),
        "folded-lines" => (0..number(q, "times")).fold(0, |creases, _| creases + creases + 1),
        "tables" => (0..number(q, "tables")).map(|_| number(q, "pencils")).sum(),
        "minutes" => (1..).take_while(|done| done * number(q, "each") <= number(q, "minutes")).count(),
        "sheets" => (1..).find(|sheets| sheets * number(q, "each") >= number(q, "squares")).unwrap(),
        "longer-sides" => area(number(q, "times")),
        "millimetres" => number(q, "metres") * 100 * 10,
        "next-square" => (2..=6).map(area).next_back().unwrap(),
        "square-step" | "area-step" => area(number(q, "to")) - area(number(q, "from")),
        "odd-numbers" => (1..=number(q, "last")).step_by(2).sum(),
        "handshakes" => {
            let people = 0..number(q, "people");
            people.clone().flat_map(|a| people.clone().filter(move |b| a < *b)).count()
        }
        _ => return None,
    })
}

/// Checks one question by all ways that know its kind; exactly one must.
fn recount(event: &Event, question: &Question) {
    let ways = [
        from_pixels(event, question),
        from_the_wall(event, question),
        from_lengths(event, question),
        from_nothing(question),
    ];
    let found: Vec<usize> = ways.into_iter().flatten().collect();
    assert_eq!(found, [question.answer], "{question:?} on {:?}", event.grid);
    for (name, value) in &question.values {
        match value {
            Value::Sum(terms) => assert_eq!(terms.iter().sum::<usize>(), question.answer, "{question:?}"),
            Value::Cells(cells) => assert_eq!(cells.len(), question.answer, "{question:?}"),
            Value::Pencils(pencils) => assert_eq!(pencils.len(), question.answer, "{question:?}"),
            _ => assert!(!name.is_empty()),
        }
    }
}

fn check(event: &Event) {
    let all = event.questions();
    assert_eq!(all, event.questions(), "the same picture, the same questions");
    for learners in Learners::ALL {
        let own: Vec<_> = all.iter().filter(|question| question.learners == learners).collect();
        assert!((4..=CARDS).contains(&own.len()), "{learners:?}: {} on {:?}", own.len(), event.grid);
        for (at, question) in own.iter().enumerate() {
            let same = |other: &&&Question| (other.kind, &other.values) == (question.kind, &question.values);
            assert!(!own[at + 1..].iter().any(|other| same(&other)), "twice: {question:?}");
        }
    }
    let order: Vec<_> = all.iter().map(|question| question.learners).collect();
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
    #![proptest_config(ProptestConfig::with_cases(400))]
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
            .collect();
    let words = include_str!("../src/words/en.ftl");
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
    let expected = [
        ("pieces-needing", 20),
        ("all-squares", 80),
        ("fraction-needing", 20),
        ("which-part", 4),
        ("scale", 5),
        ("pieces-on-square", 25),
        ("wall-width", 50),
        ("wall-height", 1016),
        ("edge", 32),
        ("blocks", 63),
        ("all-blocks", 276),
        ("next-square", 36),
    ];
    for (kind, wanted) in expected {
        assert_eq!(answer(kind), Some(wanted), "{kind}");
    }
}
