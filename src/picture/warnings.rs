//! What an organiser should know of the pencils before she prints.

use super::colour::ciede2000;
use super::facts::PictureFacts;
use crate::plan::level::Level;

/// Two pencils nearer than this by CIEDE2000 are mixed up: patches side by side can be told apart from about 1, but pencil
/// strokes are uneven, paper shows through, and rooms are dim. Common practice, no source.
pub const ALIKE: f64 = 10.0;
/// Pieces below which a pencil is hardly worth laying out.
pub const RARE_PIECES: usize = 2;

/// Something about the pencils.
#[derive(Clone, Debug, PartialEq)]
pub enum ColourWarning {
    /// Two pencils are hard to tell apart.
    Alike {
        /// The name of one.
        one: String,
        /// The name of the other.
        other: String,
        /// How far apart they are, CIEDE2000; below [`ALIKE`].
        apart: f64,
    },
    /// A pencil is needed for hardly a piece.
    Rare {
        /// Its name.
        pencil: String,
        /// For how many pieces; below [`RARE_PIECES`].
        pieces: usize,
    },
    /// Some pieces are white all over.
    LeftWhite {
        /// How many; at least one.
        pieces: usize,
    },
    /// More pieces are plain than there is something to draw on.
    MostlyPlain {
        /// Pieces of one colour.
        plain: usize,
        /// All the others.
        drawn: usize,
    },
}

/// All warnings, the pencils in their order.
#[must_use]
pub fn colour_warnings(facts: &PictureFacts) -> Vec<ColourWarning> {
    let pencils = &facts.pencils;
    let pairs = pencils
        .iter()
        .enumerate()
        .flat_map(|(i, one)| pencils[i + 1..].iter().map(move |other| (one, other)));
    let alike = pairs.filter_map(|(one, other)| {
        let apart = ciede2000(one.srgb, other.srgb);
        (apart < ALIKE).then(|| ColourWarning::Alike {
            one: one.name.clone(),
            other: other.name.clone(),
            apart,
        })
    });
    let counted = pencils.iter().enumerate().map(|(number, pencil)| (pencil, facts.pieces_with(number)));
    let counted = counted.filter(|(pencil, _)| !pencil.is_paper());
    let rare = counted.filter(|(_, pieces)| *pieces < RARE_PIECES);
    let rare = rare.map(|(pencil, pieces)| ColourWarning::Rare { pencil: pencil.name.clone(), pieces });
    let plain = facts.count(Level::Plain);
    let drawn = facts.own().count() - plain;
    let plain = (plain > drawn).then_some(ColourWarning::MostlyPlain { plain, drawn });
    let white = facts.left_white();
    let white = (white > 0).then_some(ColourWarning::LeftWhite { pieces: white });
    alike.chain(rare).chain(white).chain(plain).collect()
}
