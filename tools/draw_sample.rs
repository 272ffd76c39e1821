//! Draws the picture of the sample event: hot-air balloons over a river with a bridge, in six flat colours.
//!
//! `cargo run --release --example draw-sample -- samples/harbour-evening/picture.png`
//!
//! Every pixel asks the layers from front to back who covers it; the first to answer gives its colour. No pixel is mixed,
//! so there are exactly six colours. What is too fine for a piece is then taken out, as `new` does it, so that `new` leaves the
//! sample as it is.

use std::error::Error;
use std::fs::File;
use std::io::BufWriter;

use everysquare::frame::float;
use everysquare::picture::{Fit, Pencils, Picture, Wanted, reduce};
use everysquare::plan::Grid;
use everysquare::words::Words;
use image::codecs::png::{CompressionType, FilterType, PngEncoder};
use image::{Rgb, RgbImage};

const WIDTH: u32 = 960;
const HEIGHT: u32 = 768;

const CREAM: Rgb<u8> = Rgb([0xff, 0xf3, 0xd6]);
const SKY: Rgb<u8> = Rgb([0xa6, 0xd8, 0xee]);
const BLUE: Rgb<u8> = Rgb([0x1f, 0x4e, 0x8c]);
const GREEN: Rgb<u8> = Rgb([0x3f, 0x96, 0x58]);
const YELLOW: Rgb<u8> = Rgb([0xf7, 0xbc, 0x3b]);
const RED: Rgb<u8> = Rgb([0xd2, 0x47, 0x3c]);

/// A layer: the colour it has at a place, if it covers it.
type Layer = fn(f64, f64) -> Option<Rgb<u8>>;

/// From front to back.
const LAYERS: [Layer; 9] = [boat, near_banks, bridge, balloons, far_banks, river, hills, clouds, sun];

fn main() -> Result<(), Box<dyn Error>> {
    let path = std::env::args().nth(1).ok_or("say where to write the picture")?;
    let picture = RgbImage::from_fn(WIDTH, HEIGHT, |x, y| {
        let (x, y) = (f64::from(x) + 0.5, f64::from(y) + 0.5);
        LAYERS.iter().find_map(|layer| layer(x, y)).unwrap_or(SKY)
    });
    let grid = Grid::usual(10, 8);
    let wanted = Wanted { grid: &grid, fit: Fit::Crop, pencils: Pencils::Chosen(6) };
    let picture = reduce(Picture { pixels: picture }, &wanted, &Words::english())?.few.to_picture().pixels;
    let file = BufWriter::new(File::create(path)?);
    let encoder = PngEncoder::new_with_quality(file, CompressionType::Best, FilterType::NoFilter);
    picture.write_with_encoder(encoder)?;
    Ok(())
}

fn in_ellipse(x: f64, y: f64, cx: f64, cy: f64, rx: f64, ry: f64) -> bool {
    ((x - cx) / rx).powi(2) + ((y - cy) / ry).powi(2) <= 1.0
}

/// Whether a place lies on the same side of all edges of a polygon that bulges everywhere.
fn in_polygon(x: f64, y: f64, corners: &[(f64, f64)]) -> bool {
    let edges = corners.iter().zip(corners.iter().cycle().skip(1));
    let mut sides = edges.map(|((ax, ay), (bx, by))| (bx - ax) * (y - ay) - (by - ay) * (x - ax) >= 0.0);
    let first = sides.next();
    sides.all(|side| Some(side) == first)
}

/// One balloon: its middle, its radius, its stripes from left to right, the band around it if there is one, and the colours
/// of its ropes and of its basket.
struct Balloon {
    x: f64,
    y: f64,
    radius: f64,
    stripes: &'static [Rgb<u8>],
    band: Option<Rgb<u8>>,
    ropes: Rgb<u8>,
    basket: Rgb<u8>,
}

const BALLOONS: [Balloon; 4] = [
    Balloon {
        x: 262.0,
        y: 196.0,
        radius: 150.0,
        stripes: &[RED, YELLOW, RED, CREAM, RED, YELLOW, RED],
        band: None,
        ropes: CREAM,
        basket: YELLOW,
    },
    Balloon {
        x: 716.0,
        y: 150.0,
        radius: 100.0,
        stripes: &[BLUE, CREAM, BLUE, CREAM, BLUE],
        band: Some(RED),
        ropes: BLUE,
        basket: BLUE,
    },
    Balloon {
        x: 500.0,
        y: 92.0,
        radius: 54.0,
        stripes: &[YELLOW, GREEN, YELLOW, GREEN, YELLOW],
        band: None,
        ropes: BLUE,
        basket: BLUE,
    },
    Balloon {
        x: 880.0,
        y: 246.0,
        radius: 46.0,
        stripes: &[RED, CREAM, RED],
        band: None,
        ropes: BLUE,
        basket: BLUE,
    },
];

fn balloons(x: f64, y: f64) -> Option<Rgb<u8>> {
    BALLOONS
        .iter()
        .find_map(|balloon| balloon.at((x - balloon.x) / balloon.radius, (y - balloon.y) / balloon.radius))
}

impl Balloon {
    /// Half its width at a height, both in radii, from the crown at -1 to the mouth at 1.25.
    fn half_width(down: f64) -> Option<f64> {
        match down {
            ..-1.0 => None,
            ..0.35 => Some((1.0 - down * down).sqrt()),
            ..1.25 => {
                // A cubic that goes on where the circle ends and runs straight into the mouth.
                let t = (down - 0.35) / 0.9;
                let (from, slope, to, end) = (0.936_75, -0.336, 0.2, -0.85);
                let (t2, t3) = (t * t, t * t * t);
                Some(
                    from * (2.0 * t3 - 3.0 * t2 + 1.0)
                        + slope * (t3 - 2.0 * t2 + t)
                        + to * (3.0 * t2 - 2.0 * t3)
                        + end * (t3 - t2),
                )
            }
            _ => None,
        }
    }

    fn at(&self, x: f64, y: f64) -> Option<Rgb<u8>> {
        if (1.25..1.33).contains(&y) && x.abs() < 0.2 {
            return Some(self.ropes);
        }
        let rope = (0.14 + 0.05 * (1.5 - y) / 0.2 - x.abs()).abs() < 0.018;
        if (1.33..1.5).contains(&y) && rope {
            return Some(self.ropes);
        }
        if (1.5..1.76).contains(&y) && x.abs() < 0.17 - 0.1 * (y - 1.5) {
            return Some(if y < 1.56 { RED } else { self.basket });
        }
        let half = Self::half_width(y).filter(|half| x.abs() <= *half)?;
        if let Some(band) = self.band {
            // A zigzag around the widest part.
            let around = (x / half).asin() / std::f64::consts::PI + 0.5;
            let tooth = ((around * 10.0).fract() - 0.5).abs();
            if (y - 0.02).abs() < 0.12 + 0.24 * tooth {
                return Some(band);
            }
        }
        // Stripes are equally wide around the balloon, narrower towards its edge as seen from here.
        let around = (x / half).asin() / std::f64::consts::PI + 0.5;
        let count = self.stripes.len();
        let stripe = (0..count).find(|i| around * float(count) <= float(*i + 1)).unwrap_or(count - 1);
        Some(self.stripes[stripe])
    }
}

fn clouds(x: f64, y: f64) -> Option<Rgb<u8>> {
    let puffs = [
        (450.0, 262.0, 62.0, 22.0),
        (492.0, 240.0, 46.0, 34.0),
        (540.0, 260.0, 60.0, 24.0),
        (20.0, 92.0, 70.0, 26.0),
        (62.0, 70.0, 44.0, 34.0),
        (900.0, 66.0, 66.0, 24.0),
        (930.0, 44.0, 44.0, 34.0),
        (60.0, 330.0, 66.0, 20.0),
        (96.0, 314.0, 40.0, 26.0),
    ];
    puffs.iter().any(|(cx, cy, rx, ry)| in_ellipse(x, y, *cx, *cy, *rx, *ry)).then_some(CREAM)
}

fn sun(x: f64, y: f64) -> Option<Rgb<u8>> {
    let away = (x - 610.0).hypot(y - 424.0);
    match away {
        ..96.0 => Some(YELLOW),
        ..112.0 => None,
        ..124.0 => Some(YELLOW),
        _ => None,
    }
}

fn hills(x: f64, y: f64) -> Option<Rgb<u8>> {
    let far = 424.0 - 46.0 * (x / 118.0).sin() - 18.0 * (x / 47.0 + 1.0).sin();
    (y > far && y < 560.0).then_some(BLUE)
}

fn far_banks(x: f64, y: f64) -> Option<Rgb<u8>> {
    let left = 452.0 + (x / 430.0).powi(2) * 92.0 + 10.0 * (x / 60.0).sin();
    let right = 470.0 + ((960.0 - x) / 400.0).powi(2) * 74.0 + 9.0 * (x / 54.0).cos();
    let shore = 566.0;
    if y > shore || (y < left && y < right) {
        return None;
    }
    // A field of corn on either bank, and trees along the water.
    let trees =
        [(60.0, 536.0), (112.0, 548.0), (326.0, 556.0), (832.0, 546.0), (910.0, 536.0), (728.0, 560.0)];
    if trees.iter().any(|(cx, cy)| in_ellipse(x, y, *cx, *cy - 22.0, 20.0, 30.0)) {
        return Some(BLUE);
    }
    let fields: [&[(f64, f64)]; 2] = [
        &[(150.0, 500.0), (270.0, 508.0), (330.0, 538.0), (170.0, 536.0)],
        &[(740.0, 520.0), (850.0, 496.0), (880.0, 514.0), (770.0, 540.0)],
    ];
    if fields.iter().any(|corners| in_polygon(x, y, corners)) {
        return Some(YELLOW);
    }
    Some(GREEN)
}

/// Behind the bridge and before it, with the sun's path and ripples on it.
fn river(x: f64, y: f64) -> Option<Rgb<u8>> {
    if y < 540.0 {
        return None;
    }
    let row = ((y - 540.0) / 19.0).floor();
    let within = (y - 540.0) - row * 19.0;
    let shift = (row * 2.4).sin() * 70.0;
    let wave = ((x + shift) / 34.0 + row * 1.7).sin();
    let path = (x - 610.0).abs() < 34.0 + 3.4 * row && within < 9.0;
    if path && wave > -0.5 {
        return Some(YELLOW);
    }
    let ripple = (6.0..11.0).contains(&within) && wave > 0.72;
    Some(if ripple { CREAM } else { SKY })
}

/// The height of the road on the bridge.
fn road(x: f64) -> f64 {
    560.0 + 0.000_16 * (x - 480.0).powi(2)
}

fn bridge(x: f64, y: f64) -> Option<Rgb<u8>> {
    let road = road(x);
    if (road - 30.0..road - 22.0).contains(&y) {
        return Some(RED);
    }
    let post = (x + 24.0).rem_euclid(48.0) < 7.0;
    if (road - 26.0..road).contains(&y) && post {
        return Some(RED);
    }
    if (road..road + 9.0).contains(&y) {
        return Some(CREAM);
    }
    let arch = |spread: f64| {
        let middles = [96.0, 352.0, 608.0, 864.0];
        middles.iter().any(|middle| in_ellipse(x, y, *middle, 692.0, 104.0 + spread, 96.0 + spread))
    };
    if y < road + 9.0 || y > 692.0 || arch(0.0) {
        return None;
    }
    Some(if arch(13.0) { CREAM } else { RED })
}

/// The foot of each pier and the two corners where we stand.
fn near_banks(x: f64, y: f64) -> Option<Rgb<u8>> {
    let foot =
        [224.0, 480.0, 736.0].iter().any(|pier| (x - pier).abs() < 38.0) && (684.0..704.0).contains(&y);
    if foot {
        return Some(BLUE);
    }
    let left = in_ellipse(x, y, 30.0, 800.0, 230.0, 96.0);
    let right = in_ellipse(x, y, 960.0, 800.0, 190.0, 84.0);
    if !left && !right {
        return None;
    }
    let flowers = [
        (60.0, 742.0),
        (120.0, 748.0),
        (180.0, 758.0),
        (24.0, 728.0),
        (860.0, 752.0),
        (914.0, 738.0),
        (950.0, 750.0),
    ];
    let flower = flowers.iter().find_map(|(cx, cy)| match (x - cx).hypot(y - cy) {
        ..3.5 => Some(YELLOW),
        ..8.5 => Some(RED),
        _ => None,
    });
    flower.or(Some(GREEN))
}

fn boat(x: f64, y: f64) -> Option<Rgb<u8>> {
    let (x, y) = (x - 346.0, y - 716.0);
    if in_polygon(x, y, &[(-62.0, 0.0), (66.0, 0.0), (46.0, 28.0), (-44.0, 28.0)]) {
        return Some(if y < 8.0 { CREAM } else { RED });
    }
    if x.abs() < 3.0 && (-112.0..0.0).contains(&y) {
        return Some(BLUE);
    }
    if in_polygon(x, y, &[(7.0, -108.0), (60.0, -12.0), (7.0, -12.0)]) {
        return Some(if (-62.0..-42.0).contains(&y) { RED } else { CREAM });
    }
    in_polygon(x, y, &[(-7.0, -96.0), (-7.0, -12.0), (-46.0, -12.0)]).then_some(YELLOW)
}
