//! Photos of other things, and of walls as nobody should photograph them: nothing is named that is not there, and what cannot
//! be read gets a sentence. So do an event's files that mean no good.
//!
//! `EVERYSQUARE_MEGAPIXELS=12` draws the textures as large as a phone's photo, and each test says how long reading took:
//! `cargo test --release --test strange -- --nocapture`.

mod files;
mod scenes;
mod textures;

use std::time::Instant;

use everysquare::photo::{Luma, Photo, PhotoError};
use everysquare::plan::{Modules, Printed};
use everysquare::read::{self, PhotoReading, ReadError, Reader, Sight};
use everysquare::rehearse::Cards;
use everysquare::words::in_english;
use image::{Rgb, RgbImage};
use scenes::{Scene, on_a_screen, photo, printed, wall, wrong};
use textures::{TEXTURES, byte, chance, draw};

/// Width and height of a texture, four to three.
fn size() -> (u32, u32) {
    let asked = std::env::var("EVERYSQUARE_MEGAPIXELS").ok();
    let pixels: f64 = 1e6 * asked.map_or(1.2, |text| text.parse::<f64>().unwrap());
    let side = |part: f64| (pixels * part).sqrt().round() as u32;
    (side(4.0 / 3.0), side(3.0 / 4.0))
}

/// Reads, and says how long that took.
fn look(what: &str, photo: &Photo, printed: &Printed) -> Result<PhotoReading, ReadError> {
    let reader = Reader::new(printed);
    reader.prepare();
    let begin = Instant::now();
    let read = reader.read(photo);
    let megapixels = photo.luma.grey.len() as f64 / 1e6;
    println!("{what}: {:.2} s for {megapixels:.1} MP", begin.elapsed().as_secs_f64());
    if let Err(error) = &read {
        let said = in_english(error);
        assert!(said.len() > 20 && !said.contains("[error"), "{what}: {said}");
    }
    read
}

/// Reads a scene; nothing may be named that is not so. How many squares were named.
fn named(what: &str, scene: &Scene, printed: &Printed) -> usize {
    match look(what, &scene.photo(), printed) {
        Ok(reading) => {
            let (named, wrong) = wrong(printed, scene, &reading);
            println!("{what}: {named} named, {} wrong", wrong.len());
            if !wrong.is_empty() {
                scene.picture.save(format!("target/strange-{}.png", what.replace(' ', "-"))).unwrap();
            }
            assert!(wrong.is_empty(), "{what}:\n{}", wrong.join("\n"));
            named
        }
        Err(error) => {
            println!("{what}: {}", in_english(&error));
            0
        }
    }
}

#[test]
fn textures_hold_no_square() {
    let event = printed("K7M", 10, 8);
    let (width, height) = size();
    for texture in TEXTURES {
        let read = look(texture.0, &photo(&draw(texture, width, height)), &event);
        let error = read.unwrap_err();
        let none = match error {
            ReadError::Other(_) => ["large codes", "small codes of nobody"].contains(&texture.0),
            ref error => *error == ReadError::NoCodes,
        };
        assert!(none, "{}: {error:?}", texture.0);
    }
}

#[test]
fn another_event_s_wall_names_nothing_and_is_called_so() {
    let scene = wall(&printed("H4X", 6, 4), 3, 1600, 1200, Cards::All);
    let read = look("another event", &scene.photo(), &printed("K7M", 6, 4));
    assert_eq!(read.unwrap_err(), ReadError::Foreign(vec!["H4X".to_owned()]));
}

#[test]
fn a_shrunk_or_blurred_photo_is_read_or_to_be_taken_from_nearer_also_beside_a_poster() {
    let own = printed("K7M", 6, 5);
    let scene = wall(&own, 21, 2400, 1800, Cards::None);
    let poster = Modules::encode("SHELF 12").unwrap();
    for (by, blur) in [(2.4, 0.0), (2.8, 0.0), (3.2, 0.0), (1.6, 1.6), (1.6, 2.0), (1.6, 2.4)] {
        for with_poster in [false, true] {
            let mut small = scene.shrunk(by).changed(|x, y, pixel| {
                let (column, row) = (x / 4, y / 4);
                let inside = (2..27).contains(&column) && (2..27).contains(&row);
                if !(with_poster && inside) {
                    return pixel;
                }
                let dark = |at: u32| usize::try_from(at).unwrap().checked_sub(4).filter(|at| *at < 21);
                let dark = dark(column).zip(dark(row)).is_some_and(|(x, y)| poster.dark(x, y));
                if dark { [30; 3] } else { [235; 3] }
            });
            if blur > 0.0 {
                small.picture = image::imageops::blur(&small.picture, blur);
            }
            let what = format!("a wall at 1/{by}, blurred by {blur} px, poster {with_poster}");
            match look(&what, &small.photo(), &own) {
                Ok(reading) => assert!(wrong(&own, &small, &reading).1.is_empty(), "{what}"),
                Err(error) => assert!(in_english(&error).contains("ove closer"), "{what}: {error}"),
            }
        }
    }
}

#[test]
fn squares_too_small_to_say_whose_they_are_are_called_too_small() {
    let (own, other) = (printed("K7M", 6, 5), printed("H4X", 6, 5));
    let scene = wall(&other, 22, 2400, 1800, Cards::None);
    let mut too_small = 0;
    for by in [1.5, 2.0, 2.3, 2.5, 2.6, 2.7, 2.8, 3.0] {
        let error =
            look(&format!("another event's wall at 1/{by}"), &scene.shrunk(by).photo(), &own).unwrap_err();
        let foreign = ReadError::Foreign(vec!["H4X".to_owned()]);
        assert!([foreign, ReadError::TooSmall, ReadError::NoCodes].contains(&error), "1/{by}: {error:?}");
        too_small += usize::from(error == ReadError::TooSmall);
    }
    assert!(too_small > 0);
}

/// Two photos beside each other.
fn beside(left: &Scene, right: &Scene) -> Scene {
    let (width, height) = left.picture.dimensions();
    let board = RgbImage::from_pixel(width + right.picture.width(), height, Rgb([180; 3]));
    Scene::of(board).with(left, 0, 0).with(right, width, 0)
}

#[test]
fn two_events_in_one_photo_are_not_mixed_up() {
    let (own, other) = (printed("K7M", 5, 4), printed("K7N", 5, 4));
    for cards in [Cards::All, Cards::None] {
        let one = wall(&own, 4, 1200, 1000, cards);
        let two = wall(&other, 5, 1200, 1000, cards);
        for (what, scene) in [("own left", beside(&one, &two)), ("own right", beside(&two, &one))] {
            let what = format!("two events, {what}, {cards:?}");
            assert!(named(&what, &scene, &own) >= 12, "{what}");
        }
    }
}

#[test]
fn one_event_twice_in_one_photo_is_not_mixed_up() {
    let own = printed("K7M", 5, 4);
    for cards in [Cards::All, Cards::Corners, Cards::None] {
        let scene = beside(&wall(&own, 6, 1200, 1000, cards), &wall(&own, 7, 1200, 1000, cards));
        let _ = named(&format!("one event twice, {cards:?}"), &scene, &own);
        let small = wall(&own, 8, 1200, 1000, cards).shrunk(1.4);
        let scene = beside(&wall(&own, 6, 1200, 1000, cards), &small);
        let _ = named(&format!("one event twice, once smaller, {cards:?}"), &scene, &own);
    }
}

#[test]
fn a_photo_of_a_photo_is_read_or_refused() {
    let own = printed("K7M", 5, 4);
    let wood = TEXTURES.into_iter().find(|(name, _)| *name == "wood").unwrap();
    let large = wall(&own, 9, 2400, 1800, Cards::All);
    for by in [1.5, 2.5, 4.0, 8.0] {
        let scene = Scene::of(draw(wood, 2000, 1500)).with(&large.shrunk(by), 170, 140);
        let named = named(&format!("a photo of a photo, {by} times smaller"), &scene, &own);
        assert!(by > 2.5 || named >= 12, "{named} at {by}");
    }
    // a small print of the wall hangs before the wall itself
    for (cards, x, y) in [(Cards::All, 40, 30), (Cards::None, 1300, 700), (Cards::Corners, 900, 900)] {
        let scene = wall(&own, 10, 2400, 1800, cards).with(&large.shrunk(3.4), x, y);
        let _ = named(&format!("a print on the wall, {cards:?}"), &scene, &own);
    }
}

#[test]
fn a_stitched_photo_with_a_kink_names_nothing_wrongly() {
    let own = printed("K7M", 6, 4);
    for (seed, cards) in [(11, Cards::All), (12, Cards::None), (13, Cards::Corners)] {
        let whole = wall(&own, seed, 1800, 1300, cards);
        let (width, height) = whole.picture.dimensions();
        let seam = f64::from(width) * 0.53;
        for (down, shear) in [(6.0, 0.0), (-40.0, 0.02), (25.0, -0.06), (120.0, 0.0)] {
            let kink = |x: f64| if x > seam { down + shear * (x - seam) } else { 0.0 };
            let scene = whole.redrawn(width, height, |x, y| (x, y - kink(x)), |x, y| (x, y + kink(x)));
            let named = named(&format!("a kink of {down} px and {shear}, {cards:?}"), &scene, &own);
            assert!(named >= 8, "{named}");
        }
    }
}

#[test]
fn a_wall_on_a_screen_names_nothing_wrongly() {
    let own = printed("K7M", 5, 4);
    let scene = wall(&own, 14, 1600, 1200, Cards::All);
    for (size, degrees) in [(0.7, 0.0), (0.83, 1.5), (1.0, 0.4), (1.3, 2.0), (1.9, -3.0)] {
        let shown = on_a_screen(&scene, size, degrees);
        let _ = named(&format!("a screen, {size} px a pixel, {degrees} degrees"), &shown, &own);
    }
}

#[test]
fn half_black_and_blown_out_photos_say_only_what_they_show() {
    let own = printed("K7M", 5, 4);
    for cards in [Cards::All, Cards::None] {
        let scene = wall(&own, 15, 1600, 1200, cards);
        let dark = scene.clone().changed(|x, _, pixel| if x > 800 { [0; 3] } else { pixel });
        let reading = look("half black", &dark.photo(), &own).unwrap();
        let (named, said) = wrong(&own, &dark, &reading);
        assert!(named >= 5 && said.is_empty(), "{named} {said:?}");
        let empty = |cell: &&read::CellReading| cell.sight == Sight::Empty && cell.cell.column == 4;
        assert_eq!(reading.cells.iter().filter(empty).count(), 0, "nothing is known of what is black");
    }
    let scene = wall(&own, 16, 1600, 1200, Cards::All);
    for factor in [1.6, 3.0, 12.0] {
        let bright = scene.clone().changed(|_, _, pixel| pixel.map(|level| byte(f64::from(level) * factor)));
        let _ = named(&format!("blown out {factor} times"), &bright, &own);
        let dim = scene.clone().changed(|_, _, pixel| pixel.map(|level| byte(f64::from(level) / factor)));
        let _ = named(&format!("dimmed {factor} times"), &dim, &own);
    }
    let white = photo(&RgbImage::from_pixel(1600, 1200, Rgb([255; 3])));
    assert_eq!(look("all white", &white, &own).unwrap_err(), ReadError::NoCodes);
}

#[test]
fn odd_sizes_are_refused_or_hold_nothing() {
    let own = printed("K7M", 5, 4);
    let png = |width: u32, height: u32| {
        let picture = RgbImage::from_fn(width, height, |x, y| Rgb([byte(255.0 * chance(x, y, 1)); 3]));
        let mut bytes = std::io::Cursor::new(Vec::new());
        picture.write_to(&mut bytes, image::ImageFormat::Png).unwrap();
        bytes.into_inner()
    };
    for (width, height) in [(1, 1), (1, 4000), (4000, 1), (63, 900), (900, 63)] {
        let refused = Photo::open(&png(width, height)).unwrap_err();
        assert_eq!(refused, PhotoError::TooSmall { width: width as usize, height: height as usize });
    }
    assert!(matches!(Photo::open(&png(32_001, 64)), Err(PhotoError::TooLarge { .. })));
    for (width, height) in [(64, 64), (64, 20_000), (20_000, 64)] {
        let photo = Photo::open(&png(width, height)).unwrap();
        assert_eq!(look(&format!("{width} × {height}"), &photo, &own).unwrap_err(), ReadError::NoCodes);
    }
    // below what opening lets through: the stages themselves
    let reader = Reader::new(&own);
    for (width, height) in [(0, 0), (1, 1), (1, 5000), (5000, 1), (2, 3), (3, 2)] {
        let grey = (0..width * height).map(|i| (i * 97 % 251) as u8).collect();
        let luma = Luma { width, height, grey };
        assert!(reader.camera(&luma).is_err(), "{width} × {height}");
    }
}

#[test]
fn a_wall_in_48_megapixels_is_read() {
    let own = printed("K7M", 5, 4);
    let scene = wall(&own, 17, 2000, 1500, Cards::All);
    let scene = scene.redrawn(8000, 6000, |x, y| (x / 4.0, y / 4.0), |x, y| (x * 4.0, y * 4.0));
    assert!(named("48 MP", &scene, &own) >= 12);
}

#[test]
fn a_code_that_means_the_terminal_says_nothing_to_it() {
    use everysquare::frame::{Point, Vector};
    let code =
        qrcode::QrCode::with_version(b"\x1b[2Jx", qrcode::Version::Normal(1), qrcode::EcLevel::H).unwrap();
    let dark = code.to_colors();
    let module = |p: usize| (p / 6).checked_sub(4).filter(|k| *k < 21);
    let level = |i: usize| {
        let place = module(i % 174).zip(module(i / 174));
        place.is_some_and(|(column, row)| dark[row * 21 + column] == qrcode::Color::Dark)
    };
    let grey = (0..174 * 174).map(|i| if level(i) { 20 } else { 230 }).collect();
    let luma = Luma { width: 174, height: 174, grey };
    let pose = read::pose::Pose {
        centre: Point::new(87.0, 87.0),
        u: Vector::new(6.0, 0.0),
        v: Vector::new(0.0, 6.0),
    };
    assert_eq!(read::foreign::text(&luma, &pose).as_deref(), Some(" [2Jx"));
}
