//! What outlives the program: every accepted photo's check in the folder, and from the newest of them the wall as it was.
//!
//! A check has `seen.json` beside its report: when each cell was seen. Without it, a check of the command line, all of the wall
//! counts as seen just now.

use std::path::Path;

use image::ImageFormat;

use crate::check::{Check, Drawn};
use crate::plan::folder::FolderError;
use crate::plan::{Folder, Printed};
use crate::report::Report;

use super::evening::Evening;
use super::known::{Known, Times};
use super::pictures::WallPicture;

const SEEN: &str = "seen.json";
/// So many checks are tried, from the newest back, before the wall begins anew: somebody may have opened and changed the last one.
const TRIED: usize = 5;

/// The wall as a check left it.
pub(super) struct Kept {
    pub name: String,
    pub known: Known,
    pub picture: WallPicture,
}

/// Writes a check's folder and gives its name.
pub(super) fn keep(
    evening: &Evening,
    check: &Check,
    drawn: &Drawn,
    known: &Known,
    photo: Option<&[u8]>,
) -> Result<String, FolderError> {
    let times = serde_json::to_vec(&known.kept()).unwrap_or_default(); // a struct with text keys always serializes
    let mut more: Vec<(&str, &[u8])> = vec![(SEEN, &times)];
    more.extend(photo.map(|photo| ("photo.jpg", photo)));
    let name = (evening.clock.name)();
    let place = check.write(&evening.folder, &name, drawn, &evening.words, &more)?;
    Ok(name_of(&place).unwrap_or(name))
}

/// The wall as the newest check left it that was made since the folder name `since` and is of this event.
pub(super) fn newest(folder: &Folder, printed: &Printed, since: &str, now: u64) -> Option<Kept> {
    folder.checks_since(since).iter().take(TRIED).find_map(|check| read(check, printed, now))
}

fn read(check: &Path, printed: &Printed, now: u64) -> Option<Kept> {
    let text = String::from_utf8(Folder::read_of_check(check, "report.json")?).ok()?;
    let report = Report::from_json(&text).ok()?;
    if report.event.tag != printed.tag {
        return None;
    }
    let times: Option<Times> =
        Folder::read_of_check(check, SEEN).and_then(|bytes| serde_json::from_slice(&bytes).ok());
    let known = Known::from_report(&report, times.as_ref(), &printed.grid, now)?;
    let picture = Folder::read_of_check(check, "wall.jpg")?;
    let picture = image::load_from_memory_with_format(&picture, ImageFormat::Jpeg).ok()?.into_rgb8();
    Some(Kept { name: name_of(check)?, known, picture: WallPicture::from_check(&picture, &printed.grid)? })
}

fn name_of(check: &Path) -> Option<String> {
    Some(check.file_name()?.to_str()?.to_owned())
}
