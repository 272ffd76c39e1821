//! What hangs in a cell, and what was done to it.

use serde::{Deserialize, Serialize};

use crate::plan::{Cell, Modules, Turn};

/// What was done to a square.
#[derive(Copy, Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum Condition {
    /// Nothing.
    Flat,
    /// Its code was painted over.
    Scribbled,
    /// Tape lies over half of its code.
    Covered,
    /// A corner is torn off.
    Torn,
    /// The stub with its piece was left on, and hangs out over the neighbour.
    Stub,
}

/// What hangs in a cell.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Hung {
    /// Which cell's drawing it shows.
    pub home: Cell,
    /// The text and the code on it where it is of another event.
    pub stranger: Option<(String, Modules)>,
    /// How far it is turned.
    pub turn: Turn,
    /// What was done to it.
    pub condition: Condition,
    /// The piece that was drawn on it, and how far clockwise the drawing is turned against the paper.
    /// `None` where nothing was drawn.
    pub drawn: Option<(Cell, Turn)>,
    /// Whether only a part of it was drawn.
    pub begun: bool,
}

impl Hung {
    /// A square as it should be.
    pub fn own(home: Cell) -> Self {
        Self {
            home,
            stranger: None,
            turn: Turn::None,
            condition: Condition::Flat,
            drawn: Some((home, Turn::None)),
            begun: false,
        }
    }
}
