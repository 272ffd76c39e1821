//! Pattern of a border in reserve: a ring of pieces around the picture, in the picture's own pencils.
//!
//! ```text
//!   ┌────┬────┬────┬────┐
//!   │  ◜ │ ▲  │ ▲  │ ◝  │     on the sides triangles that point outwards, in the corners quarter discs; the ground is the
//!   ├────┼────┴────┼────┤     lightest pencil. The pencils of the triangles change from the middle of each side to its ends,
//!   │ ◀  │ picture │  ▶ │     so that both halves mirror each other and a border that is only begun looks as it should
//!   └────┴─────────┴────┘
//! ```

use super::colour::oklab;
use super::few::FewColours;
use super::raster::Raster;
use crate::frame::{float, floor_index};
use crate::plan::Grid;

/// Radius of a corner's quarter disc, in sides of a piece.
const DISC: f64 = 0.7;

impl FewColours {
    /// The picture with the ring of a border around it.
    ///
    /// `grid` is the one of the picture alone, `piece_px` the number of pixels along a piece's side, so that the picture has
    /// `grid.columns * piece_px` pixels across.
    #[must_use]
    pub fn with_border(self, grid: &Grid, piece_px: usize) -> Self {
        let ring = Ring::of(&self, grid);
        let across = (grid.columns + 2) * piece_px;
        let (own_across, own_down) = (grid.columns * piece_px, grid.rows * piece_px);
        let pixel = |at: usize| {
            let (x, y) = (at % across, at / across);
            let inside = |at: usize, own: usize| at.checked_sub(piece_px).filter(|at| *at < own);
            match (inside(x, own_across), inside(y, own_down)) {
                (Some(x), Some(y)) => self.index()[y * own_across + x],
                _ => ring.pencil((float(x) + 0.5) / float(piece_px), (float(y) + 0.5) / float(piece_px)),
            }
        };
        let values = (0..across * (grid.rows + 2) * piece_px).map(pixel).collect();
        Self::from_numbers(self.pencils.clone(), Raster { width: across, values })
    }
}

/// The ring's pencils.
struct Ring {
    /// Number of columns and rows, the ring's own included.
    size: [usize; 2],
    ground: u8,
    /// Pencils of the triangles, from the middle of a side to its ends, over and over.
    others: Vec<u8>,
}

impl Ring {
    fn of(few: &FewColours, grid: &Grid) -> Self {
        let light = |number: &usize| oklab(few.pencils[*number].srgb)[0];
        let numbers = 0..few.pencils.len();
        let ground = numbers.clone().max_by(|a, b| light(a).total_cmp(&light(b))).unwrap_or(0);
        let byte = |number: usize| u8::try_from(number).unwrap_or(0);
        let others: Vec<u8> = numbers.filter(|number| *number != ground).map(byte).collect();
        Self { size: [grid.columns + 2, grid.rows + 2], ground: byte(ground), others }
    }

    /// The pencil at a place of the ring, in sides of a piece from the top left of the whole.
    fn pencil(&self, x: f64, y: f64) -> u8 {
        let [width, height] = self.size.map(float);
        // from the ring's inner edge outwards, across and down; 0 within
        let out = |at: f64, all: f64| (1.0 - at).max(at - (all - 1.0)).max(0.0);
        let (right, down) = (out(x, width), out(y, height));
        let (inked, from_middle) = match (right > 0.0, down > 0.0) {
            (true, true) => (right.hypot(down) <= DISC, 0),
            (true, false) => (is_in_triangle(y, right), from_middle(y, self.size[1])),
            (_, _) => (is_in_triangle(x, down), from_middle(x, self.size[0])),
        };
        let colour = self.others.get(from_middle % self.others.len().max(1));
        colour.copied().filter(|_| inked).unwrap_or(self.ground)
    }
}

/// Whether a place `out` sides away from the inner edge lies in the triangle that stands on a piece's side and points outwards.
fn is_in_triangle(along: f64, out: f64) -> bool {
    2.0 * (along.fract() - 0.5).abs() <= 1.0 - out
}

/// Number of pieces between a piece and the middle of its side.
fn from_middle(along: f64, all: usize) -> usize {
    let at = floor_index(along);
    (2 * at + 1).abs_diff(all) / 2
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plan::settings::Pencil;

    #[test]
    fn a_ring_mirrors_itself_and_leaves_the_picture_as_it_is() {
        let colours = [[20, 60, 120], [250, 250, 240], [200, 40, 30]];
        let pencil = |srgb: [u8; 3]| Pencil { name: format!("{srgb:?}"), srgb };
        let grid = Grid::usual(5, 4);
        let (piece_px, own) = (20, 100);
        let values: Vec<u8> = (0..own * 80).map(|at| u8::try_from(at % 3).unwrap()).collect();
        let raster = Raster { width: own, values: values.clone() };
        let few = FewColours::from_numbers(colours.map(pencil).into(), raster);
        let whole = few.with_border(&grid, piece_px);
        assert_eq!(whole.size(), (140, 120));
        let at = |x: usize, y: usize| whole.index()[y * 140 + x];
        for (place, value) in values.iter().enumerate() {
            assert_eq!(at(place % own + piece_px, place / own + piece_px), *value);
        }
        for (x, y) in (0..140).flat_map(|x| (0..20).map(move |y| (x, y))) {
            assert_eq!(at(x, y), at(139 - x, y), "left and right");
            assert_eq!(at(x, y), at(x, 119 - y), "top and bottom");
        }
        assert_eq!(
            (at(70, 18), at(70, 1), at(61, 1)),
            (0, 0, 1),
            "a triangle that points outwards on light ground"
        );
        assert_eq!((at(50, 18), at(90, 18)), (2, 2), "its neighbors have the next pencil");
        assert_eq!((at(18, 18), at(1, 1)), (0, 1), "a quarter disc in the corner");
    }
}
