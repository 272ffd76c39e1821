//! Colours between the pixels of a photo.

use image::{Rgb, RgbImage};

use crate::frame::{PhotoPx, Point, float, floor_index, round_byte};
use crate::photo::Photo;

/// A photo to take colours from. Its coloured pixels may be fewer than the grey ones that were read.
#[derive(Copy, Clone)]
pub(super) struct Sampler<'a> {
    colour: &'a RgbImage,
    /// Coloured pixels for one pixel of the photo, across and down.
    shrink: (f64, f64),
}

impl<'a> Sampler<'a> {
    pub(super) fn new(photo: &'a Photo) -> Self {
        let (width, height) = (f64::from(photo.colour.width()), f64::from(photo.colour.height()));
        let shrink = (width / float(photo.luma.width.max(1)), height / float(photo.luma.height.max(1)));
        Self { colour: &photo.colour, shrink }
    }

    /// The colour at a place, red, green, blue, between the four nearest pixels; `None` outside the photo.
    pub(super) fn at(&self, p: Point<PhotoPx>) -> Option<[f64; 3]> {
        let (x, y) = (p.x * self.shrink.0, p.y * self.shrink.1);
        let (width, height) = self.colour.dimensions();
        if !(x >= 0.0 && y >= 0.0 && x < f64::from(width) && y < f64::from(height)) {
            return None; // also where a coordinate is no number
        }
        let (x, y) = ((x - 0.5).max(0.0), (y - 0.5).max(0.0));
        let (left, upper) = (whole(x), whole(y));
        let (right, lower) = ((left + 1).min(width - 1), (upper + 1).min(height - 1));
        let (across, down) = (x - f64::from(left), y - f64::from(upper));
        let mut mixed = [0.0; 3];
        let four = [
            (left, upper, (1.0 - across) * (1.0 - down)),
            (right, upper, across * (1.0 - down)),
            (left, lower, (1.0 - across) * down),
            (right, lower, across * down),
        ];
        for (x, y, weight) in four {
            for (sum, value) in mixed.iter_mut().zip(self.colour.get_pixel(x, y).0) {
                *sum += weight * f64::from(value);
            }
        }
        Some(mixed)
    }
}

/// The mean of some colours as a pixel; `None` of none, or where one of them is missing.
pub(super) fn mean(colours: impl Iterator<Item = Option<[f64; 3]>>) -> Option<Rgb<u8>> {
    let (mut sum, mut count) = ([0.0; 3], 0.0);
    for colour in colours {
        let colour = colour?;
        sum = [sum[0] + colour[0], sum[1] + colour[1], sum[2] + colour[2]];
        count += 1.0;
    }
    (count > 0.0).then(|| Rgb(sum.map(|value| round_byte(value / count))))
}

/// `per_side` × `per_side` places spread evenly over the pixel of which (`x`, `y`) is the top left corner.
pub(super) fn spread(x: f64, y: f64, per_side: usize) -> impl Iterator<Item = (f64, f64)> {
    let step = 1.0 / float(per_side.max(1));
    let within = move |i: usize| (float(i) + 0.5) * step;
    (0..per_side).flat_map(move |j| (0..per_side).map(move |i| (x + within(i), y + within(j))))
}

fn whole(value: f64) -> u32 {
    u32::try_from(floor_index(value)).unwrap_or(u32::MAX)
}
