//! The original's edges over the wall.

use everysquare::display::overlap::overlap;
use everysquare::picture::{FewColours, Picture};
use everysquare::plan::settings::PictureSettings;
use everysquare::plan::{Grid, KeptFree, RowsFrom, Settings, Tag};
use image::{Rgb, RgbImage};

const LEFT: [u8; 3] = [166, 216, 238];
const RIGHT: [u8; 3] = [31, 78, 140];
/// A square of the original is 50 pixels, one of the wall 130, around it 10 mm, which are 13 pixels.
const MARGIN_MM: f64 = 10.0;
const WALL: (u32, u32) = (4 * 130 + 26, 3 * 130 + 26);

fn grid() -> Grid {
    Grid {
        columns: 4,
        rows: 3,
        square_mm: 100.0,
        piece_mm: 20.0,
        rows_from: RowsFrom::Bottom,
        border: false,
        kept_free: KeptFree::NONE,
    }
}

/// Two pencils that meet along a line through (70, 0) and (70 + slope · 150, 150) of the original.
fn original(slope: f64) -> FewColours {
    let pixels = RgbImage::from_fn(200, 150, |x, y| {
        Rgb(if f64::from(x) + 0.5 < 70.0 + slope * (f64::from(y) + 0.5) { LEFT } else { RIGHT })
    });
    let settings = PictureSettings {
        colours: 2,
        ..Settings::new(String::new(), Tag::new("K7M").unwrap(), grid()).picture
    };
    FewColours::chosen(&Picture { pixels }, &settings)
}

/// The middle of the line in a row of the wall, in its pixels: the mean of where it differs from the wall and is darker.
fn line(wall: &RgbImage, row: u32) -> f64 {
    let (mut sum, mut weight) = (0.0, 0.0);
    for x in 0..wall.width() {
        let level = f64::from(200_i32.abs_diff(i32::from(wall.get_pixel(x, row).0[1].min(200))));
        sum += level * (f64::from(x) + 0.5);
        weight += level;
    }
    sum / weight
}

/// A pixel of the original is 2 mm on this wall.
#[test]
fn the_line_lies_on_the_edge_to_a_third_of_the_originals_pixel_also_where_it_slants() {
    let blank = RgbImage::from_pixel(WALL.0, WALL.1, Rgb([200; 3]));
    for slope in [0.0, 0.3, -0.4] {
        let over = overlap(&blank, &original(slope), &grid(), MARGIN_MM);
        assert_eq!(over.dimensions(), blank.dimensions());
        for row in [60_u32, 150, 201, 202, 203, 300, 350] {
            let y = (f64::from(row) + 0.5 - 13.0) / 2.6;
            let wanted = (70.0 + slope * y) * 2.6 + 13.0;
            let off_mm = (line(&over, row) - wanted) / 1.3;
            assert!(off_mm.abs() < 0.65, "slope {slope}, row {row}: {off_mm:.2} mm off");
        }
    }
}

#[test]
fn away_from_edges_and_in_the_margin_the_wall_stays() {
    let wall = RgbImage::from_fn(WALL.0, WALL.1, |x, y| {
        Rgb([u8::try_from(x % 251).unwrap(), u8::try_from(y % 241).unwrap(), 90])
    });
    let over = overlap(&wall, &original(0.0), &grid(), MARGIN_MM);
    let edge = 70.0 * 2.6 + 13.0;
    for (x, y, own) in wall.enumerate_pixels() {
        let margin = x < 12 || y < 12 || x > WALL.0 - 14 || y > WALL.1 - 14;
        if margin || (f64::from(x) + 0.5 - edge).abs() > 8.0 {
            assert_eq!(over.get_pixel(x, y), own, "{x}, {y}");
        }
    }
}

#[test]
fn a_light_halo_lies_on_both_sides_of_a_dark_line() {
    let dark = RgbImage::from_pixel(WALL.0, WALL.1, Rgb([60; 3]));
    let over = overlap(&dark, &original(0.0), &grid(), MARGIN_MM);
    let level = |x: u32| over.get_pixel(x, 200).0.into_iter().min().unwrap();
    let middle = level(195); // the edge lies between the pixels 194 and 195
    let (before, after) = ((190..195).map(level).max().unwrap(), (195..200).map(level).max().unwrap());
    assert!(before > 150 && after > 150 && middle < 100, "{before} {middle} {after}");
}

#[test]
fn walls_without_pixels_or_of_one_colour_stay_as_they_are() {
    let none = RgbImage::new(0, 0);
    assert_eq!(overlap(&none, &original(0.0), &grid(), 0.0), none);
    let plain = Picture { pixels: RgbImage::from_pixel(200, 150, Rgb(LEFT)) };
    let settings = Settings::new(String::new(), Tag::new("K7M").unwrap(), grid()).picture;
    let wall = RgbImage::from_pixel(400, 300, Rgb([9; 3]));
    assert_eq!(overlap(&wall, &FewColours::chosen(&plain, &settings), &grid(), 0.0), wall);
}
