//! Sentences about what a drawing looks like.

use super::{Belongs, Likeness};
use crate::plan::{Cell, Grid, Turn};
use crate::words::Sentence;

/// Sentence about a square whose code was read; `None` where there is nothing to say.
#[must_use]
pub fn about(belongs: Belongs, printed_for: Cell, grid: &Grid) -> Option<Sentence> {
    let Belongs::Elsewhere(Likeness { piece, turn, .. }) = belongs else { return None };
    let square = grid.label(printed_for);
    Some(match (piece == printed_for, turn) {
        (true, _) => Sentence::new("likeness-turned").with("square", square).with("degrees", turn.degrees()),
        (false, Turn::None) => {
            Sentence::new("likeness-elsewhere").with("square", square).with("other", grid.label(piece))
        }
        (false, _) => Sentence::new("likeness-elsewhere-turned")
            .with("square", square)
            .with("other", grid.label(piece))
            .with("degrees", turn.degrees()),
    })
}

/// Sentence about a square whose code was not read, in the cell where it hangs.
#[must_use]
pub fn about_unread(suggestion: Likeness, hangs_in: Cell, grid: &Grid) -> Sentence {
    Sentence::new("likeness-unread")
        .with("cell", grid.label(hangs_in))
        .with("other", grid.label(suggestion.piece))
}
