//! A small event with made photos of its wall.

use std::path::{Path, PathBuf};

use everysquare::cli::sample;

use super::everysquare;

/// A small event: the sample's picture cut 5 × 4, printed.
pub fn event(place: &Path, tag: &str) -> PathBuf {
    let picture = place.join("balloons.png");
    std::fs::write(&picture, sample::PICTURE_PNG).unwrap();
    let folder = place.join(format!("evening-{tag}"));
    let (at, picture) = (folder.to_str().unwrap(), picture.to_str().unwrap());
    let made = everysquare(&["new", at, "--picture", picture, "--columns", "5", "--rows", "4", "--tag", tag]);
    assert_eq!(made.0, 0, "{}", made.2);
    assert_eq!(everysquare(&["print", at]).0, 0);
    folder
}

/// A made photo of its wall.
pub fn photo(folder: &Path, seed: &str, more: &[&str]) -> String {
    let words = [
        &["rehearse", folder.to_str().unwrap(), "--seed", seed, "--width", "2400", "--height", "1800"],
        more,
    ]
    .concat();
    let (code, _, err) = everysquare(&words);
    assert_eq!(code, 0, "{err}");
    folder.join(format!("rehearsals/{seed}.jpg")).to_str().unwrap().to_owned()
}
