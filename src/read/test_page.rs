//! The test page in a photo: from its marks to where it is printed on its sheet of paper.
//!
//! ```text
//!   finders ─▶ any_code ─▶ which side ─▶ marked ─▶ page mm to photo ─┬▶ rays outwards ─▶ edges of the paper ─▶ scale, shift, turn
//!                                                                    └▶ bars near the edges
//! ```
//!
//! The marks say how many pixels a printed millimetre has; the paper is as large as its maker says (ISO 216, ANSI/ASME Y14.1). So where the
//! edges lie in printed millimetres tells how large a printed millimetre is.

use thiserror::Error;

use super::any_code::{fitted, locate};
use super::finders;
use super::foreign;
use super::marked::{Marks, sheet_to_photo};
use crate::frame::{Map, PhotoPx, Point, SheetMm, Vector, float, median, narrow, round_index};
use crate::photo::Luma;
use crate::plan::Tag;
use crate::plan::marks::{BAR_MM, MODULE_MM, TestSide, of_test_page, test_bars, test_code_corners};
use crate::plan::settings::{Choice, Paper};
use crate::words::{Sentence, Tell, told_in_english};

/// Distance inside the printed page's edges at which rays begin, in mm: no ruler and no words there.
const FROM_MM: f64 = 9.0;
/// Maximum length of a ray, in mm: a page printed at half its size has its edges 150 mm farther out.
const RAY_MM: f64 = 170.0;
/// Distance of samples along a ray, in mm.
const STEP_MM: f64 = 0.1;
/// Number of samples on either side whose means are compared: an edge is sharper than a millimetre.
const BESIDE: usize = 8;
/// Minimum fall of the grey level at the paper's edge, as a share of the paper's.
const FALL: f32 = 0.15;
/// Number of rays on each side.
const RAYS: usize = 60;
/// Parts of a side, from its one end, in which there are rays; bars stand between them, marks and curling corners beyond.
const PARTS: [[f64; 2]; 2] = [[0.12, 0.38], [0.62, 0.88]];
/// Maximum distance of an inlier from its edge's line, in mm, and minimum share of rays that are.
const ON_LINE_MM: f64 = 0.5;
const MOST_RAYS: f64 = 0.5;
/// Minimum fall of the grey level at a bar, as a share of the white beside it.
const BAR_FALL: f32 = 0.3;
/// Reason why a photo does not show a test page.
#[derive(Clone, Debug, Error, PartialEq, Eq)]
pub enum TestPageError {
    /// No test page's code.
    NoCode,
    /// Test page of another event, with its tag.
    Foreign(String),
    /// Not all four marks.
    Marks,
    /// Not all four edges of the paper.
    Edges,
}

told_in_english!(TestPageError);

impl Tell for TestPageError {
    fn sentence(&self) -> Sentence {
        match self {
            Self::NoCode => Sentence::new("error-test-page-code"),
            Self::Foreign(tag) => Sentence::new("error-test-page-foreign").with("tag", tag.as_str()),
            Self::Marks => Sentence::new("error-test-page-marks"),
            Self::Edges => Sentence::new("error-test-page-edges"),
        }
    }
}

/// Test page as a photo shows it.
#[derive(Clone, Debug, PartialEq)]
pub struct TestPage {
    /// Which side it is.
    pub side: TestSide,
    /// Size of the sheet of paper in printed mm: what `width` × `height` mm of paper are on the print.
    pub sheet_mm: [f64; 2],
    /// Middle of the sheet, in printed mm right of and below the middle of the printed page.
    pub middle_mm: Vector<SheetMm>,
    /// Angle of the print on its sheet, in degrees clockwise.
    pub askew_degrees: f64,
    /// Angle of the page's upward direction from the photo's, in degrees clockwise, −180 … 180.
    pub up_degrees: f64,
    /// Which bars are missing: top, right, bottom, left.
    pub missing: [bool; 4],
    /// Map from the printed page to the photo.
    pub page_to_photo: Map<SheetMm, PhotoPx>,
}

/// Reads a photo of one side of the test page of an event, printed for a paper.
///
/// # Errors
/// A [`TestPageError`] that says why not.
pub fn read_test_page(luma: &Luma, tag: Tag, paper: Paper) -> Result<TestPage, TestPageError> {
    let patterns = finders::find(luma);
    let (side, corners) = code(&locate(luma, &patterns), tag)?;
    let marks = Marks { code: test_code_corners(paper), centres: of_test_page(paper), module_mm: MODULE_MM };
    let page_to_photo = sheet_to_photo(&patterns, corners, &marks).ok_or(TestPageError::Marks)?;
    let seen = Seen { luma, page_to_photo, paper };
    let [top, right, bottom, left] = seen.edges().ok_or(TestPageError::Edges)?;
    let (width, height) = paper.size_mm();
    let (across, down) = (between(&left, &right, height / 2.0), between(&top, &bottom, width / 2.0));
    let turns = [top.slope, bottom.slope, -left.slope, -right.slope];
    let askew = turns.iter().sum::<f64>() / 4.0;
    let middle =
        (left.at(height / 2.0) + right.at(height / 2.0), top.at(width / 2.0) + bottom.at(width / 2.0));
    let up = page_to_photo.steps_at(Point::new(width / 2.0, height / 2.0))[1] * -1.0;
    Ok(TestPage {
        side,
        sheet_mm: [across, down],
        middle_mm: Vector::new(middle.0 / 2.0 - width / 2.0, middle.1 / 2.0 - height / 2.0),
        // the paper's turn against the print is the print's against the paper, the other way round
        askew_degrees: -askew.atan().to_degrees(),
        up_degrees: up.x.atan2(-up.y).to_degrees(),
        missing: test_bars(paper).map(|bar| !seen.shows(bar)),
        page_to_photo,
    })
}

/// Side and corners of the first code of a test page.
fn code(
    located: &[super::any_code::Located],
    tag: Tag,
) -> Result<(TestSide, [Point<PhotoPx>; 4]), TestPageError> {
    let mut other = None;
    for code in located {
        let Some(text) = &code.text else { continue };
        let Some(own) = foreign::tag(text) else { continue };
        let Some(side) = text.get(own.len()..).and_then(TestSide::named) else { continue };
        if own == tag.to_string() {
            return Ok((side, code.corners));
        }
        other.get_or_insert_with(|| own.to_owned());
    }
    Err(other.map_or(TestPageError::NoCode, TestPageError::Foreign))
}

/// Edge of the paper: how far it lies, and its slope, along the other axis; in printed mm.
#[derive(Copy, Clone, Debug)]
struct Edge {
    offset: f64,
    slope: f64,
}

impl Edge {
    fn at(&self, along: f64) -> f64 {
        self.offset + self.slope * along
    }

    /// Line that most of the points (out, along) lie on; `None` where too few do.
    fn through(points: &[[f64; 2]]) -> Option<Self> {
        let mut best: (usize, Option<Self>) = (0, None);
        for (i, p) in points.iter().enumerate() {
            for q in points.iter().skip(i + points.len() / 4) {
                let slope = (q[0] - p[0]) / (q[1] - p[1]);
                let edge = Self { offset: p[0] - slope * p[1], slope };
                let count = points.iter().filter(|own| edge.has(own)).count();
                if count > best.0 && slope.is_finite() {
                    best = (count, Some(edge));
                }
            }
        }
        let rough = best.1.filter(|_| float(best.0) >= MOST_RAYS * float(RAYS))?;
        let own: Vec<[f64; 2]> = points.iter().copied().filter(|own| rough.has(own)).collect();
        fitted(&own).map(|[offset, slope]| Self { offset, slope })
    }

    fn has(&self, [out, along]: &[f64; 2]) -> bool {
        (out - self.at(*along)).abs() < ON_LINE_MM
    }
}

/// Distance between two edges that are nearly parallel, in printed mm, at a place along both.
fn between(near: &Edge, far: &Edge, along: f64) -> f64 {
    let slope = f64::midpoint(near.slope, far.slope);
    (far.at(along) - near.at(along)) / slope.hypot(1.0)
}

/// Photo of a page of which is known where its printed millimetres lie.
struct Seen<'a> {
    luma: &'a Luma,
    page_to_photo: Map<SheetMm, PhotoPx>,
    paper: Paper,
}

impl Seen<'_> {
    /// Edges of the paper: top, right, bottom, left; `None` where one is not seen.
    fn edges(&self) -> Option<[Edge; 4]> {
        let (width, height) = self.paper.size_mm();
        let along = |length: f64| {
            let of_part = move |[from, to]: [f64; 2]| {
                let count = RAYS / PARTS.len();
                (0..count).map(move |k| (from + (to - from) * (float(k) + 0.5) / float(count)) * length)
            };
            PARTS.into_iter().flat_map(of_part)
        };
        let edge = |length: f64,
                    place: &dyn Fn(f64) -> (Point<SheetMm>, Vector<SheetMm>),
                    out: &dyn Fn(f64) -> f64| {
            let points: Vec<[f64; 2]> = along(length)
                .filter_map(|t| {
                    let (from, way) = place(t);
                    self.end_of_paper(from, way).map(|far| [out(far), t])
                })
                .collect();
            Edge::through(&points)
        };
        let (right_from, bottom_from) = (width - FROM_MM, height - FROM_MM);
        let way = |x: f64, y: f64| Vector::new(x, y);
        Some([
            edge(width, &|t| (Point::new(t, FROM_MM), way(0.0, -1.0)), &|far| FROM_MM - far)?,
            edge(height, &|t| (Point::new(right_from, t), way(1.0, 0.0)), &|far| right_from + far)?,
            edge(width, &|t| (Point::new(t, bottom_from), way(0.0, 1.0)), &|far| bottom_from + far)?,
            edge(height, &|t| (Point::new(FROM_MM, t), way(-1.0, 0.0)), &|far| FROM_MM - far)?,
        ])
    }

    /// Distance along a ray to where the paper ends, in printed mm; `None` where it does not before the photo does.
    fn end_of_paper(&self, from: Point<SheetMm>, way: Vector<SheetMm>) -> Option<f64> {
        let samples = (0..round_index(RAY_MM / STEP_MM)).map(|k| {
            let at = self.page_to_photo.apply(from + way * (float(k) * STEP_MM));
            self.luma.holds(at, 1.0).then(|| self.luma.at(at))
        });
        let levels: Vec<f32> = samples.map_while(|level| level).collect();
        let mean = |part: &[f32]| part.iter().sum::<f32>() / crate::frame::narrow(float(part.len()));
        let fall = |k: usize| mean(&levels[k - BESIDE..k]) - mean(&levels[k..k + BESIDE]);
        let last = levels.len().checked_sub(BESIDE)?;
        let first = (BESIDE..last).find(|k| fall(*k) > FALL * mean(&levels[k - BESIDE..*k]))?;
        let steepest =
            (first..(first + 2 * BESIDE).min(last)).max_by(|a, b| fall(*a).total_cmp(&fall(*b)))?;
        // where the level passes the middle of what lies on either side
        let (inside, outside) = (
            mean(levels.get(steepest.checked_sub(2 * BESIDE)?..steepest - BESIDE)?),
            mean(levels.get(steepest + BESIDE / 2..steepest + BESIDE)?),
        );
        let half = f32::midpoint(inside, outside);
        let passes =
            (steepest - BESIDE..steepest + BESIDE).find(|k| levels[*k] >= half && levels[k + 1] < half)?;
        let part = (levels[passes] - half) / (levels[passes] - levels[passes + 1]);
        Some((float(passes) + f64::from(part)) * STEP_MM)
    }

    /// Whether a bar is printed: darker along its middle than beside it.
    fn shows(&self, [a, b]: [Point<SheetMm>; 2]) -> bool {
        let along = (b - a) / (b - a).length().value();
        let aside = Vector::new(-along.y, along.x) * (2.0 * BAR_MM[1]);
        let places: Vec<Point<SheetMm>> = (1..20).map(|k| a.towards(b, float(k) / 20.0)).collect();
        let level = |by: Vector<SheetMm>| {
            let own = |at: &Point<SheetMm>| f64::from(self.luma.at(self.page_to_photo.apply(*at + by)));
            narrow(median(places.iter().map(own).collect()).unwrap_or(0.0))
        };
        let white = level(aside).min(level(-aside));
        level(Vector::new(0.0, 0.0)) < (1.0 - BAR_FALL) * white
    }
}
