//! An SVG drawing in pixels, over white, with nothing from outside its file.
//!
//! Nothing is ever fetched: a drawing that shows another file is refused and that file named, since a hole in the picture would be
//! found out on the wall. Text is set in the fonts that the program carries, whatever the drawing asks for, and whoever opens
//! it is told. A drawing has no pixels of its own, so it gets as many as the largest wall needs.

use std::sync::{Arc, Mutex};

use image::RgbImage;
use resvg::tiny_skia::{Color, Pixmap, Transform};
use resvg::usvg::fontdb::{Database, Family, Query, Style, Weight};
use resvg::usvg::roxmltree::{Document, Node, ParsingOptions};
use resvg::usvg::{FontResolver, FontStyle, ImageHrefResolver, Options, Tree, decompress_svgz};

use super::PictureError;
use crate::frame::{narrow, round_index};
use crate::words::Sentence;

/// Pixels that a drawing is rendered in, about: more than a picture in pencil colours ever has.
const PIXELS: f64 = 12e6;
/// Pixels along one side at most.
const MOST_ACROSS: f64 = 20_000.0;
/// Bytes of an SVG's text; a large drawing has 5 million.
const MOST_TEXT: usize = 32 << 20;
/// Elements of an SVG; `usvg` allows as many.
const MOST_ELEMENTS: u32 = 1_000_000;
/// Elements within elements; drawings have 20. Each takes a little of the stack.
const MOST_DEEP: usize = 1_000;
/// Stack of the thread that a drawing is read in, in bytes: enough for the text of a hostile file that is nothing but
/// elements within elements. Only what is touched becomes memory.
const STACK: usize = 1 << 30;
/// Filters that cost most: as many octaves of noise, as large a matrix, as wide a brush.
const MOST_OF_A_FILTER: f64 = 64.0;
/// Elements of filters in all, each of which passes over every pixel.
const MOST_FILTERS: usize = 200;

const FONT: &str = "Atkinson Hyperlegible";
const FONTS: [&[u8]; 3] = [
    include_bytes!("../print/fonts/AtkinsonHyperlegible-Regular.ttf"),
    include_bytes!("../print/fonts/AtkinsonHyperlegible-Bold.ttf"),
    include_bytes!("../display/fonts/DejaVuSansCondensed-Bold.ttf"), // for letters that the others lack
];

/// A drawing in pixels.
#[derive(Debug)]
pub(super) struct Rendered {
    pub pixels: RgbImage,
    /// Whether it has text, which is set in the program's own font.
    pub text: bool,
}

/// Whether bytes are an SVG drawing, packed or not.
pub(super) fn is_svg(bytes: &[u8]) -> bool {
    const LOOKED_AT: usize = 64 << 10;
    let head = &bytes[..bytes.len().min(LOOKED_AT)];
    let begins = head.iter().find(|byte| !byte.is_ascii_whitespace() && !b"\xef\xbb\xbf".contains(byte));
    is_packed(bytes)
        || begins == Some(&b'<') && head.windows(4).any(|four| four == b"<svg" || four == b":svg")
}

fn is_packed(bytes: &[u8]) -> bool {
    bytes.starts_with(&[0x1f, 0x8b])
}

/// Renders a drawing.
pub(super) fn render(bytes: &[u8]) -> Result<Rendered, PictureError> {
    std::thread::scope(|scope| {
        let reader = std::thread::Builder::new().stack_size(STACK);
        let reader = reader.spawn_scoped(scope, || render_here(bytes));
        let gave_up = || PictureError::Svg(Sentence::new("error-svg-gave-up"));
        reader
            .map_err(|error| PictureError::Svg(Sentence::given(error.to_string())))?
            .join()
            .unwrap_or_else(|_| Err(gave_up()))
    })
}

fn render_here(bytes: &[u8]) -> Result<Rendered, PictureError> {
    let damaged = |why: &dyn std::fmt::Display| PictureError::Svg(Sentence::given(why.to_string()));
    let unpacked =
        if is_packed(bytes) { decompress_svgz(bytes).map_err(|error| damaged(&error))? } else { Vec::new() };
    let bytes = if is_packed(bytes) { &unpacked } else { bytes };
    if bytes.len() > MOST_TEXT {
        return Err(PictureError::Svg(
            Sentence::new("error-svg-text").with("most", (MOST_TEXT >> 20).to_string()),
        ));
    }
    let text =
        std::str::from_utf8(bytes).map_err(|_| PictureError::Svg(Sentence::new("error-svg-no-text")))?;
    let options =
        ParsingOptions { allow_dtd: true, nodes_limit: 4 * MOST_ELEMENTS, ..ParsingOptions::default() };
    let document = Document::parse_with_options(text, options).map_err(|error| damaged(&error))?;
    refuse_outside(&document)?;
    refuse_costly(&document)?;
    let missing = Arc::new(Mutex::new(None));
    let tree =
        Tree::from_xmltree(&document, &nothing_from_outside(&missing)).map_err(|error| damaged(&error))?;
    if let Some(letter) = missing.lock().ok().and_then(|letter| *letter) {
        return Err(PictureError::Letter(letter));
    }
    Ok(Rendered {
        pixels: paint(&tree).ok_or_else(|| PictureError::Svg(Sentence::new("error-svg-no-size")))?,
        text: tree.has_text_nodes(),
    })
}

/// The drawing over white.
fn paint(tree: &Tree) -> Option<RgbImage> {
    let (width, height) = (f64::from(tree.size().width()), f64::from(tree.size().height()));
    let scale = (PIXELS / (width * height)).sqrt().min(MOST_ACROSS / width.max(height));
    let px = |length: f64| u32::try_from(round_index(length * scale).max(1)).ok();
    let (across, down) = (px(width)?, px(height)?);
    let mut pixmap = Pixmap::new(across, down)?;
    pixmap.fill(Color::WHITE);
    let to = Transform::from_scale(narrow(f64::from(across) / width), narrow(f64::from(down) / height));
    resvg::render(tree, to, &mut pixmap.as_mut());
    let pixels = pixmap.data().chunks_exact(4).flat_map(|pixel| [pixel[0], pixel[1], pixel[2]]).collect();
    RgbImage::from_raw(across, down, pixels)
}

/// No file, no network, no font but the program's own. A letter that none of these has is remembered.
fn nothing_from_outside(missing: &Arc<Mutex<Option<char>>>) -> Options<'static> {
    let mut fonts = Database::new();
    FONTS.iter().for_each(|font| fonts.load_font_data(font.to_vec()));
    let missing = Arc::clone(missing);
    let among_ours = FontResolver::default_fallback_selector();
    let resolver = FontResolver {
        select_font: Box::new(|font, fonts| {
            fonts.query(&Query {
                families: &[Family::Name(FONT)],
                weight: Weight(font.weight()),
                style: if font.style() == FontStyle::Normal { Style::Normal } else { Style::Italic },
                ..Query::default()
            })
        }),
        select_fallback: Box::new(move |letter, tried, fonts| {
            let found = among_ours(letter, tried, fonts);
            if found.is_none()
                && let Ok(mut missing) = missing.lock()
            {
                missing.get_or_insert(letter);
            }
            found
        }),
    };
    Options {
        font_family: FONT.to_owned(),
        fontdb: Arc::new(fonts),
        font_resolver: resolver,
        image_href_resolver: ImageHrefResolver {
            resolve_data: ImageHrefResolver::default_data_resolver(),
            resolve_string: Box::new(|_, _| None),
        },
        ..Options::default()
    }
}

/// Refuses a drawing that shows anything from outside its own text.
fn refuse_outside(document: &Document) -> Result<(), PictureError> {
    const SHOW: [&str; 8] =
        ["image", "use", "feImage", "pattern", "linearGradient", "radialGradient", "textPath", "tref"];
    for node in document.descendants().filter(Node::is_element) {
        let name = node.tag_name().name();
        let of_style = if name == "style" { node.text() } else { None };
        let href = node.attributes().filter(|own| SHOW.contains(&name) && own.name() == "href");
        let mut named =
            href.map(|own| own.value().trim()).filter(|value| !value.is_empty() && !within(value));
        let styles = node.attributes().map(|own| own.value()).chain(of_style);
        if let Some(outside) = named.next().or_else(|| styles.into_iter().find_map(styled_outside)) {
            return Err(PictureError::Outside(shortened(outside)));
        }
    }
    Ok(())
}

/// Whether a reference leads to a place within the same text.
fn within(reference: &str) -> bool {
    reference.starts_with('#') || reference.starts_with("data:")
}

/// What a style takes from outside, if anything.
fn styled_outside(style: &str) -> Option<&str> {
    let marks = ["url(", "@import"];
    let mut behind =
        marks.iter().flat_map(|mark| style.match_indices(mark).map(|(at, _)| &style[at + mark.len()..]));
    behind.find_map(|behind| {
        let named = behind.trim_start_matches(|sign: char| sign.is_whitespace() || "\"'".contains(sign));
        let end = named.find(['"', '\'', ')', '\n', ';']).unwrap_or(named.len());
        (!within(named) && !named.starts_with("url(")).then(|| named[..end].trim())
    })
}

/// A name that fits into a sentence.
fn shortened(name: &str) -> String {
    const MOST: usize = 60;
    let name: String = name.chars().filter(|sign| !sign.is_control()).collect();
    if name.chars().count() <= MOST { name } else { name.chars().take(MOST).chain(['…']).collect() }
}

/// Refuses a drawing whose rendering would take minutes.
fn refuse_costly(document: &Document) -> Result<(), PictureError> {
    let costly =
        |what: Sentence| Err(PictureError::Svg(Sentence::new("error-svg-costly").with("what", what)));
    let mut filters = 0;
    for node in document.descendants().filter(Node::is_element) {
        if node.ancestors().nth(MOST_DEEP).is_some() {
            return costly(Sentence::new("error-svg-deep").with("most", MOST_DEEP.to_string()));
        }
        filters += usize::from(node.tag_name().name().starts_with("fe"));
        for attribute in
            node.attributes().filter(|own| ["numOctaves", "order", "radius"].contains(&own.name()))
        {
            let numbers = attribute.value().split([' ', ',']).filter_map(|number| number.parse::<f64>().ok());
            if numbers.fold(0.0, f64::max) > MOST_OF_A_FILTER {
                return costly(
                    Sentence::new("error-svg-filter")
                        .with("name", attribute.name())
                        .with("value", shortened(attribute.value())),
                );
            }
        }
    }
    if filters > MOST_FILTERS {
        costly(Sentence::new("error-svg-filters").with("count", filters.to_string()))
    } else {
        Ok(())
    }
}
