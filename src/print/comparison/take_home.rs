//! `take-home.pdf`: for every square a slip of a quarter of a page: the whole mural with its spot lit, the square and its piece, its label.
//! Never a name.
//!
//! ```text
//!   ┌──────────────────────┐
//!   │ ┌──────────────────┐ │
//!   │ │░░░░░░░░┌──┐░░░░░░│ │    the mural, veiled but for the spot
//!   │ │░░░░░░░░└──┘░░░░░░│ │
//!   │ └──────────────────┘ │
//!   │ ┌────────┐  ┌─────┐  │    the square as it was drawn, the piece it was drawn from
//!   │ │ square │  │piece│  │
//!   │ └────────┘  └─────┘  │
//!   │ D7, 1 of 108 · date  │
//!   └──────────────────────┘
//! ```

use serde::Serialize;

use super::exhibit::{Exhibit, at_size, whole_at_size};
use super::{Lacking, Pair};
use crate::frame::{SheetMm, Vector, float};
use crate::plan::cell::column_letters;
use crate::print::languages::Languages;
use crate::print::layout::Layout;
use crate::print::marks::Box;
use crate::print::page::{Heading, Page, Set, Sheets, Sides, listed};
use crate::print::{Large, PrintError};

/// Width and height of a slip, in mm: four on letter and A4 paper.
const SLIP_MM: [f64; 2] = [94.0, 119.0];
/// White at its edges, and between its parts.
const PAD_MM: f64 = 5.0;
const GAP_MM: f64 = 4.0;
/// Height that the mural may have, and the sides of the square and of the piece.
const MURAL_MM: f64 = 52.0;
const SQUARE_MM: f64 = 34.0;
const PIECE_MM: f64 = 22.0;

/// What all slips share, in mm from a slip's top left corner.
#[derive(Serialize)]
struct Shared {
    mural: Box,
    square: Box,
    piece: Box,
    words: Box,
    event: String,
    made: Option<String>,
}

/// One slip. The mural is the first picture; its square and piece follow each other.
#[derive(Serialize)]
struct Item {
    area: Box,
    /// Where the square hangs, within the mural.
    spot: Box,
    picture: usize,
    label: String,
    lines: Vec<String>,
}

/// Lays the pages out.
///
/// # Errors
/// [`PrintError::Nothing`] where there is no square, [`PrintError::Typeset`].
pub(super) fn set(exhibit: &Exhibit) -> Result<Set, PrintError> {
    let (sources, grid) = (exhibit.sources(), exhibit.grid());
    let kept = &exhibit.input.kept;
    if kept.is_empty() {
        return Err(PrintError::Nothing(Lacking::Pairs));
    }
    let [width, height] = SLIP_MM;
    let paper = sources.settings.print.paper;
    let layout = Layout::pack(paper, width, height)
        .ok_or_else(|| PrintError::too_large(Large::Card, width.max(height), 0.0, paper))?;
    let shared = shared(exhibit);
    let mural = &shared.mural;
    let cell = Vector::<SheetMm>::new(mural.width / float(grid.columns), mural.height / float(grid.rows));
    let languages = Languages::of(sources);
    let mut pictures = vec![whole_at_size(exhibit.input.wall, [mural.width, mural.height])];
    let heading = Heading::new(sources, "take-home", Some(layout.sheets(kept.len())), Sides::One);
    let mut pages = Vec::new();
    for on_sheet in kept.chunks(layout.spots.len()) {
        let mut items = Vec::with_capacity(on_sheet.len());
        for (Pair { cell: home, square }, spot) in on_sheet.iter().zip(&layout.spots) {
            pictures.push(at_size(square.clone(), [SQUARE_MM; 2]));
            pictures.push(exhibit.piece(*home, PIECE_MM));
            let said = [
                ("label", grid.label(*home).into()),
                ("count", exhibit.counted().count().into()),
                ("column", column_letters(home.column).into()),
                ("row", grid.row_number(home.row).to_string().into()),
            ];
            items.push(Item {
                area: (*spot).into(),
                spot: Box {
                    x: mural.x + float(home.column) * cell.x,
                    y: mural.y + float(home.row) * cell.y,
                    width: cell.x,
                    height: cell.y,
                },
                picture: pictures.len() - 2,
                label: grid.label(*home),
                lines: [languages.say("take-home-one", &said), languages.say("take-home-thanks", &[])]
                    .concat(),
            });
        }
        let labels = listed(items.iter().map(|item| item.label.as_str()));
        let about = sources.words.say("print-about-take-home", &[("labels", labels.into())]);
        pages.push(Page { strip: heading.strip(&layout, pages.len() + 1, false), about, back: false, items });
    }
    Sheets { name: "take-home", shared, pages, pictures, two_sided: false }.set(sources)
}

fn shared(exhibit: &Exhibit) -> Shared {
    let grid = exhibit.grid();
    let [width, height] = SLIP_MM;
    let inside = width - 2.0 * PAD_MM;
    let [columns, rows] = [grid.columns, grid.rows].map(float);
    let cell = (inside / columns).min(MURAL_MM / rows);
    let mural =
        Box { x: (width - cell * columns) / 2.0, y: PAD_MM, width: cell * columns, height: cell * rows };
    let below = PAD_MM + MURAL_MM + GAP_MM;
    let x = (width - SQUARE_MM - GAP_MM - PIECE_MM) / 2.0;
    let words = below + SQUARE_MM + GAP_MM;
    let sources = exhibit.sources();
    let date = exhibit.input.date.as_ref().map_or(String::new(), |date| format!(" · {date}"));
    Shared {
        mural,
        square: Box { x, y: below, width: SQUARE_MM, height: SQUARE_MM },
        piece: Box {
            x: x + SQUARE_MM + GAP_MM,
            y: below + (SQUARE_MM - PIECE_MM) / 2.0,
            width: PIECE_MM,
            height: PIECE_MM,
        },
        words: Box { x: PAD_MM, y: words, width: inside, height: height - words - PAD_MM },
        event: format!("{}{date}", sources.settings.name),
        made: exhibit.made(),
    }
}
