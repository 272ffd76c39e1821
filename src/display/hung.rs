//! Hanging: the place of every square on the wall and how askew it is, from its code.
//!
//! ```text
//!   ┌────────────┐          The code tells where it lies in the photo; the camera takes that to the wall. A
//!   │            │╲         square of paper is stiff and flat on the wall, so three numbers say how it hangs:
//!   │            │ ╲ askew  its code's centre, right and down, and the angle. Its size is one for all: the
//!   │       ▣·───┼──╲─▶     wall's scale, the median over all codes.
//!   └────────────┘   ╲
//! ```
//!
//! The camera's millimetres are those of a wall whose squares are as far apart as planned ([`WallMm`]). Where
//! all of them hang 2 mm further apart, the camera cannot tell: the codes then look smaller than they were
//! printed, and [`Hanging::scale`] says so.

use crate::frame::{Map, PhotoPx, Point, SquareMm, Vector, WallMm, float, median};
use crate::plan::code::SIDE;
use crate::plan::{Cell, Printed, Turn};
use crate::read::{Camera, CellReading, Sight};

/// Square as it hangs.
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct Hung {
    /// Cell where it hangs.
    pub at: Cell,
    /// Cell where it belongs.
    pub home: Cell,
    /// Turn clockwise from upright.
    pub turn: Turn,
    /// Index of the photo that shows it best.
    pub photo: usize,
    /// Map from the paper to the wall: a turn, a shift and the wall's scale.
    pub square_to_wall: Map<SquareMm, WallMm>,
    /// Angle askew, in radians, clockwise, beside its quarter turns.
    pub askew: f64,
    /// Scale of its own code, in wall millimetres for one printed one: for judging [`Hanging::scale`].
    pub own_scale: f64,
    /// Side of a module in the photo, in pixels.
    pub px_per_module: f64,
}

/// All squares that were named.
#[derive(Clone, Debug, PartialEq)]
pub struct Hanging {
    /// Squares in the order of the cells where they hang.
    pub squares: Vec<Hung>,
    /// Scale in wall millimetres for one of paper, the median over the squares; 1 without one.
    pub scale: f64,
}

impl Hanging {
    /// Squares that a reading names, as they hang. `cameras` are those of its photos, in their order.
    #[must_use]
    pub fn of(cells: &[CellReading], cameras: &[&Camera], printed: &Printed) -> Self {
        let seen: Vec<Seen> = cells.iter().filter_map(|cell| Seen::of(cell, cameras, printed)).collect();
        let scale = median(seen.iter().map(|seen| seen.scale).collect()).unwrap_or(1.0);
        let squares = seen.iter().map(|seen| seen.hung(scale, printed)).collect();
        Self { squares, scale }
    }

    /// Square that hangs in a cell.
    #[must_use]
    pub fn in_cell(&self, cell: Cell) -> Option<&Hung> {
        self.squares.binary_search_by_key(&cell, |hung| hung.at).ok().and_then(|i| self.squares.get(i))
    }
}

/// Code as the camera maps it to the wall.
struct Seen {
    at: Cell,
    home: Cell,
    turn: Turn,
    photo: usize,
    /// Centre of the code.
    middle: Point<WallMm>,
    /// Direction of the code's right, of length 1.
    right: Vector<WallMm>,
    scale: f64,
    px_per_module: f64,
}

impl Seen {
    fn of(cell: &CellReading, cameras: &[&Camera], printed: &Printed) -> Option<Self> {
        let Sight::Square { home, turn } = cell.sight else { return None };
        let camera = cameras.get(cell.photo)?;
        let code = code_corners(cell.corners?, printed);
        let mut wall = [Point::origin(); 4];
        for (wall, photo) in wall.iter_mut().zip(code) {
            *wall = camera.photo_to_wall(photo)?;
        }
        let [a, b, c, d] = wall;
        // the similarity that fits the four best: its right is the mean of the code's right and of its down, turned back
        let (u, v) = ((b - a) + (c - d), (d - a) + (c - b));
        let along = u + Vector::new(v.y, -v.x);
        let (length, side) = (along.length().value(), float(SIDE) * printed.module_mm);
        let sound = length.is_finite() && length > 0.0;
        let px = (code[1] - code[0]).cross(code[3] - code[0]).abs().sqrt() / float(SIDE);
        sound.then(|| Self {
            at: cell.cell,
            home,
            turn,
            photo: cell.photo,
            middle: a.towards(c, 0.5).towards(b.towards(d, 0.5), 0.5),
            right: along / length,
            scale: length / (4.0 * side),
            px_per_module: px,
        })
    }

    fn hung(&self, scale: f64, printed: &Printed) -> Hung {
        let half = float(SIDE) * printed.module_mm / 2.0;
        let code = printed.code_top_left + Vector::new(half, half);
        let (x, y) = (self.right * scale, Vector::new(-self.right.y, self.right.x) * scale);
        let upright = Vector::<WallMm>::new(1.0, 0.0).turned(f64::from(self.turn.degrees()).to_radians());
        Hung {
            at: self.at,
            home: self.home,
            turn: self.turn,
            photo: self.photo,
            square_to_wall: Map::affine(self.middle - x * code.x - y * code.y, x, y),
            askew: upright.cross(self.right).atan2(upright.dot(self.right)),
            own_scale: self.scale,
            px_per_module: self.px_per_module,
        }
    }
}

/// Outer corners of a code in the photo, from those of its paper: both came from one affine pose.
pub(super) fn code_corners(paper: [Point<PhotoPx>; 4], printed: &Printed) -> [Point<PhotoPx>; 4] {
    let [origin, right, _, down] = paper;
    let side = printed.grid.square_mm;
    let (x, y) = ((right - origin) / side, (down - origin) / side);
    let (from, code) = (printed.code_top_left, float(SIDE) * printed.module_mm);
    [(0.0, 0.0), (code, 0.0), (code, code), (0.0, code)]
        .map(|(across, along)| origin + x * (from.x + across) + y * (from.y + along))
}
