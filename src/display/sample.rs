//! Colours between the pixels of a photo.

use image::Rgb;

use crate::frame::{PhotoPx, Point, float, floor_index, round_byte};
use crate::photo::Photo;

/// A photo to take colours from. Its coloured pixels may be fewer than the grey ones that were read.
#[derive(Copy, Clone)]
pub(super) struct Sampler<'a> {
    bytes: &'a [u8],
    /// Bytes from one row to the next, three a pixel.
    row: usize,
    /// Width and height in coloured pixels.
    size: (f64, f64),
    /// Coloured pixels for one pixel of the photo, across and down.
    shrink: (f64, f64),
}

impl<'a> Sampler<'a> {
    pub(super) fn new(photo: &'a Photo) -> Self {
        let (width, height) = (f64::from(photo.colour.width()), f64::from(photo.colour.height()));
        let shrink = (width / float(photo.luma.width.max(1)), height / float(photo.luma.height.max(1)));
        let row = 3 * floor_index(width);
        Self { bytes: photo.colour.as_raw(), row, size: (width, height), shrink }
    }

    /// The colour at a place, red, green, blue, between the four nearest pixels; `None` outside the photo.
    pub(super) fn at(&self, p: Point<PhotoPx>) -> Option<[f64; 3]> {
        let (x, y) = (p.x * self.shrink.0, p.y * self.shrink.1);
        if !(x >= 0.0 && y >= 0.0 && x < self.size.0 && y < self.size.1) {
            return None; // also where a coordinate is no number
        }
        let (x, y) = ((x - 0.5).max(0.0), (y - 0.5).max(0.0));
        let (left, upper) = (floor_index(x), floor_index(y));
        let (across, down) = (x - float(left), y - float(upper));
        let row = self.row;
        let right = if left + 1 < row / 3 { 3 } else { 0 };
        let start = upper * row + left * 3;
        let above = self.bytes.get(start..start + right + 3)?;
        let below = self.bytes.get(start + row..start + row + right + 3).unwrap_or(above); // none below the last row
        let between =
            |line: &[u8], i: usize| f64::from(line[i]) * (1.0 - across) + f64::from(line[i + right]) * across;
        Some([0, 1, 2].map(|i| between(above, i) * (1.0 - down) + between(below, i) * down))
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
