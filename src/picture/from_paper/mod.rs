//! A photo of a drawing on paper becomes a picture: the sheet is found, straightened, and its light evened, so that paper is white and
//! a lamp's shadow is no colour.
//!
//! ```text
//!   photo ─▶ sheet: four corners ─▶ shape: width by height ─▶ straightened ─▶ light evened ─▶ picture
//!              │  not sure: refused, or by hand                                  └ without the rim, where paper curls
//!              └ edges of bright or unlike areas, each side tried on the photo's own edges
//! ```
//!
//! ```
//! use everysquare::picture::from_paper::from_paper;
//! use image::{Rgb, RgbImage};
//!
//! let sheet = |x: u32, y: u32| (100..500).contains(&x) && (60..360).contains(&y);
//! let photo = RgbImage::from_fn(600, 420, |x, y| if sheet(x, y) { Rgb([200, 190, 170]) } else { Rgb([90, 60, 40]) });
//! let found = from_paper(&photo, None)?;
//! assert!((found.corners[2].x - 500.0).abs() < 1.0 && (found.corners[2].y - 360.0).abs() < 1.0);
//! assert_eq!(found.picture.pixels.get_pixel(50, 50), &Rgb([255; 3])); // yellowish light is gone
//! # Ok::<(), everysquare::picture::from_paper::PaperError>(())
//! ```

mod light;
mod shape;
mod sheet;
mod side;

use image::imageops::crop_imm;
use image::{Rgb, RgbImage};
use imageproc::geometric_transformations::{Border, Interpolation, Projection, warp_into};
use thiserror::Error;

use super::Picture;
use crate::frame::{PicturePx, Point, float, narrow, round_index};
use crate::words::{Sentence, Tell, told_in_english};

/// Longest side of the straightened sheet, in pixels: 300 an inch on a sheet of ten inches.
const LONGEST_PX: f64 = 3_000.0;
/// Rim that is left out, in parts of the sheet's shorter side: a sheet's edge curls, has a shadow, and its corners are right to less than
/// that.
const RIM: f64 = 0.012;

/// Corners of a sheet in a photo: as the sheet lies in it, top left, top right, bottom right, bottom left.
pub type Corners = [Point<PicturePx>; 4];

/// A drawing that was on paper.
#[derive(Clone, Debug, PartialEq)]
pub struct FromPaper {
    /// The drawing on white.
    pub picture: Picture,
    /// Where the sheet's corners are in the photo.
    pub corners: Corners,
    /// Width of the sheet divided by its height.
    pub shape: f64,
}

/// Reason why a photo gives no drawing.
#[derive(Copy, Clone, Debug, Error, PartialEq, Eq)]
pub enum PaperError {
    /// No four edges that are sure.
    NotFound,
    /// Corners by hand that are no quadrilateral within the photo.
    Corners,
}

told_in_english!(PaperError);

impl Tell for PaperError {
    fn sentence(&self) -> Sentence {
        match self {
            Self::NotFound => Sentence::new("error-paper-not-found"),
            Self::Corners => Sentence::new("error-paper-corners"),
        }
    }
}

/// Takes a drawing out of a photo; where `by_hand` is given, these are the sheet's corners, in any order.
///
/// # Errors
/// [`PaperError`] where no sheet is found for sure, or where corners by hand make no sheet.
pub fn from_paper(photo: &RgbImage, by_hand: Option<Corners>) -> Result<FromPaper, PaperError> {
    let corners = match by_hand {
        Some(corners) => sheet::by_hand(corners, photo.dimensions()).ok_or(PaperError::Corners)?,
        None => sheet::find(photo).ok_or(PaperError::NotFound)?,
    };
    let shape = shape::usual(shape::seen(&corners, photo.dimensions()));
    let straight = straightened(photo, &corners, shape).ok_or(PaperError::Corners)?;
    Ok(FromPaper { picture: Picture { pixels: light::evened(straight) }, corners, shape })
}

/// The sheet from straight above, without its rim.
fn straightened(photo: &RgbImage, corners: &Corners, shape: f64) -> Option<RgbImage> {
    let [a, b, c, d] = corners;
    let longer = |one: f64, other: f64| one.max(other);
    let across = longer(b.distance(*a).value(), c.distance(*d).value());
    let down = longer(d.distance(*a).value(), c.distance(*b).value());
    // as many pixels as the photo has along the side that it shows best
    let width = across.max(down * shape);
    let width = width.min(LONGEST_PX).min(LONGEST_PX * shape).max(2.0);
    let (width, height) = (width.round(), (width / shape).round().max(2.0));
    let point = |p: &Point<PicturePx>| (narrow(p.x - 0.5), narrow(p.y - 0.5));
    // pixels' centres lie at whole numbers here
    let (right, below) = (narrow(width - 0.5), narrow(height - 0.5));
    let to = [(-0.5, -0.5), (right, -0.5), (right, below), (-0.5, below)];
    let straighten = Projection::from_control_points(corners.each_ref().map(point), to)?;
    let px = |length: f64| u32::try_from(round_index(length)).unwrap_or(1).max(1);
    let mut sheet = RgbImage::new(px(width), px(height));
    warp_into(photo, straighten, Interpolation::Bilinear, Border::Constant(Rgb([255; 3])), &mut sheet);
    let rim = px(RIM * float(usize::try_from(sheet.width().min(sheet.height())).ok()?));
    let (wide, high) =
        (sheet.width().saturating_sub(2 * rim).max(1), sheet.height().saturating_sub(2 * rim).max(1));
    Some(crop_imm(&sheet, rim, rim, wide, high).to_image())
}
