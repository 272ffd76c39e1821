//! From a template and its data to the bytes of a PDF.
//!
//! Templates are built into the program; they see their data and pictures as `sys.inputs` and nothing else: no file
//! system, no network, no packages, no clock. The same template and data give the same bytes.

use std::sync::LazyLock;

use typst::diag::{FileError, FileResult, SourceDiagnostic};
use typst::foundations::{Bytes, Datetime, Dict, Duration, Smart, Str, Value};
use typst::layout::PageRanges;
use typst::syntax::{FileId, RootedPath, Source, VirtualPath, VirtualRoot};
use typst::text::{Font, FontBook};
use typst::utils::LazyHash;
use typst::{Library, LibraryExt, World};
use typst_layout::PagedDocument;
use typst_pdf::{PdfOptions, PdfStandards};

use super::PrintError;

/// Atkinson Hyperlegible, made so that 0 and O, 1 and I and l differ (fonts/OFL.txt).
const FONT_FILES: [&[u8]; 2] = [
    include_bytes!("fonts/AtkinsonHyperlegible-Regular.ttf"),
    include_bytes!("fonts/AtkinsonHyperlegible-Bold.ttf"),
];

/// What every template imports.
const COMMON: &str = include_str!("templates/common.typ");

static FONTS: LazyLock<Vec<Font>> =
    LazyLock::new(|| FONT_FILES.iter().flat_map(|file| Font::iter(Bytes::new(*file))).collect());

/// A picture handed to a template: red, green, blue, a byte each, row by row.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Pixels {
    /// How many a row.
    pub width: u32,
    /// How many rows.
    pub height: u32,
    /// 3 × width × height bytes.
    pub rgb: Vec<u8>,
}

/// Typesets a template with its data; gives the PDF and the number of its pages.
///
/// # Errors
/// [`PrintError::Typeset`] where the template and its data do not fit each other: a fault of the program.
pub(super) fn pdf(
    template: &'static str,
    data: &impl serde::Serialize,
    pictures: Vec<Pixels>,
) -> Result<(Vec<u8>, usize), PrintError> {
    let data = serde_json::to_vec(data).map_err(|error| PrintError::Typeset(error.to_string()))?;
    let sheet = Sheet::new(template, data, pictures)?;
    let document = typst::compile::<PagedDocument>(&sheet).output.map_err(|faults| explain(&faults))?;
    let options = PdfOptions {
        ident: Smart::Auto,
        creator: Smart::Custom(Some("Everysquare".to_owned())),
        timestamp: None, // the same kit gives the same bytes on any day
        page_ranges: None::<PageRanges>,
        standards: PdfStandards::default(),
        tagged: false, // paper has no reading order, and a kit of 3,000 squares would double in size
        pretty: false,
    };
    let bytes = typst_pdf::pdf(&document, &options).map_err(|faults| explain(&faults))?;
    let pages = document.pages().len();
    comemo::evict(0); // what the layout remembers of this document would stay for the life of the program
    Ok((bytes, pages))
}

/// The first thing that a template stumbled over.
fn explain(faults: &[SourceDiagnostic]) -> PrintError {
    PrintError::Typeset(faults.first().map_or_else(String::new, |fault| fault.message.to_string()))
}

/// All that a template can see.
struct Sheet {
    library: LazyHash<Library>,
    book: LazyHash<FontBook>,
    main: Source,
    common: Source,
}

impl Sheet {
    fn new(template: &'static str, data: Vec<u8>, pictures: Vec<Pixels>) -> Result<Self, PrintError> {
        let pictures = pictures.into_iter().map(picture).collect();
        let inputs = [("data", Value::Bytes(Bytes::new(data))), ("pictures", Value::Array(pictures))]
            .into_iter()
            .map(|(name, value)| (Str::from(name), value))
            .collect::<Dict>();
        Ok(Self {
            library: LazyHash::new(Library::builder().with_inputs(inputs).build()),
            book: LazyHash::new(FontBook::from_infos(FONTS.iter().map(|font| font.info().clone()))),
            main: Source::new(file("main.typ")?, template.to_owned()),
            common: Source::new(file("common.typ")?, COMMON.to_owned()),
        })
    }
}

/// A picture as templates know it.
fn picture(pixels: Pixels) -> Value {
    let fields = [
        ("width", Value::Int(pixels.width.into())),
        ("height", Value::Int(pixels.height.into())),
        ("rgb", Value::Bytes(Bytes::new(pixels.rgb))),
    ];
    Value::Dict(fields.into_iter().map(|(name, value)| (Str::from(name), value)).collect())
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
        [&self.main, &self.common]
            .into_iter()
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
