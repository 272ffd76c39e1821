//! Squares with help, large pieces and spare squares: printed where they are named, and only so.

use everysquare::plan::settings::{Flip, Paper};

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
    let refused: [&[&str]; 5] = [
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
