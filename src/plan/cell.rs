//! Cells of the wall, their labels, and quarter turns.

use std::ops::RangeInclusive;

use super::kept_free::KeptFree;
use crate::frame::{Point, Vector, WallMm};

/// Columns and rows that a wall may have: `ZZ` is the last column with two letters.
pub const ACROSS: RangeInclusive<usize> = 1..=702;
/// Squares that a wall may have in all: some 12 × 4 m of wall at 127 mm, 1,500 sheets of letter paper. Seeking compares
/// every cell with every code, so ten times as many would take a hundred times as long.
pub const MOST_CELLS: usize = 3_000;
/// Side of a piece where nothing is said: one inch.
pub const DEFAULT_PIECE_MM: f64 = 25.4;
/// Side of a square where nothing is said: five inches.
pub const DEFAULT_SQUARE_MM: f64 = 127.0;

/// End of the wall where row 1 is.
#[derive(Copy, Clone, Debug, PartialEq, Eq, Default)]
pub enum RowsFrom {
    /// Row 1 is the lowest, as on a map or a graph.
    #[default]
    Bottom,
    /// Row 1 is the highest, as in a table.
    Top,
}

/// Cell of the wall, whatever its label says: column 0, row 0 is the top left as seen on the wall.
#[derive(Copy, Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Cell {
    /// Row from the top, from 0.
    pub row: usize,
    /// Column from the left, from 0.
    pub column: usize,
}

/// Turn of a square clockwise from upright, as seen on the wall.
#[derive(Copy, Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub enum Turn {
    /// Upright.
    #[default]
    None,
    /// A quarter turn clockwise, 90°.
    Quarter,
    /// Upside down, 180°.
    Half,
    /// Three quarters clockwise, 270°.
    ThreeQuarters,
}

impl Turn {
    /// All four, from upright on, clockwise.
    pub const ALL: [Self; 4] = [Self::None, Self::Quarter, Self::Half, Self::ThreeQuarters];

    /// The turn of `quarters` quarter turns clockwise.
    #[must_use]
    pub fn from_quarters(quarters: u32) -> Self {
        match quarters % 4 {
            0 => Self::None,
            1 => Self::Quarter,
            2 => Self::Half,
            _ => Self::ThreeQuarters,
        }
    }

    /// Quarter turns clockwise, 0 … 3.
    #[must_use]
    pub fn quarters(self) -> u32 {
        match self {
            Self::None => 0,
            Self::Quarter => 1,
            Self::Half => 2,
            Self::ThreeQuarters => 3,
        }
    }

    /// Degrees clockwise: 0, 90, 180 or 270.
    #[must_use]
    pub fn degrees(self) -> u32 {
        self.quarters() * 90
    }
}

/// Grid of the wall: its division into square cells.
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct Grid {
    /// Number of columns, at least 1.
    pub columns: usize,
    /// Number of rows, at least 1.
    pub rows: usize,
    /// Side of a cell, which is the side of a square of paper, in mm.
    pub square_mm: f64,
    /// Side of a piece of the picture as printed for a visitor, in mm.
    pub piece_mm: f64,
    /// End of the wall where row 1 is.
    pub rows_from: RowsFrom,
    /// Whether the outermost cells are a border in reserve: squares that are handed out last and hang only where more visitors come than
    /// the picture has pieces for.
    pub border: bool,
    /// Cells where nothing hangs.
    pub kept_free: KeptFree,
}

impl Grid {
    /// Grid with squares and pieces of the usual sizes, five inches and one, and row 1 below.
    #[must_use]
    pub const fn usual(columns: usize, rows: usize) -> Self {
        Self {
            columns,
            rows,
            square_mm: DEFAULT_SQUARE_MM,
            piece_mm: DEFAULT_PIECE_MM,
            rows_from: RowsFrom::Bottom,
            border: false,
            kept_free: KeptFree::NONE,
        }
    }

    /// All cells, row by row from the top, each row from the left.
    pub fn cells(&self) -> impl Iterator<Item = Cell> + use<> {
        let columns = self.columns;
        (0..self.rows).flat_map(move |row| (0..columns).map(move |column| Cell { row, column }))
    }

    /// Number of cells.
    #[must_use]
    pub fn count(&self) -> usize {
        self.columns * self.rows
    }

    /// Whether a cell is one of a border in reserve.
    #[must_use]
    pub fn in_border(&self, cell: Cell) -> bool {
        let is_outermost = |at: usize, all: usize| at == 0 || at + 1 == all;
        self.border && (is_outermost(cell.row, self.rows) || is_outermost(cell.column, self.columns))
    }

    /// Whether a cell is kept free.
    #[must_use]
    pub fn is_kept_free(&self, cell: Cell) -> bool {
        self.kept_free.holds(cell)
    }

    /// Whether the picture asks for a square in a cell: it is not kept free, and none of a border in reserve.
    #[must_use]
    pub fn asks_for(&self, cell: Cell) -> bool {
        !self.in_border(cell) && !self.is_kept_free(cell)
    }

    /// Number of squares that the picture asks for.
    #[must_use]
    pub fn asked(&self) -> usize {
        let within = self.within_border();
        within.count() - within.kept_free.count()
    }

    /// Number of cells of the border in reserve that are not kept free.
    #[must_use]
    pub fn border_count(&self) -> usize {
        self.hanging() - self.asked()
    }

    /// Number of cells that are not kept free.
    #[must_use]
    pub fn hanging(&self) -> usize {
        self.count() - self.kept_free.count()
    }

    /// Grid of what lies within the border in reserve; all of it where there is none.
    #[must_use]
    pub fn within_border(&self) -> Self {
        match self.border {
            true => {
                let (columns, rows) = (self.columns.saturating_sub(2), self.rows.saturating_sub(2));
                Self {
                    columns,
                    rows,
                    border: false,
                    kept_free: self.kept_free.inwards(columns, rows),
                    ..*self
                }
            }
            false => *self,
        }
    }

    /// Grid with a border in reserve around it.
    ///
    /// ```
    /// use everysquare::plan::Grid;
    /// let grid = Grid::usual(12, 9);
    /// let with = grid.with_border();
    /// assert_eq!((with.columns, with.rows, with.border_count()), (14, 11, 46));
    /// assert_eq!(with.within_border(), grid);
    /// ```
    #[must_use]
    pub fn with_border(&self) -> Self {
        Self {
            columns: self.columns + 2,
            rows: self.rows + 2,
            border: true,
            kept_free: self.kept_free.outwards(),
            ..*self
        }
    }

    /// Index of `cell` in the order of [`Grid::cells`].
    #[must_use]
    pub fn index(&self, cell: Cell) -> usize {
        cell.row * self.columns + cell.column
    }

    /// The cell with an index in the order of [`Grid::cells`].
    #[must_use]
    pub fn at(&self, index: usize) -> Cell {
        Cell { row: index / self.columns, column: index % self.columns }
    }

    /// The cell farthest from `A1`, from which people count.
    #[must_use]
    pub fn last(&self) -> Cell {
        let row = if self.row_number(0) > 1 { 0 } else { self.rows.saturating_sub(1) };
        Cell { row, column: self.columns.saturating_sub(1) }
    }

    /// Whether the wall has such a cell.
    #[must_use]
    pub fn holds(&self, cell: Cell) -> bool {
        cell.row < self.rows && cell.column < self.columns
    }

    /// Number that people give to a row: 1 at the end that `rows_from` names.
    #[must_use]
    pub fn row_number(&self, row: usize) -> usize {
        match self.rows_from {
            RowsFrom::Bottom => self.rows - row,
            RowsFrom::Top => row + 1,
        }
    }

    /// Label of a cell, such as `D7`.
    #[must_use]
    pub fn label(&self, cell: Cell) -> String {
        format!("{}{}", column_letters(cell.column), self.row_number(cell.row))
    }

    /// Cell with a label, capital letters or small; `None` where the wall has none of that name.
    #[must_use]
    pub fn cell(&self, label: &str) -> Option<Cell> {
        let split = label.find(|c: char| c.is_ascii_digit())?;
        let (letters, digits) = label.split_at(split);
        let column = column_number(letters)?;
        if digits.starts_with('0') || !digits.bytes().all(|b| b.is_ascii_digit()) {
            return None;
        }
        let number: usize = digits.parse().ok()?;
        let row = match self.rows_from {
            RowsFrom::Bottom => self.rows.checked_sub(number)?,
            RowsFrom::Top => number - 1,
        };
        let cell = Cell { row, column };
        self.holds(cell).then_some(cell)
    }

    /// Size of the wall in mm, from the first cell's top left corner to the last one's bottom right corner.
    #[must_use]
    pub fn size(&self) -> Vector<WallMm> {
        use crate::frame::float;
        Vector::new(float(self.columns) * self.square_mm, float(self.rows) * self.square_mm)
    }

    /// Corners of a cell, clockwise from its top left.
    #[must_use]
    pub fn corners(&self, cell: Cell) -> [Point<WallMm>; 4] {
        use crate::frame::float;
        let s = self.square_mm;
        let (x, y) = (float(cell.column) * s, float(cell.row) * s);
        [Point::new(x, y), Point::new(x + s, y), Point::new(x + s, y + s), Point::new(x, y + s)]
    }

    /// The cell at a place on the wall, or the nearest to it.
    #[must_use]
    pub fn nearest(&self, place: Point<WallMm>) -> Cell {
        use crate::frame::floor_index;
        let of = |mm: f64, all: usize| floor_index(mm / self.square_mm).min(all.saturating_sub(1));
        Cell { row: of(place.y, self.rows), column: of(place.x, self.columns) }
    }

    /// Middle of a cell.
    #[must_use]
    pub fn centre(&self, cell: Cell) -> Point<WallMm> {
        let [top_left, _, bottom_right, _] = self.corners(cell);
        top_left.towards(bottom_right, 0.5)
    }
}

/// Letters of a column counted from 0: A … Z, AA, AB …
#[must_use]
pub fn column_letters(column: usize) -> String {
    let mut letters = Vec::new();
    let mut rest = column + 1;
    while rest > 0 {
        rest -= 1;
        letters.push(char::from(b"ABCDEFGHIJKLMNOPQRSTUVWXYZ"[rest % 26]));
        rest /= 26;
    }
    letters.iter().rev().collect()
}

/// Column, counted from 0, that has these letters; `None` where they are not one to three letters.
#[must_use]
pub fn column_number(letters: &str) -> Option<usize> {
    if letters.is_empty() || letters.len() > 3 {
        return None;
    }
    let mut number = 0;
    for byte in letters.bytes() {
        let upper = byte.to_ascii_uppercase();
        if !upper.is_ascii_uppercase() {
            return None;
        }
        number = number * 26 + usize::from(upper - b'A') + 1;
    }
    Some(number - 1)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn grid(columns: usize, rows: usize, rows_from: RowsFrom) -> Grid {
        Grid { rows_from, ..Grid::usual(columns, rows) }
    }

    #[test]
    fn rows_count_from_the_end_that_is_asked_for() {
        let top_left = Cell { row: 0, column: 0 };
        assert_eq!(grid(10, 8, RowsFrom::Bottom).label(top_left), "A8");
        assert_eq!(grid(10, 8, RowsFrom::Top).label(top_left), "A1");
    }

    #[test]
    fn letters_go_on_after_z() {
        let said: Vec<String> = [0, 25, 26, 51, 52, 701, 702].map(column_letters).into();
        assert_eq!(said, ["A", "Z", "AA", "AZ", "BA", "ZZ", "AAA"]);
    }

    #[test]
    fn labels_of_no_cell_are_refused() {
        let g = grid(10, 8, RowsFrom::Bottom);
        for label in ["", "A", "7", "A0", "A9", "K1", "A01", "A-1", "Ä1", "A1B", "A99999999999999999999"] {
            assert_eq!(g.cell(label), None, "{label:?}");
        }
        assert_eq!(g.cell("d7"), Some(Cell { row: 1, column: 3 }));
    }

    #[test]
    fn the_picture_asks_for_squares_where_no_cell_is_kept_free() {
        let [switch, corner] = [Cell { row: 1, column: 2 }, Cell { row: 0, column: 0 }];
        let plain = Grid { kept_free: KeptFree::of(&[switch]).unwrap(), ..Grid::usual(5, 4) };
        assert_eq!((plain.hanging(), plain.asked(), plain.border_count()), (19, 19, 0));
        let with = plain.with_border();
        assert_eq!((with.hanging(), with.asked(), with.border_count()), (41, 19, 22));
        assert!(with.is_kept_free(Cell { row: 2, column: 3 }) && with.within_border() == plain);
        // one in the border is none of the picture's
        let free: Vec<Cell> = with.kept_free.cells().chain([corner]).collect();
        let with = Grid { kept_free: KeptFree::of(&free).unwrap(), ..with };
        assert_eq!((with.hanging(), with.asked(), with.border_count()), (40, 19, 21));
        assert_eq!(with.within_border(), plain);
        assert!(with.asks_for(Cell { row: 1, column: 1 }) && !with.asks_for(corner));
    }

    proptest! {
        #[test]
        fn a_label_leads_back_to_its_cell(columns in 1_usize..60, rows in 1_usize..60, top: bool, at in 0_usize..3600) {
            let g = grid(columns, rows, if top { RowsFrom::Top } else { RowsFrom::Bottom });
            let cell = Cell { row: at / 60 % rows, column: at % 60 % columns };
            prop_assert_eq!(g.cell(&g.label(cell)), Some(cell));
        }

        #[test]
        fn a_column_leads_back_to_its_number(column in 0_usize..18_000) {
            prop_assert_eq!(column_number(&column_letters(column)), Some(column));
        }
    }
}
