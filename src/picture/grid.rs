//! A grid from the picture's shape.
//!
//! ```
//! use everysquare::picture::grid::{Reason, Wish, propose};
//! let proposal = propose((1200, 900), 127.0, Wish::default()).unwrap();
//! assert_eq!((proposal.columns, proposal.rows, proposal.reason), (12, 9, Reason::FitsBest));
//! assert_eq!(proposal.lost, 0.0);
//! ```

use std::ops::RangeInclusive;

use thiserror::Error;

use crate::words::{Sentence, Tell, told_in_english};

use super::pieces::Crop;
use crate::frame::float;
use crate::plan::crowd::{self, Range, WEIGHT_OF_COUNT, grids_of};
use crate::plan::settings::{ACROSS, MOST_CELLS};
use crate::plan::{Grid, KeptFree, RowsFrom};

/// Squares where nothing is known of the visitors: for some 75 to 150 of them who draw one each. Common practice, no source.
const USUAL_CELLS: RangeInclusive<usize> = 60..=120;
/// What is aimed at between them.
const AIM: f64 = 80.0;
/// How high a wall may be that is hung from a step stool, in mm. Common practice, no source.
const COMFORTABLE_HEIGHT_MM: f64 = 2_100.0;
/// How much worse a grid is that has *e* times as many squares as somebody asked for, or as few; see [`WEIGHT_OF_COUNT`].
const WEIGHT_OF_WISHED_COUNT: f64 = 2.0;
/// How much worse a grid is for every metre above [`COMFORTABLE_HEIGHT_MM`].
const WEIGHT_OF_HEIGHT: f64 = 1.0;

/// What is wished for.
#[derive(Copy, Clone, Debug, PartialEq, Eq, Default)]
pub struct Wish {
    /// So many columns.
    pub columns: Option<usize>,
    /// So many rows.
    pub rows: Option<usize>,
    /// About so many squares; counts only where neither columns nor rows are given.
    pub cells: Option<usize>,
    /// From so many squares to so many suit the visitors; counts only where nothing else is given.
    pub suits: Option<Range>,
}

/// A grid and why it was chosen.
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct Proposal {
    /// Squares side by side.
    pub columns: usize,
    /// Squares one above the other.
    pub rows: usize,
    /// Why these.
    pub reason: Reason,
    /// The part of the picture that no piece shows, 0 … 1.
    pub lost: f64,
    /// Where it is cut away.
    pub cut: Cut,
    /// The wall's width in mm.
    pub width_mm: f64,
    /// The wall's height in mm.
    pub height_mm: f64,
}

/// Why a grid was chosen.
#[derive(Copy, Clone, Debug, PartialEq, Eq)]
pub enum Reason {
    /// Columns and rows were given.
    Given,
    /// Columns were given, the rows follow from the picture's shape.
    RowsFollow,
    /// Rows were given, the columns follow from the picture's shape.
    ColumnsFollow,
    /// The grid near the wished number of squares that loses least of the picture.
    NearCount,
    /// An evening's number of squares, and little of the picture lost.
    FitsBest,
    /// As many squares as suit the visitors, and little of the picture lost.
    SuitsCrowd,
}

/// Where a grid cuts something away.
#[derive(Copy, Clone, Debug, PartialEq, Eq)]
pub enum Cut {
    /// Nowhere.
    Nothing,
    /// At the left and right.
    Sides,
    /// At the top and bottom.
    TopAndBottom,
}

/// A wish that no wall fulfils.
#[derive(Clone, Debug, Error, PartialEq, Eq)]
pub enum GridError {
    /// Too few or too many of something.
    Range {
        /// What was wished for: the sentence that says how many were and may be.
        what: &'static str,
        /// How many were wished for.
        read: usize,
        /// At least.
        least: usize,
        /// At most.
        most: usize,
    },
    /// Columns times rows.
    Cells {
        /// Columns wished for.
        columns: usize,
        /// Rows wished for or found.
        rows: usize,
    },
}

told_in_english!(GridError);

impl Tell for GridError {
    fn sentence(&self) -> Sentence {
        match self {
            Self::Range { what, read, least, most } => Sentence::new(what)
                .with("read", read.to_string())
                .with("least", least.to_string())
                .with("most", most.to_string()),
            Self::Cells { columns, rows } => Sentence::new("error-grid-cells")
                .with("columns", columns.to_string())
                .with("rows", rows.to_string())
                .with("squares", (columns * rows).to_string())
                .with("most", MOST_CELLS.to_string()),
        }
    }
}

/// Chooses a grid for a picture of `size` pixels and squares of `square_mm`.
///
/// # Errors
/// [`GridError`] where the wish is beyond what a wall may have.
pub fn propose(size: (u32, u32), square_mm: f64, wish: Wish) -> Result<Proposal, GridError> {
    let within = |read: Option<usize>, what, least, most| match read {
        Some(read) if !(least..=most).contains(&read) => Err(GridError::Range { read, what, least, most }),
        _ => Ok(()),
    };
    within(wish.columns, "error-grid-columns", *ACROSS.start(), *ACROSS.end())?;
    within(wish.rows, "error-grid-rows", *ACROSS.start(), *ACROSS.end())?;
    within(wish.cells, "error-grid-squares", 1, MOST_CELLS)?;
    let look = |(columns, rows), reason| Proposal::new(size, square_mm, columns, rows, reason);
    match wish {
        Wish { columns: Some(columns), rows: Some(rows), .. } if columns * rows > MOST_CELLS => {
            Err(GridError::Cells { columns, rows })
        }
        Wish { columns: Some(columns), rows: Some(rows), .. } => Ok(look((columns, rows), Reason::Given)),
        Wish { columns: Some(columns), .. } => {
            let grids = (1..=(MOST_CELLS / columns).min(*ACROSS.end()))
                .map(|rows| look((columns, rows), Reason::RowsFollow));
            Ok(best(grids, |proposal| proposal.lost))
        }
        Wish { rows: Some(rows), .. } => {
            let grids = (1..=(MOST_CELLS / rows).min(*ACROSS.end()))
                .map(|columns| look((columns, rows), Reason::ColumnsFollow));
            Ok(best(grids, |proposal| proposal.lost))
        }
        Wish { cells: Some(cells), .. } => {
            let grids = grids_of(1..=MOST_CELLS).map(|grid| look(grid, Reason::NearCount));
            Ok(best(grids, |proposal| badness(proposal, float(cells), WEIGHT_OF_WISHED_COUNT)))
        }
        Wish { suits: Some(Range { least, most }), .. } => {
            let (least, most) = (least.clamp(1, MOST_CELLS), most.clamp(1, MOST_CELLS));
            let aim = (float(least) * float(most)).sqrt();
            let grids = grids_of(least.min(most)..=most).map(|grid| look(grid, Reason::SuitsCrowd));
            Ok(best(grids, |proposal| badness(proposal, aim, WEIGHT_OF_COUNT)))
        }
        Wish { .. } => {
            let grids = grids_of(USUAL_CELLS).map(|grid| look(grid, Reason::FitsBest));
            Ok(best(grids, |proposal| badness(proposal, AIM, WEIGHT_OF_COUNT)))
        }
    }
}

impl Proposal {
    fn new(size: (u32, u32), square_mm: f64, columns: usize, rows: usize, reason: Reason) -> Self {
        let grid = Grid {
            columns,
            rows,
            square_mm,
            piece_mm: square_mm,
            rows_from: RowsFrom::Bottom,
            border: false,
            kept_free: KeptFree::NONE,
        };
        let crop = Crop::of(size, &grid);
        let (width, height) = (f64::from(size.0), f64::from(size.1));
        let cut = match crop.lost {
            lost if lost < NOTICED => Cut::Nothing,
            _ if width / crop.size.x > height / crop.size.y => Cut::Sides,
            _ => Cut::TopAndBottom,
        };
        let wall = grid.size();
        Self { columns, rows, reason, lost: crop.lost, cut, width_mm: wall.x, height_mm: wall.y }
    }

    /// How many squares.
    #[must_use]
    pub fn cells(&self) -> usize {
        self.columns * self.rows
    }
}

/// A part of the picture that is too small to speak of.
const NOTICED: f64 = 1e-6;

/// How far a grid is from what is wished for; 0 is perfect.
fn badness(proposal: &Proposal, aim: f64, weight_of_count: f64) -> f64 {
    let above = (proposal.height_mm - COMFORTABLE_HEIGHT_MM).max(0.0) / 1_000.0;
    crowd::badness(proposal.lost, proposal.cells(), aim, weight_of_count) + WEIGHT_OF_HEIGHT * above
}

/// The first of the least bad; one by one where there is none.
fn best(proposals: impl Iterator<Item = Proposal>, badness: impl Fn(&Proposal) -> f64) -> Proposal {
    let first_of_least = proposals.min_by(|a, b| badness(a).total_cmp(&badness(b)));
    first_of_least.unwrap_or_else(|| Proposal::new((1, 1), 1.0, 1, 1, Reason::Given))
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn shape(width: u32, height: u32) -> (usize, usize) {
        let chosen = propose((width, height), 127.0, Wish::default()).unwrap();
        (chosen.columns, chosen.rows)
    }

    #[test]
    fn common_shapes_of_pictures_get_walls_that_lose_little() {
        assert_eq!(shape(1000, 800), (10, 8));
        assert_eq!(shape(4032, 3024), (12, 9));
        assert_eq!(shape(3000, 2000), (12, 8));
        assert_eq!(shape(1000, 1000), (9, 9));
        assert_eq!(shape(800, 1000), (8, 10));
    }

    proptest! {
        #[test]
        fn a_proposal_keeps_the_picture_and_fits_an_evening(width in 1_u32..5000, height in 1_u32..5000) {
            let chosen = propose((width, height), 127.0, Wish::default()).unwrap();
            prop_assert!(USUAL_CELLS.contains(&chosen.cells()));
            let shape = f64::from(width) / f64::from(height);
            if (0.5..=2.0).contains(&shape) {
                prop_assert!(chosen.lost < 0.06, "{chosen:?}");
            }
            prop_assert_eq!(chosen.cut == Cut::Nothing, chosen.lost < NOTICED);
        }

        #[test]
        fn what_is_given_is_kept(columns in 1_usize..60, rows in 1_usize..50, width in 1_u32..5000, height in 1_u32..5000) {
            let size = (width, height);
            let (some_columns, some_rows) = (Some(columns), Some(rows));
            let both = propose(size, 127.0, Wish { columns: some_columns, rows: some_rows, cells: None, suits: None }).unwrap();
            prop_assert_eq!((both.columns, both.rows), (columns, rows));
            let wide = propose(size, 127.0, Wish { columns: some_columns, ..Wish::default() }).unwrap();
            prop_assert_eq!(wide.columns, columns);
            prop_assert!(wide.lost <= both.lost + 1e-12, "the rows that follow lose least");
            let high = propose(size, 127.0, Wish { rows: some_rows, ..Wish::default() }).unwrap();
            prop_assert_eq!(high.rows, rows);
            prop_assert!(high.lost <= both.lost + 1e-12);
        }

        #[test]
        fn a_wished_number_is_met_nearly(cells in 20_usize..1500) {
            let chosen = propose((1300, 1000), 30.0, Wish { cells: Some(cells), ..Wish::default() }).unwrap();
            let part = float(chosen.cells()) / float(cells);
            prop_assert!((0.7..1.4).contains(&part), "{chosen:?}");
        }

        #[test]
        fn beyond_the_limits_is_refused(columns in 703_usize..10_000_000) {
            let wish = Wish { columns: Some(columns), ..Wish::default() };
            prop_assert!(propose((10, 10), 127.0, wish).is_err());
        }
    }
}
