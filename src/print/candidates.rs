//! `pictures.pdf`: several pictures side by side, before one of them is chosen: each in its pencils on its grid, what there is to draw, and
//! what the wall shows when a quarter, half, three quarters of it hang.

use serde::Serialize;

use super::marks::Box;
use super::page::{Foot, Reading, reading_room};
use super::typeset::Image;
use super::{Document, PrintError, Sources};
use crate::frame::{ceil_index, float};
use crate::picture::prospect::{Prospect, SHOWN_AT};
use crate::picture::{FewColours, PictureFacts};
use crate::plan::Grid;
use crate::plan::lengths::one;
use crate::plan::settings::Paper;

/// The document's name.
pub(super) const NAME: &str = "pictures";
/// Room for a picture and for a small wall, in mm.
const PICTURE_MM: [f64; 2] = [66.0, 52.0];
const WALL_MM: [f64; 2] = [34.0, 32.0];
/// Finest picture printed, in pixels a mm (200 an inch): it is small, and looked at from near.
const PX_PER_MM: f64 = 8.0;

/// A picture that can be chosen.
#[derive(Debug)]
pub struct Candidate<'a> {
    /// What its file is called.
    pub name: String,
    /// The picture in its pencils, without a border.
    pub few: &'a FewColours,
    /// Its grid.
    pub grid: Grid,
    /// What an evening with it would be like.
    pub prospect: &'a Prospect,
    /// What is said of it, a sentence each.
    pub said: Vec<String>,
}

/// What the template sets.
#[derive(Serialize)]
struct Content {
    intro: String,
    heads: Vec<String>,
    captions: Vec<String>,
    pictures: Vec<Shown>,
}

#[derive(Serialize)]
struct Shown {
    name: String,
    alt: String,
    /// The row of the table, without the name.
    row: Vec<String>,
    said: Vec<String>,
    columns: usize,
    rows: usize,
    picture: Box,
    wall: Box,
}

/// Columns of the table, by what stands above them.
const HEADS: [&str; 9] =
    ["name", "squares", "plain", "easy", "medium", "hard", "pencils", "narrowest", "half"];

/// Typesets the page. Whose settings `sources` are decides paper, units and the name of the event.
///
/// # Errors
/// [`PrintError::Typeset`].
pub fn candidates(sources: &Sources, candidates: &[Candidate]) -> Result<Document, PrintError> {
    // the pages are no picture's own: no colours at their head
    let facts = PictureFacts { pencils: Vec::new(), pieces: Vec::new(), ..sources.facts.clone() };
    let sources = &Sources { facts: &facts, ..*sources };
    let say = |id: &str| sources.words.say(id, &[]);
    let [room, _] = reading_room(sources.settings.print.paper, Foot::Line);
    // on wider paper all of it is larger
    let by = room / reading_room(Paper::Letter, Foot::Line)[0];
    let percent = |share: f64| [("percent", format!("{:.0}", share * 100.0).into())];
    let content = Content {
        intro: say("pictures-intro"),
        heads: HEADS.iter().map(|head| say(&format!("pictures-head-{head}"))).collect(),
        captions: SHOWN_AT.map(|share| sources.words.say("pictures-hung", &percent(share))).to_vec(),
        pictures: candidates.iter().map(|own| shown(own, by, sources)).collect(),
    };
    let pictures = candidates.iter().flat_map(|own| {
        let size = fitting(&own.grid, PICTURE_MM, by);
        let [width, height] =
            [size.width, size.height].map(|mm| u32::try_from(ceil_index(mm * PX_PER_MM)).unwrap_or(u32::MAX));
        let whole = Image::of(own.few.to_picture().pixels, width, height);
        let walls = own.prospect.hung.iter().map(|wall| Image::of(wall.clone(), wall.width(), wall.height()));
        std::iter::once(whole).chain(walls).collect::<Vec<_>>()
    });
    let pictures = pictures.collect();
    Reading { name: NAME, foot: Foot::Line, content, pictures }.document(sources)
}

fn shown(own: &Candidate, by: f64, sources: &Sources) -> Shown {
    let Prospect { levels, pencils, narrowest_mm, half_known, .. } = own.prospect;
    let narrowest = one(*narrowest_mm, sources.settings.print.units, sources.words);
    let mut row: Vec<String> = vec![own.grid.count().to_string()];
    row.extend(levels.iter().chain([pencils]).map(usize::to_string));
    row.extend([narrowest, half_known.to_string()]);
    Shown {
        alt: sources.words.say("pictures-alt", &[("name", own.name.as_str().into())]),
        name: own.name.clone(),
        row,
        said: own.said.clone(),
        columns: own.grid.columns,
        rows: own.grid.rows,
        picture: fitting(&own.grid, PICTURE_MM, by),
        wall: fitting(&own.grid, WALL_MM, by),
    }
}

/// The grid's shape as large as a room allows, in mm.
fn fitting(grid: &Grid, [width, height]: [f64; 2], by: f64) -> Box {
    let cell = (width / float(grid.columns)).min(height / float(grid.rows)) * by;
    Box { x: 0.0, y: 0.0, width: cell * float(grid.columns), height: cell * float(grid.rows) }
}
