//! Piece as it is compared: each pencil's share of each place.

use super::coarse::{self, Coarse};
use super::plane::{Ink, PLACES, Plane, SIDE, smoothed};
use crate::frame::{ceil_index, float, floor_index, narrow, round_byte};
use crate::picture::{Crop, FewColours};
use crate::plan::{Cell, Grid};

/// Minimum share of a piece for a pencil to count, 0 … 1: a strip of 4 mm along a tenth of one side.
const LEAST_PART: f32 = 0.003;

/// Piece of the picture, upright.
#[derive(Clone, Debug)]
pub(super) struct Piece {
    pub cell: Cell,
    /// Pencils that it needs, by index, each with its smoothed share of every place, 0 … 255, row by row.
    pub shares: Vec<(usize, Vec<u8>)>,
    /// Variance of its ink, see [`super::MUCH`].
    pub variety: f32,
    pub coarse: Coarse,
}

impl Piece {
    pub fn of(few: &FewColours, grid: &Grid, cell: Cell, inks: &[Ink], weights: &coarse::Weights) -> Self {
        let counted = count(few, grid, cell);
        let places = float(PLACES);
        let mut shares: Vec<(usize, Vec<u8>)> = Vec::new();
        for (pencil, plane) in counted.iter().enumerate() {
            if f64::from(plane.iter().sum::<f32>()) > f64::from(LEAST_PART) * places {
                let byte = |share: &f32| round_byte(f64::from(*share) * 255.0);
                shares.push((pencil, smoothed(plane).iter().map(byte).collect()));
            }
        }
        let mut piece = Self { cell, shares, variety: 0.0, coarse: Coarse::default() };
        piece.recolour(inks, weights);
        piece
    }

    /// Recomputes what depends on the pencils' colours.
    pub fn recolour(&mut self, inks: &[Ink], weights: &coarse::Weights) {
        let planes = self.in_colours(|pencil| inks[pencil]);
        self.variety = planes.iter().map(variance).sum();
        self.coarse = Coarse::of(&planes, weights);
    }

    /// Ink of the piece with each pencil in a colour: red, green, blue.
    pub fn in_colours(&self, ink: impl Fn(usize) -> Ink) -> [Plane; 3] {
        let mut planes = [[0.0; PLACES]; 3];
        for (pencil, shares) in &self.shares {
            let ink = ink(*pencil).map(|level| level / 255.0);
            for (plane, level) in planes.iter_mut().zip(ink) {
                for (value, share) in plane.iter_mut().zip(shares) {
                    *value += level * f32::from(*share);
                }
            }
        }
        planes
    }
}

fn variance(plane: &Plane) -> f32 {
    let count = narrow(float(PLACES));
    let mean = plane.iter().sum::<f32>() / count;
    plane.iter().map(|value| (value - mean) * (value - mean)).sum::<f32>() / count
}

/// Share of every place, 0 … 1, for each pencil. Pictures finer than a few pixels a place are counted at some
/// of their pixels.
fn count(few: &FewColours, grid: &Grid, cell: Cell) -> Vec<Plane> {
    /// Maximum number of pixels counted along a side of a place.
    const MOST: usize = 4;
    let crop = Crop::of(few.size(), grid);
    let (corner, step) = (crop.piece_top_left(cell), crop.piece.value() / float(SIDE));
    let (width, height) = few.size();
    let side = |pixels: u32| usize::try_from(pixels).unwrap_or(1).max(1);
    let (width, height) = (side(width), side(height));
    let samples = ceil_index(step).clamp(2, MOST);
    let part = narrow(1.0 / float(samples * samples));
    let mut counted = vec![[0.0; PLACES]; few.pencils.len()];
    let at = |start: f64, i: usize, all: usize| {
        floor_index(start + (float(i) + 0.5) * step / float(samples)).min(all - 1)
    };
    for j in 0..SIDE * samples {
        let row = at(corner.y, j, height) * width;
        for i in 0..SIDE * samples {
            let pencil = few.index().get(row + at(corner.x, i, width)).map_or(0, |own| usize::from(*own));
            if let Some(plane) = counted.get_mut(pencil) {
                plane[j / samples * SIDE + i / samples] += part;
            }
        }
    }
    counted
}
