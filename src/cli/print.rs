//! `everysquare print FOLDER [squares cards pieces …]`: writes the kit into the event folder, and what no kit has where it is named.

mod fill;
mod single;

use std::collections::BTreeMap;
use std::path::PathBuf;

use super::beside::{choose_paper, same_squares, say_document, write_beside};
use super::mistyped::{Refused, document};
use super::plan::plan_json;
use super::progress::bar;
use super::{CliError, Console, Outcome, groups, language};
use crate::plan::manifest::ManifestSquare;
use crate::plan::settings::{Choice, Language};
use crate::plan::{Folder, Manifest, Settings};
use crate::print::event::Event;
use crate::print::lesson::lesson;
use crate::print::{
    AGAIN, Document, Kit, ON_REQUEST, STACK, Sources, again, known, minutes, names_of, part_of_kit, templates,
};
use crate::words::{Sentence, Words, as_typed, whole};

use single::Help;

/// Documents whose places are in the manifest: there is one of each.
const CODED: [&str; 4] = ["squares", "pieces", "strips", "edge-cards"];

/// What is typed after `everysquare print`.
#[derive(Debug, clap::Args)]
pub struct Args {
    /// The event folder.
    #[arg(value_name = "FOLDER")]
    pub(super) folder: PathBuf,
    /// Only these documents.
    #[arg(value_name = "DOCUMENT", value_parser = document)]
    documents: Vec<String>,
    /// Fillers that hang as they are.
    #[arg(long)]
    soft: bool,
    /// Only these spots.
    #[arg(long, value_name = "LABEL", value_delimiter = ',')]
    only: Option<Vec<String>>,
    /// In this language too.
    #[arg(long = "in", value_name = "LANGUAGE", value_parser = language::named)]
    in_language: Option<Language>,
    /// What help squares have.
    #[arg(long = "with", value_name = "WHICH", value_parser = help_with)]
    help_with: Option<Help>,
    /// The program's own templates and words as well.
    #[arg(long)]
    templates: bool,
}

fn help_with(typed: &str) -> Result<Help, Refused> {
    Help::named(typed).ok_or_else(Refused::choice::<Help>)
}

/// Makes the kit and writes it: documents first, the manifest last, so that it never lists what does not lie there.
pub fn run(args: &Args, console: &mut Console) -> Result<Outcome, CliError> {
    known(&args.documents)?;
    let (on_request, documents): (Vec<String>, Vec<String>) =
        args.documents.iter().cloned().partition(|name| ON_REQUEST.contains(&name.as_str()));
    let asks_for = |name: &str| on_request.iter().any(|own| own == name);
    let fills = asks_for("fill");
    if args.help_with.is_some() && !asks_for("helped") {
        return Err(CliError::new(Sentence::new("error-print-with")));
    }
    if args.soft && !fills {
        return Err(CliError::new(Sentence::new("error-print-soft")));
    }
    let others = documents.iter().filter(|name| !AGAIN.contains(&name.as_str())).chain(&on_request);
    let single = |name: &&String| single::TAKE_ONLY.contains(&name.as_str());
    if args.only.is_some() && others.into_iter().any(|name| !single(&name)) {
        return Err(CliError::new(Sentence::new("error-print-only")));
    }
    let folder = Folder::at(&args.folder);
    if let Some(language) = args.in_language {
        return in_another_language(args, language, &folder, console);
    }
    let event = Event::open(&folder, folder.settings()?, console.words())?;
    if !documents.is_empty() || on_request.is_empty() {
        match &args.only {
            Some(only) => print_again(only, &documents, &folder, &event, console)?,
            None => kit(args, &documents, &folder, &event, console)?,
        }
    }
    if asks_for("groups") {
        let shared = groups::shared_out(&folder, &event.settings.grid)?;
        groups::print(&folder, &event, &shared, console)?;
    }
    if asks_for("lesson") {
        let document = lesson(&event.sources(console.words()))?;
        write_beside(&folder, &event.settings, &[document], console)?;
    }
    if on_request.iter().any(|name| single::NAMES.contains(&name.as_str())) {
        single::run(args, &on_request, &folder, &event, console)?;
    }
    if fills {
        fill::run(args, &folder, &event, console)?;
    }
    Ok(Outcome::Right)
}

/// Prints some of the kit's documents in another language beside the kit; nothing else changes.
fn in_another_language(
    args: &Args,
    language: Language,
    folder: &Folder,
    console: &mut Console,
) -> Result<Outcome, CliError> {
    let has_codes = |name: &String| CODED.contains(&name.as_str()) || ON_REQUEST.contains(&name.as_str());
    if args.documents.is_empty() || args.documents.iter().any(has_codes) || args.only.is_some() {
        return Err(CliError::new(Sentence::new("error-print-in")));
    }
    let mut settings = folder.settings()?;
    settings.language = language;
    let words = Words::of(language.word());
    let event = Event::open(folder, settings, &words)?;
    let kit = part_of_kit(&event.sources(&words), &args.documents, &|| ())?;
    let named = kit.documents.into_iter().map(|document| {
        let name = document.name.trim_end_matches(".pdf");
        Document { name: format!("{name}-{}.pdf", language.word()), ..document }
    });
    let documents: Vec<Document> = named.collect();
    write_beside(folder, &event.settings, &documents, console)?;
    Ok(Outcome::Right)
}

/// Prints squares and pieces of some spots again; the manifest stays as it is.
fn print_again(
    only: &[String],
    documents: &[String],
    folder: &Folder,
    event: &Event,
    console: &mut Console,
) -> Result<(), CliError> {
    same_squares(folder, event)?;
    let cells = cells_of(&named(only, &event.settings)?, event);
    let documents = again(&event.sources(console.words()), &cells, documents)?;
    write_beside(folder, &event.settings, &documents, console)?;
    console.say("print-again", &[("count", cells.len().into())]);
    Ok(())
}

/// The pieces with these labels, in the order in which they are handed out.
fn cells_of(labels: &[String], event: &Event) -> Vec<usize> {
    let label = |piece: usize| event.settings.grid.label(event.facts.pieces[piece].cell);
    let grid = &event.settings.grid;
    // a piece whose spot is kept free is handed out to nobody; whoever asks for it gets it
    let others = grid.kept_free.cells().map(|cell| grid.index(cell));
    event.facts.order.iter().copied().chain(others).filter(|piece| labels.contains(&label(*piece))).collect()
}

/// The labels that were typed.
fn named(only: &[String], settings: &Settings) -> Result<Vec<String>, CliError> {
    let read = |typed: &String| {
        let cell = settings.grid.cell(&typed.trim().to_uppercase());
        cell.map(|cell| settings.grid.label(cell)).ok_or_else(|| {
            let grid = &settings.grid;
            let labels: Vec<String> = grid.cells().map(|cell| grid.label(cell)).collect();
            let end = |place: Option<&String>| place.cloned().unwrap_or_default();
            let sentence = Sentence::new("error-print-only-label").with("read", typed.as_str());
            CliError::new(sentence.with("first", end(labels.first())).with("last", end(labels.last())))
        })
    };
    only.iter().map(read).collect()
}

/// Prints the kit, or some of its documents.
fn kit(
    args: &Args,
    documents: &[String],
    folder: &Folder,
    event: &Event,
    console: &mut Console,
) -> Result<(), CliError> {
    let sources = event.sources(console.words());
    let kit = made(&sources, documents, console)?;
    let manifest = kit.manifest.to_json()?;
    let now = Manifest::from_json(&manifest)?; // through the same text, so that numbers compare to the last bit
    let before = folder.manifest().ok();
    let all = kit.documents.len() == names_of(event.settings.print.join).count();
    if !all && before.as_ref().is_some_and(|before| *before != now) {
        return Err(CliError::new(
            Sentence::new("error-print-changed").with("folder", as_typed(folder.root())),
        ));
    }
    write(folder, &kit)?;
    if args.templates {
        write_templates(folder, event.settings.language)?;
    }
    if all {
        Folder::write_whole(&folder.plan_json(), &plan_json(&sources, &kit.documents)?)?;
    }
    Folder::write_whole(&folder.manifest_json(), &manifest)?;
    explain(folder, &event.settings, &kit, console);
    if args.templates {
        let folders = [("made", print_templates(folder)), ("own", folder.templates_folder())]
            .map(|(name, path)| (name, path.display().to_string().into()));
        console.say("print-made-templates", &folders);
    }
    if before.is_some_and(|before| !same_codes(&before, &now)) {
        console.say("print-codes-changed", &[]);
    }
    let place = [("folder", as_typed(folder.root()).into())];
    console.say("print-test-first", &place);
    console.say("print-next", &place);
    Ok(())
}

/// Sets the pages, with a bar where somebody waits.
fn made(sources: &Sources, documents: &[String], console: &Console) -> Result<Kit, CliError> {
    let join = sources.settings.print.join;
    let steps = if documents.is_empty() { names_of(join).count() } else { documents.len() };
    let bar = bar(console, u64::try_from(steps).unwrap_or(u64::MAX), "print-working");
    let kit = part_of_kit(sources, documents, &|| bar.inc(1));
    bar.finish_and_clear();
    Ok(kit?)
}

/// Writes the documents and the lines to cut; sheets to cut of an earlier kit, which might be more, go.
fn write(folder: &Folder, kit: &Kit) -> Result<(), CliError> {
    for document in &kit.documents {
        Folder::write_whole(&folder.print().join(&document.name), &document.bytes)?;
    }
    let cuts = folder.print().join("cuts");
    for sheet in &kit.cuts {
        Folder::write_whole(&cuts.join(&sheet.name), sheet.svg.as_bytes())?;
    }
    for document in &kit.documents {
        let Some(name) = document.name.strip_suffix(".pdf") else { continue };
        let made = kit.cuts.iter().filter(|sheet| numbered(&sheet.name, name).is_some()).count();
        for old in std::fs::read_dir(&cuts).into_iter().flatten().filter_map(Result::ok) {
            if numbered(&old.file_name().to_string_lossy(), name).is_some_and(|number| number > made) {
                std::fs::remove_file(old.path())?;
            }
        }
    }
    Ok(())
}

/// Writes the program's templates and words, to start own ones from. They lie where they change nothing.
fn write_templates(folder: &Folder, language: Language) -> Result<(), CliError> {
    let into = print_templates(folder);
    for (name, text) in templates() {
        Folder::write_whole(&into.join(format!("{name}.typ")), text.as_bytes())?;
    }
    if let Some(words) = whole(language.word()) {
        Folder::write_whole(&into.join("words.ftl"), words.as_bytes())?;
    }
    Ok(())
}

fn print_templates(folder: &Folder) -> PathBuf {
    folder.print().join("templates")
}

/// The number of a sheet to cut of a document; `None` for any other file.
fn numbered(file: &str, document: &str) -> Option<usize> {
    file.strip_prefix(document)?.strip_prefix('-')?.strip_suffix(".svg")?.parse().ok()
}

/// Whether squares of either print are recognised by the other's manifest.
fn same_codes(before: &Manifest, now: &Manifest) -> bool {
    let of = |square: &ManifestSquare| (square.label.clone(), square.modules.clone());
    let old: BTreeMap<String, String> = before.squares.iter().map(of).collect();
    // a square of a spot that was kept free, or is now, is in one of them only
    let is_same = |(label, modules)| old.get(&label).is_none_or(|old| *old == modules);
    before.code == now.code && before.grid == now.grid && now.squares.iter().map(of).all(is_same)
}

/// Says what was written, what to choose in the printer's dialogue, and how to see that it came out right.
fn explain(folder: &Folder, settings: &Settings, kit: &Kit, console: &mut Console) {
    console.say("print-made", &[("folder", folder.print().display().to_string().into())]);
    kit.documents.iter().for_each(|document| say_document(document, console));
    if !kit.cuts.is_empty() {
        let cuts = console.words().say("print-made-cuts", &[("sheets", kit.cuts.len().into())]);
        console.line(&format!("  {cuts}"));
    }
    let manifest = console.words().say("print-made-manifest", &[]);
    console.line(&format!("  {manifest}"));
    let cuts: usize = kit.documents.iter().map(|document| document.cuts).sum();
    if kit.documents.len() > 1 && cuts > 0 {
        let sheets: usize = kit.documents.iter().map(|document| document.sheets).sum();
        let numbers = [
            ("sheets", sheets.into()),
            ("cuts", cuts.into()),
            ("stack", STACK.into()),
            ("minutes", minutes(cuts).into()),
        ];
        console.say("print-made-in-all", &numbers);
    }
    choose_paper(settings, &kit.documents, console);
}
