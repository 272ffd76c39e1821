//! Block-wise mapping of a picture's pixels into a photo.
//!
//! ```text
//!   ┌───────┬───────┬───────┐   corners of blocks of 16 × 16 pixels: through lens and homography
//!   │ · · · │ · · · │ · · · │   pixels between them: interpolated bilinearly
//!   └───────┴───────┴───────┘
//! ```
//!
//! Off by 0.1 pixel where one side of a wall is four times as near as the other (tested), for a tenth of the
//! work.

use crate::frame::{PhotoPx, Point, float};

/// Number of pixels along a block's side.
pub(super) const BLOCK: usize = 16;

/// Row of blocks: the places in the photo of its upper and lower corners.
pub(super) struct Blocks {
    upper: Vec<Point<PhotoPx>>,
    lower: Vec<Point<PhotoPx>>,
    width: usize,
}

impl Blocks {
    /// Row of blocks whose upper edge is at `top`, of a picture `width` pixels wide; `exact` maps a place in
    /// the picture into the photo.
    pub(super) fn new(width: usize, top: usize, exact: impl Fn(f64, f64) -> Point<PhotoPx>) -> Self {
        let edge = |y: usize| -> Vec<_> {
            (0..=width.div_ceil(BLOCK)).map(|i| exact(float(i * BLOCK), float(y))).collect()
        };
        Self { upper: edge(top), lower: edge(top + BLOCK), width }
    }

    /// Calls `draw` with each pixel's column and its place in the photo, for the row of pixels `down` below
    /// the blocks' upper edge.
    pub(super) fn row(&self, down: usize, mut draw: impl FnMut(usize, Point<PhotoPx>)) {
        let part = (float(down) + 0.5) / float(BLOCK);
        let edge: Vec<_> =
            self.upper.iter().zip(&self.lower).map(|(upper, lower)| upper.towards(*lower, part)).collect();
        for (first, ends) in (0..self.width).step_by(BLOCK).zip(edge.windows(2)) {
            let step = (ends[1] - ends[0]) / float(BLOCK);
            for i in 0..BLOCK.min(self.width - first) {
                draw(first + i, ends[0] + step * (float(i) + 0.5));
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::frame::{DisplayPx, Map, StraightPx};
    use crate::read::lens::Lens;

    #[test]
    fn pixels_between_the_corners_lie_where_they_belong() {
        // a wall of 4000 × 3000 pixels that is four times as near at its left as at its right, through a bent lens
        let corner = |x: f64, y: f64| Point::<DisplayPx>::new(x, y);
        let to = |x: f64, y: f64| Point::<StraightPx>::new(x, y);
        let map = Map::from_four(
            [corner(0.0, 0.0), corner(4000.0, 0.0), corner(4000.0, 3000.0), corner(0.0, 3000.0)],
            [to(200.0, 100.0), to(3800.0, 1140.0), to(3800.0, 1860.0), to(200.0, 2900.0)],
        )
        .unwrap();
        let lens = Lens { k1: -0.12, k2: 0.03, ..Lens::straight(4032.0, 3024.0) };
        let exact = |x: f64, y: f64| lens.straight_to_photo(map.apply(corner(x, y)));
        let mut worst: f64 = 0.0;
        for top in [0, 1600, 2992] {
            let blocks = Blocks::new(4000, top, exact);
            for down in [0, 7, 15] {
                blocks.row(down, |x, place| {
                    let wanted = exact(float(x) + 0.5, float(top + down) + 0.5);
                    worst = worst.max(place.distance(wanted).value());
                });
            }
        }
        assert!(worst < 0.15, "off by {worst} px");
    }
}
