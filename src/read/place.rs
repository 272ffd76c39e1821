//! Geometry of a square on the wall: where its code comes to lie when it hangs in a cell, turned or not, and the way back from a code to
//! the paper around it.

use super::pose::{HALF, Pose};
use super::reading::Camera;
use crate::frame::{Map, Module, PhotoPx, Point, SquareMm, WallMm, median};
use crate::plan::{Card, Cell, Printed, Turn};

/// Place in the lattice of cells, which goes on beyond the wall: row and column from the top left cell, of
/// either sign.
#[derive(Copy, Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Site {
    /// Row, downwards.
    pub row: i64,
    /// Column, to the right.
    pub column: i64,
}

impl Site {
    /// Place `right` columns and `down` rows on.
    #[must_use]
    pub fn step(self, right: i64, down: i64) -> Self {
        Self { row: self.row + down, column: self.column + right }
    }
}

/// The place of a cell of the wall.
#[must_use]
pub fn site_of(cell: Cell) -> Site {
    let whole = |n: usize| i64::try_from(n).unwrap_or(i64::MAX);
    Site { row: whole(cell.row), column: whole(cell.column) }
}

/// What a square is like, as far as finding its code goes.
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct Layout {
    /// Side of a square, in mm.
    pub side: f64,
    /// Side of a module, in mm.
    pub module: f64,
    /// The code's outer top left corner on an upright square.
    pub code: Point<SquareMm>,
}

impl Layout {
    /// Layout of an event's squares.
    #[must_use]
    pub fn of(printed: &Printed) -> Self {
        Self { side: printed.grid.square_mm, module: printed.module_mm, code: printed.code_top_left }
    }

    /// Map from the code's modules to the upright square.
    #[must_use]
    pub fn module_to_square(&self) -> Map<Module, SquareMm> {
        Map::scale_then_shift(self.module, self.code.x, self.code.y)
    }

    /// Outer corners of a code, clockwise in its own sense from its top left.
    #[must_use]
    pub fn module_corners() -> [Point<Module>; 4] {
        [(0.0, 0.0), (2.0, 0.0), (2.0, 2.0), (0.0, 2.0)].map(|(x, y)| Point::new(x * HALF, y * HALF))
    }

    /// Map to the wall from a square that hangs exactly in its place, turned.
    #[must_use]
    pub fn square_to_wall(&self, site: Site, turn: Turn) -> Map<SquareMm, WallMm> {
        let middle = Point::new(self.side / 2.0, self.side / 2.0);
        let place = Map::scale_then_shift(1.0, whole(site.column) * self.side, whole(site.row) * self.side);
        Map::quarter_turns(turn.quarters(), middle).then(&place)
    }

    /// Outer corners of the code of a square that hangs exactly in its place, clockwise in the code's own
    /// sense from its top left.
    #[must_use]
    pub fn code_corners(&self, site: Site, turn: Turn) -> [Point<WallMm>; 4] {
        let to_wall = self.module_to_square().then(&self.square_to_wall(site, turn));
        Self::module_corners().map(|m| to_wall.apply(m))
    }

    /// Corners of the paper whose code has this pose, clockwise in the square's own sense from its top left.
    #[must_use]
    pub fn paper_corners(&self, pose: &Pose) -> [Point<PhotoPx>; 4] {
        let s = self.side;
        [(0.0, 0.0), (s, 0.0), (s, s), (0.0, s)].map(|(x, y)| {
            let m = Point::new((x - self.code.x) / self.module, (y - self.code.y) / self.module);
            pose.module_to_photo(m)
        })
    }

    /// Middle of the paper whose code has this pose.
    #[must_use]
    pub fn paper_middle(&self, pose: &Pose) -> Point<PhotoPx> {
        let [a, _, c, _] = self.paper_corners(pose);
        a.towards(c, 0.5)
    }
}

/// Outer corners of a card's code, clockwise from its top left.
#[must_use]
pub fn card_corners(card: &Card) -> [Point<WallMm>; 4] {
    let half = HALF * card.module_mm;
    let to_wall =
        Map::<Module, WallMm>::scale_then_shift(card.module_mm, card.centre.x - half, card.centre.y - half);
    Layout::module_corners().map(|m| to_wall.apply(m))
}

/// Pose that a camera gives a code with these outer corners; `None` where the camera does not see them.
#[must_use]
pub fn pose_of(camera: &Camera, corners: [Point<WallMm>; 4]) -> Option<Pose> {
    let pose = Pose::of_corners(corners.map(|p| camera.wall_to_photo(p)));
    let sound = pose.centre.is_finite() && pose.px_per_module().is_finite() && pose.px_per_module() > 0.05;
    sound.then_some(pose)
}

/// A count of cells, of either sign, as a real number.
#[allow(clippy::cast_precision_loss, reason = "counts of cells stay far below 2^53")]
#[must_use]
pub fn whole(count: i64) -> f64 {
    count as f64
}

/// Cell of a place; `None` beyond the first row and column.
pub(super) fn cell_at(site: Site) -> Option<Cell> {
    Some(Cell { row: usize::try_from(site.row).ok()?, column: usize::try_from(site.column).ok()? })
}

/// Median of how many pixels modules take; 0 of none.
pub(super) fn median_px(sizes: impl Iterator<Item = f64>) -> f64 {
    median(sizes.collect()).unwrap_or(0.0)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::frame::Vector;
    use proptest::prelude::*;

    const LAYOUT: Layout = Layout { side: 127.0, module: 0.6, code: Point::new(106.4, 106.4) };

    #[test]
    fn an_upside_down_square_has_its_code_top_left() {
        let [top_left, ..] = LAYOUT.code_corners(Site { row: 1, column: 2 }, Turn::Half);
        assert!(top_left.distance(Point::new(254.0 + 20.6, 127.0 + 20.6)).value() < 1e-9);
    }

    #[test]
    fn a_quarter_turn_clockwise_takes_the_code_to_the_bottom_left() {
        let corners = LAYOUT.code_corners(Site { row: 0, column: 0 }, Turn::Quarter);
        assert!(corners.iter().all(|c| c.x < 63.5 && c.y > 63.5));
    }

    proptest! {
        #[test]
        fn the_paper_is_found_from_its_code(row in -3_i64..9, column in -3_i64..9, quarters in 0_u32..4) {
            let site = Site { row, column };
            let turn = Turn::from_quarters(quarters);
            let corners = LAYOUT.code_corners(site, turn).map(|p| Point::new(p.x + 400.0, p.y + 400.0));
            let [a, b, c, d] = corners;
            let pose = Pose { centre: a.towards(c, 0.5), u: (b - a) / 21.0, v: (d - a) / 21.0 };
            let middle = LAYOUT.paper_middle(&pose);
            let want = Point::new(400.0, 400.0)
                + Vector::new((whole(column) + 0.5) * 127.0, (whole(row) + 0.5) * 127.0);
            prop_assert!(middle.distance(want).value() < 1e-9);
        }
    }
}
