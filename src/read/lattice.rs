//! Lattice of cells from the codes alone, without a card.
//!
//! A code tells where its square's middle lies and which way its sides run, so it tells where its four
//! neighbours hang. What the codes *say* does not count: every square may hang in another's place. Turned
//! squares are no matter either, a square is square.

use std::collections::{BTreeMap, VecDeque};

use super::identify::Detection;
use super::place::{Layout, Site, whole};
use super::pose::Pose;
use crate::frame::{PhotoPx, Vector};
use crate::plan::Turn;

/// Maximum distance of a neighbour from where it is expected, in sides of a square.
const SLACK: f64 = 0.22;
/// Range of the ratio of two neighbours' sizes in the photo.
const ALIKE: std::ops::Range<f64> = 0.7..1.43;

/// Member of a lattice whose origin and upright are those of one of its codes.
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct Member {
    /// Index of the code.
    pub code: usize,
    /// Place in the lattice.
    pub site: Site,
    /// Turn against the lattice.
    pub turn: Turn,
}

/// Largest lattice of neighbouring codes, row by row; empty where there are no codes.
#[must_use]
pub fn largest(layout: &Layout, codes: &[Detection]) -> Vec<Member> {
    let mut free = vec![true; codes.len()];
    let mut largest = Vec::new();
    for seed in 0..codes.len() {
        if free[seed] {
            let members = spread(layout, codes, seed, &mut free);
            if members.len() > largest.len() {
                largest = members;
            }
        }
    }
    largest
}

/// Connected component of `seed` by way of neighbours; marks its codes as no longer free.
fn spread(layout: &Layout, codes: &[Detection], seed: usize, free: &mut [bool]) -> Vec<Member> {
    let first = Member { code: seed, site: Site { row: 0, column: 0 }, turn: Turn::None };
    free[seed] = false;
    let mut taken = BTreeMap::from([(first.site, first)]);
    let mut waiting = VecDeque::from([first]);
    while let Some(from) = waiting.pop_front() {
        let pose = &codes[from.code].pose;
        for own in STEPS {
            let site = next(from.site, own, from.turn);
            if taken.contains_key(&site) {
                continue;
            }
            let Some((code, quarters)) = neighbour(layout, codes, pose, own, free) else { continue };
            let turn = Turn::from_quarters(from.turn.quarters() + quarters);
            let member = Member { code, site, turn };
            free[code] = false;
            taken.insert(site, member);
            waiting.push_back(member);
        }
    }
    taken.into_values().collect()
}

/// Steps to neighbours, right and down, nearest first: those beside a square, at its corners, and one beyond, where the square between
/// was not seen.
const STEPS: [[i64; 2]; 12] =
    [[1, 0], [0, 1], [-1, 0], [0, -1], [1, 1], [-1, 1], [-1, -1], [1, -1], [2, 0], [0, 2], [-2, 0], [0, -2]];

/// Place one step on from a square with a turn; the step is the square's own.
fn next(site: Site, [right, down]: [i64; 2], turn: Turn) -> Site {
    match turn {
        Turn::None => site.step(right, down),
        Turn::Quarter => site.step(-down, right),
        Turn::Half => site.step(-right, -down),
        Turn::ThreeQuarters => site.step(down, -right),
    }
}

/// Free code whose square hangs one step on from the square with this pose, and its quarter turns against it.
fn neighbour(
    layout: &Layout,
    codes: &[Detection],
    pose: &Pose,
    [right, down]: [i64; 2],
    free: &[bool],
) -> Option<(usize, u32)> {
    let side = layout.side / layout.module;
    let step = (pose.u * whole(right) + pose.v * whole(down)) * side;
    let expected = layout.paper_middle(pose) + step;
    let slack = SLACK * side * pose.px_per_module();
    codes
        .iter()
        .enumerate()
        .filter(|(at, other)| {
            free[*at]
                && ALIKE.contains(&(other.pose.px_per_module() / pose.px_per_module()))
                && other.pose.mirrored() == pose.mirrored()
        })
        .filter_map(|(at, other)| {
            let away = layout.paper_middle(&other.pose).distance(expected).value();
            let quarters = quarters_between(pose, other.pose.u)?;
            (away < slack).then_some((away, at, quarters))
        })
        .min_by(|a, b| a.0.total_cmp(&b.0))
        .map(|(_, at, quarters)| (at, quarters))
}

/// Quarter turns clockwise, in the pose's own sense, from the pose's `u` to this `u`; `None` where it is not
/// near one.
#[must_use]
pub fn quarters_between(pose: &Pose, u: Vector<PhotoPx>) -> Option<u32> {
    let det = pose.u.cross(pose.v);
    let (along, across) = (u.cross(pose.v) / det, pose.u.cross(u) / det);
    let (long, short) = (along.abs().max(across.abs()), along.abs().min(across.abs()));
    let quarters = match (along.abs() > across.abs(), along > 0.0, across > 0.0) {
        (true, true, _) => 0,
        (false, _, true) => 1,
        (true, false, _) => 2,
        (false, _, false) => 3,
    };
    (short < 0.4 * long).then_some(quarters)
}

#[cfg(test)]
mod tests {
    use super::super::decision::{Compared, Evidence, RANKED};
    use super::super::pose::HALF;
    use super::*;
    use crate::frame::{Map, Module, Point};
    use proptest::prelude::*;

    const LAYOUT: Layout = Layout { side: 127.0, module: 0.6, code: Point::new(106.4, 106.4) };
    const EVIDENCE: Evidence = Evidence {
        compared: Compared {
            best: 0,
            score: 0.9,
            second: 0.2,
            shared: 0.8,
            strength: 1.0,
            bleached: false,
            ranked: [0; RANKED],
        },
        fitted: None,
    };

    /// A square's code as a tilted camera sees it, 2.5 px a mm.
    fn seen(site: Site, turn: Turn, mirrored: bool) -> Detection {
        let at = |x: f64, y: f64| {
            let to_wall = LAYOUT.module_to_square().then(&LAYOUT.square_to_wall(site, turn));
            let p = to_wall.apply(Point::<Module>::new(HALF + x, HALF + y));
            let near = 1.0 + 1e-4 * p.x;
            let x = if mirrored { -2.5 * p.x } else { 2.5 * p.x };
            Point::<PhotoPx>::new((5000.0 + x) / near, (900.0 + 2.5 * p.y + 0.2 * p.x) / near)
        };
        let pose =
            Pose { centre: at(0.0, 0.0), u: at(1.0, 0.0) - at(0.0, 0.0), v: at(0.0, 1.0) - at(0.0, 0.0) };
        Detection { pose, owner: None, evidence: EVIDENCE }
    }

    proptest! {
        #[test]
        fn turned_squares_with_gaps_between_make_their_lattice(
            turns in prop::collection::vec(0_u32..4, 20), gap in 0_usize..20, mirrored: bool,
        ) {
            let sites = (0..20).filter(|i| *i != gap).map(|i| {
                let i = i64::try_from(i).unwrap();
                Site { row: i / 5, column: i % 5 }
            });
            let sites: Vec<Site> = sites.collect();
            let codes: Vec<Detection> =
                sites.iter().zip(&turns).map(|(s, t)| seen(*s, Turn::from_quarters(*t), mirrored)).collect();
            let members = largest(&LAYOUT, &codes);
            prop_assert_eq!(members.len(), sites.len());
            // the lattice is the seed's: its origin, its upright
            let seed = members.iter().find(|m| m.site == Site { row: 0, column: 0 } && m.turn == Turn::None).unwrap();
            let back = Map::<PhotoPx, PhotoPx>::quarter_turns(turns[seed.code], Point::origin());
            for m in &members {
                let p = back.apply(Point::new(whole(m.site.column), whole(m.site.row)));
                let found = Site { row: round(p.y) + sites[seed.code].row, column: round(p.x) + sites[seed.code].column };
                prop_assert_eq!(found, sites[m.code]);
                prop_assert_eq!((m.turn.quarters() + turns[seed.code]) % 4, turns[m.code]);
            }
        }
    }

    fn round(x: f64) -> i64 {
        crate::frame::round_signed(x)
    }

    #[test]
    fn codes_far_from_each_other_make_no_lattice() {
        let codes = [
            seen(Site { row: 0, column: 0 }, Turn::None, false),
            seen(Site { row: 0, column: 3 }, Turn::None, false),
        ];
        assert_eq!(largest(&LAYOUT, &codes).len(), 1);
        assert!(largest(&LAYOUT, &[]).is_empty());
    }
}
