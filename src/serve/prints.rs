//! Pages of one spot, printed from the helpers' page when they are needed: `GET print/17/square`.
//!
//! One at a time: a page takes a quarter of a second of all there is, and whoever asks meanwhile is told to ask again. Nothing is kept.

use std::sync::{Arc, Mutex, TryLockError};

use axum::extract::{Path, State};
use axum::http::{HeaderValue, StatusCode};
use axum::response::Response;

use crate::plan::settings::Choice;
use crate::plan::{Cell, Folder, Printed};
use crate::print::event::{Event, EventError};
use crate::print::one::One;
use crate::print::{Document, PrintError};
use crate::words::{Sentence, Tell, Words};

use super::answer::bytes;
use super::routes::{Shared, at, nothing};

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

/// Answers with the page, to be shown and printed by the browser.
pub(super) async fn print(
    State(shared): State<Arc<Shared>>,
    Path((place, kind)): Path<(String, String)>,
) -> Response {
    let (Some(cell), Some(one)) = (at(&shared, &place), One::named(&kind)) else { return nothing() };
    let for_page = Arc::clone(&shared);
    let made = tokio::task::spawn_blocking(move || for_page.evening.page(cell, one)).await;
    let words = &shared.evening.words;
    let told = |status: StatusCode, told: String| bytes(status, "text/plain; charset=utf-8", told);
    match made {
        Ok(Ok(document)) => {
            let mut response = bytes(StatusCode::OK, "application/pdf", document.bytes);
            let name = format!("inline; filename=\"{}-{kind}.pdf\"", shared.evening.printed.grid.label(cell));
            if let Ok(name) = HeaderValue::from_str(&name) {
                response.headers_mut().insert("content-disposition", name);
            }
            response
        }
        Ok(Err(NotPrinted::Because(sentence))) => told(StatusCode::CONFLICT, sentence.tell(words)),
        Ok(Err(NotPrinted::Busy)) => {
            told(StatusCode::SERVICE_UNAVAILABLE, words.say("serve-print-busy", &[]))
        }
        Ok(Err(NotPrinted::Nothing)) => nothing(),
        // whatever made it stumble is said to nobody, as for photos
        Err(_) => told(StatusCode::INTERNAL_SERVER_ERROR, words.say("serve-print-busy", &[])),
    }
}
