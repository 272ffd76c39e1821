//! A photo's bytes: opened, and where they are a small photo, read against an event of four squares.
//!
//! What must hold: no panic but those that opening catches itself, one answer a cell, numbers that are numbers.

#![no_main]

use std::sync::{LazyLock, Once};

use everysquare::photo::Photo;
use everysquare::plan::{Grid, KeptFree, RowsFrom, Settings, Tag};
use everysquare::read::{self, Reader};
use libfuzzer_sys::fuzz_target;

/// Pixels of a photo that is read: enough for four squares, few enough for hundreds of runs a second.
const MOST_PIXELS: u64 = 100_000;

static EVENT: LazyLock<Reader> = LazyLock::new(|| {
    let grid = Grid { columns: 2, rows: 2, square_mm: 60.0, piece_mm: 20.0, rows_from: RowsFrom::Bottom, border: false, kept_free: KeptFree::NONE };
    let printed = Settings::new("Fuzz".to_owned(), Tag::new("K7M").unwrap(), grid).printed().unwrap();
    Reader::new(&printed)
});
static QUIET: Once = Once::new();

fuzz_target!(|bytes: &[u8]| {
    // libFuzzer's own hook ends the process at every panic, also at those of decoders that `Photo::open` catches
    QUIET.call_once(|| drop(std::panic::take_hook()));
    let Ok(photo) = Photo::open_within(bytes, MOST_PIXELS) else { return };
    let Ok(reading) = EVENT.read(&photo) else { return };
    assert_eq!(reading.cells.len(), EVENT.printed().grid.count());
    for cell in &reading.cells {
        assert!((0.0..=1.0).contains(&cell.certainty), "{cell:?}");
        assert!(cell.corners.iter().flatten().all(|corner| corner.is_finite()), "{cell:?}");
    }
    assert!(reading.px_per_module.is_finite() && reading.worst_shift_mm.is_finite(), "{reading:?}");
});
