//! Check of the wall: what was read becomes a judgement, a report, pictures, and a folder of files.
//!
//! ```text
//!   WallReading ─▶ Check::new ─▶ judgement, report ─┐
//!                                                   ├─▶ write ─▶ checks/<time>/  report.json, report.html,
//!   Covered, Camera ─▶ draw, Straightening ─▶ Drawn ┘                            wall.jpg, marked.jpg
//! ```
//!
//! Whoever has photos, the command or the helper's page, goes this way, so that a check is the same wherever
//! it was made. The clock belongs to the caller: the folder's name is given.

pub mod lying;

use std::path::PathBuf;

use image::RgbImage;

use crate::display::light::Light;
use crate::display::{
    Cover, Covered, Frontal, JpegError, LONGEST_PX, MarkedPart, Marking, Shot, Straightening, jpeg, marked,
};
use crate::judge::{Advice, Judgement, advise, fixes, judge};
use crate::plan::crowd::Outlook;
use crate::plan::folder::{FolderError, NewFolder};
use crate::plan::{Cell, Folder, Printed};
use crate::read::{CellReading, PhotoReading, WallReading};
use crate::report::html::Straight;
use crate::report::{Occasion, Pictures, Report, accent, html};
use crate::words::Words;

/// Margin of `wall.jpg` around the wall, in mm: squares that hang over the edge are seen whole.
pub const MARGIN_MM: f64 = 20.0;

/// Frame of `wall.jpg`: as fine as the finest photo shows the wall, as far as a screen can show that.
pub const FRONTAL: Frontal = Frontal { margin_mm: MARGIN_MM, px_per_mm: None, longest_px: LONGEST_PX };

/// Check of the wall: reading, judgement and report.
#[derive(Clone, Debug)]
pub struct Check {
    /// Reading of the wall.
    pub reading: WallReading,
    /// Judgement: the state of each cell.
    pub judgement: Judgement,
    /// Advice: what the report's sentences of that name say, one for one.
    pub advice: Vec<Advice>,
    /// Report: what people are told.
    pub report: Report,
}

/// What the photos show besides codes, and what is known besides.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Noticed {
    /// Whether somebody seems to stand before the wall.
    pub someone: bool,
    /// Cells whose squares nobody has drawn on.
    pub white: Vec<Cell>,
    /// Cells whose squares are only begun, where somebody asked.
    pub begun: Vec<Cell>,
    /// Squares that were drawn on spare paper, by the cell where they belong; no photo shows that.
    pub spare: Vec<Cell>,
}

impl Noticed {
    /// What the covers of each photo's parts tell, in the order of the reading's photos; of a cell the photo that shows it best.
    #[must_use]
    pub fn of(covers: &[Vec<Cover>], reading: &WallReading) -> Self {
        let covers: Vec<&Cover> = covers.iter().flatten().collect();
        let told = |by: fn(&Cover) -> &[Cell]| {
            let is_told = |seen: &&CellReading| {
                covers.get(seen.photo).is_some_and(|cover| by(cover).contains(&seen.cell))
            };
            reading.cells.iter().filter(is_told).map(|seen| seen.cell).collect()
        };
        Self {
            someone: covers.iter().any(|cover| cover.someone()),
            white: told(Cover::white),
            begun: told(Cover::begun),
            spare: Vec::new(),
        }
    }

    /// The same with the squares that are known to be drawn on spare paper.
    #[must_use]
    pub fn with_spares(self, spare: Vec<Cell>) -> Self {
        Self { spare, ..self }
    }

    /// Whether to ask for a photo without whoever stands there. Squares of another part of the wall look like somebody before this one.
    #[must_use]
    pub fn asks_to_step_aside(&self, judgement: &Judgement) -> bool {
        self.someone && !judgement.apart.is_part
    }

    /// Cells where a square hangs that nobody has drawn on; where photos contradict each other, nobody knows what hangs.
    #[must_use]
    pub fn still_white(&self, judgement: &Judgement) -> Vec<Cell> {
        known(&self.white, judgement)
    }

    /// Cells where a square hangs that is only begun.
    #[must_use]
    pub fn only_begun(&self, judgement: &Judgement) -> Vec<Cell> {
        known(&self.begun, judgement)
    }
}

/// Those of some cells where it is known what hangs.
fn known(cells: &[Cell], judgement: &Judgement) -> Vec<Cell> {
    let is_known = |cell: &Cell| judgement.at(*cell).is_some_and(|at| at.found.is_some());
    cells.iter().copied().filter(is_known).collect()
}

/// The pictures of a check, as JPEG files.
#[derive(Clone, Debug, Default)]
pub struct Drawn {
    /// Marked photos in their order, cropped and blanked.
    pub marked: Vec<Vec<u8>>,
    /// Front view of the wall.
    pub straight: Vec<u8>,
}

impl Check {
    /// What to expect at the event's end, from what hangs now and is drawn on; `stamp` is when the photo was taken. `None` for practice, and
    /// where not all of the wall was seen or read.
    #[must_use]
    pub fn forecast(&self, outlook: &Outlook, stamp: &str, words: &Words) -> Option<String> {
        let Report { made, summary, white, lead, border, .. } = &self.report;
        if *made || summary.unseen > 0 || lead.is_some() {
            return None;
        }
        // what hangs of a border is no part of the picture, whether it is white or not
        let grid = &self.judgement.grid;
        let of_picture = |label: &&String| grid.cell(label).is_some_and(|cell| grid.asks_for(cell));
        let beside = border.map_or(0, |border| border.up) + white.iter().filter(of_picture).count();
        let up = summary.right + summary.wrong + summary.turned + summary.unread;
        outlook.told(stamp, up.saturating_sub(beside), words)
    }

    /// Judges a reading and puts it into words.
    ///
    /// `someone` says whether somebody seems to stand before the wall in one of its photos.
    #[must_use]
    pub fn new(
        reading: WallReading,
        noticed: &Noticed,
        printed: &Printed,
        occasion: &Occasion,
        words: &Words,
    ) -> Self {
        let judgement = judge(&reading, &printed.grid).with_spares(&noticed.spare);
        let (mut fixes, mut advice) = (fixes(&judgement), advise(&reading, &judgement));
        if advice.iter().any(Advice::is_lead) {
            // another photo tells more than a hundred spots to look at
            fixes.retain(|fix| fix.is_known(&judgement));
        }
        if noticed.asks_to_step_aside(&judgement) {
            advice.insert(0, Advice::StepAside);
        }
        let mut report = Report::new((&reading, &judgement), (&fixes, &advice), printed, occasion, words);
        let labels = |cells: Vec<Cell>| cells.iter().map(|cell| judgement.grid.label(*cell)).collect();
        report.white = labels(noticed.still_white(&judgement));
        report.begun = labels(noticed.only_begun(&judgement));
        advice.retain(|one| !one.is_lead());
        Self { reading, judgement, advice, report }
    }

    /// Draws a photo marked, and what it shows of the wall into the wall's picture.
    ///
    /// The light of each of its parts is corrected where `light` gives it. Returns the marked photo as a JPEG file; `None` where
    /// the reading has no such photo.
    ///
    /// # Errors
    /// [`JpegError`] where the marked photo makes no file.
    pub fn draw(
        &self,
        covered: &Covered,
        photo: usize,
        light: &(dyn Fn(&PhotoReading) -> Option<Light> + Sync),
        wall: &mut Straightening<'_>,
        words: &Words,
    ) -> Result<Option<Vec<u8>>, JpegError> {
        let parts = self.parts(covered, photo);
        if parts.is_empty() {
            return Ok(None);
        }
        let marking = self.marking(covered, &parts, words);
        let (marked, ()) =
            rayon::join(|| jpeg(&marked(&marking)), || straighten(wall, covered, &parts, light));
        marked.map(Some)
    }

    /// Draws the last photo without light correction, and finishes the wall's picture.
    ///
    /// Returns the marked photo, `None` where the reading has no such photo, and `wall.jpg`, both as JPEG
    /// files.
    ///
    /// # Errors
    /// [`JpegError`] where one of the two makes no file.
    pub fn draw_last(
        &self,
        covered: &Covered,
        photo: usize,
        mut wall: Straightening<'_>,
        words: &Words,
    ) -> Result<(Option<Vec<u8>>, Vec<u8>), JpegError> {
        let parts = self.parts(covered, photo);
        if parts.is_empty() {
            return Ok((None, jpeg(&self.straight(wall, words))?));
        }
        let marking = self.marking(covered, &parts, words);
        let straight = || {
            straighten(&mut wall, covered, &parts, &|_| None);
            jpeg(&self.straight(wall, words))
        };
        let (marked, straight) = rayon::join(|| jpeg(&marked(&marking)), straight);
        Ok((Some(marked?), straight?))
    }

    /// The parts of the wall that a photo shows, each with its cover.
    fn parts<'a>(&'a self, covered: &'a Covered, photo: usize) -> Vec<MarkedPart<'a>> {
        let parts = self.reading.of_photo(photo).zip(covered.covers());
        parts.map(|((index, reading), cover)| MarkedPart { reading, index, cover: Some(cover) }).collect()
    }

    fn marking<'a>(
        &'a self,
        covered: &'a Covered,
        parts: &'a [MarkedPart<'a>],
        words: &'a Words,
    ) -> Marking<'a> {
        Marking { photo: covered.photo(), parts, judgement: &self.judgement, words }
    }

    /// Finished picture of the wall, with label and state where it is covered.
    #[must_use]
    pub fn straight(&self, wall: Straightening<'_>, words: &Words) -> RgbImage {
        wall.finish_named(|cell| {
            let state = self.judgement.at(cell).map_or("unseen", |at| at.state.name());
            (self.judgement.grid.label(cell), words.say(&format!("state-{state}"), &[]))
        })
    }

    /// Writes the check's folder `checks/<name>/`, whole or not at all, with `more` files, and returns its
    /// path.
    ///
    /// # Errors
    /// [`FolderError`] where it cannot be written; nothing of it stays then.
    pub fn write(
        &self,
        folder: &Folder,
        name: &str,
        drawn: &Drawn,
        words: &Words,
        more: &[(&str, &[u8])],
    ) -> Result<PathBuf, FolderError> {
        let into = folder.new_check_folder(name)?;
        let straight = Some(Straight { jpeg: &drawn.straight, margin_mm: MARGIN_MM });
        let accent = folder.settings().map(|own| accent(&own.picture.pencils)).unwrap_or_default();
        let pictures = Pictures { marked: &drawn.marked, straight, accent: &accent };
        into.write("report.json", self.report.to_json().as_bytes())?;
        into.write("report.html", html(&self.report, words, pictures).as_bytes())?;
        into.write("wall.jpg", &drawn.straight)?;
        write_marked(&into, &drawn.marked)?;
        more.iter().try_for_each(|(name, bytes)| into.write(name, bytes))?;
        into.finish()
    }
}

/// Draws what the parts in a photo show into the wall's picture.
fn straighten(
    wall: &mut Straightening<'_>,
    covered: &Covered,
    parts: &[MarkedPart<'_>],
    light: &(dyn Fn(&PhotoReading) -> Option<Light> + Sync),
) {
    for MarkedPart { reading, index, cover } in parts {
        cover.iter().for_each(|cover| wall.name_hidden(*index, cover));
        let light = light(reading);
        wall.add(*index, Shot::of(covered.photo(), reading, light.as_ref()));
    }
}

/// Writes `marked.jpg`; of several photos `marked-1.jpg` and so on.
fn write_marked(into: &NewFolder, marked: &[Vec<u8>]) -> Result<(), FolderError> {
    for (number, picture) in (1..).zip(marked) {
        let name = if marked.len() == 1 { "marked.jpg".to_owned() } else { format!("marked-{number}.jpg") };
        into.write(&name, picture)?;
    }
    Ok(())
}
