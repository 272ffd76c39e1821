//! `pairs.pdf`: chosen pieces beside their squares, at equal size, under the square's label. Never a name.

use serde::Serialize;

use super::exhibit::{Exhibit, Head, room, whole_at_size};
use super::{Lacking, Pair};
use crate::frame::float;
use crate::print::PrintError;
use crate::print::page::{Foot, Reading, Set};

/// White between a piece and its square, and between one pair and the next, in mm.
const GAP_MM: f64 = 3.0;
const APART_MM: f64 = 9.0;
/// Up to so many pairs stand one below the other, large; more stand two side by side.
const LARGE: usize = 2;

/// What the template sets.
#[derive(Serialize)]
struct Content {
    head: Head,
    intro: String,
    /// Side of a picture, in mm; the white between the two and between pairs.
    side: f64,
    gap: f64,
    apart: f64,
    across: usize,
    pairs: Vec<Shown>,
}

#[derive(Serialize)]
struct Shown {
    label: String,
    alt: String,
}

/// Lays the pages out.
///
/// # Errors
/// [`PrintError::Nothing`] where there is no pair; [`PrintError::Typeset`].
pub(super) fn set(exhibit: &Exhibit) -> Result<Set, PrintError> {
    if exhibit.pairs.is_empty() {
        return Err(PrintError::Nothing(Lacking::Pairs));
    }
    let sources = exhibit.sources();
    let across = if exhibit.pairs.len() <= LARGE { 1 } else { 2 };
    let [width, _] = room(sources);
    let between = float(across - 1) * APART_MM + float(across) * GAP_MM;
    let side = (width - between) / float(2 * across);
    let shown = |pair: &&Pair| {
        let label = exhibit.grid().label(pair.cell);
        Shown { alt: sources.words.say("comparison-pair-alt", &[("label", label.as_str().into())]), label }
    };
    let content = Content {
        head: exhibit.head("pairs"),
        intro: exhibit.say("comparison-pairs-intro"),
        side,
        gap: GAP_MM,
        apart: APART_MM,
        across,
        pairs: exhibit.pairs.iter().map(shown).collect(),
    };
    let pictures = exhibit
        .pairs
        .iter()
        .flat_map(|pair| [exhibit.piece(pair.cell, side), whole_at_size(&pair.square, [side; 2])]);
    let pictures = pictures.collect();
    Reading { name: "pairs", foot: Foot::Line, content, pictures }.set(sources)
}
