//! What an evening with this picture would be like, so that several pictures can be compared before one is chosen: what there is to draw,
//! the narrowest shape, and how soon visitors can tell what it will be.
//!
//! Nothing is ranked: which picture is the best is for people to say.

use image::{GrayImage, Luma, Rgb, RgbImage};
use imageproc::distance_transform::euclidean_squared_distance_transform;
use rayon::prelude::*;

use super::complexity::Shapes;
use super::facts::{MOST_SHAPE_PX, PictureFacts, Window, seen_from_afar};
use super::few::FewColours;
use super::order::PIECE_PX;
use super::pieces::Crop;
use super::structure::ssim;
use crate::frame::{float, round_index};
use crate::plan::{Cell, Grid, Level};

/// Width of two strokes of a child's colour pencil, in mm on the square: a shape that is narrower cannot be filled in with an edge on both
/// sides. From memory, no source: a blunt pencil draws some 2 mm.
pub const TWO_STROKES_MM: f64 = 4.0;
/// Shares of the squares at which the wall is shown.
pub const SHOWN_AT: [f64; 3] = [0.25, 0.5, 0.75];
/// Number of moments at which the wall is compared with the whole picture.
const MOMENTS: usize = 20;
/// What a wall shows where nothing hangs yet.
const BARE: Rgb<u8> = Rgb([228; 3]);

/// What an evening with a picture would be like.
#[derive(Clone, Debug, PartialEq)]
pub struct Prospect {
    /// Number of pieces of each level, in the order of [`Level::ALL`].
    pub levels: [usize; 4],
    /// Number of pencils that are needed; the white of the paper needs none.
    pub pencils: usize,
    /// Width of the narrowest shape that somebody redraws, in mm on the square.
    pub narrowest_mm: f64,
    /// Number of pieces with a shape narrower than [`TWO_STROKES_MM`] on the square.
    pub narrow: usize,
    /// Number of squares, hung in the order in which pieces are handed out, from which on the wall is at least half as like the picture as
    /// when it is whole.
    pub half_known: usize,
    /// The wall when [`SHOWN_AT`] of the squares hang, some pixels a square.
    pub hung: [RgbImage; 3],
}

impl Prospect {
    /// Looks at a picture without a border.
    #[must_use]
    pub fn of(few: &FewColours, grid: &Grid, facts: &PictureFacts) -> Self {
        let crop = Crop::of(few.size(), grid);
        let whole = seen_from_afar(few, &crop, grid);
        let hung = |share: f64| after(&whole, grid, facts, round_index(share * float(facts.order.len())));
        let cells: Vec<Cell> = grid.cells().collect();
        let narrowest: Vec<f64> =
            cells.par_iter().map(|cell| narrowest(few, &crop, *cell) * grid.square_mm).collect();
        Self {
            levels: Level::ALL.map(|level| facts.count(level)),
            pencils: few.needed().count(),
            narrowest_mm: narrowest.iter().copied().fold(grid.square_mm, f64::min),
            narrow: narrowest.iter().filter(|width| **width < TWO_STROKES_MM).count(),
            half_known: half_known(&whole, grid, facts),
            hung: SHOWN_AT.map(hung),
        }
    }
}

/// The wall when so many squares hang.
fn after(whole: &RgbImage, grid: &Grid, facts: &PictureFacts, count: usize) -> RgbImage {
    let mut hangs = vec![false; grid.count()];
    facts.order.iter().take(count).for_each(|piece| hangs[*piece] = true);
    let mut wall = whole.clone();
    for (x, y, pixel) in wall.enumerate_pixels_mut() {
        let [column, row] = [x, y].map(|at| usize::try_from(at).unwrap_or(0) / PIECE_PX);
        if !hangs[row * grid.columns + column] {
            *pixel = BARE;
        }
    }
    wall
}

/// See [`Prospect::half_known`]: the mean structural similarity of the wall to the picture, from what a bare wall has to 1.
fn half_known(whole: &RgbImage, grid: &Grid, facts: &PictureFacts) -> usize {
    let count = facts.order.len();
    let like = |hung: usize| ssim(whole, &after(whole, grid, facts, hung)).map_or(1.0, |alike| alike.mean);
    let bare = like(0);
    let moments = (1..=MOMENTS).map(|moment| (count * moment).div_ceil(MOMENTS));
    moments.into_iter().find(|hung| like(*hung) - bare >= (1.0 - bare) / 2.0).unwrap_or(count)
}

/// Width of the narrowest region of a piece that somebody redraws, in sides of the piece: the diameter of the largest disc in it. 1 where
/// there is one region only.
fn narrowest(few: &FewColours, crop: &Crop, cell: Cell) -> f64 {
    let (from, side) = (crop.piece_top_left(cell), crop.piece.value());
    let count = round_index(side).clamp(1, MOST_SHAPE_PX);
    let sampled = Window { few, x: from.x, y: from.y, side }.sampled(count);
    let (shapes, ids) = Shapes::with_ids(&sampled, count, count);
    if shapes.counted().len() < 2 {
        return 1.0;
    }
    let widths = widths(&ids, count, shapes.regions.len());
    let counted = shapes.regions.iter().zip(widths).filter(|(region, _)| shapes.is_wide(region));
    counted.map(|(_, width)| width / float(count)).fold(1.0, f64::min)
}

/// Diameter of the largest disc in each region of a square raster of regions' numbers, in pixels; the raster's border is an edge.
fn widths(ids: &[usize], side: usize, regions: usize) -> Vec<f64> {
    let px = u32::try_from(side).unwrap_or(0);
    let edge = |x: u32, y: u32| {
        let (x, y) = (usize::try_from(x).unwrap_or(0), usize::try_from(y).unwrap_or(0));
        let own = ids[y * side + x];
        let border = x == 0 || y == 0 || x + 1 == side || y + 1 == side;
        let other = |x: usize, y: usize| ids[y * side + x] != own;
        border || other(x - 1, y) || other(x + 1, y) || other(x, y - 1) || other(x, y + 1)
    };
    let edges = GrayImage::from_fn(px, px, |x, y| Luma([if edge(x, y) { 255 } else { 0 }]));
    // from a pixel's centre to that of the nearest pixel at an edge; half a pixel more on either side is the region's, and where its middle
    // lies between two pixels, another half on one of them: the mean of both
    let squared = euclidean_squared_distance_transform(&edges);
    let mut widths = vec![0.0_f64; regions];
    for (id, Luma([squared])) in ids.iter().zip(squared.pixels()) {
        widths[*id] = widths[*id].max(2.0 * squared.sqrt() + 1.5);
    }
    widths
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::picture::Picture;
    use crate::plan::settings::{LevelSettings, Pencil};

    fn stripes(width_px: u32) -> (FewColours, Grid, PictureFacts) {
        let grid = Grid::usual(6, 4);
        let pixels = RgbImage::from_fn(6 * 120, 4 * 120, |x, _| {
            Rgb(if (x / width_px).is_multiple_of(2) { [250; 3] } else { [30, 60, 150] })
        });
        let pencils = [[250; 3], [30, 60, 150]].map(|srgb| Pencil { name: format!("{srgb:?}"), srgb });
        let few = FewColours::of(&Picture { pixels }, &pencils);
        let facts = PictureFacts::of(&few, &grid, &LevelSettings::default());
        (few, grid, facts)
    }

    #[test]
    fn stripes_are_as_narrow_as_they_were_drawn() {
        for width in [6, 10, 20, 40] {
            let (few, grid, facts) = stripes(width);
            let prospect = Prospect::of(&few, &grid, &facts);
            let drawn = f64::from(width) / 120.0 * grid.square_mm;
            let pixel = grid.square_mm / 120.0;
            assert!((prospect.narrowest_mm - drawn).abs() <= pixel, "{width}: {}", prospect.narrowest_mm);
            assert_eq!(prospect.narrow > 0, prospect.narrowest_mm < TWO_STROKES_MM);
            assert_eq!(prospect.pencils, 1, "paper needs none");
        }
    }

    #[test]
    fn discs_and_squares_are_as_wide_as_they_are() {
        let side = 96;
        let disc = |x: usize, y: usize| (float(x) - 47.5).hypot(float(y) - 47.5) <= 20.0;
        let ids: Vec<usize> = (0..side * side).map(|i| usize::from(disc(i % side, i / side))).collect();
        assert!((widths(&ids, side, 2)[1] - 40.0).abs() <= 2.0, "{:?}", widths(&ids, side, 2));
        let square = |x: usize, y: usize| (30..50).contains(&x) && (30..50).contains(&y);
        let ids: Vec<usize> = (0..side * side).map(|i| usize::from(square(i % side, i / side))).collect();
        assert!((widths(&ids, side, 2)[1] - 20.0).abs() <= 1.0, "{:?}", widths(&ids, side, 2));
    }

    #[test]
    fn the_wall_fills_in_the_order_of_handing_out() {
        let (few, grid, facts) = stripes(40);
        let Prospect { hung, half_known, levels, .. } = Prospect::of(&few, &grid, &facts);
        let bare = |wall: &RgbImage| wall.pixels().filter(|pixel| **pixel == BARE).count();
        let all = 24 * PIECE_PX * PIECE_PX;
        assert_eq!(hung.each_ref().map(bare), [all * 3 / 4, all / 2, all / 4]);
        assert!((1..=24).contains(&half_known));
        assert_eq!(levels.iter().sum::<usize>(), 24);
    }
}
