//! What is said when an event folder is made.

use super::Args;
use super::trial::Closer;
use crate::cli::Console;
use crate::cli::plan::join_told;
use crate::picture::grid::{Cut, Reason};
use crate::picture::name::names;
use crate::picture::warnings::ColourWarning;
use crate::picture::{Fit, Proposal, Reduced};
use crate::plan::Settings;
use crate::plan::cards::RING_MM;
use crate::plan::crowd::usual_visitors;
use crate::plan::lengths::both;
use crate::plan::settings::Pencil;
use crate::words::{Words, as_typed};

/// Pixels along a piece's side below which small things of a picture are lost: 40 an inch. Common practice, no source.
const CLEAR_PIECE_PX: f64 = 40.0;

/// Colours that are lost of which is told, those of the largest areas.
const MOST_LOST: usize = 3;

/// All that was made.
pub(super) struct Made<'a> {
    pub args: &'a Args,
    pub settings: &'a Settings,
    pub proposal: &'a Proposal,
    pub reduced: &'a Reduced,
    pub warnings: Vec<ColourWarning>,
    pub text_in_our_font: bool,
    /// The file that shows a photographed drawing straightened.
    pub drawing: Option<String>,
    /// A part of the picture that gives more people something to draw.
    pub closer: Option<Closer>,
    /// What the evening comes to, where it is known how many visitors are expected.
    pub told: Option<Vec<String>>,
}

/// Says what was chosen, why, and what comes next.
pub(super) fn explain(made: &Made, console: &mut Console) {
    let Made { args, settings, proposal, .. } = made;
    let folder = args.folder.display().to_string();
    let tag = settings.tag.to_string();
    console.say(
        "new-made",
        &[
            ("folder", folder.as_str().into()),
            ("name", settings.name.as_str().into()),
            ("tag", tag.into()),
            ("file", settings.picture.file.as_str().into()),
        ],
    );
    let why = match proposal.reason {
        Reason::Given => "new-grid-given",
        Reason::RowsFollow => "new-grid-rows-follow",
        Reason::ColumnsFollow => "new-grid-columns-follow",
        Reason::NearCount => "new-grid-near-count",
        Reason::FitsBest => "new-grid-fits-best",
        Reason::SuitsCrowd => "new-grid-suits-crowd",
    };
    let squares = console.words().say("new-squares", &[("count", proposal.cells().into())]);
    console.say(
        why,
        &[
            ("columns", proposal.columns.into()),
            ("rows", proposal.rows.into()),
            ("squares", squares.into()),
            ("wished", args.squares.unwrap_or(0).into()),
            ("visitors", usual_visitors(proposal.cells()).shown().into()),
        ],
    );
    made.told.iter().flatten().for_each(|said| console.tell(said.clone()));
    explain_fit(made, console);
    let grid = &settings.grid;
    if grid.border {
        let squares = console.words().say("new-squares", &[("count", grid.border_count().into())]);
        let asked =
            [("squares", squares.into()), ("columns", grid.columns.into()), ("rows", grid.rows.into())];
        console.say("new-border", &asked);
    }
    let size = grid.size();
    let length = |mm| both(mm, settings.print.units, console.words());
    let sizes = [
        ("width", length(size.x).into()),
        ("height", length(size.y).into()),
        ("cards", length(RING_MM).into()),
    ];
    console.say("new-wall", &sizes);
    explain_colours(made, console);
    if let Some(said) = join_told(settings, console.words()) {
        console.tell(said);
    }
    made.warnings.iter().for_each(|warning| warn(warning, console));
    if let Some(closer) = &made.closer {
        console.tell(closer.said(console.words()));
    }
    if settings.picture.credit.is_none() {
        console.say("new-credit", &[]);
    }
    console.say("new-next", &[("folder", as_typed(&args.folder).into())]);
}

/// A part as a percentage, never rounded down to nothing.
fn percent(part: f64, words: &Words) -> String {
    match part * 100.0 {
        small if small < 1.0 => words.say("new-less-than-one", &[]),
        more => format!("{more:.0}"),
    }
}

/// What became of a photographed drawing, and of the picture's shape.
fn explain_fit(made: &Made, console: &mut Console) {
    if let Some(file) = &made.drawing {
        console.say("new-from-paper", &[("file", file.as_str().into())]);
    }
    let (cut, fit) = (made.proposal.cut, made.args.fit);
    let (id, part) = match (cut, fit) {
        (Cut::Nothing, _) => ("new-nothing-lost", 0.0),
        (Cut::Sides, Fit::Crop) => ("new-lost-sides", made.reduced.lost),
        (Cut::TopAndBottom, Fit::Crop) => ("new-lost-top-and-bottom", made.reduced.lost),
        // what would be cut at the sides is too wide: there is room above and below
        (Cut::Sides, Fit::Pad) => ("new-added-top-and-bottom", made.reduced.added),
        (Cut::TopAndBottom, Fit::Pad) => ("new-added-sides", made.reduced.added),
    };
    let percent = percent(part, console.words());
    console.say(id, &[("percent", percent.into())]);
}

/// The pencils, and what was done to the picture for them.
fn explain_colours(made: &Made, console: &mut Console) {
    let pencils = &made.reduced.few.pencils;
    let (paper, drawn): (Vec<&Pencil>, Vec<&Pencil>) = pencils.iter().partition(|pencil| pencil.is_paper());
    let called: Vec<&str> = drawn.iter().map(|pencil| pencil.name.as_str()).collect();
    let called = called.join(", ");
    console.say("new-pencils", &[("count", drawn.len().into()), ("names", called.into())]);
    for pencil in paper {
        console.say("new-paper", &[("name", pencil.name.as_str().into())]);
    }
    if made.reduced.not_shown.is_empty() && made.args.chooses_itself() {
        console.say("new-pencils-fitting", &[]);
    }
    lost_told(made.reduced, console.words()).into_iter().for_each(|said| console.tell(said));
    if let Some(keeps) = made.reduced.keeps {
        console.say("new-lost-keeps", &[("count", keeps.into())]);
    }
    if made.text_in_our_font {
        console.say("new-text", &[]);
    }
    if made.reduced.own_piece_px < CLEAR_PIECE_PX {
        console.say("new-coarse", &[("pixels", format!("{:.0}", made.reduced.own_piece_px).into())]);
    }
}

/// The largest areas that no pencil shows, a sentence each.
pub(super) fn lost_told(reduced: &Reduced, words: &Words) -> Vec<String> {
    let told = |(from, to, share): (String, String, f64)| {
        let part = percent(share, words);
        words.say("new-lost-colour", &[("from", from.into()), ("percent", part.into()), ("to", to.into())])
    };
    lost_by_name(reduced, words).into_iter().take(MOST_LOST).map(told).collect()
}

/// What no pencil shows: what people call it, the pencil that it is drawn with, and its share of the picture; areas that are called alike
/// together.
fn lost_by_name(reduced: &Reduced, words: &Words) -> Vec<(String, String, f64)> {
    let mut all: Vec<(String, String, f64)> = Vec::new();
    for lost in &reduced.not_shown {
        let pencil = &reduced.few.pencils[lost.pencil];
        let from = names(&[lost.srgb, pencil.srgb], words).swap_remove(0);
        match all.iter_mut().find(|(own, to, _)| *own == from && *to == pencil.name) {
            Some((_, _, share)) => *share += lost.share,
            None => all.push((from, pencil.name.clone(), lost.share)),
        }
    }
    all
}

fn warn(warning: &ColourWarning, console: &mut Console) {
    match warning {
        ColourWarning::Alike { one, other, .. } => {
            console.say("new-warn-alike", &[("one", one.as_str().into()), ("other", other.as_str().into())])
        }
        ColourWarning::Rare { pencil, pieces } => {
            console.say("new-warn-rare", &[("pencil", pencil.as_str().into()), ("pieces", (*pieces).into())])
        }
        ColourWarning::LeftWhite { pieces } => {
            console.say("new-warn-white", &[("count", (*pieces).into())]);
        }
        ColourWarning::MostlyPlain { plain, drawn } => {
            console.say("new-warn-plain", &[("plain", (*plain).into()), ("drawn", (*drawn).into())]);
        }
    }
}
