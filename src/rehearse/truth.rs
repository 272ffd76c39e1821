//! The truth about a made photo: what hangs where, what of it is in sight, and where it is in pixels.
//!
//! Pixels are those of the upright photo, origin at the top left corner of its top left pixel. What is in sight is
//! found by following the ray to the middle of every module, so neighbours, tape, people and the frame all count.

use image::GrayImage;
use rayon::prelude::*;
use serde::{Deserialize, Serialize};

use super::camera::area;
use super::hung::{Condition, Hung};
use super::options::{Cards, Options};
use super::render::Scene;
use super::wall::{Body, Of, Sheet};
use crate::frame::{PhotoPx, Point, float};
use crate::judge::State;
use crate::plan::code::SIDE;
use crate::plan::{Cell, Printed, Turn};

/// A point in the upright photo: x, y.
type Px = [f64; 2];

/// The file `NAME.answers.json`.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Truth {
    /// Always true: nobody took this photo.
    pub made: bool,
    /// What the coordinates are.
    pub coordinates: String,
    /// Tag of the event.
    pub tag: String,
    /// Width and height of the upright photo.
    pub upright_size: [usize; 2],
    /// EXIF orientation of the file.
    pub orientation: u16,
    /// Whether the photo is a mirror image.
    pub mirrored: bool,
    /// Over the codes that can be read.
    pub px_per_module: ModulePx,
    /// The camera, before any mirroring.
    pub camera: CameraTruth,
    /// Every cell, row by row from the top.
    pub cells: Vec<CellTruth>,
    /// Every card that hangs and is at least partly in sight.
    pub cards: Vec<CardTruth>,
    /// What was asked for; made again with the same version, it gives the same bytes.
    pub options: Options,
}

/// Pixels a module, over the codes that can be read.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct ModulePx {
    /// The middle one; 0 where none can be read.
    pub median: f64,
    /// The smallest; 0 where none can be read.
    pub minimum: f64,
    /// How many squares' codes can be read.
    pub readable_codes: usize,
}

/// A pinhole with Brown's radial lens.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct CameraTruth {
    /// Where it is: mm right, down and into the wall from the wall's top left corner.
    pub position_mm: [f64; 3],
    /// Unit vectors: the photo's right, its down, and where the camera looks.
    pub axes: [[f64; 3]; 3],
    /// Focal length in pixels; the principal point is the photo's middle.
    pub focal_px: f64,
    /// Coefficient of r², r in focal lengths.
    pub k1: f64,
    /// Coefficient of r⁴.
    pub k2: f64,
}

/// One cell.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct CellTruth {
    /// What people call it.
    pub label: String,
    /// From the left, from 0.
    pub column: usize,
    /// From the top, from 0.
    pub row: usize,
    /// As a report should have it.
    pub state: State,
    /// Other states that are fair.
    pub accept: Vec<State>,
    /// The square that a report should find here.
    pub found: Option<String>,
    /// How far it is turned clockwise; 0 where none should be found.
    pub turn_degrees: u32,
    /// Whether at least 98 % of the code's modules are in sight and nothing was painted over it.
    pub readable: bool,
    /// The square of this event that really hangs here, readable or not.
    pub hung: Option<String>,
    /// How far what hangs here is really turned.
    pub hung_turn: u32,
    /// What is in the code of a square of another event.
    pub stranger: Option<String>,
    /// What was done to it; `None` where nothing hangs.
    pub condition: Option<Condition>,
    /// The piece that was drawn on it where that is not the paper's own.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub drawn: Option<String>,
    /// How far the drawing is turned clockwise against the paper; `None` where it is not.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub drawn_turn: Option<u32>,
    /// Whether nothing was drawn on it.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub undrawn: bool,
    /// Whether only a part of it was drawn.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub begun: bool,
    /// Part of the cell in sight, 0 … 1.
    pub cell_seen: f64,
    /// Part of the code's modules in sight, 0 … 1; `None` where nothing hangs.
    pub code_seen: Option<f64>,
    /// The cell's corners, clockwise from its top left as seen on the wall; `None` behind the camera.
    pub cell_px: Option<[Px; 4]>,
    /// The paper's corners, clockwise from its own top left.
    pub corners_px: Option<[Px; 4]>,
    /// The corners of the code's outer modules, clockwise from its own top left.
    pub code_px: Option<[Px; 4]>,
    /// Square root of the area that a module takes.
    pub px_per_module: Option<f64>,
}

/// One card.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct CardTruth {
    /// The text in its code.
    pub text: String,
    /// Part of its code's modules in sight, 0 … 1.
    pub code_seen: f64,
    /// The corners of the code's outer modules, clockwise from its own top left.
    pub code_px: [Px; 4],
    /// Square root of the area that a module takes.
    pub px_per_module: f64,
}

/// Part of the code's modules that must be in sight for it to count as readable.
const READABLE: f64 = 0.98;
/// Below this part in sight a report should say that the code cannot be read; between the two, both are fair.
const MOSTLY: f64 = 0.7;
/// Below this part of a cell in sight a report should say that it was not seen …
const SEEN: f64 = 0.5;
/// … and below this one it may.
const WELL_SEEN: f64 = 0.8;

/// Tells the truth about a photo.
pub(super) fn tell(scene: &Scene<'_>, printed: &Printed, hung: &[Option<Hung>], options: &Options) -> Truth {
    let teller = Teller { scene, printed, mirrored: options.sensor.mirrored };
    let cells: Vec<CellTruth> =
        printed.grid.cells().zip(hung).map(|(cell, hung)| teller.cell(cell, hung.as_ref())).collect();
    let mut sizes: Vec<f64> =
        cells.iter().filter(|cell| cell.readable).filter_map(|cell| cell.px_per_module).collect();
    sizes.sort_by(f64::total_cmp);
    let camera = scene.camera;
    Truth {
        made: true,
        coordinates:
            "pixels of the photo turned upright, origin at the top left corner of the top left pixel"
                .to_owned(),
        tag: printed.tag.clone(),
        upright_size: [camera.width, camera.height],
        orientation: options.sensor.orientation,
        mirrored: options.sensor.mirrored,
        px_per_module: ModulePx {
            median: sizes.get(sizes.len() / 2).copied().unwrap_or(0.0),
            minimum: sizes.first().copied().unwrap_or(0.0),
            readable_codes: sizes.len(),
        },
        camera: CameraTruth {
            position_mm: camera.position.map(|mm| rounded(mm, 1e6)),
            axes: camera.axes.map(|axis| axis.map(|part| rounded(part, 1e12))),
            focal_px: rounded(camera.focal_px, 1e6),
            k1: camera.k1,
            k2: camera.k2,
        },
        cells,
        cards: if options.cards == Cards::None { Vec::new() } else { teller.cards() },
        options: options.clone(),
    }
}

/// Where people are in the upright photo: 255 where the ray through a pixel's middle strikes one, else 0.
pub(super) fn people(scene: &Scene<'_>, mirrored: bool) -> GrayImage {
    let (width, height) = (scene.camera.width, scene.camera.height);
    let mut levels = vec![0_u8; width * height];
    levels.par_chunks_mut(width.max(1)).enumerate().for_each(|(row, levels)| {
        for (column, level) in levels.iter_mut().enumerate() {
            let ground = scene.camera.look(float(column) + 0.5, float(row) + 0.5);
            if ground.is_some_and(|ground| scene.front.strikes_person(&ground)) {
                *level = u8::MAX;
            }
        }
        if mirrored {
            levels.reverse();
        }
    });
    let side = |pixels: usize| u32::try_from(pixels).unwrap_or(0);
    GrayImage::from_raw(side(width), side(height), levels).unwrap_or_default() // the sides and the pixels agree
}

/// Where a code is and how much of it is in sight.
struct CodeSight {
    corners: Option<[Px; 4]>,
    px_per_module: Option<f64>,
    seen: f64,
}

struct Teller<'a> {
    scene: &'a Scene<'a>,
    printed: &'a Printed,
    mirrored: bool,
}

impl Teller<'_> {
    fn cell(&self, cell: Cell, hung: Option<&Hung>) -> CellTruth {
        let grid = &self.printed.grid;
        let label = grid.label(cell);
        let cell_seen = self.cell_seen(cell);
        let layer = hung.and_then(|_| self.scene.wall.square(self.printed, cell));
        let code = layer.and_then(|layer| self.code(layer));
        let paper = layer.and_then(|layer| {
            let place = &self.scene.wall.layers[layer].place;
            let (w, h) = (place.width, place.height);
            self.quad(layer, [[0.0, 0.0], [w, 0.0], [w, h], [0.0, h]])
        });
        let code_seen = code.as_ref().map(|code| code.seen);
        let (state, accept) = verdict(cell, hung, cell_seen, code_seen.unwrap_or(0.0));
        // nothing is concluded about a spot that asks for no square where none is read
        let unasked = |state: State| match state {
            State::Empty | State::Unread | State::Unseen if grid.is_kept_free(cell) => State::Free,
            State::Empty | State::Unread | State::Unseen if grid.in_border(cell) => State::Reserve,
            other => other,
        };
        let (state, accept) = (unasked(state), accept.into_iter().map(unasked).collect());
        let square = hung.filter(|square| square.stranger.is_none()).map(|square| grid.label(square.home));
        let named = matches!(state, State::Right | State::Wrong | State::Turned);
        let turn = hung.map_or(0, |square| square.turn.degrees());
        let painted = hung.is_some_and(|square| square.condition == Condition::Scribbled);
        let corners =
            self.scene.wall.boards.corners(cell).map(|[x, y]| self.px(self.scene.camera.see([x, y, 0.0])?));
        CellTruth {
            label,
            column: cell.column,
            row: cell.row,
            state,
            accept,
            found: square.clone().filter(|_| named),
            turn_degrees: if named { turn } else { 0 },
            readable: code_seen.is_some_and(|seen| seen >= READABLE) && !painted,
            hung: square,
            hung_turn: turn,
            stranger: hung.and_then(|square| Some(square.stranger.as_ref()?.0.clone())),
            condition: hung.map(|square| square.condition),
            drawn: hung
                .and_then(|square| square.drawn.map(|(piece, _)| piece).filter(|piece| *piece != square.home))
                .map(|piece| grid.label(piece)),
            drawn_turn: hung
                .and_then(|square| Some(square.drawn?.1.degrees()))
                .filter(|degrees| *degrees != 0),
            undrawn: hung.is_some_and(|square| square.drawn.is_none()),
            begun: hung.is_some_and(|square| square.begun),
            cell_seen,
            code_seen,
            cell_px: all(corners),
            corners_px: paper,
            code_px: code.as_ref().and_then(|code| code.corners),
            px_per_module: code.and_then(|code| code.px_per_module),
        }
    }

    fn px(&self, p: Point<PhotoPx>) -> Option<Px> {
        let x = if self.mirrored { float(self.scene.camera.width) - p.x } else { p.x };
        Some([rounded(x, 1e3), rounded(p.y, 1e3)])
    }

    /// The part of a cell that is within the frame with nobody standing before it.
    fn cell_seen(&self, cell: Cell) -> f64 {
        const STEPS: usize = 16;
        let [from, _, to, _] = self.scene.wall.boards.corners(cell);
        let at = |i: usize, from: f64, to: f64| from + (to - from) * (float(i) + 0.5) / float(STEPS);
        let seen = (0..STEPS * STEPS).filter(|i| {
            let (x, y) = (at(i % STEPS, from[0], to[0]), at(i / STEPS, from[1], to[1]));
            self.scene.ray_in_frame([x, y, 0.0]).is_some()
        });
        float(seen.count()) / float(STEPS * STEPS)
    }

    fn quad(&self, layer: usize, at: [[f64; 2]; 4]) -> Option<[Px; 4]> {
        let layer = &self.scene.wall.layers[layer];
        all(at.map(|at| self.px(self.scene.camera.see(layer.room(at))?)))
    }

    fn sheet(&self, layer: usize) -> Option<&Sheet> {
        match &self.scene.wall.layers[layer].body {
            Body::Sheet(sheet) => Some(sheet),
            Body::Tape(_) => None,
        }
    }

    fn code(&self, layer: usize) -> Option<CodeSight> {
        let code = self.sheet(layer)?.code;
        let (x, y, side) = (code.x, code.y, code.side());
        let outline = [[x, y], [x + side, y], [x + side, y + side], [x, y + side]];
        let corners = self.quad(layer, outline);
        let middle = |i: usize| (float(i) + 0.5) * code.module;
        let seen = (0..SIDE * SIDE)
            .filter(|i| self.scene.sees(layer, [x + middle(i % SIDE), y + middle(i / SIDE)]))
            .count();
        let px_per_module = corners.map(|corners| {
            let corners = corners.map(|[x, y]| Point::new(x, y));
            rounded(area(&corners).sqrt() / float(SIDE), 1e4)
        });
        Some(CodeSight { corners, px_per_module, seen: rounded(float(seen) / float(SIDE * SIDE), 1e4) })
    }

    fn cards(&self) -> Vec<CardTruth> {
        let card = |(layer, body): (usize, &Sheet)| {
            let Of::Card(index) = body.of else { return None };
            let code = self.code(layer)?;
            (code.seen > 0.0).then_some(())?;
            Some(CardTruth {
                text: self.printed.cards.get(index)?.text.clone(),
                code_seen: code.seen,
                code_px: code.corners?,
                px_per_module: code.px_per_module?,
            })
        };
        (0..self.scene.wall.layers.len()).filter_map(|layer| card((layer, self.sheet(layer)?))).collect()
    }
}

/// A number as the file has it: few digits, so that reading it gives the same number again.
fn rounded(value: f64, parts: f64) -> f64 {
    (value * parts).round() / parts
}

fn all(points: [Option<Px>; 4]) -> Option<[Px; 4]> {
    let [a, b, c, d] = points;
    Some([a?, b?, c?, d?])
}

/// The state a report should have, and the others that are fair.
fn verdict(cell: Cell, hung: Option<&Hung>, cell_seen: f64, code_seen: f64) -> (State, Vec<State>) {
    let Some(square) = hung else {
        return match cell_seen {
            seen if seen < SEEN => (State::Unseen, vec![State::Empty]),
            seen if seen < WELL_SEEN => (State::Empty, vec![State::Unseen]),
            _ => (State::Empty, Vec::new()),
        };
    };
    let real = match (square.stranger.is_none() && square.home == cell, square.turn) {
        (true, Turn::None) => State::Right,
        (true, _) => State::Turned,
        (false, _) => State::Wrong,
    };
    let painted = square.condition == Condition::Scribbled;
    if cell_seen < SEEN {
        let fair = if painted { vec![State::Unread] } else { vec![State::Unread, real] };
        return (State::Unseen, fair);
    }
    if code_seen >= MOSTLY && !painted {
        let fair = if code_seen < READABLE { vec![State::Unread] } else { Vec::new() };
        return (real, fair);
    }
    let mut fair = Vec::new();
    if cell_seen < WELL_SEEN {
        fair.push(State::Unseen);
    }
    if !painted {
        fair.push(real);
    }
    (State::Unread, fair)
}
