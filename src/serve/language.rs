//! Which language the pages speak.

use crate::plan::Folder;
use crate::words::Words;

/// The words for an event's pages.
#[must_use]
pub fn words_of(_folder: &Folder) -> Words {
    Words::english()
}
