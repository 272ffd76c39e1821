//! An event that is looked into: its folder's settings, picture and templates, as the kit is made from them.

use std::sync::OnceLock;

use super::CliError;
use crate::picture::{FewColours, Picture, PictureFacts};
use crate::plan::crowd::{Evening, evening};
use crate::plan::{Folder, Printed, Settings};
use crate::print::{Overrides, Sources, template_names};
use crate::words::Words;

/// Everything that a kit is made from, owned.
pub(super) struct Event {
    pub settings: Settings,
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
    pub fn open(folder: &Folder, settings: Settings, words: &Words) -> Result<Self, CliError> {
        let bytes = folder.picture_bytes(&settings)?;
        let picture =
            Picture::open(&bytes).map_err(|error| CliError::about(&folder.picture_file(&settings), error))?;
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

    /// The picture in its few colours.
    pub fn picture(&self) -> &Picture {
        &self.picture
    }

    /// Which pencil each of its pixels is.
    pub fn few(&self) -> &FewColours {
        &self.few
    }

    /// The same for the kit.
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
