//! What makes one mask better than another: no fourth finder pattern, and the standard's penalty.

use super::{Modules, SIDE};

/// The finder pattern's middle row: dark and light in the ratio 1:1:3:1:1.
const FINDER_ROW: [bool; 7] = [true, false, true, true, true, false, true];
/// The middles of the three true finder patterns, as module numbers.
const TRUE_FINDERS: [(usize, usize); 3] = [(3, 3), (SIDE - 4, 3), (3, SIDE - 4)];

/// Weights of the standard's four features (ISO/IEC 18004, scoring of data mask patterns).
const N1: usize = 3;
const N2: usize = 3;
const N3: usize = 40;
const N4: usize = 10;

impl Modules {
    /// How many places other than the three true ones look like the middle of a finder pattern both along the row and down
    /// the column, which is what readers search for first.
    #[must_use]
    pub fn false_finders(&self) -> usize {
        let middles = (3..SIDE - 3).flat_map(|y| (3..SIDE - 3).map(move |x| (x, y)));
        let crosses = |&(x, y): &(usize, usize)| {
            let along = (0..7).all(|i| self.dark(x + i - 3, y) == FINDER_ROW[i]);
            along && (0..7).all(|i| self.dark(x, y + i - 3) == FINDER_ROW[i])
        };
        middles.filter(crosses).filter(|middle| !TRUE_FINDERS.contains(middle)).count()
    }

    /// The standard's penalty: long runs, blocks, rows like a finder pattern's, and too much dark or light.
    #[must_use]
    pub fn penalty(&self) -> usize {
        let rows = (0..SIDE).map(|y| std::array::from_fn(|x| self.dark(x, y)));
        let columns = (0..SIDE).map(|x| std::array::from_fn(|y| self.dark(x, y)));
        let lines: usize = rows.chain(columns).map(|line| runs(&line) + finder_rows(&line)).sum();
        lines + self.blocks() + self.imbalance()
    }

    /// N2 for every block of 2 × 2 alike.
    fn blocks(&self) -> usize {
        let corners = (1..SIDE).flat_map(|y| (1..SIDE).map(move |x| (x, y)));
        let alike = |&(x, y): &(usize, usize)| {
            let own = self.dark(x, y);
            [(x - 1, y), (x, y - 1), (x - 1, y - 1)].into_iter().all(|(x, y)| self.dark(x, y) == own)
        };
        N2 * corners.filter(alike).count()
    }

    /// N4 for every full 5 % by which the dark part differs from a half.
    fn imbalance(&self) -> usize {
        let dark = self.as_slice().iter().filter(|dark| **dark).count();
        let twentieths_of_all = (dark * 20).abs_diff(10 * SIDE * SIDE) / (SIDE * SIDE);
        N4 * twentieths_of_all
    }
}

/// N1 for every run of five alike in a line, and one more for each module beyond.
fn runs(line: &[bool; SIDE]) -> usize {
    line.chunk_by(|a, b| a == b).map(<[bool]>::len).filter(|run| *run >= 5).map(|run| N1 + run - 5).sum()
}

/// N3 for every finder pattern's row with four light modules before or behind it within the line.
fn finder_rows(line: &[bool; SIDE]) -> usize {
    let light = |from: usize, to: usize| line.get(from..to).is_some_and(|four| !four.contains(&true));
    let found = line.windows(7).enumerate().filter(|(at, seven)| {
        let before = at.checked_sub(4).is_some_and(|from| light(from, *at));
        *seven == FINDER_ROW && (before || light(at + 7, at + 11))
    });
    N3 * found.count()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn line(drawn: &str) -> [bool; SIDE] {
        let mut line = [false; SIDE];
        for (module, c) in line.iter_mut().zip(drawn.chars()) {
            *module = c == '#';
        }
        line
    }

    #[test]
    fn the_standards_features_are_scored() {
        assert_eq!(runs(&line("#.#.#.#.#.#.#.#.#.#.#")), 0);
        assert_eq!(runs(&line("#####.#.#.#.#.#.#.#.#")), 3);
        assert_eq!(runs(&line("#######.#.#.#.#.#.#.#")), 5);
        assert_eq!(finder_rows(&line("#.###.#....#.#.#.#.#.")), 40);
        assert_eq!(finder_rows(&line("#.###.#.#..#.#.#.#.#.")), 0);
        assert_eq!(finder_rows(&line("##.#.#.##....#.###.##")), 40);
        let white = Modules([false; SIDE * SIDE]);
        assert_eq!(white.blocks(), 3 * 20 * 20);
        assert_eq!(white.imbalance(), 10 * 10);
        assert_eq!(white.penalty(), 1200 + 100 + 42 * (3 + 16));
    }

    #[test]
    fn a_fourth_finder_pattern_is_seen() {
        let mut modules = Modules::encode("K7M-D7").unwrap();
        assert_eq!(modules.false_finders(), 0);
        for i in 0..7 {
            for j in 0..7 {
                let ring = [i, j].iter().any(|k| [0, 6].contains(k));
                let core = [i, j].iter().all(|k| (2..5).contains(k));
                modules.0[(14 + j) * SIDE + 14 + i] = ring || core;
            }
        }
        assert_eq!(modules.false_finders(), 1);
    }
}
