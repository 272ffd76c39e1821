//! Whoever stands before the wall is covered in every picture that is kept, and nothing else is.
//!
//! Seeds 1, 2, 3 and 12 were looked at while the cover was written, 1001 to 1003 when the bare wall's colour was mended; those here,
//! from 2001 on, were only counted. The ceiling for what may be left was set after they had been measured once: it holds what was reached.

use std::path::Path;

use crate::common::evening::{Opened, event, opened, photo};
use crate::common::everysquare;
use everysquare::display::cover::PLAIN;
use everysquare::display::{Cover, Covered, Expected};
use everysquare::frame::{Point, float};
use everysquare::photo::Photo;
use everysquare::picture::Picture;
use everysquare::plan::Printed;
use everysquare::read::{Reader, Sight};
use everysquare::rehearse::{Options, make};
use everysquare::report::Report;

/// An event, and the picture as it is drawn.
fn drawn(place: &Path) -> (Printed, Picture, Expected) {
    let Opened { printed, drawn, .. } = opened(&event(place, "K7M"));
    let expected = Expected::of(&drawn, &printed.grid);
    (printed, drawn, expected)
}

/// Of one made photo: pixels of people on the wall and around it, how many of them are left; pixels of read squares that show
/// nobody, and how many of them are covered; whether somebody was found.
fn counted(
    (printed, picture, expected): &(Printed, Picture, Expected),
    options: &Options,
) -> ([usize; 4], bool) {
    let made = make(printed, picture, options).unwrap();
    let photo = Photo::open(&made.jpeg).unwrap();
    let reading = Reader::new(printed).read(&photo).unwrap();
    let cover = Cover::of(&photo, &reading, printed, &|| Some(expected.clone()));
    let covered = Covered::new(photo, std::slice::from_ref(&cover));
    let (size, side) = (printed.grid.size(), printed.grid.square_mm);
    let mut counts = [0; 4];
    for (x, y, pixel) in covered.photo().colour.enumerate_pixels().step_by(5) {
        let place = Point::new(f64::from(x) + 0.5, f64::from(y) + 0.5);
        let Some(at) = reading.camera.photo_to_wall(place) else { continue };
        if at.x < -70.0 || at.y < -70.0 || at.x > size.x + 70.0 || at.y > size.y + 70.0 {
            continue;
        }
        let is_covered = *pixel == PLAIN;
        if made.people.as_ref().is_some_and(|people| people.get_pixel(x, y).0[0] > 0) {
            counts[0] += 1;
            counts[1] += usize::from(!is_covered);
            continue;
        }
        let own = reading.cells.iter().find(|cell| {
            let middle = printed.grid.centre(cell.cell);
            (middle.x - at.x).abs() < side / 2.0 && (middle.y - at.y).abs() < side / 2.0
        });
        if own.is_some_and(|own| matches!(own.sight, Sight::Square { .. })) {
            counts[2] += 1;
            counts[3] += usize::from(is_covered);
        }
    }
    (counts, cover.someone())
}

fn small(seed: u64, people: usize) -> Options {
    let mut options = Options { people, width: 2000, height: 1500, ..Options::varied(seed) };
    options.sensor.orientation = 1;
    options
}

#[test]
fn little_of_a_person_is_left() {
    let place = tempfile::tempdir().unwrap();
    let event = drawn(place.path());
    let (mut people, mut left) = (0, 0);
    for seed in 2001..=2006 {
        for count in [1, 3] {
            let ([own, own_left, ..], found) = counted(&event, &small(seed, count));
            println!("seed {seed}, {count} people: {own_left} of {own} left, found {found}");
            people += own;
            left += own_left;
        }
    }
    let share = float(left) / float(people);
    assert!(people > 10_000 && share < LEFT, "{share:.3} of all pixels that show people are left");
}

/// Maximum share of people's pixels that may be left over all these walls: 0.095 are, as measured on these seeds, most of them where
/// somebody at the wall's side is not found at all.
const LEFT: f64 = 0.1;

#[test]
fn where_nobody_stands_no_square_that_was_read_loses_anything() {
    let place = tempfile::tempdir().unwrap();
    let event = drawn(place.path());
    for seed in (1001..=1008).chain(2001..=2008) {
        let mut options = small(seed, 0);
        options.unsteady = if seed % 2 == 0 { 2.0 } else { 1.0 };
        options.faults.misdrawn = if seed % 3 == 0 { 10 } else { 0 };
        let ([own, _, plain, lost], found) = counted(&event, &options);
        assert_eq!((own, found), (0, false), "seed {seed}");
        assert!(plain > 10_000, "seed {seed}");
        // the outermost pixel of a cell that was not read
        assert!(lost * 1000 <= plain, "seed {seed}: {lost} of {plain} pixels are covered");
    }
}

#[test]
fn the_check_asks_everyone_to_step_aside_and_leaves_pictures_as_they_are_where_asked() {
    let place = tempfile::tempdir().unwrap();
    let folder = event(place.path(), "K7M");
    let photo = photo(&folder, "12", &["--people", "4"]);
    let checked = |more: &[&str]| {
        let (_, out, err) = everysquare(&[&["check", folder.to_str().unwrap(), &photo], more].concat());
        let mut checks: Vec<_> =
            std::fs::read_dir(folder.join("checks")).unwrap().map(|check| check.unwrap().path()).collect();
        checks.sort();
        let newest = checks.last().unwrap().clone();
        let wall = image::open(newest.join("wall.jpg")).unwrap().into_rgb8();
        let near = |pixel: &&image::Rgb<u8>| pixel.0.iter().zip(PLAIN.0).all(|(a, b)| a.abs_diff(b) < 4);
        let plain = wall.pixels().filter(near).count();
        let text = std::fs::read_to_string(newest.join("report.json")).unwrap();
        let report = Report::from_json(&text).unwrap();
        let html = std::fs::read_to_string(newest.join("report.html")).unwrap();
        std::fs::remove_dir_all(&newest).unwrap();
        (format!("{out}{err}"), plain, report, html)
    };
    let aside = "Someone seems to be in front of the wall.";
    let (said, plain, report, html) = checked(&[]);
    assert!(said.contains(aside) && html.contains(aside), "{said}");
    assert!(report.advice.iter().any(|advice| advice.contains(aside)), "{:?}", report.advice);
    let (said, as_it_is, ..) = checked(&["--uncovered"]);
    assert!(said.contains("--uncovered"), "{said}");
    assert!(plain > 2 * as_it_is + 50_000, "{plain} plain pixels, {as_it_is} without");
}
