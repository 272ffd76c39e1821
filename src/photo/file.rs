//! A photo's bytes from disk.

use std::fs::File;
use std::io::{ErrorKind, Read};
use std::path::Path;

use super::PhotoError;
use crate::words::Sentence;

/// Maximum size of a photo's file, in bytes. Phones write 3 to 40 MB; an uncompressed TIFF of 200 megapixels
/// has 600 MB.
const MOST: u64 = 800 << 20;

/// Reads a photo's file.
///
/// # Errors
/// [`PhotoError::File`] where it cannot be read or is larger than any photo.
pub fn read(path: &Path) -> Result<Vec<u8>, PhotoError> {
    let refuse = |error: std::io::Error| {
        PhotoError::File(match error.kind() {
            ErrorKind::NotFound => Sentence::new("error-photo-no-file"),
            ErrorKind::PermissionDenied => Sentence::new("error-photo-no-right"),
            ErrorKind::IsADirectory => Sentence::new("error-photo-is-folder"),
            _ => Sentence::new("error-photo-unreadable").with("why", error.to_string()),
        })
    };
    if path.is_dir() {
        return Err(refuse(ErrorKind::IsADirectory.into()));
    }
    let mut bytes = Vec::new();
    let read = File::open(path).and_then(|f| f.take(MOST + 1).read_to_end(&mut bytes)).map_err(refuse)?;
    if u64::try_from(read).is_ok_and(|read| read <= MOST) {
        Ok(bytes)
    } else {
        Err(PhotoError::File(Sentence::new("error-photo-file-too-large")))
    }
}
