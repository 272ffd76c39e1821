//! `everysquare print FOLDER [squares cards tiles]`: writes the kit into the event folder.

use std::path::PathBuf;

use super::{CliError, Console, Outcome};
use crate::picture::{FewColours, Picture, PictureFacts};
use crate::plan::settings::{Choice, Flip, Units};
use crate::plan::{Folder, Manifest, Settings};
use crate::print::{Document, Sources, kit};

/// What is typed after `everysquare print`.
#[derive(Debug, clap::Args)]
pub struct Args {
    /// The event folder.
    #[arg(value_name = "FOLDER")]
    folder: PathBuf,
    /// Only these documents.
    #[arg(value_name = "DOCUMENT", value_parser = ["squares", "cards", "tiles"])]
    documents: Vec<String>,
}

/// Makes the kit and writes it: documents first, the manifest last, so that it never lists what does not lie there.
pub fn run(args: &Args, console: &mut Console) -> Result<Outcome, CliError> {
    let folder = Folder::at(&args.folder);
    let settings = folder.settings()?;
    let bytes = folder.picture_bytes(&settings)?;
    let picture =
        Picture::open(&bytes).map_err(|error| CliError::about(&folder.picture_file(&settings), &error))?;
    let few = FewColours::chosen(&picture, &settings.picture);
    let few = if settings.picture.pencils.is_empty() { few.named(console.words()) } else { few };
    let facts = PictureFacts::of(&few, &settings.grid, &settings.levels);
    let printed = settings.printed()?;
    let sources = Sources {
        settings: &settings,
        printed: &printed,
        picture: &picture,
        facts: &facts,
        words: console.words(),
    };
    let kit = kit(&sources)?;
    let manifest = kit.manifest.to_json()?;
    let now = Manifest::from_json(&manifest)?; // through the same text, so that numbers compare to the last bit
    let before = folder.manifest().ok();
    let wanted = |document: &&Document| {
        args.documents.is_empty()
            || args.documents.iter().any(|name| document.name.strip_suffix(".pdf") == Some(name))
    };
    let chosen: Vec<&Document> = kit.documents.iter().filter(wanted).collect();
    let all = chosen.len() == kit.documents.len();
    if !all && before.as_ref().is_some_and(|before| *before != now) {
        let root = folder.root().display();
        return Err(CliError::new(format!(
            "event.toml has changed since this kit was printed, and its parts would not fit each other: print all of it \
             again with “everysquare print {root}”"
        )));
    }
    for document in &chosen {
        Folder::write_whole(&folder.print().join(&document.name), &document.bytes)?;
    }
    Folder::write_whole(&folder.manifest_json(), &manifest)?;
    explain(&folder, &settings, &chosen, console);
    if before.is_some_and(|before| !same_codes(&before, &now)) {
        console.say("print-codes-changed", &[]);
    }
    console.say("print-next", &[("folder", folder.root().display().to_string().into())]);
    Ok(Outcome::Right)
}

/// Whether squares of either print are recognised by the other's manifest.
fn same_codes(before: &Manifest, now: &Manifest) -> bool {
    let codes = |manifest: &Manifest| -> Vec<(String, String)> {
        manifest.squares.iter().map(|square| (square.label.clone(), square.modules.clone())).collect()
    };
    before.code == now.code && before.grid == now.grid && codes(before) == codes(now)
}

/// Says what was written, what to choose in the printer's dialogue, and how to see that it came out right.
fn explain(folder: &Folder, settings: &Settings, documents: &[&Document], console: &mut Console) {
    console.say("print-made", &[("folder", folder.print().display().to_string().into())]);
    for document in documents {
        let id = if document.two_sided { "print-made-two-sided" } else { "print-made-one-sided" };
        let counts = [
            ("name", document.name.as_str().into()),
            ("pages", document.pages.into()),
            ("sheets", document.sheets.into()),
        ];
        let line = console.words().say(id, &counts);
        console.line(&format!("  {line}"));
    }
    let manifest = console.words().say("print-made-manifest", &[]);
    console.line(&format!("  {manifest}"));
    let two_sided = documents.iter().any(|document| document.two_sided);
    let choose = match (two_sided, settings.print.flip) {
        (true, Flip::LongEdge) => "print-choose-long-edge",
        (true, Flip::ShortEdge) => "print-choose-short-edge",
        _ => "print-choose-one-sided",
    };
    let paper = console.words().say(&format!("print-paper-{}", settings.print.paper.word()), &[]);
    console.say(choose, &[("paper", paper.into())]);
    let length = match settings.print.units {
        Units::Inch => "4 in",
        Units::Mm => "100 mm",
    };
    let id = if two_sided { "print-ruler-check" } else { "print-ruler-check-one-sided" };
    console.say(id, &[("length", length.into())]);
}
