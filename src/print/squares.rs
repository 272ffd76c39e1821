//! `squares.pdf`: the blank squares of paper, one a cell; on their backs what to call them and which way is up.

use serde::Serialize;

use super::layout::{Area, Layout};
use super::marks::{Box, Code, Line, quiet_zone, square_ticks};
use super::page::{Heading, Page, Sheets, Sides, listed};
use super::parts::{Division, Part};
use super::small_wall::SmallWall;
use super::{Document, Large, PrintError, Sources};
use crate::frame::Point;
use crate::plan::settings::{Flip, PrintSettings};
use crate::plan::{Printed, PrintedSquare};
use crate::words::Words;

/// White between the code's quiet zone and the label beside it, in mm.
const LABEL_GAP_MM: f64 = 1.0;
/// Room that the longest labels need beside the code, in mm: six letters at 8 pt and the gaps.
const LABEL_LEAST_MM: f64 = 14.0;
/// How high a letter is at 8 pt, in mm.
const LABEL_HEIGHT_MM: f64 = 2.0;

/// What all squares of an event share.
#[derive(Serialize)]
struct Shared {
    parts: Vec<PartData>,
    this_way_up: String,
}

/// What a part of every square bears, in mm from the part's top left corner.
#[derive(Serialize)]
struct PartData {
    size: [f64; 2],
    ticks: Vec<Line>,
    /// Where the code is on this part: its quiet zone, and the label beside it.
    quiet: Option<Box>,
    label: Option<LabelPlace>,
    seams: Vec<Line>,
    matches: Vec<Line>,
    strip: Option<Box>,
}

/// Where the small label stands.
#[derive(Copy, Clone, Serialize)]
pub(super) struct LabelPlace {
    pub x: f64,
    /// Half its height.
    pub y: f64,
    /// Whether it ends at `x`; else it begins there.
    pub ends: bool,
}

/// One side of a square or of a part of one.
#[derive(Serialize)]
struct Item {
    area: Box,
    label: String,
    /// Which of the parts, from 0.
    part: usize,
    /// Which of the parts, in words; nothing where there is but one.
    part_words: String,
    /// On fronts of parts that bear it.
    code: Option<Code>,
    /// On backs: the text of the code, and whether the back stands upside down on its page.
    text: String,
    upside_down: bool,
    /// On backs of whole squares that have room for it: the wall in small, with the square's spot.
    wall: Option<SmallWall>,
}

/// Width and height of the wall in small on a square's back, in parts of its side, and the smallest side of a spot in it, in mm.
const WALL_PARTS: [f64; 2] = [0.6, 0.3];
const LEAST_SPOT_MM: f64 = 1.2;

/// Where a square goes, for its back.
fn wall_of(square: &PrintedSquare, printed: &Printed) -> Option<SmallWall> {
    let grid = &printed.grid;
    let wall = SmallWall::of(grid, WALL_PARTS.map(|part| part * grid.square_mm));
    (wall.cell_mm() >= LEAST_SPOT_MM).then(|| wall.marked([(square.cell, true)].into_iter()))
}

/// How squares are divided, and where their parts lie.
///
/// # Errors
/// [`PrintError::TooLarge`] where squares fit the paper in no number of parts.
pub(super) fn division(settings: &PrintSettings, printed: &Printed) -> Result<Division, PrintError> {
    let side = printed.grid.square_mm;
    let quiet = quiet_zone(printed.code_top_left, printed.module_mm);
    Division::of(side, settings.paper, &quiet)
        .ok_or_else(|| PrintError::too_large(Large::Square, side, 0.0, settings.paper))
}

/// How squares lie on pages where none may come in parts.
///
/// # Errors
/// [`PrintError::TooLarge`] where a square does not fit the paper whole.
pub(super) fn whole(sources: &Sources) -> Result<Layout, PrintError> {
    let Sources { settings, printed, .. } = *sources;
    let division = division(&settings.print, printed)?;
    if division.across * division.down > 1 {
        return Err(PrintError::too_large(Large::Square, printed.grid.square_mm, 0.0, settings.print.paper));
    }
    Ok(division.layout)
}

/// The page, from 0, on which each square's code lies, and where the square lies on it; of a square in parts most lies
/// beyond the page's edges.
///
/// # Errors
/// As [`division`].
pub(super) fn fronts(settings: &PrintSettings, printed: &Printed) -> Result<Vec<(usize, Area)>, PrintError> {
    let division = division(settings, printed)?;
    let parts = division.parts();
    let quiet = quiet_zone(printed.code_top_left, printed.module_mm);
    let with_code = division.part_with(&quiet).unwrap_or(0);
    let items = division.layout.fronts(settings.flip, printed.squares.len() * parts.len());
    let side = printed.grid.square_mm;
    let square = |(page, spot): (usize, Area)| {
        let Point { x, y, .. } = spot.top_left;
        (page, Area::new(x - parts[with_code].x, y - parts[with_code].y, side, side))
    };
    Ok(items.into_iter().skip(with_code).step_by(parts.len()).map(square).collect())
}

/// Typesets the document.
///
/// # Errors
/// As [`division`], and [`PrintError::Typeset`].
pub(super) fn document(sources: &Sources) -> Result<Document, PrintError> {
    let Sources { settings, printed, words, .. } = *sources;
    let flip = settings.print.flip;
    let division = division(&settings.print, printed)?;
    let (layout, parts) = (&division.layout, division.parts());
    let two_sided = flip != Flip::None;
    let sheets = layout.sheets(printed.squares.len() * parts.len());
    let sides: &[bool] = if two_sided { &[false, true] } else { &[false] };
    let way = if two_sided { Sides::Two } else { Sides::One };
    let heading = Heading::new(sources, "squares", Some(sheets * sides.len()), way);
    let shared = shared(&division, printed, words);
    let items: Vec<(&PrintedSquare, usize)> =
        printed.squares.iter().flat_map(|square| (0..parts.len()).map(move |part| (square, part))).collect();
    let mut pages = Vec::with_capacity(sheets * sides.len());
    for numbers in layout.stacked(items.len()) {
        let on_sheet: Vec<(&PrintedSquare, usize)> =
            numbers.into_iter().map(|number| items[number]).collect();
        let names: Vec<String> =
            on_sheet.iter().map(|(square, part)| named(square, *part, parts.len(), words)).collect();
        let labels = listed(names.iter().map(String::as_str));
        for &back in sides {
            let strip = heading.strip_with(layout, pages.len() + 1, back, &labels);
            let items = on_sheet.iter().zip(&layout.spots).map(|((square, part), spot)| {
                let own = Item {
                    area: (*spot).into(),
                    label: square.label.clone(),
                    part: *part,
                    part_words: part_words(*part, parts.len(), words),
                    code: shared.parts[*part].quiet.map(|quiet| code(square, printed, &quiet)),
                    text: square.text.clone(),
                    upside_down: false,
                    wall: if back && parts.len() == 1 { wall_of(square, printed) } else { None },
                };
                if back { turned_over(own, spot, flip, layout) } else { own }
            });
            let id = if back { "print-about-backs" } else { "print-about-squares" };
            let about = words.say(id, &[("labels", labels.as_str().into())]);
            pages.push(Page { strip, about, back, items: items.collect() });
        }
    }
    Sheets { name: "squares", shared, pages, pictures: Vec::new(), two_sided }.document(sources)
}

/// A square's or a part's name in a list.
pub(super) fn named(square: &PrintedSquare, part: usize, parts: usize, words: &Words) -> String {
    let part = part_words(part, parts, words);
    if part.is_empty() { square.label.clone() } else { format!("{} ({part})", square.label) }
}

pub(super) fn part_words(part: usize, parts: usize, words: &Words) -> String {
    let said = [("part", (part + 1).into()), ("parts", parts.into())];
    if parts == 1 { String::new() } else { words.say("print-part", &said) }
}

/// A square's code within the white that is kept for it.
pub(super) fn code(square: &PrintedSquare, printed: &Printed, quiet: &Box) -> Code {
    let middle = |from: f64, size: f64| from + size / 2.0;
    let (x, y) = (middle(quiet.x, quiet.width), middle(quiet.y, quiet.height));
    Code::centred(&square.modules, printed.module_mm, x, y)
}

fn turned_over(front: Item, spot: &Area, flip: Flip, layout: &Layout) -> Item {
    Item {
        area: spot.turned_over(flip, layout.page).into(),
        code: None,
        upside_down: flip == Flip::ShortEdge,
        ..front
    }
}

fn shared(division: &Division, printed: &Printed, words: &Words) -> Shared {
    let side = printed.grid.square_mm;
    let quiet = quiet_zone(printed.code_top_left, printed.module_mm);
    let with_code = division.part_with(&quiet);
    let ticks = square_ticks(side, &quiet);
    let label = label_place(side, &quiet);
    let part = |(number, part): (usize, Part)| {
        let (dx, dy) = (part.x, part.y);
        let inside = |t: &&Line| {
            let within = |at: f64, from: f64, size: f64| at >= from - 1e-9 && at < from + size + 1e-9;
            within(t.x1, dx, part.shown[0]) && within(t.y1, dy, part.shown[1])
        };
        let own = ticks.iter().filter(inside);
        let moved = |t: &Line| Line { x1: t.x1 - dx, y1: t.y1 - dy, x2: t.x2 - dx, y2: t.y2 - dy };
        let has_code = with_code == Some(number);
        PartData {
            size: [division.width, division.height],
            ticks: own.map(moved).collect(),
            quiet: has_code.then_some(Box { x: quiet.x - dx, y: quiet.y - dy, ..quiet }),
            label: has_code.then_some(LabelPlace { x: label.x - dx, y: label.y - dy, ends: label.ends }),
            seams: part.seams,
            matches: part.matches,
            strip: part.strip,
        }
    };
    let parts = division.parts().into_iter().enumerate().map(part).collect();
    Shared { parts, this_way_up: words.say("print-this-way-up", &[]) }
}

/// Where the small label stands: beside the quiet zone, or above or below it on squares too narrow for that.
pub(super) fn label_place(side: f64, quiet: &Box) -> LabelPlace {
    let (right, bottom) = (quiet.x + quiet.width, quiet.y + quiet.height);
    let in_right_half = quiet.x + right > side;
    let room = if in_right_half { quiet.x } else { side - right };
    if room >= LABEL_LEAST_MM {
        let x = if in_right_half { quiet.x - LABEL_GAP_MM } else { right + LABEL_GAP_MM };
        return LabelPlace { x, y: (quiet.y + bottom) / 2.0, ends: in_right_half };
    }
    let out = LABEL_GAP_MM + LABEL_HEIGHT_MM / 2.0;
    let y = if quiet.y + bottom > side { quiet.y - out } else { bottom + out };
    LabelPlace { x: if in_right_half { right } else { quiet.x }, y, ends: in_right_half }
}
