//! Pieces of a group all over the wall, every level in the group's part of it.
//!
//! Each group's number of pieces of a level is its exact part of that level, rounded down or up. Which groups round up is decided group by
//! group, with all that can have been decided before kept in view (dynamic programming over how many groups rounded up in each level): so
//! the most that anybody has to draw is the least that can be.

use std::collections::BTreeMap;

use crate::frame::{float, floor_index};
use crate::plan::{Grid, Level};

const LEVELS: usize = Level::ALL.len();
/// Part of a piece that is the last bits of a division.
const ROUNDING: f64 = 1e-9;

/// The group of each piece.
pub(super) fn owners(
    grid: &Grid,
    levels: &[Level],
    minutes: [f64; LEVELS],
    people: &[usize],
    quotas: &[usize],
) -> Vec<usize> {
    let mut counts = [0; LEVELS];
    levels.iter().for_each(|level| counts[level.index()] += 1);
    let mut left = shares(counts, minutes, people, quotas);
    let mut owners = vec![0; levels.len()];
    for level in Level::ALL {
        let pieces = around(grid).filter(|piece| levels[*piece] == level);
        let whole: Vec<usize> = left.iter().map(|share| share[level.index()]).collect();
        let all = whole.iter().sum::<usize>();
        for (done, piece) in pieces.enumerate() {
            // the group that is furthest behind its part of those handed out so far
            let behind = |group: &usize| {
                let own = whole[*group];
                let had = own - left[*group][level.index()];
                float(own) * (float(done) + 1.0) / float(all.max(1)) - float(had)
            };
            let open = (0..quotas.len()).filter(|group| left[*group][level.index()] > 0);
            let Some(next) = open.max_by(|a, b| behind(a).total_cmp(&behind(b)).then(b.cmp(a))) else {
                break;
            };
            owners[piece] = next;
            left[next][level.index()] -= 1;
        }
    }
    owners
}

/// Cells along a path through the whole wall, to and fro, so that those that follow each other are neighbours.
fn around(grid: &Grid) -> impl Iterator<Item = usize> + use<> {
    let (columns, rows) = (grid.columns, grid.rows);
    (0..rows).flat_map(move |row| {
        (0..columns).map(move |i| row * columns + if row % 2 == 0 { i } else { columns - 1 - i })
    })
}

/// How many groups have rounded up in each level.
type Ups = [usize; LEVELS];

/// How many pieces of each level each group has.
fn shares(
    counts: [usize; LEVELS],
    minutes: [f64; LEVELS],
    people: &[usize],
    quotas: &[usize],
) -> Vec<[usize; LEVELS]> {
    let pieces = counts.iter().sum::<usize>();
    let exact = |group: usize, level: usize| float(counts[level] * quotas[group]) / float(pieces.max(1));
    let low: Vec<[usize; LEVELS]> = (0..quotas.len())
        .map(|group| [0, 1, 2, 3].map(|level| floor_index(exact(group, level) + ROUNDING)))
        .collect();
    let can_rise = |group: usize, level: usize| exact(group, level) > float(low[group][level]) + ROUNDING;
    let rise: Ups = [0, 1, 2, 3].map(|level| counts[level] - low.iter().map(|own| own[level]).sum::<usize>());
    // after each group: what can have been rounded up, the least that the busiest then draws, and how this group rounded
    let mut ways: Vec<BTreeMap<Ups, (f64, f64, Ups)>> =
        vec![BTreeMap::from([(Ups::default(), (0.0, 0.0, Ups::default()))])];
    for group in 0..quotas.len() {
        let needed = quotas[group] - low[group].iter().sum::<usize>();
        let mut next: BTreeMap<Ups, (f64, f64, Ups)> = BTreeMap::new();
        for (ups, (most, squares, _)) in &ways[group] {
            for choice in choices(needed).filter(|choice| {
                (0..LEVELS)
                    .all(|level| choice[level] == 0 || (can_rise(group, level) && ups[level] < rise[level]))
            }) {
                let total: f64 = (0..LEVELS).map(|l| minutes[l] * float(low[group][l] + choice[l])).sum();
                let each = total / float(people[group].max(1));
                let own = (most.max(each), squares + each * each, choice);
                let at = [0, 1, 2, 3].map(|level| ups[level] + choice[level]);
                let better = |old: &(f64, f64, Ups)| (own.0, own.1) < (old.0, old.1);
                if next.get(&at).is_none_or(better) {
                    next.insert(at, own);
                }
            }
        }
        ways.push(next);
    }
    let (mut at, mut shares) = (rise, low);
    for group in (0..quotas.len()).rev() {
        let Some((_, _, choice)) = ways[group + 1].get(&at) else { break };
        for level in 0..LEVELS {
            shares[group][level] += choice[level];
            at[level] -= choice[level];
        }
    }
    shares
}

/// All ways to round up in so many levels.
fn choices(count: usize) -> impl Iterator<Item = Ups> {
    (0..1_usize << LEVELS)
        .map(|bits| [0, 1, 2, 3].map(|level| (bits >> level) & 1))
        .filter(move |choice| choice.iter().sum::<usize>() == count)
}
