//! The pictures, from photos that are made here: a coloured wall behind a tilted camera with a bent lens.

mod overlap;

use everysquare::display::{
    Frontal, LONGEST_PX, MARGIN_MM, MarkedPart, Marking, Shot, jpeg, marked, straighten,
};
use everysquare::frame::{Map, Point, WallMm, float, floor_index, round_byte};
use everysquare::judge::{Judgement, judge};
use everysquare::photo::{Luma, Photo};
use everysquare::plan::cards::RING_MM;
use everysquare::plan::{Cell, Grid, Turn};
use everysquare::read::lens::Lens;
use everysquare::read::{Apart, Camera, CellReading, PhotoReading, Sight, WallReading};
use everysquare::words::Words;
use image::{Rgb, RgbImage};

const WIDTH: u32 = 1600;
const HEIGHT: u32 = 1200;
const ROOM: [u8; 3] = [60, 90, 60];

fn grid() -> Grid {
    Grid::usual(5, 4)
}

/// Tilted, off the middle, with a barrel-shaped lens; `right` moves the photo over the wall.
fn camera(right: f64, k1: f64) -> Camera {
    let from =
        [Point::new(0.0, 0.0), Point::new(635.0, 0.0), Point::new(635.0, 508.0), Point::new(0.0, 508.0)];
    let to = [
        Point::new(290.0 + right, 250.0),
        Point::new(1330.0 + right, 180.0),
        Point::new(1380.0 + right, 1010.0),
        Point::new(240.0 + right, 960.0),
    ];
    let lens = Lens { k1, k2: 0.01, ..Lens::straight(f64::from(WIDTH), f64::from(HEIGHT)) };
    Camera { wall_to_straight: Map::from_four(from, to).expect("four corners"), lens }
}

fn frontal(margin_mm: f64, px_per_mm: Option<f64>) -> Frontal {
    Frontal { margin_mm, px_per_mm, longest_px: LONGEST_PX }
}

/// A smooth pattern that is nowhere the same.
fn pattern(p: Point<WallMm>) -> [f64; 3] {
    let wave = |value: f64| 128.0 + 80.0 * value.sin();
    [wave(p.x / 40.0), wave(p.y / 40.0), wave((p.x + p.y) / 60.0)]
}

fn photograph(camera: &Camera) -> Photo {
    let size = grid().size();
    let colour = RgbImage::from_fn(WIDTH, HEIGHT, |x, y| {
        let p = camera.photo_to_wall(Point::new(f64::from(x) + 0.5, f64::from(y) + 0.5));
        let on_wall = p.filter(|p| p.x > 0.0 && p.y > 0.0 && p.x < size.x && p.y < size.y);
        Rgb(on_wall.map_or(ROOM, |p| pattern(p).map(round_byte)))
    });
    let (width, height) = (WIDTH as usize, HEIGHT as usize);
    Photo { luma: Luma { width, height, grey: vec![0; width * height] }, colour, taken: None, made: true }
}

fn reading(camera: &Camera, sight: impl Fn(&str, Cell) -> Sight) -> WallReading {
    let grid = grid();
    let cells: Vec<CellReading> = grid
        .cells()
        .map(|cell| CellReading {
            cell,
            sight: sight(&grid.label(cell), cell),
            certainty: 1.0,
            corners: Some(grid.corners(cell).map(|corner| camera.wall_to_photo(corner))),
            photo: 0,
        })
        .collect();
    let photo = PhotoReading {
        photo: 0,
        width: WIDTH as usize,
        height: HEIGHT as usize,
        codes_read: 20,
        camera: *camera,
        mirrored: false,
        px_per_module: 1.0,
        worst_shift_mm: 1.0,
        cells: cells.clone(),
        apart: Apart::default(),
    };
    WallReading { photos: vec![photo], cells, contradictions: Vec::new(), apart: Apart::default() }
}

fn troubled(camera: &Camera) -> (WallReading, Judgement) {
    let grid = grid();
    let square = |label: &str, turn| Sight::Square { home: grid.cell(label).unwrap(), turn };
    let reading = reading(camera, |label, cell| match label {
        "B3" => square("C3", Turn::None),
        "C3" => square("B3", Turn::Half),
        "D2" => square("D2", Turn::Quarter),
        "A1" => Sight::Empty,
        "E4" => Sight::Unread,
        "C1" => Sight::Stranger { text: "QQQ-A1".into(), turn: Turn::None },
        _ => Sight::Square { home: cell, turn: Turn::None },
    });
    let judgement = judge(&reading, &grid);
    (reading, judgement)
}

/// Keeps a picture under the target folder, to look at.
fn keep(name: &str, picture: &RgbImage) {
    let path = std::path::Path::new(env!("CARGO_TARGET_TMPDIR")).join(name);
    std::fs::write(path, jpeg(picture).unwrap()).unwrap();
}

#[test]
fn straightening_undoes_tilt_and_lens() {
    let camera = camera(0.0, -0.09);
    let (photo, grid) = (photograph(&camera), grid());
    let (reading, _) = troubled(&camera);
    for px_per_mm in [0.5, 1.0, 2.0] {
        let shot = Shot { photo: &photo, camera: &camera, light: None, apart: &Apart::default() };
        let wall = straighten(&[shot], &reading.cells, &grid, frontal(0.0, Some(px_per_mm)));
        assert_eq!(f64::from(wall.width()), (635.0 * px_per_mm + 0.5_f64).floor());
        let mut worst: f64 = 0.0;
        for (x, y, pixel) in wall.enumerate_pixels() {
            let at = |i: u32| (f64::from(i) + 0.5) / px_per_mm;
            let edge = |mm: f64, all: f64| !(2.0..all - 2.0).contains(&mm);
            if edge(at(x), 635.0) || edge(at(y), 508.0) {
                continue; // a pixel of the photo is part wall, part room there
            }
            let wanted = pattern(Point::new(at(x), at(y)));
            for (value, wanted) in pixel.0.iter().zip(wanted) {
                worst = worst.max((f64::from(*value) - wanted).abs());
            }
        }
        assert!(worst < 4.0, "off by {worst} grey levels at {px_per_mm} px a mm");
    }
}

#[test]
fn what_no_photo_shows_is_striped_and_a_second_photo_fills_it() {
    let (left, right) = (camera(-500.0, -0.09), camera(500.0, -0.05));
    let (photo_left, photo_right) = (photograph(&left), photograph(&right));
    let (reading, _) = troubled(&left);
    let shots = [
        Shot { photo: &photo_left, camera: &left, light: None, apart: &Apart::default() },
        Shot { photo: &photo_right, camera: &right, light: None, apart: &Apart::default() },
    ];
    let grey = |picture: &RgbImage| picture.pixels().filter(|Rgb([r, g, b])| r == g && g == b).count();
    let one = straighten(&shots[..1], &reading.cells, &grid(), frontal(0.0, Some(1.0)));
    let share = float(grey(&one)) / float(one.pixels().len());
    assert!((0.1..0.5).contains(&share), "{share}");
    let both = straighten(&shots, &reading.cells, &grid(), frontal(0.0, Some(1.0)));
    assert!(float(grey(&both)) / float(both.pixels().len()) < 0.001);
    keep("one-photo.jpg", &one);
}

#[test]
fn no_picture_of_a_wall_is_longer_than_its_bound() {
    let camera = camera(0.0, 0.0);
    let photo = photograph(&camera);
    let shot = Shot { photo: &photo, camera: &camera, light: None, apart: &Apart::default() };
    let wall = straighten(&[shot], &[], &grid(), frontal(70.0, Some(50.0)));
    assert_eq!(wall.width().max(wall.height()) as usize, LONGEST_PX);
    let none = straighten(&[], &[], &grid(), frontal(0.0, None));
    assert_eq!(none.dimensions(), (635, 508));
}

#[test]
fn outside_the_wall_and_its_cards_the_marked_photo_is_blank() {
    for (right, k1) in [(0.0, -0.09), (0.0, 0.06), (400.0, -0.05), (-900.0, 0.0)] {
        let camera = camera(right, k1);
        let photo = photograph(&camera);
        let (reading, judgement) = troubled(&camera);
        let words = Words::english();
        let parts = [MarkedPart { reading: &reading.photos[0], index: 0, cover: None }];
        let marking = Marking { photo: &photo, parts: &parts, judgement: &judgement, words: &words };
        let picture = marked(&marking);
        keep(&format!("marked{right}.jpg"), &picture);
        let (mut blank, mut shown) = (0, 0);
        let (left, upper) = offset(&picture, &camera);
        for (x, y, pixel) in picture.enumerate_pixels() {
            let at = Point::new(f64::from(x + left) + 0.5, f64::from(y + upper) + 0.5);
            let around = RING_MM + MARGIN_MM;
            let inside = camera.photo_to_wall(at).is_some_and(|p| {
                p.x > -around && p.y > -around && p.x < 635.0 + around && p.y < 508.0 + around
            });
            if inside {
                shown += 1;
            } else {
                assert_eq!(pixel.0, [255; 3], "at {x}, {y}");
                blank += 1;
            }
        }
        assert!(blank > 1000 && shown > 10 * 1000, "{blank} blank, {shown} shown");
    }
}

/// How far right and down the cropped picture begins in the photo: where its kept part, searched here pixel
/// by pixel, begins, down to the next multiple of eight and eight more.
fn offset(picture: &RgbImage, camera: &Camera) -> (u32, u32) {
    let around = RING_MM + MARGIN_MM;
    let inside = |x: u32, y: u32| {
        camera
            .photo_to_wall(Point::new(f64::from(x) + 0.5, f64::from(y) + 0.5))
            .is_some_and(|p| p.x > -around && p.y > -around && p.x < 635.0 + around && p.y < 508.0 + around)
    };
    let on_grid = |n: u32| (0..n).step_by(8);
    let left = on_grid(WIDTH).find(|x| on_grid(HEIGHT).any(|y| inside(*x, y))).unwrap();
    let upper = on_grid(HEIGHT).find(|y| on_grid(WIDTH).any(|x| inside(x, *y))).unwrap();
    assert!(picture.width() <= WIDTH && picture.height() <= HEIGHT);
    (left.saturating_sub(8), upper.saturating_sub(8))
}

#[test]
fn faulty_cells_are_marked_and_the_others_left_as_they_are() {
    let camera = camera(0.0, -0.09);
    let photo = photograph(&camera);
    let (reading, judgement) = troubled(&camera);
    let words = Words::english();
    let parts = [MarkedPart { reading: &reading.photos[0], index: 0, cover: None }];
    let marking = Marking { photo: &photo, parts: &parts, judgement: &judgement, words: &words };
    let picture = marked(&marking);
    let (left, upper) = offset(&picture, &camera);
    for cell in grid().cells() {
        let faulty = ["B3", "C3", "D2", "A1", "E4", "C1"].contains(&grid().label(cell).as_str());
        let [a, _, c, _] = grid().corners(cell);
        let mut changed = 0;
        let mut looked = 0;
        for i in 1..100 {
            for j in 1..100 {
                let part = |n: i32| 0.01 * f64::from(n);
                let on_wall = Point::<WallMm>::new(a.x + (c.x - a.x) * part(i), a.y + (c.y - a.y) * part(j));
                let p = camera.wall_to_photo(on_wall);
                let px = |value: f64| u32::try_from(floor_index(value)).unwrap();
                let (x, y) = (px(p.x), px(p.y));
                looked += 1;
                changed +=
                    usize::from(picture.get_pixel(x - left, y - upper) != photo.colour.get_pixel(x, y));
            }
        }
        let share = float(changed) / float(looked);
        assert_eq!(share > 0.15, faulty, "{}: {share}", grid().label(cell));
        assert!(faulty || changed == 0, "{}: {share}", grid().label(cell));
    }
}

#[test]
fn a_photo_that_shows_nothing_of_the_wall_leaves_nothing() {
    let camera = camera(1e6, 0.0);
    let photo = photograph(&camera);
    let (reading, judgement) = troubled(&camera);
    let words = Words::english();
    let parts = [MarkedPart { reading: &reading.photos[0], index: 0, cover: None }];
    let marking = Marking { photo: &photo, parts: &parts, judgement: &judgement, words: &words };
    assert_eq!(marked(&marking).dimensions(), (1, 1));
}

#[test]
fn picture_files_hold_no_metadata() {
    let file = jpeg(&RgbImage::from_pixel(40, 30, Rgb([10, 200, 30]))).unwrap();
    // segments of a JPEG file (ISO/IEC 10918-1, annex B): FF, kind, length of two bytes; up to the scan
    let mut at = 2;
    let mut kinds = Vec::new();
    while file[at + 1] != 0xda {
        assert_eq!(file[at], 0xff);
        kinds.push(file[at + 1]);
        at += 2 + usize::from(file[at + 2]) * 256 + usize::from(file[at + 3]);
    }
    assert!(!kinds.iter().any(|kind| (0xe1..=0xef).contains(kind) || *kind == 0xfe), "{kinds:x?}");
    let back = image::load_from_memory(&file).unwrap();
    assert_eq!((back.width(), back.height()), (40, 30));
    assert!(jpeg(&RgbImage::new(0, 5)).is_err());
}

/// A whole page with its pictures, in the target folder, to look at.
#[test]
fn a_page_with_pictures_is_left_to_look_at() {
    use everysquare::judge::{advise, fixes};
    use everysquare::report::html::Straight;
    use everysquare::report::{Occasion, Pictures, Report, html};
    let camera = camera(0.0, -0.09);
    let (photo, grid) = (photograph(&camera), grid());
    let (reading, judgement) = troubled(&camera);
    let words = Words::english();
    let printed = everysquare::plan::Printed {
        parts: Vec::new(),
        stub_mm: None,
        name: "Lock-keeper’s garden".into(),
        tag: "K7M".into(),
        units: everysquare::plan::settings::Units::default(),
        grid,
        module_mm: 0.6,
        code_top_left: Point::new(106.4, 106.4),
        squares: Vec::new(),
        cards: Vec::new(),
    };
    let occasion = Occasion { taken: None, made: true, files: vec!["made.jpg".into()] };
    let (fixes, advice) = (fixes(&judgement), advise(&reading, &judgement));
    let report = Report::new((&reading, &judgement), (&fixes, &advice), &printed, &occasion, &words);
    let parts = [MarkedPart { reading: &reading.photos[0], index: 0, cover: None }];
    let marking = Marking { photo: &photo, parts: &parts, judgement: &judgement, words: &words };
    let marked = [jpeg(&marked(&marking)).unwrap()];
    let straight = jpeg(&straighten(
        &[Shot { photo: &photo, camera: &camera, light: None, apart: &Apart::default() }],
        &reading.cells,
        &grid,
        frontal(70.0, None),
    ))
    .unwrap();
    let page = html(
        &report,
        &words,
        Pictures {
            marked: &marked,
            straight: Some(Straight { jpeg: &straight, margin_mm: 70.0 }),
            accent: "",
        },
    );
    assert_eq!((page.matches("<img ").count(), page.matches("<image ").count()), (1, 1));
    std::fs::write(std::path::Path::new(env!("CARGO_TARGET_TMPDIR")).join("page.html"), page).unwrap();
}
