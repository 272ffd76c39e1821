//! Several pictures, shown side by side before one of them is chosen.

use std::path::{Path, PathBuf};

use super::explain::lost_told;
use super::trial::{Asked, Source, Trial};
use super::{Args, CliError, Console, Outcome, evening_of, pencils};
use crate::cli::photos::complain;
use crate::picture::Area;
use crate::picture::prospect::Prospect;
use crate::plan::Folder;
use crate::plan::crowd;
use crate::plan::lengths::{both, one};
use crate::print::candidates::{Candidate, candidates};
use crate::print::{Overrides, Sources};
use crate::words::{Sentence, Words, as_typed};

/// A picture that can be chosen.
struct Shown {
    source: Source,
    trial: Trial,
    prospect: Prospect,
    said: Vec<String>,
}

/// Makes the page. One picture that cannot be used is no reason to stop, unless none is left.
pub(super) fn show(
    args: &Args,
    folder: &Folder,
    pictures: &[PathBuf],
    console: &mut Console,
) -> Result<Outcome, CliError> {
    if args.area.is_some() || args.corners.is_some() {
        return Err(CliError::new(Sentence::new("error-new-one-picture")));
    }
    let asked = Asked { args, pencils: pencils(args)?, evening: evening_of(args, console)? };
    let (mut all, mut refused) = (Vec::new(), Vec::new());
    for path in pictures {
        match shown(&asked, path, console) {
            Ok(own) => all.push(own),
            Err(error) => refused.push(error),
        }
    }
    let Some(first) = all.first() else { return Err(CliError::all(&refused, console.words())) };
    let settings = &first.trial.settings;
    let printed = settings.printed()?;
    let facts = &first.trial.facts;
    let sources = Sources {
        settings,
        printed: &printed,
        picture: &first.trial.reduced.few.to_picture(),
        facts,
        words: console.words(),
        templates: &Overrides::default(),
        evening: &crowd::evening(settings, &facts.work()),
    };
    let document = candidates(&sources, &all.iter().map(Shown::candidate).collect::<Vec<_>>())?;
    let file = folder.root().join(&document.name);
    Folder::write_whole(&file, &document.bytes)?;
    for own in &all {
        console.line("");
        console.line(&own.name());
        own.said.iter().for_each(|said| console.tell(format!("  {said}")));
    }
    console.line("");
    complain(&refused, console);
    console.say("pictures-made", &[("file", file.display().to_string().into())]);
    let next = [("folder", as_typed(&args.folder).into()), ("picture", as_typed(&first.source.path).into())];
    console.say("pictures-next", &next);
    Ok(if refused.is_empty() { Outcome::Right } else { Outcome::Unclear })
}

/// Tries one picture.
fn shown(asked: &Asked, path: &Path, console: &Console) -> Result<Shown, CliError> {
    let source = Source::open(asked.args, path)?;
    let trial = Trial::of(asked, &source, Area::WHOLE, console)?;
    let prospect = Prospect::of(&trial.reduced.few, &trial.grid, &trial.facts);
    let closer = trial.closer(asked, &source, console);
    let mut said = said(&trial, &prospect, console.words());
    said.extend(closer.map(|closer| closer.said(console.words())));
    Ok(Shown { source, trial, prospect, said })
}

impl Shown {
    /// What the file is called.
    fn name(&self) -> String {
        self.source.path.file_name().unwrap_or_default().to_string_lossy().into_owned()
    }

    fn candidate(&self) -> Candidate<'_> {
        Candidate {
            name: self.name(),
            few: &self.trial.reduced.few,
            grid: self.trial.grid,
            prospect: &self.prospect,
            said: self.said.clone(),
        }
    }
}

/// What is known of a picture, a sentence each.
fn said(trial: &Trial, prospect: &Prospect, words: &Words) -> Vec<String> {
    let (grid, units) = (&trial.grid, trial.settings.print.units);
    let size = grid.size();
    let count = |count: usize| count.into();
    let [plain, easy, medium, hard] = prospect.levels;
    let squares = words.say("new-squares", &[("count", count(grid.count()))]);
    let mut said = vec![words.say(
        "pictures-grid",
        &[
            ("columns", count(grid.columns)),
            ("rows", count(grid.rows)),
            ("squares", squares.into()),
            ("width", both(size.x, units, words).into()),
            ("height", both(size.y, units, words).into()),
        ],
    )];
    let levels =
        [("plain", count(plain)), ("easy", count(easy)), ("medium", count(medium)), ("hard", count(hard))];
    said.push(words.say("pictures-levels", &levels));
    let called: Vec<&str> = trial.reduced.few.needed().map(|pencil| pencil.name.as_str()).collect();
    let pencils = [("count", count(called.len())), ("names", called.join(", ").into())];
    said.push(words.say("pictures-pencils", &pencils));
    said.extend(lost_told(&trial.reduced, words));
    if prospect.narrow > 0 {
        let narrow =
            [("pieces", count(prospect.narrow)), ("width", one(prospect.narrowest_mm, units, words).into())];
        said.push(words.say("pictures-narrow", &narrow));
    }
    let known = [("squares", count(prospect.half_known)), ("cells", count(grid.count()))];
    said.push(words.say("pictures-known", &known));
    said
}
