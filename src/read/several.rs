//! Several photos of one wall become one reading: each cell from the photo that shows it best.
//!
//! A named square ranks before a bare wall, that before a code that cannot be read, and all of them before a cell out of sight; of
//! equals the surer, then the photo with more pixels a module. Where two photos surely show different things, the cell is contradicted
//! and nothing is said of it.

use std::collections::{BTreeMap, BTreeSet};

use super::reading::{Apart, CellReading, PhotoReading, Sight, WallReading};
use crate::plan::{Cell, Turn};

/// Certainty from which two photos that name two squares for one cell contradict each other.
const SURE: f64 = 0.9;

/// Joins photos of one event's wall, each with one reading; all of them have all cells, in the same order.
#[must_use]
pub fn several(photos: Vec<PhotoReading>) -> WallReading {
    together(photos.into_iter().map(|photo| vec![photo]).collect())
}

/// Joins photos of one event's wall, each with a reading of every part of the wall that it shows; all readings have all cells, in the same
/// order.
#[must_use]
pub fn together(photos: Vec<Vec<PhotoReading>>) -> WallReading {
    let numbered = photos.into_iter().zip(0..);
    let photos: Vec<PhotoReading> = numbered
        .flat_map(|(parts, photo)| parts.into_iter().map(move |part| PhotoReading { photo, ..part }))
        .collect();
    let photos = without_other_parts(photos);
    let count = photos.iter().map(|p| p.cells.len()).min().unwrap_or(0);
    let mut cells = Vec::with_capacity(count);
    let mut contradictions = Vec::new();
    for at in 0..count {
        let views: Vec<CellReading> = photos
            .iter()
            .enumerate()
            .map(|(photo, reading)| CellReading { photo, ..reading.cells[at].clone() })
            .collect();
        if contradict(&views) {
            contradictions.extend(views.first().map(|view| view.cell));
        }
        let worth = |view: &CellReading| (told(view), view.certainty, photos[view.photo].px_per_module);
        // of equals the first photo's
        let best = views.into_iter().rev().max_by(|a, b| {
            let (a, b) = (worth(a), worth(b));
            a.0.cmp(&b.0).then(a.1.total_cmp(&b.1)).then(a.2.total_cmp(&b.2))
        });
        cells.extend(best);
    }
    let apart = Apart::together(photos.iter().map(|photo| &photo.apart), &cells);
    WallReading { photos, cells, contradictions, apart }
}

/// The readings without squares that hang on another part of the wall and only seem to hang in places of this one: side by side, all as
/// far from where they belong, or alone, and seen at home in another reading.
fn without_other_parts(mut photos: Vec<PhotoReading>) -> Vec<PhotoReading> {
    let shifted: Vec<BTreeMap<Cell, (i64, i64)>> = photos.iter().map(shifts).collect();
    let at_home: Vec<BTreeSet<Cell>> = shifted
        .iter()
        .map(|shifts| shifts.iter().filter(|(_, by)| **by == (0, 0)).map(|(cell, _)| *cell).collect())
        .collect();
    for (index, shifts) in shifted.iter().enumerate() {
        let others: BTreeSet<Cell> = at_home
            .iter()
            .enumerate()
            .filter(|(other, _)| *other != index)
            .flat_map(|(_, own)| own)
            .copied()
            .collect();
        let elsewhere =
            |cell: &Cell, by: (i64, i64)| home(*cell, by).is_some_and(|home| others.contains(&home));
        let moved = |cell: &Cell, by: (i64, i64)| by != (0, 0) && elsewhere(cell, by);
        let beside = |cell: &Cell, by: (i64, i64)| {
            let next = STEPS.iter().filter_map(|step| home(*cell, *step));
            let next: Vec<Cell> = next.collect();
            next.iter().any(|next| shifts.get(next) == Some(&by) && moved(next, by))
                || next.iter().all(|next| !shifts.contains_key(next))
        };
        let out: Vec<Cell> = (shifts.iter())
            .filter(|(cell, by)| moved(cell, **by) && beside(cell, **by))
            .map(|(cell, _)| *cell)
            .collect();
        for own in photos[index].cells.iter_mut().filter(|own| out.contains(&own.cell)) {
            *own = CellReading { sight: Sight::Unseen, certainty: 0.0, corners: None, ..own.clone() };
        }
    }
    photos
}

/// Rows down and columns to the right of the four neighbours of a cell.
const STEPS: [(i64, i64); 4] = [(0, 1), (1, 0), (0, -1), (-1, 0)];

/// How far each upright square hangs from where it belongs: rows down, columns to the right.
fn shifts(photo: &PhotoReading) -> BTreeMap<Cell, (i64, i64)> {
    let step = |from: usize, to: usize| i64::try_from(to).ok()?.checked_sub(i64::try_from(from).ok()?);
    let shift = |seen: &CellReading| match seen.sight {
        Sight::Square { home, turn: Turn::None } => {
            Some((seen.cell, (step(home.row, seen.cell.row)?, step(home.column, seen.cell.column)?)))
        }
        _ => None,
    };
    photo.cells.iter().filter_map(shift).collect()
}

/// The cell from which this one is so far away; `None` beyond the wall's first row and column.
fn home(cell: Cell, (down, right): (i64, i64)) -> Option<Cell> {
    let back = |at: usize, by: i64| usize::try_from(i64::try_from(at).ok()? - by).ok();
    Some(Cell { row: back(cell.row, down)?, column: back(cell.column, right)? })
}

/// Rank of a view by how much it tells: a square most, a cell out of sight least. A bare wall beyond the squares of a photo says less
/// than a square that another shows there, read or not.
fn told(view: &CellReading) -> u8 {
    match &view.sight {
        Sight::Square { .. } => 5,
        Sight::Stranger { .. } => 4,
        Sight::Empty if view.is_beyond() => 1,
        Sight::Empty => 3,
        Sight::Unread => 2,
        Sight::Unseen => 0,
    }
}

/// Whether two photos surely show different things in one cell: something was moved between them.
fn contradict(views: &[CellReading]) -> bool {
    let sure: Vec<&CellReading> = views.iter().filter(|v| v.certainty >= SURE && told(v) >= 3).collect();
    sure.iter().any(|a| sure.iter().any(|b| a.sight != b.sight))
}

#[cfg(test)]
mod tests {
    use super::super::lens::Lens;
    use super::super::reading::Camera;
    use super::*;
    use crate::frame::Map;

    fn photo(sights: &[(Sight, f64)]) -> PhotoReading {
        let cell = |column| Cell { row: 0, column };
        let cells = sights.iter().enumerate().map(|(at, (sight, certainty))| CellReading {
            cell: cell(at),
            sight: sight.clone(),
            certainty: *certainty,
            corners: None,
            photo: 0,
        });
        let lens = Lens::straight(100.0, 100.0);
        let camera = Camera { wall_to_straight: Map::scale_then_shift(1.0, 0.0, 0.0), lens };
        PhotoReading {
            photo: 0,
            width: 100,
            height: 100,
            codes_read: 0,
            camera,
            mirrored: false,
            px_per_module: 2.0,
            worst_shift_mm: 0.0,
            cells: cells.collect(),
            apart: Apart::default(),
        }
    }

    fn square(column: usize) -> Sight {
        Sight::Square { home: Cell { row: 0, column }, turn: Turn::None }
    }

    #[test]
    fn a_named_square_wins_over_a_cell_out_of_sight() {
        let left = photo(&[(square(0), 0.99), (Sight::Unseen, 1.0), (Sight::Unread, 0.8)]);
        let right = photo(&[(Sight::Unseen, 1.0), (square(1), 0.97), (Sight::Empty, 0.8)]);
        let wall = several(vec![left, right]);
        assert_eq!(
            wall.cells.iter().map(|c| &c.sight).collect::<Vec<_>>(),
            [&square(0), &square(1), &Sight::Empty]
        );
        assert_eq!(wall.cells.iter().map(|c| c.photo).collect::<Vec<_>>(), [0, 1, 1]);
        assert!(wall.contradictions.is_empty());
    }

    #[test]
    fn two_squares_in_one_cell_are_a_contradiction() {
        let wall = several(vec![photo(&[(square(0), 0.99)]), photo(&[(square(3), 0.95)])]);
        assert_eq!(wall.contradictions, [Cell { row: 0, column: 0 }]);
        assert_eq!(wall.cells[0].sight, square(0));
    }

    #[test]
    fn squares_of_another_board_that_seem_to_hang_here_were_not_moved() {
        // in the first photo squares 2 and 3 seem to hang a column farther left; the second shows them at home, and others there
        let first = photo(&[(square(0), 0.99), (square(2), 0.99), (square(3), 0.99), (Sight::Unseen, 1.0)]);
        let unseen = || (Sight::Unseen, 1.0);
        let second = photo(&[unseen(), (square(1), 0.99), (square(2), 0.99), (square(3), 0.99)]);
        let wall = several(vec![first.clone(), second]);
        assert_eq!(
            wall.cells.iter().map(|c| &c.sight).collect::<Vec<_>>(),
            [&square(0), &square(1), &square(2), &square(3)]
        );
        assert!(wall.contradictions.is_empty());
        // by itself the first is believed
        assert_eq!(several(vec![first]).cells[1].sight, square(2));
    }

    #[test]
    fn no_photos_make_no_cells() {
        assert!(several(Vec::new()).cells.is_empty());
    }
}
