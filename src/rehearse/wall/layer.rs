//! One layer on the wall: a bent rectangle of paper or a strip of tape.

use crate::frame::narrow;
use crate::plan::Modules;
use crate::rehearse::camera::{Ground, Room};
use crate::rehearse::paper::{CodeBox, Texture};

/// A rectangle on the wall, turned about its middle.
#[derive(Copy, Clone, Debug)]
pub(in crate::rehearse) struct Place {
    pub centre: [f64; 2],
    /// Cosine and sine of the clockwise turn from upright.
    pub cos: f64,
    pub sin: f64,
    pub width: f64,
    pub height: f64,
    /// 2 over the width and 2 over the height.
    pub per_width: f64,
    pub per_height: f64,
}

impl Place {
    pub fn new(centre: [f64; 2], degrees: f64, width: f64, height: f64) -> Self {
        let (sin, cos) = degrees.to_radians().sin_cos();
        Self { centre, cos, sin, width, height, per_width: 2.0 / width, per_height: 2.0 / height }
    }

    /// A step on the wall as a step in the rectangle.
    pub fn step(&self, dx: f64, dy: f64) -> [f64; 2] {
        [self.cos * dx + self.sin * dy, self.cos * dy - self.sin * dx]
    }

    /// From the wall into the rectangle, in mm from its own top left.
    pub fn within(&self, x: f64, y: f64) -> [f64; 2] {
        let (dx, dy) = (x - self.centre[0], y - self.centre[1]);
        [self.cos * dx + self.sin * dy + self.width / 2.0, self.cos * dy - self.sin * dx + self.height / 2.0]
    }

    /// From the rectangle onto the wall.
    pub fn on_wall(&self, at: [f64; 2]) -> [f64; 2] {
        let (du, dv) = (at[0] - self.width / 2.0, at[1] - self.height / 2.0);
        [self.centre[0] + self.cos * du - self.sin * dv, self.centre[1] + self.sin * du + self.cos * dv]
    }

    /// How far a place lies outside the rectangle, in mm; negative within.
    pub fn outside(&self, at: [f64; 2]) -> f64 {
        let (w, h) = (self.width / 2.0, self.height / 2.0);
        ((at[0] - w).abs() - w).max((at[1] - h).abs() - h)
    }
}

/// How far a paper stands out from the wall, by its own coordinates a, b from −1 to 1:
/// lift + across · a² + down · b² + curl · max(0, a·sa + b·sb − 1)².
#[derive(Copy, Clone, Debug, Default)]
pub(in crate::rehearse) struct Bend {
    pub lift: f64,
    pub across: f64,
    pub down: f64,
    pub curl: f64,
    /// Signs that say which corner curls.
    pub corner: [f64; 2],
}

impl Bend {
    pub fn height(&self, a: f64, b: f64) -> f64 {
        let curled = (a * self.corner[0] + b * self.corner[1] - 1.0).max(0.0);
        self.lift + self.across * a * a + self.down * b * b + self.curl * curled * curled
    }

    /// The largest height.
    pub fn most(&self) -> f64 {
        self.lift + self.across + self.down + self.curl
    }

    /// How the height grows with a and with b.
    fn growth(&self, a: f64, b: f64) -> [f64; 2] {
        let curled = 2.0 * self.curl * (a * self.corner[0] + b * self.corner[1] - 1.0).max(0.0);
        [2.0 * self.across * a + curled * self.corner[0], 2.0 * self.down * b + curled * self.corner[1]]
    }
}

/// What a layer is.
#[derive(Clone, Debug)]
pub(in crate::rehearse) enum Body {
    /// A printed paper.
    Sheet(Box<Sheet>),
    /// A strip of tape of an sRGB colour.
    Tape([u8; 3]),
}

/// Which printed paper.
#[derive(Copy, Clone, Debug, PartialEq, Eq)]
pub(in crate::rehearse) enum Of {
    /// The square that hangs in the cell of this index.
    Square(usize),
    /// The card of this index.
    Card(usize),
}

impl Of {
    /// Its number among all papers that were printed: even ones are squares.
    pub(in crate::rehearse) fn number(self) -> usize {
        match self {
            Self::Square(index) => 2 * index,
            Self::Card(index) => 2 * index + 1,
        }
    }
}

/// A printed paper.
#[derive(Clone, Debug)]
pub(in crate::rehearse) struct Sheet {
    pub of: Of,
    pub code: CodeBox,
    pub modules: Modules,
    pub texture: Texture,
    /// The colour that was painted over its code.
    pub scribble: Option<[u8; 3]>,
    /// A corner that was torn off: its signs and how long the tear's two sides are, in mm.
    pub torn: Option<([f64; 2], f64)>,
}

/// A bent rectangle on the wall.
#[derive(Clone, Debug)]
pub(in crate::rehearse) struct Layer {
    pub place: Place,
    pub bend: Bend,
    pub body: Body,
}

impl Layer {
    /// How far the layer stands out at a place; beside it, as far as at its nearest edge, so that a ray that passes far
    /// away is not drawn onto it.
    fn height(&self, at: [f64; 2]) -> f64 {
        let (a, b) = (at[0] * self.place.per_width - 1.0, at[1] * self.place.per_height - 1.0);
        self.bend.height(a.clamp(-1.0, 1.0), b.clamp(-1.0, 1.0))
    }

    /// Where on the layer, or beside it, a ray meets it.
    pub fn meet(&self, ground: &Ground) -> [f64; 2] {
        let start = self.place.within(ground.x, ground.y);
        if self.bend.most() == 0.0 {
            return start;
        }
        let slope = self.place.step(ground.slope_x, ground.slope_y);
        let lower = |h: f64| [start[0] - h * slope[0], start[1] - h * slope[1]];
        // Paper bends so little that three turns settle the place within a thousandth of a mm.
        let mut at = lower(self.height(start));
        for _ in 0..2 {
            at = lower(self.height(at));
        }
        at
    }

    /// A place on the layer as a place in the room.
    pub fn room(&self, at: [f64; 2]) -> Room {
        let [x, y] = self.place.on_wall(at);
        [x, y, -self.height(at)]
    }

    /// How far a place lies outside the layer, in mm; negative within.
    pub fn outside(&self, at: [f64; 2]) -> f64 {
        let beyond = self.place.outside(at);
        let Body::Sheet(sheet) = &self.body else { return beyond };
        let Some((corner, long)) = sheet.torn else { return beyond };
        let from = |at: f64, side: f64, sign: f64| if sign > 0.0 { side - at } else { at };
        let (du, dv) = (from(at[0], self.place.width, corner[0]), from(at[1], self.place.height, corner[1]));
        let ragged = 1.5 * (du * 0.9).sin() + 0.8 * (dv * 2.3).sin();
        beyond.max((long + ragged - du - dv) / std::f64::consts::SQRT_2)
    }

    /// How much brighter or darker the bend makes a place: light comes from above.
    pub fn shade(&self, at: [f64; 2]) -> f32 {
        if self.bend.most() == 0.0 {
            return 1.0;
        }
        let (across, down) = (self.place.per_width, self.place.per_height);
        let [ga, gb] = self.bend.growth(at[0] * across - 1.0, at[1] * down - 1.0);
        let (gu, gv) = (ga * across, gb * down);
        // Downwards along the wall, in the paper's own axes, is (sin, cos).
        let falls = gu * self.place.sin + gv * self.place.cos;
        narrow((1.0 - 1.2 * falls).clamp(0.5, 1.3))
    }
}
