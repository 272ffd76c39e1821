//! White and black over the whole wall, smooth, from the references of single codes.
//!
//! At the corners and middles of all cells a plane is fitted to the references near by, weighted by distance
//! (Cleveland 1979, "Robust locally weighted regression"); outliers from their neighbours' plane, such as
//! glare, lose their weight. Between those places the field is interpolated bilinearly.
//!
//! White is followed from place to place. Black is not: next to sunlight a code's own black is easily taken
//! for too light. It is one veil of stray light everywhere in a photo, plus a share of white, since ink
//! throws back a little.

use rayon::prelude::*;

use super::reference::{Reference, weight};
use super::{Evening, INK, PAPER};
use crate::frame::{Point, WallMm, float, floor_index, median, narrow};
use crate::plan::Grid;

/// Number of places a cell, along one side, at which a plane is fitted: light changes little over half a
/// square of 127 mm.
const PLACES_A_CELL: usize = 2;
/// Number of nearest references that a plane is fitted to. Eight leave a shadow's edge a square wide; fewer
/// follow noise.
const NEIGHBOURS: usize = 8;
/// Ratio of the distance at which a reference has no weight to that of the last of [`NEIGHBOURS`].
const REACH: f64 = 1.15;
/// Number of rounds of robust reweighting.
const ROUNDS: usize = 2;
/// Number of values of a reference that are smoothed: the logarithm of white in three channels.
const NUMBERS: usize = 3;
type Numbers = [f64; NUMBERS];

/// Field of light corrections over the wall.
#[derive(Clone, Debug)]
pub(super) struct Field {
    /// Corrections at each place, row by row.
    places: Vec<Evening>,
    columns: usize,
    rows: usize,
    step_mm: f64,
}

/// Reference in the values that are smoothed, with its weight.
struct Known {
    at: Point<WallMm>,
    numbers: Numbers,
    weight: f64,
}

impl Field {
    /// Field over a grid; `None` without a reference.
    pub fn of(references: &[Reference], grid: &Grid) -> Option<Self> {
        let mut known: Vec<Known> = references.iter().map(Known::of).collect();
        if known.is_empty() {
            return None;
        }
        for _ in 0..ROUNDS {
            let smooth: Vec<Numbers> = known.par_iter().map(|own| smooth(&known, own.at)).collect();
            let off: Vec<f64> = known.iter().zip(&smooth).map(|(own, smooth)| own.off(smooth)).collect();
            let spread = 6.0 * median(off.clone())?.max(1e-3); // six medians: Cleveland's own choice
            known.iter_mut().zip(off).for_each(|(own, off)| own.weight = weight(off / spread).max(1e-3));
        }
        let veils = [0, 1, 2].map(|channel| Veil::of(references, channel));
        let (columns, rows) = (grid.columns * PLACES_A_CELL + 1, grid.rows * PLACES_A_CELL + 1);
        let step_mm = grid.square_mm / float(PLACES_A_CELL);
        let places = (0..columns * rows).into_par_iter().map(|i| {
            let at = Point::new(float(i % columns) * step_mm, float(i / columns) * step_mm);
            evening(&smooth(&known, at), &veils)
        });
        Some(Self { places: places.collect(), columns, rows, step_mm })
    }

    /// Correction at a place, interpolated bilinearly; beyond the wall that at its edge.
    #[inline]
    pub fn at(&self, place: Point<WallMm>) -> Evening {
        let along = |mm: f64, count: usize| {
            let at = (mm / self.step_mm).clamp(0.0, float(count - 1));
            let first = floor_index(at).min(count - 2);
            (first, narrow(at - float(first)))
        };
        let ((i, x), (j, y)) = (along(place.x, self.columns), along(place.y, self.rows));
        let start = j * self.columns + i;
        let [a, b] = [self.places[start], self.places[start + 1]];
        let [c, d] = [self.places[start + self.columns], self.places[start + self.columns + 1]];
        let mut mixed = [[0.0; 2]; 3];
        for (channel, mixed) in mixed.iter_mut().enumerate() {
            for (part, mixed) in mixed.iter_mut().enumerate() {
                let of = |evening: Evening| evening.0[channel][part];
                let (upper, lower) = (of(a) + (of(b) - of(a)) * x, of(c) + (of(d) - of(c)) * x);
                *mixed = upper + (lower - upper) * y;
            }
        }
        Evening(mixed)
    }
}

impl Known {
    fn of(reference: &Reference) -> Self {
        Self { at: reference.at, numbers: reference.white.map(f64::ln), weight: 1.0 }
    }

    /// Residual: the largest difference over the channels.
    fn off(&self, smooth: &Numbers) -> f64 {
        self.numbers.iter().zip(smooth).map(|(own, smooth)| (own - smooth).abs()).fold(0.0, f64::max)
    }
}

/// Value at a place of the plane through the references around it.
fn smooth(known: &[Known], place: Point<WallMm>) -> Numbers {
    let mut apart: Vec<f64> = known.iter().map(|own| own.at.distance(place).value()).collect();
    let count = NEIGHBOURS.min(apart.len());
    let reach = *apart.clone().select_nth_unstable_by(count - 1, f64::total_cmp).1 * REACH + 1.0;
    let mut plane = Plane::default();
    for (own, apart) in known.iter().zip(&mut apart) {
        if *apart < reach {
            let near = (1.0 - (*apart / reach).powi(3)).powi(3); // Cleveland's tricube
            let off = (own.at - place) / reach;
            plane.add([off.x, off.y], &own.numbers, near * own.weight);
        }
    }
    plane.at_middle()
}

/// Weighted least squares for a plane about the origin.
#[derive(Default)]
struct Plane {
    sums: [f64; 6],              // of 1, x, y, xx, xy, yy
    values: [[f64; NUMBERS]; 3], // of the numbers, times 1, x, y
}

/// Ridge term on the slopes, as a share of all weight, so that three references in a row make a plane too.
///
/// Ten times as much bends a slope at the wall's corner by 6 %.
const LEVEL: f64 = 1e-3;

impl Plane {
    fn add(&mut self, [x, y]: [f64; 2], numbers: &Numbers, weight: f64) {
        let terms = [1.0, x, y, x * x, x * y, y * y];
        self.sums.iter_mut().zip(terms).for_each(|(sum, term)| *sum += weight * term);
        for (values, by) in self.values.iter_mut().zip([1.0, x, y]) {
            values.iter_mut().zip(numbers).for_each(|(sum, number)| *sum += weight * by * number);
        }
    }

    /// Value of the plane at the origin: the first row of the inverse of the normal equations, times the
    /// values.
    fn at_middle(&self) -> Numbers {
        let [w, x, y, xx, xy, yy] = self.sums;
        let (xx, yy) = (xx + LEVEL * w, yy + LEVEL * w);
        let minors = [xx * yy - xy * xy, xy * y - x * yy, x * xy - xx * y];
        let det = w * minors[0] + x * minors[1] + y * minors[2];
        let mut numbers = [0.0; NUMBERS];
        for (i, number) in numbers.iter_mut().enumerate() {
            *number =
                minors.iter().zip(&self.values).map(|(minor, values)| minor * values[i]).sum::<f64>() / det;
        }
        numbers
    }
}

/// Model of black in one channel: stray light, and a share of white.
struct Veil {
    light: f64,
    part: f64,
}

/// Range of the share of white that ink throws back.
///
/// None is blacker than the least, and what looks lighter than the most is blurred, not light.
const INK_PARTS: [f64; 2] = [INK / PAPER, 0.06];
/// Maximum stray light, as a share of the median white: a window in the picture.
const MOST_VEIL: f64 = 0.15;

impl Veil {
    /// Line of black against white, through the medians of all references, with the slope between the two
    /// halves' medians (Theil 1950, on the halves).
    fn of(references: &[Reference], channel: usize) -> Self {
        let mut pairs: Vec<(f64, f64)> =
            references.iter().map(|own| (own.white[channel], own.black[channel])).collect();
        pairs.sort_by(|a, b| a.0.total_cmp(&b.0));
        let middle = |pairs: &[(f64, f64)]| {
            let of = |value: fn(&(f64, f64)) -> f64| median(pairs.iter().map(value).collect()).unwrap_or(0.0);
            (of(|pair| pair.0), of(|pair| pair.1))
        };
        let (low, high) = pairs.split_at(pairs.len() / 2);
        let ((white, black), (dark, bright)) = (middle(&pairs), (middle(low), middle(high)));
        let slope = (bright.1 - dark.1) / (bright.0 - dark.0);
        let [least, most] = INK_PARTS;
        let part = if slope.is_finite() { slope.clamp(least, most) } else { least };
        Self { light: (black - part * white).clamp(0.0, MOST_VEIL * white), part }
    }
}

/// Correction that takes black to [`INK`] and white to [`PAPER`].
fn evening(numbers: &Numbers, veils: &[Veil; 3]) -> Evening {
    let channel = |i: usize| {
        let white = numbers[i].exp();
        let black = (veils[i].light + veils[i].part * white).min(0.5 * white);
        let factor = (PAPER - INK) / (white - black);
        [narrow(black - INK / factor), narrow(factor)]
    };
    Evening([channel(0), channel(1), channel(2)])
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plan::Cell;

    fn grid() -> Grid {
        Grid::usual(6, 5)
    }

    fn reference(x: f64, y: f64, white: f64) -> Reference {
        Reference {
            cell: Cell { column: 0, row: 0 },
            at: Point::new(x, y),
            white: [white; 3],
            black: [0.05 * white; 3],
        }
    }

    /// White that `at` makes of full light there.
    fn white(field: &Field, x: f64, y: f64) -> f64 {
        let Evening(how) = field.at(Point::new(x, y));
        f64::from(how[0][0]) + PAPER / f64::from(how[0][1])
    }

    #[test]
    fn a_slope_of_light_is_followed_and_glare_is_not() {
        let slope = |x: f64, y: f64| 0.3 * (x / 900.0 + y / 2000.0).exp();
        let mut references: Vec<Reference> = (0..30)
            .map(|i| (float(i % 6) * 127.0 + 110.0, float(i / 6) * 127.0 + 110.0))
            .map(|(x, y)| reference(x, y, slope(x, y)))
            .collect();
        references[14].white = [0.99; 3];
        let field = Field::of(&references, &grid()).unwrap();
        for (x, y) in [(0.0, 0.0), (300.0, 400.0), (364.0, 364.0), (762.0, 635.0), (20.0, 600.0)] {
            let (seen, want) = (white(&field, x, y), slope(x, y));
            assert!((seen / want - 1.0).abs() < 0.03, "{seen} for {want} at {x}, {y}");
        }
    }

    #[test]
    fn one_code_is_enough() {
        assert!(Field::of(&[], &grid()).is_none());
        let field = Field::of(&[reference(100.0, 100.0, 0.4)], &grid()).unwrap();
        assert!((white(&field, 700.0, 10.0) - 0.4).abs() < 1e-3);
    }
}
