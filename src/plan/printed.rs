//! From settings to what is printed by them.

use super::cards::all_cards;
use super::code::{CodeError, Modules};
use super::manifest::{Printed, PrintedSquare};
use super::settings::Settings;
use crate::frame::Point;

impl Settings {
    /// What is printed by these settings: every square's code and every card, encoded.
    ///
    /// # Errors
    /// [`CodeError`] where a label does not fit a code; no label of a wall within [`ACROSS`](super::cell::ACROSS) and [`MOST_CELLS`](super::cell::MOST_CELLS) does that.
    pub fn printed(&self) -> Result<Printed, CodeError> {
        let squares = self.grid.cells().map(|cell| {
            let label = self.grid.label(cell);
            let text = self.tag.square(&label);
            Ok(PrintedSquare { cell, modules: Modules::encode(&text)?, label, text })
        });
        let (x, y) = self.code.top_left_mm(self.grid.square_mm);
        Ok(Printed {
            name: self.name.clone(),
            tag: self.tag.to_string(),
            units: self.print.units,
            grid: self.grid,
            parts: self.parts.clone(),
            stub_mm: self.print.stub_mm(),
            module_mm: self.code.module_mm,
            code_top_left: Point::new(x, y),
            squares: squares.collect::<Result<_, CodeError>>()?,
            cards: all_cards(&self.grid, self.tag)?,
        })
    }
}
