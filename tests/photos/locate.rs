//! Codes of other sizes, as a tilted camera sees them: how many modules they have, where their corners lie, what they say.

use everysquare::frame::{Map, Module, PhotoPx, Point, ceil_index, float, floor_index, round_byte};
use everysquare::photo::Luma;
use everysquare::read::any_code::locate;
use everysquare::read::finders;
use qrcode::{Color, EcLevel, QrCode};

/// A code as a tilted camera sees it, `px` pixels a module at its top left; its corners.
fn tilted(code: &QrCode, px: f64) -> (Luma, [Point<PhotoPx>; 4]) {
    let side = float(code.width());
    let to_photo = |x: f64, y: f64| {
        let far = 1.0 + (0.12 * x + 0.08 * y) / side;
        Point::<PhotoPx>::new(90.0 + px * (1.2 * x - 0.15 * y) / far, 80.0 + px * (0.2 * x + 1.3 * y) / far)
    };
    let corners = [(0.0, 0.0), (side, 0.0), (side, side), (0.0, side)].map(|(x, y)| to_photo(x, y));
    let modules =
        [(0.0, 0.0), (side, 0.0), (side, side), (0.0, side)].map(|(x, y)| Point::<Module>::new(x, y));
    let back = Map::from_four(corners, modules).unwrap();
    let colours = code.to_colors();
    let dark = |x: f64, y: f64| {
        let at = back.apply(Point::new(x, y));
        let inside = at.x >= 0.0 && at.y >= 0.0 && at.x < side && at.y < side;
        inside && colours[floor_index(at.y) * code.width() + floor_index(at.x)] == Color::Dark
    };
    let size = ceil_index(1.5 * px * side) + 200;
    let part = |k: usize| (float(k) + 0.5) / 4.0;
    let level = |i: usize| {
        let count =
            (0..16).filter(|k| dark(float(i % size) + part(k % 4), float(i / size) + part(k / 4))).count();
        round_byte(225.0 - 12.0 * float(count))
    };
    (Luma { width: size, height: size, grey: (0..size * size).map(level).collect() }, corners)
}

#[test]
fn tilted_codes_of_many_sizes_are_decoded_and_their_corners_found() {
    for (text, px) in [
        ("K7M-D7", 5.0),
        ("A POSTER IN THE HALL", 4.0),
        ("https://example.org/evenings/2026/autumn?from=poster", 4.0),
    ] {
        let code = QrCode::with_error_correction_level(text, EcLevel::Q).unwrap();
        let (luma, corners) = tilted(&code, px);
        let found = locate(&luma, &finders::find(&luma));
        assert_eq!(found.len(), 1, "{text}: {found:?}");
        assert_eq!((found[0].side, found[0].text.as_deref()), (code.width(), Some(text)));
        for (seen, truth) in found[0].corners.iter().zip(corners) {
            let off = seen.distance(truth).value() / px;
            assert!(off < 0.4, "{text}: a corner is {off} modules off");
        }
    }
}
