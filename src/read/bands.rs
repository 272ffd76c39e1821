//! A contrast for each band of modules: what a fit leaves of the pixels when every column of modules, or every row, may be
//! darker or paler than the others, as the streaks of an old printer make them.

use nalgebra::{SMatrix, SVector};

use super::model_fit::{ARM, Axis, EDGES, Fit, LIGHTS, Pixels, power, widths};
use super::pose::{HALF, Pose};
use crate::frame::{Module, Point, float};
use crate::plan::Modules;
use crate::plan::code::SIDE;

/// Standard deviation of the contrast from band to band of modules, as a share of the mean contrast: little is known of a printer
/// beforehand, and half its black may be missing in a streak.
const BANDED: f64 = 0.35;
/// Number of unknowns with a contrast for each band of modules: seven of light, 21 bands.
const BANDS: usize = LIGHTS - 1 + SIDE;

/// Residual of each pixel when every column of modules has a contrast of its own, or every row, whichever leaves less: streaks of
/// a printer run along one of them. Contrasts keep near their mean (ridge regression). `None` where nothing holds them.
pub(super) fn banded(pixels: &Pixels, code: &Modules, pose: &Pose, blur: f64, fit: &Fit) -> Option<Vec<f64>> {
    let contrast = fit.light[LIGHTS - 1];
    let variance = fit.residual / float(pixels.at.len());
    let hold = variance / (BANDED * contrast).powi(2);
    if !hold.is_finite() {
        return None;
    }
    let wide = widths(pose, blur);
    let mut sums = [BandSums::new(), BandSums::new()];
    let mut rows = [Vec::with_capacity(pixels.at.len()), Vec::with_capacity(pixels.at.len())];
    for (at, level) in pixels.at.iter().zip(&pixels.level) {
        let m = pose.photo_to_module(*at)?;
        let (x, y) = (Axis::at(m.x, wide[0]), Axis::at(m.y, wide[1]));
        for (way, (sums, rows)) in sums.iter_mut().zip(&mut rows).enumerate() {
            let row = BandRow::new(code, &m, &x, &y, way == 0);
            sums.add(&row, f64::from(*level));
            rows.push(row);
        }
    }
    let mut least: Option<Vec<f64>> = None;
    for (sums, rows) in sums.into_iter().zip(&rows) {
        let solved = sums.solve(fit.sides_least, hold, contrast)?;
        let error = |(row, level): (&BandRow, &f32)| f64::from(*level) - row.model(&solved);
        let errors: Vec<f64> = rows.iter().zip(&pixels.level).map(error).collect();
        if least.as_ref().is_none_or(|least| power(&errors) < power(least)) {
            least = Some(errors);
        }
    }
    least
}

/// One pixel's row of the model with a contrast for each band.
struct BandRow {
    lit: [f64; LIGHTS - 1],
    /// First band that the pixel sees, and the code's darkness in that and each further one (negative).
    first: usize,
    count: usize,
    shares: [f64; EDGES],
}

impl BandRow {
    fn new(code: &Modules, m: &Point<Module>, x: &Axis<EDGES>, y: &Axis<EDGES>, columns: bool) -> Self {
        let dark = code.as_slice();
        let (band, other) = if columns { (x, y) } else { (y, x) };
        let (u, v) = ((m.x - HALF) / ARM, (m.y - HALF) / ARM);
        let mut shares = [0.0; EDGES];
        for (i, share) in shares.iter_mut().enumerate().take(band.count) {
            let across = band.first + i;
            let is_dark = |j: usize| {
                let along = other.first + j;
                dark[if columns { along * SIDE + across } else { across * SIDE + along }]
            };
            let seen: f64 = (0..other.count).filter(|j| is_dark(*j)).map(|j| other.share[j]).sum();
            *share = -band.share[i] * seen;
        }
        let lit = [1.0, u, v, x.beyond[0], x.beyond[1], y.beyond[0], y.beyond[1]];
        Self { lit, first: band.first, count: band.count, shares }
    }

    fn model(&self, solved: &SVector<f64, BANDS>) -> f64 {
        let light: f64 = self.lit.iter().zip(solved.iter()).map(|(a, b)| a * b).sum();
        let ink = (0..self.count).map(|i| self.shares[i] * solved[LIGHTS - 1 + self.first + i]);
        light + ink.sum::<f64>()
    }
}

/// Normal equations with a contrast for each band; the lower half.
struct BandSums {
    normal: SMatrix<f64, BANDS, BANDS>,
    right: SVector<f64, BANDS>,
}

impl BandSums {
    fn new() -> Self {
        Self { normal: SMatrix::zeros(), right: SVector::zeros() }
    }

    fn add(&mut self, row: &BandRow, level: f64) {
        let bands = || row.shares.iter().enumerate().take(row.count);
        let place = |i: usize| LIGHTS - 1 + row.first + i;
        for (k, a) in row.lit.iter().enumerate() {
            for (l, b) in row.lit.iter().enumerate().skip(k) {
                self.normal[(l, k)] += a * b;
            }
            bands().for_each(|(i, b)| self.normal[(place(i), k)] += a * b);
            self.right[k] += a * level;
        }
        for (i, a) in bands() {
            bands().skip(i).for_each(|(j, b)| self.normal[(place(j), place(i))] += a * b);
            self.right[place(i)] += a * level;
        }
    }

    /// Coefficients, with ridge terms for what comes in from the sides and for each band's distance from the mean contrast.
    fn solve(mut self, sides_least: f64, hold: f64, contrast: f64) -> Option<SVector<f64, BANDS>> {
        for k in 3..LIGHTS - 1 {
            self.normal[(k, k)] += sides_least;
        }
        for k in LIGHTS - 1..BANDS {
            self.normal[(k, k)] += hold;
            self.right[k] += hold * contrast;
        }
        // the factorisation reads the lower half alone
        Some(self.normal.cholesky()?.solve(&self.right))
    }
}
