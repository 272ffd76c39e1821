//! When how many helpers are needed: as few as keep waits short.

use super::simulated::{Scene, at, sorted};
use super::stations::{Happened, Staff, Wait};
use crate::frame::{ceil_index, float, floor_index};

/// Longest wait that four in five are to have, in minutes. Common practice, no source.
pub const COMFORTABLE_MINUTES: f64 = 5.0;
/// Part of those who come at a time whose wait is to be comfortable.
const MOST_OF_THEM: f64 = 0.8;
/// Most helpers at a station that are proposed.
const MOST_HELPERS: usize = 6;
/// Length of a shift, in minutes; longer in a long evening.
const SHIFT_MINUTES: f64 = 10.0;
/// Most shifts of an evening.
const MOST_SHIFTS: f64 = 18.0;
/// Least by which a helper more must shorten the wait, in minutes: where seats are full, a helper more changes nothing.
const LEAST_GAIN_MINUTES: f64 = 2.0;
/// Number of evenings by which shifts are compared.
const RUNS: usize = 80;

/// Helpers at both stations, over time.
#[derive(Clone, Debug, PartialEq)]
pub struct Shifts {
    /// Who hand out pieces.
    pub giving_out: Staff,
    /// Who hang squares.
    pub hanging: Staff,
}

/// The helpers that a scene needs; those that it has count for nothing.
#[must_use]
pub fn needed(scene: &Scene) -> Shifts {
    let ample = Staff::always(MOST_HELPERS);
    // nobody leaves: a line that people run away from looks short
    let patience_minutes = f64::INFINITY;
    let mut scene = Scene { giving_out: ample.clone(), hanging: ample, patience_minutes, ..scene.clone() };
    scene.giving_out = staff(
        &scene,
        |scene, staff| scene.giving_out = staff,
        |happened| (&happened.given_out, &happened.left),
    );
    scene.hanging =
        staff(&scene, |scene, staff| scene.hanging = staff, |happened| (&happened.taken_to_hang, &[]));
    Shifts { giving_out: scene.giving_out, hanging: scene.hanging }
}

/// The helpers at one station: raised, from the first time on at which the wait is too long until those who wait then are served;
/// then lowered again wherever that costs nothing.
fn staff(
    scene: &Scene,
    set: impl Fn(&mut Scene, Staff),
    waits: impl Fn(&Happened) -> (&[Wait], &[Wait]),
) -> Staff {
    let length = SHIFT_MINUTES.max((scene.minutes / MOST_SHIFTS / 5.0).ceil() * 5.0);
    let count = ceil_index(scene.minutes / length).max(1);
    let shift_of = |minute: f64| floor_index(minute / length).min(count - 1);
    let mut scene = scene.clone();
    // chance knows nothing of helpers
    let traces = scene.traces(RUNS);
    let mut with = |helpers: &[usize]| {
        set(&mut scene, of_shifts(helpers, length));
        let mut by_shift = vec![Vec::new(); count];
        for (_, happened) in scene.played(&traces) {
            let (served, left) = waits(&happened);
            for wait in served.iter().chain(left) {
                by_shift[shift_of(wait.since)].push(*wait);
            }
        }
        by_shift.iter().map(|waits| Line::of(waits)).collect::<Vec<Line>>()
    };
    let mut helpers = vec![1; count];
    let mut settled = vec![false; count];
    let mut now = with(&helpers);
    while let Some(shift) = (0..count).find(|shift| !now[*shift].is_comfortable() && !settled[*shift]) {
        let mut more = helpers.clone();
        for busy in &mut more[shift..=shift_of(now[shift].until)] {
            *busy = (*busy + 1).min(MOST_HELPERS);
        }
        let then = with(&more);
        if then[shift].minutes > now[shift].minutes - LEAST_GAIN_MINUTES {
            settled[shift] = true;
        } else {
            (helpers, now) = (more, then);
        }
    }
    for shift in (0..count).rev() {
        while helpers[shift] > 1 {
            let mut fewer = helpers.clone();
            fewer[shift] -= 1;
            let then = with(&fewer);
            let costs = |(then, now): (&Line, &Line)| !then.is_comfortable() && then.minutes > now.minutes;
            if then.iter().zip(&now).any(costs) {
                break;
            }
            (helpers, now) = (fewer, then);
        }
    }
    of_shifts(&without_gaps(&helpers), length)
}

/// The line of those who came in one shift.
struct Line {
    /// How long most of them wait.
    minutes: f64,
    /// By when most of them are served.
    until: f64,
}

impl Line {
    fn of(waits: &[Wait]) -> Self {
        Self {
            minutes: at(&sorted(waits.iter().map(Wait::minutes).collect()), MOST_OF_THEM),
            until: at(&sorted(waits.iter().map(|wait| wait.until).collect()), MOST_OF_THEM),
        }
    }

    fn is_comfortable(&self) -> bool {
        self.minutes <= COMFORTABLE_MINUTES
    }
}

/// Nobody is sent away to be called back: a shift between two larger ones is as large as the smaller of them.
fn without_gaps(helpers: &[usize]) -> Vec<usize> {
    let most = |part: &[usize]| part.iter().copied().max().unwrap_or(0);
    (0..helpers.len()).map(|at| most(&helpers[..=at]).min(most(&helpers[at..]))).collect()
}

fn of_shifts(helpers: &[usize], shift: f64) -> Staff {
    let mut changes: Vec<(f64, usize)> = Vec::new();
    for (at, count) in helpers.iter().enumerate() {
        if changes.last().is_none_or(|(_, before)| before != count) {
            changes.push((float(at) * shift, *count));
        }
    }
    Staff::changing(&changes)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_gap_between_shifts_is_filled() {
        assert_eq!(without_gaps(&[1, 3, 1, 2, 1, 2, 1]), [1, 3, 2, 2, 2, 2, 1]);
        assert_eq!(without_gaps(&[1]), [1]);
        assert_eq!(of_shifts(&[1, 2, 2, 1], 10.0), Staff::changing(&[(0.0, 1), (10.0, 2), (30.0, 1)]));
    }
}
