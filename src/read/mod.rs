//! Reading: from an upright photo to what hangs in which cell, and how surely.
//!
//! The stages, each a file, in the order in which their types fit:
//!
//! ```text
//!   Luma ─ finders ─▶ Finder ─ group ─▶ Found ─ lattice, start ─▶ Camera ─ hunt (seek) ─▶ Sought
//!                                 │                                  ▲          │
//!                              identify                              └─ camera ─┘
//!                       (align, book, sheet, weigh)
//!   Sought ─ resolve ─▶ which cell is which ─ behind ─▶ PhotoReading ─ several ─▶ WallReading
//! ```
//!
//! `one` calls the stages in turn. Beside the way lie `sweep`, the template search inside `seek`; `faint`,
//! the finder patterns by area where modules are small and little was read; `doubt`, the camera's
//! uncertainty; `locate` and `stranger`, codes of other events and other kinds.
//!
//! Promised: a square is named only where its own code was compared with the codes of the event and leads by
//! far; else its cell is *unread*. The camera comes from where codes sit, never from what squares say.
//!
//! ```no_run
//! use everysquare::photo::Photo;
//! use everysquare::plan::Printed;
//! use everysquare::read::{self, book::Book};
//!
//! # fn example(bytes: &[u8], printed: &Printed) -> Result<(), Box<dyn std::error::Error>> {
//! let book = Book::new(printed);
//! let photo = Photo::open(bytes)?;
//! let reading = read::photo(&photo, printed, &book)?;
//! println!("{} codes read", reading.codes_read);
//! # Ok(())
//! # }
//! ```

mod align;
mod apart;
pub mod behind;
pub mod book;
pub mod camera;
pub mod doubt;
mod draw;
mod faint;
pub mod finders;
pub mod group;
pub mod hunt;
pub mod identify;
pub mod lattice;
pub mod lens;
pub mod locate;
pub mod one;
#[cfg(test)]
mod paint;
pub mod place;
pub mod pose;
pub mod reading;
pub mod resolve;
pub mod seek;
pub mod several;
mod sheet;
pub mod start;
pub mod stranger;
mod sweep;
mod weigh;

pub use one::photo;
pub use reading::{Apart, Camera, CellReading, PhotoReading, ReadError, Sight, WallReading};
pub use several::several;
