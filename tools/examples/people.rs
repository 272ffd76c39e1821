//! How much of people who stand before a wall is left in pictures that are kept: made walls with 0 to 4 people.
//!
//! ```text
//!   cargo run --release --example people -- FOLDER FIRST-SEED LAST-SEED [DIRECTORY] [misdrawn]
//!     FOLDER      an event, printed
//!     DIRECTORY   where every covered photo is written, small
//!     misdrawn    every second square shows another piece, drawn twice as freely: what covering costs where nobody drew what was asked
//! ```
//!
//! Counted are pixels of the photo on the wall and within the rim that pictures show. Before: what shows a person. After: what of
//! it is not covered. Lost: share of pixels that show no person, on squares that were read, and are covered.

#![allow(clippy::print_stdout, reason = "a tool's answers")]

use std::error::Error;
use std::path::Path;
use std::time::Instant;

use everysquare::display::cover::PLAIN;
use everysquare::display::{Cover, Covered, Expected};
use everysquare::frame::{Point, float};
use everysquare::photo::Photo;
use everysquare::picture::{FewColours, Picture};
use everysquare::plan::{Folder, Printed};
use everysquare::read::{CellReading, Reader, Sight};
use everysquare::rehearse::{Faults, Options, make};

/// Millimetres around the wall that pictures show.
const RIM_MM: f64 = 70.0;

#[derive(Default)]
struct Counts {
    kept: usize,
    people: usize,
    left: usize,
    worst: f64,
    plain: usize,
    lost: usize,
    read: usize,
    visible: usize,
    found: usize,
    walls: usize,
    seconds: f64,
}

fn main() -> Result<(), Box<dyn Error>> {
    let typed: Vec<String> = std::env::args().skip(1).collect();
    let [folder, first, last, rest @ ..] = typed.as_slice() else {
        return Err("FOLDER FIRST-SEED LAST-SEED [DIRECTORY] [misdrawn]".into());
    };
    let folder = Folder::at(Path::new(folder));
    let (printed, settings) = (folder.printed()?, folder.settings()?);
    let picture = Picture::open(&folder.picture_bytes(&settings)?)?;
    let few = FewColours::chosen(&picture, &settings.picture).to_picture();
    let expected = Expected::of(&few, &printed.grid);
    let misdrawn = rest.iter().any(|word| word == "misdrawn");
    let into = rest.iter().find(|word| *word != "misdrawn").map(Path::new);
    println!("people walls found  person before  after  worst wall  lost  read visible  seconds");
    for people in 0..=4 {
        let mut counts = Counts::default();
        for seed in first.parse::<u64>()?..=last.parse::<u64>()? {
            let mut options = Options { people, ..Options::varied(seed) };
            options.faults = Faults { swaps: 2, turns: 2, missing: 2, ..Faults::default() };
            if misdrawn {
                options.faults.misdrawn = printed.grid.count() / 2;
                options.unsteady = 2.0;
            }
            options.sensor.orientation = 1;
            let made = make(&printed, &few, &options)?;
            let photo = Photo::open(&made.jpeg)?;
            count(&mut counts, photo, made.people.as_ref(), &printed, &expected, |covered| {
                let Some(into) = into else { return Ok(()) };
                let small = image::imageops::thumbnail(&covered.photo().colour, 1200, 900);
                small.save(into.join(format!("{people}-{seed}.png")))
            })?;
        }
        let share = |part: usize, all: usize| 100.0 * float(part) / float(all.max(1));
        println!(
            "{people:6} {:5} {:5} {:13.2}% {:5.2}% {:10.1}% {:5.2}% {:4} {:7} {:8.3}",
            counts.walls,
            counts.found,
            share(counts.people, counts.kept),
            share(counts.left, counts.kept),
            100.0 * counts.worst,
            share(counts.lost, counts.plain),
            counts.read,
            counts.visible,
            counts.seconds / float(counts.walls.max(1)),
        );
    }
    Ok(())
}

fn count(
    counts: &mut Counts,
    photo: Photo,
    people: Option<&image::GrayImage>,
    printed: &Printed,
    expected: &Expected,
    show: impl Fn(&Covered) -> Result<(), image::ImageError>,
) -> Result<(), Box<dyn Error>> {
    let Ok(reading) = Reader::new(printed).read(&photo) else { return Ok(()) };
    let start = Instant::now();
    let cover = Cover::of(&photo, &reading, printed, &|| Some(expected.clone()));
    let covered = Covered::new(photo, std::slice::from_ref(&cover));
    counts.seconds += start.elapsed().as_secs_f64();
    show(&covered)?;
    counts.walls += 1;
    counts.found += usize::from(cover.someone());
    let size = printed.grid.size();
    let (mut own, mut own_left) = (0_usize, 0_usize);
    let is_square = |cell: &&CellReading| matches!(cell.sight, Sight::Square { .. });
    for cell in reading.cells.iter().filter(is_square) {
        counts.read += 1;
        counts.visible += usize::from(cover.share(cell.cell) < 0.1);
    }
    for (x, y, pixel) in covered.photo().colour.enumerate_pixels().step_by(7) {
        let Some(at) = reading.camera.photo_to_wall(Point::new(f64::from(x) + 0.5, f64::from(y) + 0.5))
        else {
            continue;
        };
        if at.x < -RIM_MM || at.y < -RIM_MM || at.x > size.x + RIM_MM || at.y > size.y + RIM_MM {
            continue;
        }
        counts.kept += 1;
        let is_covered = *pixel == PLAIN;
        if people.is_some_and(|people| people.get_pixel(x, y).0[0] > 0) {
            own += 1;
            own_left += usize::from(!is_covered);
        } else if at.x >= 0.0 && at.y >= 0.0 && at.x < size.x && at.y < size.y {
            let side = printed.grid.square_mm;
            let read = reading.cells.iter().find(|cell| {
                let [from, _, to, _] = printed.grid.corners(cell.cell);
                from.x <= at.x && from.y <= at.y && at.x < to.x && at.y < to.y && side > 0.0
            });
            if read.as_ref().is_some_and(is_square) {
                counts.plain += 1;
                counts.lost += usize::from(is_covered);
            }
        }
    }
    counts.people += own;
    counts.left += own_left;
    if own > 0 {
        counts.worst = counts.worst.max(float(own_left) / float(own));
    }
    Ok(())
}
