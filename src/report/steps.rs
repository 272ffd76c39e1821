//! The list of things to do as people read it: the fixes, with a long run of squares to be found drawn
//! together.

use crate::judge::{Act, Outcome, State};
use crate::words::Words;

use super::json::{Report, ReportFix};
use super::sentences::{self, count};

/// So many squares to be found are still told one by one.
const FEW: usize = 3;
/// Maximum number of spots shown beside a step: both of a swap.
const SPOTS: usize = 2;

/// A step as people read it.
#[derive(Clone, Debug)]
pub struct Listed<'a> {
    /// What kind of thing it is.
    pub act: Act,
    /// The sentence.
    pub say: String,
    /// Labels of the spots that it is done at and where something hangs or should, few enough to be looked at; where something moves,
    /// from the first to the second.
    pub spots: Vec<&'a str>,
}

/// One sentence a step. At the beginning of an evening most squares are still to come; they make one step,
/// not eighty.
#[must_use]
pub fn steps(report: &Report, words: &Words) -> Vec<String> {
    listed(report, words).into_iter().map(|step| step.say).collect()
}

/// The same with what each step is and where it is done.
#[must_use]
pub fn listed<'a>(report: &'a Report, words: &Words) -> Vec<Listed<'a>> {
    let (fetches, others): (Vec<_>, Vec<_>) = report.fixes.iter().partition(|fix| fix.act == Act::Fetch);
    let one = |fix: &'a ReportFix| {
        // nothing hangs yet where a square is fetched to, and what cannot be read is covered
        let cells = if matches!(fix.act, Act::Fetch | Act::Look) {
            &[][..]
        } else {
            &fix.cells[..fix.cells.len().min(SPOTS)]
        };
        Listed { act: fix.act, say: fix.say.clone(), spots: cells.iter().map(String::as_str).collect() }
    };
    let mut steps: Vec<Listed<'a>> = others.into_iter().map(one).collect();
    if fetches.len() <= FEW {
        steps.extend(fetches.into_iter().map(one));
        return steps;
    }
    let squares: Vec<String> = fetches.iter().filter_map(|fix| fix.square.clone()).collect();
    let say = if squares == sought(report) {
        words.say("fix-fetch-listed", &[("count", count(squares.len()))])
    } else {
        words.say("fix-fetch-many", &[("squares", squares.join(", ").into())])
    };
    steps.push(Listed { act: Act::Fetch, say, spots: Vec::new() });
    steps
}

/// The one sentence that says what the check comes to.
#[must_use]
pub fn headline(report: &Report, words: &Words) -> String {
    let cells = ("cells", count(report.summary.cells));
    if let Some(lead) = &report.lead {
        return lead.clone();
    }
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
    [Some(all), white(report, words), begun(report, words)]
        .into_iter()
        .flatten()
        .collect::<Vec<_>>()
        .join(" ")
}

/// Which squares are only begun; `None` where there are none.
fn begun(report: &Report, words: &Words) -> Option<String> {
    (!report.begun.is_empty()).then(|| sentences::begun(words, &report.begun))
}

/// Which squares nobody has drawn on yet; `None` where there are none.
#[must_use]
pub fn white(report: &Report, words: &Words) -> Option<String> {
    (!report.white.is_empty()).then(|| sentences::white(words, &report.white))
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
    let unfinished =
        [white(report, words), begun(report, words)].into_iter().flatten().filter(|_| !all_right);
    let odd = missing.into_iter().chain(untold).chain(list("report-twice", &report.twice)).chain(strangers);
    odd.chain(unfinished).chain(border(report, words)).collect()
}

/// How much of a border in reserve hangs; `None` where there is none.
#[must_use]
pub fn border(report: &Report, words: &Words) -> Option<String> {
    let border = report.border?;
    Some(words.say("report-border", &[("up", count(border.up)), ("squares", count(border.squares))]))
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
