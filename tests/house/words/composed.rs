//! Ids that the program puts together, with all that can come of it.

use everysquare::judge::State;
use everysquare::picture::questions::Rung;
use everysquare::plan::Level;
use everysquare::plan::settings::{Choice, Paper};

/// The kinds of questions, as `src/picture/questions/` names them.
pub const KINDS: [&str; 69] = [
    "colours-of-piece",
    "next-piece",
    "in-row-with",
    "turned-piece",
    "in-one-row",
    "pieces-with",
    "left-in-row",
    "in-one-column",
    "one-colour",
    "colours",
    "one-more",
    "corners",
    "boxes-across",
    "sides",
    "tape",
    "guess",
    "all-squares",
    "left",
    "half-up",
    "next-rows",
    "not-with",
    "quarter-boxes",
    "quarter-up",
    "half-row",
    "visitors",
    "full-rows",
    "half-of-boxes",
    "sides-of-squares",
    "tables",
    "folded",
    "boxes-of-two",
    "minutes",
    "scale",
    "pieces-on-square",
    "mural-width",
    "mural-height",
    "fraction-with",
    "larger",
    "around",
    "fraction-up",
    "which-part",
    "smaller",
    "inches-to-mm",
    "boxes-of-squares",
    "part-of-boxes",
    "millimetres",
    "next-square",
    "turn-back",
    "edge",
    "both",
    "larger-patch",
    "blocks",
    "columns-to-rows",
    "percent-with",
    "chessboard",
    "most-colours",
    "seams",
    "square-step",
    "all-blocks",
    "area-step",
    "piece-to-square",
    "percent-up",
    "odd-numbers",
    "hellos",
    "longer-sides",
    "box-edge",
    "box-blocks",
    "percent-of-boxes",
    "boxes-ratio",
];

/// What the guide lists as needed, and what may go wrong.
const THINGS: [&str; 12] = [
    "paper",
    "printer",
    "pencils",
    "sharpeners",
    "tape",
    "string",
    "bags",
    "stool",
    "cutting",
    "phone",
    "signs",
    "bin",
];
const TROUBLES: [&str; 11] =
    ["short", "many", "few", "scale", "backs", "painted", "lost", "turned", "unread", "pencils", "late"];

/// What stands above the numbers of several pictures.
const HEADS: [&str; 9] =
    ["name", "squares", "plain", "easy", "medium", "hard", "pencils", "narrowest", "half"];

/// The signs for the room.
const SIGNS: [&str; 5] = ["door", "pieces", "tables", "wall", "mural"];

/// A text in the sources with gaps, and the ids that come of it.
pub fn composed() -> Vec<(&'static str, Vec<String>)> {
    let filled = |pattern: &'static str, parts: &[&str]| {
        (pattern, parts.iter().map(|part| pattern.replace("{}", part)).collect::<Vec<_>>())
    };
    let states: Vec<&str> = State::ALL.iter().map(|state| state.name()).collect();
    let shown = [states.as_slice(), &[State::Reserve.name(), State::Free.name()]].concat();
    let rungs: Vec<&str> = Rung::ALL.iter().map(|rung| rung.word()).collect();
    let two = |firsts: &[&str], seconds: &[&str]| -> Vec<String> {
        firsts.iter().flat_map(|a| seconds.iter().map(move |b| format!("questions-{a}-{b}"))).collect()
    };
    let documents: Vec<&str> = everysquare::print::names()
        .chain(everysquare::print::ON_REQUEST)
        .chain(everysquare::print::comparison::names())
        .chain(["pictures"])
        .collect();
    let questions = [two(&["ask", "working"], &KINDS), two(&["rung", "ages"], &rungs)].concat();
    vec![
        filled("cell-{}", &shown),
        filled("state-{}", &shown),
        filled("helpers-check-{}", &states),
        filled("report-count-{}", &states),
        filled("print-paper-{}", &Paper::ALL.iter().map(|(_, word)| *word).collect::<Vec<_>>()),
        filled("print-card-corner-{}", &["1", "2", "3", "4"]),
        filled("print-{}", &documents),
        filled("comparison-poster-{}", &["1", "2", "3", "4"]),
        filled("level-{}", &Level::ALL.map(Choice::word)),
        filled("serve-print-{}", &["square", "piece", "strip", "helped", "large", "home"]),
        filled("pictures-head-{}", &HEADS),
        filled("home-{}", &["1", "2", "3", "4"]),
        filled("sign-{}", &SIGNS),
        filled("sign-{}-more", &SIGNS),
        filled("test-page-{}", &["1", "2", "3", "4"]),
        filled("print-{}-next", &["test-page", "home", "helped"]),
        filled("steps-{}", &["1", "2", "3", "4", "5", "6"]),
        filled("people-{}", &["children-from-5", "children-from-9", "seated", "adults"]),
        filled(
            "crowd-{}",
            &[
                "fits",
                "too-large-for-visitors",
                "too-large-for-helpers",
                "too-large-for-suggested",
                "too-large-for-seats",
                "too-large-for-time",
                "too-small",
            ],
        ),
        filled("guide-plan-{}", &["wall", "phone", "hand-out", "exit", "entrance", "bar", "size"]),
        filled("guide-{}", &THINGS),
        filled("guide-{}-amount", &THINGS),
        filled("guide-wrong-{}", &TROUBLES),
        filled("guide-wrong-{}-do", &TROUBLES),
        filled("questions-rung-{}", &rungs),
        filled("questions-{}", &["number", "question", "answer", "working"]),
        ("questions-{}-{}", questions),
        filled(
            "help-crowd-{}",
            &["visitors", "arrivals", "each", "start", "end", "minutes", "seats", "giving-out", "hanging"],
        ),
        // what a value of an option is called: looked at beside the help itself
        ("help-value-{}", Vec::new()),
    ]
}
