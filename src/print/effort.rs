//! What it takes to print and cut pieces and squares, one way or the other: sheets, how many of them in color, cuts, minutes.

use super::cuts::lines;
use super::layout::Layout;
use super::{PrintError, pieces, squares, strips};
use crate::frame::{float, round_index};
use crate::plan::settings::{Flip, Join};
use crate::plan::{Printed, Settings};

/// Number of sheets that a trimmer cuts at once. Common practice, no source.
pub const STACK: usize = 10;
/// Minutes for a cut through a stack: to put it straight, to press, to cut. Rule of thumb, no source.
const MINUTES_A_CUT: f64 = 0.75;

/// What it takes.
#[derive(Copy, Clone, Debug, PartialEq, Eq)]
pub struct Effort {
    /// Sheets of paper.
    pub sheets: usize,
    /// How many of them need color.
    pub in_colour: usize,
    /// Cuts with a trimmer through stacks of [`STACK`] sheets.
    pub cuts: usize,
    /// Minutes of cutting.
    pub minutes: usize,
}

/// What it takes where pieces and squares are joined so.
///
/// # Errors
/// [`PrintError::TooLarge`] where they do not fit the paper.
pub fn effort(settings: &Settings, printed: &Printed, join: Join) -> Result<Effort, PrintError> {
    let count = printed.squares.len();
    let (layouts, in_colour): (Vec<(Layout, usize)>, usize) = match join {
        Join::Beside => {
            let places = strips::places(&settings.print, printed, settings.code.corner)?;
            let sheets = places.layout.sheets(count);
            (vec![(places.layout, count)], sheets)
        }
        Join::Apart => {
            let division = squares::division(&settings.print, printed)?;
            let places = pieces::places(&settings.print, printed)?;
            let backs = settings.print.flip == Flip::None && !places.beside;
            let sheets = places.layout.sheets(count) * if backs { 2 } else { 1 };
            let parts = division.across * division.down;
            // backs on sheets of their own are printed, cut and glued like fronts
            let pieces = (places.layout, count * if backs { 2 } else { 1 });
            (vec![(division.layout, count * parts), pieces], sheets)
        }
    };
    let sheets = layouts.iter().map(|(layout, items)| layout.sheets(*items)).sum();
    let cuts = |(layout, items): &(Layout, usize)| {
        layout.sheets(*items).div_ceil(STACK) * lines(&layout.spots[..layout.spots.len().min(*items)])
    };
    let cuts: usize = layouts.iter().map(cuts).sum();
    Ok(Effort { sheets, in_colour, cuts, minutes: round_index(float(cuts) * MINUTES_A_CUT) })
}
