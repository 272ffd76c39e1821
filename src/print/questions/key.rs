//! The picture key: the whole picture with the letters of its columns and the numbers of its rows, and its colours by name.
//! It gives the picture away, so that it lies face down until the mural does that.

use serde::Serialize;

use super::super::Sources;
use super::super::cut_out::Part;
use super::super::drawn::printed_part;
use super::super::marks::Box;
use super::super::typeset::Image;
use crate::frame::{ceil_index, float};
use crate::plan::Cell;
use crate::plan::cell::column_letters;
use crate::words::FluentValue;

/// Height of the heading and of the sentence below it, in mm.
const HEAD_MM: f64 = 30.0;
/// Height of the colours' names below the picture, in mm.
const COLOURS_MM: f64 = 24.0;
/// Room for letters above and below the picture, and for numbers beside it, in mm.
const NAMES_MM: [f64; 2] = [8.0, 6.0];
/// Least room for a letter or a number, in mm: 8 pt.
const NAME_MM: f64 = 4.5;

/// What the page shows.
#[derive(Serialize)]
pub(super) struct Key {
    /// All that the page has for it.
    area: Box,
    title: String,
    intro: String,
    /// Where the picture lies.
    picture: Box,
    /// Which one, and where its pixels lie in it, in mm; they may reach beyond, and are cut.
    pixels: (usize, Box),
    /// Side of a piece, in mm.
    side: f64,
    /// How many columns and rows.
    size: [usize; 2],
    /// Columns and rows with a name: the number from the left or the top, and the name.
    columns: Vec<(usize, String)>,
    rows: Vec<(usize, String)>,
    /// Each pencil's colour and name.
    pencils: Vec<(String, String)>,
}

impl Key {
    pub fn of(sources: &Sources, area: Box, pictures: &mut Vec<Image>) -> Self {
        let (grid, words) = (&sources.printed.grid, sources.words);
        let (columns, rows) = (float(grid.columns), float(grid.rows));
        let room = [area.width - 2.0 * NAMES_MM[0], area.height - HEAD_MM - COLOURS_MM - 2.0 * NAMES_MM[1]];
        let side = (room[0] / columns).min(room[1] / rows);
        let (width, height) = (columns * side, rows * side);
        let picture =
            Box { x: area.x + (area.width - width) / 2.0, y: area.y + HEAD_MM + NAMES_MM[1], width, height };
        let crop = sources.picture.crop(grid);
        let part =
            Part { left: crop.top_left.x, top: crop.top_left.y, width: crop.size.x, height: crop.size.y };
        let (image, lies) = printed_part(sources, &part, [width, height]);
        pictures.push(image);
        let every = ceil_index(NAME_MM / side).max(1);
        let named = |count: usize, name: &dyn Fn(usize) -> String| -> Vec<(usize, String)> {
            (0..count).step_by(every).map(|at| (at, name(at))).collect()
        };
        let pencil = |pencil: &crate::plan::settings::Pencil| (pencil.hex(), pencil.name.clone());
        Self {
            area,
            title: words.say("questions-key", &[]),
            intro: words.say("questions-key-intro", &values(sources)),
            picture,
            pixels: (pictures.len() - 1, lies),
            side,
            size: [grid.columns, grid.rows],
            columns: named(grid.columns, &column_letters),
            rows: named(grid.rows, &|row| grid.row_number(row).to_string()),
            pencils: sources.facts.pencils.iter().map(pencil).collect(),
        }
    }
}

/// A piece as an example of what labels mean, and where row 1 is.
pub(super) fn values(sources: &Sources) -> [(&'static str, FluentValue<'static>); 4] {
    let grid = &sources.printed.grid;
    let cell = Cell { row: grid.rows / 3, column: grid.columns / 2 };
    let lowest = grid.row_number(grid.rows - 1) == 1;
    [
        ("piece", grid.label(cell).into()),
        ("column", column_letters(cell.column).into()),
        ("row", grid.row_number(cell.row).into()),
        ("first", if lowest { "bottom" } else { "top" }.into()),
    ]
}
