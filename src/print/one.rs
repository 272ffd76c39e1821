//! One spot's pages, when they are needed: its square or piece again, or another way for whoever needs that.

use super::fill::{Look, helped};
use super::home::home;
use super::large::large;
use super::{Document, PrintError, Sources, again};
use crate::picture::FewColours;
use crate::plan::settings::{Choice, Join};

/// What is printed of one spot.
#[derive(Copy, Clone, Debug, PartialEq, Eq)]
pub enum One {
    /// Its square again.
    Square,
    /// Its piece again.
    Piece,
    /// Its strip again.
    Strip,
    /// Its square with outlines and names of colours.
    Helped,
    /// Its piece, larger, with letters.
    Large,
    /// A page to draw it at home.
    Home,
}

impl Choice for One {
    const ALL: &'static [(Self, &'static str)] = &[
        (Self::Square, "square"),
        (Self::Piece, "piece"),
        (Self::Strip, "strip"),
        (Self::Helped, "helped"),
        (Self::Large, "large"),
        (Self::Home, "home"),
    ];
}

impl One {
    /// What there is of a spot in a kit whose pieces and squares are joined so.
    #[must_use]
    pub fn of(join: Join) -> Vec<Self> {
        let again: &[Self] = match join {
            Join::Apart => &[Self::Square, Self::Piece],
            Join::Beside => &[Self::Strip],
        };
        [again, &[Self::Helped, Self::Large, Self::Home]].concat()
    }

    /// Typesets it for a spot, by its place in the grid.
    ///
    /// # Errors
    /// A [`PrintError`] where it does not fit the paper, or where the kit has no such thing.
    pub fn document(
        self,
        sources: &Sources,
        few: &FewColours,
        cell: usize,
    ) -> Result<Option<Document>, PrintError> {
        let cells = [cell];
        let again = |name: &str| Ok(again(sources, &cells, &[name.to_owned()])?.into_iter().next());
        match self {
            Self::Square => again("squares"),
            Self::Piece => again("pieces"),
            Self::Strip => again("strips"),
            Self::Helped => helped(sources, few, &cells, Look::Outlined).map(Some),
            Self::Large => large(sources, few, &cells).map(Some),
            Self::Home => home(sources, &cells).map(Some),
        }
    }
}
