//! `templates/`: what the organiser puts in the place of the program's own templates and words.
//!
//! Files are read whole and within limits, by name; what stands in them is looked at where it is used. Other files may lie
//! there: they are left alone.

use std::collections::BTreeMap;
use std::ffi::OsStr;
use std::path::PathBuf;

use super::{Folder, FolderError, whole};
use crate::plan::settings::{Choice, Language};

/// Bytes of a template or a file of words; the program's own have some 10 kB.
const MOST_BYTES: u64 = 1 << 20;
/// Templates that are read: more than there are documents.
const MOST_TEMPLATES: usize = 64;

impl Folder {
    /// `templates`, the organiser's own.
    #[must_use]
    pub fn templates_folder(&self) -> PathBuf {
        self.root().join("templates")
    }

    /// The organiser's own templates, `templates/<name>.typ`, by name without the ending; none where there is no such folder.
    ///
    /// # Errors
    /// [`FolderError`] where one cannot be read, is too large or no text, or where there are too many.
    pub fn templates(&self) -> Result<BTreeMap<String, String>, FolderError> {
        let own = self.own_files("typ")?;
        if own.len() > MOST_TEMPLATES {
            return Err(FolderError::ManyTemplates { folder: self.templates_folder(), most: MOST_TEMPLATES });
        }
        own.into_iter().map(|(name, path)| Ok((name, text(path)?))).collect()
    }

    /// The text of `templates/words.ftl`, if there is one.
    ///
    /// # Errors
    /// [`FolderError`] where it cannot be read, is too large or no text, or where words stand in another file.
    pub fn own_words(&self) -> Result<Option<String>, FolderError> {
        let files = self.own_files("ftl")?;
        if let Some((_, path)) = files.iter().find(|(name, _)| *name != "words") {
            return Err(FolderError::OtherWords { path: path.clone() });
        }
        files.into_iter().next().map(|(_, path)| text(path)).transpose()
    }

    /// The language that event.toml names, even where the rest of it is refused: what is wrong is told in that language.
    /// The usual one where it names none; `None` where there is no event.toml.
    #[must_use]
    pub fn language(&self) -> Option<Language> {
        let bytes = whole::read(&self.event_toml(), MOST_BYTES).ok()?;
        let file = String::from_utf8_lossy(&bytes);
        let top = file.lines().take_while(|line| !line.trim_start().starts_with('['));
        let value = |line: &str| -> Option<Language> {
            let value =
                line.trim_start().strip_prefix("language")?.trim_start().strip_prefix('=')?.trim_start();
            let quote = value.chars().next().filter(|quote| ['"', '\''].contains(quote))?;
            Language::named(value.get(1..)?.split(quote).next()?)
        };
        Some(top.filter_map(value).next().unwrap_or_default())
    }

    /// The files of one kind in `templates`, by name without the ending. Hidden ones, as editors leave behind, do not count.
    fn own_files(&self, kind: &str) -> Result<BTreeMap<String, PathBuf>, FolderError> {
        let folder = self.templates_folder();
        if !folder.exists() {
            return Ok(BTreeMap::new());
        }
        let refuse = |error: std::io::Error| FolderError::reading(&folder, &error);
        let mut files = BTreeMap::new();
        for entry in std::fs::read_dir(&folder).map_err(refuse)? {
            let path = entry.map_err(refuse)?.path();
            let name = path.file_stem().map(|name| name.to_string_lossy().into_owned()).unwrap_or_default();
            if path.extension() == Some(OsStr::new(kind)) && !name.starts_with('.') {
                files.insert(name, path);
            }
        }
        Ok(files)
    }
}

/// The text of a file.
fn text(path: PathBuf) -> Result<String, FolderError> {
    let bytes = whole::read(&path, MOST_BYTES)?;
    String::from_utf8(bytes).map_err(|_| FolderError::NotText { path })
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::fs;

    fn folder_with(files: &[(&str, &[u8])]) -> (tempfile::TempDir, Folder) {
        let place = tempfile::tempdir().unwrap();
        let folder = Folder::at(place.path());
        for (name, bytes) in files {
            let path = folder.root().join(name);
            fs::create_dir_all(path.parent().unwrap()).unwrap();
            fs::write(path, bytes).unwrap();
        }
        (place, folder)
    }

    #[test]
    fn own_files_are_read_by_name_and_others_left_alone() {
        let (_place, folder) = folder_with(&[]);
        assert!(folder.templates().unwrap().is_empty());
        assert_eq!(folder.own_words().unwrap(), None);
        let (_place, folder) = folder_with(&[
            ("templates/pieces.typ", b"#piece"),
            ("templates/words.ftl", b"print-pieces = Pieces"),
            ("templates/notes.txt", b"\xff"),
            ("templates/.pieces.typ", b"\xff"),
        ]);
        assert_eq!(folder.templates().unwrap(), BTreeMap::from([("pieces".to_owned(), "#piece".to_owned())]));
        assert_eq!(folder.own_words().unwrap().as_deref(), Some("print-pieces = Pieces"));
    }

    #[test]
    fn own_files_that_cannot_be_used_are_named() {
        let large = vec![b' '; (1 << 20) + 1];
        for (name, bytes, said) in [
            ("templates/a.typ", b"\xff".as_slice(), "isn’t plain text"),
            ("templates/a.typ", &large, "too large for a page design"),
            ("templates/a.typ/b", b"", "it’s a folder"),
            ("templates", b"", "we can’t read"),
        ] {
            let (_place, folder) = folder_with(&[(name, bytes)]);
            let error = folder.templates().unwrap_err().to_string();
            assert!(error.contains(said), "{error}");
        }
        for (name, bytes, said) in [
            ("templates/words.es.ftl", b"".as_slice(), "your own wording in templates/words.ftl"),
            ("templates/words.ftl", &large, "too large for a file of sentences"),
        ] {
            let (_place, folder) = folder_with(&[(name, bytes)]);
            let error = folder.own_words().unwrap_err().to_string();
            assert!(error.contains(said), "{error}");
        }
        let many: Vec<String> = (0..65).map(|number| format!("templates/t{number}.typ")).collect();
        let many: Vec<(&str, &[u8])> = many.iter().map(|name| (name.as_str(), b"".as_slice())).collect();
        let (_place, folder) = folder_with(&many);
        assert!(folder.templates().unwrap_err().to_string().contains("more than 64 templates"));
    }

    #[test]
    fn the_language_is_known_even_of_an_event_that_is_refused() {
        for (event, expected) in [
            ("name = \"x\"\nlanguage = \"es\"  # español\n[wall]\ncolumns = zero", Some(Language::Spanish)),
            ("  language='en'\n", Some(Language::English)),
            ("[wall]\nlanguage = \"es\"\n", Some(Language::English)),
            ("language = \"fr\"\n", Some(Language::English)),
            ("language = es\n", Some(Language::English)),
            ("languages = \"es\"\n", Some(Language::English)),
            ("language = \"es", Some(Language::Spanish)),
            ("", Some(Language::English)),
        ] {
            let (_place, folder) = folder_with(&[("event.toml", event.as_bytes())]);
            assert_eq!(folder.language(), expected, "{event}");
        }
        assert_eq!(folder_with(&[]).1.language(), None);
    }
}
