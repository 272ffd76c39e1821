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
use crate::words::Words;

use super::known::{Known, Times};
use super::pictures::WallPicture;
use super::together::Together;

const SEEN: &str = "seen.json";
/// So many checks are tried, from the newest back, before the wall begins anew: somebody may have opened and changed the last one.
const TRIED: usize = 5;

/// The wall as a check left it.
pub(super) struct Kept {
    pub name: String,
    pub known: Known,
    pub picture: WallPicture,
    /// The last photo marked, as a JPEG file; empty where it is not there.
    pub marked: Vec<u8>,
}

/// Writes a check's folder under a name, and gives the name that it got.
pub(super) fn keep(
    (folder, words): (&Folder, &Words),
    (name, check): (&str, &Check),
    drawn: &Drawn,
    known: &Known,
    photo: Option<&[u8]>,
) -> Result<String, FolderError> {
    let times = serde_json::to_vec(&known.kept()).unwrap_or_default(); // a struct with text keys always serializes
    let mut more: Vec<(&str, &[u8])> = vec![(SEEN, &times)];
    more.extend(photo.map(|photo| ("photo.jpg", photo)));
    let place = check.write(folder, name, drawn, words, &more)?;
    Ok(name_of(&place).unwrap_or_else(|| name.to_owned()))
}

/// The wall as the newest check left it that was made since the folder name `since` and is of this event. Practice is passed over: its
/// squares hang nowhere.
pub(super) fn newest(folder: &Folder, printed: &Printed, since: &str, now: u64) -> Option<Kept> {
    folder
        .checks_since(since)
        .iter()
        .filter(|check| !is_practice(check))
        .take(TRIED)
        .find_map(|check| read(check, printed, now))
}

/// Whether a check's photos were made by the program.
fn is_practice(check: &Path) -> bool {
    Report::of_check(check).is_some_and(|report| report.made)
}

fn read(check: &Path, printed: &Printed, now: u64) -> Option<Kept> {
    let report = Report::of_check(check)?;
    if report.event.tag != printed.tag {
        return None;
    }
    let times: Option<Times> =
        Folder::read_of_check(check, SEEN).and_then(|bytes| serde_json::from_slice(&bytes).ok());
    let known = Known::from_report(&report, times.as_ref(), &printed.grid, now)?;
    let picture = Folder::read_of_check(check, "wall.jpg")?;
    let picture = image::load_from_memory_with_format(&picture, ImageFormat::Jpeg).ok()?.into_rgb8();
    let picture = WallPicture::from_check(&picture, &printed.grid)?;
    let last = format!("marked-{}.jpg", report.photos.len());
    let marked = Folder::read_of_check(check, "marked.jpg").or_else(|| Folder::read_of_check(check, &last));
    Some(Kept { name: name_of(check)?, known, picture, marked: marked.unwrap_or_default() })
}

/// Puts a check aside, so that nothing goes on from it: its folder gets a name that no check has.
pub(super) fn put_check_aside(folder: &Folder, name: &str) -> std::io::Result<()> {
    let checks = folder.checks();
    std::fs::rename(checks.join(name), checks.join(format!(".undone-{name}")))
}

/// The helpers' list as it was kept, and whether it was damaged: then it is put aside and a new one begins.
pub(super) fn list(folder: &Folder, printed: &Printed, now: u64) -> (Together, bool) {
    let nothing = Together::new(&printed.tag);
    let path = folder.helpers_list_json();
    if !path.exists() {
        return (nothing, false);
    }
    let kept = folder.kept_helpers_list();
    match kept.and_then(|bytes| Together::from_kept(&bytes, &printed.tag, printed.grid.count(), now)) {
        Some(kept) => (kept, false),
        None => {
            let _ = std::fs::rename(&path, path.with_file_name(".helpers-list-damaged.json"));
            (nothing, true)
        }
    }
}

fn name_of(check: &Path) -> Option<String> {
    Some(check.file_name()?.to_str()?.to_owned())
}
