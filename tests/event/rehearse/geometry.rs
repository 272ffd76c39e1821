//! The truth's pixels against what the picture really shows, found without the model that made it.

use everysquare::frame::{Map, Module, PhotoPx, Point, floor_index};
use everysquare::rehearse::{Backing, Cards, CellTruth, Faults, Hanging, Made, Options, Pose, Sensor, State};
use image::RgbImage;

use super::{bare, made, picture, printed, small};

/// Brightness, 0 … 255 without the tone curve, between pixels' centres.
fn light(image: &RgbImage, at: Point<PhotoPx>) -> f64 {
    let linear = |x: f64, y: f64| {
        let clamp = |value: f64, count: u32| u32::try_from(floor_index(value)).unwrap().min(count - 1);
        let green = f64::from(image.get_pixel(clamp(x, image.width()), clamp(y, image.height())).0[1]);
        255.0 * (green / 255.0).powf(2.2)
    };
    let (x, y) = (at.x - 0.5, at.y - 0.5);
    let (fx, fy) = (x - x.floor(), y - y.floor());
    let (x, y) = (x.floor(), y.floor());
    (linear(x, y) * (1.0 - fx) + linear(x + 1.0, y) * fx) * (1.0 - fy)
        + (linear(x, y + 1.0) * (1.0 - fx) + linear(x + 1.0, y + 1.0) * fx) * fy
}

fn points(corners: [[f64; 2]; 4]) -> [Point<PhotoPx>; 4] {
    corners.map(|[x, y]| Point::new(x, y))
}

/// From modules into the photo, by the truth's four corners.
fn code(cell: &CellTruth) -> Map<Module, PhotoPx> {
    let outer = [(0.0, 0.0), (21.0, 0.0), (21.0, 21.0), (0.0, 21.0)].map(|(x, y)| Point::new(x, y));
    Map::from_four(outer, points(cell.code_px.unwrap())).unwrap()
}

/// Where along a line, in parts of it, the light passes half way between its ends; the line should cross one edge.
fn edge(image: &RgbImage, from: Point<PhotoPx>, to: Point<PhotoPx>) -> f64 {
    let steps = 400;
    let levels: Vec<f64> =
        (0..=steps).map(|i| light(image, from.towards(to, f64::from(i) / f64::from(steps)))).collect();
    let (first, last) = (levels[0], levels[levels.len() - 1]);
    assert!((first - last).abs() > 20.0, "an edge was expected between {first} and {last}");
    // The part of the line that is like its beginning: where a sharp edge would lie.
    let like: f64 = levels.iter().map(|level| (level - last) / (first - last)).sum();
    like / f64::from(steps + 1)
}

fn worst_module_edge(made: &Made) -> f64 {
    let mut worst = 0.0_f64;
    let mut seen = 0;
    for cell in made.truth.cells.iter().filter(|cell| cell.readable) {
        let to_photo = code(cell);
        let px = cell.px_per_module.unwrap();
        // Across the outer edge of each finder pattern's middle row and column: dark inside, paper outside.
        let (a, b) = (3.5, 17.5);
        for (inside, outside) in [
            ((0.5, a), (-0.5, a)),
            ((a, 0.5), (a, -0.5)),
            ((20.5, a), (21.5, a)),
            ((b, 0.5), (b, -0.5)),
            ((0.5, b), (-0.5, b)),
            ((a, 20.5), (a, 21.5)),
        ] {
            let at = |(x, y): (f64, f64)| to_photo.apply(Point::new(x, y));
            let off = edge(&made.image, at(inside), at(outside)) - 0.5;
            worst = worst.max(off.abs() * px);
            seen += 1;
        }
    }
    assert!(seen >= 30, "only {seen} edges were in sight");
    worst
}

#[test]
fn modules_are_where_the_truth_says() {
    for (seed, lens) in [(1, [0.0, 0.0]), (2, [-0.1, 0.03]), (3, [0.06, -0.02])] {
        let mut options = Options { width: 1600, height: 1200, ..bare(seed) };
        (options.pose.k1, options.pose.k2) = (lens[0], lens[1]);
        options.hanging.drawn_into = 0.0;
        let worst = worst_module_edge(&made(&printed(3, 2, 1.2), &options));
        assert!(worst < 0.15, "lens {lens:?}: {worst} px");
    }
}

#[test]
fn modules_of_bent_paper_are_where_the_truth_says() {
    let mut options = Options { width: 1600, height: 1200, ..bare(4) };
    options.hanging = Hanging { bend_mm: 2.0, drawn_into: 0.0, ..options.hanging };
    let worst = worst_module_edge(&made(&printed(3, 2, 1.2), &options));
    assert!(worst < 0.3, "{worst} px");
}

#[test]
fn papers_edges_are_where_the_truth_says() {
    let mut options =
        Options { width: 1600, height: 1200, backing: Backing::Coloured, cards: Cards::None, ..bare(5) };
    options.hanging = Hanging { bend_mm: 0.0, tape: false, ..Hanging::default() };
    // White paper without a drawing, alone among empty cells.
    options.faults = Faults { missing: 11, ..Faults::default() };
    let blank = everysquare::picture::Picture { pixels: RgbImage::from_pixel(8, 6, image::Rgb([255; 3])) };
    let mut seen = 0;
    for seed in 0..6 {
        options.seed = seed;
        let made = everysquare::rehearse::make(&printed(4, 3, 0.6), &blank, &options).unwrap();
        let cell = made.truth.cells.iter().find(|cell| cell.hung.is_some()).unwrap();
        let corners = points(cell.corners_px.unwrap());
        let middle = corners[0].towards(corners[2], 0.5);
        for i in 0..4 {
            // Not at the tick marks, which stand at the quarter points.
            let on = corners[i].towards(corners[(i + 1) % 4], 0.4);
            let step = (on - middle) / on.distance(middle).value() * 6.0;
            let off = (edge(&made.image, on - step, on + step) - 0.5) * 12.0;
            // Beyond the edge lies its soft shadow, which moves the half way mark outwards a little.
            assert!(off.abs() < 0.5, "seed {seed}, side {i}: {off} px");
            seen += 1;
        }
    }
    assert_eq!(seen, 24);
}

#[test]
fn a_mirrored_photo_is_the_other_one_flipped_and_so_is_its_truth() {
    let straight = made(&printed(3, 2, 0.8), &small(6));
    let sensor = Sensor { mirrored: true, ..Sensor::default() };
    let mirrored = made(&printed(3, 2, 0.8), &Options { sensor, ..small(6) });
    assert_eq!(image::imageops::flip_horizontal(&straight.image), mirrored.image);
    for (a, b) in straight.truth.cells.iter().zip(&mirrored.truth.cells) {
        assert_eq!((&a.state, &a.found, a.turn_degrees), (&b.state, &b.found, b.turn_degrees));
        for ([x, y], [u, v]) in a.corners_px.unwrap().iter().zip(b.corners_px.unwrap()) {
            assert!((800.0 - x - u).abs() < 0.002 && (y - v).abs() < 0.002);
        }
    }
}

#[test]
fn the_wall_fills_what_was_asked_and_more_leaves_cells_out_of_sight() {
    let whole = made(&printed(6, 4, 0.6), &small(7));
    let outline = |pick: fn(&[f64; 2]) -> f64| {
        let all = whole.truth.cells.iter().flat_map(|cell| cell.cell_px.unwrap()).map(|p| pick(&p));
        all.clone().fold(f64::MIN, f64::max) - all.fold(f64::MAX, f64::min)
    };
    let fills = (outline(|p| p[0]) / 800.0).max(outline(|p| p[1]) / 600.0);
    assert!((fills - 0.85).abs() < 0.003, "{fills}");
    assert!(whole.truth.cells.iter().all(|cell| cell.cell_seen == 1.0));
    let pose = Pose { fill: 2.0, ..Pose::default() };
    let part = made(&printed(6, 4, 0.6), &Options { pose, ..small(7) });
    let unseen = part.truth.cells.iter().filter(|cell| cell.state == State::Unseen).count();
    assert!((6..24).contains(&unseen), "{unseen} of 24 cells");
}

#[test]
fn enough_pixels_a_module_are_made_when_asked() {
    for (columns, rows, least) in [(3, 2, 1.9), (6, 4, 0.8)] {
        let options = Options { min_px_per_module: Some(least), ..small(8) };
        let made = made(&printed(columns, rows, 0.5), &options);
        let px = made.truth.px_per_module.median;
        assert!((least..least * 1.15).contains(&px), "{px} px a module, {least} were asked");
        assert_eq!(made.truth.upright_size[0], made.image.width() as usize);
    }
    let options = Options { min_px_per_module: Some(30.0), ..small(8) };
    let refused = everysquare::rehearse::make(&printed(20, 14, 0.5), &picture(), &options).unwrap_err();
    assert!(refused.to_string().contains("the most is 8000 x 6000"), "{refused}");
}

#[test]
fn nothing_that_stands_in_front_counts_as_seen() {
    let options = Options { people: 3, ladder: true, ..small(9) };
    let clear = made(&printed(6, 4, 0.6), &small(9));
    let hidden = made(&printed(6, 4, 0.6), &options);
    let seen = |made: &Made| made.truth.cells.iter().map(|cell| cell.cell_seen).sum::<f64>();
    assert!(seen(&hidden) < seen(&clear) - 1.0);
    // What counts as hidden has changed in the picture, what counts as seen has not.
    for (a, b) in clear.truth.cells.iter().zip(&hidden.truth.cells) {
        let [x, y] = a.code_px.unwrap()[0];
        let at = Point::new(x, y);
        let differs = (light(&clear.image, at) - light(&hidden.image, at)).abs() > 1.0;
        if b.code_seen == Some(1.0) {
            assert!(!differs, "{}", a.label);
        }
    }
}
