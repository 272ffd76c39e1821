//! The list of things to do as people read it: the fixes, with a long run of squares to be found drawn
//! together.

use crate::judge::{Act, Outcome, State};
use crate::words::Words;

use super::json::Report;
use super::sentences::{count, some_of};

/// So many squares to be found are still told one by one.
const FEW: usize = 3;

/// One sentence a step. At the beginning of an evening most squares are still to come; they make one step,
/// not eighty.
#[must_use]
pub fn steps(report: &Report, words: &Words) -> Vec<String> {
    let (fetches, others): (Vec<_>, Vec<_>) = report.fixes.iter().partition(|fix| fix.act == Act::Fetch);
    let mut steps: Vec<String> = others.into_iter().map(|fix| fix.say.clone()).collect();
    if fetches.len() <= FEW {
        steps.extend(fetches.into_iter().map(|fix| fix.say.clone()));
        return steps;
    }
    let squares: Vec<String> = fetches.iter().filter_map(|fix| fix.square.clone()).collect();
    steps.push(if squares == sought(report) {
        words.say("fix-fetch-listed", &[("count", count(squares.len()))])
    } else {
        words.say("fix-fetch-many", &[("squares", squares.join(", ").into())])
    });
    steps
}

/// The one sentence that says what the check comes to.
#[must_use]
pub fn headline(report: &Report, words: &Words) -> String {
    let cells = ("cells", count(report.summary.cells));
    match report.outcome() {
        Outcome::AllRight => all_right(report, words),
        Outcome::Fix => words.say("report-to-do", &[("steps", count(steps(report, words).len()))]),
        Outcome::CannotTell => {
            words.say("report-cannot-tell", &[("unknown", count(report.summary.unknown())), cells])
        }
    }
}

/// That all squares are where they belong, and which of them nobody has drawn on yet.
#[must_use]
pub fn all_right(report: &Report, words: &Words) -> String {
    let all = words.say("report-all-right", &[("cells", count(report.summary.cells))]);
    white(report, words).map_or_else(|| all.clone(), |white| format!("{all} {white}"))
}

/// Which squares nobody has drawn on yet; `None` where there are none.
#[must_use]
pub fn white(report: &Report, words: &Words) -> Option<String> {
    let told = [("count", count(report.white.len())), ("squares", some_of(words, &report.white).into())];
    (!report.white.is_empty()).then(|| words.say("report-white", &told))
}

/// How many cells are in which state, without those in which none is: one phrase each.
#[must_use]
pub fn counts(report: &Report, words: &Words) -> Vec<(State, String)> {
    let s = report.summary;
    let each = [s.right, s.wrong, s.turned, s.empty, s.unread, s.unseen];
    let named = State::ALL.into_iter().zip(each).filter(|(state, n)| *n > 0 || *state == State::Right);
    named
        .map(|(state, n)| {
            let id = format!("report-count-{}", state.name());
            (state, words.say(&id, &[("count", count(n)), ("cells", count(s.cells))]))
        })
        .collect()
}

/// Where the photos come from, by number only: whether they are made, how many, and when taken.
#[must_use]
pub fn source(report: &Report, words: &Words) -> Vec<String> {
    let photos = ("photos", count(report.photos.len()));
    let made = report.made.then(|| words.say("report-made", &[]));
    let taken = match &report.taken {
        Some(taken) => words.say("report-taken", &[photos, ("taken", readable_time(taken).into())]),
        None => words.say("report-photos", &[photos]),
    };
    made.into_iter().chain([taken]).collect()
}

/// What is missing, hangs twice or does not belong, each one line.
#[must_use]
pub fn oddities(report: &Report, words: &Words) -> Vec<String> {
    let list = |id: &str, labels: &[String]| {
        (!labels.is_empty()).then(|| words.say(id, &[("squares", labels.join(", ").into())]))
    };
    let strangers = report.strangers.iter().map(|stranger| {
        let named = [("text", stranger.text.clone().into()), ("cell", stranger.cell.clone().into())];
        words.say("report-stranger", &named)
    });
    let sought = sought(report);
    let elsewhere = report.missing.len() - sought.len();
    let missing = list("report-missing", &sought);
    let untold = (elsewhere > 0).then(|| words.say("report-missing-untold", &[("count", count(elsewhere))]));
    let all_right = report.outcome() == Outcome::AllRight; // then the headline says it
    let white = white(report, words).filter(|_| !all_right);
    let odd = missing.into_iter().chain(untold).chain(list("report-twice", &report.twice)).chain(strangers);
    odd.chain(white).collect()
}

/// Missing squares whose own cells were seen without them; the others most likely hang where they belong,
/// unread or unseen.
fn sought(report: &Report) -> Vec<String> {
    let untold = |label: &String| {
        let unknown = |state: State| matches!(state, State::Unread | State::Unseen);
        report.cells.iter().any(|cell| cell.label == *label && unknown(cell.state))
    };
    report.missing.iter().filter(|label| !untold(label)).cloned().collect()
}

/// `2026-11-24T18:05:00` as people read it.
fn readable_time(taken: &str) -> String {
    taken.replacen('T', " ", 1)
}
