//! What an organiser should know of the pencils before she prints.

use super::colour::ciede2000;
use super::facts::PictureFacts;
use crate::plan::level::Level;

/// Two pencils nearer than this by CIEDE2000 are mixed up: patches side by side can be told apart from about 1, but pencil
/// strokes are uneven, paper shows through, and rooms are dim. Common practice, no source.
pub const ALIKE: f64 = 10.0;
/// Tiles below which a pencil is hardly worth laying out.
pub const RARE_TILES: usize = 2;

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
    /// A pencil is needed for hardly a tile.
    Rare {
        /// Its name.
        pencil: String,
        /// For how many tiles; below [`RARE_TILES`].
        tiles: usize,
    },
    /// More tiles are plain than there is something to draw on.
    MostlyPlain {
        /// Tiles of one colour.
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
    let mut tiles = vec![0; pencils.len()];
    facts.tiles.iter().flat_map(super::TileFacts::colours).for_each(|number| tiles[number] += 1);
    let rare = pencils.iter().zip(tiles).filter(|(_, tiles)| *tiles < RARE_TILES);
    let rare = rare.map(|(pencil, tiles)| ColourWarning::Rare { pencil: pencil.name.clone(), tiles });
    let plain = facts.count(Level::Plain);
    let drawn = facts.tiles.len() - plain;
    let plain = (plain > drawn).then_some(ColourWarning::MostlyPlain { plain, drawn });
    alike.chain(rare).chain(plain).collect()
}
