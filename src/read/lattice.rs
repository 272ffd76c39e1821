//! Without a card: the codes themselves show the lattice of cells.
//!
//! A code tells where its square's middle lies and which way its sides run, so it tells where its four neighbours hang.
//! What the codes *say* is not looked at: every square may hang in another's place. Turned squares are no matter either,
//! a square is square.

use std::collections::{BTreeMap, VecDeque};

use super::identify::Found;
use super::place::{Layout, Site};
use super::pose::Pose;
use crate::frame::{PhotoPx, Vector};
use crate::plan::Turn;

/// How far a neighbour may hang from where it is expected, in sides of a square.
const SLACK: f64 = 0.22;
/// How far apart in size two neighbours may be seen.
const ALIKE: std::ops::Range<f64> = 0.7..1.43;

/// A code's place in a lattice whose origin and upright are those of one of its codes.
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct Member {
    /// Which of the codes.
    pub code: usize,
    /// Where in the lattice.
    pub site: Site,
    /// How it is turned against the lattice.
    pub turn: Turn,
}

/// The largest lattice that neighbouring codes make; empty where there are no codes.
#[must_use]
pub fn largest(layout: &Layout, codes: &[Found]) -> Vec<Member> {
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

/// All codes that hang together with `seed` by way of neighbours.
fn spread(layout: &Layout, codes: &[Found], seed: usize, free: &mut [bool]) -> Vec<Member> {
    let first = Member { code: seed, site: Site { row: 0, column: 0 }, turn: Turn::None };
    free[seed] = false;
    let mut taken = BTreeMap::from([(first.site, first)]);
    let mut waiting = VecDeque::from([first]);
    while let Some(from) = waiting.pop_front() {
        let pose = &codes[from.code].pose;
        for own in 0..4 {
            let site = next(from.site, own + from.turn.quarters());
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

/// The place one step on: 0 right, 1 down, 2 left, 3 up.
fn next(site: Site, way: u32) -> Site {
    match way % 4 {
        0 => site.step(1, 0),
        1 => site.step(0, 1),
        2 => site.step(-1, 0),
        _ => site.step(0, -1),
    }
}

/// The free code whose square hangs one step on from the square with this pose, and how it is turned against it.
fn neighbour(layout: &Layout, codes: &[Found], pose: &Pose, way: u32, free: &[bool]) -> Option<(usize, u32)> {
    let side = layout.side / layout.module;
    let step = match way % 4 {
        0 => pose.u,
        1 => pose.v,
        2 => -pose.u,
        _ => -pose.v,
    } * side;
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

/// By how many quarter turns clockwise, in the pose's own sense, `u` is ahead of the pose's; `None` where it is not near a
/// quarter turn.
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
