//! Outlines that cross the edges between columns of pieces: where a wall is cut, somebody has to continue them on another board.

use super::few::FewColours;
use super::pieces::Crop;
use crate::frame::{float, floor_index};
use crate::plan::{Cell, Grid};

/// Least length of a run of one colour along a cut, as a share of a piece's side: shorter ones are no area of their own.
const RUN: f64 = 0.02;

/// Number of outlines that cross the edge between column `i` and the next, from left to right.
#[must_use]
pub fn between_columns(picture: &FewColours, grid: &Grid) -> Vec<usize> {
    let crop = Crop::of(picture.size(), grid);
    let (width, height) = picture.size();
    let [width, height] = [width, height].map(|px| usize::try_from(px).unwrap_or(0));
    let least = floor_index(crop.piece.value() * RUN).max(1);
    let top = floor_index(crop.top_left.y);
    let bottom = floor_index(crop.top_left.y + float(grid.rows) * crop.piece.value()).min(height);
    (1..grid.columns)
        .map(|column| {
            let at = crop.piece_top_left(Cell { row: 0, column }).x;
            let x = floor_index(at).min(width.saturating_sub(1));
            let along = (top..bottom).filter_map(|y| picture.index().get(y * width + x));
            changes(along.copied(), least)
        })
        .collect()
}

/// How often a row of colours changes, runs shorter than `least` left out.
fn changes(colours: impl Iterator<Item = u8>, least: usize) -> usize {
    let (mut kept, mut run, mut changes) = (None, (0_u8, 0_usize), 0);
    for colour in colours {
        run = if run.1 > 0 && run.0 == colour { (colour, run.1 + 1) } else { (colour, 1) };
        if run.1 >= least && kept != Some(colour) {
            changes += usize::from(kept.is_some());
            kept = Some(colour);
        }
    }
    changes
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::picture::Picture;
    use crate::plan::settings::Pencil;

    #[test]
    fn stripes_cross_where_they_lie() {
        // two bars in the left half, none in the right
        let bars = |x: u32, y: u32| x < 100 && (30..60).contains(&(y % 80));
        let colour = |x, y| if bars(x, y) { [0; 3] } else { [255; 3] };
        let pixels = image::RgbImage::from_fn(200, 160, |x, y| image::Rgb(colour(x, y)));
        let pencil = |srgb: [u8; 3]| Pencil { name: String::new(), srgb };
        let few = FewColours::of(&Picture { pixels }, &[pencil([0; 3]), pencil([255; 3])]);
        assert_eq!(between_columns(&few, &Grid::usual(5, 4)), [4, 4, 0, 0]);
    }

    #[test]
    fn short_runs_are_no_outlines() {
        assert_eq!(changes([1, 1, 1, 2, 1, 1, 3, 3, 3].into_iter(), 2), 1);
        assert_eq!(changes([].into_iter(), 2), 0);
    }
}
