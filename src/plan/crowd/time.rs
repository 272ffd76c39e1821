//! How many pieces are finished in the time there is.
//!
//! A seat takes one piece after another: drawing, and the minutes between two pieces ([`HAND_OUT_MINUTES`]). When the evening ends,
//! the piece in hand at a seat is half done on the average and does not count, so that a seat finishes `minutes / pace − ½` pieces
//! (the renewal function of the elementary theory, D. R. Cox, Renewal Theory, 1962, for pieces that differ little in time).

use super::{Work, sum};
use crate::frame::{float, floor_index};

/// Time between two pieces at a seat, in minutes: hang the one, choose the next, find pencils. Common
/// practice, no source.
pub const HAND_OUT_MINUTES: f64 = 3.0;
/// Share of a piece that is unfinished at each seat when the event ends.
const IN_HAND: f64 = 0.5;

/// What the time allows.
#[derive(Clone, Debug, PartialEq)]
pub struct Time {
    /// Seats that are in use: those there are, or fewer where fewer visitors come.
    pub seats_in_use: usize,
    /// Minutes from one piece to the next at a seat, on the average of this picture's pieces, with the handing out.
    pub pace_minutes: f64,
    /// How many pieces of such a mix can be finished, however many there are.
    pub can_finish: usize,
    /// Of this picture's pieces, how many of each level are finished, the easiest first.
    pub finished: [usize; 4],
    /// Minutes that all of this picture's pieces would take with these seats.
    pub minutes_for_all: f64,
    /// Seats that all of this picture's pieces would take in these minutes; `None` where no number of seats is enough.
    pub seats_for_all: Option<usize>,
}

/// Works it out for pieces by level, with the minutes that each level takes.
#[must_use]
pub fn time(work: &Work, minutes_a_piece: [f64; 4], seats: usize, visitors: usize, minutes: f64) -> Time {
    let pieces = work.count();
    let seats_in_use = seats.min(visitors);
    let drawing: f64 =
        work.pieces.iter().zip(minutes_a_piece).map(|(count, each)| float(*count) * each).sum();
    let pace_minutes = HAND_OUT_MINUTES + drawing / float(pieces.max(1));
    let a_seat = (minutes / pace_minutes - IN_HAND).max(0.0);
    let can_finish = floor_index(float(seats_in_use) * a_seat + ROUNDING);
    let minutes_for_all = pace_minutes * (float(pieces) / float(seats_in_use.max(1)) + IN_HAND);
    let seats_for_all = (a_seat > 0.0).then(|| crate::frame::ceil_index(float(pieces) / a_seat - ROUNDING));
    let finished = part_of(work.pieces, can_finish);
    Time { seats_in_use, pace_minutes, can_finish, finished, minutes_for_all, seats_for_all }
}

/// Part of a piece that is the last bits of a division.
const ROUNDING: f64 = 1e-9;

/// `most` of the pieces, each level in proportion; rounding goes to the level that it leaves shortest, the easier one first.
#[must_use]
pub fn part_of(pieces: [usize; 4], most: usize) -> [usize; 4] {
    let all = sum(pieces);
    if most >= all {
        return pieces;
    }
    let exact = pieces.map(|count| float(count) * float(most) / float(all));
    let mut part = exact.map(|count| floor_index(count + ROUNDING));
    while sum(part) < most {
        let short = |level: &usize| exact[*level] - float(part[*level]);
        let next = (0..4).rev().max_by(|a, b| short(a).total_cmp(&short(b))).unwrap_or(0);
        part[next] += 1;
    }
    part
}
