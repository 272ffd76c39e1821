//! A photo's bytes from disk.

use std::fs::File;
use std::io::{ErrorKind, Read};
use std::path::Path;

use super::PhotoError;

/// Bytes of a photo's file. Phones write 3 to 40 MB; an uncompressed TIFF of 200 megapixels has 600 MB.
const MOST: u64 = 800 << 20;

/// Reads a photo's file.
///
/// # Errors
/// [`PhotoError::File`] where it cannot be read or is larger than any photo.
pub fn read(path: &Path) -> Result<Vec<u8>, PhotoError> {
    let refuse = |error: std::io::Error| {
        PhotoError::File(match error.kind() {
            ErrorKind::NotFound => "there is no such file: check its name and folder".to_owned(),
            ErrorKind::PermissionDenied => "this file may not be read: check its permissions".to_owned(),
            ErrorKind::IsADirectory => "this is a folder: name the photos in it".to_owned(),
            _ => format!("the file cannot be read ({error}): copy it to this computer and try again"),
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
        Err(PhotoError::File("the file is larger than any photo: is it the right one?".to_owned()))
    }
}
