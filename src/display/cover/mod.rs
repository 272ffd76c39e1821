//! Cover: what of a photo is hidden before anything is drawn from it, so that nobody before the wall is kept
//! in a picture.
//!
//! ```text
//!   Photo, PhotoReading ─▶ looks ─▶ the mean colour of each tile, light evened out   ┐
//!   picture ─▶ Expected ─▶ the colour that is to be drawn there                      ├─▶ foreign tiles ─▶ grow ─▶ Cover
//!   cards' codes ─▶ cards ─▶ which cards are in sight                                ┘
//!
//!   looks, Expected ─▶ white ─▶ squares that nobody has drawn on
//!   Cover, Photo ─▶ Covered   the photo with what is covered painted plain: the only thing that kept pictures are made from
//! ```
//!
//! A cell where neither a square was read nor the bare wall shows is covered as a whole. What looks like neither wall, card nor
//! drawing is covered where it reaches in from outside the wall or from a group of cells that somebody hides. Where nobody
//! stands, no square that was read loses a pixel.
//!
//! Tiles are a sixteenth of a square's side; the wall has a rim of tiles around it, as wide as pictures show it:
//!
//! ```text
//!   ┌──────────────────┐
//!   │ rim   ┌───┬───┐  │   column 0, row 0 of the tiles is the rim's top left;
//!   │       │A1 │B1 │  │   tile (rim, rim) is the top left one of the top left cell
//! ```

mod cards;
mod grow;
mod looks;
mod white;

use image::{Rgb, RgbImage};

use crate::frame::{DisplayPx, Map, PhotoPx, Point, WallMm, ceil_index, float, floor_index};
use crate::photo::Photo;
use crate::picture::Picture;
use crate::plan::cards::RING_MM;
use crate::plan::{Cell, Grid, Printed};
use crate::read::{Camera, PhotoReading, Sight};

use super::drawing::Canvas;

/// Number of tiles along a square's side: 8 mm on squares of 127 mm, a third of a child's wrist.
///
/// Fewer hide a drawing around an arm, more are ruled by single strokes.
pub(super) const TILES: usize = 16;
/// Width around the ring of cards that is kept of the photo, in mm: cards hang a little askew.
pub const MARGIN_MM: f64 = 10.0;
/// Colour of what is covered: a little darker than paper.
pub const PLAIN: Rgb<u8> = Rgb([214, 216, 220]);
/// Colour of letters on what is covered.
const INK: Rgb<u8> = Rgb([70, 74, 82]);
/// Heights of the label's and of the state's letters, as shares of a cell's side.
const LETTERS: (f64, f64) = (0.22, 0.14);

/// Expected colours: mean of the picture for each tile of each piece, cell by cell, each row by row.
#[derive(Clone, Debug)]
pub struct Expected(Vec<[u8; 3]>);

impl Expected {
    /// Expected colours of a picture over a grid.
    #[must_use]
    pub fn of(picture: &Picture, grid: &Grid) -> Self {
        let crop = picture.crop(grid);
        let step = crop.piece.value() / float(TILES);
        let mut colours = Vec::with_capacity(grid.count() * TILES * TILES);
        for cell in grid.cells() {
            let corner = crop.piece_top_left(cell);
            for i in 0..TILES * TILES {
                let left_upper = Point::<crate::frame::PicturePx>::new(
                    corner.x + float(i % TILES) * step,
                    corner.y + float(i / TILES) * step,
                );
                colours.push(mean(&picture.pixels, left_upper.x, left_upper.y, step));
            }
        }
        Self(colours)
    }

    /// Expected colour of a tile of a cell's piece, upright.
    fn at(&self, home: usize, column: usize, row: usize) -> [u8; 3] {
        self.0.get((home * TILES + row) * TILES + column).copied().unwrap_or([255; 3])
    }
}

/// Mean of nine places spread over a square of a picture.
fn mean(pixels: &RgbImage, left: f64, upper: f64, side: f64) -> [u8; 3] {
    let mut sum = [0_usize; 3];
    for i in 0..9 {
        let at = |from: f64, i: usize, end: u32| {
            let place = floor_index(from + side * (float(i) + 0.5) / 3.0);
            u32::try_from(place).unwrap_or(u32::MAX).min(end.saturating_sub(1))
        };
        let pixel = pixels.get_pixel(at(left, i % 3, pixels.width()), at(upper, i / 3, pixels.height()));
        sum.iter_mut().zip(pixel.0).for_each(|(sum, level)| *sum += usize::from(level));
    }
    sum.map(|sum| u8::try_from(sum / 9).unwrap_or(u8::MAX))
}

/// The wall and its rim in tiles.
#[derive(Copy, Clone, Debug)]
pub(super) struct Tiles {
    grid: Grid,
    side_mm: f64,
    rim: usize,
    columns: usize,
    rows: usize,
}

impl Tiles {
    fn of(grid: &Grid) -> Self {
        let side_mm = grid.square_mm / float(TILES);
        let rim = ceil_index((RING_MM + MARGIN_MM) / side_mm) + 1;
        let (columns, rows) = (grid.columns * TILES + 2 * rim, grid.rows * TILES + 2 * rim);
        Self { grid: *grid, side_mm, rim, columns, rows }
    }

    fn count(&self) -> usize {
        self.columns * self.rows
    }

    /// Place on the wall of a tile's corner; parts of tiles count.
    fn wall(&self, column: f64, row: f64) -> Point<WallMm> {
        let rim = float(self.rim);
        Point::new((column - rim) * self.side_mm, (row - rim) * self.side_mm)
    }

    /// Cell of a tile, and the tile's column and row in it; `None` on the rim.
    fn cell(&self, tile: usize) -> Option<(Cell, usize, usize)> {
        let (x, y) =
            ((tile % self.columns).checked_sub(self.rim)?, (tile / self.columns).checked_sub(self.rim)?);
        let cell = Cell { row: y / TILES, column: x / TILES };
        self.grid.holds(cell).then_some((cell, x % TILES, y % TILES))
    }

    /// Cell of a tile, or the nearest to one on the rim.
    fn nearest(&self, column: usize, row: usize) -> Cell {
        let of = |at: usize, count: usize| at.saturating_sub(self.rim).min(count * TILES - 1) / TILES;
        Cell { row: of(row, self.grid.rows), column: of(column, self.grid.columns) }
    }

    /// Tiles of a cell, row by row.
    fn of_cell(&self, cell: Cell) -> impl Iterator<Item = usize> + use<> {
        let (left, top, columns) =
            (self.rim + cell.column * TILES, self.rim + cell.row * TILES, self.columns);
        (0..TILES * TILES).map(move |i| (top + i / TILES) * columns + left + i % TILES)
    }
}

/// Whether squares that are only begun are looked for.
#[derive(Copy, Clone, Debug, PartialEq, Eq)]
pub enum Begun {
    /// They are.
    Asked,
    /// They aren't: nobody's drawing is judged unasked.
    NotAsked,
}

/// Cover of one photo: the tiles of the wall and its rim that are hidden.
#[derive(Clone, Debug)]
pub struct Cover {
    tiles: Tiles,
    camera: Option<Camera>,
    covered: Vec<bool>,
    someone: bool,
    white: Vec<Cell>,
    begun: Vec<Cell>,
}

impl Cover {
    /// Cover that hides nothing: for whoever asks for the photo as it is.
    #[must_use]
    pub fn nothing(grid: &Grid) -> Self {
        let tiles = Tiles::of(grid);
        let (covered, white, begun) = (vec![false; tiles.count()], Vec::new(), Vec::new());
        Self { tiles, camera: None, covered, someone: false, white, begun }
    }

    /// Cover for a photo.
    ///
    /// `expected` is asked only where somebody may stand before the wall; without it a person is covered on
    /// unread cells and beside the wall only.
    #[must_use]
    pub fn of(
        photo: &Photo,
        reading: &PhotoReading,
        printed: &Printed,
        expected: &(dyn Fn() -> Option<Expected> + Sync),
    ) -> Self {
        Self::with(photo, reading, printed, expected, Begun::NotAsked)
    }

    /// The same; [`Cover::begun`] is known where it is asked for.
    #[must_use]
    pub fn with(
        photo: &Photo,
        reading: &PhotoReading,
        printed: &Printed,
        expected: &(dyn Fn() -> Option<Expected> + Sync),
        asked: Begun,
    ) -> Self {
        let mut cover = Self { camera: Some(reading.camera), ..Self::nothing(&printed.grid) };
        let tiles = cover.tiles;
        let looks = looks::Looks::of(photo, reading, printed, tiles);
        (cover.covered, cover.someone) = grow::grow(&looks, reading, printed, expected);
        cover.white = white::white(&looks, &cover.covered, reading, printed, expected);
        if asked == Begun::Asked
            && let Some(expected) = expected()
        {
            cover.begun = white::begun((&looks, &cover.covered), &cover.white, reading, printed, &expected);
        }
        for cell in reading.cells.iter().filter(|cell| is_hidden(&cell.sight)) {
            for tile in cover.tiles.of_cell(cell.cell) {
                cover.covered[tile] = true;
            }
        }
        if !reading.apart.cells.is_empty() {
            // there another part of the wall may hang, with a cover of its own
            for (tile, covered) in cover.covered.iter_mut().enumerate() {
                let cell = tiles.nearest(tile % tiles.columns, tile / tiles.columns);
                *covered &= reading.apart.reaches(cell);
            }
        }
        cover
    }

    /// Whether somebody seems to stand before the wall.
    #[must_use]
    pub fn someone(&self) -> bool {
        self.someone
    }

    /// Cells whose squares nobody has drawn on yet. Where that is unsure, a square counts as drawn.
    #[must_use]
    pub fn white(&self) -> &[Cell] {
        &self.white
    }

    /// Cells whose squares are only begun: much of what their piece colours is still paper. Empty where nobody asked.
    #[must_use]
    pub fn begun(&self) -> &[Cell] {
        &self.begun
    }

    /// This finding, covering nothing: for whoever asks for the photo as it is.
    #[must_use]
    pub fn uncovering(mut self) -> Self {
        self.camera = None;
        self.covered.iter_mut().for_each(|covered| *covered = false);
        self.someone = false;
        self
    }

    /// Whether a cell is covered as a whole, or all but.
    #[must_use]
    pub fn hides(&self, cell: Cell) -> bool {
        let tiles = self.tiles.of_cell(cell).filter(|tile| self.covered.get(*tile) == Some(&true));
        10 * tiles.count() >= 9 * TILES * TILES
    }

    /// Share of a cell that is covered, 0 … 1.
    #[must_use]
    pub fn share(&self, cell: Cell) -> f64 {
        let tiles = self.tiles.of_cell(cell).filter(|tile| self.covered.get(*tile) == Some(&true));
        float(tiles.count()) / float(TILES * TILES)
    }

    /// Whether a place on the wall or its rim is covered.
    #[must_use]
    pub fn at(&self, place: Point<WallMm>) -> bool {
        let part = |mm: f64| mm / self.tiles.side_mm + float(self.tiles.rim);
        let (x, y) = (part(place.x), part(place.y));
        if !(x >= 0.0 && y >= 0.0) {
            return false;
        }
        let (x, y) = (floor_index(x), floor_index(y));
        x < self.tiles.columns && self.covered.get(y * self.tiles.columns + x) == Some(&true)
    }

    fn paint(&self, photo: &mut RgbImage) {
        let Some(camera) = &self.camera else { return };
        for tile in (0..self.covered.len()).filter(|tile| self.covered[*tile]) {
            let (x, y) = (float(tile % self.tiles.columns), float(tile / self.tiles.columns));
            let corners = [(x, y), (x + 1.0, y), (x + 1.0, y + 1.0), (x, y + 1.0)];
            fill(photo, corners.map(|(x, y)| camera.wall_to_photo(self.tiles.wall(x, y))));
        }
    }
}

/// Whether neither a square nor the bare wall is seen.
fn is_hidden(sight: &Sight) -> bool {
    matches!(sight, Sight::Unread | Sight::Unseen)
}

/// Whether a tile of an upright square lies on the code, its quiet zone or the label beside it.
fn is_code(printed: &Printed, side_mm: f64, column: usize, row: usize) -> bool {
    let from = printed.code_top_left;
    let side = printed.module_mm * float(crate::plan::code::SIDE);
    let around = 6.0 * printed.module_mm;
    let at = |i: usize| (float(i) + 0.5) * side_mm;
    let within = |mm: f64, from: f64| mm > from - around && mm < from + side + around;
    within(at(column), from.x) && within(at(row), from.y)
}

/// A tile of a square after quarter turns clockwise.
fn turned((mut column, mut row): (usize, usize), quarters: u32) -> (usize, usize) {
    for _ in 0..quarters {
        (column, row) = (TILES - 1 - row, column);
    }
    (column, row)
}

/// Paints a quadrilateral and a pixel around it.
fn fill(picture: &mut RgbImage, corners: [Point<PhotoPx>; 4]) {
    if corners.iter().any(|corner| !corner.is_finite()) {
        return;
    }
    let middle = corners[0].towards(corners[2], 0.5);
    let least = |of: fn(&Point<PhotoPx>) -> f64| corners.iter().map(of).fold(f64::INFINITY, f64::min) - 1.0;
    let most =
        |of: fn(&Point<PhotoPx>) -> f64| corners.iter().map(of).fold(f64::NEG_INFINITY, f64::max) + 1.0;
    let range = |from: f64, to: f64, end: u32| {
        let within = |value: f64| u32::try_from(floor_index(value)).unwrap_or(u32::MAX).min(end);
        if to < 0.0 { 0..0 } else { within(from)..within(to + 1.0) }
    };
    let columns = range(least(|p| p.x), most(|p| p.x), picture.width());
    for y in range(least(|p| p.y), most(|p| p.y), picture.height()) {
        for x in columns.clone() {
            let p = Point::new(f64::from(x) + 0.5, f64::from(y) + 0.5);
            let inside = (0..4).all(|i| {
                let (from, to) = (corners[i], corners[(i + 1) % 4]);
                let along = to - from;
                let side = along.cross(middle - from).signum();
                side * along.cross(p - from) >= -along.length().value()
            });
            if inside {
                picture.put_pixel(x, y, PLAIN);
            }
        }
    }
}

/// A photo that pictures may be made from: what is to be covered is painted plain.
#[derive(Clone, Debug)]
pub struct Covered {
    photo: Photo,
    covers: Vec<Cover>,
}

impl Covered {
    /// Photo with what `covers` hide painted over: one for each part of the wall that it shows.
    #[must_use]
    pub fn new(mut photo: Photo, covers: &[Cover]) -> Self {
        covers.iter().for_each(|cover| cover.paint(&mut photo.colour));
        Self { photo, covers: covers.to_vec() }
    }

    /// Photo with what is covered painted over.
    #[must_use]
    pub fn photo(&self) -> &Photo {
        &self.photo
    }

    /// Covers of the photo, one for each part of the wall that it shows.
    #[must_use]
    pub fn covers(&self) -> &[Cover] {
        &self.covers
    }

    /// Whether a cell is covered as a whole, or all but.
    #[must_use]
    pub fn hides(&self, cell: Cell) -> bool {
        self.covers.iter().any(|cover| cover.hides(cell))
    }
}

/// Writes the label and the state, in words, on every cell that is covered as a whole.
pub(super) fn label(
    picture: &mut RgbImage,
    names: &[(Cell, String, String)],
    grid: &Grid,
    wall_to_display: &Map<WallMm, DisplayPx>,
) {
    let side = wall_to_display.scale_at(Point::origin()) * grid.square_mm;
    let mut canvas = Canvas::<DisplayPx>::on(picture);
    for (cell, label, state) in names {
        let lines = [(label.as_str(), LETTERS.0 * side), (state.as_str(), LETTERS.1 * side)];
        canvas.label(wall_to_display.apply(grid.centre(*cell)), &lines, 0.86 * side, INK);
    }
}
