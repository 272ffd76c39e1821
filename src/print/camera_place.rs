//! Where to stand with a phone so that its photo shows the whole wall, and how many photos a large wall takes.
//!
//! ```text
//!   ◀────── wall ──────▶          the wall fills FRAME_FILLED of the frame's width
//!   ╲                  ╱           or height, whichever is reached first
//!     ╲              ╱
//!       ╲  distance╱
//!         ╲      ╱
//!          phone
//! ```

use crate::frame::{ceil_index, float};
use crate::plan::settings::{FRAME_FILLED, PHOTO_PX, PX_A_MODULE};
use crate::plan::{Grid, Settings};

/// The lens of a phone's main camera as a focal length on 36 × 24 mm film, in mm. From memory: 24 to 28 on most phones.
const FOCAL_MM: f64 = 26.0;
/// Long and short side of a frame of 4 : 3 with the diagonal of 36 × 24 mm film, in mm.
const FRAME_MM: [f64; 2] = [34.6, 26.0];
/// A part of the way that is forgiven: a wall for which the modules were chosen so exactly takes one photo.
const SLACK: f64 = 0.97;
/// Squares that two neighbouring photos both show.
const SHARED_SQUARES: f64 = 2.0;
/// Nearer than this nobody stands, in mm: the cards around a small wall are to be seen too, and phones stay sharp.
const NEAREST_MM: f64 = 500.0;
/// More photos than this are no routine.
const MOST_PHOTOS: usize = 20;

/// Where to stand, and how often to press.
#[derive(Copy, Clone, Debug, PartialEq)]
pub(super) struct CameraPlace {
    /// From the wall to the phone, in mm, rounded up to 100 mm.
    pub distance_mm: f64,
    /// Photos side by side (or one above the other) that show all of the wall.
    pub photos: usize,
    /// The height of the wall's middle over the floor, in mm.
    pub height_mm: f64,
    /// Whether the phone is held sideways.
    pub sideways: bool,
}

impl CameraPlace {
    /// For a wall whose lower edge is `hang_mm` over the floor.
    pub fn of(settings: &Settings, hang_mm: f64) -> Self {
        let Grid { square_mm, .. } = settings.grid;
        let size = settings.grid.size();
        let (long, short) = (size.x.max(size.y), size.x.min(size.y));
        let part =
            |photos: usize| (long + SHARED_SQUARES * square_mm * (float(photos) - 1.0)) / float(photos);
        let px_a_module = |photos: usize| {
            let (a, b) = (part(photos).max(short), part(photos).min(short));
            settings.code.module_mm * (PHOTO_PX[0] / a).min(PHOTO_PX[1] / b) * FRAME_FILLED
        };
        let enough = |photos: &usize| px_a_module(*photos) >= PX_A_MODULE * SLACK;
        // more photos than squares along the wall would share all they show
        let most = (ceil_index(long / square_mm / SHARED_SQUARES)).clamp(1, MOST_PHOTOS);
        let photos = (1..=most).find(enough).unwrap_or(most);
        let (a, b) = (part(photos).max(short), part(photos).min(short));
        let away = ((a / FRAME_MM[0]).max(b / FRAME_MM[1]) * FOCAL_MM / FRAME_FILLED).max(NEAREST_MM);
        Self {
            distance_mm: float(ceil_index(away / 100.0)) * 100.0,
            photos,
            height_mm: hang_mm + size.y / 2.0,
            sideways: if photos == 1 { size.x >= size.y } else { part(photos) >= short },
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plan::Tag;

    fn place(columns: usize, rows: usize) -> CameraPlace {
        let grid = Grid::usual(columns, rows);
        CameraPlace::of(&Settings::new("Open evening".to_owned(), Tag::from_number(7), grid), 600.0)
    }

    #[test]
    fn a_usual_wall_takes_one_photo_from_a_step_away_and_a_long_one_several() {
        let usual = place(10, 8);
        assert_eq!((usual.distance_mm, usual.photos, usual.sideways), (1_200.0, 1, true));
        assert_eq!(usual.height_mm, 600.0 + 508.0);
        assert!(!place(8, 10).sideways);
        assert!(place(40, 1).photos > 1);
        assert_eq!(place(1, 1).photos, 1);
    }
}
