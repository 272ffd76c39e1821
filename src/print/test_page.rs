//! `test-page.pdf`: the page that is printed first and photographed, so that the rest comes out at size: marks, a code for each side, bars
//! near the edges, the printer's inks and the event's pencils.
//!
//! Places are those of [`plan::marks`](crate::plan::marks), which `read` looks for.

use serde::Serialize;

use super::layout::{Area, Layout};
use super::marks::{Box, Code};
use super::page::{Heading, Page, Sheets, Sides};
use super::{Document, PrintError, Sources};
use crate::frame::{Point, SheetMm};
use crate::plan::Modules;
use crate::plan::marks::{
    BAR_MM, INKS, MODULE_MM, PATCH_MM, SIDE_MM, TEST_CODE_MODULE_MM, TestSide, of_test_page, test_bars,
    test_code, test_patches,
};
use crate::plan::settings::{Choice, Flip, hex};

/// The document's name.
pub(super) const NAME: &str = "test-page";

/// Steps of the front.
const STEPS: usize = 4;
/// White between the patches and the words below them, in mm.
const GAP_MM: f64 = 8.0;

/// What both pages share, in mm on the page.
#[derive(Serialize)]
struct Shared {
    marks: Vec<[f64; 2]>,
    mark_module: f64,
    bars: Vec<Box>,
}

/// One side.
#[derive(Serialize)]
struct Item {
    code: Code,
    title: String,
    /// On the front: colour and place of each patch.
    patches: Vec<(Box, String)>,
    /// What to do, and where that stands.
    steps: Vec<String>,
    words: Box,
    upside_down: bool,
}

/// Typesets the test page, two-sided where the kit is.
///
/// # Errors
/// [`PrintError::Typeset`].
pub fn test_page(sources: &Sources) -> Result<Document, PrintError> {
    let Sources { settings, facts, words, .. } = *sources;
    let (paper, flip) = (settings.print.paper, settings.print.flip);
    let layout = Layout::whole(paper);
    let two_sided = flip != Flip::None;
    let way = if two_sided { Sides::Two } else { Sides::One };
    let heading = Heading::new(sources, NAME, Some(if two_sided { 2 } else { 1 }), way);
    let colours = INKS.iter().copied().chain(facts.pencils.iter().map(|pencil| pencil.srgb));
    let patch = |(at, srgb): (Point<SheetMm>, [u8; 3])| {
        (Box { x: at.x, y: at.y, width: PATCH_MM, height: PATCH_MM }, hex(srgb))
    };
    let patches: Vec<(Box, String)> =
        test_patches(paper, facts.pencils.len()).into_iter().zip(colours).map(patch).collect();
    let middle = test_code(paper);
    let code = |side: TestSide| {
        let text = format!("{}{}", settings.tag, side.word());
        let modules = Modules::encode(&text).map_err(|error| PrintError::Typeset(error.to_string()))?;
        Ok(Code::centred(&modules, TEST_CODE_MODULE_MM, middle.x, middle.y))
    };
    let below = patches.iter().map(|(at, _)| at.y + at.height).fold(0.0, f64::max) + GAP_MM;
    let words_at = |y: f64| {
        let x = layout.spots[0].top_left.x + SIDE_MM + GAP_MM;
        let last = layout.spots[0].bottom_right();
        Box { x, y, width: layout.page.x - 2.0 * x, height: last.y - SIDE_MM - GAP_MM - y }
    };
    let steps = if two_sided { 1..=STEPS } else { 1..=STEPS - 1 };
    let front = Item {
        code: code(TestSide::Front)?,
        title: words.say("test-page-title", &[]),
        patches,
        steps: steps.map(|step| words.say(&format!("test-page-{step}"), &[])).collect(),
        words: words_at(below),
        upside_down: false,
    };
    let about = words.say("print-about-test-page", &[]);
    let page = |number: usize, back: bool, item: Item| Page {
        strip: heading.strip(&layout, number, back),
        about: about.clone(),
        back,
        items: vec![item],
    };
    let mut pages = vec![page(1, false, front)];
    if two_sided {
        let back = Item {
            code: code(TestSide::Back)?,
            title: words.say("test-page-back-title", &[]),
            patches: Vec::new(),
            steps: vec![words.say("test-page-back", &[])],
            words: words_at(middle.y + 60.0),
            upside_down: flip == Flip::ShortEdge,
        };
        pages.push(page(2, true, back));
    }
    Sheets { name: NAME, shared: shared(sources), pages, pictures: Vec::new(), two_sided }.document(sources)
}

fn shared(sources: &Sources) -> Shared {
    let paper = sources.settings.print.paper;
    let half = SIDE_MM / 2.0;
    let bar = |[a, b]: [Point<SheetMm>; 2]| {
        let thick = BAR_MM[1];
        let (width, height) = ((b.x - a.x).max(thick), (b.y - a.y).max(thick));
        let (x, y) = ((a.x + b.x - width) / 2.0, (a.y + b.y - height) / 2.0);
        Box::from(Area::new(x, y, width, height))
    };
    Shared {
        marks: of_test_page(paper).map(|at| [at.x - half, at.y - half]).to_vec(),
        mark_module: MODULE_MM,
        bars: test_bars(paper).map(bar).to_vec(),
    }
}
