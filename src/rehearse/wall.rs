//! The papers on the wall: where each hangs, how it bends, what lies over what, and which of them a ray strikes.
//!
//! Papers are rectangles a little in front of the wall; the later one was put up, the further it lies on top. A ray
//! that meets the wall's plane at P meets a paper of height h at P − h · slope, so height and place are settled
//! by turns.

mod bins;
mod hang;
mod layer;

use crate::plan::{Cell, Printed};

use super::backing;
use super::boards::Boards;
use super::camera::{Camera, Ground};
use super::grain::Grain;
use super::hung::Hung;
use super::options::{Backing, Options};
use super::paper::{INK, WHITE};
use super::printer::Printer;
use crate::frame::{float, narrow};
use crate::picture::Picture;

use bins::Bins;
pub(super) use bins::Kind;
pub(super) use layer::{Body, Layer, Of, Sheet};

/// Everything on the wall.
#[derive(Clone, Debug)]
pub(super) struct Wall {
    /// From the lowest to the topmost.
    pub layers: Vec<Layer>,
    bins: Bins,
    grain: Grain,
    backing: Backing,
    /// Side of a cell where lines between the cells are drawn on the backing.
    lines_mm: Option<f64>,
    printer: Printer,
    /// Where the cells hang.
    pub boards: Boards,
    /// Linear level, 0 … 1, of an sRGB byte.
    linear: [f32; 256],
}

/// What a ray strikes.
#[derive(Copy, Clone, Debug)]
pub(super) struct Strike {
    /// The topmost layer there; `None` where the backing shows.
    pub layer: Option<usize>,
    /// Where on that layer, in mm from its own top left.
    pub at: [f64; 2],
    /// Light that papers lying over it leave, 0 … 1.
    pub left: f32,
}

/// How far the soft shadow of a paper's edge reaches, in mm.
const SHADOW_MM: f64 = 3.0;
/// How much of the light it takes right at the edge.
const SHADOW_DEPTH: f64 = 0.35;
/// How far the backing reaches beyond the cells, in mm: the ring of cards and a hand's breadth.
const BACKING_MM: f64 = 95.0;

impl Wall {
    /// Puts up what hangs, in an order by chance.
    pub fn put_up(
        printed: &Printed,
        picture: &Picture,
        hung: &[Option<Hung>],
        options: &Options,
        (boards, camera): (Boards, &Camera),
    ) -> Self {
        let grain = Grain::new(options.seed);
        let layers = hang::layers(printed, picture, hung, options, (&boards, camera), &grain);
        let bins = Bins::sort(&layers, &boards, camera);
        let lines_mm = options.backing_lines.then_some(printed.grid.square_mm);
        let linear = std::array::from_fn(|i| {
            let level = float(i) / 255.0;
            // IEC 61966-2-1.
            narrow(if level <= 0.04045 { level / 12.92 } else { ((level + 0.055) / 1.055).powf(2.4) })
        });
        let (backing, printer) = (options.backing, options.printer);
        Self { layers, bins, grain, backing, lines_mm, printer, boards, linear }
    }

    /// What is to be expected where a ray meets the wall's plane.
    pub fn kind(&self, ground: &Ground) -> Kind {
        self.bins.kind(ground)
    }

    /// The topmost layer that a ray strikes.
    pub fn strike(&self, ground: &Ground) -> Strike {
        let mut left = 1.0;
        let slope = ground.slope_x.hypot(ground.slope_y);
        for index in self.bins.candidates(ground) {
            let layer = &self.layers[*index];
            // A paper that even its greatest height does not bring near is passed by without bending it.
            let beside = layer.place.outside(layer.place.within(ground.x, ground.y));
            if beside > SHADOW_MM + layer.bend.most() * slope {
                continue;
            }
            let at = layer.meet(ground);
            let outside = layer.outside(at);
            if outside <= 0.0 {
                return Strike { layer: Some(*index), at, left: narrow(left) };
            }
            if outside < SHADOW_MM {
                let near = 1.0 - outside / SHADOW_MM;
                left *= 1.0 - SHADOW_DEPTH * near * near;
            }
        }
        Strike { layer: None, at: [ground.x, ground.y], left: narrow(left) }
    }

    /// Whether what is struck has a code's modules within a pixel of it.
    pub fn is_fine(&self, strike: &Strike) -> bool {
        let Some(Body::Sheet(sheet)) = strike.layer.map(|index| &self.layers[index].body) else {
            return false;
        };
        let blot = if sheet.scribble.is_some() { 4.0 } else { 0.0 };
        sheet.code.distance(strike.at[0], strike.at[1]) < self.bins.pixel_mm + blot + self.printer.reach_mm()
    }

    /// The light that comes back from what a ray strikes, linear, 1 from a perfect white.
    pub fn colour(&self, strike: &Strike) -> [f32; 3] {
        let Some(index) = strike.layer else {
            return self.behind(strike.at[0], strike.at[1]).map(|level| level * strike.left);
        };
        let layer = &self.layers[index];
        let shade = strike.left * layer.shade(strike.at);
        let seen = match &layer.body {
            Body::Tape(srgb) => {
                let crease = 1.0 + 0.03 * self.grain.broad(strike.at[0] * 2.0, strike.at[1] * 6.0);
                return self.lit(*srgb).map(|level| level * shade * crease);
            }
            Body::Sheet(sheet) => sheet.colour(strike.at, &self.grain, &self.printer),
        };
        self.lit(seen).map(|level| level * shade)
    }

    /// The light that comes back from a flat paper, away from its code.
    pub fn printed(&self, index: usize, at: [f64; 2]) -> [f32; 3] {
        match &self.layers[index].body {
            Body::Sheet(sheet) => self.lit(sheet.texture.at(at[0], at[1])),
            Body::Tape(srgb) => self.lit(*srgb),
        }
    }

    /// The light that comes back from the backing.
    pub fn bare(&self, ground: &Ground) -> [f32; 3] {
        self.behind(ground.x, ground.y)
    }

    fn lit(&self, srgb: [u8; 3]) -> [f32; 3] {
        srgb.map(|level| self.linear[usize::from(level)])
    }

    /// The backing, and the room's wall around it.
    fn behind(&self, x: f64, y: f64) -> [f32; 3] {
        let (outside, [u, v]) = self.boards.nearest(x, y);
        if outside > BACKING_MM && !self.backing.is_room() {
            let edge = if outside < BACKING_MM + 6.0 { 0.8 } else { 1.0 };
            let (base, uneven) = backing::look(Backing::Bare, &self.grain, x, y);
            return self.lit(base).map(|level| level * edge * (1.0 + uneven));
        }
        if let Some(side) = self.lines_mm.filter(|_| outside < 1.0) {
            let off = |at: f64| (at - (at / side).round() * side).abs();
            if off(u).min(off(v)) < 0.45 {
                return self.lit([140, 140, 144]);
            }
        }
        let (base, uneven) = backing::look(self.backing, &self.grain, x, y);
        self.lit(base).map(|level| level * (1.0 + uneven))
    }

    /// The layer that is the square hung in a cell.
    pub fn square(&self, printed: &Printed, cell: Cell) -> Option<usize> {
        let index = printed.grid.index(cell);
        self.layers
            .iter()
            .position(|layer| matches!(&layer.body, Body::Sheet(sheet) if sheet.of == Of::Square(index)))
    }
}

impl Sheet {
    /// sRGB colour at a place on the paper.
    fn colour(&self, at: [f64; 2], grain: &Grain, printer: &Printer) -> [u8; 3] {
        let [u, v] = at;
        let code = &self.code;
        if let Some(paint) = self.scribble {
            let blot = code.distance(u, v) - 1.5 - 1.2 * grain.wave(u * 1.3, v * 1.3);
            if blot < 0.0 {
                let dab = grain.broad(u * 1.1 + v * 2.0, v * 0.6) > 0.5;
                return if dab { paint.map(|level| level.saturating_add(28)) } else { paint };
            }
        }
        let side = code.side();
        let (x, y) = (u - code.x, v - code.y);
        if x >= 0.0 && y >= 0.0 && x < side && y < side {
            let (column, row) =
                (crate::frame::floor_index(x / code.module), crate::frame::floor_index(y / code.module));
            if printer.is_good() {
                return if self.modules.dark(column, row) { INK } else { WHITE };
            }
        }
        if !printer.is_good() && code.distance(u, v) < printer.reach_mm().max(1e-9) {
            let ink = printer.ink(&self.modules, [x, y], code.module, self.of.number(), grain);
            let under = if code.distance(u, v) < 0.0 { WHITE } else { self.texture.at(u, v) };
            let mixed = |k: usize| f32::from(under[k]) + (f32::from(INK[k]) - f32::from(under[k])) * ink;
            return [0, 1, 2].map(|k| crate::frame::round_byte(f64::from(mixed(k))));
        }
        self.texture.at(u, v)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::frame::Point;
    use crate::plan::cards::all_cards;
    use crate::plan::{Grid, Modules, PrintedSquare, Tag};
    use crate::rehearse::options::Faults;
    use crate::rehearse::{camera, faults};

    fn printed() -> Printed {
        let grid = Grid::usual(4, 3);
        let tag = Tag::new("K7M").unwrap();
        let square = |cell| {
            let label = grid.label(cell);
            let text = tag.square(&label);
            PrintedSquare { cell, modules: Modules::encode(&text).unwrap(), label, text }
        };
        Printed {
            name: "Evening".to_owned(),
            units: crate::plan::settings::Units::default(),
            tag: tag.to_string(),
            grid,
            parts: Vec::new(),
            stub_mm: None,
            module_mm: 0.6,
            code_top_left: Point::new(106.4, 106.4),
            squares: grid.cells().map(square).collect(),
            cards: all_cards(&grid, tag).unwrap(),
        }
    }

    /// The topmost layer that holds a ray, asked of every layer.
    fn topmost(wall: &Wall, ground: &Ground) -> Option<usize> {
        let holds = |index: &usize| {
            let layer = &wall.layers[*index];
            layer.outside(layer.meet(ground)) <= 0.0
        };
        (0..wall.layers.len()).rev().find(holds)
    }

    #[test]
    fn bins_change_nothing_that_a_ray_strikes() {
        let printed = printed();
        let picture = Picture { pixels: image::RgbImage::from_pixel(8, 6, image::Rgb([90, 120, 150])) };
        let faults = Faults { torn: 2, covered: 2, turns: 2, missing: 1, ..Faults::default() };
        for seed in 0..8 {
            let mut options =
                Options { width: 320, height: 240, faults: faults.clone(), ..Options::varied(seed) };
            options.hanging.bend_mm = 3.0;
            options.pose.yaw_degrees *= 2.0;
            let hung = faults::plot(&printed, &options.faults, seed).unwrap();
            let boards = Boards::of(&printed, options.boards, seed);
            let camera = camera::framed(&printed, &boards, &options).unwrap();
            let wall = Wall::put_up(&printed, &picture, &hung, &options, (boards, &camera));
            let mut plain = 0;
            for i in 0..320 * 240 {
                let Some(ground) = camera.look(float(i % 320) + 0.31, float(i / 320) + 0.77) else {
                    continue;
                };
                let strike = wall.strike(&ground);
                assert_eq!(strike.layer, topmost(&wall, &ground), "seed {seed}, pixel {i}");
                match wall.kind(&ground) {
                    Kind::Bare => assert_eq!((strike.layer, strike.left), (None, 1.0)),
                    Kind::Plain(index) => {
                        plain += 1;
                        assert_eq!((strike.layer, strike.left), (Some(index), 1.0));
                        assert!(!wall.is_fine(&strike), "seed {seed}: a code is near pixel {i}");
                    }
                    Kind::Mixed => {}
                }
            }
            assert!(plain > 1_000, "seed {seed}: only {plain} pixels are plain");
        }
    }
}
