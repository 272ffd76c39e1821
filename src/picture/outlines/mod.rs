//! The edges between the picture's colours as smooth curves, each of which two areas share.
//!
//! ```text
//!   FewColours ──▶ arcs ──▶ polygon ──▶ curve          an arc runs from junction to junction, between the same
//!    labels        cracks   fewest      corners stay,  two colours; it becomes one curve, drawn once for both:
//!    by pixel      between  sides       the rest bends no gap, no overlap, and what crosses a cut line meets
//!                  pixels
//! ```
//!
//! A **crack** is the side that two neighbouring pixels of different colour share. A **junction** is a corner of pixels where
//! more or fewer than two cracks end. Arcs without a junction are closed.
//!
//! The way from cracks to curves is that of Selinger (Potrace: a polygon-based tracing algorithm, 2003), for arcs with fixed ends: the
//! polygon with the fewest sides that stays within half a pixel of every corner of the arc, its vertices moved to where the lines of
//! least squares of its sides meet, and a corner kept where a curve would leave the pixel around its vertex.
//!
//! ```
//! use everysquare::picture::{FewColours, Outlines, Picture};
//! use everysquare::plan::settings::Pencil;
//!
//! let half = image::RgbImage::from_fn(40, 40, |x, _| image::Rgb([if x < 10 { 0 } else { 255 }; 3]));
//! let pencil = |name: &str, srgb| Pencil { name: name.to_owned(), srgb };
//! let pencils = [pencil("black", [0; 3]), pencil("white", [255; 3])];
//! let outlines = Outlines::of(&FewColours::of(&Picture { pixels: half }, &pencils));
//! let drawn: Vec<_> = outlines.drawn().collect();
//! assert_eq!(drawn.len(), 1); // one edge, from the top to the bottom
//! assert!((outlines.area(0) - 400.0).abs() < 1e-9 && (outlines.area(1) - 1200.0).abs() < 1e-9);
//! ```

mod cracks;
mod curve;
mod polygon;

use rayon::prelude::*;

use super::FewColours;
use super::raster::Raster;
use crate::frame::{PicturePx, Point, float};

pub use curve::{Curve, Step};

/// The edges between a picture's colours, and which of them go around each.
#[derive(Clone, Debug, PartialEq)]
pub struct Outlines {
    /// The curves, those along the picture's own edge among them.
    curves: Vec<Curve>,
    /// The colours on the right and on the left of each curve, by the number of the pencil; nothing outside the picture.
    sides: Vec<[Option<u8>; 2]>,
    /// For each pencil the rings around its areas, each with the rectangle that holds it: left, top, right, bottom. A ring has its colour on
    /// the right, so that holes run the other way.
    rings: Vec<Vec<(Curve, [f64; 4])>>,
    /// The area of each pencil, in pixels.
    areas: Vec<f64>,
    /// How many lines and bends all curves have.
    steps: usize,
}

impl Outlines {
    /// Traces a picture.
    #[must_use]
    pub fn of(few: &FewColours) -> Self {
        let width = usize::try_from(few.size().0).unwrap_or(0);
        Self::of_labels(&Raster { width, values: few.index().to_vec() }, few.pencils.len())
    }

    /// Traces what is set in rows of `width`, as the area of pencil 1; the rest is that of pencil 0.
    #[must_use]
    pub fn of_mask(set: &[bool], width: usize) -> Self {
        Self::of_labels(&Raster { width, values: set.iter().map(|set| u8::from(*set)).collect() }, 2)
    }

    /// Traces numbers of `pencils` pencils.
    pub(super) fn of_labels(labels: &Raster<u8>, pencils: usize) -> Self {
        let arcs = cracks::arcs(labels);
        let curves: Vec<Curve> = arcs.par_iter().map(|arc| curve::of(&polygon::of(arc))).collect();
        let mut rings = vec![Vec::new(); pencils];
        for (colour, ring) in cracks::rings(labels, &arcs) {
            if let (Some(of_colour), Some(ring)) =
                (rings.get_mut(usize::from(colour)), joined(&curves, &ring))
            {
                let bounds = ring.bounds();
                of_colour.push((ring, bounds));
            }
        }
        let area = |rings: &Vec<(Curve, _)>| rings.iter().map(|(ring, _)| area_within(ring)).sum();
        let areas = rings.par_iter().map(area).collect();
        let steps = curves.iter().map(|curve| curve.steps.len()).sum();
        Self { curves, sides: arcs.iter().map(|arc| arc.sides).collect(), rings, areas, steps }
    }

    /// The curves that are drawn: all but the picture's own edge.
    pub fn drawn(&self) -> impl Iterator<Item = &Curve> {
        let inside = |sides: &[Option<u8>; 2]| sides.iter().all(Option::is_some);
        self.curves.iter().zip(&self.sides).filter(move |(_, sides)| inside(sides)).map(|(curve, _)| curve)
    }

    /// The rings around the areas of a pencil; to be filled together, by whichever rule.
    pub fn rings(&self, pencil: usize) -> impl Iterator<Item = &Curve> {
        self.rings.get(pencil).into_iter().flatten().map(|(ring, _)| ring)
    }

    /// The rings around the areas of a pencil that a window of the picture (left, top, right, bottom) shows. What lies beyond it is
    /// shortened: inside, the rings hold the same.
    #[must_use]
    pub fn rings_within(&self, pencil: usize, window: [f64; 4]) -> Vec<Curve> {
        let [left, top, right, bottom] = window;
        let meets = |bounds: &[f64; 4]| {
            bounds[2] > left && bounds[0] < right && bounds[3] > top && bounds[1] < bottom
        };
        let rings = self.rings.get(pencil).into_iter().flatten().filter(|(_, bounds)| meets(bounds));
        rings.map(|(ring, _)| ring.shortened_beyond(window)).collect()
    }

    /// How many lines and bends all curves have.
    #[must_use]
    pub fn steps(&self) -> usize {
        self.steps
    }

    /// The area of a pencil, in pixels.
    #[must_use]
    pub fn area(&self, pencil: usize) -> f64 {
        self.areas.get(pencil).copied().unwrap_or(0.0)
    }
}

/// Curves one after the other, as one.
fn joined(curves: &[Curve], ring: &[(usize, bool)]) -> Option<Curve> {
    let mut parts = ring.iter().map(|(number, backwards)| {
        let curve = &curves[*number];
        if *backwards { curve.backwards() } else { curve.clone() }
    });
    let mut joined = parts.next()?;
    parts.for_each(|part| joined.steps.extend(part.steps));
    Some(joined)
}

/// The area that a ring goes around clockwise, in pixels; that of a hole is negative.
fn area_within(ring: &Curve) -> f64 {
    let points = ring.flattened();
    let next = points.iter().cycle().skip(1);
    points.iter().zip(next).map(|(a, b)| a.x * b.y - b.x * a.y).sum::<f64>() / 2.0
}

/// A corner of pixels as a point of the picture.
fn corner((x, y): (usize, usize)) -> Point<PicturePx> {
    Point::new(float(x), float(y))
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    /// Discs, rectangles and half planes on each other.
    fn picture(width: usize, height: usize, shapes: &[(u8, usize, f64, f64, f64)]) -> Raster<u8> {
        let label = |x: f64, y: f64| {
            shapes.iter().rev().find_map(|(label, kind, cx, cy, size)| {
                let (dx, dy) = (x - cx * float(width), y - cy * float(height));
                let inside = match kind {
                    0 => dx.hypot(dy) < *size,
                    1 => dx.abs() < *size && dy.abs() < size / 2.0 + 1.0,
                    _ => dx * size.cos() + dy * size.sin() > 0.0,
                };
                inside.then_some(*label)
            })
        };
        let value = |i: usize| label(float(i % width) + 0.5, float(i / width) + 0.5).unwrap_or(0);
        Raster { width, values: (0..width * height).map(value).collect() }
    }

    /// Whether a place is inside the rings, by the rule of even and odd.
    fn holds(rings: &[Vec<Point<PicturePx>>], x: f64, y: f64) -> bool {
        let crossings = rings.iter().map(|ring| {
            let edges = ring.iter().zip(ring.iter().cycle().skip(1));
            let crosses = |(a, b): &(&Point<PicturePx>, &Point<PicturePx>)| {
                (a.y > y) != (b.y > y) && x < a.x + (y - a.y) / (b.y - a.y) * (b.x - a.x)
            };
            edges.filter(crosses).count()
        });
        crossings.sum::<usize>() % 2 == 1
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(200))]
        #[test]
        fn areas_fill_the_picture_without_gaps_and_each_is_where_its_pixels_are(
            width in 24_usize..90,
            height in 24_usize..90,
            shapes in proptest::collection::vec(
                (0_u8..4, 0_usize..3, 0.0_f64..1.0, 0.0_f64..1.0, 4.0_f64..30.0), 1..9),
        ) {
            let labels = picture(width, height, &shapes);
            let outlines = Outlines::of_labels(&labels, 4);
            let sum: f64 = (0..4).map(|pencil| outlines.area(pencil)).sum();
            prop_assert!((sum - float(width * height)).abs() < 1e-6, "{sum}");
            for pencil in 0..4_u8 {
                let rings: Vec<_> = outlines.rings(usize::from(pencil)).map(Curve::flattened).collect();
                for place in 0..labels.values.len() {
                    let (x, y) = (place % width, place / width);
                    let near = (y.saturating_sub(1)..(y + 2).min(height))
                        .flat_map(|y| (x.saturating_sub(1)..(x + 2).min(width)).map(move |x| y * width + x));
                    let own = labels.values[place];
                    if near.into_iter().all(|other| labels.values[other] == own) {
                        let inside = holds(&rings, float(x) + 0.503, float(y) + 0.502);
                        prop_assert_eq!(inside, own == pencil, "pencil {} at {}, {}", pencil, x, y);
                    }
                }
            }
        }

        #[test]
        fn a_window_shows_the_same_of_rings_that_are_shortened_beyond_it(
            shapes in proptest::collection::vec(
                (0_u8..3, 0_usize..3, 0.0_f64..1.0, 0.0_f64..1.0, 4.0_f64..30.0), 1..7),
            (left, top) in (0.0_f64..60.0, 0.0_f64..60.0),
            places in proptest::collection::vec((0.01_f64..0.99, 0.01_f64..0.99), 40),
        ) {
            let outlines = Outlines::of_labels(&picture(80, 80, &shapes), 3);
            let window = [left, top, left + 18.0, top + 18.0];
            for pencil in 0..3 {
                let flat = |rings: Vec<Curve>| rings.iter().map(Curve::flattened).collect::<Vec<_>>();
                let (whole, near) = (flat(outlines.rings(pencil).cloned().collect()), flat(outlines.rings_within(pencil, window)));
                for (x, y) in &places {
                    let (x, y) = (left + 18.0 * x, top + 18.0 * y);
                    prop_assert_eq!(holds(&whole, x, y), holds(&near, x, y), "pencil {} at {}, {}", pencil, x, y);
                }
            }
        }

        #[test]
        fn discs_have_the_area_that_they_are_drawn_with(radius in 3.0_f64..40.0, dx in 0.0_f64..1.0, dy in 0.0_f64..1.0) {
            let side = 100.0;
            let labels = picture(100, 100, &[(1, 0, 0.5 + dx / side, 0.5 + dy / side, radius)]);
            let outlines = Outlines::of_labels(&labels, 2);
            let pixels = float(labels.values.iter().filter(|label| **label == 1).count());
            // a tenth of a pixel of the radius is cut from its bends, see curve.rs
            let off = (outlines.area(1) - pixels) / (std::f64::consts::TAU * radius);
            prop_assert!((-0.2..0.1).contains(&off), "{} px", off);
        }
    }

    #[test]
    fn the_edge_of_a_disc_has_no_corner_and_that_of_a_square_four() {
        let corners = |labels: &Raster<u8>| {
            let outlines = Outlines::of_labels(labels, 2);
            let drawn: Vec<&Curve> = outlines.drawn().collect();
            assert_eq!(drawn.len(), 1);
            drawn[0].steps.iter().filter(|step| matches!(step, Step::Line(_))).count() / 2
        };
        assert_eq!(corners(&picture(100, 100, &[(1, 0, 0.5, 0.5, 30.0)])), 0);
        let square = |i: usize| u8::from((20..80).contains(&(i % 100)) && (20..80).contains(&(i / 100)));
        assert_eq!(corners(&Raster { width: 100, values: (0..10_000).map(square).collect() }), 4);
    }
}
