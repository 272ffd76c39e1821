//! One code as a phone might see it, cut out of a photo: light, blur, noise and JPEG, with drawings up to it, and now and then
//! something over it.
//!
//! The forward model is the bench's own: it shares no mathematics with `read`. Light adds up in linear levels, is blurred
//! there, gets noise, and only then the tone of a photo.

use everysquare::frame::{Point, Vector, ceil_index, float, floor_index, round_byte};
use everysquare::photo::Luma;
use everysquare::plan::Modules;
use everysquare::read::pose::Pose;
use image::codecs::jpeg::JpegEncoder;
use image::{ExtendedColorType, ImageFormat};

use super::Outcome;

/// Chance that is the same every time (the finalizer of SplitMix64: Steele, Lea and Flood, 2014).
pub struct Chance(pub u64);

impl Chance {
    fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        z ^ (z >> 31)
    }

    /// A whole number of 0 … below `below`.
    pub fn pick(&mut self, below: usize) -> usize {
        floor_index(self.between(0.0, float(below))).min(below.saturating_sub(1))
    }

    /// Evenly from `low` … `high`.
    pub fn between(&mut self, low: f64, high: f64) -> f64 {
        let thirty_two = u32::try_from(self.next() >> 32).unwrap_or(0);
        low + (high - low) * f64::from(thirty_two) / f64::from(u32::MAX)
    }

    /// Nearly normal: twelve even draws (central limit), deviation 1.
    pub fn normal(&mut self) -> f64 {
        (0..12).map(|_| self.between(-0.5, 0.5)).sum()
    }
}

/// What a camera does: blur in pixels, noise at mid grey, quality of the JPEG.
#[derive(Copy, Clone, Debug)]
pub struct Sensor {
    pub blur_px: f64,
    pub noise: f64,
    pub quality: u8,
}

/// What a phone makes of its picture: noise is smoothed away where there is little contrast, then edges are sharpened.
#[derive(Copy, Clone, Debug)]
pub struct Phone {
    /// How much of the noise is smoothed away, 0 … 1.
    pub denoise: f64,
    /// How strongly edges are sharpened, 0 … 1.
    pub sharpen: f64,
}

/// Differences of grey levels that are smoothed away: noise, and pale pencil.
const NOISE_LEVELS: f64 = 12.0;

impl Phone {
    pub const NONE: Self = Self { denoise: 0.0, sharpen: 0.0 };

    /// Half of the pictures are left as they are.
    pub fn drawn(chance: &mut Chance) -> Self {
        if chance.pick(2) == 0 {
            return Self::NONE;
        }
        Self { denoise: chance.between(0.0, 0.8), sharpen: chance.between(0.2, 1.0) }
    }

    /// Processed levels of a picture so many pixels wide, row by row.
    pub fn processed(self, levels: &[f64], side: usize) -> Vec<f64> {
        if self.denoise == 0.0 && self.sharpen == 0.0 {
            return levels.to_vec();
        }
        let around = |levels: &[f64], at: usize, weight: &dyn Fn(f64) -> f64| {
            let (x, y) = (at % side, at / side);
            let (mut sum, mut all) = (0.0, 0.0);
            for v in y.saturating_sub(1)..(y + 2).min(levels.len() / side) {
                for u in x.saturating_sub(1)..(x + 2).min(side) {
                    let level = levels[v * side + u];
                    let share = weight(level - levels[at]);
                    (sum, all) = (sum + share * level, all + share);
                }
            }
            sum / all
        };
        // a bilateral filter (Tomasi and Manduchi, 1998)
        let like = |apart: f64| (-0.5 * (apart / NOISE_LEVELS).powi(2)).exp();
        let smooth: Vec<f64> = (0..levels.len())
            .map(|at| levels[at] + self.denoise * (around(levels, at, &like) - levels[at]))
            .collect();
        (0..levels.len())
            .map(|at| smooth[at] + self.sharpen * (smooth[at] - around(&smooth, at, &|_| 1.0)))
            .collect()
    }
}

/// What is to be seen instead of a code, or over it.
#[derive(Copy, Clone, Debug, PartialEq)]
pub enum Over {
    Nothing,
    /// Everything beyond a line: a neighbour's paper, tape, or the wall where a corner is torn off.
    Edge {
        towards: f64,
        at: f64,
        level: f64,
    },
    /// Pencil strokes across.
    Strokes {
        towards: f64,
        apart: f64,
        wide: f64,
    },
}

/// How a code was printed.
#[derive(Copy, Clone, Debug, PartialEq)]
pub enum Print {
    Good,
    /// Ink that runs so far beyond each dark module, in modules.
    Runny(f64),
    /// Toner of a part of good black's density.
    Pale(f64),
    /// Bands across which a part of the toner is missing: along the rows or the columns, width of a band and of the space between
    /// two, in modules, and where they begin.
    Streaks {
        missing: f64,
        along_rows: bool,
        wide: f64,
        apart: f64,
        from: f64,
    },
    /// Rows of dots so high, in modules, every second of them with a part of the ink only, and a part of all dots missing.
    Draft {
        missing: f64,
        high: f64,
        dropped: f64,
    },
}

impl Print {
    pub const NAMES: [&str; 5] = ["good", "runny", "pale", "streaks", "draft"];

    /// The number of its kind.
    pub fn kind(self) -> usize {
        match self {
            Self::Good => 0,
            Self::Runny(_) => 1,
            Self::Pale(_) => 2,
            Self::Streaks { .. } => 3,
            Self::Draft { .. } => 4,
        }
    }

    /// Four of ten are good.
    pub fn drawn(chance: &mut Chance) -> Self {
        match chance.pick(10) {
            0..4 => Self::Good,
            4 | 5 => Self::Runny(chance.between(0.0, 0.25)),
            6 => Self::Pale(chance.between(0.2, 0.6)),
            7 | 8 => Self::Streaks {
                missing: chance.between(0.5, 0.95),
                along_rows: chance.pick(4) == 0,
                wide: chance.between(0.5, 2.5),
                apart: chance.between(3.0, 10.0),
                from: chance.between(0.0, 10.0),
            },
            _ => Self::Draft {
                missing: chance.between(0.5, 0.95),
                high: chance.between(0.15, 0.35),
                dropped: chance.between(0.0, 0.3),
            },
        }
    }

    /// How much ink lies at a place of a code, 0 … 1.
    fn ink(self, code: &Modules, x: f64, y: f64) -> f64 {
        let dark = |x: f64, y: f64| {
            (0.0..SIDE).contains(&x) && (0.0..SIDE).contains(&y) && code.dark(floor_index(x), floor_index(y))
        };
        let inked = |by: f64| {
            let steps = [-by, 0.0, by];
            steps.iter().any(|dx| steps.iter().any(|dy| dark(x + dx, y + dy)))
        };
        match self {
            Self::Good => f64::from(u8::from(dark(x, y))),
            Self::Runny(by) => f64::from(u8::from(inked(by))),
            Self::Pale(density) => density * f64::from(u8::from(dark(x, y))),
            Self::Streaks { .. } | Self::Draft { .. } if !dark(x, y) => 0.0,
            Self::Streaks { missing, along_rows, wide, apart, from } => {
                let across = if along_rows { y } else { x };
                if (across + from).rem_euclid(wide + apart) < wide { 1.0 - missing } else { 1.0 }
            }
            Self::Draft { missing, high, dropped } => {
                let place = |at: f64| u64::try_from(floor_index((at + 100.0) / high)).unwrap_or(0);
                let lost = Chance((place(x) << 24) ^ place(y)).between(0.0, 1.0) < dropped;
                if lost || place(y) % 2 == 1 { 1.0 - missing } else { 1.0 }
            }
        }
    }
}

/// What lies where, in modules from the code's top left corner.
pub struct Scene {
    pub code: Option<Modules>,
    pub print: Print,
    pub over: Over,
    /// So far from the code its surroundings stay white, in modules.
    pub white: f64,
    /// Side of the patches of colour around, in modules, and where their chance comes from.
    pub around: (f64, u64),
    /// Brightness of white paper, and its change from the code's one side to the other.
    pub light: (f64, [f64; 2]),
}

/// Reflectance of ink and paper.
const INK: f64 = 0.05;
const PAPER: f64 = 0.85;
const SIDE: f64 = 21.0;
/// Samples along a pixel's side.
const SAMPLES: usize = 3;

impl Scene {
    /// How much darker ink is than paper, as a share of the paper's brightness.
    pub const DARK: f64 = 1.0 - INK / PAPER;

    fn reflectance(&self, x: f64, y: f64) -> f64 {
        let (from, to) = (-self.white, SIDE + self.white);
        match self.over {
            Over::Edge { towards, at, level } => {
                let (sin, cos) = towards.sin_cos();
                if (x - SIDE / 2.0) * cos + (y - SIDE / 2.0) * sin > at {
                    return level;
                }
            }
            Over::Strokes { towards, apart, wide } => {
                let (sin, cos) = towards.sin_cos();
                if (x * cos + y * sin).rem_euclid(apart) < wide {
                    return 0.3;
                }
            }
            Over::Nothing => {}
        }
        if x < from || y < from || x >= to || y >= to {
            let (side, seed) = self.around;
            let patch = |v: f64| u64::try_from(floor_index((v + 1000.0) / side)).unwrap_or(0);
            return Chance(seed ^ (patch(x) << 20) ^ patch(y)).between(0.1, 0.9);
        }
        let ink = self.code.as_ref().map_or(0.0, |code| self.print.ink(code, x, y));
        PAPER + (INK - PAPER) * ink
    }

    fn level(&self, x: f64, y: f64) -> f64 {
        let (white, [right, down]) = self.light;
        let lit = 1.0 + right * (x / SIDE - 0.5) + down * (y / SIDE - 0.5);
        white * lit * self.reflectance(x, y) / PAPER
    }

    /// The linear levels that a lens with that blur throws on the pixels.
    pub fn blurred(&self, pose: &Pose, side: usize, blur_px: f64) -> Vec<f64> {
        let part = |k: usize| (float(k) + 0.5) / float(SAMPLES);
        let sharp: Vec<f64> = (0..side * side)
            .map(|i| {
                let sum: f64 = (0..SAMPLES * SAMPLES)
                    .filter_map(|s| {
                        let at = Point::new(
                            float(i % side) + part(s % SAMPLES),
                            float(i / side) + part(s / SAMPLES),
                        );
                        pose.photo_to_module(at).map(|m| self.level(m.x, m.y))
                    })
                    .sum();
                sum / float(SAMPLES * SAMPLES)
            })
            .collect();
        across(&across(&sharp, side, blur_px), side, blur_px)
    }

    /// The photo of it.
    pub fn photo(&self, pose: &Pose, sensor: Sensor, phone: Phone, chance: &mut Chance) -> Outcome<Luma> {
        let side = side(pose);
        let levels = self.blurred(pose, side, sensor.blur_px);
        let levels: Vec<f64> = levels
            .iter()
            .map(|level| {
                255.0 * toned(level + sensor.noise * (level.max(0.02) / 0.5).sqrt() * chance.normal())
            })
            .collect();
        let grey: Vec<u8> = phone.processed(&levels, side).into_iter().map(round_byte).collect();
        let length = u32::try_from(side)?;
        let mut jpeg = Vec::new();
        JpegEncoder::new_with_quality(&mut jpeg, sensor.quality).encode(
            &grey,
            length,
            length,
            ExtendedColorType::L8,
        )?;
        let grey = image::load_from_memory_with_format(&jpeg, ImageFormat::Jpeg)?.into_luma8().into_raw();
        Ok(Luma { width: side, height: side, grey })
    }
}

/// The tone of a photo: sRGB's exponent, about.
pub fn toned(level: f64) -> f64 {
    level.clamp(0.0, 1.0).powf(1.0 / 2.2)
}

/// Pixels along a patch that holds the code and a third more on all sides.
pub fn side(pose: &Pose) -> usize {
    ceil_index(1.7 * SIDE * pose.u.length().value().max(pose.v.length().value())) + 4
}

/// Blurred along the rows, and turned over so that doing it twice blurs both ways.
fn across(levels: &[f64], side: usize, blur_px: f64) -> Vec<f64> {
    let reach = ceil_index(3.5 * blur_px);
    let weights: Vec<f64> =
        (0..=2 * reach).map(|k| (-0.5 * ((float(k) - float(reach)) / blur_px).powi(2)).exp()).collect();
    let sum: f64 = weights.iter().sum();
    let mut turned = vec![0.0; side * side];
    for y in 0..side {
        for x in 0..side {
            let at = |k: usize| levels[y * side + (x + k).saturating_sub(reach).min(side - 1)];
            turned[x * side + y] = weights.iter().enumerate().map(|(k, w)| w * at(k)).sum::<f64>() / sum;
        }
    }
    turned
}

/// A pose in the middle of its patch: turned, narrowed and sheared as a wall seen from aside shows it.
pub fn pose(px: f64, chance: &mut Chance) -> Pose {
    let narrow = chance.between(0.85, 1.0);
    let turn = chance.between(-0.12, 0.12) + std::f64::consts::FRAC_PI_2 * float(chance.pick(4));
    let shear = chance.between(-0.05, 0.05);
    let u = Vector::new(px / narrow.sqrt(), 0.0).turned(turn);
    let v = Vector::new(shear * px, px * narrow.sqrt()).turned(turn);
    let pose = Pose { centre: Point::new(0.0, 0.0), u, v };
    let middle = float(side(&pose)) / 2.0;
    let centre = Point::new(middle + chance.between(-0.5, 0.5), middle + chance.between(-0.5, 0.5));
    Pose { centre, ..pose }
}

/// The pose as seek hands it on: a module off, some degrees askew.
pub fn rough(pose: &Pose, chance: &mut Chance) -> Pose {
    let askew = chance.between(-0.05, 0.05);
    let grown = chance.between(0.97, 1.03);
    let off = pose.u * chance.between(-0.8, 0.8) + pose.v * chance.between(-0.8, 0.8);
    Pose { centre: pose.centre + off, u: pose.u.turned(askew) * grown, v: pose.v.turned(askew) * grown }
}
