//! What can go wrong with an event folder, and what to do then.

use std::io::{Error, ErrorKind};
use std::path::{Path, PathBuf};

use thiserror::Error;

use crate::plan::manifest::ManifestError;
use crate::plan::settings::SettingsError;
use crate::words::{Sentence, Tell, as_typed, told_in_english};

/// A folder that cannot be read or written.
#[derive(Debug, Error, PartialEq)]
pub enum FolderError {
    /// No event.toml.
    NoEvent {
        /// The event that is meant, where one lies around it or beside it.
        near: Option<PathBuf>,
        /// Where it was looked for.
        folder: PathBuf,
    },
    /// No manifest.
    NotPrinted {
        /// Where it was looked for.
        folder: PathBuf,
    },
    /// No picture.
    NoPicture {
        /// Where it was looked for.
        path: PathBuf,
    },
    /// event.toml and the kit disagree.
    Changed {
        /// What event.toml says.
        own: Sentence,
        /// What the manifest says.
        kit: Sentence,
    },
    /// event.toml asks for squares that were not printed: their spots were kept free.
    NotAllPrinted {
        /// Their labels.
        squares: Vec<String>,
        /// The event's folder.
        folder: PathBuf,
    },
    /// Not UTF-8.
    NotText {
        /// Which file.
        path: PathBuf,
    },
    /// Larger than such a file can be.
    TooLarge {
        /// Which file.
        path: PathBuf,
        /// Bytes allowed.
        most: u64,
    },
    /// More templates than there can be.
    ManyTemplates {
        /// Their folder.
        folder: PathBuf,
        /// Files allowed.
        most: usize,
    },
    /// A file of words under a name that is not read.
    OtherWords {
        /// Which file.
        path: PathBuf,
    },
    /// The system does not let it be read.
    Read {
        /// Which file.
        path: PathBuf,
        /// Why not.
        why: Why,
    },
    /// No room left.
    Full {
        /// Which file.
        path: PathBuf,
    },
    /// No right to write.
    ReadOnly {
        /// Which file.
        path: PathBuf,
    },
    /// The system does not let it be written.
    Write {
        /// Which file.
        path: PathBuf,
        /// Why not.
        why: Why,
    },
    /// event.toml is refused.
    Settings(#[from] SettingsError),
    /// The manifest is refused.
    Manifest(#[from] ManifestError),
}

/// Why a file cannot be read or written.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Why {
    /// No right to.
    NoRight,
    /// It is a folder.
    IsFolder,
    /// A file stands where a folder must be.
    FileInTheWay,
    /// No name for a folder.
    NoName,
    /// What the system says, in its own language.
    System(String),
}

told_in_english!(FolderError);

impl Tell for Why {
    fn sentence(&self) -> Sentence {
        match self {
            Self::NoRight => Sentence::new("error-folder-no-right"),
            Self::IsFolder => Sentence::new("error-folder-is-folder"),
            Self::FileInTheWay => Sentence::new("error-folder-file-in-the-way"),
            Self::NoName => Sentence::new("error-folder-no-name"),
            Self::System(said) => Sentence::given(said.as_str()),
        }
    }
}

impl Tell for FolderError {
    fn sentence(&self) -> Sentence {
        let about = |id: &'static str, path: &Path| Sentence::new(id).with("path", path);
        match self {
            Self::NoEvent { folder, near } => match near {
                Some(near) => about("error-folder-near", folder).with("near", as_typed(near)),
                None => about("error-folder-no-event", folder).with("typed", as_typed(folder)),
            },
            Self::NotPrinted { folder } => {
                about("error-folder-not-printed", folder).with("typed", as_typed(folder))
            }
            Self::NoPicture { path } => about("error-folder-no-picture", path),
            Self::Changed { own, kit } => {
                Sentence::new("error-folder-changed").with("own", own.clone()).with("kit", kit.clone())
            }
            Self::NotAllPrinted { squares, folder } => Sentence::new("error-folder-not-all-printed")
                .with("squares", squares.join(", "))
                .with("typed", as_typed(folder)),
            Self::NotText { path } => about("error-folder-not-text", path),
            Self::TooLarge { path, most } => about("error-folder-too-large", path)
                .with("most", (most >> 20).to_string())
                .with("file", named(path)),
            Self::ManyTemplates { folder, most } => {
                about("error-folder-many-templates", folder).with("most", *most)
            }
            Self::OtherWords { path } => about("error-folder-other-words", path),
            Self::Read { path, why } => about("error-folder-read", path).with("why", why.sentence()),
            Self::Full { path } => about("error-folder-full", path),
            Self::ReadOnly { path } => about("error-folder-read-only", path),
            Self::Write { path, why } => about("error-folder-write", path).with("why", why.sentence()),
            Self::Settings(error) => error.sentence(),
            Self::Manifest(error) => error.sentence(),
        }
    }
}

impl FolderError {
    pub(super) fn reading(path: &Path, error: &Error) -> Self {
        let why = match error.kind() {
            ErrorKind::PermissionDenied => Why::NoRight,
            ErrorKind::IsADirectory => Why::IsFolder,
            _ => Why::System(error.to_string()),
        };
        Self::Read { path: path.to_owned(), why }
    }

    pub(super) fn writing(path: &Path, error: &Error) -> Self {
        let path = path.to_owned();
        match error.kind() {
            ErrorKind::StorageFull | ErrorKind::QuotaExceeded => Self::Full { path },
            ErrorKind::PermissionDenied | ErrorKind::ReadOnlyFilesystem => Self::ReadOnly { path },
            ErrorKind::NotADirectory => Self::Write { path, why: Why::FileInTheWay },
            _ => Self::Write { path, why: Why::System(error.to_string()) },
        }
    }
}

/// What a file that is too large should have been.
fn named(path: &Path) -> Sentence {
    Sentence::new(match path.extension().and_then(std::ffi::OsStr::to_str) {
        Some("toml") => "error-folder-an-event",
        Some("json") => "error-folder-a-manifest",
        Some("typ") => "error-folder-a-template",
        Some("ftl") => "error-folder-a-words-file",
        _ => "error-folder-a-picture",
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_full_disk_and_a_read_only_folder_say_what_to_do() {
        let said =
            |kind: ErrorKind| FolderError::writing(Path::new("x/event.toml"), &Error::from(kind)).to_string();
        assert!(said(ErrorKind::StorageFull).contains("Free up some space"));
        assert!(said(ErrorKind::QuotaExceeded).contains("Free up some space"));
        assert!(said(ErrorKind::PermissionDenied).contains("a place of your own"));
        assert!(said(ErrorKind::ReadOnlyFilesystem).contains("a place of your own"));
    }
}
