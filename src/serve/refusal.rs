//! Why a photo gives no answer, and why one is not taken back.

use crate::display::JpegError;
use crate::photo::PhotoError;
use crate::read::ReadError;

/// Why a photo gives no answer.
#[derive(Debug)]
pub enum Refusal {
    /// It is no photo that can be opened.
    Photo(PhotoError),
    /// It shows no wall that can be read.
    Read(ReadError),
    /// It shows no wall that can be read, since it is a small copy of a photo: its size in pixels.
    Copy(u32, u32),
    /// A picture cannot be drawn.
    Draw(JpegError),
    /// It is a practice photo, and the wall is known from real ones.
    Practice,
    /// Something in it made the program stumble.
    Stumble,
}

/// Why the last photo is not taken back.
#[derive(Copy, Clone, Debug, PartialEq, Eq)]
pub enum NotUndone {
    /// Another photo came, or another phone took it back.
    Changed,
    /// There is none.
    Nothing,
    /// Its check cannot be put aside on the disk.
    Unkept,
}
