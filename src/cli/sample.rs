//! The sample event that the program carries with it: an event.toml and its picture.
//!
//! The picture is drawn by `tools/draw_sample.rs`.

use crate::plan::Folder;
use crate::plan::folder::FolderError;

/// Its settings.
pub const EVENT_TOML: &str = include_str!("../../samples/harbour-evening/event.toml");
/// Its picture: hot-air balloons over a river with a bridge, in six flat colours, 960 × 768 pixels for 10 × 8 tiles.
pub const PICTURE_PNG: &[u8] = include_bytes!("../../samples/harbour-evening/picture.png");

/// Writes the sample into a folder, the picture first, so that there is no event without one.
///
/// # Errors
/// [`FolderError`] where a file cannot be written.
pub fn write_to(folder: &Folder) -> Result<(), FolderError> {
    Folder::write_whole(&folder.root().join("picture.png"), PICTURE_PNG)?;
    Folder::write_whole(&folder.event_toml(), EVENT_TOML.as_bytes())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::picture::Picture;
    use crate::plan::Settings;

    #[test]
    fn the_sample_is_an_event() {
        let settings = Settings::from_toml(EVENT_TOML).unwrap();
        assert_eq!(settings.to_toml(), EVENT_TOML, "as the program itself writes it");
        let picture = Picture::open(PICTURE_PNG).unwrap();
        assert_eq!(picture.crop(&settings.grid).lost, 0.0);
        let colours: std::collections::BTreeSet<_> = picture.pixels.pixels().map(|pixel| pixel.0).collect();
        assert_eq!(colours.len(), settings.picture.colours);
    }
}
