//! Several photos of one wall become one reading: each cell from the photo that shows it best.
//!
//! A named square ranks before a bare wall, that before a code that cannot be read, and all of them before a cell out of sight; of
//! equals the surer, then the photo with more pixels a module. Where two photos surely show different things, the cell is contradicted
//! and nothing is said of it.

use super::reading::{Apart, CellReading, PhotoReading, Sight, WallReading};

/// Certainty from which two photos that name two squares for one cell contradict each other.
const SURE: f64 = 0.9;

/// Joins photos of one event's wall; every one of them has all cells, in the same order.
#[must_use]
pub fn several(photos: Vec<PhotoReading>) -> WallReading {
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
    use crate::plan::{Cell, Turn};

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
    fn no_photos_make_no_cells() {
        assert!(several(Vec::new()).cells.is_empty());
    }
}
