//! The same facts several ways: `report.json`, `report.html`, and the wall drawn in the terminal.
//!
//! ```text
//!   Judgement, [Fix], [Advice], WallReading ─▶ json::Report ─┬─▶ report.json
//!                     (sentences from words)                 ├─▶ html      a page without scripts or requests
//!                                                            └─▶ terminal  80 columns, legible without colour
//! ```
//!
//! [`json::Report`] is all that the others know, so none of them can say more than the file does.

pub mod accent;
pub mod found;
pub mod html;
pub mod json;
pub mod letters;
pub(crate) mod lines;
mod marks;
pub mod sentences;
pub mod steps;
pub mod terminal;

pub use accent::accent;
pub use html::{Pictures, html};
pub use json::{Occasion, Report};
pub use terminal::terminal;
