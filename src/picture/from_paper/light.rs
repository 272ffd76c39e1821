//! Light on a sheet: how bright its white is from place to place, and the drawing without it.
//!
//! The sheet is divided into blocks. In each the brightest tenth is paper, unless it is drawn over all; over the sheet the light changes
//! slowly. So a surface of the third degree is fitted to the blocks' logarithms from above (what lies below it is drawn over and loses its
//! weight), and what the blocks that are paper differ from it, smoothed, is added: the edge of a shadow is sharper than any such surface.

use image::RgbImage;
use nalgebra::{DMatrix, DVector};
use rayon::prelude::*;

use crate::frame::{float, floor_index, round_index};
use crate::picture::colour::{level_of_light, light_of_levels};

/// Number of blocks along the longer side.
const BLOCKS: usize = 36;
/// Part of a block's pixels that are as bright as its paper, or brighter.
const BRIGHTEST: f64 = 0.1;
/// Passes of the fit, each with the weights of the last.
const PASSES: usize = 24;
/// Passes at the start in which what lies below has hardly any weight, and that weight.
const UPWARDS: usize = 12;
const LOW: f64 = 0.01;
/// Terms of a surface of the third degree.
const TERMS: usize = 10;
/// How much darker than the surface, as a logarithm, a block loses half of its weight.
const BELOW: f64 = 0.08;
/// How far from the surface, and from the paper's own tint, a block is still paper, as logarithms.
const PAPER: f64 = 0.22;
const TINT: f64 = 0.1;
/// Standard deviation of the smoothing of what is left, in blocks.
const SMOOTH: f64 = 1.3;
/// Weight of nothing in that smoothing: where no block is paper, the surface stays.
const NOTHING: f64 = 0.3;
/// Light, as a part of the paper's, above which a pixel is white, and below which it stays as it is: in between grain and folds fade.
const WHITE: f64 = 0.82;
const DRAWN: f64 = 0.66;

/// A drawing in even light: paper is 255, everything else in proportion.
pub(super) fn evened(mut sheet: RgbImage) -> RgbImage {
    let paper = Paper::of(&sheet);
    let light_of_level = light_of_levels();
    let levels: Vec<u8> = (0..=1_000).map(|part| level_of_light(float(part) / 1_000.0)).collect();
    let width = usize::try_from(sheet.width()).unwrap_or(1).max(1);
    sheet.par_chunks_mut(3 * width).enumerate().for_each(|(y, row)| {
        let field = paper.row(y, width);
        for (pixel, white) in row.chunks_exact_mut(3).zip(field) {
            let mut parts = [0, 1, 2]
                .map(|channel| f64::from(light_of_level[usize::from(pixel[channel])]) / white[channel]);
            let least = parts.into_iter().fold(f64::INFINITY, f64::min);
            let fade = ((least - DRAWN) / (WHITE - DRAWN)).clamp(0.0, 1.0);
            let fade = fade * fade * (3.0 - 2.0 * fade);
            parts.iter_mut().for_each(|part| *part = (*part + (1.0 - *part) * fade).clamp(0.0, 1.0));
            pixel
                .iter_mut()
                .zip(parts)
                .for_each(|(level, part)| *level = levels[round_index(part * 1_000.0).min(1_000)]);
        }
    });
    sheet
}

/// The paper's white, block by block, as light.
struct Paper {
    across: usize,
    down: usize,
    /// Width and height of a block, in pixels.
    block: [f64; 2],
    white: Vec<[f64; 3]>,
}

impl Paper {
    fn of(sheet: &RgbImage) -> Self {
        let [width, height] =
            [sheet.width(), sheet.height()].map(|side| usize::try_from(side).unwrap_or(1).max(1));
        let side = (float(width.max(height)) / float(BLOCKS)).max(1.0);
        let count = |length: usize| round_index(float(length) / side).max(1);
        let (across, down) = (count(width), count(height));
        let light = light_of_levels();
        let bright: Vec<[f64; 3]> = (0..across * down)
            .into_par_iter()
            .map(|block| brightest(sheet, &light, block, (across, down)))
            .collect();
        let places: Vec<[f64; 2]> = (0..across * down)
            .map(|i| {
                let at = |i: usize, count: usize| (2.0 * float(i) + 1.0) / float(count) - 1.0;
                [at(i % across, across), at(i / across, down)]
            })
            .collect();
        let sums: Vec<f64> = bright.iter().map(|own| own.iter().sum::<f64>() / 3.0).collect();
        let all = vec![1.0; sums.len()];
        let surface = from_above(&places, &sums, &all);
        let near: Vec<bool> =
            places.iter().zip(&sums).map(|(at, sum)| (sum - value(&surface, *at)).abs() < PAPER).collect();
        let tint = tint(&bright, &sums, &near);
        let is_paper = |((own, sum), near): ((&[f64; 3], &f64), &bool)| {
            let far = own.iter().zip(tint).map(|(own, tint)| (own - sum - tint).abs()).fold(0.0, f64::max);
            if *near && far < TINT { 1.0 } else { 0.0 }
        };
        let paper: Vec<f64> = bright.iter().zip(&sums).zip(&near).map(is_paper).collect();
        let channels = [0, 1, 2].map(|channel| {
            let own: Vec<f64> = bright.iter().map(|block| block[channel]).collect();
            let surface = from_above(&places, &own, &paper);
            let fitted: Vec<f64> = places.iter().map(|at| value(&surface, *at)).collect();
            let rest: Vec<f64> = own.iter().zip(&fitted).map(|(own, fitted)| own - fitted).collect();
            let smooth = smoothed(&rest, &paper, across);
            fitted.iter().zip(smooth).map(|(fitted, rest)| (fitted + rest).exp()).collect::<Vec<f64>>()
        });
        let white =
            (0..across * down).map(|block| [0, 1, 2].map(|channel| channels[channel][block])).collect();
        let block = [float(width) / float(across), float(height) / float(down)];
        Self { across, down, block, white }
    }

    /// The paper's white along a row of pixels, bilinear between the blocks' middles.
    fn row(&self, y: usize, width: usize) -> Vec<[f64; 3]> {
        let place = |at: usize, block: f64, count: usize| {
            let at = ((float(at) + 0.5) / block - 0.5).clamp(0.0, float(count - 1));
            let first = floor_index(at).min(count.saturating_sub(2));
            (first, (first + 1).min(count - 1), at - float(first))
        };
        let (above, below, down) = place(y, self.block[1], self.down);
        let mixed = |x: usize| {
            let (left, right, along) = place(x, self.block[0], self.across);
            let at = |row: usize, column: usize| self.white[row * self.across + column];
            let (a, b, c, d) = (at(above, left), at(above, right), at(below, left), at(below, right));
            [0, 1, 2].map(|i| {
                let (top, bottom) = (a[i] + (b[i] - a[i]) * along, c[i] + (d[i] - c[i]) * along);
                top + (bottom - top) * down
            })
        };
        (0..width).map(mixed).collect()
    }
}

/// Logarithm of the light of a block's brightest pixels, by channel.
fn brightest(sheet: &RgbImage, light: &[f32; 256], block: usize, (across, down): (usize, usize)) -> [f64; 3] {
    let [width, height] = [sheet.width(), sheet.height()].map(|side| usize::try_from(side).unwrap_or(1));
    let (column, row) = (block % across, block / across);
    let (x, y) = (
        width * column / across..width * (column + 1) / across,
        height * row / down..height * (row + 1) / down,
    );
    let px = |at: usize| u32::try_from(at).unwrap_or(0);
    // by their darkest channel: a bright colour is not paper
    let mut pixels: Vec<(u8, [u8; 3])> = y
        .step_by(2)
        .flat_map(|y| x.clone().step_by(2).map(move |x| (x, y)))
        .map(|(x, y)| sheet.get_pixel(px(x), px(y)).0)
        .map(|pixel| (pixel.into_iter().min().unwrap_or(0), pixel))
        .collect();
    pixels.sort_unstable();
    let from = floor_index((1.0 - BRIGHTEST) * float(pixels.len())).min(pixels.len().saturating_sub(1));
    let own = &pixels[from..];
    [0, 1, 2].map(|channel| {
        let sum: f64 = own.iter().map(|(_, pixel)| f64::from(light[usize::from(pixel[channel])])).sum();
        (sum / float(own.len().max(1))).max(1e-3).ln()
    })
}

/// Median difference of each channel to the mean of all, in blocks near the surface.
fn tint(bright: &[[f64; 3]], sums: &[f64], near: &[bool]) -> [f64; 3] {
    [0, 1, 2].map(|channel| {
        let own = bright.iter().zip(sums).zip(near).filter(|(_, near)| **near);
        let mut own: Vec<f64> = own.map(|((block, sum), _)| block[channel] - sum).collect();
        own.sort_by(f64::total_cmp);
        own.get(own.len() / 2).copied().unwrap_or(0.0)
    })
}

/// Terms of the surface at a place, both coordinates −1 … 1.
fn terms([x, y]: [f64; 2]) -> [f64; TERMS] {
    [1.0, x, y, x * x, x * y, y * y, x * x * x, x * x * y, x * y * y, y * y * y]
}

fn value(surface: &[f64; TERMS], at: [f64; 2]) -> f64 {
    surface.iter().zip(terms(at)).map(|(own, term)| own * term).sum()
}

/// Surface through the upper ones of some values: least squares, weighted again and again by how far each lies below.
fn from_above(places: &[[f64; 2]], values: &[f64], given: &[f64]) -> [f64; TERMS] {
    let mut weights = given.to_vec();
    let mut surface = [0.0; TERMS];
    for pass in 0..PASSES {
        surface = weighted(places, values, &weights);
        for ((weight, given), (at, value_there)) in
            weights.iter_mut().zip(given).zip(places.iter().zip(values))
        {
            let below = (value(&surface, *at) - value_there).max(0.0) / BELOW;
            let kept = match pass {
                // a drawing may leave only a rim of paper: up first, whatever most of the sheet says
                0..UPWARDS => {
                    if below > 0.0 {
                        LOW
                    } else {
                        1.0
                    }
                }
                _ => 1.0 / (1.0 + below * below),
            };
            *weight = given * kept;
        }
    }
    surface
}

fn weighted(places: &[[f64; 2]], values: &[f64], weights: &[f64]) -> [f64; TERMS] {
    let mut left = DMatrix::<f64>::identity(TERMS, TERMS) * 1e-3; // few blocks of paper make a plain surface
    left[(0, 0)] = 1e-9;
    let mut right = DVector::<f64>::zeros(TERMS);
    for ((at, value), weight) in places.iter().zip(values).zip(weights) {
        let own = terms(*at);
        for i in 0..TERMS {
            right[i] += weight * own[i] * value;
            for j in 0..TERMS {
                left[(i, j)] += weight * own[i] * own[j];
            }
        }
    }
    let solved = left.cholesky().map(|solved| solved.solve(&right));
    std::array::from_fn(|i| solved.as_ref().map_or(0.0, |solved| solved[i]))
}

/// Values smoothed over the blocks that have a weight.
fn smoothed(values: &[f64], weights: &[f64], across: usize) -> Vec<f64> {
    let reach = round_index(3.0 * SMOOTH);
    let bell: Vec<f64> = (0..=reach).map(|i| (-0.5 * (float(i) / SMOOTH).powi(2)).exp()).collect();
    let down = values.len() / across.max(1);
    let at = |block: usize| {
        let (column, row) = (block % across, block / across);
        let rows = row.saturating_sub(reach)..(row + reach + 1).min(down);
        let (mut sum, mut all) = (0.0, NOTHING);
        for y in rows {
            for x in column.saturating_sub(reach)..(column + reach + 1).min(across) {
                let own = weights[y * across + x] * bell[x.abs_diff(column)] * bell[y.abs_diff(row)];
                sum += own * values[y * across + x];
                all += own;
            }
        }
        sum / all
    };
    (0..values.len()).map(at).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use image::Rgb;

    /// A drawing in three colours of pencil on paper, in light that falls off to one corner and is yellowish.
    fn lit(light: impl Fn(f64, f64) -> f64) -> (RgbImage, RgbImage) {
        let drawn = RgbImage::from_fn(480, 360, |x, y| {
            Rgb(match (x, y) {
                (60..=200, 60..=160) => [200, 60, 50],
                (260..=460, 200..=340) => [60, 100, 170],
                (0..=479, 170..=176) => [30, 30, 30],
                _ => [255; 3],
            })
        });
        let linear = light_of_levels();
        let shown = RgbImage::from_fn(480, 360, |x, y| {
            let by = light(f64::from(x) / 480.0, f64::from(y) / 360.0);
            let pixel = drawn.get_pixel(x, y).0;
            let tint = [1.0, 0.9, 0.72];
            Rgb([0, 1, 2].map(|i| level_of_light(f64::from(linear[usize::from(pixel[i])]) * by * tint[i])))
        });
        (drawn, shown)
    }

    fn worst(drawn: &RgbImage, evened: &RgbImage) -> i32 {
        let apart = drawn
            .pixels()
            .zip(evened.pixels())
            .map(|(a, b)| (0..3).map(|i| (i32::from(a.0[i]) - i32::from(b.0[i])).abs()).max().unwrap_or(0));
        apart.max().unwrap_or(0)
    }

    #[test]
    fn a_lamp_at_one_side_is_evened_out() {
        let (drawn, shown) = lit(|x, y| 0.75 - 0.35 * x - 0.15 * y * y);
        assert!(worst(&drawn, &evened(shown)) <= 14);
    }

    #[test]
    fn a_soft_shadow_across_the_paper_is_evened_out() {
        let (drawn, shown) = lit(|x, y| 0.7 - 0.2 / (1.0 + (-(x + 0.3 * y - 0.7) * 25.0).exp()));
        assert!(worst(&drawn, &evened(shown)) <= 30);
    }

    #[test]
    fn grain_on_paper_is_white() {
        let (_, shown) = lit(|x, _| 0.6 + 0.1 * x);
        let noisy = RgbImage::from_fn(480, 360, |x, y| {
            let add = (x * 7 + y * 13) % 9;
            Rgb(shown
                .get_pixel(x, y)
                .0
                .map(|level| level.saturating_sub(8).saturating_add(u8::try_from(2 * add).unwrap_or(0))))
        });
        let evened = evened(noisy);
        let white = (0..170)
            .flat_map(|y| (220..470).map(move |x| (x, y)))
            .filter(|(x, y)| evened.get_pixel(*x, *y).0 == [255; 3])
            .count();
        assert!(white * 100 >= 98 * 170 * 250, "{white}");
    }
}
