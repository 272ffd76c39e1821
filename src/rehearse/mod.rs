//! A photo of a wall that never was, with a file that says the truth about it.
//!
//! An organiser practises with it before the evening; tests take from it what a reader should find. In goes what was
//! printed, the picture and [`Options`]; out comes [`Made`]: the upright picture, the same as a JPEG file as a phone
//! would have stored it, and its [`Truth`]. The same options give the same bytes.
//!
//! The forward model stands alone: it shares no mathematics with `read`, so an error of one cannot hide in the other.
//!
//! ```text
//!   Options ─▶ faults    what hangs in which cell
//!               │ boards where cells hang: a wall in parts hangs on several
//!               ▼
//!              wall      papers in the room: where, how askew, how bent, what lies over what, strips of tape
//!               │ ▲
//!               │ paper  what each looks like: pencil, tick marks, label
//!               ▼
//!   camera ──▶ render    for every sample of every pixel the topmost paper that its ray strikes
//!               │
//!               ▼
//!              sensor    light, blur, noise, tone, sharpening ─▶ file    turned as EXIF says, JPEG, marked as made
//!               │
//!               ▼
//!              truth     states, corners and codes in pixels, what is in sight
//! ```
//!
//! The room has the wall's axes and one more (millimetres):
//!
//! ```text
//!      z  into the wall                    the wall is z = 0; papers stand out to z = −height;
//!     ╱                                    the camera is at z < 0 and looks towards greater z
//!    ┌───── x  right
//!    │
//!    y  down
//! ```
//!
//! ```
//! use everysquare::rehearse::{Faults, Options};
//! let options = Options { faults: Faults { swaps: 3, missing: 4, ..Faults::default() }, ..Options::varied(7) };
//! assert_eq!(options.seed, 7);
//! ```

mod backing;
mod boards;
mod camera;
mod chance;
mod faults;
mod file;
mod fold;
mod front;
mod glyphs;
mod grain;
mod hung;
mod light;
mod model;
mod options;
mod paper;
mod printer;
mod render;
mod sensor;
mod truth;
mod wall;

use image::{GrayImage, RgbImage};
use thiserror::Error;

use crate::words::{Sentence, Tell, told_in_english};

use crate::picture::Picture;
use crate::plan::Printed;

pub use crate::judge::State;
pub use file::stored_from_upright;
pub use hung::Condition;
pub use options::{Backing, BoardOptions, Cards, Faults, Hanging, Light, Options, Pose, Sensor};
pub use printer::Printer;
pub use truth::{CameraTruth, CardTruth, CellTruth, ModulePx, Truth};

/// What [`make`] gives.
#[derive(Clone, Debug)]
pub struct Made {
    /// The photo, upright, as it was before JPEG.
    pub image: RgbImage,
    /// The file: a JPEG turned as its EXIF orientation says, which names itself a made picture.
    pub jpeg: Vec<u8>,
    /// What is where.
    pub truth: Truth,
    /// Where people are in [`Made::image`]: 255 where the ray through a pixel's middle strikes one, else 0. `None` where nobody
    /// stands before the wall.
    pub people: Option<GrayImage>,
}

/// Why no photo can be made.
#[derive(Debug, Error, PartialEq)]
pub enum RehearseError {
    /// More faults than the wall has cells for.
    TooManyFaults {
        /// Cells that the faults take.
        asked: usize,
        /// Cells that there are.
        cells: usize,
    },
    /// Duplicates, and no square left to hang twice.
    NothingTwice,
    /// Everything permuted, and swaps besides.
    PermutedAndSwapped,
    /// Everything permuted, but fewer than two squares.
    TooFewToPermute {
        /// Squares that could move.
        squares: usize,
    },
    /// An option outside its range.
    Option {
        /// Which.
        name: Sentence,
        /// What was asked.
        value: f64,
        /// What may be.
        allowed: Sentence,
    },
    /// The lens folds the picture back within the frame.
    Lens {
        /// Coefficient of r².
        k1: f64,
        /// Coefficient of r⁴.
        k2: f64,
    },
    /// The wall cannot be brought into the frame.
    View {
        /// How much was asked, in per cent.
        percent: f64,
    },
    /// The pixels asked for each module need too big a photo.
    TooManyPixels {
        /// Pixels a module that were asked.
        px: f64,
        /// Width that would be needed.
        width: usize,
        /// Height that would be needed.
        height: usize,
    },
    /// What was printed does not fit its own grid.
    Printed {
        /// Squares in the manifest.
        squares: usize,
        /// Cells of the grid.
        cells: usize,
    },
    /// A stranger's text that makes no code.
    Code(#[from] crate::plan::code::CodeError),
    /// The JPEG could not be written.
    Jpeg(String),
}

told_in_english!(RehearseError);

impl Tell for RehearseError {
    fn sentence(&self) -> Sentence {
        match self {
            Self::TooManyFaults { asked, cells } => Sentence::new("error-rehearse-many-faults")
                .with("asked", asked.to_string())
                .with("cells", cells.to_string()),
            Self::NothingTwice => Sentence::new("error-rehearse-nothing-twice"),
            Self::PermutedAndSwapped => Sentence::new("error-rehearse-permuted-and-swapped"),
            Self::TooFewToPermute { squares } => {
                Sentence::new("error-rehearse-too-few").with("squares", *squares)
            }
            Self::Option { name, value, allowed } => Sentence::new("error-rehearse-option")
                .with("name", name.clone())
                .with("value", *value)
                .with("allowed", allowed.clone()),
            Self::Lens { k1, k2 } => Sentence::new("error-rehearse-lens").with("k1", *k1).with("k2", *k2),
            Self::View { percent } => Sentence::new("error-rehearse-view").with("percent", *percent),
            Self::TooManyPixels { px, width, height } => Sentence::new("error-rehearse-many-pixels")
                .with("px", *px)
                .with("width", width.to_string())
                .with("height", height.to_string()),
            Self::Printed { squares, cells } => Sentence::new("error-rehearse-printed")
                .with("squares", squares.to_string())
                .with("cells", cells.to_string()),
            Self::Code(error) => error.sentence(),
            Self::Jpeg(said) => Sentence::new("error-rehearse-jpeg").with("said", said.as_str()),
        }
    }
}

/// Makes a photo of a wall.
///
/// # Errors
/// [`RehearseError`] where the options contradict each other or the wall.
pub fn make(printed: &Printed, picture: &Picture, options: &Options) -> Result<Made, RehearseError> {
    make_watched(printed, picture, options, &|_| ())
}

/// The same, and tells `watch` from time to time which part, 0 … 1, of the picture is done.
///
/// # Errors
/// [`RehearseError`] where the options contradict each other or the wall.
pub fn make_watched(
    printed: &Printed,
    picture: &Picture,
    options: &Options,
    watch: &(dyn Fn(f64) + Sync),
) -> Result<Made, RehearseError> {
    options.check()?;
    let hung = faults::plot(printed, &options.faults, options.seed)?;
    let boards = boards::Boards::of(printed, options.boards, options.seed);
    let camera = camera::framed(printed, &boards, options)?;
    let front = front::Front::stand(&boards, options, &camera);
    let wall = wall::Wall::put_up(printed, picture, &hung, options, (boards, &camera));
    let scene = render::Scene { wall: &wall, front: &front, camera: &camera };
    let mut image = sensor::expose(&scene, options, watch);
    if options.sensor.mirrored {
        image::imageops::flip_horizontal_in_place(&mut image);
    }
    let truth = truth::tell(&scene, printed, &hung, options);
    let people = (options.people > 0).then(|| truth::people(&scene, options.sensor.mirrored));
    let jpeg = file::jpeg(&image, options)?;
    Ok(Made { image, jpeg, truth, people })
}
