//! Pictures of things that are no wall: each fills any size, its details stay as large in pixels.

use everysquare::plan::Modules;
use image::{Rgb, RgbImage};
use qrcode::{Color, EcLevel, QrCode, Version};

/// A name, and the grey level at a pixel.
pub type Texture = (&'static str, fn(u32, u32) -> f64);

/// Everything that is drawn here.
pub const TEXTURES: [Texture; 15] = [
    ("noise of single pixels", |x, y| 255.0 * chance(x, y, 1)),
    ("black and white of 2 px", |x, y| if chance(x / 2, y / 2, 2) < 0.5 { 15.0 } else { 240.0 }),
    ("black and white of 3 px", |x, y| if chance(x / 3, y / 3, 3) < 0.5 { 15.0 } else { 240.0 }),
    ("clouds", clouds),
    ("wood", wood),
    ("brick", brick),
    ("hatching", hatching),
    ("a page of text", text),
    ("chequerboards", chequers),
    ("bar codes", bars),
    ("rings scattered", rings_scattered),
    ("rings 14 modules apart", rings_apart),
    ("large codes", large_codes),
    ("small codes of nobody", small_codes),
    ("code-like squares without a middle", hollow),
];

/// A texture as a photo shows it.
pub fn draw((_, level): Texture, width: u32, height: u32) -> RgbImage {
    RgbImage::from_fn(width, height, |x, y| {
        let grain = 6.0 * (chance(x, y, 99) - 0.5);
        Rgb([byte(level(x, y) + grain); 3])
    })
}

/// A level as a pixel holds it.
pub fn byte(level: f64) -> u8 {
    level.round().clamp(0.0, 255.0) as u8
}

/// A number from 0 to 1 that belongs to a place.
pub fn chance(x: u32, y: u32, which: u32) -> f64 {
    let mut mixed =
        x.wrapping_mul(0x9e37_79b9) ^ y.wrapping_mul(0x85eb_ca6b) ^ which.wrapping_mul(0xc2b2_ae35);
    for _ in 0..3 {
        mixed ^= mixed >> 15;
        mixed = mixed.wrapping_mul(0x2c1b_3c6d);
    }
    f64::from(mixed) / f64::from(u32::MAX)
}

/// The same, smoothly from place to place: one hill or valley every `size` pixels.
fn smooth(x: f64, y: f64, size: f64, which: u32) -> f64 {
    let (x, y) = (x / size, y / size);
    let (i, j) = (x.floor(), y.floor());
    let ease = |t: f64| t * t * (3.0 - 2.0 * t);
    let (fx, fy) = (ease(x - i), ease(y - j));
    let at = |di: f64, dj: f64| chance((i + di) as u32, (j + dj) as u32, which);
    let row = |dj: f64| at(0.0, dj) + (at(1.0, dj) - at(0.0, dj)) * fx;
    row(0.0) + (row(1.0) - row(0.0)) * fy
}

fn clouds(x: u32, y: u32) -> f64 {
    let (x, y) = (f64::from(x), f64::from(y));
    (0..7).map(|k| smooth(x, y, f64::from(2 << k), k) * f64::from(2 << k)).sum::<f64>()
}

fn wood(x: u32, y: u32) -> f64 {
    let (fx, fy) = (f64::from(x), f64::from(y));
    let board = x / 150;
    let bent = fx + 40.0 * smooth(fx, fy, 300.0, board) + 3.0 * smooth(fx, fy / 12.0, 6.0, 40 + board);
    let knot = ((fx - 150.0 * f64::from(board) - 75.0) / 1.0).hypot((fy % 700.0 - 350.0) / 2.5);
    let ring = if knot < 60.0 { (knot * 0.9).sin() } else { (bent * 0.45).sin() };
    let gap = if x % 150 < 2 { 90.0 } else { 0.0 };
    165.0 + 45.0 * ring - gap
}

fn brick(x: u32, y: u32) -> f64 {
    let row = y / 24;
    let along = x + if row.is_multiple_of(2) { 0 } else { 32 };
    let mortar = y % 24 < 4 || along % 64 < 4;
    let own = 60.0 * chance(along / 64, row, 7);
    let rough = 40.0 * smooth(f64::from(x), f64::from(y), 3.0, 8);
    if mortar { 190.0 + rough } else { 70.0 + own + rough }
}

/// Pencil strokes, in squares of 90 px that each have a direction, a distance between strokes and a pressure of their own.
fn hatching(x: u32, y: u32) -> f64 {
    let (i, j) = (x / 90, y / 90);
    let (fx, fy) = (f64::from(x), f64::from(y));
    let stroke = |which: u32| {
        let turn = 3.2 * chance(i, j, which);
        let apart = 3.0 + 7.0 * chance(i, j, which + 1);
        let bent = fx * turn.cos() + fy * turn.sin() + 3.0 * smooth(fx, fy, 25.0, which);
        ((bent / apart * std::f64::consts::TAU).sin() + 0.3).clamp(0.0, 0.8)
    };
    let grain = 0.4 + 0.6 * smooth(fx, fy, 2.0, 14);
    242.0 - grain * (130.0 * stroke(10) + if chance(i, j, 12) < 0.6 { 130.0 * stroke(20) } else { 0.0 })
}

/// Letters of no script: 5 × 7 dots of 2 px, of which those on a stroke are black.
fn text(x: u32, y: u32) -> f64 {
    let (column, row) = (x / 14, y / 24);
    let (dx, dy) = (x % 14 / 2, y % 24 / 2);
    let letter = (chance(column, row, 30) * 26.0) as u32;
    let word_gap = chance(column, row, 31) < 0.18;
    let margin = x % 1000 < 90 || y % 1400 < 120;
    let black = dx < 5 && dy < 7 && !word_gap && !margin && {
        let stem = dx == letter % 5 || dy == letter % 7;
        stem || chance(dx + 5 * dy, letter, 32) < 0.25
    };
    if black { 25.0 } else { 235.0 }
}

fn chequers(x: u32, y: u32) -> f64 {
    let size = 1 + (x / 160 + 3 * (y / 160)) % 9;
    if (x / size + y / size).is_multiple_of(2) { 20.0 } else { 235.0 }
}

fn bars(x: u32, y: u32) -> f64 {
    let (band, label) = (y / 110, x / 260);
    let inside = y % 110 < 80 && x % 260 > 30;
    let wide = 2 + (chance(label, band, 41) * 3.0) as u32;
    if inside && chance(x / wide, band, 42) < 0.5 { 20.0 } else { 238.0 }
}

/// Whether a place, in modules from the middle, is dark in a finder pattern.
fn ring(dx: f64, dy: f64) -> bool {
    let away = dx.abs().max(dy.abs());
    away < 1.5 || (2.5..3.5).contains(&away)
}

fn rings_scattered(x: u32, y: u32) -> f64 {
    let (i, j) = (x / 22, y / 22);
    let module = 2.0 + 0.8 * chance(i, j, 50);
    let at = |p: u32, k: u32, which: u32| {
        f64::from(p) + 0.5 - f64::from(k * 22 + 11) - 3.0 * (chance(i, j, which) - 0.5)
    };
    if ring(at(x, i, 51) / module, at(y, j, 52) / module) { 20.0 } else { 235.0 }
}

fn rings_apart(x: u32, y: u32) -> f64 {
    let at = |p: u32| (f64::from(p % 28) - 13.5) / 2.0;
    if ring(at(x), at(y)) { 20.0 } else { 235.0 }
}

thread_local! {
    static LARGE: Vec<Vec<bool>> = (0..8_u32)
        .map(|n| colours(&QrCode::with_version(format!("a page of the library's catalogue, {n}"), Version::Normal(7), EcLevel::H).unwrap()))
        .collect();
    static SMALL: Vec<Modules> =
        (0..40).map(|n| Modules::encode(&format!("SHELF {n}")).unwrap()).collect();
}

fn colours(code: &QrCode) -> Vec<bool> {
    code.to_colors().into_iter().map(|colour| colour == Color::Dark).collect()
}

/// Codes of version 7, 45 modules of 3 px.
fn large_codes(x: u32, y: u32) -> f64 {
    let (i, j) = (x / 159, y / 159);
    let module = |p: u32| (p % 159 / 3).checked_sub(4).filter(|k| *k < 45);
    let dark = module(x).zip(module(y)).is_some_and(|(column, row)| {
        LARGE.with(|codes| codes[(i + 3 * j) as usize % codes.len()][(row * 45 + column) as usize])
    });
    if dark { 25.0 } else { 235.0 }
}

/// Codes of version 1, as ours are, that say something else: 2 px a module, 29 modules apart.
fn small_codes(x: u32, y: u32) -> f64 {
    let (i, j) = (x / 58, y / 58);
    let module = |p: u32| (p % 58 / 2).checked_sub(4).filter(|k| *k < 21);
    let dark = module(x).zip(module(y)).is_some_and(|(column, row)| {
        SMALL.with(|codes| codes[(i + 7 * j) as usize % codes.len()].dark(column as usize, row as usize))
    });
    if dark { 25.0 } else { 235.0 }
}

/// Three finder patterns where a code has them, and chance where it would say something.
fn hollow(x: u32, y: u32) -> f64 {
    let (i, j) = (x / 62, y / 62);
    let (mx, my) = (f64::from(x % 62) / 2.0 - 5.0, f64::from(y % 62) / 2.0 - 5.0);
    let corner = |cx: f64, cy: f64| (mx - cx).abs().max((my - cy).abs()) < 4.5;
    let patterns = [(3.5, 3.5), (17.5, 3.5), (3.5, 17.5)];
    let dark = if let Some((cx, cy)) = patterns.into_iter().find(|(cx, cy)| corner(*cx, *cy)) {
        ring(mx - cx, my - cy)
    } else {
        let inside = (0.0..21.0).contains(&mx) && (0.0..21.0).contains(&my);
        inside
            && chance(
                (mx.floor() + 64.0 * f64::from(i)) as u32,
                (my.floor() + 64.0 * f64::from(j)) as u32,
                60,
            ) < 0.5
    };
    if dark { 25.0 } else { 235.0 }
}
