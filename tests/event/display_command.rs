//! `everysquare display`: what it leaves behind, and one clear sentence where nothing can be shown.

use std::path::{Path, PathBuf};

use crate::common::evening::{event, photo};
use crate::common::everysquare;
use serde_json::Value;

fn display(folder: &Path, words: &[&str]) -> (u8, String, String) {
    everysquare(&[&["display", folder.to_str().unwrap()], words].concat())
}

/// The only folder that was written, and what lies in it.
fn written(folder: &Path) -> (PathBuf, Vec<String>) {
    let made: Vec<PathBuf> =
        std::fs::read_dir(folder.join("display")).unwrap().map(|entry| entry.unwrap().path()).collect();
    assert_eq!(made.len(), 1, "{made:?}");
    let entries = std::fs::read_dir(&made[0]).unwrap();
    let mut names: Vec<String> =
        entries.map(|entry| entry.unwrap().file_name().into_string().unwrap()).collect();
    names.sort();
    (made[0].clone(), names)
}

fn figures(at: &Path) -> Value {
    serde_json::from_slice(&std::fs::read(at.join("display.json")).unwrap()).unwrap()
}

fn nothing_is_left(folder: &Path) {
    let left = std::fs::read_dir(folder.join("display")).map_or(0, Iterator::count);
    assert_eq!(left, 0);
}

#[test]
fn a_wall_is_shown_and_measured() {
    let place = tempfile::tempdir().unwrap();
    let folder = event(place.path(), "K7M");
    let photo = photo(&folder, "3", &["--swaps", "1", "--missing", "1"]);
    let (code, out, err) = display(&folder, &[&photo]);
    assert_eq!((code, err.as_str()), (0, ""), "{out}");
    assert!(out.contains("19 of 20 squares were read."), "{out}");
    assert!(out.contains("2 squares are in another spot or turned"), "{out}");
    let (at, names) = written(&folder);
    let prints = ["making-of", "math-page", "pairs", "poster", "side-by-side", "true-scale"];
    let both = prints.iter().flat_map(|name| [format!("{name}.jpg"), format!("{name}.pdf")]);
    let mut wanted: Vec<String> = both.chain(["display.json".into(), "wall.jpg".into()]).collect();
    wanted.sort();
    assert_eq!(names, wanted);
    let figures = figures(&at);
    assert_eq!((figures["format"].as_u64(), figures["made"].as_bool()), (Some(1), Some(true)));
    let factor = figures["measured"]["scale_factor"]["value"].as_f64().unwrap();
    assert!((factor - 5.0).abs() < 0.05, "{factor}");
    assert!(figures["likeness"].as_f64().unwrap() > 0.3, "{figures}");
    assert_eq!(figures["suggestions"].as_array().unwrap().len(), 0, "{figures}");
    let wall = image::open(at.join("wall.jpg")).unwrap();
    assert!((f64::from(wall.width()) / f64::from(wall.height()) - 1.25).abs() < 0.01);
    let bytes = std::fs::read(at.join("wall.jpg")).unwrap();
    assert!(!bytes.windows(4).any(|four| four == b"Exif"));
}

#[test]
fn an_evening_with_checks_becomes_a_moving_picture_and_chosen_prints_can_be_had() {
    let place = tempfile::tempdir().unwrap();
    let folder = event(place.path(), "K7M");
    let at = folder.to_str().unwrap();
    let early = photo(&folder, "8", &["--missing", "12"]);
    let late = photo(&folder, "9", &["--missing", "3"]);
    for photo in [&early, &late] {
        assert_eq!(everysquare(&["check", at, photo]).0, 1);
    }
    let done = photo(&folder, "10", &[]);
    let (code, out, err) =
        display(&folder, &[&done, "--only", "pairs", "--only", "making-of", "--pair", "B2", "--pair", "e4"]);
    assert_eq!(code, 0, "{err}");
    let (at, names) = written(&folder);
    let wanted = [
        "display.json",
        "filling.gif",
        "making-of.jpg",
        "making-of.pdf",
        "pairs.jpg",
        "pairs.pdf",
        "wall.jpg",
    ];
    assert_eq!(names, wanted, "{out}");
    assert!(std::fs::read(at.join("filling.gif")).unwrap().starts_with(b"GIF89a"));
    for (words, said) in [
        (["--pair", "Q9"], "Q9 isn’t a square that was read on this wall"),
        (["--only", "postcard"], "postcard"),
        (["--poster-width", "3"], "from 100 to 10000"),
    ] {
        let (code, _, err) = display(&folder, &[&[done.as_str()], &words[..]].concat());
        assert_eq!(code, 2);
        assert!(err.contains(said), "{err}");
    }
    written(&folder);
}

#[test]
fn a_drawing_on_the_wrong_paper_is_hinted_at_and_changes_no_state() {
    let place = tempfile::tempdir().unwrap();
    let folder = event(place.path(), "K7M");
    let photo = photo(&folder, "11", &["--misdrawn", "4"]);
    let truth: Value =
        serde_json::from_slice(&std::fs::read(photo.replace(".jpg", ".answers.json")).unwrap()).unwrap();
    let misdrawn = |label: &str| {
        let cells = truth["cells"].as_array().unwrap();
        cells.iter().any(|cell| cell["label"] == label && cell["drawn"].is_string())
    };
    let (code, out, err) = display(&folder, &[&photo, "--only", "side-by-side"]);
    assert_eq!(code, 0, "{err}");
    let figures = figures(&written(&folder).0);
    let hints = figures["suggestions"].as_array().unwrap();
    assert!(hints.len() >= 2, "{figures}");
    assert!(hints.iter().all(|hint| misdrawn(hint["cell"].as_str().unwrap())), "{figures}");
    assert!(out.contains("It’s only a hint."), "{out}");
    let (code, out, _) = everysquare(&["check", folder.to_str().unwrap(), &photo]);
    assert_eq!(code, 0, "every square hangs where it belongs: {out}");
}

#[test]
fn every_view_can_be_had_and_others_are_refused() {
    let place = tempfile::tempdir().unwrap();
    let folder = event(place.path(), "K7M");
    let photo = photo(&folder, "4", &["--turns", "1", "--missing", "1"]);
    for view in ["as-hung", "straight", "closed", "in-order"] {
        let (code, _, err) =
            display(&folder, &[&photo, "--view", view, "--codes", "fill", "--missing", "open"]);
        assert_eq!(code, 0, "{view}: {err}");
    }
    let (code, _, err) = display(&folder, &[&photo, "--view", "sideways"]);
    assert_eq!(code, 2);
    assert!(err.contains("as-hung, straight, closed or in-order"), "{err}");
}

#[test]
fn half_the_wall_is_shown_with_what_is_missing_in_soft_pencil() {
    let place = tempfile::tempdir().unwrap();
    let folder = event(place.path(), "K7M");
    let photo = photo(&folder, "5", &["--fill", "1.7", "--yaw", "0", "--pitch", "0"]);
    let (code, out, err) = display(&folder, &[&photo]);
    assert_eq!(code, 0, "{err}");
    let (at, _) = written(&folder);
    let squares = figures(&at)["squares"].as_u64().unwrap();
    assert!((2..20).contains(&squares), "{out}");
}

#[test]
fn a_wall_with_no_square_in_its_place_is_put_in_order() {
    let place = tempfile::tempdir().unwrap();
    let folder = event(place.path(), "K7M");
    let photo = photo(&folder, "12", &["--permute-all"]);
    let (code, out, err) = display(&folder, &[&photo, "--only", "side-by-side"]);
    assert_eq!(code, 0, "{err}");
    assert!(out.contains("20 squares are in another spot or turned"), "{out}");
    let likeness = || {
        let made = std::fs::read_dir(folder.join("display")).unwrap().map(|entry| entry.unwrap().path());
        figures(&made.max().unwrap())["likeness"].as_f64() // names sort as their times do
    };
    let as_it_hangs = likeness();
    let (_, mixed, _) = display(&folder, &[&photo, "--only", "side-by-side", "--view", "in-order"]);
    assert!(!mixed.contains("in another spot"), "{mixed}");
    assert!(as_it_hangs.is_some());
    assert_eq!(as_it_hangs, likeness(), "what is compared with the original is always in order");
}

#[test]
fn another_events_wall_is_refused_and_nothing_is_written() {
    let place = tempfile::tempdir().unwrap();
    let (own, other) = (event(place.path(), "K7M"), event(place.path(), "X3R"));
    let photo = photo(&other, "6", &[]);
    let (code, out, err) = display(&own, &[&photo]);
    assert_eq!((code, out.as_str()), (2, ""));
    assert!(err.contains("X3R"), "{err}");
    nothing_is_left(&own);
}

#[test]
fn what_is_no_photo_is_told_beside_those_that_are() {
    let place = tempfile::tempdir().unwrap();
    let folder = event(place.path(), "K7M");
    let photo = photo(&folder, "7", &[]);
    let notes = place.path().join("notes.jpg");
    std::fs::write(&notes, "milk, bread").unwrap();
    let notes = notes.to_str().unwrap();
    let (code, _, err) = display(&folder, &[notes]);
    assert_eq!(code, 2);
    assert!(err.contains("notes.jpg"), "{err}");
    nothing_is_left(&folder);
    let (code, out, err) = display(&folder, &[notes, &photo]);
    assert_eq!(code, 0);
    assert!(err.contains("notes.jpg") && out.contains("20 squares"), "{err}{out}");
}
