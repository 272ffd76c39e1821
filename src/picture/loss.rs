//! What of a picture its pencils do not show, and how few of them show all of it.
//!
//! ```text
//!   picture ──▶ areas of like colour ──▶ each in the pencil that looks most like it
//!               share of the picture     CIEDE2000 to it above 15, share above 1 %: lost
//! ```

use std::ops::RangeInclusive;

pub use super::choose::SHARE_TO_SHOW;
use super::choose::{Colours, nearest};
use super::colour::{Seen, ciede2000};

/// Maximum colour difference, CIEDE2000, of such an area to its pencil. Two colours that people call by different names, as orange
/// and red or two greens of a hill, lie 15 to 25 apart; a pencil's stroke itself varies by 10, [`super::warnings::ALIKE`]. Common
/// practice, no source.
pub const APART: f64 = 15.0;
/// Numbers of pencils among which the picture itself decides: fewer make no picture, more are hard to lay out on a table.
pub const FITTING: RangeInclusive<usize> = 4..=9;

/// Area of like colour that its pencil does not show.
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct Lost {
    /// Its own colour.
    pub srgb: [u8; 3],
    /// Number of the pencil that it is drawn with.
    pub pencil: usize,
    /// Its share of the picture, 0 … 1; more than [`SHARE_TO_SHOW`].
    pub share: f64,
    /// Its colour difference to the pencil, CIEDE2000; more than [`APART`].
    pub apart: f64,
}

/// What some pencils do not show of a picture's colours, the largest area first.
#[must_use]
pub fn lost(areas: &[(Seen, f64)], pencils: &[[u8; 3]]) -> Vec<Lost> {
    let seen: Vec<Seen> = pencils.iter().map(|srgb| Seen::of(*srgb)).collect();
    let mut lost: Vec<Lost> = areas
        .iter()
        .filter(|(_, share)| *share > SHARE_TO_SHOW && !pencils.is_empty())
        .map(|(area, share)| {
            let (srgb, pencil) = (area.to_srgb(), nearest(*area, &seen));
            Lost { srgb, pencil, share: *share, apart: ciede2000(srgb, pencils[pencil]) }
        })
        .filter(|lost| lost.apart > APART)
        .collect();
    lost.sort_by(|a, b| b.share.total_cmp(&a.share));
    lost
}

/// The fewest pencils of some numbers that show all of a picture; where none does, those that lose the smallest share of it, of equals
/// the fewest.
#[must_use]
pub fn fitting(colours: &Colours, numbers: RangeInclusive<usize>) -> Vec<[u8; 3]> {
    let areas = colours.areas();
    let mut best: Option<(f64, Vec<[u8; 3]>)> = None;
    for count in numbers {
        let pencils = colours.choose(count);
        let share: f64 = lost(areas, &pencils).iter().map(|lost| lost.share).sum();
        if best.as_ref().is_none_or(|(least, _)| share < *least) {
            best = Some((share, pencils));
        }
        if best.as_ref().is_some_and(|(least, _)| *least == 0.0) {
            break;
        }
    }
    best.map(|(_, pencils)| pencils).unwrap_or_default()
}

/// The fewest pencils of some numbers that show all of a picture; `None` where none does.
#[must_use]
pub fn keeping(colours: &Colours, numbers: RangeInclusive<usize>) -> Option<usize> {
    let pencils = fitting(colours, numbers);
    lost(colours.areas(), &pencils).is_empty().then_some(pencils.len())
}
