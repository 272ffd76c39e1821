//! What is known of every tile: how much of each pencil it needs, how hard it is.

use super::few::FewColours;
use super::tiles::Crop;
use crate::frame::{ceil_index, float, floor_index};
use crate::plan::level::Level;
use crate::plan::settings::{LevelSettings, Pencil};
use crate::plan::{Cell, Grid};

/// The part of a tile's area below which a colour is not counted as one of the tile's.
const LEAST_SHARE: f64 = 0.004;

/// What is known of one tile.
#[derive(Clone, Debug, PartialEq)]
pub struct TileFacts {
    /// Which cell it is.
    pub cell: Cell,
    /// For each pencil, in the pencils' order, the part of the tile's area that it covers, 0 … 1; the sum is 1.
    pub shares: Vec<f64>,
    /// How hard it is to redraw.
    pub level: Level,
}

impl TileFacts {
    /// The numbers of the pencils that the tile needs, the one for the largest area first.
    #[must_use]
    pub fn colours(&self) -> Vec<usize> {
        let mut needed: Vec<usize> =
            (0..self.shares.len()).filter(|&pencil| self.shares[pencil] >= LEAST_SHARE).collect();
        needed.sort_by(|&a, &b| self.shares[b].total_cmp(&self.shares[a]));
        needed
    }
}

/// What is known of every tile.
#[derive(Clone, Debug, PartialEq)]
pub struct PictureFacts {
    /// The pencils.
    pub pencils: Vec<Pencil>,
    /// The tiles, in the grid's order of cells.
    pub tiles: Vec<TileFacts>,
}

impl PictureFacts {
    /// Measures every tile.
    #[must_use]
    pub fn of(few: &FewColours, grid: &Grid, levels: &LevelSettings) -> Self {
        let crop = Crop::of(few.size(), grid);
        let width = usize::try_from(few.size().0).unwrap_or(0);
        let height = usize::try_from(few.size().1).unwrap_or(0);
        let tiles = grid.cells().map(|cell| {
            let (from, side) = (crop.tile_top_left(cell), crop.tile.value());
            let mut shares = vec![0.0; few.pencils.len()];
            let rows = floor_index(from.y).min(height - 1)..ceil_index(from.y + side).min(height);
            for y in rows {
                for x in floor_index(from.x).min(width - 1)..ceil_index(from.x + side).min(width) {
                    shares[usize::from(few.index()[y * width + x])] += 1.0;
                }
            }
            let sum: f64 = shares.iter().sum();
            shares.iter_mut().for_each(|share| *share /= sum);
            let decided = levels.decided.iter().find(|(own, _)| *own == cell).map(|(_, level)| *level);
            let count = float(shares.iter().filter(|share| **share >= LEAST_SHARE).count());
            let level = decided.unwrap_or(Level::ALL[floor_index(count - 1.0).min(3)]);
            TileFacts { cell, shares, level }
        });
        let tiles = tiles.collect();
        Self { pencils: few.pencils.clone(), tiles }
    }

    /// How many tiles have a level.
    #[must_use]
    pub fn count(&self, level: Level) -> usize {
        self.tiles.iter().filter(|tile| tile.level == level).count()
    }
}
