//! `everysquare new`: the folder it makes, what it says, what it refuses.

#![allow(
    missing_docs,
    clippy::unwrap_used,
    clippy::panic,
    clippy::print_stdout,
    clippy::cast_possible_truncation
)]

mod common;

use std::ffi::OsString;
use std::io::{self, Write};
use std::path::Path;

use common::{Kept, everysquare};
use everysquare::cli::{Console, Screen, run, sample};
use everysquare::picture::Picture;
use everysquare::plan::settings::{Paper, Units};
use everysquare::plan::{Folder, Settings};

fn sample_picture(place: &Path) -> String {
    let path = place.join("balloons.png");
    std::fs::write(&path, sample::PICTURE_PNG).unwrap();
    path.to_str().unwrap().to_owned()
}

#[test]
fn a_picture_becomes_an_event() {
    let place = tempfile::tempdir().unwrap();
    let picture = sample_picture(place.path());
    let folder = place.path().join("open-evening");
    let (code, out, err) =
        everysquare(&["new", folder.to_str().unwrap(), "--picture", &picture, "--paper", "a4"]);
    assert_eq!((code, err.as_str()), (0, ""), "{out}");
    for said in ["Open evening", "10 × 8, 80 squares", "whole picture", "1.27 m wide", "everysquare print"] {
        assert!(out.contains(said), "{said} in {out}");
    }
    assert!(!out.contains("[new-"), "every sentence has its words: {out}");
    let event = Folder::at(&folder);
    let settings = event.settings().unwrap();
    assert_eq!((settings.print.paper, settings.print.units), (Paper::A4, Units::Mm));
    let copied = Picture::open(&event.picture_bytes(&settings).unwrap()).unwrap();
    assert_eq!(copied, Picture::open(sample::PICTURE_PNG).unwrap());
    let names = std::fs::read_dir(&folder).unwrap().count();
    assert_eq!(names, 3, "event.toml, the picture and its preview, nothing else");
}

#[test]
fn the_sample_is_what_new_makes_of_its_picture() {
    let place = tempfile::tempdir().unwrap();
    let picture = sample_picture(place.path());
    let folder = place.path().join("x");
    let named = ["--name", "Harbour library open evening", "--tag", "K7M"];
    let words = [["new", folder.to_str().unwrap(), "--picture", &picture].as_slice(), &named].concat();
    assert_eq!(everysquare(&words).0, 0);
    assert_eq!(std::fs::read_to_string(folder.join("event.toml")).unwrap(), sample::EVENT_TOML);
    let written = place.path().join("sample");
    sample::write_to(&Folder::at(&written)).unwrap();
    assert_eq!(Folder::at(written).settings().unwrap(), Settings::from_toml(sample::EVENT_TOML).unwrap());
}

#[test]
fn every_way_to_a_grid_says_why() {
    let place = tempfile::tempdir().unwrap();
    let picture = sample_picture(place.path());
    let said = [
        (vec!["--columns", "1"], "1 × 1, 1 square: of all grids as wide as you asked, this one"),
        (vec!["--columns", "5"], "5 × 4, 20 squares: of all grids as wide as you asked, this one"),
        (vec!["--rows", "6"], "8 × 6, 48 squares: of all grids as high as you asked, this one"),
        (vec!["--columns", "8", "--rows", "8"], "8 × 8, 64 squares, as you asked"),
        (vec!["--squares", "20"], "5 × 4, 20 squares: near the 20 you asked for"),
        (vec!["--columns", "8", "--rows", "8"], "20 % of the picture is cut away, half at the left"),
        (vec!["--columns", "10", "--rows", "4"], "50 % of the picture is cut away, half at the top"),
        (vec!["--columns", "40"], "only 24 pixels wide"),
    ];
    for (i, (more, sentence)) in said.iter().enumerate() {
        let folder = place.path().join(i.to_string());
        let words = [["new", folder.to_str().unwrap(), "--picture", &picture].as_slice(), more].concat();
        let (code, out, err) = everysquare(&words);
        assert_eq!(code, 0, "{err}");
        assert!(out.contains(sentence), "{sentence} in {out}");
    }
}

#[test]
fn nothing_is_overwritten_and_a_mistake_is_one_sentence() {
    let place = tempfile::tempdir().unwrap();
    let picture = sample_picture(place.path());
    let folder = place.path().join("x");
    let at = folder.to_str().unwrap();
    assert_eq!(everysquare(&["new", at, "--picture", &picture, "--tag", "K7M"]).0, 0);
    let before = std::fs::read(folder.join("event.toml")).unwrap();
    let text = place.path().join("text");
    std::fs::write(&text, "hello").unwrap();
    let (text, fresh) = (text.to_str().unwrap(), place.path().join("fresh"));
    let fresh = fresh.to_str().unwrap();
    let refused: [(&[&str], &str); 11] = [
        (&["new", at, "--picture", &picture], "holds an event already"),
        (&["new", text, "--picture", &picture], "is a file: give the name of a folder"),
        (&["new", fresh, "--picture", text], "no picture in a format that is read here"),
        (&["new", fresh, "--picture", "/no/such.png"], "there is no picture /no/such.png"),
        (&["new", fresh, "--picture", place.path().to_str().unwrap()], "it is a folder"),
        (&["new", fresh, "--picture", &picture, "--columns", "0"], "0 columns: 1 to 702 are possible"),
        (&["new", fresh, "--picture", &picture, "--columns", "600", "--rows", "600"], "make 360000 squares"),
        (&["new", fresh, "--picture", &picture, "--paper", "legal"], "letter, tabloid, a4 or a3 is allowed"),
        (&["new", fresh, "--picture", &picture, "--tile-mm", "200"], "is larger than its square"),
        (&["new", fresh, "--picture", &picture, "--tag", "K1M"], "3 characters of"),
        (&["new", fresh], "--picture"),
    ];
    for (words, sentence) in refused {
        let (code, out, err) = everysquare(words);
        assert_eq!((code, out.as_str()), (2, ""), "{words:?}");
        assert!(err.starts_with("everysquare: ") && err.contains(sentence), "{words:?}: {err}");
        assert_eq!(err.lines().count(), 1, "one sentence: {err}");
        assert!(!Path::new(fresh).exists(), "{words:?} leaves nothing behind");
    }
    assert_eq!(std::fs::read(folder.join("event.toml")).unwrap(), before);
}

#[test]
fn a_picture_that_lies_in_the_folder_stays_as_it_is() {
    let place = tempfile::tempdir().unwrap();
    let own = place.path().join("picture.png");
    std::fs::write(&own, sample::PICTURE_PNG).unwrap();
    let (code, out, _) =
        everysquare(&["new", place.path().to_str().unwrap(), "--picture", own.to_str().unwrap()]);
    assert_eq!(code, 0);
    assert!(out.contains("picture-2.png"), "{out}");
    assert_eq!(std::fs::read(own).unwrap(), sample::PICTURE_PNG);
}

/// A place that takes no byte.
struct Gone(io::ErrorKind);

impl Write for Gone {
    fn write(&mut self, _: &[u8]) -> io::Result<usize> {
        Err(self.0.into())
    }
    fn flush(&mut self) -> io::Result<()> {
        Err(self.0.into())
    }
}

#[test]
fn a_reader_that_went_away_is_no_error_and_a_full_disk_is() {
    for (kind, code) in [(io::ErrorKind::BrokenPipe, 0), (io::ErrorKind::StorageFull, 2)] {
        let err = Kept::default();
        let mut console = Console::new(Box::new(Gone(kind)), Box::new(err.clone()), Screen::plain());
        let argv = ["everysquare", "--help"].map(OsString::from);
        assert_eq!(run(argv, &mut console), code);
        assert_eq!(err.text().is_empty(), code == 0);
    }
}
