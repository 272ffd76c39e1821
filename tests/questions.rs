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

use everysquare::picture::questions::{
    Answer, CARDS, Measure, Question, Rung, Shown, Unit, Value, questions,
};
use everysquare::picture::{FewColours, Picture, PictureFacts};
use everysquare::plan::settings::{LevelSettings, Pencil};
use everysquare::plan::{Cell, Grid, RowsFrom, Turn};
use everysquare::words::Words;
use image::RgbImage;
use image::imageops::{crop_imm, rotate90, rotate180, rotate270};
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
    /// Pixels along a piece's side.
    side: u32,
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
        Self::drawn(grid, SIDE, |x, y| {
            let piece = (y / SIDE) as usize * columns + (x / SIDE) as usize;
            COLOURS[paint(piece)[(y % SIDE * 3 / SIDE) as usize]]
        })
    }

    /// `colour` is that of a pixel.
    fn drawn(grid: Grid, side: u32, colour: impl Fn(u32, u32) -> [u8; 3]) -> Self {
        let (width, height) = (grid.columns as u32 * side, grid.rows as u32 * side);
        let pixels = RgbImage::from_fn(width, height, |x, y| image::Rgb(colour(x, y)));
        Self { grid, picture: Picture { pixels }, side }
    }

    fn questions(&self) -> Vec<Question> {
        self.questions_in(&COLOURS, Unit::Inch)
    }

    fn questions_in(&self, colours: &[[u8; 3]], unit: Unit) -> Vec<Question> {
        let pencil = |srgb: &[u8; 3]| Pencil { name: format!("{srgb:?}"), srgb: *srgb };
        let pencils: Vec<Pencil> = colours.iter().map(pencil).collect();
        let few = FewColours::of(&self.picture, &pencils);
        let facts = PictureFacts::of(&few, &self.grid, &LevelSettings::default());
        questions(&facts, &self.picture, &self.grid, unit)
    }

    /// The piece of a cell, cut out.
    fn piece(&self, cell: Cell) -> RgbImage {
        let (x, y) = (cell.column as u32 * self.side, cell.row as u32 * self.side);
        crop_imm(&self.picture.pixels, x, y, self.side, self.side).to_image()
    }

    /// The colours seen in a piece, from its pixels.
    fn seen(&self, column: usize, row: usize) -> BTreeSet<[u8; 3]> {
        self.piece(Cell { row, column }).pixels().map(|pixel| pixel.0).collect()
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
        "tape" => (0..number(q, "helpers")).map(|_| number(q, "strips")).sum(),
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
fn recount(event: &Event, question: &Question) {
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
    let grid = Grid { columns, rows, square_mm: 127.0, piece_mm: 25.4, rows_from: RowsFrom::Bottom };
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
    let grid = Grid { columns: 6, rows: 5, square_mm: 127.0, piece_mm: 25.4, rows_from: RowsFrom::Bottom };
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
    let grid = Grid { columns: 6, rows: 5, square_mm: 127.0, piece_mm: 25.4, rows_from: RowsFrom::Bottom };
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
    let grid = Grid { columns: 6, rows: 5, square_mm: 127.0, piece_mm: 25.4, rows_from: RowsFrom::Bottom };
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
    let grid = Grid { columns: 6, rows: 5, square_mm: 127.0, piece_mm: 25.4, rows_from: RowsFrom::Bottom };
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
    let (english, spanish) = (include_str!("../src/words/en.ftl"), include_str!("../src/words/es.ftl"));
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
