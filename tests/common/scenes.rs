//! Pictures drawn here: a lighthouse by the sea, as a photo might show it, as a clean drawing and as SVG. None is a photo.

#![allow(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "levels from 0 to 255")]

use image::{Rgb, RgbImage};

const SKY: [f64; 3] = [178.0, 214.0, 240.0];
const SUN: [f64; 3] = [250.0, 196.0, 64.0];
const SEA: [f64; 3] = [38.0, 92.0, 150.0];
const ROCK: [f64; 3] = [96.0, 74.0, 62.0];
const RED: [f64; 3] = [204.0, 58.0, 48.0];
const WHITE: [f64; 3] = [250.0, 248.0, 240.0];
const INK: [f64; 3] = [32.0, 34.0, 44.0];

/// The colours of [`drawing`].
pub const DRAWN: [[u8; 3]; 7] = [
    [178, 214, 240],
    [250, 196, 64],
    [38, 92, 150],
    [96, 74, 62],
    [204, 58, 48],
    [250, 248, 240],
    [32, 34, 44],
];

/// Which part of the scene is at a place; both from 0 to 1, y downwards, the scene 5 wide to 4 high.
fn part(x: f64, y: f64) -> [f64; 3] {
    let lamp = (x - 0.68).abs() < 0.035 && (0.2..0.26).contains(&y);
    let roof = y < 0.2 && y > 0.15 && (x - 0.68).abs() < (y - 0.15) * 0.9;
    let half = 0.045 + (y - 0.26) * 0.07;
    let tower = (0.26..0.72).contains(&y) && (x - 0.68).abs() < half;
    let outline = (0.26..0.72).contains(&y) && ((x - 0.68).abs() - half).abs() < 0.006;
    let rock = y > 0.7 && ((x - 0.7) / 0.26).powi(2) + ((y - 0.82) / 0.13).powi(2) < 1.0;
    let hull = (0.62..0.68).contains(&y) && (x - 0.25).abs() < 0.13 - (y - 0.62);
    let sail = (0.38..0.6).contains(&y) && x > 0.26 && x - 0.26 < (y - 0.38) * 0.55;
    let mast = (0.34..0.62).contains(&y) && (x - 0.245).abs() < 0.006;
    let sun = ((x - 0.2) * 1.25).hypot(y - 0.2) < 0.1;
    match () {
        () if lamp => SUN,
        () if roof || mast || outline => INK,
        () if tower && ((y - 0.26) / 0.115).floor().rem_euclid(2.0) < 1.0 => RED,
        () if tower || sail => WHITE,
        () if hull => RED,
        () if rock => ROCK,
        () if sun => SUN,
        () if y > 0.6 => SEA,
        () => SKY,
    }
}

/// The scene in seven flat colours; `fine` × `fine` samples a pixel mix them at edges, 1 mixes nothing.
pub fn drawing(width: u32, height: u32, fine: u32) -> RgbImage {
    RgbImage::from_fn(width, height, |x, y| {
        let samples = (0..fine * fine).map(|i| {
            let sub = |at: u32, i: u32| f64::from(at) + (f64::from(i) + 0.5) / f64::from(fine);
            part(sub(x, i % fine) / f64::from(width), sub(y, i / fine) / f64::from(height))
        });
        let sum = samples.fold([0.0; 3], |sum, own| [0, 1, 2].map(|part| sum[part] + own[part]));
        Rgb(sum.map(|sum| (sum / f64::from(fine * fine)).round() as u8))
    })
}

/// A number between -1 and 1 that is drawn by lot for a place.
fn lot(x: u32, y: u32, which: u32) -> f64 {
    let mut mixed =
        x.wrapping_mul(0x9e37_79b9) ^ y.wrapping_mul(0x85eb_ca6b) ^ which.wrapping_mul(0xc2b2_ae35);
    for _ in 0..2 {
        mixed ^= mixed >> 15;
        mixed = mixed.wrapping_mul(0x2c1b_3c6d);
    }
    f64::from(mixed) / f64::from(u32::MAX) * 2.0 - 1.0
}

/// The scene with light, shade, waves and grain, as a photo has them.
pub fn photo(width: u32, height: u32) -> RgbImage {
    RgbImage::from_fn(width, height, |px, py| {
        let (x, y) = ((f64::from(px) + 0.5) / f64::from(width), (f64::from(py) + 0.5) / f64::from(height));
        let flat = part(x, y);
        let light = match flat {
            SKY => 0.72 + 0.45 * y - 0.1 * (x * 9.0 + (y * 14.0).sin()).sin() * y,
            SEA => 0.65 + 0.5 * (y - 0.6) + 0.22 * ((y - 0.55).powf(0.4) * 160.0 + (x * 14.0).sin()).sin(),
            ROCK => 0.8 + 0.3 * (x * 40.0 + (y * 60.0).sin() * 2.0).sin() - (y - 0.8),
            SUN => 1.05,
            _ => 1.12 - 4.5 * (x - 0.65).clamp(0.0, 0.1),
        };
        let glow = (0.35 - (x - 0.2).hypot(y - 0.2)).max(0.0) * 1.6;
        let warm = [250.0, 170.0, 90.0];
        let mut own = [0, 1, 2].map(|i| flat[i] * light * (1.0 - glow) + warm[i] * glow);
        let grain = lot(px, py, 0) * 9.0;
        own.iter_mut().zip(1..).for_each(|(own, which)| *own += grain + lot(px, py, which) * 6.0);
        Rgb(own.map(|own| own.round().clamp(0.0, 255.0) as u8))
    })
}

/// Another scene as SVG, with a gradient and a word.
pub const SVG: &str = r##"<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" width="500" height="400" viewBox="0 0 500 400">
  <defs>
    <linearGradient id="sky" x1="0" y1="0" x2="0" y2="1">
      <stop offset="0" stop-color="#274b8f"/><stop offset="1" stop-color="#f4b37a"/>
    </linearGradient>
    <path id="gull" d="M0 0 q12 -16 24 0 q12 -16 24 0" fill="none" stroke="#22242c" stroke-width="5"/>
  </defs>
  <rect width="500" height="400" fill="url(#sky)"/>
  <circle cx="370" cy="230" r="58" fill="#ffd75e"/>
  <rect y="262" width="500" height="138" fill="#2f6f86"/>
  <path d="M0 262 L110 170 L190 262 Z M130 262 L230 200 L300 262 Z" fill="#3d5a3a"/>
  <path d="M90 300 h190 l-34 44 h-124 z" fill="#8e3b2e"/>
  <path d="M180 290 V110 L270 280 Z" fill="#fbf4e2" stroke="#22242c" stroke-width="3"/>
  <path d="M168 290 V140 L104 280 Z" fill="#d98a3d"/>
  <use xlink:href="#gull" x="330" y="90"/><use xlink:href="#gull" x="410" y="130"/>
  <text x="250" y="384" font-family="Anything" font-size="34" font-weight="bold" text-anchor="middle" fill="#fbf4e2">HARBOUR</text>
</svg>
"##;
