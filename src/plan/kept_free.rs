//! Spots of the wall where nothing may hang: a switch, an outlet, an alarm or a sign is there.

use super::cell::{Cell, Grid};
use crate::words::Words;

/// Maximum number of spots that are kept free: where more of a wall cannot be used, the picture hangs better in parts.
pub const MOST_KEPT_FREE: usize = 24;

/// Spots of a wall that are kept free.
#[derive(Copy, Clone, Debug, Default, PartialEq, Eq)]
pub struct KeptFree {
    /// Columns and rows from the top left, in the order of the cells; `None` behind the last.
    cells: [Option<(u16, u16)>; MOST_KEPT_FREE],
}

impl KeptFree {
    /// None at all.
    pub const NONE: Self = Self { cells: [None; MOST_KEPT_FREE] };

    /// These cells, each once; `None` where they are more than [`MOST_KEPT_FREE`].
    ///
    /// ```
    /// use everysquare::plan::{Cell, KeptFree};
    /// let switch = Cell { row: 3, column: 5 };
    /// let free = KeptFree::of(&[switch, switch]).unwrap();
    /// assert!(free.holds(switch) && free.count() == 1);
    /// assert!(!free.holds(Cell { row: 5, column: 3 }));
    /// ```
    #[must_use]
    pub fn of(cells: &[Cell]) -> Option<Self> {
        let mut sorted = cells.to_vec();
        sorted.sort_unstable();
        sorted.dedup();
        if sorted.len() > MOST_KEPT_FREE {
            return None;
        }
        let mut free = Self::NONE;
        for (place, cell) in free.cells.iter_mut().zip(sorted) {
            *place = Some((u16::try_from(cell.column).ok()?, u16::try_from(cell.row).ok()?));
        }
        Some(free)
    }

    /// The cells, in their order.
    pub fn cells(&self) -> impl Iterator<Item = Cell> + use<> {
        let at = |(column, row): (u16, u16)| Cell { row: row.into(), column: column.into() };
        self.cells.into_iter().flatten().map(at)
    }

    /// Number of them.
    #[must_use]
    pub fn count(&self) -> usize {
        self.cells.iter().flatten().count()
    }

    /// Whether a cell is one of them.
    #[must_use]
    pub fn holds(&self, cell: Cell) -> bool {
        self.cells().any(|own| own == cell)
    }

    /// A sentence about those of a wall, with `count` and `spots`; `None` where there are none.
    #[must_use]
    pub fn told(&self, grid: &Grid, id: &str, words: &Words) -> Option<String> {
        let labels: Vec<String> = self.cells().map(|cell| grid.label(cell)).collect();
        let told = [("count", labels.len().into()), ("spots", labels.join(", ").into())];
        (!labels.is_empty()).then(|| words.say(id, &told))
    }

    /// The same spots of a wall that has one column and one row more on each side.
    #[must_use]
    pub(super) fn outwards(&self) -> Self {
        let moved = |(column, row): (u16, u16)| (column.saturating_add(1), row.saturating_add(1));
        Self { cells: self.cells.map(|cell| cell.map(moved)) }
    }

    /// Those that a wall of so many columns and rows has, which is what lies within the outermost column and row on each side.
    #[must_use]
    pub(super) fn inwards(&self, columns: usize, rows: usize) -> Self {
        let within = self.cells().filter_map(|cell| {
            let (row, column) = (cell.row.checked_sub(1)?, cell.column.checked_sub(1)?);
            (row < rows && column < columns).then_some(Cell { row, column })
        });
        Self::of(&within.collect::<Vec<_>>()).unwrap_or(Self::NONE)
    }
}
