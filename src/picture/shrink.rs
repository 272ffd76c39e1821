//! Fewer, larger pixels: of colours the mean of the light, of pencil numbers the one that covers most.

use image::RgbImage;

use super::colour::light_of_levels;
use super::pieces::Crop;
use super::raster::Raster;
use crate::frame::{float, floor_index, narrow};

/// What of a line of pixels one of them covers in the line of larger ones: the first that it touches, and how much of it lies
/// there and in the next one.
#[derive(Copy, Clone, Debug)]
struct Split {
    to: usize,
    here: f32,
    next: f32,
}

/// Larger pixels side by side: where the first begins, how long each is in the pixels of before, how many.
#[derive(Copy, Clone, Debug)]
struct Line {
    start: f64,
    step: f64,
    count: usize,
}

impl Line {
    /// How each of `pixels` is split among the larger ones; a larger one is never shorter than a pixel.
    fn splits(self, pixels: usize) -> Vec<Option<Split>> {
        let end = self.start + self.step * float(self.count);
        let split = |i: usize| {
            let (from, to) = (float(i).max(self.start), float(i + 1).min(end));
            if to - from <= 1e-9 {
                return None;
            }
            let at = floor_index((from - self.start) / self.step + 1e-9).min(self.count - 1);
            let border = self.start + self.step * float(at + 1);
            let here = (border.min(to) - from).max(0.0);
            let next = if at + 1 < self.count { (to - border).max(0.0) } else { 0.0 };
            Some(Split { to: at, here: narrow(here), next: narrow(next) })
        };
        (0..pixels).map(split).collect()
    }
}

/// The part of a picture that a grid takes, in larger pixels.
#[derive(Copy, Clone, Debug)]
pub struct Shrink {
    across: Line,
    down: Line,
}

impl Shrink {
    /// To `width` × `height` pixels; neither more than the crop has.
    #[must_use]
    pub fn new(crop: &Crop, width: usize, height: usize) -> Self {
        let line = |start, length: f64, count| Line { start, step: length / float(count), count };
        Self {
            across: line(crop.top_left.x, crop.size.x, width),
            down: line(crop.top_left.y, crop.size.y, height),
        }
    }

    /// The mean of the light, linear red, green, blue from 0 to 1.
    #[must_use]
    pub fn light(&self, pixels: &RgbImage) -> Raster<[f32; 3]> {
        let light = light_of_levels();
        let wide = self.across.count;
        let mut sums = vec![[0.0_f32; 3]; wide * self.down.count];
        let across = self.across.splits(usize::try_from(pixels.width()).unwrap_or(0));
        let down = self.down.splits(usize::try_from(pixels.height()).unwrap_or(0));
        let mut row_sums = vec![[0.0_f32; 3]; wide + 1];
        for (row, split) in pixels.rows().zip(&down).filter_map(|(row, split)| Some((row, (*split)?))) {
            row_sums.fill([0.0; 3]);
            for (pixel, split) in row.zip(&across).filter_map(|(pixel, split)| Some((pixel, (*split)?))) {
                for (part, level) in pixel.0.iter().enumerate() {
                    let light = light[usize::from(*level)];
                    row_sums[split.to][part] += light * split.here;
                    row_sums[split.to + 1][part] += light * split.next;
                }
            }
            for (to, weight) in [(split.to, split.here), (split.to + 1, split.next)] {
                let Some(sums) = sums.get_mut(to * wide..(to + 1) * wide).filter(|_| weight > 0.0) else {
                    continue;
                };
                for (sum, own) in sums.iter_mut().zip(&row_sums) {
                    sum.iter_mut().zip(own).for_each(|(sum, own)| *sum += own * weight);
                }
            }
        }
        let area = narrow(self.across.step * self.down.step);
        sums.iter_mut().flatten().for_each(|sum| *sum /= area);
        Raster { width: wide, values: sums }
    }

    /// The number that covers most of each larger pixel; numbers are below `count`.
    #[must_use]
    pub fn most(&self, numbers: &Raster<u8>, count: usize) -> Raster<u8> {
        let wide = self.across.count;
        let across = self.across.splits(numbers.width);
        let down = self.down.splits(numbers.height());
        let mut values = Vec::with_capacity(wide * self.down.count);
        let (mut here, mut next) = (vec![0.0_f32; (wide + 1) * count], vec![0.0_f32; (wide + 1) * count]);
        let mut at = 0;
        let rows = numbers.values.chunks_exact(numbers.width.max(1)).zip(&down);
        for (row, split) in rows.filter_map(|(row, split)| Some((row, (*split)?))) {
            if split.to > at {
                values.extend(here.chunks_exact(count).take(wide).map(largest));
                std::mem::swap(&mut here, &mut next);
                next.fill(0.0);
                at = split.to;
            }
            for (number, x) in
                row.iter().zip(&across).filter_map(|(number, x)| Some((usize::from(*number), (*x)?)))
            {
                let place = x.to * count + number;
                here[place] += x.here * split.here;
                here[place + count] += x.next * split.here;
                next[place] += x.here * split.next;
                next[place + count] += x.next * split.next;
            }
        }
        values.extend(here.chunks_exact(count).take(wide).map(largest));
        Raster { width: wide, values }
    }
}

/// The place of the largest, the first of equals.
fn largest(values: &[f32]) -> u8 {
    let mut best = (0, f32::NEG_INFINITY);
    for (number, value) in (0..=u8::MAX).zip(values) {
        if *value > best.1 {
            best = (number, *value);
        }
    }
    best.0
}
