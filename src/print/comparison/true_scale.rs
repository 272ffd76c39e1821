//! `true-scale.pdf`: pieces of the original and squares of the wall, both at 1 : 1, so that the eye sees the factor; and both
//! outlines at one common scale, the original inside the wall.
//!
//! ```text
//!   ┌──┬──┬──┬──┬──┬──┬──┐                          as much of the original as fits, whole pieces
//!   ├──┼──╔══╗──┼──┼──┼──┤                          the framed pieces are the squares below
//!   └──┴──╚══╝──┴──┴──┴──┘
//!   ┌─────────────┐  ┌┬┬┬┬┐                         as many whole squares as fit
//!   │             │  ├┘    │                        the wall with the original in it; s × s copies cover it
//!   │             │  └─────┘
//!   └─────────────┘
//! ```
//!
//! Where not even one piece and one square fit the paper, as much of one as fits is shown and said to be a part.

use serde::Serialize;

use super::exhibit::{Exhibit, Head, wider};
use super::said::{length, number};
use super::side_by_side::{measured_scale, planned};
use crate::frame::{float, floor_index, round_index};
use crate::plan::{Cell, Grid};
use crate::print::PrintError;
use crate::print::cut_out::Part;
use crate::print::marks::{Box, Line};
use crate::print::page::{Foot, Reading, Set, reading_room};

/// Height that title, event, a sentence of two lines and the two names take on the page, in mm on letter paper.
const WORDS_MM: f64 = 48.0;
/// Height of the frame that says that a picture was made, in mm.
const MADE_MM: f64 = 12.0;
/// White between pieces and squares, in mm; a name stands there.
const GAP_MM: f64 = 4.0;
/// Room beside or below the squares from which the drawing of both outlines stands there, in mm; else it has a page of its own.
const NESTED_MM: f64 = 44.0;
/// Room that its words take along the squares' side, in mm.
const NESTED_WORDS_MM: f64 = 46.0;
/// White between the squares and that drawing, in mm.
const NESTED_GAP_MM: f64 = 7.0;
/// The largest part of the squares' side that it takes; its words have the rest.
const NESTED_PART: f64 = 0.5;
/// Most copies of the original a side that are drawn: with more, lines run together.
const MOST_COPIES: usize = 15;

/// What the template sets.
#[derive(Serialize)]
struct Content {
    head: Head,
    intro: String,
    /// Whether squares stand beside the pieces; else below.
    beside: bool,
    gap: f64,
    pieces: Block,
    squares: Block,
    nested: Nested,
    /// Where the drawing of both outlines stands.
    nested_at: Spot,
}

/// Where the drawing of both outlines stands.
#[derive(Copy, Clone, Debug, PartialEq, Serialize)]
#[serde(rename_all = "kebab-case")]
enum Spot {
    /// Right of the squares.
    Beside,
    /// Below the squares.
    Below,
    /// Along the foot of the page.
    Foot,
    /// On a page of its own.
    NextPage,
}

/// A block of cells at 1 : 1.
#[derive(Serialize)]
struct Block {
    name: String,
    alt: String,
    width: f64,
    height: f64,
    /// Where the picture's pixels lie.
    lies: Box,
    /// Cells that the other block shows.
    framed: Option<Box>,
}

/// Both outlines at one scale.
#[derive(Serialize)]
struct Nested {
    alt: String,
    width: f64,
    height: f64,
    inner: [f64; 2],
    lines: Vec<Line>,
    words: Vec<String>,
    title: String,
}

/// Lays the pages out.
///
/// # Errors
/// [`PrintError::Typeset`].
pub(super) fn set(exhibit: &Exhibit) -> Result<Set, PrintError> {
    let (sources, grid) = (exhibit.sources(), exhibit.grid());
    let [width, height] = reading_room(sources.settings.print.paper, Foot::Ruler);
    let made = if exhibit.input.made { MADE_MM } else { 0.0 };
    let wider = wider(sources);
    let (fit, nested_at, free) = spots(grid, [width, height - wider * (WORDS_MM + made)], wider);
    let pieces = Window::around(exhibit.pairs.first().map(|pair| pair.cell), fit.pieces, grid);
    let squares = pieces.middle(fit.squares);
    let (piece_mm, square_mm) = (fit.size(fit.pieces, grid.piece_mm), fit.size(fit.squares, grid.square_mm));
    let (original, piece_lies) = exhibit.original_part(pieces.part(piece_mm, grid.piece_mm), piece_mm);
    let (wall, square_lies) = exhibit.wall_part(squares.part(square_mm, grid.square_mm), square_mm);
    let framed = Box {
        x: float(squares.column - pieces.column) * grid.piece_mm,
        y: float(squares.row - pieces.row) * grid.piece_mm,
        width: square_mm[0] * grid.piece_mm / grid.square_mm,
        height: square_mm[1] * grid.piece_mm / grid.square_mm,
    };
    let content = Content {
        head: exhibit.head("true-scale"),
        intro: exhibit.say("comparison-true-intro"),
        beside: fit.beside,
        gap: GAP_MM,
        pieces: block(exhibit, "pieces", &pieces, piece_mm, piece_lies, Some(framed)),
        squares: block(exhibit, "squares", &squares, square_mm, square_lies, None),
        nested: nested(exhibit, free),
        nested_at,
    };
    exhibit.set(Reading {
        name: "true-scale",
        foot: Foot::Ruler,
        content,
        pictures: vec![original, wall, exhibit.original.clone()],
    })
}

/// How much is shown, where the drawing of both outlines stands, and how large it may be, in mm: of all ways that have the drawing
/// on the same page the one that shows most.
fn spots(grid: &Grid, room: [f64; 2], wider: f64) -> (Fit, Spot, [f64; 2]) {
    let [width, height] = room;
    let [nested, words] = [NESTED_MM, NESTED_WORDS_MM / NESTED_PART].map(|mm| mm * wider);
    let spare = nested + NESTED_GAP_MM;
    let below = Fit::of(grid, room, false, spare);
    let beside = Fit::of(grid, room, true, spare);
    let foot = Fit::best(grid, [width, height - spare]);
    let [below_mm, beside_mm] = [below, beside].map(|fit| fit.size(fit.squares, grid.square_mm));
    let ways = [
        (
            below,
            Spot::Beside,
            [width - below_mm[0] - NESTED_GAP_MM, below_mm[1] * NESTED_PART],
            below_mm[1] >= words,
        ),
        (
            beside,
            Spot::Below,
            [beside_mm[0] * NESTED_PART, height - beside_mm[1] - NESTED_GAP_MM],
            beside_mm[0] >= words,
        ),
        (foot, Spot::Foot, [width * NESTED_PART, nested], true),
    ];
    let mut best = None;
    for (fit, spot, free, has_words) in ways {
        let more = best.as_ref().is_none_or(|(other, ..): &(Fit, _, _)| fit.shown() > other.shown());
        if fit.is_whole() && has_words && more {
            best = Some((fit, spot, free));
        }
    }
    best.unwrap_or_else(|| (Fit::best(grid, room), Spot::NextPage, [width, height * NESTED_PART]))
}

fn block(
    exhibit: &Exhibit,
    what: &str,
    shown: &Window,
    [width, height]: [f64; 2],
    lies: Box,
    framed: Option<Box>,
) -> Block {
    let (sources, grid) = (exhibit.sources(), exhibit.grid());
    let side = if what == "pieces" { grid.piece_mm } else { grid.square_mm };
    let [columns, rows] = [shown.columns, shown.rows];
    let whole = width >= side * float(columns) - 1e-6 && height >= side * float(rows) - 1e-6;
    let count = columns * rows;
    let id = match (what, whole, count == grid.count()) {
        ("pieces", false, _) => "comparison-true-piece-part",
        ("pieces", true, true) => "comparison-true-pieces-all",
        ("pieces", ..) => "comparison-true-pieces",
        (_, false, _) => "comparison-true-square-part",
        (_, true, _) => "comparison-true-squares",
    };
    let first = grid.label(Cell { row: shown.row, column: shown.column });
    let last = grid.label(Cell { row: shown.row + rows - 1, column: shown.column + columns - 1 });
    let labels = if count == 1 {
        first
    } else {
        sources.words.say("comparison-from-to", &[("first", first.into()), ("last", last.into())])
    };
    let said = [("count", count.into()), ("side", length(sources, side).into()), ("labels", labels.into())];
    let name = sources.words.say(id, &said);
    Block { alt: name.clone(), name, width, height, lies, framed }
}

/// Both outlines as large as fits, the original in the wall's lower left corner, and lines where its copies meet.
fn nested(exhibit: &Exhibit, [free_width, free_height]: [f64; 2]) -> Nested {
    let [wall_width, wall_height] = exhibit.wall_mm();
    let [width, height] = exhibit.original_mm();
    let scale = (free_width / wall_width.max(width)).min(free_height / wall_height.max(height));
    let (wide, high) = (wall_width * scale, wall_height * scale);
    let inner = [width * scale, height * scale];
    let factor = exhibit.planned_scale();
    let copies = Some(round_index(factor))
        .filter(|copies| (float(*copies) - factor).abs() < 1e-6 && (2..=MOST_COPIES).contains(copies));
    let lines = (1..copies.unwrap_or(1)).flat_map(|at| {
        let (x, y) = (float(at) * inner[0], float(at) * inner[1]);
        [Line { x1: x, y1: 0.0, x2: x, y2: high }, Line { x1: 0.0, y1: y, x2: wide, y2: y }]
    });
    let words = exhibit.sources().words;
    let said = [
        ("scale", number(factor, 2).into()),
        ("copies", number(factor * factor, 1).into()),
        ("drawing", number(1.0 / scale, 1).into()),
    ];
    let id = if copies.is_some() { "comparison-true-copies" } else { "comparison-true-about-copies" };
    Nested {
        alt: words.say("comparison-true-nested-alt", &said),
        width: wide,
        height: high,
        inner,
        lines: lines.collect(),
        words: vec![
            planned(exhibit),
            words.say(id, &said),
            measured_scale(exhibit),
            words.say("comparison-true-drawing", &said),
        ],
        title: words.say("comparison-pattern", &said),
    }
}

/// How many pieces and squares are shown at 1 : 1, and how they stand.
#[derive(Copy, Clone, Debug, PartialEq)]
struct Fit {
    beside: bool,
    /// Columns and rows.
    pieces: [usize; 2],
    squares: [usize; 2],
    room: [f64; 2],
}

impl Fit {
    /// As many whole pieces as fit with one whole square, then as many whole squares.
    fn best(grid: &Grid, room: [f64; 2]) -> Self {
        let [below, beside] = [false, true].map(|beside| Self::of(grid, room, beside, 0.0));
        if beside.shown() > below.shown() { beside } else { below }
    }

    /// The same with squares beside the pieces or below them, so that `spare` mm stay free behind the squares.
    fn of(grid: &Grid, room: [f64; 2], beside: bool, spare: f64) -> Self {
        let along = usize::from(!beside); // the direction in which pieces and squares follow each other
        let less = |by: f64| {
            let mut rest = room;
            rest[along] -= by + GAP_MM;
            rest
        };
        let cells = |side: f64, room: [f64; 2], most: [usize; 2]| {
            let fits = |at: usize| floor_index((room[at] + 1e-6) / side).min(most[at]);
            [fits(0), fits(1)]
        };
        let pieces = cells(grid.piece_mm, less(grid.square_mm), [grid.columns, grid.rows]);
        let mut rest = less(float(pieces[along]) * grid.piece_mm);
        rest[1 - along] -= spare;
        Self { beside, pieces, squares: cells(grid.square_mm, rest, pieces), room }
    }

    /// How many pieces and how many squares.
    fn shown(&self) -> (usize, usize) {
        (self.pieces[0] * self.pieces[1], self.squares[0] * self.squares[1])
    }

    /// Whether at least one whole piece and one whole square are shown.
    fn is_whole(&self) -> bool {
        ![self.pieces, self.squares].concat().contains(&0)
    }

    /// Width and height of a block of cells of a side, in mm: of whole ones, else of a part of one that leaves as much room to
    /// the other block.
    fn size(&self, [columns, rows]: [usize; 2], side: f64) -> [f64; 2] {
        if columns * rows > 0 {
            return [float(columns) * side, float(rows) * side];
        }
        [side.min(self.room[0]), side.min((self.room[1] - GAP_MM) / 2.0)]
    }
}

/// Some neighbouring cells.
#[derive(Copy, Clone, Debug, PartialEq)]
struct Window {
    column: usize,
    row: usize,
    columns: usize,
    rows: usize,
}

impl Window {
    /// So many columns and rows around a cell, or around the middle of the wall; at least one cell.
    fn around(cell: Option<Cell>, [columns, rows]: [usize; 2], grid: &Grid) -> Self {
        let cell = cell.unwrap_or(Cell { row: grid.rows / 2, column: grid.columns / 2 });
        let (columns, rows) = (columns.max(1), rows.max(1));
        let from =
            |at: usize, some: usize, all: usize| at.saturating_sub(some / 2).min(all.saturating_sub(some));
        Self {
            column: from(cell.column, columns, grid.columns),
            row: from(cell.row, rows, grid.rows),
            columns,
            rows,
        }
    }

    /// So many of them in their middle.
    fn middle(&self, [columns, rows]: [usize; 2]) -> Self {
        let (columns, rows) = (columns.clamp(1, self.columns), rows.clamp(1, self.rows));
        Self {
            column: self.column + (self.columns - columns) / 2,
            row: self.row + (self.rows - rows) / 2,
            columns,
            rows,
        }
    }

    /// The same in cells from the top left, as much of them as `mm` hold.
    fn part(&self, [width, height]: [f64; 2], side: f64) -> Part {
        Part { left: float(self.column), top: float(self.row), width: width / side, height: height / side }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plan::{KeptFree, RowsFrom};
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn blocks_fit_the_page_and_the_wall(
            columns in 1_usize..70, rows in 1_usize..60, piece in 4.0_f64..300.0, factor in 1.0_f64..12.0,
            width in 100.0_f64..300.0, height in 120.0_f64..400.0, pair in proptest::option::of((0_usize..60, 0_usize..70)),
        ) {
            let grid = Grid { columns, rows, piece_mm: piece, square_mm: piece * factor, rows_from: RowsFrom::Top, border: false, kept_free: KeptFree::NONE };
            let fit = Fit::best(&grid, [width, height]);
            let (pieces, squares) = (fit.size(fit.pieces, piece), fit.size(fit.squares, grid.square_mm));
            let along = usize::from(!fit.beside);
            prop_assert!(pieces[along] + squares[along] <= fit.room[along] + 1e-6 || fit.pieces.contains(&0) || fit.squares.contains(&0));
            prop_assert!(pieces[1 - along] <= fit.room[1 - along] + 1e-6);
            let cell = pair.map(|(row, column)| Cell { row: row % rows, column: column % columns });
            let shown = Window::around(cell, fit.pieces, &grid);
            prop_assert!(shown.column + shown.columns <= columns && shown.row + shown.rows <= rows);
            let framed = shown.middle(fit.squares);
            prop_assert!(framed.column >= shown.column && framed.row >= shown.row);
            prop_assert!(framed.column + framed.columns <= shown.column + shown.columns);
            prop_assert!(framed.row + framed.rows <= shown.row + shown.rows);
        }
    }
}
