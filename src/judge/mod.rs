//! Judgement: the reading against the plan, with the state of each cell, what to do about it, and what to
//! tell the photographer.
//!
//! ```text
//!   WallReading ─┐
//!                ├─▶ states ─▶ Judgement ─┬─▶ fixes  ─▶ [Fix]      what to do, in order
//!   Grid ────────┘                        ├─▶ advice ─▶ [Advice]   how to take a better photo
//!                                         └─▶ Outcome              all right, something to fix, could not tell
//! ```
//!
//! Everything here is fact: cells, turns, numbers. The sentences are made in `report`.
//!
//! ```
//! use everysquare::judge::{Act, Outcome, fixes, judge};
//! use everysquare::plan::{Grid, Turn};
//! use everysquare::read::{Apart, CellReading, Sight, WallReading};
//!
//! let grid = Grid::usual(2, 1);
//! let (a1, b1) = (grid.cell("A1").unwrap(), grid.cell("B1").unwrap());
//! let hangs = |cell, home| CellReading {
//!     cell,
//!     sight: Sight::Square { home, turn: Turn::None },
//!     certainty: 0.99,
//!     corners: None,
//!     photo: 0,
//! };
//! let cells = vec![hangs(a1, b1), hangs(b1, a1)];
//! let reading = WallReading { photos: Vec::new(), cells, contradictions: Vec::new(), apart: Apart::default() };
//!
//! let judgement = judge(&reading, &grid);
//! assert_eq!(judgement.outcome(), Outcome::Fix);
//! let fixes = fixes(&judgement);
//! assert_eq!((fixes[0].act(), fixes[0].cells()), (Act::Swap, vec![a1, b1]));
//! ```

pub mod advice;
pub mod fixes;
pub mod found;
pub mod states;
pub mod test_page;

pub use advice::{Advice, Part, Side, advise};
pub use fixes::{Act, Fix, fixes, is_spare};
pub use states::{JudgedCell, Judgement, Outcome, State, Stranger, Summary, judge};
