//! From a template and its data to the bytes of a PDF.
//!
//! Templates are built into the program; they see their data and pictures as `sys.inputs` and nothing else: no file
//! system, no network, no packages, no clock. The same template and data give the same bytes.

use std::collections::BTreeSet;
use std::sync::LazyLock;

use image::codecs::jpeg::JpegEncoder;
use image::imageops::FilterType;
use image::{RgbImage, imageops};
use typst::diag::{FileError, FileResult, SourceDiagnostic};
use typst::foundations::{Bytes, Datetime, Dict, Duration, Smart, Str, Value};
use typst::layout::{Abs, PageRanges};
use typst::syntax::{FileId, RootedPath, Source, VirtualPath, VirtualRoot};
use typst::text::{Font, FontBook, FontInstance, FontVariations};
use typst::utils::LazyHash;
use typst::{Library, LibraryExt, World};
use typst_layout::PagedDocument;
use typst_pdf::{PdfOptions, PdfStandard, PdfStandards};

use super::built_in::built_in;
use super::{Overrides, PrintError};
use crate::display::jpeg;
use crate::frame::MM_PER_INCH;

/// Atkinson Hyperlegible, made so that 0 and O, 1 and I and l differ (fonts/OFL.txt), with a plain zero beside the one with a stroke
/// (`tools/plain_zero.py`); and as it was, for templates of one's own that name it.
const FONT_FILES: [&[u8]; 4] = [
    include_bytes!("fonts/EverysquareSans-Regular.ttf"),
    include_bytes!("fonts/AtkinsonHyperlegible-Regular.ttf"),
    include_bytes!("fonts/AtkinsonHyperlegible-Bold.ttf"),
    include_bytes!("fonts/EverysquareSans-Bold.ttf"),
];

/// What templates import, by name: what all of them share; drawings; headings, lists and tables of pages to read;
/// pictures to look at; pieces enlarged; maps of the wall.
const IMPORTED: [&str; 6] = ["common", "drawings", "blocks", "exhibits", "enlarged", "walls"];

/// The names of the templates that others import.
pub(super) fn imported() -> impl Iterator<Item = &'static str> {
    IMPORTED.into_iter()
}

static FONTS: LazyLock<Vec<Font>> =
    LazyLock::new(|| FONT_FILES.iter().flat_map(|file| Font::iter(Bytes::new(*file))).collect());

/// Parts of a text in lines that fit, with `between` between two on a line.
pub(super) fn wrapped<'a>(
    parts: impl Iterator<Item = &'a str>,
    between: &str,
    fits: impl Fn(&str) -> bool,
) -> Vec<String> {
    let mut lines: Vec<String> = Vec::new();
    for part in parts {
        match lines.last_mut().filter(|line| fits(&format!("{line}{between}{part}"))) {
            Some(line) => *line = format!("{line}{between}{part}"),
            None => lines.push(part.to_owned()),
        }
    }
    lines
}

/// How wide a line of words is at a size in points, in mm. A letter that the typeface lacks counts as a wide one.
pub(super) fn width_mm(words: &str, points: f64, bold: bool) -> f64 {
    let face = if bold { FACES.last() } else { FACES.first() };
    let advance = |letter: char| {
        let glyph = face.and_then(|face| Some((face, face.ttf().glyph_index(letter)?)));
        glyph.and_then(|(face, glyph)| face.x_advance(glyph.0)).map_or(1.0, |em| em.get())
    };
    words.chars().map(advance).sum::<f64>() * points * MM_PER_INCH / POINTS_PER_INCH
}

/// Points in an inch (ISO 32000-1).
const POINTS_PER_INCH: f64 = 72.0;

/// The typeface's fonts, ready to be measured.
static FACES: LazyLock<Vec<FontInstance>> = LazyLock::new(|| {
    let measured = |font: &Font| {
        font.clone().instantiate(font.info().variant, Abs::pt(10.0), &FontVariations::default())
    };
    FONTS.iter().map(measured).collect()
});

/// A picture handed to a template.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) enum Image {
    /// Few colours: its pixels as they are.
    Flat(RgbImage),
    /// Many colours: a JPEG file.
    Jpeg(Vec<u8>),
    /// Curves: an SVG file.
    Svg(Vec<u8>),
}

/// Colours up to which a picture counts as flat; box of pencils or poster, not a photo.
const FLAT_COLOURS: usize = 256;
/// Quality of the JPEG of a picture with many colours: on paper not told apart from the original.
const JPEG_QUALITY: u8 = 90;

impl Image {
    /// A picture, thinned to at most `width` × `height` pixels: flat colours stay what they are, others are mixed.
    pub fn of(pixels: RgbImage, width: u32, height: u32) -> Self {
        let (width, height) = (width.min(pixels.width()).max(1), height.min(pixels.height()).max(1));
        let flat = is_flat(&pixels);
        let pixels = match pixels.dimensions() == (width, height) {
            true => pixels,
            false if flat => imageops::resize(&pixels, width, height, FilterType::Nearest),
            false => imageops::resize(&pixels, width, height, FilterType::Triangle),
        };
        let mut jpeg = Vec::new();
        let mut encoder = JpegEncoder::new_with_quality(&mut jpeg, JPEG_QUALITY);
        if !flat && encoder.encode_image(&pixels).is_ok() { Self::Jpeg(jpeg) } else { Self::Flat(pixels) }
    }
}

impl Image {
    /// A picture to look at from a step away, thinned to at most `width` × `height` pixels: many colours as a JPEG of the
    /// quality that pictures for a screen have.
    pub fn to_look_at(pixels: RgbImage, width: u32, height: u32) -> Self {
        if is_flat(&pixels) {
            return Self::of(pixels, width, height);
        }
        let (width, height) = (width.min(pixels.width()).max(1), height.min(pixels.height()).max(1));
        // a plain mean, many times as fast as a filter, and as good where pixels are thinned
        let thin = pixels.dimensions() != (width, height);
        let pixels = if thin { imageops::thumbnail(&pixels, width, height) } else { pixels };
        jpeg(&pixels).map_or_else(|_| Self::Flat(pixels), Self::Jpeg)
    }
}

/// Whether a picture has at most [`FLAT_COLOURS`].
fn is_flat(pixels: &RgbImage) -> bool {
    let mut seen = BTreeSet::new();
    let mut last = None;
    pixels.pixels().all(|pixel| {
        // flat pictures have long runs of one colour
        if last != Some(pixel) {
            seen.insert(pixel.0);
            last = Some(pixel);
        }
        seen.len() <= FLAT_COLOURS
    })
}

/// Typesets the document of a name with its data.
///
/// # Errors
/// [`PrintError::Typeset`] where the template and its data do not fit each other: a fault of the program.
pub(super) fn typeset(
    own: &Overrides,
    name: &'static str,
    data: &impl serde::Serialize,
    pictures: Vec<Image>,
) -> Result<Typeset, PrintError> {
    let data = serde_json::to_vec(data).map_err(|error| PrintError::Typeset(error.to_string()))?;
    let sheet = Sheet::new(own, name, data, pictures)?;
    let document =
        typst::compile::<PagedDocument>(&sheet).output.map_err(|faults| sheet.explain(own, &faults))?;
    Ok(Typeset { sheet, document })
}

/// A document whose pages are laid out.
pub(super) struct Typeset {
    sheet: Sheet,
    /// The pages.
    pub document: PagedDocument,
}

impl Typeset {
    /// The PDF and the number of its pages.
    ///
    /// # Errors
    /// [`PrintError::Typeset`] where the pages cannot be told to those who do not see them.
    pub fn pdf(&self, own: &Overrides) -> Result<(Vec<u8>, usize), PrintError> {
        let options = PdfOptions {
            ident: Smart::Auto,
            creator: Smart::Custom(Some("Everysquare".to_owned())),
            timestamp: None, // the same kit gives the same bytes on any day
            page_ranges: None::<PageRanges>,
            standards: PdfStandards::new(&[PdfStandard::Ua_1])
                .map_err(|fault| PrintError::Typeset(fault.message().to_string()))?,
            tagged: true,
            pretty: false,
        };
        let bytes =
            typst_pdf::pdf(&self.document, &options).map_err(|faults| self.sheet.explain(own, &faults))?;
        Ok((bytes, self.document.pages().len()))
    }
}

/// Lets go of what the layout remembers of the documents that were set; it would stay for the life of the program.
pub(super) fn forget() {
    comemo::evict(0);
}

/// All that a template can see.
struct Sheet {
    name: &'static str,
    library: LazyHash<Library>,
    book: LazyHash<FontBook>,
    main: Source,
    imported: Vec<Source>,
}

impl Sheet {
    /// The first thing that a template stumbled over, and whose template that was.
    fn explain(&self, own: &Overrides, faults: &[SourceDiagnostic]) -> PrintError {
        let imported = imported().zip(self.imported.iter().map(Source::id));
        let files: Vec<_> = std::iter::once((self.name, self.main.id())).chain(imported).collect();
        if let Some(error) = own.blamed(faults, self, &files) {
            return PrintError::Template(error);
        }
        let said = faults.first().map_or_else(String::new, |fault| {
            let hints = fault.hints.iter().map(|hint| format!("; {}", hint.v)).collect::<String>();
            format!("{}{hints}", fault.message)
        });
        PrintError::Typeset(said)
    }

    fn new(
        own: &Overrides,
        name: &'static str,
        data: Vec<u8>,
        pictures: Vec<Image>,
    ) -> Result<Self, PrintError> {
        let pictures = pictures.into_iter().map(picture).collect();
        let inputs = [("data", Value::Bytes(Bytes::new(data))), ("pictures", Value::Array(pictures))]
            .into_iter()
            .map(|(name, value)| (Str::from(name), value))
            .collect::<Dict>();
        let source = |name: &str| {
            let text = own.text(name, built_in(name));
            Ok(Source::new(file(&format!("{name}.typ"))?, text.to_owned()))
        };
        Ok(Self {
            name,
            library: LazyHash::new(Library::builder().with_inputs(inputs).build()),
            book: LazyHash::new(FontBook::from_infos(FONTS.iter().map(|font| font.info().clone()))),
            main: source(name)?,
            imported: imported().map(source).collect::<Result<_, PrintError>>()?,
        })
    }
}

/// A picture as templates know it: its bytes and their format.
fn picture(image: Image) -> Value {
    let dict = |fields: Vec<(&str, Value)>| {
        Value::Dict(fields.into_iter().map(|(name, value)| (Str::from(name), value)).collect())
    };
    let (bytes, format) = match image {
        Image::Flat(pixels) => {
            let (width, height) = pixels.dimensions();
            let encoding = Value::Str(Str::from("rgb8"));
            let sizes = [("width", Value::Int(width.into())), ("height", Value::Int(height.into()))];
            let format = sizes.into_iter().chain([("encoding", encoding)]).collect();
            (pixels.into_raw(), dict(format))
        }
        Image::Jpeg(file) => (file, Value::Str(Str::from("jpg"))),
        Image::Svg(file) => (file, Value::Str(Str::from("svg"))),
    };
    dict(vec![("bytes", Value::Bytes(Bytes::new(bytes))), ("format", format)])
}

fn file(name: &str) -> Result<FileId, PrintError> {
    let path = VirtualPath::new(name).map_err(|_| PrintError::Typeset(name.to_owned()))?;
    Ok(RootedPath::new(VirtualRoot::Project, path).intern())
}

impl World for Sheet {
    fn library(&self) -> &LazyHash<Library> {
        &self.library
    }

    fn book(&self) -> &LazyHash<FontBook> {
        &self.book
    }

    fn main(&self) -> FileId {
        self.main.id()
    }

    fn source(&self, id: FileId) -> FileResult<Source> {
        std::iter::once(&self.main)
            .chain(&self.imported)
            .find(|source| source.id() == id)
            .cloned()
            .ok_or(FileError::AccessDenied)
    }

    fn file(&self, _: FileId) -> FileResult<Bytes> {
        Err(FileError::AccessDenied)
    }

    fn font(&self, index: usize) -> Option<Font> {
        FONTS.get(index).cloned()
    }

    fn today(&self, _: Option<Duration>) -> Option<Datetime> {
        None
    }
}
