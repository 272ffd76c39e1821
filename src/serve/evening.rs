//! The evening while it is served: what does not change, and the wall as it stands, which every accepted photo replaces.
//!
//! ```text
//!   bytes ─▶ Photo ─▶ reading ─▶ Known ─▶ Check ─▶ pictures ─▶ checks/<time>/ ─▶ Standing, told to every page
//!   a tick, a piece handed out ─▶ Together ─▶ .helpers-list.json ─▶ told to every phone
//! ```

use std::sync::{Arc, Mutex, MutexGuard, OnceLock, PoisonError};

use tokio::sync::watch;

use crate::check::{Check, Drawn, Noticed};
use crate::display::light::Light;
use crate::display::{Cover, Covered, Expected, JpegError, Straightening, jpeg};
use crate::judge::{Advice, State};
use crate::photo::Photo;
use crate::plan::crowd::Outlook;
use crate::plan::folder::FolderError;
use crate::plan::settings::Join;
use crate::plan::{Cell, Folder, Printed};
use crate::print::Document;
use crate::print::one::One;
use crate::read::{CellReading, PhotoReading, ReadError, Reader, together};
use crate::report::{Occasion, accent};
use crate::words::Words;

use super::desk::{Desk, NotPrinted};
use super::keep::Kept;
use super::known::{Added, Known, Origin};
use super::levels::{Levels, colours_of, facts_of, levels_of};
use super::limits::MOST_PIXELS;
use super::list::{Step, steps};
use super::pictures::{WallPicture, frontal, marked_small, original, pieces, size_of};
use super::refusal::{NotUndone, Refusal};
use super::together::{Conflict, PieceState, StepState, Together, Who};
use super::{Clock, ServeError, keep};

/// Longest side in pixels of what messengers make of a photo that is passed on: 1,280 to 2,048, from memory. Phones' own photos have 4,000.
const COPY_PX: u32 = 2_048;
/// Share of a photo that the wall fills where somebody takes care.
const FILLED: f64 = 0.85;
/// Fewest pixels a module below which the size of a small copy is what is the matter, not where somebody stood.
const FEW_PX: f64 = 1.0;

/// The evening.
pub struct Evening {
    pub(super) folder: Folder,
    pub(super) printed: Printed,
    pub(super) words: Words,
    pub(super) levels: Levels,
    /// What a forecast needs, where it is known when the event begins.
    pub(super) outlook: Option<Outlook>,
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
    /// The pages' warm colour as a style sheet.
    pub(super) accent: String,
    pub(super) reader: Reader,
    pub(super) keep_photos: bool,
    /// How pieces and squares of the kit are joined.
    pub(super) join: Join,
    desk: Desk,
    /// The name of the oldest check that is gone on from.
    since: String,
    standing: Mutex<Arc<Standing>>,
    /// The wall as it stood before the last photo.
    before: Mutex<Option<Arc<Standing>>>,
    together: Mutex<Together>,
    set_aside: bool,
    live: watch::Sender<u64>,
    /// The numbers of the standing and of the helpers' list.
    shared: watch::Sender<(u64, u64)>,
    /// How far the photo is that is being read.
    progress: watch::Sender<Progress>,
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
    /// The last photo marked, as a JPEG file; empty where there is none.
    pub marked: Vec<u8>,
    /// The size of the last photo in pixels, where it is a small copy in which codes cannot be read.
    pub copy: Option<(u32, u32)>,
    map: OnceLock<Vec<u8>>,
    marked_small: OnceLock<Vec<u8>>,
    marked_size: OnceLock<Option<(u32, u32)>>,
    list: OnceLock<Vec<Step>>,
}

/// How far a photo is that is being read.
#[derive(Copy, Clone, Debug, Default, PartialEq, Eq)]
pub struct Progress {
    /// The number that its phone gave it.
    pub photo: u64,
    /// Part of the work that is done, in percent.
    pub percent: u8,
}

/// Parts of the time to an answer that have passed, in percent, once a photo is opened, read, judged and drawn: measured on photos of 12
/// megapixels of 80 and 192 squares.
const OPENED: u8 = 20;
const READ: u8 = 65;
const JUDGED: u8 = 75;
const DRAWN: u8 = 95;

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
        let outlook = Outlook::of(&settings, facts.work().pieces);
        let mut standing = Standing::from_kept(kept, (&folder, &printed), &words, now);
        standing.foretell(outlook.as_ref(), &words);
        let (together, set_aside) = match since {
            Some(_) => keep::list(&folder, &printed, now),
            None => (Together::new(&printed.tag), false),
        };
        Ok(Self {
            levels: levels_of(&facts, &settings, &words),
            outlook,
            colours: colours_of(&facts),
            original: original(&picture, &printed.grid)?,
            accent: accent(&facts.pencils),
            since: since.map_or_else(clock.name, str::to_owned),
            before: Mutex::new(None),
            together: Mutex::new(together),
            set_aside,
            shared: watch::Sender::new((0, 0)),
            progress: watch::Sender::new(Progress::default()),
            reader: Reader::new(&printed),
            join: settings.print.join,
            desk: Desk::default(),
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

    /// A page of one cell, to print.
    ///
    /// # Errors
    /// `NotPrinted` where another one is being made, or why this one cannot be.
    pub fn page(&self, cell: Cell, one: One) -> Result<Document, NotPrinted> {
        self.desk.page((&self.folder, &self.printed), cell, one, &self.words)
    }

    /// Tells the number of the standing whenever it changes, and once at the beginning.
    #[must_use]
    pub fn watch(&self) -> watch::Receiver<u64> {
        self.live.subscribe()
    }

    /// Tells the numbers of the standing and of the helpers' list whenever one of them changes, and once at the beginning.
    #[must_use]
    pub fn watch_shared(&self) -> watch::Receiver<(u64, u64)> {
        self.shared.subscribe()
    }

    /// Tells how far the photo is that is being read.
    #[must_use]
    pub fn watch_progress(&self) -> watch::Receiver<Progress> {
        self.progress.subscribe()
    }

    /// Whether the kept list of the helpers was damaged and put aside.
    #[must_use]
    pub fn set_aside(&self) -> bool {
        self.set_aside
    }

    /// What helpers share.
    pub(super) fn together(&self) -> MutexGuard<'_, Together> {
        self.together.lock().unwrap_or_else(PoisonError::into_inner)
    }

    /// The steps of a standing.
    pub(super) fn steps<'a>(&self, standing: &'a Standing) -> &'a [Step] {
        let list = || steps(&standing.check.report, &standing.known, &self.printed.grid, &self.words);
        standing.list.get_or_init(list)
    }

    /// The places of pieces whose squares hang nowhere.
    pub(super) fn missing(&self, standing: &Standing) -> Vec<usize> {
        let grid = &self.printed.grid;
        let report = &standing.check.report;
        let hangs = |label: &String| report.cells.iter().any(|other| other.found.as_ref() == Some(label));
        let in_reserve = report.cells.iter().filter(|cell| cell.state == State::Reserve);
        let in_reserve = in_reserve.map(|cell| &cell.label).filter(|label| !hangs(label));
        let labels = report.missing.iter().chain(in_reserve);
        labels.filter_map(|label| grid.cell(label)).map(|cell| grid.index(cell)).collect()
    }

    /// Marks a step for all phones. `seen` is when, as the phone knows, its cells were seen last.
    ///
    /// # Errors
    /// [`Conflict`], and nothing has changed.
    pub fn mark(&self, asked: (&str, u64), to: StepState, who: &Who) -> Result<(), Conflict> {
        let mut together = self.together(); // first: no photo changes the steps meanwhile
        let standing = self.standing();
        let now = (self.clock.now)();
        together.mark(self.steps(&standing), asked, to, who, now)?;
        self.changed(&mut together, &standing, now);
        Ok(())
    }

    /// Marks a piece for all phones.
    ///
    /// # Errors
    /// [`Conflict`], and nothing has changed.
    pub fn hand(&self, place: usize, to: PieceState, who: &Who) -> Result<(), Conflict> {
        let mut together = self.together(); // first: no photo changes the steps meanwhile
        let standing = self.standing();
        let now = (self.clock.now)();
        together.hand(&self.missing(&standing), place, to, who, now)?;
        self.changed(&mut together, &standing, now);
        Ok(())
    }

    /// Keeps the helpers' list and tells phones. That it could not be kept is told where photos are: each of them is written too.
    fn changed(&self, together: &mut Together, standing: &Standing, now: u64) {
        together.tidy(self.steps(standing), &self.missing(standing), now);
        let _ = self.folder.keep_helpers_list(&together.to_json(now));
        self.shared.send_modify(|(_, list)| *list += 1);
    }

    /// Takes a photo that was made at `taken`, seconds since 1970; `id` is its phone's own number for it, under which it is told how
    /// far it is. Never two at once: each goes on from what the one before it left.
    ///
    /// # Errors
    /// [`Refusal`], and nothing has changed.
    pub fn take(&self, bytes: Vec<u8>, taken: u64, id: u64) -> Result<Arc<Standing>, Refusal> {
        let done = |percent: u8| {
            self.progress.send_replace(Progress { photo: id, percent });
        };
        done(0);
        let photo = Photo::open_within(&bytes, MOST_PIXELS).map_err(Refusal::Photo)?;
        drop(bytes);
        done(OPENED);
        let copy = self.copy(photo.colour.dimensions());
        let refused = |error| match (error, copy) {
            (ReadError::NoCodes | ReadError::CannotPlace | ReadError::TooSmall, Some((width, height))) => {
                Refusal::Copy(width, height)
            }
            (error, _) => Refusal::Read(error),
        };
        let parts = self.reader.read_parts(&photo).map_err(refused)?;
        done(READ);
        let covers = self.covers(&photo, &parts);
        let original = self.keep_photos.then(|| jpeg(&photo.colour)).transpose().map_err(Refusal::Draw)?;
        let before = self.standing();
        let now = (self.clock.now)();
        let practised = before.known.origins().iter().any(|origin| origin.made);
        if photo.made && !practised && !before.known.is_empty() {
            return Err(Refusal::Practice);
        }
        let (mut known, mut picture) = self.goes_on_from(&before, practised && !photo.made);
        let cells = together(vec![parts.clone()]).cells;
        let white: Vec<Cell> = covers.iter().flat_map(Cover::white).copied().collect();
        let origin = Origin { taken: photo.taken.clone(), made: photo.made, ..Origin::default() };
        let added = known.add(parts, &white, origin, taken.min(now));
        let (name, check) = self.told_now(&known, covers.iter().any(Cover::someone));
        done(JUDGED);
        let photo = Covered::new(photo, &covers);
        let drawn = self.draw(&photo, &check, &cells, &added, &mut picture).map_err(Refusal::Draw)?;
        drop(photo);
        done(DRAWN);
        let copy =
            copy.filter(|_| check.reading.of_photo(added.photo).any(|(_, own)| own.px_per_module < FEW_PX));
        let kept =
            keep::keep((&self.folder, &self.words), (&name, &check), &drawn, &known, original.as_deref());
        let (name, unkept) = match kept {
            Ok(name) => (Some(name), None),
            Err(error) => (before.name.clone(), Some(error)),
        };
        let newest = added.newest.iter().filter(|newest| **newest).count();
        let marked = if newest > 0 { drawn.marked.into_iter().next() } else { Some(before.marked.clone()) };
        let marked = marked.unwrap_or_default(); // an older photo that came late is not what the wall looks like
        let standing = Standing {
            number: before.number + 1,
            known,
            check,
            picture,
            name,
            unkept,
            newest,
            at: if newest > 0 { taken.min(now) } else { before.at },
            marked,
            copy,
            ..Standing::nothing(&self.printed, &self.words, now)
        };
        Ok(self.stands(standing, Some(before), now))
    }

    /// What is covered of each part of the wall that a photo shows.
    fn covers(&self, photo: &Photo, parts: &[PhotoReading]) -> Vec<Cover> {
        let expected = || Some(self.expected.clone());
        parts.iter().map(|part| Cover::of(photo, part, &self.printed, &expected)).collect()
    }

    fn noticed(&self, known: &Known) -> Noticed {
        noticed(known, &self.folder, &self.printed)
    }

    /// What is known now, judged and put into words, and the name of its check.
    fn told_now(&self, known: &Known, someone: bool) -> (String, Check) {
        let noticed = Noticed { someone, ..self.noticed(known) };
        let mut check = told(known, &noticed, &self.printed, &self.words);
        let name = (self.clock.name)();
        foretell(&mut check, self.outlook.as_ref(), &name, &self.words);
        (name, check)
    }

    /// The wall as it was known before a photo. The first real photo ends the practice: what only practice showed hangs nowhere.
    fn goes_on_from(&self, before: &Standing, ends_practice: bool) -> (Known, WallPicture) {
        if ends_practice {
            return (Known::nothing(&self.printed.grid), WallPicture::blank(&self.printed.grid));
        }
        (before.known.clone(), before.picture.clone())
    }

    /// Takes the last photo back, if that is still the one of the standing `number`: the wall is again as it was known before, and the
    /// photo's check is put aside in the folder.
    ///
    /// # Errors
    /// [`NotUndone`], and nothing has changed.
    pub fn undo(&self, number: u64) -> Result<Arc<Standing>, NotUndone> {
        let standing = self.standing();
        let now = (self.clock.now)();
        if standing.number != number {
            return Err(NotUndone::Changed);
        }
        if standing.known.is_empty() {
            return Err(NotUndone::Nothing);
        }
        let before = self.before.lock().unwrap_or_else(PoisonError::into_inner).clone();
        let own = standing
            .name
            .as_ref()
            .filter(|name| before.as_ref().is_none_or(|before| before.name.as_ref() != Some(name)));
        if let Some(name) = own {
            keep::put_check_aside(&self.folder, name).map_err(|_| NotUndone::Unkept)?;
        }
        let back = match before {
            Some(before) => Standing {
                check: told(&before.known, &self.noticed(&before.known), &self.printed, &self.words),
                known: before.known.clone(),
                picture: before.picture.clone(),
                name: before.name.clone(),
                marked: before.marked.clone(),
                copy: before.copy,
                at: before.at,
                ..Standing::nothing(&self.printed, &self.words, now)
            },
            None => {
                let kept = keep::newest(&self.folder, &self.printed, &self.since, now);
                Standing::from_kept(kept, (&self.folder, &self.printed), &self.words, now)
            }
        };
        Ok(self.stands(Standing { number: number + 1, ..back }, None, now))
    }

    /// Lets a standing be the one that all pages show.
    fn stands(&self, mut standing: Standing, before: Option<Arc<Standing>>, now: u64) -> Arc<Standing> {
        standing.foretell(self.outlook.as_ref(), &self.words);
        let standing = Arc::new(standing);
        let mut together = self.together();
        *self.before.lock().unwrap_or_else(PoisonError::into_inner) = before;
        *self.standing.lock().unwrap_or_else(PoisonError::into_inner) = Arc::clone(&standing);
        if together.tidy(self.steps(&standing), &self.missing(&standing), now) {
            let _ = self.folder.keep_helpers_list(&together.to_json(now));
        }
        self.live.send_replace(standing.number);
        self.shared.send_modify(|(number, _)| *number = standing.number);
        drop(together);
        standing
    }

    /// The size of a photo that is a small copy: however well somebody stood, no code could be read in it.
    fn copy(&self, (width, height): (u32, u32)) -> Option<(u32, u32)> {
        let size = self.printed.grid.size();
        let px_per_mm = (f64::from(width) / size.x).min(f64::from(height) / size.y) * FILLED;
        let small = width.max(height) <= COPY_PX && px_per_mm * self.printed.module_mm < FEW_PX;
        small.then_some((width, height))
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
        let first = check.reading.of_photo(added.photo).next().map_or(0, |(index, _)| index);
        let of_all = |own: &CellReading| CellReading { photo: first + own.photo, ..own.clone() };
        let own: Vec<CellReading> = cells.iter().map(of_all).collect();
        let mut wall = Straightening::new(&own, &[], &self.printed.grid, frontal());
        let light = |part: &PhotoReading| {
            let own: Vec<_> = cells.iter().filter(|own| part.apart.reaches(own.cell)).cloned().collect();
            Light::of(photo.photo(), &own, &part.camera, &self.printed)
        };
        let marked = check.draw(photo, added.photo, &light, &mut wall, &self.words)?;
        // what an earlier photo showed stays where somebody hides it now
        let covered =
            |cell: Cell| photo.hides(cell) && check.judgement.at(cell).is_some_and(|at| at.found.is_some());
        let shown = wall.shown().to_vec();
        let cells = self.printed.grid.cells().zip(&added.taken);
        let taken: Vec<bool> = cells.map(|(cell, taken)| *taken && !covered(cell)).collect();
        picture.take(&check.straight(wall, &self.words), &shown, &taken);
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
            check: told(&known, &Noticed::default(), printed, words),
            known,
            picture: WallPicture::blank(&printed.grid),
            name: None,
            unkept: None,
            newest: 0,
            at: now,
            marked: Vec::new(),
            copy: None,
            map: OnceLock::new(),
            marked_small: OnceLock::new(),
            marked_size: OnceLock::new(),
            list: OnceLock::new(),
        }
    }

    /// Says what to expect at the event's end, where that is not said yet.
    fn foretell(&mut self, outlook: Option<&Outlook>, words: &Words) {
        if let (None, Some(name)) = (&self.check.report.forecast, &self.name) {
            foretell(&mut self.check, outlook, name, words);
        }
    }

    fn from_kept(
        kept: Option<Kept>,
        (folder, printed): (&Folder, &Printed),
        words: &Words,
        now: u64,
    ) -> Self {
        let nothing = Self::nothing(printed, words, now);
        let Some(kept) = kept else { return nothing };
        Self {
            check: told(&kept.known, &noticed(&kept.known, folder, printed), printed, words),
            at: kept.known.times().max().filter(|at| *at > 0).unwrap_or(now),
            known: kept.known,
            picture: kept.picture,
            name: Some(kept.name),
            marked: kept.marked,
            ..nothing
        }
    }

    /// The last photo marked, small enough for a phone's first look; made when it is asked for first.
    #[must_use]
    pub fn marked_small(&self) -> &[u8] {
        self.marked_small.get_or_init(|| marked_small(&self.marked))
    }

    /// Width and height of the marked photo in pixels, so that a page keeps room for it before it comes.
    #[must_use]
    pub fn marked_size(&self) -> Option<(u32, u32)> {
        *self.marked_size.get_or_init(|| size_of(&self.marked))
    }

    /// What to tell the person with the phone. Whoever sent a small copy need not go closer.
    pub(super) fn advice(&self) -> Vec<String> {
        let besides = |advice: &Advice| self.copy.is_none() || !matches!(advice, Advice::GoCloser { .. });
        let said =
            self.check.advice.iter().zip(&self.check.report.advice).filter(|(advice, _)| besides(advice));
        said.map(|(_, said)| said.clone()).collect()
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

/// Says what to expect at the event's end; `stamp` is when the photo was taken.
fn foretell(check: &mut Check, outlook: Option<&Outlook>, stamp: &str, words: &Words) {
    check.report.forecast = outlook.and_then(|outlook| check.forecast(outlook, stamp, words));
}

/// What is known, judged and put into words.
fn told(known: &Known, noticed: &Noticed, printed: &Printed, words: &Words) -> Check {
    let origins = known.origins();
    let occasion = Occasion {
        taken: origins.first().and_then(|first| first.taken.clone()),
        made: origins.iter().any(|origin| origin.made),
        files: origins.iter().map(|origin| format!("photo {}", origin.number)).collect(),
    };
    Check::new(known.reading(), noticed, printed, &occasion, words)
}

/// What photos and folder tell besides codes.
fn noticed(known: &Known, folder: &Folder, printed: &Printed) -> Noticed {
    Noticed { someone: false, white: known.white(), begun: Vec::new(), spare: folder.spares(&printed.grid) }
}
