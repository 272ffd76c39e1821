//! Decision about a name: compared, fitted, named or not.
//!
//! ```text
//!   Compared   the code that correlates best with what is seen, on the lattice of templates, and how far it leads
//!      │       where that leaves any doubt
//!      ▼
//!   Fitted     the code that leaves the smallest residual of the photo's own pixels, and what that residual is like
//!      │
//!      ▼
//!   Evidence   the log odds of the best code against all else that may be there; a name, or why there is none
//! ```
//!
//! The two must agree: where the pixels speak for another code than the templates, nothing is named.

use super::coefficients::{COEFFICIENTS, INTERCEPT, SURELY};
use crate::frame::float;

/// Comparison of one place with the codebook.
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct Compared {
    /// Index in the codebook of the best code.
    pub best: usize,
    /// Score of the best code: correlation of what is seen with its own part, −1 … 1.
    pub score: f32,
    /// Score of the second best code, −1 … 1.
    pub second: f32,
    /// Correlation of what is seen with the shared part, −1 … 1.
    pub shared: f32,
    /// Ratio of the measured contrast of the best code's own part to what the shared part's contrast
    /// predicts.
    ///
    /// 1 for that very code, less for one that is only like it.
    pub strength: f32,
    /// Whether the view was one bleached by more than 0.3 of full dark.
    pub bleached: bool,
    /// Indices in the codebook of the best codes, best first.
    pub(super) ranked: [usize; RANKED],
}

/// Number of best codes that a comparison returns.
pub(super) const RANKED: usize = 5;

/// What the code with the smallest residual leaves of the photo's own pixels.
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct Left {
    /// Index in the codebook of the code that fits best.
    pub best: usize,
    /// Residual as a share of the variation that light alone leaves, 0 … 1.
    pub share: f32,
    /// Ratio of the mean squared residual where codes differ to that over finder patterns and timing.
    pub excess: f32,
    /// Log likelihood ratio of the best code to the second best.
    pub lead: f32,
    /// Power of the residual that looks like modules of another colour, over that of pure noise: 1 where all
    /// is noise.
    pub flips: f32,
}

/// Fit of the forward model to the photo's own pixels.
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct Fitted {
    /// With one contrast for the whole code.
    pub even: Left,
    /// With a contrast for each column of modules, or for each row: a printer's streaks.
    pub banded: Left,
    /// Standard deviation of the blur, in pixels of the photo.
    pub blur: f32,
    /// Standard deviation of the blur, in modules.
    pub blur_modules: f32,
    /// Darkness of the ink, as a share of the paper's brightness.
    pub ink: f32,
}

/// All that is known about the code at one place.
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct Evidence {
    /// Comparison with the codebook.
    pub compared: Compared,
    /// Fit to the photo's pixels; `None` where it was not needed, or not possible.
    pub fitted: Option<Fitted>,
}

/// Reason for which a code has no name.
#[derive(Copy, Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum WhyNot {
    /// Too little of any code's own part shows.
    Faint,
    /// Two codes are about as likely.
    NoLead,
    /// The comparison leaves doubt, and the pixels could not be fitted.
    NotFitted,
    /// The pixels speak for another code than the templates.
    Disagreement,
    /// The ink is too pale, or darker than black.
    Ink,
    /// The odds are too small.
    Unlikely,
}

impl Compared {
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

    /// Why the best code gets no name, whatever a fit of its pixels leaves; `None` where that decides.
    #[must_use]
    pub fn why_not(&self) -> Option<WhyNot> {
        let faults =
            [(self.score < KNOWN, WhyNot::Faint), (self.log_likelihood_ratio() < LIKELIER, WhyNot::NoLead)];
        faults.into_iter().find(|(is_so, _)| *is_so).map(|(_, why)| why)
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
}

impl Evidence {
    /// Probability, 0 … 1, that the best code is the one seen, when any of `codes` codes might be there, or
    /// none of them.
    #[must_use]
    pub fn certainty(&self, codes: usize) -> f64 {
        let others = float(codes.max(1)) / CODES_TRIED;
        1.0 / (1.0 + others * f64::from(-self.log_odds()).exp())
    }

    /// Evidence for the best code: the natural logarithm of its odds against all else that may be there.
    #[must_use]
    pub fn log_odds(&self) -> f32 {
        let Some(fitted) = self.fitted else {
            let [constant, by_likelier] = COMPARED;
            return constant + by_likelier * self.compared.log_likelihood_ratio();
        };
        // where the two disagree neither is likely, however well it does in its own way
        let lead = fitted.even.lead.max(fitted.banded.lead).max(0.0);
        self.features().map_or(-lead, |features| model(&features))
    }

    /// What the decision about a fitted code goes by, in the order of [`FEATURES`]; `None` where templates and pixels speak for
    /// different codes.
    #[must_use]
    pub fn features(&self) -> Option<[f32; FEATURES.len()]> {
        let (compared, fitted) = (&self.compared, self.fitted.as_ref()?);
        if fitted.even.best != compared.best || fitted.banded.best != compared.best {
            return None;
        }
        let log_odds = |share: f32| (share / (1.0 - share)).ln();
        let blur = fitted.blur_modules.min(MOST_BLUR);
        // a small excess may come from a finder pattern that is covered: it speaks for nothing
        let [even, banded] = [&fitted.even, &fitted.banded].map(|left| {
            [
                left.excess.max(LEAST_RATIO).ln(),
                (1.0 + left.lead.max(0.0)).ln(),
                left.flips.max(LEAST_RATIO).ln(),
                log_odds(left.share.clamp(0.01, 0.99)),
            ]
        });
        let score = log_odds(compared.score.clamp(0.05, 0.98).powi(2));
        let bleached = if compared.bleached { 1.0 } else { 0.0 };
        let own = [compared.log_likelihood_ratio().clamp(0.0, MOST_LIKELIER), score, bleached, blur];
        let mut features = [0.0; FEATURES.len()];
        let all = own.into_iter().chain(even).chain(banded);
        features.iter_mut().zip(all).for_each(|(feature, value)| *feature = value);
        Some(features)
    }

    /// Why the best code has no name; `None` where it may be named.
    #[must_use]
    pub fn why_not(&self) -> Option<WhyNot> {
        let compared = &self.compared;
        if let Some(why) = compared.why_not() {
            return Some(why);
        }
        let Some(fitted) = &self.fitted else {
            return (!compared.is_unambiguous()).then_some(WhyNot::NotFitted);
        };
        let features = self.features();
        let faults = [
            (features.is_none(), WhyNot::Disagreement),
            (!INK.contains(&fitted.ink), WhyNot::Ink),
            (features.is_some_and(|features| model(&features) < SURELY), WhyNot::Unlikely),
        ];
        faults.into_iter().find(|(is_so, _)| *is_so).map(|(_, why)| why)
    }
}

/// Log odds that the model gives to features.
fn model(features: &[f32; FEATURES.len()]) -> f32 {
    let pairs = (0..features.len()).flat_map(|i| (i..features.len()).map(move |j| features[i] * features[j]));
    let values = features.iter().copied().chain(pairs);
    INTERCEPT + values.zip(&COEFFICIENTS).map(|(value, weight)| value * weight).sum::<f32>()
}

/// Names of what the decision about a fitted code goes by; the model has a weight for each, and for the product of each two.
///
/// Of the comparison: the log likelihood ratio, the log odds of the squared score, whether it was bleached. Of the fit: the blur in
/// modules; with one contrast and with one a band, the logarithms of excess, lead (and 1) and flips, and the log odds of the
/// residual's share.
pub const FEATURES: [&str; 12] = [
    "likelier",
    "score",
    "bleached",
    "blur",
    "excess",
    "lead",
    "flips",
    "share",
    "banded_excess",
    "banded_lead",
    "banded_flips",
    "banded_share",
];

/// Maximum blur, in modules, and maximum log likelihood ratio that count: beyond them hardly anything was made.
const MOST_BLUR: f32 = 3.0;
const MOST_LIKELIER: f32 = 130.0;
/// Minimum ratio that counts: an excess below 1 says that the finder patterns are seen badly, and nothing for the code.
const LEAST_RATIO: f32 = 0.8;
/// Coefficients of the logistic regression on the comparison alone: constant and weight of the log likelihood
/// ratio.
///
/// The outcome is "the best code is the one that is there", over single made codes, a third of them none of the event's
/// (`limit trials`): 40,800 codes at 0.65 to 2.2 px a module with a log likelihood ratio of 8 to 70.
const COMPARED: [f32; 2] = [-4.27, 0.245];
/// Number of codes in the codebook that the regressions were fitted with.
const CODES_TRIED: f64 = 220.0;
/// Range of the ink's darkness, as a share of the paper's brightness, in which a code may be named.
///
/// Printed black has 0.6 and more, in glare a third of that; what noise and compression make of a bare wall
/// has less than 0.1. Nothing is darker than black, but where the sun clips the paper's white, its brightness
/// is taken for less than it is: 1.27 was seen.
pub(super) const INK: std::ops::Range<f32> = 0.15..1.4;

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

#[cfg(test)]
mod tests {
    use super::*;

    /// A square of another event at 1.3 px a module, out of focus.
    const OTHER: Evidence = Evidence {
        compared: Compared {
            best: 0,
            score: 0.6852,
            second: 0.5767,
            shared: 0.6265,
            strength: 0.789,
            bleached: false,
            ranked: [0; RANKED],
        },
        fitted: Some(Fitted { even: LEFT, banded: LEFT, blur: 1.496, blur_modules: 1.15, ink: 0.553 }),
    };
    const LEFT: Left = Left { best: 0, share: 0.3377, excess: 1.9307, lead: 49.81, flips: 8.634 };

    fn own() -> Evidence {
        let left = Left { flips: 1.0, excess: 1.0, ..LEFT };
        let fitted = OTHER.fitted.map(|fitted| Fitted { even: left, banded: left, ..fitted });
        Evidence { fitted, ..OTHER }
    }

    #[test]
    fn a_lead_over_many_pixels_names_nothing_that_looks_like_other_modules() {
        assert!(OTHER.why_not() == Some(WhyNot::Unlikely) && OTHER.certainty(220) < 0.95);
        assert_eq!(own().why_not(), None);
    }

    #[test]
    fn a_code_for_which_only_the_pixels_speak_is_not_named_with_the_score_of_another() {
        let with = |of: fn(&mut Fitted)| {
            let mut torn = own();
            torn.fitted.iter_mut().for_each(of);
            torn
        };
        for torn in [with(|fitted| fitted.even.best = 7), with(|fitted| fitted.banded.best = 7)] {
            assert_eq!(torn.why_not(), Some(WhyNot::Disagreement));
            assert!(torn.certainty(220) < 0.01, "{}", torn.certainty(220));
        }
    }

    #[test]
    fn each_lack_has_its_reason() {
        let with = |of: fn(&mut Evidence)| {
            let mut evidence = own();
            of(&mut evidence);
            evidence.why_not()
        };
        assert_eq!(with(|e| e.compared.score = 0.3), Some(WhyNot::Faint));
        assert_eq!(with(|e| e.compared.second = 0.68), Some(WhyNot::NoLead));
        assert_eq!(with(|e| e.fitted = None), Some(WhyNot::NotFitted));
        assert_eq!(with(|e| e.fitted = e.fitted.map(|f| Fitted { ink: 0.05, ..f })), Some(WhyNot::Ink));
    }
}
