//! What can go wrong with an event folder, and what to do then.

use std::io::{Error, ErrorKind};
use std::path::{Path, PathBuf};

use thiserror::Error;

use crate::plan::manifest::ManifestError;
use crate::plan::settings::SettingsError;

/// A folder that cannot be read or written.
#[derive(Debug, Error, PartialEq)]
pub enum FolderError {
    /// No event.toml.
    #[error("{} holds no event.toml: make an event there with “everysquare new {} --picture FILE”", .folder.display(), .folder.display())]
    NoEvent {
        /// Where it was looked for.
        folder: PathBuf,
    },
    /// No manifest.
    #[error("{} holds no print/manifest.json: print the kit first with “everysquare print {}”", .folder.display(), .folder.display())]
    NotPrinted {
        /// Where it was looked for.
        folder: PathBuf,
    },
    /// No picture.
    #[error("there is no picture {}: give the name of a PNG, JPEG, WebP or TIFF file", .path.display())]
    NoPicture {
        /// Where it was looked for.
        path: PathBuf,
    },
    /// event.toml and the kit disagree.
    #[error(
        "event.toml says {own}, but the kit was printed for {kit}: change event.toml back, or print the kit again"
    )]
    Changed {
        /// What event.toml says.
        own: String,
        /// What the manifest says.
        kit: String,
    },
    /// Not UTF-8.
    #[error("{} is no text in UTF-8: save it again as plain text", .path.display())]
    NotText {
        /// Which file.
        path: PathBuf,
    },
    /// Larger than such a file can be.
    #[error("{} is larger than {} MB: such a file is no {}", .path.display(), .most >> 20, named(.path))]
    TooLarge {
        /// Which file.
        path: PathBuf,
        /// Bytes allowed.
        most: u64,
    },
    /// The system does not let it be read.
    #[error("{} cannot be read: {why}", .path.display())]
    Read {
        /// Which file.
        path: PathBuf,
        /// What the system says.
        why: String,
    },
    /// No room left.
    #[error("{} cannot be written, the disk is full: make room and run the command again", .path.display())]
    Full {
        /// Which file.
        path: PathBuf,
    },
    /// No right to write.
    #[error("{} cannot be written, its folder is read-only: copy the event folder to a place of your own", .path.display())]
    ReadOnly {
        /// Which file.
        path: PathBuf,
    },
    /// The system does not let it be written.
    #[error("{} cannot be written: {why}", .path.display())]
    Write {
        /// Which file.
        path: PathBuf,
        /// What the system says.
        why: String,
    },
    /// event.toml is refused.
    #[error(transparent)]
    Settings(#[from] SettingsError),
    /// The manifest is refused.
    #[error(transparent)]
    Manifest(#[from] ManifestError),
}

impl FolderError {
    pub(super) fn reading(path: &Path, error: &Error) -> Self {
        let why = match error.kind() {
            ErrorKind::PermissionDenied => "you have no right to; ask whoever made it".to_owned(),
            ErrorKind::IsADirectory => "it is a folder".to_owned(),
            _ => error.to_string(),
        };
        Self::Read { path: path.to_owned(), why }
    }

    pub(super) fn writing(path: &Path, error: &Error) -> Self {
        let path = path.to_owned();
        match error.kind() {
            ErrorKind::StorageFull | ErrorKind::QuotaExceeded => Self::Full { path },
            ErrorKind::PermissionDenied | ErrorKind::ReadOnlyFilesystem => Self::ReadOnly { path },
            ErrorKind::NotADirectory => {
                Self::Write { path, why: "there is a file where a folder must be".to_owned() }
            }
            _ => Self::Write { path, why: error.to_string() },
        }
    }
}

/// What a file that is too large should have been.
fn named(path: &Path) -> &'static str {
    match path.extension().and_then(std::ffi::OsStr::to_str) {
        Some("toml") => "event.toml",
        Some("json") => "manifest",
        _ => "picture",
    }
}
