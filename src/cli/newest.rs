//! The newest check of an event: what hangs on its wall, as far as is known.

use crate::plan::{Folder, Settings};
use crate::report::Report;

/// A check of the event, and when it was made.
pub(super) struct Newest {
    pub report: Report,
    /// Day and time, `2026-11-24 18:30`.
    pub when: String,
}

/// The newest check of a wall of these settings. Practice is passed over, as is what cannot be read: its squares hang nowhere.
pub(super) fn newest(folder: &Folder, settings: &Settings) -> Option<Newest> {
    let is_of_event = |report: &Report| {
        let cells = settings.grid.cells().map(|cell| settings.grid.label(cell));
        !report.made
            && report.event.tag == settings.tag.to_string()
            && report.cells.iter().map(|cell| cell.label.clone()).eq(cells)
    };
    let mut checks = folder.checks_since("").into_iter();
    checks.find_map(|check| {
        let report = Report::of_check(&check).filter(is_of_event)?;
        let name = check.file_name()?.to_str()?;
        let (day, time) = (name.get(..10)?, name.get(11..16)?);
        Some(Newest { report, when: format!("{day} {}", time.replace('.', ":")) })
    })
}
