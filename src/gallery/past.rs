//! Past checks of an event, from the first to the last, as their folders keep them.

use std::path::Path;

use image::RgbImage;
use rayon::prelude::*;

use crate::check::MARGIN_MM;
use crate::frame::{float, round_index};
use crate::judge::Summary;
use crate::plan::{Folder, Grid};
use crate::print::comparison::PastCheck;
use crate::report::Report;

/// Maximum side of a check's picture, in pixels.
const LONGEST_PX: f64 = 640.0;

/// The wall as it is now.
#[derive(Copy, Clone, Debug)]
pub struct Now<'a> {
    /// The time, written as checks are named.
    pub name: &'a str,
    /// Its picture.
    pub wall: &'a RgbImage,
    /// How many cells are in which state.
    pub summary: Summary,
    /// The photos' files, without folders.
    pub photos: &'a [String],
    /// Whether these are made pictures.
    pub made: bool,
}

/// Past checks in an event's folder, first one first, and the wall as it is now.
///
/// A check whose report cannot be read is passed over; one without a picture has none. Practice is not the event: beside a real wall only
/// checks of real photos count, beside a practice one only practice. Where the last check was of the photos of now, these count once.
#[must_use]
pub fn checks_until(folder: &Folder, grid: &Grid, now: &Now) -> Vec<PastCheck> {
    let mut folders: Vec<_> = folder.checks_since("");
    folders.reverse();
    let mut past: Vec<Past> =
        folders.par_iter().filter_map(|check| past_check(check, grid, now.made)).collect();
    past.pop_if(|last| last.photos == now.photos && last.check.summary == now.summary);
    let mut checks: Vec<(Option<f64>, PastCheck)> = past.into_iter().map(|own| (own.at, own.check)).collect();
    let picture = Some(shrunk(now.wall));
    let check = PastCheck { when: when(now.name), minutes: 0.0, summary: now.summary, picture };
    checks.push((minutes(now.name), check));
    let first = checks.first().and_then(|(at, _)| *at);
    let since = |at: Option<f64>| at.zip(first).map_or(0.0, |(at, first)| at - first);
    checks.into_iter().map(|(at, check)| PastCheck { minutes: since(at), ..check }).collect()
}

/// A past check, its time in minutes, and its photos' files.
struct Past {
    at: Option<f64>,
    photos: Vec<String>,
    check: PastCheck,
}

fn past_check(check: &Path, grid: &Grid, made: bool) -> Option<Past> {
    let report = Report::of_check(check)?;
    if report.cells.len() != grid.count() || report.made != made {
        return None; // of another wall, where the grid was changed between, or of practice
    }
    let name = check.file_name()?.to_string_lossy();
    let picture = Folder::read_of_check(check, "wall.jpg").and_then(|file| picture(&file, grid));
    Some(Past {
        at: minutes(&name),
        photos: report.photos.into_iter().map(|photo| photo.file).collect(),
        check: PastCheck { when: when(&name), minutes: 0.0, summary: report.summary, picture },
    })
}

/// Picture of the wall without the margin that checks leave around it.
fn picture(file: &[u8], grid: &Grid) -> Option<RgbImage> {
    let whole = image::load_from_memory_with_format(file, image::ImageFormat::Jpeg).ok()?.into_rgb8();
    let size = grid.size();
    let part = |mm: f64, all_mm: f64, pixels: u32| {
        u32::try_from(round_index(mm / (all_mm + 2.0 * MARGIN_MM) * f64::from(pixels))).unwrap_or(0)
    };
    let (left, top) = (part(MARGIN_MM, size.x, whole.width()), part(MARGIN_MM, size.y, whole.height()));
    let (width, height) = (part(size.x, size.x, whole.width()), part(size.y, size.y, whole.height()));
    let wall = image::imageops::crop_imm(&whole, left, top, width.max(1), height.max(1)).to_image();
    Some(shrunk(&wall))
}

/// Picture shrunk to the size in which checks are shown.
fn shrunk(wall: &RgbImage) -> RgbImage {
    let by = (LONGEST_PX / f64::from(wall.width().max(wall.height()).max(1))).min(1.0);
    let side = |pixels: u32| u32::try_from(round_index(f64::from(pixels) * by)).unwrap_or(1).max(1);
    image::imageops::thumbnail(wall, side(wall.width()), side(wall.height()))
}

/// Time of day, `18:30`, of a check's name `2026-11-24_18.30.05`.
fn when(name: &str) -> String {
    name.get(11..16).unwrap_or_default().replace('.', ":")
}

/// Time of a check's name, in minutes since the year 0 of the Gregorian calendar: only differences mean
/// anything.
fn minutes(name: &str) -> Option<f64> {
    let number = |from: usize, to: usize| name.get(from..to)?.parse::<usize>().ok().map(float);
    let whole = |from: usize, to: usize| name.get(from..to)?.parse::<usize>().ok();
    let days = float(days_before_month(whole(0, 4)?, whole(5, 7)?)?) + number(8, 10)?;
    Some((days * 24.0 + number(11, 13)?) * 60.0 + number(14, 16)? + number(17, 19)? / 60.0)
}

/// Number of days before the first of a month of the Gregorian calendar, since 1 January of the year 0.
///
/// `None` where there is no such month.
fn days_before_month(year: usize, month: usize) -> Option<usize> {
    const LENGTHS: [usize; 12] = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
    let is_leap = year.is_multiple_of(4) && (!year.is_multiple_of(100) || year.is_multiple_of(400));
    let before = LENGTHS.get(..month.checked_sub(1)?).filter(|_| month <= 12)?;
    let leap_days = year.div_ceil(4) - year.div_ceil(100) + year.div_ceil(400);
    Some(year * 365 + leap_days + before.iter().sum::<usize>() + usize::from(is_leap && month > 2))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_checks_name_tells_when_it_was() {
        assert_eq!(when("2026-11-24_18.30.05"), "18:30");
        let apart = minutes("2026-11-25_00.10.00-2").unwrap() - minutes("2026-11-24_23.40.30").unwrap();
        assert!((apart - 29.5).abs() < 1e-9);
        assert_eq!((when("x"), minutes("notes")), (String::new(), None));
        // over the end of a month, of February in a leap year and in another, of a year
        for (first, second, hours) in [
            ("2026-04-30_23.00.00", "2026-05-01_01.00.00", 2.0),
            ("2028-02-28_12.00.00", "2028-03-01_12.00.00", 48.0),
            ("2026-02-28_12.00.00", "2026-03-01_12.00.00", 24.0),
            ("2026-12-31_23.30.00", "2027-01-01_00.30.00", 1.0),
        ] {
            let apart = (minutes(second).unwrap() - minutes(first).unwrap()) / 60.0;
            assert!((apart - hours).abs() < 1e-9, "{first} to {second}: {apart}");
        }
        assert_eq!(minutes("2026-13-01_10.00.00"), None);
    }
}
