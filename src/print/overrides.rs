//! The organiser's own templates in the place of the program's.
//!
//! Such a template is given the same data and pictures as the one it replaces, and sees no more: no file, no network. What is
//! wrong with it is told with its file and line, in typst's own words, which are English.

use std::collections::BTreeMap;

use thiserror::Error;
use typst::diag::SourceDiagnostic;
use typst::syntax::{DiagSpan, FileId};
use typst::{World, WorldExt};

use crate::words::{Sentence, Tell, nearest, told_in_english};

/// An organiser's own template that cannot be used.
#[derive(Clone, Debug, Error, PartialEq, Eq)]
pub enum TemplateError {
    /// No template of the program has this name.
    Unknown {
        /// Its name, without `.typ`.
        name: String,
        /// The name that is meant, if one is near; else all of them.
        near: Option<String>,
        /// All names.
        known: String,
    },
    /// Typst stumbled over it.
    Faulty {
        /// Its name, without `.typ`.
        name: String,
        /// From 1; `None` where typst does not say.
        line: Option<usize>,
        /// What typst says.
        said: String,
    },
}

told_in_english!(TemplateError);

impl Tell for TemplateError {
    fn sentence(&self) -> Sentence {
        match self {
            Self::Unknown { name, near: Some(near), .. } => Sentence::new("error-template-unknown-near")
                .with("name", name.as_str())
                .with("near", near.as_str()),
            Self::Unknown { name, known, .. } => Sentence::new("error-template-unknown")
                .with("name", name.as_str())
                .with("known", known.as_str()),
            Self::Faulty { name, line: Some(line), said } => Sentence::new("error-template-line")
                .with("name", name.as_str())
                .with("line", line.to_string())
                .with("said", said.as_str()),
            Self::Faulty { name, line: None, said } => {
                Sentence::new("error-template").with("name", name.as_str()).with("said", said.as_str())
            }
        }
    }
}

/// The organiser's own templates, by name: `squares` for `squares.typ`.
///
/// ```
/// use everysquare::print::Overrides;
/// let own = [("pieces".to_owned(), "#set page(fill: red)".to_owned())].into();
/// let own = Overrides::new(own, &["squares", "pieces"])?;
/// assert_eq!(own.text("pieces", "built in"), "#set page(fill: red)");
/// assert_eq!(own.text("squares", "built in"), "built in");
///
/// let unknown = [("squars".to_owned(), String::new())].into();
/// let said = Overrides::new(unknown, &["squares", "pieces"]).unwrap_err().to_string();
/// assert_eq!(said, "templates/squars.typ doesn’t replace any of the program’s templates. Do you mean squares.typ?");
/// # Ok::<(), everysquare::print::TemplateError>(())
/// ```
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Overrides(BTreeMap<String, String>);

impl Overrides {
    /// The organiser's own templates, by name, where `known` are the program's.
    ///
    /// # Errors
    /// [`TemplateError::Unknown`] for one that replaces nothing.
    pub fn new(own: BTreeMap<String, String>, known: &[&str]) -> Result<Self, TemplateError> {
        match own.keys().find(|name| !known.contains(&name.as_str())) {
            None => Ok(Self(own)),
            Some(name) => Err(TemplateError::Unknown {
                name: name.clone(),
                near: nearest(name, known.iter().copied()).map(str::to_owned),
                known: known.iter().map(|name| format!("{name}.typ")).collect::<Vec<_>>().join(", "),
            }),
        }
    }

    /// The template of a name: the organiser's own, or the one that is built in.
    #[must_use]
    pub fn text<'a>(&'a self, name: &str, built_in: &'a str) -> &'a str {
        self.0.get(name).map_or(built_in, String::as_str)
    }

    /// Whether the organiser has a template of this name.
    #[must_use]
    pub fn holds(&self, name: &str) -> bool {
        self.0.contains_key(name)
    }

    /// Which of the organiser's templates is to blame for what typst stumbled over, among the files of `world` with their
    /// names; `None` where no template of hers took part: then it is a fault of the program.
    #[must_use]
    pub fn blamed(
        &self,
        faults: &[SourceDiagnostic],
        world: &dyn World,
        files: &[(&str, FileId)],
    ) -> Option<TemplateError> {
        let own: Vec<&(&str, FileId)> = files.iter().filter(|(name, _)| self.holds(name)).collect();
        let (first, fault) = (own.first()?, faults.first()?);
        let calls = fault.trace.iter().map(|call| DiagSpan::from(call.span));
        let seen = std::iter::once(fault.span).chain(calls).find_map(|span| {
            let (name, file) = own.iter().find(|(_, file)| span.id() == Some(*file))?;
            let line = world.source(*file).ok()?.lines().byte_to_line(world.range(span)?.start)?;
            Some((*name, Some(line + 1)))
        });
        let (name, line) = seen.unwrap_or((first.0, None));
        Some(TemplateError::Faulty { name: name.to_owned(), line, said: fault.message.to_string() })
    }
}
