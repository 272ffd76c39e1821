//! The kit on paper: blank squares with their codes, cards for around the wall, tiles of the picture, lists and maps; and
//! the manifest, which says what was printed where.
//!
//! ```text
//!  Settings ─┐                     ┌─▶ squares.pdf, cards.pdf, tiles.pdf …    places in mm
//!  Printed  ─┤                     │
//!  Picture  ─┼─▶ layout ─▶ typeset ┼─▶ ledger.pdf, pencils.pdf …              text that flows
//!  Facts    ─┤      │              │
//!  Words    ─┘      └──────────────┴─▶ Manifest       every square's and tile's page and place
//! ```
//!
//! A document is a file here and a template of the same name, and a line in the list below. Where places matter, every one
//! is worked out in [`layout`], in millimetres on the sheet; the templates only put things there. Every page bears a ruler
//! of 100 mm and one of 4 inches (of 25.4 mm exactly) and says that it must be printed at 100 %. Every file is tagged for
//! those who hear it instead of seeing it (PDF/UA-1, ISO 14289-1).
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
mod cuts;
mod hints;
pub mod layout;
mod ledger;
mod lengths;
mod levels;
mod manifest;
pub mod marks;
mod overrides;
mod page;
mod parts;
mod pencils;
mod short;
mod squares;
mod tile_back;
mod tiles;
mod typeset;
mod wall_drawing;
mod wall_map;

use rayon::prelude::*;
use thiserror::Error;

use crate::frame::MM_PER_INCH;
use crate::picture::{Picture, PictureFacts};
use crate::plan::crowd::{self, Evening};
use crate::plan::settings::{Choice, Paper};
use crate::plan::{Manifest, Printed, Settings};
use crate::words::Words;

pub use cuts::CutSheet;
pub use overrides::{Overrides, TemplateError};
pub use tiles::BORDER_MM as TILE_BORDER_MM;

/// Makes one document.
type Make = fn(&Sources) -> Result<Document, PrintError>;

/// Every document of a kit and who makes it, in the order in which they are named to people.
const DOCUMENTS: &[(&str, Make)] = &[
    ("squares", squares::document),
    ("cards", cards::document),
    ("tiles", tiles::document),
    ("levels", levels::document),
    ("pencils", pencils::document),
    ("ledger", ledger::document),
    ("wall-map", wall_map::document),
];

/// The names of all documents: those of their files without `.pdf`.
pub fn names() -> impl Iterator<Item = &'static str> {
    DOCUMENTS.iter().map(|(name, _)| *name)
}

/// Everything that is printed for an evening.
#[derive(Clone, Debug, PartialEq)]
pub struct Kit {
    /// The documents, in the order of [`names`].
    pub documents: Vec<Document>,
    /// For the documents whose pieces are cut out exactly: the lines of every sheet.
    pub cuts: Vec<CutSheet>,
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
    /// A document that no kit has.
    #[error("there is no document “{read}”: the documents are {}", page::listed(names()))]
    Unknown {
        /// What was asked for.
        read: String,
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

impl Sources<'_> {
    /// Crowd, time, wall and supplies.
    #[must_use]
    pub fn evening(&self) -> Evening {
        crowd::evening(self.settings, &self.facts.work())
    }
}

/// Makes the kit: what `printed` lists, on the paper that the settings name, with the tiles cut out of the picture.
///
/// # Errors
/// [`PrintError::TooLarge`] where squares or tiles are larger than the paper.
pub fn kit(sources: &Sources) -> Result<Kit, PrintError> {
    part_of_kit(sources, &[], &|| ())
}

/// Makes only the documents that are named, or all where none is. The manifest always tells of the whole kit. `made` is
/// called after each document, from any thread.
///
/// # Errors
/// [`PrintError::Unknown`] for a name that is none of [`names`], else as [`kit`].
pub fn part_of_kit(
    sources: &Sources,
    wanted: &[String],
    made: &(dyn Fn() + Sync),
) -> Result<Kit, PrintError> {
    if let Some(read) = wanted.iter().find(|wanted| !names().any(|name| name == wanted.as_str())) {
        return Err(PrintError::Unknown { read: read.clone() });
    }
    let manifest = manifest::of(&sources.settings.print, sources.printed)?;
    let is_wanted = |name: &str| wanted.is_empty() || wanted.iter().any(|wanted| wanted == name);
    let chosen: Vec<&(&str, Make)> = DOCUMENTS.iter().filter(|(name, _)| is_wanted(name)).collect();
    let documents = chosen.par_iter().with_max_len(1).map(|(_, make)| {
        let document = make(sources);
        made();
        document
    });
    let documents = documents.collect::<Vec<_>>().into_iter().collect::<Result<_, _>>();
    typeset::forget();
    let mut cuts = Vec::new();
    for (name, _) in chosen {
        cuts.extend(cuts::of(sources, name)?);
    }
    Ok(Kit { documents: documents?, cuts, manifest })
}
