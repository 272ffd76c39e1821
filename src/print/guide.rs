//! `guide.pdf`: the organiser's own pages: the evening in numbers, what to do when, what has to be there, a plan of the room,
//! cautions, what to do when things go wrong, and what comes afterwards.
//!
//! Every number is worked out from this picture and this evening; one that nobody said is called assumed.

use serde::Serialize;

use super::blocks::{Block, Writer};
use super::camera_place::CameraPlace;
use super::lengths::one;
use super::numbers::{MM_PER_FOOT, about, level_table, numbers, parts, reach_table, side_by_side};
use super::page::{Foot, Reading, listed, reading_room};
use super::pencils::Sets;
use super::room::Room;
use super::room_drawing::RoomDrawing;
use super::{Document, PrintError, Sources, effort, names_of};
use crate::plan::crowd::{Assumed, Evening, PencilNeed, ShiftSaid};
use crate::plan::settings::{Choice, Join, Pencil, Units};

/// What the template sets.
#[derive(Serialize)]
struct Content {
    blocks: Vec<Block>,
    room: RoomDrawing,
}

/// Shifts that stand one below the other before their table is divided.
const MOST_SHIFTS: usize = 4;
/// Pencils that stand one below the other before their table is divided.
const MOST_PENCILS: usize = 8;
/// Typesets the document.
///
/// # Errors
/// [`PrintError::Typeset`].
pub(super) fn document(sources: &Sources) -> Result<Document, PrintError> {
    let evening = sources.evening;
    let writer = Writer { sources, values: numbers(sources, evening) };
    let pages = [
        in_numbers(&writer, evening),
        timeline(&writer),
        event(&writer),
        materials(&writer, evening)?,
        room_page(&writer),
        wrong(&writer),
        afterwards(&writer),
    ];
    let content = Content { blocks: pages.concat(), room: room(sources, evening) };
    Reading { name: "guide", foot: Foot::Line, content, pictures: Vec::new() }.document(sources)
}

/// What this evening is.
fn in_numbers(w: &Writer, evening: &Evening) -> Vec<Block> {
    let said = |what: Assumed, id: &str| {
        let assumed = evening.given.assumes(what);
        if assumed { w.say_with("guide-assumed", &[("value", w.say(id).into())]) } else { w.say(id) }
    };
    let row = |id: &str, value: String| vec![w.say(id), value];
    let time = if evening.given.start.is_some() { "guide-time-clock" } else { "guide-time-value" };
    let border = evening.reserve.as_ref().map(|_| row("guide-border", w.say("guide-border-value")));
    let grid = &w.sources.settings.grid;
    let free = grid.kept_free.told(grid, "guide-free-value", w.sources.words);
    let free = free.map(|said| row("guide-free", said));
    let mut rows = vec![
        row("guide-crowd", said(Assumed::Visitors, "guide-crowd-value")),
        row("guide-time", said(Assumed::Minutes, time)),
        row("guide-seats", said(Assumed::Seats, "guide-seats-value")),
        row("guide-helpers", said(Assumed::GivingOut, "guide-helpers-value")),
        row("guide-picture", w.say("guide-picture-value")),
        row("guide-square", w.say("guide-square-value")),
        row("guide-wall", w.say("guide-wall-value")),
        row("guide-hang", said(Assumed::Hang, "guide-hang-value")),
        row("guide-up", w.say("guide-up-value")),
    ];
    rows.extend(border.into_iter().chain(free));
    let mut blocks = vec![
        w.title("guide-title"),
        w.text("guide-intro"),
        w.heading("guide-numbers"),
        Block::Table { heads: w.heads(&["guide-what", "guide-how-much"]), widths: vec![0.0, 1.0], rows },
        plain_text(evening.told(w.sources.words).join(" ")),
    ];
    if !evening.given.assumed.is_empty() {
        blocks.push(w.note("guide-assumed-note"));
    }
    blocks.extend(shifts(w, evening));
    blocks.extend([w.heading("guide-levels"), level_table(w, evening)]);
    blocks.extend(heights(w, evening));
    blocks
}

/// A paragraph that is already in words.
fn plain_text(text: String) -> Block {
    Block::Text { text }
}

/// When how many helpers are needed, and what one fewer costs.
fn shifts(w: &Writer, evening: &Evening) -> Vec<Block> {
    let words = w.sources.words;
    let row =
        |shift: &ShiftSaid| [shift.from.clone(), shift.giving_out.to_string(), shift.hanging.to_string()];
    let rows: Vec<[String; 3]> = evening.shifts_told(words).iter().map(row).collect();
    let across = parts(rows.len(), MOST_SHIFTS, 2);
    let heads = ["crowd-from", "crowd-giving-out", "crowd-hanging"];
    let mut blocks = vec![
        w.heading("guide-shifts"),
        Block::Table {
            heads: (0..across).flat_map(|_| w.heads(&heads)).collect(),
            widths: [1.0, 1.0, 1.0].repeat(across),
            rows: side_by_side(&rows, across),
        },
    ];
    let one_fewer = evening.one_fewer_told(words);
    if !one_fewer.is_empty() {
        blocks.push(plain_text(one_fewer.join(" ")));
    }
    blocks.push(plain_text(evening.assumptions_told(w.sources.settings, words)));
    blocks
}

/// Who reaches which rows; the wall map has the height of each.
fn heights(w: &Writer, evening: &Evening) -> Vec<Block> {
    vec![w.heading("guide-heights"), reach_table(w, evening), w.text("guide-reach-source")]
}

/// What to do in the days and hours before.
fn timeline(w: &Writer) -> Vec<Block> {
    let part = |id: &str, count: usize| [w.heading(id), w.boxes(id, count)];
    [
        vec![w.title("guide-timeline")],
        part("guide-week", 8).into(),
        part("guide-day", 8).into(),
        part("guide-hours", 5).into(),
    ]
    .concat()
}

/// What to do while visitors are there and right after, and what becomes of pieces and squares: the page to carry about.
fn event(w: &Writer) -> Vec<Block> {
    let part = |id: &str, count: usize| [w.heading(id), w.boxes(id, count)];
    [
        vec![w.title("guide-event")],
        part("guide-running", 5).into(),
        vec![w.heading("guide-pieces"), w.text("helpers-label"), w.list("guide-pieces", 5)],
        part("guide-end", 5).into(),
        part("guide-clearing", 4).into(),
    ]
    .concat()
}

/// What has to be there.
///
/// # Errors
/// [`PrintError::TooLarge`] where squares fit the paper in no number of parts.
fn materials(w: &Writer, evening: &Evening) -> Result<Vec<Block>, PrintError> {
    let Sources { settings, printed, .. } = *w.sources;
    let effort = effort(settings, printed, settings.print.join)?;
    // the squares' own: pieces apart from them are what needs color
    let sheets = match settings.print.join {
        Join::Apart => effort.sheets - effort.in_colour,
        Join::Beside => effort.sheets,
    };
    let paper = w.sources.words.say(&format!("print-paper-{}", settings.print.paper.word()), &[]);
    let own = [("sheets", sheets.into()), ("paper", paper.into())];
    let row = |id: &str| vec![w.say(&format!("guide-{id}")), w.say_with(&format!("guide-{id}-amount"), &own)];
    let things = [
        "paper",
        "printer",
        "pencils",
        "sharpeners",
        "tape",
        "string",
        "bags",
        "stool",
        "cutting",
        "phone",
        "signs",
        "bin",
    ];
    Ok(vec![
        w.title("guide-materials"),
        Block::Table {
            heads: w.heads(&["guide-thing", "guide-amount"]),
            widths: vec![0.0, 1.0],
            rows: things.map(row).into(),
        },
        w.heading("guide-print"),
        printing_table(w),
        w.heading("guide-pencil-list"),
        w.text("guide-pencil-list-intro"),
        pencil_table(w, evening),
    ])
}

/// Documents of a kit by the paper that suits them, and whether they need color: a sentence each.
const PRINTED: [(&[&str], &str, &str); 6] = [
    (&["squares"], "guide-print-thick", "guide-print-black"),
    (&["strips"], "guide-print-thick", "guide-print-in-color"),
    (&["pieces", "pencils"], "guide-print-white", "guide-print-in-color"),
    (&["questions"], "guide-print-card", "guide-print-in-color"),
    (&["edge-cards", "table-card", "levels"], "guide-print-card", "guide-print-black"),
    (&["checklist", "wall-map", "answers", "helpers", "guide"], "guide-print-any", "guide-print-black"),
];

/// What is printed on which paper.
fn printing_table(w: &Writer) -> Block {
    let of_kit: Vec<&str> = names_of(w.sources.settings.print.join).collect();
    let row = |(documents, paper, ink): &(&[&str], &str, &str)| {
        let own = documents.iter().filter(|name| of_kit.contains(*name));
        let files: Vec<String> = own.map(|name| format!("{name}.pdf")).collect();
        (!files.is_empty()).then(|| vec![listed(files.iter().map(String::as_str)), w.say(paper), w.say(ink)])
    };
    Block::Table {
        heads: w.heads(&["guide-print-files", "guide-print-paper", "guide-print-ink"]),
        widths: vec![1.4, 1.2, 0.8],
        rows: PRINTED.iter().filter_map(row).collect(),
    }
}

/// Each pencil: how many where all are shared, and how many where each table has a set.
fn pencil_table(w: &Writer, evening: &Evening) -> Block {
    let sets = Sets::of(w.sources, evening);
    let pencil = |(pencil, (shared, own)): (&Pencil, (&PencilNeed, &PencilNeed))| {
        let [shared, sets] =
            [shared.count, own.count * sets.tables].map(|count| pencil.counted(count, w.sources.words));
        [pencil.name.clone(), shared, sets]
    };
    let needs = evening.supplies.pencils.iter().zip(&sets.at_a_table);
    let pencils: Vec<[String; 3]> = w.sources.facts.pencils.iter().zip(needs).map(pencil).collect();
    let across = parts(pencils.len(), MOST_PENCILS, 2);
    let heads = ["guide-colour", "guide-pencil-count", "guide-pencil-sets"];
    Block::Table {
        heads: (0..across).flat_map(|_| w.heads(&heads)).collect(),
        widths: [1.0, 0.6, 0.6].repeat(across),
        rows: side_by_side(&pencils, across),
    }
}

fn room_page(w: &Writer) -> Vec<Block> {
    vec![
        w.title("guide-room"),
        w.text("guide-room-intro"),
        Block::Drawing { about: w.say("guide-room-about") },
        w.list("guide-room", 4),
        w.heading("guide-cautions"),
        w.note("guide-fire"),
        w.list("guide-cautions", 6),
    ]
}

/// What to do when things go wrong.
fn wrong(w: &Writer) -> Vec<Block> {
    let row = |id: &str| vec![w.say(&format!("guide-wrong-{id}")), w.say(&format!("guide-wrong-{id}-do"))];
    let all =
        ["short", "many", "few", "scale", "backs", "painted", "lost", "turned", "unread", "pencils", "late"];
    vec![
        w.title("guide-wrong"),
        Block::Table {
            heads: w.heads(&["guide-wrong-what", "guide-wrong-do"]),
            widths: vec![1.0, 1.8],
            rows: all.map(row).into(),
        },
    ]
}

fn afterwards(w: &Writer) -> Vec<Block> {
    vec![w.heading("guide-after"), w.list("guide-after", 6)]
}

/// The room, to scale.
fn room(sources: &Sources, evening: &Evening) -> RoomDrawing {
    let Sources { settings, words, .. } = *sources;
    let place = CameraPlace::of(settings, evening.wall.hang_mm);
    let [width, _] = reading_room(settings.print.paper, Foot::Line);
    let (wall_m, phone_m) = (evening.wall.width_with_cards_mm / 1e3, place.distance_mm / 1e3);
    let plan = Room::of(wall_m, phone_m, evening.given.seats, RoomDrawing::shape(width));
    let say = |part: &str, mm: f64| {
        let length = if part == "bar" { one(sources, mm) } else { about(sources, mm) };
        words.say(&format!("guide-plan-{part}"), &[("length", length.into())])
    };
    let scale_mm = match settings.print.units {
        Units::Inch => 6.0 * MM_PER_FOOT,
        Units::Mm => 2_000.0,
    };
    RoomDrawing::of(&plan, width, scale_mm / 1e3, say)
}
