//! Shapes, shares and levels of pieces: known shapes, and the same by another way.

use std::collections::BTreeMap;
use std::f64::consts::PI;

use everysquare::cli::sample;
use everysquare::picture::complexity::{LEAST_WIDTH, Shapes};
use everysquare::picture::{FewColours, Picture, PictureFacts};
use everysquare::plan::settings::{LevelSettings, Pencil, PictureSettings};
use everysquare::plan::{Cell, Grid, Level};
use image::{Rgb, RgbImage};
use proptest::prelude::*;

/// Colours of a picture whose pixels' centres are tested one by one.
fn drawn(side: usize, inside: impl Fn(f64, f64) -> bool) -> Vec<u8> {
    let centre = |i: usize| i as f64 + 0.5;
    (0..side * side).map(|at| u8::from(inside(centre(at % side), centre(at / side)))).collect()
}

/// Whether a point lies in a regular polygon around (`x`, `y`) with `corners`, its radius and its turn.
fn in_polygon(corners: u32, (x, y): (f64, f64), radius: f64, turn: f64) -> impl Fn(f64, f64) -> bool {
    let apothem = radius * (PI / f64::from(corners)).cos();
    move |px, py| {
        (0..corners).all(|corner| {
            let normal = turn + 2.0 * PI * (f64::from(corner) + 0.5) / f64::from(corners);
            (px - x) * normal.cos() + (py - y) * normal.sin() <= apothem
        })
    }
}

/// The largest shape's complexity: that of colour 1.
fn complexity(colours: &[u8], side: usize) -> f64 {
    let shapes = Shapes::of(colours, side, side);
    shapes
        .regions
        .iter()
        .filter(|region| region.colour == 1)
        .max_by_key(|region| region.pixels)
        .unwrap()
        .complexity()
}

/// Sides or diameters in px, and how far the complexity of known shapes may be off at any angle.
const STATED: [(f64, f64); 4] = [(20.0, 0.12), (40.0, 0.05), (80.0, 0.025), (160.0, 0.025)];

#[test]
fn known_shapes_have_their_complexity_at_every_size_and_angle() {
    for (side, most) in STATED {
        let across = (side * 1.6) as usize + 12;
        let (mut sums, mut worst) = ([0.0; 3], [0.0_f64; 3]);
        let steps = 45;
        for step in 0..steps {
            let part = f64::from(step) / f64::from(steps);
            let middle = (across as f64 / 2.0 + part - 0.5, across as f64 / 2.0 + (7.0 * part).fract() - 0.5);
            let turn = part * PI / 2.0;
            let disc = drawn(across, |x, y| (x - middle.0).hypot(y - middle.1) <= side / 2.0);
            let square = drawn(across, in_polygon(4, middle, side / 2.0_f64.sqrt(), turn));
            let triangle = drawn(across, in_polygon(3, middle, side / 3.0_f64.sqrt(), turn * 4.0 / 3.0));
            let known = [1.0, 4.0 / PI, 1.654];
            for (i, (colours, known)) in [disc, square, triangle].iter().zip(known).enumerate() {
                let off = complexity(colours, across) / known - 1.0;
                sums[i] += off / f64::from(steps);
                worst[i] = worst[i].max(off.abs());
            }
        }
        println!("{side} px: mean {sums:.4?}, worst {worst:.4?}");
        assert!(worst.iter().all(|off| *off <= most), "{side} px: {worst:?}");
        assert!(sums.iter().all(|off| off.abs() <= 0.013), "{side} px: {sums:?}");
    }
}

#[test]
fn a_straight_edge_is_as_long_as_it_is_at_every_angle() {
    let side = 96;
    for degrees in 0..180 {
        let angle = f64::from(degrees).to_radians();
        let (nx, ny) = (angle.cos(), angle.sin());
        let colours = drawn(side, |x, y| (x - 48.3) * nx + (y - 47.8) * ny <= 0.0);
        // how much of the line lies in the square, cut at its four sides
        let (mut from, mut to) = (f64::NEG_INFINITY, f64::INFINITY);
        for (start, step) in [(48.3, -ny), (47.8, nx)] {
            if step.abs() > 1e-12 {
                let ends = [(0.0 - start) / step, (96.0 - start) / step];
                from = from.max(ends[0].min(ends[1]));
                to = to.min(ends[0].max(ends[1]));
            }
        }
        let edge = Shapes::of(&colours, side, side).edge;
        let off = edge / (to - from) - 1.0;
        assert!(off.abs() < 0.025, "{degrees}°: {edge} instead of {}", to - from);
    }
}

#[test]
fn the_pieces_own_border_is_no_edge() {
    let half = Shapes::of(&drawn(96, |x, _| x < 48.0), 96, 96);
    for region in &half.regions {
        assert!((region.perimeter - 96.0).abs() < 1.0, "{region:?}");
        assert_eq!(region.border, 96 + 2 * 48);
        // one side drawn: 1² / (4π ½)
        assert!((region.complexity() - 1.0 / (2.0 * PI)).abs() < 0.01, "{region:?}");
    }
    let plain = Shapes::of(&vec![5; 96 * 96], 96, 96);
    assert_eq!((plain.edge, plain.complexity(), plain.score()), (0.0, 0.0, 0.0));
}

#[test]
fn what_nobody_redraws_does_not_count() {
    // a dot and a stroke as thin as the limit says, and half as thin, on a piece of 192 px
    let side = 192.0;
    for (width, counts) in [(1.5, true), (0.5, false)] {
        let dot = 4.0 * LEAST_WIDTH * side * width;
        let stroke = 2.0 * LEAST_WIDTH * side * width;
        let with_dot = drawn(192, |x, y| (x - 96.0).hypot(y - 96.0) <= dot / 2.0);
        let with_stroke = drawn(192, |x, y| (x - 96.0).abs() <= stroke / 2.0 && (y - 96.0).abs() < 60.0);
        for colours in [with_dot, with_stroke] {
            assert_eq!(Shapes::of(&colours, 192, 192).score() > 0.0, counts, "{width}");
        }
    }
}

/// By another way: every pixel takes the smallest number among its neighbours of the same colour, until none changes.
fn connected(colours: &[u8], width: usize) -> Vec<usize> {
    let mut ids: Vec<usize> = (0..colours.len()).collect();
    loop {
        let before = ids.clone();
        for at in 0..ids.len() {
            for beside in [at.wrapping_sub(1), at + 1, at.wrapping_sub(width), at + width] {
                let same_row = beside / width == at / width || beside % width == at % width;
                if beside < ids.len() && same_row && colours[beside] == colours[at] {
                    ids[at] = ids[at].min(ids[beside]);
                }
            }
        }
        if ids == before {
            return ids;
        }
    }
}

/// A picture in which pixel by pixel stands the number of a pencil.
fn few(colours: &[u8], width: u32, height: u32) -> FewColours {
    let shade = |number: u8| [number * 40, 255 - number * 40, number * 20];
    let pixel = |x: u32, y: u32| Rgb(shade(colours[(y * width + x) as usize]));
    let pencils: Vec<Pencil> =
        (0..5).map(|number| Pencil { name: format!("pencil {number}"), srgb: shade(number) }).collect();
    FewColours::of(&Picture { pixels: RgbImage::from_fn(width, height, pixel) }, &pencils)
}

fn grid(columns: usize, rows: usize) -> Grid {
    Grid::usual(columns, rows)
}

proptest! {
    #[test]
    fn regions_are_those_found_by_another_way(
        (colours, width) in (1_usize..14, 1_usize..14).prop_flat_map(|(w, h)| (proptest::collection::vec(0_u8..3, w * h), Just(w))),
    ) {
        let ids = connected(&colours, width);
        let mut sizes = BTreeMap::<usize, usize>::new();
        ids.iter().for_each(|id| *sizes.entry(*id).or_default() += 1);
        let expected: Vec<(u8, usize)> = sizes.into_iter().map(|(first, pixels)| (colours[first], pixels)).collect();
        let shapes = Shapes::of(&colours, width, colours.len() / width);
        let ours: Vec<(u8, usize)> = shapes.regions.iter().map(|region| (region.colour, region.pixels)).collect();
        prop_assert_eq!(ours, expected);
        prop_assert!(shapes.regions.iter().all(|region| region.perimeter >= 0.0 && region.perimeter.is_finite()));
        let border: usize = shapes.regions.iter().map(|region| region.border).sum();
        prop_assert_eq!(border, 2 * (width + colours.len() / width));
        prop_assert!(!shapes.counted().is_empty());
    }

    #[test]
    fn a_mirror_image_or_a_quarter_turn_is_as_hard(colours in proptest::collection::vec(0_u8..3, 12 * 12)) {
        let side = 12;
        let here = Shapes::of(&colours, side, side);
        let mirrored: Vec<u8> = (0..144).map(|at| colours[at / side * side + side - 1 - at % side]).collect();
        let turned: Vec<u8> = (0..144).map(|at| colours[at % side * side + at / side]).collect();
        for other in [mirrored, turned] {
            let there = Shapes::of(&other, side, side);
            prop_assert!((here.edge - there.edge).abs() < 1e-9);
            prop_assert!((here.score() - there.score()).abs() < 1e-9);
        }
    }

    #[test]
    fn shares_are_exact_by_area_where_pieces_cut_pixels(
        (colours, width) in (1_usize..9, 1_usize..9).prop_flat_map(|(w, h)| (proptest::collection::vec(0_u8..5, w * h), Just(w))),
        columns in 1_usize..4, rows in 1_usize..4,
    ) {
        let height = colours.len() / width;
        let facts = PictureFacts::of(&few(&colours, width as u32, height as u32), &grid(columns, rows), &LevelSettings::default());
        // by another way: pixels so finely divided that every piece's corner lies between two parts
        let fine = 2 * columns * rows;
        let (wide, high) = (width * fine, height * fine);
        let side = (wide / columns).min(high / rows);
        let (left, top) = ((wide - side * columns) / 2, (high - side * rows) / 2);
        for piece in &facts.pieces {
            let Cell { row, column } = piece.cell;
            let mut counts = [0_usize; 5];
            for y in top + row * side..top + (row + 1) * side {
                for x in left + column * side..left + (column + 1) * side {
                    counts[usize::from(colours[y / fine * width + x / fine])] += 1;
                }
            }
            for (share, count) in piece.shares.iter().zip(counts) {
                let expected = count as f64 / (side * side) as f64;
                prop_assert!((share - expected).abs() < 1e-9, "{:?}: {share} {expected}", piece.cell);
            }
            prop_assert!((piece.shares.iter().sum::<f64>() - 1.0).abs() < 1e-9);
        }
    }
}

/// The sample's facts with some levels.
fn sample_facts(levels: &LevelSettings) -> PictureFacts {
    let picture = Picture::open(sample::PICTURE_PNG).unwrap();
    let settings = PictureSettings { file: "x".to_owned(), credit: None, colours: 6, pencils: Vec::new() };
    PictureFacts::of(&FewColours::chosen(&picture, &settings), &grid(10, 8), levels)
}

#[test]
fn the_samples_levels_are_what_one_sees() {
    let facts = sample_facts(&LevelSettings::default());
    let at = |label: &str| {
        let cell = grid(10, 8).cell(label).unwrap();
        facts.pieces.iter().find(|piece| piece.cell == cell).unwrap()
    };
    // sky; a hill; a balloon's middle; the bridge with its railing before a tree
    for (label, level) in
        [("A6", Level::Plain), ("E4", Level::Easy), ("B6", Level::Medium), ("D3", Level::Hard)]
    {
        assert_eq!(at(label).level, level, "{label}: {:?}", at(label));
    }
    assert_eq!((at("A6").pencils.len(), at("A6").regions), (1, 1));
    let counts = Level::ALL.map(|level| facts.count(level));
    assert_eq!(counts.iter().sum::<usize>(), 80);
    assert!(counts[1..].iter().all(|count| *count >= 10), "{counts:?}");
    let work = facts.work();
    assert_eq!(work.pieces, counts);
    let area: f64 = work.areas.iter().flatten().sum();
    assert!((area - 80.0).abs() < 1e-9);
}

#[test]
fn the_organisers_word_counts() {
    let a6 = grid(10, 8).cell("A6").unwrap();
    let levels = LevelSettings { decided: vec![(a6, Level::Hard)], ..LevelSettings::default() };
    let (usual, decided) = (sample_facts(&LevelSettings::default()), sample_facts(&levels));
    for (usual, own) in usual.pieces.iter().zip(&decided.pieces) {
        assert_eq!(own.decided, own.cell == a6);
        assert_eq!(own.level, if own.cell == a6 { Level::Hard } else { usual.level });
    }
    let balanced = sample_facts(&LevelSettings { balanced: true, ..LevelSettings::default() });
    let counts = Level::ALL.map(|level| balanced.count(level));
    assert_eq!(
        (counts[0], counts[1..].iter().max().unwrap() - counts[1..].iter().min().unwrap()),
        (3, 1),
        "{counts:?}"
    );
}

#[test]
fn tiny_pictures_and_huge_grids_have_facts_too() {
    for (width, height, columns, rows) in [(1, 1, 10, 8), (1, 1, 1, 1), (3, 1, 2, 30), (2, 500, 40, 1)] {
        let colours = vec![2; (width * height) as usize];
        let facts =
            PictureFacts::of(&few(&colours, width, height), &grid(columns, rows), &LevelSettings::default());
        assert_eq!(facts.pieces.len(), columns * rows);
        assert!(facts.pieces.iter().all(|piece| piece.pencils == [2] && piece.level == Level::Plain));
    }
}
