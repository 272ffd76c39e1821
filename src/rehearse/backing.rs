//! What a wall is made of behind the squares: paper, boards, cork, brick, wallpaper, paint.
//!
//! Colours and patterns are from memory, no source; they are as unlike each other as rooms are.

use super::grain::Grain;
use super::options::Backing;

/// Size of a brick with its joints, and width of a joint, in mm: a common format (215 × 65 mm with joints of 10 mm).
const BRICK_MM: ([f64; 2], f64) = ([225.0, 75.0], 10.0);
/// Distance between the motifs of the wallpaper, in mm.
const MOTIF_MM: f64 = 46.0;
/// sRGB colour of the room's wall where no backing hangs.
pub(super) const ROOM: [u8; 3] = [186, 178, 160];

/// sRGB colour of a backing at a place in mm from the top left cell's corner, and how much lighter (+) or darker (−) it is there,
/// as a share.
pub(super) fn look(backing: Backing, grain: &Grain, x: f64, y: f64) -> ([u8; 3], f32) {
    let cloud = grain.broad(x * 0.11, y * 0.11);
    let tooth = grain.fine(x * 0.7, y * 0.7);
    match backing {
        Backing::White => (super::paper::WHITE, 0.02 * cloud),
        Backing::Grey => ([148, 148, 150], 0.04 * cloud + 0.02 * tooth),
        Backing::Coloured => ([64, 108, 148], 0.05 * cloud + 0.03 * tooth),
        Backing::Wood => {
            let vein = grain.broad(x * 0.05, y * 1.7 + 6.0 * grain.wave(x * 0.02, y * 0.05));
            let board = if (y / 140.0).fract().abs() < 0.012 { -0.6 } else { 0.0 };
            ([176, 134, 88], 0.18 * vein + 0.04 * tooth + board)
        }
        Backing::Red => ([158, 44, 42], 0.05 * cloud + 0.03 * tooth),
        Backing::Green => ([58, 112, 70], 0.05 * cloud + 0.03 * tooth),
        Backing::Dark => ([52, 54, 62], 0.06 * cloud + 0.04 * tooth),
        Backing::Cork => {
            let crumb = grain.broad(x * 3.1, y * 3.1);
            ([184, 142, 98], 0.22 * crumb + 0.12 * tooth + 0.04 * cloud)
        }
        Backing::Brick => brick(grain, x, y, 0.06 * cloud + 0.05 * tooth),
        Backing::Patterned => wallpaper(x, y, 0.03 * cloud + 0.02 * tooth),
        Backing::Bare => (ROOM, 0.06 * cloud + 0.02 * tooth),
    }
}

/// Bricks in stretcher bond: each row half a brick further, each brick of a tone of its own.
fn brick(grain: &Grain, x: f64, y: f64, uneven: f32) -> ([u8; 3], f32) {
    let ([long, high], joint) = BRICK_MM;
    let row = (y / high).floor();
    let shifted = x + if row.rem_euclid(2.0) < 1.0 { 0.0 } else { long / 2.0 };
    let (along, up) = (shifted.rem_euclid(long), y.rem_euclid(high));
    if along < joint || up < joint {
        return ([172, 166, 154], uneven);
    }
    let column = (shifted / long).floor();
    let tone = grain.fine(column * 7.0 + 0.5, row * 11.0 + 0.5);
    let base = if tone > 0.4 { [142, 78, 60] } else { [160, 88, 66] };
    (base, uneven + 0.14 * tone)
}

/// Wallpaper: pale stripes with a row of leaves on every other.
fn wallpaper(x: f64, y: f64, uneven: f32) -> ([u8; 3], f32) {
    let stripe = (x / MOTIF_MM).floor().rem_euclid(2.0);
    let (u, v) = (x.rem_euclid(MOTIF_MM) / MOTIF_MM - 0.5, y.rem_euclid(MOTIF_MM) / MOTIF_MM - 0.5);
    let leaf = (u - 0.35 * v).powi(2) * 6.0 + v * v < 0.12;
    let colour = match (stripe < 1.0, leaf) {
        (true, true) => [134, 156, 122],
        (true, false) => [222, 214, 196],
        (false, _) => [210, 202, 184],
    };
    (colour, uneven)
}

impl Backing {
    /// All backings.
    pub const ALL: [Self; 11] = [
        Self::White,
        Self::Grey,
        Self::Coloured,
        Self::Wood,
        Self::Red,
        Self::Green,
        Self::Dark,
        Self::Cork,
        Self::Brick,
        Self::Patterned,
        Self::Bare,
    ];

    /// Whether it is the room's own wall, without an edge.
    pub(super) fn is_room(self) -> bool {
        matches!(self, Self::Brick | Self::Patterned | Self::Bare)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::frame::float;

    /// sRGB colours of a backing on a grid of places, each made lighter or darker.
    fn seen(backing: Backing) -> Vec<[f64; 3]> {
        let grain = Grain::new(5);
        let place = |i: usize| (float(i % 90) * 7.3, float(i / 90) * 5.1);
        (0..8100)
            .map(|i| {
                let (x, y) = place(i);
                let (colour, uneven) = look(backing, &grain, x, y);
                assert!(uneven.abs() < 0.9, "{backing:?}");
                colour.map(|level| f64::from(level) * (1.0 + f64::from(uneven)))
            })
            .collect()
    }

    #[test]
    fn no_backing_looks_like_another() {
        let means = Backing::ALL.map(|backing| {
            let all = seen(backing);
            [0, 1, 2].map(|k| all.iter().map(|colour| colour[k]).sum::<f64>() / float(all.len()))
        });
        for (i, one) in means.iter().enumerate() {
            for (j, other) in means.iter().enumerate().take(i) {
                let apart: f64 = one.iter().zip(other).map(|(a, b)| (a - b).abs()).sum();
                assert!(apart > 12.0, "{:?} and {:?}: {apart}", Backing::ALL[i], Backing::ALL[j]);
            }
        }
    }

    #[test]
    fn bricks_have_as_much_joint_as_their_format_says() {
        let grain = Grain::new(5);
        let ([long, high], joint) = BRICK_MM;
        // a row and the next, half a brick further, from joint to joint
        let count = 150 * 150;
        let joints = (0..count).filter(|i| {
            let (x, y) = (float(i % 150) * 2.0 * long / 150.0, float(i / 150) * 2.0 * high / 150.0);
            brick(&grain, x, y, 0.0).0 == [172, 166, 154]
        });
        let share = 1.0 - (1.0 - joint / long) * (1.0 - joint / high);
        assert!((float(joints.count()) / float(count) - share).abs() < 0.02);
    }
}
