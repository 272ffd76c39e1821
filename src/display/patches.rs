//! Colours of patches on a page, as they would be on white paper in even light: their light over that of the paper around them.

use crate::frame::{Map, PhotoPx, Point, SheetMm, Vector, float, floor_index, median};
use crate::photo::Photo;
use crate::picture::colour::{level_of_light, light_of_levels};
use crate::plan::marks::PATCH_MM;

/// Width of a patch's edge that is left out, and distance of the white beside it, in mm: blur, and colours out of register.
const EDGE_MM: f64 = 2.5;
const BESIDE_MM: f64 = 1.5;
/// Number of places along a patch's side.
const ALONG: usize = 9;

/// Colours of patches by their top left corners; white paper is 255 in each channel.
#[must_use]
pub fn patches(
    photo: &Photo,
    page_to_photo: &Map<SheetMm, PhotoPx>,
    corners: &[Point<SheetMm>],
) -> Vec<[u8; 3]> {
    let table = light_of_levels();
    let light = |corner: Point<SheetMm>, places: Vec<Vector<SheetMm>>| -> [f64; 3] {
        let seen: Vec<[u8; 3]> =
            places.into_iter().filter_map(|by| pixel(photo, page_to_photo.apply(corner + by))).collect();
        let channel = |k: usize| seen.iter().map(|own| f64::from(table[usize::from(own[k])])).collect();
        [0, 1, 2].map(|k| median(channel(k)).unwrap_or(0.0))
    };
    let colour = |corner: &Point<SheetMm>| {
        let (own, white) = (light(*corner, inside()), light(*corner, beside()));
        [0, 1, 2].map(|k: usize| level_of_light((own[k] / white[k].max(1e-4)).min(1.0)))
    };
    corners.iter().map(colour).collect()
}

fn pixel(photo: &Photo, at: Point<PhotoPx>) -> Option<[u8; 3]> {
    let whole = |value: f64| u32::try_from(floor_index(value)).ok().filter(|_| value >= 0.0);
    photo.colour.get_pixel_checked(whole(at.x)?, whole(at.y)?).map(|pixel| pixel.0)
}

/// Places within a patch, from its corner.
fn inside() -> Vec<Vector<SheetMm>> {
    let steps = || steps(EDGE_MM, PATCH_MM - EDGE_MM);
    steps().flat_map(|x| steps().map(move |y| Vector::new(x, y))).collect()
}

/// Places beside a patch, from its corner.
fn beside() -> Vec<Vector<SheetMm>> {
    let far = PATCH_MM + BESIDE_MM;
    let around = |t: f64| [(t, -BESIDE_MM), (t, far), (-BESIDE_MM, t), (far, t)];
    steps(0.0, PATCH_MM).flat_map(around).map(|(x, y)| Vector::new(x, y)).collect()
}

fn steps(from: f64, to: f64) -> impl Iterator<Item = f64> {
    (0..ALONG).map(move |k| from + (to - from) * (float(k) + 0.5) / float(ALONG))
}
