//! Who may send a photo now, and who waits: a door, a few hands, one reader.
//!
//! ```text
//!   uploads ─▶ door: PLACES let in, the others are told to come again
//!                └─▶ hands: HANDS photos at a time are received; who waits here has sent hardly anything yet
//!                      └─▶ reader: one photo at a time is opened and read, on all cores
//! ```
//!
//! Only what is in a hand takes memory, so that is bounded whatever comes. A panic in a decoder ends one answer and nothing else.

use std::panic::{AssertUnwindSafe, catch_unwind};
use std::sync::Arc;

use tokio::sync::{OwnedSemaphorePermit, Semaphore};

use super::evening::{Evening, Standing};
use super::refusal::{NotUndone, Refusal};

/// Photos that are let in at once. A reader takes one or two seconds for each: who comes last waits half a minute at most.
const PLACES: usize = 12;
/// Photos that are in memory at once: one that is read, and two that are received meanwhile.
const HANDS: usize = 3;

/// The door, the hands, the reader.
#[derive(Clone, Debug)]
pub struct Work {
    places: Arc<Semaphore>,
    hands: Arc<Semaphore>,
    reader: Arc<Semaphore>,
}

/// A place inside the door. Given back when it is dropped.
#[derive(Debug)]
pub struct Place(#[allow(dead_code, reason = "held until it is dropped")] OwnedSemaphorePermit);

/// A hand to receive a photo. Given back when it is dropped.
#[derive(Debug)]
pub struct Hand(#[allow(dead_code, reason = "held until it is dropped")] OwnedSemaphorePermit);

impl Default for Work {
    fn default() -> Self {
        let of = |count| Arc::new(Semaphore::new(count));
        Self { places: of(PLACES), hands: of(HANDS), reader: of(1) }
    }
}

impl Work {
    /// A place inside; `None` where all are taken.
    #[must_use]
    pub fn place(&self) -> Option<Place> {
        Arc::clone(&self.places).try_acquire_owned().ok().map(Place)
    }

    /// A hand, in the order of asking; `None` when the program ends.
    pub async fn hand(&self) -> Option<Hand> {
        Arc::clone(&self.hands).acquire_owned().await.ok().map(Hand)
    }

    /// Reads a photo, in the order of asking. Goes on to its end even where nobody waits for the answer any more.
    ///
    /// # Errors
    /// [`Refusal`] where there is no answer.
    pub async fn read<T, F>(&self, held: (Place, Hand), read: F) -> Result<T, Refusal>
    where
        T: Send + 'static,
        F: FnOnce() -> Result<T, Refusal> + Send + 'static,
    {
        let reader = Arc::clone(&self.reader).acquire_owned().await.map_err(|_| Refusal::Stumble)?;
        let read = tokio::task::spawn_blocking(move || {
            let _held = (reader, held);
            catch_unwind(AssertUnwindSafe(read)).unwrap_or(Err(Refusal::Stumble))
        });
        read.await.unwrap_or(Err(Refusal::Stumble))
    }

    /// Takes the last photo back while none is being read.
    ///
    /// # Errors
    /// [`NotUndone`] where nothing has changed.
    pub async fn undo(&self, evening: Arc<Evening>, number: u64) -> Result<Arc<Standing>, NotUndone> {
        let reader = Arc::clone(&self.reader).acquire_owned().await.map_err(|_| NotUndone::Changed)?;
        let undone = tokio::task::spawn_blocking(move || {
            let _held = reader;
            evening.undo(number)
        });
        undone.await.unwrap_or(Err(NotUndone::Changed))
    }

    /// Waits until nothing is being read, and lets nothing begin any more.
    pub async fn finish(&self) {
        let _ = self.reader.acquire().await;
        self.places.close();
        self.hands.close();
        self.reader.close();
    }
}
