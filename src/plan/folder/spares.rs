//! `spare-squares.json`: which squares were printed on spare paper, without a code, so that a check knows what it cannot read.

use serde::{Deserialize, Serialize};

use super::{Folder, FolderError, whole};
use crate::plan::{Cell, Grid};

/// Bytes of the file: ten for each square of the largest wall, and room.
const MOST_BYTES: u64 = 1 << 16;
/// Format of the file.
const FORMAT: u32 = 1;

#[derive(Serialize, Deserialize)]
struct Spares {
    format: u32,
    /// Labels of squares.
    squares: Vec<String>,
}

impl Folder {
    /// Squares that were printed on spare paper, by the cell where they belong; none where the file is not there or cannot be read.
    #[must_use]
    pub fn spares(&self, grid: &Grid) -> Vec<Cell> {
        let bytes = whole::read(&self.root().join(NAME), MOST_BYTES).ok();
        let spares: Option<Spares> = bytes.and_then(|bytes| serde_json::from_slice(&bytes).ok());
        let labels = spares.filter(|own| own.format == FORMAT).map(|own| own.squares).unwrap_or_default();
        labels.iter().filter_map(|label| grid.cell(label)).collect()
    }

    /// Remembers that squares were printed on spare paper, besides those that are known.
    ///
    /// # Errors
    /// [`FolderError`] where the file cannot be written.
    pub fn remember_spares(&self, cells: &[Cell], grid: &Grid) -> Result<(), FolderError> {
        let mut all = self.spares(grid);
        all.extend(cells);
        all.sort_unstable();
        all.dedup();
        let squares = all.iter().map(|cell| grid.label(*cell)).collect();
        let text = serde_json::to_vec_pretty(&Spares { format: FORMAT, squares }).unwrap_or_default();
        whole::write(&self.root().join(NAME), &text)
    }
}

/// The file's name.
const NAME: &str = "spare-squares.json";
