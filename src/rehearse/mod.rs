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
//!               │
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

mod camera;
mod chance;
mod faults;
mod file;
mod front;
mod glyphs;
mod grain;
mod light;
mod model;
mod options;
mod paper;
mod render;
mod sensor;
mod truth;
mod wall;

use image::RgbImage;
use thiserror::Error;

use crate::picture::Picture;
use crate::plan::Printed;

pub use crate::judge::State;
pub use file::stored_from_upright;
pub use options::{Backing, Cards, Faults, Hanging, Light, Options, Pose, Sensor};
pub use truth::{CameraTruth, CardTruth, CellTruth, Condition, ModulePx, Truth};

/// What [`make`] gives.
#[derive(Clone, Debug)]
pub struct Made {
    /// The photo, upright, as it was before JPEG.
    pub image: RgbImage,
    /// The file: a JPEG turned as its EXIF orientation says, which names itself a made picture.
    pub jpeg: Vec<u8>,
    /// What is where.
    pub truth: Truth,
}

/// Why no photo can be made.
#[derive(Debug, Error, PartialEq)]
pub enum RehearseError {
    /// More faults than the wall has cells for.
    #[error(
        "the faults asked for take {asked} cells, the wall has {cells}: ask for fewer (a swap takes 2 cells, a cycle 3, each of the others 1)"
    )]
    TooManyFaults {
        /// Cells that the faults take.
        asked: usize,
        /// Cells that there are.
        cells: usize,
    },
    /// Duplicates, and no square left to hang twice.
    #[error("no square is left that could hang twice: ask for fewer missing squares or strangers")]
    NothingTwice,
    /// Everything permuted, and swaps besides.
    #[error(
        "with every square in a wrong cell, swaps and cycles cannot be asked for as well: leave them at 0"
    )]
    PermutedAndSwapped,
    /// Everything permuted, but fewer than two squares.
    #[error("only {squares} square is left to put in a wrong cell: at least 2 are needed")]
    TooFewToPermute {
        /// Squares that could move.
        squares: usize,
    },
    /// An option outside its range.
    #[error("{name} is {value}, allowed are {allowed}")]
    Option {
        /// Which.
        name: &'static str,
        /// What was asked.
        value: f64,
        /// What may be.
        allowed: &'static str,
    },
    /// The lens folds the picture back within the frame.
    #[error("a lens with k1 = {k1}, k2 = {k2} folds the picture back within the frame: use smaller values")]
    Lens {
        /// Coefficient of r².
        k1: f64,
        /// Coefficient of r⁴.
        k2: f64,
    },
    /// The wall cannot be brought into the frame.
    #[error("from there the wall cannot fill {percent} % of the photo: turn the camera less or fill less")]
    View {
        /// How much was asked, in per cent.
        percent: f64,
    },
    /// The pixels asked for each module need too big a photo.
    #[error(
        "{px} px a module need a photo of {width} x {height} px, at most 8000 x 6000 are possible: ask for fewer, or fill the frame more"
    )]
    TooManyPixels {
        /// Pixels a module that were asked.
        px: f64,
        /// Width that would be needed.
        width: usize,
        /// Height that would be needed.
        height: usize,
    },
    /// What was printed does not fit its own grid.
    #[error("the manifest has {squares} squares for a wall of {cells} cells: print the kit again")]
    Printed {
        /// Squares in the manifest.
        squares: usize,
        /// Cells of the grid.
        cells: usize,
    },
    /// A stranger's text that makes no code.
    #[error(transparent)]
    Code(#[from] crate::plan::code::CodeError),
    /// The JPEG could not be written.
    #[error("the made photo cannot be written as JPEG: {0}")]
    Jpeg(String),
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
    let camera = camera::framed(printed, options)?;
    let wall = wall::Wall::put_up(printed, picture, &hung, options, &camera);
    let front = front::Front::stand(printed, options, &camera);
    let scene = render::Scene { wall: &wall, front: &front, camera: &camera };
    let mut image = sensor::expose(&scene, options, watch);
    if options.sensor.mirrored {
        image::imageops::flip_horizontal_in_place(&mut image);
    }
    let truth = truth::tell(&scene, printed, &hung, options);
    let jpeg = file::jpeg(&image, options)?;
    Ok(Made { image, jpeg, truth })
}
