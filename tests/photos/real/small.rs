//! The same photographs, so small that no general reader sees a code: seek tells the sheets' codes from 178 decoys.

use everysquare::frame::{PhotoPx, Point, float};
use everysquare::photo::Luma;
use everysquare::plan::{Printed, Turn};
use everysquare::read::Camera;
use everysquare::read::camera::Correspondence;
use everysquare::read::codebook::Owner;
use everysquare::read::identify::Identifier;
use everysquare::read::lens::Lens;
use everysquare::read::place::{Layout, Site};
use everysquare::read::seek::{QUICK, THOROUGH, seek};
use rayon::prelude::*;

use super::set::{Shot, sheets, shots, text};
use super::smaller::{Chance, px_per_module, resampled, scaled, worsened};
use crate::common::shared::shared;

/// Pixels a module of the pictures, and how many of 100 codes must be named.
const SIZES: [(f64, f64); 4] = [(0.65, 99.0), (0.8, 99.0), (1.0, 99.0), (1.5, 99.0)];
/// How far the place given is off, in modules each way, and how far askew, in degrees.
const OFF: f64 = 4.0;
const ASKEW: f64 = 4.0;
const SIDE: usize = 21;

#[derive(Copy, Clone, Debug, Default)]
struct Score {
    codes: usize,
    named: usize,
    wrong: usize,
}

/// The code moved and turned about its middle.
fn misplaced(corners: [Point<PhotoPx>; 4], chance: &mut Chance) -> [Point<PhotoPx>; 4] {
    let middle = corners[0].towards(corners[2], 0.5);
    let (right, down) = ((corners[1] - corners[0]) / float(SIDE), (corners[3] - corners[0]) / float(SIDE));
    let shift = right * (OFF * chance.either_way()) + down * (OFF * chance.either_way());
    let turn = (ASKEW * chance.either_way()).to_radians();
    corners.map(|p| middle + shift + (p - middle).turned(turn))
}

/// What is named at a place, as text.
fn named<'p>(
    luma: &Luma,
    printed: &'p Printed,
    identifier: &Identifier,
    at: [Point<PhotoPx>; 4],
) -> Option<&'p str> {
    let (layout, site) = (Layout::of(printed), Site { row: 0, column: 0 });
    let lens = Lens::straight(float(luma.width), float(luma.height));
    let anchor = Correspondence { wall: layout.code_corners(site, Turn::None), photo: at };
    let camera = Camera::from_one(&anchor, lens).unwrap();
    let look = |effort| {
        seek(luma, identifier, &camera, &layout, site, effort).filter(|seen| seen.found.owner.is_some())
    };
    match look(&QUICK).or_else(|| look(&THOROUGH))?.found.owner? {
        Owner::Square(cell) => Some(text(printed, cell)),
        Owner::Card(_) => None,
    }
}

fn score(shot: &Shot, printed: &Printed, identifier: &Identifier, px: f64) -> Score {
    let sizes: Vec<f64> = shot.marked.iter().map(|m| px_per_module(&m.corners, SIDE)).collect();
    let scale = px / (sizes.iter().sum::<f64>() / float(sizes.len()));
    let seed = shot.name.bytes().map(u64::from).sum::<u64>() * 1000;
    let luma = worsened(&resampled(&shot.luma, scale), seed);
    let one = |(at, marked): (usize, &super::set::Marked)| {
        let mut chance = Chance(seed + u64::try_from(at).unwrap());
        let place = misplaced(scaled(&marked.corners, scale), &mut chance);
        let found = named(&luma, printed, identifier, place);
        let right = found.is_some() && found == marked.text.as_deref();
        Score { codes: 1, named: usize::from(right), wrong: usize::from(found.is_some() && !right) }
    };
    let add = |a: Score, b: Score| Score {
        codes: a.codes + b.codes,
        named: a.named + b.named,
        wrong: a.wrong + b.wrong,
    };
    // one code's text was not written down
    let told = shot.marked.par_iter().enumerate().filter(|(_, marked)| marked.text.is_some());
    told.map(one).reduce(Score::default, add)
}

#[test]
#[ignore = "needs ../shared/real"]
fn codes_below_two_pixels_a_module_are_told_from_decoys() {
    let real = shared("real");
    let set = real.join("lots");
    let printed = sheets(&set);
    let identifier = Identifier::new(&printed);
    let mut all = SIZES.map(|_| Score::default());
    for shot in shots(&set) {
        for (total, (px, _)) in all.iter_mut().zip(SIZES) {
            let one = score(&shot, &printed, &identifier, px);
            *total = Score {
                codes: total.codes + one.codes,
                named: total.named + one.named,
                wrong: total.wrong + one.wrong,
            };
        }
    }
    for (score, (px, _)) in all.iter().zip(SIZES) {
        println!("lots, {px} px a module: {} of {} named, {} wrongly", score.named, score.codes, score.wrong);
    }
    for (score, (px, least)) in all.iter().zip(SIZES) {
        assert_eq!(score.wrong, 0, "{px} px a module: named wrongly");
        assert!(float(score.named) * 100.0 >= least * float(score.codes), "{px} px a module: {score:?}");
    }
}
