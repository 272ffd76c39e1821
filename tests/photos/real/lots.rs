//! Sixty codes in a photograph: finder patterns and their grouping find every one, at full size and at 2 px a module.

use everysquare::photo::Luma;
use everysquare::plan::Printed;
use everysquare::read::codebook::Owner;
use everysquare::read::identify::{Detection, Identifier};
use everysquare::read::{finders, triples};

use super::set::{Marked, sheets, shots, text};
use super::smaller::{px_per_module, resampled, scaled};
use crate::common::shared::shared;

/// So far from the hand-marked ones, in modules, may 99 in 100 corners lie, and each. Those farthest off are bottom right
/// corners of light modules, where the hand had nothing to go by: looked at in the photographs.
const CORNERS: (f64, f64) = (0.5, 1.0);
/// A code whose corners all lie nearer than this to the marked ones, in modules, is that one.
const THERE: f64 = 4.0;
/// Modules along a side of the sheets' codes.
const SIDE: usize = 21;
/// Pixels a module of the smaller pictures.
const SMALL_PX: f64 = 2.0;

#[derive(Default)]
struct Score {
    marked: usize,
    found: usize,
    /// Codes whose text somebody wrote down.
    told: usize,
    named: usize,
    wrong: usize,
    /// How far each corner lies from the marked one, in modules.
    corners: Vec<f64>,
}

impl Score {
    fn add(&mut self, printed: &Printed, marked: &[Marked], found: &[Detection]) {
        for code in marked {
            self.marked += 1;
            self.told += usize::from(code.text.is_some());
            let off = |found: &Detection| off(found, code);
            let most = |found: &Detection| off(found).into_iter().fold(0.0, f64::max);
            let nearest = found.iter().min_by(|a, b| most(a).total_cmp(&most(b)));
            let Some(nearest) = nearest.filter(|found| most(found) < THERE) else {
                println!("not found: {:?} at {:?}", code.text, code.corners[0]);
                continue;
            };
            self.found += 1;
            self.corners.extend(off(nearest));
            if let (Some(Owner::Square(cell)), Some(told)) = (nearest.owner, &code.text) {
                let right = text(printed, cell) == told;
                self.named += usize::from(right);
                self.wrong += usize::from(!right);
            }
        }
        self.corners.sort_by(f64::total_cmp);
    }

    fn corner(&self, percent: usize) -> f64 {
        self.corners[(self.corners.len() - 1) * percent / 100]
    }

    fn say(&self, what: &str) {
        println!(
            "lots, {what}: {} of {} codes found, {} of {} named, {} wrongly; corners off by {:.2} modules (median), {:.2} \
             (99 %), {:.2} (most)",
            self.found,
            self.marked,
            self.named,
            self.told,
            self.wrong,
            self.corner(50),
            self.corner(99),
            self.corner(100)
        );
    }
}

/// How far each corner of a code lies from the marked one, in modules.
fn off(found: &Detection, code: &Marked) -> [f64; 4] {
    let px = px_per_module(&code.corners, SIDE);
    let seen = found.pose.corners();
    std::array::from_fn(|k| seen[k].distance(code.corners[k]).value() / px)
}

fn found(luma: &Luma, identifier: &Identifier) -> Vec<Detection> {
    triples::detect(luma, &finders::find(luma), identifier)
}

#[test]
#[ignore = "needs ../shared/real"]
fn every_code_of_the_sheets_is_found_at_full_size_and_at_two_pixels_a_module() {
    let real = shared("real");
    let set = real.join("lots");
    let printed = sheets(&set);
    let identifier = Identifier::new(&printed);
    let (mut full, mut small) = (Score::default(), Score::default());
    for shot in shots(&set) {
        full.add(&printed, &shot.marked, &found(&shot.luma, &identifier));
        let sizes: Vec<f64> = shot.marked.iter().map(|m| px_per_module(&m.corners, SIDE)).collect();
        let scale = SMALL_PX / (sizes.iter().sum::<f64>() / sizes.len() as f64);
        let marked: Vec<Marked> =
            shot.marked.iter().map(|m| Marked { corners: scaled(&m.corners, scale), ..m.clone() }).collect();
        small.add(&printed, &marked, &found(&resampled(&shot.luma, scale), &identifier));
    }
    full.say("full size");
    small.say("2 px a module");
    for score in [&full, &small] {
        assert_eq!((score.found, score.named, score.wrong), (score.marked, score.told, 0));
        assert!(score.corner(99) < CORNERS.0 && score.corner(100) < CORNERS.1);
    }
}
