//! `pairs.pdf`: chosen pieces beside their squares, at equal size, under the square's label. Never a name.

use serde::Serialize;

use super::exhibit::{Exhibit, Head, room, whole_at_size, wider};
use super::{Lacking, Pair};
use crate::frame::float;
use crate::print::PrintError;
use crate::print::page::{Foot, Reading, Set};

/// White between a piece and its square, and between one pair and the next, in mm.
const GAP_MM: f64 = 3.0;
const APART_MM: f64 = 9.0;
/// Pairs side by side at most.
const MOST_ACROSS: usize = 4;
/// Smallest side of a picture for which all stand on one page, in mm: that of a usual piece. Below it they go on over pages, two side by side.
const LEAST_SIDE_MM: f64 = 25.0;
/// Height of the head, of the sentence below it and of the frame that says that a picture was made, and of a pair's label with the white around
/// it, in mm on letter paper.
const HEAD_MM: f64 = 50.0;
const LABEL_MM: f64 = 12.0;

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

/// How many pairs stand side by side, and how wide a picture is, in mm: as large as all have room on one page.
fn arranged([width, height]: [f64; 2], pairs: usize, wider: f64) -> (usize, f64) {
    let across_mm = |across: usize| {
        let between = float(across - 1) * APART_MM + float(across) * GAP_MM;
        (width - between) / float(2 * across)
    };
    let sized = |across: usize| {
        let rows = float(pairs.div_ceil(across));
        (across, across_mm(across).min((height - HEAD_MM * wider) / rows - LABEL_MM * wider))
    };
    let largest = (1..=MOST_ACROSS).map(sized).max_by(|a, b| a.1.total_cmp(&b.1));
    largest.filter(|(_, side)| *side >= LEAST_SIDE_MM).unwrap_or((2, across_mm(2)))
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
    let (across, side) = arranged(room(sources), exhibit.pairs.len(), wider(sources));
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
    exhibit.set(Reading { name: "pairs", foot: Foot::Line, content, pictures })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn pairs_share_a_page_until_they_get_small() {
        let room = [182.0, 240.0];
        assert_eq!(arranged(room, 1, 1.0).0, 1);
        let (across, side) = arranged(room, 12, 1.0);
        assert!(across == 3 && side >= LEAST_SIDE_MM, "{across}, {side}");
        let rows = 12_f64 / 3.0;
        assert!(HEAD_MM + rows * (side + LABEL_MM) <= room[1]);
        assert_eq!(arranged(room, 40, 1.0).0, 2, "over pages");
    }
}
