//! What is asked of a made photo.

use rand::RngExt;
use serde::{Deserialize, Serialize};

use super::RehearseError;
use super::chance::{Purpose, stream};
use super::printer::Printer;
use crate::words::Sentence;

/// Everything that decides how a made photo looks. All of it has a default; equal options give equal bytes.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct Options {
    /// Where all chance comes from.
    pub seed: u64,
    /// Width of the upright photo in pixels, 64 … 8000.
    pub width: usize,
    /// Height of the upright photo in pixels, 64 … 8000.
    pub height: usize,
    /// If given, the photo gets as many pixels as the median module needs to be at least so many pixels wide.
    pub min_px_per_module: Option<f64>,
    /// What is wrong on the wall.
    pub faults: Faults,
    /// Which cards hang.
    pub cards: Cards,
    /// How carefully the squares were put up.
    pub hanging: Hanging,
    /// Where the camera stands, and its lens.
    pub pose: Pose,
    /// How the wall is lit.
    pub light: Light,
    /// What the sensor and the file make of it.
    pub sensor: Sensor,
    /// What the squares hang on.
    pub backing: Backing,
    /// Whether pencil lines between the cells were drawn on it.
    pub backing_lines: bool,
    /// People who stand in front of the wall, 0 … 4.
    pub people: usize,
    /// Whether a ladder stands in front of the wall.
    pub ladder: bool,
    /// How the boards of a wall in parts stand.
    #[serde(skip_serializing_if = "BoardOptions::is_usual")]
    pub boards: BoardOptions,
    /// How well the codes were printed.
    #[serde(skip_serializing_if = "Printer::is_good")]
    pub printer: Printer,
    /// How much less true than usual the drawings are, 0 … 4: a factor for wobble, shift, zoom, tint and margins.
    #[serde(skip_serializing_if = "is_one")]
    pub unsteady: f64,
}

/// Options that came later are left out of files where they are as usual, so that those stay as they were.
#[allow(
    clippy::trivially_copy_pass_by_ref,
    clippy::float_cmp,
    reason = "serde asks for a reference; exactly as usual"
)]
fn is_one(factor: &f64) -> bool {
    *factor == 1.0
}

/// How the boards of a wall in parts stand.
#[derive(Copy, Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct BoardOptions {
    /// Least and most white between two of them, in mm, 0 … 3000.
    pub gap_mm: [f64; 2],
    /// The largest angle by which one is turned, to either side, out of the plane that the camera looks at, in degrees, 0 … 50.
    pub angle_degrees: f64,
}

impl Default for BoardOptions {
    fn default() -> Self {
        // room for the cards of both, a door, a window
        Self { gap_mm: [250.0, 900.0], angle_degrees: 0.0 }
    }
}

impl BoardOptions {
    #[allow(clippy::trivially_copy_pass_by_ref, reason = "serde asks for a reference")]
    fn is_usual(&self) -> bool {
        *self == Self::default()
    }
}

/// What is wrong on the wall. Each fault takes cells of its own.
#[derive(Clone, Debug, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct Faults {
    /// Pairs of squares that hang in each other's cell.
    pub swaps: usize,
    /// Threes of squares, each in the next one's cell.
    pub cycles: usize,
    /// Squares in their cell, turned by 90, 180 or 270 degrees.
    pub turns: usize,
    /// Cells where nothing hangs.
    pub missing: usize,
    /// Squares whose code was painted over.
    pub scribbled: usize,
    /// Squares with a strip of tape over half of their code.
    pub covered: usize,
    /// Squares with a corner torn off.
    pub torn: usize,
    /// Cells where a second copy of another square hangs.
    pub duplicates: usize,
    /// Cells where a square of another event hangs.
    pub strangers: usize,
    /// Every square in a wrong cell.
    pub permute_all: bool,
    /// Squares on which another piece was drawn: code, label and cell are right, the drawing is not.
    #[serde(skip_serializing_if = "is_zero")]
    pub misdrawn: usize,
    /// Squares on which the right piece was drawn, turned by 90, 180 or 270 degrees against the paper.
    #[serde(skip_serializing_if = "is_zero")]
    pub drawn_turned: usize,
    /// Squares on which nothing was drawn.
    #[serde(skip_serializing_if = "is_zero")]
    pub undrawn: usize,
    /// Squares of which only a part, a fifth to two fifths, was drawn.
    #[serde(skip_serializing_if = "is_zero")]
    pub begun: usize,
    /// Squares whose stub was left on and hangs out over the neighbour.
    #[serde(skip_serializing_if = "is_zero")]
    pub stubs: usize,
    /// Whether a border in reserve hangs too.
    #[serde(skip_serializing_if = "std::ops::Not::not")]
    pub border: bool,
}

/// Faults that came later are left out of files where there are none, so that those stay as they were.
#[allow(clippy::trivially_copy_pass_by_ref, reason = "serde asks for a reference")]
fn is_zero(count: &usize) -> bool {
    *count == 0
}

/// Which cards hang around the wall; cards that were not printed never do.
#[derive(Copy, Clone, Debug, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum Cards {
    /// All.
    #[default]
    All,
    /// The four corner cards.
    Corners,
    /// None.
    None,
}

/// How carefully the squares were put up.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct Hanging {
    /// Standard deviation of a square's place, right and down, in mm; cut off at 8 mm.
    pub misplacement_mm: f64,
    /// Standard deviation of its tilt in degrees; cut off at 4 degrees.
    pub askew_degrees: f64,
    /// Standard deviation of its cut side in mm; cut off at three times that.
    pub cut_mm: f64,
    /// How far paper typically stands out from the wall where it bends, in mm; 0 is flat.
    pub bend_mm: f64,
    /// Whether strips of tape show.
    pub tape: bool,
    /// Part of the visitors, 0 … 1, who drew into the white box around the code.
    pub drawn_into: f64,
}

/// Where the camera stands, and its lens.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct Pose {
    /// Part of the frame that the wall fills, in the direction that it fills most; above 1 it is cut. 0.05 … 4.
    pub fill: f64,
    /// How far to the right of the wall's middle the camera stands, in degrees.
    pub yaw_degrees: f64,
    /// How far above the wall's middle it stands, in degrees.
    pub pitch_degrees: f64,
    /// How far it is tilted about its own axis, clockwise, in degrees.
    pub roll_degrees: f64,
    /// The view along the photo's longer side, in degrees.
    pub view_degrees: f64,
    /// Where the wall's middle lies, as a part of the frame from its middle, to the right and down.
    pub off_centre: [f64; 2],
    /// The lens's radial coefficient of r², r in focal lengths.
    pub k1: f64,
    /// The lens's radial coefficient of r⁴.
    pub k2: f64,
}

/// How the wall is lit.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct Light {
    /// From the darkest to the brightest end of the wall, as a part of its mean, 0 … 1.5.
    pub gradient: f64,
    /// How much of the light a soft shadow band across the wall takes, 0 … 0.9.
    pub shadow: f64,
    /// How much of the light is missing in the photo's corners, 0 … 0.9.
    pub vignetting: f64,
    /// Colour of the light: factors for red, green and blue.
    pub cast: [f64; 3],
    /// Exposure; white paper in mean light comes out at this linear level, 0.05 … 2.
    pub exposure: f64,
}

/// What the sensor and the file make of it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct Sensor {
    /// Standard deviation of the blur in pixels, 0 … 10.
    pub blur_px: f64,
    /// Standard deviation of a mid-grey pixel, as a part of the full range, 0 … 0.5.
    pub noise: f64,
    /// How strongly edges are sharpened, 0 … 2.
    pub sharpen: f64,
    /// Quality of the JPEG, 1 … 100.
    pub jpeg_quality: u8,
    /// EXIF orientation of the file, 1 … 8.
    pub orientation: u16,
    /// Whether the photo is a mirror image, as a front camera stores it.
    pub mirrored: bool,
    /// When it says it was taken, `YYYY:MM:DD HH:MM:SS`; `None` leaves it out.
    pub taken: Option<String>,
}

/// What the squares hang on.
#[derive(Copy, Clone, Debug, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum Backing {
    /// White paper from a roll.
    #[default]
    White,
    /// Grey board.
    Grey,
    /// Coloured paper.
    Coloured,
    /// Wooden boards.
    Wood,
    /// Red paper.
    Red,
    /// Green paper.
    Green,
    /// Paper or cloth that is nearly black.
    Dark,
    /// A pinboard.
    Cork,
    /// The room's wall, of bricks.
    Brick,
    /// The room's wall, with a pattern.
    Patterned,
    /// The room's wall, painted.
    Bare,
}

impl Default for Options {
    fn default() -> Self {
        Self {
            seed: 1,
            width: 4032,
            height: 3024,
            min_px_per_module: None,
            faults: Faults::default(),
            cards: Cards::All,
            hanging: Hanging::default(),
            pose: Pose::default(),
            light: Light::default(),
            sensor: Sensor::default(),
            backing: Backing::White,
            backing_lines: false,
            people: 0,
            ladder: false,
            boards: BoardOptions::default(),
            printer: Printer::default(),
            unsteady: 1.0,
        }
    }
}

impl Default for Hanging {
    fn default() -> Self {
        Self {
            misplacement_mm: 3.0,
            askew_degrees: 1.5,
            cut_mm: 0.3,
            bend_mm: 1.0,
            tape: true,
            drawn_into: 0.25,
        }
    }
}

impl Default for Pose {
    fn default() -> Self {
        Self {
            fill: 0.85,
            yaw_degrees: 8.0,
            pitch_degrees: 3.0,
            roll_degrees: 1.5,
            view_degrees: 68.0,
            off_centre: [0.0, 0.0],
            k1: -0.03,
            k2: 0.01,
        }
    }
}

impl Default for Light {
    fn default() -> Self {
        Self { gradient: 0.3, shadow: 0.2, vignetting: 0.2, cast: [1.0, 1.0, 1.0], exposure: 0.75 }
    }
}

impl Default for Sensor {
    fn default() -> Self {
        Self {
            blur_px: 0.7,
            noise: 0.02,
            sharpen: 0.3,
            jpeg_quality: 88,
            orientation: 1,
            mirrored: false,
            taken: None,
        }
    }
}

impl Options {
    /// Options in which pose, lens, light, sensor and backing are drawn from the seed, within what a helper's phone
    /// gives in an ordinary room. Faults stay at none, cards at all.
    #[must_use]
    pub fn varied(seed: u64) -> Self {
        let mut rng = stream(seed, Purpose::Options);
        let mut between = |low: f64, high: f64| rng.random_range(low..=high);
        let pose = Pose {
            fill: between(0.75, 0.92),
            yaw_degrees: between(-22.0, 22.0),
            pitch_degrees: between(-8.0, 12.0),
            roll_degrees: between(-5.0, 5.0),
            view_degrees: between(60.0, 74.0),
            off_centre: [between(-0.02, 0.02), between(-0.02, 0.02)],
            k1: between(-0.06, 0.03),
            k2: between(-0.01, 0.02),
        };
        let light = Light {
            gradient: between(0.1, 0.6),
            shadow: between(0.0, 0.4),
            vignetting: between(0.05, 0.35),
            cast: [between(0.92, 1.08), 1.0, between(0.85, 1.1)],
            exposure: between(0.5, 0.85),
        };
        let sensor = Sensor {
            blur_px: between(0.5, 0.95),
            noise: between(0.008, 0.035),
            sharpen: between(0.0, 0.6),
            ..Sensor::default()
        };
        let backings = [Backing::White, Backing::Grey, Backing::Coloured, Backing::Wood];
        let backing = backings[rng.random_range(0..4)];
        let sensor = Sensor {
            jpeg_quality: rng.random_range(78..=95),
            orientation: rng.random_range(1..=8),
            ..sensor
        };
        Self { seed, pose, light, sensor, backing, backing_lines: rng.random(), ..Self::default() }
    }

    /// Whether every number is in its range.
    pub(super) fn check(&self) -> Result<(), RehearseError> {
        use crate::frame::float;
        let (h, p, l, s) = (&self.hanging, &self.pose, &self.light, &self.sensor);
        let least = self.min_px_per_module.unwrap_or(1.0);
        let (bare, px, mm, degrees) = (
            "error-rehearse-range",
            "error-rehearse-range-px",
            "error-rehearse-range-mm",
            "error-rehearse-range-degrees",
        );
        let ink = &self.printer;
        let ranges = [
            ("error-rehearse-option-width", float(self.width), 64.0, 8000.0, px),
            ("error-rehearse-option-height", float(self.height), 64.0, 8000.0, px),
            ("error-rehearse-option-px-per-module", least, 0.1, 40.0, px),
            ("error-rehearse-option-misplacement", h.misplacement_mm, 0.0, 8.0, mm),
            ("error-rehearse-option-askew", h.askew_degrees, 0.0, 4.0, degrees),
            ("error-rehearse-option-cut", h.cut_mm, 0.0, 2.0, mm),
            ("error-rehearse-option-bend", h.bend_mm, 0.0, 5.0, mm),
            ("error-rehearse-option-drawn-into", h.drawn_into, 0.0, 1.0, bare),
            ("error-rehearse-option-fill", p.fill, 0.05, 4.0, bare),
            ("error-rehearse-option-yaw", p.yaw_degrees, -60.0, 60.0, degrees),
            ("error-rehearse-option-pitch", p.pitch_degrees, -60.0, 60.0, degrees),
            ("error-rehearse-option-roll", p.roll_degrees, -180.0, 180.0, degrees),
            ("error-rehearse-option-view", p.view_degrees, 20.0, 110.0, degrees),
            ("error-rehearse-option-shift-right", p.off_centre[0], -1.0, 1.0, bare),
            ("error-rehearse-option-shift-down", p.off_centre[1], -1.0, 1.0, bare),
            ("error-rehearse-option-k1", p.k1, -0.5, 0.5, bare),
            ("error-rehearse-option-k2", p.k2, -0.5, 0.5, bare),
            ("error-rehearse-option-gradient", l.gradient, 0.0, 1.5, bare),
            ("error-rehearse-option-shadow", l.shadow, 0.0, 0.9, bare),
            ("error-rehearse-option-vignetting", l.vignetting, 0.0, 0.9, bare),
            ("error-rehearse-option-red", l.cast[0], 0.1, 3.0, bare),
            ("error-rehearse-option-green", l.cast[1], 0.1, 3.0, bare),
            ("error-rehearse-option-blue", l.cast[2], 0.1, 3.0, bare),
            ("error-rehearse-option-exposure", l.exposure, 0.05, 2.0, bare),
            ("error-rehearse-option-blur", s.blur_px, 0.0, 10.0, px),
            ("error-rehearse-option-noise", s.noise, 0.0, 0.5, bare),
            ("error-rehearse-option-sharpening", s.sharpen, 0.0, 2.0, bare),
            ("error-rehearse-option-quality", f64::from(s.jpeg_quality), 1.0, 100.0, bare),
            ("error-rehearse-option-orientation", f64::from(s.orientation), 1.0, 8.0, bare),
            ("error-rehearse-option-unsteady", self.unsteady, 0.0, 4.0, bare),
            ("error-rehearse-option-gap", self.boards.gap_mm[0], 0.0, 3000.0, mm),
            ("error-rehearse-option-gap", self.boards.gap_mm[1], self.boards.gap_mm[0], 3000.0, mm),
            ("error-rehearse-option-board-angle", self.boards.angle_degrees, 0.0, 50.0, degrees),
            ("error-rehearse-option-people", float(self.people), 0.0, 4.0, bare),
            ("error-rehearse-option-ink-runs", ink.ink_runs_mm, 0.0, 0.2, mm),
            ("error-rehearse-option-density", ink.density, 0.1, 1.0, bare),
            ("error-rehearse-option-streaks", ink.streaks, 0.0, 1.0, bare),
            ("error-rehearse-option-draft", ink.draft, 0.0, 1.0, bare),
        ];
        for (name, value, low, high, range) in ranges {
            if !(low..=high).contains(&value) {
                let allowed = Sentence::new(range).with("low", low).with("high", high);
                return Err(RehearseError::Option { name: Sentence::new(name), value, allowed });
            }
        }
        Ok(())
    }
}
