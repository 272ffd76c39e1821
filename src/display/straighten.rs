//! Rectification: the wall as seen straight from the front, put together from one photo or several.

use image::RgbImage;
use rayon::prelude::*;

use crate::frame::{DisplayPx, Map, Point, WallMm, float, median, round_index};
use crate::photo::Photo;
use crate::plan::{Cell, Grid};
use crate::read::{Apart, Camera, CellReading, PhotoReading};

use super::blocks::{BLOCK, Blocks};
use super::cover::{self, Cover};
use super::light::Light;
use super::sample::Source;

/// Maximum side of a picture for a screen, in pixels. 2560 fill a large one.
pub const LONGEST_PX: usize = 2560;
/// Two grey levels where no photo shows the wall, and the width of their stripes in pixels.
const STRIPES: ([u8; 3], [u8; 3], usize) = ([222; 3], [238; 3], 12);

/// Photo with its camera and its light.
#[derive(Copy, Clone, Debug)]
pub struct Shot<'a> {
    /// The photo.
    pub photo: &'a Photo,
    /// Camera, from the wall into the photo.
    pub camera: &'a Camera,
    /// Light to be evened out; `None` leaves the photo's colours as they are.
    pub light: Option<&'a Light>,
    /// What hangs apart from the wall that this camera sees: nothing is drawn of cells that it does not reach.
    pub apart: &'a Apart,
}

impl<'a> Shot<'a> {
    /// Photo with what was read in it, of all or of one part of the wall.
    #[must_use]
    pub fn of(photo: &'a Photo, reading: &'a PhotoReading, light: Option<&'a Light>) -> Self {
        Self { photo, camera: &reading.camera, light, apart: &reading.apart }
    }
}

/// Frame of the front view.
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct Frontal {
    /// Margin around the wall, in mm.
    pub margin_mm: f64,
    /// Scale in pixels a mm; `None` for that of the finest photo. Lowered where a side would be longer than
    /// `longest_px`.
    pub px_per_mm: Option<f64>,
    /// Maximum side, in pixels.
    pub longest_px: usize,
}

/// Front view of a wall while it is drawn, photo by photo, so that only one needs to be at hand.
#[derive(Debug)]
pub struct Straightening<'a> {
    grid: &'a Grid,
    /// Index of the photo that shows each cell best, row by row.
    best: Vec<usize>,
    display_to_wall: Map<DisplayPx, WallMm>,
    px_per_mm: f64,
    size: (usize, usize),
    pixels: Vec<u8>,
    /// Whether a photo has shown each pixel, row by row.
    drawn: Vec<bool>,
    /// Whether each cell is covered as a whole, row by row.
    hidden: Vec<bool>,
}

impl<'a> Straightening<'a> {
    /// Begins a picture of the cells, which say in which photo each is seen best; `cameras` are those of all photos.
    #[must_use]
    pub fn new(cells: &[CellReading], cameras: &[&Camera], grid: &'a Grid, frontal: Frontal) -> Self {
        let size = grid.size();
        let margin = frontal.margin_mm;
        let (width_mm, height_mm) = (size.x + 2.0 * margin, size.y + 2.0 * margin);
        let most = float(frontal.longest_px) / width_mm.max(height_mm);
        let px_per_mm = frontal.px_per_mm.unwrap_or_else(|| finest(cells, cameras, grid)).min(most);
        let (width, height) =
            (round_index(width_mm * px_per_mm).max(1), round_index(height_mm * px_per_mm).max(1));
        Self {
            grid,
            best: best_photos(cells, grid),
            display_to_wall: Map::scale_then_shift(1.0 / px_per_mm, -margin, -margin),
            px_per_mm,
            size: (width, height),
            pixels: vec![0; width * height * 3],
            drawn: vec![false; width * height],
            hidden: vec![false; grid.count()],
        }
    }

    /// Draws what the photo number `index` shows: the cells that it shows best, and what no photo has shown yet.
    pub fn add(&mut self, index: usize, shot: Shot<'_>) {
        let source = Source::new(shot.photo, self.thinning(index, shot.camera));
        let display_to_wall = self.display_to_wall;
        let display_to_straight = display_to_wall.then(&shot.camera.wall_to_straight);
        let lens = shot.camera.lens;
        let (width, grid) = (self.size.0, self.grid);
        let column = |x: usize| self.at_wall(x, 0).column;
        let columns: Vec<usize> = (0..width).map(column).collect();
        let rows: Vec<usize> = (0..self.size.1).map(|y| self.at_wall(0, y).row).collect();
        let best = &self.best;
        let reached: Vec<bool> = grid.cells().map(|cell| shot.apart.reaches(cell)).collect();
        let bands =
            self.pixels.par_chunks_mut(width * 3 * BLOCK).zip(self.drawn.par_chunks_mut(width * BLOCK));
        bands.enumerate().for_each(|(band, (pixels, drawn))| {
            let exact = |x: f64, y: f64| lens.straight_to_photo(display_to_straight.apply(Point::new(x, y)));
            let blocks = Blocks::new(width, band * BLOCK, exact);
            let lines = pixels.chunks_exact_mut(width * 3).zip(drawn.chunks_exact_mut(width));
            for (down, (pixels, drawn)) in lines.enumerate() {
                let first = grid.index(Cell { row: rows[band * BLOCK + down], column: 0 });
                let mut taken = vec![0; width * 3];
                let mut fresh = vec![false; width];
                blocks.row(down, |x, place| {
                    let cell = first + columns[x];
                    if (drawn[x] && best[cell] != index) || !reached[cell] {
                        return;
                    }
                    if let Some(colour) = source.at(place) {
                        taken[x * 3..x * 3 + 3].copy_from_slice(&colour);
                        fresh[x] = true;
                    }
                });
                if let Some(light) = shot.light {
                    let y = float(band * BLOCK + down) + 0.5;
                    let ends = [0.0, float(width)].map(|x| display_to_wall.apply(Point::new(x, y)));
                    light.even_row(&mut taken, ends[0], ends[1]);
                }
                for x in (0..width).filter(|x| fresh[*x]) {
                    pixels[x * 3..x * 3 + 3].copy_from_slice(&taken[x * 3..x * 3 + 3]);
                    drawn[x] = true;
                }
            }
        });
    }

    /// Notes the cells to be named in the picture: those that photo `index` shows best and the cover hides.
    pub fn name_hidden(&mut self, index: usize, cover: &Cover) {
        for cell in self.grid.cells() {
            let place = self.grid.index(cell);
            self.hidden[place] |= self.best[place] == index && cover.hides(cell);
        }
    }

    /// Finished picture as of [`Straightening::finish`], with label and state, in words, on every cell that
    /// is covered as a whole.
    #[must_use]
    pub fn finish_named(self, name: impl Fn(Cell) -> (String, String)) -> RgbImage {
        let grid = self.grid;
        let hidden = grid.cells().filter(|cell| self.hidden[grid.index(*cell)]);
        let names: Vec<(Cell, String, String)> = hidden
            .map(|cell| {
                let (label, state) = name(cell);
                (cell, label, state)
            })
            .collect();
        let wall_to_display = self.display_to_wall.inverse();
        let mut picture = self.finish();
        if let Some(wall_to_display) = wall_to_display {
            cover::label(&mut picture, &names, grid, &wall_to_display);
        }
        picture
    }

    /// Whether a photo has shown each pixel, row by row.
    #[must_use]
    pub fn shown(&self) -> &[bool] {
        &self.drawn
    }

    /// Finished picture, with grey stripes where no photo shows the wall.
    #[must_use]
    pub fn finish(mut self) -> RgbImage {
        let (width, height) = self.size;
        for (i, pixel) in self.pixels.chunks_exact_mut(3).enumerate().filter(|(i, _)| !self.drawn[*i]) {
            pixel.copy_from_slice(&stripes(i % width, i / width));
        }
        let side = |pixels: usize| u32::try_from(pixels).unwrap_or(u32::MAX);
        RgbImage::from_raw(side(width), side(height), self.pixels).unwrap_or_default() // the sides and the pixels agree
    }

    /// Factor of thinning: the side, in photo pixels, of what becomes one pixel, so that it matches the
    /// picture's where it is best.
    fn thinning(&self, index: usize, camera: &Camera) -> usize {
        let own = self.grid.cells().zip(&self.best).filter(|(_, best)| **best == index);
        let scales = own.map(|(cell, _)| camera.wall_to_straight.scale_at(self.grid.centre(cell)));
        let usual = median(scales.filter(|scale| scale.is_finite()).collect()).unwrap_or(self.px_per_mm);
        round_index(usual / self.px_per_mm).clamp(1, 64)
    }

    /// Cell of a pixel, or the nearest to it.
    fn at_wall(&self, x: usize, y: usize) -> Cell {
        self.grid.nearest(self.display_to_wall.apply(Point::new(float(x) + 0.5, float(y) + 0.5)))
    }
}

/// Draws the front view of the wall from photos that are all at hand.
///
/// Each cell comes from the photo that its reading names, what that does not show from the others; where no
/// photo shows the wall, grey stripes.
#[must_use]
pub fn straighten(shots: &[Shot<'_>], cells: &[CellReading], grid: &Grid, frontal: Frontal) -> RgbImage {
    let cameras: Vec<&Camera> = shots.iter().map(|shot| shot.camera).collect();
    let mut wall = Straightening::new(cells, &cameras, grid, frontal);
    for (index, shot) in shots.iter().enumerate() {
        wall.add(index, *shot);
    }
    wall.finish()
}

/// Maximum scale over the photos, in pixels a mm, each in the middle of the cells that it shows best; 1 without a photo.
fn finest(cells: &[CellReading], cameras: &[&Camera], grid: &Grid) -> f64 {
    let scale = |(index, camera): (usize, &&Camera)| {
        let own = cells.iter().filter(|seen| seen.photo == index).map(|seen| seen.cell);
        let span = |of: fn(&Cell) -> usize| {
            Some((own.clone().map(|cell| of(&cell)).min()?, own.clone().map(|cell| of(&cell)).max()?))
        };
        let ((top, bottom), (left, right)) = (span(|cell| cell.row)?, span(|cell| cell.column)?);
        let middle = |from: usize, to: usize| float(from + to + 1) / 2.0 * grid.square_mm;
        Some(camera.wall_to_straight.scale_at(Point::new(middle(left, right), middle(top, bottom))))
    };
    let scales = cameras.iter().enumerate().filter_map(scale);
    scales.filter(|scale| scale.is_finite() && *scale > 0.0).reduce(f64::max).unwrap_or(1.0)
}

/// Index of the photo that shows each cell best, row by row.
fn best_photos(cells: &[CellReading], grid: &Grid) -> Vec<usize> {
    let mut best = vec![0; grid.count()];
    for cell in cells.iter().filter(|cell| grid.holds(cell.cell)) {
        best[grid.index(cell.cell)] = cell.photo;
    }
    best
}

fn stripes(x: usize, y: usize) -> [u8; 3] {
    let (dark, light, width) = STRIPES;
    if ((x + y) / width).is_multiple_of(2) { dark } else { light }
}
