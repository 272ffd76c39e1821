//! What the organiser decided and what follows from it: event, cells, labels, codes, cards, manifest, crowd and time.
//!
//! ```text
//!  event.toml ──▶ Settings ──▶ Grid ──▶ cells and labels ──▶ codes ─┐
//!                    │                                              ├──▶ Manifest (what was printed)
//!                    └──────────▶ cards ────────────────────────────┘
//! ```
//!
//! A square, as seen on the wall when it hangs upright (`SquareMm`; the code bottom right):
//!
//! ```text
//!    0 ┌──────┬──────┬──────┬──────┐
//!      │                           │      tick marks at the quarter points of every side
//!      ├                           ┤
//!      │                           │
//!      ├                           ┤
//!      │                           │
//!      ├                   ┌┄┄┄┄┄┐ ┤      ┄ the code's quiet zone, 4 modules around it
//!      │                D7 ┆ ▓▒▓ ┆ │
//!      │                   ┆ ▒▓▒ ┆ │      inset_mm from the cut edges to the code's outer modules
//! side └──────┴──────┴─────┴┄┄┄┄┄┴─┘
//! ```
//!
//! The wall and the ring of cards around it (`WallMm`; W, H the wall's size, ring 60 mm wide):
//!
//! ```text
//!   ┌──┐                        ┌──┐
//!   │.1│ (0,0)                  │.2│   corner cards, named clockwise from the top left
//!   └──┘──────┬──────┬──────┐───└──┘
//!   │/2│ A2   │ B2   │ C2   │          row cards stand left of their row
//!   ├──┼──────┼──────┼──────┤
//!   │/1│ A1   │ B1   │ C1   │
//!   └──┘──────┴──────┴──────┘ (W,H)
//!   ┌──┐ /A   │ /B   │ /C   │   ┌──┐
//!   │.4│──────┴──────┴──────┘   │.3│   column cards hang below their column
//!   └──┘                        └──┘
//! ```

pub mod boards;
pub mod cards;
pub mod cell;
pub mod clock;
pub mod code;
pub mod crowd;
pub mod folder;
pub mod groups;
mod kept_free;
pub mod lengths;
pub mod level;
pub mod manifest;
pub mod marks;
mod printed;
pub mod rehang;
pub mod settings;

pub use cards::{Card, CardKind};
pub use cell::{Cell, Grid, RowsFrom, Turn};
pub use clock::Clock;
pub use code::{Modules, Tag};
pub use crowd::Evening;
pub use folder::Folder;
pub use kept_free::{KeptFree, MOST_KEPT_FREE};
pub use level::Level;
pub use manifest::{Manifest, Printed, PrintedSquare};
pub use settings::Settings;
