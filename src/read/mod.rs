//! Reading: from an upright photo to what hangs in which cell, and how surely.
//!
//! Three things happen to everything that may be a code, wherever in the photo it is looked for:
//!
//! ```text
//!   candidates                    verify                              place
//!   rough poses, from             align, compare with the codebook,   which cell of the wall,
//!   whichever finder              fit the pixels, decide              and the camera again
//!
//!   the whole photo:              identify ─▶ Detection               start: the first camera
//!     finders ─▶ triples            align          pose                 consensus, lattice, placement
//!     area_finders                  codebook,      templates           search: outwards, cell by cell
//!   one cell:                       model_fit      likelihood            camera, lens, uncertainty
//!     seek, template_search         decision       who is named         apart, empty ─▶ PhotoReading
//!        │                             ▲  │                              parts │  each board by itself
//!        └────── Candidate ────────────┘  └──────── Detection ────────▶    └─ together ─▶ WallReading
//! ```
//!
//! `reader` draws the cascade of starts and passes. `scattered` reads squares that lie anywhere, `marked` a sheet that is photographed by
//! itself. `any_code` and `foreign` read codes of other kinds and of other events.
//!
//! Promised: a square is named only where its own code was compared with the codes of the event and leads by
//! far; else its cell is *unread*. The camera comes from where codes sit, never from what squares say.
//!
//! ```no_run
//! use everysquare::photo::Photo;
//! use everysquare::plan::Printed;
//! use everysquare::read::Reader;
//!
//! # fn example(bytes: &[u8], printed: &Printed) -> Result<(), Box<dyn std::error::Error>> {
//! let reader = Reader::new(printed);
//! let reading = reader.read(&Photo::open(bytes)?)?;
//! println!("{} codes read", reading.codes_read);
//! # Ok(())
//! # }
//! ```

// the whole photo
pub mod reader;

// candidates
mod area_finders;
pub mod candidate;
pub mod finders;
mod summed_area;
pub mod triples;

// verify
mod align;
mod bands;
pub mod codebook;
mod coefficients;
pub mod decision;
pub mod identify;
mod model_fit;
pub mod pose;
mod template;
mod templates;

// place
mod apart;
pub mod camera;
pub mod consensus;
pub mod empty;
pub mod lattice;
pub mod lens;
mod own_parts;
mod parts;
pub mod place;
pub mod placement;
pub mod search;
pub mod seek;
mod start;
mod template_search;
pub mod uncertainty;

// what comes out
pub mod reading;
pub mod several;

// codes of other kinds and events
pub mod any_code;
pub mod foreign;
#[cfg(test)]
mod paint;

// squares and sheets without a wall
pub mod marked;
pub mod scattered;
pub mod test_page;

pub use reader::Reader;
pub use reading::{Apart, Camera, CellReading, PhotoReading, ReadError, Sight, WallReading};
pub use scattered::{Lying, Scattered};
pub use several::{several, together};
