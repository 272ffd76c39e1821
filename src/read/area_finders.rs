//! Candidates by area: codes too small or too blurred for a line to cross the five edges of a finder pattern.
//!
//! Where modules are little larger than the blur, a line through a pattern no longer crosses the
//! widths 1:1:3:1:1. What is left shows over areas: at every pixel the sums over three squares about it, from a summed-area
//! table, give the correlation with a finder pattern's rings, in standard deviations of noise.
//!
//! ```text
//!   ┌───────────────┐   outer   7 modules     dark:  outer − middle, and inner
//!   │ ┌───────────┐ │   middle  5 modules     light: middle − inner
//!   │ │   ┌───┐   │ │   inner   3 modules
//!   │ │   └───┘   │ │
//!   └───────────────┘   sides are odd numbers of pixels: a table of sums gives each square in four look-ups
//! ```
//!
//! One pattern alone drowns among all else that is rated high. So every place of the photo is taken for the
//! centre of a code, in many sizes and directions, and the best three ratings of its four corners are added
//! up:
//!
//! ```text
//!   ▣───────▣      the fourth, worst corner says how the code is turned; a code in a mirror has the same three
//!   │   ·   │
//!   ▣───────╳
//! ```
//!
//! That takes a second or two, so it is done only where crossings lead nowhere.

use std::cmp::Reverse;
use std::collections::HashMap;
use std::num::Wrapping;
use std::ops::Range;

use rayon::prelude::*;

use super::candidate::{Candidate, Source, rank_by_template};
use super::identify::Identifier;
use super::pose::Pose;
use super::summed_area::{SummedArea, Table};
use crate::frame::{PhotoPx, Point, Vector, float, floor_index, narrow, round_signed};
use crate::photo::Luma;

/// Half sides of the three squares, in pixels without the central one, and the side of a module that they
/// stand for, in pixels.
const RINGS: [([usize; 3], f64); 5] =
    [([1, 2, 3], 1.0), ([1, 3, 4], 1.3), ([2, 3, 5], 1.5), ([2, 4, 6], 1.85), ([2, 5, 7], 2.1)];
/// Candidate sides of a module, across and down, in pixels: each an eighth larger than the one before.
const SIDES: [f64; 8] = [1.0, 1.12, 1.26, 1.41, 1.58, 1.77, 1.99, 2.22];
/// Maximum difference between a module's two sides, in steps of [`SIDES`]: a wall seen from aside is narrower
/// than high.
const NARROWER: usize = 2;
/// Directions of a code that are tried, in degrees from the photo's own. A hand holds a phone straighter than
/// the last.
const DIRECTIONS: [f64; 9] = [0.0, -3.0, 3.0, -6.0, 6.0, -9.0, 9.0, -12.0, 12.0];
/// Directions of a code's rows and of its columns that are tried where a board stands at an angle to the camera, in degrees from the
/// photo's own: seen from above or below, its rows slant while its columns stay upright.
const SLANTING: ([f64; 4], [f64; 3]) = ([-7.0, 7.0, -14.0, 14.0], [0.0, -4.0, 4.0]);
/// Distance from a code's centre to that of a finder pattern along both axes, in modules.
const FINDER: f64 = 7.0;
/// Maximum distance of a pattern's centre from its code's along both axes, in pixels: 7 modules of 2.22 px,
/// 12 degrees askew.
const FAR: usize = 20;
/// Width of the photo's edge that is left out, in pixels: [`FAR`], and half a pattern.
const MARGIN: usize = FAR + 8;
/// Number of rows in a strip, the unit of parallel work.
const STRIP: usize = 128;
/// Minimum contrast of a pattern, in grey levels, and minimum variance about it, in their squares: what is
/// flatter is noise.
const SPREAD: f32 = 6.0;
/// Rating steps for one standard deviation of noise; with 4, the sum of three ratings fits in a byte. A clean
/// pattern of 2.1 px modules has 9 deviations.
const LEVELS: f32 = 4.0;
/// Minimum sum of three ratings for a candidate: patterns at the edge of what can be named have 4 deviations
/// each.
pub(super) const LEAST: u8 = 36;
/// Maximum number of candidates compared with the shared part, those rated highest: a photo of drawings has
/// 100,000.
const PLACES: usize = 200_000;
/// Side of the areas, in pixels, of which only [`AN_AREA`] poses are kept: hatching makes any number.
const AREA: f64 = 128.0;
/// Maximum number of poses kept in an area, those likeliest.
const AN_AREA: usize = 20;
/// Maximum number of poses kept in all, before each is doubled by its mirror image.
const MOST: usize = 1200;
/// Maximum number of unidentified candidates before this search gives up.
pub(super) const MOST_NAMELESS: usize = 200;

/// How codes are seen.
#[derive(Copy, Clone, Debug, PartialEq, Eq)]
pub(super) enum Seen {
    /// With rows and columns at a right angle, nearly: from straight ahead, or from aside at the height of one's eyes.
    Square,
    /// With rows that slant: from aside and from above or below.
    Slanting,
}

/// Candidates with a sum of three ratings of at least `least`, likeliest first; each as seen, then mirrored.
#[must_use]
pub(super) fn find(luma: &Luma, identifier: &Identifier, least: u8) -> Vec<Candidate> {
    find_outside(luma, identifier, (least, Seen::Square), &[])
}

/// The same where no paper lies whose square was read already; `papers` are their corners, in order around each.
#[must_use]
pub(super) fn find_outside(
    luma: &Luma,
    identifier: &Identifier,
    (least, seen): (u8, Seen),
    papers: &[[Point<PhotoPx>; 4]],
) -> Vec<Candidate> {
    if luma.width <= 2 * MARGIN || luma.height <= 2 * MARGIN {
        return Vec::new();
    }
    let tops: Vec<usize> = (MARGIN..luma.height - MARGIN).step_by(STRIP).collect();
    let shapes = shapes(seen);
    let mut places: Vec<Place> =
        tops.par_iter().flat_map_iter(|top| Strip::new(luma, *top).places(&shapes, least)).collect();
    places.retain(|place| !papers.iter().any(|paper| place.centre().is_within(paper)));
    if places.len() > PLACES {
        places.sort_by_key(|place| Reverse(place.rating));
        places.truncate(PLACES);
    }
    let candidates = places.iter().map(Place::candidate).collect();
    let ranked = rank_by_template(luma, identifier, (candidates, Pose::px_per_module), usize::MAX);
    best_of_areas(ranked).into_iter().take(MOST).flat_map(|one| [one, one.mirrored()]).collect()
}

/// Candidates kept in each area: its first [`AN_AREA`].
fn best_of_areas(mut candidates: Vec<Candidate>) -> Vec<Candidate> {
    let mut areas: HashMap<[usize; 2], usize> = HashMap::new();
    candidates.retain(|one| {
        let area = [one.pose.centre.x, one.pose.centre.y].map(|at| floor_index(at / AREA));
        let count = areas.entry(area).or_default();
        *count += 1;
        *count <= AN_AREA
    });
    candidates
}

/// One size and direction of a code: offsets of the four corners' patterns from its centre, in pixels,
/// clockwise from the top left, and the index of the rings that suit it.
struct Shape {
    rings: usize,
    corners: [[i64; 2]; 4],
}

fn shapes(seen: Seen) -> Vec<Shape> {
    let directions: Vec<[f64; 2]> = match seen {
        Seen::Square => DIRECTIONS.map(|degrees| [degrees; 2]).into(),
        Seen::Slanting => {
            let (rows, columns) = SLANTING;
            rows.iter().flat_map(|row| columns.map(|column| [*row, column])).collect()
        }
    };
    let mut shapes = Vec::new();
    for (i, wide) in SIDES.iter().enumerate() {
        for (j, high) in SIDES.iter().enumerate() {
            if i.abs_diff(j) > NARROWER {
                continue;
            }
            let side = (wide * high).sqrt();
            let away = |rings: &usize| (RINGS[*rings].1 / side).ln().abs();
            let rings = (0..RINGS.len()).min_by(|a, b| away(a).total_cmp(&away(b))).unwrap_or(0);
            for [row, column] in &directions {
                let u = Vector::<PhotoPx>::new(wide * FINDER, 0.0).turned(row.to_radians());
                let v = Vector::<PhotoPx>::new(0.0, high * FINDER).turned(column.to_radians());
                let corner = |at: Vector<PhotoPx>| [round_signed(at.x), round_signed(at.y)];
                let corners = [corner(-u - v), corner(u - v), corner(u + v), corner(v - u)];
                shapes.push(Shape { rings, corners });
            }
        }
    }
    shapes
}

/// Candidate: the centres of its four corners, clockwise from the top left, and the index of the one without
/// a pattern.
struct Place {
    rating: u8,
    corners: [Point<PhotoPx>; 4],
    without: usize,
}

impl Place {
    fn centre(&self) -> Point<PhotoPx> {
        self.corners[0].towards(self.corners[2], 0.5)
    }

    /// The code with its patterns there, not mirrored.
    fn candidate(&self) -> Candidate {
        let corner = |k: usize| self.corners[(self.without + k) % 4];
        let (right, first, below) = (corner(3), corner(2), corner(1));
        let [u, v] = [right, below].map(|p| (p - first) / (2.0 * FINDER));
        let pose = Pose { centre: right.towards(below, 0.5), u, v };
        Candidate { pose, score: f32::from(self.rating), source: Source::Areas }
    }
}

/// Strip of rows of the photo with the ratings of each pixel as the centre of a pattern, rows × width for
/// each ring size.
struct Strip {
    /// Row and column of the photo at which the ratings begin.
    top: usize,
    left: usize,
    width: usize,
    rows: usize,
    ratings: [Vec<u8>; RINGS.len()],
}

impl Strip {
    fn new(luma: &Luma, top: usize) -> Self {
        let first = top - MARGIN;
        let rows = (STRIP + 2 * MARGIN).min(luma.height - first);
        let columns = not_black(luma, first..first + rows);
        let lines = Rows::new(luma, (columns.clone(), first..first + rows));
        let ratings = RINGS.map(|(halves, _)| lines.rated(halves));
        Self { top: first, left: columns.start, width: columns.len(), rows, ratings }
    }

    fn at(&self, rings: usize, x: usize, y: usize) -> u8 {
        self.ratings[rings].get(y * self.width + x).copied().unwrap_or(0)
    }

    /// Candidates in the strip's own rows: local maxima of the rating, from `least` on.
    fn places(&self, shapes: &[Shape], least: u8) -> Vec<Place> {
        let (from, to) = (MARGIN, self.rows.saturating_sub(MARGIN));
        // a row more at either end, so that what stands above its neighbours does so across strips
        let best: Vec<Vec<u8>> = (from - 1..to + 1).map(|y| self.row(y, shapes)).collect();
        let mut places = Vec::new();
        for y in 1..best.len() - 1 {
            for (x, rating) in best[y].iter().enumerate().filter(|(_, rating)| **rating >= least) {
                let around = x.saturating_sub(1)..(x + 2).min(best[y].len());
                let highest = best[y - 1..y + 2].iter().flat_map(|row| &row[around.clone()]).max();
                if highest == Some(rating) {
                    let (x, y) = (x + FAR, from + y - 1);
                    let shape = shapes.iter().find(|shape| self.three(shape, x, y) == *rating);
                    places.extend(shape.map(|shape| self.place(*rating, shape, x, y)));
                }
            }
        }
        places
    }

    /// Rating of each place of a row, from [`FAR`] pixels from the left on: the sum of the best three
    /// corners, in the shape that suits it best.
    fn row(&self, y: usize, shapes: &[Shape]) -> Vec<u8> {
        let count = self.width - 2 * FAR;
        let mut best = vec![0; count];
        for shape in shapes {
            let [a, b, c, d] = shape.corners.map(|[dx, dy]| self.moved(shape.rings, y, dx, dy, count));
            let corners = a.iter().zip(b).zip(c).zip(d);
            for (rating, (((a, b), c), d)) in best.iter_mut().zip(corners) {
                *rating = three(*a, *b, *c, *d).max(*rating);
            }
        }
        best
    }

    /// Rating of one place in one shape: the sum of the best three corners.
    fn three(&self, shape: &Shape, x: usize, y: usize) -> u8 {
        let [a, b, c, d] = shape.corners.map(|[dx, dy]| {
            let one = self.moved(shape.rings, y, dx + whole(x) - whole(FAR), dy, 1);
            one.first().copied().unwrap_or(0)
        });
        three(a, b, c, d)
    }

    /// Scores of `count` pixels from [`FAR`] on along row `y`, shifted by (`dx`, `dy`).
    fn moved(&self, rings: usize, y: usize, dx: i64, dy: i64, count: usize) -> &[u8] {
        let (x, y) = (usize::try_from(whole(FAR) + dx), usize::try_from(whole(y) + dy));
        let at = y.unwrap_or(0) * self.width + x.unwrap_or(0);
        self.ratings[rings].get(at..at + count).unwrap_or_default()
    }

    /// Candidate at a place, each corner moved to the highest rating within a pixel.
    fn place(&self, rating: u8, shape: &Shape, x: usize, y: usize) -> Place {
        let seen = shape.corners.map(|[dx, dy]| {
            let near = (-1..=1).flat_map(|down| (-1..=1).map(move |right| [right, down]));
            let rated = near.filter_map(|[right, down]| {
                let (x, y) = (whole(x) + dx + right, whole(y) + dy + down);
                let (x, y) = (usize::try_from(x).ok()?, usize::try_from(y).ok()?);
                Some((self.at(shape.rings, x, y), (x, y)))
            });
            rated.max_by_key(|(rating, _)| *rating).unwrap_or((0, (x, y)))
        });
        let without = (0..4).min_by_key(|k| seen[*k].0).unwrap_or(2);
        let corner = |(x, y)| Point::new(float(self.left + x) + 0.5, float(self.top + y) + 0.5);
        let corners = seen.map(|(_, at)| corner(at));
        Place { rating, corners, without }
    }
}

/// Sum of the best three of four ratings, each at most 63.
fn three(a: u8, b: u8, c: u8, d: u8) -> u8 {
    a + b + c + d - a.min(b).min(c.min(d))
}

fn whole(n: usize) -> i64 {
    i64::try_from(n).unwrap_or(i64::MAX)
}

/// Columns of some rows between those that are black from the photo's left edge, and from its right edge, with a margin: a photo that was
/// turned has nothing there.
fn not_black(luma: &Luma, rows: Range<usize>) -> Range<usize> {
    let (mut from, mut to) = (luma.width, 0);
    for line in rows.map(|row| &luma.grey[row * luma.width..][..luma.width]) {
        let lit = |grey: &u8| *grey > 0;
        from = line[..from].iter().position(lit).unwrap_or(from);
        to = line[to..].iter().rposition(lit).map_or(to, |at| to + at + 1);
    }
    if from >= to {
        return 0..(2 * MARGIN + 1).min(luma.width);
    }
    let (from, to) = (from.saturating_sub(MARGIN), (to + MARGIN).min(luma.width));
    // never narrower than what a pattern is looked for in
    let to = to.max(from + 2 * MARGIN + 1).min(luma.width);
    to.saturating_sub(2 * MARGIN + 1).min(from)..to
}

/// Rows of the photo, by their summed-area tables.
struct Rows {
    width: usize,
    rows: usize,
    sums: SummedArea<Wrapping<i32>>,
}

impl Rows {
    fn new(luma: &Luma, (columns, rows): (Range<usize>, Range<usize>)) -> Self {
        let (width, count) = (columns.len(), rows.len());
        let lines = rows.map(|row| &luma.grey[row * luma.width..][columns.clone()]);
        let lines = lines.map(|line| line.iter().map(|grey| Wrapping(i32::from(*grey))));
        Self { width, rows: count, sums: SummedArea::new((width, count), lines) }
    }

    /// Scores of all pixels, rows × width; 0 at the edge.
    fn rated(&self, halves: [usize; 3]) -> Vec<u8> {
        let width = self.width;
        let mut ratings = vec![0; width * self.rows];
        let edge = halves[2];
        for y in edge..self.rows - edge {
            self.rate_row(y, halves, &mut ratings[y * width + edge..(y + 1) * width - edge]);
        }
        ratings
    }

    /// Sums over the squares of half side `half` about a row's pixels, from `edge` pixels from the left on.
    fn squares(
        &self,
        of: &Table<Wrapping<i32>>,
        y: usize,
        half: usize,
        edge: usize,
    ) -> impl Iterator<Item = f32> {
        let about = |at: usize| at - half..at + half + 1;
        of.boxes(about(y), about(edge), self.width - 2 * edge).map(|sum| level(sum.0))
    }

    fn rate_row(&self, y: usize, halves: [usize; 3], ratings: &mut [u8]) {
        let edge = halves[2];
        let [few, more, all] = halves.map(|half| narrow(float((2 * half + 1).pow(2))));
        let light = more - few;
        let dark = all - light;
        // correlation is step · √(light · dark) / all / spread; noise alone reaches 1 / √all of it
        let scale = LEVELS * (light * dark).sqrt() / all * all.sqrt();
        let [inner, middle, outer] = halves.map(|half| self.squares(&self.sums.level, y, half, edge));
        let squares = self.squares(&self.sums.square, y, edge, edge);
        let seen = inner.zip(middle).zip(outer.zip(squares));
        for (rating, ((inner, middle), (outer, squares))) in ratings.iter_mut().zip(seen) {
            let step = (middle - inner) / light - (outer - middle + inner) / dark;
            let power = squares / all - (outer / all) * (outer / all);
            let rated = step * scale / power.max(SPREAD).sqrt();
            let rated = if step > SPREAD { rated.clamp(0.0, 63.0) } else { 0.0 };
            // a whole number of 0 … 63 lies in the lowest byte of one that was moved to 2²³
            *rating = (rated + 8_388_608.0).to_bits().to_le_bytes()[0];
        }
    }
}

/// Sum over at most 225 levels or their squares as a real number: below 2²⁴, so nothing is lost.
fn level(sum: i32) -> f32 {
    narrow(f64::from(sum))
}

#[cfg(test)]
mod tests {
    use super::super::paint::{event, paint, pose};
    use super::*;

    #[test]
    fn small_codes_are_among_the_places() {
        let event = event("K7M");
        let identifier = Identifier::new(&event);
        let squares = &event.squares;
        for (at, px, degrees) in
            [(3, 1.2, 4.0), (20, 1.4, -7.0), (41, 1.6, 2.0), (60, 2.0, 184.0), (7, 1.5, 95.0)]
        {
            let truth = pose(60.3, 60.6, px, degrees);
            let luma = paint(120, 120, &[(truth, squares[at].modules.clone())]);
            let found = find(&luma, &identifier, LEAST);
            let near = found.iter().map(|Candidate { pose, .. }| {
                let turned = (pose.u - truth.u).length().value() + (pose.v - truth.v).length().value();
                pose.centre.distance(truth.centre).value() / px + turned * FINDER
            });
            let best = near.fold(f64::INFINITY, f64::min);
            assert!(best < 4.0, "{px} px, {degrees} degrees: {best} modules");
        }
    }

    #[test]
    fn a_flat_picture_and_a_tiny_one_hold_none() {
        let identifier = Identifier::new(&event("K7M"));
        for (width, height) in [(0, 0), (20, 20), (56, 200), (300, 200)] {
            assert!(
                find(&Luma { width, height, grey: vec![90; width * height] }, &identifier, LEAST).is_empty()
            );
        }
    }

    #[test]
    fn what_is_black_to_the_edge_is_left_out_with_a_margin() {
        let (width, rows) = (400, 200);
        let lit = |from: usize, to: usize| {
            let grey =
                (0..width * rows).map(|i| if (from..to).contains(&(i % width)) { 90 } else { 0 }).collect();
            not_black(&Luma { width, height: rows, grey }, 0..rows)
        };
        assert_eq!(lit(0, 400), 0..400);
        assert_eq!(lit(100, 300), 100 - MARGIN..300 + MARGIN);
        assert_eq!(lit(10, 390), 0..400);
        assert!(lit(0, 0).len() > 2 * MARGIN, "all black: as much as is looked at at least");
        for at in [0, 200, 399] {
            assert!(lit(at, at + 1).contains(&at) && lit(at, at + 1).len() > 2 * MARGIN);
        }
    }
}
