//! An `event.toml`: parsed, written and read back, and single settings of it changed in place.

#![no_main]

use everysquare::plan::Settings;
use everysquare::plan::settings::set;
use everysquare::words::in_english;
use libfuzzer_sys::fuzz_target;

/// Squares of a wall whose codes are worked out: more only takes longer.
const MOST_SQUARES: usize = 12;

fuzz_target!(|bytes: &[u8]| {
    let Ok(text) = std::str::from_utf8(bytes) else { return };
    let settings = match Settings::from_toml(text) {
        Ok(settings) => settings,
        Err(error) => {
            assert!(!in_english(&error).contains("[error"), "a sentence, not the id of one: {error}");
            return;
        }
    };
    let written = settings.to_toml();
    assert_eq!(Settings::from_toml(&written).as_ref(), Ok(&settings), "{written}");
    if let Ok(changed) = set(text, "name", "Fuzz \"1\"") {
        let again = Settings::from_toml(&changed).expect("what was changed is accepted");
        assert_eq!(again, Settings { name: "Fuzz \"1\"".to_owned(), ..settings.clone() }, "{changed}");
    }
    if let Ok(changed) = set(text, "wall.square_mm", 130.5) {
        let again = Settings::from_toml(&changed).expect("what was changed is accepted");
        assert_eq!(again.grid.square_mm, 130.5, "{changed}");
    }
    if settings.grid.count() <= MOST_SQUARES {
        let printed = settings.printed().expect("every accepted event can be printed");
        assert_eq!(printed.squares.len(), settings.grid.count());
    }
});
