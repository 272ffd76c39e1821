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

use super::book::Light;
use super::finders::Finder;
use super::identify::{Found, Identifier};
use super::pose::Pose;
use crate::frame::floor_index;
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
const BATCH: usize = 256;
/// Maximum number of unidentified candidates, and how many more for each identified one, before the search gives up: unidentified ones cost
/// most, and what fits best has been seen. Halved, a wall of another event is still known for one.
const MOST_NAMELESS: usize = 700;
const NAMELESS_A_NAMED: usize = 4;

/// Three patterns that may be those of a code: the pose they make, and how far that is from what the patterns' own widths
/// say, as a sum of logarithms.
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct Triple {
    pose: Pose,
    misfit: f64,
}

/// Every code that three of the patterns make, best first; no two of them on the same place.
#[must_use]
pub fn group(luma: &Luma, finders: &[Finder], identifier: &Identifier<'_>) -> Vec<Found> {
    let poses: Vec<Pose> = triples(finders).iter().map(|triple| triple.pose).collect();
    looked_at(luma, (&poses, MOST_NAMELESS), identifier)
}

/// Every code at one of these rough poses, the likeliest of which come first, until so many were seen that have no name; best
/// first, no two of them on the same place.
#[must_use]
pub(super) fn looked_at(
    luma: &Luma,
    (poses, most_nameless): (&[Pose], usize),
    identifier: &Identifier<'_>,
) -> Vec<Found> {
    let mut found = Vec::new();
    let (mut named, mut nameless) = (0, 0);
    for batch in poses.chunks(BATCH) {
        let seen: Vec<Found> =
            batch.par_iter().filter_map(|pose| identifier.identify(luma, *pose, Light::AsSeen)).collect();
        named += seen.iter().filter(|one| one.whose.is_some()).count();
        nameless += seen.iter().filter(|one| one.whose.is_none()).count();
        found.extend(seen);
        if nameless > most_nameless + NAMELESS_A_NAMED * named {
            break;
        }
    }
    together(found, Vec::new())
}

/// All codes of both, best first; no two of them on the same place.
#[must_use]
pub(super) fn together(mut found: Vec<Found>, more: Vec<Found>) -> Vec<Found> {
    found.extend(more);
    found.sort_by(|a, b| b.rank().total_cmp(&a.rank()));
    apart(found)
}

/// All triples that look like a code's, best fit first, [`MOST_TRIPLES`] at most.
#[must_use]
pub fn triples(finders: &[Finder]) -> Vec<Triple> {
    let bins = bins(finders);
    let mut triples: Vec<Triple> = finders
        .par_iter()
        .flat_map_iter(|corner| {
            let partners = partners(corner, finders, &bins);
            let mut own: Vec<Triple> = Vec::new();
            for right in &partners {
                own.extend(partners.iter().filter_map(|below| triple(corner, right, below)));
            }
            own
        })
        .collect();
    triples.sort_by(|a, b| a.misfit.total_cmp(&b.misfit));
    triples.truncate(MOST_TRIPLES);
    triples
}

/// Keeps the first of those that share a place.
fn apart(found: Vec<Found>) -> Vec<Found> {
    let mut kept: Vec<Found> = Vec::new();
    for one in found {
        if kept.iter().all(|other| one.is_clear_of(other)) {
            kept.push(one);
        }
    }
    kept
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

/// The pose that three patterns make; `None` where no view of a square looks so.
fn triple(corner: &Finder, right: &Finder, below: &Finder) -> Option<Triple> {
    let u = (right.centre - corner.centre) / APART;
    let v = (below.centre - corner.centre) / APART;
    let (long, short) =
        (u.length().value().max(v.length().value()), u.length().value().min(v.length().value()));
    let sine = u.cross(v).abs() / (long * short);
    // a line along a row through the pattern is as long as the row's share of the code says
    let wide = expected_run([u.x, v.x], [u.y, v.y]);
    let high = expected_run([u.y, v.y], [u.x, v.x]);
    let [w, h] = corner.module;
    let fits = |found: f64, want: f64| (0.7..1.45).contains(&(found / want));
    let looks = long < 2.6 * short && sine > 0.6 && fits(w, wide) && fits(h, high);
    looks.then(|| Triple {
        pose: Pose { centre: corner.centre + (u + v) * (APART / 2.0), u, v },
        misfit: (w / wide).ln().abs() + (h / high).ln().abs() + (long / short).ln() - sine.ln(),
    })
}

/// How long a line through the middle of a pattern is in one module's share, along the axis that `along` belongs to:
/// the line leaves the unit square of steps (u, v) where one of its coordinates reaches ½.
pub(super) fn expected_run(along: [f64; 2], across: [f64; 2]) -> f64 {
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
        assert_eq!(triples(&rings).len(), MOST_TRIPLES);
        let fit = triples(&rings[..400]);
        assert!(fit.iter().all(|triple| triple.misfit < 1e-6) && fit.len() > 400);
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
