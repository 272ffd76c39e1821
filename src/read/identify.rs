//! A rough pose becomes an exact one, and the code under it a name, or none.

use super::align::Aligner;
use super::book::{Book, FIRST_BLUR, Match, Whose};
use super::pose::Pose;
use crate::photo::Luma;

/// The least correlation with the shared part for a code to be there at all. Seen on made walls: codes at 1 px a module
/// with 5 % noise 0.6 and more, drawings 0.35 and less.
const PRESENT: f32 = 0.42;
/// The least correlation with a code's own part for its name to be taken. The largest of 3,000 chance correlations over
/// some 250 free places lies near 0.25.
const KNOWN: f32 = 0.45;
/// The least lead of that correlation over the second best code's.
const LEAD: f32 = 0.18;
/// The score and the lead at which a name is taken without looking at further places.
const SURE: (f32, f32) = (0.7, 0.35);

/// A code that was seen.
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct Found {
    /// Where.
    pub pose: Pose,
    /// Whose it is; `None` where the lead is too small to say.
    pub whose: Option<Whose>,
    /// The comparison.
    pub matched: Match,
}

impl Found {
    /// Whether looking further can be spared.
    #[must_use]
    pub fn sure(&self) -> bool {
        self.whose.is_some() && self.matched.score >= SURE.0 && self.lead() >= SURE.1
    }

    /// How far the best code is ahead of the second.
    #[must_use]
    pub fn lead(&self) -> f32 {
        self.matched.score - self.matched.second
    }

    /// What decides between two readings of one place: name first, then correlation.
    #[must_use]
    pub fn rank(&self) -> f32 {
        let named = if self.whose.is_some() { 1.0 } else { 0.0 };
        named + self.matched.score + self.matched.shared
    }
}

/// Names codes.
#[derive(Debug)]
pub struct Identifier<'a> {
    book: &'a Book,
    shared: Option<Aligner<'a>>,
}

impl<'a> Identifier<'a> {
    /// For the codes of a book.
    #[must_use]
    pub fn new(book: &'a Book) -> Self {
        Self { book, shared: Aligner::new(&book.sheet(FIRST_BLUR).shared) }
    }

    /// The code near `rough`, which may be off by a module or so and a few degrees; `None` where there is none.
    #[must_use]
    pub fn identify(&self, luma: &Luma, rough: Pose) -> Option<Found> {
        let mut seen = Vec::new();
        let pose = self.shared.as_ref()?.align(luma, rough, 6, &mut seen);
        let blur = self.book.blur_of(&seen);
        let first = self.book.sheet(blur).compare(&seen);
        if first.shared < PRESENT || strayed(&rough, &pose) {
            return None;
        }
        let drawn = self.book.drawn(first.best, blur);
        let pose_again = Aligner::new(&drawn)?.align(luma, pose, 4, &mut seen);
        let blur = self.book.blur_of(&seen);
        let again = self.book.sheet(blur).compare(&seen);
        let (pose, matched) = if again.best == first.best && again.score >= first.score {
            (pose_again, again)
        } else {
            (pose, first)
        };
        let known = matched.score >= KNOWN && matched.score - matched.second >= LEAD;
        Some(Found { pose, whose: known.then(|| self.book.whose(matched.best)), matched })
    }
}

/// Whether alignment ended at something else than it started from.
fn strayed(rough: &Pose, pose: &Pose) -> bool {
    let size = rough.px_per_module();
    let grown = pose.px_per_module() / size;
    rough.centre.distance(pose.centre).value() > 4.0 * size || !(0.75..1.33).contains(&grown)
}
