//! Bilinear sampling of a photo's colours.

use std::borrow::Cow;

use rayon::prelude::*;

use crate::frame::{PhotoPx, Point, float, floor_index};
use crate::photo::Photo;

/// Photo to sample, thinned so that one of its pixels is about as large as one of the picture that is drawn.
pub(super) struct Source<'a> {
    bytes: Cow<'a, [u8]>,
    /// Width and height, in thinned pixels.
    size: (usize, usize),
    /// Width and height of the photo, in thinned pixels, which the last of them may stand over.
    end: (f64, f64),
    /// Scale in thinned pixels for one pixel of the photo.
    shrink: f64,
}

/// Number of steps between two pixels: fixed point with eight bits behind the point.
const STEPS: usize = 256;

impl<'a> Source<'a> {
    /// Photo with the mean of `thin` × `thin` of its pixels as one. 1 copies nothing.
    pub(super) fn new(photo: &'a Photo, thin: usize) -> Self {
        let side = |pixels: u32| usize::try_from(pixels).unwrap_or(0);
        let size = (side(photo.colour.width()), side(photo.colour.height()));
        let shrink = 1.0 / float(thin.max(1));
        let end = (float(size.0) * shrink, float(size.1) * shrink);
        if thin <= 1 {
            return Self { bytes: Cow::Borrowed(photo.colour.as_raw()), size, end, shrink };
        }
        let thinned = (size.0.div_ceil(thin), size.1.div_ceil(thin));
        let mut bytes = vec![0; thinned.0 * thinned.1 * 3];
        let rows = bytes.par_chunks_mut((thinned.0 * 3).max(1));
        rows.zip(photo.colour.as_raw().par_chunks((size.0 * 3 * thin).max(1))).for_each(|(into, from)| {
            thin_rows(into, from, size.0, thin);
        });
        Self { bytes: Cow::Owned(bytes), size: thinned, end, shrink }
    }

    /// Colour at a place, red, green, blue, bilinear between the four nearest pixels; `None` outside the
    /// photo.
    #[inline]
    pub(super) fn at(&self, p: Point<PhotoPx>) -> Option<[u8; 3]> {
        let (x, y) = (p.x * self.shrink, p.y * self.shrink);
        let width = self.size.0;
        if !(x >= 0.0 && y >= 0.0 && x < self.end.0 && y < self.end.1) {
            return None; // also where a coordinate is no number
        }
        let fixed = |value: f64| floor_index((value - 0.5) * float(STEPS)); // not below the first pixel's centre
        let (x, y) = (fixed(x), fixed(y));
        let (left, upper) = (x / STEPS, y / STEPS);
        let (across, down) = (x % STEPS, y % STEPS);
        let start = (upper * width + left) * 3;
        let right = if left + 1 < width { 3 } else { 0 };
        let above = self.bytes.get(start..start + right + 3)?;
        let below = self.bytes.get(start + width * 3..start + width * 3 + right + 3).unwrap_or(above);
        let mixed = |i: usize| {
            let between =
                |line: &[u8]| usize::from(line[i]) * (STEPS - across) + usize::from(line[i + right]) * across;
            let sum = between(above) * (STEPS - down) + between(below) * down;
            u8::try_from((sum + STEPS * STEPS / 2) / (STEPS * STEPS)).unwrap_or(u8::MAX)
        };
        Some([mixed(0), mixed(1), mixed(2)])
    }

    /// Thinned pixels, three bytes each, row by row, and the number in a row.
    pub(super) fn pixels(&self) -> (&[u8], usize) {
        (&self.bytes, self.size.0)
    }
}

/// Box filter of up to `thin` rows of `width` pixels to one row.
fn thin_rows(into: &mut [u8], from: &[u8], width: usize, thin: usize) {
    for (i, pixel) in into.chunks_exact_mut(3).enumerate() {
        let (first, beyond) = (i * thin, ((i + 1) * thin).min(width));
        let mut sum = [0_usize; 3];
        let mut count = 0;
        for row in from.chunks_exact(width * 3) {
            for own in row[first * 3..beyond * 3].chunks_exact(3) {
                for (sum, value) in sum.iter_mut().zip(own) {
                    *sum += usize::from(*value);
                }
                count += 1;
            }
        }
        for (value, sum) in pixel.iter_mut().zip(sum) {
            *value = u8::try_from((sum + count / 2) / count.max(1)).unwrap_or(u8::MAX);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::photo::Luma;
    use image::{Rgb, RgbImage};

    fn photo(width: u32, height: u32) -> Photo {
        let level = |x: u32, y: u32| u8::try_from(x * 20 + y * 9).unwrap();
        let colour = RgbImage::from_fn(width, height, |x, y| Rgb([level(x, y), 0, 7]));
        let luma = Luma { width: width as usize, height: height as usize, grey: Vec::new() };
        Photo { luma, colour, taken: None, made: true }
    }

    #[test]
    fn a_slope_is_read_as_a_slope_thinned_or_not() {
        let photo = photo(10, 6);
        for thin in 1..=2 {
            let source = Source::new(&photo, thin);
            let edge = float(thin) / 2.0;
            for (x, y) in [(edge, edge), (3.7, 2.2), (10.0 - edge, 6.0 - edge), (5.01, 3.99)] {
                let wanted = 20.0 * (x - 0.5) + 9.0 * (y - 0.5);
                let [red, green, blue] = source.at(Point::new(x, y)).unwrap();
                assert!((f64::from(red) - wanted).abs() <= 1.1, "{red} for {wanted} at {x}, {y}");
                assert_eq!((green, blue), (0, 7));
            }
        }
    }

    #[test]
    fn outside_there_is_nothing_and_a_rest_is_the_mean_of_what_there_is() {
        let photo = photo(5, 3);
        let source = Source::new(&photo, 2);
        assert_eq!(source.size, (3, 2));
        for (x, y) in [(-0.1, 1.0), (5.1, 1.0), (1.0, 3.1), (f64::NAN, 1.0)] {
            assert_eq!(source.at(Point::new(x, y)), None);
        }
        assert_eq!(source.pixels().0[3 * 5], 4 * 20 + 2 * 9); // the last column's last row stands alone
    }
}
