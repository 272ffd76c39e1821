//! Reading one photo: the cascade of starts and passes.
//!
//! In: an upright photo. Out: a [`PhotoReading`] with one sight for each cell, or a [`ReadError`] that says why there is none.
//!
//! ```text
//!   finder patterns along lines ─▶ triples ─▶ detections (codes, with names or without)
//!                                                 │
//!                  ┌──────────── first camera, by the first of STARTS that leads to one
//!                  │   1  three cards that agree
//!                  │   2  the lattice that squares make; what they say votes for which cell is which
//!                  │   3  named squares that hang where they belong
//!                  │   4  a single card
//!                  ▼
//!       search outwards, cell by cell ─▶ last thorough pass ─▶ what hangs apart
//!                  │
//!    little read, and modules small?  once more from the top, with detections by area beside those along lines
//!                  │
//!                  ▼
//!       each cell: a named square, another event's, empty, unread, unseen
//! ```

use std::collections::{BTreeMap, BTreeSet};
use std::sync::OnceLock;

use super::any_code::locate;
use super::camera::Correspondence;
use super::codebook::Owner;
use super::decision::INK;
use super::empty::{EmptyCells, HangingBeside, Stub};
use super::finders::Finder;
use super::identify::{Detection, Identifier};
use super::lens::Lens;
use super::place::{Layout, Site, card_corners, cell_at, median_px, site_of};
use super::pose::Pose;
use super::reading::{Apart, BEYOND_CERTAINTY, Camera, CellReading, PhotoReading, ReadError, Sight};
use super::search::{Bounds, Search, WallState, off};
use super::seek::CellDetection;
use super::start::{self, ENOUGH_CARDS, LATTICE_ALONE};
use super::uncertainty::Uncertainty;
use super::{apart, area_finders, finders, foreign, lattice, parts, triples};
use crate::frame::{Point, float};
use crate::photo::{Luma, Photo};
use crate::plan::code::SIDE;
use crate::plan::{Cell, Grid, Printed};

/// Maximum size of a module, in pixels, at which finder patterns may be missed by the scan.
pub(super) const SMALL_PX: f64 = 2.2;
/// Minimum share of the cells in sight in which squares were read; below it there may be more to see.
const THIN: f64 = 0.5;

/// Reader of the walls of one event.
///
/// ```no_run
/// # use everysquare::{photo::Photo, plan::Printed, read::Reader};
/// # fn example(bytes: &[u8], printed: &Printed) -> Result<(), Box<dyn std::error::Error>> {
/// let reading = Reader::new(printed).read(&Photo::open(bytes)?)?;
/// # Ok(())
/// # }
/// ```
#[derive(Debug)]
pub struct Reader {
    printed: Printed,
    layout: Layout,
    identifier: OnceLock<Identifier>,
}

/// The codes of the event in a photo, by the place where they hang.
#[derive(Clone, Debug)]
pub(super) struct Wall {
    /// Wall to photo.
    pub(super) camera: Camera,
    /// Squares, by place.
    pub(super) squares: BTreeMap<Site, CellDetection>,
    /// Codes without a name, by place.
    pub(super) nameless: BTreeMap<Site, CellDetection>,
    /// Cards that were read.
    pub(super) cards: Vec<Correspondence>,
    /// Places where the camera is not known well enough to say what hangs there.
    doubtful: BTreeSet<Site>,
    /// What hangs apart.
    pub(super) apart: Apart,
    /// The codes of what hangs apart.
    pub(super) apart_codes: Vec<Detection>,
}

impl Reader {
    /// Reader for what was printed. Templates of all its codes are computed when the first photo is read, or by
    /// [`prepare`](Self::prepare).
    #[must_use]
    pub fn new(printed: &Printed) -> Self {
        Self { printed: printed.clone(), layout: Layout::of(printed), identifier: OnceLock::new() }
    }

    /// What was printed.
    #[must_use]
    pub fn printed(&self) -> &Printed {
        &self.printed
    }

    /// Computes the templates of all codes, in parallel, so that the first photo does not have to wait for them.
    pub fn prepare(&self) {
        self.identifier();
    }

    pub(super) fn identifier(&self) -> &Identifier {
        self.identifier.get_or_init(|| Identifier::new(&self.printed))
    }

    /// Camera of the wall in a picture: all stages but the last, which says what hangs in each cell.
    ///
    /// # Errors
    /// As [`read`](Self::read).
    pub fn camera(&self, luma: &Luma) -> Result<Camera, ReadError> {
        Ok(self.wall(luma)?.0.camera)
    }

    /// Reads a photo of the event's wall: of a wall in parts the largest of them.
    ///
    /// # Errors
    /// A [`ReadError`] where no code of the event is seen, or not enough to say which cell is which.
    pub fn read(&self, photo: &Photo) -> Result<PhotoReading, ReadError> {
        let (wall, _) = self.wall(&photo.luma)?;
        Ok(self.reading(photo, wall))
    }

    /// Reads a photo of the event's wall: each part of it that hangs by itself, with a camera of its own, the largest first.
    ///
    /// # Errors
    /// As [`read`](Self::read); never gives none.
    pub fn read_parts(&self, photo: &Photo) -> Result<Vec<PhotoReading>, ReadError> {
        let (first, codes) = self.wall(&photo.luma)?;
        let walls = parts::all(self, &photo.luma, first, &codes);
        Ok(walls.into_iter().map(|wall| self.reading(photo, wall)).collect())
    }

    fn reading(&self, photo: &Photo, wall: Wall) -> PhotoReading {
        let read: Vec<(Cell, Pose)> =
            wall.squares.iter().filter_map(|(site, seen)| Some((cell_at(*site)?, seen.found.pose))).collect();
        let stubs = self.stubs(&wall, &read);
        let hanging = HangingBeside { cards: !wall.cards.is_empty(), apart: &wall.apart, stubs: &stubs };
        let empty = EmptyCells::new((&photo.colour, &wall.camera), self.printed.grid, &read, hanging);
        let cells: Vec<CellReading> =
            self.printed.grid.cells().map(|cell| self.cell_reading(photo, &wall, &empty, cell)).collect();
        let shift_mm = |(site, seen): (&Site, &CellDetection)| {
            Some(off(&self.layout, &wall.camera, *site, &seen.found)?.length().value())
        };
        PhotoReading {
            photo: 0,
            width: photo.luma.width,
            height: photo.luma.height,
            codes_read: wall.cards.len() + wall.squares.len(),
            camera: wall.camera,
            mirrored: mirrored(&wall.camera, &self.printed.grid),
            px_per_module: median_px(wall.squares.values().map(|seen| seen.found.pose.px_per_module())),
            worst_shift_mm: wall.squares.iter().filter_map(shift_mm).fold(0.0, f64::max),
            cells,
            apart: wall.apart,
        }
    }

    /// Where stubs of the squares that were read would hang, if they were left on and not folded: on the side of the code, over the cell
    /// next to it.
    fn stubs(&self, wall: &Wall, read: &[(Cell, Pose)]) -> Vec<Stub> {
        let Some(width) = self.printed.stub_mm else { return Vec::new() };
        let Layout { side, code, module } = self.layout;
        let is_right = code.x + float(SIDE) * module / 2.0 > side / 2.0;
        let (near, far) = if is_right { (side, side + width) } else { (-width, 0.0) };
        let stub = |(cell, pose): &(Cell, Pose)| {
            let on_wall = |x: f64, y: f64| {
                let to_module = |mm: f64, from: f64| (mm - from) / module;
                let at = pose.module_to_photo(Point::new(to_module(x, code.x), to_module(y, code.y)));
                wall.camera.photo_to_wall(at)
            };
            let corners =
                [on_wall(near, 0.0)?, on_wall(far, 0.0)?, on_wall(far, side)?, on_wall(near, side)?];
            let over = self.printed.grid.nearest(corners[0].towards(corners[2], 0.5));
            (over != *cell).then_some(Stub { over, corners })
        };
        read.iter().filter_map(stub).collect()
    }

    /// The wall in a photo and what hangs on it, and the codes that it was read from; a second time with detections by area where little
    /// was read of small modules.
    fn wall(&self, luma: &Luma) -> Result<(Wall, Vec<Detection>), ReadError> {
        let identifier = self.identifier();
        let patterns = finders::find(luma);
        let crossed = triples::detect(luma, &patterns, identifier);
        let none_named = named(&crossed).next().is_none();
        let texts = if none_named { texts(luma, &crossed) } else { BTreeSet::new() };
        let tags = self.foreign_tags(&texts);
        if !tags.is_empty() {
            return Err(ReadError::Foreign(tags));
        }
        let straight = self.search(luma).lens;
        let wall_of = |codes: &[Detection]| self.wall_of(luma, codes.to_vec(), (&[], straight));
        let first = wall_of(&crossed);
        let small = median_px(named(&crossed).map(|code| code.pose.px_per_module())) < SMALL_PX;
        if !small || first.as_ref().is_ok_and(|wall| !wall.thin(luma, &self.printed.grid)) {
            return Ok((first?, crossed));
        }
        let candidates = area_finders::find(luma, identifier, area_finders::LEAST);
        let by_area = triples::verify(luma, (&candidates, area_finders::MOST_NAMELESS), identifier);
        let together = triples::together(crossed.clone(), by_area);
        let second = wall_of(&together);
        let read = |wall: &Result<Wall, ReadError>| wall.as_ref().map_or(0, |wall| wall.squares.len());
        if read(&second) > read(&first) {
            return Ok((second?, together));
        }
        match second {
            Err(why @ ReadError::TooSmall) if first.is_err() => Err(why),
            _ if !none_named => Ok((first?, crossed)),
            Err(why @ ReadError::CannotPlace) => Err(why),
            // why nothing is known is worked out last: it takes longest where there is least to see
            _ => Err(self.nothing_known(luma, &patterns, texts)),
        }
    }

    /// A search that knows of no codes yet.
    pub(super) fn search<'a>(&'a self, luma: &'a Luma) -> Search<'a> {
        let lens = Lens::straight(float(luma.width), float(luma.height));
        let (identifier, layout) = (self.identifier(), self.layout);
        Search { luma, identifier, layout, detections: &[], claimed: &[], parts: &self.printed.parts, lens }
    }

    /// The wall that codes belong to, and the rest of its squares, none of which is one that is claimed.
    pub(super) fn wall_of(
        &self,
        luma: &Luma,
        mut codes: Vec<Detection>,
        (claimed, lens): (&[Detection], Lens),
    ) -> Result<Wall, ReadError> {
        self.one_sided(&mut codes)?;
        let (cards, loose) = split(&self.printed, &codes);
        let search = Search { detections: &loose, claimed, lens, ..self.search(luma) };
        let state = start::first(&search, &self.printed, &cards)?;
        let bounds = Bounds::of(&self.printed.grid);
        let elsewhere = apart::elsewhere(&search, &state, &bounds, &self.printed);
        let mut state = search.last_pass(state, &bounds, &elsewhere);
        let (apart, apart_codes) = apart::take_out(&search, &mut state, &bounds, &self.printed);
        let uncertainty = Uncertainty::of(&state.camera, &search.correspondences(&state));
        let doubtful = bounds.sites().filter(|site| !search.is_known_at(&uncertainty, *site)).collect();
        let WallState { camera, cards, squares, nameless, .. } = state;
        Ok(Wall { camera, squares, nameless, cards, doubtful, apart, apart_codes })
    }

    fn cell_reading(&self, photo: &Photo, wall: &Wall, empty: &EmptyCells<'_>, cell: Cell) -> CellReading {
        let (printed, layout) = (&self.printed, &self.layout);
        let site = site_of(cell);
        let reading = |sight, certainty, corners| CellReading { cell, sight, certainty, corners, photo: 0 };
        if let Some(seen) = wall.squares.get(&site)
            && let Some(home) = seen.found.home()
        {
            let certainty = seen.found.evidence.certainty(printed.squares.len() + printed.cards.len());
            return reading(
                Sight::Square { home, turn: seen.turn },
                certainty,
                Some(layout.paper_corners(&seen.found.pose)),
            );
        }
        if let Some(seen) = wall.nameless.get(&site) {
            let text = foreign::text(&photo.luma, &seen.found.pose);
            if let Some(text) = text.filter(|text| printed.squares.iter().all(|s| s.text != *text)) {
                let corners = layout.paper_corners(&seen.found.pose);
                return reading(Sight::Stranger { text, turn: seen.turn }, STRANGER_CERTAINTY, Some(corners));
            }
        }
        if !wall.apart.reaches(cell) {
            return reading(Sight::Unseen, DOUBTFUL_CERTAINTY, None);
        }
        if wall.doubtful.contains(&site) {
            return reading(Sight::Unread, DOUBTFUL_CERTAINTY, None);
        }
        let (sight, certainty) = match empty.judge(cell) {
            // a wall without a square shows nothing that is half a code
            (Sight::Empty, _) if wall.nameless.get(&site).is_some_and(|seen| shows_code(&seen.found)) => {
                (Sight::Unread, 0.8)
            }
            judged => judged,
        };
        let corners = printed.grid.corners(cell).map(|p| wall.camera.wall_to_photo(p));
        let seen = sight != Sight::Unseen && corners.iter().all(|c| c.is_finite());
        // where the parts are known, the cell is one of this part
        let may_end = wall.cards.len() < ENOUGH_CARDS && printed.parts.is_empty();
        let beyond = sight == Sight::Empty && may_end && wall.ends_before(site);
        reading(
            sight,
            if beyond { certainty.min(BEYOND_CERTAINTY) } else { certainty },
            seen.then_some(corners),
        )
    }

    /// Keeps the codes that are seen as most are: as they are, or all as in a mirror.
    ///
    /// # Errors
    /// [`ReadError::NoCodes`] where none has a name, and too few make a lattice.
    fn one_sided(&self, codes: &mut Vec<Detection>) -> Result<(), ReadError> {
        let named = codes.iter().filter(|c| c.owner.is_some());
        let (mirrored, all) = named.fold((0, 0), |(m, n), c| (m + usize::from(c.pose.mirrored()), n + 1));
        if all > 0 {
            codes.retain(|c| c.pose.mirrored() == (mirrored * 2 > all));
            return Ok(());
        }
        // what all codes share is nearly the same in a mirror: without a name each code may be either
        let sided = |mirrored: bool| -> Vec<Detection> {
            let turned = |code: &Detection| {
                let pose = if code.pose.mirrored() == mirrored { code.pose } else { code.pose.mirror() };
                Detection { pose, ..*code }
            };
            codes.iter().map(turned).collect()
        };
        let both =
            [false, true].map(sided).map(|codes| (lattice::largest(&self.layout, &codes).len(), codes));
        let [as_seen, mirrored] = both;
        let (members, own) = if mirrored.0 > as_seen.0 { mirrored } else { as_seen };
        // rings of any kind lie everywhere; squares lie a square's side apart, and little else looks like their codes
        if members < LATTICE_ALONE || 3 * members < own.len() {
            return Err(ReadError::NoCodes);
        }
        *codes = own;
        Ok(())
    }

    /// Tags of other events in texts, in alphabetical order.
    fn foreign_tags(&self, texts: &BTreeSet<String>) -> Vec<String> {
        let tags = texts.iter().filter_map(|text| foreign::tag(text).map(str::to_owned));
        tags.filter(|tag| *tag != self.printed.tag).collect::<BTreeSet<String>>().into_iter().collect()
    }

    /// Why nothing of this event is seen: nothing at all, or another event's codes.
    pub(super) fn nothing_known(
        &self,
        luma: &Luma,
        patterns: &[Finder],
        mut texts: BTreeSet<String>,
    ) -> ReadError {
        // codes with more modules than an event's are told from nothing at all
        texts.extend(locate(luma, patterns).into_iter().filter_map(|code| code.text));
        let tags = self.foreign_tags(&texts);
        if !tags.is_empty() {
            return ReadError::Foreign(tags);
        }
        texts.retain(|text| foreign::tag(text) != Some(self.printed.tag.as_str()));
        if !texts.is_empty() {
            let short = |text: String| text.chars().take(LONGEST_TEXT).collect();
            return ReadError::Other(texts.into_iter().take(MOST_TEXTS).map(short).collect());
        }
        let brightness: f64 = luma.grey.iter().step_by(97).map(|g| f64::from(*g)).sum();
        let mean = brightness / float(luma.grey.len().div_ceil(97).max(1));
        if mean < DARK { ReadError::TooDark } else { ReadError::NoCodes }
    }
}

/// Whether a camera shows the wall as in a mirror: its right and its down are then seen anticlockwise.
fn mirrored(camera: &Camera, grid: &Grid) -> bool {
    let size = grid.size();
    let [right, down] = camera.wall_to_straight.steps_at(Point::new(size.x / 2.0, size.y / 2.0));
    right.cross(down) < 0.0
}

/// Whether what was compared is a code, whoever's, or one of this event of which a part shows.
fn shows_code(found: &Detection) -> bool {
    let Detection { evidence, pose, .. } = found;
    let explained = evidence.compared.explained();
    (explained > WHOLE_CODE && pose.px_per_module() > LARGE_PX)
        || explained > HALF_A_CODE
            && evidence.fitted.is_some_and(|fitted| INK.contains(&fitted.ink))
            && evidence.log_odds() > HALF_EVIDENCE
}

/// Minimum share that the best code explains of a code of any event. Of a square of another event that hung on a wall of the colour of its
/// drawing it explained 0.52 (`tests/photos/made.rs`, wall 124), of 126 bare places of walls 1 to 60 and 125 to 160 never more than 0.44.
const WHOLE_CODE: f32 = 0.51;
/// Pixels of a module from which that is so: of smaller ones a bare wall may show as much (the simulator's hard-6).
const LARGE_PX: f64 = 1.8;
/// Minimum share that the best code explains of half a code, on made walls.
const HALF_A_CODE: f32 = 0.48;
/// Minimum log odds of the best code where half of it shows: one in four such codes is the very one. Bare walls have less.
const HALF_EVIDENCE: f32 = -1.0;
/// Certainty reported for a cell whose position in the photo is uncertain.
const DOUBTFUL_CERTAINTY: f64 = 0.3;
/// Certainty of a code that was decoded: error correction leaves little doubt.
const STRANGER_CERTAINTY: f64 = 0.99;

/// What codes say that are decoded the ordinary way.
pub(super) fn texts(luma: &Luma, codes: &[Detection]) -> BTreeSet<String> {
    codes.iter().filter_map(|code| foreign::text(luma, &code.pose)).collect()
}

/// Codes of the event.
pub(super) fn named(found: &[Detection]) -> impl Iterator<Item = &Detection> {
    found.iter().filter(|code| code.owner.is_some())
}

impl Wall {
    /// Whether a place lies beyond the outermost squares that were read. One that hangs alone where it does not belong may hang on another
    /// part of the wall.
    fn ends_before(&self, site: Site) -> bool {
        let is_own = |(site, seen): &(&Site, &CellDetection)| {
            let at_home = seen.found.home().is_some_and(|home| site_of(home) == **site);
            let next = apart::STEPS.map(|(right, down)| site.step(right, down));
            at_home || next.iter().any(|next| self.squares.contains_key(next))
        };
        let own: Vec<Site> = self.squares.iter().filter(is_own).map(|(site, _)| *site).collect();
        let beyond = |of: fn(&Site) -> i64| {
            let all = || own.iter().map(of);
            all().max().is_none_or(|last| of(&site) > last)
                || all().min().is_none_or(|first| of(&site) < first)
        };
        beyond(|site| site.row) || beyond(|site| site.column)
    }

    /// Whether so little was read, with no card to say where all squares hang, that it may be the reader's fault.
    fn thin(&self, luma: &Luma, grid: &Grid) -> bool {
        let in_sight =
            grid.cells().filter(|cell| luma.holds(self.camera.wall_to_photo(grid.centre(*cell)), 0.0));
        self.cards.len() < ENOUGH_CARDS && float(self.squares.len()) < THIN * float(in_sight.count())
    }
}

/// Cards with their places, and the codes that are not cards.
fn split(printed: &Printed, codes: &[Detection]) -> (Vec<Correspondence>, Vec<Detection>) {
    let (mut cards, mut loose) = (Vec::new(), Vec::new());
    for code in codes {
        match code.owner {
            Some(Owner::Card(at)) => {
                let wall = card_corners(&printed.cards[at]);
                cards.push(Correspondence { wall, photo: code.pose.corners() });
            }
            _ => loose.push(*code),
        }
    }
    (cards, loose)
}

/// Maximum number of foreign texts that are reported, and the length to which each is cut: enough to know a poster by.
const MOST_TEXTS: usize = 3;
const LONGEST_TEXT: usize = 40;
/// Mean grey level below which a photo without a code is too dark: what a phone shows of a room with its lights off has 5 to 20;
/// common practice, no source.
const DARK: f64 = 28.0;
