//! What a camera can measure of the wall: scale factor, size, how straight its rows and columns hang, gaps and overlaps.

use crate::plan::Cell;

/// A measured number and how far off it may be: in 95 of 100 cases at most by `within`.
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct Quantity {
    /// The number.
    pub value: f64,
    /// Half the width of its interval of 95 %.
    pub within: f64,
}

/// How one row or column runs.
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct Run {
    /// Which, from the top or from the left, from 0.
    pub index: usize,
    /// How many squares it was measured from.
    pub squares: usize,
    /// How far it lies beside its place as a whole, in mm: down for a row, to the right for a column.
    pub drift: Quantity,
    /// How far its last square lies beside its first, in mm: a row sinks to the right, a column leans to the right on its
    /// way down, where this is positive.
    pub lean: Quantity,
}

/// The space between two neighbouring squares.
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct Between {
    /// The left or the upper one, and the other.
    pub cells: [Cell; 2],
    /// How wide it is at its narrowest (an overlap) or widest (a gap), in mm; never negative.
    pub mm: Quantity,
}

/// The wall as it really hangs.
#[derive(Clone, Debug, PartialEq)]
pub struct Measured {
    /// How many squares were measured.
    pub squares: usize,
    /// From the middle of one square to that of the next, in mm.
    pub pitch: Quantity,
    /// How many times as long as on the picture a length is on the wall: the pitch by the side of a tile.
    pub scale_factor: Quantity,
    /// From the left edge of the first column to the right edge of the last, in mm.
    pub width: Quantity,
    /// From the upper edge of the top row to the lower edge of the lowest, in mm.
    pub height: Quantity,
    /// Rows from the top; those with fewer than two squares are left out.
    pub rows: Vec<Run>,
    /// Columns from the left; those with fewer than two squares are left out.
    pub columns: Vec<Run>,
    /// The widest gap between neighbours, if there is one that is more than its uncertainty.
    pub widest_gap: Option<Between>,
    /// The largest overlap of neighbours, if there is one that is more than its uncertainty.
    pub largest_overlap: Option<Between>,
}
