//! The order in which pieces are handed out, from the first visitor to the last.
//!
//! ```text
//!   first                   middle                            last
//!   ├───────────────────────┼─────────────────────────────────┼──────────────────────┤
//!   long ones, of those     what gives the picture away,      what is missed least,
//!   that carry much of it   then the rest by what they carry  plain ones at the end
//! ```
//!
//! What a piece carries is what is lost when it is missing: by how much the picture without it, its place left white, is less like the
//! whole picture (structural similarity, [`super::structure`]). The first half of the order carries as much as any half can that leaves
//! plain pieces for the end, so that an evening that ends too early still leaves a picture; long pieces come first within their band, so that nobody is kept to the end.

use image::{Rgb, RgbImage, imageops};
use rayon::prelude::*;

use super::structure::{REACH, ssim};
use crate::frame::{float, floor_index};
use crate::plan::Level;

/// Pixels along a piece's side by which it is looked at: the window of structural similarity then spans two thirds of a piece, so that
/// what counts is what a visitor sees from across the room.
pub const PIECE_PX: usize = 16;
/// Share of the pieces that are held back for the middle because they carry most. Common practice, no source.
const GIVE_AWAY: f64 = 0.125;
/// Number of bands.
const BANDS: usize = 3;

/// When a piece is handed out.
#[derive(Copy, Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Band {
    /// In the first third.
    First,
    /// In the second third.
    Middle,
    /// In the last third.
    Last,
    /// After all others, where more visitors come than the picture has pieces for.
    Reserve,
    /// Not at all: its spot on the wall is kept free.
    Never,
}

impl Band {
    /// Those of the picture's own pieces, the first first.
    pub const ALL: [Self; BANDS] = [Self::First, Self::Middle, Self::Last];

    /// Its name in plan.json.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Self::First => "first",
            Self::Middle => "middle",
            Self::Last => "last",
            Self::Reserve => "reserve",
            Self::Never => "never",
        }
    }

    /// What stands for it on the back of a piece.
    #[must_use]
    pub fn sign(self) -> &'static str {
        match self {
            Self::First => "1",
            Self::Middle => "2",
            Self::Last => "3",
            Self::Reserve => "+",
            Self::Never => "",
        }
    }

    /// The band of a place in an order of so many pieces.
    #[must_use]
    pub fn of(place: usize, pieces: usize) -> Self {
        Self::ALL[(place * BANDS / pieces.max(1)).min(BANDS - 1)]
    }
}

/// For each piece, row by row from the top, what is lost when it is missing: 1 minus the mean structural similarity.
///
/// `whole` is the picture with [`PIECE_PX`] pixels to a piece's side, `columns` pieces wide.
#[must_use]
pub fn losses(whole: &RgbImage, columns: usize) -> Vec<f64> {
    let [width, height] = [whole.width(), whole.height()].map(|side| usize::try_from(side).unwrap_or(0));
    let rows = height / PIECE_PX;
    // places that the mean leaves out, as the mean of the whole does
    let inner = |all: usize| if all > 2 * REACH { REACH..all - REACH } else { 0..all };
    let (across, down) = match (inner(width), inner(height)) {
        (across, down) if across.len() < width && down.len() < height => (across, down),
        _ => (0..width, 0..height),
    };
    let count = float(across.len() * down.len());
    let loss = |piece: usize| {
        // a window reaches so far beyond the piece, and what such a window sees as far again
        let around = |at: usize, reach: usize, all: usize| {
            (at * PIECE_PX).saturating_sub(reach)..((at + 1) * PIECE_PX + reach).min(all)
        };
        let (column, row) = (piece % columns, piece / columns);
        let (x, y) = (around(column, 2 * REACH, width), around(row, 2 * REACH, height));
        let px = |side: usize| u32::try_from(side).unwrap_or(0);
        let part = imageops::crop_imm(whole, px(x.start), px(y.start), px(x.len()), px(y.len())).to_image();
        let mut without = part.clone();
        for (i, j) in (0..PIECE_PX).flat_map(|j| (0..PIECE_PX).map(move |i| (i, j))) {
            let at = (px(column * PIECE_PX + i - x.start), px(row * PIECE_PX + j - y.start));
            without.put_pixel(at.0, at.1, Rgb([255; 3]));
        }
        let map = ssim(&part, &without).map(|alike| alike.map).unwrap_or_default();
        let seen = |range: std::ops::Range<usize>, inner: &std::ops::Range<usize>| {
            range.start.max(inner.start)..range.end.min(inner.end)
        };
        let columns = seen(around(column, REACH, width), &across);
        let rows = seen(around(row, REACH, height), &down);
        let lost = rows.flat_map(|j| columns.clone().map(move |i| (i, j)));
        lost.map(|(i, j)| 1.0 - f64::from(map[(j - y.start) * x.len() + (i - x.start)])).sum::<f64>() / count
    };
    (0..columns * rows).into_par_iter().map(loss).collect()
}

/// The pieces in the order in which they are handed out, by their levels and what they carry.
#[must_use]
pub fn order(levels: &[Level], losses: &[f64]) -> Vec<usize> {
    let count = levels.len().min(losses.len());
    let third = count / BANDS;
    let by_loss = |a: &usize, b: &usize| losses[*b].total_cmp(&losses[*a]).then(a.cmp(b));
    let long_first = |a: &usize, b: &usize| levels[*b].cmp(&levels[*a]).then(by_loss(a, b));
    let mut all: Vec<usize> = (0..count).collect();
    // what carries most; plain ones after all others: they have no outline, and anybody cuts one out of paper
    let is_plain = |piece: &usize| levels[*piece] == Level::Plain;
    all.sort_by(|a, b| is_plain(a).cmp(&is_plain(b)).then(by_loss(a, b)));
    let mut last = all.split_off(count - third);
    let others = levels[..count].iter().filter(|level| **level != Level::Plain).count();
    let give_away = floor_index(GIVE_AWAY * float(count)).min(others.saturating_sub(third));
    let mut first = all.split_off(give_away);
    let mut middle = all;
    let rest = first.split_off(third.min(first.len()));
    middle.sort_by(long_first);
    first.sort_by(long_first);
    last.sort_by(long_first);
    [first, middle, rest, last].concat()
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn each_piece_is_handed_out_once_and_half_of_them_carry_what_half_can(
            pieces in proptest::collection::vec((0_usize..4, 0.0_f64..1.0), 1..200),
        ) {
            let levels: Vec<Level> = pieces.iter().map(|(level, _)| Level::ALL[*level]).collect();
            let losses: Vec<f64> = pieces.iter().map(|(_, loss)| *loss).collect();
            let order = order(&levels, &losses);
            let mut sorted = order.clone();
            sorted.sort_unstable();
            prop_assert_eq!(sorted, (0..pieces.len()).collect::<Vec<_>>());
            let half = pieces.len().div_ceil(2);
            let carried: f64 = order[..half].iter().map(|piece| losses[*piece]).sum();
            let mut best: Vec<(bool, f64)> =
                levels.iter().zip(&losses).map(|(level, loss)| (*level == Level::Plain, *loss)).collect();
            best.sort_by(|a, b| a.0.cmp(&b.0).then(b.1.total_cmp(&a.1)));
            prop_assert!(carried >= best[..half].iter().map(|(_, loss)| loss).sum::<f64>() - 1e-9);
            let plain = levels.iter().filter(|level| **level == Level::Plain).count();
            let is_plain = |piece: &usize| levels[*piece] == Level::Plain;
            prop_assert!(!order[..pieces.len() - plain].iter().any(is_plain), "plain ones last");
            let third = pieces.len() / 3;
            prop_assert!(order[..third].is_sorted_by(|a, b| levels[*a] >= levels[*b]), "the long ones first");
        }
    }
}
