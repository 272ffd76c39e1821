//! Finder patterns too small or too blurred to show five edges: places where a dark middle lies in a light ring in a dark ring.
//!
//! Where modules are little larger than the blur, a line through a pattern no longer crosses 1 : 1 : 3 : 1 : 1. What is left is
//! seen over areas. At every pixel three squares about it are summed, and the correlation with the rings is rated:
//!
//! ```text
//!   ┌───────────────┐   outer   7 modules     dark:  outer − middle, and inner
//!   │ ┌───────────┐ │   middle  5 modules     light: middle − inner
//!   │ │   ┌───┐   │ │   inner   3 modules
//!   │ │   └───┘   │ │
//!   └───────────────┘   sides are odd numbers of pixels: a table of sums gives each square in four look-ups
//! ```
//!
//! Much else is rated high too; which places belong together is for the grouping to say. That takes seconds, so it is done only where
//! crossings lead nowhere.

use rayon::prelude::*;

use super::finders::Finder;
use crate::frame::{Point, float};
use crate::photo::Luma;

/// Half sides of the three squares, in pixels without the middle one, and the module's side that they stand for.
const SIZES: [([usize; 3], f64); 5] =
    [([1, 2, 3], 1.0), ([1, 3, 4], 1.3), ([2, 3, 5], 1.5), ([2, 4, 6], 1.85), ([2, 5, 7], 2.1)];
/// The least correlation; a clean pattern blurred by as much as its module has 0.5 and more.
const LEAST: f64 = 0.42;
/// The least spread of brightness about a pattern, in grey levels: what is flatter is noise.
const SPREAD: f64 = 6.0;
/// At most so many places are kept, the best. With 5 % of noise on 1.5 px modules, 4,000 held 12 of 171 true patterns, these 59 (made wall);
/// halved, walls without cards are not placed there.
const MOST: usize = 12000;
/// Pixels at the photo's edge that are not looked at.
const EDGE: usize = 8;

/// The likeliest places, best first.
#[must_use]
pub(super) fn find(luma: &Luma) -> Vec<Finder> {
    if luma.width < 4 * EDGE || luma.height < 4 * EDGE {
        return Vec::new();
    }
    let sums = Sums::new(luma);
    let rows: Vec<Vec<Rated>> = (EDGE..luma.height - EDGE).into_par_iter().map(|y| sums.row(y)).collect();
    let mut peaks: Vec<(f64, Finder)> = rows
        .par_iter()
        .enumerate()
        .flat_map_iter(|(at, row)| {
            let near = &rows[at.saturating_sub(1)..(at + 2).min(rows.len())];
            row.iter().filter(|one| near.iter().flatten().all(|other| !other.beats(one))).map(move |one| {
                let centre = Point::new(float(one.x) + 0.5, float(at + EDGE) + 0.5);
                let module = [SIZES[one.size].1; 2];
                let pixels = float((2 * SIZES[one.size].0[2] + 1).pow(2));
                // what noise alone reaches shrinks with the root of the number of pixels
                (one.rating * pixels.sqrt(), Finder { centre, module, crossings: 1 })
            })
        })
        .collect();
    peaks.sort_by(|a, b| b.0.total_cmp(&a.0));
    peaks.truncate(MOST);
    peaks.into_iter().map(|(_, finder)| finder).collect()
}

/// A place of a row that is rated high, with the size that suits it best.
struct Rated {
    x: usize,
    size: usize,
    rating: f64,
}

impl Rated {
    /// Whether this is rated higher than a place beside it.
    fn beats(&self, other: &Self) -> bool {
        self.x.abs_diff(other.x) <= 1 && self.rating > other.rating
    }
}

/// Sums over rectangles from the top left, of levels and of their squares; they may run over, differences do not mind.
struct Sums {
    width: usize,
    level: Vec<u32>,
    square: Vec<u32>,
}

impl Sums {
    fn new(luma: &Luma) -> Self {
        let width = luma.width + 1;
        let mut level = vec![0_u32; width * (luma.height + 1)];
        let mut square = level.clone();
        for (y, line) in luma.grey.chunks_exact(luma.width).enumerate() {
            let (mut row, mut row_of_squares) = (0_u32, 0_u32);
            for (x, grey) in line.iter().enumerate() {
                let grey = u32::from(*grey);
                row = row.wrapping_add(grey);
                row_of_squares = row_of_squares.wrapping_add(grey * grey);
                let at = (y + 1) * width + x + 1;
                level[at] = level[at - width].wrapping_add(row);
                square[at] = square[at - width].wrapping_add(row_of_squares);
            }
        }
        Self { width, level, square }
    }

    /// The sum over the square with a pixel in its middle.
    fn sum(&self, of: &[u32], x: usize, y: usize, half: usize) -> f64 {
        let at = |x: usize, y: usize| of[y * self.width + x];
        let (right, below) = (x + half + 1, y + half + 1);
        let sum = at(right, below)
            .wrapping_add(at(x - half, y - half))
            .wrapping_sub(at(right, y - half))
            .wrapping_sub(at(x - half, below));
        f64::from(sum)
    }

    fn row(&self, y: usize) -> Vec<Rated> {
        let rate = |x: usize| {
            let rated = SIZES.iter().enumerate().map(|(size, (halves, _))| (size, self.rate(x, y, *halves)));
            let (size, rating) = rated.max_by(|a, b| a.1.total_cmp(&b.1))?;
            (rating >= LEAST).then_some(Rated { x, size, rating })
        };
        (EDGE..self.width - 1 - EDGE).filter_map(rate).collect()
    }

    fn rate(&self, x: usize, y: usize, halves: [usize; 3]) -> f64 {
        let [inner, middle, outer] = halves.map(|half| self.sum(&self.level, x, y, half));
        let [few, more, all] = halves.map(|half| float((2 * half + 1).pow(2)));
        let light = more - few;
        let dark = all - light;
        let step = (middle - inner) / light - (outer - middle + inner) / dark;
        if step <= SPREAD {
            return 0.0;
        }
        let power = self.sum(&self.square, x, y, halves[2]) / all - (outer / all).powi(2);
        step * (light * dark).sqrt() / all / power.max(SPREAD).sqrt()
    }
}

#[cfg(test)]
mod tests {
    use super::super::paint::{event, paint, pose};
    use super::*;

    #[test]
    fn the_patterns_of_small_codes_are_among_the_places() {
        let squares = event("K7M").squares;
        for (at, px) in [(3, 1.2), (20, 1.4), (41, 1.6), (60, 2.0)] {
            let truth = pose(40.3, 40.6, px, 4.0);
            let luma = paint(80, 80, &[(truth, squares[at].modules.clone())]);
            let found = find(&luma);
            for (right, down) in [(-7.0, -7.0), (7.0, -7.0), (-7.0, 7.0)] {
                let middle = truth.centre + truth.u * right + truth.v * down;
                let nearest =
                    found.iter().map(|f| f.centre.distance(middle).value()).fold(f64::INFINITY, f64::min);
                assert!(nearest < 1.0, "a pattern is {nearest} px away, a module has {px} px");
            }
        }
    }

    #[test]
    fn a_flat_picture_and_a_tiny_one_hold_none() {
        for (width, height) in [(0, 0), (20, 20), (300, 200)] {
            assert!(find(&Luma { width, height, grey: vec![90; width * height] }).is_empty());
        }
    }
}
