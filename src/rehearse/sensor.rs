//! From linear light to the bytes of the upright photo: blur, noise, tone, sharpening; band by band, so that a big photo
//! needs little memory.
//!
//! Noise depends on the pixel's place alone, so bands that overlap agree and the number of threads changes nothing.

use std::sync::atomic::{AtomicUsize, Ordering};

use image::RgbImage;
use rayon::prelude::*;

use super::chance::{Purpose, normal, stream};
use super::light::Lamp;
use super::options::Options;
use super::render::Scene;
use crate::frame::{ceil_index, float, floor_index, narrow, round_byte};

/// Rows of a band.
const BAND: usize = 96;
/// Normal deviates in the table from which noise is drawn; a power of two.
const DEVIATES: usize = 1 << 16;
/// Steps of the table of tones.
const TONES: usize = 1 << 14;
/// Linear level of a mid-grey pixel (118 of 255).
const MID_GREY: f64 = 0.18;
/// Part of the noise's variance at mid grey that does not come from the light.
const READ_NOISE: f64 = 0.2;

type Band = Vec<Vec<[f32; 3]>>;

/// Takes the photo.
pub(super) fn expose(scene: &Scene<'_>, options: &Options, watch: &(dyn Fn(f64) + Sync)) -> RgbImage {
    let (width, height) = (scene.camera.width, scene.camera.height);
    let film = Film::new(scene, options);
    let mut bytes = vec![0_u8; width * height * 3];
    let done = AtomicUsize::new(0);
    bytes.par_chunks_mut(BAND * width * 3).enumerate().for_each(|(index, out)| {
        let rows = out.len() / (width * 3);
        film.band(scene, index * BAND, rows, out);
        let now = done.fetch_add(rows, Ordering::Relaxed) + rows;
        watch(float(now) / float(height));
    });
    let side = |pixels: usize| u32::try_from(pixels).unwrap_or(0);
    // The buffer has just this size, so the picture is never the empty one.
    RgbImage::from_raw(side(width), side(height), bytes).unwrap_or_default()
}

struct Film {
    lamp: Lamp,
    /// The blur's weights from the middle on.
    weights: Vec<f32>,
    deviates: Vec<f32>,
    seed: u64,
    /// Variance of the noise without light and for each unit of light.
    read: f32,
    photons: f32,
    tones: Vec<f32>,
    sharpen: f32,
}

impl Film {
    fn new(scene: &Scene<'_>, options: &Options) -> Self {
        let sensor = &options.sensor;
        let mut rng = stream(options.seed, Purpose::Noise);
        let deviates = (0..DEVIATES).map(|_| narrow(normal(&mut rng))).collect();
        // The tone curve's slope at mid grey turns a deviation of the bytes into one of the light.
        let slope = (tone(MID_GREY * 1.01) - tone(MID_GREY * 0.99)) / (MID_GREY * 0.02);
        let variance = (sensor.noise / slope).powi(2);
        Self {
            lamp: Lamp::new(scene.wall.boards.size(), options, scene.camera),
            weights: weights(sensor.blur_px),
            deviates,
            seed: options.seed,
            read: narrow(variance * READ_NOISE),
            photons: narrow(variance * (1.0 - READ_NOISE) / MID_GREY),
            tones: (0..=TONES).map(|i| narrow(255.0 * tone(float(i) / float(TONES)))).collect(),
            sharpen: narrow(sensor.sharpen),
        }
    }

    /// Fills the bytes of `rows` rows from `first` on.
    fn band(&self, scene: &Scene<'_>, first: usize, rows: usize, out: &mut [u8]) {
        let (width, height) = (scene.camera.width, scene.camera.height);
        let reach = self.weights.len() - 1;
        // One row more on both sides for sharpening, and the blur's reach beyond them.
        let (from, to) = (first.saturating_sub(1), (first + rows + 1).min(height));
        let (lit_from, lit_to) = (from.saturating_sub(reach), (to + reach).min(height));
        let lit = self.light(scene, lit_from, lit_to);
        let toned: Band = (from..to)
            .map(|row| {
                let mut light = blur_down(&lit, row - lit_from, &self.weights);
                blur_across(&mut light, &self.weights);
                self.develop(row, width, &light)
            })
            .collect();
        for (i, bytes) in out.chunks_exact_mut(width * 3).enumerate() {
            self.sharpened(&toned, first + i - from, bytes);
        }
    }

    fn light(&self, scene: &Scene<'_>, from: usize, to: usize) -> Band {
        let mut above = scene.grounds(from);
        (from..to)
            .map(|row| {
                let below = scene.grounds(row + 1);
                let light = scene.row(row, &above, &below, &self.lamp);
                above = below;
                light
            })
            .collect()
    }

    /// Adds noise and takes light to tones, 0 … 255.
    fn develop(&self, row: usize, width: usize, light: &[[f32; 3]]) -> Vec<[f32; 3]> {
        light
            .iter()
            .enumerate()
            .map(|(column, levels)| {
                let mut chance = scramble(self.seed, row * width + column);
                levels.map(|level| {
                    let deviate = self.deviates[chance % DEVIATES];
                    chance /= DEVIATES;
                    let noisy = level + deviate * (self.read + self.photons * level.max(0.0)).sqrt();
                    let step = f64::from(noisy.clamp(0.0, 1.0)) * float(TONES);
                    self.tones[floor_index(step + 0.5)]
                })
            })
            .collect()
    }

    /// One row with the difference from its surroundings enlarged.
    fn sharpened(&self, toned: &Band, row: usize, bytes: &mut [u8]) {
        let (above, here) = (&toned[row.saturating_sub(1)], &toned[row]);
        let below = &toned[(row + 1).min(toned.len() - 1)];
        let last = here.len() - 1;
        for (x, pixel) in bytes.chunks_exact_mut(3).enumerate() {
            let (left, right) = (x.saturating_sub(1), (x + 1).min(last));
            for (i, byte) in pixel.iter_mut().enumerate() {
                let around = (above[x][i] + below[x][i] + here[left][i] + here[right][i]) / 4.0;
                let level = here[x][i] + self.sharpen * (here[x][i] - around);
                *byte = round_byte(f64::from(level));
            }
        }
    }
}

/// sRGB's tone curve (IEC 61966-2-1), 0 … 1 to 0 … 1.
fn tone(light: f64) -> f64 {
    if light <= 0.003_130_8 { 12.92 * light } else { 1.055 * light.powf(1.0 / 2.4) - 0.055 }
}

/// A Gaussian's weights from its middle on; together with their mirror image they add up to 1.
fn weights(deviation: f64) -> Vec<f32> {
    if deviation < 0.05 {
        return vec![1.0];
    }
    let half: Vec<f64> =
        (0..=ceil_index(3.0 * deviation)).map(|i| (-0.5 * (float(i) / deviation).powi(2)).exp()).collect();
    let all = 2.0 * half.iter().sum::<f64>() - half[0];
    half.iter().map(|weight| narrow(weight / all)).collect()
}

/// One row, blurred from above and below; beyond the picture its outermost row goes on.
fn blur_down(rows: &Band, row: usize, weights: &[f32]) -> Vec<[f32; 3]> {
    let mut out: Vec<[f32; 3]> =
        rows[row].iter().map(|levels| levels.map(|level| level * weights[0])).collect();
    for (i, weight) in weights.iter().enumerate().skip(1) {
        let (above, below) = (&rows[row.saturating_sub(i)], &rows[(row + i).min(rows.len() - 1)]);
        for ((sum, a), b) in out.iter_mut().zip(above).zip(below) {
            for k in 0..3 {
                sum[k] += weight * (a[k] + b[k]);
            }
        }
    }
    out
}

fn blur_across(row: &mut [[f32; 3]], weights: &[f32]) {
    let from = row.to_vec();
    let last = from.len() - 1;
    for (x, out) in row.iter_mut().enumerate() {
        *out = from[x].map(|level| level * weights[0]);
        for (i, weight) in weights.iter().enumerate().skip(1) {
            let (left, right) = (from[x.saturating_sub(i)], from[(x + i).min(last)]);
            for k in 0..3 {
                out[k] += weight * (left[k] + right[k]);
            }
        }
    }
}

/// 48 bits and more of chance for a place (the finalizer of SplitMix64: Steele, Lea and Flood, 2014).
fn scramble(seed: u64, place: usize) -> usize {
    let place = u64::try_from(place).unwrap_or(0);
    let mut z = seed.wrapping_add(place.wrapping_add(1).wrapping_mul(0x9e37_79b9_7f4a_7c15));
    z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
    z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
    z ^= z >> 31;
    usize::try_from(z >> 16).unwrap_or(0)
}
