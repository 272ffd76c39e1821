//! The evening while it is served: what does not change, and the wall as it stands, which every accepted photo replaces.
//!
//! ```text
//!   bytes ─▶ Photo ─▶ reading ─▶ Known ─▶ Check ─▶ pictures ─▶ checks/<time>/ ─▶ Standing, told to every page
//! ```

use std::sync::{Arc, Mutex, OnceLock, PoisonError};

use tokio::sync::watch;

use crate::check::{Check, Drawn};
use crate::display::{Cover, Covered, Expected, JpegError, Straightening, jpeg};
use crate::photo::{Photo, PhotoError};
use crate::plan::folder::FolderError;
use crate::plan::{Cell, Folder, Printed};
use crate::read::book::Book;
use crate::read::{self, CellReading, ReadError};
use crate::report::Occasion;
use crate::words::Words;

use super::known::{Added, Known, Origin};
use super::levels::{Levels, colours_of, facts_of, levels_of};
use super::pictures::{WallPicture, frontal, original, pieces};
use super::{Clock, ServeError, keep};

/// The most pixels of a photo that is sent: 50 megapixels, the most that phones take unasked, and a few for odd shapes. One of them
/// takes half a gigabyte while it is read.
pub const MOST_PIXELS: u64 = 51_000_000;

/// The evening.
pub struct Evening {
    pub(super) folder: Folder,
    pub(super) printed: Printed,
    pub(super) words: Words,
    pub(super) levels: Levels,
    /// What belongs in each cell, as JPEG files.
    pub(super) pieces: Vec<Vec<u8>>,
    /// The picture as it was cut into pieces, small enough for a page, as a JPEG file.
    pub(super) original: Vec<u8>,
    /// The pencils' colours as CSS writes them.
    pub(super) colours: Vec<String>,
    /// What is to be drawn, for telling people from drawings.
    expected: Expected,
    pub(super) clock: Clock,
    /// When the program began to serve, in seconds since 1970: numbers of standings count from there.
    pub(super) began: u64,
    book: Book,
    pub(super) keep_photos: bool,
    standing: Mutex<Arc<Standing>>,
    live: watch::Sender<u64>,
}

/// The wall as it stands. It never changes; the next photo makes another.
pub struct Standing {
    /// Rises with every photo.
    pub number: u64,
    /// What is known.
    pub known: Known,
    /// Judged and told.
    pub check: Check,
    /// As it looks.
    pub picture: WallPicture,
    /// The folder's name of the check that holds all this; `None` where there is none.
    pub name: Option<String>,
    /// Why this could not be kept, where it could not.
    pub unkept: Option<FolderError>,
    /// Of how many cells the photo that came last shows the newest look.
    pub newest: usize,
    /// When the newest photo came, in seconds since 1970.
    pub at: u64,
    map: OnceLock<Vec<u8>>,
}

/// Why a photo gives no answer.
#[derive(Debug)]
pub enum Refusal {
    /// It is no photo that can be opened.
    Photo(PhotoError),
    /// It shows no wall that can be read.
    Read(ReadError),
    /// A picture cannot be drawn.
    Draw(JpegError),
    /// Something in it made the program stumble.
    Stumble,
}

impl Evening {
    /// Opens the event, and continues from the newest check made since the folder name `since`; `None` begins with nothing.
    ///
    /// # Errors
    /// [`ServeError`] where the folder cannot be read.
    pub fn open(
        folder: Folder,
        words: Words,
        clock: Clock,
        since: Option<&str>,
        keep_photos: bool,
    ) -> Result<Self, ServeError> {
        let printed = folder.printed()?;
        let settings = folder.settings()?;
        let bytes = folder.picture_bytes(&settings)?;
        let picture = crate::picture::Picture::open(&bytes)?;
        let pieces = pieces(&picture, &printed.grid)?;
        let facts = facts_of(&picture, &settings);
        let expected = Expected::of(&picture, &printed.grid);
        let now = (clock.now)();
        let kept = since.and_then(|since| keep::newest(&folder, &printed, since, now));
        let standing = match kept {
            Some(kept) => Standing {
                check: told(&kept.known, false, &printed, &words),
                known: kept.known,
                picture: kept.picture,
                name: Some(kept.name),
                ..Standing::nothing(&printed, &words, now)
            },
            None => Standing::nothing(&printed, &words, now),
        };
        Ok(Self {
            levels: levels_of(&facts, &settings, &words),
            colours: colours_of(&facts),
            original: original(&picture, &printed.grid)?,
            book: Book::new(&printed),
            standing: Mutex::new(Arc::new(standing)),
            live: watch::Sender::new(0),
            folder,
            printed,
            words,
            pieces,
            expected,
            clock,
            began: now,
            keep_photos,
        })
    }

    /// The wall as it stands.
    #[must_use]
    pub fn standing(&self) -> Arc<Standing> {
        Arc::clone(&self.standing.lock().unwrap_or_else(PoisonError::into_inner))
    }

    /// Tells the number of the standing whenever it changes, and once at the beginning.
    #[must_use]
    pub fn watch(&self) -> watch::Receiver<u64> {
        self.live.subscribe()
    }

    /// Takes a photo that was made `age_s` seconds ago. Never two at once: each goes on from what the one before it left.
    ///
    /// # Errors
    /// [`Refusal`], and nothing has changed.
    pub fn take(&self, bytes: Vec<u8>, age_s: u64) -> Result<Arc<Standing>, Refusal> {
        let photo = Photo::open_within(&bytes, MOST_PIXELS).map_err(Refusal::Photo)?;
        drop(bytes);
        let reading = read::photo(&photo, &self.printed, &self.book).map_err(Refusal::Read)?;
        let cover = Cover::of(&photo, &reading, &self.printed, &|| Some(self.expected.clone()));
        let original =
            if self.keep_photos { Some(jpeg(&photo.colour).map_err(Refusal::Draw)?) } else { None };
        let before = self.standing();
        let now = (self.clock.now)();
        let mut known = before.known.clone();
        let cells = reading.cells.clone();
        let origin = Origin { taken: photo.taken.clone(), made: photo.made, ..Origin::default() };
        let added = known.add(reading, origin, now.saturating_sub(age_s));
        let check = told(&known, cover.someone(), &self.printed, &self.words);
        let mut picture = before.picture.clone();
        let photo = Covered::new(photo, &cover);
        let drawn = self.draw(&photo, &check, &cells, &added, &mut picture).map_err(Refusal::Draw)?;
        drop(photo);
        let kept = keep::keep(self, &check, &drawn, &known, original.as_deref());
        let (name, unkept) = match kept {
            Ok(name) => (Some(name), None),
            Err(error) => (before.name.clone(), Some(error)),
        };
        let number = before.number + 1;
        let newest = added.newest.iter().filter(|newest| **newest).count();
        let standing = Arc::new(Standing {
            number,
            known,
            check,
            picture,
            name,
            unkept,
            newest,
            at: now,
            map: OnceLock::new(),
        });
        *self.standing.lock().unwrap_or_else(PoisonError::into_inner) = Arc::clone(&standing);
        self.live.send_replace(number);
        Ok(standing)
    }

    /// Draws the photo marked, and what it shows newest into the wall's picture.
    fn draw(
        &self,
        photo: &Covered,
        check: &Check,
        cells: &[CellReading],
        added: &Added,
        picture: &mut WallPicture,
    ) -> Result<Drawn, JpegError> {
        let own: Vec<CellReading> =
            cells.iter().map(|cell| CellReading { photo: added.index, ..cell.clone() }).collect();
        let mut wall = Straightening::new(&own, &[], &self.printed.grid, frontal());
        let marked = check.draw(photo, added.index, &mut wall, &self.words)?;
        // what an earlier photo showed stays where somebody hides it now
        let covered = |cell: Cell| {
            photo.cover().hides(cell) && check.judgement.at(cell).is_some_and(|at| at.found.is_some())
        };
        let cells = self.printed.grid.cells().zip(&added.newest);
        let newest: Vec<bool> = cells.map(|(cell, newest)| *newest && !covered(cell)).collect();
        picture.take(&check.straight(wall, &self.words), &newest);
        Ok(Drawn { marked: marked.into_iter().collect(), straight: jpeg(picture.pixels())? })
    }
}

impl std::fmt::Debug for Evening {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("Evening").field("folder", &self.folder).finish_non_exhaustive()
    }
}

impl Standing {
    fn nothing(printed: &Printed, words: &Words, now: u64) -> Self {
        let known = Known::nothing(&printed.grid);
        Self {
            number: 0,
            check: told(&known, false, printed, words),
            known,
            picture: WallPicture::blank(&printed.grid),
            name: None,
            unkept: None,
            newest: 0,
            at: now,
            map: OnceLock::new(),
        }
    }

    /// The wall for a page, as a JPEG file; drawn when it is asked for first.
    #[must_use]
    pub fn map(&self) -> &[u8] {
        self.map.get_or_init(|| self.picture.map().unwrap_or_default())
    }
}

impl std::fmt::Debug for Standing {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("Standing").field("number", &self.number).finish_non_exhaustive()
    }
}

/// What is known, judged and put into words.
fn told(known: &Known, someone: bool, printed: &Printed, words: &Words) -> Check {
    let origins = known.origins();
    let occasion = Occasion {
        taken: origins.first().and_then(|first| first.taken.clone()),
        made: origins.iter().any(|origin| origin.made),
        files: origins.iter().map(|origin| format!("photo {}", origin.number)).collect(),
    };
    Check::new(known.reading(), someone, printed, &occasion, words)
}
