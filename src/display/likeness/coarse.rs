//! Coarse comparison at 8 × 8 places, to leave few pieces for the fine one.

use super::plane::{Ink, Plane, SIDE, turned_back};
use crate::frame::{float, narrow};

/// Number of places along a side.
const ACROSS: usize = 8;
const PLACES: usize = ACROSS * ACROSS;
/// Range of the gain of a drawing's colours over the piece's: a pale pencil … a felt pen.
pub(super) const GAIN: (f32, f32) = (0.4, 1.15);
/// Maximum deviation of one channel's gain from the common one, as a share: a tinted light or pencil.
const TINT: f32 = 0.25;

/// Weight of each place, row by row, for each quarter turn.
pub(super) type Weights = [[f32; PLACES]; 4];

/// A picture in 8 × 8 places.
#[derive(Clone, Debug, Default)]
pub(super) struct Coarse {
    ink: Vec<[f32; PLACES]>,
    /// Weighted sum of squares of each colour, for each quarter turn.
    square: [Ink; 4],
}

/// Weights of the places of a paper, turned back by 0 … 3 quarters.
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

    /// Misfit of a drawing turned back by `quarters`: the residual after the best gains of red, green and
    /// blue.
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

/// Scalar product, in sixteen running sums so that several are added at once.
fn dot(a: &[f32; PLACES], b: &[f32; PLACES]) -> f32 {
    let mut sums = [0.0; 16];
    for (a, b) in a.chunks_exact(16).zip(b.chunks_exact(16)) {
        for i in 0..16 {
            sums[i] += a[i] * b[i];
        }
    }
    sums.iter().sum()
}

/// Drawing, turned back by some quarters: its weighted ink, and the weighted sum of squares of each colour.
#[derive(Clone, Debug)]
pub(super) struct View {
    weighted: Vec<[f32; PLACES]>,
    square: Ink,
}

impl View {
    /// View of a drawing from its ink turned back, with the weights turned as far.
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
