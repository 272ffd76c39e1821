//! Where the wall hangs, as it is typed: `--wall "4x6ft, door, 5x6ft" --hang 800`.

use std::ops::RangeInclusive;

use super::CliError;
use super::mistyped::{Refused, within};
use crate::plan::settings::{EveningSettings, HANG_MM, NewValue, Room, WallPart};
use crate::plan::{Grid, boards};
use crate::words::Sentence;

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

/// The place for the wall, as it was typed: event.toml keeps the unit. Several places beside each other take the wall in parts.
#[derive(Clone, Debug)]
pub(super) struct Place {
    boards: Vec<Room>,
    typed: String,
}

impl Place {
    /// The parts that the wall hangs in, cut where the fewest outlines cross; one where it hangs on one board.
    ///
    /// # Errors
    /// [`CliError`] where the boards have no room for all columns, or are too low.
    pub fn parts(&self, grid: &Grid, crossings: &[usize]) -> Result<Vec<WallPart>, CliError> {
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
        let mut parts = boards::parts(grid, &widths);
        let used = self.boards.iter().zip(&widths).filter(|(_, width)| **width > 0);
        parts.iter_mut().zip(used).for_each(|(part, (board, _))| part.board = Some(*board));
        Ok(parts)
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

    /// The parts where several places were typed.
    ///
    /// # Errors
    /// As [`Place::parts`].
    pub fn on_boards(&self, grid: &Grid, crossings: &[usize]) -> Result<Option<Vec<WallPart>>, CliError> {
        let several = self.wall.as_ref().filter(|place| place.room().is_none());
        several.map(|place| place.parts(grid, crossings)).transpose()
    }
}

fn number(text: &str, range: &RangeInclusive<f64>) -> Result<f64, Refused> {
    within("typed-number-from", text, range)
}

fn place(text: &str) -> Result<Place, Refused> {
    let boards = boards::read(text).ok_or_else(|| Refused::new(Sentence::new("error-typed-wall")))?;
    Ok(Place { boards, typed: text.trim().to_owned() })
}
