//! The mural goes to another place: what is printed, what is kept, what is refused.

use std::path::Path;

use crate::common::everysquare;
use everysquare::cli::sample;
use everysquare::plan::{Folder, Settings};

fn settings(folder: &Path) -> Settings {
    Folder::at(folder).settings().unwrap()
}

#[test]
fn the_way_to_the_new_place_is_printed_and_kept_when_asked() {
    let place = tempfile::tempdir().unwrap();
    let folder = place.path().join("event");
    sample::write_to(&Folder::at(&folder)).unwrap();
    let at = folder.to_str().unwrap();
    let before = std::fs::read_to_string(folder.join("event.toml")).unwrap();

    let (code, out, err) = everysquare(&["rehang", at, "--wall", "3x4ft, door, 3x4ft"]);
    assert_eq!((code, err.as_str()), (0, ""), "{out}");
    assert!(out.contains("rehang.pdf: 4 pages") && out.contains("--save"), "{out}");
    assert!(!out.contains("ruler"), "nothing in it has its true size: {out}");
    assert_eq!(std::fs::read_to_string(folder.join("event.toml")).unwrap(), before, "only --save changes it");

    let (code, out, err) =
        everysquare(&["rehang", at, "--wall", "3x4ft, door, 3x4ft", "--hang", "700", "--save"]);
    assert_eq!((code, err.as_str()), (0, ""), "{out}");
    let kept = settings(&folder);
    assert_eq!((kept.parts.len(), kept.evening.hang_mm), (2, Some(700.0)));
    assert!(out.contains("everysquare check"), "{out}");

    // and back, onto one wall
    let (code, out, _) = everysquare(&["rehang", at, "--wall", "2.4x1.8m", "--save"]);
    assert_eq!((code, settings(&folder).parts.len()), (0, 0), "{out}");
    assert!(settings(&folder).evening.wall.is_some());
    let kept = std::fs::read_to_string(folder.join("event.toml")).unwrap();
    assert!(kept.contains("wall = \"2.4x1.8m\""), "a single place stays as it was typed: {kept}");
}

#[test]
fn where_one_of_several_boards_takes_all_that_one_is_kept_and_said() {
    let place = tempfile::tempdir().unwrap();
    let folder = place.path().join("event");
    sample::write_to(&Folder::at(&folder)).unwrap();
    let at = folder.to_str().unwrap();
    let toml = folder.join("event.toml");
    assert_eq!(everysquare(&["plan", at, "--wall", "3x4ft, door, 3x4ft", "--save"]).0, 0);
    let text = std::fs::read_to_string(&toml).unwrap();
    std::fs::write(&toml, text.replacen("\n[[parts]]", "\n# ask Ana for the keys\n[[parts]]", 1)).unwrap();
    assert_eq!(settings(&folder).parts.len(), 2);
    // the squares fit the first board too, but with their edge cards only the second
    let (code, out, err) = everysquare(&["rehang", at, "--wall", "51x41in, door, 5x6ft", "--save"]);
    assert_eq!((code, err.as_str()), (0, ""), "{out}");
    assert!(out.contains("board 2 (5x6ft)") && out.contains("event.toml now has the new place"), "{out}");
    let kept = settings(&folder);
    assert_eq!(
        (kept.parts.len(), kept.evening.wall.map(|wall| wall.written())),
        (0, Some("5x6ft".to_owned()))
    );
    let text = std::fs::read_to_string(&toml).unwrap();
    assert!(text.contains("# ask Ana for the keys"), "what somebody wrote above the list stays: {text}");
    // a place given for once counts instead of parts that are kept
    assert_eq!(everysquare(&["plan", at, "--wall", "3x4ft, door, 3x4ft", "--save"]).0, 0);
    let (_, out, _) = everysquare(&["plan", at, "--wall", "8x6ft"]);
    let line = out.split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(line.contains("of the space you gave") && !line.contains("hangs in 2 parts"), "{out}");
}

#[test]
fn a_place_that_is_not_said_or_too_small_is_refused_in_one_sentence() {
    let place = tempfile::tempdir().unwrap();
    let folder = place.path().join("event");
    sample::write_to(&Folder::at(&folder)).unwrap();
    let at = folder.to_str().unwrap();
    for (typed, said) in [
        (vec!["rehang", at], "--wall"),
        (vec!["rehang", at, "--wall", "1x1ft"], "10 columns and 8 rows"),
        (vec!["rehang", at, "--wall", "3x4ft, 1x4ft"], "7, 2"),
        (vec!["rehang", at, "--wall", "a corridor"], "a corridor"),
    ] {
        let (code, out, err) = everysquare(&typed);
        assert_eq!((code, out.as_str()), (2, ""), "{typed:?}");
        assert!(err.contains(said) && err.lines().count() == 1, "{err}");
    }
    assert!(!folder.join("print/rehang.pdf").exists());
}
