//! What one paper looks like: a visitor's drawing, tick marks, label; or a card with its name.
//!
//! The code is not in here: its modules stay exact, see `wall`.

use image::RgbImage;
use rand::RngExt;
use rand_chacha::ChaCha8Rng;

use super::chance::{Purpose, normal, spread, stream_of};
use super::glyphs;
use super::grain::Grain;
use super::hung::Hung;
use crate::frame::{ceil_index, float, floor_index, narrow, round_byte};
use crate::picture::Crop;
use crate::plan::code::{QUIET_ZONE, SIDE};
use crate::plan::{Cell, Grid, Turn};

/// Colour of unmarked paper, sRGB.
pub(super) const WHITE: [u8; 3] = [246, 244, 239];
/// Colour of the printer's black, sRGB.
pub(super) const INK: [u8; 3] = [34, 33, 35];

/// A picture of a paper, sRGB.
#[derive(Clone, Debug)]
pub(super) struct Texture {
    across: usize,
    down: usize,
    per_mm: f64,
    texels: Vec<[u8; 3]>,
}

impl Texture {
    fn paint(width_mm: f64, height_mm: f64, per_mm: f64, colour: impl Fn(f64, f64) -> [f32; 3]) -> Self {
        let (across, down) = (ceil_index(width_mm * per_mm), ceil_index(height_mm * per_mm));
        let texels = (0..across * down)
            .map(|i| {
                let (u, v) = (float(i % across) + 0.5, float(i / across) + 0.5);
                colour(u / per_mm, v / per_mm).map(|level| round_byte(f64::from(level)))
            })
            .collect();
        Self { across, down, per_mm, texels }
    }

    /// The colour at a place on the paper, in mm from its top left.
    pub fn at(&self, u: f64, v: f64) -> [u8; 3] {
        let column = floor_index(u * self.per_mm).min(self.across - 1);
        let row = floor_index(v * self.per_mm).min(self.down - 1);
        self.texels[row * self.across + column]
    }
}

/// The box of the printed code on a paper, in mm.
#[derive(Copy, Clone, Debug)]
pub(super) struct CodeBox {
    pub x: f64,
    pub y: f64,
    pub module: f64,
}

impl CodeBox {
    pub fn side(&self) -> f64 {
        float(SIDE) * self.module
    }

    /// How far a place lies outside the code's outer modules, in mm; negative within.
    pub fn distance(&self, u: f64, v: f64) -> f64 {
        let half = self.side() / 2.0;
        ((u - self.x - half).abs() - half).max((v - self.y - half).abs() - half)
    }
}

/// One visitor's hand.
#[derive(Clone, Debug)]
struct Hand {
    /// Where on the carpets of noise this paper lies, so that no two look alike.
    at: [f64; 2],
    /// How far lines wander from where they belong, in mm.
    wobble: f64,
    /// How far the whole drawing is off, in mm, and by which factor it is too big.
    shift: [f64; 2],
    zoom: f64,
    /// Across the strokes, in strokes a mm.
    across: [f64; 2],
    /// How much of the paper one layer of strokes covers, 0 … 1.
    pressure: f32,
    /// How deep the gaps between the strokes are, 0 (a felt pen) … 1.
    gaps: f32,
    /// Whether outlines are drawn.
    outlined: bool,
    /// How much the chosen pencils differ from the picture's colours: factors.
    tint: [f32; 3],
    /// How far the drawing stays from the edges, in mm.
    margin: f64,
    /// Whether the box around the code was drawn into.
    draws_into_box: bool,
}

impl Hand {
    fn of(rng: &mut ChaCha8Rng, drawn_into: f64, unsteady: f64) -> Self {
        let mut hand = Self::usual(rng, drawn_into);
        hand.wobble *= unsteady;
        hand.shift = hand.shift.map(|mm| mm * unsteady);
        hand.zoom = 1.0 + (hand.zoom - 1.0) * unsteady;
        hand.tint = hand.tint.map(|factor| 1.0 + (factor - 1.0) * narrow(unsteady));
        hand.margin *= unsteady;
        hand
    }

    fn usual(rng: &mut ChaCha8Rng, drawn_into: f64) -> Self {
        let angle = rng.random_range(0.0..std::f64::consts::PI);
        let a_mm = 1.0 / rng.random_range(1.0..2.8);
        let felt = rng.random_bool(0.2);
        Self {
            at: [rng.random_range(0.0..256.0), rng.random_range(0.0..256.0)],
            wobble: rng.random_range(1.0..4.0),
            shift: [normal(rng) * 1.5, normal(rng) * 1.5],
            zoom: 1.0 + spread(rng, 0.025, 0.06),
            across: [angle.sin() * a_mm, angle.cos() * a_mm],
            pressure: if felt { 0.97 } else { rng.random_range(0.6..1.0) },
            gaps: if felt { 0.12 } else { rng.random_range(0.4..0.85) },
            outlined: rng.random_bool(0.6),
            tint: [rng.random_range(0.9..1.1), rng.random_range(0.9..1.1), rng.random_range(0.9..1.1)],
            margin: if rng.random_bool(0.3) { rng.random_range(0.5..3.0) } else { 0.0 },
            draws_into_box: rng.random_bool(drawn_into),
        }
    }
}

/// A visitor's drawing of one piece.
struct Drawing<'a> {
    picture: &'a RgbImage,
    crop: Crop,
    grid: Grid,
    piece: Cell,
    turn: Turn,
    hand: Hand,
    grain: &'a Grain,
    code: CodeBox,
}

impl Drawing<'_> {
    /// The picture's colour where the hand meant to be; beyond the picture its outermost pixels go on.
    fn meant(&self, u: f64, v: f64) -> [u8; 3] {
        let side = self.grid.square_mm;
        let scale = self.crop.piece.value() / side;
        let corner = self.crop.piece_top_left(self.piece);
        let (u, v) = match self.turn {
            Turn::None => (u, v),
            Turn::Quarter => (v, side - u),
            Turn::Half => (side - u, side - v),
            Turn::ThreeQuarters => (side - v, u),
        };
        let (w, h) = self.picture.dimensions();
        let pixel = |at: f64, count: u32| u32::try_from(floor_index(at)).unwrap_or(count).min(count - 1);
        self.picture.get_pixel(pixel(corner.x + u * scale, w), pixel(corner.y + v * scale, h)).0
    }

    /// How much of the paper the pencil covers, 0 … 1.
    fn cover(&self, u: f64, v: f64) -> f32 {
        let hand = &self.hand;
        let [ox, oy] = hand.at;
        let bow = 0.8 * self.grain.wave(u * 0.5 + ox, v * 0.5 + oy)
            + 0.25 * f64::from(self.grain.broad(u * 3.0 + oy, v * 3.0 + ox));
        let stroke = (u * hand.across[0] + v * hand.across[1] + bow + 1000.0).fract();
        // From the gap between two strokes, 0, to the middle of one, 1.
        let ridge = narrow(1.0 - (2.0 * stroke - 1.0).abs());
        let line = ((ridge - 0.2) * 2.5).clamp(0.0, 1.0);
        let press = hand.pressure + 0.3 * self.grain.broad(u * 0.9 + oy, v * 0.9 + ox);
        let tooth = self.grain.fine(u * 3.0 + ox, v * 3.0 + oy);
        (press * (1.0 - hand.gaps * (1.0 - line)) + 0.3 * hand.gaps * tooth).clamp(0.0, 1.0)
    }

    fn colour(&self, u: f64, v: f64) -> [f32; 3] {
        let paper = WHITE.map(f32::from);
        let hand = &self.hand;
        let [ox, oy] = hand.at;
        let tremor = 0.5 * f64::from(self.grain.broad(u * 4.0 + ox, v * 4.0 + oy));
        let du = hand.wobble * self.grain.wave(u * 0.8 + ox, v * 0.8 + oy) + tremor;
        let dv = hand.wobble * self.grain.wave(u * 0.8 + oy + 77.0, v * 0.8 + ox) - tremor;
        let side = self.grid.square_mm;
        let inside = (u + du * 0.4).min(side - u + du * 0.4).min(v + dv * 0.4).min(side - v + dv * 0.4);
        // Those who leave the box white stay a little clear of it, not always quite.
        let quiet = float(QUIET_ZONE) * self.code.module;
        let clear = if hand.draws_into_box { 0.3 } else { quiet * 0.9 + 0.3 * du };
        if inside < hand.margin || self.code.distance(u, v) < clear.max(0.2) {
            return paper;
        }
        let middle = side / 2.0;
        let (u, v) = (u + hand.shift[0], v + hand.shift[1]);
        let (u, v) = (middle + (u - middle) / hand.zoom, middle + (v - middle) / hand.zoom);
        let here = self.meant(u + du, v + dv);
        let far = |a: [u8; 3]| a.iter().zip(here).map(|(a, b)| u32::from(a.abs_diff(b))).sum::<u32>() > 60;
        let edge =
            hand.outlined && (far(self.meant(u + du + 0.7, v + dv)) || far(self.meant(u + du, v + dv + 0.7)));
        if edge {
            let dark = 0.75 + 0.25 * self.grain.fine(u * 3.0, v * 3.0);
            return [0, 1, 2].map(|i| paper[i] * (1.0 - dark) + 52.0 * dark);
        }
        if here.iter().all(|level| *level > 232) {
            return paper;
        }
        let cover = self.cover(u, v);
        [0, 1, 2].map(|i| paper[i] * (1.0 - cover) + (f32::from(here[i]) * hand.tint[i]).min(250.0) * cover)
    }
}

/// Part of a paper that was drawn where somebody stopped: what lies on one side of a slanting line.
struct Part {
    along: [f64; 2],
    share: f64,
}

impl Part {
    fn of(rng: &mut ChaCha8Rng) -> Self {
        let angle = rng.random_range(0.0..std::f64::consts::TAU);
        Self { along: [angle.cos(), angle.sin()], share: rng.random_range(0.2..0.4) }
    }

    /// Whether a place, in sides of the paper, is in it.
    fn holds(&self, u: f64, v: f64) -> bool {
        let [x, y] = self.along;
        let reach = x.abs() + y.abs(); // of the paper along the way
        ((u - 0.5) * x + (v - 0.5) * y) / reach + 0.5 < self.share
    }
}

/// How much of a texel of side `texel` a line of width `width` covers whose middle is `distance` away.
fn line_cover(distance: f64, width: f64, texel: f64) -> f32 {
    let covered = (distance + texel / 2.0).min(width / 2.0) - (distance - texel / 2.0).max(-width / 2.0);
    narrow((covered / texel).clamp(0.0, 1.0))
}

/// Tick marks at the quarter points of every side, 4 mm long.
fn ticks(u: f64, v: f64, side: f64, texel: f64) -> f32 {
    let near = |at: f64| (1..4).map(|i| (at - side * f64::from(i) / 4.0).abs()).fold(side, f64::min);
    let from_edge = |at: f64| at.min(side - at);
    let on_side = |along: f64, away: f64| {
        if from_edge(away) < 4.0 { line_cover(near(along), 0.35, texel) } else { 0.0 }
    };
    on_side(u, v).max(on_side(v, u))
}

/// Text with its left top corner at the origin, dots of side `dot`.
fn written(text: &str, u: f64, v: f64, dot: f64) -> bool {
    u >= 0.0 && v >= 0.0 && glyphs::inked(text, floor_index(u / dot), floor_index(v / dot))
}

/// What a square of paper needs to know to be drawn.
pub(super) struct Commission<'a> {
    pub picture: &'a RgbImage,
    pub grid: Grid,
    pub grain: &'a Grain,
    pub code: CodeBox,
    pub per_mm: f64,
    pub seed: u64,
    pub drawn_into: f64,
    pub unsteady: f64,
}

impl Commission<'_> {
    /// A square of the wall as one visitor, the `which`th, drew it: a piece, turned so far clockwise, on the paper for `home`; or
    /// as it was printed.
    pub fn draw(&self, hung: &Hung, which: u64) -> Texture {
        let Hung { home, drawn, .. } = *hung;
        let (piece, turn) = drawn.unwrap_or((home, Turn::None));
        let part = hung.begun.then(|| Part::of(&mut stream_of(self.seed, Purpose::Begun, which)));
        let mut rng = stream_of(self.seed, Purpose::Paper, which);
        let hand = Hand::of(&mut rng, self.drawn_into, self.unsteady);
        let (picture, grid, grain, code) = (self.picture, self.grid, self.grain, self.code);
        let crop = Crop::of(picture.dimensions(), &grid);
        let drawing = Drawing { picture, crop, grid, piece, turn, hand, grain, code };
        let side = self.grid.square_mm;
        let label = self.grid.label(home);
        let dot = (code.module * 0.6).max(0.35);
        let wide = float(glyphs::width(&label)) * dot;
        let quiet = float(QUIET_ZONE) * code.module;
        let beside = if code.x > side / 2.0 {
            code.x - quiet - 1.0 - wide
        } else {
            code.x + code.side() + quiet + 1.0
        };
        let low = code.y + code.side() - float(glyphs::UP) * dot;
        let texel = 1.0 / self.per_mm;
        Texture::paint(side, side, self.per_mm, |u, v| {
            let is_drawn = drawn.is_some() && part.as_ref().is_none_or(|part| part.holds(u / side, v / side));
            let drawn = if is_drawn { drawing.colour(u, v) } else { WHITE.map(f32::from) };
            if written(&label, u - beside, v - low, dot) {
                return INK.map(f32::from);
            }
            let frame = 0.25 * line_cover((code.distance(u, v) - quiet).abs(), 0.2, texel);
            let mark = (0.7 * ticks(u, v, side, texel)).max(frame);
            drawn.map(|level| level * (1.0 - mark) + 60.0 * mark)
        })
    }
}

/// A card of a size with its name, centred at a place, in dots of a side.
pub(super) fn card(size: (f64, f64), per_mm: f64, name: &str, centre: (f64, f64), dot: f64) -> Texture {
    let left = centre.0 - float(glyphs::width(name)) * dot / 2.0;
    let top = centre.1 - float(glyphs::UP) * dot / 2.0;
    Texture::paint(size.0, size.1, per_mm, |u, v| {
        if written(name, u - left, v - top, dot) { INK.map(f32::from) } else { WHITE.map(f32::from) }
    })
}
