//! The kit on paper: blank squares with their codes, cards for around the wall, tiles of the picture; and the manifest,
//! which says what was printed where.
//!
//! ```text
//!  Settings ─┐                     ┌─▶ squares.pdf    one blank square a cell, tick marks, code; backs with labels
//!  Printed  ─┼─▶ layout ─▶ typeset ┼─▶ cards.pdf      what hangs around the wall
//!  Picture  ─┘      │              └─▶ tiles.pdf      the picture at exact size, cut into tiles
//!                   └────────────────▶ Manifest       every square's and tile's page and place
//! ```
//!
//! Every place is worked out in [`layout`], in millimetres on the sheet; the templates only put things there. Every page
//! bears a ruler of 100 mm and one of 4 inches (of 25.4 mm exactly) and says that it must be printed at 100 %.
//!
//! Two-sided kits (`flip = "long-edge"` or `"short-edge"`): a front, its back, the next front …; each back is mirrored so
//! that it lies behind its front. With `flip = "none"` there are no backs: the labels beside the codes and on the tiles'
//! borders say all that is needed.
//!
//! The same input gives the same bytes, on any day.
//!
//! ```
//! use everysquare::picture::{FewColours, Picture, PictureFacts};
//! use everysquare::plan::settings::Pencil;
//! use everysquare::plan::{Grid, RowsFrom, Settings, Tag};
//! use everysquare::print::Sources;
//! use everysquare::words::Words;
//!
//! let grid = Grid { columns: 4, rows: 3, square_mm: 127.0, tile_mm: 25.4, rows_from: RowsFrom::Bottom };
//! let settings = Settings::new("Open evening".to_owned(), Tag::new("K7M").ok_or("no tag")?, grid);
//! let picture = Picture { pixels: image::RgbImage::new(400, 300) };
//! let few = FewColours::of(&picture, &[Pencil { name: "black".to_owned(), srgb: [0, 0, 0] }]);
//! let facts = PictureFacts::of(&few, &grid, &settings.levels);
//! let (printed, words) = (settings.printed()?, Words::english());
//! let kit = everysquare::print::kit(&Sources {
//!     settings: &settings, printed: &printed, picture: &picture, facts: &facts, words: &words,
//! })?;
//! let squares = &kit.documents[0];
//! assert_eq!((squares.name.as_str(), squares.sheets, squares.pages), ("squares.pdf", 6, 12));
//! # Ok::<(), Box<dyn std::error::Error>>(())
//! ```

mod cards;
mod hints;
pub mod layout;
mod manifest;
pub mod marks;
mod overrides;
mod page;
mod squares;
mod tiles;
mod typeset;

use thiserror::Error;

use crate::frame::MM_PER_INCH;
use crate::picture::{Picture, PictureFacts};
use crate::plan::settings::{Choice, Paper};
use crate::plan::{Manifest, Printed, Settings};
use crate::words::Words;

pub use overrides::{Overrides, TemplateError};
pub use tiles::BORDER_MM as TILE_BORDER_MM;

/// Everything that is printed for an evening.
#[derive(Clone, Debug, PartialEq)]
pub struct Kit {
    /// `squares.pdf`, `cards.pdf`, `tiles.pdf`, in this order.
    pub documents: Vec<Document>,
    /// What was printed.
    pub manifest: Manifest,
}

/// One PDF.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Document {
    /// Its file's name, such as `squares.pdf`.
    pub name: String,
    /// The file.
    pub bytes: Vec<u8>,
    /// How many pages it has.
    pub pages: usize,
    /// How many sheets of paper it takes.
    pub sheets: usize,
    /// Whether every second page is the back of the one before it.
    pub two_sided: bool,
}

/// A kit that cannot be printed.
#[derive(Clone, Debug, Error, PartialEq)]
pub enum PrintError {
    /// Something is larger than the paper.
    #[error(
        "a {what} of {side_mm} mm does not fit {paper} paper beside the ruler: the largest that fits is {largest_mm} mm \
         ({:.2} in); make it smaller in event.toml, or print on larger paper ({})",
        .largest_mm / MM_PER_INCH,
        Paper::words()
    )]
    TooLarge {
        /// Of what.
        what: &'static str,
        /// Its side.
        side_mm: f64,
        /// The largest side that fits.
        largest_mm: f64,
        /// The paper's name in event.toml.
        paper: &'static str,
    },
    /// A template and its data do not fit each other.
    #[error("a page could not be set ({0}): this is a fault of the program, please report it")]
    Typeset(String),
}

impl PrintError {
    fn too_large(what: &'static str, side_mm: f64, border_mm: f64, paper: Paper) -> Self {
        Self::TooLarge {
            what,
            side_mm,
            largest_mm: layout::largest_mm(paper, border_mm),
            paper: paper.word(),
        }
    }
}

/// What a kit is made from.
#[derive(Copy, Clone, Debug)]
pub struct Sources<'a> {
    /// event.toml.
    pub settings: &'a Settings,
    /// Squares and cards with their codes.
    pub printed: &'a Printed,
    /// The picture.
    pub picture: &'a Picture,
    /// What is known of its tiles.
    pub facts: &'a PictureFacts,
    /// The words.
    pub words: &'a Words,
}

/// Makes the kit: what `printed` lists, on the paper that the settings name, with the tiles cut out of the picture.
///
/// # Errors
/// [`PrintError::TooLarge`] where squares or tiles are larger than the paper.
pub fn kit(sources: &Sources) -> Result<Kit, PrintError> {
    let Sources { settings, printed, picture, words, .. } = *sources;
    let print = &settings.print;
    let documents = vec![
        squares::document(print, printed, words)?,
        cards::document(print, printed, words)?,
        tiles::document(print, printed, picture, words)?,
    ];
    Ok(Kit { documents, manifest: manifest::of(print, printed)? })
}

/// What a document calls itself in a window's title.
fn title(words: &Words, document: &str, printed: &Printed) -> String {
    words.say("print-title", &[("document", document.into()), ("event", printed.name.as_str().into())])
}
