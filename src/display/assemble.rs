//! Mosaic: the wall put together from its rectified squares.
//!
//! ```text
//!   Closed                    Straight                     InOrder
//!   ┌──┬──┬──┐                ┌──┐ ┌──┐ ┌──┐               as Closed, but every square that was read
//!   │B2│A2│C2│ as it hangs,   │B2│ │A2│┌┴─┐│               is in its own cell, upright
//!   ├──┼──┼──┤ gaps closed,   └──┘ └──┘│C2├┘ gaps kept,
//!   │A1│  │C1│ nothing askew  ┌──┐     └──┘  nothing askew
//!   └──┴──┴──┘                └──┘     ┌──┐
//! ```

use image::imageops::{self, FilterType};
use image::{Rgb, RgbImage};

use super::ghost::ghost;
use super::hung::{Hanging, Hung};
use super::squares::Straightened;
use crate::frame::{Point, Vector, WallMm, float, round_index, round_signed};
use crate::picture::Picture;
use crate::plan::{Cell, Grid, Turn};

/// Arrangement of the squares.
#[derive(Copy, Clone, Debug, PartialEq, Eq)]
pub enum Arrangement {
    /// In the cells where they hang, edge to edge.
    Closed,
    /// Where they hang, straight.
    Straight,
    /// In the cells where they belong, edge to edge.
    InOrder,
}

/// Filling of cells without a square.
#[derive(Copy, Clone, Debug, PartialEq, Eq)]
pub enum Missing {
    /// Piece of the original, in soft pencil.
    Ghost,
    /// Plain light grey.
    Open,
}

/// Colour of cells without a square: a little darker than paper.
const OPEN: Rgb<u8> = Rgb([226, 226, 224]);

/// Parts of a mosaic.
#[derive(Copy, Clone, Debug)]
pub struct Parts<'a> {
    /// The wall's cells.
    pub grid: &'a Grid,
    /// The picture.
    pub picture: &'a Picture,
    /// How the squares hang.
    pub hanging: &'a Hanging,
    /// Rectified squares, in the order of the cells.
    pub squares: &'a [Option<Straightened>],
    /// Number of pixels along a square's side.
    pub side_px: usize,
}

impl Parts<'_> {
    /// Draws the mosaic, `side_px` pixels a cell.
    #[must_use]
    pub fn assemble(&self, arrangement: Arrangement, missing: Missing) -> RgbImage {
        let mut wall = self.board(missing, arrangement);
        for (cell, square) in self.grid.cells().zip(self.squares) {
            let Some(square) = square.as_ref().filter(|square| square.shown) else { continue };
            let hung = self.hanging.in_cell(cell).filter(|_| square.named);
            match (arrangement, hung) {
                (Arrangement::Straight, Some(hung)) => self.put_where_it_hangs(&mut wall, square, hung),
                (Arrangement::InOrder, Some(hung)) => self.put(&mut wall, &square.picture, hung.home),
                (Arrangement::InOrder, None) if self.is_filled(cell) => {}
                (_, hung) => {
                    self.put(
                        &mut wall,
                        &turned(&square.picture, hung.map_or(Turn::None, |hung| hung.turn)),
                        cell,
                    );
                }
            }
        }
        wall
    }

    /// Picture of the wall before anything hangs on it.
    fn board(&self, missing: Missing, arrangement: Arrangement) -> RgbImage {
        let side = |count: usize| u32::try_from(count * self.side_px).unwrap_or(u32::MAX);
        let mut wall = RgbImage::from_pixel(side(self.grid.columns), side(self.grid.rows), OPEN);
        let empty = |(cell, square): (Cell, &Option<Straightened>)| match arrangement {
            Arrangement::InOrder => !self.is_filled(cell),
            Arrangement::Closed | Arrangement::Straight => square.as_ref().is_none_or(|square| !square.shown),
        };
        if missing == Missing::Ghost {
            let cells = self.grid.cells().zip(self.squares).filter(|(cell, square)| empty((*cell, square)));
            for (cell, _) in cells {
                self.put(&mut wall, &ghost(self.picture, self.grid, cell, self.side_px), cell);
            }
        }
        wall
    }

    /// Whether the square that belongs in a cell hangs anywhere.
    fn is_filled(&self, cell: Cell) -> bool {
        let drawn = |hung: &Hung| self.squares.get(self.grid.index(hung.at)).is_some_and(Option::is_some);
        self.hanging.squares.iter().any(|hung| hung.home == cell && drawn(hung))
    }

    fn put(&self, wall: &mut RgbImage, square: &RgbImage, cell: Cell) {
        let at = |count: usize| i64::try_from(count * self.side_px).unwrap_or(i64::MAX);
        imageops::replace(wall, square, at(cell.column), at(cell.row));
    }

    /// Puts a square where its middle hangs, in true proportion to the gaps around it.
    fn put_where_it_hangs(&self, wall: &mut RgbImage, square: &Straightened, hung: &Hung) {
        let per_mm = float(self.side_px) / self.grid.square_mm;
        let side_px = round_index(float(self.side_px) * self.hanging.scale);
        let side = u32::try_from(side_px).unwrap_or(1).max(1);
        let picture = imageops::resize(&turned(&square.picture, hung.turn), side, side, FilterType::Triangle);
        let half = self.grid.square_mm / 2.0;
        let middle: Point<WallMm> = hung.square_to_wall.apply(Point::new(half, half));
        let corner = middle - Vector::new(half, half) * self.hanging.scale;
        imageops::replace(wall, &picture, round_signed(corner.x * per_mm), round_signed(corner.y * per_mm));
    }
}

/// Picture of a square, turned as it hangs.
fn turned(square: &RgbImage, turn: Turn) -> RgbImage {
    match turn {
        Turn::None => square.clone(),
        Turn::Quarter => imageops::rotate90(square),
        Turn::Half => imageops::rotate180(square),
        Turn::ThreeQuarters => imageops::rotate270(square),
    }
}
