//! A part of the picture as curves: what is printed of it has no staircases at any size.
//!
//! Templates get it as an SVG file, which typst sets as the curves that it holds. Each pencil's areas are one path in the pencil's colour;
//! those for the largest areas lie below, and each reaches a hair beyond its edges, so that no white shows where two meet.

use std::fmt::Write;

use super::Sources;
use super::cut_out::Part;
use super::marks::Box;
use super::typeset::Image;
use crate::frame::{PicturePx, Point, ceil_index};
use crate::picture::outlines::{Curve, Step};

/// Finest picture printed, in pixels a mm (300 an inch): more is not seen and makes large files.
const FINEST_PX_PER_MM: f64 = 300.0 / 25.4;
/// Mean number of steps of curves in a piece up to which a picture is drawn as curves: the sample has 40, a photo in few colours some
/// thousands, for which pixels are smaller and as good.
const MOST_STEPS_A_PIECE: usize = 1_500;
/// How far areas reach beyond their edges, in parts of a piece's side: 0.02 mm on a piece of an inch.
const BEYOND: f64 = 0.0008;

/// A part of the picture as curves; `None` where it is made of so much that pixels are better.
pub(super) fn drawn(sources: &Sources, part: &Part) -> Option<Image> {
    let outlines = &sources.facts.outlines;
    let grid = &sources.printed.grid;
    if outlines.steps() > MOST_STEPS_A_PIECE * grid.count() {
        return None;
    }
    let beyond = BEYOND * sources.picture.crop(grid).piece.value();
    let mut svg = format!(
        concat!(
            r#"<svg xmlns="http://www.w3.org/2000/svg" width="{w}" height="{h}" viewBox="0 0 {w} {h}">"#,
            r#"<clipPath id="part"><rect width="{w}" height="{h}"/></clipPath><g clip-path="url(#part)">"#
        ),
        w = places(part.width),
        h = places(part.height)
    );
    let mut areas: Vec<(f64, usize)> =
        (0..sources.facts.pencils.len()).map(|pencil| (outlines.area(pencil), pencil)).collect();
    areas.sort_by(|a, b| b.0.total_cmp(&a.0));
    for (_, pencil) in areas {
        let window = [part.left, part.top, part.left + part.width, part.top + part.height];
        let rings: Vec<Curve> = outlines.rings_within(pencil, window);
        if rings.is_empty() {
            continue;
        }
        let colour = sources.facts.pencils[pencil].hex();
        let width = places(2.0 * beyond);
        let _ = write!(
            svg,
            r#"<path fill="{colour}" fill-rule="evenodd" stroke="{colour}" stroke-width="{width}" stroke-linejoin="round" d=""#
        );
        rings.iter().for_each(|ring| write_ring(&mut svg, ring, part));
        svg.push_str(r#""/>"#);
    }
    svg.push_str("</g></svg>");
    Some(Image::Svg(svg.into_bytes()))
}

/// A part of the picture as it is printed `mm` wide and high, and where it lies: curves just there, or pixels as fine as print shows them,
/// which reach beyond where an edge cuts one.
pub(super) fn printed_part(sources: &Sources, part: &Part, mm: [f64; 2]) -> (Image, Box) {
    if let Some(drawn) = drawn(sources, part) {
        return (drawn, Box { x: 0.0, y: 0.0, width: mm[0], height: mm[1] });
    }
    let (pixels, lies) = part.cut_out(&sources.picture.pixels, mm);
    let finest = |mm: f64| u32::try_from(ceil_index(mm * FINEST_PX_PER_MM)).unwrap_or(u32::MAX);
    (Image::of(pixels, finest(lies.width), finest(lies.height)), lies)
}

/// A ring as the data of a path.
fn write_ring(svg: &mut String, ring: &Curve, part: &Part) {
    let at =
        |point: Point<PicturePx>| format!("{} {}", places(point.x - part.left), places(point.y - part.top));
    let _ = write!(svg, "M{}", at(ring.start));
    for step in &ring.steps {
        let _ = match *step {
            Step::Line(end) => write!(svg, "L{}", at(end)),
            Step::Bezier([one, other, end]) => write!(svg, "C{} {} {}", at(one), at(other), at(end)),
        };
    }
    svg.push('Z');
}

/// A number with three places behind the point at most: a thousandth of a pixel is finer than any printer.
fn places(number: f64) -> String {
    let said = format!("{number:.3}");
    let tidy = said.trim_end_matches('0').trim_end_matches('.');
    if tidy == "-0" { "0".to_owned() } else { tidy.to_owned() }
}
