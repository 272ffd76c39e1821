//! `print/manifest.json`: what was printed, with every code's modules; what `check` looks for on the wall.

use serde::{Deserialize, Serialize};
use thiserror::Error;

use super::cards::{Card, CardKind};
use super::cell::{Cell, Grid, RowsFrom};
use super::code::{CodeError, Modules};
use crate::frame::{Point, SquareMm};

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
    /// Every square in `squares.pdf`.
    pub squares: Vec<ManifestSquare>,
    /// Every tile in `tiles.pdf`; absent in manifests of walls that another printer made.
    #[serde(default)]
    pub tiles: Vec<ManifestTile>,
    /// Every card.
    #[serde(default)]
    pub cards: Vec<ManifestCard>,
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
    /// Side of a tile.
    pub tile_mm: f64,
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

/// One printed tile; page origin top left.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct ManifestTile {
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
    #[error(
        "the manifest has format {0}, this program reads format {FORMAT}: print the kit again or use the program that wrote it"
    )]
    Format(u64),
    /// Not JSON, or not these fields.
    #[error("the manifest cannot be read: {0}")]
    Json(String),
    /// Numbers that make no wall.
    #[error("the manifest describes no wall: {0}")]
    Wall(String),
    /// Modules that make no code.
    #[error("the manifest's code {0}: {1}")]
    Code(String, CodeError),
}

/// What hangs on the wall when all is done, in the terms of the plan: what a reader looks for.
#[derive(Clone, Debug, PartialEq)]
pub struct Printed {
    /// Name of the event.
    pub name: String,
    /// Tag of the event, as the codes have it.
    pub tag: String,
    /// The wall.
    pub grid: Grid,
    /// Side of a module on a square.
    pub module_mm: f64,
    /// The code's outer top left corner on an upright square.
    pub code_top_left: Point<SquareMm>,
    /// One a cell, in the order of the cells.
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
