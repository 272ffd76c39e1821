//! What is known of every piece: how much of each pencil it needs, how hard it is.
//!
//! ```text
//!  FewColours ──┬─ every pixel by the area that a piece covers of it ──▶ shares ──▶ pencils a piece needs
//!               └─ pixels of one piece ──▶ Shapes: regions, edges, score ──▶ level
//! ```
//!
//! Every document takes its numbers from here.

use image::{Rgb, RgbImage};
use rayon::prelude::*;

use super::complexity::Shapes;
use super::crossings::between_columns;
use super::few::FewColours;
use super::order::{Band, PIECE_PX, losses, order};
use super::outlines::Outlines;
use super::pieces::{Crop, covered};
use crate::frame::{float, floor_index, round_index};
use crate::plan::crowd::{PlannedPiece, Work};
use crate::plan::level::Level;
use crate::plan::settings::{LevelSettings, Pencil};
use crate::plan::{Cell, Grid};

/// Pixels along a piece's side that its shapes are measured with, at most: 0.13 mm on a piece of an inch, finer than a pencil's line.
pub(super) const MOST_SHAPE_PX: usize = 192;

/// What is known of one piece.
#[derive(Clone, Debug, PartialEq)]
pub struct PieceFacts {
    /// Which cell it is.
    pub cell: Cell,
    /// For each pencil, in the pencils' order, the part of the piece's area that it covers, 0 … 1; the sum is 1.
    pub shares: Vec<f64>,
    /// The numbers of the pencils that it needs, the one for the largest area first: those of its regions.
    pub pencils: Vec<usize>,
    /// How many connected patches of one colour it has, without those that nobody redraws, see [`super::complexity`].
    pub regions: usize,
    /// How long the edges between its colours are, in sides of the piece.
    pub edge: f64,
    /// The sum of its regions' perimetric complexities, see [`super::complexity`].
    pub complexity: f64,
    /// How hard it is to redraw, see [`super::complexity`]; 0 for one colour all over.
    pub score: f64,
    /// How hard it is to redraw: what the organiser decided, else what follows from the scores.
    pub level: Level,
    /// Whether the organiser decided its level.
    pub decided: bool,
    /// What is lost when it is missing, see [`super::order`].
    pub loss: f64,
    /// When it is handed out.
    pub band: Band,
}

/// What is known of every piece.
#[derive(Clone, Debug, PartialEq)]
pub struct PictureFacts {
    /// The pencils.
    pub pencils: Vec<Pencil>,
    /// The pieces, in the grid's order of cells.
    pub pieces: Vec<PieceFacts>,
    /// The picture's width divided by its height, without a border.
    pub shape: f64,
    /// The pieces by their place in `pieces`, in the order in which they are handed out; without those of cells that are kept free.
    pub order: Vec<usize>,
    /// The edges between the colours.
    pub outlines: Outlines,
    /// Number of outlines that cross the edge between each column and the next.
    pub crossings: Vec<usize>,
}

impl PictureFacts {
    /// Measures every piece.
    #[must_use]
    pub fn of(few: &FewColours, grid: &Grid, levels: &LevelSettings) -> Self {
        let crop = Crop::of(few.size(), grid);
        let cells: Vec<Cell> = grid.cells().collect();
        let mut pieces: Vec<PieceFacts> = cells.par_iter().map(|cell| piece(few, &crop, *cell)).collect();
        let (border, mut own): (Vec<usize>, Vec<usize>) =
            (0..cells.len()).partition(|piece| grid.in_border(cells[*piece]));
        // a border does not move the levels of the picture's own pieces
        for part in [&own, &border] {
            let scores: Vec<f64> = part.iter().map(|piece| pieces[*piece].score).collect();
            for (piece, level) in part.iter().zip(levels.levels_of(&scores)) {
                let piece = &mut pieces[*piece];
                let decided = levels.decided(piece.cell);
                piece.decided = decided.is_some();
                piece.level = decided.unwrap_or(level);
            }
        }
        let (width, height) = few.size();
        let without = if grid.border { 2.0 * crop.piece.value() } else { 0.0 };
        let shape = (f64::from(width) - without).max(1.0) / (f64::from(height) - without).max(1.0);
        let losses = losses(&seen_from_afar(few, &crop, grid), grid.columns);
        for (piece, loss) in pieces.iter_mut().zip(&losses) {
            piece.loss = *loss;
        }
        let is_free = |piece: &usize| grid.is_kept_free(cells[*piece]);
        own.retain(|piece| !is_free(piece));
        let of_own = |piece: &usize| (pieces[*piece].level, losses[*piece]);
        let (levels, own_losses): (Vec<Level>, Vec<f64>) = own.iter().map(of_own).unzip();
        let mut order: Vec<usize> = order(&levels, &own_losses).into_iter().map(|place| own[place]).collect();
        for (place, piece) in order.iter().enumerate() {
            pieces[*piece].band = Band::of(place, order.len());
        }
        border.iter().for_each(|piece| pieces[*piece].band = Band::Reserve);
        order.extend(around(border.into_iter().filter(|piece| !is_free(piece)).collect(), &cells, grid));
        (0..cells.len()).filter(is_free).for_each(|piece| pieces[piece].band = Band::Never);
        let (outlines, crossings) = (Outlines::of(few), between_columns(few, grid));
        Self { pencils: few.pencils.clone(), pieces, shape, order, outlines, crossings }
    }

    /// The picture's own pieces of a level, in the order in which they are handed out.
    pub fn of_level(&self, level: Level) -> impl Iterator<Item = usize> {
        self.order.iter().copied().filter(move |piece| {
            let piece = &self.pieces[*piece];
            piece.level == level && piece.band != Band::Reserve
        })
    }

    /// The pieces of a border in reserve, in the order in which they are handed out.
    pub fn in_reserve(&self) -> impl Iterator<Item = usize> {
        self.order.iter().copied().filter(|piece| self.pieces[*piece].band == Band::Reserve)
    }

    /// The pieces of the picture itself that are handed out, in the grid's order of cells.
    pub fn own(&self) -> impl Iterator<Item = &PieceFacts> {
        self.pieces.iter().filter(|piece| !matches!(piece.band, Band::Reserve | Band::Never))
    }

    /// The part of the whole picture that each pencil covers, with a border in reserve.
    #[must_use]
    pub fn shares(&self) -> Vec<f64> {
        let mut shares = vec![0.0; self.pencils.len()];
        let pieces = float(self.pieces.len()).max(1.0);
        for piece in &self.pieces {
            shares.iter_mut().zip(&piece.shares).for_each(|(sum, share)| *sum += share / pieces);
        }
        shares
    }

    /// How many of the picture's own pieces have a level.
    #[must_use]
    pub fn count(&self, level: Level) -> usize {
        self.own().filter(|piece| piece.level == level).count()
    }

    /// How many of the picture's own pieces need a pencil.
    #[must_use]
    pub fn pieces_with(&self, pencil: usize) -> usize {
        self.own().filter(|piece| piece.pencils.contains(&pencil)).count()
    }

    /// What there is to draw, as numbers: what crowd and time are worked out from. What stays the white of the paper is no work for any
    /// pencil.
    #[must_use]
    pub fn work(&self) -> Work {
        let mut work = Work::none(self.pencils.len(), self.shape);
        let drawn = |(share, pencil): (&f64, &Pencil)| if pencil.is_paper() { 0.0 } else { *share };
        for piece in &self.pieces {
            match piece.band {
                Band::Reserve => work.reserve[piece.level.index()] += 1,
                Band::Never => {}
                _ => {
                    let shares: Vec<f64> = piece.shares.iter().zip(&self.pencils).map(drawn).collect();
                    work.add(piece.level, &shares);
                }
            }
        }
        work
    }

    /// Number of the picture's own pieces that are white all over: nobody has anything to draw on them.
    #[must_use]
    pub fn left_white(&self) -> usize {
        self.own().filter(|piece| piece.pencils.iter().all(|pencil| self.pencils[*pencil].is_paper())).count()
    }

    /// Every piece as plan.json lists it.
    #[must_use]
    pub fn planned(&self, grid: &Grid) -> Vec<PlannedPiece> {
        let piece = |piece: &PieceFacts| PlannedPiece {
            label: grid.label(piece.cell),
            column: piece.cell.column,
            row: piece.cell.row,
            level: piece.level,
            decided: piece.decided,
            band: piece.band.word(),
            loss: piece.loss,
            score: piece.score,
            complexity: piece.complexity,
            regions: piece.regions,
            edge: piece.edge,
            shares: piece.shares.clone(),
            pencils: piece.pencils.clone(),
        };
        self.pieces.iter().map(piece).collect()
    }
}

/// The pieces of a border in the order in which they are handed out: from the lowest row up, in a row from the middle outwards, so that
/// a border that is only begun is a base that everybody reaches.
fn around(mut border: Vec<usize>, cells: &[Cell], grid: &Grid) -> Vec<usize> {
    border.sort_by_key(|piece| {
        let Cell { row, column } = cells[*piece];
        (std::cmp::Reverse(row), (2 * column + 1).abs_diff(grid.columns))
    });
    border
}

/// The picture in its pencils' colours with [`PIECE_PX`] pixels to a piece's side.
pub(super) fn seen_from_afar(few: &FewColours, crop: &Crop, grid: &Grid) -> RgbImage {
    let px = |side: usize| u32::try_from(side).unwrap_or(0);
    let mut picture = RgbImage::new(px(grid.columns * PIECE_PX), px(grid.rows * PIECE_PX));
    for cell in grid.cells() {
        let from = crop.piece_top_left(cell);
        let sampled = Window { few, x: from.x, y: from.y, side: crop.piece.value() }.sampled(PIECE_PX);
        for (at, pencil) in sampled.into_iter().enumerate() {
            let (x, y) = (cell.column * PIECE_PX + at % PIECE_PX, cell.row * PIECE_PX + at / PIECE_PX);
            let colour = few.pencils.get(usize::from(pencil)).map_or([255; 3], |pencil| pencil.srgb);
            picture.put_pixel(px(x), px(y), Rgb(colour));
        }
    }
    picture
}

/// One piece; its level, its loss and its band are still open.
fn piece(few: &FewColours, crop: &Crop, cell: Cell) -> PieceFacts {
    let (from, side) = (crop.piece_top_left(cell), crop.piece.value());
    let window = Window { few, x: from.x, y: from.y, side };
    let shares = window.shares();
    let count = round_index(side).clamp(1, MOST_SHAPE_PX);
    let shapes = Shapes::of(&window.sampled(count), count, count);
    let counted = shapes.counted();
    let has = |pencil: &usize| counted.iter().any(|region| usize::from(region.colour) == *pencil);
    let mut pencils: Vec<usize> = (0..shares.len()).filter(has).collect();
    pencils.sort_by(|&a, &b| shares[b].total_cmp(&shares[a]));
    PieceFacts {
        cell,
        shares,
        pencils,
        regions: counted.len(),
        edge: shapes.edge / float(count),
        complexity: shapes.complexity(),
        score: shapes.score(),
        level: Level::Plain,
        decided: false,
        loss: 0.0,
        band: Band::First,
    }
}

/// A square part of the picture: its top left corner and its side, in pixels.
pub(super) struct Window<'a> {
    pub few: &'a FewColours,
    pub x: f64,
    pub y: f64,
    pub side: f64,
}

impl Window<'_> {
    /// The part of its area that each pencil covers; pixels at its border count by what lies inside.
    fn shares(&self) -> Vec<f64> {
        let (width, height) = self.pixels();
        let mut shares = vec![0.0; self.few.pencils.len()];
        let columns = covered(self.x, self.side);
        for (y, of_row) in covered(self.y, self.side) {
            let row = y.min(height - 1) * width;
            for (x, of_column) in &columns {
                shares[self.pencil(row + (*x).min(width - 1))] += of_row * of_column;
            }
        }
        let sum: f64 = shares.iter().sum();
        shares.iter_mut().for_each(|share| *share /= sum);
        shares
    }

    /// `count` × `count` of its pixels, evenly spread.
    pub fn sampled(&self, count: usize) -> Vec<u8> {
        let (width, height) = self.pixels();
        let at = |from: f64, i: usize| floor_index(from + (float(i) + 0.5) * self.side / float(count));
        let columns: Vec<usize> = (0..count).map(|i| at(self.x, i).min(width - 1)).collect();
        let rows = (0..count).map(|i| at(self.y, i).min(height - 1) * width);
        rows.flat_map(|row| columns.iter().map(move |x| self.few.index()[row + x])).collect()
    }

    /// The picture's width and height, at least one.
    fn pixels(&self) -> (usize, usize) {
        let [width, height] =
            <[u32; 2]>::from(self.few.size()).map(|side| usize::try_from(side).unwrap_or(1).max(1));
        (width, height)
    }

    /// The number of a pixel's pencil.
    fn pencil(&self, at: usize) -> usize {
        usize::from(self.few.index()[at]).min(self.few.pencils.len().saturating_sub(1))
    }
}
