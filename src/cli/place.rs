//! Where the wall hangs, as it is typed: `--wall "4x6ft, door, 5x6ft" --hang 800`.

use std::cmp::Reverse;
use std::ops::RangeInclusive;

use super::CliError;
use super::mistyped::{Refused, within};
use crate::plan::crowd::Fit;
use crate::plan::settings::{
    EveningSettings, HANG_MM, NewValue, Room, SettingsError, WallPart, set, set_parts,
};
use crate::plan::{Grid, Settings, boards};
use crate::words::{Sentence, Words};

/// The place and its height.
#[derive(Debug, clap::Args)]
pub(super) struct PlaceArgs {
    /// The place for the wall.
    #[arg(long, value_name = "SIZE", value_parser = place)]
    pub wall: Option<Place>,
    /// The wall's lower edge over the floor.
    #[arg(long, value_name = "MM", allow_negative_numbers = true, value_parser = |text: &str| number(text, &HANG_MM))]
    pub hang: Option<f64>,
}

/// How a wall hangs in a place.
#[derive(Clone, Debug, PartialEq)]
pub(super) enum Hung {
    /// In one piece on a board; which one from the left, where there are several.
    On(Room, Option<usize>),
    /// In parts, each on a board of its own.
    InParts(Vec<WallPart>),
}

impl Hung {
    /// Lets settings say so.
    pub fn settle(&self, settings: &mut Settings) {
        match self {
            Self::On(board, _) => (settings.evening.wall, settings.parts) = (Some(*board), Vec::new()),
            Self::InParts(parts) => settings.parts.clone_from(parts),
        }
    }

    /// event.toml with it; the one board that was typed alone stands there as it was typed.
    ///
    /// # Errors
    /// [`SettingsError`] where what comes of it is refused.
    pub fn kept(&self, text: &str, words: &Words) -> Result<String, SettingsError> {
        match self {
            Self::On(_, None) => set_parts(text, &[], words),
            Self::On(board, Some(_)) => {
                set_parts(&set(text, "evening.wall", NewValue::Text(board.written()))?, &[], words)
            }
            Self::InParts(parts) => set_parts(text, parts, words),
        }
    }

    /// On which of several boards all of it hangs; `None` where that needs no words.
    pub fn told(&self, words: &Words) -> Option<String> {
        let Self::On(board, Some(number)) = self else { return None };
        let named = [("number", number.to_string().into()), ("size", board.written().into())];
        Some(words.say("place-one-board", &named))
    }
}

/// The place for the wall, as it was typed: event.toml keeps the unit. Several places beside each other take the wall in parts.
#[derive(Clone, Debug)]
pub(super) struct Place {
    boards: Vec<Room>,
    typed: String,
}

impl Place {
    /// How the wall hangs there: on one board where one takes it all, with the edge cards where that can be, else in parts, cut where the
    /// fewest outlines cross.
    ///
    /// # Errors
    /// [`CliError`] where the boards have no room for all columns, or are too low.
    pub fn hung(&self, grid: &Grid, crossings: &[usize]) -> Result<Hung, CliError> {
        let most: Vec<usize> = self.boards.iter().map(|board| boards::columns_of(grid, *board)).collect();
        let widths = boards::cut(grid.columns, &most, crossings).ok_or_else(|| {
            let listed: Vec<String> = most.iter().map(usize::to_string).collect();
            CliError::new(
                Sentence::new("error-plan-boards")
                    .with("columns", grid.columns.to_string())
                    .with("rows", grid.rows.to_string())
                    .with("taken", listed.join(", ")),
            )
        })?;
        if widths.contains(&grid.columns) {
            let able =
                self.boards.iter().zip(&most).enumerate().filter(|(_, (_, most))| **most >= grid.columns);
            // one with room for the edge cards where there is one; of equals the one farther left
            let best = able.max_by_key(|(at, (board, _))| (Fit::of(grid, **board).with_cards, Reverse(*at)));
            if let Some((at, (board, _))) = best {
                return Ok(Hung::On(*board, (self.boards.len() > 1).then_some(at + 1)));
            }
        }
        let mut parts = boards::parts(grid, &widths);
        let used = self.boards.iter().zip(&widths).filter(|(_, width)| **width > 0);
        parts.iter_mut().zip(used).for_each(|(part, (board, _))| part.board = Some(*board));
        Ok(Hung::InParts(parts))
    }

    /// The one board, where there is one.
    fn room(&self) -> Option<Room> {
        <[Room; 1]>::try_from(self.boards.as_slice()).ok().map(|[room]| room)
    }
}

impl PlaceArgs {
    /// What was typed, under its names in event.toml.
    pub fn given(&self) -> impl Iterator<Item = (&'static str, NewValue)> {
        let one = self.wall.as_ref().filter(|place| place.room().is_some());
        let all = [
            ("evening.wall", one.map(|place| NewValue::Text(place.typed.clone()))),
            ("evening.hang_mm", self.hang.map(NewValue::Number)),
        ];
        all.into_iter().filter_map(|(name, value)| Some((name, value?)))
    }

    /// What was typed counts instead of what event.toml says.
    pub fn override_in(&self, evening: &mut EveningSettings) {
        if let Some(place) = &self.wall {
            evening.wall = place.room();
        }
        evening.hang_mm = self.hang.or(evening.hang_mm);
    }

    /// How the wall hangs in the place that was typed; `None` where none was. A single place takes it in one piece, whether it has room for
    /// it or not.
    ///
    /// # Errors
    /// As [`Place::hung`].
    pub fn hung(&self, grid: &Grid, crossings: &[usize]) -> Result<Option<Hung>, CliError> {
        let hung = |place: &Place| match place.room() {
            Some(board) => Ok(Hung::On(board, None)),
            None => place.hung(grid, crossings),
        };
        self.wall.as_ref().map(hung).transpose()
    }
}

fn number(text: &str, range: &RangeInclusive<f64>) -> Result<f64, Refused> {
    within("typed-number-from", text, range)
}

fn place(text: &str) -> Result<Place, Refused> {
    let boards = boards::read(text).ok_or_else(|| Refused::new(Sentence::new("error-typed-wall")))?;
    Ok(Place { boards, typed: text.trim().to_owned() })
}
