//! Where things lie on a sheet: items packed side by side, the strip with the ruler beside them, and where each item's
//! back lies after the paper is turned over.
//!
//! ```text
//!  SheetMm, a page held upright
//!   ┌─────────────────────────────┐
//!   │  ┌───┐ ┌─────────┐          │     the strip (ruler and words for the printer's dialogue) runs along the
//!   │  │ s │ │ item 0 │          │     left or the bottom margin, whichever leaves room for more items;
//!   │  │ t │ ├─────────┤          │     items touch, so that one cut serves two;
//!   │  │ r │ │ item 1 │          │     their block is centred on the page where that keeps clear of the strip
//!   │  │ i │ └─────────┘          │
//!   │  │ p │                      │     turned over:  long edge   x ↦ width − x     (columns mirror)
//!   │  └───┘                      │                   short edge  y ↦ height − y    (rows mirror, backs upside down)
//!   └─────────────────────────────┘
//! ```
//!
//! Items follow each other from sheet to sheet, not from spot to spot: sheets that are cut as a stack give piles in order.

use crate::frame::{MM_PER_INCH, Point, SheetMm, Vector, float, floor_index};
use crate::plan::settings::{Flip, Paper};

/// White kept around everything, in mm: the wide one where no item is lost by it. Office printers leave 4 to 7 mm
/// unprinted; below a quarter inch rulers and cut lines begin to be clipped, and with just that two squares of 4 in lie side by side on letter.
pub const MARGINS_MM: [f64; 2] = [10.0, MM_PER_INCH / 4.0];
/// How thick the strip with the ruler is, in mm: two rulers back to back, or three lines of 8 pt.
pub const STRIP_MM: f64 = 11.0;
/// White between the strip and the items, in mm; a knife that slips by 2 mm spares the ruler.
pub const STRIP_GAP_MM: f64 = 2.0;

/// An upright rectangle on a sheet.
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct Area {
    /// Its top left corner.
    pub top_left: Point<SheetMm>,
    /// Its width and height.
    pub size: Vector<SheetMm>,
}

impl Area {
    /// The rectangle of a width and a height with its top left corner at (`x`, `y`), all in mm.
    #[must_use]
    pub fn new(x: f64, y: f64, width: f64, height: f64) -> Self {
        Self { top_left: Point::new(x, y), size: Vector::new(width, height) }
    }

    /// Its bottom right corner.
    #[must_use]
    pub fn bottom_right(&self) -> Point<SheetMm> {
        self.top_left + self.size
    }

    /// Its middle.
    #[must_use]
    pub fn centre(&self) -> Point<SheetMm> {
        self.top_left.towards(self.bottom_right(), 0.5)
    }

    /// Whether the two share more than an edge.
    #[must_use]
    pub fn overlaps(&self, other: &Self) -> bool {
        let (a, b) = (self.bottom_right(), other.bottom_right());
        self.top_left.x < b.x - SLACK_MM
            && other.top_left.x < a.x - SLACK_MM
            && self.top_left.y < b.y - SLACK_MM
            && other.top_left.y < a.y - SLACK_MM
    }

    /// The rectangle without `margin_mm` on every side.
    #[must_use]
    pub fn inside(&self, margin_mm: f64) -> Self {
        let Point { x, y, .. } = self.top_left;
        let Vector { x: width, y: height, .. } = self.size;
        Self::new(x + margin_mm, y + margin_mm, width - 2.0 * margin_mm, height - 2.0 * margin_mm)
    }

    /// Where the same item of paper lies on the back of a page of size `page`.
    #[must_use]
    pub fn turned_over(&self, flip: Flip, page: Vector<SheetMm>) -> Self {
        let far = self.bottom_right();
        let (x, y) = match flip {
            Flip::LongEdge => (page.x - far.x, self.top_left.y),
            Flip::ShortEdge => (self.top_left.x, page.y - far.y),
            Flip::None => (self.top_left.x, self.top_left.y),
        };
        Self { top_left: rounded(x, y), size: self.size }
    }
}

/// Differences of places that are none, in mm: a micrometre; places are rounded to a tenth of one.
const SLACK_MM: f64 = 1e-3;

/// A place rounded to a tenth of a micrometre, so that files hold 44.45 and not 44.449999999999996.
fn rounded(x: f64, y: f64) -> Point<SheetMm> {
    Point::new((x * 1e4).round() / 1e4, (y * 1e4).round() / 1e4)
}

/// The strip with the ruler and the words for the printer's dialogue.
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct Strip {
    /// Where it lies.
    pub area: Area,
    /// Whether it is read from left to right; else from the bottom up.
    pub upright: bool,
}

impl Strip {
    /// The strip along the bottom, clear of the wide margin: that of pages to read.
    #[must_use]
    pub fn along_the_bottom(paper: Paper) -> Self {
        Room::on(paper, MARGINS_MM[0], true).strip
    }
}

/// Where the items of a document lie on each of its pages.
#[derive(Clone, Debug, PartialEq)]
pub struct Layout {
    /// Width and height of the page.
    pub page: Vector<SheetMm>,
    /// White on every side, in mm.
    pub margin_mm: f64,
    /// Places for items, row by row from the top.
    pub spots: Vec<Area>,
    /// The strip on fronts.
    pub strip: Strip,
}

impl Layout {
    /// As many items of `width` × `height` mm as fit the paper; `None` where not one does.
    #[must_use]
    pub fn pack(paper: Paper, width: f64, height: f64) -> Option<Self> {
        let mut best: Option<Self> = None;
        for (margin_mm, upright) in choices() {
            let room = Room::on(paper, margin_mm, upright);
            let found = room.fill(width, height);
            if found.spots.len() > best.as_ref().map_or(0, |b| b.spots.len()) {
                best = Some(found);
            }
        }
        best
    }

    /// One item that takes all that the wide margin and the strip along the bottom leave.
    #[must_use]
    pub fn whole(paper: Paper) -> Self {
        let Room { page, margin_mm, strip, free } = Room::on(paper, MARGINS_MM[0], true);
        Self { page, margin_mm, spots: vec![free], strip }
    }

    /// The page, from 0, and the place on it of the front of each of so many items. Two-sided, a front's back is the next
    /// page.
    #[must_use]
    pub fn fronts(&self, flip: Flip, items: usize) -> Vec<(usize, Area)> {
        let sides = if flip == Flip::None { 1 } else { 2 };
        let sheets = self.sheets(items).max(1);
        (0..items).map(|item| (item % sheets * sides, self.spots[item / sheets])).collect()
    }

    /// The numbers of the items on each sheet, spot by spot, so that sheets which are cut as a stack give piles in order: the pile of the
    /// first spot has the first items, that of the second spot those that follow.
    ///
    /// ```text
    ///   sheet 1   sheet 2   sheet 3          cut as one stack
    ///   ┌─┬─┐     ┌─┬─┐     ┌─┬─┐
    ///   │0│3│     │1│4│     │2│ │            piles 0 1 2 and 3 4: the first on the second, and all are in order
    ///   └─┴─┘     └─┴─┘     └─┴─┘
    /// ```
    #[must_use]
    pub fn stacked(&self, items: usize) -> Vec<Vec<usize>> {
        let sheets = self.sheets(items);
        let on_sheet = |sheet| (0..self.spots.len()).map(move |spot| spot * sheets + sheet);
        (0..sheets).map(|sheet| on_sheet(sheet).filter(|item| *item < items).collect()).collect()
    }

    /// How many sheets of paper that many items take.
    #[must_use]
    pub fn sheets(&self, items: usize) -> usize {
        items.div_ceil(self.spots.len())
    }
}

/// The side of the largest square that fits the paper with `border_mm` around it; rounded down to 0.1 mm.
#[must_use]
pub fn largest_mm(paper: Paper, border_mm: f64) -> f64 {
    let fits = |(margin_mm, upright): (f64, bool)| {
        let room = Room::on(paper, margin_mm, upright).free.size;
        room.x.min(room.y) - 2.0 * border_mm
    };
    let largest = choices().map(fits).fold(0.0, f64::max);
    ((largest + SLACK_MM) * 10.0).floor() / 10.0
}

/// The side of the largest square that fits the paper with something `beside_mm` wide along one of its sides, whichever way it lies;
/// rounded down to 0.1 mm.
#[must_use]
pub fn largest_beside_mm(paper: Paper, beside_mm: f64) -> f64 {
    let fits = |(margin_mm, upright): (f64, bool)| {
        let room = Room::on(paper, margin_mm, upright).free.size;
        (room.x - beside_mm).min(room.y).max((room.y - beside_mm).min(room.x))
    };
    let largest = choices().map(fits).fold(0.0, f64::max);
    ((largest + SLACK_MM) * 10.0).floor() / 10.0
}

/// Ways to divide a page, the ones to prefer first: margin in mm, and whether the strip lies along the bottom.
fn choices() -> impl Iterator<Item = (f64, bool)> {
    MARGINS_MM.into_iter().flat_map(|margin| [(margin, true), (margin, false)])
}

/// A page divided into the strip and what is left for items.
struct Room {
    page: Vector<SheetMm>,
    margin_mm: f64,
    strip: Strip,
    free: Area,
}

impl Room {
    fn on(paper: Paper, margin_mm: f64, upright: bool) -> Self {
        let (width, height) = paper.size_mm();
        let Area { top_left, size } = Area::new(0.0, 0.0, width, height).inside(margin_mm);
        let taken = STRIP_MM + STRIP_GAP_MM;
        let (strip, free) = if upright {
            let below = top_left.y + size.y - STRIP_MM;
            (
                Area::new(top_left.x, below, size.x, STRIP_MM),
                Area::new(top_left.x, top_left.y, size.x, size.y - taken),
            )
        } else {
            (
                Area::new(top_left.x, top_left.y, STRIP_MM, size.y),
                Area::new(top_left.x + taken, top_left.y, size.x - taken, size.y),
            )
        };
        Self { page: Vector::new(width, height), margin_mm, strip: Strip { area: strip, upright }, free }
    }

    /// All the items that fit, their block as near to the middle of the page as the strip allows.
    fn fill(self, width: f64, height: f64) -> Layout {
        let count = |room: f64, item: f64| floor_index((room + SLACK_MM) / item);
        let columns = count(self.free.size.x, width);
        let rows = count(self.free.size.y, height);
        let block = Vector::<SheetMm>::new(float(columns) * width, float(rows) * height);
        let last = self.free.bottom_right();
        let near_middle = |page: f64, from: f64, to: f64, block: f64| {
            let centred = (page - block) / 2.0;
            if centred >= from - SLACK_MM && centred + block <= to + SLACK_MM {
                centred
            } else {
                (from + to - block) / 2.0
            }
        };
        let x = near_middle(self.page.x, self.free.top_left.x, last.x, block.x);
        let y = near_middle(self.page.y, self.free.top_left.y, last.y, block.y);
        let spot = |row: usize, column: usize| Area {
            top_left: rounded(x + float(column) * width, y + float(row) * height),
            size: Vector::new(width, height),
        };
        let spots = (0..rows).flat_map(|row| (0..columns).map(move |column| spot(row, column))).collect();
        Layout { page: self.page, margin_mm: self.margin_mm, spots, strip: self.strip }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// With the quarter inch at the sides that printers leave; a hair more, and two do.
    #[test]
    fn four_squares_of_four_inches_share_a_letter_sheet() {
        let spots = |side: f64| Layout::pack(Paper::Letter, side, side).map(|layout| layout.spots.len());
        assert_eq!([spots(101.6), spots(101.7)], [Some(4), Some(2)]);
    }
}
