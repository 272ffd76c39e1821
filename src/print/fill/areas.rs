//! A piece enlarged: its areas, its outlines, and where each colour's name or letter stands.
//!
//! A name stands where it has most room: of all places where the box around it lies inside its area, the one that still holds it when the
//! box grows most. Areas are looked at in samples, the same number for every piece.

use serde::Serialize;

use super::Look;
use crate::frame::{PicturePx, Point, ceil_index, float, floor_index, round_byte};
use crate::picture::colour::contrast;
use crate::picture::outlines::{Curve, Step};
use crate::picture::{Crop, FewColours, Outlines};
use crate::plan::cell::column_letters;
use crate::plan::settings::hex;
use crate::print::Sources;
use crate::print::marks::{Box, Line};
use crate::print::typeset::width_mm;

/// Samples along a square's side: on a square of 127 mm one every 0.8 mm.
const SAMPLES: usize = 160;
/// Sizes of a name in points, the best first.
const POINTS: [f64; 3] = [11.0, 9.5, 8.0];
/// Sizes of a letter that stands for a colour, in points, the best first.
const LETTER_POINTS: [f64; 4] = [24.0, 18.0, 14.0, 10.0];
/// Grey of names, 0 black to 1 white.
const NAME_INK: f64 = 0.3;
/// Height of a line of letters, in mm a point.
const LINE_MM: f64 = 0.42;
/// White between a name and the edge of its area, in mm.
const CLEAR_MM: f64 = 1.0;
/// Part of a colour that soft colour has; the rest is white.
const SOFT: f64 = 0.45;
/// Least part of a square that an area has to take to be named or coloured by itself: a pencil's dot of 4 mm on a square of 127 mm.
const LEAST_PART: f64 = 0.001;

/// A piece's picture, in mm from its top left corner.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
pub(in crate::print) struct Drawing {
    areas: Vec<Filled>,
    lines: Vec<Path>,
    names: Vec<Name>,
    /// Faint lines between the tick marks.
    quarters: Vec<Line>,
    /// How outlines are drawn: their grey, 0 black to 1 white, their width in points, and whether they are dotted.
    ink: (f64, f64, bool),
}

/// Outlines to colour, and those that are seen from afar.
const SOFT_INK: (f64, f64, bool) = (0.62, 0.9, false);
const DOTTED_INK: (f64, f64, bool) = (0.45, 1.1, true);
const DARK_INK: (f64, f64, bool) = (0.0, 1.4, false);

/// Rings filled with a colour.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub(in crate::print) struct Filled {
    colour: String,
    rings: Vec<Path>,
}

/// A curve: where it starts, then for each step two numbers of a line's end, or six of a Bézier curve's points.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub(in crate::print) struct Path {
    start: [f64; 2],
    steps: Vec<Vec<f64>>,
}

/// A colour's name or letter, centred on a place.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub(in crate::print) struct Name {
    x: f64,
    y: f64,
    points: f64,
    lines: Vec<String>,
    /// Its grey, 0 black to 1 white.
    ink: f64,
}

/// Draws a piece enlarged to a side of `side_mm`. `blocked` is kept free of names.
pub(in crate::print) fn drawing(
    sources: &Sources,
    few: &FewColours,
    (cell, side_mm): (usize, f64),
    look: Look,
    blocked: &[Box],
) -> Drawing {
    let (grid, outlines) = (&sources.printed.grid, &sources.facts.outlines);
    let crop = Crop::of(few.size(), grid);
    let (corner, side) = (crop.piece_top_left(sources.printed.squares[cell].cell), crop.piece.value());
    let mm = side_mm / side;
    let place =
        |point: Point<PicturePx>| [rounded((point.x - corner.x) * mm), rounded((point.y - corner.y) * mm)];
    let here = |curve: &Curve| {
        let [left, top, right, bottom] = curve.bounds();
        right > corner.x && left < corner.x + side && bottom > corner.y && top < corner.y + side
    };
    let coloured = |colour: fn([u8; 3]) -> String| {
        let areas = (0..few.pencils.len()).filter_map(|pencil| {
            let window = [corner.x, corner.y, corner.x + side, corner.y + side];
            let rings = outlines.rings_within(pencil, window);
            let rings: Vec<Path> = rings.iter().map(|ring| path(ring, place)).collect();
            (!rings.is_empty()).then(|| Filled { colour: colour(few.pencils[pencil].srgb), rings })
        });
        areas.collect()
    };
    let lines = || outlines.drawn().filter(|curve| here(curve)).map(|curve| path(curve, place)).collect();
    let samples = || Samples::of(few, corner, side, side_mm / float(SAMPLES));
    match look {
        Look::Coloured => Drawing { areas: coloured(soft), ..Drawing::default() },
        Look::Quartered => Drawing { quarters: quarters(side_mm), ..Drawing::default() },
        Look::Dotted => Drawing { lines: lines(), ink: DOTTED_INK, ..Drawing::default() },
        Look::Outlined => {
            let (names, areas) = samples().named(sources, few, cell, blocked);
            Drawing { areas, lines: lines(), names, ink: SOFT_INK, ..Drawing::default() }
        }
        Look::Lettered => {
            let names = samples().lettered(few, blocked);
            Drawing { areas: coloured(hex), lines: lines(), names, ink: DARK_INK, ..Drawing::default() }
        }
    }
}

/// The lines between opposite tick marks.
fn quarters(side: f64) -> Vec<Line> {
    let at = |part: f64| {
        let along = rounded(part * side);
        [Line { x1: along, y1: 0.0, x2: along, y2: side }, Line { x1: 0.0, y1: along, x2: side, y2: along }]
    };
    [0.25, 0.5, 0.75].into_iter().flat_map(at).collect()
}

/// The letter of a pencil, by its number.
pub(in crate::print) fn letter(pencil: usize) -> String {
    column_letters(pencil)
}

/// A thousandth of a millimetre is fine enough for any printer.
fn rounded(mm: f64) -> f64 {
    (mm * 1e3).round() / 1e3
}

fn path(curve: &Curve, place: impl Fn(Point<PicturePx>) -> [f64; 2]) -> Path {
    let step = |step: &Step| match *step {
        Step::Line(end) => place(end).to_vec(),
        Step::Bezier(points) => points.into_iter().flat_map(&place).collect(),
    };
    Path { start: place(curve.start), steps: curve.steps.iter().map(step).collect() }
}

/// A colour mixed with white.
fn soft(srgb: [u8; 3]) -> String {
    hex(srgb.map(|part| round_byte(255.0 - (255.0 - f64::from(part)) * SOFT)))
}

/// Black or white, 0 or 1: whichever has more contrast to a colour.
fn readable_on(srgb: [u8; 3]) -> f64 {
    if contrast([255; 3], srgb) > contrast([0; 3], srgb) { 1.0 } else { 0.0 }
}

/// A piece in samples: which area each belongs to.
struct Samples {
    /// Side of a sample, in mm.
    step: f64,
    /// The area of each sample, row by row.
    area: Vec<usize>,
    /// The pencil of each area, and how many samples it has.
    areas: Vec<(usize, usize)>,
}

impl Samples {
    fn of(few: &FewColours, corner: Point<PicturePx>, side: f64, step: f64) -> Self {
        let (width, height) = few.size();
        let at = |from: f64, i: usize, pixels: u32| {
            let last = usize::try_from(pixels).unwrap_or(1).max(1) - 1;
            floor_index(from + (float(i) + 0.5) / float(SAMPLES) * side).min(last)
        };
        let wide = usize::try_from(width).unwrap_or(0);
        let pencil = |i: usize| {
            few.index()[at(corner.y, i / SAMPLES, height) * wide + at(corner.x, i % SAMPLES, width)]
        };
        let pencils: Vec<u8> = (0..SAMPLES * SAMPLES).map(pencil).collect();
        let mut area = vec![usize::MAX; pencils.len()];
        let mut areas = Vec::new();
        for start in 0..pencils.len() {
            if area[start] != usize::MAX {
                continue;
            }
            let (number, mut count, mut open) = (areas.len(), 0, vec![start]);
            area[start] = number;
            while let Some(place) = open.pop() {
                count += 1;
                for near in beside(place) {
                    if area[near] == usize::MAX && pencils[near] == pencils[start] {
                        area[near] = number;
                        open.push(near);
                    }
                }
            }
            areas.push((usize::from(pencils[start]), count));
        }
        Self { step, area, areas }
    }

    /// The name of each area that holds it; the others softly coloured.
    fn named(
        &self,
        sources: &Sources,
        few: &FewColours,
        cell: usize,
        blocked: &[Box],
    ) -> (Vec<Name>, Vec<Filled>) {
        let step = self.step;
        let needed = &sources.facts.pieces[cell].pencils;
        let (mut names, mut tinted) = (Vec::new(), Vec::new());
        for (number, (pencil, count)) in self.areas.iter().enumerate() {
            let small = float(*count) < LEAST_PART * float(SAMPLES * SAMPLES);
            if small || !needed.contains(pencil) {
                continue;
            }
            let room = Room::of(|place| self.area[place] == number, blocked, step);
            let pencil = &few.pencils[*pencil];
            match name(&pencil.name, &room, step, &POINTS) {
                Some(name) => names.push(Name { ink: NAME_INK, ..name }),
                None => tinted.push(Filled { colour: soft(pencil.srgb), rings: self.rings(number, step) }),
            }
        }
        (names, tinted)
    }

    /// The letter of each area that holds it, dark on light and light on dark.
    fn lettered(&self, few: &FewColours, blocked: &[Box]) -> Vec<Name> {
        let areas = self.areas.iter().enumerate();
        let letter = |(number, (pencil, _)): (usize, &(usize, usize))| {
            let room = Room::of(|place| self.area[place] == number, blocked, self.step);
            let name = name(&letter(*pencil), &room, self.step, &LETTER_POINTS)?;
            Some(Name { ink: readable_on(few.pencils[*pencil].srgb), ..name })
        };
        areas.filter_map(letter).collect()
    }

    /// The rings around an area, in mm on the piece.
    fn rings(&self, number: usize, step: f64) -> Vec<Path> {
        let mask: Vec<bool> = self.area.iter().map(|area| *area == number).collect();
        let outlines = Outlines::of_mask(&mask, SAMPLES);
        let place = |point: Point<PicturePx>| [rounded(point.x * step), rounded(point.y * step)];
        outlines.rings(1).map(|ring| path(ring, place)).collect()
    }
}

/// The samples left, right, above and below.
fn beside(place: usize) -> impl Iterator<Item = usize> {
    let (x, y) = (place % SAMPLES, place / SAMPLES);
    [
        (x > 0).then(|| place - 1),
        (x + 1 < SAMPLES).then_some(place + 1),
        (y > 0).then(|| place.saturating_sub(SAMPLES)),
        (y + 1 < SAMPLES).then_some(place + SAMPLES),
    ]
    .into_iter()
    .flatten()
}

/// Where a box may stand: how many samples above and left of each corner are not free.
struct Room {
    taken: Vec<usize>,
}

impl Room {
    const WIDE: usize = SAMPLES + 1;

    fn of(free: impl Fn(usize) -> bool, blocked: &[Box], step: f64) -> Self {
        let mut taken = vec![0; Self::WIDE * Self::WIDE];
        for y in 0..SAMPLES {
            let mut row = 0;
            for x in 0..SAMPLES {
                let (left, top) = (float(x) * step, float(y) * step);
                let meets = |b: &Box| {
                    left < b.x + b.width && left + step > b.x && top < b.y + b.height && top + step > b.y
                };
                row += usize::from(!free(y * SAMPLES + x) || blocked.iter().any(meets));
                taken[(y + 1) * Self::WIDE + x + 1] = taken[y * Self::WIDE + x + 1] + row;
            }
        }
        Self { taken }
    }

    /// The places, as samples of its left upper corner, where a box of so many samples is free; the first from the top.
    fn places(&self, width: usize, height: usize) -> impl Iterator<Item = (usize, usize)> {
        let at = |x: usize, y: usize| self.taken[y * Self::WIDE + x];
        let (across, down) = (Self::WIDE.saturating_sub(width), Self::WIDE.saturating_sub(height));
        (0..down).flat_map(move |y| (0..across).map(move |x| (x, y))).filter(move |(x, y)| {
            at(x + width, y + height) + at(*x, *y) == at(x + width, *y) + at(*x, y + height)
        })
    }

    /// The middle of the place where a box has most room, in samples.
    fn best(&self, width: usize, height: usize) -> Option<[f64; 2]> {
        self.places(width, height).next()?;
        // the largest growth by which it still fits somewhere, by halving
        let (mut fits, mut fails) = (0, SAMPLES);
        while fails - fits > 1 {
            let middle = usize::midpoint(fits, fails);
            if self.places(width + 2 * middle, height + 2 * middle).next().is_some() {
                fits = middle;
            } else {
                fails = middle;
            }
        }
        let (wide, high) = (width + 2 * fits, height + 2 * fits);
        let places: Vec<(usize, usize)> = self.places(wide, high).collect();
        let (x, y) = *places.get(places.len() / 2)?;
        Some([float(x) + float(wide) / 2.0, float(y) + float(high) / 2.0])
    }
}

/// A colour's name where it fits best: in one line, else in two, as large as possible.
fn name(words: &str, room: &Room, step: f64, sizes: &[f64]) -> Option<Name> {
    let one = vec![words.to_owned()];
    let two = words.split_once(' ').map(|(first, rest)| vec![first.to_owned(), rest.to_owned()]);
    for &points in sizes {
        for lines in std::iter::once(&one).chain(&two) {
            let width = lines.iter().map(|line| width_mm(line, points, false)).fold(0.0, f64::max);
            let height = points * LINE_MM * float(lines.len());
            let samples = |mm: f64| ceil_index((mm + 2.0 * CLEAR_MM) / step);
            if let Some([x, y]) = room.best(samples(width), samples(height)) {
                return Some(Name { x: x * step, y: y * step, points, lines: lines.clone(), ink: 0.0 });
            }
        }
    }
    None
}
