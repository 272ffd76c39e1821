//! Identification: refines a rough pose, and names the code under it, or leaves it without a name.

use super::align::{Aligner, Freedom};
use super::codebook::{Codebook, Light, Match, Owner, Weight};
use super::model_fit::{ModelFit, Pixels, weigh};
use super::pose::Pose;
use super::template::{LATTICE, single};
use crate::frame::float;
use crate::photo::Luma;
use crate::plan::code::SIDE;
use crate::plan::{Cell, Printed};

/// Minimum correlation with the shared part for a candidate to be a code at all.
///
/// Clean codes have 0.6 to 0.8; half of that is left where a shadow or a neighbour lies over a part. Naming
/// asks for more; halved, drawings take time and give nothing.
const PRESENT: f32 = 0.42;
/// Minimum correlation with the shared part where a code is looked for that hardly shows: drawn up to, or
/// dark and noisy.
const PRESENT_FAINTLY: f32 = 0.32;
/// Minimum correlation with the shared part after the rigid steps of alignment; below it the candidate is
/// dropped.
const HOPELESS: f32 = 0.2;
/// Minimum score, the correlation with a code's own part, for a name.
///
/// The largest of 3,000 chance correlations over some 250 free places lies near 0.25.
const KNOWN: f32 = 0.38;
/// Minimum log likelihood ratio of the best code to the second best for a name.
const LIKELIER: f32 = 12.0;
/// Minimum ratio of measured to expected contrast in the code's own part, for codes that were not weighed.
const STRENGTH: f32 = 0.65;
/// Minimum score for a name without weighing.
///
/// Of 21,000 foreign codes and drawings (`limit trials`) the likeliest had a score, a log likelihood ratio
/// and an explained share of 0.77, 65 and 0.69, the next 0.72, 42 and 0.69; halved, squares of other events
/// are named unweighed.
const CLEAR_SCORE: f32 = 0.8;
/// Minimum log likelihood ratio of the best code to the second best for a name without weighing.
const CLEAR_LIKELIER: f32 = 100.0;
/// Minimum explained share for a name without weighing.
const CLEAR_EXPLAINED: f32 = 0.7;
/// Number of independent places that decide between two codes: of 441 modules, shared ones left out, what
/// blur and the photo's compression leave.
const FREE_PLACES: f32 = 200.0;
/// Minimum score of a named code at which no further candidates are looked at.
const SURE: f32 = 0.6;

/// Minimum score for a code to be weighed.
const WORTH: f32 = 0.3;
/// Minimum log likelihood ratio of the best code to the second best for it to be weighed.
const WORTH_LIKELIER: f32 = 8.0;

/// Standard deviation of the blur of a phone's photo, pixels and interpolation included, in pixels.
const USUAL_BLUR_PX: f64 = 0.95;

/// Maximum number of Gauss–Newton steps for the blur of a code whose pose is known.
const BLUR_STEPS: usize = 3;

/// Radius within which two codes are one, in modules: half the width of a code.
const SAME_PLACE: f64 = 10.0;

/// Detection of a code in the photo, identified or not.
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct Detection {
    /// Pose of the code in the photo.
    pub pose: Pose,
    /// Owner of the code; `None` where the evidence for the best code is too small.
    pub owner: Option<Owner>,
    /// Comparison with the codebook.
    pub matched: Match,
}

impl Detection {
    /// The cell where the square with this code belongs; `None` for cards and where the code has no name.
    #[must_use]
    pub fn home(&self) -> Option<Cell> {
        match self.owner {
            Some(Owner::Square(home)) => Some(home),
            _ => None,
        }
    }

    /// Whether this code lies elsewhere than another: farther from it than half the width of a code.
    #[must_use]
    pub fn is_clear_of(&self, other: &Self) -> bool {
        self.pose.centre.distance(other.pose.centre).value() > SAME_PLACE * other.pose.px_per_module()
    }

    /// Whether no further candidates need to be looked at.
    #[must_use]
    pub fn sure(&self) -> bool {
        self.owner.is_some()
            && self.matched.score >= SURE
            && self.matched.log_likelihood_ratio() >= 2.0 * LIKELIER
    }

    /// Order of two detections at one place: named before nameless, then by the sum of the two correlations.
    #[must_use]
    pub fn rank(&self) -> f32 {
        let named = if self.owner.is_some() { 1.0 } else { 0.0 };
        named + self.matched.score + self.matched.shared
    }
}

impl Match {
    /// Log likelihood ratio of the best code to the second best.
    ///
    /// The residual of each is taken for Gaussian noise over 200 independent places.
    #[must_use]
    pub fn log_likelihood_ratio(&self) -> f32 {
        let left = |score: f32| 1.0 - score.max(0.0).powi(2).min(0.999);
        FREE_PLACES / 2.0 * (left(self.second) / left(self.score)).ln()
    }

    /// Share of the variation of what is seen, light left out, that the best code explains, 0 … 1.
    #[must_use]
    pub fn explained(&self) -> f32 {
        let shared = self.shared.powi(2);
        shared + (1.0 - shared) * self.score.max(0.0).powi(2)
    }

    /// Probability, 0 … 1, that the best code is the one seen, when any of `codes` codes might be there, or
    /// none of them.
    #[must_use]
    pub fn certainty(&self, codes: usize) -> f64 {
        let others = float(codes.max(1)) / CODES_TRIED;
        1.0 / (1.0 + others * f64::from(-self.evidence()).exp())
    }

    /// Evidence for the best code: the natural logarithm of its odds against all else that may be there.
    #[must_use]
    pub fn evidence(&self) -> f32 {
        let Some(weight) = self.weight else {
            let [constant, by_likelier] = COMPARED;
            return constant + by_likelier * self.log_likelihood_ratio();
        };
        let flips = self.by_flips(&weight);
        if weight.blur_modules > LEFT_BLURRED { flips } else { flips.max(self.by_both(&weight)) }
    }

    /// Mean of the evidence from the flips and from the residual.
    fn by_both(&self, weight: &Weight) -> f32 {
        f32::midpoint(self.by_flips(weight), by_left(weight))
    }

    /// Evidence from the flips, in log odds: how little of the residual looks like modules of another colour.
    fn by_flips(&self, weight: &Weight) -> f32 {
        let [constant, by_likelier, by_rest, by_lead, by_flips] = BY_FLIPS;
        constant
            + by_likelier * self.log_likelihood_ratio()
            + by_rest * weight.rest.max(0.05).ln()
            + by_lead * (1.0 + weight.lead.max(0.0)).ln()
            + by_flips * weight.flips.max(0.05).ln()
    }

    /// Whether the comparison alone decides, so that nothing needs to be weighed.
    #[must_use]
    pub fn is_unambiguous(&self) -> bool {
        !self.bleached
            && self.score >= CLEAR_SCORE
            && self.log_likelihood_ratio() >= CLEAR_LIKELIER
            && self.strength >= STRENGTH
            && self.explained() >= CLEAR_EXPLAINED
    }

    /// Whether the best code may be named.
    #[must_use]
    pub fn is_accepted(&self) -> bool {
        let Some(weight) = self.weight else { return self.is_unambiguous() };
        let surely = |most: f32| {
            if self.bleached || weight.blur_modules > most { SURELY_BLURRED } else { SURELY }
        };
        self.score >= KNOWN
            && self.log_likelihood_ratio() >= LIKELIER
            && INK.contains(&weight.ink)
            && (self.by_flips(&weight) >= surely(BLURRED)
                || (by_left(&weight) >= surely(LEFT_BLURRED)
                    && weight.blur_modules <= LEFT_BLURRED
                    && self.by_both(&weight) >= SURELY_BOTH))
    }
}

/// Evidence from the size of the residual, in log odds.
///
/// It says more than the flips where a phone's sharpening or steep light leaves the same pattern at every
/// code.
fn by_left(weight: &Weight) -> f32 {
    let [constant, by_left, by_rest, by_lead] = BY_LEFT;
    let left = weight.left.clamp(0.01, 0.99);
    constant
        + by_left * (left / (1.0 - left)).ln()
        + by_rest * weight.rest.max(0.05).ln()
        + by_lead * (1.0 + weight.lead.max(0.0)).ln()
}

/// Coefficients of the logistic regression on the comparison alone: constant and weight of the log likelihood
/// ratio.
///
/// The outcome of all three regressions is "the best code is the one that is there", over single made codes,
/// a third of them none of the event's (`limit trials`): here 40,800 codes at 0.65 to 2.2 px a module with a
/// log likelihood ratio of 8 to 70.
const COMPARED: [f32; 2] = [-4.27, 0.245];
/// Coefficients of the logistic regression on the flips: constant, and weights of the comparison's log
/// likelihood ratio and of the logarithms of rest, lead and flips.
///
/// Over 20,800 codes at 0.7 to 1.15 px a module with a log likelihood ratio of 8 to 130.
const BY_FLIPS: [f32; 5] = [-4.334, 0.0871, -4.574, 2.454, -2.211];
/// Coefficients of the logistic regression on the residual: constant, and weights of the residual's log odds
/// and of the logarithms of rest and lead.
///
/// Over 740 squares of the event and the 1,190 likest of other events on made walls at 0.8 to 1.3 px a
/// module. The constant is moved by 3, so that [`SURELY`] is the minimum for a name here too.
const BY_LEFT: [f32; 4] = [-20.0, -10.2, -4.3, 5.5];
/// Maximum blur, in modules, at which the residual's size counts: beyond it hardly anything shows at all.
const LEFT_BLURRED: f32 = 1.75;
/// Number of codes in the codebook that the regressions were fitted with.
const CODES_TRIED: f64 = 220.0;
/// Minimum evidence, in log odds, for a name.
///
/// Of 5,300 codes and drawings that were none of the event's the likeliest had 4.5, and one in fifty 0.3: a
/// tenth of the chance is left for each 2.5 more. Lower, squares of other events are named.
const SURELY: f32 = 5.5;
/// Minimum evidence, in log odds, for a name where the code is bleached or blurred beyond [`BLURRED`]: less
/// can be seen to be wrong.
const SURELY_BLURRED: f32 = 8.0;
/// Minimum mean of both kinds of evidence, in log odds, where only the residual's size suffices for a name.
///
/// Of 15,700 foreign codes and drawings one had 2.6, the next 2.2; the least of own ones named so had 4.4
/// (simulator's hard-6).
const SURELY_BOTH: f32 = 4.0;
/// Standard deviation of the blur, in modules, beyond which single modules no longer show: there foreign
/// codes came nearest.
const BLURRED: f32 = 1.25;
/// Range of the ink's darkness, as a share of the paper's brightness, in which a code may be named.
///
/// Printed black has 0.6 and more, in glare a third of that; what noise and compression make of a bare wall
/// has less than 0.1. Nothing is darker than black, but where the sun clips the paper's white, its brightness
/// is taken for less than it is: 1.27 was seen.
pub(super) const INK: std::ops::Range<f32> = 0.15..1.4;

/// Identifier of codes: an event's codebook, with aligners for its shared part.
#[derive(Debug)]
pub struct Identifier {
    codebook: Codebook,
    shared: [Option<Aligner<'static>>; 2],
}

impl Identifier {
    /// Identifier for the codes of an event; prepares all templates, in parallel.
    #[must_use]
    pub fn new(printed: &Printed) -> Self {
        let codebook = Codebook::new(printed);
        let shared = [Light::AsSeen, Light::Evened]
            .map(|light| Aligner::new(codebook.sheet(light.first_view()).shared.clone(), light));
        Self { codebook, shared }
    }

    /// Owner of the code at an index of the codebook, as in [`Match::best`].
    #[must_use]
    pub fn owner(&self, at: usize) -> Owner {
        self.codebook.owner(at)
    }

    /// Shared part as a photo with this many pixels a module shows it: 21 × 21 levels, one a module, row by
    /// row, light projected out.
    pub(super) fn shared(&self, px_per_module: f64) -> Vec<f32> {
        let sheet = self.codebook.sheet(self.codebook.view_near(USUAL_BLUR_PX / px_per_module));
        let fine = |at: usize| [at, at + 1, at + LATTICE, at + LATTICE + 1].map(|at| sheet.shared[at]);
        (0..SIDE * SIDE)
            .map(|i| fine(i / SIDE * 2 * LATTICE + i % SIDE * 2).iter().sum::<f32>() / 4.0)
            .collect()
    }

    /// Detection of the code near `rough`, which may be off by a module or so and a few degrees; `None` where
    /// there is none.
    #[must_use]
    pub fn identify(&self, luma: &Luma, rough: Pose, light: Light) -> Option<Detection> {
        self.identified(luma, rough, light, PRESENT)
    }

    /// Detection of a code near `rough` that hardly shows: a lower correlation with the shared part suffices.
    pub(super) fn identify_faint(&self, luma: &Luma, rough: Pose) -> Option<Detection> {
        self.identified(luma, rough, Light::AsSeen, PRESENT_FAINTLY)
    }

    fn identified(&self, luma: &Luma, rough: Pose, light: Light, present: f32) -> Option<Detection> {
        let mut seen = Vec::new();
        let [as_seen, evened] = &self.shared;
        let shared = if light == Light::AsSeen { as_seen } else { evened };
        let shared = shared.as_ref()?;
        let pose = shared.align(luma, rough, (Freedom::Rigid, 2), &mut seen);
        if self.codebook.sheet(light.first_view()).shared_fit(&seen) < HOPELESS {
            return None;
        }
        let pose = shared.align(luma, pose, (Freedom::Affine, 6), &mut seen);
        let views = self.views(&seen, light, present);
        let among = self.codebook.sheet(*views.first()?).shortlist(&seen);
        let (view, first) = self.compare(&seen, &views, &among)?;
        if strayed(&rough, &pose) {
            return None;
        }
        let mut best = (pose, first);
        for at in first.ranked.into_iter().take(3) {
            let drawn = self.codebook.drawn(at, view);
            let closer = Aligner::new(&drawn, light)?.align(luma, pose, (Freedom::Affine, 4), &mut seen);
            let views = self.views(&seen, light, present);
            let Some((_, again)) = self.compare(&seen, &views, &among) else { continue };
            if again.best == at && again.explained() > best.1.explained() && !strayed(&rough, &closer) {
                best = (closer, again);
            }
            if best.1.is_unambiguous() {
                break;
            }
        }
        let (closer, matched) =
            if best.1.is_unambiguous() { best } else { self.weighed(luma, best.0, best.1, view) };
        let owner = matched.is_accepted().then(|| self.codebook.owner(matched.best));
        // a code of another event is not to be pulled towards one of this
        let pose = if owner.is_some() { closer } else { best.0 };
        Some(Detection { pose, owner, matched })
    }

    /// Best-ranked codes weighed against the photo's own pixels: pose and match of the one with the smallest
    /// residual.
    fn weighed(&self, luma: &Luma, pose: Pose, matched: Match, view: usize) -> (Pose, Match) {
        let (blur, drowned) = self.codebook.view(view);
        let start = (pose, blur * pose.px_per_module());
        let worth = matched.score >= WORTH && matched.log_likelihood_ratio() >= WORTH_LIKELIER;
        let Some(pixels) = Pixels::under(luma, &pose).filter(|_| worth) else { return (pose, matched) };
        let sound = |w: &ModelFit| w.ink > 0.0 && !strayed(&pose, &w.pose);
        let weighed = |at: usize, from: (Pose, f64), steps: usize| {
            weigh(&pixels, self.codebook.modules(at), drowned, from, steps).filter(sound).map(|w| (at, w))
        };
        let Some(first) = weighed(matched.best, start, 5) else { return (pose, matched) };
        // the others begin where the best has led: that is near for them too
        let from = (first.1.pose, first.1.blur);
        let others = matched.ranked.into_iter().filter(|at| *at != matched.best);
        let mut weighed: Vec<(usize, ModelFit)> = others.filter_map(|at| weighed(at, from, 2)).collect();
        weighed.push(first);
        weighed.sort_by(|a, b| a.1.left.total_cmp(&b.1.left));
        let [(best, first), (_, second), ..] = weighed.as_slice() else { return (pose, matched) };
        let weight = Weight {
            left: single(first.left / first.without),
            rest: single(first.known_and_rest[1] / first.known_and_rest[0]),
            lead: single(0.25 * float(first.pixels) * (second.left / first.left).ln()),
            blur: single(first.blur),
            blur_modules: single(first.blur / first.pose.px_per_module()),
            flips: single(first.flips),
            ink: single(first.ink),
        };
        (first.pose, Match { best: *best, weight: Some(weight), ..matched })
    }

    /// Standard deviation of the blur of a named code, in pixels; `None` where it cannot be fitted.
    pub(super) fn blur(&self, luma: &Luma, found: &Detection) -> Option<f32> {
        if let Some(weight) = found.matched.weight {
            return Some(weight.blur);
        }
        let start = (found.pose, USUAL_BLUR_PX);
        let pixels = Pixels::under(luma, &found.pose)?;
        weigh(&pixels, self.codebook.modules(found.matched.best), 0.0, start, BLUR_STEPS)
            .map(|w| single(w.blur))
    }

    /// Views with the largest correlation with the shared part, best first; none below `present`.
    fn views(&self, seen: &[f32], light: Light, present: f32) -> Vec<usize> {
        let views = self.codebook.views_of(seen, light).into_iter();
        views.filter(|(fit, _)| *fit >= present).map(|(_, view)| view).collect()
    }

    /// Comparison with these codes in the view that explains most of what is seen, with that view's index.
    fn compare(&self, seen: &[f32], views: &[usize], among: &[usize]) -> Option<(usize, Match)> {
        let compared = views.iter().map(|view| (*view, self.codebook.sheet(*view).compare(seen, among)));
        compared.max_by(|a, b| a.1.explained().total_cmp(&b.1.explained()))
    }
}

/// Whether alignment left its start: by more than 4 modules, or by more than a third in size.
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
        let identifier = Identifier::new(&own);
        let here = pose(30.0, 30.0, 1.6, 3.0);
        for square in &own.squares {
            let luma = paint(60, 60, &[(here, square.modules.clone())]);
            let found = identifier.identify(&luma, here, Light::AsSeen).unwrap();
            assert_eq!(found.owner, Some(Owner::Square(square.cell)), "{}", square.label);
        }
        // tags that differ in one character, so that as much as can be is alike
        for tag in ["K7N", "K8M", "J7M", "7KM"] {
            for square in &event(tag).squares {
                let luma = paint(60, 60, &[(here, square.modules.clone())]);
                for light in [Light::AsSeen, Light::Evened] {
                    let owner = identifier.identify(&luma, here, light).and_then(|found| found.owner);
                    assert_eq!(owner, None, "{tag} {}", square.label);
                }
            }
        }
    }

    #[test]
    fn at_one_pixel_a_module_weighing_tells_own_codes_from_other_events() {
        let own = event("K7M");
        let identifier = Identifier::new(&own);
        let here = pose(20.3, 20.6, 1.0, 4.0);
        let look = |square: &crate::plan::PrintedSquare| {
            let luma = paint(41, 41, &[(here, square.modules.clone())]);
            identifier.identify(&luma, here, Light::AsSeen)
        };
        let mut weighed = 0;
        for square in &own.squares {
            let found = look(square).unwrap();
            assert_eq!(found.owner, Some(Owner::Square(square.cell)), "{}", square.label);
            weighed += usize::from(found.matched.weight.is_some());
            assert!(found.matched.certainty(80) > 0.99);
        }
        for square in ["K7N", "9QX"].iter().flat_map(|tag| event(tag).squares) {
            let found = look(&square);
            assert_eq!(found.and_then(|found| found.owner), None, "{}", square.text);
            weighed += usize::from(found.is_some_and(|found| found.matched.weight.is_some()));
        }
        assert!(weighed > 20, "{weighed} were weighed");
    }

    #[test]
    fn a_lead_over_many_pixels_names_nothing_that_looks_like_other_modules() {
        // a square of another event at 1.3 px a module, out of focus
        let weight = Weight {
            left: 0.3377,
            rest: 1.9307,
            lead: 49.81,
            blur: 1.496,
            blur_modules: 1.15,
            flips: 8.634,
            ink: 0.553,
        };
        let matched = Match {
            best: 0,
            score: 0.6852,
            second: 0.5767,
            shared: 0.6265,
            strength: 0.789,
            bleached: false,
            weight: Some(weight),
            ranked: [0; 5],
        };
        assert!(!matched.is_accepted() && matched.certainty(220) < 0.95);
        let own = Weight { flips: 1.0, rest: 1.0, ..weight };
        assert!(Match { weight: Some(own), ..matched }.is_accepted());
    }

    #[test]
    fn a_sharp_code_three_degrees_askew_is_named() {
        let own = event("K7M");
        let identifier = Identifier::new(&own);
        for askew in [-3.0, -2.86, 2.0, 3.0] {
            let luma = paint(154, 154, &[(pose(77.0, 77.0, 4.295, 0.0), own.squares[19].modules.clone())]);
            let found = identifier.identify(&luma, pose(77.0, 77.0, 4.295, askew), Light::AsSeen);
            let matched = found.map(|found| found.matched);
            assert_eq!(
                found.unwrap().owner,
                Some(Owner::Square(own.squares[19].cell)),
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
            let side = 34.0 * px + 8.0;
            let size = crate::frame::ceil_index(side);
            let truth = pose(side / 2.0, side / 2.0, px, degrees);
            let luma = paint(size, size, &[(truth, own.squares[at].modules.clone())]);
            let off = pose(side / 2.0, side / 2.0, px, degrees + askew);
            let rough = Pose { centre: off.centre + Vector::new(right * px, down * px), ..off };
            let found = Identifier::new(&own).identify(&luma, rough, Light::AsSeen).unwrap();
            prop_assert_eq!(found.owner, Some(Owner::Square(own.squares[at].cell)));
            for (seen, there) in found.pose.corners().iter().zip(truth.corners()) {
                prop_assert!(seen.distance(there).value() < 0.12 * px, "off by {:?}", seen.distance(there));
            }
        }
    }
}
