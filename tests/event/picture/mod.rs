//! The picture: every format, hostile files, pieces that are the picture again.

mod kept;
mod ordered;
mod reduce;
mod structure;
mod svg;

use std::io::Cursor;

use everysquare::picture::{Crop, Picture, PictureError};
use everysquare::plan::{Cell, Grid};
use image::{DynamicImage, ImageFormat, Rgb, RgbImage, Rgba, RgbaImage};
use proptest::prelude::*;

fn grid(columns: usize, rows: usize) -> Grid {
    Grid::usual(columns, rows)
}

/// A picture in which every pixel is another one.
fn uneven(width: u32, height: u32) -> RgbImage {
    RgbImage::from_fn(width, height, |x, y| {
        let mix = (x * 7919 + y * 104_729).to_le_bytes();
        Rgb([mix[0], mix[1], mix[2]])
    })
}

fn file(image: &DynamicImage, format: ImageFormat) -> Vec<u8> {
    let mut bytes = Cursor::new(Vec::new());
    image.write_to(&mut bytes, format).unwrap();
    bytes.into_inner()
}

#[test]
fn every_lossless_format_gives_the_same_pixels() {
    let pixels = uneven(37, 23);
    let image = DynamicImage::from(pixels.clone());
    for format in [ImageFormat::Png, ImageFormat::WebP, ImageFormat::Tiff] {
        assert_eq!(Picture::open(&file(&image, format)).unwrap().pixels, pixels, "{format:?}");
    }
    let deep = file(&DynamicImage::from(image.to_rgb16()), ImageFormat::Png);
    assert_eq!(Picture::open(&deep).unwrap().pixels, pixels, "16 bits");
    let grey = file(&DynamicImage::from(image.to_luma8()), ImageFormat::Png);
    assert_eq!(Picture::open(&grey).unwrap().size(), (37, 23));
}

#[test]
fn a_jpeg_is_read_and_one_cut_short_is_refused() {
    let bytes =
        file(&DynamicImage::from(RgbImage::from_pixel(64, 48, Rgb([200, 100, 50]))), ImageFormat::Jpeg);
    let picture = Picture::open(&bytes).unwrap();
    assert!(picture.pixels.pixels().all(|p| p.0.iter().zip([200, 100, 50]).all(|(a, b)| a.abs_diff(b) < 4)));
    for part in [bytes.len() / 2, bytes.len() * 9 / 10, bytes.len() - 2] {
        assert_eq!(Picture::open(&bytes[..part]), Err(PictureError::Short));
    }
}

#[test]
fn transparency_lies_on_white() {
    let clear = RgbaImage::from_fn(3, 1, |x, _| Rgba([10, 20, 30, [0, 255, 128][x as usize]]));
    let picture = Picture::open(&file(&DynamicImage::from(clear), ImageFormat::Png)).unwrap();
    let shown: Vec<_> = picture.pixels.pixels().map(|p| p.0).collect();
    assert_eq!(shown, [[255, 255, 255], [10, 20, 30], [132, 137, 142]]);
}

#[test]
fn inks_of_print_and_moving_pictures_are_read() {
    let inks = Picture::open(include_bytes!("cmyk.jpg")).unwrap();
    let near = |x: u32, colour: [u8; 3]| {
        let own = inks.pixels.get_pixel(x, 16).0;
        assert!(own.iter().zip(colour).all(|(a, b)| a.abs_diff(b) < 40), "{own:?} for {colour:?}");
    };
    near(8, [255, 0, 0]);
    near(40, [0, 255, 255]);
    for moving in [include_bytes!("moving.webp").as_slice(), include_bytes!("moving.png")] {
        let first = Picture::open(moving).unwrap();
        assert_eq!(first.size(), (20, 10));
        assert!(first.pixels.pixels().all(|pixel| pixel.0 == [200, 30, 30]), "the first of its pictures");
    }
}

#[test]
fn what_is_no_picture_gets_a_sentence() {
    assert_eq!(Picture::open(b""), Err(PictureError::Empty));
    assert_eq!(Picture::open(b"hello"), Err(PictureError::Format));
    assert_eq!(Picture::open(b"GIF89a\x01\x00\x01\x00"), Err(PictureError::Format));
    assert_eq!(Picture::open(b"\0\0\0\x18ftypheic\0\0\0\0"), Err(PictureError::Short));
    assert_eq!(Picture::open(b"\0\0\0\x10ftypavif\0\0\0\0"), Err(PictureError::Heic));
    assert!(matches!(Picture::open(include_bytes!("lab.tif")), Err(PictureError::Kind(_))));
    let whole = file(&DynamicImage::from(uneven(40, 40)), ImageFormat::Png);
    assert!(matches!(Picture::open(&whole[..200]), Err(PictureError::Damaged(_))));
}

/// A PNG of 30,000 × 30,000 pixels in a few bytes: refused by its head, before any pixel is decoded.
#[test]
fn a_bomb_is_refused_by_its_head() {
    let mut bytes = file(&DynamicImage::from(RgbImage::new(1, 1)), ImageFormat::Png);
    bytes[16..20].copy_from_slice(&30_000_u32.to_be_bytes());
    bytes[20..24].copy_from_slice(&30_000_u32.to_be_bytes());
    let sum = crc(&bytes[12..29]);
    bytes[29..33].copy_from_slice(&sum.to_be_bytes());
    assert_eq!(Picture::open(&bytes), Err(PictureError::Large { width: 30_000, height: 30_000 }));
}

/// The check sum of PNG's chunks (ISO/IEC 15948, annex D).
fn crc(bytes: &[u8]) -> u32 {
    let step = |crc: u32, _| if crc & 1 == 1 { crc >> 1 ^ 0xedb8_8320 } else { crc >> 1 };
    !bytes.iter().fold(u32::MAX, |crc, byte| (0..8).fold(crc ^ u32::from(*byte), step))
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    #[test]
    fn a_damaged_file_is_read_or_refused_and_never_more(at in 0_usize..600, byte: u8, cut in 0_usize..600, which in 0_usize..4) {
        let formats = [ImageFormat::Png, ImageFormat::Jpeg, ImageFormat::WebP, ImageFormat::Tiff];
        let mut bytes = file(&DynamicImage::from(uneven(12, 9)), formats[which]);
        let at = at % bytes.len();
        bytes[at] = byte;
        let _ = Picture::open(&bytes);
        bytes.truncate(cut);
        let _ = Picture::open(&bytes);
    }

    #[test]
    fn a_png_is_the_picture_again(width in 1_u32..40, height in 1_u32..40) {
        let picture = Picture { pixels: uneven(width, height) };
        prop_assert_eq!(Picture::open(&picture.to_png().unwrap()).unwrap(), picture);
    }

    #[test]
    fn pieces_of_a_grid_that_divides_the_picture_are_the_picture_again(columns in 1_usize..8, rows in 1_usize..8, side in 1_u32..12) {
        let (across, down) = (u32::try_from(columns).unwrap(), u32::try_from(rows).unwrap());
        let picture = Picture { pixels: uneven(across * side, down * side) };
        let grid = grid(columns, rows);
        prop_assert!(picture.crop(&grid).lost < 1e-12);
        let mut again = RgbImage::new(across * side, down * side);
        for cell in grid.cells() {
            let piece = picture.piece(&grid, cell);
            image::imageops::replace(&mut again, &piece.pixels, piece.top_left.x.round() as i64, piece.top_left.y.round() as i64);
        }
        prop_assert_eq!(again, picture.pixels);
    }

    #[test]
    fn the_crop_is_the_largest_in_the_middle(width in 1_u32..5000, height in 1_u32..5000, columns in 1_usize..40, rows in 1_usize..40) {
        let crop = Crop::of((width, height), &grid(columns, rows));
        let (right, below) = (f64::from(width) - crop.top_left.x - crop.size.x, f64::from(height) - crop.top_left.y - crop.size.y);
        prop_assert!((crop.top_left.x - right).abs() < 1e-6 && (crop.top_left.y - below).abs() < 1e-6, "in the middle");
        prop_assert!(right.min(below).abs() < 1e-6, "as large as fits: it touches two edges");
        let last = crop.piece_top_left(Cell { row: rows - 1, column: columns - 1 });
        let end = last + everysquare::frame::Vector::new(crop.piece.value(), crop.piece.value());
        prop_assert!(end.distance(crop.top_left + crop.size).value() < 1e-6, "pieces fill it");
    }

    #[test]
    fn pieces_keep_the_mean_of_what_they_cover(columns in 1_usize..5, rows in 1_usize..5, width in 20_u32..60, height in 20_u32..60) {
        let flat = Picture { pixels: RgbImage::from_pixel(width, height, Rgb([31, 144, 209])) };
        for cell in grid(columns, rows).cells() {
            let piece = flat.piece(&grid(columns, rows), cell);
            prop_assert!(piece.pixels.pixels().all(|p| *p == Rgb([31, 144, 209])));
        }
    }
}
