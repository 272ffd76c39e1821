//! Template search: every place of a patch is compared with the shared part, for codes whose finder patterns
//! no longer show.
//!
//! In go the pose at which a code is expected and how far off it may be; out come the likeliest poses, best
//! first. A code is compared at one place a module. What lies around it does not count, and the outermost
//! modules count for where the code is, but not for how much there is to explain: visitors draw up to them,
//! and blur lets that in.
//!
//! ```text
//!    ┌──────────────────────────┐      for each direction the patch is straightened anew;
//!    │   reach  ┌────────┐      │      at each of its places 21 × 21 places are compared
//!    │ ◀──────▶ │ 21 ×21 │      │      with the shared part, light taken out
//!    │          └────────┘      │
//!    └──────────────────────────┘
//! ```

use rayon::prelude::*;

use super::draw::single;
use super::identify::Identifier;
use super::pose::Pose;
use crate::frame::{ceil_index, float};
use crate::photo::Luma;
use crate::plan::code::SIDE;

/// Length of a row of the shared part, padded to a multiple of eight.
const ROW: usize = 24;
/// Directions tried, in degrees from the expected one; alignment pulls in what lies between.
const ASKEW: [f64; 3] = [0.0, -4.0, 4.0];
/// Number of samples along a module's side, averaged to one level.
const SAMPLES: usize = 2;
/// Width of the code's edge that does not count for how much there is to explain, in modules.
const EDGE: usize = 2;
/// Minimum rating for a candidate; a clean code has 0.35 to 0.5, the faintest that was named 0.2.
const PROMISING: f32 = 0.18;
/// Radius of non-maximum suppression along each axis, in modules.
const APART: usize = 2;

/// Candidate of the template search.
#[derive(Copy, Clone, Debug)]
pub(super) struct Swept {
    /// Correlation with the shared part, as `Patch::rate` gives it.
    pub(super) rating: f32,
    /// Pose in the photo.
    pub(super) pose: Pose,
}

/// Candidates within `reach` modules of the expected pose, best first, `most` at most.
///
/// `shared` is the shared part, 21 × 21 levels, one a module, row by row, light projected out.
pub(super) fn sweep(luma: &Luma, shared: &[f32], expected: &Pose, reach: f64, most: usize) -> Vec<Swept> {
    let reach = ceil_index(reach);
    // rows are filled up so that eight places are multiplied at a time
    let filled = |row: &[f32]| row.iter().copied().chain([0.0; ROW - SIDE]).collect::<Vec<f32>>();
    let shared: Vec<f32> = shared.chunks_exact(SIDE).flat_map(filled).collect();
    let mut swept: Vec<(Swept, [usize; 3])> = Vec::new();
    for (direction, degrees) in ASKEW.iter().enumerate() {
        let turned = Pose {
            u: expected.u.turned(degrees.to_radians()),
            v: expected.v.turned(degrees.to_radians()),
            ..*expected
        };
        let patch = Patch::straight(luma, &turned, reach);
        for down in 0..=2 * reach {
            for right in 0..=2 * reach {
                let rating = patch.rate(&shared, right, down);
                if rating < PROMISING {
                    continue;
                }
                let off = |at: usize| float(at) - float(reach);
                let centre = turned.centre + turned.u * off(right) + turned.v * off(down);
                swept.push((Swept { rating, pose: Pose { centre, ..turned } }, [direction, right, down]));
            }
        }
    }
    swept.sort_by(|a, b| b.0.rating.total_cmp(&a.0.rating));
    let mut kept: Vec<(Swept, [usize; 3])> = Vec::new();
    for one in swept {
        let near = |k: usize, other: &[usize; 3]| one.1[k].abs_diff(other[k]) < APART;
        if !kept.iter().any(|(_, other)| near(1, other) && near(2, other)) {
            kept.push(one);
            if kept.len() == most {
                break;
            }
        }
    }
    kept.into_iter().map(|(swept, _)| swept).collect()
}

/// Poses with the largest correlation with the shared part, best first, `most` at most; `px` gives the pixels
/// a module.
pub(super) fn likeliest(
    luma: &Luma,
    identifier: &Identifier<'_>,
    (poses, px): (Vec<Pose>, impl Fn(&Pose) -> f64 + Sync),
    most: usize,
) -> Vec<Pose> {
    let rated =
        |seen: &mut Vec<f32>, pose: Pose| (fit(luma, &identifier.shared(px(&pose)), &pose, seen), pose);
    let mut rated: Vec<(f32, Pose)> =
        poses.into_par_iter().with_min_len(64).map_init(Vec::new, rated).collect();
    rated.sort_by(|a, b| b.0.total_cmp(&a.0));
    rated.truncate(most);
    rated.into_iter().map(|(_, pose)| pose).collect()
}

/// Correlation of what is seen under a pose, one place a module, with the shared part.
fn fit(luma: &Luma, shared: &[f32], pose: &Pose, seen: &mut Vec<f32>) -> f32 {
    let corner = 0.5 - float(SIDE) / 2.0;
    luma.lattice(pose.centre + (pose.u + pose.v) * corner, [pose.u, pose.v], [SIDE, SIDE], seen);
    let count = single(float(seen.len()));
    let mean = seen.iter().sum::<f32>() / count;
    let power = seen.iter().map(|level| (level - mean).powi(2)).sum::<f32>().max(count);
    // the shared part has no mean
    seen.iter().zip(shared).map(|(level, part)| level * part).sum::<f32>() / power.sqrt()
}

/// Straightened piece of the photo, one level a module, row by row.
struct Patch {
    side: usize,
    level: Vec<f32>,
    /// Summed-area tables of levels and of their squares, (side + 1) × (side + 1).
    sums: Vec<[f64; 2]>,
}

impl Patch {
    fn straight(luma: &Luma, pose: &Pose, reach: usize) -> Self {
        let side = 2 * reach + SIDE;
        let fine = side * SAMPLES;
        let step = 1.0 / float(SAMPLES);
        let corner = step / 2.0 - float(side) / 2.0;
        let mut samples = Vec::new();
        let first = pose.centre + pose.u * corner + pose.v * corner;
        luma.lattice(first, [pose.u * step, pose.v * step], [fine, fine], &mut samples);
        let mean = |at: usize| {
            let first = at / side * SAMPLES * fine + at % side * SAMPLES;
            let rows =
                (0..SAMPLES).flat_map(|row| &samples[first + row * fine..first + row * fine + SAMPLES]);
            rows.sum::<f32>() / single(float(SAMPLES * SAMPLES))
        };
        let mut level: Vec<f32> = (0..side * side).map(mean).collect();
        level.resize(side * side + ROW, 0.0);
        let width = side + 1;
        let mut sums = vec![[0.0; 2]; width * width];
        for y in 0..side {
            let mut row = [0.0; 2];
            for x in 0..side {
                let level = f64::from(level[y * side + x]);
                row = [row[0] + level, row[1] + level * level];
                let above = sums[y * width + x + 1];
                sums[(y + 1) * width + x + 1] = [above[0] + row[0], above[1] + row[1]];
            }
        }
        Self { side, level, sums }
    }

    /// Correlation of the shared part with the code whose top left module is there, normalised without its
    /// [`EDGE`].
    fn rate(&self, shared: &[f32], right: usize, down: usize) -> f32 {
        let mut sums = [0.0_f32; 8];
        for (row, part) in shared.chunks_exact(ROW).enumerate() {
            let at = (down + row) * self.side + right;
            let seen = &self.level[at..at + ROW];
            for (seen, part) in seen.chunks_exact(8).zip(part.chunks_exact(8)) {
                for k in 0..8 {
                    sums[k] += seen[k] * part[k];
                }
            }
        }
        let fit = sums.iter().sum::<f32>();
        let width = self.side + 1;
        let (left, top) = (right + EDGE, down + EDGE);
        let (past, below) = (right + SIDE - EDGE, down + SIDE - EDGE);
        let sum = |k: usize| {
            self.sums[below * width + past][k] + self.sums[top * width + left][k]
                - self.sums[top * width + past][k]
                - self.sums[below * width + left][k]
        };
        let places = float((SIDE - 2 * EDGE).pow(2));
        let power = (sum(1) - sum(0) * sum(0) / places).max(places);
        fit / single(power.sqrt())
    }
}
