//! Squares of one colour all over: which papers to cut, and the codes to glue on them.

use super::{Item, Laid, NOTE_POINTS};
use crate::frame::{Vector, ceil_index, float};
use crate::plan::PrintedSquare;
use crate::plan::settings::Choice;
use crate::print::layout::{Area, Layout};
use crate::print::lengths::one;
use crate::print::marks::{Box, Code, quiet_zone};
use crate::print::page::listed;
use crate::print::squares::label_place;
use crate::print::{Large, PrintError, Sources};
use crate::words::FluentValue;

/// Room for a code that is glued on, with its words, in mm.
const WIDTH_MM: f64 = 62.0;
/// Height of a line of the note, in mm a point, and how many lines its text has at most.
const NOTE_LINE_MM: f64 = 0.53;
const NOTE_LINES: f64 = 2.5;
/// Room for the label beside a code that is glued on, in mm.
const LABEL_MM: f64 = 12.0;
/// White around a code that is glued on, beyond its quiet zone, in mm: what a pair of scissors strays.
const SNIP_MM: f64 = 1.5;

/// Codes for papers of one colour, under a note of what to cut and where to glue.
pub(super) fn codes(
    sources: &Sources,
    papers: &[(usize, Vec<&PrintedSquare>)],
) -> Result<Vec<Laid>, PrintError> {
    let Sources { settings, printed, words, .. } = *sources;
    let quiet = quiet_zone(printed.code_top_left, printed.module_mm);
    let height = quiet.height + 2.0 * SNIP_MM + 4.0;
    let paper = settings.print.paper;
    let layout = Layout::pack(paper, WIDTH_MM, height)
        .ok_or_else(|| PrintError::too_large(Large::Card, height, 0.0, paper))?;
    let all: Vec<(usize, &PrintedSquare)> = papers
        .iter()
        .flat_map(|(pencil, squares)| squares.iter().map(move |square| (*pencil, *square)))
        .collect();
    let rows: Vec<String> =
        papers.iter().map(|(pencil, squares)| paper_row(sources, *pencil, squares)).collect();
    // the note takes as many rows of spots as it needs
    let wide = layout.spots.iter().filter(|spot| spot.top_left.y <= layout.spots[0].top_left.y).count();
    let needed = (NOTE_POINTS * NOTE_LINE_MM * (float(rows.len()) + NOTE_LINES) / height).ceil();
    // a row is left for codes, however many colours there are
    let note_rows = ceil_index(needed).min((layout.spots.len() / wide).saturating_sub(1));
    let free = layout.spots.get(wide * note_rows..).unwrap_or_default();
    if all.is_empty() || free.is_empty() {
        return Ok(Vec::new());
    }
    let page = |on_page: &[(usize, &PrintedSquare)]| {
        let first = layout.spots[0];
        let size = Vector::new(first.size.x * float(wide), first.size.y * float(note_rows));
        let note = Item::Note {
            area: Area { top_left: first.top_left, size }.into(),
            text: words.say("fill-papers", &note_values(sources, &quiet)),
            rows: rows.clone(),
        };
        let item = |((pencil, square), spot): (&(usize, &PrintedSquare), &Area)| {
            code_to_glue(sources, &quiet, *pencil, square, (*spot).into())
        };
        let labels = listed(on_page.iter().map(|(_, square)| square.label.as_str()));
        let about = words.say("print-about-fill-papers", &[("labels", labels.into())]);
        let items = std::iter::once(note).chain(on_page.iter().zip(free).map(item)).collect();
        (layout.clone(), about, items)
    };
    Ok(all.chunks(free.len()).map(page).collect())
}

/// "6 dark blue: A1, B3 …"
fn paper_row(sources: &Sources, pencil: usize, squares: &[&PrintedSquare]) -> String {
    let labels = listed(squares.iter().map(|square| square.label.as_str()));
    let name = sources.facts.pencils[pencil].name.as_str();
    let said = [("count", squares.len().into()), ("colour", name.into()), ("labels", labels.into())];
    sources.words.say("fill-paper-row", &said)
}

/// The paper's size, and how far from which edges a code is glued.
fn note_values(sources: &Sources, quiet: &Box) -> [(&'static str, FluentValue<'static>); 3] {
    let side = sources.printed.grid.square_mm;
    let near = |from: f64, size: f64| (from - SNIP_MM).min(side - from - size - SNIP_MM).max(0.0);
    let gap = near(quiet.x, quiet.width).min(near(quiet.y, quiet.height));
    [
        ("side", one(sources, side).into()),
        ("gap", one(sources, gap).into()),
        ("corner", sources.settings.code.corner.word().into()),
    ]
}

/// A code with its label, to be cut out together, and beside it the colour of its paper.
fn code_to_glue(sources: &Sources, quiet: &Box, pencil: usize, square: &PrintedSquare, area: Box) -> Item {
    let Sources { printed, facts, .. } = *sources;
    let side = quiet.width + 2.0 * SNIP_MM;
    let top = area.y + (area.height - side) / 2.0;
    let cut = Box { x: area.x + 1.0, y: top, width: side + LABEL_MM, height: side };
    // the label is on the side on which squares have it
    let (label, from) =
        if label_place(printed.grid.square_mm, quiet).ends { (0.0, LABEL_MM) } else { (side, 0.0) };
    let pencil = &facts.pencils[pencil];
    let (x, y) = (cut.x + from + side / 2.0, top + side / 2.0);
    Item::Paper {
        area,
        cut,
        code: Code::centred(&square.modules, printed.module_mm, x, y),
        label: square.label.clone(),
        label_x: cut.x + label,
        colour: pencil.hex(),
        name: pencil.name.clone(),
    }
}
