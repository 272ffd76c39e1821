//! Where the cells of a wall in parts hang in the room: each part on a board of its own, beside each other, as high as it is said to hang.
//!
//! ```text
//!   ┌─┬─┬─┐            ┌─┬─┐
//!   ├─┼─┼─┤   gap by   ├─┼─┤        origin: top left of the rectangle around all boards;
//!   └─┴─┴─┘   chance   ├─┼─┤        a wall in one piece is one board, and nothing is moved
//!                      └─┴─┘
//! ```

use rand::RngExt;

use super::chance::{Purpose, stream};
use super::fold::Fold;
use super::options::BoardOptions;
use crate::frame::float;
use crate::plan::crowd::part_hang_mm;
use crate::plan::rehang::parts_of;
use crate::plan::settings::WallPart;
use crate::plan::{Card, Cell, Grid, Printed};

/// All boards of a wall.
#[derive(Clone, Debug)]
pub(super) struct Boards {
    grid: Grid,
    boards: Vec<Board>,
    size: [f64; 2],
    fold: Fold,
}

/// One of them.
#[derive(Clone, Debug)]
struct Board {
    part: WallPart,
    /// How far its cells hang from where they would in a wall in one piece, in mm.
    moved: [f64; 2],
    /// Left, top, right, bottom of its cells, in mm.
    area: [f64; 4],
}

impl Boards {
    /// Those of what was printed.
    pub fn of(printed: &Printed, options: BoardOptions, seed: u64) -> Self {
        let grid = printed.grid;
        let parts = parts_of(&printed.parts, &grid, 0.0);
        let mut rng = stream(seed, Purpose::Boards);
        let hang = |part: &WallPart| part_hang_mm(part, &grid, None);
        let top = |part: &WallPart| hang(part) + part.size(&grid).y;
        let highest = parts.iter().map(top).fold(f64::NEG_INFINITY, f64::max);
        let (mut left, mut lowest) = (0.0, 0.0_f64);
        let [least, most] = options.gap_mm;
        let mut folds = Vec::new();
        let mut boards: Vec<Board> = Vec::new();
        for part in parts {
            if !boards.is_empty() {
                let gap = if least < most { rng.random_range(least..most) } else { least };
                folds.push(left + gap / 2.0);
                left += gap;
            }
            let (size, from_top) = (part.size(&grid), highest - top(&part));
            let [corner, ..] = grid.corners(part.first);
            boards.push(Board {
                part,
                moved: [left - corner.x, from_top - corner.y],
                area: [left, from_top, left + size.x, from_top + size.y],
            });
            left += size.x;
            lowest = lowest.max(from_top + size.y);
        }
        let most = options.angle_degrees.to_radians();
        let fold = match most > 0.0 && !folds.is_empty() {
            true => {
                let angles: Vec<f64> = boards.iter().map(|_| rng.random_range(-most..=most)).collect();
                Fold::of(&folds, &angles, left / 2.0)
            }
            false => Fold::default(),
        };
        Self { grid, boards, size: [left, lowest], fold }
    }

    /// How they stand in the room.
    pub fn fold(&self) -> &Fold {
        &self.fold
    }

    /// Width and height of the rectangle around the cells of all boards, in mm.
    pub fn size(&self) -> [f64; 2] {
        self.size
    }

    fn moved(&self, cell: Cell) -> [f64; 2] {
        self.boards.iter().find(|board| board.part.holds(cell)).map_or([0.0; 2], |board| board.moved)
    }

    /// Corners of a cell, in mm, clockwise from its top left one.
    pub fn corners(&self, cell: Cell) -> [[f64; 2]; 4] {
        let [dx, dy] = self.moved(cell);
        self.grid.corners(cell).map(|corner| [corner.x + dx, corner.y + dy])
    }

    /// Middle of a cell, in mm.
    pub fn centre(&self, cell: Cell) -> [f64; 2] {
        let ([dx, dy], centre) = (self.moved(cell), self.grid.centre(cell));
        [centre.x + dx, centre.y + dy]
    }

    /// Where the middle of a card's code belongs, in mm: it hangs on the board of the nearest cell.
    pub fn card(&self, card: &Card) -> [f64; 2] {
        let [dx, dy] = self.moved(self.grid.nearest(card.centre));
        [card.centre.x + dx, card.centre.y + dy]
    }

    /// How far a place lies outside of the nearest board's cells, in mm, below 0 within them; and the place on that board, in mm from its
    /// top left cell's corner.
    pub fn nearest(&self, x: f64, y: f64) -> (f64, [f64; 2]) {
        let beside = |board: &Board| {
            let [left, top, right, bottom] = board.area;
            let outside = (left - x).max(x - right).max(top - y).max(y - bottom);
            (outside, [x - left, y - top])
        };
        let all = self.boards.iter().map(beside);
        all.min_by(|(one, _), (other, _)| one.total_cmp(other)).unwrap_or((f64::INFINITY, [x, y]))
    }

    /// Places to look at where something is estimated for all of the wall: its corners and its middle, in mm; where boards stand at
    /// angles, each one's corners too.
    pub fn sounded(&self) -> Vec<[f64; 2]> {
        let [wide, high] = self.size;
        let of_all = [(0.0, 0.0), (1.0, 0.0), (1.0, 1.0), (0.0, 1.0), (0.5, 0.5)];
        let mut places: Vec<[f64; 2]> = of_all.map(|(x, y)| [x * wide, y * high]).into();
        if !self.fold.is_flat() {
            let own = self.boards.iter().map(|board| board.area);
            places.extend(own.flat_map(|[left, top, right, bottom]| {
                [[left, top], [right, top], [right, bottom], [left, bottom]]
            }));
        }
        places
    }

    /// Places along the rectangle around all boards, in mm.
    pub fn outline(&self) -> impl Iterator<Item = [f64; 2]> + use<> {
        let [wide, high] = self.size;
        (0..=16).flat_map(move |i| {
            let t = float(i) / 16.0;
            [(t, 0.0), (t, 1.0), (0.0, t), (1.0, t)].map(|(x, y)| [x * wide, y * high])
        })
    }
}
