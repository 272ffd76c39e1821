//! What pages are told: the wall as JSON, for helpers with everything that is to be done, for the room without.

use serde_json::{Value, json};

use crate::judge::State;
use crate::plan::cell::column_letters;
use crate::plan::settings::Choice;
use crate::plan::{Cell, Grid};
use crate::print::one::One;
use crate::report::json::ReportCell;
use crate::report::sentences::{about_cell, count};
use crate::report::steps::all_right;
use crate::words::Words;

use super::evening::{Evening, Standing};
use super::list::Step;
use super::said;
use super::together::{CLAIM_S, Together, Who};

/// The wall for helpers, as the phone `who` is told it.
pub(super) fn wall_json(evening: &Evening, standing: &Standing, who: Option<&Who>) -> Value {
    let words = &evening.words;
    let grid = &evening.printed.grid;
    let report = &standing.check.report;
    let now = (evening.clock.now)();
    let cells = report.cells.iter().zip(standing.known.times());
    let missing = evening.missing(standing);
    let groups = evening.levels.groups(&missing);
    let fallen = standing.known.fallen();
    let together = evening.together();
    let all = evening.steps(standing);
    let steps: Vec<Value> = all.iter().map(|one| step(one, &together, who, now)).collect();
    let (list, mine) = (evening.watch_shared().borrow().1, |own: &Who| who == Some(own));
    let out = together.pieces().map(|(place, piece)| {
        json!({ "place": place, "out": piece.out, "back": piece.back, "mine": mine(&piece.who) })
    });
    json!({
        "run": evening.began,
        "number": standing.number,
        "list": list,
        "check": standing.name,
        "at": standing.at,
        "now": now,
        "marked": standing.marked_size().map(|(width, height)| [width, height]),
        "rows_say": (0..grid.rows).map(|row| row_say(row, grid, words)).collect::<Vec<_>>(),
        "columns_say": (0..grid.columns).map(|column| column_say(column, grid, words)).collect::<Vec<_>>(),
        "letters": (0..grid.columns).map(column_letters).collect::<Vec<_>>(),
        "numbers": (0..grid.rows).map(|row| grid.row_number(row)).collect::<Vec<_>>(),
        "fallen": fallen,
        "prints": One::of(evening.join).into_iter().map(|one| print(one, words)).collect::<Vec<_>>(),
        "out": out.collect::<Vec<_>>(),
        "tag": evening.printed.tag,
        "columns": grid.columns,
        "rows": grid.rows,
        "began": !standing.known.is_empty(),
        "headline": headline(standing, steps.len(), words),
        "right": words.say("report-count-right", &[("count", count(report.summary.right)), ("cells", count(report.summary.cells))]),
        "forecast": report.forecast,
        "steps": steps,
        "advice": advice(standing, words),
        "unkept": standing.unkept.as_ref().map(|error| said::unkept(error, words)),
        "cells": cells.map(|(cell, at)| one_cell(cell, at, grid, words)).collect::<Vec<_>>(),
        "missing": groups.iter().map(|(level, pieces)| json!({ "level": level, "pieces": pieces })).collect::<Vec<_>>(),
        "missing_say": words.say("serve-missing-count", &[("count", count(report.missing.len()))]),
    })
}

/// What can be printed of a spot, and what that is called.
fn print(one: One, words: &Words) -> Value {
    json!({ "kind": one.word(), "say": words.say(&format!("serve-print-{}", one.word()), &[]) })
}

/// The wall for the room: which cells have a square, and nothing about whose or whether it is right.
pub(super) fn room_json(evening: &Evening, standing: &Standing) -> Value {
    let words = &evening.words;
    let report = &standing.check.report;
    let hangs: Vec<bool> = report
        .cells
        .iter()
        .map(|cell| matches!(cell.state, State::Right | State::Wrong | State::Turned | State::Unread))
        .collect();
    let hang = hangs.iter().filter(|hangs| **hangs).count();
    // spots where nothing has to hang are not shown as gaps
    let cells = report.cells.iter().enumerate();
    let reserve: Vec<usize> = cells
        .filter(|(_, cell)| matches!(cell.state, State::Reserve | State::Free))
        .map(|(place, _)| place)
        .collect();
    let all = hangs.len() - reserve.len();
    let to_come = all - hang;
    json!({
        "run": evening.began,
        "number": standing.number,
        "columns": evening.printed.grid.columns,
        "rows": evening.printed.grid.rows,
        "hangs": hangs.iter().map(|hangs| u8::from(*hangs)).collect::<Vec<_>>(),
        "reserve": reserve,
        "count": hang,
        "at": standing.at,
        "colours": evening.colours,
        "say_of": words.say("serve-room-of", &[("cells", count(all))]),
        "say_hang": words.say("serve-room-hang", &[("count", count(hang)), ("cells", count(all))]),
        "say_to_come": words.say("serve-room-to-come", &[("count", count(to_come))]),
        "complete": to_come == 0,
    })
}

/// The one sentence that says how it stands.
fn headline(standing: &Standing, steps: usize, words: &Words) -> String {
    let report = &standing.check.report;
    let (unknown, missing) = (report.summary.unknown(), report.missing.len());
    if standing.known.is_empty() {
        return words.say("serve-headline-start", &[]);
    }
    if let Some(lead) = &report.lead {
        return lead.clone();
    }
    match (steps, unknown, missing) {
        (1.., _, _) => words.say("serve-headline-fix", &[("count", count(steps))]),
        (0, 0, 0) => all_right(report, words),
        (0, 0, _) => words.say("serve-headline-to-come", &[("count", count(missing))]),
        (0, _, _) => words.say("serve-headline-unknown", &[("count", count(unknown))]),
    }
}

fn advice(standing: &Standing, words: &Words) -> Vec<String> {
    if standing.known.is_empty() {
        return vec![words.say("serve-start-advice", &[])];
    }
    standing.advice()
}

/// A step, and how it stands: `open`, `mine`, `theirs` where another phone is on it, `done`. `until` is when a claim ends.
fn step(step: &Step, together: &Together, who: Option<&Who>, now: u64) -> Value {
    let mark = together.step(step, now);
    let state = match mark {
        None => "open",
        Some(mark) if mark.done => "done",
        Some(mark) if who == Some(&mark.who) => "mine",
        Some(_) => "theirs",
    };
    json!({
        "key": step.key,
        "seen": step.seen,
        "do": step.act,
        "say": step.say,
        "cells": step.cells,
        "shows": step.shows,
        "square": step.square,
        "degrees": step.degrees,
        "after": step.after,
        "state": state,
        "until": mark.filter(|mark| !mark.done).map(|mark| mark.at + CLAIM_S),
    })
}

/// Where a row is, counted from the nearer edge.
fn row_say(row: usize, grid: &Grid, words: &Words) -> String {
    let (from, at) = nearer(row, grid.rows);
    let edge = if from { "top" } else { "bottom" };
    words.say("serve-where-row", &[("edge", edge.into()), ("at", count(at)), ("nth", nth(at, words).into())])
}

/// Where a column is, counted from the nearer edge.
fn column_say(column: usize, grid: &Grid, words: &Words) -> String {
    let (from, at) = nearer(column, grid.columns);
    let edge = if from { "left" } else { "right" };
    words.say(
        "serve-where-column",
        &[("edge", edge.into()), ("at", count(at)), ("nth", nth(at, words).into())],
    )
}

/// Whether a row or column is counted from the first one, and which it is, from 1.
fn nearer(at: usize, all: usize) -> (bool, usize) {
    let behind = all.saturating_sub(at);
    if at < behind { (true, at + 1) } else { (false, behind) }
}

fn nth(at: usize, words: &Words) -> String {
    words.say("serve-nth", &[("at", count(at))])
}

fn one_cell(cell: &ReportCell, at: u64, grid: &Grid, words: &Words) -> Value {
    let found = cell.found.as_ref().and_then(|label| grid.cell(label)).map(|home: Cell| grid.index(home));
    json!({
        "label": cell.label,
        "state": cell.state.name(),
        "found": found,
        "turn": cell.turn_degrees,
        "say": about_cell(cell, words),
        "at": at,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn spots_are_counted_from_the_nearer_edge() {
        let grid = Grid::usual(60, 5);
        let words = Words::english();
        let rows: Vec<String> = (0..5).map(|row| row_say(row, &grid, &words)).collect();
        assert_eq!(
            rows,
            [
                "top row",
                "second row from the top",
                "third row from the top",
                "second row from the bottom",
                "bottom row"
            ]
        );
        let column = |at| column_say(at, &grid, &words);
        assert_eq!(column(0), "far left");
        assert_eq!(column(2), "third from the left");
        assert_eq!(column(20), "21st from the left");
        assert_eq!(column(29), "30th from the left");
        assert_eq!(column(30), "30th from the right");
        assert_eq!(column(59), "far right");
        let spanish = Words::of("es");
        assert!((0..60).all(|at| !column_say(at, &grid, &spanish).contains('[')));
    }
}
