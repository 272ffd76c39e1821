//! Squares that lie anywhere: on a table, on the floor, in a hand, any way up; no lattice, no cards.
//!
//! In: a photo. Out: each square of the event whose code is read, with where its paper lies. What a wall lends to a name, its place among
//! others, is missing here; so a name has to be surer.
//!
//! ```text
//!   finders ─▶ triples ─▶ area_finders, where modules are small ─▶ identify ─▶ sure ones
//! ```

use std::collections::BTreeSet;

use rayon::prelude::*;

use super::candidate::Candidate;
use super::codebook::Light;
use super::finders::Finder;
use super::identify::{Detection, Identifier};
use super::marked::{Marks, by_marks};
use super::place::{Layout, median};
use super::pose::{HALF, Pose};
use super::reader::{Reader, SMALL_PX, named, texts};
use super::reading::ReadError;
use super::{area_finders, finders, triples};
use crate::frame::{Map, PhotoPx, Point, SquareMm, Vector, ceil_index, float, round_byte};
use crate::photo::Luma;
use crate::plan::Cell;

/// Side of a code, in modules.
const SIDE: f64 = 2.0 * HALF;
/// Minimum certainty of a name that no place on a wall supports.
const SURE: f64 = 0.99;

/// Angles by which the photo is turned for finders by area, which look for codes up to 12 degrees askew, any quarter turn; in degrees.
const TURNS: [f64; 4] = [0.0, 22.5, 45.0, 67.5];

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
    /// Finder patterns of the photo, those with most crossings first.
    pub finders: Vec<Finder>,
    /// Side of a module in pixels, median over the squares; 0 without one.
    pub px_per_module: f64,
}

impl Reader {
    /// Squares between the four marks of sheets, with the map of each sheet, in the order of their homes; found by the marks, so that codes
    /// may be as small as on a wall.
    #[must_use]
    pub fn between_marks(&self, luma: &Luma, marks: &Marks<SquareMm>) -> Vec<(Cell, Map<SquareMm, PhotoPx>)> {
        let (identifier, layout) = (self.identifier(), Layout::of(self.printed()));
        let sheet = |map: Map<SquareMm, PhotoPx>| {
            let [a, b, c, d] = marks.code.map(|corner| map.apply(corner));
            let (u, v) = (((b - a) + (c - d)) / (2.0 * SIDE), ((d - a) + (c - b)) / (2.0 * SIDE));
            let rough = Pose { centre: a.towards(c, 0.5).towards(b.towards(d, 0.5), 0.5), u, v };
            let found = identifier.identify(luma, rough, Light::AsSeen)?;
            Some((self.lying(&found, &layout)?.home, map))
        };
        let maps = by_marks(&finders::find(luma), marks);
        let mut sheets: Vec<(Cell, Map<SquareMm, PhotoPx>)> =
            maps.into_par_iter().filter_map(sheet).collect();
        sheets.sort_by_key(|(home, _)| *home);
        sheets
    }

    /// A code as a square that lies somewhere; `None` where it is no square's, or not surely so.
    fn lying(&self, code: &Detection, layout: &Layout) -> Option<Lying> {
        let certainty = code.evidence.certainty(self.printed().squares.len() + self.printed().cards.len());
        let corners = layout.paper_corners(&code.pose);
        let home = code.home().filter(|_| certainty >= SURE)?;
        Some(Lying { home, certainty, pose: code.pose, corners })
    }

    /// Squares of the event wherever they lie in a photo.
    ///
    /// # Errors
    /// A [`ReadError`] that says why, where none is seen.
    pub fn scattered(&self, luma: &Luma) -> Result<Scattered, ReadError> {
        let identifier = self.identifier();
        let patterns = finders::find(luma);
        let mut codes = triples::detect(luma, &patterns, identifier);
        let px = |codes: &[Detection]| median(named(codes).map(|code| code.pose.px_per_module()).collect());
        if px(&codes) < SMALL_PX {
            for degrees in TURNS {
                let candidates = turned_candidates(luma, identifier, degrees);
                let by_area = triples::verify(luma, (&candidates, area_finders::MOST_NAMELESS), identifier);
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
        let px_per_module = median(squares.iter().map(|one| one.pose.px_per_module()).collect());
        Ok(Scattered { squares, finders: patterns, px_per_module })
    }
}

/// Candidates by area in the photo turned by an angle, as they lie in the photo itself.
fn turned_candidates(luma: &Luma, identifier: &Identifier, degrees: f64) -> Vec<Candidate> {
    if degrees == 0.0 {
        return area_finders::find(luma, identifier);
    }
    let radians = degrees.to_radians();
    let (sin, cos) = radians.sin_cos();
    let [width, height] = [luma.width, luma.height].map(float);
    let size = [width * cos + height * sin, width * sin + height * cos].map(ceil_index);
    let middles = [
        Point::<PhotoPx>::new(width / 2.0, height / 2.0),
        Point::new(float(size[0]) / 2.0, float(size[1]) / 2.0),
    ];
    let back = |at: Point<PhotoPx>| middles[0] + (at - middles[1]).turned(-radians);
    let [right, down] = [Vector::new(1.0, 0.0), Vector::new(0.0, 1.0)].map(|step| step.turned(-radians));
    let mut grey = vec![0; size[0] * size[1]];
    grey.par_chunks_mut(size[0].max(1)).enumerate().for_each(|(row, line)| {
        let mut at = back(Point::new(0.5, 0.5)) + down * float(row);
        for level in line {
            // beyond the photo's edge its last pixels go on, without an edge of their own
            *level = round_byte(f64::from(luma.at(at)));
            at = at + right;
        }
    });
    let turned = Luma { width: size[0], height: size[1], grey };
    let own = |one: Candidate| {
        let Pose { centre, u, v } = one.pose;
        let pose = Pose { centre: back(centre), u: u.turned(-radians), v: v.turned(-radians) };
        Candidate { pose, ..one }
    };
    area_finders::find(&turned, identifier).into_iter().map(own).collect()
}
