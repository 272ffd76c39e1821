//! Squares with help, large pieces and spare squares: printed where they are named, and only so.

use everysquare::plan::Folder;
use everysquare::plan::settings::{Flip, Language, Paper};

use super::{everysquare, picture, settings};

#[test]
fn squares_and_pieces_come_another_way_for_whoever_needs_them() {
    let place = tempfile::tempdir().unwrap();
    let root = place.path().to_str().unwrap();
    let own = settings(4, 3, 127.0, Paper::A4, Flip::LongEdge);
    std::fs::write(place.path().join("event.toml"), own.to_toml()).unwrap();
    std::fs::write(place.path().join("picture.png"), picture().to_png().unwrap()).unwrap();
    assert_eq!(everysquare(&["print", root]), 0);
    let file = |name: &str| std::fs::read(place.path().join("print").join(name)).ok();
    let manifest = file("manifest.json");
    let mut looks = Vec::new();
    for with in ["names", "dots", "lines"] {
        assert_eq!(everysquare(&["print", root, "helped", "--only", "B2,C1", "--with", with]), 0);
        looks.push(file("helped.pdf").unwrap());
    }
    assert!(looks[0] != looks[1] && looks[1] != looks[2] && looks[0] != looks[2]);
    assert_eq!(everysquare(&["print", root, "large", "spare", "--only", "A3"]), 0);
    assert!(file("large.pdf").is_some() && file("spare.pdf").is_some());
    assert_eq!(file("manifest.json"), manifest);
    assert_eq!(everysquare(&["print", root, "test-page"]), 0);
    assert_eq!(everysquare(&["print", root, "home", "--only", "A3,B1"]), 0);
    assert!(file("test-page.pdf").is_some() && file("home.pdf").is_some());
    assert_eq!(file("manifest.json"), manifest);
    let refused: [&[&str]; 9] = [
        &["from-home"],
        &["home"],
        &["home", "--only", "E1"],
        &["test-page", "--only", "A3"],
        &["helped"],
        &["large"],
        &["helped", "--only", "Z9"],
        &["large", "--only", "A3", "--with", "dots"],
        &["helped", "--only", "A3", "--with", "stripes"],
    ];
    for words in refused {
        assert_eq!(everysquare(&[&["print", root], words].concat()), 2, "{words:?}");
    }
}

#[test]
fn squares_and_pieces_too_large_for_that_are_refused() {
    let place = tempfile::tempdir().unwrap();
    let root = place.path().to_str().unwrap();
    let mut own = settings(2, 2, 400.0, Paper::Letter, Flip::None);
    own.grid.piece_mm = 180.0;
    std::fs::write(place.path().join("event.toml"), own.to_toml()).unwrap();
    std::fs::write(place.path().join("picture.png"), picture().to_png().unwrap()).unwrap();
    assert_eq!(everysquare(&["print", root]), 0, "squares come in parts");
    assert_eq!(everysquare(&["print", root, "spare"]), 2);
    assert_eq!(everysquare(&["print", root, "large", "--only", "A1"]), 2);
    assert_eq!(everysquare(&["print", root, "helped", "--only", "A1"]), 0, "in parts");
}

#[test]
fn a_page_for_home_speaks_both_languages() {
    let place = tempfile::tempdir().unwrap();
    let root = place.path().to_str().unwrap();
    let mut own = settings(3, 2, 127.0, Paper::Letter, Flip::LongEdge);
    let mut pages = Vec::new();
    for second in [None, Some(Language::Spanish)] {
        own.second_language = second;
        std::fs::write(place.path().join("event.toml"), own.to_toml()).unwrap();
        std::fs::write(place.path().join("picture.png"), picture().to_png().unwrap()).unwrap();
        assert_eq!(everysquare(&["print", root]), 0);
        assert_eq!(everysquare(&["print", root, "home", "--only", "A1"]), 0);
        pages.push(std::fs::read(place.path().join("print/home.pdf")).unwrap());
    }
    assert!(pages[0] != pages[1]);
    own.second_language = Some(Language::English);
    std::fs::write(place.path().join("event.toml"), own.to_toml()).unwrap();
    assert_eq!(everysquare(&["print", root, "home", "--only", "A1"]), 2, "both languages are one");
}

#[test]
fn photos_that_are_none_come_back_as_nothing() {
    let place = tempfile::tempdir().unwrap();
    let root = place.path().to_str().unwrap();
    let own = settings(3, 2, 127.0, Paper::Letter, Flip::LongEdge);
    std::fs::write(place.path().join("event.toml"), own.to_toml()).unwrap();
    std::fs::write(place.path().join("picture.png"), picture().to_png().unwrap()).unwrap();
    let photo = place.path().join("picture.png").display().to_string();
    assert_eq!(everysquare(&["receive", root, &photo]), 2, "nothing is printed yet");
    assert_eq!(everysquare(&["print", root]), 0);
    for command in ["receive", "test-page"] {
        assert_eq!(everysquare(&[command, root, &photo]), 2, "{command}: a photo without a page");
        assert_eq!(everysquare(&[command, root, "nowhere.jpg"]), 2, "{command}: no file");
        assert_eq!(everysquare(&[command, root]), 2, "{command}: nothing given");
        assert_eq!(everysquare(&[command, &photo, root]), 2, "{command}: the two exchanged");
    }
    assert!(!place.path().join("from-home").exists());
    std::fs::create_dir_all(place.path().join("from-home")).unwrap();
    std::fs::copy(&photo, place.path().join("from-home/B2.png")).unwrap();
    assert_eq!(everysquare(&["print", root, "from-home"]), 0);
    assert_eq!(everysquare(&["print", root, "from-home", "--only", "A1"]), 2, "that one has not come");
    std::fs::write(place.path().join("from-home/A1.png"), b"no picture").unwrap();
    assert_eq!(everysquare(&["print", root, "from-home"]), 2);
}

#[test]
fn squares_on_spare_paper_are_remembered() {
    let place = tempfile::tempdir().unwrap();
    let (root, folder) = (place.path().to_str().unwrap(), Folder::at(place.path()));
    let own = settings(3, 2, 127.0, Paper::Letter, Flip::LongEdge);
    std::fs::write(place.path().join("event.toml"), own.to_toml()).unwrap();
    std::fs::write(place.path().join("picture.png"), picture().to_png().unwrap()).unwrap();
    assert_eq!(everysquare(&["print", root]), 0);
    assert_eq!(everysquare(&["print", root, "spare"]), 0);
    assert_eq!(folder.spares(&own.grid), []);
    for only in ["C1", "a2", "C1"] {
        assert_eq!(everysquare(&["print", root, "spare", "--only", only]), 0);
    }
    let labels: Vec<String> = folder.spares(&own.grid).iter().map(|cell| own.grid.label(*cell)).collect();
    assert_eq!(labels, ["A2", "C1"]);
    std::fs::write(place.path().join("spare-squares.json"), b"{").unwrap();
    assert_eq!(folder.spares(&own.grid), [], "a damaged file takes nothing else away");
}

#[test]
fn pages_to_read_come_in_another_language_beside_the_kit() {
    let place = tempfile::tempdir().unwrap();
    let root = place.path().to_str().unwrap();
    let own = settings(3, 2, 127.0, Paper::Letter, Flip::None);
    std::fs::write(place.path().join("event.toml"), own.to_toml()).unwrap();
    std::fs::write(place.path().join("picture.png"), picture().to_png().unwrap()).unwrap();
    assert_eq!(everysquare(&["print", root]), 0);
    let file = |name: &str| std::fs::read(place.path().join("print").join(name)).ok();
    let (card, manifest) = (file("table-card.pdf"), file("manifest.json"));
    assert_eq!(everysquare(&["print", root, "table-card", "helpers", "--in", "es"]), 0);
    assert!(file("table-card-es.pdf").is_some_and(|other| Some(other) != card));
    assert!(file("helpers-es.pdf").is_some());
    assert_eq!((file("table-card.pdf"), file("manifest.json")), (card, manifest), "the kit is as it was");
    let refused: [&[&str]; 4] = [&[], &["squares"], &["lesson"], &["table-card", "--only", "A1"]];
    for words in refused {
        assert_eq!(everysquare(&[&["print", root, "--in", "es"], words].concat()), 2, "{words:?}");
    }
    assert_eq!(everysquare(&["print", root, "table-card", "--in", "xx"]), 2);
}
