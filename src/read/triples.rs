//! Finder patterns, in triples, become codes.
//!
//! The finder patterns of a version 1 code lie 14 modules apart, and a pattern tells the size of its module. So a
//! pattern's partners are looked for at that distance alone, never by symmetry: on a wall of codes the patterns of
//! neighbours are as symmetrical.
//!
//! ```text
//!      corner ▣────14 u────▣ right        three patterns fit a code in two ways,
//!             │                           as seen and as in a mirror: both are tried
//!           14 v
//!             │
//!       below ▣
//! ```

use std::collections::HashMap;

use rayon::prelude::*;

use super::candidate::{Candidate, Source, suppress_non_maxima};
use super::codebook::Light;
use super::finders::Finder;
use super::identify::{Detection, Identifier};
use super::pose::Pose;
use crate::frame::{PhotoPx, Vector, floor_index, narrow};
use crate::photo::Luma;

/// Distance between the finder patterns of a version 1 code, in modules (ISO/IEC 18004).
const APART: f64 = 14.0;
/// Side of the squares in which patterns are looked up, in pixels.
const BIN: f64 = 64.0;
/// Maximum number of partners tried for one pattern, the nearest to the expected distance first.
const PARTNERS: usize = 8;
/// Maximum number of triples looked at: two for a code, and a made wall of 3,000 squares has 5,828 in all. Hatching and printed
/// rings make any number, most of which are given up at a glance; 20,000 took 6.5 seconds of work.
pub const MOST_TRIPLES: usize = 8_000;
/// Batch size, in triples, between checks of the give-up rule.
const BATCH: usize = 96;
/// Maximum number of unidentified candidates, and how many more for each identified one, before the search gives up: unidentified ones cost
/// most, and what fits best has been seen. Halved, a wall of another event is still known for one.
pub(super) const MOST_NAMELESS: usize = 700;
const NAMELESS_A_NAMED: usize = 4;

/// Every code that three of the patterns make, best first; no two of them on the same place.
#[must_use]
pub fn detect(luma: &Luma, finders: &[Finder], identifier: &Identifier) -> Vec<Detection> {
    verify(luma, (&candidates(finders), MOST_NAMELESS), identifier)
}

/// Codes at these candidates, best candidates first, until more than `most_nameless` had no name; best first, no two of them on
/// the same place.
///
/// Candidates on a code that has a name already are passed over, and once the photo is known to show codes as they are, or as in a
/// mirror, those of the other kind.
#[must_use]
pub(super) fn verify(
    luma: &Luma,
    (candidates, most_nameless): (&[Candidate], usize),
    identifier: &Identifier,
) -> Vec<Detection> {
    let mut found: Vec<Detection> = Vec::new();
    let mut named: Vec<Detection> = Vec::new();
    for batch in candidates.chunks(BATCH) {
        let sided = one_sided(&named);
        let is_answered = |one: &Candidate| {
            sided.is_some_and(|mirrored| one.pose.mirrored() != mirrored)
                || named.iter().any(|code| code.holds(one.pose.centre))
        };
        let seen: Vec<Detection> = batch
            .par_iter()
            .filter(|one| !is_answered(one))
            .filter_map(|one| identifier.identify(luma, one.pose, Light::AsSeen))
            .collect();
        named.extend(seen.iter().filter(|one| one.owner.is_some()));
        found.extend(seen);
        if found.len() > most_nameless + (1 + NAMELESS_A_NAMED) * named.len() {
            break;
        }
    }
    together(found, Vec::new())
}

/// Minimum number of named codes that say whether a photo shows codes as in a mirror.
const SIDED: usize = 3;

/// Whether all codes are seen as in a mirror, or none is; `None` where they do not agree or are too few.
fn one_sided(named: &[Detection]) -> Option<bool> {
    let mirrored = named.iter().filter(|code| code.pose.mirrored()).count();
    (named.len() >= SIDED && (mirrored == 0 || mirrored == named.len())).then_some(mirrored > 0)
}

/// All codes of both, best first; no two of them on the same place.
#[must_use]
pub(super) fn together(mut found: Vec<Detection>, more: Vec<Detection>) -> Vec<Detection> {
    found.extend(more);
    found.sort_by(|a, b| b.rank().total_cmp(&a.rank()));
    suppress_non_maxima(found, |one, better| !one.is_clear_of(better), usize::MAX)
}

/// Candidates from all triples that look like a code's, best fit first, [`MOST_TRIPLES`] at most.
///
/// The score is the misfit, negated: how far the patterns' own widths are from what the pose says, as a sum of logarithms.
#[must_use]
pub fn candidates(finders: &[Finder]) -> Vec<Candidate> {
    let bins = bins(finders);
    let mut triples: Vec<(f64, Pose)> = finders
        .par_iter()
        .flat_map_iter(|corner| {
            let partners = partners(corner, finders, &bins);
            let mut own: Vec<(f64, Pose)> = Vec::new();
            for right in &partners {
                own.extend(partners.iter().filter_map(|below| triple(corner, right, below)));
            }
            own
        })
        .collect();
    triples.sort_by(|a, b| a.0.total_cmp(&b.0));
    triples.truncate(MOST_TRIPLES);
    let candidate = |(misfit, pose)| Candidate { pose, score: -narrow(misfit), source: Source::Crossings };
    triples.into_iter().map(candidate).collect()
}

fn bin(finder: &Finder) -> (usize, usize) {
    (floor_index(finder.centre.x / BIN), floor_index(finder.centre.y / BIN))
}

fn bins(finders: &[Finder]) -> HashMap<(usize, usize), Vec<usize>> {
    let mut bins: HashMap<(usize, usize), Vec<usize>> = HashMap::new();
    for (at, finder) in finders.iter().enumerate() {
        bins.entry(bin(finder)).or_default().push(at);
    }
    bins
}

/// The patterns of like size about 14 modules away.
fn partners<'f>(
    corner: &Finder,
    finders: &'f [Finder],
    bins: &HashMap<(usize, usize), Vec<usize>>,
) -> Vec<&'f Finder> {
    // a line across a turned pattern is up to √2 longer than its side
    let [wide, high] = corner.module;
    let (least, most) = (APART * wide.min(high) * 0.6, APART * wide.max(high) * 1.25);
    let reach = floor_index(most / BIN) + 1;
    let (column, row) = bin(corner);
    let mut partners: Vec<(f64, &Finder)> = Vec::new();
    for r in row.saturating_sub(reach)..=row + reach {
        for c in column.saturating_sub(reach)..=column + reach {
            for at in bins.get(&(c, r)).into_iter().flatten() {
                let other = &finders[*at];
                let step = other.centre - corner.centre;
                let away = step.length().value();
                let alike = |k: usize| (0.6..1.67).contains(&(other.module[k] / corner.module[k]));
                if away > least && away < most && alike(0) && alike(1) {
                    // so much shorter than the lines across it is the side of a square turned like the step
                    let turned = step.x.abs().max(step.y.abs()) / away;
                    partners.push(((away / (APART * turned * (wide + high) / 2.0)).ln().abs(), other));
                }
            }
        }
    }
    partners.sort_by(|a, b| a.0.total_cmp(&b.0));
    partners.into_iter().take(PARTNERS).map(|(_, other)| other).collect()
}

/// Outline of a triple of finder patterns, as seen from the corner between the other two.
pub(super) struct Outline {
    /// Ratio of the longer side to the shorter one.
    pub(super) ratio: f64,
    /// Sine of the angle from the side to the right to the side down; negative in a mirror.
    pub(super) sine: f64,
    /// Width of what spans one step of each side, along a row and along a column, in pixels.
    pub(super) runs: [f64; 2],
}

/// Minimum sine of the angle between a triple's sides: a wall seen from 50 degrees aside, and from above, has 0.65.
pub(super) const UPRIGHT: f64 = 0.6;

impl Outline {
    /// Outline of the sides `u`, to the right, and `v`, down.
    pub(super) fn of(u: Vector<PhotoPx>, v: Vector<PhotoPx>) -> Self {
        let (a, b) = (u.length().value(), v.length().value());
        let (long, short) = (a.max(b), a.min(b));
        let runs = [expected_run([u.x, v.x], [u.y, v.y]), expected_run([u.y, v.y], [u.x, v.x])];
        Self { ratio: long / short, sine: u.cross(v) / (long * short), runs }
    }
}

/// Misfit and pose of a triple; `None` where no view of a square looks so.
fn triple(corner: &Finder, right: &Finder, below: &Finder) -> Option<(f64, Pose)> {
    let u = (right.centre - corner.centre) / APART;
    let v = (below.centre - corner.centre) / APART;
    let Outline { ratio, sine, runs: [wide, high] } = Outline::of(u, v);
    let sine = sine.abs();
    // a line along a row through the pattern is as long as the row's share of the code says
    let [w, h] = corner.module;
    let fits = |found: f64, want: f64| (0.7..1.45).contains(&(found / want));
    let looks = ratio < NARROW && sine > UPRIGHT && fits(w, wide) && fits(h, high);
    looks.then(|| {
        let misfit = (w / wide).ln().abs() + (h / high).ln().abs() + ratio.ln() - sine.ln();
        (misfit, Pose { centre: corner.centre + (u + v) * (APART / 2.0), u, v })
    })
}

/// Maximum ratio of a code's sides: a wall seen from 65 degrees aside has 2.4.
const NARROW: f64 = 2.6;

/// How long a line through the middle of a pattern is in one module's share, along the axis that `along` belongs to:
/// the line leaves the unit square of steps (u, v) where one of its coordinates reaches ½.
fn expected_run(along: [f64; 2], across: [f64; 2]) -> f64 {
    let det = (along[0] * across[1] - along[1] * across[0]).abs();
    det / across[0].abs().max(across[1].abs()).max(f64::MIN_POSITIVE)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::frame::{Point, Vector, float};
    use proptest::prelude::*;

    #[test]
    fn rings_without_end_are_bounded_work() {
        let at = |k: usize| Point::new(28.0 * float(k % 80), 28.0 * float(k / 80));
        let rings: Vec<Finder> =
            (0..6400).map(|k| Finder { centre: at(k), module: [2.0, 2.0], crossings: 9 }).collect();
        assert_eq!(candidates(&rings).len(), MOST_TRIPLES);
        let fit = candidates(&rings[..400]);
        assert!(fit.iter().all(|triple| triple.score > -1e-6) && fit.len() > 400);
    }

    proptest! {
        #[test]
        fn a_line_across_a_turned_pattern_is_as_long_as_geometry_says(turn in -0.78..0.78_f64, size in 1.0..9.0_f64) {
            let side = |x, y| Vector::<crate::frame::PhotoPx>::new(x, y).turned(turn);
            let (u, v) = (side(size, 0.0), side(0.0, size));
            let run = expected_run([u.x, v.x], [u.y, v.y]);
            prop_assert!((run - size / turn.cos()).abs() < 1e-9);
        }
    }
}
