//! A rough pose becomes an exact one, and the code under it a name, or none.

use super::align::{Aligner, Freedom};
use super::book::{Book, Light, Match, Whose};
use super::pose::Pose;
use crate::photo::Luma;

/// The least correlation with the shared part for a code to be there at all. Clean codes have 0.6 to 0.8; half of that is
/// left where a shadow or a neighbour lies over a part. Naming asks for more; halved, drawings take time and give nothing.
const PRESENT: f32 = 0.42;
/// The same after the first steps of alignment, below which it is not gone on with.
const HOPELESS: f32 = 0.2;
/// The least correlation with a code's own part for its name to be taken. The largest of 3,000 chance correlations over
/// some 250 free places lies near 0.25.
const KNOWN: f32 = 0.38;
/// By how much the best code must be likelier than the second, as a natural logarithm.
const LIKELIER: f32 = 12.0;
/// How strong the code's own part must be for what the shared part lets expect. With this and the others, codes of events
/// whose tag differs in one character are never named: the test below tries 320.
const STRENGTH: f32 = 0.65;
/// The same for a bleached code, of which the sun leaves more of this and less of that; it must then be
/// [`LIKELIER_BLEACHED`].
const STRENGTH_BLEACHED: f32 = 0.5;
/// By how much the best code must be likelier than the second where the code is bleached.
const LIKELIER_BLEACHED: f32 = 20.0;
/// The least share of what is seen, light left out, that the whole code explains.
const EXPLAINED: f32 = 0.5;
/// Places that speak for or against a code independently of each other: of 441 modules, shared ones left out, what blur
/// and the photo's compression leave.
const FREE_PLACES: f32 = 200.0;
/// The score at which a name is taken without looking at further places.
const SURE: f32 = 0.6;

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
        self.whose.is_some() && self.matched.score >= SURE && self.matched.likelier() >= 2.0 * LIKELIER
    }

    /// What decides between two readings of one place: name first, then correlation.
    #[must_use]
    pub fn rank(&self) -> f32 {
        let named = if self.whose.is_some() { 1.0 } else { 0.0 };
        named + self.matched.score + self.matched.shared
    }
}

impl Match {
    /// By how much the best code is likelier than the second, as a natural logarithm: what each leaves unexplained, taken
    /// for Gaussian noise over the places that are free of each other.
    #[must_use]
    pub fn likelier(&self) -> f32 {
        let left = |score: f32| 1.0 - score.max(0.0).powi(2).min(0.999);
        FREE_PLACES / 2.0 * (left(self.second) / left(self.score)).ln()
    }

    /// The share of what is seen, light left out, that the best code explains, 0 … 1.
    #[must_use]
    pub fn explained(&self) -> f32 {
        let shared = self.shared.powi(2);
        shared + (1.0 - shared) * self.score.max(0.0).powi(2)
    }

    /// How sure the name is, 0 … 1, when any of `codes` codes might have been there.
    #[must_use]
    pub fn certainty(&self, codes: usize) -> f64 {
        let others = crate::frame::float(codes.saturating_sub(1));
        1.0 / (1.0 + others * f64::from(-self.likelier()).exp())
    }

    /// Whether all speaks for the best code.
    #[must_use]
    pub fn settled(&self) -> bool {
        let (likelier, strength) =
            if self.bleached { (LIKELIER_BLEACHED, STRENGTH_BLEACHED) } else { (LIKELIER, STRENGTH) };
        self.score >= KNOWN
            && self.likelier() >= likelier
            && self.strength >= strength
            && self.explained() >= EXPLAINED
    }
}

/// Names codes.
#[derive(Debug)]
pub struct Identifier<'a> {
    book: &'a Book,
    shared: [Option<Aligner<'a>>; 2],
}

impl<'a> Identifier<'a> {
    /// For the codes of a book.
    #[must_use]
    pub fn new(book: &'a Book) -> Self {
        let shared = [Light::AsSeen, Light::Evened]
            .map(|light| Aligner::new(&book.sheet(light.first_view()).shared, light));
        Self { book, shared }
    }

    /// The code near `rough`, which may be off by a module or so and a few degrees; `None` where there is none.
    #[must_use]
    pub fn identify(&self, luma: &Luma, rough: Pose, light: Light) -> Option<Found> {
        let mut seen = Vec::new();
        let [as_seen, evened] = &self.shared;
        let shared = if light == Light::AsSeen { as_seen } else { evened };
        let shared = shared.as_ref()?;
        let pose = shared.align(luma, rough, (Freedom::Rigid, 2), &mut seen);
        if self.book.sheet(light.first_view()).shared_fit(&seen) < HOPELESS {
            return None;
        }
        let pose = shared.align(luma, pose, (Freedom::Affine, 6), &mut seen);
        let (view, first) = self.compare(&seen, light)?;
        if strayed(&rough, &pose) {
            return None;
        }
        let mut best = (pose, first);
        for at in first.ranked {
            let drawn = self.book.drawn(at, view);
            let closer = Aligner::new(&drawn, light)?.align(luma, pose, (Freedom::Affine, 4), &mut seen);
            let (_, again) = self.compare(&seen, light)?;
            if again.best == at && again.explained() > best.1.explained() && !strayed(&rough, &closer) {
                best = (closer, again);
            }
            if best.1.settled() && best.1.likelier() > 2.0 * LIKELIER {
                break;
            }
        }
        let (pose, matched) = best;
        Some(Found { pose, whose: matched.settled().then(|| self.book.whose(matched.best)), matched })
    }

    /// The comparison in the view that explains most of what is seen, and that view.
    fn compare(&self, seen: &[f32], light: Light) -> Option<(usize, Match)> {
        let views = self.book.views_of(seen, light).into_iter();
        views
            .filter(|(fit, _)| *fit >= PRESENT)
            .map(|(_, view)| (view, self.book.sheet(view).compare(seen)))
            .max_by(|a, b| a.1.explained().total_cmp(&b.1.explained()))
    }
}

/// Whether alignment ended at something else than it started from.
fn strayed(rough: &Pose, pose: &Pose) -> bool {
    let size = rough.px_per_module();
    let grown = pose.px_per_module() / size;
    rough.centre.distance(pose.centre).value() > 4.0 * size || !(0.75..1.33).contains(&grown)
}

#[cfg(test)]
mod tests {
    use super::super::paint::{event, paint, pose};
    use super::*;
    use crate::frame::Vector;
    use proptest::prelude::*;

    #[test]
    fn every_code_of_an_event_is_named_and_no_other_events() {
        let own = event("K7M");
        let book = Book::new(&own);
        let identifier = Identifier::new(&book);
        let here = pose(30.0, 30.0, 1.6, 3.0);
        for square in &own.squares {
            let luma = paint(60, 60, &[(here, square.modules.clone())]);
            let found = identifier.identify(&luma, here, Light::AsSeen).unwrap();
            assert_eq!(found.whose, Some(Whose::Square(square.cell)), "{}", square.label);
        }
        // tags that differ in one character, so that as much as can be is alike
        for tag in ["K7N", "K8M", "J7M", "7KM"] {
            for square in &event(tag).squares {
                let luma = paint(60, 60, &[(here, square.modules.clone())]);
                for light in [Light::AsSeen, Light::Evened] {
                    let whose = identifier.identify(&luma, here, light).and_then(|found| found.whose);
                    assert_eq!(whose, None, "{tag} {}", square.label);
                }
            }
        }
    }

    #[test]
    fn a_sharp_code_three_degrees_askew_is_named() {
        let own = event("K7M");
        let book = Book::new(&own);
        for askew in [-3.0, -2.86, 2.0, 3.0] {
            let luma = paint(154, 154, &[(pose(77.0, 77.0, 4.295, 0.0), own.squares[19].modules.clone())]);
            let found = Identifier::new(&book).identify(&luma, pose(77.0, 77.0, 4.295, askew), Light::AsSeen);
            let matched = found.map(|found| found.matched);
            assert_eq!(
                found.unwrap().whose,
                Some(Whose::Square(own.squares[19].cell)),
                "{askew}: {matched:?}"
            );
        }
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(40))]
        #[test]
        fn a_rough_pose_becomes_an_exact_one(
            at in 0_usize..80, px in 1.4..5.0_f64, degrees in -180.0..180.0_f64,
            right in -0.6..0.6_f64, down in -0.6..0.6_f64, askew in -3.0..3.0_f64,
        ) {
            let own = event("K7M");
            let book = Book::new(&own);
            let side = 34.0 * px + 8.0;
            let size = crate::frame::ceil_index(side);
            let truth = pose(side / 2.0, side / 2.0, px, degrees);
            let luma = paint(size, size, &[(truth, own.squares[at].modules.clone())]);
            let off = pose(side / 2.0, side / 2.0, px, degrees + askew);
            let rough = Pose { centre: off.centre + Vector::new(right * px, down * px), ..off };
            let found = Identifier::new(&book).identify(&luma, rough, Light::AsSeen).unwrap();
            prop_assert_eq!(found.whose, Some(Whose::Square(own.squares[at].cell)));
            for (seen, there) in found.pose.corners().iter().zip(truth.corners()) {
                prop_assert!(seen.distance(there).value() < 0.12 * px, "off by {:?}", seen.distance(there));
            }
        }
    }
}
