//! Made photos as phones store them: beside the wall a poster with a code of another kind, noise smoothed away, shadows lifted, edges
//! sharpened.

use everysquare::frame::{PhotoPx, Point, Vector, float, round_byte};
use everysquare::plan::Modules;
use everysquare::rehearse::Truth;
use image::RgbImage;
use image::codecs::jpeg::JpegEncoder;
use rayon::prelude::*;

use super::Outcome;
use super::patch::{Chance, Phone};

/// What a poster's code says.
const POSTERS: [&str; 3] = ["SHELF 12", "TICKETS", "ROOM 4B"];
/// Distance of the poster from the wall's edge, and side of a module of its code, in parts of a cell's side.
const BESIDE: f64 = 0.35;
const MODULE: f64 = 0.02;

/// The photo as a phone stores it.
pub fn stored(picture: &RgbImage, truth: &Truth, seed: u64) -> Outcome<Vec<u8>> {
    let mut chance = Chance(seed ^ 0x9e37_79b9);
    let mut picture = picture.clone();
    poster(&mut picture, truth, &mut chance)?;
    let phone = Phone { denoise: chance.between(0.2, 0.9), sharpen: chance.between(0.3, 1.0) };
    let lift = chance.between(0.0, 0.4);
    let processed = mapped(&picture, phone, lift);
    let mut jpeg = Vec::new();
    let quality = truth.options.sensor.jpeg_quality;
    JpegEncoder::new_with_quality(&mut jpeg, quality).encode_image(&processed)?;
    Ok(jpeg)
}

/// Puts a poster with a code to the right of the wall, or to its left, as far as the photo shows that.
fn poster(picture: &mut RgbImage, truth: &Truth, chance: &mut Chance) -> Outcome<()> {
    let code = Modules::encode(POSTERS[chance.pick(POSTERS.len())])?;
    let corners: Vec<[[f64; 2]; 4]> = truth.cells.iter().filter_map(|cell| cell.cell_px).collect();
    let (Some(first), Some(last)) = (corners.first(), corners.last()) else { return Ok(()) };
    let point = |p: [f64; 2]| Point::<PhotoPx>::new(p[0], p[1]);
    let right: Vector<PhotoPx> = point(first[1]) - point(first[0]);
    let down: Vector<PhotoPx> = point(first[3]) - point(first[0]);
    let from = point(last[1]) + right * BESIDE - down * chance.between(0.0, 2.0);
    let from = if chance.pick(2) == 0 { from } else { point(first[0]) - right * (BESIDE + 30.0 * MODULE) };
    for y in 0..29 * 40 {
        for x in 0..29 * 40 {
            let (column, row) = (x / 40, y / 40);
            let inside = (4..25).contains(&column) && (4..25).contains(&row);
            let dark = inside && code.dark(column - 4, row - 4);
            let at = from + right * (float(x) / 40.0 * MODULE) + down * (float(y) / 40.0 * MODULE);
            if at.x >= 0.0 && at.y >= 0.0 {
                let (u, v) = (
                    u32::try_from(everysquare::frame::floor_index(at.x))?,
                    u32::try_from(everysquare::frame::floor_index(at.y))?,
                );
                if let Some(pixel) = picture.get_pixel_mut_checked(u, v) {
                    *pixel = image::Rgb(if dark { [40, 38, 44] } else { [225, 222, 214] });
                }
            }
        }
    }
    Ok(())
}

/// Smoothed, with shadows lifted towards the light around them, sharpened.
fn mapped(picture: &RgbImage, phone: Phone, lift: f64) -> RgbImage {
    let (width, height) = picture.dimensions();
    let small = image::imageops::thumbnail(picture, (width / 32).max(1), (height / 32).max(1));
    let soft = image::imageops::blur(&small, 3.0);
    let around = image::imageops::resize(&soft, width, height, image::imageops::FilterType::Triangle);
    let channels: Vec<Vec<f64>> = (0..3_usize)
        .into_par_iter()
        .map(|k| {
            let levels: Vec<f64> = picture
                .pixels()
                .zip(around.pixels())
                .map(|(pixel, around)| {
                    let (level, around) = (f64::from(pixel.0[k]), f64::from(around.0[k]).max(8.0));
                    level * (1.0 + lift * (140.0 / around - 1.0).clamp(-0.3, 1.5))
                })
                .collect();
            phone.processed(&levels, picture.width().try_into().unwrap_or(1))
        })
        .collect();
    RgbImage::from_fn(width, height, |x, y| {
        let at = usize::try_from(y * width + x).unwrap_or(0);
        image::Rgb([0, 1, 2].map(|k| round_byte(channels[k][at])))
    })
}
