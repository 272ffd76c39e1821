//! Few colours: what is clear stays, what nobody can draw goes, the same again gives the same.

use everysquare::picture::fit::Fit;
use everysquare::picture::warnings::{ColourWarning, colour_warnings};
use everysquare::picture::{
    FewColours, Pencils, Picture, PictureFacts, ReduceError, Reduced, Wanted, reduce,
};
use everysquare::plan::Grid;
use everysquare::plan::settings::{LevelSettings, Pencil, PictureSettings};
use everysquare::words::Words;
use image::{Rgb, RgbImage};
use proptest::prelude::*;

use super::grid;
use crate::common::scenes;

const GRID: (usize, usize) = (5, 4);
/// Pixels along a piece's side of the pictures made here, so many that they are left as they are: 4 in a millimetre.
const PIECE_PX: u32 = 102;

fn wanted(grid: &Grid, pencils: Pencils) -> Wanted<'_> {
    Wanted { grid, fit: Fit::Crop, pencils }
}

fn reduced(pixels: RgbImage, pencils: Pencils) -> Reduced {
    let grid = grid(GRID.0, GRID.1);
    reduce(Picture { pixels }, &wanted(&grid, pencils), &Words::english()).unwrap()
}

fn blank(colour: [u8; 3]) -> RgbImage {
    RgbImage::from_pixel(5 * PIECE_PX, 4 * PIECE_PX, Rgb(colour))
}

fn fill(pixels: &mut RgbImage, colour: [u8; 3], inside: impl Fn(f64, f64) -> bool) {
    for (x, y, pixel) in pixels.enumerate_pixels_mut() {
        if inside(f64::from(x) + 0.5, f64::from(y) + 0.5) {
            pixel.0 = colour;
        }
    }
}

/// The pixels of each connected area of one pencil.
fn areas(few: &FewColours) -> Vec<Vec<(i64, i64)>> {
    let (width, height) = (i64::from(few.size().0), i64::from(few.size().1));
    let number = |x: i64, y: i64| few.index()[(y * width + x) as usize];
    let mut seen = vec![false; few.index().len()];
    let mut areas = Vec::new();
    for start in 0..width * height {
        if std::mem::replace(&mut seen[start as usize], true) {
            continue;
        }
        let mut area = vec![(start % width, start / width)];
        let mut at = 0;
        while let Some((x, y)) = area.get(at).copied() {
            at += 1;
            for (nx, ny) in [(x - 1, y), (x + 1, y), (x, y - 1), (x, y + 1)] {
                let inside = (0..width).contains(&nx) && (0..height).contains(&ny);
                if inside
                    && number(nx, ny) == number(x, y)
                    && !std::mem::replace(&mut seen[(ny * width + nx) as usize], true)
                {
                    area.push((nx, ny));
                }
            }
        }
        areas.push(area);
    }
    areas
}

/// Whether a disc of so many pixels across lies within an area, by trying every place.
fn holds_disc(area: &[(i64, i64)], across: f64) -> bool {
    let own: std::collections::HashSet<_> = area.iter().copied().collect();
    let reach = across.ceil() as i64;
    let disc: Vec<(i64, i64)> = (-reach..=reach)
        .flat_map(|y| (-reach..=reach).map(move |x| (x, y)))
        .filter(|(x, y)| (*x as f64).hypot(*y as f64) <= across / 2.0 - 0.5)
        .collect();
    area.iter().any(|(x, y)| disc.iter().all(|(dx, dy)| own.contains(&(x + dx, y + dy))))
}

fn colours_of(few: &FewColours) -> std::collections::BTreeSet<[u8; 3]> {
    few.pencils.iter().map(|pencil| pencil.srgb).collect()
}

/// Blocks of 2 mm and more in up to five colours.
fn blocks() -> impl Strategy<Value = RgbImage> {
    proptest::collection::vec(0_usize..5, 600).prop_map(|lots| {
        const COLOURS: [[u8; 3]; 5] =
            [[250, 240, 210], [30, 60, 140], [200, 60, 50], [60, 150, 80], [20, 20, 24]];
        RgbImage::from_fn(5 * PIECE_PX, 4 * PIECE_PX, |x, y| {
            Rgb(COLOURS[lots[(x / 17 % 24 + y / 17 * 24) as usize % 600]])
        })
    })
}

/// A dot or a line: its middle, half its width and length, its angle, its colour.
type Mark = (f64, f64, f64, f64, f64, usize);

fn marks() -> impl Strategy<Value = Vec<Mark>> {
    let mark =
        (0.0..510.0_f64, 0.0..408.0_f64, 0.2..9.0_f64, 0.0..60.0_f64, 0.0..std::f64::consts::PI, 0_usize..4);
    proptest::collection::vec(mark, 1..60)
}

fn litter(marks: &[Mark]) -> RgbImage {
    const COLOURS: [[u8; 3]; 4] = [[30, 60, 140], [200, 60, 50], [60, 150, 80], [20, 20, 24]];
    let mut pixels = blank([250, 240, 210]);
    for (x, y, half, long, angle, colour) in marks.iter().copied() {
        let (cos, sin) = (angle.cos(), angle.sin());
        fill(&mut pixels, COLOURS[colour], |px, py| {
            let (along, across) = ((px - x) * cos + (py - y) * sin, (py - y) * cos - (px - x) * sin);
            (along.abs() - long).max(0.0).hypot(across) < half
        });
    }
    pixels
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(12))]

    #[test]
    fn a_picture_in_few_colours_stays_as_it_is(pixels in blocks()) {
        let reduced = reduced(pixels.clone(), Pencils::Chosen(6));
        prop_assert!(reduced.few.to_picture().pixels == pixels);
    }

    #[test]
    fn no_area_is_too_small_to_draw_and_the_same_again_changes_nothing(marks in marks()) {
        let pixels = litter(&marks);
        let Ok(first) = reduce(Picture { pixels }, &wanted(&grid(GRID.0, GRID.1), Pencils::Chosen(6)), &Words::english()) else {
            return Ok(()); // nothing was left but paper
        };
        // one millimetre, less the pixel that a line of even width has not in its middle
        let across = (f64::from(PIECE_PX) / 25.4).floor() - 1.0;
        for area in areas(&first.few) {
            prop_assert!(holds_disc(&area, across), "{} pixels at {:?}", area.len(), area[0]);
        }
        let again = reduced(first.few.to_picture().pixels, Pencils::Own(first.few.pencils.clone()));
        prop_assert!(again.few == first.few);
    }
}

#[test]
fn a_line_that_matters_stays_and_a_hair_goes() {
    for angle in [0.0_f64, 0.3, 0.785, 1.2] {
        let line = |mm: f64| {
            let mut pixels = blank([250, 240, 210]);
            let half = mm * f64::from(PIECE_PX) / 25.4 / 2.0;
            fill(&mut pixels, [20, 20, 24], |x, y| {
                ((y - 200.0) * angle.cos() - (x - 250.0) * angle.sin()).abs() < half
            });
            fill(&mut pixels, [200, 60, 50], |x, y| x < 60.0 && y < 60.0);
            pixels
        };
        let dark = |few: &FewColours| few.pencils.iter().any(|pencil| pencil.srgb == [20, 20, 24]);
        let thick = reduced(line(1.2), Pencils::Chosen(6));
        assert!(thick.few.to_picture().pixels == line(1.2), "1.2 mm at {angle}");
        assert!(!dark(&reduced(line(0.6), Pencils::Chosen(6)).few), "0.6 mm at {angle}");
    }
}

#[test]
fn the_three_scenes_are_the_same_twice_and_stay_what_they_became() {
    for (name, pixels) in [
        ("photo", scenes::photo(700, 560)),
        ("drawing", scenes::drawing(700, 560, 4)),
        ("small", scenes::drawing(200, 160, 4)),
    ] {
        let first = reduced(pixels.clone(), Pencils::Chosen(7));
        assert_eq!(first, reduced(pixels, Pencils::Chosen(7)), "{name}");
        let across = u32::try_from(first.piece_px).unwrap();
        assert_eq!(first.few.size(), (5 * across, 4 * across), "{name}: the grid's shape exactly");
        let again = reduced(first.few.to_picture().pixels, Pencils::Own(first.few.pencils.clone()));
        assert_eq!(again.few, first.few, "{name}");
        assert_eq!(FewColours::of(&first.few.to_picture(), &first.few.pencils), first.few, "{name}");
    }
}

/// The part of the pixels that show another colour than the scene has there.
fn wrong(few: &FewColours) -> f64 {
    let shown = few.to_picture().pixels;
    let truth = scenes::drawing(few.size().0, few.size().1, 1);
    let wrong = shown.pixels().zip(truth.pixels()).filter(|(a, b)| a != b).count();
    wrong as f64 / few.index().len() as f64
}

/// Edges that were mixed become no colours of their own, and lie where they lay; a small drawing becomes a smooth one.
#[test]
fn a_drawing_keeps_its_own_colours_exactly() {
    let truth: std::collections::BTreeSet<_> = scenes::DRAWN.into_iter().collect();
    for (width, height, fine, most_wrong) in
        [(1500, 1200, 4, 0.004), (520, 416, 4, 0.006), (200, 160, 4, 0.015), (200, 160, 1, 0.025)]
    {
        let few = reduced(scenes::drawing(width, height, fine), Pencils::Chosen(7)).few;
        assert_eq!(colours_of(&few), truth, "{width} × {height}");
        let wrong = wrong(&few);
        println!(
            "{width} × {height}, {fine} samples: {:.2} % of the pixels differ from the scene",
            100.0 * wrong
        );
        assert!(wrong < most_wrong, "{width} × {height}: {wrong}");
    }
}

#[test]
fn a_photo_keeps_what_it_shows_and_loses_its_grain() {
    let few = reduced(scenes::photo(1000, 800), Pencils::Chosen(6)).few;
    assert_eq!(few.pencils.len(), 6);
    let names: Vec<&str> = few.pencils.iter().map(|pencil| pencil.name.as_str()).collect();
    for name in ["light blue", "dark blue", "red", "white", "yellow"] {
        assert!(names.contains(&name), "{name} in {names:?}");
    }
    let count = areas(&few).len();
    assert!((10..60).contains(&count), "{count} areas");
    let greys = reduced(scenes::photo(1000, 800), Pencils::Greys(4)).few;
    assert!(
        greys.pencils.iter().all(|pencil| pencil.srgb.iter().all(|part| *part == pencil.srgb[0])),
        "{greys:?}"
    );
    assert_eq!(greys.pencils.len(), 4);
}

#[test]
fn own_pencils_keep_their_order_and_their_names() {
    let own: Vec<Pencil> = [
        ("ink", [10, 10, 30]),
        ("never used", [0, 255, 0]),
        ("sand", [240, 220, 180]),
        ("brick", [180, 60, 40]),
    ]
    .map(|(name, srgb)| Pencil { name: name.to_owned(), srgb })
    .to_vec();
    let mut pixels = blank([235, 225, 190]);
    fill(&mut pixels, [200, 40, 40], |x, _| x > 300.0);
    fill(&mut pixels, [60, 50, 70], |_, y| y > 300.0);
    let few = reduced(pixels, Pencils::Own(own.clone())).few;
    assert_eq!(few.pencils, own);
    let at = |x: usize, y: usize| few.index()[y * 510 + x];
    assert_eq!([at(10, 10), at(500, 10), at(10, 400)], [2, 3, 0]);
}

#[test]
fn crop_cuts_and_pad_adds() {
    let grid = grid(6, 3);
    let picture = || Picture { pixels: scenes::drawing(500, 400, 2) };
    let fitted = |fit| {
        let wanted = Wanted { grid: &grid, fit, pencils: Pencils::Chosen(7) };
        reduce(picture(), &wanted, &Words::english()).unwrap()
    };
    let (cut, padded) = (fitted(Fit::Crop), fitted(Fit::Pad));
    assert!((cut.lost - 0.375).abs() < 1e-9 && cut.added == 0.0, "{cut:?}");
    assert!((padded.added - 0.375).abs() < 0.005 && padded.lost < 0.005, "{} {}", padded.added, padded.lost);
    let corner = padded.few.pencils[usize::from(padded.few.index()[0])].srgb;
    assert_eq!(corner, [255; 3], "white as paper: the border has no one colour");
    for reduced in [cut, padded] {
        assert_eq!(reduced.few.size().0 * 3, reduced.few.size().1 * 6);
    }
}

#[test]
fn what_has_nothing_to_draw_is_one_sentence() {
    let grid = grid(5, 4);
    let refused =
        |pixels, pencils| reduce(Picture { pixels }, &wanted(&grid, pencils), &Words::english()).unwrap_err();
    assert_eq!(refused(RgbImage::new(1, 1), Pencils::Chosen(6)), ReduceError::OneColour);
    assert_eq!(refused(blank([9, 90, 200]), Pencils::Greys(6)), ReduceError::OneColour);
    let mut nearly = blank([9, 90, 200]);
    fill(&mut nearly, [9, 90, 204], |x, _| x > 200.0);
    let pencil = |name: &str, srgb| Pencil { name: name.to_owned(), srgb };
    let own = vec![pencil("blue", [0, 80, 200]), pencil("red", [200, 0, 0])];
    assert_eq!(refused(nearly, Pencils::Own(own)), ReduceError::OnePencil("blue".to_owned()));
    let mut speck = blank([250; 3]);
    fill(&mut speck, [0; 3], |x, y| (x - 100.0).hypot(y - 100.0) < 1.5);
    assert_eq!(refused(speck, Pencils::Chosen(6)), ReduceError::OnePencil("white".to_owned()));
}

#[test]
fn extreme_shapes_are_reduced() {
    for (width, height) in [(20_000, 30), (3, 2000), (2, 2), (20_000, 2000)] {
        let mut pixels = RgbImage::from_pixel(width, height, Rgb([250, 240, 210]));
        fill(&mut pixels, [30, 60, 140], |x, y| x < f64::from(width) / 2.0 && y < f64::from(height) / 1.9);
        let few = reduced(pixels, Pencils::Chosen(6)).few;
        assert_eq!(few.size().0 * 4, few.size().1 * 5, "{width} × {height}");
    }
}

#[test]
fn a_folder_without_pencils_gets_the_pictures_own() {
    let settings =
        PictureSettings { file: "picture.png".to_owned(), credit: None, colours: 7, pencils: Vec::new() };
    let few = FewColours::chosen(&Picture { pixels: scenes::drawing(500, 400, 4) }, &settings);
    assert_eq!(colours_of(&few), scenes::DRAWN.into_iter().collect());
    assert!(wrong(&few) < 0.006, "{}", wrong(&few));
    assert_eq!(few.size(), (500, 400));
    let named = few.named(&Words::english());
    assert_eq!(named.pencils[0].name, "light blue");
    let one = FewColours::chosen(&Picture { pixels: RgbImage::new(1, 1) }, &settings);
    assert_eq!((one.pencils.len(), one.index()), (1, [0].as_slice()));
}

#[test]
fn what_an_organiser_should_know_is_told() {
    let grid = grid(5, 4);
    let warned = |pixels, pencils| {
        let few = reduced(pixels, pencils).few;
        colour_warnings(&PictureFacts::of(&few, &grid, &LevelSettings::default()))
    };
    let mut pixels = blank([250, 240, 210]);
    fill(&mut pixels, [30, 60, 140], |x, y| (x - 50.0).hypot(y - 50.0) < 40.0);
    fill(&mut pixels, [30, 66, 150], |x, y| (x - 150.0).hypot(y - 50.0) < 40.0);
    let told = warned(pixels, Pencils::Chosen(6));
    assert!(
        matches!(&told[0], ColourWarning::Alike { one, other, apart } if one == "very dark blue" && other == "dark blue" && *apart < 10.0),
        "{told:?}"
    );
    assert_eq!(
        told[1..3].iter().filter(|warning| matches!(warning, ColourWarning::Rare { pieces: 1, .. })).count(),
        2,
        "{told:?}"
    );
    assert_eq!(told[3], ColourWarning::MostlyPlain { plain: 18, drawn: 2 });
    assert_eq!(warned(scenes::drawing(500, 400, 1), Pencils::Chosen(7)), []);
}
