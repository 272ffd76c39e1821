//! The reading against the plan: what state each cell is in, what to do about it, and what to tell the
//! photographer.
//!
//! ```text
//!   WallReading ─┐
//!                ├─▶ states ─▶ Judgement ─┬─▶ fixes  ─▶ [Fix]      what to do, in order
//!   Grid ────────┘                        ├─▶ advice ─▶ [Advice]   how to take a better photo
//!                                         └─▶ Outcome              all right, something to fix, could not tell
//! ```
//!
//! Everything here is fact: cells, turns, numbers. The sentences are made in `report`.

pub mod advice;
pub mod fixes;
pub mod states;

pub use advice::{Advice, Part, Side, advise};
pub use fixes::{Act, Fix, fixes, is_spare};
pub use states::{JudgedCell, Judgement, Outcome, State, Stranger, Summary, judge};
