//! One side of a sheet, fitted to an edge in the photo.
//!
//! ```text
//!       ┆    ┆    ┆    ┆         profiles across the side, from inside outwards; where paper ends it gets darker
//!   ────┼────┼─×──┼────┼────     × what else gets darker: the frame of a drawing
//!       ×    ×    ×    ×         the line that most profiles agree on; of several the outermost
//! ```

use image::{GrayImage, RgbImage};

use crate::frame::{float, floor_index};

/// Number of profiles along a side, and the part at either end that has none: corners curl.
const PROFILES: usize = 64;
const END: f64 = 0.03;
/// How far a profile reaches to either side, in parts of the side, and at least in pixels: first from an area's hull, then from a line.
const REACH: [f64; 2] = [0.07, 0.02];
const LEAST_REACH_PX: f64 = 6.0;
/// Step along a profile, in pixels.
const STEP_PX: f64 = 0.5;
/// Least change of level over two pixels that counts as an edge, and its least part of the profile's strongest.
const LEAST_CHANGE: f64 = 5.0;
const LEAST_PART: f64 = 0.3;
/// Largest distance of an edge to the line that it supports, in pixels.
const ON_LINE_PX: f64 = 1.5;
/// Edges a profile that lines are drawn through, the strongest.
const EDGES: usize = 4;
/// Part of the largest number of edges that a line further out needs to be taken.
const NEARLY: f64 = 0.85;
/// Least part of the profiles that make a line.
const LEAST_SUPPORT: f64 = 0.1;
/// How far inside its sheet's edge a drawing's frame is at least, in parts of the side.
const FRAME: f64 = 0.008;
/// How far inside the side the sheet is looked at, in pixels.
const INSIDE_PX: f64 = 6.0;

/// A side that was fitted.
pub(super) struct Side {
    /// Two points of its line.
    pub line: ([f64; 2], [f64; 2]),
    /// Part of its profiles that have an edge on the line, 0 … 1.
    pub support: f64,
    /// Median whiteness just inside.
    pub white: f64,
}

/// Edges across one profile: place along the side, 0 … 1, and for each edge how far outside it is, in pixels, and how strong.
struct Profile {
    along: f64,
    edges: Vec<(f64, f64)>,
}

/// A line that profiles agree on: how far outside the side's start it begins, in pixels, how much further out it ends.
#[derive(Copy, Clone)]
struct Line {
    offset: f64,
    slope: f64,
    /// Part of the profiles that have an edge on it, 0 … 1.
    support: f64,
    /// Sum of these edges' strength.
    strength: f64,
}

impl Line {
    /// How far outside its middle is, in pixels.
    fn out(&self) -> f64 {
        self.offset + self.slope / 2.0
    }
}

/// Fits the side from `a` to `b` of a sheet whose corners go clockwise as seen. `None` where there is no edge.
pub(super) fn fitted(
    photo: &RgbImage,
    white: &GrayImage,
    a: [f64; 2],
    b: [f64; 2],
    pass: usize,
) -> Option<Side> {
    let along = [b[0] - a[0], b[1] - a[1]];
    let length = along[0].hypot(along[1]);
    if length < 16.0 {
        return None;
    }
    let outwards = [along[1] / length, -along[0] / length];
    let reach = (REACH[pass.min(1)] * length).max(LEAST_REACH_PX);
    let at =
        |t: f64, out: f64| [a[0] + t * along[0] + out * outwards[0], a[1] + t * along[1] + out * outwards[1]];
    let places = (0..PROFILES).map(|i| END + (1.0 - 2.0 * END) * float(i) / float(PROFILES - 1));
    let darker = |p: [f64; 2], q: [f64; 2]| level(white, p).zip(level(white, q)).map(|(p, q)| p - q);
    let other = |p: [f64; 2], q: [f64; 2]| colour(photo, p).zip(colour(photo, q)).map(|(p, q)| apart(p, q));
    let profile = |change: &dyn Fn([f64; 2], [f64; 2]) -> Option<f64>, t: f64| Profile {
        along: t,
        edges: edges(reach, |out| change(at(t, out - 1.0), at(t, out + 1.0))),
    };
    // a sheet is whiter than what it lies on, but for what is drawn up to its edge
    let of = |change: &dyn Fn([f64; 2], [f64; 2]) -> Option<f64>| {
        line(&places.clone().map(|t| profile(change, t)).collect::<Vec<_>>(), FRAME * length)
    };
    let (by_white, by_any) = (of(&darker), of(&other));
    let lines: Vec<Line> = [by_white, by_any].into_iter().flatten().collect();
    let Line { offset, slope, support, .. } = outermost(&lines, FRAME * length)?;
    let mut inside: Vec<f64> =
        places.filter_map(|t| level(white, at(t, offset + slope * t - INSIDE_PX))).collect();
    inside.sort_by(f64::total_cmp);
    let white = inside.get(inside.len() / 2).copied().unwrap_or(0.0);
    Some(Side { line: (at(0.0, offset), at(1.0, offset + slope)), support, white })
}

/// The strongest changes on a profile: how far outside each is, and how strong.
fn edges(reach: f64, change: impl Fn(f64) -> Option<f64>) -> Vec<(f64, f64)> {
    let count = floor_index(2.0 * reach / STEP_PX) + 1;
    let out = |i: usize| -reach + float(i) * STEP_PX;
    let changes: Vec<f64> = (0..count).map(|i| change(out(i)).unwrap_or(0.0)).collect();
    let largest = changes.iter().copied().fold(0.0, f64::max);
    let least = (LEAST_PART * largest).max(LEAST_CHANGE);
    let mut peaks: Vec<(f64, f64)> = changes
        .windows(3)
        .enumerate()
        .filter(|(_, own)| own[1] >= least && own[1] >= own[0] && own[1] > own[2])
        .map(|(i, own)| {
            // vertex of the parabola through the three
            let bend = own[0] - 2.0 * own[1] + own[2];
            let shift = if bend < 0.0 { 0.5 * (own[0] - own[2]) / bend } else { 0.0 };
            (out(i + 1) + shift * STEP_PX, own[1])
        })
        .collect();
    peaks.sort_by(|a, b| b.1.total_cmp(&a.1));
    peaks.truncate(EDGES);
    peaks
}

/// The line that most profiles have an edge on, of nearly as many the outermost.
fn line(profiles: &[Profile], near: f64) -> Option<Line> {
    let third = profiles.len() / 3;
    let (first, last) = (&profiles[..third], &profiles[profiles.len() - third..]);
    let mut lines: Vec<Line> = Vec::new();
    for start in first.iter().step_by(2) {
        for end in last.iter().step_by(2) {
            for ((from, _), (to, _)) in
                start.edges.iter().flat_map(|from| end.edges.iter().map(move |to| (*from, *to)))
            {
                let slope = (to - from) / (end.along - start.along);
                lines.push(supported(profiles, from - slope * start.along, slope));
            }
        }
    }
    let best = outermost(&lines, near)?;
    let on: Vec<(f64, f64)> =
        on_line(profiles, best.offset, best.slope).map(|(along, out, _)| (along, out)).collect();
    let (offset, slope) = regression(&on)?;
    Some(supported(profiles, offset, slope))
}

/// Of the lines with nearly as much support as any the outermost; of those that lie about as far outside the one on the strongest edges: a
/// sheet's own shadow has a weaker one beside it.
fn outermost(lines: &[Line], near: f64) -> Option<Line> {
    let most = lines.iter().map(|line| line.support).fold(0.0, f64::max);
    let enough = |line: &&Line| line.support >= NEARLY * most && line.support > LEAST_SUPPORT;
    let out = lines.iter().filter(enough).map(Line::out).fold(f64::NEG_INFINITY, f64::max);
    let outer = lines.iter().filter(enough).filter(|line| line.out() >= out - near);
    outer.copied().max_by(|a, b| a.strength.total_cmp(&b.strength))
}

/// A line with what supports it.
fn supported(profiles: &[Profile], offset: f64, slope: f64) -> Line {
    let strengths = on_line(profiles, offset, slope).map(|(.., strength)| strength);
    let (count, strength) = strengths.fold((0, 0.0), |(count, sum), strength| (count + 1, sum + strength));
    Line { offset, slope, support: float(count) / float(profiles.len()), strength }
}

/// Edges on a line, one a profile: place along the side, how far outside, how strong.
fn on_line(profiles: &[Profile], offset: f64, slope: f64) -> impl Iterator<Item = (f64, f64, f64)> + '_ {
    profiles.iter().filter_map(move |own| {
        let there = offset + slope * own.along;
        let off = |edge: &(f64, f64)| (edge.0 - there).abs();
        let (out, strength) = own.edges.iter().copied().min_by(|a, b| off(a).total_cmp(&off(b)))?;
        ((out - there).abs() <= ON_LINE_PX).then_some((own.along, out, strength))
    })
}

/// Offset and slope of the line of least squares.
fn regression(points: &[(f64, f64)]) -> Option<(f64, f64)> {
    let count = float(points.len());
    let (x, y) = points.iter().fold((0.0, 0.0), |(x, y), own| (x + own.0 / count, y + own.1 / count));
    let (xx, xy) = points
        .iter()
        .fold((0.0, 0.0), |(xx, xy), own| (xx + (own.0 - x) * (own.0 - x), xy + (own.0 - x) * (own.1 - y)));
    (xx > 0.0).then(|| (y - xy / xx * x, xy / xx))
}

/// Four pixels: top left, top right, below them.
type Pixels = [(u32, u32); 4];

/// The four pixels around a place, and where it lies between them; `None` beyond the picture.
fn around([x, y]: [f64; 2], (width, height): (u32, u32)) -> Option<(Pixels, [f64; 2])> {
    let (x, y) = (x - 0.5, y - 0.5);
    if x < 0.0 || y < 0.0 {
        return None;
    }
    let (i, j) = (u32::try_from(floor_index(x)).ok()?, u32::try_from(floor_index(y)).ok()?);
    let fits = i + 1 < width && j + 1 < height;
    let part = [x - f64::from(i), y - f64::from(j)];
    fits.then_some(([(i, j), (i + 1, j), (i, j + 1), (i + 1, j + 1)], part))
}

fn mixed([a, b, c, d]: [f64; 4], [x, y]: [f64; 2]) -> f64 {
    (a + (b - a) * x) * (1.0 - y) + (c + (d - c) * x) * y
}

fn level(plane: &GrayImage, at: [f64; 2]) -> Option<f64> {
    let (pixels, part) = around(at, plane.dimensions())?;
    Some(mixed(pixels.map(|(x, y)| f64::from(plane.get_pixel(x, y).0[0])), part))
}

fn colour(photo: &RgbImage, at: [f64; 2]) -> Option<[f64; 3]> {
    let (pixels, part) = around(at, photo.dimensions())?;
    Some(
        [0, 1, 2]
            .map(|channel| mixed(pixels.map(|(x, y)| f64::from(photo.get_pixel(x, y).0[channel])), part)),
    )
}

fn apart(one: [f64; 3], other: [f64; 3]) -> f64 {
    one.into_iter().zip(other).map(|(a, b)| (a - b).abs()).fold(0.0, f64::max)
}
