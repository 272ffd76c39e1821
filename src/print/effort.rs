//! What it takes to print and cut pieces and squares, one way or the other: sheets, how many of them in color, cuts, minutes.

use super::cuts::lines;
use super::layout::Layout;
use super::{PrintError, Sources, edge_cards, levels, pieces, questions, squares, strips};
use crate::frame::{float, round_index};
use crate::plan::settings::{Flip, Join};
use crate::plan::{Printed, PrintedSquare, Settings};

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
    let is_printed = |square: &PrintedSquare| !printed.grid.is_kept_free(square.cell);
    let squares = printed.squares.iter().filter(|square| is_printed(square)).cloned().collect();
    let printed = &Printed { squares, ..printed.clone() };
    let (layouts, in_colour) = match join {
        Join::Beside => {
            let strips = of_strips(settings, printed)?;
            let sheets = strips.0.sheets(strips.1);
            (vec![strips], sheets)
        }
        Join::Apart => {
            let pieces = of_pieces(settings, printed)?;
            let sheets = pieces.0.sheets(pieces.1);
            (vec![of_squares(settings, printed)?, pieces], sheets)
        }
    };
    let sheets = layouts.iter().map(|(layout, items)| layout.sheets(*items)).sum();
    let cuts = cuts(&layouts);
    Ok(Effort { sheets, in_colour, cuts, minutes: minutes(cuts) })
}

/// Items that are cut out: where they lie on a sheet, and how many there are.
type Items = (Layout, usize);

fn of_strips(settings: &Settings, printed: &Printed) -> Result<Items, PrintError> {
    let places = strips::places(&settings.print, printed, settings.code.corner)?;
    Ok((places.layout, printed.squares.len()))
}

fn of_squares(settings: &Settings, printed: &Printed) -> Result<Items, PrintError> {
    let division = squares::division(&settings.print, printed)?;
    Ok((division.layout, printed.squares.len() * division.across * division.down))
}

/// Backs on sheets of their own are printed, cut and glued like fronts.
fn of_pieces(settings: &Settings, printed: &Printed) -> Result<Items, PrintError> {
    let places = pieces::places(&settings.print, printed)?;
    let backs = settings.print.flip == Flip::None && !places.beside;
    let sheets = places.layout.sheets(printed.squares.len()) * if backs { 2 } else { 1 };
    let on_a_sheet = places.layout.spots.len();
    Ok((places.layout, if backs { sheets * on_a_sheet } else { printed.squares.len() }))
}

/// Cuts with a trimmer through stacks of [`STACK`] sheets; sheets whose items lie alike are one stack.
fn cuts(layouts: &[Items]) -> usize {
    let of_stack = |alike: &[Items]| {
        let sheets: usize = alike.iter().map(|(layout, items)| layout.sheets(*items)).sum();
        let fullest = alike.iter().max_by_key(|(_, items)| *items);
        let lines = fullest.map_or(0, |(own, items)| lines(&own.spots[..own.spots.len().min(*items)]));
        sheets.div_ceil(STACK) * lines
    };
    layouts.chunk_by(|(one, _), (other, _)| one == other).map(of_stack).sum()
}

/// Cuts that a document of the kit takes; none for what is read as it is.
///
/// # Errors
/// [`PrintError::TooLarge`] where its items do not fit the paper.
pub(super) fn cuts_of(sources: &Sources, document: &str) -> Result<usize, PrintError> {
    let (settings, printed) = (sources.settings, sources.printed);
    Ok(cuts(&match document {
        strips::NAME => vec![of_strips(settings, printed)?],
        "squares" => vec![of_squares(settings, printed)?],
        "pieces" => vec![of_pieces(settings, printed)?],
        "edge-cards" => edge_cards::layouts(sources)?,
        "levels" => vec![levels::layout(sources)?],
        "questions" => questions::layouts(sources)?,
        _ => Vec::new(),
    }))
}

/// Minutes that so many cuts take.
#[must_use]
pub fn minutes(cuts: usize) -> usize {
    round_index(float(cuts) * MINUTES_A_CUT)
}
