//! `print/manifest.json`: what was printed, with every code's modules; what `check` looks for on the wall.
//!
//! [`Manifest`] is the file, field for field; [`Manifest::printed`] checks it and gives [`Printed`], the same in the terms
//! of the plan. Manifests of walls that another printer made may lack `pieces` and `cards`.

use std::collections::BTreeSet;
use std::ops::RangeInclusive;

use serde::{Deserialize, Serialize};

use thiserror::Error;

use crate::words::{Sentence, Tell, told_in_english};

use super::cards::{Card, CardKind};
use super::cell::{ACROSS, Cell, Grid, MOST_CELLS, RowsFrom};
use super::code::{CodeError, Modules, SIDE, Tag};
use super::kept_free::KeptFree;
use super::settings::{Units, WallPart};
use crate::frame::{Point, SquareMm, float};

/// The format this program writes and reads.
pub const FORMAT: u64 = 1;

/// The file, field for field.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Manifest {
    /// Always [`FORMAT`].
    pub format: u64,
    /// Name and tag.
    pub event: ManifestEvent,
    /// The wall.
    pub grid: ManifestGrid,
    /// Where the code stands on a square.
    pub code: ManifestCode,
    /// Every square in `squares.pdf`, or in `strips.pdf` where pieces and squares are joined.
    pub squares: Vec<ManifestSquare>,
    /// Every piece in `pieces.pdf`, or in `strips.pdf`; absent in manifests of walls that another printer made.
    #[serde(default, alias = "tiles")]
    pub pieces: Vec<ManifestPiece>,
    /// Every card.
    #[serde(default)]
    pub cards: Vec<ManifestCard>,
    /// Whether squares and pieces lie turned clockwise by a quarter on their pages.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub turned: bool,
}

/// Name and tag of the event.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct ManifestEvent {
    /// What the evening is called.
    pub name: String,
    /// Its tag.
    pub tag: String,
}

/// The wall's grid.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct ManifestGrid {
    /// How many cells side by side.
    pub columns: usize,
    /// How many cells one above the other.
    pub rows: usize,
    /// Side of a square of paper.
    pub square_mm: f64,
    /// Side of a piece; `tile_mm` in manifests of another printer.
    #[serde(alias = "tile_mm")]
    pub piece_mm: f64,
}

/// The code on an upright square.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct ManifestCode {
    /// Side of a module.
    pub module_mm: f64,
    /// Left edge of the code's outer modules.
    pub x_mm: f64,
    /// Top edge of the code's outer modules.
    pub y_mm: f64,
}

/// One printed square; page origin top left.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct ManifestSquare {
    /// The cell where it belongs.
    pub label: String,
    /// Its column from the left, from 0.
    pub column: usize,
    /// Its row from the top, from 0.
    pub row: usize,
    /// The text in its code.
    pub text: String,
    /// Its code's modules as 111 hexadecimal digits.
    pub modules: String,
    /// Page in the document, from 1.
    pub page: usize,
    /// Left edge on the page.
    pub x_mm: f64,
    /// Top edge on the page.
    pub y_mm: f64,
    /// Its side.
    pub side_mm: f64,
}

/// One printed piece; page origin top left.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct ManifestPiece {
    /// The cell that it shows.
    pub label: String,
    /// Its column from the left, from 0.
    pub column: usize,
    /// Its row from the top, from 0.
    pub row: usize,
    /// Page in the document, from 1.
    pub page: usize,
    /// Left edge on the page.
    pub x_mm: f64,
    /// Top edge on the page.
    pub y_mm: f64,
    /// Its side.
    pub side_mm: f64,
}

/// One printed card.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct ManifestCard {
    /// `column`, `row` or `corner`.
    pub kind: String,
    /// Its name.
    pub name: String,
    /// The text in its code.
    pub text: String,
    /// Its code's modules as 111 hexadecimal digits.
    pub modules: String,
    /// Side of a module.
    pub module_mm: f64,
    /// Middle of its code on the wall, x.
    pub wall_x_mm: f64,
    /// Middle of its code on the wall, y.
    pub wall_y_mm: f64,
}

/// A manifest that cannot be used.
#[derive(Debug, Error, PartialEq)]
pub enum ManifestError {
    /// Another format than [`FORMAT`].
    Format(u64),
    /// Not JSON, or not these fields: what the parser says.
    Json(String),
    /// Numbers that make no wall.
    Wall(Sentence),
    /// Modules that make no code.
    Code(String, CodeError),
}

told_in_english!(ManifestError);

impl Tell for ManifestError {
    fn sentence(&self) -> Sentence {
        match self {
            Self::Format(read) => Sentence::new("error-manifest-format")
                .with("read", read.to_string())
                .with("known", FORMAT.to_string()),
            Self::Json(said) => Sentence::new("error-manifest-json").with("said", said.as_str()),
            Self::Wall(what) => Sentence::new("error-manifest-wall").with("what", what.clone()),
            Self::Code(name, error) => Sentence::new("error-manifest-code")
                .with("name", name.as_str())
                .with("what", error.sentence()),
        }
    }
}

/// Printed wall in the terms of the plan: what a reader looks for.
#[derive(Clone, Debug, PartialEq)]
pub struct Printed {
    /// Name of the event.
    pub name: String,
    /// Tag of the event, as the codes have it.
    pub tag: String,
    /// The units that people read; a manifest says nothing of them.
    pub units: Units,
    /// The wall.
    pub grid: Grid,
    /// The parts that the wall hangs in; none where it is one piece. A manifest says nothing of them.
    pub parts: Vec<WallPart>,
    /// Width of the stub that each square is printed with, at most, in mm; `None` for squares without. A manifest says nothing of it.
    pub stub_mm: Option<f64>,
    /// Side of a module on a square, in mm.
    pub module_mm: f64,
    /// The code's outer top left corner on an upright square.
    pub code_top_left: Point<SquareMm>,
    /// Squares, one a cell, in the order of the cells.
    pub squares: Vec<PrintedSquare>,
    /// Every card; empty where none were printed.
    pub cards: Vec<Card>,
}

/// A printed square.
#[derive(Clone, Debug, PartialEq)]
pub struct PrintedSquare {
    /// Where it belongs.
    pub cell: Cell,
    /// What people call that cell.
    pub label: String,
    /// The text in its code.
    pub text: String,
    /// Its code.
    pub modules: Modules,
}

/// Range of the sides of squares and pieces, in mm, that another printer may have used: wider than what
/// event.toml allows.
///
/// This and the next two: what is looked for is looked for some millimetres around, module by module; with a
/// thousandth of a millimetre a module that would not end.
const SIDES_MM: RangeInclusive<f64> = 1.0..=10_000.0;
/// Range of the side of a module, in mm, that another printer may have used.
const MODULES_MM: RangeInclusive<f64> = 0.1..=100.0;
/// Range of a card's place on the wall along each axis, in mm, that another printer may have used.
const PLACES_MM: RangeInclusive<f64> = -1e6..=1e6;

/// Maximum distance, in mm, by which a code may stick out of its square before a manifest is refused: its
/// numbers are rounded.
const ROUNDING_MM: f64 = 0.01;

impl Manifest {
    /// Reads a manifest.json.
    ///
    /// # Errors
    /// [`ManifestError::Format`] where the file says another format, whatever else it holds; [`ManifestError::Json`] where it is
    /// no JSON or a field is missing or of another kind.
    pub fn from_json(bytes: &[u8]) -> Result<Self, ManifestError> {
        #[derive(Deserialize)]
        struct Only {
            format: u64,
        }
        let unreadable = |error: serde_json::Error| ManifestError::Json(error.to_string());
        let Only { format } = serde_json::from_slice(bytes).map_err(unreadable)?;
        if format != FORMAT {
            return Err(ManifestError::Format(format));
        }
        serde_json::from_slice(bytes).map_err(unreadable)
    }

    /// The file's bytes; equal manifests give equal bytes.
    ///
    /// # Errors
    /// [`ManifestError::Json`] where a number is not finite.
    pub fn to_json(&self) -> Result<Vec<u8>, ManifestError> {
        let mut bytes =
            serde_json::to_vec_pretty(self).map_err(|error| ManifestError::Json(error.to_string()))?;
        bytes.push(b'\n');
        Ok(bytes)
    }

    /// Labels of the squares that are asked for and not listed, in the grid's order.
    #[must_use]
    pub fn not_printed(&self, grid: &Grid) -> Vec<String> {
        let listed: BTreeSet<&str> = self.squares.iter().map(|square| square.label.as_str()).collect();
        let wanted = grid.cells().filter(|cell| !grid.is_kept_free(*cell)).map(|cell| grid.label(cell));
        wanted.filter(|label| !listed.contains(label.as_str())).collect()
    }

    /// What was printed, checked: a wall of sensible size, one square a cell, no two codes alike, the code within its square.
    ///
    /// # Errors
    /// [`ManifestError::Wall`] or [`ManifestError::Code`] with what is wrong.
    pub fn printed(&self, rows_from: RowsFrom) -> Result<Printed, ManifestError> {
        self.printed_but(rows_from, KeptFree::NONE)
    }

    /// The same where squares of cells that are kept free need not have been printed; those have the codes that they would get.
    ///
    /// # Errors
    /// As [`Manifest::printed`].
    pub fn printed_but(&self, rows_from: RowsFrom, free: KeptFree) -> Result<Printed, ManifestError> {
        let grid = Grid { kept_free: free, ..self.wall(rows_from, free)? };
        if !MODULES_MM.contains(&self.code.module_mm) {
            let (low, high) = (*MODULES_MM.start(), *MODULES_MM.end());
            let module = self.code.module_mm;
            return wall(
                Sentence::new("error-manifest-module")
                    .with("module", module)
                    .with("low", low)
                    .with("high", high),
            );
        }
        let (side, at) = (float(SIDE) * self.code.module_mm, [self.code.x_mm, self.code.y_mm]);
        let inside = |start: f64| start >= -ROUNDING_MM && start + side <= grid.square_mm + ROUNDING_MM;
        if !at.into_iter().all(inside) {
            let [x, y] = at;
            return wall(
                Sentence::new("error-manifest-code-outside").with("side", side).with("x", x).with("y", y),
            );
        }
        let squares = self.checked_squares(&grid)?;
        Ok(Printed {
            name: self.event.name.clone(),
            tag: self.event.tag.clone(),
            units: Units::default(),
            grid,
            parts: Vec::new(),
            stub_mm: None,
            module_mm: self.code.module_mm,
            code_top_left: Point::new(self.code.x_mm, self.code.y_mm),
            squares,
            cards: self.cards.iter().map(ManifestCard::card).collect::<Result<_, _>>()?,
        })
    }

    fn wall(&self, rows_from: RowsFrom, free: KeptFree) -> Result<Grid, ManifestError> {
        let ManifestGrid { columns, rows, square_mm, piece_mm } = self.grid;
        let within = ACROSS.contains(&columns) && ACROSS.contains(&rows) && columns * rows <= MOST_CELLS;
        if !within {
            return wall(
                Sentence::new("error-manifest-cells")
                    .with("columns", columns.to_string())
                    .with("rows", rows.to_string())
                    .with("most", MOST_CELLS.to_string()),
            );
        }
        if !SIDES_MM.contains(&square_mm) || !SIDES_MM.contains(&piece_mm) {
            return wall(
                Sentence::new("error-manifest-sizes")
                    .with("square", square_mm)
                    .with("piece", piece_mm)
                    .with("low", *SIDES_MM.start())
                    .with("high", *SIDES_MM.end()),
            );
        }
        let cells = columns * rows;
        if !(cells.saturating_sub(free.count())..=cells).contains(&self.squares.len()) {
            return self.listed(cells);
        }
        Ok(Grid { square_mm, piece_mm, rows_from, ..Grid::usual(columns, rows) })
    }

    /// That more or fewer squares are listed than a wall of so many cells has.
    fn listed<T>(&self, cells: usize) -> Result<T, ManifestError> {
        wall(Sentence::new("error-manifest-listed").with("cells", cells).with("listed", self.squares.len()))
    }

    /// A square that was not printed.
    fn as_it_would_be(&self, label: String, cell: Cell) -> Result<PrintedSquare, ManifestError> {
        let refuse = |error| ManifestError::Code(shown(&label), error);
        let text = match Tag::new(&self.event.tag) {
            Some(tag) => tag.square(&label),
            None => label.clone(),
        };
        let modules = Modules::encode(&text).map_err(refuse)?;
        Ok(PrintedSquare { cell, modules, label, text })
    }

    /// The squares in the order of the cells.
    fn checked_squares(&self, grid: &Grid) -> Result<Vec<PrintedSquare>, ManifestError> {
        let mut squares =
            self.squares.iter().map(|square| square.square(grid)).collect::<Result<Vec<_>, _>>()?;
        squares.sort_by_key(|square| square.cell);
        if let Some([first, _]) = squares.array_windows().find(|[first, second]| first.cell == second.cell) {
            return wall(Sentence::new("error-manifest-twice").with("square", first.label.as_str()));
        }
        let is_listed = |cell: &Cell| squares.binary_search_by_key(cell, |square| square.cell).is_ok();
        let left_out: Vec<Cell> = grid.cells().filter(|cell| !is_listed(cell)).collect();
        if left_out.iter().any(|cell| !grid.is_kept_free(*cell)) {
            return self.listed(grid.count());
        }
        for cell in left_out {
            squares.push(self.as_it_would_be(grid.label(cell), cell)?);
        }
        squares.sort_by_key(|square| square.cell);
        let mut codes: Vec<&PrintedSquare> = squares.iter().collect();
        codes.sort_by_key(|square| square.modules.as_slice());
        if let Some([first, second]) =
            codes.array_windows().find(|[first, second]| first.modules == second.modules)
        {
            let (first, second) = (first.label.as_str(), second.label.as_str());
            return wall(
                Sentence::new("error-manifest-same-code").with("first", first).with("second", second),
            );
        }
        Ok(squares)
    }
}

impl ManifestSquare {
    fn square(&self, grid: &Grid) -> Result<PrintedSquare, ManifestError> {
        let cell = Cell { row: self.row, column: self.column };
        if !grid.holds(cell) {
            return wall(
                Sentence::new("error-manifest-outside")
                    .with("square", shown(&self.label))
                    .with("column", self.column.to_string())
                    .with("row", self.row.to_string()),
            );
        }
        let expected = grid.label(cell);
        if self.label != expected {
            return wall(
                Sentence::new("error-manifest-label")
                    .with("square", shown(&self.label))
                    .with("expected", expected),
            );
        }
        Ok(PrintedSquare {
            cell,
            label: expected,
            text: self.text.clone(),
            modules: modules(&self.label, &self.modules)?,
        })
    }
}

impl ManifestCard {
    fn card(&self) -> Result<Card, ManifestError> {
        let Some(kind) = CardKind::named(&self.kind) else {
            return wall(
                Sentence::new("error-manifest-kind")
                    .with("name", shown(&self.name))
                    .with("kind", shown(&self.kind)),
            );
        };
        let centre = Point::new(self.wall_x_mm, self.wall_y_mm);
        let placed = PLACES_MM.contains(&centre.x) && PLACES_MM.contains(&centre.y);
        if !(placed && MODULES_MM.contains(&self.module_mm)) {
            return wall(
                Sentence::new("error-manifest-card")
                    .with("name", shown(&self.name))
                    .with("kind", shown(&self.kind)),
            );
        }
        Ok(Card {
            kind,
            name: self.name.clone(),
            text: self.text.clone(),
            modules: modules(&self.text, &self.modules)?,
            module_mm: self.module_mm,
            centre,
        })
    }
}

impl From<&Card> for ManifestCard {
    fn from(card: &Card) -> Self {
        Self {
            kind: card.kind.word().to_owned(),
            name: card.name.clone(),
            text: card.text.clone(),
            modules: card.modules.to_hex(),
            module_mm: card.module_mm,
            wall_x_mm: card.centre.x,
            wall_y_mm: card.centre.y,
        }
    }
}

fn modules(name: &str, hex: &str) -> Result<Modules, ManifestError> {
    Modules::from_hex(hex).map_err(|error| ManifestError::Code(shown(name), error))
}

/// What a message repeats of a name that stands in the file: real ones have some ten characters.
fn shown(name: &str) -> String {
    name.chars().take(20).collect()
}

fn wall<T>(what: Sentence) -> Result<T, ManifestError> {
    Err(ManifestError::Wall(what))
}
