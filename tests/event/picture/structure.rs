//! SSIM: what must hold of any two pictures. That the numbers are right is checked against scikit-image, `tools/outside/display.py`.

use everysquare::frame::round_byte;
use everysquare::picture::Picture;
use everysquare::picture::structure::{ssim, wall_likeness};
use image::imageops::{FilterType, flip_vertical, resize};
use image::{Rgb, RgbImage};
use proptest::prelude::*;

fn noise(width: u32, height: u32, seed: u32, depth: u32) -> RgbImage {
    RgbImage::from_fn(width, height, |x, y| {
        let lot = (x * 7919 + y * 104_729 + seed * 15_485_863).wrapping_mul(2_654_435_761) >> 16;
        Rgb([u8::try_from(128 + lot % (depth + 1) - depth / 2).unwrap(); 3])
    })
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    #[test]
    fn the_same_is_one_and_the_order_does_not_matter(
        width in 1_u32..60, height in 1_u32..60, a in 0_u32..1000, b in 0_u32..1000, depth in 0_u32..200,
    ) {
        let (one, other) = (noise(width, height, a, depth), noise(width, height, b, 100));
        let same = ssim(&one, &one).unwrap();
        prop_assert_eq!(same.mean, 1.0);
        prop_assert!(same.map.iter().all(|own| *own == 1.0));
        let (there, back) = (ssim(&one, &other).unwrap(), ssim(&other, &one).unwrap());
        prop_assert!((there.mean - back.mean).abs() < 1e-6);
        prop_assert!(there.mean <= 1.0 && there.mean >= -1.0);
        prop_assert_eq!(there.map.len(), (width * height) as usize);
    }
}

#[test]
fn more_noise_is_less_alike() {
    let picture =
        RgbImage::from_fn(120, 90, |x, y| Rgb([if (x / 20 + y / 15) % 2 == 0 { 70 } else { 180 }; 3]));
    let noisy = |depth: u32| {
        let off = noise(120, 90, 3, depth);
        RgbImage::from_fn(120, 90, |x, y| {
            Rgb([picture.get_pixel(x, y).0[0].saturating_add(off.get_pixel(x, y).0[0]).wrapping_sub(128); 3])
        })
    };
    let told: Vec<f64> = [0, 10, 30, 60].map(|depth| ssim(&picture, &noisy(depth)).unwrap().mean).into();
    assert!(told.is_sorted_by(|a, b| a > b), "{told:?}");
}

#[test]
fn other_sizes_and_no_pixels_have_no_likeness() {
    assert_eq!(ssim(&RgbImage::new(4, 5), &RgbImage::new(5, 4)), None);
    assert_eq!(ssim(&RgbImage::new(0, 0), &RgbImage::new(0, 0)), None);
    assert_eq!(wall_likeness(&RgbImage::new(0, 0), &RgbImage::new(5, 4)), 0.0);
}

/// Neither a photo's resolution nor crayon's grain makes a wall unlike; another picture does.
#[test]
fn a_wall_is_like_its_original_in_any_size_and_grain() {
    let original = Picture::open(everysquare::cli::sample::PICTURE_PNG).unwrap().pixels;
    let grain = |picture: &RgbImage| {
        let off = noise(picture.width(), picture.height(), 9, 60);
        let mut grainy = picture.clone();
        for (own, off) in grainy.pixels_mut().zip(off.pixels()) {
            own.0 = own.0.map(|level| round_byte(f64::from(level) + f64::from(off.0[0]) - 128.0));
        }
        grainy
    };
    for width in [1000, 2000] {
        let wall = resize(&original, width, width * 4 / 5, FilterType::Triangle);
        let (plain, grainy) = (wall_likeness(&wall, &original), wall_likeness(&grain(&wall), &original));
        let other = wall_likeness(&flip_vertical(&wall), &original);
        assert!(plain > 0.97 && grainy > 0.75 && other < 0.5, "{width}: {plain} {grainy} {other}");
    }
}
