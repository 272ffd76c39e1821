//! The file: the same from the same seed, upright after turning, marked as made.

use std::io::Cursor;

use everysquare::frame::float;
use everysquare::photo::Photo;
use everysquare::rehearse::{Options, RehearseError, Sensor, make, stored_from_upright};
use image::{DynamicImage, ImageDecoder, ImageReader, Rgb, RgbImage};

use super::{made, picture, printed, small};

fn oriented(orientation: u16) -> Options {
    let taken = Some("2026:05:04 18:30:00".to_owned());
    let sensor = Sensor { orientation, taken, noise: 0.0, ..Sensor::default() };
    Options { sensor, width: 400, height: 300, ..small(1) }
}

/// Decoded and turned upright by another program's reading of the EXIF segment.
fn upright(jpeg: &[u8]) -> RgbImage {
    let mut decoder =
        ImageReader::with_format(Cursor::new(jpeg), image::ImageFormat::Jpeg).into_decoder().unwrap();
    let orientation = decoder.orientation().unwrap();
    let mut image = DynamicImage::from_decoder(decoder).unwrap();
    image.apply_orientation(orientation);
    image.into_rgb8()
}

#[test]
fn the_same_options_give_the_same_bytes_on_any_number_of_threads() {
    let printed = printed(4, 3, 0.6);
    let first = made(&printed, &small(1));
    let pool = rayon::ThreadPoolBuilder::new().num_threads(1).build().unwrap();
    let again = pool.install(|| made(&printed, &small(1)));
    assert!(first.jpeg == again.jpeg, "one thread makes another file");
    assert_eq!(first.truth, again.truth);
    assert!(first.jpeg != made(&printed, &small(2)).jpeg, "another seed makes the same file");
}

#[test]
fn every_orientation_turns_back_upright() {
    for orientation in 1..=8 {
        let made = made(&printed(3, 2, 0.8), &oriented(orientation));
        let seen = upright(&made.jpeg);
        assert_eq!(seen.dimensions(), made.image.dimensions(), "orientation {orientation}");
        let off: u64 = seen.iter().zip(made.image.iter()).map(|(a, b)| u64::from(a.abs_diff(*b))).sum();
        let mean = float(usize::try_from(off).unwrap()) / float(seen.len());
        assert!(mean < 4.0, "orientation {orientation}: a mean difference of {mean} levels");
    }
}

#[test]
fn orientation_six_is_a_camera_turned_by_a_quarter() {
    // Exif 2.32: 6 means that the stored picture's first row is the upright one's right side.
    let image = RgbImage::from_fn(3, 2, |x, y| Rgb([u8::try_from(x).unwrap(), u8::try_from(y).unwrap(), 0]));
    let stored = stored_from_upright(&image, 6);
    assert_eq!(stored.dimensions(), (2, 3));
    let first_row: Vec<_> = (0..2).map(|x| *stored.get_pixel(x, 0)).collect();
    assert_eq!(first_row, [*image.get_pixel(2, 0), *image.get_pixel(2, 1)]);
}

#[test]
fn the_file_says_that_it_is_made() {
    let made = made(&printed(3, 2, 0.8), &oriented(6));
    let exif = exif::Reader::new().read_from_container(&mut Cursor::new(&made.jpeg)).unwrap();
    let says = |tag| exif.get_field(tag, exif::In::PRIMARY).unwrap().display_value().to_string();
    assert!(says(exif::Tag::ImageDescription).contains("made picture, not a photo (everysquare rehearse)"));
    assert!(says(exif::Tag::Software).contains("everysquare rehearse"));
    assert_eq!(says(exif::Tag::DateTimeOriginal), "2026-05-04 18:30:00");
    assert_eq!(exif.get_field(exif::Tag::Orientation, exif::In::PRIMARY).unwrap().value.get_uint(0), Some(6));
    assert!(made.truth.made);
    let opened = Photo::open(&made.jpeg).unwrap();
    assert!(opened.made);
    assert_eq!(opened.taken.as_deref(), Some("2026-05-04T18:30:00"));
}

#[test]
fn the_truth_survives_its_file() {
    let truth = made(&printed(3, 2, 0.8), &small(3)).truth;
    let json = serde_json::to_string(&truth).unwrap();
    assert_eq!(serde_json::from_str::<everysquare::rehearse::Truth>(&json).unwrap(), truth);
}

#[test]
fn numbers_out_of_range_are_refused_with_the_range() {
    let refused = |change: fn(&mut Options)| {
        let mut options = small(1);
        change(&mut options);
        make(&printed(3, 2, 0.8), &picture(), &options).unwrap_err().to_string()
    };
    assert_eq!(refused(|o| o.width = 63), "the photo’s width is 63; it must be 64 to 8000 px");
    assert_eq!(refused(|o| o.sensor.orientation = 9), "the orientation is 9; it must be 1 to 8");
    assert_eq!(
        refused(|o| o.pose.yaw_degrees = f64::NAN),
        "the camera’s turn to the right (yaw) is NaN; it must be -60 to 60 degrees"
    );
    assert!(refused(|o| o.pose.k1 = -0.5).contains("folds the picture over itself"));
    let mut wrong = printed(3, 2, 0.8);
    wrong.squares.pop();
    let short = make(&wrong, &picture(), &small(1)).unwrap_err();
    assert_eq!(short, RehearseError::Printed { squares: 5, cells: 6 });
}

#[test]
fn ordinary_rooms_can_all_be_made() {
    for seed in 0..40 {
        let options = Options { width: 200, height: 150, ..Options::varied(seed) };
        let made = made(&printed(4, 3, 0.6), &options);
        let mean = made.image.iter().map(|level| f64::from(*level)).sum::<f64>() / float(made.image.len());
        assert!((70.0..235.0).contains(&mean), "seed {seed}: a mean level of {mean}");
    }
}
