//! The wall drawn to scale: squares with their labels, the cards around them, the floor, heights and distances.
//!
//! ```text
//!    ┌┐┌──┬──┬──┐┌┐
//!    ├┤│A2│B2│C2│                ── 65 in       heights of the rows' edges over the floor
//!    ├┤├──┼──┼──┤
//!    ├┤│A1│B1│C1│                ── 55 in
//!    └┘└──┴──┴──┘└┘
//!    └┘├──┼──┼──┤└┘
//!      0  5  10  15                             distances of the columns' edges from the left
//!   ═══════════════════ floor
//! ```

use serde::Serialize;

use super::Sources;
use super::lengths::{self, one};
use super::marks::{Box, Line};
use super::page::{Foot, reading_room};
use super::typeset::width_mm;
use crate::frame::{Point, Vector, WallMm, ceil_index, float};
use crate::plan::cards::RING_MM;
use crate::plan::settings::{Units, WallPart};
use crate::plan::{Card, CardKind, Cell};

/// What of the room of a page to read is not the drawing's, in mm: the title, six sentences above it, seven lines below.
const ABOVE_AND_BELOW_MM: f64 = 98.0;
/// Length of a tick beside a row, and how far from the wall the plumb line hangs.
const TICK_MM: f64 = 2.0;
/// Room at the right for the heights, and below a row of distances, in mm.
const HEIGHTS_MM: f64 = 18.0;
const DISTANCES_MM: f64 = 16.0;
/// Letters in the drawing, in points, and how far apart two lines of them have to be, in mm.
const POINTS: f64 = 8.0;
const APART_MM: f64 = 3.6;

/// The drawing, in mm on the page from its own top left corner.
#[derive(Serialize)]
pub(super) struct Drawing {
    width: f64,
    height: f64,
    squares: Vec<Named>,
    cards: Vec<Named>,
    floor: Line,
    floor_words: String,
    /// From the squares down to the floor: a plumb line, in two items where the floor is farther than drawn, and its length.
    plumb: Vec<Line>,
    plumb_words: Text,
    /// Short lines at the edges of rows and columns.
    ticks: Vec<Line>,
    /// Heights beside the rows; distances below the columns, read from the bottom up.
    heights: Vec<Text>,
    distances: Vec<Text>,
    unit: String,
    /// Whether every row's height and every column's distance is in it.
    #[serde(skip)]
    pub has_all: bool,
}

/// A rectangle with a name in it, or none where it has no room.
#[derive(Serialize)]
struct Named {
    area: Box,
    name: String,
    /// Whether it is one of a border in reserve.
    reserve: bool,
    /// Whether nothing hangs there.
    free: bool,
}

/// Words with their middle left, or upper middle, in a place.
#[derive(Serialize)]
struct Text {
    x: f64,
    y: f64,
    words: String,
}

/// From the wall to the page.
struct Scale {
    times: f64,
    left: f64,
    top: f64,
    /// Top left corner of the part that is drawn.
    corner: Point<WallMm>,
}

impl Scale {
    fn area(&self, top_left: Point<WallMm>, width: f64, height: f64) -> Box {
        let (x, y) = self.place(top_left);
        Box { x, y, width: width * self.times, height: height * self.times }
    }

    fn place(&self, at: Point<WallMm>) -> (f64, f64) {
        let from = at - self.corner;
        (self.left + from.x * self.times, self.top + from.y * self.times)
    }
}

impl Drawing {
    /// As large as the page has room: one part of the wall, whose lower edge is `hang_mm` above the floor.
    pub fn of(sources: &Sources, part: &WallPart, hang_mm: f64) -> Self {
        let grid = &sources.settings.grid;
        let size = part.size(grid);
        // the floor below a small wall is far: drawn nearer, with a break in the plumb line
        let shown_hang = hang_mm.min(size.y.max(size.x / 4.0).max(2.0 * RING_MM));
        let to_floor = size.y + shown_hang.max(RING_MM);
        let [width, height] = reading_room(sources.settings.print.paper, Foot::Line);
        let across = (width - HEIGHTS_MM) / (size.x + 2.0 * RING_MM);
        let down = (height - ABOVE_AND_BELOW_MM) / (RING_MM + to_floor);
        let times = across.min(down);
        let [corner, ..] = grid.corners(part.first);
        let scale = Scale { times, left: RING_MM * times, top: RING_MM * times, corner };
        let floor = scale.top + to_floor * times;
        let right = (size.x + 2.0 * RING_MM) * times;
        let words = sources.words;
        let unit = match sources.settings.print.units {
            Units::Inch => "wall-map-in-inches",
            Units::Mm => "wall-map-in-mm",
        };
        let is_broken = shown_hang < hang_mm;
        // from the tick at the squares' lower edge, which has the same height beside it
        let lowest = scale.top + size.y * times;
        let plumb = plumb(right + TICK_MM, lowest, floor, is_broken);
        let (row_ticks, heights) = heights(sources, (part, hang_mm), &scale, right);
        let (column_ticks, distances) = distances(sources, part, &scale);
        Self {
            has_all: heights.len() > part.rows() && distances.len() > part.columns(),
            width: right + HEIGHTS_MM,
            height: floor.max(scale.top + (size.y + RING_MM) * times + DISTANCES_MM) + APART_MM + 1.0,
            squares: squares(sources, part, &scale),
            cards: cards(sources, part, &scale),
            floor: Line { x1: 0.0, y1: floor, x2: right + HEIGHTS_MM, y2: floor },
            floor_words: words.say("wall-map-floor", &[]),
            plumb_words: Text {
                x: right + 2.0 * TICK_MM,
                y: lowest + (floor - lowest) / 4.0 + APART_MM / 2.0,
                words: if plumb.is_empty() { String::new() } else { one(sources, hang_mm) },
            },
            plumb,
            ticks: row_ticks.into_iter().chain(column_ticks).collect(),
            heights,
            distances,
            unit: words.say(unit, &[]),
        }
    }
}

/// The plumb line between two heights, with a gap and two slanting strokes in its middle where it stands for a longer one;
/// nothing where there is no room.
fn plumb(x: f64, from: f64, floor: f64, is_broken: bool) -> Vec<Line> {
    if floor - from < 2.0 * APART_MM {
        return Vec::new();
    }
    let upright = |y1: f64, y2: f64| Line { x1: x, y1, x2: x, y2 };
    if !is_broken {
        return vec![upright(from, floor)];
    }
    let (gap, slant) = (0.8, 1.5);
    let middle = (from + floor) / 2.0;
    let stroke = |y: f64| Line { x1: x - slant, y1: y + gap, x2: x + slant, y2: y - gap };
    vec![
        upright(from, middle - gap),
        stroke(middle - gap),
        stroke(middle + gap),
        upright(middle + gap, floor),
    ]
}

/// A name if it fits its rectangle.
fn if_it_fits(name: String, area: &Box) -> String {
    let fits = width_mm(&name, POINTS, false) + 0.6 <= area.width && area.height >= APART_MM;
    if fits { name } else { String::new() }
}

fn squares(sources: &Sources, part: &WallPart, scale: &Scale) -> Vec<Named> {
    let grid = &sources.settings.grid;
    let square = |cell: Cell| {
        let [top_left, ..] = grid.corners(cell);
        let area = scale.area(top_left, grid.square_mm, grid.square_mm);
        Named {
            name: if_it_fits(grid.label(cell), &area),
            area,
            reserve: grid.in_border(cell),
            free: grid.is_kept_free(cell),
        }
    };
    let all: Vec<Named> = grid.cells().filter(|cell| part.holds(*cell)).map(square).collect();
    // all or none: a wall with a few labels missing would look as if those squares were not there
    if all.iter().all(|square| !square.name.is_empty()) {
        return all;
    }
    all.into_iter().map(|square| Named { name: String::new(), ..square }).collect()
}

/// The cards, the outlines of which are a cell's side and the ring's width.
fn cards(sources: &Sources, part: &WallPart, scale: &Scale) -> Vec<Named> {
    let side = sources.settings.grid.square_mm;
    let wall = sources.settings.grid.size();
    let beside = |card: &&Card| part.holds(sources.settings.grid.nearest(card.centre));
    let cards = super::edge_cards::printable(sources.printed).filter(beside).map(|card| {
        let own = |along: f64| (along / side).floor() * side;
        let (x, y, width, height) = match card.kind {
            CardKind::Column => (own(card.centre.x), wall.y, side, RING_MM),
            CardKind::Row => (-RING_MM, own(card.centre.y), RING_MM, side),
            CardKind::Corner => {
                let half = RING_MM / 2.0;
                (card.centre.x - half, card.centre.y - half, RING_MM, RING_MM)
            }
        };
        let area = scale.area(Point::new(x, y), width, height);
        // corners have numbers too: in line with those of the rows they would read as one of them
        let name = match card.kind {
            CardKind::Corner => format!("c{}", card.name),
            CardKind::Column | CardKind::Row => card.name.clone(),
        };
        Named { name: if_it_fits(name, &area), area, reserve: false, free: false }
    });
    cards.collect()
}

/// The heights of the rows' edges over the floor, as many of them as have room.
fn heights(
    sources: &Sources,
    (part, hang_mm): (&WallPart, f64),
    scale: &Scale,
    right: f64,
) -> (Vec<Line>, Vec<Text>) {
    let grid = &sources.settings.grid;
    let every = ceil_index(APART_MM / (grid.square_mm * scale.times)).max(1);
    let edges = (0..=part.rows()).rev().step_by(every);
    edges
        .map(|edge| {
            let down = float(edge) * grid.square_mm;
            let (_, y) = scale.place(scale.corner + Vector::new(0.0, down));
            let over_floor = hang_mm + part.size(grid).y - down;
            let [words, _] = lengths::distances(sources, over_floor);
            let tick = Line { x1: right + 0.5, y1: y, x2: right + 0.5 + TICK_MM, y2: y };
            (tick, Text { x: right + 3.2, y, words })
        })
        .unzip()
}

/// The distances of the columns' edges from the part's left edge, as many of them as have room.
fn distances(sources: &Sources, part: &WallPart, scale: &Scale) -> (Vec<Line>, Vec<Text>) {
    let grid = &sources.settings.grid;
    let every = ceil_index(APART_MM / (grid.square_mm * scale.times)).max(1);
    let below = part.size(grid).y + RING_MM;
    (0..=part.columns())
        .step_by(every)
        .map(|edge| {
            let across = float(edge) * grid.square_mm;
            let (x, y) = scale.place(scale.corner + Vector::new(across, below));
            let [words, _] = lengths::distances(sources, across);
            let tick = Line { x1: x, y1: y + 0.5, x2: x, y2: y + 2.5 };
            (tick, Text { x, y: y + 3.0, words })
        })
        .unzip()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_stand_only_where_they_fit() {
        let area = |width: f64| Box { x: 0.0, y: 0.0, width, height: 5.0 };
        assert_eq!(if_it_fits("AB".to_owned(), &area(6.0)), "AB");
        assert_eq!(if_it_fits("AB12".to_owned(), &area(3.0)), "");
    }
}
