//! Which checks a folder holds, in the order in which they were made.

use std::cmp::Reverse;
use std::fs;
use std::path::{Path, PathBuf};

/// Characters of a time in a check's name, `2026-11-24_18.30.05`; a number may follow.
const TIME_LENGTH: usize = 19;

/// The folders in `checks` from the name `from` on, the newest first. What is not named as checks are is passed over.
pub(super) fn since(checks: &Path, from: &str) -> Vec<PathBuf> {
    let names = fs::read_dir(checks)
        .into_iter()
        .flatten()
        .filter_map(|entry| entry.ok()?.file_name().into_string().ok());
    let mut made: Vec<(String, usize)> =
        names.filter_map(|name| placed(&name)).filter(|(time, _)| time.as_str() >= from).collect();
    made.sort_by_key(|check| Reverse(check.clone()));
    made.iter().map(|(time, number)| checks.join(name_of(time, *number))).collect()
}

/// The time and the number in a name; the first check of a second has no number and counts as 1.
fn placed(name: &str) -> Option<(String, usize)> {
    let time = name.get(..TIME_LENGTH)?;
    let shape = b"0000-00-00_00.00.00";
    let fits = time
        .bytes()
        .zip(shape)
        .all(|(own, wanted)| if *wanted == b'0' { own.is_ascii_digit() } else { own == *wanted });
    let number = match name.get(TIME_LENGTH..)? {
        "" => 1,
        rest => rest.strip_prefix('-')?.parse().ok()?,
    };
    (fits && name_of(time, number) == name).then(|| (time.to_owned(), number))
}

fn name_of(time: &str, number: usize) -> String {
    if number == 1 { time.to_owned() } else { format!("{time}-{number}") }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_newest_comes_first_and_strange_names_are_passed_over() {
        let place = tempfile::tempdir().unwrap();
        let names = [
            "2026-11-24_18.30.05-10",
            "2026-11-24_18.30.05-2",
            "2026-11-24_18.30.05",
            "2026-11-23_18.30.05",
            "2026-11-24_18.30.06",
            ".writing-abc",
            "2026-11-24_18.30.05-1",
            "2026-11-24_18.30.05-x",
            "notes",
        ];
        names.iter().for_each(|name| fs::create_dir(place.path().join(name)).unwrap());
        let found = since(place.path(), "2026-11-24_00.00.00");
        let found: Vec<&str> = found.iter().map(|path| path.file_name().unwrap().to_str().unwrap()).collect();
        assert_eq!(found, ["2026-11-24_18.30.06", names[0], names[1], names[2]]);
        assert!(since(&place.path().join("no-such-folder"), "").is_empty());
    }
}
