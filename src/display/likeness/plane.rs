//! Small square rasters: turned, smoothed, and the minimum and maximum around each place.

use crate::frame::{float, narrow};

/// Ink of a colour on white paper: red, green, blue, 0 white … 1 black.
pub(super) type Ink = [f32; 3];
/// Number of places along a side of what is compared. On a square of 127 mm one is 4 mm wide: as much as a
/// line may wander.
///
/// Half as many would lose what a piece's smallest figures look like; twice as many cost four times the time
/// and see the crayon's grain.
pub(super) const SIDE: usize = 32;
/// Number of places in all.
pub(super) const PLACES: usize = SIDE * SIDE;

/// Value for each place, row by row.
pub(super) type Plane = [f32; PLACES];

/// Plane turned anticlockwise by quarter turns: what was turned clockwise by as many stands upright again.
pub(super) fn turned_back(plane: &Plane, quarters: u32) -> Plane {
    std::array::from_fn(|i| {
        let (x, y) = (i % SIDE, i / SIDE);
        let last = SIDE - 1;
        // where the upright place (x, y) went
        let (u, v) = match quarters % 4 {
            0 => (x, y),
            1 => (last - y, x),
            2 => (last - x, last - y),
            _ => (y, last - x),
        };
        plane[v * SIDE + u]
    })
}

/// Plane smoothed by a Gaussian with a standard deviation of one place; beyond the sides the outermost places
/// go on.
pub(super) fn smoothed(plane: &Plane) -> Plane {
    const REACH: usize = 3;
    let weight = |off: usize| narrow((-float(off * off) / 2.0).exp());
    let bell: [f32; REACH + 1] = std::array::from_fn(weight);
    let sum: f32 = bell[0] + 2.0 * bell[1..].iter().sum::<f32>();
    let bell = bell.map(|own| own / sum);
    let along = |from: &Plane, at: &dyn Fn(usize, usize) -> usize| -> Plane {
        std::array::from_fn(|i| {
            let (column, row) = (i % SIDE, i / SIDE);
            let mut value = bell[0] * from[at(column, row)];
            for (off, weight) in bell.iter().enumerate().skip(1) {
                let (before, after) = (column.saturating_sub(off), (column + off).min(SIDE - 1));
                value += weight * (from[at(before, row)] + from[at(after, row)]);
            }
            value
        })
    };
    let across = along(plane, &|x, y| y * SIDE + x);
    // the second time columns and rows change places, and back
    let down = along(&across, &|y, x| y * SIDE + x);
    std::array::from_fn(|i| down[i % SIDE * SIDE + i / SIDE])
}

/// Minimum and maximum within one place of each (erosion and dilation, 3 × 3).
pub(super) fn reach(plane: &Plane) -> (Plane, Plane) {
    (around(plane, f32::min), around(plane, f32::max))
}

#[inline]
fn around(plane: &Plane, of: impl Fn(f32, f32) -> f32) -> Plane {
    let mut across = *plane;
    for (into, from) in across.chunks_exact_mut(SIDE).zip(plane.chunks_exact(SIDE)) {
        for x in 1..SIDE - 1 {
            into[x] = of(of(from[x - 1], from[x]), from[x + 1]);
        }
        into[0] = of(from[0], from[1]);
        into[SIDE - 1] = of(from[SIDE - 2], from[SIDE - 1]);
    }
    let mut all = across;
    for y in 0..SIDE {
        let (above, below) = (y.saturating_sub(1) * SIDE, (y + 1).min(SIDE - 1) * SIDE);
        for x in 0..SIDE {
            all[y * SIDE + x] = of(of(across[above + x], across[y * SIDE + x]), across[below + x]);
        }
    }
    all
}

#[cfg(test)]
mod tests {
    use super::*;

    fn slope() -> Plane {
        std::array::from_fn(|i| narrow(float(i % SIDE) + 100.0 * float(i / SIDE)))
    }

    #[test]
    fn four_quarter_turns_change_nothing_and_two_are_a_half() {
        let once = turned_back(&slope(), 1);
        assert_eq!(turned_back(&once, 1), turned_back(&slope(), 2));
        assert_eq!(turned_back(&turned_back(&once, 1), 2), slope());
        // what stood at the top right was, before it was turned clockwise, at the top left
        assert_eq!(once[0], slope()[SIDE - 1]);
    }

    #[test]
    fn smoothing_keeps_what_is_even_and_a_slope_away_from_the_sides() {
        assert!(smoothed(&[0.3; PLACES]).iter().all(|value| (value - 0.3).abs() < 1e-6));
        let (before, after) = (slope(), smoothed(&slope()));
        let at = 10 * SIDE + 20;
        assert!((before[at] - after[at]).abs() < 1e-3, "{} {}", before[at], after[at]);
    }

    #[test]
    fn the_reach_is_one_place_each_way() {
        let (least, most) = reach(&slope());
        let at = 10 * SIDE + 20;
        assert_eq!((least[at], most[at]), (slope()[at - SIDE - 1], slope()[at + SIDE + 1]));
        assert_eq!((least[0], most[PLACES - 1]), (slope()[0], slope()[PLACES - 1]));
    }
}
