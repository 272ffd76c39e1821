//! The light on the wall: brighter at one end, a soft shadow across it; and what the lens keeps from the corners.

use rand::RngExt;

use super::camera::Camera;
use super::chance::{Purpose, stream};
use super::options::Options;
use crate::frame::{float, narrow};

/// Linear level of unmarked paper, see [`super::paper::WHITE`]; what the exposure refers to.
const PAPER: f64 = 0.91;

/// The light.
#[derive(Clone, Debug)]
pub(super) struct Lamp {
    middle: [f64; 2],
    /// Growth of the light for each mm to the right and down.
    growth: [f64; 2],
    /// Unit vector across the shadow band, the band's place along it, its half width, and what it takes.
    across: [f64; 2],
    band: f64,
    half: f64,
    shadow: f64,
    exposure: [f64; 3],
    vignetting: f64,
    /// The photo's middle and half its diagonal, squared.
    frame: [f64; 2],
    reach2: f64,
}

impl Lamp {
    pub fn new(wall: [f64; 2], options: &Options, camera: &Camera) -> Self {
        let mut rng = stream(options.seed, Purpose::Light);
        let long = wall[0].hypot(wall[1]);
        let mut direction = || {
            let angle: f64 = rng.random_range(0.0..std::f64::consts::TAU);
            [angle.cos(), angle.sin()]
        };
        let (towards, across) = (direction(), direction());
        let (w, h) = (float(camera.width), float(camera.height));
        let light = &options.light;
        Self {
            middle: [wall[0] / 2.0, wall[1] / 2.0],
            growth: towards.map(|part| part * light.gradient / long),
            across,
            band: rng.random_range(-0.3..0.3) * long,
            half: rng.random_range(0.08..0.2) * long,
            shadow: light.shadow,
            exposure: light.cast.map(|part| part * light.exposure / PAPER),
            vignetting: light.vignetting,
            frame: [w / 2.0, h / 2.0],
            reach2: (w * w + h * h) / 4.0,
        }
    }

    /// Factors for red, green and blue at a place on the wall that is seen at (`px`, `py`).
    pub fn on(&self, x: f64, y: f64, px: f64, py: f64) -> [f32; 3] {
        let (dx, dy) = (x - self.middle[0], y - self.middle[1]);
        let even = 1.0 + self.growth[0] * dx + self.growth[1] * dy;
        let off = (self.across[0] * dx + self.across[1] * dy - self.band).abs() / self.half;
        // Full within the band, gone at one and a half times its half width.
        let deep = ((1.5 - off) * 2.0).clamp(0.0, 1.0);
        let shaded = 1.0 - self.shadow * deep * deep * (3.0 - 2.0 * deep);
        let (fx, fy) = (px - self.frame[0], py - self.frame[1]);
        let far = (fx * fx + fy * fy) / self.reach2;
        let all = even.clamp(0.1, 3.0) * shaded * (1.0 - self.vignetting * far * far);
        self.exposure.map(|part| narrow(part * all))
    }
}
