//! Rectified squares: each on its own, upright, without perspective, lens and lamp.
//!
//! ```text
//!   Hung (from its code) ─┐
//!   cell, where the code  ├─▶ square mm ─▶ wall ─▶ straight ─▶ photo ─▶ colour ─▶ even light ─▶ side_px × side_px
//!   could not be read ────┘
//! ```
//!
//! Drawn as finely as the photos show the wall where they show it best, so nothing is left out between two
//! pixels; whoever needs less shrinks it.

use image::RgbImage;
use rayon::prelude::*;

use super::blocks::{BLOCK, Blocks};
use super::cover::Cover;
use super::hung::Hanging;
use super::light::Light;
use super::sample::Source;
use super::straighten::Shot;
use crate::frame::{Map, Point, SquareMm, WallMm, ceil_index, float};
use crate::plan::{Cell, Grid};
use crate::read::{Camera, CellReading, PhotoReading, Sight};

/// Minimum and maximum number of pixels along a square's side.
const SIDES_PX: [usize; 2] = [24, 1_000];

/// Number of pixels along a square's side, so that no photo shows a cell more finely.
///
/// Fewer where the wall's longer side would come to more than `longest_px`.
#[must_use]
pub fn side_px(photos: &[PhotoReading], grid: &Grid, longest_px: usize) -> usize {
    let of_photo = |photo: &PhotoReading| {
        let own = grid.cells().filter(|cell| photo.apart.reaches(*cell));
        let scales = own.map(|cell| photo.camera.wall_to_straight.scale_at(grid.centre(cell)));
        scales.filter(|scale| scale.is_finite()).fold(0.0, f64::max)
    };
    let scales = photos.iter().map(of_photo);
    let finest = scales.filter(|scale| scale.is_finite()).fold(0.0, f64::max);
    let most = (longest_px / grid.columns.max(grid.rows)).clamp(SIDES_PX[0], SIDES_PX[1]);
    ceil_index(finest * grid.square_mm).clamp(SIDES_PX[0], most)
}

/// Rectified picture of what hangs in one cell.
#[derive(Clone, Debug)]
pub struct Straightened {
    /// Picture of the whole square: upright by its code, or as it hangs where its code could not be read.
    pub picture: RgbImage,
    /// Whether its code was read.
    pub named: bool,
    /// Whether it may be shown: what is covered in its photo is compared with the pieces, and never kept.
    pub shown: bool,
}

/// Source of one picture: the photo's index and the place on the wall.
struct Wanted {
    photo: usize,
    square_to_wall: Map<SquareMm, WallMm>,
    named: bool,
}

/// Squares while they are drawn, photo by photo, so that only one needs to be at hand.
pub struct Gathering {
    grid: Grid,
    side_px: usize,
    wanted: Vec<Option<Wanted>>,
    drawn: Vec<Option<Straightened>>,
}

impl Gathering {
    /// Empty pictures of the cells in which something hangs; each comes from the photo that shows it best.
    #[must_use]
    pub fn new(cells: &[CellReading], hanging: &Hanging, grid: &Grid, side_px: usize) -> Self {
        let mut wanted: Vec<Option<Wanted>> = grid.cells().map(|_| None).collect();
        for reading in cells.iter().filter(|reading| grid.holds(reading.cell)) {
            wanted[grid.index(reading.cell)] = match (&reading.sight, hanging.in_cell(reading.cell)) {
                (Sight::Square { .. }, Some(hung)) => {
                    Some(Wanted { photo: hung.photo, square_to_wall: hung.square_to_wall, named: true })
                }
                (Sight::Unread, _) if is_hidden(reading.cell, cells) => None,
                (Sight::Unread | Sight::Stranger { .. } | Sight::Square { .. }, _) => Some(Wanted {
                    photo: reading.photo,
                    square_to_wall: in_place(reading.cell, grid),
                    named: false,
                }),
                (Sight::Empty | Sight::Unseen, _) => None,
            };
        }
        let drawn = wanted.iter().map(|_| None).collect();
        Self { grid: *grid, side_px, wanted, drawn }
    }

    /// Draws the squares that photo `index` shows best. One that is partly outside is left out.
    pub fn add(&mut self, index: usize, shot: Shot<'_>) {
        let source = Source::new(shot.photo, self.thinning(index, shot.camera));
        let side_px = self.side_px;
        let side_mm = self.grid.square_mm;
        self.drawn.par_iter_mut().zip(&self.wanted).for_each(|(drawn, wanted)| {
            if let Some(wanted) = wanted.as_ref().filter(|wanted| wanted.photo == index) {
                let taking =
                    Taking { source: &source, shot, wanted, side_px, px_per_mm: float(side_px) / side_mm };
                *drawn = taking.picture().map(|picture| Straightened {
                    picture,
                    named: wanted.named,
                    shown: true,
                });
            }
        });
    }

    /// Draws the squares without a code that a cover hides in photo `index`, for comparison only.
    ///
    /// `shot` holds the photo without the cover.
    pub fn look_under(&mut self, index: usize, shot: Shot<'_>, cover: &Cover) {
        let hidden = |cell: Cell, wanted: &Option<Wanted>| {
            wanted.as_ref().is_some_and(|wanted| wanted.photo == index && !wanted.named && cover.hides(cell))
        };
        let under: Vec<bool> =
            self.grid.cells().zip(&self.wanted).map(|(cell, wanted)| hidden(cell, wanted)).collect();
        if !under.contains(&true) {
            return;
        }
        let source = Source::new(shot.photo, self.thinning(index, shot.camera));
        let px_per_mm = float(self.side_px) / self.grid.square_mm;
        for (place, _) in under.iter().enumerate().filter(|(_, under)| **under) {
            let Some(wanted) = self.wanted[place].take() else { continue };
            let taking = Taking { source: &source, shot, wanted: &wanted, side_px: self.side_px, px_per_mm };
            self.drawn[place] =
                taking.picture().map(|picture| Straightened { picture, named: false, shown: false });
        }
    }

    /// Factor of thinning: the side, in photo pixels, of what becomes one pixel of a square, where the photo
    /// is best.
    fn thinning(&self, index: usize, camera: &Camera) -> usize {
        let own = self
            .grid
            .cells()
            .zip(&self.wanted)
            .filter(|(_, wanted)| wanted.as_ref().is_some_and(|w| w.photo == index));
        let scales = own.map(|(cell, _)| camera.wall_to_straight.scale_at(self.grid.centre(cell)));
        let finest = scales.filter(|scale| scale.is_finite()).fold(0.0, f64::max);
        crate::frame::round_index(finest * self.grid.square_mm / float(self.side_px)).clamp(1, 64)
    }

    /// Finished squares, in the order of the cells; `None` where nothing hangs or the photo shows it in part.
    #[must_use]
    pub fn finish(self) -> Vec<Option<Straightened>> {
        self.drawn
    }
}

/// Whether something may stand before an unread square, so that it is left out.
///
/// A code that is painted over leaves its neighbours alone, a person or a ladder hides several. Do not keep
/// people in the final picture.
fn is_hidden(cell: Cell, cells: &[CellReading]) -> bool {
    let beside = |other: Cell| {
        other != cell && other.row.abs_diff(cell.row) <= 1 && other.column.abs_diff(cell.column) <= 1
    };
    cells.iter().any(|other| matches!(other.sight, Sight::Unread | Sight::Unseen) && beside(other.cell))
}

/// Map to the wall from a square that hangs exactly in its place.
fn in_place(cell: Cell, grid: &Grid) -> Map<SquareMm, WallMm> {
    let [corner, ..] = grid.corners(cell);
    Map::scale_then_shift(1.0, corner.x, corner.y)
}

/// Sampler of one square from a photo.
struct Taking<'a> {
    source: &'a Source<'a>,
    shot: Shot<'a>,
    wanted: &'a Wanted,
    side_px: usize,
    px_per_mm: f64,
}

impl Taking<'_> {
    fn picture(&self) -> Option<RgbImage> {
        let side = self.side_px;
        let square_to_straight = self.wanted.square_to_wall.then(&self.shot.camera.wall_to_straight);
        let lens = self.shot.camera.lens;
        let place = |x: f64, y: f64| Point::new(x / self.px_per_mm, y / self.px_per_mm);
        let exact = |x: f64, y: f64| lens.straight_to_photo(square_to_straight.apply(place(x, y)));
        let mut pixels = vec![0; side * side * 3];
        let mut whole = true;
        for (band, rows) in pixels.chunks_mut(side * 3 * BLOCK).enumerate() {
            let blocks = Blocks::new(side, band * BLOCK, exact);
            for (down, row) in rows.chunks_exact_mut(side * 3).enumerate() {
                blocks.row(down, |x, place| match self.source.at(place) {
                    Some(colour) => row[x * 3..x * 3 + 3].copy_from_slice(&colour),
                    None => whole = false,
                });
                if let Some(light) = self.shot.light {
                    self.even(light, band * BLOCK + down, row);
                }
            }
        }
        let side = u32::try_from(side).ok()?;
        RgbImage::from_raw(side, side, pixels).filter(|_| whole)
    }

    fn even(&self, light: &Light, y: usize, row: &mut [u8]) {
        let to_wall = |x: usize| {
            let at = Point::new(float(x) / self.px_per_mm, (float(y) + 0.5) / self.px_per_mm);
            self.wanted.square_to_wall.apply(at)
        };
        light.even_row(row, to_wall(0), to_wall(self.side_px));
    }
}
