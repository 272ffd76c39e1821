//! Squares away from the wall's lattice: on another board, beyond a door, on a table.
//!
//! The photos are put together from made ones that look straight at the wall: strips of columns, moved apart over plain backing.

use std::io::Cursor;
use std::path::{Path, PathBuf};

use crate::common::evening::{Opened, event_of, opened};
use crate::common::everysquare;
use everysquare::judge::{Advice, Outcome, State, advise, fixes, judge};
use everysquare::photo::Photo;
use everysquare::picture::Picture;
use everysquare::plan::settings::WallPart;
use everysquare::plan::{Cell, Grid, Printed};
use everysquare::read::{self, PhotoReading, Reader, Sight, WallReading};
use everysquare::rehearse::{Cards, Light, Made, Options, Pose, make};
use image::imageops::{crop_imm, replace};
use image::{ImageFormat, Rgb, RgbImage};

const COLUMNS: usize = 8;

/// An event of 8 × 6 squares, printed.
struct Event {
    folder: PathBuf,
    printed: Printed,
    picture: Picture,
}

fn event(place: &Path) -> Event {
    let folder = event_of(place, "K7M", ["8", "6"]);
    let Opened { printed, drawn, .. } = opened(&folder);
    Event { folder, printed, picture: drawn }
}

impl Event {
    /// The whole wall, seen from straight ahead, without cards.
    fn wall(&self, seed: u64, width: usize) -> Made {
        let pose = Pose {
            yaw_degrees: 0.0,
            pitch_degrees: 0.0,
            roll_degrees: 0.0,
            k1: 0.0,
            k2: 0.0,
            ..Pose::default()
        };
        let light = Light { gradient: 0.1, shadow: 0.0, vignetting: 0.0, ..Light::default() };
        let options = Options {
            seed,
            width,
            height: width * 3 / 4,
            cards: Cards::None,
            pose,
            light,
            ..Options::default()
        };
        make(&self.printed, &self.picture, &options).unwrap()
    }

    fn read(&self, photo: &RgbImage) -> PhotoReading {
        Reader::new(&self.printed).read(&opened_photo(photo)).unwrap()
    }

    /// The wall in one photo, all its parts together.
    fn wall_in(&self, photo: &RgbImage) -> WallReading {
        read::together(vec![Reader::new(&self.printed).read_parts(&opened_photo(photo)).unwrap()])
    }
}

fn opened_photo(photo: &RgbImage) -> Photo {
    let mut bytes = Cursor::new(Vec::new());
    photo.write_to(&mut bytes, ImageFormat::Png).unwrap();
    Photo::open(bytes.get_ref()).unwrap()
}

/// Where strips of the wall are put: the columns after which it is cut, how far apart the strips are, how much lower every second one
/// is, both in mm, and which of them are left out.
struct Parts<'a> {
    cuts: &'a [usize],
    gap_mm: f64,
    down_mm: f64,
    without: &'a [usize],
}

const DOOR: Parts<'_> = Parts { cuts: &[4], gap_mm: 900.0, down_mm: 0.0, without: &[] };

impl Parts<'_> {
    fn photo(&self, made: &Made) -> RgbImage {
        let truth = &made.truth.cells;
        let left = |column: usize| {
            let own: Vec<f64> = truth
                .iter()
                .filter(|cell| cell.column == column)
                .map(|cell| cell.cell_px.unwrap()[0][0])
                .collect();
            own.iter().sum::<f64>() / own.len() as f64
        };
        let mm = (left(COLUMNS - 1) - left(0)) / (127.0 * (COLUMNS - 1) as f64);
        let (width, height) = made.image.dimensions();
        let mut edges = vec![0];
        edges.extend(self.cuts.iter().map(|column| left(*column) as u32));
        edges.push(width);
        let (gap, down) = ((self.gap_mm * mm) as u32, (self.down_mm * mm) as u32);
        let wide = width + gap * self.cuts.len() as u32;
        let top = truth[0].cell_px.unwrap()[0][1] as u32;
        let backing = *made.image.get_pixel(width / 2, top - 40);
        let mut photo = RgbImage::from_fn(wide, height + down, |x, y| {
            let grain = ((x * 7919 + y * 104_729) % 7) as u8;
            Rgb(backing.0.map(|level| level.saturating_sub(3).saturating_add(grain)))
        });
        for (i, ends) in edges.windows(2).enumerate().filter(|(i, _)| !self.without.contains(i)) {
            let strip = crop_imm(&made.image, ends[0], 0, ends[1] - ends[0], height).to_image();
            let lower = if i % 2 == 1 { down } else { 0 };
            replace(&mut photo, &strip, i64::from(ends[0] + gap * i as u32), i64::from(lower));
        }
        photo
    }
}

fn one(reading: PhotoReading) -> WallReading {
    read::several(vec![reading])
}

fn states(reading: &WallReading, grid: &Grid) -> Vec<State> {
    judge(reading, grid).cells.into_iter().map(|cell| cell.state).collect()
}

/// Walls in parts.
const WALLS: [Parts<'_>; 4] = [
    DOOR,
    // whole squares apart: the other part hangs in places of the lattice that go on beyond the wall
    Parts { gap_mm: 254.0, ..DOOR },
    Parts { cuts: &[3, 6], gap_mm: 400.0, down_mm: 45.0, ..DOOR },
    Parts { cuts: &[2, 5], gap_mm: 200.0, down_mm: 60.0, ..DOOR },
];

#[test]
fn all_parts_in_a_photo_are_one_wall() {
    let place = tempfile::tempdir().unwrap();
    let event = event(place.path());
    let grid = event.printed.grid;
    let made = event.wall(31, 2800);
    for (number, parts) in WALLS.iter().enumerate() {
        let photo = parts.photo(&made);
        let reading = event.wall_in(&photo);
        assert_eq!(reading.photos.len(), parts.cuts.len() + 1, "wall {number}");
        assert_eq!(reading.photo_count(), 1);
        let judgement = judge(&reading, &grid);
        let summary = judgement.summary;
        assert_eq!((summary.wrong, summary.turned, summary.empty), (0, 0, 0), "wall {number}: {summary:?}");
        assert!(summary.right >= 46, "wall {number}: {summary:?}");
        assert_eq!(judgement.apart, read::Apart::default(), "wall {number}");
        let named: Vec<bool> = reading.photos.iter().map(|part| !part.cells.is_empty()).collect();
        assert!(named.iter().all(|named| *named));
        if number == 2 {
            // declared, the same is seen
            let declared = Printed { parts: declared(parts.cuts, &grid), ..event.printed.clone() };
            let listed =
                read::together(vec![Reader::new(&declared).read_parts(&opened_photo(&photo)).unwrap()]);
            assert_eq!(states(&listed, &grid), states(&reading, &grid));
        }
    }
}

/// The strips as event.toml would list them.
fn declared(cuts: &[usize], grid: &Grid) -> Vec<WallPart> {
    let mut edges = vec![0];
    edges.extend(cuts);
    edges.push(grid.columns);
    let part = |ends: &[usize]| WallPart {
        first: Cell { row: 0, column: ends[0] },
        last: Cell { row: grid.rows - 1, column: ends[1] - 1 },
        place: None,
        bottom_mm: None,
        board: None,
    };
    edges.windows(2).map(part).collect()
}

#[test]
fn of_a_part_that_is_in_no_photo_nothing_is_said() {
    let place = tempfile::tempdir().unwrap();
    let event = event(place.path());
    let grid = event.printed.grid;
    let printed = Printed { parts: declared(&[4], &grid), ..event.printed.clone() };
    let photo = Parts { without: &[1], ..DOOR }.photo(&event.wall(35, 2800));
    let reading = read::together(vec![Reader::new(&printed).read_parts(&opened_photo(&photo)).unwrap()]);
    let judgement = judge(&reading, &grid);
    for at in &judgement.cells {
        let expected = if at.cell.column < 4 { State::Right } else { State::Unseen };
        assert!(at.state == expected || at.state == State::Unread, "{}: {:?}", at.label, at.state);
    }
    let advice = advise(&reading, &judgement);
    let others = grid.cells().filter(|cell| cell.column >= 4).collect();
    assert_eq!(advice.first(), Some(&Advice::OtherPart { cells: others }));
    assert!(!advice.iter().any(|one| matches!(one, Advice::StepBack { .. } | Advice::Hidden { .. })));
}

#[test]
fn squares_on_a_table_in_their_order_are_no_part_of_the_wall() {
    let place = tempfile::tempdir().unwrap();
    let event = event(place.path());
    let grid = event.printed.grid;
    let made = event.wall(36, 2800);
    // C3 to F4 are taken down and lie beside each other, far from the wall
    let corner = |label: &str, at: usize| {
        let cell = grid.cell(label).unwrap();
        made.truth.cells[grid.index(cell)].cell_px.unwrap()[at].map(|px| px as u32)
    };
    let ([left, top], [right, bottom]) = (corner("C4", 0), corner("F3", 2));
    let block = crop_imm(&made.image, left, top, right - left, bottom - top).to_image();
    let (width, height) = made.image.dimensions();
    let bare = *made.image.get_pixel(width / 2, corner("A6", 0)[1] - 40);
    let mut photo = RgbImage::from_pixel(width, height + 2 * (bottom - top), bare);
    replace(&mut photo, &made.image, 0, 0);
    let hole = RgbImage::from_fn(right - left, bottom - top, |x, y| {
        Rgb(bare.0.map(|level| level.saturating_add(((x * 31 + y * 17) % 5) as u8)))
    });
    replace(&mut photo, &hole, i64::from(left), i64::from(top));
    replace(&mut photo, &block, i64::from(left) + 23, i64::from(height) + 31);
    let reading = event.wall_in(&photo);
    let judgement = judge(&reading, &grid);
    let lying: Vec<_> = judgement.apart.squares.iter().map(|cell| grid.label(*cell)).collect();
    assert!(lying.len() >= 7, "{lying:?}");
    for label in ["C3", "D3", "E3", "F3", "C4", "D4", "E4", "F4"] {
        let state = judgement.at(grid.cell(label).unwrap()).unwrap().state;
        assert!(matches!(state, State::Unseen | State::Empty), "{label}: {state:?}");
    }
}

#[test]
fn the_largest_part_alone_says_that_others_hang_apart() {
    let place = tempfile::tempdir().unwrap();
    let event = event(place.path());
    let grid = event.printed.grid;
    let made = event.wall(31, 2800);
    for (number, parts) in WALLS.iter().enumerate() {
        let reading = one(event.read(&parts.photo(&made)));
        let judgement = judge(&reading, &grid);
        let summary = judgement.summary;
        assert_eq!((summary.wrong, summary.empty), (0, 0), "wall {number}: {summary:?}");
        assert!(summary.right >= 10, "wall {number}: {summary:?}");
        assert!(
            reading.apart.is_part && reading.apart.squares.len() >= 9,
            "wall {number}: {:?}",
            reading.apart
        );
        assert!(fixes(&judgement).iter().all(|fix| fix.act().name() == "look"), "wall {number}");
        let advice = advise(&reading, &judgement);
        assert!(
            matches!(advice.first(), Some(Advice::Apart { is_part: true, .. })),
            "wall {number}: {advice:?}"
        );
        assert!(!advice.iter().any(|one| matches!(one, Advice::StepBack { .. } | Advice::Hidden { .. })));
        assert_eq!(judgement.outcome(), Outcome::CannotTell);
    }
}

#[test]
fn a_photo_of_each_part_is_one_wall_and_nothing_was_moved() {
    let place = tempfile::tempdir().unwrap();
    let event = event(place.path());
    let grid = event.printed.grid;
    let made = event.wall(32, 2800);
    let [left, right] = [1, 0].map(|without| event.read(&Parts { without: &[without], ..DOOR }.photo(&made)));
    for photos in [[left.clone(), right.clone()], [right, left]] {
        let wall = read::several(photos.to_vec());
        assert!(wall.contradictions.is_empty());
        assert!(wall.apart.squares.is_empty(), "{:?}", wall.apart);
        let states = states(&wall, &grid);
        assert!(states.iter().all(|state| matches!(state, State::Right | State::Unread)), "{states:?}");
        assert!(states.iter().filter(|state| **state == State::Right).count() >= 46);
    }
}

#[test]
fn a_square_on_the_table_is_told_and_its_spot_is_not_called_empty() {
    let place = tempfile::tempdir().unwrap();
    let event = event(place.path());
    let grid = event.printed.grid;
    let made = event.wall(33, 4000);
    // E3's paper is taken down and laid beside the wall
    let cell = grid.cell("E3").unwrap();
    let own = made.truth.cells[grid.index(cell)].corners_px.unwrap();
    let (x, y) = (own[0][0].min(own[3][0]) as u32, own[0][1].min(own[1][1]) as u32);
    let side = (own[1][0] - own[0][0]) as u32 + 4;
    let paper = crop_imm(&made.image, x, y, side, side).to_image();
    let bare = crop_imm(&made.image, made.image.width() / 2, 10, side, 50).to_image();
    let (width, height) = made.image.dimensions();
    let mut photo =
        RgbImage::from_pixel(width + 3 * side, height, *made.image.get_pixel(width - 5, height / 2));
    replace(&mut photo, &made.image, 0, 0);
    for strip in 0..side.div_ceil(50) {
        replace(&mut photo, &bare, i64::from(x), i64::from(y + strip * 50));
    }
    replace(&mut photo, &paper, i64::from(width + side), i64::from(height / 2 + 30));
    let reading = one(event.read(&photo));
    assert_eq!((reading.apart.squares.clone(), reading.apart.is_part), (vec![cell], false));
    let judgement = judge(&reading, &grid);
    assert_eq!(judgement.at(cell).unwrap().state, State::Unseen);
    assert!(!judgement.missing.contains(&cell));
}

#[test]
fn on_a_wall_in_one_piece_nothing_is_apart() {
    let place = tempfile::tempdir().unwrap();
    let event = event(place.path());
    for seed in 41..47 {
        let options = Options { width: 2400, height: 1800, ..Options::varied(seed) };
        let options = Options {
            faults: everysquare::rehearse::Faults { swaps: 4, missing: 6, ..Default::default() },
            ..options
        };
        let made = make(&event.printed, &event.picture, &options).unwrap();
        let photo = Photo::open(&made.jpeg).unwrap();
        let Ok(reading) = Reader::new(&event.printed).read(&photo) else { continue };
        assert_eq!(reading.apart, read::Apart::default(), "seed {seed}");
        let empty = reading.cells.iter().filter(|cell| cell.sight == Sight::Empty).count();
        assert!(empty <= 6, "seed {seed}");
    }
}

#[test]
fn the_program_reads_both_sides_of_a_door() {
    let place = tempfile::tempdir().unwrap();
    let event = event(place.path());
    let file = place.path().join("door.png");
    DOOR.photo(&event.wall(34, 2800)).save(&file).unwrap();
    let (code, out, err) = everysquare(&["check", event.folder.to_str().unwrap(), file.to_str().unwrap()]);
    let told = out.split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(!told.contains("Find ") && !told.contains("empty") && !told.contains("apart"), "{out}");
    assert!(told.contains("1 photo"), "{out}");
    assert_ne!(code, 1, "{out}{err}");
    let report = everysquare::report::Report::of_check(&newest_check(&event.folder)).unwrap();
    assert!(report.summary.right >= 46 && report.photos.len() == 1, "{:?}", report.summary);
    assert!(newest_check(&event.folder).join("marked.jpg").exists());
}

fn newest_check(folder: &Path) -> PathBuf {
    let checks = std::fs::read_dir(folder.join("checks")).unwrap();
    checks.map(|entry| entry.unwrap().path()).max().unwrap()
}
