//! From a vote of every pixel for one pencil or between two to one pencil a pixel, smooth along edges, at any resolution.
//!
//! The votes for each pencil are one grey picture; it is blurred a little and read at the new pixels' centres, and the
//! pencil with the most votes there wins. So an edge that was mixed runs where it ran, and no pencil wins that only a
//! narrow rim has voted for.

use rayon::prelude::*;

use super::raster::Raster;
use crate::frame::{ceil_index, float, floor_index, narrow};

/// A pixel's vote: for the first pencil with a share, for the second with the rest.
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct Vote {
    /// The pencil it favours, or either.
    pub first: u8,
    /// The other.
    pub second: u8,
    /// The first one's share, 0 … 1.
    pub share: f32,
}

impl Vote {
    /// All for one.
    #[must_use]
    pub fn whole(number: u8) -> Self {
        Self { first: number, second: number, share: 1.0 }
    }

    fn of(self, number: u8) -> f32 {
        let first = if self.first == number { self.share } else { 0.0 };
        let second = if self.second == number { 1.0 - self.share } else { 0.0 };
        first + second
    }
}

/// Where the new pixels lie among the old ones: the first one's corner, its side in old pixels, how many.
#[derive(Copy, Clone, Debug)]
pub struct Place {
    /// From the left and the top.
    pub start: (f64, f64),
    /// Side of a new pixel.
    pub step: f64,
    /// Side by side and one above the other.
    pub size: (usize, usize),
}

/// Deviations of the bell curve that are counted: beyond lies 1 %.
const REACH: f64 = 2.5;
/// New rows that are counted together.
const BAND: usize = 64;

/// The old pixels that a new one reads along one line, and their weights, whose sum is 1.
#[derive(Clone, Debug)]
struct Taps {
    first: usize,
    weights: Vec<f32>,
}

fn taps(start: f64, step: f64, count: usize, pixels: usize, deviation: f64) -> Vec<Taps> {
    let tap = |i: usize| {
        let centre = start + step * (float(i) + 0.5);
        let reach = REACH * deviation + 0.5;
        let first = floor_index(centre - reach + 0.5).min(pixels.saturating_sub(1));
        let end = floor_index(centre + reach + 0.5).clamp(first + 1, pixels.max(first + 1));
        let weight = |j: usize| (-0.5 * ((float(j) + 0.5 - centre) / deviation).powi(2)).exp();
        let sum: f64 = (first..end).map(weight).sum();
        Taps { first, weights: (first..end).map(|j| narrow(weight(j) / sum.max(1e-12))).collect() }
    };
    (0..count).map(tap).collect()
}

/// The pencil with the most votes at each new pixel; the blur's standard deviation in old pixels.
#[must_use]
pub fn settle(votes: &Raster<Vote>, count: usize, place: &Place, deviation: f64) -> Raster<u8> {
    let ((x, y), step, (wide, high)) = (place.start, place.step, place.size);
    let across = taps(x, step, wide, votes.width, deviation);
    let down = taps(y, step, high, votes.height(), deviation);
    let mut values = vec![0_u8; wide * high];
    let bands = values.par_chunks_mut((BAND * wide).max(1)).zip(down.par_chunks(BAND));
    bands.for_each(|(values, down)| {
        let from = down.first().map_or(0, |taps| taps.first);
        let to = down.iter().map(|taps| taps.first + taps.weights.len()).max().unwrap_or(from);
        let mut most = vec![f32::NEG_INFINITY; values.len()];
        let mut read = vec![0.0_f32; (to - from) * wide];
        let mut sums = vec![0.0_f32; wide];
        let used = pencils_in(votes, from..to, count);
        for number in used {
            read_across(votes, from, number, &across, &mut read);
            for (at, taps) in down.iter().enumerate() {
                sums.fill(0.0);
                for (row, weight) in read.chunks_exact(wide).skip(taps.first - from).zip(&taps.weights) {
                    sums.iter_mut().zip(row).for_each(|(sum, read)| *sum += weight * read);
                }
                let range = at * wide..(at + 1) * wide;
                for ((value, most), sum) in values[range.clone()].iter_mut().zip(&mut most[range]).zip(&sums)
                {
                    if *sum > *most + TIE {
                        (*value, *most) = (number, *sum);
                    }
                }
            }
        }
    });
    Raster { width: wide, values }
}

/// Votes that differ by less are equal, and the first pencil wins.
const TIE: f32 = 1e-6;

/// The pencils that anybody in some rows votes for.
fn pencils_in(votes: &Raster<Vote>, rows: std::ops::Range<usize>, count: usize) -> Vec<u8> {
    let mut used = vec![false; count];
    for vote in &votes.values[rows.start * votes.width..rows.end * votes.width] {
        for number in [vote.first, vote.second] {
            if let Some(used) = used.get_mut(usize::from(number)) {
                *used = true;
            }
        }
    }
    (0..=u8::MAX).zip(used).filter(|(_, used)| *used).map(|(number, _)| number).collect()
}

/// The votes for one pencil in some old rows, read at the new pixels' columns.
fn read_across(votes: &Raster<Vote>, from: usize, number: u8, across: &[Taps], read: &mut [f32]) {
    let old = votes.values.chunks_exact(votes.width).skip(from);
    let mut own = vec![0.0_f32; votes.width];
    for (old, read) in old.zip(read.chunks_exact_mut(across.len())) {
        own.iter_mut().zip(old).for_each(|(own, vote)| *own = vote.of(number));
        for (read, taps) in read.iter_mut().zip(across) {
            *read = own[taps.first..].iter().zip(&taps.weights).map(|(own, weight)| own * weight).sum();
        }
    }
}

/// Twice as many pixels either way: a corner takes the colour of the two neighbours it lies between where these two agree and
/// their opposites do not (the rule known as Scale2x, Andrea Mazzoleni, 2001), so that steps become slopes and a line of
/// single pixels that touch at corners stays one line.
#[must_use]
pub fn doubled(numbers: &Raster<u8>) -> Raster<u8> {
    let (wide, high) = (numbers.width, numbers.height());
    let mut values = vec![0; 4 * numbers.values.len()];
    for y in 0..high {
        for x in 0..wide {
            let own = numbers.values[y * wide + x];
            let at = |x: Option<usize>, y: Option<usize>| numbers.near(x, y).unwrap_or(own);
            let (up, down) = (at(Some(x), y.checked_sub(1)), at(Some(x), Some(y + 1)));
            let (left, right) = (at(x.checked_sub(1), Some(y)), at(Some(x + 1), Some(y)));
            let plain = up == down || left == right;
            let corner = |a: u8, b: u8| if !plain && a == b { a } else { own };
            let (top, width) = (4 * y * wide + 2 * x, 2 * wide);
            values[top] = corner(left, up);
            values[top + 1] = corner(up, right);
            values[top + width] = corner(left, down);
            values[top + width + 1] = corner(down, right);
        }
    }
    Raster { width: 2 * wide, values }
}

/// How often a picture is doubled before it has as many pixels as are wanted, or more than half of them.
#[must_use]
pub fn doublings(step: f64) -> usize {
    floor_index((1.0 / step).log2().max(0.0)).min(ceil_index(MOST_DOUBLINGS))
}

/// Eight times is smooth enough; the blur does the rest.
const MOST_DOUBLINGS: f64 = 3.0;
