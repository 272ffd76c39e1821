//! A picture of a few colours and its grid, to ask about.

use std::collections::BTreeSet;

use everysquare::picture::questions::{Question, Unit, questions};
use everysquare::picture::{FewColours, Picture, PictureFacts};
use everysquare::plan::settings::{LevelSettings, Pencil};
use everysquare::plan::{Cell, Grid, KeptFree, RowsFrom};
use image::RgbImage;
use image::imageops::crop_imm;

/// Pixels along a piece's side in [`Event::new`].
pub const SIDE: u32 = 6;
pub const COLOURS: [[u8; 3]; 6] =
    [[250, 250, 250], [20, 60, 160], [200, 30, 40], [250, 210, 40], [30, 130, 60], [20, 20, 20]];

/// A grid and its picture, every pixel one of a few colours.
#[derive(Clone, Debug)]
pub struct Event {
    pub grid: Grid,
    pub picture: Picture,
    /// Pixels along a piece's side.
    pub side: u32,
}

impl Event {
    /// `paint` gives the colour of a piece's upper, middle and lower third.
    pub fn new(
        columns: usize,
        rows: usize,
        square_mm: f64,
        piece_mm: f64,
        paint: impl Fn(usize) -> [usize; 3],
    ) -> Self {
        let grid = Grid {
            columns,
            rows,
            square_mm,
            piece_mm,
            rows_from: RowsFrom::Bottom,
            border: false,
            kept_free: KeptFree::NONE,
        };
        Self::drawn(grid, SIDE, |x, y| {
            let piece = (y / SIDE) as usize * columns + (x / SIDE) as usize;
            COLOURS[paint(piece)[(y % SIDE * 3 / SIDE) as usize]]
        })
    }

    /// `colour` is that of a pixel.
    pub fn drawn(grid: Grid, side: u32, colour: impl Fn(u32, u32) -> [u8; 3]) -> Self {
        let (width, height) = (grid.columns as u32 * side, grid.rows as u32 * side);
        let pixels = RgbImage::from_fn(width, height, |x, y| image::Rgb(colour(x, y)));
        Self { grid, picture: Picture { pixels }, side }
    }

    pub fn questions(&self) -> Vec<Question> {
        self.questions_in(&COLOURS, Unit::Inch)
    }

    pub fn questions_in(&self, colours: &[[u8; 3]], unit: Unit) -> Vec<Question> {
        let pencil = |srgb: &[u8; 3]| Pencil { name: format!("{srgb:?}"), srgb: *srgb };
        let pencils: Vec<Pencil> = colours.iter().map(pencil).collect();
        let few = FewColours::of(&self.picture, &pencils);
        let facts = PictureFacts::of(&few, &self.grid, &LevelSettings::default());
        questions(&facts, &self.picture, &self.grid, unit)
    }

    /// The piece of a cell, cut out.
    pub fn piece(&self, cell: Cell) -> RgbImage {
        let (x, y) = (cell.column as u32 * self.side, cell.row as u32 * self.side);
        crop_imm(&self.picture.pixels, x, y, self.side, self.side).to_image()
    }

    /// The colours seen in a piece, from its pixels.
    pub fn seen(&self, column: usize, row: usize) -> BTreeSet<[u8; 3]> {
        self.piece(Cell { row, column }).pixels().map(|pixel| pixel.0).collect()
    }

    /// How many pieces are of a kind.
    pub fn count(&self, is_kind: impl Fn(&BTreeSet<[u8; 3]>) -> bool) -> usize {
        self.cells().filter(|(column, row)| is_kind(&self.seen(*column, *row))).count()
    }

    pub fn cells(&self) -> impl Iterator<Item = (usize, usize)> + use<> {
        let Grid { columns, rows, .. } = self.grid;
        (0..rows).flat_map(move |row| (0..columns).map(move |column| (column, row)))
    }

    /// How many square blocks of a side lie wholly on the wall, tried place by place.
    pub fn blocks(&self, side: usize) -> usize {
        self.cells().filter(|(c, r)| c + side <= self.grid.columns && r + side <= self.grid.rows).count()
    }
}
