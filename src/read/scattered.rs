//! Squares that lie anywhere: on a table, on the floor, in a hand, any way up; no lattice, no cards.
//!
//! In: a photo. Out: each square of the event whose code is read, with where its paper lies. What a wall lends to a name, its place among
//! others, is missing here; so a name has to be surer.
//!
//! ```text
//!   the photo, and turned three times: finders ─▶ triples ─▶ area_finders, where modules are small ─▶ identify ─▶ sure ones
//! ```

use std::collections::BTreeSet;

use rayon::prelude::*;

use super::candidate::Candidate;
use super::codebook::Light;
use super::finders::Finder;
use super::identify::Detection;
use super::marked::{Marks, by_marks};
use super::place::{Layout, median_px};
use super::pose::Pose;
use super::reader::{Reader, SMALL_PX, named, texts};
use super::reading::ReadError;
use super::{area_finders, finders, triples};
use crate::frame::{Map, PhotoPx, Point, SquareMm, Vector, ceil_index, float, round_byte};
use crate::photo::Luma;
use crate::plan::Cell;

/// What a name needs that no place on a wall supports: minimum score, log likelihood ratio to the second best, and share of what is seen
/// that the code explains.
///
/// Of 454 codes thrown on made tables (1.5 to 2.6 px a module) those with 98 % in sight had 0.83, 112 and 0.82 at least. Where papers
/// cover each other, parts of two codes may look like a third one: three such had 0.55, 28 and 0.45 at most, though their certainty was
/// said to be above 0.99.
const SURE: [f32; 3] = [0.7, 60.0, 0.7];
/// Minimum certainty of a name where four marks say that a code has to be there.
const SURE_BETWEEN_MARKS: f64 = 0.99;
/// Minimum sum of three ratings for a candidate by area; on a wall the squares that are found first tell where the others are, here they
/// do not. With 36 a third of the codes of 1.5 px in soft photos is found that is found with 28, and 20 takes four times as long.
const LEAST: u8 = 28;
/// Maximum number of unidentified candidates before a search by area gives up.
const MOST_NAMELESS: usize = 3_000;

/// Angles by which the photo is turned besides, in degrees: finders by area look for codes up to 12 degrees askew, any quarter turn, and
/// lines cross patterns best along their sides.
const TURNS: [f64; 3] = [22.5, 45.0, 67.5];

/// Square that lies somewhere.
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct Lying {
    /// Cell where it belongs.
    pub home: Cell,
    /// Certainty of the name, 0 … 1.
    pub certainty: f64,
    /// Pose of its code.
    pub pose: Pose,
    /// Corners of the paper, clockwise from the square's own top left, as its code alone tells them.
    pub corners: [Point<PhotoPx>; 4],
}

/// What a photo shows of the event without a wall.
#[derive(Clone, Debug, PartialEq)]
pub struct Scattered {
    /// Squares, in the order of their homes; copies of one stand side by side.
    pub squares: Vec<Lying>,
    /// Side of a module in pixels, median over the squares; 0 without one.
    pub px_per_module: f64,
}

impl Reader {
    /// Squares between the four marks of sheets, with the map of each sheet, in the order of their homes; found by the marks, so that codes
    /// may be as small as on a wall.
    #[must_use]
    pub fn between_marks(&self, luma: &Luma, marks: &Marks<SquareMm>) -> Vec<(Cell, Map<SquareMm, PhotoPx>)> {
        let identifier = self.identifier();
        let sheet = |map: Map<SquareMm, PhotoPx>| {
            let rough = Pose::of_corners(marks.code.map(|corner| map.apply(corner)));
            let found = identifier.identify(luma, rough, Light::AsSeen)?;
            let home = found.home().filter(|_| self.certainty(&found) >= SURE_BETWEEN_MARKS)?;
            Some((home, map))
        };
        let maps = by_marks(&finders::find(luma), marks);
        let mut sheets: Vec<(Cell, Map<SquareMm, PhotoPx>)> =
            maps.into_par_iter().filter_map(sheet).collect();
        sheets.sort_by_key(|(home, _)| *home);
        sheets
    }

    /// Certainty of a code's name among all that were printed, 0 … 1.
    fn certainty(&self, code: &Detection) -> f64 {
        code.evidence.certainty(self.printed().squares.len() + self.printed().cards.len())
    }

    /// A code as a square that lies somewhere; `None` where it is no square's, or not surely so.
    fn lying(&self, code: &Detection, layout: &Layout) -> Option<Lying> {
        let corners = layout.paper_corners(&code.pose);
        let compared = &code.evidence.compared;
        let [score, likelier, explained] = SURE;
        let sure = compared.score >= score
            && compared.log_likelihood_ratio() >= likelier
            && compared.explained() >= explained;
        let home = code.home().filter(|_| sure)?;
        Some(Lying { home, certainty: self.certainty(code), pose: code.pose, corners })
    }

    /// Squares of the event wherever they lie in a photo.
    ///
    /// # Errors
    /// A [`ReadError`] that says why, where none is seen.
    pub fn scattered(&self, luma: &Luma) -> Result<Scattered, ReadError> {
        let identifier = self.identifier();
        let patterns = finders::find(luma);
        let mut codes = triples::detect(luma, &patterns, identifier);
        let views: Vec<View> = TURNS.iter().map(|degrees| View::of(luma, *degrees)).collect();
        // lines cross a pattern best along its sides
        for view in &views {
            let crossed = view.back(triples::candidates(&view.finders()));
            codes = triples::together(
                codes,
                triples::verify(luma, (&crossed, triples::MOST_NAMELESS), identifier),
            );
        }
        let px = median_px(named(&codes).map(|code| code.pose.px_per_module()));
        if px < SMALL_PX {
            let straight = area_finders::find(luma, identifier, LEAST);
            let turned =
                views.iter().map(|view| view.back(area_finders::find(&view.luma, identifier, LEAST)));
            for candidates in std::iter::once(straight).chain(turned) {
                let by_area = triples::verify(luma, (&candidates, MOST_NAMELESS), identifier);
                codes = triples::together(codes, by_area);
            }
        }
        let layout = Layout::of(self.printed());
        let mut squares: Vec<Lying> = codes.iter().filter_map(|code| self.lying(code, &layout)).collect();
        if squares.is_empty() {
            let texts = if named(&codes).next().is_some() { BTreeSet::new() } else { texts(luma, &codes) };
            return Err(self.nothing_known(luma, &patterns, texts));
        }
        squares.sort_by_key(|one| one.home);
        let px_per_module = median_px(squares.iter().map(|one| one.pose.px_per_module()));
        Ok(Scattered { squares, px_per_module })
    }
}

/// Width, in pixels, of what is added around a photo that is turned: its last pixels go on, so that a code near the edge keeps its quiet
/// zone. Beyond it is black. Where the last pixels went on for ever, their stripes passed for 8,000 codes.
const RIM: f64 = 8.0;
/// Number of pixels that are sampled at once.
const PIECE: usize = 64;

/// The photo turned by an angle, for finders that look along rows and columns.
struct View {
    luma: Luma,
    radians: f64,
    /// Middle of the photo and of the turned one.
    middles: [Point<PhotoPx>; 2],
}

impl View {
    fn of(luma: &Luma, degrees: f64) -> Self {
        let radians = degrees.to_radians();
        let (sin, cos) = radians.sin_cos();
        let [width, height] = [luma.width, luma.height].map(float);
        let size = [width * cos + height * sin, width * sin + height * cos].map(ceil_index);
        let half = |width: f64, height: f64| Point::<PhotoPx>::new(width / 2.0, height / 2.0);
        let middles = [half(width, height), half(float(size[0]), float(size[1]))];
        let turned = Luma { width: size[0], height: size[1], grey: vec![0; size[0] * size[1]] };
        let mut view = Self { luma: turned, radians, middles };
        let first = view.place(Point::new(0.5, 0.5));
        let [right, down] = [view.step(Vector::new(1.0, 0.0)), view.step(Vector::new(0.0, 1.0))];
        view.luma.grey.par_chunks_mut(size[0].max(1)).enumerate().for_each_init(
            Vec::new,
            |levels, (row, line)| {
                let at = first + down * float(row);
                let [from, to] = span(at, right, [width, height], line.len());
                // a piece at a time: all but the first and the last lie well inside, where sampling is quick
                for start in (from..to).step_by(PIECE) {
                    let count = PIECE.min(to - start);
                    luma.lattice(at + right * float(start), [right, down], [count, 1], levels);
                    for (level, seen) in line[start..start + count].iter_mut().zip(&*levels) {
                        *level = round_byte(f64::from(*seen));
                    }
                }
            },
        );
        view
    }

    /// Finder patterns of the turned photo, none of them beyond the photo's edges.
    fn finders(&self) -> Vec<Finder> {
        let size = self.middles[0];
        let mut found = finders::find(&self.luma);
        found.retain(|finder| {
            let at = self.place(finder.centre);
            (0.0..=2.0 * size.x).contains(&at.x) && (0.0..=2.0 * size.y).contains(&at.y)
        });
        found
    }

    /// Place in the photo of a place in the turned one.
    fn place(&self, at: Point<PhotoPx>) -> Point<PhotoPx> {
        self.middles[0] + self.step(at - self.middles[1])
    }

    /// Step in the photo of a step in the turned one.
    fn step(&self, by: Vector<PhotoPx>) -> Vector<PhotoPx> {
        by.turned(-self.radians)
    }

    /// Candidates as they lie in the photo itself.
    fn back(&self, candidates: Vec<Candidate>) -> Vec<Candidate> {
        let own = |one: Candidate| {
            let Pose { centre, u, v } = one.pose;
            Candidate { pose: Pose { centre: self.place(centre), u: self.step(u), v: self.step(v) }, ..one }
        };
        candidates.into_iter().map(own).collect()
    }
}

/// Pixels of a row of the turned photo that lie in the photo or within [`RIM`] of it, the first and the one beyond the last, where the
/// row begins at `at` and goes on by `step`.
fn span(at: Point<PhotoPx>, step: Vector<PhotoPx>, [width, height]: [f64; 2], pixels: usize) -> [usize; 2] {
    let (mut from, mut to) = (0.0_f64, float(pixels));
    for (start, by, size) in [(at.x, step.x, width), (at.y, step.y, height)] {
        let [a, b] = [-RIM, size + RIM].map(|edge| (edge - start) / by);
        (from, to) = (from.max(a.min(b)), to.min(a.max(b)));
    }
    if from < to { [ceil_index(from), ceil_index(to).min(pixels)] } else { [0, 0] }
}

#[cfg(test)]
mod tests {
    use super::super::paint::{event, paint, pose};
    use super::*;

    #[test]
    fn squares_at_any_turn_are_named_and_those_of_another_event_are_not() {
        let (own, other) = (event("K7M"), event("Q9X"));
        let codes = |of: &crate::plan::Printed| -> Vec<_> {
            let place = |k: usize| {
                let (x, y) = (float(k % 4), float(k / 4));
                pose(90.0 + 130.0 * x, 90.0 + 130.0 * y, 2.3 + 0.1 * x, 29.0 * float(k) + 7.0)
            };
            of.squares
                .iter()
                .step_by(6)
                .take(12)
                .enumerate()
                .map(|(k, one)| (place(k), one.modules.clone()))
                .collect()
        };
        let seen = Reader::new(&own).scattered(&paint(580, 450, &codes(&own))).unwrap();
        let homes: Vec<Cell> = seen.squares.iter().map(|one| one.home).collect();
        let wanted: Vec<Cell> = own.squares.iter().step_by(6).take(12).map(|one| one.cell).collect();
        assert_eq!(homes, wanted);
        assert!(seen.squares.iter().all(|one| one.certainty > 0.99));
        let foreign = Reader::new(&own).scattered(&paint(580, 450, &codes(&other)));
        assert_eq!(foreign, Err(ReadError::Foreign(vec!["Q9X".to_owned()])));
        let nothing = Reader::new(&own).scattered(&Luma { width: 300, height: 200, grey: vec![180; 60_000] });
        assert_eq!(nothing, Err(ReadError::NoCodes));
    }

    #[test]
    fn a_view_leads_back_to_the_photo() {
        let photo = Luma {
            width: 80,
            height: 50,
            grey: (0..4000).map(|i| if i % 80 == 30 && i / 80 == 20 { 255 } else { 0 }).collect(),
        };
        for degrees in TURNS {
            let view = View::of(&photo, degrees);
            let brightest = (0..view.luma.grey.len()).max_by_key(|i| view.luma.grey[*i]).unwrap();
            let (x, y) = (brightest % view.luma.width, brightest / view.luma.width);
            let back = view.place(Point::new(float(x) + 0.5, float(y) + 0.5));
            assert!(back.distance(Point::new(30.5, 20.5)).value() < 1.0, "{degrees}: {back:?}");
        }
    }

    #[test]
    fn a_photo_that_is_turned_ends_at_its_edge() {
        // stripes across the edge, 1:1:3:1:1 wide: gone on with, they would be finder patterns without end
        let (width, height) = (240, 180);
        let dark = |x: usize| [0, 2, 3, 4, 6].contains(&(x / 4 % 9));
        let grey = (0..width * height).map(|i| if dark(i % width) { 30 } else { 220 }).collect();
        let luma = Luma { width, height, grey };
        for degrees in TURNS {
            let view = View::of(&luma, degrees);
            for (i, level) in view.luma.grey.iter().enumerate() {
                let turned = Point::new(float(i % view.luma.width) + 0.5, float(i / view.luma.width) + 0.5);
                let at = view.place(turned);
                let outside = (-at.x).max(at.x - 240.0).max(-at.y).max(at.y - 180.0);
                if outside < RIM - 0.1 {
                    assert!((f32::from(*level) - luma.at(at)).abs() < 1.0, "{degrees}: {at:?}");
                } else if outside > RIM + 0.1 {
                    assert_eq!(*level, 0, "{degrees}: {at:?}");
                }
            }
            let inside = |finder: &Finder| luma.holds(view.place(finder.centre), 0.0);
            assert!(view.finders().iter().all(inside), "{degrees}");
        }
    }
}
