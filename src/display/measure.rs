//! Measures of the wall by camera: scale factor, size, how straight its rows and columns hang, gaps and
//! overlaps.
//!
//! ```text
//!   module as printed, 0.6 mm ─┐
//!                              ├─▶ mm on this wall ─▶ pitch, scale factor, width, height
//!   module as it looks ────────┘
//!   middles of squares ─▶ rows and columns: drift, lean        corners of neighbours ─▶ gaps, overlaps
//! ```
//!
//! The yardstick is the printed module. A printer that shrinks everything shrinks the yardstick too: only the
//! ruler on the sheet shows that, not a photo. Without a plumb line in the photo *level* means as the wall
//! does on the whole.

use super::hung::{Hanging, Hung};
use crate::frame::{Point, SquareMm, Vector, WallMm, float, median};
use crate::plan::{Cell, Grid, Printed};

/// Measured number with its 95 % interval.
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct Quantity {
    /// Measured value.
    pub value: f64,
    /// Half the width of the 95 % interval, in the unit of the value.
    pub within: f64,
}

/// Alignment of one row or column.
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct Run {
    /// Index from the top or from the left, from 0.
    pub index: usize,
    /// Number of squares that it was measured from.
    pub squares: usize,
    /// Offset of the whole row or column from its place, in mm: down for a row, to the right for a column.
    pub drift: Quantity,
    /// Offset of its last square against its first, in mm: a row sinks to the right, a column leans to the
    /// right on its way down, where this is positive.
    pub lean: Quantity,
}

/// Space between two neighbouring squares.
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct Between {
    /// Cells of the left or upper square, and of the other.
    pub cells: [Cell; 2],
    /// Width at its narrowest (an overlap) or widest (a gap), in mm; never negative.
    pub mm: Quantity,
}

/// Measures of the wall as it hangs.
#[derive(Clone, Debug, PartialEq)]
pub struct Measured {
    /// Number of squares measured.
    pub squares: usize,
    /// Distance from the middle of one square to that of the next, in mm.
    pub pitch: Quantity,
    /// Ratio of a length on the wall to that on the picture: the pitch over the side of a piece.
    pub scale_factor: Quantity,
    /// Width of the wall from the left edge of the first column to the right edge of the last, in mm.
    pub width: Quantity,
    /// Height of the wall from the upper edge of the top row to the lower edge of the lowest, in mm.
    pub height: Quantity,
    /// Rows from the top; those with fewer than two squares are left out.
    pub rows: Vec<Run>,
    /// Columns from the left; those with fewer than two squares are left out.
    pub columns: Vec<Run>,
    /// Widest gap between neighbours, if there is one that is more than its uncertainty.
    pub widest_gap: Option<Between>,
    /// Largest overlap of neighbours, if there is one that is more than its uncertainty.
    pub largest_overlap: Option<Between>,
}

/// Minimum number of squares for any measure.
const LEAST_SQUARES: usize = 4;
/// Half width of a 95 % interval, in standard deviations.
const SIDES_OF_95: f64 = 1.96;
/// Ratio of a median's standard error to a mean's, for a normal distribution: the root of half pi.
const OF_MEDIAN: f64 = 1.253;
/// Half width of the 95 % interval of the codes' common error of size, as a share: blur and sharpening move
/// their edges.
///
/// 12 made photos at 1.3 to 1.4 px a module: 0.02 to 0.2 % (`tests/photos/straight.rs`).
const SCALE_WITHIN: f64 = 0.003;
/// Standard deviation of a square's middle, in mm: 0.5 on those photos.
const MIDDLE_MM: f64 = 0.5;
/// Standard deviation of a square's corners, in mm: 0.7 on those photos.
const CORNER_MM: f64 = 0.7;

impl Quantity {
    /// Median of some values with its interval; `each_within` is the interval of one. `None` of nothing.
    fn median_of(values: Vec<f64>, each_within: f64) -> Option<Self> {
        let count = float(values.len().max(1));
        median(values).map(|value| Self { value, within: OF_MEDIAN * each_within / count.sqrt() })
    }

    fn times(self, factor: f64) -> Self {
        Self { value: self.value * factor, within: self.within * factor.abs() }
    }

    /// Quantity whose interval has an independent relative error, `part`, added to it.
    fn within_part(self, part: f64) -> Self {
        Self { within: self.within.hypot(self.value * part), ..self }
    }

    /// Whether it is more than its own uncertainty.
    #[must_use]
    pub fn is_sure(&self) -> bool {
        self.value.abs() > self.within
    }
}

impl Measured {
    /// Measures how the squares hang; `None` of fewer than four.
    #[must_use]
    pub fn of(hanging: &Hanging, printed: &Printed) -> Option<Self> {
        let count = hanging.squares.len();
        if count < LEAST_SQUARES {
            return None;
        }
        let wall = Wall { hanging, grid: &printed.grid, scale: scale(hanging)? };
        let pitch = wall.in_paper_mm(Quantity { value: printed.grid.square_mm, within: 0.0 });
        let (columns, rows) = (wall.runs(Axis::Down), wall.runs(Axis::Across));
        let extent = |axis: Axis| wall.extent(axis, printed.grid.square_mm);
        let mut between = wall.between();
        between.sort_by(|a, b| a.0.total_cmp(&b.0));
        let within = SIDES_OF_95 * CORNER_MM * std::f64::consts::SQRT_2;
        let said = |mm: f64, cells: [Cell; 2]| Between { cells, mm: Quantity { value: mm, within } };
        Some(Self {
            squares: count,
            pitch,
            scale_factor: pitch.times(1.0 / printed.grid.piece_mm),
            width: extent(Axis::Across),
            height: extent(Axis::Down),
            rows,
            columns,
            largest_overlap: between
                .first()
                .map(|(mm, _, cells)| said(-mm, *cells))
                .filter(|b| b.mm.value > within),
            widest_gap: between
                .iter()
                .max_by(|a, b| a.1.total_cmp(&b.1))
                .map(|(_, mm, cells)| said(*mm, *cells))
                .filter(|b| b.mm.value > within),
        })
    }
}

/// Scale in wall millimetres for one of paper, with its interval.
fn scale(hanging: &Hanging) -> Option<Quantity> {
    let off: Vec<f64> = hanging.squares.iter().map(|hung| (hung.own_scale - hanging.scale).abs()).collect();
    let spread = 1.4826 * median(off)?; // of a normal distribution: Hampel 1974
    let own = hanging.squares.iter().map(|hung| hung.own_scale).collect();
    Quantity::median_of(own, SIDES_OF_95 * spread).map(|scale| scale.within_part(SCALE_WITHIN))
}

#[derive(Copy, Clone, PartialEq)]
enum Axis {
    /// Along a row.
    Across,
    /// Along a column.
    Down,
}

impl Axis {
    /// Components of a step along the axis, and across it.
    fn parts(self, step: Vector<WallMm>) -> (f64, f64) {
        match self {
            Self::Across => (step.x, step.y),
            Self::Down => (step.y, step.x),
        }
    }

    /// Position of a cell along the axis, and the index of the line it lies on.
    fn place(self, cell: Cell) -> (usize, usize) {
        match self {
            Self::Across => (cell.column, cell.row),
            Self::Down => (cell.row, cell.column),
        }
    }
}

struct Wall<'a> {
    hanging: &'a Hanging,
    grid: &'a Grid,
    scale: Quantity,
}

impl Wall<'_> {
    /// Length as a ruler on the paper measures it, from one in the camera's millimetres.
    fn in_paper_mm(&self, wall_mm: Quantity) -> Quantity {
        let part = self.scale.within / self.scale.value;
        wall_mm.times(1.0 / self.scale.value).within_part(part)
    }

    /// Offset of a square's middle from its cell's, on the wall.
    fn off(&self, hung: &Hung) -> Vector<WallMm> {
        let half = self.grid.square_mm / 2.0;
        hung.square_to_wall.apply(Point::new(half, half)) - self.grid.centre(hung.at)
    }

    /// Rows or columns, each from its squares.
    fn runs(&self, axis: Axis) -> Vec<Run> {
        let count = if axis == Axis::Across { self.grid.rows } else { self.grid.columns };
        (0..count).filter_map(|line| self.run(axis, line)).collect()
    }

    fn run(&self, axis: Axis, line: usize) -> Option<Run> {
        let mut squares: Vec<(usize, f64)> = Vec::new();
        for hung in &self.hanging.squares {
            let (place, own) = axis.place(hung.at);
            if own == line {
                squares.push((place, axis.parts(self.off(hung)).1 / self.scale.value));
            }
        }
        squares.sort_by_key(|(place, _)| *place);
        let apart = squares.last()?.0 - squares.first()?.0;
        let slope = slope(&squares)?;
        let each = SIDES_OF_95 * MIDDLE_MM;
        let drift = Quantity::median_of(squares.iter().map(|(_, off)| *off).collect(), each)?;
        // of a line through n even places: its ends' difference is off by √(12 / n) of what each place is
        let within = OF_MEDIAN * each * (12.0 / float(squares.len())).sqrt();
        Some(Run {
            index: line,
            squares: squares.len(),
            drift,
            lean: Quantity { value: slope * float(apart), within },
        })
    }

    /// Extent from the outer edge of the first line to that of the last, in mm.
    fn extent(&self, axis: Axis, side_mm: f64) -> Quantity {
        let across = if axis == Axis::Across { Axis::Down } else { Axis::Across };
        let count = if axis == Axis::Across { self.grid.columns } else { self.grid.rows };
        let runs = self.runs(across);
        let drift = |line: usize| runs.iter().find(|run| run.index == line).map(|run| run.drift);
        let ends = [drift(0), drift(count - 1)];
        let pitches = self.in_paper_mm(Quantity { value: float(count - 1) * side_mm, within: 0.0 });
        let [first, last] =
            ends.map(|end| end.unwrap_or(Quantity { value: 0.0, within: SIDES_OF_95 * side_mm * 0.02 }));
        Quantity {
            value: pitches.value + last.value - first.value + side_mm,
            within: pitches.within.hypot(first.within).hypot(last.within),
        }
    }

    /// Narrowest and widest space between each two neighbours, in mm; negative where they overlap.
    fn between(&self) -> Vec<(f64, f64, [Cell; 2])> {
        let mut all = Vec::new();
        for one in &self.hanging.squares {
            let Cell { row, column } = one.at;
            let right = Cell { row, column: column + 1 };
            let below = Cell { row: row + 1, column };
            for (axis, next) in [(Axis::Across, right), (Axis::Down, below)] {
                let Some(other) = self.hanging.in_cell(next) else { continue };
                let (a, b) = (self.corners(one), self.corners(other));
                // corners clockwise from the top left as seen: the facing edges are 1, 2 and 0, 3, or 3, 2 and 0, 1
                let ends = if axis == Axis::Across { [(1, 0), (2, 3)] } else { [(3, 0), (2, 1)] };
                let [first, last] = ends.map(|(i, j)| axis.parts(b[j] - a[i]).0 / self.scale.value);
                all.push((first.min(last), first.max(last), [one.at, other.at]));
            }
        }
        all
    }

    /// Corners of a square on the wall, clockwise from the one that hangs at the top left.
    fn corners(&self, hung: &Hung) -> [Point<WallMm>; 4] {
        let side = self.grid.square_mm;
        let own = [(0.0, 0.0), (side, 0.0), (side, side), (0.0, side)];
        let mut corners = own.map(|(x, y)| hung.square_to_wall.apply(Point::<SquareMm>::new(x, y)));
        corners.rotate_right(usize::try_from(hung.turn.quarters()).unwrap_or(0) % 4);
        corners
    }
}

/// Theil–Sen slope: the median of the slopes between any two places (Theil 1950, Sen 1968); `None` of fewer
/// than two.
fn slope(squares: &[(usize, f64)]) -> Option<f64> {
    let pairs = squares
        .iter()
        .enumerate()
        .flat_map(|(i, one)| squares[i + 1..].iter().map(move |other| (one, other)));
    let slopes = pairs.filter(|(one, other)| other.0 > one.0);
    median(slopes.map(|(one, other)| (other.1 - one.1) / float(other.0 - one.0)).collect())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::frame::Map;
    use crate::plan::{Settings, Tag, Turn};

    fn printed() -> Printed {
        let grid = Grid::usual(6, 5);
        Settings::new("Made wall".to_owned(), Tag::from_number(5), grid).printed().unwrap()
    }

    /// A wall whose squares lie `off` beside their places and are all turned; the camera takes a module for `scale` of one.
    fn wall(turn: Turn, scale: f64, off: impl Fn(Cell) -> (f64, f64)) -> Hanging {
        let grid = printed().grid;
        let squares = grid.cells().map(|at| {
            let (right, down) = off(at);
            let [corner, ..] = grid.corners(at);
            let middle = Point::new(63.5, 63.5);
            let inset = 63.5 * (1.0 - scale);
            let place = Map::scale_then_shift(scale, corner.x + right + inset, corner.y + down + inset);
            let square_to_wall = Map::quarter_turns(turn.quarters(), middle).then(&place);
            Hung {
                at,
                home: at,
                turn,
                photo: 0,
                square_to_wall,
                askew: 0.0,
                own_scale: scale,
                px_per_module: 2.0,
            }
        });
        Hanging { squares: squares.collect(), scale }
    }

    fn near(quantity: Quantity, wanted: f64, within: f64) {
        assert!((quantity.value - wanted).abs() < within, "{} for {wanted}", quantity.value);
    }

    #[test]
    fn a_wall_as_planned_measures_what_was_planned() {
        for turn in Turn::ALL {
            let measured = Measured::of(&wall(turn, 1.0, |_| (0.0, 0.0)), &printed()).unwrap();
            near(measured.scale_factor, 5.0, 1e-9);
            near(measured.width, 762.0, 1e-9);
            near(measured.height, 635.0, 1e-9);
            assert_eq!((measured.widest_gap, measured.largest_overlap), (None, None));
            assert!(measured.rows.iter().chain(&measured.columns).all(|run| run.lean.value.abs() < 1e-9));
        }
    }

    #[test]
    fn gaps_everywhere_make_the_codes_look_small_and_the_wall_large() {
        // 130 mm from one to the next; the camera calls that 127
        let measured = Measured::of(&wall(Turn::None, 127.0 / 130.0, |_| (0.0, 0.0)), &printed()).unwrap();
        near(measured.pitch, 130.0, 1e-9);
        near(measured.width, 5.0 * 130.0 + 127.0, 1e-9);
        near(measured.widest_gap.unwrap().mm, 3.0, 1e-9);
    }

    #[test]
    fn a_row_that_sinks_and_a_column_that_leans_are_found() {
        let off = |cell: Cell| {
            let sinks = if cell.row == 2 { 3.0 * float(cell.column) } else { 0.0 };
            let leans = if cell.column == 4 { 2.0 * float(cell.row) } else { 0.0 };
            (leans, sinks)
        };
        for turn in Turn::ALL {
            let measured = Measured::of(&wall(turn, 1.0, off), &printed()).unwrap();
            near(measured.rows[2].lean, 15.0, 1e-9);
            near(measured.columns[4].lean, 8.0, 1e-9);
            near(measured.rows[1].lean, 0.0, 1e-9);
            let gap = measured.widest_gap.unwrap();
            near(gap.mm, 15.0, 1e-9);
            assert_eq!(gap.cells, [Cell { row: 1, column: 5 }, Cell { row: 2, column: 5 }]);
            assert_eq!(measured.largest_overlap.unwrap().cells[0], Cell { row: 2, column: 5 });
        }
    }

    #[test]
    fn three_squares_say_nothing() {
        let mut few = wall(Turn::None, 1.0, |_| (0.0, 0.0));
        few.squares.truncate(3);
        assert_eq!(Measured::of(&few, &printed()), None);
    }
}
