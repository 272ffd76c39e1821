//! Ids that the program puts together, with all that can come of it.

use everysquare::judge::State;
use everysquare::picture::questions::Learners;
use everysquare::plan::Level;
use everysquare::plan::settings::{Choice, Paper};

/// The kinds of questions, as `src/picture/questions/` names them.
pub const KINDS: [&str; 61] = [
    "pieces-needing",
    "colours-of-piece",
    "in-one-row",
    "in-one-column",
    "in-row-needing",
    "left-in-row",
    "colours",
    "one-colour",
    "corners",
    "sides",
    "one-more",
    "hands",
    "boxes-across",
    "all-squares",
    "fraction-needing",
    "left",
    "which-part",
    "fraction-hanging",
    "not-needing",
    "full-rows",
    "visitors",
    "quarter-boxes",
    "sides-of-squares",
    "half-of-boxes",
    "folded",
    "tables",
    "boxes-of-squares",
    "minutes",
    "sheets",
    "scale",
    "pieces-on-square",
    "larger",
    "smaller",
    "larger-patch",
    "wall-width",
    "wall-height",
    "percent-needing",
    "columns-to-rows",
    "piece-to-square",
    "around",
    "percent-hanging",
    "inches-to-mm",
    "longer-sides",
    "percent-of-boxes",
    "boxes-ratio",
    "millimetres",
    "next-square",
    "square-step",
    "edge",
    "blocks",
    "all-blocks",
    "seams",
    "chessboard",
    "both",
    "most-colours",
    "odd-numbers",
    "box-edge",
    "box-blocks",
    "handshakes",
    "area-step",
    "folded-lines",
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

/// A text in the sources with gaps, and the ids that come of it.
pub fn composed() -> Vec<(&'static str, Vec<String>)> {
    let filled = |pattern: &'static str, parts: &[&str]| {
        (pattern, parts.iter().map(|part| pattern.replace("{}", part)).collect::<Vec<_>>())
    };
    let states: Vec<&str> = State::ALL.iter().map(|state| state.name()).collect();
    let learners: Vec<&str> = Learners::ALL.iter().map(|learners| learners.word()).collect();
    let two = |firsts: &[&str], seconds: &[&str]| -> Vec<String> {
        firsts.iter().flat_map(|a| seconds.iter().map(move |b| format!("questions-{a}-{b}"))).collect()
    };
    let documents: Vec<&str> =
        everysquare::print::names().chain(everysquare::print::comparison::names()).collect();
    let questions = [two(&["ask", "working"], &KINDS), two(&["learners", "ages"], &learners)].concat();
    vec![
        filled("cell-{}", &states),
        filled("state-{}", &states),
        filled("helpers-check-{}", &states),
        filled("report-count-{}", &states),
        filled("print-paper-{}", &Paper::ALL.iter().map(|(_, word)| *word).collect::<Vec<_>>()),
        filled("print-card-corner-{}", &["1", "2", "3", "4"]),
        filled("print-{}", &documents),
        filled("comparison-poster-{}", &["1", "2", "3", "4"]),
        filled("level-{}", &Level::ALL.map(Choice::word)),
        filled("steps-{}", &["1", "2", "3", "4", "5", "6"]),
        filled("people-{}", &["children-from-5", "children-from-9", "seated", "adults"]),
        filled("guide-verdict-{}", &["fits", "too-big-for-time", "too-big-for-crowd", "too-small"]),
        filled("guide-plan-{}", &["wall", "phone", "hand-out", "exit", "entrance", "bar", "size"]),
        filled("guide-{}", &THINGS),
        filled("guide-{}-amount", &THINGS),
        filled("guide-wrong-{}", &TROUBLES),
        filled("guide-wrong-{}-do", &TROUBLES),
        filled("questions-learners-{}", &learners),
        filled("questions-{}", &["number", "question", "answer", "working"]),
        ("questions-{}-{}", questions),
        // what a value of an option is called: looked at beside the help itself
        ("help-value-{}", Vec::new()),
    ]
}
