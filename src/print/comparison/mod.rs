//! The comparison prints, which stay when the evening is over: the original beside what everybody drew together.
//!
//! ```text
//!   picture ─┐                        ┌─▶ side-by-side.pdf   both at the same size
//!   wall    ─┤                        ├─▶ true-scale.pdf     a piece and its square at 1 : 1
//!            │                        ├─▶ take-home.pdf      a slip for each square
//!            │                        ├─▶ giving-back.pdf    all squares by label, to point at
//!   overlap ─┼─▶ Comparison ─▶ Exhibit┼─▶ pairs.pdf          chosen pieces beside their squares
//!   measured ┤                        ├─▶ making-of.pdf      the evening's checks, from empty to whole
//!   checks  ─┘                        ├─▶ math-page.pdf      lengths, areas, planned and measured
//!                                     └─▶ poster.pdf         the wall over many pages
//! ```
//!
//! They celebrate and rank nobody: squares have labels and no names, and nothing is graded. Where the
//! photo is a made one, every print says so. Pictures are as fine as paper shows from a step away, 150 dots an inch, and as
//! JPEG, so that files stay small.
//!
//! Beside every document comes its first page as a JPEG for a screen.
//!
//! ```
//! use everysquare::judge::Summary;
//! use everysquare::picture::{FewColours, Picture, PictureFacts};
//! use everysquare::plan::crowd::evening;
//! use everysquare::plan::settings::Pencil;
//! use everysquare::plan::{Grid, Settings, Tag};
//! use everysquare::print::comparison::{Comparison, Poster, comparison};
//! use everysquare::print::{Overrides, Sources};
//! use everysquare::words::Words;
//!
//! let grid = Grid::usual(4, 3);
//! let settings = Settings::new("Open evening".to_owned(), Tag::new("K7M").ok_or("no tag")?, grid);
//! let picture = Picture { pixels: image::RgbImage::new(400, 300) };
//! let few = FewColours::of(&picture, &[Pencil { name: "black".to_owned(), srgb: [0, 0, 0] }]);
//! let facts = PictureFacts::of(&few, &grid, &settings.levels);
//! let wall = image::RgbImage::new(800, 600);
//! let prints = comparison(&Comparison {
//!     sources: Sources {
//!         settings: &settings, printed: &settings.printed()?, picture: &picture,
//!         facts: &facts, words: &Words::english(), templates: &Overrides::default(),
//!         evening: &evening(&settings, &facts.work()),
//!     },
//!     wall: &wall, overlap: &wall, measured: None,
//!     counts: Summary { right: 12, cells: 12, ..Summary::default() },
//!     pairs: &[], kept: &[], date: None, checks: &[], poster: Poster::default(), made: true,
//! }, &["side-by-side".to_owned()], &|| ())?;
//! assert_eq!((prints[0].document.name.as_str(), prints[0].document.pages), ("side-by-side.pdf", 1));
//! # Ok::<(), Box<dyn std::error::Error>>(())
//! ```

mod exhibit;
mod giving_back;
mod making_of;
mod math;
mod pairs;
mod poster;
mod said;
mod scale_bar;
mod side_by_side;
mod take_home;
mod true_scale;

use image::RgbImage;
use rayon::prelude::*;

use super::page::Set;
use super::{Document, PrintError, Sources, among, typeset};
use crate::display::measure::Measured;
use crate::judge::Summary;
use crate::plan::Cell;
use exhibit::Exhibit;

/// What the comparison prints are made from.
#[derive(Clone, Debug)]
pub struct Comparison<'a> {
    /// The event: its settings, words, picture and templates. The original is the part of the picture that the grid covers.
    pub sources: Sources<'a>,
    /// The wall straight from the front: the grid and nothing around it, its pixels square.
    pub wall: &'a RgbImage,
    /// The wall with the edges of the original drawn over it, of the same size.
    pub overlap: &'a RgbImage,
    /// What was measured; `None` where too few squares were read.
    pub measured: Option<&'a Measured>,
    /// How many squares are in which state.
    pub counts: Summary,
    /// Squares to be shown beside their pieces. Those whose cell the wall does not have are left out.
    pub pairs: &'a [Pair],
    /// Squares for each of which there is a slip to take home.
    pub kept: &'a [Pair],
    /// The day, as people read it.
    pub date: Option<String>,
    /// The checks of the evening, in order.
    pub checks: &'a [PastCheck],
    /// The poster's size.
    pub poster: Poster,
    /// Whether the photo is a made picture and no photo.
    pub made: bool,
}

/// A square to be shown beside its piece.
#[derive(Clone, Debug, PartialEq)]
pub struct Pair {
    /// Where it belongs.
    pub cell: Cell,
    /// The square, upright.
    pub square: RgbImage,
}

/// One check of the evening.
#[derive(Clone, Debug, PartialEq)]
pub struct PastCheck {
    /// When, as people read it: `18:30`.
    pub when: String,
    /// Minutes since the first one.
    pub minutes: f64,
    /// What it found.
    pub summary: Summary,
    /// The wall as it was then, small; at most a third of a page is made of it.
    pub picture: Option<RgbImage>,
}

/// How the poster is made.
#[derive(Copy, Clone, Debug, Default, PartialEq)]
pub struct Poster {
    /// How wide it is, in mm; left out, three pages of paper side by side, fewer where the wall is tall.
    pub width_mm: Option<f64>,
    /// Whether the original follows, as large as the wall.
    pub original: bool,
}

/// One print.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Print {
    /// The PDF.
    pub document: Document,
    /// The name of the picture for a screen, such as `side-by-side.jpg`.
    pub screen_name: String,
    /// Its first page as a JPEG, 1,600 pixels along the longest side.
    pub screen: Vec<u8>,
}

/// What a comparison print lacks.
#[derive(Copy, Clone, Debug, PartialEq, Eq)]
pub enum Lacking {
    /// A wall with pixels.
    Wall,
    /// Squares to be shown beside their pieces.
    Pairs,
    /// Checks of the evening.
    Checks,
}

impl Lacking {
    pub(super) fn word(self) -> &'static str {
        match self {
            Self::Wall => "error-print-no-wall",
            Self::Pairs => "error-print-no-pairs",
            Self::Checks => "error-print-no-checks",
        }
    }
}

/// Lays out one document.
type Make = fn(&Exhibit) -> Result<Set, PrintError>;

/// Every comparison print and who makes it, in the order in which they are named to people.
const DOCUMENTS: &[(&str, Make)] = &[
    ("side-by-side", side_by_side::set),
    ("true-scale", true_scale::set),
    ("pairs", pairs::set),
    ("take-home", take_home::set),
    ("giving-back", giving_back::set),
    ("making-of", making_of::set),
    ("math-page", math::set),
    ("poster", poster::set),
];

/// The prints that nobody gets unasked: they have a page for every few squares.
pub const ON_REQUEST: [&str; 2] = ["take-home", "giving-back"];

/// The names of all comparison prints: those of their files without `.pdf`.
pub fn names() -> impl Iterator<Item = &'static str> {
    DOCUMENTS.iter().map(|(name, _)| *name)
}

/// Whether all of these are names of comparison prints.
///
/// # Errors
/// [`PrintError::Unknown`] for the first that is none.
pub fn known(wanted: &[String]) -> Result<(), PrintError> {
    among(wanted, names().collect())
}

/// Makes the comparison prints that are named, or, where none is, all but [`ON_REQUEST`] for which there is something to show. `made` is called
/// after each, from any thread.
///
/// # Errors
/// [`PrintError::Unknown`] for a name that is none of [`names`]; [`PrintError::Nothing`] where one that is named has nothing
/// to show, or the wall has no pixels; [`PrintError::Poster`] for a width that cannot be printed; [`PrintError::Template`]
/// for a faulty template of the organiser.
pub fn comparison(
    input: &Comparison,
    wanted: &[String],
    made: &(dyn Fn() + Sync),
) -> Result<Vec<Print>, PrintError> {
    known(wanted)?;
    if [input.wall, input.overlap].iter().any(|picture| picture.is_empty()) {
        return Err(PrintError::Nothing(Lacking::Wall));
    }
    let exhibit = Exhibit::of(input);
    let is_wanted = |name: &str| match wanted {
        [] => exhibit.has(name) && !ON_REQUEST.contains(&name),
        _ => wanted.iter().any(|wanted| wanted == name),
    };
    let chosen: Vec<_> = DOCUMENTS.iter().filter(|(name, _)| is_wanted(name)).collect();
    let prints = chosen.par_iter().with_max_len(1).map(|(name, make)| {
        let set = make(&exhibit)?;
        let (document, screen) = rayon::join(|| set.document(&input.sources), || set.screen());
        made();
        Ok(Print { document: document?, screen_name: format!("{name}.jpg"), screen: screen? })
    });
    let prints: Vec<Result<Print, PrintError>> = prints.collect();
    typeset::forget();
    prints.into_iter().collect()
}
