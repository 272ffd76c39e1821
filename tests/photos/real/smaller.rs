//! Photographs made smaller, with what a sensor and a file add.

use everysquare::frame::{PhotoPx, Point, ceil_index, float, floor_index, round_byte};
use everysquare::photo::Luma;
use image::codecs::jpeg::JpegEncoder;
use image::{ExtendedColorType, GrayImage, ImageFormat};
use rayon::prelude::*;

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

    /// Evenly from −1 … 1.
    pub fn either_way(&mut self) -> f64 {
        (self.next() >> 11) as f64 / (1_u64 << 52) as f64 - 1.0
    }

    /// Nearly normal: twelve even draws (central limit), deviation 1.
    fn normal(&mut self) -> f64 {
        (0..12).map(|_| self.either_way()).sum::<f64>() / 2.0
    }
}

/// Each new pixel is the mean of the area that it covers.
pub fn resampled(luma: &Luma, scale: f64) -> Luma {
    let (width, height) = (floor_index(float(luma.width) * scale), floor_index(float(luma.height) * scale));
    let shares = |new: usize, old: usize| -> Vec<(usize, f64)> {
        let (from, to) = (float(new) / scale, ((float(new) + 1.0) / scale).min(float(old)));
        (floor_index(from)..ceil_index(to))
            .map(|k| (k, (float(k) + 1.0).min(to) - float(k).max(from)))
            .collect()
    };
    let across: Vec<Vec<(usize, f64)>> = (0..width).map(|x| shares(x, luma.width)).collect();
    let rows: Vec<Vec<u8>> = (0..height)
        .into_par_iter()
        .map(|y| {
            let down = shares(y, luma.height);
            let area = scale * scale;
            let level = |columns: &Vec<(usize, f64)>| {
                let line = |row: usize| {
                    columns.iter().map(|(x, w)| w * f64::from(luma.grey[row * luma.width + x])).sum::<f64>()
                };
                round_byte(area * down.iter().map(|(row, w)| w * line(*row)).sum::<f64>())
            };
            across.iter().map(level).collect()
        })
        .collect();
    Luma { width, height, grey: rows.concat() }
}

/// Grey levels of noise, deviation of the blur in pixels, quality of the JPEG.
const NOISE: f64 = 3.0;
const BLUR_PX: f32 = 0.5;
const QUALITY: u8 = 85;

/// Blurred, noisy, through a JPEG and back.
pub fn worsened(luma: &Luma, seed: u64) -> Luma {
    let side = |n: usize| u32::try_from(n).unwrap();
    let picture = GrayImage::from_raw(side(luma.width), side(luma.height), luma.grey.clone()).unwrap();
    let mut picture = image::imageops::blur(&picture, BLUR_PX);
    let mut chance = Chance(seed);
    for pixel in picture.iter_mut() {
        *pixel = round_byte(f64::from(*pixel) + NOISE * chance.normal());
    }
    let mut jpeg = Vec::new();
    JpegEncoder::new_with_quality(&mut jpeg, QUALITY)
        .encode(&picture, picture.width(), picture.height(), ExtendedColorType::L8)
        .unwrap();
    let grey = image::load_from_memory_with_format(&jpeg, ImageFormat::Jpeg).unwrap().into_luma8().into_raw();
    Luma { grey, ..*luma }
}

/// The mean side of a code's module.
pub fn px_per_module(corners: &[Point<PhotoPx>; 4], side: usize) -> f64 {
    let [a, b, c, d] = *corners;
    let twice = (c - a).cross(d - b).abs();
    (twice / 2.0).sqrt() / float(side)
}

pub fn scaled(corners: &[Point<PhotoPx>; 4], scale: f64) -> [Point<PhotoPx>; 4] {
    corners.map(|p| Point::new(p.x * scale, p.y * scale))
}
