//! Retaping: what of a measured wall is worth taping anew, in plain sentences.

use super::measure::{Between, Measured, Run};
use crate::plan::cell::column_letters;
use crate::plan::lengths::one;
use crate::plan::settings::Units;
use crate::plan::{Cell, Grid};
use crate::words::{FluentValue, Words};

/// Minimum lean, gap or overlap, in mm, that is seen from across the room; common practice, no source.
pub const SEEN_MM: f64 = 10.0;

/// Sentences about what to tape anew, the worst row or column first; empty where all hangs straight enough.
#[must_use]
pub fn retape(measured: &Measured, grid: &Grid, units: Units, words: &Words) -> Vec<String> {
    let said = |id: &str, named: &[(&str, String)]| {
        let named: Vec<(&str, FluentValue<'_>)> =
            named.iter().map(|(name, value)| (*name, value.as_str().into())).collect();
        words.say(id, &named)
    };
    let mut runs: Vec<(bool, &Run)> = (measured.rows.iter().map(|run| (true, run)))
        .chain(measured.columns.iter().map(|run| (false, run)))
        .filter(|(_, run)| run.lean.value.abs() >= SEEN_MM && run.lean.is_sure())
        .collect();
    runs.sort_by(|a, b| b.1.lean.value.abs().total_cmp(&a.1.lean.value.abs()));
    let leans = runs.into_iter().map(|(is_row, run)| {
        let length = one(run.lean.value.abs(), units, words);
        let (id, line) = match (is_row, run.lean.value > 0.0) {
            (true, true) => ("retape-row-sinks-right", grid.row_number(run.index).to_string()),
            (true, false) => ("retape-row-sinks-left", grid.row_number(run.index).to_string()),
            (false, true) => ("retape-column-leans-right", column_letters(run.index)),
            (false, false) => ("retape-column-leans-left", column_letters(run.index)),
        };
        said(id, &[("line", line), ("length", length)])
    });
    let between = |id: &'static str, between: &Option<Between>| {
        let found = between.filter(|between| between.mm.value >= SEEN_MM && between.mm.is_sure())?;
        let [one_label, other] = found.cells.map(|cell: Cell| grid.label(cell));
        let length = one(found.mm.value, units, words);
        Some(said(id, &[("one", one_label), ("other", other), ("length", length)]))
    };
    let spaces =
        [between("retape-gap", &measured.widest_gap), between("retape-overlap", &measured.largest_overlap)];
    leans.chain(spaces.into_iter().flatten()).collect()
}

#[cfg(test)]
mod tests {
    use super::super::measure::Quantity;
    use super::*;

    #[test]
    fn what_is_seen_is_said_and_nothing_else() {
        let grid = Grid::usual(10, 8);
        let sure = |value: f64| Quantity { value, within: 1.5 };
        let run = |index, lean| Run { index, squares: 10, drift: sure(0.0), lean: sure(lean) };
        let cell = |label: &str| grid.cell(label).unwrap();
        let measured = Measured {
            squares: 80,
            pitch: sure(127.0),
            scale_factor: Quantity { value: 5.0, within: 0.02 },
            width: sure(1270.0),
            height: sure(1016.0),
            rows: vec![run(1, 3.0), run(2, 14.0)],
            columns: vec![run(3, -21.0)],
            widest_gap: Some(Between { cells: [cell("B2"), cell("C2")], mm: sure(11.6) }),
            largest_overlap: Some(Between { cells: [cell("B3"), cell("B2")], mm: sure(6.0) }),
        };
        let said = retape(&measured, &grid, Units::Mm, &Words::english());
        assert_eq!(
            said,
            [
                "Column D leans left 21 mm from top to bottom.",
                "Row 6 slopes down 14 mm to the right.",
                "There’s a gap of 12 mm between B2 and C2."
            ]
        );
    }
}
