//! A `words.ftl` of an event's own: what is accepted is said, whatever is filled in.

#![no_main]

use std::sync::LazyLock;

use everysquare::words::{LANGUAGES, Sentence, Tell, Words};
use libfuzzer_sys::fuzz_target;

/// Every sentence that the program has.
static IDS: LazyLock<Vec<&'static str>> = LazyLock::new(|| {
    let named = |line: &'static str| Some(line.split_once(" =")?.0);
    let ids = LANGUAGES[0].1.lines().filter(|line| line.starts_with(|c: char| c.is_ascii_lowercase()));
    ids.filter_map(named).collect()
});

fuzz_target!(|bytes: &[u8]| {
    let Ok(text) = std::str::from_utf8(bytes) else { return };
    let words = match Words::english().with_overrides(text) {
        Ok(words) => words,
        Err(error) => {
            let told = error.tell(&Words::english());
            assert!(!told.is_empty() && !told.contains("[error"), "{told}");
            return;
        }
    };
    for id in IDS.iter().filter(|id| text.contains(**id)) {
        let sentence = Sentence::new(id).with("count", 3_usize).with("name", "x").with("file", "y");
        assert!(!sentence.tell(&words).starts_with(&format!("[{id}]")), "{id} has no words");
    }
});
