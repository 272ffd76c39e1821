//! What every answer is made from.

use std::sync::Arc;

use crate::plan::Cell;

use super::evening::Evening;
use super::lying::Tables;
use super::work::Work;

/// What every answer is made from.
#[derive(Debug)]
pub struct Shared {
    /// The evening.
    pub evening: Arc<Evening>,
    /// Who may send now.
    pub work: Work,
    /// What lies on phones' tables.
    pub tables: Tables,
    /// The helpers' link.
    pub link: String,
    /// Whether that link leads in from the room's network.
    pub for_phones: bool,
}

/// The cell of a place in the order of cells.
pub(super) fn at(shared: &Shared, place: &str) -> Option<Cell> {
    let place: usize = place.parse().ok()?;
    shared.evening.printed.grid.cells().nth(place)
}
