//! A square of paper as it is printed: whole, or, where it is larger than the page, in parts to be glued together.
//!
//! ```text
//!   part 1          part 2            x of part 2 begins where the seam of part 1 is, at ┊; the strip right of ┊ is
//!   ┌────────┊──┐   ┌───────────┐     for glue, and is covered by part 2; short marks - meet across the seam
//!   │       -┊- │   │-          │
//!   │        ┊g │   │           │     parts below the others the same: strips run along right and lower edges
//!   │       -┊- │   │-          │
//!   ┊┄┄┄┄┄┄┄┄┼┄┄│   ┊┄┄┄┄┄┄┄┄┄┄┄│     the code, with its quiet zone and label, always lies whole on one part
//!   └────────┊──┘   └───────────┘
//! ```

use super::layout::Layout;
use super::marks::{Box, Line};
use crate::frame::float;
use crate::plan::settings::Paper;

/// How wide the strip for glue is, in mm: a glue stick is 10 to 15 mm wide. Common practice, no source.
pub(super) const GLUE_MM: f64 = 10.0;
/// Most parts side by side, and one above the other: a square of 1 m on letter paper has 6.
const MOST_ACROSS: usize = 12;
/// How far a matching mark reaches from the seam, in mm, and where along it there are some.
const MATCH_MM: f64 = 4.0;
const MATCH_AT: [f64; 3] = [0.2, 0.5, 0.8];

/// How a square is divided.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Division {
    /// Parts side by side and one above the other.
    pub across: usize,
    pub down: usize,
    /// Width and height of each part, its strips for glue among it.
    pub width: f64,
    pub height: f64,
    /// Where parts lie on pages.
    pub layout: Layout,
}

/// One part of a square, in mm from the part's own top left corner.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Part {
    /// Its own top left corner within the square.
    pub x: f64,
    pub y: f64,
    /// Width and height without the strips for glue.
    pub shown: [f64; 2],
    /// Where its neighbours' edges come to lie.
    pub seams: Vec<Line>,
    /// Marks that meet their like across the seams.
    pub matches: Vec<Line>,
    /// The longest of its strips for glue, for words.
    pub strip: Option<Box>,
}

impl Division {
    /// The fewest parts that fit the paper and cut nothing of `quiet`, the rectangle around the code.
    pub fn of(side: f64, paper: Paper, quiet: &Box) -> Option<Self> {
        let counts = (1..=MOST_ACROSS).flat_map(|across| (1..=MOST_ACROSS).map(move |down| (across, down)));
        let mut fitting: Vec<Self> =
            counts.filter_map(|(across, down)| Self::with(side, paper, across, down)).collect();
        fitting.retain(|division| division.part_with(quiet).is_some());
        fitting.into_iter().min_by_key(|division| division.across * division.down)
    }

    fn with(side: f64, paper: Paper, across: usize, down: usize) -> Option<Self> {
        let part = |count: usize| (side + (float(count) - 1.0) * GLUE_MM) / float(count);
        let (width, height) = (part(across), part(down));
        Some(Self { across, down, width, height, layout: Layout::pack(paper, width, height)? })
    }

    /// All parts, row by row from the top.
    pub fn parts(&self) -> Vec<Part> {
        (0..self.down).flat_map(|row| (0..self.across).map(move |column| self.part(column, row))).collect()
    }

    /// The number of the part on which a rectangle of the square lies whole, if there is one.
    pub fn part_with(&self, area: &Box) -> Option<usize> {
        let slack = 1e-6;
        self.parts().iter().position(|part| {
            area.x > part.x - slack
                && area.y > part.y - slack
                && area.x + area.width < part.x + part.shown[0] + slack
                && area.y + area.height < part.y + part.shown[1] + slack
        })
    }

    fn part(&self, column: usize, row: usize) -> Part {
        let (right, below) = (column + 1 < self.across, row + 1 < self.down);
        let shown = [
            if right { self.width - GLUE_MM } else { self.width },
            if below { self.height - GLUE_MM } else { self.height },
        ];
        let upright = |x: f64| Line { x1: x, y1: 0.0, x2: x, y2: self.height };
        let level = |y: f64| Line { x1: 0.0, y1: y, x2: self.width, y2: y };
        let seams = right.then(|| upright(shown[0])).into_iter().chain(below.then(|| level(shown[1])));
        let beside = Box { x: shown[0], y: 0.0, width: GLUE_MM, height: shown[1] };
        let under = Box { x: 0.0, y: shown[1], width: shown[0], height: GLUE_MM };
        Part {
            x: float(column) * (self.width - GLUE_MM),
            y: float(row) * (self.height - GLUE_MM),
            shown,
            seams: seams.collect(),
            matches: self.matches(shown, (column, row)),
            strip: below.then_some(under).or(right.then_some(beside)),
        }
    }

    /// Marks along every edge that meets another part: the same places on both sides.
    fn matches(&self, shown: [f64; 2], (column, row): (usize, usize)) -> Vec<Line> {
        let across = |x1: f64, x2: f64| MATCH_AT.map(|at| (x1, x2, at * (self.height - GLUE_MM)));
        let down = |y1: f64, y2: f64| MATCH_AT.map(|at| (y1, y2, at * (self.width - GLUE_MM)));
        let (mut lying, mut standing) = (Vec::new(), Vec::new());
        if column > 0 {
            lying.extend(across(0.0, MATCH_MM));
        }
        if column + 1 < self.across {
            lying.extend(across(shown[0] - MATCH_MM, shown[0]));
        }
        if row > 0 {
            standing.extend(down(0.0, MATCH_MM));
        }
        if row + 1 < self.down {
            standing.extend(down(shown[1] - MATCH_MM, shown[1]));
        }
        let lying = lying.into_iter().map(|(x1, x2, y)| Line { x1, y1: y, x2, y2: y });
        let standing = standing.into_iter().map(|(y1, y2, x)| Line { x1: x, y1, x2: x, y2 });
        lying.chain(standing).collect()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn parts_cover_the_square_once_and_their_marks_meet(side in 30.0..1000.0_f64) {
            let quiet = Box { x: side - 28.0, y: side - 28.0, width: 25.0, height: 25.0 };
            let division = Division::of(side, Paper::Letter, &quiet).unwrap();
            let parts = division.parts();
            let area: f64 = parts.iter().map(|part| part.shown[0] * part.shown[1]).sum();
            prop_assert!((area - side * side).abs() < 1e-6 * side * side);
            prop_assert_eq!(division.part_with(&quiet), Some(parts.len() - 1));
            let ends = |own: usize| {
                let part = &parts[own];
                part.matches.iter().flat_map(move |m| [(part.x + m.x1, part.y + m.y1), (part.x + m.x2, part.y + m.y2)])
            };
            for own in 0..parts.len() {
                for m in &parts[own].matches {
                    let same = |(x, y): (f64, f64), (u, v): (f64, f64)| (x - u).abs() < 1e-6 && (y - v).abs() < 1e-6;
                    let part = &parts[own];
                    let mine = [(part.x + m.x1, part.y + m.y1), (part.x + m.x2, part.y + m.y2)];
                    let met = (0..parts.len()).filter(|other| *other != own).flat_map(ends);
                    prop_assert!(met.into_iter().any(|end| mine.iter().any(|own| same(*own, end))), "{:?}", m);
                }
            }
        }
    }
}
