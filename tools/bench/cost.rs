//! What a check costs: by the number of cells, at the same fineness, and by the number of photos.
//!
//! Seconds are told twice: as they passed, and as all cores together worked, which holds on a busy machine too.

use std::path::{Path, PathBuf};
use std::time::Duration;

use everysquare::cli::{Console, Screen, run, sample};
use everysquare::frame::float;
use everysquare::judge::{fixes, judge};
use everysquare::photo::Photo;
use everysquare::picture::Picture;
use everysquare::plan::settings::CodeSettings;
use everysquare::plan::{Grid, Printed, Settings, Tag};
use everysquare::read::identify::Identifier;
use everysquare::read::{self, Reader, finders, triples};
use everysquare::rehearse::{Faults, Options, make};
use serde_json::json;

use super::table::{self, Told, worked};
use super::{Outcome, plot};

/// Columns and rows of the walls: 12 to 3,000 cells.
const WALLS: [(usize, usize); 8] =
    [(4, 3), (8, 6), (12, 8), (16, 12), (25, 16), (32, 25), (46, 35), (60, 50)];
/// A module's side on these walls, in mm, and in the photo, in pixels: 3,000 cells take some 45 megapixels.
const MODULE_MM: f64 = 2.4;
const MODULE_PX: f64 = 1.75;
/// How many photos are checked at once.
const PHOTOS: [usize; 5] = [1, 5, 10, 20, 40];
/// So many different photos are made; more are copies of these.
const DIFFERENT: u64 = 4;
/// Where all of it lies.
const PLACE: &str = "target/bench/cost";

/// Times all walls and numbers of photos, prints them and draws them.
pub fn compare() -> Outcome<()> {
    std::fs::create_dir_all(PLACE)?;
    let (mut walls, mut photos) = (Vec::new(), Vec::new());
    for (columns, rows) in WALLS {
        make_wall(columns, rows)?;
        let words = ["cost-wall".to_owned(), columns.to_string(), rows.to_string()];
        let told = table::ask_words(&words, Duration::MAX)?;
        println!("\n{} cells", columns * rows);
        show(&told);
        walls.push((float(columns * rows), told));
    }
    make_photos()?;
    for count in PHOTOS {
        let told = table::ask_words(&["cost-photos".to_owned(), count.to_string()], Duration::MAX)?;
        println!("\n{count} photos of 12 megapixels, 80 squares");
        show(&told);
        photos.push((float(count), told));
    }
    let numbers = |of: &[(f64, Told)]| -> Vec<_> { of.iter().map(|(at, told)| json!([at, told])).collect() };
    let numbers = json!({ "cells": numbers(&walls), "photos": numbers(&photos) });
    std::fs::write("target/bench/cost.json", serde_json::to_vec_pretty(&numbers)?)?;
    std::fs::write("target/bench/cost.svg", plot::svg(&[("cells", &walls), ("photos", &photos)]))?;
    println!("\ntarget/bench/cost.svg, target/bench/cost.json");
    Ok(())
}

fn show(told: &Told) {
    for (stage, seconds) in &told.seconds {
        println!("  {stage:34} {seconds:9.3} s");
    }
    table::memory("", told);
    for remark in &told.remarks {
        println!("  {remark}");
    }
}

fn printed(columns: usize, rows: usize) -> Outcome<Printed> {
    let grid = Grid::usual(columns, rows);
    let mut settings = Settings::new("Cost".to_owned(), Tag::new("K7M").ok_or("no tag")?, grid);
    let inset_mm = CodeSettings::usual_inset_mm(MODULE_MM);
    settings.code = CodeSettings { module_mm: MODULE_MM, inset_mm, ..CodeSettings::usual(&grid) };
    Ok(settings.printed()?)
}

fn wall_photo(columns: usize, rows: usize) -> PathBuf {
    Path::new(PLACE).join(format!("{columns}x{rows}.jpg"))
}

fn make_wall(columns: usize, rows: usize) -> Outcome<()> {
    let path = wall_photo(columns, rows);
    if path.exists() {
        return Ok(());
    }
    let some = columns * rows / 40;
    let faults = Faults { swaps: some, turns: some, missing: some, ..Faults::default() };
    let mut options = Options { width: 400, height: 300, faults, ..Options::default() };
    options.min_px_per_module = Some(MODULE_PX);
    options.pose.yaw_degrees = 3.0;
    let made = make(&printed(columns, rows)?, &Picture::open(sample::PICTURE_PNG)?, &options)?;
    Ok(std::fs::write(path, made.jpeg)?)
}

/// One wall, in a process of its own: the stages that take time.
pub fn wall(columns: usize, rows: usize) -> Outcome<Told> {
    let bytes = std::fs::read(wall_photo(columns, rows))?;
    let printed = printed(columns, rows)?;
    let mut seconds = Vec::new();
    let begin = worked();
    let photo = Photo::open(&bytes)?;
    seconds.push(("opened".to_owned(), worked() - begin));
    let begin = worked();
    let (identifier, reader) = (Identifier::new(&printed), Reader::new(&printed));
    seconds.push(("  templates".to_owned(), worked() - begin));
    let begin = worked();
    let found = finders::find(&photo.luma);
    seconds.push(("  finder patterns".to_owned(), worked() - begin));
    let begin = worked();
    let codes = triples::detect(&photo.luma, &found, &identifier);
    seconds.push(("  triples verified".to_owned(), worked() - begin));
    let begin = worked();
    let _ = reader.camera(&photo.luma)?;
    seconds.push(("  all codes".to_owned(), worked() - begin));
    let (begin, clock) = (worked(), std::time::Instant::now());
    let reading = reader.read(&photo)?;
    seconds.push(("read".to_owned(), worked() - begin));
    let passed = clock.elapsed().as_secs_f64();
    let (read, pixels, fine) = (reading.codes_read, photo.luma.grey.len(), reading.px_per_module);
    let begin = worked();
    let judgement = judge(&read::several(vec![reading]), &printed.grid);
    let fixes = fixes(&judgement);
    seconds.push(("judged".to_owned(), worked() - begin));
    let remarks = vec![
        format!("{:.1} megapixels, {fine:.2} px a module, {read} codes read", float(pixels) / 1e6),
        format!(
            "{} finder patterns, {} threes, {} codes",
            found.len(),
            triples::candidates(&found).len(),
            codes.len()
        ),
        format!("{} fixes", fixes.len()),
        format!("reading took {passed:.2} s as the clock says"),
    ];
    Ok(Told::now(seconds, remarks))
}

fn event() -> PathBuf {
    Path::new(PLACE).join("event")
}

/// Runs the program with what was typed; its exit code.
pub fn typed(words: &[&str]) -> u8 {
    let mut console = Console::new(Box::new(std::io::sink()), Box::new(std::io::stderr()), Screen::plain());
    run(std::iter::once("everysquare").chain(words.iter().copied()).map(Into::into), &mut console)
}

fn make_photos() -> Outcome<()> {
    let at = event();
    if at.exists() {
        return Ok(());
    }
    let name = at.to_str().ok_or("no path")?;
    let picture = Path::new(PLACE).join("picture.png");
    std::fs::write(&picture, sample::PICTURE_PNG)?;
    let picture = picture.to_str().ok_or("no path")?;
    typed(&["new", name, "--picture", picture, "--columns", "10", "--rows", "8", "--tag", "K7M"]);
    typed(&["print", name]);
    for seed in 1..=DIFFERENT {
        typed(&["rehearse", name, "--seed", &seed.to_string(), "--swaps", "3", "--missing", "4"]);
    }
    Ok(())
}

/// A check of so many photos, in a process of its own.
pub fn photos(count: usize) -> Outcome<Told> {
    let at = event();
    let mut words = vec!["check".to_owned(), at.display().to_string()];
    let photo = |seed| at.join(format!("rehearsals/{seed}.jpg")).display().to_string();
    words.extend((1..=DIFFERENT).map(photo).cycle().take(count));
    let clock = std::time::Instant::now();
    let words: Vec<&str> = words.iter().map(String::as_str).collect();
    let code = typed(&words);
    let passed = clock.elapsed().as_secs_f64();
    let remarks = vec![format!("exit code {code}, {passed:.2} s as the clock says")];
    Ok(Told::now(vec![("checked".to_owned(), worked())], remarks))
}
