//! Squares away from the wall's lattice: on another board, beyond a door, on a table.
//!
//! The photos are put together from made ones that look straight at the wall: strips of columns, moved apart over plain backing.

#![allow(clippy::unwrap_used, reason = "a test that cannot go on fails")]
#![allow(
    clippy::cast_possible_truncation,
    clippy::cast_precision_loss,
    clippy::cast_sign_loss,
    reason = "small numbers in a test"
)]

mod common;

use std::io::Cursor;
use std::path::{Path, PathBuf};

use common::evening::{Opened, event_of, opened};
use common::everysquare;
use everysquare::judge::{Advice, Outcome, State, advise, fixes, judge};
use everysquare::photo::Photo;
use everysquare::picture::Picture;
use everysquare::plan::{Grid, Printed};
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
        let mut bytes = Cursor::new(Vec::new());
        photo.write_to(&mut bytes, ImageFormat::Png).unwrap();
        let photo = Photo::open(bytes.get_ref()).unwrap();
        Reader::new(&self.printed).read(&photo).unwrap()
    }
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

#[test]
fn squares_of_another_part_are_never_said_to_be_missing() {
    let place = tempfile::tempdir().unwrap();
    let event = event(place.path());
    let grid = event.printed.grid;
    let made = event.wall(31, 2800);
    let walls = [
        DOOR,
        // whole squares apart: the other part hangs in places of the lattice that go on beyond the wall
        Parts { gap_mm: 254.0, ..DOOR },
        Parts { cuts: &[3, 6], gap_mm: 400.0, down_mm: 45.0, ..DOOR },
        Parts { cuts: &[2, 5], gap_mm: 200.0, down_mm: 60.0, ..DOOR },
    ];
    for (number, parts) in walls.iter().enumerate() {
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
fn the_program_says_which_columns_hang_apart() {
    let place = tempfile::tempdir().unwrap();
    let event = event(place.path());
    let file = place.path().join("door.png");
    DOOR.photo(&event.wall(34, 2800)).save(&file).unwrap();
    let (code, out, err) = everysquare(&["check", event.folder.to_str().unwrap(), file.to_str().unwrap()]);
    assert_eq!(code, 2, "{out}{err}");
    let told = out.split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(told.contains("Part of the wall hangs apart: columns"), "{out}");
    assert!(!told.contains("Find ") && !told.contains("empty spot"), "{out}");
}
