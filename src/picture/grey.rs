//! A picture in greys, from the white of paper to the black of a pencil.

use super::Picture;
use super::colour::Seen;
use crate::frame::{float, floor_index, narrow};

/// Share of the darkest and of the lightest pixels that become black and white: those of specks and reflections.
const ENDS: f64 = 0.01;
/// Steps of lightness that are counted.
const STEPS: usize = 256;
/// Minimum range of lightness, 0 … 1, that is stretched: less is a picture of next to nothing, whose grain would be all there is.
const LEAST_RANGE: f32 = 0.1;

/// The picture in greys of its lightness, stretched so that its darkest parts are black and its lightest are paper.
pub(super) fn greyed(mut picture: Picture) -> Picture {
    let (darkest, lightest) = ends(&picture);
    let range = lightest - darkest;
    let mut last: Option<([u8; 3], [u8; 3])> = None;
    for pixel in picture.pixels.pixels_mut() {
        let known = last.filter(|(from, _)| *from == pixel.0);
        let grey = known.map_or_else(
            || {
                let Seen([lightness, ..]) = Seen::of(pixel.0);
                let stretched = if range < LEAST_RANGE { lightness } else { (lightness - darkest) / range };
                Seen([stretched.clamp(0.0, 1.0), 0.0, 0.0]).to_srgb()
            },
            |(_, to)| to,
        );
        last = Some((pixel.0, grey));
        pixel.0 = grey;
    }
    picture
}

/// Lightness, 0 … 1, below and above which [`ENDS`] of all pixels lie.
fn ends(picture: &Picture) -> (f32, f32) {
    let mut counts = [0_usize; STEPS];
    let mut all = 0;
    for pixel in picture.pixels.pixels() {
        let Seen([lightness, ..]) = Seen::of(pixel.0);
        counts[floor_index(f64::from(lightness) * float(STEPS - 1) + 0.5).min(STEPS - 1)] += 1;
        all += 1;
    }
    let few = floor_index(ENDS * float(all));
    let at = |step: usize| narrow(float(step) / float(STEPS - 1));
    let darkest = reached(&counts, few).map_or(0.0, at);
    counts.reverse();
    let lightest = reached(&counts, few).map_or(1.0, |step| at(STEPS - 1 - step));
    (darkest, lightest)
}

/// The first step at which more than `few` have been counted.
fn reached(counts: &[usize], few: usize) -> Option<usize> {
    let mut below = 0;
    counts.iter().position(|count| {
        below += count;
        below > few
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use image::{Rgb, RgbImage};

    #[test]
    fn a_dull_picture_becomes_black_and_white_with_greys_between() {
        let levels = [70, 110, 150];
        let dull = RgbImage::from_fn(30, 10, |x, _| Rgb([levels[usize::try_from(x / 10).unwrap_or(0)]; 3]));
        let grey = greyed(Picture { pixels: dull }).pixels;
        let [dark, middle, light] = [5, 15, 25].map(|x| grey.get_pixel(x, 5).0[0]);
        assert!(dark < 6 && light > 249 && (90..166).contains(&middle), "{dark} {middle} {light}");
        // and once more changes nothing that one would see
        let again = greyed(Picture { pixels: grey.clone() }).pixels;
        assert!(again.pixels().zip(grey.pixels()).all(|(a, b)| a.0[0].abs_diff(b.0[0]) < 4));
    }

    #[test]
    fn hardly_anything_is_not_made_of_grain() {
        let even = RgbImage::from_fn(20, 20, |x, _| Rgb([if x < 10 { 120 } else { 124 }; 3]));
        let grey = greyed(Picture { pixels: even }).pixels;
        assert!(grey.pixels().all(|pixel| (115..130).contains(&pixel.0[0])));
    }
}
