//! Identification: refines a rough pose, and names the code under it, or leaves it without a name.

use super::align::{Aligner, Freedom};
use super::codebook::{Codebook, Light, Owner};
use super::decision::{Compared, Evidence, Fitted, Left};
use super::model_fit::{ModelFit, Pixels, fit, power};
use super::pose::Pose;
use super::template::single;
use super::templates::Seen;
use crate::frame::{PhotoPx, Point, float};
use crate::photo::Luma;
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
/// Minimum score of a named code, and minimum log likelihood ratio of it to the second best, at which no further candidates are
/// looked at: twice what a name asks for.
const SURE: f32 = 0.6;
const SURE_LIKELIER: f32 = 24.0;

/// Minimum score at which the pose is aligned to the best codes' own templates. Of 5,361 codes that were named on made walls and the other
/// simulator's the lowest had 0.239 before; a quarter of all that is looked at closely has less.
const REFINABLE: f32 = 0.22;

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
    /// What is known about the code.
    pub evidence: Evidence,
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
        !other.holds(self.pose.centre)
    }

    /// Whether the centre of another code at this place would lie within half the width of this one from its centre.
    #[must_use]
    pub fn holds(&self, centre: Point<PhotoPx>) -> bool {
        self.pose.centre.distance(centre).value() <= SAME_PLACE * self.pose.px_per_module()
    }

    /// Whether no further candidates need to be looked at.
    #[must_use]
    pub fn sure(&self) -> bool {
        let compared = &self.evidence.compared;
        self.owner.is_some() && compared.score >= SURE && compared.log_likelihood_ratio() >= SURE_LIKELIER
    }

    /// Order of two detections at one place: named before nameless, then by the sum of the two correlations.
    #[must_use]
    pub fn rank(&self) -> f32 {
        let named = if self.owner.is_some() { 1.0 } else { 0.0 };
        named + self.evidence.compared.score + self.evidence.compared.shared
    }
}

/// One place, compared with the codebook at a pose in the view that explains most of it.
#[derive(Copy, Clone)]
struct Look {
    pose: Pose,
    /// Index of the view.
    view: usize,
    compared: Compared,
}

/// Number of best-fitting codes that are fitted again with a contrast for each band of modules: the best, and what comes nearest.
const BANDED: usize = 3;
/// Number of best codes to whose own templates the pose is aligned.
const REFINED: usize = 3;

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

    /// Owner of the code at an index of the codebook, as in [`Compared::best`].
    #[must_use]
    pub fn owner(&self, at: usize) -> Owner {
        self.codebook.owner(at)
    }

    /// Shared part as a photo with this many pixels a module shows it, one level a module; see [`Codebook::shared_by_module`].
    pub(super) fn shared(&self, px_per_module: f64) -> &[f32] {
        self.codebook.shared_by_module(self.codebook.view_near(USUAL_BLUR_PX / px_per_module))
    }

    /// Detection of the code near `rough`, which may be off by a module or so and a few degrees; `None` where
    /// there is none.
    #[must_use]
    pub fn identify(&self, luma: &Luma, rough: Pose, light: Light) -> Option<Detection> {
        self.identified(luma, rough, light, PRESENT)
    }

    /// Detection of a code near `rough` that may hardly show: with a name a lower correlation with the shared part suffices, since
    /// what is no code may look faintly like one.
    pub(super) fn identify_faint(&self, luma: &Luma, rough: Pose, light: Light) -> Option<Detection> {
        let found = self.identified(luma, rough, light, PRESENT_FAINTLY)?;
        (found.owner.is_some() || found.evidence.compared.shared >= PRESENT).then_some(found)
    }

    fn identified(&self, luma: &Luma, rough: Pose, light: Light, present: f32) -> Option<Detection> {
        let mut levels = Vec::new();
        let [as_seen, evened] = &self.shared;
        let shared = if light == Light::AsSeen { as_seen } else { evened };
        let shared = shared.as_ref()?;
        let pose = shared.align(luma, rough, (Freedom::Rigid, 2), &mut levels);
        if self.codebook.sheet(light.first_view()).shared_fit(&Seen::of(&levels)) < HOPELESS {
            return None;
        }
        let pose = shared.align(luma, pose, (Freedom::Affine, 6), &mut levels);
        let seen = Seen::of(&levels);
        let views = self.views(&seen, light, present);
        let among = self.codebook.sheet(*views.first()?).shortlist(&seen);
        let (view, compared) = self.compare(&seen, &views, &among)?;
        if strayed(&rough, &pose) {
            return None;
        }
        let first = Look { pose, view, compared };
        let mut best = first;
        let refined = if first.compared.score < REFINABLE { 0 } else { REFINED };
        for at in first.compared.ranked.into_iter().take(refined) {
            let drawn = self.codebook.drawn(at, first.view);
            let closer = Aligner::new(&drawn, light)?.align(luma, pose, (Freedom::Affine, 4), &mut levels);
            let seen = Seen::of(&levels);
            let views = self.views(&seen, light, present);
            let Some((view, compared)) = self.compare(&seen, &views, &among) else { continue };
            let explains = compared.explained() > best.compared.explained();
            if compared.best == at && explains && !strayed(&rough, &closer) {
                best = Look { pose: closer, view, compared };
            }
            if best.compared.is_unambiguous() {
                break;
            }
        }
        let fit = if best.compared.is_unambiguous() { None } else { self.fitted(luma, &best) };
        let evidence = Evidence { compared: best.compared, fitted: fit.map(|(_, fitted)| fitted) };
        let owner = evidence.why_not().is_none().then(|| self.owner(evidence.compared.best));
        // what has no name is not to be pulled towards a code of the event
        let pose = fit.filter(|_| owner.is_some()).map_or(best.pose, |(pose, _)| pose);
        Some(Detection { pose, owner, evidence })
    }

    /// Best-ranked codes fitted to the photo's own pixels: pose and fit of the one with the smallest residual; `None` where it is
    /// not worth while, or cannot be done.
    fn fitted(&self, luma: &Luma, look: &Look) -> Option<(Pose, Fitted)> {
        let Look { pose, view, compared } = look;
        if compared.why_not().is_some() {
            return None; // no fit gives it a name
        }
        let (blur, drowned) = self.codebook.view(*view);
        let pixels = Pixels::under(luma, pose)?;
        let sound = |fit: &ModelFit| fit.ink > 0.0 && !strayed(pose, &fit.pose);
        let fit = |at: usize, from: (Pose, f64), steps: usize| {
            let fit = fit(&pixels, self.codebook.modules(at), drowned, from, steps);
            fit.filter(sound).map(|fit| (at, fit))
        };
        let best = fit(compared.best, (*pose, blur * pose.px_per_module()), 5)?;
        // the others begin where the best has led: that is near for them too
        let from = (best.1.pose, best.1.blur);
        let others = compared.ranked.into_iter().filter(|at| *at != compared.best);
        let mut fits: Vec<(usize, ModelFit)> = others.filter_map(|at| fit(at, from, 2)).collect();
        fits.push(best);
        fits.sort_by(|a, b| a.1.power.total_cmp(&b.1.power));
        let [(even_best, even), (_, next), ..] = fits.as_slice() else { return None };
        let mut banded: Vec<(usize, &ModelFit, Vec<f64>)> = fits
            .iter()
            .take(BANDED)
            .map(|(at, fit)| (*at, fit, fit.banded(&pixels, self.codebook.modules(*at))))
            .collect();
        banded.sort_by(|a, b| power(&a.2).total_cmp(&power(&b.2)));
        let [(banded_best, first, errors), (_, _, second), ..] = banded.as_slice() else { return None };
        let left = |at: usize, fit: &ModelFit, errors: &[f64], next: f64| {
            let (own, residual) = (power(errors), fit.residual(&pixels, errors));
            Left {
                best: at,
                share: single(own / fit.without),
                excess: single(residual.known_and_rest[1] / residual.known_and_rest[0]),
                lead: single(0.25 * float(fit.pixels) * (next / own).ln()),
                flips: single(residual.flips),
            }
        };
        let fitted = Fitted {
            even: left(*even_best, even, &even.errors(&pixels), next.power),
            banded: left(*banded_best, first, errors, power(second)),
            blur: single(even.blur),
            blur_modules: single(even.blur / even.pose.px_per_module()),
            ink: single(even.ink),
        };
        Some((even.pose, fitted))
    }

    /// Standard deviation of the blur of a named code, in pixels; `None` where it cannot be fitted.
    pub(super) fn blur(&self, luma: &Luma, found: &Detection) -> Option<f32> {
        if let Some(fitted) = found.evidence.fitted {
            return Some(fitted.blur);
        }
        let start = (found.pose, USUAL_BLUR_PX);
        let pixels = Pixels::under(luma, &found.pose)?;
        let code = self.codebook.modules(found.evidence.compared.best);
        fit(&pixels, code, 0.0, start, BLUR_STEPS).map(|fit| single(fit.blur))
    }

    /// Views with the largest correlation with the shared part, best first; none below `present`.
    fn views(&self, seen: &Seen<'_>, light: Light, present: f32) -> Vec<usize> {
        let views = self.codebook.views_of(seen, light).into_iter();
        views.filter(|(fit, _)| *fit >= present).map(|(_, view)| view).collect()
    }

    /// Comparison with these codes in the view that explains most of what is seen, with that view's index.
    fn compare(&self, seen: &Seen<'_>, views: &[usize], among: &[usize]) -> Option<(usize, Compared)> {
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
    fn at_one_pixel_a_module_the_pixels_tell_own_codes_from_other_events() {
        let own = event("K7M");
        let identifier = Identifier::new(&own);
        let here = pose(20.3, 20.6, 1.0, 4.0);
        let look = |square: &crate::plan::PrintedSquare| {
            let luma = paint(41, 41, &[(here, square.modules.clone())]);
            identifier.identify(&luma, here, Light::AsSeen)
        };
        let mut fitted = 0;
        for square in &own.squares {
            let found = look(square).unwrap();
            assert_eq!(found.owner, Some(Owner::Square(square.cell)), "{}", square.label);
            fitted += usize::from(found.evidence.fitted.is_some());
            assert!(found.evidence.certainty(80) > 0.99);
        }
        let others = ["K7N", "9QX", "K8M", "J7M", "7KM", "M7K", "2WX", "QRS", "88H", "ZYX"];
        for square in others.iter().flat_map(|tag| event(tag).squares) {
            let found = look(&square);
            assert_eq!(found.and_then(|found| found.owner), None, "{}", square.text);
            fitted += usize::from(found.is_some_and(|found| found.evidence.fitted.is_some()));
        }
        assert!(fitted > 20, "{fitted} were fitted");
    }

    #[test]
    fn a_sharp_code_three_degrees_askew_is_named() {
        let own = event("K7M");
        let identifier = Identifier::new(&own);
        for askew in [-3.0, -2.86, 2.0, 3.0] {
            let luma = paint(154, 154, &[(pose(77.0, 77.0, 4.295, 0.0), own.squares[19].modules.clone())]);
            let found = identifier.identify(&luma, pose(77.0, 77.0, 4.295, askew), Light::AsSeen);
            let evidence = found.map(|found| found.evidence);
            assert_eq!(
                found.unwrap().owner,
                Some(Owner::Square(own.squares[19].cell)),
                "{askew}: {evidence:?}"
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
