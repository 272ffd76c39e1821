//! `cuts/<document>-<sheet>.svg`: the lines along which a sheet's pieces or squares are cut, for cutting machines.
//!
//! The file's unit is the millimetre and its picture is the page: `width` and `height` in mm, `viewBox` the same numbers
//! (SVG 1.1, 7.7). Every line is a path of its own, a hairline; items touch, and a line that serves two is there once, as
//! long as it goes on. What is to be cut lies in the group `cut`; where paper is only folded, that lies in the group `fold`.

use std::collections::BTreeMap;
use std::fmt::Write;

use super::layout::{Area, Layout};
use super::marks::{Box as Item, Line};
use super::{PrintError, Sources, pieces, squares, strips};
use crate::frame::round_signed;

/// Parts of a millimetre in which edges are compared: places are rounded to a tenth of a micrometre.
const PARTS_OF_A_MM: f64 = 1e4;

/// The lines of one sheet.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct CutSheet {
    /// Its file's name, such as `pieces-1.svg`.
    pub name: String,
    /// The file.
    pub svg: String,
}

/// The line along which what lies in a place is folded.
type Fold = Box<dyn Fn(Area) -> Option<Line>>;

/// Every sheet of a document that can be cut by machine; none for other documents.
///
/// # Errors
/// [`PrintError::TooLarge`] as for the documents.
pub(super) fn of(sources: &Sources, document: &str) -> Result<Vec<CutSheet>, PrintError> {
    let (settings, printed) = (&sources.settings.print, sources.printed);
    let (layout, items, fold): (Layout, usize, Fold) = match document {
        "pieces" => {
            let places = pieces::places(settings, printed)?;
            let is_folded = places.beside;
            (
                places.layout,
                printed.squares.len(),
                Box::new(move |area| is_folded.then(|| middle(&area.into()))),
            )
        }
        "squares" => {
            let division = squares::division(settings, printed)?;
            let parts = division.across * division.down;
            (division.layout, printed.squares.len() * parts, Box::new(|_| None))
        }
        strips::NAME => {
            let places = strips::places(settings, printed, sources.settings.code.corner)?;
            let layout = places.layout.clone();
            (layout, printed.squares.len(), Box::new(move |area| Some(strips::fold(&places, &area))))
        }
        _ => return Ok(Vec::new()),
    };
    let sheet = |number: usize, on_it: usize| {
        let spots = || layout.spots.iter().take(on_it).copied();
        let items: Vec<Item> = spots().map(Item::from).collect();
        let cuts = once(items.iter().flat_map(edges));
        let folds = once(spots().filter_map(&fold));
        CutSheet {
            name: format!("{document}-{number}.svg"),
            svg: svg([layout.page.x, layout.page.y], &cuts, &folds),
        }
    };
    Ok((1..).zip(layout.stacked(items)).map(|(number, on_it)| sheet(number, on_it.len())).collect())
}

/// Number of straight lines along which items in some places are cut.
pub(super) fn lines(spots: &[Area]) -> usize {
    let items: Vec<Item> = spots.iter().map(|area| (*area).into()).collect();
    once(items.iter().flat_map(edges)).len()
}

/// The upright line through a item's middle.
fn middle(item: &Item) -> Line {
    let x = item.x + item.width / 2.0;
    Line { x1: x, y1: item.y, x2: x, y2: item.y + item.height }
}

/// The four edges of a item.
fn edges(item: &Item) -> [Line; 4] {
    let (left, right, top, bottom) = (item.x, item.x + item.width, item.y, item.y + item.height);
    let level = |y: f64| Line { x1: left, y1: y, x2: right, y2: y };
    let upright = |x: f64| Line { x1: x, y1: top, x2: x, y2: bottom };
    [level(top), level(bottom), upright(left), upright(right)]
}

/// Level and upright lines, each stretch once, and joined where one goes on in the next.
fn once(lines: impl Iterator<Item = Line>) -> Vec<Line> {
    let parts = |mm: f64| round_signed(mm * PARTS_OF_A_MM);
    // whether it stands, and where it lies, of each line; from where to where, of each stretch on it
    let mut stretches: BTreeMap<(bool, i64), Vec<(i64, i64)>> = BTreeMap::new();
    for Line { x1, y1, x2, y2 } in lines {
        let [x1, y1, x2, y2] = [x1, y1, x2, y2].map(parts);
        let (line, stretch) = if x1 == x2 { ((true, x1), (y1, y2)) } else { ((false, y1), (x1, x2)) };
        stretches.entry(line).or_default().push(stretch);
    }
    let mut joined = Vec::new();
    for ((stands, at), stretches) in stretches {
        for (from, to) in join(stretches) {
            let [at, from, to] = [at, from, to].map(millimetres);
            joined.push(if stands {
                Line { x1: at, y1: from, x2: at, y2: to }
            } else {
                Line { x1: from, y1: at, x2: to, y2: at }
            });
        }
    }
    joined
}

/// Stretches of one line, those that touch in one.
fn join(mut stretches: Vec<(i64, i64)>) -> Vec<(i64, i64)> {
    stretches.sort_unstable();
    let mut joined: Vec<(i64, i64)> = Vec::new();
    for (from, to) in stretches {
        match joined.last_mut().filter(|(_, end)| from <= *end) {
            Some((_, end)) => *end = to.max(*end),
            None => joined.push((from, to)),
        }
    }
    joined
}

#[allow(clippy::cast_precision_loss, reason = "tenths of micrometres on a page stay far below 2^53")]
fn millimetres(parts: i64) -> f64 {
    parts as f64 / PARTS_OF_A_MM
}

fn svg([width, height]: [f64; 2], cuts: &[Line], folds: &[Line]) -> String {
    let mut svg = format!(
        "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" \
         width=\"{width}mm\" height=\"{height}mm\" viewBox=\"0 0 {width} {height}\">\n"
    );
    let groups = [("cut", "#000000", cuts), ("fold", "#0000ff", folds)];
    for (id, ink, lines) in groups.into_iter().filter(|(.., lines)| !lines.is_empty()) {
        let _ = writeln!(svg, "<g id=\"{id}\" fill=\"none\" stroke=\"{ink}\" stroke-width=\"0.01\">");
        for Line { x1, y1, x2, y2 } in lines {
            let _ = writeln!(svg, "<path d=\"M {x1} {y1} L {x2} {y2}\"/>");
        }
        svg.push_str("</g>\n");
    }
    svg.push_str("</svg>\n");
    svg
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn shared_edges_are_cut_once() {
        let item = |x: f64, y: f64| Item { x, y, width: 10.0, height: 10.0 };
        let outlines = |items: &[Item]| once(items.iter().flat_map(edges));
        let lines = outlines(&[item(0.0, 0.0), item(10.0, 0.0), item(0.0, 10.0), item(10.0, 10.0)]);
        assert_eq!(lines.len(), 6, "three level and three upright lines of 20 mm");
        assert!(lines.iter().all(|line| (line.x2 - line.x1 + line.y2 - line.y1 - 20.0).abs() < 1e-9));
        let apart = outlines(&[item(0.0, 0.0), item(20.0, 0.0)]);
        assert_eq!(apart.len(), 8, "what does not touch is not joined");
    }
}
