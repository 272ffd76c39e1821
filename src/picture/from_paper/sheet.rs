//! The sheet's corners.
//!
//! ```text
//!   photo, 900 px ─▶ how white, how unlike the rim ─▶ at each of some levels the largest area ─▶ its hull ─▶ four sides
//!                                                                                                            │ side.rs
//!                    of all candidates the one whose four sides lie on edges and that is whitest inside  ◀───┘
//! ```

use image::imageops::thumbnail;
use image::{GrayImage, Luma, RgbImage};
use imageproc::distance_transform::Norm;
use imageproc::filter::gaussian_blur_f32;
use imageproc::geometry::convex_hull;
use imageproc::morphology::open;
use imageproc::point::Point as At;
use imageproc::region_labelling::{Connectivity, connected_components};
use rayon::prelude::*;

use super::Corners;
use super::side::{Side, fitted};
use crate::frame::{PicturePx, Point, float, floor_index};

/// Longer side of the photo as the sheet is looked for in it, in pixels. Edges are found to about 0.2 of them.
const WORK_PX: u32 = 900;
/// Blur of that, in pixels: grain of paper and wood goes, an edge stays.
const BLUR_PX: f32 = 1.2;
/// Number of levels at which areas are looked for, in each of the two planes.
const LEVELS: usize = 14;
/// Reach of the openings, in pixels: the first cuts off what hardly touches the sheet, the second a thumb that holds it.
const OPENED_PX: [u8; 2] = [2, 24];
/// Least part of the photo that a sheet fills.
const LEAST_AREA: f64 = 0.1;
/// Least part of each side of a sheet that lies on an edge in the photo. A hand that holds it hides less; an area that is no sheet has
/// sides with half as much.
const SURE: f64 = 0.6;
/// Least and largest sine of a corner's angle: 45°, in perspective. Sheets have right angles.
const LEAST_SINE: f64 = 0.7;
/// Largest distance of two sides that are the same edge, in pixels, and how much larger a sheet has to be to be more of another.
const SAME_PX: f64 = 4.0;
const MORE: f64 = 1.02;
/// Times that the sides are fitted, each from where the last one ended.
const PASSES: usize = 2;

/// Four sides that were tried.
struct Tried {
    corners: [[f64; 2]; 4],
    /// Part of the worst side that lies on an edge.
    support: f64,
    /// How white the sheet is inside its sides, 0 … 1 of the whitest of the photo.
    white: f64,
}

/// Finds the corners; `None` where no four edges are sure.
pub(super) fn find(photo: &RgbImage) -> Option<Corners> {
    let (width, height) = photo.dimensions();
    if width.min(height) < 32 {
        return None;
    }
    let by = (f64::from(WORK_PX) / f64::from(width.max(height))).min(1.0);
    let px = |side: u32| u32::try_from(floor_index(f64::from(side) * by)).unwrap_or(1).max(1);
    let small = thumbnail(photo, px(width), px(height));
    let blurred = gaussian_blur_f32(&small, BLUR_PX);
    let white = GrayImage::from_fn(small.width(), small.height(), |x, y| {
        Luma([whiteness(blurred.get_pixel(x, y).0)])
    });
    let planes = [white.clone(), unlike_the_rim(&blurred)];
    let levels = planes.iter().flat_map(|plane| levels(plane).into_iter().map(move |level| (plane, level)));
    let areas = levels.flat_map(|(plane, level)| OPENED_PX.map(|reach| (plane, level, reach)));
    let areas: Vec<(&GrayImage, u8, u8)> = areas.collect();
    let tried = areas.into_par_iter().filter_map(|(plane, level, reach)| {
        let hull = largest_hull(plane, level, reach)?;
        tried(quadrilateral(hull)?, &blurred, &white)
    });
    let mut tried: Vec<Tried> = tried.filter(|tried| tried.support >= SURE).collect();
    let worth = |tried: &Tried| tried.support * tried.white * area(&tried.corners).sqrt();
    tried.sort_by(|a, b| worth(b).total_cmp(&worth(a)));
    let best =
        tried.iter().fold(tried.first()?, |best, other| if is_more_of(best, other) { other } else { best });
    let (across, down) =
        (f64::from(width) / f64::from(small.width()), f64::from(height) / f64::from(small.height()));
    Some(in_order(best.corners.map(|[x, y]| Point::new(x * across, y * down))))
}

/// Whether a candidate is the same sheet and more of it: larger, with two sides at least on the same lines. What is drawn up to the paper's
/// edge makes a smaller sheet of what is left white.
fn is_more_of(best: &Tried, other: &Tried) -> bool {
    let near = |p: [f64; 2], (a, b): ([f64; 2], [f64; 2])| {
        let along = [b[0] - a[0], b[1] - a[1]];
        let across = (p[0] - a[0]) * along[1] - (p[1] - a[1]) * along[0];
        across.abs() <= SAME_PX * along[0].hypot(along[1])
    };
    let sides = |of: &Tried| [0, 1, 2, 3].map(|i| (of.corners[i], of.corners[(i + 1) % 4]));
    let shared = sides(best)
        .into_iter()
        .filter(|(a, b)| sides(other).into_iter().any(|side| near(*a, side) && near(*b, side)));
    area(&other.corners) > area(&best.corners) * MORE && shared.count() >= 2
}

/// Corners that were given by hand, in order; `None` where they are no quadrilateral in the photo.
pub(super) fn by_hand(corners: Corners, (width, height): (u32, u32)) -> Option<Corners> {
    let within = |p: &Point<PicturePx>| {
        (0.0..=f64::from(width)).contains(&p.x) && (0.0..=f64::from(height)).contains(&p.y)
    };
    let middle = [0, 1].map(|axis| corners.iter().map(|p| [p.x, p.y][axis]).sum::<f64>() / 4.0);
    let mut around = corners;
    around.sort_by(|a, b| {
        let angle = |p: &Point<PicturePx>| (p.y - middle[1]).atan2(p.x - middle[0]);
        angle(a).total_cmp(&angle(b))
    });
    let flat = around.map(|p| [p.x, p.y]);
    let is_sheet = corners.iter().all(within) && is_convex(&flat) && area(&flat) > 100.0;
    is_sheet.then(|| in_order(around))
}

/// From the corner that lies nearest to the photo's top left one, clockwise as seen.
fn in_order(corners: Corners) -> Corners {
    let first = (0..4).min_by(|a, b| {
        let sum = |i: &usize| corners[*i].x + corners[*i].y;
        sum(a).total_cmp(&sum(b))
    });
    let first = first.unwrap_or(0);
    [0, 1, 2, 3].map(|i| corners[(first + i) % 4])
}

/// The darkest of the three: white paper has much of all even in a lamp's light, wood and cloth have not.
pub(super) fn whiteness(rgb: [u8; 3]) -> u8 {
    rgb.into_iter().min().unwrap_or(0)
}

/// How far each pixel's colour is from the one that the photo's rim has most of.
fn unlike_the_rim(photo: &RgbImage) -> GrayImage {
    let (right, below) = (photo.width() - 1, photo.height() - 1);
    let rim =
        (0..=right).flat_map(|x| [(x, 0), (x, below)]).chain((0..=below).flat_map(|y| [(0, y), (right, y)]));
    let mut levels: [Vec<u8>; 3] = Default::default();
    for (x, y) in rim {
        let pixel = photo.get_pixel(x, y).0;
        levels.iter_mut().zip(pixel).for_each(|(all, level)| all.push(level));
    }
    let middle = levels.map(|mut all| {
        all.sort_unstable();
        all[all.len() / 2]
    });
    GrayImage::from_fn(photo.width(), photo.height(), |x, y| {
        let pixel = photo.get_pixel(x, y).0;
        let apart = pixel.into_iter().zip(middle).map(|(a, b)| a.abs_diff(b)).max().unwrap_or(0);
        Luma([apart])
    })
}

/// Levels evenly spread over those that a plane has.
fn levels(plane: &GrayImage) -> Vec<u8> {
    let mut sorted: Vec<u8> = plane.pixels().map(|pixel| pixel.0[0]).collect();
    sorted.sort_unstable();
    let [dark, light] =
        [0.02, 0.98].map(|part| f64::from(sorted[floor_index(part * float(sorted.len() - 1))]));
    let at = |i: usize| crate::frame::round_byte(dark + (light - dark) * float(i) / float(LEVELS + 1));
    let mut levels: Vec<u8> = (1..=LEVELS).map(at).collect();
    levels.dedup();
    levels
}

/// Convex hull of the largest connected area above a level, without what is narrower than twice `reach`, in pixels.
fn largest_hull(plane: &GrayImage, level: u8, reach: u8) -> Option<Vec<[f64; 2]>> {
    let above = GrayImage::from_fn(plane.width(), plane.height(), |x, y| {
        Luma([if plane.get_pixel(x, y).0[0] > level { 255 } else { 0 }])
    });
    let labels = connected_components(&open(&above, Norm::LInf, reach), Connectivity::Four, Luma([0]));
    let mut areas: Vec<usize> = Vec::new();
    for pixel in labels.pixels() {
        let label = usize::try_from(pixel.0[0]).unwrap_or(0);
        if areas.len() <= label {
            areas.resize(label + 1, 0);
        }
        areas[label] += 1;
    }
    let largest = (1..areas.len()).max_by_key(|label| areas[*label])?;
    let all = float(labels.len());
    if float(areas[largest]) < LEAST_AREA / 2.0 * all {
        return None;
    }
    let largest = u32::try_from(largest).ok()?;
    let mut ends: Vec<At<i32>> = Vec::new();
    for (y, row) in (0..).zip(labels.rows()) {
        let mut own = (0_i32..).zip(row).filter(|(_, pixel)| pixel.0[0] == largest).map(|(x, _)| x);
        if let Some(first) = own.next() {
            let last = own.last().unwrap_or(first);
            // corners of pixels, not their centres
            ends.extend([
                At::new(first, y),
                At::new(first, y + 1),
                At::new(last + 1, y),
                At::new(last + 1, y + 1),
            ]);
        }
    }
    Some(convex_hull(ends).into_iter().map(|p| [f64::from(p.x), f64::from(p.y)]).collect())
}

/// The quadrilateral around a convex polygon that adds least to it: side by side the polygon's sides are taken away, those first whose
/// neighbours meet after the smallest triangle.
fn quadrilateral(mut hull: Vec<[f64; 2]>) -> Option<[[f64; 2]; 4]> {
    while hull.len() > 4 {
        let count = hull.len();
        let grown = |i: usize| {
            let [before, a, b, after] = [count - 1, 0, 1, 2].map(|step| hull[(i + step) % count]);
            let meet = crossing((before, a), (after, b))?;
            // beyond both ends, not behind them
            let ahead = |from: [f64; 2], to: [f64; 2]| {
                (to[0] - from[0]) * (meet[0] - to[0]) + (to[1] - from[1]) * (meet[1] - to[1]) >= 0.0
            };
            (ahead(before, a) && ahead(after, b)).then(|| (area(&[a, meet, b]), i, meet))
        };
        let (_, i, meet) = (0..count).filter_map(grown).min_by(|a, b| a.0.total_cmp(&b.0))?;
        hull[i] = meet;
        hull.remove((i + 1) % count);
    }
    <[[f64; 2]; 4]>::try_from(hull).ok()
}

/// Fits the sides of a candidate to the photo's edges; `None` where what comes out is no sheet.
fn tried(start: [[f64; 2]; 4], photo: &RgbImage, white: &GrayImage) -> Option<Tried> {
    let mut corners = clockwise(start);
    let mut sides: Option<[Side; 4]> = None;
    for pass in 0..PASSES {
        let fitted = [0, 1, 2, 3].map(|i| fitted(photo, white, corners[i], corners[(i + 1) % 4], pass));
        let [Some(a), Some(b), Some(c), Some(d)] = fitted else { return None };
        let own = [a, b, c, d];
        for i in 0..4 {
            corners[i] = crossing(own[(i + 3) % 4].line, own[i].line)?;
        }
        sides = Some(own);
    }
    let sides = sides?;
    let (width, height) = (f64::from(photo.width()), f64::from(photo.height()));
    let inside = |[x, y]: &[f64; 2]| (-1.0..=width + 1.0).contains(x) && (-1.0..=height + 1.0).contains(y);
    let is_sheet =
        is_convex(&corners) && area(&corners) >= LEAST_AREA * width * height && corners.iter().all(inside);
    let whitest = white.pixels().map(|pixel| pixel.0[0]).max().map_or(1.0, f64::from).max(1.0);
    is_sheet.then(|| Tried {
        corners,
        support: sides.iter().map(|side| side.support).fold(1.0, f64::min),
        white: sides.iter().map(|side| side.white).sum::<f64>() / 4.0 / whitest,
    })
}

/// The same corners, clockwise as seen.
fn clockwise(corners: [[f64; 2]; 4]) -> [[f64; 2]; 4] {
    let [a, b, c, d] = corners;
    if signed_area(&corners) > 0.0 { corners } else { [a, d, c, b] }
}

/// Whether corners that go clockwise as seen turn the same way at each, by enough.
fn is_convex(corners: &[[f64; 2]; 4]) -> bool {
    (0..4).all(|i| {
        let [before, at, after] = [i + 3, i, i + 1].map(|i| corners[i % 4]);
        let (one, other) = ([at[0] - before[0], at[1] - before[1]], [after[0] - at[0], after[1] - at[1]]);
        let lengths = one[0].hypot(one[1]) * other[0].hypot(other[1]);
        one[0] * other[1] - one[1] * other[0] >= LEAST_SINE * lengths && lengths > 0.0
    })
}

fn signed_area(polygon: &[[f64; 2]]) -> f64 {
    let next = polygon.iter().cycle().skip(1);
    polygon.iter().zip(next).map(|(a, b)| a[0] * b[1] - a[1] * b[0]).sum::<f64>() / 2.0
}

fn area(polygon: &[[f64; 2]]) -> f64 {
    signed_area(polygon).abs()
}

/// Where two lines, each through two points, cross; `None` where they are parallel.
fn crossing(one: ([f64; 2], [f64; 2]), other: ([f64; 2], [f64; 2])) -> Option<[f64; 2]> {
    let ((a, b), (c, d)) = (one, other);
    let (u, v) = ([b[0] - a[0], b[1] - a[1]], [d[0] - c[0], d[1] - c[1]]);
    let across = u[0] * v[1] - u[1] * v[0];
    let t = ((c[0] - a[0]) * v[1] - (c[1] - a[1]) * v[0]) / across;
    t.is_finite().then(|| [a[0] + t * u[0], a[1] + t * u[1]])
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_polygon_with_cut_corners_becomes_the_sheet_it_was() {
        let hull = vec![
            [10.0, 0.0],
            [90.0, 0.0],
            [100.0, 8.0],
            [100.0, 60.0],
            [95.0, 70.0],
            [4.0, 70.0],
            [0.0, 66.0],
            [0.0, 9.0],
        ];
        let mut corners = quadrilateral(hull).unwrap();
        corners.sort_by(|a, b| (a[1], a[0]).partial_cmp(&(b[1], b[0])).unwrap());
        assert_eq!(corners, [[0.0, 0.0], [100.0, 0.0], [0.0, 70.0], [100.0, 70.0]]);
    }

    #[test]
    fn corners_by_hand_come_in_any_order() {
        let typed = [(90.0, 80.0), (10.0, 5.0), (12.0, 70.0), (95.0, 10.0)].map(|(x, y)| Point::new(x, y));
        let [a, b, c, d] = by_hand(typed, (100, 100)).unwrap();
        assert_eq!([a.x, b.x, c.x, d.x], [10.0, 95.0, 90.0, 12.0]);
        let line = [(0.0, 0.0), (30.0, 30.0), (60.0, 60.0), (90.0, 90.0)].map(|(x, y)| Point::new(x, y));
        assert_eq!(by_hand(line, (100, 100)), None);
        assert_eq!(by_hand(typed, (92, 92)), None, "beyond the photo");
    }
}
