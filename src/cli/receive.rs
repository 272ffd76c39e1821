//! `everysquare receive FOLDER PHOTO…`: squares that were drawn at home come back as photos or scans of their pages, and are printed to hang.

use std::collections::BTreeMap;
use std::path::PathBuf;

use image::RgbImage;

use super::beside::{same_squares, write_beside};
use super::photos::{complain, read_each};
use super::{CliError, Console, Outcome};
use crate::gallery::from_home::{FromHome, from_home};
use crate::photo::Photo;
use crate::picture::Picture;
use crate::plan::{Cell, Folder, Grid};
use crate::print::event::Event;
use crate::print::from_home::from_home as document;
use crate::read::Reader;

/// What is typed after `everysquare receive`.
#[derive(Debug, clap::Args)]
pub struct Args {
    /// The event folder.
    #[arg(value_name = "FOLDER")]
    pub(super) folder: PathBuf,
    /// Photos or scans of pages.
    #[arg(value_name = "PHOTO", required = true)]
    photos: Vec<PathBuf>,
}

/// Reads every photo, keeps the squares, and prints those that came. One photo that gives nothing is no reason to stop, unless it is the
/// last hope.
pub fn run(args: &Args, console: &mut Console) -> Result<Outcome, CliError> {
    let folder = Folder::at(&args.folder);
    let reader = Reader::new(&folder.printed()?);
    let event = Event::open(&folder, folder.settings()?, console.words())?;
    same_squares(&folder, &event)?;
    let read = |photo: &Photo| Ok(from_home(&reader, photo)?);
    let (photos, refused) = read_each(&args.photos, console.words(), read)?;
    let mut came: BTreeMap<Cell, FromHome> = BTreeMap::new();
    for square in photos.into_iter().flatten() {
        // of two photos of one page the finer one is kept
        let width = square.picture.pixels.width();
        if came.get(&square.home).is_none_or(|own| own.picture.pixels.width() < width) {
            came.insert(square.home, square);
        }
    }
    let grid = &event.settings.grid;
    for square in came.values() {
        let label = grid.label(square.home);
        let path = folder.from_home_png(&label);
        let id = if path.exists() { "receive-again" } else { "receive-came" };
        Folder::write_whole(&path, &square.picture.to_png()?)?;
        console.say(id, &[("label", label.as_str().into())]);
        if square.is_coarse() {
            console.say("receive-coarse", &[("label", label.into())]);
        }
    }
    complain(&refused, console);
    let squares: Vec<(Cell, RgbImage)> =
        came.into_values().map(|own| (own.home, own.picture.pixels)).collect();
    let document = document(&event.sources(console.words()), &squares)?;
    write_beside(&folder, &event.settings, &[document], console)?;
    console.say("receive-next", &[]);
    Ok(if refused.is_empty() { Outcome::Right } else { Outcome::Unclear })
}

/// The squares that came back, as their pictures lie in the folder, in the order of the cells.
pub(super) fn kept(folder: &Folder, grid: &Grid) -> Result<Vec<(Cell, RgbImage)>, CliError> {
    let mut kept = Vec::new();
    for cell in grid.cells() {
        let path = folder.from_home_png(&grid.label(cell));
        if path.exists() {
            let picture = Picture::open(&Folder::read_picture(&path)?);
            kept.push((cell, picture.map_err(|error| CliError::about(&path, error))?.pixels));
        }
    }
    Ok(kept)
}
