//! Files and folders that appear whole or not at all.

use std::fs::{self, File};
use std::io::{Read, Write};
use std::path::{Path, PathBuf};

use tempfile::{Builder, NamedTempFile, TempDir};

use super::{FolderError, Why};

/// How often a folder is given another number when its name is taken.
const MOST_NUMBERS: usize = 1_000;

/// The bytes of a file of at most `most` bytes.
pub(super) fn read(path: &Path, most: u64) -> Result<Vec<u8>, FolderError> {
    let refuse = |error: std::io::Error| FolderError::reading(path, &error);
    let mut bytes = Vec::new();
    let read =
        File::open(path).and_then(|file| file.take(most + 1).read_to_end(&mut bytes)).map_err(refuse)?;
    if u64::try_from(read).is_ok_and(|read| read <= most) {
        Ok(bytes)
    } else {
        Err(FolderError::TooLarge { path: path.to_owned(), most })
    }
}

/// Writes beside the file, waits for the disk, then renames.
pub(super) fn write(path: &Path, bytes: &[u8]) -> Result<(), FolderError> {
    write_as(path, bytes, 0o666)
}

/// The same for a file that is its owner's alone, where the system knows owners.
pub(super) fn write_private(path: &Path, bytes: &[u8]) -> Result<(), FolderError> {
    write_as(path, bytes, 0o600)
}

fn write_as(path: &Path, bytes: &[u8], mode: u32) -> Result<(), FolderError> {
    let refuse = |error: &std::io::Error| FolderError::writing(path, error);
    let folder = parent(path);
    fs::create_dir_all(folder).map_err(|error| refuse(&error))?;
    let mut beside = file_in(folder, mode).map_err(|error| refuse(&error))?;
    beside.write_all(bytes).and_then(|()| beside.as_file().sync_all()).map_err(|error| refuse(&error))?;
    beside.persist(path).map_err(|error| refuse(&error.error))?;
    settle(folder);
    Ok(())
}

fn parent(path: &Path) -> &Path {
    match path.parent() {
        Some(folder) if folder.as_os_str().is_empty() => Path::new("."),
        Some(folder) => folder,
        None => path,
    }
}

/// Asks the disk to keep a folder's new name. Some systems cannot; the file itself is safe by then.
fn settle(folder: &Path) {
    if let Ok(folder) = File::open(folder) {
        let _ = folder.sync_all();
    }
}

/// A new file that goes with its handle, open to whom `mode` says, as far as new files are open to them.
#[cfg_attr(not(unix), allow(unused_variables, reason = "other systems have no such modes"))]
fn file_in(folder: &Path, mode: u32) -> std::io::Result<NamedTempFile> {
    let mut builder = Builder::new();
    builder.prefix(".writing-");
    #[cfg(unix)]
    builder.permissions(std::os::unix::fs::PermissionsExt::from_mode(mode));
    builder.tempfile_in(folder)
}

/// A new folder that goes with its handle, open to whom new folders are open.
fn folder_in(folder: &Path) -> std::io::Result<TempDir> {
    let mut builder = Builder::new();
    builder.prefix(".writing-");
    #[cfg(unix)]
    builder.permissions(std::os::unix::fs::PermissionsExt::from_mode(0o777));
    builder.tempdir_in(folder)
}

/// A folder in the making, of a check or of comparison prints. It gets its name with [`NewFolder::finish`]; dropped before, nothing of
/// it stays.
#[derive(Debug)]
pub struct NewFolder {
    making: TempDir,
    within: PathBuf,
    name: String,
}

impl NewFolder {
    pub(super) fn begin(within: &Path, name: &str) -> Result<Self, FolderError> {
        let target = within.join(name);
        let refuse = |error: std::io::Error| FolderError::writing(&target, &error);
        if target.parent() != Some(within) || target.file_name().is_none_or(|own| own != name) {
            return Err(FolderError::Write { path: target, why: Why::NoName });
        }
        fs::create_dir_all(within).map_err(refuse)?;
        Ok(Self {
            making: folder_in(within).map_err(refuse)?,
            within: within.to_owned(),
            name: name.to_owned(),
        })
    }

    /// Writes one file of it, named without folders.
    ///
    /// # Errors
    /// [`FolderError`] where it cannot be written, named by where it would have appeared.
    pub fn write(&self, name: &str, bytes: &[u8]) -> Result<(), FolderError> {
        let refuse =
            |error: std::io::Error| FolderError::writing(&self.within.join(&self.name).join(name), &error);
        let mut file = File::create_new(self.making.path().join(name)).map_err(refuse)?;
        file.write_all(bytes).and_then(|()| file.sync_all()).map_err(refuse)
    }

    /// Gives the folder its name and says where it is; where the name is taken, `-2`, `-3` … is added.
    ///
    /// # Errors
    /// [`FolderError`] where it cannot be renamed; nothing of it stays then.
    pub fn finish(self) -> Result<PathBuf, FolderError> {
        let mut target = self.within.join(&self.name);
        for number in 2..MOST_NUMBERS {
            if !target.exists() {
                break;
            }
            target = self.within.join(format!("{}-{number}", self.name));
        }
        fs::rename(self.making.path(), &target).map_err(|error| FolderError::writing(&target, &error))?;
        let _ = self.making.keep(); // the folder of that name is no more: nothing to remove
        settle(&self.within);
        Ok(target)
    }
}
