//! Search of one cell: the code of the square that hangs there, if there is one.
//!
//! The camera says where the code should be, for each of the four ways the square may be turned; the square
//! may hang a centimetre off and five degrees askew. For each way a patch around that place is straightened,
//! every place of it is rated as the centre of a finder pattern, and candidates where three ratings stand
//! together as in a code are looked at closely by [`Identifier`].

use std::num::Wrapping;

use super::candidate::{Candidate, Source, rank_by_template, suppress_non_maxima};
use super::codebook::Light;
use super::identify::{Detection, Identifier};
use super::place::{Layout, Site, pose_of};
use super::pose::Pose;
use super::reading::Camera;
use super::summed_area::{SummedArea, Table};
use super::template::single;
use super::template_search::sweep;
use crate::frame::{float, floor_index, round_byte, round_signed};
use crate::photo::Luma;
use crate::plan::Turn;

/// Effort of a search: how far, how askew and how many candidates.
#[derive(Copy, Clone, Debug)]
pub struct SearchEffort {
    /// Maximum distance of a code from its place, in mm, along each side of the cell.
    reach_mm: f64,
    /// Directions of the flat candidates, in degrees from the cell's.
    askew: &'static [f64],
    /// Whether triples of single peaks are tried as a narrow or sheared code, as paper that stands off the
    /// wall shows it.
    bent: bool,
    /// Maximum number of candidates of one kind and mark that are looked at closely, for each turn of the
    /// square.
    closer: usize,
    /// Templates of a finder pattern, tried in this order.
    marks: &'static [PatternTemplate],
    /// Preparations of the samples, tried in this order.
    lights: &'static [Light],
    /// Maximum number of candidates of the template search that are looked at closely; 0 for no such search.
    swept: usize,
    /// Maximum distance of a code from its place in the template search, in mm.
    swept_mm: f64,
}

impl SearchEffort {
    /// Effort that reaches at least this many mm far, with candidates as dense as nearer by.
    #[must_use]
    pub fn reaching(self, mm: f64) -> Self {
        let farther = (mm / self.reach_mm).max(1.0);
        let closer = float(self.closer) * farther.powi(2);
        let swept_mm = self.swept_mm.max(mm);
        Self { reach_mm: self.reach_mm * farther, closer: floor_index(closer), swept_mm, ..self }
    }

    /// Whether the template search belongs to it.
    #[must_use]
    pub fn is_thorough(&self) -> bool {
        self.swept > 0
    }
}

/// Effort for squares that hang well: a centimetre off and five degrees askew.
pub const QUICK: SearchEffort = SearchEffort {
    reach_mm: 12.0,
    askew: &[0.0, -2.5, 2.5, -5.0, 5.0],
    bent: false,
    closer: 5,
    marks: &[PatternTemplate::Rings],
    lights: &[Light::AsSeen],
    swept: 0,
    swept_mm: 12.0,
};

/// Effort for cells where [`QUICK`] found nothing: curled corners, squares far askew, codes bleached by the
/// sun.
pub const THOROUGH: SearchEffort = SearchEffort {
    reach_mm: 17.0,
    askew: &[0.0, -3.0, 3.0, -6.0, 6.0, -9.0, 9.0, -12.0, 12.0],
    bent: true,
    closer: 8,
    marks: &[PatternTemplate::Rings, PatternTemplate::Dot],
    lights: &[Light::AsSeen, Light::Evened],
    swept: 16,
    swept_mm: 12.0,
};

/// Number of candidates of the template search that are looked at closely in a cell where a square may hang anywhere.
const ANYWHERE: usize = 12;

/// Template of a finder pattern.
#[derive(Copy, Clone, Debug, PartialEq, Eq)]
enum PatternTemplate {
    /// Squares 3, 5 and 7 modules wide, in turn dark, light and dark. What is around does not count: visitors
    /// draw there.
    Rings,
    /// Dark square of 3 modules in a light one of 9: what the sun leaves of a pattern.
    Dot,
}

/// Number of places rated along a module's side.
const PER_MODULE: usize = 2;
/// Distance from a code's centre to that of a finder pattern along both axes, in modules.
const FINDER: f64 = 7.0;
/// Half the width of a finder pattern with the light ring around it, in modules.
const RING: f64 = 4.5;
/// Minimum sum of three ratings for a flat candidate; a perfect code has 3.
const PROMISING: f32 = 1.0;
/// Minimum rating of a single peak.
const PEAK: f32 = 0.3;
/// Maximum number of peaks of a patch, the highest, that are combined to triples.
const PEAKS: usize = 24;
/// Maximum number of peak triples that are compared with the shared part; the likeliest of them are looked at
/// closely.
///
/// The eight best by their ratings alone missed two flapping corners on the simulator's walls (hard-6).
const BENT: usize = 80;

/// Minimum ratio of a side's main component to its cross component: limits shear to 38 degrees, as the
/// simulator's flapping corners have.
const SHEARED: f64 = 1.3;

/// Detection in a cell.
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct CellDetection {
    /// Turn of the square against its cell.
    pub turn: Turn,
    /// Code of the square, identified or not.
    pub found: Detection,
}

/// Best detection in a cell; `None` where no code shows.
///
/// A named code beats a nameless one, a flat one a sheared one. The search ends at the first that leaves no
/// doubt.
#[must_use]
pub fn seek(
    luma: &Luma,
    identifier: &Identifier,
    camera: &Camera,
    layout: &Layout,
    site: Site,
    effort: &SearchEffort,
) -> Option<CellDetection> {
    let expected = Turn::ALL.map(|turn| pose_of(camera, layout.code_corners(site, turn)));
    // worked out when its turn comes: most squares hang upright, which is looked at first
    let mut rough: [Option<Vec<Candidate>>; 4] = Default::default();
    let mut best: Option<CellDetection> = None;
    let mut best_counts = (false, f32::MIN);
    for light in effort.lights {
        for ((turn, expected), rough) in Turn::ALL.into_iter().zip(expected).zip(&mut rough) {
            let Some(expected) = expected.filter(|pose| luma.holds(pose.centre, 0.0)) else { continue };
            for one in rough.get_or_insert_with(|| candidates(luma, identifier, &expected, layout, effort)) {
                let found = if effort.is_thorough() {
                    identifier.identify_faint(luma, one.pose, *light)
                } else {
                    identifier.identify(luma, one.pose, *light)
                };
                let Some(found) = found else { continue };
                // threes of marks that stand askew may look faintly like a code: a flat one without a name counts more
                let counts = (found.owner.is_some() || one.source != Source::Sheared, found.rank());
                if counts > best_counts {
                    best = Some(CellDetection { turn, found });
                    best_counts = counts;
                }
                if found.sure() {
                    return best;
                }
            }
        }
    }
    if effort.swept == 0 || best.is_some_and(|b| b.found.owner.is_some()) {
        return best;
    }
    for (turn, rough) in swept(luma, identifier, camera, layout, site, effort) {
        let found = identifier.identify_faint(luma, rough, Light::AsSeen);
        // what is no code may look faintly like one: only a name counts
        if let Some(found) = found.filter(|found| found.owner.is_some()) {
            return Some(CellDetection { turn, found });
        }
    }
    best
}

/// Named codes of upright squares that hang in a camera's plane, wherever in a cell of its lattice: on a board beside the wall no square
/// hangs in a place of that lattice.
#[must_use]
pub(super) fn seek_anywhere(
    luma: &Luma,
    identifier: &Identifier,
    camera: &Camera,
    layout: &Layout,
    site: Site,
) -> Vec<Detection> {
    let expected = pose_of(camera, layout.code_corners(site, Turn::None));
    let Some(expected) = expected.filter(|pose| luma.holds(pose.centre, 0.0)) else { return Vec::new() };
    let (shared, reach) = (identifier.shared(expected.px_per_module()), layout.side / 2.0 / layout.module);
    let rough = sweep(luma, shared, &expected, reach, ANYWHERE);
    let found = rough.into_iter().filter_map(|one| identifier.identify_faint(luma, one.pose, Light::AsSeen));
    found.filter(|found| found.home().is_some()).collect()
}

/// Candidates of the template search over all four turns, those with most of the shared part first.
fn swept(
    luma: &Luma,
    identifier: &Identifier,
    camera: &Camera,
    layout: &Layout,
    site: Site,
    effort: &SearchEffort,
) -> Vec<(Turn, Pose)> {
    let mut all = Vec::new();
    for turn in Turn::ALL {
        let Some(expected) = pose_of(camera, layout.code_corners(site, turn)) else { continue };
        if luma.holds(expected.centre, 0.0) {
            let shared = identifier.shared(expected.px_per_module());
            let reach = effort.swept_mm / layout.module;
            let found = sweep(luma, shared, &expected, reach, effort.swept);
            all.extend(found.into_iter().map(|swept| (turn, swept)));
        }
    }
    all.sort_by(|a, b| b.1.score.total_cmp(&a.1.score));
    all.truncate(effort.swept);
    all.into_iter().map(|(turn, swept)| (turn, swept.pose)).collect()
}

/// Candidates by finder pattern in a patch around the expected pose.
fn candidates(
    luma: &Luma,
    identifier: &Identifier,
    expected: &Pose,
    layout: &Layout,
    effort: &SearchEffort,
) -> Vec<Candidate> {
    let per = float(PER_MODULE);
    let reach = (effort.reach_mm / layout.module * per).ceil() / per;
    let half = reach + FINDER * 1.25 + RING + 1.0;
    let places = 2 * floor_index(half * per);
    let half = float(places) / 2.0 / per;
    let step = 1.0 / per;
    let first = expected.centre + (expected.u + expected.v) * (step / 2.0 - half);
    let mut patch = Vec::new();
    luma.lattice(first, [expected.u * step, expected.v * step], [places, places], &mut patch);
    let patch = Patch::new(&patch, places);
    let mut candidates = Vec::new();
    for mark in effort.marks {
        let scores = ScoreMap::new(&patch, *mark);
        let in_photo = |source| move |place: Place| place.in_photo(expected, source);
        candidates.extend(scores.flat_candidates(reach, effort).into_iter().map(in_photo(Source::Flat)));
        if effort.bent {
            let sheared =
                scores.sheared_candidates(reach).into_iter().map(in_photo(Source::Sheared)).collect();
            let px = |_: &Pose| expected.px_per_module();
            candidates.extend(rank_by_template(luma, identifier, (sheared, px), effort.closer));
        }
    }
    candidates
}

/// Candidate in a patch: the code's centre in modules from the patch's, and its steps of one module there.
#[derive(Copy, Clone)]
struct Place {
    rating: f32,
    middle: [f64; 2],
    u: [f64; 2],
    v: [f64; 2],
}

impl Place {
    fn in_photo(&self, expected: &Pose, source: Source) -> Candidate {
        let step = |[x, y]: [f64; 2]| expected.u * x + expected.v * y;
        let pose = Pose { centre: expected.centre + step(self.middle), u: step(self.u), v: step(self.v) };
        Candidate { pose, score: self.rating, source }
    }

    fn near(&self, other: &Self) -> bool {
        let apart = |a: [f64; 2], b: [f64; 2]| (a[0] - b[0]).abs().max((a[1] - b[1]).abs());
        apart(self.middle, other.middle) < 2.0 && apart(self.u, other.u) < 0.2 && apart(self.v, other.v) < 0.2
    }
}

/// Best candidates of a patch, best first, none near a better one, `most` at most.
fn best_places(mut places: Vec<Place>, most: usize) -> Vec<Place> {
    places.sort_by(|a, b| b.rating.total_cmp(&a.rating));
    suppress_non_maxima(places, |one, better| better.near(one), most)
}

/// Score map of a patch: correlation of each corner between places with a template, −1 … 1, (places + 1) a
/// side, row by row. Nearly the same for patterns a few degrees askew.
struct ScoreMap {
    places: usize,
    rating: Vec<f32>,
}

impl ScoreMap {
    fn new(patch: &Patch, mark: PatternTemplate) -> Self {
        let width = patch.width;
        let mut rating = vec![0.0; width * width];
        for y in MARGIN..width.saturating_sub(MARGIN) {
            let row = y * width..(y + 1) * width;
            patch.rate_row(y, mark, &mut rating[row]);
        }
        Self { places: width - 1, rating }
    }

    fn at(&self, x: i64, y: i64) -> f32 {
        let width = self.places + 1;
        match (usize::try_from(x), usize::try_from(y)) {
            (Ok(x), Ok(y)) if x < width && y < width => self.rating[y * width + x],
            _ => 0.0,
        }
    }

    /// Scores of `count` places from (`x`, `y`) to the right.
    ///
    /// None where these are not all in the patch, which is made large enough for all that is asked.
    fn row(&self, x: i64, y: i64, count: i64) -> &[f32] {
        let width = self.places + 1;
        let (Ok(x), Ok(y), Ok(count)) = (usize::try_from(x), usize::try_from(y), usize::try_from(count))
        else {
            return &[];
        };
        let inside = x + count <= width;
        self.rating.get(y * width + x..y * width + x + count).filter(|_| inside).unwrap_or_default()
    }

    /// Flat candidates, best first: three ratings stand as in a code that lies flat.
    fn flat_candidates(&self, reach: f64, effort: &SearchEffort) -> Vec<Place> {
        let per = float(PER_MODULE);
        let reach = i64::try_from(floor_index(reach * per)).unwrap_or(0);
        let middle = self.middle();
        let mut promising: Vec<Place> = Vec::new();
        for degrees in effort.askew {
            let (sin, cos) = degrees.to_radians().sin_cos();
            let corner = |x: f64, y: f64| {
                let (x, y) = (x * FINDER * per, y * FINDER * per);
                [round_signed(x * cos - y * sin), round_signed(x * sin + y * cos)]
            };
            let corners = [corner(-1.0, -1.0), corner(1.0, -1.0), corner(-1.0, 1.0)];
            for y in -reach..=reach {
                let [a, b, c] =
                    corners.map(|[dx, dy]| self.row(middle - reach + dx, middle + y + dy, 2 * reach + 1));
                for (x, ((a, b), c)) in (-reach..).zip(a.iter().zip(b).zip(c)) {
                    let rating = a + b + c;
                    if rating > PROMISING {
                        let middle = [x, y].map(|k| super::place::whole(k) / per);
                        promising.push(Place { rating, middle, u: [cos, sin], v: [-sin, cos] });
                    }
                }
            }
        }
        best_places(promising, effort.closer)
    }

    /// Sheared candidates, best first: three peaks stand as in a code that is seen narrow or sheared.
    fn sheared_candidates(&self, reach: f64) -> Vec<Place> {
        let peaks = self.peaks();
        let mut promising = Vec::new();
        for (corner, c) in &peaks {
            for (right, r) in &peaks {
                let u = [0, 1].map(|k| (r[k] - c[k]) / (2.0 * FINDER));
                if !(0.5..1.25).contains(&u[0].hypot(u[1])) || u[0] < SHEARED * u[1].abs() {
                    continue;
                }
                for (below, b) in &peaks {
                    let v = [0, 1].map(|k| (b[k] - c[k]) / (2.0 * FINDER));
                    if !(0.5..1.25).contains(&v[0].hypot(v[1])) || v[1] < SHEARED * v[0].abs() {
                        continue;
                    }
                    let middle = [0, 1].map(|k| (r[k] + b[k]) / 2.0);
                    if middle[0].abs().max(middle[1].abs()) <= reach {
                        promising.push(Place { rating: corner + right + below, middle, u, v });
                    }
                }
            }
        }
        best_places(promising, BENT)
    }

    /// Highest local maxima within two modules, with their places in modules from the patch's centre.
    fn peaks(&self) -> Vec<(f32, [f64; 2])> {
        let (per, middle) = (float(PER_MODULE), self.middle());
        let last = i64::try_from(self.places).unwrap_or(0);
        let around = || (-4..=4).flat_map(|dy| (-4..=4).map(move |dx| (dx, dy)));
        let mut peaks: Vec<(f32, [f64; 2])> = Vec::new();
        for y in 0..=last {
            for x in 0..=last {
                let rating = self.at(x, y);
                if rating > PEAK && around().all(|(dx, dy)| self.at(x + dx, y + dy) <= rating) {
                    peaks.push((rating, [x, y].map(|k| super::place::whole(k - middle) / per)));
                }
            }
        }
        peaks.sort_by(|a, b| b.0.total_cmp(&a.0));
        peaks.truncate(PEAKS);
        peaks
    }

    fn middle(&self) -> i64 {
        i64::try_from(self.places / 2).unwrap_or(0)
    }
}

/// Width of a patch's edge that is not rated, in places: half the larger template.
const MARGIN: usize = 9;

/// Straightened patch, by its summed-area tables; `width` is the number of corners between places along a side.
struct Patch {
    width: usize,
    sums: SummedArea<Wrapping<i32>>,
}

impl Patch {
    fn new(levels: &[f32], places: usize) -> Self {
        let grey = |level: &f32| Wrapping(i32::from(round_byte(f64::from(*level))));
        let rows = levels.chunks_exact(places).map(|row| row.iter().map(grey));
        Self { width: places + 1, sums: SummedArea::new((places, places), rows) }
    }

    /// Sums over the squares of side `2 * half` about the corners between four places, for a whole row of
    /// corners.
    fn square_sums(&self, sums: &Table<Wrapping<i32>>, y: usize, half: usize) -> impl Iterator<Item = i32> {
        let about = |at: usize| at - half..at + half;
        sums.boxes(about(y), about(MARGIN), self.width - 2 * MARGIN).map(|sum| sum.0)
    }

    /// Rates a row of corners: correlation of what lies about each with a template.
    ///
    /// Rings cover 7 × 7 modules of 196 places, of which 132 are dark; a dot 9 × 9 modules of 324 places, of
    /// which 36 are dark. The first and last [`MARGIN`] ratings are left as they are.
    fn rate_row(&self, y: usize, mark: PatternTemplate, ratings: &mut [f32]) {
        let (half, places) = match mark {
            PatternTemplate::Rings => (7, 132.0_f32),
            PatternTemplate::Dot => (MARGIN, 36.0),
        };
        let all = single(float(4 * half * half));
        let light = all - places;
        let scale = (light * places).sqrt() / all;
        let SummedArea { level, square } = &self.sums;
        let sums = self.square_sums(level, y, half).zip(self.square_sums(square, y, half));
        let inner = self.square_sums(level, y, 3).zip(self.square_sums(level, y, 5));
        for (rating, ((sum, squares), (a3, a5))) in ratings[MARGIN..].iter_mut().zip(sums.zip(inner)) {
            let dark = match mark {
                PatternTemplate::Rings => sum - a5 + a3,
                PatternTemplate::Dot => a3,
            };
            let [sum, squares, dark] = [sum, squares, dark].map(|sum| single(f64::from(sum)));
            let mean = sum / all;
            let power = squares / all - mean * mean;
            let rated = ((sum - dark) / light - dark / places) * scale / power.max(0.5).sqrt();
            *rating = if power < 0.5 { 0.0 } else { rated };
        }
    }
}
