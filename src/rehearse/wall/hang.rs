//! Putting papers up: each where it belongs but for a few mm and degrees, and strips of tape over its edges.

use rand::RngExt;
use rand::seq::SliceRandom;
use rand_chacha::ChaCha8Rng;

use super::layer::{Bend, Body, Layer, Of, Place, Sheet};
use crate::frame::float;
use crate::picture::{Crop, Picture};
use crate::plan::cards::{EDGE_CODE_SHIFT_MM, RING_MM};
use crate::plan::code::SIDE;
use crate::plan::{Card, CardKind, Cell, Printed};
use crate::rehearse::boards::Boards;
use crate::rehearse::camera::Camera;
use crate::rehearse::chance::{Purpose, spread, stream, stream_of};
use crate::rehearse::grain::Grain;
use crate::rehearse::hung::{Condition, Hung};
use crate::rehearse::model;
use crate::rehearse::options::{Cards, Hanging, Options};
use crate::rehearse::paper::{self, CodeBox, Commission, INK, WHITE};

/// How far a square is misplaced at most, in mm each way, and tilted, in degrees.
const MOST_MM: f64 = 8.0;
const MOST_DEGREES: f64 = 4.0;
/// Texels for each pixel of the photo along a line, so that a sample seldom shows a texel's side.
const TEXELS_A_PIXEL: f64 = 1.3;

/// All layers from the lowest to the topmost: cards, then squares in an order by chance, each with its tape.
pub(super) fn layers(
    printed: &Printed,
    picture: &Picture,
    hung: &[Option<Hung>],
    options: &Options,
    (boards, camera): (&Boards, &Camera),
    grain: &Grain,
) -> Vec<Layer> {
    let per_mm = texels_per_mm(boards, camera);
    let code = CodeBox { x: printed.code_top_left.x, y: printed.code_top_left.y, module: printed.module_mm };
    let enlarged = model::enlarged(&picture.pixels, &printed.grid);
    let squares = Squares {
        printed,
        boards,
        options,
        commission: Commission {
            picture: &enlarged,
            grid: printed.grid,
            grain,
            code,
            per_mm,
            seed: options.seed,
            drawn_into: options.hanging.drawn_into,
            unsteady: options.unsteady,
        },
    };
    let cells: Vec<Cell> = printed.grid.cells().collect();
    let sheets = squares.sheets(&cells, hung);
    let codes: Vec<[f64; 2]> =
        sheets.iter().flatten().map(|layer| layer.place.on_wall(code_middle(&code))).collect();
    let mut order: Vec<(usize, Layer)> =
        sheets.into_iter().enumerate().filter_map(|(i, sheet)| Some((i, sheet?))).collect();
    order.shuffle(&mut stream(options.seed, Purpose::Hanging));
    let mut layers = cards(printed, boards, options, per_mm);
    let pieces = Pieces { picture, crop: picture.crop(&printed.grid) };
    let usual = TAPES[[0, 0, 1, 2][stream(options.seed, Purpose::Tape).random_range(0..4)]];
    for (index, sheet) in order {
        let place = sheet.place;
        let mut rng = stream_of(options.seed, Purpose::Tape, number(index + 1));
        layers.push(sheet);
        if options.hanging.tape {
            layers.extend(strips(&place, &code, &codes, usual, &mut rng));
        }
        if hung[index].as_ref().is_some_and(|square| square.condition == Condition::Covered) {
            layers.push(over_the_code(&place, &code, &mut rng));
        }
        if let Some(square) = hung[index].as_ref().filter(|square| square.condition == Condition::Stub) {
            layers.extend(stub(&place, &code, pieces.colours(square.home), printed.grid.piece_mm));
        }
    }
    layers
}

/// Width of a stub, in mm; at most half of its square's side.
const STUB_MM: f64 = 63.0;
/// Lines of words on a stub as dark strips: where their middles are, in mm from its own, and how long and high they are.
const STUB_WORDS: [([f64; 2], [f64; 2]); 4] = [
    ([-18.0, -54.0], [14.0, 6.0]),
    ([16.0, -50.0], [5.0, 5.0]),
    ([-8.0, 52.0], [40.0, 1.4]),
    ([-6.0, 56.0], [44.0, 1.4]),
];

/// A stub that hangs out on the side of the code: white paper, a piece in four plain quarters, words.
fn stub(place: &Place, code: &CodeBox, piece: [[u8; 3]; 4], piece_mm: f64) -> Vec<Layer> {
    let (side, degrees) = (place.width, place.sin.atan2(place.cos).to_degrees());
    let width = STUB_MM.min(side / 2.0);
    let is_right = code.x + code.side() / 2.0 > side / 2.0;
    let middle = [if is_right { side + width / 2.0 } else { -width / 2.0 }, side / 2.0];
    let flat = |[x, y]: [f64; 2], [width, height]: [f64; 2], colour: [u8; 3]| Layer {
        place: Place::new(place.on_wall([middle[0] + x, middle[1] + y]), degrees, width, height),
        bend: Bend::default(),
        body: Body::Tape(colour),
    };
    let quarter = piece_mm / 2.0;
    let quarters = [[-1.0, -1.0], [1.0, -1.0], [-1.0, 1.0], [1.0, 1.0]].into_iter().zip(piece);
    let quarters =
        quarters.map(|([x, y], colour)| flat([x * quarter / 2.0, y * quarter / 2.0], [quarter; 2], colour));
    let small = side / 127.0;
    let words = STUB_WORDS
        .into_iter()
        .map(|(at, size)| flat(at.map(|mm| mm * small), size.map(|mm| mm * small), INK));
    [flat([0.0; 2], [width, side], WHITE)].into_iter().chain(quarters).chain(words).collect()
}

/// Colours of the picture's pieces.
struct Pieces<'a> {
    picture: &'a Picture,
    crop: Crop,
}

impl Pieces<'_> {
    /// Those in the middles of a piece's four quarters.
    fn colours(&self, cell: Cell) -> [[u8; 3]; 4] {
        let (corner, side) = (self.crop.piece_top_left(cell), self.crop.piece.value());
        let (width, height) = self.picture.size();
        let px = |at: f64, all: u32| u32::try_from(crate::frame::floor_index(at)).unwrap_or(0).min(all - 1);
        [[0.25, 0.25], [0.75, 0.25], [0.25, 0.75], [0.75, 0.75]].map(|[x, y]| {
            let at = (px(corner.x + x * side, width), px(corner.y + y * side, height));
            self.picture.pixels.get_pixel(at.0, at.1).0
        })
    }
}

/// An index as a number of a stream.
fn number(index: usize) -> u64 {
    u64::try_from(index).unwrap_or(u64::MAX)
}

fn code_middle(code: &CodeBox) -> [f64; 2] {
    [code.x + code.side() / 2.0, code.y + code.side() / 2.0]
}

/// How finely papers are painted: a little finer than the photo shows the nearest part of the wall.
fn texels_per_mm(boards: &Boards, camera: &Camera) -> f64 {
    let px = boards.sounded().into_iter().filter_map(|[x, y]| camera.px_per_mm(x, y));
    (TEXELS_A_PIXEL * px.fold(0.1, f64::max)).clamp(0.5, 10.0)
}

struct Squares<'a> {
    printed: &'a Printed,
    boards: &'a Boards,
    options: &'a Options,
    commission: Commission<'a>,
}

impl Squares<'_> {
    fn sheets(&self, cells: &[Cell], hung: &[Option<Hung>]) -> Vec<Option<Layer>> {
        use rayon::prelude::*;
        cells
            .par_iter()
            .zip(hung)
            .enumerate()
            .map(|(index, (cell, hung))| Some(self.sheet(index, *cell, hung.as_ref()?)))
            .collect()
    }

    fn sheet(&self, index: usize, cell: Cell, hung: &Hung) -> Layer {
        let hanging = &self.options.hanging;
        let mut rng = stream_of(self.options.seed, Purpose::Hanging, number(index + 1));
        let [x, y] = self.boards.centre(cell);
        let off = |rng: &mut ChaCha8Rng| spread(rng, hanging.misplacement_mm, MOST_MM);
        let centre = [x + off(&mut rng), y + off(&mut rng)];
        let tilt = spread(&mut rng, hanging.askew_degrees, MOST_DEGREES);
        let cut = spread(&mut rng, hanging.cut_mm, 3.0 * hanging.cut_mm);
        let side = self.printed.grid.square_mm + cut;
        let place = Place::new(centre, tilt + f64::from(hung.turn.degrees()), side, side);
        let bend = bend(hanging, &mut rng);
        let own = &self.printed.squares[self.printed.grid.index(hung.home)].modules;
        let modules = hung.stranger.as_ref().map_or(own, |(_, modules)| modules).clone();
        let paints = [[30, 30, 34], [58, 40, 92], [92, 30, 34], [24, 62, 44]];
        let paint = paints[rng.random_range(0..4)];
        let scribble = (hung.condition == Condition::Scribbled).then_some(paint);
        let sign = |rng: &mut ChaCha8Rng| if rng.random() { 1.0 } else { -1.0 };
        let tear = ([sign(&mut rng), sign(&mut rng)], rng.random_range(0.2..0.45) * side);
        let torn = (hung.condition == Condition::Torn).then_some(tear);
        let texture = self.commission.draw(hung, number(index + 1));
        let sheet =
            Sheet { of: Of::Square(index), code: self.commission.code, modules, texture, scribble, torn };
        Layer { place, bend, body: Body::Sheet(Box::new(sheet)) }
    }
}

fn bend(hanging: &Hanging, rng: &mut ChaCha8Rng) -> Bend {
    let most = hanging.bend_mm;
    let mut some = |share: f64| spread(rng, share * most, 3.0 * share * most).abs();
    let (lift, across, down, curl) = (some(0.3), some(0.6), some(0.6), some(1.2));
    let corner = [[1.0, 1.0], [1.0, -1.0], [-1.0, 1.0], [-1.0, -1.0]][rng.random_range(0..4)];
    // Most corners are held by tape.
    let curl = if rng.random_bool(0.3) { curl } else { 0.0 };
    Bend { lift, across, down, curl, corner }
}

/// The cards that hang, with their code and their name.
fn cards(printed: &Printed, boards: &Boards, options: &Options, per_mm: f64) -> Vec<Layer> {
    let wanted = |card: &&Card| match options.cards {
        Cards::All => true,
        Cards::Corners => card.kind == CardKind::Corner,
        Cards::None => false,
    };
    let hang = |(index, card): (usize, &Card)| {
        let mut rng = stream_of(options.seed, Purpose::Cards, number(index + 1));
        let side = printed.grid.square_mm;
        let code_side = float(SIDE) * card.module_mm;
        let (size, shift) = match card.kind {
            CardKind::Column => ((side, RING_MM), [EDGE_CODE_SHIFT_MM, 0.0]),
            CardKind::Row => ((RING_MM, side), [0.0, EDGE_CODE_SHIFT_MM]),
            CardKind::Corner => ((RING_MM, RING_MM), [0.0, 0.0]),
        };
        let off = |rng: &mut ChaCha8Rng| spread(rng, options.hanging.misplacement_mm / 2.0, MOST_MM / 2.0);
        let [x, y] = boards.card(card);
        let centre = [x - shift[0] + off(&mut rng), y - shift[1] + off(&mut rng)];
        let tilt = spread(&mut rng, options.hanging.askew_degrees / 2.0, MOST_DEGREES / 2.0);
        let middle = (size.0 / 2.0, size.1 / 2.0);
        let code = CodeBox {
            x: middle.0 + shift[0] - code_side / 2.0,
            y: middle.1 + shift[1] - code_side / 2.0,
            module: card.module_mm,
        };
        let named = if card.kind == CardKind::Corner { "" } else { card.name.as_str() };
        let texture =
            paper::card(size, per_mm, named, (middle.0 - shift[0] * 0.75, middle.1 - shift[1] * 0.75), 4.0);
        let modules = card.modules.clone();
        let sheet = Sheet { of: Of::Card(index), code, modules, texture, scribble: None, torn: None };
        let place = Place::new(centre, tilt, size.0, size.1);
        Layer { place, bend: Bend::default(), body: Body::Sheet(Box::new(sheet)) }
    };
    printed.cards.iter().enumerate().filter(|(_, card)| wanted(card)).map(hang).collect()
}

/// White, cream, blue: paper tape and painter's tape.
const TAPES: [[u8; 3]; 3] = [[238, 237, 230], [216, 196, 150], [92, 146, 190]];

/// Two to four strips over the corners and sides of a paper, kept off its own code and nearly always off others'.
fn strips(
    place: &Place,
    code: &CodeBox,
    codes: &[[f64; 2]],
    usual: [u8; 3],
    rng: &mut ChaCha8Rng,
) -> Vec<Layer> {
    let own = place.on_wall(code_middle(code));
    let (w, h) = (place.width, place.height);
    let mut at = [
        (0.0, 0.0, -45.0),
        (w, 0.0, 45.0),
        (w, h, -45.0),
        (0.0, h, 45.0),
        (w / 2.0, 0.0, 90.0),
        (w, h / 2.0, 0.0),
        (w / 2.0, h, 90.0),
        (0.0, h / 2.0, 0.0),
    ];
    at.shuffle(rng);
    let other = TAPES[rng.random_range(0..3)];
    let colour = if rng.random_bool(0.85) { usual } else { other };
    let base = place.sin.atan2(place.cos).to_degrees();
    let clear_of = code.side() * std::f64::consts::FRAC_1_SQRT_2 + 1.0;
    let mut strips = Vec::new();
    for (u, v, degrees) in at.into_iter().take(rng.random_range(2..5)) {
        let middle = place.on_wall([u + rng.random_range(-5.0..5.0), v + rng.random_range(-5.0..5.0)]);
        let long = rng.random_range(22.0..38.0);
        let turn = base + degrees + rng.random_range(-12.0..12.0);
        let strip = Place::new(middle, turn, long, rng.random_range(13.0..19.0));
        let covers = |code: &[f64; 2]| strip.outside(strip.within(code[0], code[1])) < clear_of;
        let careless = rng.random_bool(0.03);
        if covers(&own) || (codes.iter().any(covers) && !careless) {
            continue;
        }
        strips.push(Layer { place: strip, bend: Bend::default(), body: Body::Tape(colour) });
    }
    strips
}

/// A strip of tape over about half of a paper's code.
fn over_the_code(place: &Place, code: &CodeBox, rng: &mut ChaCha8Rng) -> Layer {
    let [x, y] = place.on_wall(code_middle(code));
    let wide = code.side().max(24.0);
    let degrees = f64::from(rng.random_range(0..4_u32)) * 90.0 + rng.random_range(-10.0..10.0);
    let base = place.sin.atan2(place.cos).to_degrees();
    let (sin, cos) = (base + degrees).to_radians().sin_cos();
    // The strip's long side passes near the code's middle; the strip lies beyond it.
    let off = wide / 2.0 + rng.random_range(-0.1..0.1) * code.side();
    let middle = [x - sin * off, y + cos * off];
    let strip = Place::new(middle, base + degrees, code.side() + 40.0, wide);
    Layer { place: strip, bend: Bend::default(), body: Body::Tape(TAPES[1]) }
}
