//! What all pages have in common: paper, title, the strip with the ruler and the words for the printer's dialogue.
//!
//! There are two kinds of documents. In [`Sheets`] every item has its place in mm: squares, pieces, cards. In [`Reading`]
//! text flows from page to page: tables, questions, guides; how many pages that makes is known when it is set.

use serde::Serialize;

use super::hints::with_hints;
use super::layout::{Area, Layout, MARGINS_MM, Strip};
use super::marks::Box;
use super::typeset::{Image, Typeset, typeset};
use super::{Document, PrintError, Sources, screen};
use crate::frame::{float, floor_index};
use crate::picture::Accent;
use crate::plan::settings::{Choice, Flip, Paper, Units, hex};
use crate::words::Words;

/// White at the left and right of a [`Reading`]'s pages, and above its text, in mm.
const READING_SIDE_MM: f64 = 17.0;
const READING_TOP_MM: f64 = 19.0;
/// White between the text and what stands at the foot, in mm, and how high a line of words there is.
const READING_FOOT_GAP_MM: f64 = 4.0;
const FOOT_LINE_MM: f64 = 3.0;
/// How high the band of the picture's colours is, in mm.
const BAND_MM: f64 = 3.0;
/// Side of the pieces that stand in its place where the picture is out, and the least white between two of them, in mm.
pub(super) const TILE_MM: f64 = 6.0;
const TILE_GAP_MM: f64 = 2.0;
/// Stands in a strip's words for the number of the page; templates fill it in where text flows.
const PAGE_MARK: &str = "\u{E000}";
/// Stands in a strip's words for the number of pages.
const PAGES_MARK: &str = "\u{E001}";

/// A document whose items all have their places.
pub(super) struct Sheets<S: Serialize, P: Serialize> {
    /// The document's name in [`super::names`], which is that of its template.
    pub name: &'static str,
    /// What all items share.
    pub shared: S,
    /// The pages.
    pub pages: Vec<Page<P>>,
    /// The pictures that the items refer to.
    pub pictures: Vec<Image>,
    /// Whether every second page is the back of the one before it.
    pub two_sided: bool,
}

/// A page.
#[derive(Serialize)]
pub(super) struct Page<P: Serialize> {
    /// Ruler and words.
    pub strip: StripWords,
    /// What is on the page, in a sentence for those who do not see it.
    pub about: String,
    /// Whether this is the back of a sheet.
    pub back: bool,
    /// What lies on it.
    pub items: Vec<P>,
}

/// What stands at the foot of a page to read.
#[derive(Copy, Clone, Debug, PartialEq, Eq)]
pub(super) enum Foot {
    /// The event, the document, the page.
    Line,
    /// The ruler and the words for the printer's dialogue too: what is on the page has to come out in its true size.
    Ruler,
}

impl Foot {
    /// Top of what stands at the foot, in mm from the top of the page.
    fn top_mm(self, paper: Paper) -> f64 {
        match self {
            Self::Line => paper.size_mm().1 - MARGINS_MM[0] - FOOT_LINE_MM,
            Self::Ruler => Strip::along_the_bottom(paper).area.top_left.y,
        }
    }
}

/// Width and height that a page to read leaves for text and pictures, in mm.
pub(super) fn reading_room(paper: Paper, foot: Foot) -> [f64; 2] {
    let (width, _) = paper.size_mm();
    [width - 2.0 * READING_SIDE_MM, foot.top_mm(paper) - READING_FOOT_GAP_MM - READING_TOP_MM]
}

/// Width of the band at the top of a page to read, in mm.
fn band_mm(paper: Paper) -> f64 {
    paper.size_mm().0 - 2.0 * READING_SIDE_MM
}

/// Number of pieces that stand in the band's place.
pub(super) fn tiles_across(paper: Paper) -> usize {
    floor_index((band_mm(paper) + TILE_GAP_MM) / (TILE_MM + TILE_GAP_MM)).max(2)
}

/// How far one of them is from the next, in mm.
fn tile_step(paper: Paper) -> f64 {
    (band_mm(paper) - TILE_MM) / float(tiles_across(paper) - 1)
}

/// A document of flowing text. Its template begins with `#show: reading-page` and finds `content` in `data.content`.
pub(super) struct Reading<C: Serialize> {
    /// The document's name in [`super::names`], which is that of its template.
    pub name: &'static str,
    /// What stands at the foot of its pages.
    pub foot: Foot,
    /// All words and numbers that the template sets.
    pub content: C,
    /// The pictures that the template refers to, `sys.inputs.pictures`.
    pub pictures: Vec<Image>,
}

/// What the templates of [`Sheets`] read.
#[derive(Serialize)]
struct SheetsData<'a, S: Serialize, P: Serialize> {
    #[serde(flatten)]
    common: Common,
    look: Colours,
    shared: &'a S,
    pages: &'a [Page<P>],
}

/// What the templates of [`Reading`] read.
#[derive(Serialize)]
struct ReadingData<'a, C: Serialize> {
    #[serde(flatten)]
    common: Common,
    look: Look,
    marks: [&'static str; 2],
    content: &'a C,
}

/// The event's own colours.
#[derive(Serialize)]
struct Colours {
    /// The fields of the band of the picture's colours, from left to right: the part of its width, and the colour.
    fields: Vec<(f64, String)>,
    /// The colour of titles and rules, as CSS writes it.
    accent: String,
}

impl Colours {
    fn of(sources: &Sources) -> Self {
        let pencils = &sources.facts.pencils;
        let fields = sources.facts.shares().into_iter().zip(pencils).filter(|(share, _)| *share > 0.0);
        Self {
            fields: fields.map(|(share, pencil)| (share, pencil.hex())).collect(),
            accent: hex(Accent::of(pencils).on([u8::MAX; 3])),
        }
    }
}

/// What all pages to read look like.
#[derive(Serialize)]
struct Look {
    #[serde(flatten)]
    colours: Colours,
    /// White at the left and right, above and below the text, in mm.
    margins: [f64; 3],
    /// Where the band of the picture's colours lies.
    band: Box,
    /// Pieces in the band's place, each by its picture; their side, and how far one is from the next, in mm.
    tiles: Vec<usize>,
    tile: f64,
    tile_step: f64,
    /// Words at the foot, at its left and its right end.
    foot: [String; 2],
    /// The ruler in their place.
    strip: Option<StripWords>,
}

impl Look {
    fn of(sources: &Sources, name: &str, foot: Foot) -> Self {
        let paper = sources.settings.print.paper;
        let (_, height) = paper.size_mm();
        let heading = Heading::new(sources, name, None, Sides::One);
        let strip = Strip::along_the_bottom(paper);
        Self {
            colours: Colours::of(sources),
            margins: [READING_SIDE_MM, READING_TOP_MM, height - foot.top_mm(paper) + READING_FOOT_GAP_MM],
            band: Box { x: READING_SIDE_MM, y: MARGINS_MM[0], width: band_mm(paper), height: BAND_MM },
            tiles: Vec::new(),
            tile: TILE_MM,
            tile_step: tile_step(paper),
            foot: heading.foot(),
            strip: (foot == Foot::Ruler).then(|| heading.words(strip.area, strip.upright, None)),
        }
    }
}

/// What all templates read.
#[derive(Serialize)]
struct Common {
    title: String,
    lang: &'static str,
    /// The region of the language, where it is one of several.
    region: Option<&'static str>,
    /// Width and height of the page in mm.
    paper: [f64; 2],
}

impl Common {
    fn of(sources: &Sources, name: &str) -> Self {
        let said = [
            ("document", said_name(sources.words, name).into()),
            ("event", sources.settings.name.as_str().into()),
        ];
        let (width, height) = sources.settings.print.paper.size_mm();
        let tag = sources.settings.language.word();
        let (lang, region) = tag.split_once('-').map_or((tag, None), |(lang, region)| (lang, Some(region)));
        Self { title: sources.words.say("print-title", &said), lang, region, paper: [width, height] }
    }
}

/// What people call a document: the words `print-squares` for `squares`.
fn said_name(words: &Words, name: &str) -> String {
    words.say(&format!("print-{name}"), &[])
}

/// Names in a row, as a sentence lists them.
pub(super) fn listed<'a>(names: impl Iterator<Item = &'a str>) -> String {
    names.collect::<Vec<_>>().join(", ")
}

impl<S: Serialize, P: Serialize> Sheets<S, P> {
    /// Typesets the document.
    ///
    /// # Errors
    /// [`PrintError::Typeset`] where template and data do not fit each other.
    pub fn document(self, sources: &Sources) -> Result<Document, PrintError> {
        self.set(sources)?.document(sources)
    }

    /// Lays the pages out.
    ///
    /// # Errors
    /// As [`Sheets::document`].
    pub fn set(self, sources: &Sources) -> Result<Set, PrintError> {
        let Self { name, shared, pages, pictures, two_sided } = self;
        let true_size = pages.iter().any(|page| !page.strip.rulers.is_empty());
        let (common, look) = (Common::of(sources, name), Colours::of(sources));
        let data = SheetsData { common, look, shared: &shared, pages: &pages };
        let pages = typeset(sources.templates, name, &data, pictures)?;
        Ok(Set { name, pages, two_sided, true_size })
    }
}

impl<C: Serialize> Reading<C> {
    /// Typesets the document.
    ///
    /// # Errors
    /// [`PrintError::Typeset`] where template and data do not fit each other.
    pub fn document(self, sources: &Sources) -> Result<Document, PrintError> {
        self.set(sources)?.document(sources)
    }

    /// Lays the pages out.
    ///
    /// # Errors
    /// As [`Reading::document`].
    pub fn set(self, sources: &Sources) -> Result<Set, PrintError> {
        self.set_below(sources, &[])
    }

    /// Lays the pages out with pieces of the picture at their top, see [`tiles_across`]; the band of colours where there are none.
    ///
    /// # Errors
    /// As [`Reading::document`].
    pub fn set_below(self, sources: &Sources, tiles: &[Image]) -> Result<Set, PrintError> {
        let Self { name, foot, content, mut pictures } = self;
        let first = pictures.len();
        pictures.extend_from_slice(tiles);
        let data = ReadingData {
            common: Common::of(sources, name),
            look: Look { tiles: (first..pictures.len()).collect(), ..Look::of(sources, name, foot) },
            marks: [PAGE_MARK, PAGES_MARK],
            content: &content,
        };
        let pages = typeset(sources.templates, name, &data, pictures)?;
        Ok(Set { name, pages, two_sided: false, true_size: foot == Foot::Ruler })
    }
}

/// A document whose pages are laid out.
pub(super) struct Set {
    name: &'static str,
    pages: Typeset,
    two_sided: bool,
    true_size: bool,
}

impl Set {
    /// Its PDF.
    ///
    /// # Errors
    /// [`PrintError::Typeset`] where the pages cannot be told to those who do not see them.
    pub fn document(&self, sources: &Sources) -> Result<Document, PrintError> {
        let Self { name, pages, two_sided, true_size } = self;
        let (bytes, count) = pages.pdf(sources.templates)?;
        let sheets = if *two_sided { count.div_ceil(2) } else { count };
        let bytes = with_hints(bytes, sources.settings.print.flip, *two_sided);
        Ok(Document {
            name: format!("{name}.pdf"),
            bytes,
            pages: count,
            sheets,
            two_sided: *two_sided,
            cuts: 0,
            true_size: *true_size,
        })
    }

    /// Its first page as a JPEG for a screen.
    ///
    /// # Errors
    /// [`PrintError::Typeset`] where there is no page.
    pub fn screen(&self) -> Result<Vec<u8>, PrintError> {
        screen::first_page(&self.pages.document)
    }
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
    /// Two rulers, the one that people read first; none where nothing has to come out in its true size.
    pub rulers: Vec<Ruler>,
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

/// How a document's fronts come to their backs.
#[derive(Copy, Clone, Debug, PartialEq, Eq)]
pub(super) enum Sides {
    /// There are no backs.
    One,
    /// Every second page is the back of the one before it.
    Two,
    /// The back stands beside the front and is folded behind it.
    Folded,
    /// Every second page is cut out and glued behind the one before it.
    Glued,
}

/// What is said on every page of a document.
pub(super) struct Heading<'a> {
    sources: &'a Sources<'a>,
    document: String,
    /// How many pages it has, if that is known.
    pages: Option<usize>,
    sides: Sides,
}

impl<'a> Heading<'a> {
    /// For a document of [`super::names`] with so many pages, if that is known already.
    pub fn new(sources: &'a Sources<'a>, name: &str, pages: Option<usize>, sides: Sides) -> Self {
        Self { sources, document: said_name(sources.words, name), pages, sides }
    }

    /// The strip of the page with a number from 1.
    pub fn strip(&self, layout: &Layout, page: usize, back: bool) -> StripWords {
        let Strip { area, upright } = layout.strip;
        let area = if back { area.turned_over(self.sources.settings.print.flip, layout.page) } else { area };
        self.words(area, upright, Some((page, back)))
    }

    /// The event and the page with a number from 1 in the strip's place, on sheets where nothing has to come out in its true size.
    pub fn foot_line(&self, Strip { area, upright }: Strip, page: usize) -> StripWords {
        let event = self.sources.settings.name.clone();
        let pages = self.pages.unwrap_or(page);
        let said =
            [("document", self.document.as_str().into()), ("page", page.into()), ("pages", pages.into())];
        let page = self.sources.words.say("print-page", &said);
        StripWords { area: area.into(), upright, lines: [String::new(), page, event], rulers: Vec::new() }
    }

    /// The strip with the labels of what lies on the sheet: a lost square's page is found by them.
    pub fn strip_with(&self, layout: &Layout, page: usize, back: bool, labels: &str) -> StripWords {
        let mut strip = self.strip(layout, page, back);
        let Sources { settings, words, .. } = self.sources;
        let event = [
            ("labels", labels.into()),
            ("event", settings.name.as_str().into()),
            ("tag", settings.tag.to_string().into()),
        ];
        strip.lines[2] = words.say("print-event-labels", &event);
        strip
    }

    /// The strip in a place. Without a page, templates fill in its number.
    pub fn words(&self, area: Area, upright: bool, page: Option<(usize, bool)>) -> StripWords {
        let Sources { settings, words, .. } = self.sources;
        let tag = settings.tag.to_string();
        let event = [("event", settings.name.as_str().into()), ("tag", tag.into())];
        StripWords {
            area: area.into(),
            upright,
            lines: [
                words.say("print-actual-size", &[]),
                self.page_words(page),
                words.say("print-event", &event),
            ],
            rulers: rulers(settings.print.units, words).into(),
        }
    }

    /// The line at the foot of a page to read: the event, and the document with marks for the page's number.
    fn foot(&self) -> [String; 2] {
        let page = [
            ("document", self.document.as_str().into()),
            ("page", PAGE_MARK.into()),
            ("pages", PAGES_MARK.into()),
        ];
        [self.sources.settings.name.clone(), self.sources.words.say("print-page", &page)]
    }

    /// The document's name, the page, and how the printer is to turn the paper.
    fn page_words(&self, page: Option<(usize, bool)>) -> String {
        let back = page.is_some_and(|(_, back)| back);
        let id = match (self.sides, self.sources.settings.print.flip, back) {
            (Sides::Two, _, true) => "print-page-back",
            (Sides::Two, Flip::LongEdge, _) => "print-page-front-long",
            (Sides::Two, Flip::ShortEdge, _) => "print-page-front-short",
            (Sides::Glued, _, true) => "print-page-glued",
            (Sides::Folded, ..) => "print-page-folded",
            _ => "print-page-single",
        };
        let number = |number: Option<usize>, mark: &str| number.map_or(mark.to_owned(), |n| n.to_string());
        let front = page.map(|(page, _)| page.saturating_sub(1));
        let said = [
            ("document", self.document.as_str().into()),
            ("page", number(page.map(|(page, _)| page), PAGE_MARK).into()),
            ("pages", number(self.pages, PAGES_MARK).into()),
            ("front", number(front, PAGE_MARK).into()),
        ];
        self.sources.words.say(id, &said)
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
