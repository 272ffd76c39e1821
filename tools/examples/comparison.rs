//! Comparison prints of a made wall, to be looked at and measured by `tools/outside/comparison.py`:
//! `comparison FOLDER OUT [PAPER] [LANGUAGE] [COLUMNSxROWS]`
//!
//! FOLDER is an event folder; the wall is a tinted, softened copy of its picture, so that nothing here was drawn by anybody.
//! Writes the PDFs, their first pages as JPEG and the moving picture to OUT, and says how long both took.

#![allow(clippy::print_stdout, reason = "a tool's answers")]

use std::error::Error;
use std::path::Path;
use std::time::Instant;

use everysquare::display::measure::{Between, Measured, Quantity, Run};
use everysquare::display::{Moment, filling};
use everysquare::judge::Summary;
use everysquare::picture::{FewColours, Picture, PictureFacts};
use everysquare::plan::crowd::evening;
use everysquare::plan::settings::{Choice, Language, Paper, Units};
use everysquare::plan::{Cell, Folder, Grid, Settings};
use everysquare::print::comparison::{Comparison, Pair, PastCheck, Poster, Print, comparison, names};
use everysquare::print::{Document, Overrides, Sources};
use everysquare::words::Words;
use image::imageops::{self, FilterType};
use image::{Rgb, RgbImage};

/// Width of the made wall, in pixels: that of a straightened photo.
const WALL_PX: u32 = 2560;
/// Checks of the made evening.
const CHECKS: usize = 7;

/// A copy of the original as paper and crayons might show it: paler, warmer, with paper's grain.
fn drawn(picture: &Picture, grid: &Grid) -> RgbImage {
    let crop = picture.crop(grid);
    let part = imageops::crop_imm(
        &picture.pixels,
        px(crop.top_left.x),
        px(crop.top_left.y),
        px(crop.size.x),
        px(crop.size.y),
    );
    let high = WALL_PX * u32::try_from(grid.rows).unwrap_or(1) / u32::try_from(grid.columns).unwrap_or(1);
    let mut wall = imageops::resize(&part.to_image(), WALL_PX, high, FilterType::Triangle);
    for (x, y, pixel) in wall.enumerate_pixels_mut() {
        let [grain, ..] =
            (x.wrapping_mul(2_654_435_761) ^ y.wrapping_mul(40_503)).wrapping_mul(97).to_be_bytes();
        let [red, green, blue] = pixel.0.map(|level| 50 + level / 4 * 3 - grain / 8);
        *pixel = Rgb([red, green, blue.saturating_sub(12)]);
    }
    wall
}

/// Milliseconds that this program has kept cores busy so far, as Linux counts them in hundredths of a second; 0 elsewhere.
fn busy_ms() -> u64 {
    let stat = std::fs::read_to_string("/proc/self/stat").unwrap_or_default();
    let fields = stat.rsplit(')').next().unwrap_or_default().split_whitespace();
    fields.skip(11).take(2).filter_map(|ticks| ticks.parse::<u64>().ok()).sum::<u64>() * 10
}

fn px(value: f64) -> u32 {
    u32::try_from(everysquare::frame::round_index(value)).unwrap_or(0)
}

/// The wall when some of its squares hung.
fn partly(wall: &RgbImage, grid: &Grid, hung: usize) -> RgbImage {
    let mut small = imageops::thumbnail(wall, 640, 640 * wall.height() / wall.width());
    let (columns, rows) = (u32::try_from(grid.columns).unwrap_or(1), u32::try_from(grid.rows).unwrap_or(1));
    let (width, height) = small.dimensions();
    for (x, y, pixel) in small.enumerate_pixels_mut() {
        let (column, row) = (x * columns / width, y * rows / height);
        // a fixed order that looks like none
        let order = usize::try_from((column * 37 + row * 101) % (columns * rows)).unwrap_or(0);
        if order >= hung {
            *pixel = Rgb([226, 222, 214]);
        }
    }
    small
}

fn measured(grid: &Grid) -> Measured {
    let about = |value: f64, within: f64| Quantity { value, within };
    let run = |index: usize, drift: f64, lean: f64| Run {
        index,
        squares: grid.columns,
        drift: about(drift, 0.8),
        lean: about(lean, 1.1),
    };
    let size = grid.size();
    Measured {
        squares: grid.count(),
        pitch: about(grid.square_mm + 0.6, 0.2),
        scale_factor: about((grid.square_mm + 0.6) / grid.piece_mm, 0.01),
        width: about(size.x + 5.0, 2.1),
        height: about(size.y + 4.0, 1.9),
        rows: (0..grid.rows)
            .map(|row| run(row, if row == 1 { 4.2 } else { 0.4 }, if row == 2 { -6.1 } else { 0.2 }))
            .collect(),
        columns: (0..grid.columns).map(|column| run(column, 0.3, 0.5)).collect(),
        widest_gap: (grid.columns > 1).then(|| Between {
            cells: [Cell { row: 0, column: 0 }, Cell { row: 0, column: 1 }],
            mm: about(5.3, 0.6),
        }),
        largest_overlap: None,
    }
}

/// The event's settings, with what the words after OUT change.
fn settings(folder: &Folder, words: &[String]) -> Result<Settings, Box<dyn Error>> {
    let mut settings = folder.settings()?;
    if let Some(paper) = words.first() {
        settings.print.paper = Paper::named(paper).ok_or("no such paper")?;
        settings.print.units = if paper.starts_with('a') { Units::Mm } else { Units::Inch };
    }
    if let Some(language) = words.get(1) {
        settings.language = Language::named(language).ok_or("no such language")?;
    }
    if let Some((columns, rows)) = words.get(2).and_then(|grid| grid.split_once('x')) {
        (settings.grid.columns, settings.grid.rows) = (columns.parse()?, rows.parse()?);
    }
    Ok(settings)
}

/// Eight squares of the made wall.
fn pairs(wall: &RgbImage, grid: &Grid) -> Result<Vec<Pair>, Box<dyn Error>> {
    Ok(kept(wall, grid)?.into_iter().step_by(grid.count().div_ceil(8)).collect())
}

/// Every square.
fn kept(wall: &RgbImage, grid: &Grid) -> Result<Vec<Pair>, Box<dyn Error>> {
    let side = wall.width() / u32::try_from(grid.columns)?;
    let pair = |cell: Cell| {
        let (x, y) = (u32::try_from(cell.column)? * side, u32::try_from(cell.row)? * side);
        Ok(Pair { cell, square: imageops::crop_imm(wall, x, y, side, side).to_image() })
    };
    grid.cells().map(pair).collect()
}

fn summary(right: usize, grid: &Grid) -> Summary {
    Summary { right, empty: grid.count() - right, cells: grid.count(), ..Summary::default() }
}

/// The made evening, a check every eight minutes.
fn checks(wall: &RgbImage, grid: &Grid) -> Vec<PastCheck> {
    let check = |at: usize| {
        let right = grid.count() * at / (CHECKS - 1);
        PastCheck {
            when: format!("18:{:02}", 5 + at * 8),
            minutes: everysquare::frame::float(at * 8),
            summary: summary(right, grid),
            picture: Some(partly(wall, grid, right)),
        }
    };
    (0..CHECKS).map(check).collect()
}

/// Writes the moving picture.
fn move_it<'a>(checks: &'a [PastCheck], words: &Words, out: &Path) -> Result<(), Box<dyn Error>> {
    let shown = checks.iter().filter_map(|check| Some((check, check.picture.as_ref()?)));
    let moment = |(check, picture): (&'a PastCheck, &'a RgbImage)| Moment {
        when: &check.when,
        right: check.summary.right,
        cells: check.summary.cells,
        picture,
    };
    let moments: Vec<Moment> = shown.map(moment).collect();
    let start = Instant::now();
    let moving = filling(&moments, words)?;
    println!("filling.gif: {} kB, {} ms", moving.len() / 1000, start.elapsed().as_millis());
    Ok(std::fs::write(out.join("filling.gif"), moving)?)
}

fn main() -> Result<(), Box<dyn Error>> {
    let words: Vec<String> = std::env::args().skip(1).collect();
    let [folder, out, rest @ ..] = words.as_slice() else {
        return Err("comparison FOLDER OUT [PAPER] [LANGUAGE] [COLUMNSxROWS]".into());
    };
    let (folder, out) = (Folder::at(Path::new(folder)), Path::new(out));
    let settings = settings(&folder, rest)?;
    let picture = Picture::open(&folder.picture_bytes(&settings)?)?;
    let few = FewColours::chosen(&picture, &settings.picture);
    let grid = settings.grid;
    let picture = few.to_picture();
    let wall = drawn(&picture, &grid);
    let facts = PictureFacts::of(&few, &grid, &settings.levels);
    let (words, checks) = (Words::of(settings.language.word()), checks(&wall, &grid));
    let input = Comparison {
        sources: Sources {
            settings: &settings,
            printed: &settings.printed()?,
            picture: &picture,
            facts: &facts,
            words: &words,
            templates: &Overrides::default(),
            evening: &evening(&settings, &facts.work()),
        },
        wall: &wall,
        overlap: &wall,
        measured: Some(&measured(&grid)),
        counts: summary(grid.count(), &grid),
        pairs: &pairs(&wall, &grid)?,
        kept: &kept(&wall, &grid)?,
        date: Some("2027-03-11".to_owned()),
        checks: &checks,
        poster: Poster::default(),
        made: true,
    };
    let start = (Instant::now(), busy_ms());
    let all: Vec<String> = names().map(str::to_owned).collect();
    let prints = comparison(&input, &all, &|| ())?;
    let took = (start.0.elapsed().as_millis(), busy_ms() - start.1);
    std::fs::create_dir_all(out)?;
    for Print { document: Document { name, pages, bytes, .. }, screen_name, screen } in &prints {
        println!("{name}: {pages} pages, {} kB", bytes.len() / 1000);
        std::fs::write(out.join(name), bytes)?;
        std::fs::write(out.join(screen_name), screen)?;
    }
    println!("all: {} ms, {} ms of all cores", took.0, took.1);
    move_it(&checks, &words, out)
}
