//! Finder patterns: the nested squares in three corners of every code, found along lines of pixels.
//!
//! In whatever direction, a line through the centre of a finder pattern crosses dark, light, dark, light,
//! dark in the proportion 1 : 1 : 3 : 1 : 1 (ISO/IEC 18004).
//!
//! ```text
//!   ███████        level ▔▔▔\__/▔\______/▔\__/▔▔▔
//!   █     █                 │  │ │      │ │  │
//!   █ ███ █  ◀── line       1   1    3   1  1
//!   █ ███ █
//!   █ ███ █        an edge lies where the level passes the middle between the peak and the pit beside it,
//!   █     █        so neither light nor contrast matters, and it is found to a fraction of a pixel
//!   ███████
//! ```

use std::collections::HashMap;

use rayon::prelude::*;

use crate::frame::{PhotoPx, Point, float, floor_index};
use crate::photo::Luma;

/// Finder pattern seen in the photo.
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct Finder {
    /// Centre of the pattern.
    pub centre: Point<PhotoPx>,
    /// Width of a module, in pixels, along a row and along a column: larger than its side where the code is
    /// turned.
    pub module: [f64; 2],
    /// Number of hits that were merged into it, over all scan lines and thresholds.
    pub crossings: usize,
}

/// Thresholds of the difference between a peak and the pit beside it, in grey levels, tried one after the
/// other.
///
/// A low one sees patterns in the dark, a high one is not misled by noise.
const STEPS: [f32; 3] = [10.0, 24.0, 56.0];
/// Row stride of the scan. The centre of a pattern of 1.5 px modules is 4.5 rows high.
const ROW_STEP: usize = 2;
/// Minimum and maximum width of a module, in pixels.
const MODULE: (f64, f64) = (1.1, 60.0);
/// Maximum number of patterns kept, those with most hits first: hatching makes thousands of spots.
const MOST: usize = 6000;
/// Minimum number of pixels for each pattern kept beyond [`MOST`], for photos larger than a phone's usual
/// twelve million.
///
/// 3,000 squares have 9,000 patterns, at 1.75 px a module on 42 million pixels.
const PIXELS_A_PATTERN: usize = 2000;

/// All finder patterns of a picture, those with most hits first; equal ones from the top.
#[must_use]
pub fn find(luma: &Luma) -> Vec<Finder> {
    let rows: Vec<usize> = (1..luma.height.saturating_sub(1)).step_by(ROW_STEP).collect();
    let hits: Vec<Finder> = rows
        .par_iter()
        .flat_map_iter(|row| {
            let line = row_line(luma, *row);
            let mut hits = Vec::new();
            // what turns at a high step turns at every lower one
            let mut turning = turns(line.iter().copied().enumerate(), STEPS[0]);
            for step in STEPS {
                turning = turns(turning.iter().map(|at| (*at, line[*at])), step);
                for [x, module] in crossings(&line, &turning) {
                    hits.extend(cross_check(luma, x, float(*row) + 0.5, module, step));
                }
            }
            hits
        })
        .collect();
    merge(hits, MOST.max(luma.grey.len() / PIXELS_A_PATTERN))
}

/// Row of pixels averaged with the rows above and below it, in grey levels.
fn row_line(luma: &Luma, row: usize) -> Vec<f32> {
    let line = |row: usize| luma.grey.get(row * luma.width..(row + 1) * luma.width).unwrap_or_default();
    let (above, here, below) = (line(row - 1), line(row), line(row + 1));
    let sum = |((a, b), c): ((&u8, &u8), &u8)| u16::from(*a) + u16::from(*b) + u16::from(*c);
    above.iter().zip(here).zip(below).map(|three| f32::from(sum(three)) / 3.0).collect()
}

/// Centre and module width, in pixels, of the pattern nearest to a place along its column (or row, `across`).
fn check_along(luma: &Luma, x: f64, y: f64, module: f64, step: f32, across: bool) -> Option<[f64; 2]> {
    let (at, beside, length, breadth) =
        if across { (x, y, luma.width, luma.height) } else { (y, x, luma.height, luma.width) };
    let reach = module * 9.0 + 2.0;
    let (from, to) = (floor_index(at - reach), floor_index(at + reach).min(length));
    let lane = floor_index(beside).clamp(1, breadth.checked_sub(2)?);
    let level = |k: usize, lane: usize| {
        let (column, row) = if across { (k, lane) } else { (lane, k) };
        f32::from(luma.grey[row * luma.width + column])
    };
    let line: Vec<f32> =
        (from..to).map(|k| (level(k, lane - 1) + level(k, lane) + level(k, lane + 1)) / 3.0).collect();
    crossings(&line, &turns(line.iter().copied().enumerate(), step))
        .into_iter()
        .map(|[middle, module]| [middle + float(from), module])
        .filter(|[middle, found]| (middle - at).abs() < 1.3 * found && (0.4..2.5).contains(&(found / module)))
        .min_by(|a, b| (a[0] - at).abs().total_cmp(&(b[0] - at).abs()))
}

/// Cross-check: a pattern seen along a row must show along the column through its centre, and along the row
/// through that.
fn cross_check(luma: &Luma, x: f64, y: f64, module: f64, step: f32) -> Option<Finder> {
    let [y, high] = check_along(luma, x, y, module, step, false)?;
    let [x, wide] = check_along(luma, x, y, module, step, true)?;
    Some(Finder { centre: Point::new(x, y), module: [wide, high], crossings: 1 })
}

/// Centre and module width of each 1 : 1 : 3 : 1 : 1 along a line of levels with these peaks and pits, in
/// pixels.
fn crossings(line: &[f32], turns: &[usize]) -> Vec<[f64; 2]> {
    let edges = edges(line, turns);
    edges
        .windows(6)
        .filter(|six| six[0].falls)
        .filter_map(|six| {
            let at: [f64; 6] = std::array::from_fn(|k| six[k].at);
            let module = (at[5] - at[0]) / 7.0;
            let width = |a: usize, b: usize| (at[b] - at[a]) / module;
            let near = |found: f64, want: f64, slack: f64| (found - want).abs() < slack;
            // neighbours together keep their width where ink spreads or light blooms
            let fits = (MODULE.0..MODULE.1).contains(&module)
                && near(width(2, 3), 3.0, 1.1)
                && near(width(0, 2), 2.0, 0.7)
                && near(width(3, 5), 2.0, 0.7)
                && near(width(1, 3), 4.0, 0.9)
                && near(width(2, 4), 4.0, 0.9)
                && [(0, 1), (1, 2), (3, 4), (4, 5)].iter().all(|(a, b)| width(*a, *b) > 0.3);
            fits.then(|| [(at[2] + at[3]) / 2.0, module])
        })
        .collect()
}

#[derive(Copy, Clone)]
struct Edge {
    at: f64,
    falls: bool,
}

/// Edges: where a line passes the mean of a peak and the pit beside it.
fn edges(line: &[f32], turns: &[usize]) -> Vec<Edge> {
    turns.windows(2).filter_map(|two| edge(line, two[0], two[1])).collect()
}

/// Indices of peaks and pits in turn, each differing from the next by at least `step`; smaller ones are
/// passed over.
fn turns(mut levels: impl Iterator<Item = (usize, f32)>, step: f32) -> Vec<usize> {
    let Some((i, level)) = levels.next() else { return Vec::new() };
    let (mut high, mut low) = ((level, i), (level, i));
    // until the first turn it may go either way
    let start = levels.by_ref().find_map(|(i, level)| {
        high = if level > high.0 { (level, i) } else { high };
        low = if level < low.0 { (level, i) } else { low };
        (high.0 - low.0 >= step).then_some((i, level))
    });
    let Some((i, level)) = start else { return Vec::new() };
    // the extreme of the two that came first is a turn, the other one is still going on
    let mut falling = high.1 < low.1;
    let mut turns = vec![high.1.min(low.1)];
    let mut extreme = (level, i);
    for (i, level) in levels {
        let beyond = if falling { extreme.0 - level } else { level - extreme.0 };
        if beyond > 0.0 {
            extreme = (level, i);
        } else if beyond <= -step {
            turns.push(extreme.1);
            falling = !falling;
            extreme = (level, i);
        }
    }
    turns.push(extreme.1);
    turns
}

fn edge(line: &[f32], from: usize, to: usize) -> Option<Edge> {
    let (start, end) = (line.get(from)?, line.get(to)?);
    let half = (start + end) / 2.0;
    let two = line.get(from..=to)?.windows(2).position(|two| (two[0] >= half) != (two[1] >= half))?;
    let (a, b) = (line[from + two], line[from + two + 1]);
    let part = f64::from((half - a) / (b - a));
    Some(Edge { at: float(from + two) + 0.5 + part, falls: start > end })
}

/// Side of the bins in which hits are looked up while they are merged, in pixels.
const BIN: f64 = 16.0;

/// Merges the hits of one pattern, from many lines and thresholds; those with most hits first, `most` at
/// most.
fn merge(hits: Vec<Finder>, most: usize) -> Vec<Finder> {
    let mut merged: Vec<Finder> = Vec::new();
    let mut bins: HashMap<(usize, usize), Vec<usize>> = HashMap::new();
    for hit in hits {
        let (column, row) = (floor_index(hit.centre.x / BIN), floor_index(hit.centre.y / BIN));
        let near = (row.saturating_sub(1)..=row + 1)
            .flat_map(|r| (column.saturating_sub(1)..=column + 1).map(move |c| (c, r)))
            .filter_map(|bin| bins.get(&bin))
            .flatten()
            .copied()
            .find(|at| same(&merged[*at], &hit));
        match near {
            Some(at) => merged[at] = mean(&merged[at], &hit),
            None => {
                bins.entry((column, row)).or_default().push(merged.len());
                merged.push(hit);
            }
        }
    }
    merged.sort_by_key(|finder| std::cmp::Reverse(finder.crossings));
    merged.truncate(most);
    merged
}

fn same(a: &Finder, b: &Finder) -> bool {
    let alike = |k: usize| (0.6..1.7).contains(&(a.module[k] / b.module[k]));
    a.centre.distance(b.centre).value() < 1.2 * a.module[0].min(a.module[1]) && alike(0) && alike(1)
}

fn mean(a: &Finder, b: &Finder) -> Finder {
    let crossings = a.crossings + b.crossings;
    let t = float(b.crossings) / float(crossings);
    let module = std::array::from_fn(|k| a.module[k] + (b.module[k] - a.module[k]) * t);
    Finder { centre: a.centre.towards(b.centre, t), module, crossings }
}

#[cfg(test)]
mod tests {
    use super::super::paint::{event, paint, pose};
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(60))]
        #[test]
        fn the_three_patterns_of_a_code_are_found(
            at in 0_usize..80, px in 2.0..9.0_f64, degrees in -180.0..180.0_f64, x in 0.0..1.0_f64, y in 0.0..1.0_f64,
        ) {
            let side = 36.0 * px + 12.0;
            let truth = pose(side / 2.0 + x, side / 2.0 + y, px, degrees);
            let size = crate::frame::ceil_index(side);
            let luma = paint(size, size, &[(truth, event("K7M").squares[at].modules.clone())]);
            let found = find(&luma);
            for (right, down) in [(-7.0, -7.0), (7.0, -7.0), (-7.0, 7.0)] {
                let middle = truth.centre + truth.u * right + truth.v * down;
                let nearest =
                    found.iter().map(|f| f.centre.distance(middle).value()).fold(f64::INFINITY, f64::min);
                prop_assert!(nearest < 0.35 * px, "a pattern is {nearest} px away, a module has {px} px");
            }
        }
    }

    #[test]
    fn a_blank_picture_and_a_tiny_one_hold_no_pattern() {
        for (width, height) in [(0, 0), (1, 1), (2, 2), (300, 200)] {
            let luma = Luma { width, height, grey: vec![200; width * height] };
            assert!(find(&luma).is_empty());
        }
    }

    #[test]
    fn a_chequerboard_is_bounded_work() {
        let grey =
            (0..600 * 600).map(|i| if (i % 600 / 3 + i / 600 / 3) % 2 == 0 { 20 } else { 230 }).collect();
        assert!(find(&Luma { width: 600, height: 600, grey }).len() <= MOST);
    }

    #[test]
    fn peaks_and_pits_smaller_than_the_step_are_passed_over() {
        let line = [100.0, 104.0, 99.0, 20.0, 24.0, 18.0, 110.0, 108.0];
        assert_eq!(turns(line.into_iter().enumerate(), 40.0), [1, 5, 6]);
    }

    proptest! {
        #[test]
        fn what_turns_at_a_high_step_turns_at_a_low_one(line in prop::collection::vec(0.0..255.0_f32, 0..200), low in 5.0..40.0_f32, by in 1.0..4.0_f32) {
            let all = turns(line.iter().copied().enumerate(), low * by);
            let few = turns(line.iter().copied().enumerate(), low);
            prop_assert_eq!(turns(few.iter().map(|at| (*at, line[*at])), low * by), all);
        }
    }
}
