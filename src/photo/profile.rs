//! Colour profiles (ICC.1:2022): pixels of a wide-gamut picture taken to sRGB, which everything after this expects.
//!
//! Phones store photos in Display P3; read as sRGB, their reds and greens come out dull. Only profiles that describe red, green and blue
//! are followed, and only where they differ from sRGB; a damaged profile is passed over, as viewers do.

use std::panic::{AssertUnwindSafe, catch_unwind};

use image::RgbImage;
use moxcms::{ColorProfile, DataColorSpace, Layout, TransformOptions};
use rayon::prelude::*;

/// Number of pixels in a band, the unit of parallel work.
pub(super) const BAND: usize = 1 << 16;
/// Maximum size of a profile that is followed, in bytes: those of phones have some 500, of scanners half a million.
const MOST_BYTES: usize = 4 << 20;
/// Steps along each channel in which a profile is compared with sRGB.
const STEPS: [u8; 5] = [0, 63, 127, 191, 255];
/// Maximum difference from sRGB, in levels, of a profile that is sRGB by another name.
const SAME: u8 = 2;

/// Takes pixels from the colours of an embedded profile to sRGB, in place. Whether anything was done.
pub fn to_srgb(pixels: &mut RgbImage, profile: Option<&[u8]>) -> bool {
    let Some(profile) = profile.filter(|bytes| bytes.len() <= MOST_BYTES) else { return false };
    // a profile is as hostile as the file that holds it
    catch_unwind(AssertUnwindSafe(|| converted(pixels, profile))).ok().flatten().is_some()
}

/// `None` where the profile is sRGB, or cannot be followed.
fn converted(pixels: &mut RgbImage, profile: &[u8]) -> Option<()> {
    let profile = ColorProfile::new_from_slice(profile).ok()?;
    if profile.color_space != DataColorSpace::Rgb {
        return None;
    }
    let transform = profile
        .create_transform_8bit(
            Layout::Rgb,
            &ColorProfile::new_srgb(),
            Layout::Rgb,
            TransformOptions::default(),
        )
        .ok()?;
    let tried: Vec<u8> = (STEPS.iter())
        .flat_map(|r| STEPS.iter().flat_map(move |g| STEPS.iter().flat_map(move |b| [*r, *g, *b])))
        .collect();
    let mut out = vec![0; tried.len()];
    transform.transform(&tried, &mut out).ok()?;
    if tried.iter().zip(&out).all(|(before, after)| before.abs_diff(*after) <= SAME) {
        return None;
    }
    let done = pixels.par_chunks_mut(3 * BAND).map(|band| {
        let before = band.to_vec();
        transform.transform(&before, band).is_ok()
    });
    done.reduce(|| true, |one, other| one && other).then_some(())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn display_p3_comes_as_the_srgb_that_looks_the_same_and_srgb_stays() {
        let p3 = ColorProfile::new_display_p3().encode().unwrap();
        let srgb = ColorProfile::new_srgb().encode().unwrap();
        let own = RgbImage::from_fn(300, 300, |x, _| image::Rgb([if x < 150 { 200 } else { 128 }, 128, 128]));
        let mut pixels = own.clone();
        assert!(!to_srgb(&mut pixels, Some(&srgb)) && !to_srgb(&mut pixels, None));
        assert_eq!(pixels, own);
        assert!(to_srgb(&mut pixels, Some(&p3)));
        let [r, g, b] = pixels.get_pixel(10, 10).0;
        // by the matrices of CSS Color 4, section 10: color(display-p3 .784 .502 .502) is rgb(212, 124, 126)
        assert!(r.abs_diff(212) <= 1 && g.abs_diff(124) <= 1 && b.abs_diff(126) <= 1, "{r} {g} {b}");
        assert_eq!(pixels.get_pixel(290, 10).0, [128; 3], "grey stays grey");
    }

    #[test]
    fn a_damaged_profile_changes_nothing() {
        let p3 = ColorProfile::new_display_p3().encode().unwrap();
        let own = RgbImage::from_pixel(64, 64, image::Rgb([200, 30, 30]));
        for cut in (0..p3.len()).step_by(7) {
            let mut pixels = own.clone();
            if !to_srgb(&mut pixels, Some(&p3[..cut])) {
                assert_eq!(pixels, own, "cut at {cut}");
            }
        }
        let mut pixels = own.clone();
        assert!(!to_srgb(&mut pixels, Some(&[0xff; 500])));
        assert_eq!(pixels, own);
    }
}
