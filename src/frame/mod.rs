//! Points, lengths and maps, each bound to one coordinate frame.
//!
//! A coordinate is a pair of `f64` **and** the frame it is meant in. Two points of different frames cannot be
//! added, compared or measured against each other; only a [`Map`] (or the lens of `read`) takes one into the next.
//!
//! ```text
//!   every frame: origin top left, x to the right, y down
//!
//!      0     1     2   x →            a pixel is a square of side 1;
//!    0 ┌─────┬─────┬──                its centre lies at ½:
//!      │  ·  │  ·  │                  pixel (0, 0) covers [0, 1) × [0, 1)
//!      │(½,½)│     │                  and is centred at (½, ½)
//!    1 ├─────┼─────┼──
//!    y ↓
//! ```
//!
//! The frames and what joins them:
//!
//! ```text
//!   SheetMm     a printed page                 ─┐
//!   SquareMm    one square of paper, upright    ├─ millimetres
//!   WallMm      the wall, from cell (0,0)'s     │
//!               top left corner                ─┘
//!   Module      within one code, 0 … 21 both ways
//!   PicturePx   the picture that is redrawn
//!
//!   WallMm ──Map──▶ StraightPx ──lens──▶ PhotoPx ◀──turn── TakenPx
//!   (the wall)      (lens removed)       (upright)         (as the file has it)
//!
//!   WallMm ──Map──▶ DisplayPx  (the straightened picture of the wall)
//! ```
//!
//! ```
//! use everysquare::frame::{Map, Point, StraightPx, WallMm};
//!
//! let wall_to_straight = Map::<WallMm, StraightPx>::scale_then_shift(2.0, 10.0, 20.0);
//! let there = wall_to_straight.apply(Point::<WallMm>::new(3.0, 4.0));
//! assert_eq!(there, Point::<StraightPx>::new(16.0, 28.0));
//! ```

mod map;
mod median;
mod number;
mod point;

pub use map::Map;
pub use median::{median, median_by};
pub use number::{ceil_index, float, floor_index, narrow, round_byte, round_index, round_signed};
pub use point::{
    DisplayPx, Frame, Length, Module, PhotoPx, PicturePx, Point, SheetMm, SquareMm, StraightPx, TakenPx,
    Vector, WallMm,
};

/// Number of millimetres in an inch, exactly (the international inch of 1959).
pub const MM_PER_INCH: f64 = 25.4;
