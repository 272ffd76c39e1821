//! The printer's desk: pages of one spot are made one at a time. A page takes a quarter of a second of all there is, and whoever asks
//! meanwhile is told to ask again. Nothing is kept.

use std::sync::{Mutex, TryLockError};

use crate::plan::{Cell, Folder, Printed};
use crate::print::event::{Event, EventError};
use crate::print::one::One;
use crate::print::{Document, PrintError};
use crate::words::{Sentence, Tell, Words};

/// Why there is no page.
#[derive(Debug)]
pub enum NotPrinted {
    /// Another one is being made.
    Busy,
    /// It cannot be made.
    Because(Sentence),
    /// There is no such page.
    Nothing,
}

impl From<EventError> for NotPrinted {
    fn from(error: EventError) -> Self {
        Self::Because(error.sentence())
    }
}

impl From<PrintError> for NotPrinted {
    fn from(error: PrintError) -> Self {
        Self::Because(error.sentence())
    }
}

/// The printer's desk: who is there has it to himself.
#[derive(Debug, Default)]
pub struct Desk(Mutex<()>);

impl Desk {
    /// Makes a page of a cell.
    ///
    /// # Errors
    /// [`NotPrinted`] where another one is being made, or why this one cannot be.
    pub fn page(
        &self,
        (folder, printed): (&Folder, &Printed),
        cell: Cell,
        one: One,
        words: &Words,
    ) -> Result<Document, NotPrinted> {
        let _desk = match self.0.try_lock() {
            Err(TryLockError::WouldBlock) => return Err(NotPrinted::Busy),
            Ok(desk) => desk,
            Err(TryLockError::Poisoned(desk)) => desk.into_inner(),
        };
        let settings = folder.settings().map_err(|error| NotPrinted::Because(error.sentence()))?;
        let event = Event::open(folder, settings, words)?;
        if !event.prints_as(printed) {
            let sentence = Sentence::new("error-print-changed").with("folder", folder.root());
            return Err(NotPrinted::Because(sentence));
        }
        if !One::of(event.settings.print.join).contains(&one) {
            return Err(NotPrinted::Nothing);
        }
        let document = one.document(&event.sources(words), event.few(), printed.grid.index(cell))?;
        document.ok_or(NotPrinted::Nothing)
    }
}
