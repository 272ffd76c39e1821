//! Cards around the wall that are in sight: those whose code is where it belongs.

use rayon::prelude::*;

use crate::frame::{Point, WallMm, float, floor_index};
use crate::photo::Photo;
use crate::plan::Printed;
use crate::plan::cards::{Card, CardKind, EDGE_CARD_MOST_MM, RING_MM};
use crate::plan::code::SIDE;
use crate::read::PhotoReading;

use super::Tiles;

/// Search around a card's place: number of steps to each side, and a step in modules.
const STEPS: (i8, f64) = (5, 0.9);
/// Minimum correlation of a code's modules with what is printed.
///
/// Codes of cards have 441 modules of 1.5 mm or more, so that chance stays below 0.25.
const ALIKE: f64 = 0.6;
/// Maximum distance of a card from its place, in mm.
const ASKEW_MM: f64 = 8.0;

/// Whether each tile, row by row, belongs to a card that is in sight.
pub(super) fn in_sight(photo: &Photo, reading: &PhotoReading, printed: &Printed, tiles: Tiles) -> Vec<bool> {
    let seen: Vec<&Card> = printed.cards.par_iter().filter(|card| is_seen(photo, reading, card)).collect();
    let mut cards = vec![false; tiles.count()];
    for card in seen {
        let [from, to] = outline(card, tiles.grid.square_mm, printed);
        for (tile, is_card) in cards.iter_mut().enumerate() {
            let at = tiles.wall(float(tile % tiles.columns) + 0.5, float(tile / tiles.columns) + 0.5);
            *is_card |= at.x > from.x && at.y > from.y && at.x < to.x && at.y < to.y;
        }
    }
    cards
}

/// Upper left and lower right corner of a card on the wall, widened by [`ASKEW_MM`].
fn outline(card: &Card, square_mm: f64, printed: &Printed) -> [Point<WallMm>; 2] {
    let (half, long) = (RING_MM / 2.0, square_mm.min(EDGE_CARD_MOST_MM) / 2.0);
    let shift = crate::plan::cards::edge_code_shift_mm(printed.grid.square_mm);
    let (middle, reach) = match card.kind {
        CardKind::Corner => (card.centre, (half, half)),
        CardKind::Column => (Point::new(card.centre.x - shift, card.centre.y), (long, half)),
        CardKind::Row => (Point::new(card.centre.x, card.centre.y - shift), (half, long)),
    };
    let (across, down) = (reach.0 + ASKEW_MM, reach.1 + ASKEW_MM);
    [Point::new(middle.x - across, middle.y - down), Point::new(middle.x + across, middle.y + down)]
}

fn is_seen(photo: &Photo, reading: &PhotoReading, card: &Card) -> bool {
    let shifts = -STEPS.0..=STEPS.0;
    let mut places: Vec<(i8, i8)> =
        shifts.clone().flat_map(|x| shifts.clone().map(move |y| (x, y))).collect();
    places.sort_by_key(|(x, y)| i32::from(*x).pow(2) + i32::from(*y).pow(2));
    places.into_iter().any(|(x, y)| {
        let step = STEPS.1 * card.module_mm;
        alike(photo, reading, card, (f64::from(x) * step, f64::from(y) * step)) >= ALIKE
    })
}

/// Correlation of a card's modules, dark as 1, with the photo's darkness at its place shifted by (`right`,
/// `down`) mm.
fn alike(photo: &Photo, reading: &PhotoReading, card: &Card, (right, down): (f64, f64)) -> f64 {
    let [mut n, mut sum_a, mut sum_b, mut aa, mut bb, mut ab] = [0.0; 6];
    for i in (0..SIDE * SIDE).step_by(2) {
        let from = |at: usize| (float(at) + 0.5 - float(SIDE) / 2.0) * card.module_mm;
        let place = Point::new(card.centre.x + right + from(i % SIDE), card.centre.y + down + from(i / SIDE));
        let p = reading.camera.wall_to_photo(place);
        if !(p.x >= 0.0 && p.y >= 0.0) {
            continue;
        }
        let at = |value: f64| u32::try_from(floor_index(value)).unwrap_or(u32::MAX);
        let Some(pixel) = photo.colour.get_pixel_checked(at(p.x), at(p.y)) else { continue };
        let dark = 255.0 - f64::from(pixel.0[1]);
        let wanted = if card.modules.dark(i % SIDE, i / SIDE) { 1.0 } else { 0.0 };
        n += 1.0;
        sum_a += dark;
        sum_b += wanted;
        aa += dark * dark;
        bb += wanted * wanted;
        ab += dark * wanted;
    }
    let spread = (n * aa - sum_a * sum_a) * (n * bb - sum_b * sum_b);
    if spread > 0.0 { (n * ab - sum_a * sum_b) / spread.sqrt() } else { 0.0 }
}
