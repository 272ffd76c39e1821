//! What is to be done at the wall, as the page shows it: the report's fixes, true to the moment when each is done.
//!
//! ```text
//!   Swap F6 and I5, Swap F6 and C5   ─▶   one step: F6 ─▶ I5 ─▶ C5 ─▶ F6
//!   Swap F6 and I5, …, Swap F6 and B2 ─▶  the later step shows what will hang in F6 by then, and says that the earlier comes first
//! ```

use crate::judge::Act;
use crate::plan::Grid;
use crate::report::Report;
use crate::report::json::ReportFix;
use crate::report::sentences::count;
use crate::words::Words;

use super::known::Known;

/// The most squares of a cycle that is one step: more pictures in a row are too small to tell apart on a phone.
const MOST_ROUND: usize = 5;

/// The most squares to be found that are a step each: where a whole row came down, that is one thing to do.
const MOST_FOUND: usize = 3;
/// The most of them that are named.
const MOST_NAMED: usize = 12;

/// What kind of step, besides the fixes of a report.
const ROUND: &str = "round";
const FIND: &str = "find";

/// One step.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Step {
    /// Its name for as long as it is the same thing at the same cells.
    pub key: String,
    /// What kind of thing: the fix's name in report.json, `round` or `find`.
    pub act: &'static str,
    /// One sentence.
    pub say: String,
    /// Where, by place in the order of cells; from each to the next where something moves.
    pub cells: Vec<usize>,
    /// For each of those the place whose picture of now shows what hangs there once the steps before are done.
    pub shows: Vec<usize>,
    /// The square it is about, by the place where it belongs, if it is one that is known.
    pub square: Option<usize>,
    /// How far clockwise to turn it, if it is a turn.
    pub degrees: Option<u32>,
    /// Which step has to be done before, from 0.
    pub after: Option<usize>,
    /// When the newest photo of one of its cells was taken, in seconds since 1970.
    pub seen: u64,
}

/// The steps of a wall.
#[must_use]
pub fn steps(report: &Report, known: &Known, grid: &Grid, words: &Words) -> Vec<Step> {
    let times: Vec<u64> = known.times().collect();
    let mut hangs: Vec<usize> = (0..grid.count()).collect();
    let mut steps: Vec<Step> = Vec::new();
    let fixes: Vec<&ReportFix> = report.fixes.iter().filter(|fix| fix.act != Act::Fetch).collect();
    let mut left = fixes.as_slice();
    let mut alone = 0; // swaps of a cycle that is too long for one step
    while let Some((first, _)) = left.split_first() {
        let swaps = if alone > 0 { alone } else { round(left) };
        let long = swaps >= MOST_ROUND || alone > 0;
        let length = if long { 1 } else { swaps };
        alone = if long { swaps - 1 } else { 0 };
        let own = &left[..length];
        left = &left[length..];
        let mut step = if length > 1 { moved_round(own, report, grid, words) } else { single(first, grid) };
        step.shows = step.cells.iter().filter_map(|place| hangs.get(*place).copied()).collect();
        step.after =
            steps.iter().rposition(|before| before.cells.iter().any(|cell| step.cells.contains(cell)));
        step.seen = step.cells.iter().filter_map(|place| times.get(*place)).max().copied().unwrap_or(0);
        own.iter().for_each(|fix| carry_out(fix, &mut hangs, grid));
        steps.push(step);
    }
    let fallen = known.fallen();
    let at_once = if fallen.len() > MOST_FOUND { fallen.len() } else { 1 };
    steps.extend(fallen.chunks(at_once).map(|squares| find(squares, &times, grid, words)));
    steps
}

/// How many fixes from the first on belong to one cycle, whose swaps all begin in the same cell; 1 for any other fix.
fn round(fixes: &[&ReportFix]) -> usize {
    let pivot = |fix: &&&ReportFix| fix.act == Act::Swap && fix.cells.first() == fixes[0].cells.first();
    fixes.iter().take_while(pivot).count().max(1)
}

/// The squares of a cycle, all at once: each swap takes what hangs in the first cell on to its second.
fn moved_round(swaps: &[&ReportFix], report: &Report, grid: &Grid, words: &Words) -> Step {
    let pivot = swaps.iter().take(1).filter_map(|swap| swap.cells.first());
    let labels: Vec<&String> = pivot.chain(swaps.iter().filter_map(|swap| swap.cells.get(1))).collect();
    let turned = report.cells.iter().any(|cell| labels.contains(&&cell.label) && cell.turn_degrees != 0);
    let mut way: Vec<&str> = labels.iter().map(|label| label.as_str()).collect();
    way.extend(way.first().copied());
    let way = way.join(" → ");
    let id = if turned { "serve-round-upright" } else { "serve-round" };
    let say = words.say(id, &[("count", count(labels.len())), ("way", way.into())]);
    blank(ROUND, labels.into_iter(), say, grid)
}

fn single(fix: &ReportFix, grid: &Grid) -> Step {
    let square = fix.square.as_ref().and_then(|label| grid.cell(label)).map(|cell| grid.index(cell));
    Step { square, degrees: fix.degrees, ..blank(fix.act.name(), fix.cells.iter(), fix.say.clone(), grid) }
}

/// Squares that were on the wall before and are there no more.
fn find(squares: &[usize], times: &[u64], grid: &Grid, words: &Words) -> Step {
    let labels: Vec<String> = grid
        .cells()
        .filter(|cell| squares.contains(&grid.index(*cell)))
        .map(|cell| grid.label(cell))
        .collect();
    let named = labels.iter().take(MOST_NAMED).map(String::as_str).collect::<Vec<_>>().join(", ");
    let more = if labels.len() > MOST_NAMED { ", …" } else { "" };
    let said = [("count", count(labels.len())), ("squares", format!("{named}{more}").into())];
    let step = blank(FIND, labels.iter(), words.say("serve-fallen", &said), grid);
    let seen = squares.iter().filter_map(|square| times.get(*square)).max().copied().unwrap_or(0);
    Step { square: squares.first().copied(), shows: step.cells.clone(), seen, ..step }
}

fn blank<'a>(act: &'static str, labels: impl Iterator<Item = &'a String>, say: String, grid: &Grid) -> Step {
    let labels: Vec<&str> = labels.map(String::as_str).collect();
    let cells = labels.iter().filter_map(|label| grid.cell(label)).map(|cell| grid.index(cell));
    Step {
        key: format!("{act}:{}", labels.join(",")),
        act,
        say,
        cells: cells.collect(),
        shows: Vec::new(),
        square: None,
        degrees: None,
        after: None,
        seen: 0,
    }
}

/// What hangs where once a fix is done. What comes down or is turned leaves its picture where it is.
fn carry_out(fix: &ReportFix, hangs: &mut [usize], grid: &Grid) {
    let places: Vec<usize> =
        fix.cells.iter().filter_map(|label| grid.cell(label)).map(|cell| grid.index(cell)).collect();
    if let (Act::Swap | Act::Move, [from, to]) = (fix.act, places.as_slice()) {
        hangs.swap(*from, *to);
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::check::{Check, Noticed};
    use crate::plan::{Cell, Settings, Tag, Turn};
    use crate::read::Sight;
    use crate::report::Occasion;
    use crate::serve::known::{Origin, made};

    fn steps_of(photos: &[&[Sight]]) -> Vec<Step> {
        let columns = photos[0].len();
        let grid = Grid::usual(columns, 1);
        let printed = Settings::new("Made wall".to_owned(), Tag::from_number(5), grid).printed().unwrap();
        let mut known = Known::nothing(&grid);
        for (minute, sights) in (1..).zip(photos) {
            known.add(vec![made::photo(sights)], &[], Origin::default(), minute * 60);
        }
        let words = Words::english();
        let check = Check::new(known.reading(), &Noticed::default(), &printed, &Occasion::default(), &words);
        steps(&check.report, &known, &printed.grid, &words)
    }

    fn square(column: usize) -> Sight {
        Sight::Square { home: Cell { row: 0, column }, turn: Turn::None }
    }

    #[test]
    fn three_squares_that_move_round_are_one_step() {
        let steps = steps_of(&[&[square(1), square(2), square(0), square(3)]]);
        assert_eq!(steps.len(), 1, "{steps:?}");
        let step = &steps[0];
        assert_eq!((step.act, step.cells.len(), &step.shows), (ROUND, 3, &step.cells));
        // each belongs in the next cell of the way
        let homes = [1, 2, 0, 3];
        for (at, to) in step.cells.iter().zip(step.cells.iter().cycle().skip(1)) {
            assert_eq!(homes[*at], *to, "{}", step.say);
        }
    }

    #[test]
    fn a_step_that_follows_another_shows_what_hangs_there_by_then() {
        let homes = [1, 2, 3, 4, 5, 0];
        let steps = steps_of(&[&homes.map(square)]);
        assert_eq!(steps.len(), 5, "too many for one step: {steps:?}");
        let mut hangs: Vec<usize> = (0..6).collect();
        for (number, step) in steps.iter().enumerate() {
            assert_eq!(step.after, number.checked_sub(1));
            let [from, to] = step.cells[..] else { panic!("{step:?}") };
            assert_eq!(step.shows, [hangs[from], hangs[to]]);
            assert_eq!(homes[hangs[from]], to, "the first one comes home: {step:?}");
            hangs.swap(from, to);
        }
        assert!((0..6).all(|cell| homes[hangs[cell]] == cell));
    }

    #[test]
    fn steps_that_have_nothing_to_do_with_each_other_need_not_wait() {
        let steps = steps_of(&[&[square(1), square(0), square(3), square(2)]]);
        assert_eq!(steps.iter().map(|step| step.after).collect::<Vec<_>>(), [None, None]);
        assert_eq!((steps[0].key.as_str(), steps[0].seen), ("swap:A1,B1", 60));
    }

    #[test]
    fn a_square_that_fell_off_is_something_to_find() {
        let up = [square(0), square(1), square(2)];
        let steps = steps_of(&[&up, &[square(0), Sight::Empty, Sight::Unread]]);
        let finds: Vec<_> = steps.iter().filter(|step| step.act == FIND).map(|step| &step.key).collect();
        assert_eq!(finds, ["find:B1"]);
        let row: Vec<Sight> = (0..6).map(square).collect();
        let steps = steps_of(&[&row, &vec![Sight::Empty; 6]]);
        assert_eq!((steps.len(), steps[0].cells.len()), (1, 6), "a whole row that came down: {steps:?}");
    }
}
