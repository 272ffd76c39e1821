//! Search: from the codes that are known to all the others, cell by cell.
//!
//! A camera fitted to few codes is good near them. So cells near known codes are sought first, the camera is
//! fitted again with what was found, and so on outwards until nothing changes.

use std::collections::{BTreeMap, BTreeSet};

use rayon::prelude::*;

use super::camera::Correspondence;
use super::codebook::Owner;
use super::identify::{Detection, Identifier};
use super::lattice::quarters_between;
use super::lens::Lens;
use super::own_parts::OwnParts;
use super::place::{Layout, Site, pose_of, whole};
use super::reading::Camera;
use super::seek::{CellDetection, QUICK, SearchEffort, THOROUGH, seek};
use super::uncertainty::Uncertainty;
use crate::frame::{PhotoPx, Point, Vector, WallMm, round_signed};
use crate::photo::Luma;
use crate::plan::settings::WallPart;
use crate::plan::{Grid, Turn};

/// Distance from a known code, in sides of a square, within which cells are sought.
const NEAR: f64 = 2.6;
/// Distance, in sides, at which every cell counts as near.
const FAR: f64 = 50.0;
/// Movement of the expected place, in mm, after which a cell is sought again.
const MOVED_MM: f64 = 1.5;
/// Maximum distance of a square's middle from its cell's, in sides.
const OFF: f64 = 0.4;
/// Maximum doubt of the camera, in sides, at which cells are sought and squares are put in their cells. At three times that a square
/// is still nearer to its own cell than [`OFF`] lets the next one have it; without a bound, walls of which few codes showed at first
/// were put together wrongly.
const DOUBT: f64 = 0.2;
/// Search radius as a multiple of the camera's doubt; never less than the usual radius.
const REACH: f64 = 2.0;
/// Maximum number of rounds; each reaches two cells farther than the one before.
const ROUNDS: usize = 48;
/// Maximum number of thorough passes over the whole wall; they stop when one finds nothing. What is found says how blurred the photo
/// is, and so what else can be believed.
const HARD_ROUNDS: usize = 2;

/// Rectangle of places, ends included.
#[derive(Copy, Clone, Debug, PartialEq, Eq)]
pub struct Bounds {
    /// Top left cell.
    pub first: Site,
    /// Bottom right cell.
    pub last: Site,
}

impl Bounds {
    /// All cells of a wall.
    #[must_use]
    pub fn of(grid: &Grid) -> Self {
        let last = |n: usize| i64::try_from(n).unwrap_or(i64::MAX) - 1;
        Self {
            first: Site { row: 0, column: 0 },
            last: Site { row: last(grid.rows), column: last(grid.columns) },
        }
    }

    /// The rectangle around places; `None` around none.
    pub(super) fn around(sites: impl Iterator<Item = Site>) -> Option<Self> {
        let wider = |own: Self, site: Site| Self {
            first: Site { row: own.first.row.min(site.row), column: own.first.column.min(site.column) },
            last: Site { row: own.last.row.max(site.row), column: own.last.column.max(site.column) },
        };
        sites.fold(None, |own, site| {
            Some(own.map_or(Self { first: site, last: site }, |own| wider(own, site)))
        })
    }

    /// Whether a place is within the rectangle.
    #[must_use]
    pub fn hold(&self, site: Site) -> bool {
        (self.first.row..=self.last.row).contains(&site.row)
            && (self.first.column..=self.last.column).contains(&site.column)
    }

    /// All its places, row by row.
    pub(super) fn sites(&self) -> impl Iterator<Item = Site> + use<> {
        let (rows, columns) = (self.first.row..=self.last.row, self.first.column..=self.last.column);
        rows.flat_map(move |row| columns.clone().map(move |column| Site { row, column }))
    }
}

/// State of the search: what is known of a wall so far.
#[derive(Clone, Debug)]
pub struct WallState {
    /// Camera, from the wall to the photo.
    pub camera: Camera,
    /// Anchors that the first camera came from; used as long as nothing else is known.
    pub start: Vec<Correspondence>,
    /// Cards whose places agree with the camera.
    pub cards: Vec<Correspondence>,
    /// Squares that were named, by the place where they hang.
    pub squares: BTreeMap<Site, CellDetection>,
    /// Codes that were not named, the best of each place.
    pub nameless: BTreeMap<Site, CellDetection>,
    /// Place in the photo where a cell's middle was expected when it was last sought: 0 quickly, 1
    /// thoroughly.
    pub(super) sought: [BTreeMap<Site, Point<PhotoPx>>; 2],
}

impl WallState {
    /// State with a camera, and nothing else known.
    #[must_use]
    pub fn new(camera: Camera) -> Self {
        let (start, cards) = (Vec::new(), Vec::new());
        let (squares, nameless) = (BTreeMap::new(), BTreeMap::new());
        Self { camera, start, cards, squares, nameless, sought: Default::default() }
    }
}

/// Cells where squares may hang, and the camera's uncertainty.
type Reach<'a> = (&'a Bounds, &'a Uncertainty);

/// Search for squares over the whole wall in one photo.
#[derive(Debug)]
pub struct Search<'a> {
    /// Photo, in grey levels.
    pub luma: &'a Luma,
    /// Identifier of the event's codes.
    pub identifier: &'a Identifier,
    /// Layout of a square.
    pub layout: Layout,
    /// Detections of squares' codes by their finder patterns, not yet put in a cell.
    pub detections: &'a [Detection],
    /// Squares that hang on another part of the wall.
    pub claimed: &'a [Detection],
    /// Parts of the wall that are listed.
    pub parts: &'a [WallPart],
    /// Lens to begin with.
    pub lens: Lens,
}

impl Search<'_> {
    /// Searches outwards from what is known until nothing new turns up within `bounds`.
    ///
    /// Quickly; thoroughly only where the camera stays too uncertain at a cell that may be in the photo.
    #[must_use]
    pub fn search_outwards(&self, mut known: WallState, bounds: impl Fn(&WallState) -> Bounds) -> WallState {
        let mut near = NEAR;
        for _ in 0..ROUNDS {
            let within = bounds(&known);
            let (news, sought) = self.round(&mut known, &within, near, &QUICK);
            if news || sought {
                continue;
            }
            if near < FAR {
                near *= 2.0;
            } else if !self.doubtful(&known, &within) || !self.round(&mut known, &within, near, &THOROUGH).0 {
                break;
            }
        }
        known
    }

    /// Hunts on with the thorough effort wherever nothing was found.
    #[must_use]
    pub fn search_thoroughly(
        &self,
        mut known: WallState,
        bounds: impl Fn(&WallState) -> Bounds,
    ) -> WallState {
        for _ in 0..ROUNDS {
            let within = bounds(&known);
            if !self.round(&mut known, &within, f64::INFINITY, &THOROUGH).0 {
                break;
            }
            known = self.search_outwards(known, &bounds);
        }
        known
    }

    /// Last pass: searches thoroughly once more where nothing was found, but not in cells whose squares hang `elsewhere`, and drops
    /// squares blurred as none near them is.
    #[must_use]
    pub fn last_pass(&self, mut known: WallState, within: &Bounds, elsewhere: &BTreeSet<Site>) -> WallState {
        for _ in 0..HARD_ROUNDS {
            let expected = |site: &Site| known.camera.wall_to_photo(centre(*site, self.layout.side));
            known.sought[1] = elsewhere.iter().map(|site| (*site, expected(site))).collect();
            let (news, _) = self.round(&mut known, within, f64::INFINITY, &THOROUGH);
            // only now is the photo's blur known well
            let blurred: Vec<Site> = known
                .squares
                .iter()
                .filter(|(_, seen)| self.is_implausible(&known, &seen.found))
                .map(|(site, _)| *site)
                .collect();
            known.squares.retain(|site, _| !blurred.contains(site));
            if !news {
                break;
            }
        }
        known.nameless.retain(|site, _| !known.squares.contains_key(site));
        known
    }

    /// One round over all cells that are due. Returns whether anything was found, and whether any cell was
    /// due.
    fn round(
        &self,
        known: &mut WallState,
        within: &Bounds,
        near: f64,
        effort: &SearchEffort,
    ) -> (bool, bool) {
        let doubt = Uncertainty::of(&known.camera, &self.correspondences(known));
        let hard = usize::from(effort.is_thorough());
        let due = self.due(known, (within, &doubt), &known.sought[hard], near);
        known.sought[hard].extend(due.iter().copied());
        (self.look(known, (within, &doubt), &due, effort), !due.is_empty())
    }

    /// Whether the camera is too uncertain at a cell that may be in the photo.
    fn doubtful(&self, known: &WallState, within: &Bounds) -> bool {
        let doubt = Uncertainty::of(&known.camera, &self.correspondences(known));
        let in_sight =
            |site: &Site| self.luma.holds(known.camera.wall_to_photo(centre(*site, self.layout.side)), 0.0);
        self.sites_of(known, within).any(|site| in_sight(&site) && !self.is_known_at(&doubt, site))
    }

    /// Searches the cells in `due` and fits the camera again. Returns whether anything was found.
    fn look(
        &self,
        known: &mut WallState,
        where_to: Reach<'_>,
        due: &[(Site, Point<PhotoPx>)],
        effort: &SearchEffort,
    ) -> bool {
        let mut news = self.place_detections(known, where_to);
        let camera = known.camera;
        let seen: Vec<(Site, Option<CellDetection>)> = due
            .par_iter()
            .map(|(site, _)| {
                let effort = effort.reaching(REACH * where_to.1.at(centre(*site, self.layout.side)));
                (*site, seek(self.luma, self.identifier, &camera, &self.layout, *site, &effort))
            })
            .collect();
        for (site, one) in seen {
            let Some(one) = one.filter(|one| !self.is_implausible(known, &one.found)) else { continue };
            if one.found.owner.is_none() {
                let best = known.nameless.entry(site).or_insert(one);
                if one.found.rank() > best.found.rank() {
                    *best = one;
                }
            } else {
                news |= self.take(known, where_to, one.found);
            }
        }
        known.camera = known.camera.fitted(&self.correspondences(known));
        news
    }

    /// Whether the camera is known well enough at a cell to say what hangs in it.
    #[must_use]
    pub fn is_known_at(&self, doubt: &Uncertainty, site: Site) -> bool {
        doubt.at(centre(site, self.layout.side)) <= DOUBT * self.layout.side
    }

    /// Anchors of all that is known: cards, then squares row by row; those of the start where that is
    /// nothing.
    #[must_use]
    pub fn correspondences(&self, known: &WallState) -> Vec<Correspondence> {
        let all = self.anchors(&known.cards, &known.squares);
        if all.is_empty() { known.start.clone() } else { all }
    }

    /// Anchors of cards, then of squares row by row.
    pub(super) fn anchors(
        &self,
        cards: &[Correspondence],
        squares: &BTreeMap<Site, CellDetection>,
    ) -> Vec<Correspondence> {
        let squares = squares.iter().map(|(site, seen)| Correspondence {
            wall: self.layout.code_corners(*site, seen.turn),
            photo: seen.found.pose.corners(),
        });
        cards.iter().copied().chain(squares).collect()
    }

    /// Puts the detections in their cells. Returns whether that is news.
    fn place_detections(&self, known: &mut WallState, where_to: Reach<'_>) -> bool {
        let mut news = false;
        for found in self.detections {
            if !self.is_implausible(known, found) {
                news |= self.take(known, where_to, *found);
            }
        }
        news
    }

    /// Puts a named code where its paper hangs, unless a better one hangs there. Returns whether that is
    /// news.
    fn take(&self, known: &mut WallState, (within, doubt): Reach<'_>, found: Detection) -> bool {
        let Some((site, turn)) = self.hangs(&known.camera, &found) else { return false };
        if found.owner.is_none() || !within.hold(site) || !self.is_known_at(doubt, site) {
            return false;
        }
        if !self.claimed.iter().all(|other| other.is_clear_of(&found)) {
            return false;
        }
        let better = known.squares.get(&site).is_none_or(|other| found.rank() > other.found.rank() + 1e-3);
        if better {
            known.squares.insert(site, CellDetection { turn, found });
        }
        better
    }

    /// In which cell of the lattice, on the wall or beyond it, and how turned, a code's paper hangs.
    pub(super) fn hangs(&self, camera: &Camera, found: &Detection) -> Option<(Site, Turn)> {
        let side = self.layout.side;
        let middle = camera.photo_to_wall(self.layout.paper_middle(&found.pose))?;
        let cell = |x: f64| round_signed(x / side - 0.5);
        let site = Site { row: cell(middle.y), column: cell(middle.x) };
        let off = middle.distance(centre(site, side)).value();
        let upright = pose_of(camera, self.layout.code_corners(site, Turn::None))?;
        let quarters = quarters_between(&upright, found.pose.u)?;
        let size = found.pose.px_per_module() / upright.px_per_module();
        let fits =
            off < OFF * side && (0.7..1.43).contains(&size) && found.pose.mirrored() == upright.mirrored();
        fits.then(|| (site, Turn::from_quarters(quarters)))
    }

    /// Places of the listed parts of which squares hang at home in what is known; all places as long as there is none. Other boards' places
    /// in this lattice show bare wall, or their squares by chance.
    fn sites_of(&self, known: &WallState, within: &Bounds) -> impl Iterator<Item = Site> + use<'_> {
        let own = OwnParts::of(&known.squares, self.parts);
        within.sites().filter(move |site| own.may_hold(*site))
    }

    /// Cells to be sought now, with the place in the photo where their middle is expected.
    fn due(
        &self,
        known: &WallState,
        (within, doubt): Reach<'_>,
        sought: &BTreeMap<Site, Point<PhotoPx>>,
        near: f64,
    ) -> Vec<(Site, Point<PhotoPx>)> {
        let side = self.layout.side;
        let anchors: Vec<Point<WallMm>> = self.correspondences(known).iter().map(|a| a.wall[0]).collect();
        self.sites_of(known, within)
            .filter(|site| !known.squares.contains_key(site))
            .filter_map(|site| {
                let middle = centre(site, side);
                let at = known.camera.wall_to_photo(middle);
                let close = || anchors.iter().any(|a| a.distance(middle).value() < near * side);
                let mm = known.camera.wall_to_straight.scale_at(middle) * MOVED_MM;
                let fresh = || sought.get(&site).is_none_or(|before| before.distance(at).value() > mm);
                let margin = -0.5 * side * mm / MOVED_MM;
                (self.luma.holds(at, margin) && fresh() && close() && self.is_known_at(doubt, site))
                    .then_some((site, at))
            })
            .collect()
    }
}

/// Number of nearest squares whose median is the local blur, and maximum ratio of a code's blur to it: far out of focus nothing of a code
/// would show, and what does is none. A wall seen from aside is sharper at one end.
const NEIGHBOURS: usize = 8;
/// Maximum ratio of a code's blur to the local blur: far out of focus nothing of it would show, and what does
/// is no code.
const BLURRED: f32 = 1.5;

impl Search<'_> {
    /// Median blur, in pixels, of the known squares nearest to a place; `None` while there are few.
    fn blur_at(&self, known: &WallState, place: Point<PhotoPx>) -> Option<f32> {
        let mut near: Vec<(f64, &Detection)> = known
            .squares
            .values()
            .map(|seen| (seen.found.pose.centre.distance(place).value(), &seen.found))
            .filter(|(away, _)| *away > 0.0)
            .collect();
        near.sort_by(|a, b| a.0.total_cmp(&b.0));
        let mut blurs: Vec<f32> = near
            .iter()
            .take(NEIGHBOURS)
            .filter_map(|(_, found)| self.identifier.blur(self.luma, found))
            .collect();
        blurs.sort_by(f32::total_cmp);
        blurs.get(NEIGHBOURS / 2).copied()
    }

    /// Whether a named code is implausible: a square blurred as none near it is, or a card where squares
    /// hang.
    ///
    /// A code that leaves no doubt is as sharp as it needs to be.
    fn is_implausible(&self, known: &WallState, found: &Detection) -> bool {
        let blurred = || {
            let fitted = found.evidence.fitted.filter(|_| !found.evidence.compared.is_unambiguous())?;
            Some(fitted.blur > BLURRED * self.blur_at(known, found.pose.centre)?)
        };
        match found.owner {
            Some(Owner::Card(_)) => true,
            Some(Owner::Square(_)) => blurred().unwrap_or(false),
            None => false,
        }
    }
}

/// Middle of a cell on the wall; `side` is a square's, in mm.
#[must_use]
pub fn centre(site: Site, side: f64) -> Point<WallMm> {
    Point::new((whole(site.column) + 0.5) * side, (whole(site.row) + 0.5) * side)
}

/// How far a square's middle lies from that of its cell; `None` where the camera does not see it on the wall.
pub(super) fn off(layout: &Layout, camera: &Camera, site: Site, found: &Detection) -> Option<Vector<WallMm>> {
    Some(camera.photo_to_wall(layout.paper_middle(&found.pose))? - centre(site, layout.side))
}
