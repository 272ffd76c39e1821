//! Codes of other people's making, with other numbers of modules: which are found, how exactly, and what they say.

use everysquare::frame::{PhotoPx, Point};
use everysquare::read::any_code::{Located, locate};
use everysquare::read::finders;

use super::set::shots;
use crate::common::shared::shared;

/// A code is found where all corners lie nearer than this share of its side to the marked ones.
const THERE: f64 = 0.12;

/// Per set: how many codes are marked, and the fewest of them that must be found and decoded.
const SETS: [(&str, usize, usize, usize); 7] = [
    ("nominal", 19, 15, 10),
    ("perspective", 10, 7, 7),
    ("glare", 8, 4, 2),
    ("shadows", 7, 7, 6),
    ("curved", 12, 8, 5),
    ("blurred", 13, 7, 3),
    ("damaged", 5, 3, 1),
];
/// The farthest that the corner in the middle of a set's may lie from the marked one, in modules: paper curls.
const CORNERS: f64 = 0.7;

/// How far the corners lie from the marked ones, in pixels, in the order and direction that suit best: hands began anywhere.
fn off(located: &Located, marked: &[Point<PhotoPx>; 4]) -> Vec<f64> {
    let orders = (0..8).map(|k: usize| {
        let at = |i: usize| if k < 4 { (i + k) % 4 } else { (7 + k - i) % 4 };
        (0..4).map(|i| located.corners[i].distance(marked[at(i)]).value()).collect::<Vec<f64>>()
    });
    let most = |off: &Vec<f64>| off.iter().copied().fold(0.0, f64::max);
    orders.min_by(|a, b| most(a).total_cmp(&most(b))).unwrap()
}

fn side_px(marked: &[Point<PhotoPx>; 4]) -> f64 {
    (0..4).map(|k| marked[k].distance(marked[(k + 1) % 4]).value()).sum::<f64>() / 4.0
}

#[test]
#[ignore = "needs ../shared/real"]
fn codes_of_other_sizes_are_found_where_they_lie() {
    let real = shared("real");
    for (set, all, least, read) in SETS {
        let (mut marked, mut found, mut decoded, mut corners, mut shares) = (0, 0, 0, Vec::new(), Vec::new());
        for shot in shots(&real.join(set)) {
            let codes = locate(&shot.luma, &finders::find(&shot.luma));
            for mark in &shot.marked {
                marked += 1;
                let side = side_px(&mark.corners);
                let nearest = codes
                    .iter()
                    .map(|code| (off(code, &mark.corners), code))
                    .min_by(|a, b| a.0.iter().sum::<f64>().total_cmp(&b.0.iter().sum::<f64>()));
                match nearest.filter(|(off, _)| off.iter().all(|px| *px < THERE * side)) {
                    Some((off, code)) => {
                        found += 1;
                        decoded += usize::from(code.text.is_some());
                        let module = side / code.side as f64;
                        corners.extend(off.iter().map(|px| px / module));
                        shares.extend(off.iter().map(|px| 100.0 * px / side));
                    }
                    None => println!("{set}/{}: not found at {:?}", shot.name, mark.corners[0]),
                }
            }
        }
        corners.sort_by(f64::total_cmp);
        shares.sort_by(f64::total_cmp);
        let at = |percent: usize| {
            corners.get((corners.len().max(1) - 1) * percent / 100).copied().unwrap_or(f64::NAN)
        };
        println!(
            "{set}: {found} of {marked} codes found, {decoded} decoded; corners off by {:.2} modules (median), {:.2} (90 %), {:.2} % of the side (median)",
            at(50),
            at(90),
            shares[shares.len() / 2]
        );
        assert!(
            marked == all && found >= least && decoded >= read,
            "{set}: {found} found, {decoded} decoded"
        );
        assert!(at(50) < CORNERS, "{set}: corners off by {:.2} modules", at(50));
    }
}
