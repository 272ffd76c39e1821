//! Coarse comparison on 8 × 8 places, which leaves few pieces for the fine one: the misfit of means, in all four turns.

use super::piece::Ink;
use super::plane::{Plane, SIDE, turned_back};
use crate::frame::{float, narrow};

/// Places along a side.
const ACROSS: usize = 8;
const PLACES: usize = ACROSS * ACROSS;
/// Range of the ratio of a drawing's ink to the piece's: a pale pencil … a felt pen.
pub(super) const GAIN: (f32, f32) = (0.4, 1.15);
/// Maximum relative difference of one channel's strength from the others': a tinted light or pencil.
const TINT: f32 = 0.25;

/// For each quarter turn how much each place counts.
pub(super) type Weights = [[f32; PLACES]; 4];

/// A picture in 8 × 8 places.
#[derive(Clone, Debug, Default)]
pub(super) struct Coarse {
    ink: Vec<[f32; PLACES]>,
    /// For each quarter turn the sum of squares of each colour.
    square: [Ink; 4],
}

/// The weights of the places of a paper, turned back by 0 … 3 quarters.
pub(super) fn weights(of_paper: &Plane) -> Weights {
    [0, 1, 2, 3].map(|quarters| shrunk(&turned_back(of_paper, quarters)))
}

fn shrunk(plane: &Plane) -> [f32; PLACES] {
    let step = SIDE / ACROSS;
    let part = narrow(1.0 / float(step * step));
    let mut small = [0.0; PLACES];
    for (i, value) in plane.iter().enumerate() {
        small[i / SIDE / step * ACROSS + i % SIDE / step] += value * part;
    }
    small
}

impl Coarse {
    pub fn of(planes: &[Plane; 3], weights: &Weights) -> Self {
        let ink: Vec<[f32; PLACES]> = planes.iter().map(shrunk).collect();
        let square = weights.map(|weights| {
            let mut sums = [0.0; 3];
            for (sum, plane) in sums.iter_mut().zip(&ink) {
                *sum = plane.iter().zip(&weights).map(|(value, weight)| value * value * weight).sum();
            }
            sums
        });
        Self { ink, square }
    }

    /// How badly a drawing fits that was turned back by `quarters`: what the best strengths of red, green and blue leave.
    pub fn misfit(&self, drawing: &View, quarters: usize) -> f32 {
        let mut both = [0.0; 3];
        for ((both, own), theirs) in both.iter_mut().zip(&self.ink).zip(&drawing.weighted) {
            *both = dot(own, theirs);
        }
        let own = self.square[quarters];
        let all = (sum(both) / sum(own).max(1e-3)).clamp(GAIN.0, GAIN.1);
        let mut misfit = 0.0;
        for i in 0..3 {
            let gain = (both[i] / own[i].max(1e-3)).clamp(all * (1.0 - TINT), all * (1.0 + TINT));
            misfit += drawing.square[i] - 2.0 * gain * both[i] + gain * gain * own[i];
        }
        misfit
    }
}

fn sum(ink: Ink) -> f32 {
    ink[0] + ink[1] + ink[2]
}

/// Sixteen sums side by side, so that the machine adds several at once.
fn dot(a: &[f32; PLACES], b: &[f32; PLACES]) -> f32 {
    let mut sums = [0.0; 16];
    for (a, b) in a.chunks_exact(16).zip(b.chunks_exact(16)) {
        for i in 0..16 {
            sums[i] += a[i] * b[i];
        }
    }
    sums.iter().sum()
}

/// A drawing, turned back.
#[derive(Clone, Debug)]
pub(super) struct View {
    weighted: Vec<[f32; PLACES]>,
    square: Ink,
}

impl View {
    /// From its inks turned back, with the weights turned as far.
    pub fn of(planes: &[Plane; 3], weights: &[f32; PLACES]) -> Self {
        let mut square = [0.0; 3];
        let weighted = planes
            .iter()
            .zip(&mut square)
            .map(|(plane, square)| {
                let small = shrunk(plane);
                let weighted: [f32; PLACES] = std::array::from_fn(|i| small[i] * weights[i]);
                *square = dot(&small, &weighted);
                weighted
            })
            .collect();
        Self { weighted, square }
    }
}
