//! A part of the picture, where not all of it is drawn.
//!
//! ```
//! use everysquare::picture::Area;
//! let middle = Area::of_percent([25.0, 25.0, 50.0, 50.0]).unwrap();
//! let its_left = Area::of_percent([0.0, 0.0, 50.0, 100.0]).unwrap();
//! assert_eq!(middle.within(its_left).percent(), [25, 25, 25, 50]);
//! assert_eq!(Area::of_percent([60.0, 0.0, 60.0, 100.0]), None); // reaches beyond the picture
//! ```

use image::imageops::crop_imm;

use super::{Crop, Picture};
use crate::frame::{float, round_index};

/// Least width and height of an area, in percent of the picture's: below, hardly a shape is left.
pub const LEAST_PERCENT: f64 = 5.0;
/// How far an area may reach beyond the picture, in percent: the last bits of sums.
const ROUNDING: f64 = 1e-9;

/// Rectangle in the picture, in parts of its width and height, 0 … 1; origin top left, y down.
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct Area {
    left: f64,
    top: f64,
    width: f64,
    height: f64,
}

impl Area {
    /// All of the picture.
    pub const WHOLE: Self = Self { left: 0.0, top: 0.0, width: 1.0, height: 1.0 };

    /// From its left edge, top edge, width and height in percent. `None` where it reaches beyond the picture or is narrower or lower than
    /// [`LEAST_PERCENT`].
    #[must_use]
    pub fn of_percent([left, top, width, height]: [f64; 4]) -> Option<Self> {
        let fits = |from: f64, length: f64| {
            from >= 0.0 && length >= LEAST_PERCENT && from + length <= 100.0 + ROUNDING
        };
        (fits(left, width) && fits(top, height)).then(|| Self {
            left: left / 100.0,
            top: top / 100.0,
            width: width / 100.0,
            height: height / 100.0,
        })
    }

    /// The part of a picture of some pixels that a grid covers.
    #[must_use]
    pub fn of_crop(crop: &Crop, (width, height): (u32, u32)) -> Self {
        let (width, height) = (f64::from(width.max(1)), f64::from(height.max(1)));
        Self {
            left: crop.top_left.x / width,
            top: crop.top_left.y / height,
            width: crop.size.x / width,
            height: crop.size.y / height,
        }
    }

    /// A part of this area, given in parts of it, as a part of the picture.
    #[must_use]
    pub fn within(self, part: Self) -> Self {
        Self {
            left: self.left + part.left * self.width,
            top: self.top + part.top * self.height,
            width: part.width * self.width,
            height: part.height * self.height,
        }
    }

    /// In whole percent: left edge, top edge, width, height; not beyond the picture.
    #[must_use]
    pub fn percent(self) -> [usize; 4] {
        let [left, top, right, below] = [self.left, self.top, self.left + self.width, self.top + self.height]
            .map(|part| round_index(part * 100.0));
        [left, top, right.saturating_sub(left), below.saturating_sub(top)]
    }

    /// Left edge, top edge, width and height in a raster of some width and height, unrounded.
    pub(super) fn of_size(self, width: f64, height: f64) -> [f64; 4] {
        [self.left * width, self.top * height, self.width * width, self.height * height]
    }

    /// In pixels of a picture: left edge, top edge, width, height; at least one pixel.
    fn pixels(self, (width, height): (u32, u32)) -> [u32; 4] {
        let along = |from: f64, length: f64, all: u32| {
            let at = |part: f64| u32::try_from(round_index(part * f64::from(all))).unwrap_or(all).min(all);
            let first = at(from).min(all.saturating_sub(1));
            (first, at(from + length).max(first + 1) - first)
        };
        let (left, across) = along(self.left, self.width, width);
        let (top, down) = along(self.top, self.height, height);
        [left, top, across, down]
    }
}

impl Picture {
    /// A part of the picture, to the nearest whole pixels.
    #[must_use]
    pub fn area(&self, area: Area) -> Self {
        let [left, top, width, height] = area.pixels(self.size());
        Self { pixels: crop_imm(&self.pixels, left, top, width, height).to_image() }
    }
}

/// Areas of the picture's own shape, `part` of its width and height, their corners in `steps` places each way.
pub(super) fn of_shape(part: f64, steps: usize) -> impl Iterator<Item = Area> {
    let place = move |i: usize| (1.0 - part) * float(i) / float(steps.saturating_sub(1).max(1));
    (0..steps * steps).map(move |i| Area {
        left: place(i % steps),
        top: place(i / steps),
        width: part,
        height: part,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn whole_percent_is_an_area_again(left in 0..90_u32, top in 0..90_u32, width in 5..60_u32, height in 5..60_u32) {
            let typed = [left, top, width, height].map(f64::from);
            if let Some(area) = Area::of_percent(typed) {
                prop_assert_eq!(area.percent().map(float), typed);
                prop_assert_eq!(Area::WHOLE.within(area), area);
            } else {
                prop_assert!(left + width > 100 || top + height > 100);
            }
        }

        #[test]
        fn a_part_has_the_pixels_it_says(width in 1..80_u32, height in 1..80_u32, left in 0.0..95.0_f64, top in 0.0..95.0_f64) {
            let area = Area::of_percent([left, top, 100.0 - left, 100.0 - top]).unwrap();
            let pixels = image::RgbImage::from_fn(width, height, |x, y| image::Rgb([x, y, 7].map(|at| u8::try_from(at).unwrap())));
            let part = Picture { pixels: pixels.clone() }.area(area).pixels;
            let last = *part.get_pixel(part.width() - 1, part.height() - 1);
            prop_assert_eq!(last, *pixels.get_pixel(width - 1, height - 1));
            prop_assert!((f64::from(part.width()) - (1.0 - left / 100.0) * f64::from(width)).abs() <= 0.5 + 1.0);
        }
    }
}
