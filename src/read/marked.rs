//! A sheet that is photographed by itself: from its code and the four marks at its corners to where each millimetre of it lies.
//!
//! In: finder patterns of the photo, and a code of which is known where it stands on the sheet. Out: the map from sheet to photo.
//!
//! ```text
//!   code ─▶ rough place of each mark ─▶ finder patterns of its size near there ─▶ the four that put the code where it is seen
//! ```
//!
//! A code is an eighth as wide as the sheet, so it tells only roughly where marks are; the marks tell where all else is.

use super::finders::Finder;
use super::pose::{HALF, Pose};
use crate::frame::{Frame, Map, PhotoPx, Point};

/// What is printed of a sheet for reading it: frame `F` is in mm.
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct Marks<F: Frame> {
    /// Outer corners of the code, an upright rectangle, clockwise from its top left.
    pub code: [Point<F>; 4],
    /// Centres of the marks, clockwise from the top left.
    pub centres: [Point<F>; 4],
    /// Side of a mark's module, in mm.
    pub module_mm: f64,
}

/// Maximum error of a mark's place as the code tells it, as a share of its distance: a sheet seen from 45 degrees aside.
const ERROR: f64 = 0.9;
/// Maximum number of finder patterns that are tried for one mark, the nearest; each four of them takes microseconds. With 6, a mark behind
/// six other patterns of its size was not found.
const TRIED: usize = 12;
/// Maximum ratio of a mark's size to what the code says, and the other way round: perspective, and 1.4 for a turned pattern.
const SIZE: f64 = 2.5;
/// Minimum width of a mark's module, in pixels, where a sheet is looked for by its marks alone.
const LEAST_PX: f64 = 2.0;
/// Maximum number of finder patterns that are taken for marks of such a sheet, those with most crossings.
const MARKS_TRIED: usize = 14;
/// Maximum distance of the code's corners from where the marks put them, in mm: paper that is not flat.
const FLAT_MM: f64 = 4.0;

/// Map from a sheet to the photo in which its code has these corners, clockwise in the code's own sense from its top left; `None` where
/// its four marks are not all seen.
#[must_use]
pub fn sheet_to_photo<F: Frame>(
    finders: &[Finder],
    code: [Point<PhotoPx>; 4],
    marks: &Marks<F>,
) -> Option<Map<F, PhotoPx>> {
    let rough = rough(code, marks)?;
    let near = marks.centres.map(|mark| candidates(finders, &rough, mark, marks));
    let [one, two, three, four] = &near;
    let mut best: Option<(f64, Map<F, PhotoPx>)> = None;
    for a in one {
        for b in two {
            for c in three {
                for d in four {
                    let Some(map) = Map::from_four(marks.centres, [*a, *b, *c, *d]) else { continue };
                    let Some(miss) = miss_mm(&map, code, marks) else { continue };
                    if best.as_ref().is_none_or(|(least, _)| miss < *least) {
                        best = Some((miss, map));
                    }
                }
            }
        }
    }
    best.filter(|(miss, _)| *miss < FLAT_MM).map(|(_, map)| map)
}

/// Maps from a sheet to a photo that four finder patterns may be the marks of, whichever way up the sheet lies, as in a mirror or not.
///
/// For codes too small to be found: where the marks are seen they say where the code has to be.
#[must_use]
pub fn by_marks<F: Frame>(finders: &[Finder], marks: &Marks<F>) -> Vec<Map<F, PhotoPx>> {
    let mut large: Vec<&Finder> =
        finders.iter().filter(|one| one.module[0].min(one.module[1]) > LEAST_PX).collect();
    large.sort_by_key(|finder| std::cmp::Reverse(finder.crossings));
    large.truncate(MARKS_TRIED);
    let mut maps = Vec::new();
    for four in fours(&large) {
        let Some(around) = clockwise(four) else { continue };
        for turn in 0..4 {
            for mirrored in [false, true] {
                let own: [&Finder; 4] = std::array::from_fn(|k| {
                    let place = if mirrored { 7 - k } else { k };
                    around[(place + turn) % 4]
                });
                let map = Map::from_four(marks.centres, own.map(|finder| finder.centre));
                maps.extend(map.filter(|map| as_large(map, own, marks)));
            }
        }
    }
    maps
}

/// Whether patterns are as large as the marks of a sheet seen through a map.
fn as_large<F: Frame>(map: &Map<F, PhotoPx>, own: [&Finder; 4], marks: &Marks<F>) -> bool {
    let fits = |(finder, mark): (&Finder, &Point<F>)| {
        let wanted = map.scale_at(*mark) * marks.module_mm;
        // lines across a turned pattern are up to √2 longer than its side
        finder.module.iter().all(|own| (0.75..1.9).contains(&(own / wanted)))
    };
    own.into_iter().zip(&marks.centres).all(fits)
}

/// All fours of these.
fn fours<'f>(of: &[&'f Finder]) -> Vec<[&'f Finder; 4]> {
    let mut fours = Vec::new();
    for (i, a) in of.iter().enumerate() {
        for (j, b) in of.iter().enumerate().skip(i + 1) {
            for (k, c) in of.iter().enumerate().skip(j + 1) {
                fours.extend(of.iter().skip(k + 1).map(|d| [*a, *b, *c, *d]));
            }
        }
    }
    fours
}

/// Four patterns clockwise around their middle; `None` where they are no corners of a convex quadrilateral.
fn clockwise(mut four: [&Finder; 4]) -> Option<[&Finder; 4]> {
    let middle =
        four[0].centre.towards(four[1].centre, 0.5).towards(four[2].centre.towards(four[3].centre, 0.5), 0.5);
    let angle = |finder: &Finder| (finder.centre - middle).y.atan2((finder.centre - middle).x);
    four.sort_by(|a, b| angle(a).total_cmp(&angle(b)));
    let convex = (0..4).all(|k| {
        let [a, b, c] = [0, 1, 2].map(|by| four[(k + by) % 4].centre);
        (b - a).cross(c - b) > 0.0
    });
    convex.then_some(four)
}

/// Affine map from the sheet that shows the code as it is seen.
fn rough<F: Frame>(code: [Point<PhotoPx>; 4], marks: &Marks<F>) -> Option<Map<F, PhotoPx>> {
    let Pose { centre, u, v } = Pose::of_corners(code);
    let size = marks.code[2] - marks.code[0];
    let (x, y) = (u * (2.0 * HALF / size.x), v * (2.0 * HALF / size.y));
    let middle = marks.code[0].towards(marks.code[2], 0.5);
    Map::from_matrix(*Map::<F, PhotoPx>::affine(centre - x * middle.x - y * middle.y, x, y).matrix())
}

/// Centres of the finder patterns that may be a mark, the nearest to its rough place first.
fn candidates<F: Frame>(
    finders: &[Finder],
    rough: &Map<F, PhotoPx>,
    mark: Point<F>,
    marks: &Marks<F>,
) -> Vec<Point<PhotoPx>> {
    let (at, size) = (rough.apply(mark), rough.scale_at(mark) * marks.module_mm);
    let away = mark.distance(marks.code[0].towards(marks.code[2], 0.5)).value();
    let reach = ERROR * away * rough.scale_at(mark);
    let fits = |finder: &&Finder| finder.module.iter().all(|own| (1.0 / SIZE..SIZE).contains(&(own / size)));
    let mut near: Vec<(f64, Point<PhotoPx>)> = (finders.iter().filter(fits))
        .map(|finder| (finder.centre.distance(at).value(), finder.centre))
        .filter(|(away, _)| *away < reach)
        .collect();
    near.sort_by(|a, b| a.0.total_cmp(&b.0));
    near.truncate(TRIED);
    near.into_iter().map(|(_, centre)| centre).collect()
}

/// Maximum distance, in mm, of the code's corners from where a map of the sheet puts them; `None` where it shows none of them.
fn miss_mm<F: Frame>(map: &Map<F, PhotoPx>, code: [Point<PhotoPx>; 4], marks: &Marks<F>) -> Option<f64> {
    let back = map.inverse()?;
    let miss = code.iter().zip(&marks.code).map(|(seen, own)| back.apply(*seen).distance(*own).value());
    let miss = miss.fold(0.0, |most: f64, own| if own > most || own.is_nan() { own } else { most });
    miss.is_finite().then_some(miss)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::frame::{SheetMm, Vector};
    use proptest::prelude::*;

    fn rectangle(x: f64, y: f64, width: f64, height: f64) -> [Point<SheetMm>; 4] {
        [(0.0, 0.0), (width, 0.0), (width, height), (0.0, height)].map(|(dx, dy)| Point::new(x + dx, y + dy))
    }

    fn marks() -> Marks<SheetMm> {
        Marks {
            code: rectangle(95.0, 30.0, 31.5, 31.5),
            centres: rectangle(20.0, 20.0, 175.0, 239.0),
            module_mm: 1.5,
        }
    }

    /// A sheet seen turned and from aside.
    fn view(turn: f64, aside: [f64; 2]) -> Map<SheetMm, PhotoPx> {
        let corners = rectangle(0.0, 0.0, 215.9, 279.4);
        let seen = corners.map(|p| {
            let (x, y) = ((p.x - 108.0) / 140.0, (p.y - 140.0) / 140.0);
            let deep = 1.0 + aside[0] * x + aside[1] * y;
            Point::<PhotoPx>::origin()
                + Vector::new(1400.0 * x / deep, 1400.0 * y / deep).turned(turn)
                + Vector::new(2000.0, 2000.0)
        });
        Map::from_four(corners, seen).unwrap()
    }

    fn seen(map: &Map<SheetMm, PhotoPx>, mark: Point<SheetMm>) -> Finder {
        let size = map.scale_at(mark) * 1.5;
        Finder { centre: map.apply(mark), module: [size, size], crossings: 9 }
    }

    /// Whether a sheet is found where it lies, beside other patterns of its marks' size.
    fn is_found(turn: f64, aside: [f64; 2], others: &[(f64, f64)]) -> bool {
        let (map, marks) = (view(turn, aside), marks());
        let mut finders: Vec<Finder> = marks.centres.iter().map(|mark| seen(&map, *mark)).collect();
        let other =
            |(x, y): &(f64, f64)| Finder { centre: Point::new(*x, *y), module: [15.0; 2], crossings: 3 };
        finders.extend(others.iter().map(other));
        let found = sheet_to_photo(&finders, marks.code.map(|p| map.apply(p)), &marks);
        let corners = rectangle(0.0, 0.0, 215.9, 279.4);
        found.is_some_and(|found| {
            corners.iter().all(|corner| found.apply(*corner).distance(map.apply(*corner)).value() < 1e-6)
        })
    }

    proptest! {
        #[test]
        fn a_sheet_is_found_at_any_turn_and_from_aside(turn in 0.0..6.3_f64, x in -0.25..0.25_f64, y in -0.25..0.25_f64, others in prop::collection::vec((0.0..4000.0_f64, 0.0..4000.0_f64), 0..12)) {
            // from farther aside a mark lies farther from its rough place than it is looked for
            prop_assume!(x.hypot(y) < 0.34);
            prop_assert!(is_found(turn, [x, y], &others));
        }
    }

    #[test]
    fn a_mark_behind_six_other_patterns_is_found() {
        let others = [
            (2609.5, 1437.9),
            (2553.6, 817.2),
            (2192.2, 980.0),
            (2902.8, 1268.6),
            (2793.6, 623.5),
            (3376.7, 505.0),
        ];
        assert!(is_found(4.786_947, [-0.236_099, -0.225_562], &others));
    }

    #[test]
    fn a_sheet_with_a_hidden_mark_is_not_found() {
        let (map, marks) = (view(0.2, [0.1, 0.0]), marks());
        let finders: Vec<Finder> = marks.centres[1..].iter().map(|mark| seen(&map, *mark)).collect();
        assert_eq!(sheet_to_photo(&finders, marks.code.map(|p| map.apply(p)), &marks), None);
    }
}
