//! `making-of.pdf`: the checks of the evening in order, from the empty wall to the whole one, and a curve of squares in their
//! place against time.

use serde::Serialize;

use super::exhibit::{Exhibit, Head, room, whole_at_size, wider};
use super::{Lacking, PastCheck};
use crate::display::evenly;
use crate::frame::float;
use crate::print::PrintError;
use crate::print::page::{Foot, Reading, Set};

/// Most checks that are shown; of more, some are taken evenly, the first and the last among them.
const MOST: usize = 36;
/// Pictures side by side: as few as let all stand on one page; else as many.
const FEWEST_ACROSS: usize = 1;
const MOST_ACROSS: usize = 4;
/// White between them in mm.
const APART_MM: f64 = 6.0;
/// Height of the head and of the sentence below it, of the frame that says that a picture was made, and of a check's time, bar
/// and count, in mm on letter paper.
const HEAD_MM: f64 = 32.0;
const MADE_MM: f64 = 10.0;
const WORDS_MM: f64 = 22.0;
/// Checks from which there is a curve: two points are a line that says nothing.
const CURVE_FROM: usize = 3;
/// Height of the curve, in mm.
const CURVE_MM: f64 = 46.0;
/// Left of the curve, for its numbers, in mm.
const AXIS_MM: f64 = 12.0;
/// A picture is at most so many times as high as it is wide: that of a wall of one column is not shown over several pages.
const TALLEST: f64 = 1.5;

/// What the template sets.
#[derive(Serialize)]
struct Content {
    head: Head,
    intro: String,
    across: usize,
    apart: f64,
    /// Width of a picture and room for its height, in mm.
    width: f64,
    height: f64,
    moments: Vec<Moment>,
    curve: Option<Curve>,
}

/// One check.
#[derive(Serialize)]
struct Moment {
    when: String,
    counts: String,
    /// Squares in place as a part of all.
    share: f64,
    alt: String,
    /// Which picture, and its width and height in mm.
    picture: Option<(usize, [f64; 2])>,
}

/// Squares in place against time.
#[derive(Serialize)]
struct Curve {
    title: String,
    alt: String,
    left: f64,
    width: f64,
    height: f64,
    /// Places in mm from the curve's upper left corner.
    points: Vec<[f64; 2]>,
    /// The number at the axis' upper end, and the times at the ends of the other.
    most: String,
    ends: [String; 2],
}

/// Lays the pages out.
///
/// # Errors
/// [`PrintError::Nothing`] where there was no check; [`PrintError::Typeset`].
pub(super) fn set(exhibit: &Exhibit) -> Result<Set, PrintError> {
    let (sources, checks) = (exhibit.sources(), exhibit.input.checks);
    if checks.is_empty() {
        return Err(PrintError::Nothing(Lacking::Checks));
    }
    let shown: Vec<&PastCheck> = evenly(checks.len(), MOST).filter_map(|at| checks.get(at)).collect();
    let has_curve = checks.len() >= CURVE_FROM;
    let [all, _] = room(sources);
    let (across, width) = columns(exhibit, &shown, has_curve);
    let most_high = width * TALLEST;
    let mut pictures = Vec::new();
    let mut moments = Vec::new();
    for check in &shown {
        let picture = check.picture.as_ref().filter(|picture| !picture.is_empty()).map(|picture| {
            let (across, down) = (f64::from(picture.width()), f64::from(picture.height()));
            let scale = (width / across).min(most_high / down);
            let size = [across * scale, down * scale];
            pictures.push(whole_at_size(picture, size));
            (pictures.len() - 1, size)
        });
        moments.push(moment(exhibit, check, picture));
    }
    let height = moments.iter().filter_map(|moment| Some(moment.picture?.1[1])).fold(0.0, f64::max);
    let said = [("shown", shown.len().into()), ("checks", checks.len().into())];
    let id = if shown.len() < checks.len() { "comparison-making-some" } else { "comparison-making-intro" };
    let content = Content {
        head: exhibit.head("making-of"),
        intro: sources.words.say(id, &said),
        across,
        apart: APART_MM,
        width,
        height,
        moments,
        curve: has_curve.then(|| curve(exhibit, all)),
    };
    exhibit.set(Reading { name: "making-of", foot: Foot::Line, content, pictures })
}

/// How many pictures stand side by side, and how wide each is, in mm.
fn columns(exhibit: &Exhibit, shown: &[&PastCheck], has_curve: bool) -> (usize, f64) {
    let [all, high] = room(exhibit.sources());
    let ratio = |check: &&PastCheck| {
        let (width, height) = check.picture.as_ref()?.dimensions();
        Some((f64::from(height) / f64::from(width.max(1))).min(TALLEST))
    };
    let ratio = shown.iter().filter_map(ratio).fold(0.0, f64::max);
    let made = if exhibit.input.made { MADE_MM } else { 0.0 };
    let curve = if has_curve { WORDS_MM } else { 0.0 };
    let wider = wider(exhibit.sources());
    let taken = wider * (HEAD_MM + made + curve) + if has_curve { CURVE_MM } else { 0.0 };
    let width = |across: usize| (all - float(across - 1) * APART_MM) / float(across);
    let fits = |across: &usize| {
        let rows = float(shown.len().div_ceil(*across));
        taken + rows * (width(*across) * ratio + wider * WORDS_MM) <= high
    };
    let across = (FEWEST_ACROSS..=MOST_ACROSS).find(fits).unwrap_or(MOST_ACROSS);
    (across, width(across))
}

fn moment(exhibit: &Exhibit, check: &PastCheck, picture: Option<(usize, [f64; 2])>) -> Moment {
    let words = exhibit.sources().words;
    let summary = &check.summary;
    let said =
        [("right", summary.right.into()), ("cells", summary.cells.into()), ("empty", summary.empty.into())];
    let counts = words.say("comparison-making-counts", &said);
    let alt = [("when", check.when.as_str().into()), ("counts", counts.as_str().into())];
    Moment {
        alt: words.say("comparison-making-alt", &alt),
        when: check.when.clone(),
        counts,
        share: share(check),
        picture,
    }
}

/// Squares in place as a part of all.
fn share(check: &PastCheck) -> f64 {
    (float(check.summary.right) / float(check.summary.cells.max(1))).min(1.0)
}

fn curve(exhibit: &Exhibit, width: f64) -> Curve {
    let checks = exhibit.input.checks;
    let ends =
        [checks.first(), checks.last()].map(|check| check.map_or_else(String::new, |c| c.when.clone()));
    let [first, last] = ends.clone();
    let most = checks.iter().map(|check| check.summary.cells).max().unwrap_or(0);
    let alt = [("first", first.into()), ("last", last.into())];
    let width = width - AXIS_MM;
    Curve {
        title: exhibit.say("comparison-curve"),
        alt: exhibit.sources().words.say("comparison-curve-alt", &alt),
        left: AXIS_MM,
        width,
        height: CURVE_MM,
        points: points(checks, width),
        most: most.to_string(),
        ends,
    }
}

/// Where each check stands on the curve. Where the times tell nothing, all stand equally far apart; one that is said to be
/// before the one before it stands at its side.
fn points(checks: &[PastCheck], width: f64) -> Vec<[f64; 2]> {
    let mut reached = 0.0_f64;
    let minutes: Vec<f64> = checks
        .iter()
        .map(|check| {
            reached = reached.max(if check.minutes.is_finite() { check.minutes } else { 0.0 });
            reached
        })
        .collect();
    let first = minutes.first().copied().unwrap_or(0.0);
    let all = reached - first;
    let last = float(checks.len().saturating_sub(1).max(1));
    let at = |(index, (check, minute)): (usize, (&PastCheck, &f64))| {
        let part = if all > 0.0 { (minute - first) / all } else { float(index) / last };
        [part * width, (1.0 - share(check)) * CURVE_MM]
    };
    checks.iter().zip(&minutes).enumerate().map(at).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::judge::Summary;

    #[test]
    fn the_curve_goes_forward_in_time_and_stays_in_its_frame() {
        let check = |minutes: f64, right: usize| PastCheck {
            when: String::new(),
            minutes,
            summary: Summary { right, cells: 80, ..Summary::default() },
            picture: None,
        };
        let odd = [check(5.0, 0), check(f64::NAN, 20), check(3.0, 90), check(65.0, 80)];
        let places = points(&odd, 120.0);
        assert_eq!(places, [[0.0, CURVE_MM], [0.0, 0.75 * CURVE_MM], [0.0, 0.0], [120.0, 0.0]]);
        let at_once = points(&[check(0.0, 0), check(0.0, 40), check(0.0, 80)], 120.0);
        assert_eq!(at_once.iter().map(|place| place[0]).collect::<Vec<_>>(), [0.0, 60.0, 120.0]);
    }
}
