//! Made walls of many finenesses, for comparison with other people's readers: photos, with what is to be read in them.
//!
//! A photo `NAME.jpg` has beside it `NAME.json`: the pixels a module, and for every code that is in sight (98 % of its modules) its
//! text and the cell around it. What this program reads is written beside them as `NAME.own.json`.

use std::path::{Path, PathBuf};

use everysquare::cli::sample;
use everysquare::photo::Photo;
use everysquare::picture::Picture;
use everysquare::plan::settings::CodeSettings;
use everysquare::plan::{Grid, KeptFree, Printed, RowsFrom, Settings, Tag};
use everysquare::read::{Reader, Sight};
use everysquare::rehearse::{Faults, Hanging, Made, Options, Sensor, make};
use serde::Serialize;

use super::Outcome;
use super::table::worked;

/// Pixels that a module's side takes.
const FINENESS: [f64; 9] = [0.8, 1.0, 1.25, 1.5, 1.6, 1.8, 2.0, 2.5, 3.0];
/// Name, blur in pixels, noise, quality of the JPEG.
const CAMERAS: [(&str, f64, f64, u8); 2] = [("sharp", 0.7, 0.03, 85), ("soft", 1.0, 0.05, 75)];
/// Walls a fineness and camera.
const SEEDS: u64 = 3;
/// Columns and rows of a wall, and of the two whose photos have 12 megapixels.
const WALL: (usize, usize) = (8, 6);
const PHONES: [(usize, usize); 2] = [(10, 8), (16, 12)];

#[derive(Serialize)]
struct Code {
    text: String,
    /// Corners of its cell, x and y in pixels.
    cell: [[f64; 2]; 4],
}

#[derive(Serialize)]
struct Sheet {
    camera: String,
    px_per_module: f64,
    codes: Vec<Code>,
}

#[derive(Serialize)]
struct Own {
    texts: Vec<String>,
    seconds: f64,
}

/// Squares of 100 mm with modules of 1 mm, so that photos stay small; or the usual ones.
fn printed((columns, rows): (usize, usize), usual: bool) -> Outcome<Printed> {
    let square_mm = if usual { 127.0 } else { 100.0 };
    let grid = Grid {
        columns,
        rows,
        square_mm,
        piece_mm: square_mm / 5.0,
        rows_from: RowsFrom::Bottom,
        border: false,
        kept_free: KeptFree::NONE,
    };
    let mut settings = Settings::new("Peers".to_owned(), Tag::new("K7M").ok_or("no tag")?, grid);
    if !usual {
        settings.code = CodeSettings { module_mm: 1.0, ..CodeSettings::usual(&grid) };
    }
    Ok(settings.printed()?)
}

/// Makes all photos, with what is to be read in them; those that are there stay.
pub fn make_all(folder: &Path) -> Outcome<()> {
    std::fs::create_dir_all(folder)?;
    let picture = Picture::open(sample::PICTURE_PNG)?;
    let small = printed(WALL, false)?;
    for (camera, blur_px, noise, jpeg_quality) in CAMERAS {
        for px in FINENESS {
            for seed in 1..=SEEDS {
                let sensor = Sensor { blur_px, noise, jpeg_quality, sharpen: 0.0, ..Sensor::default() };
                // hung with some care, so that most codes are in sight
                let hanging = Hanging { misplacement_mm: 1.5, ..Hanging::default() };
                let options =
                    Options { seed, width: 320, height: 240, sensor, hanging, ..Options::default() };
                let options = Options { min_px_per_module: Some(px), ..options };
                save(
                    folder,
                    &format!("{camera}-{px:.2}-{seed}"),
                    camera,
                    || Ok(make(&small, &picture, &options)?),
                    &small,
                )?;
            }
        }
    }
    for wall in PHONES {
        let usual = printed(wall, true)?;
        let faults = Faults { swaps: 3, turns: 2, missing: 4, ..Faults::default() };
        let options = Options { faults, ..Options::varied(super::SEED) };
        let name = format!("phone-{}x{}", wall.0, wall.1);
        save(folder, &name, "phone", || Ok(make(&usual, &picture, &options)?), &usual)?;
    }
    Ok(())
}

fn save(
    folder: &Path,
    name: &str,
    camera: &str,
    made: impl FnOnce() -> Outcome<Made>,
    printed: &Printed,
) -> Outcome<()> {
    let at = |ending: &str| folder.join(format!("{name}.{ending}"));
    if at("json").exists() {
        return Ok(());
    }
    let made = made()?;
    let text = |label: &str| printed.squares.iter().find(|s| s.label == label).map(|s| s.text.clone());
    let codes = made.truth.cells.iter().filter(|cell| cell.readable && cell.stranger.is_none());
    let codes = codes.filter_map(|cell| Some(Code { text: text(cell.hung.as_ref()?)?, cell: cell.cell_px? }));
    let px_per_module = made.truth.px_per_module.median;
    let sheet = Sheet { camera: camera.to_owned(), px_per_module, codes: codes.collect() };
    // upright, without an orientation to be turned by: the same pixels for every reader
    let mut file = std::io::BufWriter::new(std::fs::File::create(at("jpg"))?);
    let quality = made.truth.options.sensor.jpeg_quality;
    image::codecs::jpeg::JpegEncoder::new_with_quality(&mut file, quality).encode_image(&made.image)?;
    drop(file);
    std::fs::write(at("json"), serde_json::to_vec(&sheet)?)?;
    println!("{name}: {px_per_module:.2} px a module, {} codes in sight", sheet.codes.len());
    Ok(())
}

/// Reads every photo of the folder whole.
pub fn read_all(folder: &Path) -> Outcome<()> {
    let (small, phones) = (printed(WALL, false)?, [printed(PHONES[0], true)?, printed(PHONES[1], true)?]);
    let mut photos: Vec<PathBuf> =
        std::fs::read_dir(folder)?.map(|e| Ok(e?.path())).collect::<Outcome<_>>()?;
    photos.retain(|path| path.extension().is_some_and(|ending| ending == "jpg"));
    photos.sort();
    for path in photos {
        let name = path.file_stem().map(|name| name.to_string_lossy().into_owned()).unwrap_or_default();
        let printed = match name.as_str() {
            "phone-10x8" => &phones[0],
            "phone-16x12" => &phones[1],
            _ => &small,
        };
        let own = read_one(&path, printed)?;
        println!("{name}: {} read", own.texts.len());
        std::fs::write(path.with_extension("own.json"), serde_json::to_vec(&own)?)?;
    }
    Ok(())
}

fn read_one(path: &Path, printed: &Printed) -> Outcome<Own> {
    let bytes = std::fs::read(path)?;
    let begin = worked();
    let read = Reader::new(printed).read(&Photo::open(&bytes)?);
    let seconds = worked() - begin;
    let cells = read.map(|reading| reading.cells).unwrap_or_default();
    let texts = cells.iter().filter_map(|cell| match &cell.sight {
        Sight::Square { home, .. } => Some(printed.squares[printed.grid.index(*home)].text.clone()),
        _ => None,
    });
    Ok(Own { texts: texts.collect(), seconds })
}
