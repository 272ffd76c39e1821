//! Photos of the wall: opened one after the other, the next while this one is worked on, and read.

use std::path::{Path, PathBuf};
use std::sync::OnceLock;

use super::{CliError, Console};
use crate::display::{Begun, Cover, Expected};
use crate::photo::{self, Photo};
use crate::picture::Picture;
use crate::plan::{Folder, Printed};
use crate::read::{PhotoReading, Reader};
use crate::words::Words;

/// Photos that were read, and what kept others from it.
pub(super) struct Seen {
    pub paths: Vec<PathBuf>,
    /// The photo itself, if there is only one; of several, each is opened again when its picture is drawn, so that 40 of them
    /// need no more memory than two.
    pub only: Option<Photo>,
    pub taken: Option<String>,
    pub made: bool,
    /// Of each photo the readings of the parts of the wall that it shows.
    pub readings: Vec<Vec<PhotoReading>>,
    /// What of each photo is covered, part by part.
    pub covers: Vec<Vec<Cover>>,
    pub refused: Vec<CliError>,
}

impl Seen {
    /// The names of the files, without the folders they lie in.
    pub fn names(&self) -> Vec<String> {
        let name = |path: &PathBuf| path.file_name().map(|name| name.to_string_lossy().into_owned());
        self.paths.iter().map(|path| name(path).unwrap_or_default()).collect()
    }
}

/// Covers whoever stands before the wall, unless the photos are wanted as they are.
pub(super) struct Covering<'a> {
    folder: &'a Folder,
    printed: &'a Printed,
    uncovered: bool,
    begun: Begun,
    expected: OnceLock<Option<Expected>>,
}

impl<'a> Covering<'a> {
    pub fn new(folder: &'a Folder, printed: &'a Printed, uncovered: bool) -> Self {
        Self { folder, printed, uncovered, begun: Begun::NotAsked, expected: OnceLock::new() }
    }

    /// The same; squares that are only begun are looked for where somebody asks.
    pub fn asking(self, begun: bool) -> Self {
        Self { begun: if begun { Begun::Asked } else { Begun::NotAsked }, ..self }
    }

    fn cover(&self, photo: &Photo, reading: &PhotoReading) -> Cover {
        let expected = || self.expected.get_or_init(|| self.drawn()).clone();
        let cover = Cover::with(photo, reading, self.printed, &expected, self.begun);
        if self.uncovered { cover.uncovering() } else { cover }
    }

    /// What is to be drawn; `None` where the picture is not to be had: then less of a person is found.
    fn drawn(&self) -> Option<Expected> {
        let settings = self.folder.settings().ok()?;
        let picture = Picture::open(&self.folder.picture_bytes(&settings).ok()?).ok()?;
        Some(Expected::of(&picture, &self.printed.grid))
    }
}

/// Opens and reads every photo. One that cannot be read is no reason to stop, unless it is the last hope.
pub(super) fn look(
    paths: &[PathBuf],
    printed: &Printed,
    covering: &Covering<'_>,
    words: &Words,
    step: &(dyn Fn() + Sync),
) -> Result<Seen, CliError> {
    let reader = Reader::new(printed);
    let mut seen = Seen {
        paths: Vec::new(),
        only: None,
        taken: None,
        made: false,
        readings: Vec::new(),
        covers: Vec::new(),
        refused: Vec::new(),
    };
    let ((), first) = rayon::join(|| reader.prepare(), || paths.first().map(|path| open(path)));
    each(paths, first, |path, photo| {
        step();
        let read = photo.and_then(|photo| {
            let reading = reader.read_parts(&photo);
            Ok((reading.map_err(|error| CliError::about(path, error))?, photo))
        });
        step();
        match read {
            Ok((parts, photo)) => {
                seen.paths.push(path.clone());
                seen.taken = seen.taken.take().or_else(|| photo.taken.clone());
                seen.made |= photo.made;
                seen.covers.push(parts.iter().map(|part| covering.cover(&photo, part)).collect());
                seen.readings.push(parts);
                seen.only = (paths.len() == 1).then_some(photo);
            }
            Err(error) => seen.refused.push(error),
        }
        Ok(())
    })?;
    if !seen.readings.is_empty() {
        return Ok(seen);
    }
    Err(CliError::all(&seen.refused, words))
}

/// What `read` makes of every photo, and why it makes nothing of others. One that gives nothing is no reason to stop, unless it is the last
/// hope.
pub(super) fn read_each<T: Send>(
    paths: &[PathBuf],
    words: &Words,
    mut read: impl FnMut(&Photo) -> Result<T, CliError> + Send,
) -> Result<(Vec<T>, Vec<CliError>), CliError> {
    let (mut came, mut refused) = (Vec::new(), Vec::new());
    each(paths, None, |path, photo| {
        match photo.and_then(|photo| read(&photo).map_err(|error| CliError::about(path, error))) {
            Ok(one) => came.push(one),
            Err(error) => refused.push(error),
        }
        Ok(())
    })?;
    if came.is_empty() { Err(CliError::all(&refused, words)) } else { Ok((came, refused)) }
}

/// Says why photos gave nothing, where others did.
pub(super) fn complain(refused: &[CliError], console: &mut Console) {
    for refused in refused {
        let told = refused.line(console.words());
        console.complain(&told);
    }
}

/// Does something with every photo in turn, while the next one is being opened on another core. `first` is the first one
/// where it is open already.
pub(super) fn each(
    paths: &[PathBuf],
    first: Option<Result<Photo, CliError>>,
    mut work: impl FnMut(&PathBuf, Result<Photo, CliError>) -> Result<(), CliError> + Send,
) -> Result<(), CliError> {
    let mut opened = first.or_else(|| paths.first().map(|path| open(path)));
    for (path, next) in paths.iter().zip(1..) {
        let Some(photo) = opened.take() else { break };
        let (done, then) = rayon::join(|| work(path, photo), || paths.get(next).map(|path| open(path)));
        done?;
        opened = then;
    }
    Ok(())
}

fn open(path: &Path) -> Result<Photo, CliError> {
    let bytes = photo::read(path).map_err(|error| CliError::about(path, error))?;
    Photo::open(&bytes).map_err(|error| CliError::about(path, error))
}
