//! What all pages have in common: paper, title, the strip with the ruler and the words for the printer's dialogue.

use serde::Serialize;

use super::layout::{Layout, Strip};
use super::marks::Box;
use crate::frame::float;
use crate::plan::Printed;
use crate::plan::settings::{Flip, PrintSettings, Units};
use crate::words::Words;

/// A document: what its template reads. `S` is what all pieces share, `P` a piece.
#[derive(Serialize)]
pub(super) struct Sheets<S: Serialize, P: Serialize> {
    /// The document's title.
    pub title: String,
    /// Width and height of the page in mm.
    pub paper: [f64; 2],
    /// What all pieces share.
    pub shared: S,
    /// The pages.
    pub pages: Vec<Page<P>>,
}

/// A page.
#[derive(Serialize)]
pub(super) struct Page<P: Serialize> {
    /// Ruler and words.
    pub strip: StripWords,
    /// Whether this is the back of a sheet.
    pub back: bool,
    /// What lies on it.
    pub pieces: Vec<P>,
}

/// The strip as templates know it.
#[derive(Serialize)]
pub(super) struct StripWords {
    /// Where it lies.
    pub area: Box,
    /// Read from left to right; else from the bottom up.
    pub upright: bool,
    /// Three lines of words, the first one bold.
    pub lines: [String; 3],
    /// Two rulers, the one that people read first.
    pub rulers: [Ruler; 2],
}

/// A ruler: a line with ticks.
#[derive(Clone, Serialize)]
pub(super) struct Ruler {
    /// How long it is in mm.
    pub length: f64,
    /// Where each tick stands, and how long it is, in mm.
    pub ticks: Vec<[f64; 2]>,
    /// Where each number stands in mm, and the number; the last has its unit.
    pub numbers: Vec<(f64, String)>,
}

/// What is said on every page of a document.
pub(super) struct Heading<'a> {
    /// What is printed, and for which event.
    pub printed: &'a Printed,
    /// How it is printed.
    pub settings: &'a PrintSettings,
    /// The sentences.
    pub words: &'a Words,
    /// The document's name as people read it.
    pub document: String,
    /// How many pages it has.
    pub pages: usize,
    /// Whether its sheets have backs.
    pub two_sided: bool,
}

impl Heading<'_> {
    /// The strip of the page with a number from 1.
    pub fn strip(&self, layout: &Layout, page: usize, back: bool) -> StripWords {
        let Strip { area, upright } = layout.strip;
        let area = if back { area.turned_over(self.settings.flip, layout.page) } else { area };
        let event = [("event", self.printed.name.as_str().into()), ("tag", self.printed.tag.as_str().into())];
        StripWords {
            area: area.into(),
            upright,
            lines: [
                self.words.say("print-actual-size", &[]),
                self.page_words(page, back),
                self.words.say("print-event", &event),
            ],
            rulers: rulers(self.settings.units, self.words),
        }
    }

    /// The document's name, the page, and how the printer is to turn the paper.
    fn page_words(&self, page: usize, back: bool) -> String {
        let id = match (self.two_sided, self.settings.flip, back) {
            (true, Flip::LongEdge, false) => "print-page-front-long",
            (true, Flip::ShortEdge, false) => "print-page-front-short",
            (true, _, true) => "print-page-back",
            _ => "print-page-single",
        };
        let said = [
            ("document", self.document.as_str().into()),
            ("page", page.to_string().into()),
            ("pages", self.pages.to_string().into()),
            ("front", (page - 1).to_string().into()),
        ];
        self.words.say(id, &said)
    }
}

/// 100 mm and 4 inches (of exactly 25.4 mm), the unit that people read first.
fn rulers(units: Units, words: &Words) -> [Ruler; 2] {
    let metric = ruler(words, "print-ruler-mm", (20, 5.0, 2), (2, 50.0, 50));
    let inches = ruler(words, "print-ruler-inch", (16, 6.35, 4), (4, 25.4, 1));
    match units {
        Units::Inch => [inches, metric],
        Units::Mm => [metric, inches],
    }
}

/// A ruler with `count` steps of `step` mm, every `long`-th tick a longer one; numbers every `apart` mm.
fn ruler(
    words: &Words,
    last: &str,
    (count, step, long): (usize, f64, usize),
    (numbers, apart, value): (usize, f64, usize),
) -> Ruler {
    let length = float(count) * step;
    let tick = |i: usize| [float(i) * step, if i.is_multiple_of(long) { 2.0 } else { 1.2 }];
    let number = |i: usize| {
        let (x, said) = (float(i) * apart, (i * value).to_string());
        let end = (x - length).abs() < 1e-9;
        (x, if end { words.say(last, &[("length", said.into())]) } else { said })
    };
    Ruler {
        length,
        ticks: (0..=count).map(tick).collect(),
        numbers: (0..=numbers).map(number).take_while(|(x, _)| *x < length + 1e-9).collect(),
    }
}
