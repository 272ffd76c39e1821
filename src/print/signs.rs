//! `signs.pdf`: signs that hang in the room, a page each: at the door, where pieces are given out, at the tables, at the wall, beside the
//! mural. In the event's pencils, which give nothing of the picture away, and in both of its languages.

use serde::Serialize;

use super::languages::Languages;
use super::layout::Layout;
use super::marks::Box;
use super::page::{Heading, Page, Sheets, Sides};
use super::{Document, PrintError, Sources};
use crate::frame::float;
use crate::plan::settings::Pencil;
use crate::words::Words;

/// The document's name.
pub(super) const NAME: &str = "signs";

/// The signs, in the order in which a visitor meets them; the first has the times, and what to know about photos.
const SIGNS: [&str; 5] = ["door", "pieces", "tables", "wall", "mural"];

/// What all signs share, in mm from the top left of what a page leaves free.
#[derive(Serialize)]
struct Shared {
    event: String,
    /// Fields of colour along the top: place and colour of each.
    fields: Vec<(Box, String)>,
    words: Box,
}

/// One sign.
#[derive(Serialize)]
struct Item {
    area: Box,
    /// In each language: what it says, large, and what more.
    said: Vec<(String, Vec<String>)>,
}

/// Height of the fields of colour, and white below them, in mm.
const FIELDS_MM: f64 = 22.0;
const GAP_MM: f64 = 12.0;

/// Typesets the signs.
///
/// # Errors
/// [`PrintError::Typeset`].
pub fn signs(sources: &Sources) -> Result<Document, PrintError> {
    let layout = Layout::whole(sources.settings.print.paper);
    let size = layout.spots[0].size;
    let heading = Heading::new(sources, NAME, Some(SIGNS.len()), Sides::One);
    let languages = Languages::of(sources);
    let page = |(number, sign): (usize, &&str)| {
        let said: Vec<(String, Vec<String>)> =
            languages.each().map(|words| said(sources, words, sign)).collect();
        let about =
            said.iter().map(|(title, more)| format!("{title} {}", more.join(" "))).collect::<Vec<_>>();
        let items = vec![Item { area: layout.spots[0].into(), said }];
        Page {
            strip: heading.foot_line(layout.strip, number + 1),
            about: about.join(" "),
            back: false,
            items,
        }
    };
    let pages = SIGNS.iter().enumerate().map(page).collect();
    let pencils = &sources.facts.pencils;
    let width = size.x / float(pencils.len().max(1));
    let field = |(at, pencil): (usize, &Pencil)| {
        (Box { x: float(at) * width, y: 0.0, width, height: FIELDS_MM }, pencil.hex())
    };
    let shared = Shared {
        event: sources.settings.name.clone(),
        fields: pencils.iter().enumerate().map(field).collect(),
        words: Box { x: 0.0, y: FIELDS_MM + GAP_MM, width: size.x, height: size.y - FIELDS_MM - GAP_MM },
    };
    Sheets { name: NAME, shared, pages, pictures: Vec::new(), two_sided: false }.document(sources)
}

/// What a sign says in one language.
fn said(sources: &Sources, words: &Words, sign: &str) -> (String, Vec<String>) {
    let count = sources.printed.grid.asked();
    let more = words.say(&format!("sign-{sign}-more"), &[("count", count.into())]);
    let mut lines = vec![more];
    if sign == SIGNS[SIGNS.len() - 1] {
        lines.extend(sources.credit_in(words));
    }
    if sign == SIGNS[0] {
        let given = &sources.evening.given;
        lines.extend(given.start.map(|start| {
            let end = start.after(given.minutes);
            words.say("sign-times", &[("start", start.say(words).into()), ("end", end.say(words).into())])
        }));
        lines.push(words.say("sign-photos", &[]));
    }
    (words.say(&format!("sign-{sign}"), &[]), lines)
}
