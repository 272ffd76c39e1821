//! The sample event that the program carries with it: an event.toml and its picture.
//!
//! The picture is drawn by `tools/draw_sample.rs`.

use crate::picture::name::names;
use crate::plan::folder::FolderError;
use crate::plan::settings::{Choice, Language, SettingsError};
use crate::plan::{Folder, Settings};
use crate::words::Words;

/// Its settings.
pub const EVENT_TOML: &str = include_str!("../../samples/harbour-evening/event.toml");
/// Its picture: hot-air balloons over a river with a bridge, in six flat colours, 960 × 768 pixels for 10 × 8 pieces.
pub const PICTURE_PNG: &[u8] = include_bytes!("../../samples/harbour-evening/picture.png");

/// Its settings in a language: its name, its pencils and what its comments say. The file itself is English.
///
/// # Errors
/// [`SettingsError`] where the file is none; a test reads it.
pub fn event_toml(language: Language) -> Result<String, SettingsError> {
    if language == Language::English {
        return Ok(EVENT_TOML.to_owned());
    }
    let words = Words::of(language.word());
    let mut settings = Settings::from_toml(EVENT_TOML)?;
    settings.language = language;
    settings.name = words.say("tour-event-name", &[]);
    let pencils = &mut settings.picture.pencils;
    let colours: Vec<[u8; 3]> = pencils.iter().map(|pencil| pencil.srgb).collect();
    pencils.iter_mut().zip(names(&colours, &words)).for_each(|(pencil, name)| pencil.name = name);
    Ok(settings.to_toml())
}

/// Writes the sample into a folder, in English.
///
/// # Errors
/// [`FolderError`] where a file cannot be written.
pub fn write_to(folder: &Folder) -> Result<(), FolderError> {
    write_in(folder, Language::English)
}

/// Writes the sample into a folder, the picture first, so that there is no event without one.
///
/// # Errors
/// [`FolderError`] where a file cannot be written.
pub fn write_in(folder: &Folder, language: Language) -> Result<(), FolderError> {
    let event = event_toml(language)?;
    Folder::write_whole(&folder.root().join("picture.png"), PICTURE_PNG)?;
    Folder::write_whole(&folder.event_toml(), event.as_bytes())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::picture::Picture;

    #[test]
    fn the_sample_speaks_the_language_that_is_asked_for() {
        let english = Settings::from_toml(&event_toml(Language::English).unwrap()).unwrap();
        assert_eq!(english.language, Language::English);
        assert_eq!(english.name, Words::english().say("tour-event-name", &[]));
        let spanish = Settings::from_toml(&event_toml(Language::Spanish).unwrap()).unwrap();
        assert_eq!(spanish.language, Language::Spanish);
        assert_eq!(spanish.name, "Noche en la biblioteca del puerto");
        assert!(spanish.picture.pencils.iter().any(|pencil| pencil.name == "azul claro"));
        let file = event_toml(Language::Spanish).unwrap();
        assert!(file.contains("# cuántos espera") && !file.contains("how many"), "{file}");
    }

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
