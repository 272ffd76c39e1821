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

use super::candidate::{Candidate, Source, suppress_non_maxima};
use super::pose::Pose;
use super::summed_area::SummedArea;
use super::template::single;
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

/// Candidates within `reach` modules of the expected pose, best first, `most` at most.
///
/// `shared` is the shared part, 21 × 21 levels, one a module, row by row, light projected out.
pub(super) fn sweep(luma: &Luma, shared: &[f32], expected: &Pose, reach: f64, most: usize) -> Vec<Candidate> {
    let reach = ceil_index(reach);
    // rows are filled up so that eight places are multiplied at a time
    let filled = |row: &[f32]| row.iter().copied().chain([0.0; ROW - SIDE]).collect::<Vec<f32>>();
    let shared: Vec<f32> = shared.chunks_exact(SIDE).flat_map(filled).collect();
    let mut swept: Vec<(Candidate, [usize; 2])> = Vec::new();
    for degrees in ASKEW {
        let turned = Pose {
            u: expected.u.turned(degrees.to_radians()),
            v: expected.v.turned(degrees.to_radians()),
            ..*expected
        };
        let patch = Patch::straight(luma, &turned, reach);
        for down in 0..=2 * reach {
            for right in 0..=2 * reach {
                let score = patch.rate(&shared, right, down);
                if score < PROMISING {
                    continue;
                }
                let off = |at: usize| float(at) - float(reach);
                let centre = turned.centre + turned.u * off(right) + turned.v * off(down);
                let pose = Pose { centre, ..turned };
                swept.push((Candidate { pose, score, source: Source::Template }, [right, down]));
            }
        }
    }
    swept.sort_by(|a, b| b.0.score.total_cmp(&a.0.score));
    let near = |a: &(Candidate, [usize; 2]), b: &(Candidate, [usize; 2])| {
        (0..2).all(|k| a.1[k].abs_diff(b.1[k]) < APART)
    };
    suppress_non_maxima(swept, near, most).into_iter().map(|(one, _)| one).collect()
}

/// Straightened piece of the photo, one level a module, row by row.
struct Patch {
    side: usize,
    level: Vec<f32>,
    sums: SummedArea<f64>,
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
        let rows = level.chunks_exact(side).map(|row| row.iter().map(|level| f64::from(*level)));
        let sums = SummedArea::new((side, side), rows);
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
        let inner = |from: usize| from + EDGE..from + SIDE - EDGE;
        let sum = self.sums.level.sum(inner(down), inner(right));
        let places = float((SIDE - 2 * EDGE).pow(2));
        let power = (self.sums.square.sum(inner(down), inner(right)) - sum * sum / places).max(places);
        fit / single(power.sqrt())
    }
}
