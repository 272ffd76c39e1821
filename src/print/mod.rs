//! The kit on paper: blank squares with their codes, cards for around the wall, pieces of the picture, lists and maps; and
//! the manifest, which says what was printed where.
//!
//! ```text
//!  Settings ─┐                     ┌─▶ squares.pdf, edge-cards.pdf …           places in mm
//!  Printed  ─┤                     │
//!  Picture  ─┼─▶ layout ─▶ typeset ┼─▶ checklist.pdf, pencils.pdf …              text that flows
//!  Facts    ─┤      │              │
//!  Words    ─┘      └──────────────┴─▶ Manifest       every square's and piece's page and place
//! ```
//!
//! A document is a file here and a template of the same name, and a line in the list below. Where places matter, every one
//! is worked out in [`layout`], in millimetres on the sheet; the templates only put things there. Every page bears a ruler
//! of 100 mm and one of 4 inches (of 25.4 mm exactly) and says that it must be printed at 100 %. Every file is tagged for
//! those who hear it instead of seeing it (PDF/UA-1, ISO 14289-1).
//!
//! Two-sided kits (`flip = "long-edge"` or `"short-edge"`): a front, its back, the next front …; each back is mirrored so
//! that it lies behind its front. With `flip = "none"` squares have no backs, since the labels beside their codes say all that
//! is needed; backs of pieces stand beside their fronts to be folded behind them, or on the next sheet to be glued there.
//!
//! With `join = "beside"` a kit has `strips` instead of squares, pieces and checklist: each piece with its square in one strip of paper.
//!
//! What no kit has is printed when it is asked for: [`fill`](mod@fill) makes squares for gaps.
//!
//! The same input gives the same bytes, on any day.
//!
//! ```
//! use everysquare::picture::{FewColours, Picture, PictureFacts};
//! use everysquare::plan::crowd::evening;
//! use everysquare::plan::settings::Pencil;
//! use everysquare::plan::{Grid, Settings, Tag};
//! use everysquare::print::{Overrides, Sources};
//! use everysquare::words::Words;
//!
//! let grid = Grid::usual(4, 3);
//! let settings = Settings::new("Open evening".to_owned(), Tag::new("K7M").ok_or("no tag")?, grid);
//! let picture = Picture { pixels: image::RgbImage::new(400, 300) };
//! let few = FewColours::of(&picture, &[Pencil { name: "black".to_owned(), srgb: [0, 0, 0] }]);
//! let facts = PictureFacts::of(&few, &grid, &settings.levels);
//! let (printed, words) = (settings.printed()?, Words::english());
//! let kit = everysquare::print::kit(&Sources {
//!     settings: &settings, printed: &printed, picture: &picture, facts: &facts, words: &words,
//!     templates: &Overrides::default(), evening: &evening(&settings, &facts.work()),
//! })?;
//! let squares = &kit.documents[0];
//! assert_eq!((squares.name.as_str(), squares.sheets, squares.pages), ("squares.pdf", 6, 12));
//! # Ok::<(), Box<dyn std::error::Error>>(())
//! ```

mod blocks;
mod built_in;
mod camera_place;
pub mod candidates;
mod checklist;
pub mod comparison;
mod cut_out;
mod cuts;
mod drawn;
mod edge_cards;
mod effort;
pub mod event;
pub mod fill;
pub mod from_home;
pub mod groups;
mod guide;
mod helpers;
mod hints;
pub mod home;
mod languages;
pub mod large;
pub mod layout;
mod lengths;
pub mod lesson;
mod levels;
mod manifest;
pub mod marks;
mod numbers;
pub mod one;
mod overrides;
mod page;
mod parts;
mod pencils;
mod piece_back;
mod pieces;
mod questions;
pub mod rehang;
mod room;
mod room_drawing;
mod screen;
mod short;
pub mod signs;
mod small_wall;
pub mod spare;
mod squares;
mod strips;
mod stub;
pub mod table_card;
pub mod test_page;
mod typeset;
mod wall_drawing;
mod wall_map;

use rayon::prelude::*;
use thiserror::Error;

use crate::frame::MM_PER_INCH;
use crate::picture::{Picture, PictureFacts};
use crate::plan::crowd::Evening;
use crate::plan::settings::{Choice, Flip, Join, Paper};
use crate::plan::{Manifest, Printed, Settings};
use crate::words::{Sentence, Tell, Words, nearest, told_in_english};

pub use cuts::CutSheet;
pub use effort::{Effort, STACK, effort, minutes};
pub use overrides::{Overrides, TemplateError};
pub use pieces::BORDER_MM as PIECE_BORDER_MM;

/// Makes one document.
type Make = fn(&Sources) -> Result<Document, PrintError>;

/// Every document of kits and who makes it, in the order in which they are named to people.
const DOCUMENTS: &[(&str, Make)] = &[
    (strips::NAME, strips::document),
    ("squares", squares::document),
    ("edge-cards", edge_cards::document),
    ("pieces", pieces::document),
    ("levels", levels::document),
    ("pencils", pencils::document),
    ("checklist", checklist::document),
    ("wall-map", wall_map::document),
    ("table-card", table_card::document),
    ("questions", questions::document),
    ("answers", questions::answers),
    ("helpers", helpers::document),
    ("guide", guide::document),
];

/// Documents that no kit has, which are printed when they are asked for.
pub const ON_REQUEST: [&str; 10] = [
    test_page::NAME,
    signs::NAME,
    fill::NAME,
    fill::HELPED,
    large::NAME,
    home::NAME,
    from_home::NAME,
    spare::NAME,
    groups::NAME,
    lesson::NAME,
];

/// The names of all documents of kits: those of their files without `.pdf`.
pub fn names() -> impl Iterator<Item = &'static str> {
    DOCUMENTS.iter().map(|(name, _)| *name)
}

/// The names of the documents of a kit whose pieces and squares are joined so. What is left of a pile of strips is the list of what is not
/// out: that kit has no checklist.
pub fn names_of(join: Join) -> impl Iterator<Item = &'static str> {
    names().filter(move |name| match *name {
        strips::NAME => join == Join::Beside,
        "squares" | "pieces" | "checklist" => join == Join::Apart,
        _ => true,
    })
}

/// The names of all templates, for [`Overrides::new`]: those of the documents, of the comparison prints, and what they share.
#[must_use]
pub fn template_names() -> Vec<&'static str> {
    names()
        .chain(ON_REQUEST)
        .chain([rehang::NAME, candidates::NAME])
        .chain(comparison::names())
        .chain(typeset::imported())
        .collect()
}

/// Every template that comes with the program, by name, to start an own one from.
pub fn templates() -> impl Iterator<Item = (&'static str, &'static str)> {
    template_names().into_iter().map(|name| (name, built_in::built_in(name)))
}

/// Everything that is printed for an evening.
#[derive(Clone, Debug, PartialEq)]
pub struct Kit {
    /// The documents, in the order of [`names`].
    pub documents: Vec<Document>,
    /// For the documents whose items are cut out exactly: the lines of every sheet.
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
    /// How many cuts with a trimmer it takes, through stacks of [`STACK`] sheets: of a kit's documents, else 0.
    pub cuts: usize,
    /// Whether a ruler stands on its pages: what is on them has to come out in its true size.
    pub true_size: bool,
}

/// A kit that cannot be printed.
#[derive(Clone, Debug, Error, PartialEq)]
pub enum PrintError {
    /// Something is larger than the paper.
    TooLarge {
        /// Of what.
        what: Large,
        /// Its side.
        side_mm: f64,
        /// The largest side that fits.
        largest_mm: f64,
        /// The paper's name in event.toml.
        paper: &'static str,
    },
    /// A document that no kit has.
    Unknown {
        /// What was asked for.
        read: String,
        /// Those that there are.
        known: Vec<&'static str>,
    },
    /// A comparison print for which there is nothing to show.
    Nothing(comparison::Lacking),
    /// A poster of a width that cannot be printed.
    Poster {
        /// The width that was asked for.
        read_mm: f64,
        /// The narrowest.
        least_mm: f64,
        /// The widest, as many pages as a poster may have.
        most_mm: f64,
    },
    /// One of the organiser's own templates cannot be used.
    Template(TemplateError),
    /// A template of the program and its data do not fit each other.
    Typeset(String),
}

/// What can be larger than the paper.
#[derive(Copy, Clone, Debug, PartialEq, Eq)]
pub enum Large {
    /// A square.
    Square,
    /// A piece.
    Piece,
    /// A card.
    Card,
    /// A square with its piece beside it.
    Strip,
}

impl Large {
    fn word(self) -> &'static str {
        match self {
            Self::Square => "error-print-square",
            Self::Piece => "error-print-piece",
            Self::Card => "error-print-card",
            Self::Strip => "error-print-strip",
        }
    }
}

told_in_english!(PrintError);

impl Tell for PrintError {
    fn sentence(&self) -> Sentence {
        match self {
            Self::TooLarge { what, side_mm, largest_mm, paper } => Sentence::new("error-print-too-large")
                .with("what", Sentence::new(what.word()))
                .with("side", *side_mm)
                .with("largest", *largest_mm)
                .with("inches", format!("{:.2}", largest_mm / MM_PER_INCH))
                .with("paper", *paper)
                .with("papers", Paper::listed()),
            Self::Unknown { read, known } => {
                let near = nearest(read, known.iter().copied());
                let sentence = match near {
                    Some(near) => Sentence::new("error-print-unknown-near").with("near", near),
                    None => Sentence::new("error-print-unknown"),
                };
                sentence.with("read", read.as_str()).with("known", page::listed(known.iter().copied()))
            }
            Self::Nothing(lacking) => Sentence::new(lacking.word()),
            Self::Poster { read_mm, least_mm, most_mm } => Sentence::new("error-print-poster")
                .with("read", *read_mm)
                .with("least", least_mm.ceil())
                .with("most", most_mm.floor()),
            Self::Template(error) => error.sentence(),
            Self::Typeset(said) => Sentence::new("error-print-typeset").with("said", said.as_str()),
        }
    }
}

impl PrintError {
    fn too_large(what: Large, side_mm: f64, border_mm: f64, paper: Paper) -> Self {
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
    /// What is known of its pieces.
    pub facts: &'a PictureFacts,
    /// The words.
    pub words: &'a Words,
    /// The organiser's own templates.
    pub templates: &'a Overrides,
    /// Crowd, time, wall and supplies.
    pub evening: &'a Evening,
}

impl Sources<'_> {
    /// Whose picture it is, as a sentence; `None` where nobody said.
    pub(crate) fn credit(&self) -> Option<String> {
        self.credit_in(self.words)
    }

    /// The same in one of the event's languages.
    pub(crate) fn credit_in(&self, words: &Words) -> Option<String> {
        let credit = self.settings.picture.credit.as_deref()?;
        Some(words.say("print-credit", &[("credit", credit.into())]))
    }
}

/// Makes the kit: what `printed` lists, on the paper that the settings name, with the pieces cut out of the picture.
///
/// # Errors
/// [`PrintError::TooLarge`] where squares or pieces are larger than the paper.
pub fn kit(sources: &Sources) -> Result<Kit, PrintError> {
    part_of_kit(sources, &[], &|| ())
}

/// Whether all of these are names of documents, of a kit's or of those that are printed on request.
///
/// # Errors
/// [`PrintError::Unknown`] for the first that is none.
pub fn known(wanted: &[String]) -> Result<(), PrintError> {
    among(wanted, names().chain(ON_REQUEST).collect())
}

/// Whether all of these are among the known ones.
fn among(wanted: &[String], known: Vec<&'static str>) -> Result<(), PrintError> {
    match wanted.iter().find(|wanted| !known.contains(&wanted.as_str())) {
        Some(read) => Err(PrintError::Unknown { read: read.clone(), known }),
        None => Ok(()),
    }
}

/// What is printed again for single spots, where there is such a document.
pub const AGAIN: [&str; 3] = [strips::NAME, "squares", "pieces"];

/// The squares and pieces of some cells: what [`AGAIN`] is made from.
struct Selection {
    printed: Printed,
    facts: PictureFacts,
}

impl Selection {
    /// Those of cells by their place in the grid.
    fn of(sources: &Sources, cells: &[usize]) -> Self {
        let (mut printed, mut facts) = (sources.printed.clone(), sources.facts.clone());
        printed.squares =
            cells.iter().filter_map(|cell| sources.printed.squares.get(*cell).cloned()).collect();
        facts.pieces = cells.iter().filter_map(|cell| sources.facts.pieces.get(*cell).cloned()).collect();
        Self { printed, facts }
    }

    /// Those that hang: all but those of cells that are kept free.
    fn hanging(sources: &Sources) -> Self {
        let grid = &sources.settings.grid;
        let cells = grid.cells().filter(|cell| !grid.is_kept_free(*cell));
        Self::of(sources, &cells.map(|cell| grid.index(cell)).collect::<Vec<_>>())
    }

    fn sources<'a>(&'a self, of: &Sources<'a>) -> Sources<'a> {
        Sources { printed: &self.printed, facts: &self.facts, ..*of }
    }
}

/// Squares and pieces of some cells again, by their place in the grid, with the codes that they have: one-sided, since no stack has to fit,
/// with a piece's back beside it to fold.
///
/// # Errors
/// As [`kit`].
pub fn again(sources: &Sources, cells: &[usize], wanted: &[String]) -> Result<Vec<Document>, PrintError> {
    let mut settings = sources.settings.clone();
    settings.print.flip = Flip::None;
    let some = Selection::of(sources, cells);
    let some = Sources { settings: &settings, ..some.sources(sources) };
    let known: Vec<&'static str> =
        names_of(settings.print.join).filter(|name| AGAIN.contains(name)).collect();
    among(wanted, known.clone())?;
    let is_wanted =
        |name: &str| known.contains(&name) && (wanted.is_empty() || wanted.iter().any(|own| own == name));
    let made = DOCUMENTS.iter().filter(|(name, _)| is_wanted(name)).map(|(name, make)| {
        let document = make(&some)?;
        Ok(Document { name: format!("{name}-again.pdf"), ..document })
    });
    made.collect()
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
    let own: Vec<&'static str> = names_of(sources.settings.print.join).collect();
    among(wanted, own.clone())?;
    let some = (sources.settings.grid.kept_free.count() > 0).then(|| Selection::hanging(sources));
    let hanging = some.as_ref().map_or(*sources, |some| some.sources(sources));
    let manifest = manifest::of(&hanging)?;
    let of = |name: &str| if AGAIN.contains(&name) { &hanging } else { sources };
    let is_wanted =
        |name: &str| own.contains(&name) && (wanted.is_empty() || wanted.iter().any(|wanted| wanted == name));
    let chosen: Vec<&(&str, Make)> = DOCUMENTS.iter().filter(|(name, _)| is_wanted(name)).collect();
    let documents = chosen.par_iter().with_max_len(1).map(|(name, make)| {
        let document = make(of(name))?;
        made();
        Ok(Document { cuts: effort::cuts_of(of(name), name)?, ..document })
    });
    let documents = documents.collect::<Vec<_>>().into_iter().collect::<Result<_, _>>();
    typeset::forget();
    let mut cuts = Vec::new();
    for (name, _) in chosen {
        cuts.extend(cuts::of(of(name), name)?);
    }
    Ok(Kit { documents: documents?, cuts, manifest })
}
