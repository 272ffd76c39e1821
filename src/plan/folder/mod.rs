//! The event folder: where its files lie, read within limits and written whole.
//!
//! ```text
//! open-evening/
//!   event.toml             what the organiser decides
//!   picture.png            the picture, or another name that event.toml gives
//!   groups.json            which group draws which squares, where they were shared out
//!   spare-squares.json     which squares were printed on spare paper, without a code
//!   print/                 the kit: squares.pdf, edge-cards.pdf, pieces.pdf, and manifest.json: what was printed
//!   checks/<time>/         one folder a check
//!   display/<time>/        the comparison prints, one folder each time they are made
//!   found/<time>/          squares that lay on a table or a floor, outlined and named
//!   from-home/             pictures of squares that were drawn at home and came back, by label
//!   .helpers-link.json     the link that helpers' phones have, for the owner's eyes only
//!   .helpers-list.json     what helpers have checked off and handed out this evening; `-damaged` one that could not be read
//!   rehearsals/            made photos to practise with, and the truth about them
//!   templates/             the organiser's own, in place of the program's: words.ftl, and typst templates by name
//! ```
//!
//! A file appears whole or not at all: [`Folder::write_whole`] writes beside it and renames, [`NewFolder`] does the same
//! for a folder of files.

use std::path::{Path, PathBuf};

use super::cell::Grid;
use super::kept_free::MOST_KEPT_FREE;
use super::manifest::{Manifest, Printed};
use super::settings::Settings;
use crate::words::{Sentence, nearest};

mod checks;
mod error;
mod own;
mod spares;
mod whole;

pub use error::{FolderError, Why};
pub use whole::NewFolder;

/// Name of the file that makes a folder an event.
const EVENT_TOML: &str = "event.toml";
/// Maximum number of events beside a folder that are looked at for a name like its own.
const MOST_BESIDE: usize = 200;
/// Bytes of an event.toml; a long one has 5 kB.
const MOST_SETTINGS: u64 = 1 << 20;
/// Bytes of a manifest; that of 3,000 squares has 2 MB.
const MOST_MANIFEST: u64 = 64 << 20;
/// Bytes of a picture's file: an uncompressed TIFF of 100 megapixels with 16 bits a colour, and room.
const MOST_PICTURE: u64 = 1 << 30;
/// Bytes of a check's file; a wall's picture has half a megabyte, a report of 3,000 squares less than one.
const MOST_OF_CHECK: u64 = 64 << 20;
/// Bytes of a groups.json: a hundred for each square of the largest wall.
const MOST_GROUPS: u64 = 1 << 20;
/// Bytes of a kept link; it has about a hundred.
const MOST_LINK: u64 = 1 << 12;
/// Bytes of what helpers have ticked and handed out: a hundred for each square of the largest wall.
const MOST_HELPERS_LIST: u64 = 1 << 20;

/// An event folder.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Folder {
    root: PathBuf,
}

impl Folder {
    /// The folder at `root`, which need not exist yet.
    #[must_use]
    pub fn at(root: impl Into<PathBuf>) -> Self {
        Self { root: root.into() }
    }

    /// Where it is.
    #[must_use]
    pub fn root(&self) -> &Path {
        &self.root
    }

    /// `event.toml`.
    #[must_use]
    pub fn event_toml(&self) -> PathBuf {
        self.root.join(EVENT_TOML)
    }

    /// The picture that the settings name.
    #[must_use]
    pub fn picture_file(&self, settings: &Settings) -> PathBuf {
        self.root.join(&settings.picture.file)
    }

    /// `print`, where the kit lies.
    #[must_use]
    pub fn print(&self) -> PathBuf {
        self.root.join("print")
    }

    /// `plan.json`.
    #[must_use]
    pub fn plan_json(&self) -> PathBuf {
        self.root.join("plan.json")
    }

    /// `print/manifest.json`.
    #[must_use]
    pub fn manifest_json(&self) -> PathBuf {
        self.print().join("manifest.json")
    }

    /// `groups.json`, which group has which squares.
    #[must_use]
    pub fn groups_json(&self) -> PathBuf {
        self.root.join("groups.json")
    }

    /// The text of `groups.json`; `None` where there is none, or none that can be read.
    #[must_use]
    pub fn groups_text(&self) -> Option<String> {
        String::from_utf8(whole::read(&self.groups_json(), MOST_GROUPS).ok()?).ok()
    }

    /// `checks`, one folder a check.
    #[must_use]
    pub fn checks(&self) -> PathBuf {
        self.root.join("checks")
    }

    /// `.helpers-link.json`, the link that helpers' phones have.
    #[must_use]
    pub fn link_json(&self) -> PathBuf {
        self.root.join(".helpers-link.json")
    }

    /// `.helpers-list.json`, what helpers have ticked and handed out.
    #[must_use]
    pub fn helpers_list_json(&self) -> PathBuf {
        self.root.join(".helpers-list.json")
    }

    /// `display`, the comparison prints.
    #[must_use]
    pub fn display(&self) -> PathBuf {
        self.root.join("display")
    }

    /// `from-home`, pictures of squares that were drawn at home and came back.
    #[must_use]
    pub fn from_home(&self) -> PathBuf {
        self.root.join("from-home")
    }

    /// Picture of the square with a label that came back from home, whether there is one or not.
    #[must_use]
    pub fn from_home_png(&self, label: &str) -> PathBuf {
        self.from_home().join(format!("{label}.png"))
    }

    /// `rehearsals`, made photos to practise with.
    #[must_use]
    pub fn rehearsals(&self) -> PathBuf {
        self.root.join("rehearsals")
    }

    /// Reads event.toml.
    ///
    /// # Errors
    /// [`FolderError`] where there is none, or where it is refused.
    pub fn settings(&self) -> Result<Settings, FolderError> {
        Ok(Settings::from_toml(&self.event_text()?)?)
    }

    /// The text of event.toml.
    ///
    /// # Errors
    /// [`FolderError`] where there is none, or where it is no text.
    pub fn event_text(&self) -> Result<String, FolderError> {
        let path = self.event_toml();
        if !path.exists() {
            return Err(FolderError::NoEvent { folder: self.root.clone(), near: meant(&self.root) });
        }
        let bytes = whole::read(&path, MOST_SETTINGS)?;
        String::from_utf8(bytes).map_err(|_| FolderError::NotText { path })
    }

    /// The text of an event.toml, or of a part of one, anywhere.
    ///
    /// # Errors
    /// [`FolderError`] where it cannot be read or is no text.
    pub fn read_settings(path: &Path) -> Result<String, FolderError> {
        let bytes = whole::read(path, MOST_SETTINGS)?;
        String::from_utf8(bytes).map_err(|_| FolderError::NotText { path: path.to_owned() })
    }

    /// Reads print/manifest.json.
    ///
    /// # Errors
    /// [`FolderError`] where nothing is printed yet, or where it is refused.
    pub fn manifest(&self) -> Result<Manifest, FolderError> {
        let path = self.manifest_json();
        if !path.exists() {
            return Err(FolderError::NotPrinted { folder: self.root.clone() });
        }
        Ok(Manifest::from_json(&whole::read(&path, MOST_MANIFEST)?)?)
    }

    /// What was printed, from the manifest, checked against event.toml, which also gives the evening's name.
    ///
    /// # Errors
    /// [`FolderError`] where either is refused, or where event.toml was changed in what was printed.
    pub fn printed(&self) -> Result<Printed, FolderError> {
        let settings = self.settings()?;
        let manifest = self.manifest()?;
        let (own, kit) = (
            described(&settings.tag.to_string(), &settings.grid),
            described(
                &manifest.event.tag,
                &Grid {
                    columns: manifest.grid.columns,
                    rows: manifest.grid.rows,
                    square_mm: manifest.grid.square_mm,
                    ..settings.grid
                },
            ),
        );
        if own != kit {
            return Err(FolderError::Changed { own, kit });
        }
        let squares = manifest.not_printed(&settings.grid);
        if (1..=MOST_KEPT_FREE).contains(&squares.len()) {
            return Err(FolderError::NotAllPrinted { squares, folder: self.root.clone() });
        }
        let printed = manifest.printed_but(settings.grid.rows_from, settings.grid.kept_free)?;
        let grid = Grid { border: settings.grid.border, kept_free: settings.grid.kept_free, ..printed.grid };
        let Settings { name, print, parts, .. } = settings;
        Ok(Printed { name, units: print.units, grid, parts, stub_mm: print.stub_mm(), ..printed })
    }

    /// The bytes of the picture that event.toml names.
    ///
    /// # Errors
    /// [`FolderError`] where there is none, or where it is too large.
    pub fn picture_bytes(&self, settings: &Settings) -> Result<Vec<u8>, FolderError> {
        Self::read_picture(&self.picture_file(settings))
    }

    /// The bytes of a picture anywhere.
    ///
    /// # Errors
    /// [`FolderError`] where there is none, or where it is too large.
    pub fn read_picture(path: &Path) -> Result<Vec<u8>, FolderError> {
        if !path.exists() {
            return Err(FolderError::NoPicture { path: path.to_owned() });
        }
        whole::read(path, MOST_PICTURE)
    }

    /// Writes a file so that it appears whole or not at all; folders on the way to it are made.
    ///
    /// # Errors
    /// [`FolderError`] where it cannot be written; what stood there before still does.
    pub fn write_whole(path: &Path, bytes: &[u8]) -> Result<(), FolderError> {
        whole::write(path, bytes)
    }

    /// The folders of checks whose name is not below `from`, the newest first. Names begin with the time, so they sort as their
    /// times do; of two made within a second the one with the larger number is the newer.
    #[must_use]
    pub fn checks_since(&self, from: &str) -> Vec<PathBuf> {
        checks::since(&self.checks(), from)
    }

    /// The bytes of one file of a check; `None` where it is not there or too large.
    #[must_use]
    pub fn read_of_check(check: &Path, name: &str) -> Option<Vec<u8>> {
        whole::read(&check.join(name), MOST_OF_CHECK).ok()
    }

    /// The link that helpers' phones have, kept so that it still holds when the program is started again; `None` where there is none.
    #[must_use]
    pub fn kept_link(&self) -> Option<Vec<u8>> {
        whole::read(&self.link_json(), MOST_LINK).ok()
    }

    /// Keeps the link, readable for the owner alone where the system knows owners.
    ///
    /// # Errors
    /// [`FolderError`] where it cannot be written.
    pub fn keep_link(&self, bytes: &[u8]) -> Result<(), FolderError> {
        whole::write_private(&self.link_json(), bytes)
    }

    /// What helpers have ticked and handed out, kept so that it still holds when the program is started again; `None` where there is
    /// no such file, or one that cannot be read.
    #[must_use]
    pub fn kept_helpers_list(&self) -> Option<Vec<u8>> {
        whole::read(&self.helpers_list_json(), MOST_HELPERS_LIST).ok()
    }

    /// Keeps what helpers have ticked and handed out.
    ///
    /// # Errors
    /// [`FolderError`] where it cannot be written; what was kept before still is.
    pub fn keep_helpers_list(&self, bytes: &[u8]) -> Result<(), FolderError> {
        whole::write_private(&self.helpers_list_json(), bytes)
    }

    /// Begins a folder `checks/<name>`; it appears with [`NewFolder::finish`], whole.
    ///
    /// # Errors
    /// [`FolderError`] where nothing can be written here.
    pub fn new_check_folder(&self, name: &str) -> Result<NewFolder, FolderError> {
        NewFolder::begin(&self.checks(), name)
    }

    /// Begins a folder `found/<name>` for pictures of squares that lie somewhere; it appears with [`NewFolder::finish`], whole.
    ///
    /// # Errors
    /// [`FolderError`] where nothing can be written here.
    pub fn new_found_folder(&self, name: &str) -> Result<NewFolder, FolderError> {
        NewFolder::begin(&self.root().join("found"), name)
    }

    /// Begins a folder `display/<name>`; it appears with [`NewFolder::finish`], whole.
    ///
    /// # Errors
    /// [`FolderError`] where nothing can be written here.
    pub fn new_display_folder(&self, name: &str) -> Result<NewFolder, FolderError> {
        NewFolder::begin(&self.display(), name)
    }
}

/// What of an event is on its paper, for comparison.
fn described(tag: &str, grid: &Grid) -> Sentence {
    Sentence::new("error-folder-described")
        .with("tag", tag)
        .with("columns", grid.columns.to_string())
        .with("rows", grid.rows.to_string())
        .with("side", grid.square_mm)
}

/// The event that somebody means who named a folder without one: the folder around it, or one beside it with nearly the same name.
fn meant(folder: &Path) -> Option<PathBuf> {
    let around = folder.parent()?;
    if !around.as_os_str().is_empty() && around.join(EVENT_TOML).is_file() {
        return Some(around.to_owned());
    }
    let beside = if around.as_os_str().is_empty() { Path::new(".") } else { around };
    let events =
        std::fs::read_dir(beside).ok()?.flatten().filter(|entry| entry.path().join(EVENT_TOML).is_file());
    let names: Vec<String> =
        events.take(MOST_BESIDE).filter_map(|entry| entry.file_name().into_string().ok()).collect();
    let near = nearest(folder.file_name()?.to_str()?, names.iter().map(String::as_str))?;
    Some(around.join(near))
}
