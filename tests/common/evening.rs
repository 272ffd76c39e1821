//! A small event with made photos of its wall.

use std::path::{Path, PathBuf};

use everysquare::cli::sample;
use everysquare::picture::{FewColours, Picture};
use everysquare::plan::{Folder, Printed};

use super::everysquare;

/// A small event: the sample's picture cut 5 × 4, printed.
pub fn event(place: &Path, tag: &str) -> PathBuf {
    event_of(place, tag, ["5", "4"])
}

/// The sample's picture cut into as many columns and rows, printed.
pub fn event_of(place: &Path, tag: &str, [columns, rows]: [&str; 2]) -> PathBuf {
    let picture = place.join("balloons.png");
    std::fs::write(&picture, sample::PICTURE_PNG).unwrap();
    let folder = place.join(format!("evening-{tag}"));
    let (at, picture) = (folder.to_str().unwrap(), picture.to_str().unwrap());
    let made =
        everysquare(&["new", at, "--picture", picture, "--columns", columns, "--rows", rows, "--tag", tag]);
    assert_eq!(made.0, 0, "{}", made.2);
    assert_eq!(everysquare(&["print", at]).0, 0);
    folder
}

/// An event's folder, opened.
pub struct Opened {
    pub printed: Printed,
    /// The picture as it is in the file.
    pub original: Picture,
    /// The picture in the event's pencils, as it is drawn.
    pub drawn: Picture,
}

pub fn opened(folder: &Path) -> Opened {
    let folder = Folder::at(folder);
    let settings = folder.settings().unwrap();
    let original = Picture::open(&folder.picture_bytes(&settings).unwrap()).unwrap();
    let drawn = FewColours::chosen(&original, &settings.picture).to_picture();
    Opened { printed: folder.printed().unwrap(), original, drawn }
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
