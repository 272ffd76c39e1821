//! `everysquare test-page FOLDER PHOTO…`: photos of the page that was printed first tell whether the rest will come out at size.

use std::path::PathBuf;

use super::photos::{complain, read_each};
use super::{CliError, Console, Outcome};
use crate::display::patches::patches;
use crate::judge::test_page::{Finding, of_back, of_colours, of_page, sides};
use crate::photo::Photo;
use crate::plan::Folder;
use crate::plan::lengths::one;
use crate::plan::marks::{TestSide, test_patches};
use crate::plan::settings::{Choice, Flip, Paper, Settings};
use crate::print::event::Event;
use crate::read::test_page::{TestPage, read_test_page};
use crate::words::{Sentence, Words};

/// What is typed after `everysquare test-page`.
#[derive(Debug, clap::Args)]
pub struct Args {
    /// The event folder.
    #[arg(value_name = "FOLDER")]
    pub(super) folder: PathBuf,
    /// Photos of the page.
    #[arg(value_name = "PHOTO", required = true)]
    photos: Vec<PathBuf>,
}

/// Reads the photos and says what is right about the print and what is not.
pub fn run(args: &Args, console: &mut Console) -> Result<Outcome, CliError> {
    let folder = Folder::at(&args.folder);
    let event = Event::open(&folder, folder.settings()?, console.words())?;
    let (settings, paper) = (&event.settings, event.settings.print.paper);
    let pencils: Vec<[u8; 3]> = event.facts.pencils.iter().map(|pencil| pencil.srgb).collect();
    let read = |photo: &Photo| {
        let page = read_test_page(&photo.luma, settings.tag, paper)?;
        let colours = patches(photo, &page.page_to_photo, &test_patches(paper, pencils.len()));
        Ok((page, colours))
    };
    let (seen, refused) = read_each(&args.photos, console.words(), read)?;
    let front = seen.iter().find(|(page, _)| page.side == TestSide::Front);
    let colours = front.map_or(Vec::new(), |(_, colours)| colours.clone());
    let pages: Vec<TestPage> = seen.into_iter().map(|(page, _)| page).collect();
    let found = findings(&pages, &colours, &pencils, settings);
    complain(&refused, console);
    for finding in &found {
        let told = told(finding, &event, console.words()).tell(console.words());
        console.tell(told);
    }
    let has_fault = found.iter().any(Finding::is_fault);
    let [front, back] = sides(&pages);
    let needs_back = settings.print.flip != Flip::None;
    let (said, outcome) = match (has_fault, front, back) {
        (true, ..) => ("test-page-print-again", Outcome::ToFix),
        (false, None, _) => ("test-page-front-too", Outcome::Unclear),
        (false, _, None) if needs_back => ("test-page-back-too", Outcome::Unclear),
        _ if refused.is_empty() => ("test-page-right", Outcome::Right),
        _ => ("test-page-right", Outcome::Unclear),
    };
    console.say(said, &[]);
    Ok(outcome)
}

/// What the sides that were seen tell, the front first.
fn findings(
    pages: &[TestPage],
    colours: &[[u8; 3]],
    pencils: &[[u8; 3]],
    settings: &Settings,
) -> Vec<Finding> {
    let paper = settings.print.paper;
    let [front, back] = sides(pages);
    let mut found = front.or(back).map_or(Vec::new(), |page| of_page(page, paper));
    if found.iter().any(|one| matches!(one, Finding::OtherPaper(_))) {
        return found; // on other paper nothing else means anything
    }
    if front.is_some() {
        found.extend(of_colours(colours, pencils));
    }
    if let (Some(front), Some(back)) = (front, back) {
        found.push(of_back(front, back, paper));
    }
    found
}

/// A finding as a sentence.
fn told(finding: &Finding, event: &Event, words: &Words) -> Sentence {
    let settings = &event.settings;
    let percent = |scale: f64| (scale * 1_000.0).round() / 10.0;
    let paper = |paper: Paper| words.say(&format!("print-paper-{}", paper.word()), &[]);
    let length = |mm: f64| one(mm, settings.print.units, words);
    let pencil =
        |number: usize| event.facts.pencils.get(number).map_or(String::new(), |own| own.name.clone());
    match finding {
        Finding::Size(scale) => Sentence::new("test-page-size").with("percent", percent(*scale)),
        Finding::Scale(scale) => Sentence::new("test-page-scale").with("percent", percent(*scale)),
        Finding::Uneven([across, down]) => {
            Sentence::new("test-page-uneven").with("across", percent(*across)).with("down", percent(*down))
        }
        Finding::OtherPaper(other) => Sentence::new("test-page-other-paper")
            .with("paper", paper(*other))
            .with("meant", paper(settings.print.paper)),
        Finding::Shift([x, y]) => Sentence::new("test-page-shift").with("length", length(x.hypot(*y))),
        Finding::Askew(degrees) => {
            Sentence::new("test-page-askew").with("degrees", (degrees.abs() * 10.0).round() / 10.0)
        }
        Finding::Cut(missing) => Sentence::new("test-page-cut").with("edges", edges(*missing, words)),
        Finding::Inks(missing) => {
            let ink = |k: &usize| words.say(INKS.get(*k).copied().unwrap_or_default(), &[]);
            Sentence::new("test-page-inks")
                .with("inks", missing.iter().map(ink).collect::<Vec<_>>().join(", "))
        }
        Finding::Black => Sentence::new("test-page-black"),
        Finding::Alike(pairs) => {
            let both = |[a, b]: &[usize; 2]| format!("{} = {}", pencil(*a), pencil(*b));
            Sentence::new("test-page-alike")
                .with("pairs", pairs.iter().map(both).collect::<Vec<_>>().join(", "))
        }
        Finding::Back(_) => Sentence::new("test-page-back-right"),
        Finding::Slip(mm) => Sentence::new("test-page-slip").with("length", length(*mm)),
        Finding::UpsideDown => {
            Sentence::new("test-page-upside-down").with("flip", settings.print.flip.word())
        }
        Finding::Sideways => Sentence::new("test-page-sideways"),
    }
}

/// What the inks are called, in the order of [`INKS`](crate::plan::marks::INKS).
const INKS: [&str; 4] = ["test-page-cyan", "test-page-magenta", "test-page-yellow", "test-page-black-ink"];

/// The edges where something is missing, as people call them.
fn edges(missing: [bool; 4], words: &Words) -> String {
    let names = ["test-page-top", "test-page-right-edge", "test-page-bottom", "test-page-left"];
    let edges = names.iter().zip(missing).filter(|(_, missing)| *missing);
    edges.map(|(id, _)| words.say(id, &[])).collect::<Vec<_>>().join(", ")
}
