//! What pages are told: the wall as JSON, for helpers with everything that is to be done, for the room without.

use axum::body::Body;
use axum::http::{HeaderValue, StatusCode};
use axum::response::Response;
use serde_json::{Value, json};

use crate::judge::{Act, State};
use crate::plan::{Cell, Grid};
use crate::report::json::{ReportCell, ReportFix};
use crate::report::sentences::{about_cell, count};
use crate::words::Words;

use super::evening::{Evening, Standing};
use super::said;

/// An answer in JSON.
pub(super) fn json(status: StatusCode, value: &Value) -> Response {
    bytes(status, "application/json", value.to_string().into_bytes())
}

/// An answer of bytes of a kind.
pub(super) fn bytes(status: StatusCode, kind: &'static str, bytes: impl Into<Body>) -> Response {
    let mut response = Response::new(bytes.into());
    *response.status_mut() = status;
    response.headers_mut().insert("content-type", HeaderValue::from_static(kind));
    response
}

/// The wall for helpers.
pub(super) fn wall_json(evening: &Evening, standing: &Standing) -> Value {
    let words = &evening.words;
    let grid = &evening.printed.grid;
    let report = &standing.check.report;
    let times: Vec<u64> = standing.known.times().collect();
    let place = |label: &String| grid.cell(label).map(|cell| grid.index(cell));
    let cells = report.cells.iter().zip(&times);
    let missing: Vec<usize> = report.missing.iter().filter_map(place).collect();
    let groups = evening.levels.groups(&missing);
    let fixes = report.fixes.iter().filter(|fix| fix.act != Act::Fetch);
    let steps: Vec<Value> = fixes.map(|fix| step(fix, grid, &times)).collect();
    json!({
        "run": evening.began,
        "number": standing.number,
        "check": standing.name,
        "at": standing.at,
        "tag": evening.printed.tag,
        "columns": grid.columns,
        "rows": grid.rows,
        "began": !standing.known.is_empty(),
        "headline": headline(standing, steps.len(), words),
        "right": words.say("report-count-right", &[("count", count(report.summary.right)), ("cells", count(report.summary.cells))]),
        "steps": steps,
        "advice": advice(standing, words),
        "unkept": standing.unkept.as_ref().map(|error| said::unkept(error, words)),
        "cells": cells.map(|(cell, at)| one_cell(cell, *at, grid, words)).collect::<Vec<_>>(),
        "missing": groups.iter().map(|(level, pieces)| json!({ "level": level, "pieces": pieces })).collect::<Vec<_>>(),
        "missing_say": words.say("serve-missing-count", &[("count", count(missing.len()))]),
    })
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
    let to_come = hangs.len() - hang;
    json!({
        "run": evening.began,
        "number": standing.number,
        "columns": evening.printed.grid.columns,
        "rows": evening.printed.grid.rows,
        "hangs": hangs.iter().map(|hangs| u8::from(*hangs)).collect::<Vec<_>>(),
        "count": hang,
        "at": standing.at,
        "colours": evening.colours,
        "say_of": words.say("serve-room-of", &[("cells", count(hangs.len()))]),
        "say_hang": words.say("serve-room-hang", &[("count", count(hang)), ("cells", count(hangs.len()))]),
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
    match (steps, unknown, missing) {
        (1.., _, _) => words.say("serve-headline-fix", &[("count", count(steps))]),
        (0, 0, 0) => words.say("report-all-right", &[("cells", count(report.summary.cells))]),
        (0, 0, _) => words.say("serve-headline-to-come", &[("count", count(missing))]),
        (0, _, _) => words.say("serve-headline-unknown", &[("count", count(unknown))]),
    }
}

fn advice(standing: &Standing, words: &Words) -> Vec<String> {
    if standing.known.is_empty() {
        return vec![words.say("serve-start-advice", &[])];
    }
    standing.check.report.advice.clone()
}

/// A fix. Its key changes when one of its cells has been seen again: then a tick set before no longer holds.
fn step(fix: &ReportFix, grid: &Grid, times: &[u64]) -> Value {
    let places: Vec<usize> =
        fix.cells.iter().filter_map(|label| grid.cell(label)).map(|cell| grid.index(cell)).collect();
    let seen = places.iter().filter_map(|place| times.get(*place)).max().copied().unwrap_or(0);
    json!({
        "key": format!("{}:{}:{seen}", fix.act.name(), fix.cells.join(",")),
        "do": fix.act.name(),
        "say": fix.say,
        "cells": places,
        "square": fix.square.as_ref().and_then(|label| grid.cell(label)).map(|cell| grid.index(cell)),
        "degrees": fix.degrees,
    })
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
