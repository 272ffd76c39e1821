//! The picture that is redrawn: loaded, brought to a few pencil colours, cut into pieces; a grid proposed from its shape.
//!
//! [`Opened::from`] reads any picture, [`propose`] finds a grid for it, [`reduce()`] makes [`FewColours`] of it in the grid's
//! shape (its stages are drawn in the head of `reduce.rs`), [`PictureFacts`] tells what each piece holds, and
//! [`warnings::colour_warnings`] what the organiser should know of the pencils.
//!
//! ```text
//!   0 ┌───────┬─────┬─────┬─────┬───────┐      a grid that does not have the picture's shape takes its middle:
//!     │ ░░░░░ │ A2  │ B2  │ C2  │ ░░░░░ │      ░ is cut away, half on either side
//!     │ ░░░░░ ├─────┼─────┼─────┤ ░░░░░ │
//!     │ ░░░░░ │ A1  │ B1  │ C1  │ ░░░░░ │      every piece is a square of the same side, in pixels
//!   h └───────┴─────┴─────┴─────┴───────┘ w    that need not be whole (`PicturePx`)
//! ```
//!
//! ```
//! use everysquare::picture::Picture;
//! use everysquare::plan::{Cell, Grid};
//!
//! let picture = Picture { pixels: image::RgbImage::new(100, 80) };
//! let grid = Grid::usual(5, 4);
//! let piece = picture.piece(&grid, Cell { row: 0, column: 1 });
//! assert_eq!((piece.top_left.x, piece.top_left.y, piece.side.value()), (20.0, 0.0, 20.0));
//! ```

mod accent;
pub mod area;
mod border;
mod choose;
mod clean;
pub mod closer;
pub mod colour;
pub mod complexity;
pub mod crossings;
pub mod css;
pub mod facts;
pub mod few;
pub mod fit;
pub mod from_paper;
mod grey;
pub mod grid;
mod label;
pub mod loss;
pub mod name;
mod open;
pub mod order;
pub mod outlines;
mod pieces;
pub mod prospect;
pub mod questions;
mod raster;
pub mod reduce;
mod shrink;
mod slivers;
pub mod structure;
pub mod survey;
mod svg;
mod vote;
pub mod warnings;
mod word;

use image::RgbImage;

pub use accent::Accent;
pub use area::Area;
pub use facts::{PictureFacts, PieceFacts};
pub use few::FewColours;
pub use fit::Fit;
pub use grid::{Proposal, Wish, propose};
pub use open::{Opened, PictureError};
pub use outlines::Outlines;
pub use pieces::{Crop, Piece};
pub use reduce::{Pencils, ReduceError, Reduced, Wanted, reduce};

/// The picture, in the colours it is drawn with.
#[derive(Clone, Debug, PartialEq)]
pub struct Picture {
    /// Pixels; at least one.
    pub pixels: RgbImage,
}

impl Picture {
    /// Width and height, in pixels.
    #[must_use]
    pub fn size(&self) -> (u32, u32) {
        self.pixels.dimensions()
    }

    /// Ratio of width to height.
    #[must_use]
    pub fn shape(&self) -> f64 {
        let (width, height) = self.size();
        f64::from(width.max(1)) / f64::from(height.max(1))
    }
}
