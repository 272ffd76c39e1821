//! `home.pdf`: a piece and its square on one page, to be drawn at home, with marks by which a photo of the page brings the square back.
//!
//! ```text
//!   ┌──────────────────────────┐
//!   │ what to do        D7     │      in the event's language, and below each step in the second one
//!   │ 1 …            [piece]   │
//!   │ 2 …            ▪ blue    │
//!   │  ▣ ┌────────────────┐ ▣  │
//!   │    │     square     │    │      the square's own code in its own place: cut out, it hangs like any other
//!   │    │              ▒ │    │
//!   │  ▣ └────────────────┘ ▣  │
//!   └──────────────────────────┘
//! ```

use serde::Serialize;

use super::cut_out::Part;
use super::drawn::printed_part;
use super::languages::Languages;
use super::layout::Layout;
use super::marks::{Box, Code, Line, quiet_zone, square_ticks};
use super::page::{Heading, Page, Sheets, Sides};
use super::pieces::{self, BORDER_MM};
use super::squares::{LabelPlace, code, label_place};
use super::{Document, Large, PrintError, Sources};
use crate::frame::Point;
use crate::plan::marks::{BESIDE_MM, MODULE_MM, SIDE_MM, around_square};
use crate::plan::settings::Choice;

/// The document's name.
pub(super) const NAME: &str = "home";

/// Steps.
const STEPS: usize = 4;
/// Room around a square for its marks, in mm.
const ROOM_MM: f64 = BESIDE_MM + SIDE_MM / 2.0;
/// Height that is kept for what to do, in mm.
const WORDS_MM: f64 = 74.0;
/// Least width of the column with the piece and its pencils, and white beside it, in mm.
const COLUMN_MM: f64 = 46.0;
const GAP_MM: f64 = 6.0;

/// What all pages share, in mm from the top left of what a page leaves free; of the square's parts from the square.
#[derive(Serialize)]
struct Shared {
    title: String,
    steps: Vec<Vec<String>>,
    words: Box,
    column: Box,
    piece: Box,
    border: f64,
    piece_side: f64,
    piece_ticks: Vec<Line>,
    square: Box,
    ticks: Vec<Line>,
    quiet: Box,
    label: LabelPlace,
    marks: Vec<[f64; 2]>,
    mark_module: f64,
}

/// One page.
#[derive(Serialize)]
struct Item {
    area: Box,
    label: String,
    code: Code,
    /// Which picture, and where it lies within the piece, in mm; it may reach beyond, and is cut.
    picture: (usize, Box),
    /// Colour and name of each pencil.
    pencils: Vec<(String, String)>,
}

/// Typesets a page for each of the wall's cells, by their place in the grid, in the order in which they are given.
///
/// # Errors
/// [`PrintError::TooLarge`] where square and marks do not fit the paper, and [`PrintError::Typeset`].
pub fn home(sources: &Sources, cells: &[usize]) -> Result<Document, PrintError> {
    let Sources { settings, printed, facts, words, picture, .. } = *sources;
    let layout = Layout::whole(settings.print.paper);
    let shared = shared(sources, &layout)?;
    let quiet = shared.quiet;
    let heading = Heading::new(sources, NAME, Some(cells.len()), Sides::One);
    let crop = picture.crop(&printed.grid);
    let (mut pictures, mut pages) = (Vec::new(), Vec::new());
    for cell in cells {
        let square = &printed.squares[*cell];
        let part = Part::of_piece(&crop, square.cell);
        let (image, lies) = printed_part(sources, &part, [printed.grid.piece_mm; 2]);
        pictures.push(image);
        let pencil = |number: &usize| {
            let pencil = &facts.pencils[*number];
            (pencil.hex(), pencil.name.clone())
        };
        let item = Item {
            area: layout.spots[0].into(),
            label: square.label.clone(),
            code: code(square, printed, &quiet),
            picture: (pictures.len() - 1, lies),
            pencils: facts.pieces[*cell].pencils.iter().map(pencil).collect(),
        };
        let about = words.say("print-about-home", &[("label", square.label.as_str().into())]);
        let strip = heading.strip(&layout, pages.len() + 1, false);
        pages.push(Page { strip, about, back: false, items: vec![item] });
    }
    Sheets { name: NAME, shared, pages, pictures, two_sided: false }.document(sources)
}

fn shared(sources: &Sources, layout: &Layout) -> Result<Shared, PrintError> {
    let Sources { settings, printed, .. } = *sources;
    let side = printed.grid.square_mm;
    let free = layout.spots[0].size;
    let largest = (free.x - 2.0 * ROOM_MM).min(free.y - 2.0 * ROOM_MM - WORDS_MM);
    if side > largest {
        let largest_mm = (largest * 10.0).floor() / 10.0;
        let paper = settings.print.paper;
        return Err(PrintError::TooLarge {
            what: Large::Square,
            side_mm: side,
            largest_mm,
            paper: paper.word(),
        });
    }
    let (x, y) = ((free.x - side) / 2.0, free.y - ROOM_MM - side);
    let height = y - ROOM_MM - GAP_MM;
    let piece = printed.grid.piece_mm + 2.0 * BORDER_MM;
    let width = piece.max(COLUMN_MM);
    let languages = Languages::of(sources);
    let quiet = quiet_zone(printed.code_top_left, printed.module_mm);
    let corner =
        |centre: Point<crate::frame::SquareMm>| [x + centre.x - SIDE_MM / 2.0, y + centre.y - SIDE_MM / 2.0];
    Ok(Shared {
        title: languages.say("home-title", &[]).join(" · "),
        steps: (1..=STEPS).map(|step| languages.say(&format!("home-{step}"), &[])).collect(),
        words: Box { x: 0.0, y: 0.0, width: free.x - width - GAP_MM, height },
        column: Box { x: free.x - width, y: 0.0, width, height },
        piece: Box { x: (width - piece) / 2.0, y: 10.0, width: piece, height: piece },
        border: BORDER_MM,
        piece_side: printed.grid.piece_mm,
        piece_ticks: pieces::ticks(printed.grid.piece_mm, 0),
        square: Box { x, y, width: side, height: side },
        ticks: square_ticks(side, &quiet),
        label: label_place(side, &quiet),
        quiet,
        marks: around_square(side).map(corner).to_vec(),
        mark_module: MODULE_MM,
    })
}
