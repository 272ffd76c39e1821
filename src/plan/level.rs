//! How hard a tile is to redraw.

use super::settings::Choice;

/// How hard a tile is to redraw, the easiest first.
#[derive(Copy, Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Level {
    /// One colour all over.
    Plain,
    /// A shape or two.
    Easy,
    /// Several shapes or colours.
    Medium,
    /// Many small shapes, or long and winding edges.
    Hard,
}

impl Level {
    /// All of them, the easiest first.
    pub const ALL: [Self; 4] = [Self::Plain, Self::Easy, Self::Medium, Self::Hard];

    /// Its place in [`Level::ALL`].
    #[must_use]
    pub fn index(self) -> usize {
        match self {
            Self::Plain => 0,
            Self::Easy => 1,
            Self::Medium => 2,
            Self::Hard => 3,
        }
    }
}

impl Choice for Level {
    const ALL: &'static [(Self, &'static str)] =
        &[(Self::Plain, "plain"), (Self::Easy, "easy"), (Self::Medium, "medium"), (Self::Hard, "hard")];
}
