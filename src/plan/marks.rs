//! Marks of a sheet that is photographed by itself: four finder patterns without a code, at its corners, tell where its every millimetre
//! lies in the photo; a code tells which sheet it is and which way up.
//!
//! ```text
//!   a page to draw at home     the test page
//!   ▣ ┌──────────┐ ▣           ┌──────━━──────┐
//!     │  square  │             │ ▣    ▒▒    ▣ │     ▣ a mark: a finder pattern of a QR code (ISO/IEC 18004), its modules
//!     │        ▒ │             ┃ ■ ■ ■ ■      ┃       [`MODULE_MM`] wide     ▒ the code
//!   ▣ └──────────┘ ▣           │ ■ ■ ■ ■ ■ ■  │     ■ patches: the printer's inks, the event's pencils
//!                              │ ▣          ▣ │     ━ bars, as near to the edges as anything in a kit
//!                              └──────━━──────┘
//! ```

use super::settings::{Choice, Paper};
use crate::frame::{Frame, Point, SheetMm, SquareMm, Vector, float, floor_index};

/// Side of a mark's module, in mm: a phone's photo of a letter sheet, sent through a messenger (1600 pixels), has 5 pixels for it.
pub const MODULE_MM: f64 = 1.5;
/// Side of a mark, in mm: seven modules.
pub const SIDE_MM: f64 = 7.0 * MODULE_MM;
/// Distance of a mark's centre from the cut edges of the square that it stands beside, both ways, in mm: the white around it stays clear
/// of the cut.
pub const BESIDE_MM: f64 = 9.0;
/// Distance of a mark's centre from the edges of a test page, in mm: beyond what printers cannot reach. The lower ones stand above the
/// ruler.
const INSET_MM: f64 = 20.0;
const ABOVE_RULER_MM: f64 = 33.0;

/// Centres of the marks around a square of a side, clockwise from the top left.
#[must_use]
pub fn around_square(side_mm: f64) -> [Point<SquareMm>; 4] {
    corners(-BESIDE_MM, -BESIDE_MM, side_mm + BESIDE_MM, side_mm + BESIDE_MM)
}

/// Centres of the marks of a test page, clockwise from the top left.
#[must_use]
pub fn of_test_page(paper: Paper) -> [Point<SheetMm>; 4] {
    let (width, height) = paper.size_mm();
    corners(INSET_MM, INSET_MM, width - INSET_MM, height - ABOVE_RULER_MM)
}

/// Corners of an upright rectangle, clockwise from the top left.
fn corners<F: Frame>(left: f64, top: f64, right: f64, bottom: f64) -> [Point<F>; 4] {
    [(left, top), (right, top), (right, bottom), (left, bottom)].map(|(x, y)| Point::new(x, y))
}

/// Side of a test page. What stands for it in its code's text follows the tag.
#[derive(Copy, Clone, Debug, PartialEq, Eq)]
pub enum TestSide {
    /// The side that is printed first.
    Front,
    /// Its back.
    Back,
}

impl Choice for TestSide {
    const ALL: &'static [(Self, &'static str)] = &[(Self::Front, ".F"), (Self::Back, ".B")];
}

/// Side of a module of a test page's code, in mm.
pub const TEST_CODE_MODULE_MM: f64 = 1.5;
/// Centre of a test page's code, in mm from the upper edge; it stands in the middle.
const TEST_CODE_DOWN_MM: f64 = 40.0;

/// Centre of a test page's code.
#[must_use]
pub fn test_code(paper: Paper) -> Point<SheetMm> {
    Point::new(paper.size_mm().0 / 2.0, TEST_CODE_DOWN_MM)
}

/// Corners of a test page's code, clockwise from its top left.
#[must_use]
pub fn test_code_corners(paper: Paper) -> [Point<SheetMm>; 4] {
    let (Point { x, y, .. }, half) = (test_code(paper), 10.5 * TEST_CODE_MODULE_MM);
    corners(x - half, y - half, x + half, y + half)
}

/// Patches of the printer's inks, as pixels: cyan, magenta, yellow, black.
pub const INKS: [[u8; 3]; 4] = [[0, 174, 239], [236, 0, 140], [255, 236, 0], [20, 20, 20]];
/// Side of a patch, and the distance from one to the next, in mm.
pub const PATCH_MM: f64 = 12.0;
const PATCH_STEP_MM: f64 = 18.0;
/// Where the rows of patches begin, in mm from the upper edge: the printer's inks, the event's pencils.
const INKS_DOWN_MM: f64 = 66.0;
const PENCILS_DOWN_MM: f64 = 88.0;

/// Top left corners of the patches of a test page: the four inks, then one for each pencil, in rows.
#[must_use]
pub fn test_patches(paper: Paper, pencils: usize) -> Vec<Point<SheetMm>> {
    let from = INSET_MM + SIDE_MM;
    let across = floor_index((paper.size_mm().0 - 2.0 * from) / PATCH_STEP_MM).max(1);
    let row = |first: f64, count: usize| {
        (0..count).map(move |k| {
            let place = Vector::new(float(k % across), float(k / across)) * PATCH_STEP_MM;
            Point::new(from, first) + place
        })
    };
    row(INKS_DOWN_MM, INKS.len()).chain(row(PENCILS_DOWN_MM, pencils)).collect()
}

/// Distance of a bar from the edge of the paper, its thickness and its length, in mm.
pub const BAR_MM: [f64; 3] = [6.4, 1.2, 30.0];

/// Ends of the middle lines of a test page's bars: top, right, bottom, left.
#[must_use]
pub fn test_bars(paper: Paper) -> [[Point<SheetMm>; 2]; 4] {
    let (width, height) = paper.size_mm();
    let [inset, thick, long] = BAR_MM;
    let (in_mm, half) = (inset + thick / 2.0, long / 2.0);
    let (x, y) = (width / 2.0, height / 2.0);
    let bar = |a: (f64, f64), b: (f64, f64)| [Point::new(a.0, a.1), Point::new(b.0, b.1)];
    [
        bar((x - half, in_mm), (x + half, in_mm)),
        bar((width - in_mm, y - half), (width - in_mm, y + half)),
        bar((x - half, height - in_mm), (x + half, height - in_mm)),
        bar((in_mm, y - half), (in_mm, y + half)),
    ]
}
