//! Two carpets of noise that repeat without a seam: one for what is fine (paper's tooth), one for what is broad (a hand's
//! wobble, pressure, the unevenness of paint). Made once, looked up everywhere.

use rand::RngExt;

use super::chance::{Purpose, stream};
use crate::frame::{float, floor_index, narrow};

/// Side of a carpet; a power of two, so that wrapping is cheap.
const SIDE: usize = 256;

/// Added before wrapping, so that places left of and above the origin have a place in the carpet.
const SHIFT: f64 = 65536.0;

/// The carpets.
#[derive(Clone, Debug)]
pub(super) struct Grain {
    fine: Vec<f32>,
    broad: Vec<f32>,
}

impl Grain {
    pub fn new(seed: u64) -> Self {
        let mut rng = stream(seed, Purpose::Grain);
        let fine = (0..SIDE * SIDE).map(|_| rng.random_range(-1.0..1.0)).collect();
        let mut broad = vec![0.0_f32; SIDE * SIDE];
        for (cells, weight) in [(16, 0.55), (32, 0.3), (64, 0.15)] {
            let lattice: Vec<f64> = (0..cells * cells).map(|_| rng.random_range(-1.0..1.0)).collect();
            let step = float(cells) / float(SIDE);
            for (i, value) in broad.iter_mut().enumerate() {
                let (x, y) = (float(i % SIDE) * step, float(i / SIDE) * step);
                *value += narrow(weight * between(&lattice, cells, x, y));
            }
        }
        Self { fine, broad }
    }

    /// −1 … 1, independent from one unit square to the next.
    pub fn fine(&self, x: f64, y: f64) -> f32 {
        self.fine[cell(x, y)]
    }

    /// About −1 … 1, smooth; its hills are some 16 units wide.
    pub fn broad(&self, x: f64, y: f64) -> f32 {
        self.broad[cell(x, y)]
    }

    /// As [`Grain::broad`], smooth between its units too.
    pub fn wave(&self, x: f64, y: f64) -> f64 {
        let (x, y) = (x + SHIFT, y + SHIFT);
        let (left, top) = (x.floor(), y.floor());
        let (fx, fy) = (narrow(x - left), narrow(y - top));
        let (i, j) = (floor_index(left), floor_index(top));
        let at = |di: usize, dj: usize| self.broad[((j + dj) % SIDE) * SIDE + (i + di) % SIDE];
        let upper = at(0, 0) * (1.0 - fx) + at(1, 0) * fx;
        let lower = at(0, 1) * (1.0 - fx) + at(1, 1) * fx;
        f64::from(upper * (1.0 - fy) + lower * fy)
    }
}

fn cell(x: f64, y: f64) -> usize {
    (floor_index(y + SHIFT) % SIDE) * SIDE + floor_index(x + SHIFT) % SIDE
}

/// A value between the points of a lattice that wraps around.
fn between(lattice: &[f64], cells: usize, x: f64, y: f64) -> f64 {
    let (i, j) = (floor_index(x), floor_index(y));
    let ease = |t: f64| t * t * (3.0 - 2.0 * t);
    let (fx, fy) = (ease(x - float(i)), ease(y - float(j)));
    let at = |di: usize, dj: usize| lattice[((j + dj) % cells) * cells + (i + di) % cells];
    let upper = at(0, 0) * (1.0 - fx) + at(1, 0) * fx;
    let lower = at(0, 1) * (1.0 - fx) + at(1, 1) * fx;
    upper * (1.0 - fy) + lower * fy
}
