//! Squares that lie anywhere, outlined and named in their photo. Of the photo only the squares' own paper is kept.

use image::{Rgb, RgbImage};
use rayon::prelude::*;

use super::drawing::{Canvas, Pen};
use super::marked::BLANK;
use super::sample::Source;
use super::straighten::LONGEST_PX;
use crate::frame::{DisplayPx, Map, PhotoPx, Point, float};
use crate::photo::Photo;

/// Paper that is kept around each square, as a share of its side: a code tells its paper's edges to a few hundredths.
const AROUND: f64 = 0.06;
/// Height of a label, as a share of a square's side, and the least of it in pixels.
const LETTERS: f64 = 0.3;
const LEAST_PX: f64 = 11.0;
const INK: Rgb<u8> = Rgb([20, 24, 30]);
const LINE: Rgb<u8> = Rgb([0, 92, 150]);

/// A square in the photo: its label, and the corners of its paper.
#[derive(Clone, Debug, PartialEq)]
pub struct Named {
    /// Label.
    pub label: String,
    /// Corners of the paper.
    pub corners: [Point<PhotoPx>; 4],
}

/// Draws the squares of a photo. The photo's own pixels where those are at most [`LONGEST_PX`] on their longer side, else means.
#[must_use]
pub fn scattered(photo: &Photo, squares: &[Named]) -> RgbImage {
    let thin = photo.luma.width.max(photo.luma.height).div_ceil(LONGEST_PX).max(1);
    let source = Source::new(photo, thin);
    let (pixels, across) = source.pixels();
    let shrink = Map::<PhotoPx, DisplayPx>::scale_then_shift(1.0 / float(thin), 0.0, 0.0);
    let places: Vec<[Point<DisplayPx>; 4]> =
        squares.iter().map(|square| square.corners.map(|corner| shrink.apply(corner))).collect();
    let papers: Vec<[Point<DisplayPx>; 4]> = places.iter().map(grown).collect();
    let mut picture = vec![BLANK.0[0]; pixels.len()];
    picture.par_chunks_exact_mut(across * 3).zip(pixels.par_chunks_exact(across * 3)).enumerate().for_each(
        |(y, (into, from))| {
            for paper in &papers {
                let [start, end] = stretch(paper, float(y) + 0.5, across);
                into[start * 3..end * 3].copy_from_slice(&from[start * 3..end * 3]);
            }
        },
    );
    let side = |pixels: usize| u32::try_from(pixels).unwrap_or(u32::MAX);
    let rows = pixels.len() / (across * 3).max(1);
    let mut picture = RgbImage::from_raw(side(across), side(rows), picture).unwrap_or_default();
    let mut canvas = Canvas::<DisplayPx>::on(&mut picture);
    for corners in &places {
        let long =
            (0..4).map(|i| corners[i].distance(corners[(i + 1) % 4]).value()).fold(f64::INFINITY, f64::min);
        let width = (long * 0.03).max(1.5);
        canvas.outline(corners, Pen { colour: Rgb([255; 3]), width: width * 1.8, dash: None });
        canvas.outline(corners, Pen { colour: LINE, width, dash: None });
    }
    for (square, corners) in squares.iter().zip(&places) {
        let long = corners[0].distance(corners[1]).value();
        let middle = corners[0].towards(corners[2], 0.5);
        canvas.label(middle, &[(&square.label, (LETTERS * long).max(LEAST_PX))], 0.9 * long, INK);
    }
    picture
}

/// A quadrilateral a little larger about its middle.
fn grown(corners: &[Point<DisplayPx>; 4]) -> [Point<DisplayPx>; 4] {
    let middle = corners[0].towards(corners[2], 0.5).towards(corners[1].towards(corners[3], 0.5), 0.5);
    corners.map(|corner| middle.towards(corner, 1.0 + 2.0 * AROUND))
}

/// First pixel of a row within a convex quadrilateral, and the one beyond the last.
fn stretch(corners: &[Point<DisplayPx>; 4], y: f64, width: usize) -> [usize; 2] {
    let (mut left, mut right) = (f64::INFINITY, f64::NEG_INFINITY);
    for (i, from) in corners.iter().enumerate() {
        let to = corners[(i + 1) % 4];
        if (from.y > y) != (to.y > y) {
            let x = from.x + (to.x - from.x) * (y - from.y) / (to.y - from.y);
            (left, right) = (left.min(x), right.max(x));
        }
    }
    if left > right {
        return [0, 0];
    }
    let pixel = |x: f64| crate::frame::round_index(x.max(0.0)).min(width);
    [pixel(left), pixel(right)]
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::photo::Luma;

    #[test]
    fn only_the_squares_own_paper_is_kept() {
        let colour = RgbImage::from_pixel(200, 120, Rgb([90, 120, 60]));
        let photo = Photo { luma: Luma::of(&colour), colour, taken: None, made: true };
        let corners =
            [(60.0, 30.0), (110.0, 40.0), (100.0, 90.0), (50.0, 80.0)].map(|(x, y)| Point::new(x, y));
        let drawn = scattered(&photo, &[Named { label: "D7".to_owned(), corners }]);
        assert_eq!(drawn.dimensions(), (200, 120));
        for (x, y) in [(5, 5), (150, 60), (80, 15), (40, 30), (199, 119)] {
            assert_eq!(drawn.get_pixel(x, y), &BLANK, "{x}, {y}");
        }
        let kept = drawn.pixels().filter(|pixel| pixel.0 == [90, 120, 60]).count();
        assert!(kept > 300, "{kept}");
        assert_eq!(scattered(&photo, &[]).pixels().filter(|pixel| **pixel != BLANK).count(), 0);
        let outside = corners.map(|corner| Point::new(corner.x - 400.0, corner.y * 9.0));
        let drawn = scattered(&photo, &[Named { label: "A1".to_owned(), corners: outside }]);
        assert_eq!(drawn.dimensions(), (200, 120));
    }
}
