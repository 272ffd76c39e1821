//! Comparison of the wall with the picture that it was drawn from: similarity, where the lines should run,
//! and drawings that look like another piece.
//!
//! Suggestions, all of it: nothing here changes a state.

use image::RgbImage;
use image::imageops::thumbnail;

use super::Shown;
use crate::display::likeness::{Belongs, Likeness, Pieces, about, about_unread};
use crate::display::overlap::overlap;
use crate::frame::{ceil_index, floor_index};
use crate::picture::structure::wall_likeness;
use crate::picture::{Crop, FewColours};
use crate::plan::{Cell, Printed};
use crate::read::{Sight, WallReading};
use crate::words::Sentence;

/// Maximum side of the picture with the original's edges, in pixels: finer than 150 dots an inch where it is
/// printed.
const OVERLAP_PX: u32 = 1_600;

/// Result of comparing a wall with its original.
#[derive(Clone, Debug)]
pub struct Compared {
    /// Structural similarity of the whole wall and the original, 0 … 1.
    pub likeness: f64,
    /// Picture of the wall with the original's edges drawn over it.
    pub overlap: RgbImage,
    /// Drawings that look like another piece, in the order of the cells.
    pub suggestions: Vec<Suggestion>,
}

/// Suggestion that a drawing looks like another piece.
#[derive(Clone, Debug, PartialEq)]
pub struct Suggestion {
    /// Cell where it hangs.
    pub at: Cell,
    /// Square whose paper it is; `None` where its code was not read.
    pub paper: Option<Cell>,
    /// Piece that it looks like.
    pub likeness: Likeness,
    /// Sentence for people.
    pub said: Sentence,
}

impl Compared {
    /// Compares a wall with its original.
    #[must_use]
    pub fn of(shown: &Shown, reading: &WallReading, few: &FewColours, printed: &Printed) -> Self {
        let ((likeness, overlap), suggestions) = rayon::join(
            || {
                let original = original(few, printed);
                rayon::join(
                    || wall_likeness(&shown.in_order, &original),
                    || overlap(&small(&shown.wall), few, &printed.grid, 0.0),
                )
            },
            || suggestions(shown, reading, few, printed),
        );
        Self { likeness, overlap, suggestions }
    }
}

/// Picture of the wall, at most `OVERLAP_PX` long.
fn small(wall: &RgbImage) -> RgbImage {
    let longest = wall.width().max(wall.height());
    let side =
        |pixels: u32| if longest > OVERLAP_PX { (pixels * OVERLAP_PX / longest).max(1) } else { pixels };
    thumbnail(wall, side(wall.width()), side(wall.height()))
}

/// Part of the original that the grid covers.
fn original(few: &FewColours, printed: &Printed) -> RgbImage {
    let crop = Crop::of(few.size(), &printed.grid);
    let whole = |from: f64, size: f64| {
        let (first, beyond) = (floor_index(from + 0.5), ceil_index(from + size - 0.5));
        let px = |count: usize| u32::try_from(count).unwrap_or(u32::MAX);
        (px(first), px(beyond.saturating_sub(first).max(1)))
    };
    let ((left, width), (top, height)) =
        (whole(crop.top_left.x, crop.size.x), whole(crop.top_left.y, crop.size.y));
    image::imageops::crop_imm(&few.to_picture().pixels, left, top, width, height).to_image()
}

fn suggestions(shown: &Shown, reading: &WallReading, few: &FewColours, printed: &Printed) -> Vec<Suggestion> {
    let grid = &printed.grid;
    let pieces = Pieces::of(few, printed);
    let drawn = |cell: Cell| shown.squares.get(grid.index(cell))?.as_ref();
    let named: Vec<(Cell, Cell, &RgbImage)> = (shown.hanging.squares.iter())
        .filter_map(|hung| Some((hung.at, hung.home, &drawn(hung.at)?.picture)))
        .collect();
    let papers: Vec<(Cell, &RgbImage)> = named.iter().map(|(_, home, picture)| (*home, *picture)).collect();
    let (room, judged) = pieces.on_this_wall(&papers);
    let judged = named.iter().zip(judged).filter_map(|((at, home, _), belongs)| {
        let Belongs::Elsewhere(likeness) = belongs else { return None };
        let said = about(belongs, *home, grid)?;
        Some(Suggestion { at: *at, paper: Some(*home), likeness, said })
    });
    let here = |cell: &Cell| shown.hanging.squares.iter().any(|hung| hung.home == *cell);
    let missing: Vec<Cell> = grid.cells().filter(|cell| !here(cell) && !grid.is_kept_free(*cell)).collect();
    let unread = reading.cells.iter().filter(|cell| cell.sight == Sight::Unread).filter_map(|cell| {
        let likeness = room.suggest(&drawn(cell.cell)?.picture, &missing)?;
        // a square that looks like the piece of its own spot is where it belongs
        if likeness.piece == cell.cell {
            return None;
        }
        let said = about_unread(likeness, cell.cell, grid);
        Some(Suggestion { at: cell.cell, paper: None, likeness, said })
    });
    let mut all: Vec<Suggestion> = judged.collect();
    all.extend(unread);
    all.sort_by_key(|suggestion| suggestion.at);
    all
}
