//! The wall as seen straight from the front, put together from one photo or several.

use image::{Rgb, RgbImage};
use rayon::prelude::*;

use crate::frame::{DisplayPx, Map, Point, StraightPx, WallMm, ceil_index, float, floor_index, round_index};
use crate::photo::Photo;
use crate::plan::{Cell, Grid};
use crate::read::{Camera, CellReading};

use super::sample::{Sampler, mean, spread};

/// Longest side of the picture. 4000 px show a wall of 3 m at more than 1 px a mm, as a 12 MP photo has it.
pub const LONGEST_PX: usize = 4000;
/// Samples a side within one pixel where the photo is finer than the picture; more would not be seen.
const MOST_SAMPLES: usize = 4;
/// Two greys and the width of their stripes where no photo shows the wall.
const STRIPES: ([u8; 3], [u8; 3], usize) = ([222; 3], [238; 3], 12);

/// One photo and where the wall is in it.
#[derive(Copy, Clone, Debug)]
pub struct Shot<'a> {
    /// The photo.
    pub photo: &'a Photo,
    /// From the wall into it.
    pub camera: &'a Camera,
}

/// Draws the wall and `margin_mm` around it. Each cell comes from the photo that its reading names, what that
/// does not show from the others; where no photo shows the wall, grey stripes.
///
/// `px_per_mm` is the picture's scale; left out, that of the finest photo. Either is lowered so that no side
/// is longer than [`LONGEST_PX`].
#[must_use]
pub fn straighten(
    shots: &[Shot<'_>],
    cells: &[CellReading],
    grid: &Grid,
    margin_mm: f64,
    px_per_mm: Option<f64>,
) -> RgbImage {
    let size = grid.size();
    let (width_mm, height_mm) = (size.x + 2.0 * margin_mm, size.y + 2.0 * margin_mm);
    let most = float(LONGEST_PX) / width_mm.max(height_mm);
    let px_per_mm = px_per_mm.unwrap_or_else(|| finest(shots, grid)).min(most);
    let wall_to_display =
        Map::<WallMm, DisplayPx>::scale_then_shift(px_per_mm, margin_mm * px_per_mm, margin_mm * px_per_mm);
    let (width, height) =
        (round_index(width_mm * px_per_mm).max(1), round_index(height_mm * px_per_mm).max(1));
    let Some(display_to_wall) = wall_to_display.inverse() else { return RgbImage::new(1, 1) };
    let view = View {
        shots,
        samplers: shots.iter().map(|shot| Sampler::new(shot.photo)).collect(),
        grid,
        best: best_photos(cells, grid),
        per_side: samples(shots, grid, px_per_mm),
        display_to_wall,
        display_to_straight: shots
            .iter()
            .map(|shot| display_to_wall.then(&shot.camera.wall_to_straight))
            .collect(),
    };
    let mut pixels = vec![0; width * height * 3];
    pixels.par_chunks_mut(width * 3).enumerate().for_each(|(y, row)| view.draw_row(y, row));
    let side = |pixels: usize| u32::try_from(pixels).unwrap_or(u32::MAX);
    RgbImage::from_raw(side(width), side(height), pixels).unwrap_or_default() // the sides and the pixels agree
}

/// Pixels a mm in the middle of the wall, in the photo that has most; 1 without a photo.
fn finest(shots: &[Shot<'_>], grid: &Grid) -> f64 {
    let size = grid.size();
    let middle = Point::new(size.x / 2.0, size.y / 2.0);
    let scales = shots.iter().map(|shot| shot.camera.wall_to_straight.scale_at(middle));
    scales.filter(|scale| scale.is_finite() && *scale > 0.0).reduce(f64::max).unwrap_or(1.0)
}

/// Which photo shows each cell best, in the order of the cells.
fn best_photos(cells: &[CellReading], grid: &Grid) -> Vec<usize> {
    let mut best = vec![0; grid.count()];
    for cell in cells.iter().filter(|cell| grid.holds(cell.cell)) {
        best[grid.index(cell.cell)] = cell.photo;
    }
    best
}

/// How many samples a side one pixel takes, for each cell and photo: about one for each pixel of the photo in
/// it.
fn samples(shots: &[Shot<'_>], grid: &Grid, px_per_mm: f64) -> Vec<Vec<usize>> {
    let of = |cell: Cell, shot: &Shot<'_>| {
        let finer = shot.camera.wall_to_straight.scale_at(grid.centre(cell)) / px_per_mm;
        ceil_index(finer - 0.25).clamp(1, MOST_SAMPLES)
    };
    grid.cells().map(|cell| shots.iter().map(|shot| of(cell, shot)).collect()).collect()
}

struct View<'a> {
    shots: &'a [Shot<'a>],
    samplers: Vec<Sampler<'a>>,
    grid: &'a Grid,
    best: Vec<usize>,
    /// For each cell and photo, how many samples a side one pixel takes.
    per_side: Vec<Vec<usize>>,
    display_to_wall: Map<DisplayPx, WallMm>,
    /// For each photo.
    display_to_straight: Vec<Map<DisplayPx, StraightPx>>,
}

impl View<'_> {
    fn draw_row(&self, y: usize, row: &mut [u8]) {
        for (x, pixel) in row.chunks_exact_mut(3).enumerate() {
            let Rgb(colour) = self.colour(x, y).unwrap_or_else(|| stripes(x, y));
            pixel.copy_from_slice(&colour);
        }
    }

    /// The colour of a pixel from the first photo, the cell's best before the others, that shows all of it.
    fn colour(&self, x: usize, y: usize) -> Option<Rgb<u8>> {
        let (x, y) = (float(x), float(y));
        let middle = self.display_to_wall.apply(Point::new(x + 0.5, y + 0.5));
        let cell = self.grid.index(self.nearest(middle));
        let best = *self.best.get(cell)?;
        let order = std::iter::once(best).chain((0..self.shots.len()).filter(|i| *i != best));
        order.into_iter().find_map(|i| {
            let (lens, sampler) = (&self.shots.get(i)?.camera.lens, self.samplers.get(i)?);
            let to_straight = self.display_to_straight.get(i)?;
            let places = spread(x, y, *self.per_side.get(cell)?.get(i)?);
            mean(places.map(|(x, y)| sampler.at(lens.straight_to_photo(to_straight.apply(Point::new(x, y))))))
        })
    }

    /// The cell at a place, or the nearest to it.
    fn nearest(&self, p: Point<WallMm>) -> Cell {
        let of = |mm: f64, all: usize| floor_index(mm / self.grid.square_mm).min(all.saturating_sub(1));
        Cell { row: of(p.y, self.grid.rows), column: of(p.x, self.grid.columns) }
    }
}

fn stripes(x: usize, y: usize) -> Rgb<u8> {
    let (dark, light, width) = STRIPES;
    Rgb(if ((x + y) / width).is_multiple_of(2) { dark } else { light })
}
