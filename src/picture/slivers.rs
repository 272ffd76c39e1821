//! Slivers: a colour of which a piece has so little that nobody would redraw it, most often what hangs over a cut line.
//!
//! ```text
//!      │                │          the area's edge runs along the cut line there: whoever gets the left piece
//!   ▁▁▁│██████   ▶   ▁▁▁│██████    sees no hair of a colour that its list of pencils does not name,
//!     ▐│██████          │██████    and "how many pieces need red?" has the answer that one counts
//!      │                │
//! ```

use std::collections::BTreeSet;

use rayon::prelude::*;

use super::clean::give_away;
use super::colour::Seen;
use super::complexity::Shapes;
use super::facts::MOST_SHAPE_PX;
use super::raster::Raster;
use crate::frame::{float, floor_index};

/// Gives slivers to the areas beside them on their piece. Returns whether there were any.
///
/// `numbers` are those of pencils, in whole pieces of `piece_px` pixels; `pencils` their colours, by number.
pub(super) fn give_away_slivers(numbers: &mut Raster<u8>, piece_px: usize, pencils: &[Seen]) -> bool {
    let (across, down) = (numbers.width / piece_px.max(1), numbers.height() / piece_px.max(1));
    let first = |piece: usize| (piece / across * numbers.width + piece % across) * piece_px;
    let firsts: Vec<usize> = (0..across * down).map(first).collect();
    let rid = firsts
        .par_iter()
        .filter_map(|first| Some((*first, rid_of_slivers(numbers, *first, piece_px, pencils)?)));
    let rid: Vec<(usize, Raster<u8>)> = rid.collect();
    for (first, piece) in &rid {
        for (y, row) in piece.values.chunks(piece_px).enumerate() {
            let from = first + y * numbers.width;
            numbers.values[from..from + piece_px].copy_from_slice(row);
        }
    }
    !rid.is_empty()
}

/// A piece without its slivers, by its first pixel; `None` where it has none.
fn rid_of_slivers(
    numbers: &Raster<u8>,
    first: usize,
    piece_px: usize,
    pencils: &[Seen],
) -> Option<Raster<u8>> {
    let rows = (0..piece_px).map(|y| first + y * numbers.width);
    let values = rows.flat_map(|from| &numbers.values[from..from + piece_px]).copied().collect();
    let mut piece = Raster { width: piece_px, values };
    // the pixels that the list of pencils follows from, see `facts.rs`
    let count = piece_px.clamp(1, MOST_SHAPE_PX);
    let at = |i: usize| floor_index((float(i) + 0.5) * float(piece_px) / float(count));
    let places = (0..count).flat_map(|y| (0..count).map(move |x| at(y) * piece_px + at(x)));
    let sampled: Vec<u8> = places.map(|place| piece.values[place]).collect();
    let listed: BTreeSet<u8> =
        Shapes::of(&sampled, count, count).counted().iter().map(|region| region.colour).collect();
    let kept: Vec<bool> = piece.values.iter().map(|number| listed.contains(number)).collect();
    (!kept.iter().all(|kept| *kept) && give_away(&mut piece, kept, pencils)).then_some(piece)
}

#[cfg(test)]
mod tests {
    use super::*;

    const SIDE: usize = 96;

    /// Two pieces side by side; the right one's colour 1 hangs over by some pixels.
    fn hanging_over(by: usize) -> Raster<u8> {
        let values = (0..2 * SIDE * SIDE).map(|at| u8::from(at % (2 * SIDE) >= SIDE - by)).collect();
        Raster { width: 2 * SIDE, values }
    }

    fn pencils() -> [Seen; 2] {
        [[255; 3], [200, 20, 20]].map(Seen::of)
    }

    #[test]
    fn what_hangs_over_by_a_hair_ends_at_the_cut_line() {
        let mut numbers = hanging_over(1);
        assert!(give_away_slivers(&mut numbers, SIDE, &pencils()));
        assert_eq!(numbers, hanging_over(0));
        assert!(!give_away_slivers(&mut numbers, SIDE, &pencils()), "once is enough");
    }

    #[test]
    fn what_can_be_redrawn_stays() {
        let mut numbers = hanging_over(12);
        assert!(!give_away_slivers(&mut numbers, SIDE, &pencils()));
        assert_eq!(numbers, hanging_over(12));
    }

    #[test]
    fn a_hair_of_a_colour_that_is_listed_stays() {
        let mut numbers = hanging_over(1);
        for place in (0..SIDE * SIDE)
            .map(|at| at / SIDE * 2 * SIDE + at % SIDE)
            .filter(|place| place / (2 * SIDE) < 40)
        {
            numbers.values[place] = 1;
        }
        let before = numbers.clone();
        assert!(!give_away_slivers(&mut numbers, SIDE, &pencils()));
        assert_eq!(numbers, before);
    }

    #[test]
    fn a_piece_of_nothing_but_hairs_keeps_its_largest_colour() {
        let values = (0..SIDE * SIDE).map(|at| u8::from(at % 3 == 0)).collect();
        let mut numbers = Raster { width: SIDE, values };
        assert!(give_away_slivers(&mut numbers, SIDE, &pencils()));
        assert!(numbers.values.iter().all(|number| *number == 0));
    }
}
