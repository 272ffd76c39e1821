//! Fine comparison: one drawing against one piece, forgiving what crayons, hands and lights do.
//!
//! ```text
//!   piece's areas ─▶ each in the mean colour that the drawing has where it is pure ─▶ the piece as this
//!                   visitor would have coloured it ─▶ at each place: how far is the drawing from all
//!                   that the piece has within 4 mm, and the other way round                 ▶ shape
//!   those mean colours against the pencils', all as pale or as strong as they are together ▶ colour
//! ```

use super::coarse::GAIN;
use super::piece::Piece;
use super::plane::{Ink, PLACES, Plane, reach};

/// Share of a place, 0 … 255, above which it is one pencil's.
const PURE: u8 = 191;
/// Weight of the pencil's own colour in the mean, in places; small areas keep nearly what the pencil has.
const PRIOR: f32 = 20.0;
/// Maximum misfit of one place, in squares of ink: what lies over the paper, tape or a neighbour, is not the
/// drawing.
const MOST_SHAPE: f32 = 0.2;
/// Maximum misfit of an area's colour, in squares of ink: somebody took another pencil.
const MOST_COLOUR: f32 = 0.06;
/// Weight of the colours' misfit beside the shapes'.
///
/// At 1 a drawing in wrong colours looks like another piece; at 0 trees look like clouds.
const COLOUR: f32 = 0.2;

/// A drawing turned back by some quarters.
#[derive(Clone, Debug)]
pub(super) struct View {
    ink: [Plane; 3],
    least: [Plane; 3],
    most: [Plane; 3],
    /// Weight of each place; they sum to 1.
    weight: Plane,
}

/// Misfit of a drawing to a piece: mean squares of ink, 0 … about 1.
#[derive(Copy, Clone, Debug, PartialEq)]
pub(super) struct Misfit {
    pub shape: f32,
    pub all: f32,
}

impl View {
    pub fn of(ink: [Plane; 3], weight: &Plane) -> Self {
        let sum: f32 = weight.iter().sum::<f32>().max(1.0);
        let [a, b, c] = [0, 1, 2].map(|i: usize| reach(&ink[i]));
        Self { ink, least: [a.0, b.0, c.0], most: [a.1, b.1, c.1], weight: weight.map(|own| own / sum) }
    }

    /// Misfit of the drawing to a piece.
    pub fn misfit(&self, piece: &Piece, inks: &[Ink]) -> Misfit {
        let gain = self.gain(piece, inks);
        let meant: Vec<Ink> = inks.iter().map(|ink| ink.map(|level| level * gain)).collect();
        let mut used = meant.clone();
        let mut colour = 0.0;
        for (pencil, shares) in &piece.shares {
            let (sum, count) = self.pure(shares);
            let mean = [0, 1, 2].map(|i| (sum[i] + PRIOR * meant[*pencil][i]) / (count + PRIOR));
            let off: f32 = [0, 1, 2].map(|i| (mean[i] - meant[*pencil][i]).powi(2)).iter().sum();
            let area: f32 =
                shares.iter().zip(&self.weight).map(|(own, weight)| f32::from(*own) * weight).sum();
            colour += off.min(MOST_COLOUR) * area / 255.0;
            used[*pencil] = mean;
        }
        let shape = self.shape(&piece.in_colours(|pencil| used[pencil]));
        Misfit { shape, all: shape + COLOUR * colour }
    }

    /// Gain of the drawing's colours over the pencils'.
    fn gain(&self, piece: &Piece, inks: &[Ink]) -> f32 {
        let (mut both, mut own) = (0.0, 0.0);
        for (plane, drawn) in piece.in_colours(|pencil| inks[pencil]).iter().zip(&self.ink) {
            for i in 0..PLACES {
                both += plane[i] * drawn[i] * self.weight[i];
                own += plane[i] * plane[i] * self.weight[i];
            }
        }
        (both / own.max(1e-4)).clamp(GAIN.0, GAIN.1)
    }

    /// Sum of the drawing's ink over the places where a pencil is alone, and their number.
    fn pure(&self, shares: &[u8]) -> (Ink, f32) {
        let (mut sum, mut count) = ([0.0; 3], 0.0);
        for (i, _) in shares.iter().enumerate().filter(|(i, share)| **share > PURE && self.weight[*i] > 0.0) {
            for (sum, plane) in sum.iter_mut().zip(&self.ink) {
                *sum += plane[i];
            }
            count += 1.0;
        }
        (sum, count)
    }

    /// Pencils that a drawing of a piece shows at `least` places or more, with their ink at the picture's
    /// strength.
    pub fn pencils(&self, piece: &Piece, inks: &[Ink], least: f32) -> Vec<(usize, Ink)> {
        let gain = self.gain(piece, inks);
        let shown = piece.shares.iter().map(|(pencil, shares)| (*pencil, self.pure(shares)));
        let clear = shown.filter(|(_, (_, count))| *count >= least);
        clear.map(|(pencil, (sum, count))| (pencil, sum.map(|sum| (sum / count / gain).min(1.0)))).collect()
    }

    fn shape(&self, piece: &[Plane; 3]) -> f32 {
        let (mut there, mut back) = ([0.0; PLACES], [0.0; PLACES]);
        for (channel, plane) in piece.iter().enumerate() {
            let (least, most) = reach(plane);
            beyond(&mut there, &self.ink[channel], &least, &most);
            beyond(&mut back, plane, &self.least[channel], &self.most[channel]);
        }
        let mut sum = 0.0;
        for i in 0..PLACES {
            sum += (there[i].min(MOST_SHAPE) + back[i].min(MOST_SHAPE)) * self.weight[i];
        }
        sum / 2.0
    }
}

/// Adds the squared distance of values from their ranges, 0 within.
fn beyond(sums: &mut Plane, values: &Plane, least: &Plane, most: &Plane) {
    for i in 0..PLACES {
        let off = (least[i] - values[i]).max(values[i] - most[i]).max(0.0);
        sums[i] += off * off;
    }
}
