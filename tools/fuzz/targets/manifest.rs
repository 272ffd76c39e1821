//! A `manifest.json`: parsed, checked, written again, and where it describes a small wall, looked for in a small photo.

#![no_main]

use std::sync::LazyLock;

use everysquare::photo::Photo;
use everysquare::plan::RowsFrom;
use everysquare::plan::manifest::Manifest;
use everysquare::read::{self, Reader};
use libfuzzer_sys::fuzz_target;

/// Squares of a wall that is looked for: more only takes longer.
const MOST_SQUARES: usize = 12;

/// A made photo of the wall that the seeds describe; `run` makes it.
static PHOTO: LazyLock<Option<Photo>> = LazyLock::new(|| {
    let path = std::env::var_os("EVERYSQUARE_FUZZ_PHOTO")?;
    Photo::open(&std::fs::read(path).ok()?).ok()
});

fuzz_target!(|bytes: &[u8]| {
    let Ok(manifest) = Manifest::from_json(bytes) else { return };
    let written = manifest.to_json().expect("what was read can be written");
    assert_eq!(Manifest::from_json(&written).as_ref(), Ok(&manifest), "written and read again");
    for rows_from in [RowsFrom::Bottom, RowsFrom::Top] {
        let Ok(printed) = manifest.printed(rows_from) else { continue };
        assert_eq!(printed.squares.len(), printed.grid.count());
        if printed.squares.len() > MOST_SQUARES {
            continue;
        }
        let Some(photo) = &*PHOTO else { continue };
        if let Ok(reading) = Reader::new(&printed).read(photo) {
            assert_eq!(reading.cells.len(), printed.grid.count());
        }
    }
});
