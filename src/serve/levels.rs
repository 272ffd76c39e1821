//! What pages need of the picture: how hard each piece is to draw, and the colours of its pencils.

use crate::picture::order::Band;
use crate::picture::{FewColours, Picture, PictureFacts, PieceFacts};
use crate::plan::{Level, Settings};
use crate::words::Words;

/// The levels of an event's pieces; a border in reserve stands behind them as one more.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Levels {
    /// What the levels are called, the easiest first; empty where pieces have no levels.
    pub names: Vec<String>,
    /// For each piece, row by row from the top, the place of its level in `names`; empty where pieces have no levels.
    pub of: Vec<usize>,
    /// The pieces in the order in which they are handed out; empty where there is none.
    pub order: Vec<usize>,
}

impl Levels {
    /// Pieces in groups of one level each, the easiest first, in the order in which they are handed out; one group without a name where
    /// pieces have no levels.
    #[must_use]
    pub fn groups(&self, pieces: &[usize]) -> Vec<(String, Vec<usize>)> {
        let mut place = vec![usize::MAX; self.of.len()];
        self.order.iter().enumerate().for_each(|(at, piece)| place[*piece] = at);
        let mut pieces = pieces.to_vec();
        pieces.sort_by_key(|piece| place.get(*piece).copied());
        if self.names.is_empty() {
            return vec![(String::new(), pieces)];
        }
        let level = |piece: &usize| self.of.get(*piece).copied().unwrap_or(0);
        let groups = self.names.iter().enumerate();
        groups
            .map(|(at, name)| {
                (name.clone(), pieces.iter().copied().filter(|piece| level(piece) == at).collect::<Vec<_>>())
            })
            .filter(|(_, pieces)| !pieces.is_empty())
            .collect()
    }
}

/// The pencils of an event's picture and what each piece is like.
#[must_use]
pub fn facts_of(picture: &Picture, settings: &Settings) -> PictureFacts {
    PictureFacts::of(&FewColours::chosen(picture, &settings.picture), &settings.grid, &settings.levels)
}

/// The colours of the pencils as CSS writes them, `#rrggbb`.
#[must_use]
pub fn colours_of(facts: &PictureFacts) -> Vec<String> {
    facts.pencils.iter().map(|pencil| pencil.hex()).collect()
}

/// The levels of an event's pieces, by the settings' names or the language's.
#[must_use]
pub fn levels_of(facts: &PictureFacts, settings: &Settings, words: &Words) -> Levels {
    let level = |piece: &PieceFacts| match piece.band {
        Band::Reserve => Level::ALL.len(),
        _ => piece.level.index(),
    };
    let names = Level::ALL.iter().map(|level| settings.levels.word(*level, words));
    Levels {
        names: names.chain([words.say("serve-border", &[])]).collect(),
        of: facts.pieces.iter().map(level).collect(),
        order: facts.order.clone(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn pieces_come_in_groups_of_a_level_in_the_order_of_handing_out() {
        let names = vec!["easy".into(), "middling".into(), "hard".into()];
        let levels = Levels { names, of: vec![2, 0, 0, 2], order: vec![3, 2, 0, 1] };
        let groups = levels.groups(&[0, 1, 2, 3]);
        assert_eq!(groups, [("easy".to_owned(), vec![2, 1]), ("hard".to_owned(), vec![3, 0])]);
        assert_eq!(Levels::default().groups(&[3, 1]), [(String::new(), vec![3, 1])]);
    }
}
