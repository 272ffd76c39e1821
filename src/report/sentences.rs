//! One sentence for each fix and each piece of advice.

use crate::frame::float;
use crate::judge::{Advice, Fix, State};
use crate::plan::cell::column_letters;
use crate::plan::{Cell, Grid, Turn};
use crate::words::{FluentValue, Words};

use super::json::ReportCell;

/// So many labels are named before the rest is counted.
const NAMED: usize = 12;
/// Least share of a block of cells that squares fill to be told as its columns or rows.
const MOSTLY: f64 = 0.6;

/// Says things about one wall.
#[derive(Copy, Clone, Debug)]
pub struct Sentences<'a> {
    /// The language.
    pub words: &'a Words,
    /// The wall, for its labels.
    pub grid: &'a Grid,
}

impl Sentences<'_> {
    /// What to do, for a helper on a step stool.
    #[must_use]
    pub fn fix(&self, fix: &Fix) -> String {
        let label = |cell: &Cell| FluentValue::from(self.grid.label(*cell));
        match fix {
            Fix::Turn { cell, by } => {
                self.words.say("fix-turn", &[("cell", label(cell)), ("by", turn_name(*by).into())])
            }
            Fix::Swap { cells: [a, b], upright } => {
                let id = match upright.len() {
                    0 => "fix-swap",
                    1 => "fix-swap-upright-one",
                    _ => "fix-swap-upright-both",
                };
                let cell = upright.first().map_or_else(|| "".into(), label);
                self.words.say(id, &[("a", label(a)), ("b", label(b)), ("cell", cell)])
            }
            Fix::Move { from, to, upright } => {
                let id = if *upright { "fix-move-upright" } else { "fix-move" };
                self.words.say(id, &[("from", label(from)), ("to", label(to))])
            }
            Fix::Remove { cell, square: Some(square) } => {
                let id = if self.grid.is_kept_free(*square) { "fix-remove-free" } else { "fix-remove-copy" };
                self.words.say(id, &[("cell", label(cell)), ("square", label(square))])
            }
            Fix::Remove { cell, square: None } => {
                self.words.say("fix-remove-stranger", &[("cell", label(cell))])
            }
            Fix::Look { cells, moved_between, unaccounted } => self.look(cells, *moved_between, unaccounted),
            Fix::LookBeyond { cell, waits_at } => {
                self.words.say("fix-look-beyond", &[("cell", label(cell)), ("from", label(waits_at))])
            }
            Fix::Fetch { square, perhaps_on_wall } => {
                let id = if *perhaps_on_wall { "fix-fetch-perhaps" } else { "fix-fetch" };
                self.words.say(id, &[("square", label(square))])
            }
        }
    }

    /// What may hang there is said where it helps: where no more squares are sought than a person keeps in
    /// mind.
    fn look(&self, cells: &[Cell], moved_between: bool, unaccounted: &[Cell]) -> String {
        let id = match unaccounted.len() {
            _ if moved_between => "fix-look-moved",
            1..=4 => "fix-look-guess",
            _ => "fix-look",
        };
        let named =
            [("count", count(cells.len())), ("cells", self.list(cells)), ("squares", self.list(unaccounted))];
        self.words.say(id, &named)
    }

    /// What to tell the person with the phone.
    #[must_use]
    pub fn advice(&self, advice: &Advice) -> String {
        let words = self.words;
        let cells = |id: &str, cells: &[Cell]| {
            words.say(id, &[("count", count(cells.len())), ("cells", self.list(cells))])
        };
        match advice {
            Advice::StepBack { side, part, .. } => {
                words.say("advice-step-back", &[("side", side.name().into()), ("part", part.name().into())])
            }
            Advice::Apart { squares, is_part: true } => {
                words.say("advice-apart", &[("squares", self.strips(squares))])
            }
            Advice::Apart { squares, is_part: false } => words
                .say("advice-apart-few", &[("count", count(squares.len())), ("squares", self.list(squares))]),
            Advice::OtherPart { cells } => words.say("advice-other-part", &[("squares", self.strips(cells))]),
            Advice::StepAside => words.say("advice-step-aside", &[]),
            Advice::Hidden { cells: hidden } => cells("advice-hidden", hidden),
            Advice::Contradiction { cells: contradicted } => cells("advice-contradiction", contradicted),
            Advice::GoCloser { photo, px_per_module, unread } => words.say(
                "advice-go-closer",
                &[
                    ("photo", count(photo + 1)),
                    ("px", format!("{px_per_module:.1}").into()),
                    ("unread", count(*unread)),
                ],
            ),
            Advice::TooSmall { unread, cells } => {
                words.say("advice-too-small", &[("unread", count(*unread)), ("cells", count(*cells))])
            }
            Advice::Uncover { unread } => words.say("advice-uncover", &[("unread", count(*unread))]),
            Advice::Mirrored { photo } => words.say("advice-mirrored", &[("photo", count(photo + 1))]),
            Advice::Shifted { right, down } => self.shifted(*right, *down),
            Advice::AllTurned { turn } => {
                words.say("advice-all-turned", &[("how", turn_points(words, turn.degrees()).into())])
            }
            Advice::OnSpare { cells: spare } => cells("advice-on-spare", spare),
            Advice::AllWrong => words.say("advice-all-wrong", &[]),
            Advice::MayHangUnseen { missing, unknown } => {
                let numbers = [("missing", count(*missing)), ("unknown", count(*unknown))];
                words.say("advice-may-hang-unseen", &numbers)
            }
        }
    }

    fn shifted(&self, right: i64, down: i64) -> String {
        let step = |by: i64, more: &str, less: &str| {
            let id = if by > 0 { more } else { less };
            if by == 0 { String::new() } else { self.words.say(id, &[("cells", by.abs().into())]) }
        };
        let across = step(right, "advice-shift-right", "advice-shift-left");
        let mut along = step(down, "advice-shift-down", "advice-shift-up");
        if !across.is_empty() && !along.is_empty() {
            along.insert_str(0, ", ");
        }
        self.words.say("advice-shifted", &[("across", across.into()), ("down", along.into())])
    }

    /// Which squares nobody has drawn on yet, by the cells where they hang.
    #[must_use]
    pub fn white(&self, cells: &[Cell]) -> String {
        let labels: Vec<String> = cells.iter().map(|cell| self.grid.label(*cell)).collect();
        white(self.words, &labels)
    }

    /// Squares that fill columns or rows, as these; others as their labels.
    fn strips(&self, cells: &[Cell]) -> FluentValue<'static> {
        let bounds = |of: fn(&Cell) -> usize| {
            let first = cells.iter().map(of).min().unwrap_or(0);
            (first, cells.iter().map(of).max().unwrap_or(0))
        };
        let ((left, right), (upper, lower)) = (bounds(|cell| cell.column), bounds(|cell| cell.row));
        let (across, down) = (right - left + 1, lower - upper + 1);
        if float(cells.len()) < MOSTLY * float(across * down) {
            return self.list(cells);
        }
        let ends = |ids: [&str; 2], first: String, last: String| {
            let id = if first == last { ids[0] } else { ids[1] };
            self.words.say(id, &[("first", first.into()), ("last", last.into())]).into()
        };
        if down * 2 > self.grid.rows {
            let ids = ["advice-apart-columns-one", "advice-apart-columns"];
            ends(ids, column_letters(left), column_letters(right))
        } else if across * 2 > self.grid.columns {
            let (one, other) = (self.grid.row_number(upper), self.grid.row_number(lower));
            let ids = ["advice-apart-rows-one", "advice-apart-rows"];
            ends(ids, one.min(other).to_string(), one.max(other).to_string())
        } else {
            self.list(cells)
        }
    }

    /// Labels in a row; a long list is cut and the rest counted.
    fn list(&self, cells: &[Cell]) -> FluentValue<'static> {
        let labels: Vec<String> = cells.iter().map(|cell| self.grid.label(*cell)).collect();
        some_of(self.words, &labels).into()
    }
}

/// Labels in a row; a long list is cut and the rest counted.
fn some_of(words: &Words, labels: &[String]) -> String {
    if labels.len() <= NAMED {
        return labels.join(", ");
    }
    let named = labels[..NAMED].join(", ");
    words.say("report-more", &[("squares", named.into()), ("count", count(labels.len() - NAMED))])
}

/// Which squares nobody has drawn on yet.
pub(super) fn white(words: &Words, labels: &[String]) -> String {
    let told = [("count", count(labels.len())), ("squares", some_of(words, labels).into())];
    words.say("report-white", &told)
}

/// Which squares are only begun.
pub(super) fn begun(words: &Words, labels: &[String]) -> String {
    let told = [("count", count(labels.len())), ("squares", some_of(words, labels).into())];
    words.say("report-begun", &told)
}

/// A cell in a sentence.
#[must_use]
pub fn about_cell(cell: &ReportCell, words: &Words) -> String {
    let how = turn_points(words, cell.turn_degrees);
    let id = match (cell.state, &cell.found) {
        (State::Wrong, None) => "cell-stranger".to_owned(),
        (State::Wrong, Some(found)) if *found == cell.label => "cell-not-free".to_owned(),
        (State::Wrong, Some(_)) if cell.turn_degrees != 0 => "cell-wrong-turned".to_owned(),
        (state, _) => format!("cell-{}", state.name()),
    };
    let square = cell.found.clone().unwrap_or_default();
    words.say(&id, &[("cell", cell.label.clone().into()), ("square", square.into()), ("how", how.into())])
}

/// A count as an argument of a sentence.
#[must_use]
pub fn count(number: usize) -> FluentValue<'static> {
    FluentValue::from(number)
}

/// How a square that is turned so far clockwise looks.
#[must_use]
pub fn turn_points(words: &Words, degrees: u32) -> String {
    match degrees {
        90 => words.say("report-turned-top-right", &[]),
        180 => words.say("report-turned-top-down", &[]),
        270 => words.say("report-turned-top-left", &[]),
        _ => String::new(),
    }
}

fn turn_name(turn: Turn) -> &'static str {
    match turn {
        Turn::None => "none",
        Turn::Quarter => "quarter",
        Turn::Half => "half",
        Turn::ThreeQuarters => "three-quarters",
    }
}
