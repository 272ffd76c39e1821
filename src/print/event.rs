//! An event that is looked into: its folder's settings, picture and templates, as the kit is made from them.

use std::path::PathBuf;
use std::sync::OnceLock;

use thiserror::Error;

use super::{Overrides, Sources, TemplateError, template_names};
use crate::picture::{FewColours, Picture, PictureError, PictureFacts};
use crate::plan::code::CodeError;
use crate::plan::crowd::{Evening, evening};
use crate::plan::folder::FolderError;
use crate::plan::{Folder, Printed, Settings};
use crate::words::{Sentence, Tell, Words, told_in_english};

/// Reason why an event cannot be looked into.
#[derive(Debug, Error)]
pub enum EventError {
    /// The folder.
    Folder(#[from] FolderError),
    /// The picture, and its file.
    Picture(PathBuf, PictureError),
    /// A code that cannot be made.
    Code(#[from] CodeError),
    /// One of the organiser's own templates.
    Template(#[from] TemplateError),
}

told_in_english!(EventError);

impl Tell for EventError {
    fn sentence(&self) -> Sentence {
        match self {
            Self::Folder(error) => error.sentence(),
            Self::Picture(path, error) => {
                Sentence::new("error-about").with("path", path.as_path()).with("what", error.sentence())
            }
            Self::Code(error) => error.sentence(),
            Self::Template(error) => error.sentence(),
        }
    }
}

/// Everything that a kit is made from, owned.
#[derive(Debug)]
pub struct Event {
    /// event.toml.
    pub settings: Settings,
    /// What is known of the picture's pieces.
    pub facts: PictureFacts,
    printed: Printed,
    few: FewColours,
    picture: Picture,
    templates: Overrides,
    /// Played when it is asked for first.
    evening: OnceLock<Evening>,
}

impl Event {
    /// Opens what `settings` name in a folder. Colours that nobody named have the names of the language of `words`.
    ///
    /// # Errors
    /// An [`EventError`] where the picture or a template cannot be used.
    pub fn open(folder: &Folder, settings: Settings, words: &Words) -> Result<Self, EventError> {
        let bytes = folder.picture_bytes(&settings)?;
        let picture = Picture::open(&bytes)
            .map_err(|error| EventError::Picture(folder.picture_file(&settings), error))?;
        let few = FewColours::chosen(&picture, &settings.picture);
        let few = if settings.picture.pencils.is_empty() { few.named(words) } else { few };
        let facts = PictureFacts::of(&few, &settings.grid, &settings.levels);
        Ok(Self {
            evening: OnceLock::new(),
            facts,
            printed: settings.printed()?,
            picture: few.to_picture(),
            few,
            templates: Overrides::new(folder.templates()?, &template_names())?,
            settings,
        })
    }

    /// Whether squares printed now would have the same codes, in the same place, as those that were printed.
    #[must_use]
    pub fn prints_as(&self, printed: &Printed) -> bool {
        let of = |all: &Printed| (all.squares.clone(), all.module_mm, all.code_top_left);
        of(printed) == of(&self.printed)
    }

    /// The picture in its few colours.
    #[must_use]
    pub fn picture(&self) -> &Picture {
        &self.picture
    }

    /// Which pencil each of its pixels is.
    #[must_use]
    pub fn few(&self) -> &FewColours {
        &self.few
    }

    /// The same for the kit.
    #[must_use]
    pub fn sources<'a>(&'a self, words: &'a Words) -> Sources<'a> {
        Sources {
            settings: &self.settings,
            printed: &self.printed,
            picture: &self.picture,
            facts: &self.facts,
            words,
            templates: &self.templates,
            evening: self.evening.get_or_init(|| evening(&self.settings, &self.facts.work())),
        }
    }
}
