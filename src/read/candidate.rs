//! Candidates: rough poses at which a code may lie, whichever finder they come from, and what is done with all of them alike.
//!
//! | finder            | looks                              | at              |
//! |-------------------|------------------------------------|-----------------|
//! | `triples`         | three finder patterns that lines cross | the whole photo |
//! | `area_finders`    | three ratings by area, of four corners | the whole photo |
//! | `seek`, flat      | three ratings as in a flat code    | a cell          |
//! | `seek`, sheared   | three peaks of the ratings         | a cell          |
//! | `template_search` | the shared part at every place     | a cell          |

use rayon::prelude::*;

use super::identify::Identifier;
use super::pose::Pose;
use super::template::{dot, single, sum};
use crate::frame::float;
use crate::photo::Luma;
use crate::plan::code::SIDE;

/// Finder of a candidate.
#[derive(Copy, Clone, Debug, PartialEq, Eq)]
pub enum Source {
    /// Three finder patterns found along lines.
    Crossings,
    /// Three of four corners rated by area.
    Areas,
    /// Three ratings of a cell's patch that stand as in a code that lies flat.
    Flat,
    /// Three peaks of a cell's patch, as in a code that is seen narrow or sheared.
    Sheared,
    /// Correlation of a cell's patch with the shared part.
    Template,
}

/// Rough pose at which a code may lie.
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct Candidate {
    /// Pose in the photo, off by a module or so and a few degrees.
    pub pose: Pose,
    /// Score, larger for likelier ones; comparable among candidates of one source.
    pub score: f32,
    /// Finder it comes from.
    pub source: Source,
}

impl Candidate {
    /// The candidate with its code seen in a mirror: what all codes share is nearly the same there.
    pub(super) fn mirrored(self) -> Self {
        Self { pose: self.pose.mirror(), ..self }
    }
}

/// Greedy non-maximum suppression of items sorted best first: none near a better one is kept, `most` at most.
pub(super) fn suppress_non_maxima<T>(
    best_first: impl IntoIterator<Item = T>,
    is_near: impl Fn(&T, &T) -> bool,
    most: usize,
) -> Vec<T> {
    let mut kept: Vec<T> = Vec::new();
    for one in best_first {
        if kept.len() == most {
            break;
        }
        if !kept.iter().any(|better| is_near(&one, better)) {
            kept.push(one);
        }
    }
    kept
}

/// Candidates by their correlation with the shared part, which becomes their score; best first, `most` at most.
///
/// `px` gives the pixels a module for which the shared part is blurred.
pub(super) fn rank_by_template(
    luma: &Luma,
    identifier: &Identifier,
    (candidates, px): (Vec<Candidate>, impl Fn(&Pose) -> f64 + Sync),
    most: usize,
) -> Vec<Candidate> {
    let rated = |seen: &mut Vec<f32>, one: Candidate| Candidate {
        score: fit(luma, identifier.shared(px(&one.pose)), &one.pose, seen),
        ..one
    };
    let mut rated: Vec<Candidate> =
        candidates.into_par_iter().with_min_len(64).map_init(Vec::new, rated).collect();
    rated.sort_by(|a, b| b.score.total_cmp(&a.score));
    rated.truncate(most);
    rated
}

/// Correlation of what is seen under a pose, one place a module, with the shared part.
fn fit(luma: &Luma, shared: &[f32], pose: &Pose, seen: &mut Vec<f32>) -> f32 {
    let corner = 0.5 - float(SIDE) / 2.0;
    luma.lattice(pose.centre + (pose.u + pose.v) * corner, [pose.u, pose.v], [SIDE, SIDE], seen);
    let count = single(float(seen.len()));
    let mean = sum(seen) / count;
    let product = dot(seen, shared); // the shared part has no mean
    seen.iter_mut().for_each(|level| *level -= mean);
    product / dot(seen, seen).max(count).sqrt()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn none_near_a_better_one_is_kept() {
        let near = |a: &i32, b: &i32| (a - b).abs() < 3;
        assert_eq!(suppress_non_maxima([10, 11, 4, 13, 5], near, 9), [10, 4, 13]);
        assert_eq!(suppress_non_maxima([10, 11, 4, 13, 5], near, 2), [10, 4]);
        assert!(suppress_non_maxima(Vec::<i32>::new(), near, 2).is_empty());
    }
}
