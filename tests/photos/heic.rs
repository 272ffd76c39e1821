//! Photos in HEIC: read as any other, and refused with a sentence where they are damaged, cut off or too large.
//!
//! The files are made here by the encoder that comes with the decoder; `tools/outside/heic.py` makes others with libheif and compares the
//! pixels with libheif's.

use everysquare::frame::{float, floor_index};
use everysquare::photo::{Photo, PhotoError};
use everysquare::picture::Picture;
use heifer::EncodeOptions;
use proptest::prelude::*;

/// A picture with edges, slopes and colours; wide enough for several tiles of 512 pixels where asked.
fn picture(width: u32, height: u32) -> image::RgbImage {
    image::RgbImage::from_fn(width, height, |x, y| {
        let ring = ((x.abs_diff(width / 3) / 9 + y.abs_diff(height / 2) / 7) % 2) * 120;
        let level = |n: u32| u8::try_from(n % 256).unwrap();
        image::Rgb([level(ring + 60), level(ring + x * 60 / width), level(ring + y * 60 / height)])
    })
}

fn heic(picture: &image::RgbImage, quality: u8) -> Vec<u8> {
    let options = EncodeOptions { quality, ..EncodeOptions::default() };
    heifer::encode_rgb8(picture.width(), picture.height(), picture.as_raw(), &options).unwrap()
}

fn mean_difference(a: &[u8], b: &[u8]) -> f64 {
    assert_eq!(a.len(), b.len());
    a.iter().zip(b).map(|(a, b)| f64::from(a.abs_diff(*b))).sum::<f64>() / float(a.len())
}

#[test]
fn a_photo_of_many_tiles_is_put_together() {
    let drawn = picture(1301, 1033);
    let photo = Photo::open(&heic(&drawn, 90)).unwrap();
    assert_eq!((photo.colour.width(), photo.colour.height()), (1301, 1033));
    assert_eq!((photo.luma.width, photo.luma.height), (1301, 1033));
    assert!(mean_difference(photo.colour.as_raw(), drawn.as_raw()) < 3.0);
    assert!(!photo.made);
}

#[test]
fn a_picture_to_draw_may_be_heic() {
    let drawn = picture(320, 240);
    let read = Picture::open(&heic(&drawn, 95)).unwrap();
    assert!(mean_difference(read.pixels.as_raw(), drawn.as_raw()) < 3.0);
}

#[test]
fn too_many_pixels_are_refused_by_the_declared_size() {
    let mut bytes = heic(&picture(128, 96), 60);
    // every ispe property (ISO/IEC 23008-12, 6.5.3): version and flags, width, height
    let places: Vec<usize> =
        bytes.windows(4).enumerate().filter(|(_, w)| w == b"ispe").map(|(at, _)| at).collect();
    assert!(!places.is_empty());
    for at in places {
        bytes[at + 8..at + 16].copy_from_slice(&[0, 0, 0x70, 0, 0, 0, 0x70, 0]);
    }
    let refused = Photo::open(&bytes).unwrap_err();
    assert_eq!(refused, PhotoError::TooLarge { width: 28_672, height: 28_672 });
    let few = Photo::open_within(&heic(&picture(1301, 1033), 60), 1_000_000).unwrap_err();
    assert_eq!(few, PhotoError::TooLarge { width: 1301, height: 1033 });
}

#[test]
fn films_and_other_codings_get_their_own_sentence() {
    let ftyp = |brands: &[u8]| {
        let mut bytes = u32::try_from(8 + brands.len()).unwrap().to_be_bytes().to_vec();
        bytes.extend(b"ftyp");
        bytes.extend(brands);
        bytes
    };
    assert_eq!(Photo::open(&ftyp(b"qt  \0\0\0\0qt  ")).unwrap_err(), PhotoError::Video);
    assert_eq!(Photo::open(&ftyp(b"isom\0\0\0\0mp42")).unwrap_err(), PhotoError::Video);
    assert_eq!(Photo::open(&ftyp(b"avif\0\0\0\0mif1")).unwrap_err(), PhotoError::Avif);
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(96))]

    #[test]
    fn whatever_is_damaged_ends_in_a_sentence(
        cut in 0.0..1.0_f64,
        changes in proptest::collection::vec((0.0..1.0_f64, any::<u8>()), 0..12),
        head in any::<bool>(),
    ) {
        let whole = heic(&picture(160, 120), 50);
        let mut bytes = whole.clone();
        let reach = if head { bytes.len().min(700) } else { bytes.len() };
        for (place, value) in changes {
            bytes[floor_index(place * float(reach))] = value;
        }
        let _ = Photo::open(&bytes); // neither a panic nor an endless run
        let end = floor_index(cut * float(whole.len()));
        prop_assert!(Photo::open(&whole[..end]).is_err());
    }
}
