//! A closer crop: the part of the picture in which fewer pieces have nothing to draw, or too much.
//!
//! ```text
//!   ┌───────────────┐      every candidate has the picture's shape and the same grid; it is looked at through the
//!   │   ┌───────┐   │      pieces that it would have, and may leave out little of what is drawn
//!   │   │ · · · │   │
//!   │   │ · · · │   │      fewest plain and hard pieces ─▶ of about as few, the largest area
//!   │   └───────┘   │
//!   └───────────────┘
//! ```

use rayon::prelude::*;

use super::complexity::Shapes;
use super::facts::{PictureFacts, Window};
use super::few::FewColours;
use super::{Area, area};
use crate::frame::{float, floor_index};
use crate::plan::settings::LevelSettings;
use crate::plan::{Cell, Grid, Level};

/// Share of the pieces that are plain or hard from which a closer crop is looked for. Common practice, no source.
const MANY: f64 = 0.4;
/// Share of those that may be left in a crop that is worth a word.
const FEWER: f64 = 0.75;
/// Share of all pieces by which candidates count as equal: of these, the largest area.
const ABOUT: f64 = 0.03;
/// Share of the length of the picture's edges that has to stay: they are what is drawn. Chosen by looking.
const KEPT: f64 = 0.7;
/// Widths and heights of candidates, in parts of the picture's, and the places of their corners each way.
const PARTS: [f64; 5] = [0.9, 0.8, 0.7, 0.6, 0.5];
const STEPS: usize = 5;
/// Number of pixels along a piece's side by which candidates are looked at: scores are right to some 8 % then, and there are 125 of them.
const PIECE_PX: usize = 32;

/// Number of pieces that are plain or hard.
#[must_use]
pub fn unsuited(facts: &PictureFacts) -> usize {
    facts.count(Level::Plain) + facts.count(Level::Hard)
}

/// The area of a picture (its own, without a border) in which clearly fewer pieces of the same grid are plain or hard. `None` where few
/// are, or where none helps.
#[must_use]
pub fn closer(few: &FewColours, grid: &Grid, facts: &PictureFacts, levels: &LevelSettings) -> Option<Area> {
    let (own, pieces) = (unsuited(facts), float(grid.count()));
    if float(own) < MANY * pieces {
        return None;
    }
    let candidates: Vec<Area> = PARTS.into_iter().flat_map(|part| area::of_shape(part, STEPS)).collect();
    let looked: Vec<(usize, f64, Area)> = candidates
        .into_par_iter()
        .map(|area| (unsuited_in(few, area, grid, levels), kept(facts, grid, area), area))
        .filter(|(_, kept, _)| *kept >= KEPT)
        .collect();
    let least = looked.iter().map(|(unsuited, ..)| *unsuited).min()?;
    if float(least) > FEWER * float(own) {
        return None;
    }
    let enough = least + floor_index(ABOUT * pieces);
    let width = |area: &Area| area.of_size(1.0, 1.0)[2];
    let good = looked.into_iter().filter(|(unsuited, ..)| *unsuited <= enough);
    let best = good.max_by(|(_, a_kept, a), (_, b_kept, b)| {
        width(a).total_cmp(&width(b)).then(a_kept.total_cmp(b_kept))
    });
    best.map(|(_, _, area)| area)
}

/// Number of plain and hard pieces of a candidate.
fn unsuited_in(few: &FewColours, area: Area, grid: &Grid, levels: &LevelSettings) -> usize {
    let (width, height) = few.size();
    let [left, top, across, _] = area.of_size(f64::from(width), f64::from(height));
    let side = across / float(grid.columns);
    let score = |cell: Cell| {
        let (x, y) = (left + float(cell.column) * side, top + float(cell.row) * side);
        let sampled = Window { few, x, y, side }.sampled(PIECE_PX);
        Shapes::of(&sampled, PIECE_PX, PIECE_PX).score()
    };
    let scores: Vec<f64> = grid.cells().map(score).collect();
    levels.levels_of(&scores).into_iter().filter(|level| matches!(level, Level::Plain | Level::Hard)).count()
}

/// Share of the picture's edges that a candidate keeps, 0 … 1: of a piece that it cuts, the part that it shows.
fn kept(facts: &PictureFacts, grid: &Grid, area: Area) -> f64 {
    let (columns, rows) = (float(grid.columns), float(grid.rows));
    let [left, top, width, height] = area.of_size(columns, rows);
    let shown = |at: usize, from: f64, length: f64| {
        let at = float(at);
        ((at + 1.0).min(from + length) - at.max(from)).max(0.0)
    };
    let (mut kept, mut all) = (0.0, 0.0);
    for piece in facts.own() {
        all += piece.edge;
        kept += piece.edge * shown(piece.cell.column, left, width) * shown(piece.cell.row, top, height);
    }
    if all > 0.0 { kept / all } else { 1.0 }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::picture::Picture;
    use crate::plan::settings::Pencil;
    use image::{Rgb, RgbImage};

    const PENCILS: [[u8; 3]; 3] = [[250, 250, 245], [40, 60, 140], [220, 70, 60]];

    fn looked_at(pixels: RgbImage, grid: &Grid) -> (FewColours, PictureFacts) {
        let pencils = PENCILS.map(|srgb| Pencil { name: format!("{srgb:?}"), srgb });
        let few = FewColours::of(&Picture { pixels }, &pencils);
        let facts = PictureFacts::of(&few, grid, &LevelSettings::default());
        (few, facts)
    }

    /// Rings in the middle of much sky.
    fn rings(around: f64) -> RgbImage {
        RgbImage::from_fn(960, 720, |x, y| {
            let r = (f64::from(x) - 480.0).hypot(f64::from(y) - 360.0) / around;
            Rgb(if r > 1.0 { PENCILS[0] } else { PENCILS[1 + (floor_index(r * 5.0) % 2)] })
        })
    }

    #[test]
    fn a_motif_in_much_sky_is_cropped_around_itself() {
        let grid = Grid::usual(8, 6);
        let (few, facts) = looked_at(rings(170.0), &grid);
        let area = closer(&few, &grid, &facts, &LevelSettings::default()).unwrap();
        let [left, top, width, height] = area.percent();
        assert_eq!(left * 2 + width, 100, "about the middle: {left} {top} {width} {height}");
        assert_eq!(top * 2 + height, 100);
        assert!(unsuited_in(&few, area, &grid, &LevelSettings::default()) * 4 <= unsuited(&facts) * 3);
        assert!(kept(&facts, &grid, area) > KEPT);
    }

    #[test]
    fn a_picture_that_is_full_stays_as_it_is() {
        let grid = Grid::usual(8, 6);
        let (few, facts) = looked_at(rings(620.0), &grid);
        assert_eq!(closer(&few, &grid, &facts, &LevelSettings::default()), None);
    }

    #[test]
    fn all_is_kept_by_all() {
        let grid = Grid::usual(8, 6);
        let (_, facts) = looked_at(rings(300.0), &grid);
        assert!((kept(&facts, &grid, Area::WHOLE) - 1.0).abs() < 1e-9);
    }
}
