//! What an evening comes to: many evenings, made from a seed and played at their [`stations`](super::stations).
//!
//! The same seed makes the same evenings whatever is tried on them (common random numbers), so that two plans differ by what they
//! are and not by chance.

use std::f64::consts::TAU;

use rand::{RngExt, SeedableRng};
use rand_chacha::ChaCha8Rng;
use rayon::prelude::*;
use serde::Serialize;

use super::stations::{Happened, Staff, Stations, Trace, play};
use crate::frame::{ceil_index, float, floor_index, round_index};
use crate::plan::settings::{Arrivals, Visitors};

/// Number of evenings from which numbers are taken.
pub const RUNS: usize = 500;
/// Number of evenings by which plans are compared.
pub(super) const RUNS_TO_COMPARE: usize = 160;
/// Visitors of all evenings together beyond which fewer are played.
const MOST_VISITORS: usize = 100_000;
/// Fewest evenings.
const LEAST_RUNS: usize = 12;
/// Spread of service times: standard deviation of their logarithm. Common practice, no source.
const SPREAD: f64 = 0.35;
/// Median of the time that a visitor waits for a piece before she leaves, in minutes. Common practice, no source.
pub const PATIENCE_MINUTES: f64 = 15.0;
/// Spread of that time: standard deviation of its logarithm. Common practice, no source.
const SPREAD_OF_PATIENCE: f64 = 0.5;
/// Time within which all are there who come at once, in minutes; less where the evening is short.
const AT_ONCE_MINUTES: f64 = 10.0;
/// Share of an evening within which all are there who come at once, where that is shorter.
const AT_ONCE_SHARE: f64 = 0.1;
/// Visitors in a class. Common practice, no source.
const CLASS: usize = 26;
/// Time within which a class has come in, in minutes.
const CLASS_COMES_MINUTES: f64 = 2.0;

/// An evening that is planned.
#[derive(Clone, Debug, PartialEq)]
pub struct Scene {
    /// How many are expected.
    pub visitors: Visitors,
    /// How they come.
    pub arrivals: Arrivals,
    /// How many pieces a visitor draws; below 1 where families share one.
    pub pieces_each: f64,
    /// How long it goes, in minutes.
    pub minutes: f64,
    /// Seats to draw at.
    pub seats: usize,
    /// Helpers who hand out pieces.
    pub giving_out: Staff,
    /// Helpers who hang squares.
    pub hanging: Staff,
    /// How long handing out takes, in minutes.
    pub giving_out_minutes: f64,
    /// How long hanging takes, in minutes.
    pub hanging_minutes: f64,
    /// How long a visitor waits for a piece before she leaves, in minutes: its median.
    pub patience_minutes: f64,
    /// How many pieces each level has, the easiest first.
    pub pieces: [usize; 4],
    /// How long a piece of each level takes, in minutes.
    pub minutes_a_piece: [f64; 4],
}

/// Low, usual and high of a number over evenings: 5, 50 and 95 of 100 have no more.
#[derive(Copy, Clone, Debug, Default, PartialEq, Eq, Serialize)]
pub struct Usual {
    /// 5 of 100 evenings have no more.
    pub low: usize,
    /// The median.
    pub usual: usize,
    /// 95 of 100 evenings have no more.
    pub high: usize,
}

/// What is to be expected.
#[derive(Clone, Debug, PartialEq)]
pub struct Expected {
    /// Chance that all squares are up when the evening ends, 0 … 1.
    pub whole: f64,
    /// Squares that are up when the evening ends.
    pub up: Usual,
    /// Squares that are up when the evening ends, on the average.
    pub mean_up: f64,
    /// Visitors who go without a piece.
    pub without: Usual,
    /// Visitors who go without a piece in the quarter of evenings with the fewest and with the most visitors, on the average.
    pub without_at_ends: [f64; 2],
    /// Longest wait for a piece on a usual evening, in minutes: its median over evenings.
    pub longest_wait: f64,
    /// Longest wait of a square for somebody who hangs it, in minutes: its median over evenings.
    pub longest_wait_to_hang: f64,
    /// When the mural is whole on a usual evening on which it becomes so, in minutes from the start; `None` where none does.
    pub whole_at: Option<f64>,
    /// Seats that are taken at the busiest moment; 95 of 100 evenings need no more.
    pub seats_taken: usize,
}

/// A purpose that has random numbers of its own.
#[derive(Copy, Clone)]
enum Purpose {
    Arrivals,
    Patience,
    GivingOut,
    Drawing,
    Hanging,
    Stays,
}

impl Scene {
    /// How many pieces there are.
    #[must_use]
    pub fn count(&self) -> usize {
        self.pieces.iter().sum()
    }

    /// Last minute from the start at which a piece of so many minutes is given out, so that it is usually up at the end.
    #[must_use]
    pub fn last_call(&self, minutes_a_piece: f64) -> f64 {
        self.minutes - self.giving_out_minutes - minutes_a_piece - self.hanging_minutes
    }

    /// Plays [`RUNS`] evenings.
    #[must_use]
    pub fn expected(&self) -> Expected {
        self.expected_of(RUNS)
    }

    /// Plays so many evenings, fewer of them where an evening is very large.
    pub(super) fn expected_of(&self, runs: usize) -> Expected {
        let evenings = self.evenings(runs);
        let one = |(visitors, happened): &(usize, Happened)| self.one(*visitors, happened);
        Expected::of(&evenings.iter().map(one).collect::<Vec<One>>())
    }

    /// Evenings, those with the fewest visitors first: how many come, and what happens.
    pub(super) fn evenings(&self, runs: usize) -> Vec<(usize, Happened)> {
        self.played(&self.traces(runs))
    }

    /// What happens where chance decides so; the traces are those of this scene with whatever helpers and seats.
    pub(super) fn played(&self, traces: &[(usize, Trace)]) -> Vec<(usize, Happened)> {
        let stations = self.stations();
        traces.par_iter().map(|(visitors, trace)| (*visitors, play(&stations, trace))).collect()
    }

    /// How many come on each evening, those with the fewest visitors first, and what chance decides.
    pub(super) fn traces(&self, runs: usize) -> Vec<(usize, Trace)> {
        let runs = runs.min(MOST_VISITORS / self.visitors.most().max(self.count()).max(1)).max(LEAST_RUNS);
        let order = self.order();
        let (least, more) = (self.visitors.least(), self.visitors.most() - self.visitors.least() + 1);
        let evening = |run: usize| {
            let visitors = least + floor_index(float(more) * (float(run) + 0.5) / float(runs));
            (visitors, self.trace(run, visitors, &order))
        };
        (0..runs).into_par_iter().map(evening).collect()
    }

    /// One evening, with the fewest visitors that may come.
    pub(super) fn evening(&self, run: usize) -> Happened {
        play(&self.stations(), &self.trace(run, self.visitors.least(), &self.order()))
    }

    /// Minutes of the pieces in the order in which they are given out: the long ones first.
    fn order(&self) -> Vec<f64> {
        let levels = self.pieces.iter().zip(self.minutes_a_piece).rev();
        levels.flat_map(|(count, minutes)| std::iter::repeat_n(minutes, *count)).collect()
    }

    fn stations(&self) -> Stations {
        Stations {
            giving_out: self.giving_out.clone(),
            seats: self.seats,
            hanging: self.hanging.clone(),
            last_calls: self.order().into_iter().map(|minutes| self.last_call(minutes)).collect(),
        }
    }

    /// What chance decides on one evening.
    fn trace(&self, run: usize, visitors: usize, order: &[f64]) -> Trace {
        let stream = |purpose: Purpose| {
            let mut rng = ChaCha8Rng::seed_from_u64(u64::try_from(run).unwrap_or_default());
            rng.set_stream(purpose as u64);
            rng
        };
        let parties = round_index(float(visitors) * self.pieces_each.min(1.0)).max(1);
        let (mut came, mut patient) = (stream(Purpose::Arrivals), stream(Purpose::Patience));
        let mut comes: Vec<f64> = (0..parties).map(|one| self.comes(one, parties, &mut came)).collect();
        comes.sort_by(f64::total_cmp);
        let mut patience = || self.patience_minutes * (SPREAD_OF_PATIENCE * normal(&mut patient)).exp();
        let times = |purpose: Purpose, mean: &dyn Fn(usize) -> f64| {
            let mut rng = stream(purpose);
            // a lognormal of mean 1
            let one = |service| mean(service) * (SPREAD * normal(&mut rng) - SPREAD * SPREAD / 2.0).exp();
            (0..order.len()).map(one).collect::<Vec<f64>>()
        };
        // whoever draws has another piece with chance q, and so 1 / (1 − q) in all
        let again = 1.0 - 1.0 / self.pieces_each.max(1.0);
        let mut stays = stream(Purpose::Stays);
        Trace {
            visitors: comes.into_iter().map(|comes| (comes, patience())).collect(),
            giving_out: times(Purpose::GivingOut, &|_| self.giving_out_minutes),
            drawing: times(Purpose::Drawing, &|service| order[service]),
            hanging: times(Purpose::Hanging, &|_| self.hanging_minutes),
            stays: order.iter().map(|_| stays.random::<f64>() < again).collect(),
        }
    }

    /// When one of so many comes.
    fn comes(&self, one: usize, of: usize, rng: &mut ChaCha8Rng) -> f64 {
        match self.arrivals {
            Arrivals::AtOnce => rng.random::<f64>() * AT_ONCE_MINUTES.min(AT_ONCE_SHARE * self.minutes),
            Arrivals::Drifting => {
                // Beta(2, 3): the second smallest of four; most in the first half, hardly any at the end
                let mut four: [f64; 4] = std::array::from_fn(|_| rng.random());
                four.sort_by(f64::total_cmp);
                four[1] * self.minutes
            }
            Arrivals::InClasses => {
                let classes = of.div_ceil(CLASS);
                let class = one * classes / of;
                self.minutes * float(class) / float(classes) + rng.random::<f64>() * CLASS_COMES_MINUTES
            }
        }
    }

    /// What counts of one evening.
    fn one(&self, visitors: usize, happened: &Happened) -> One {
        let up = happened.up_by(self.minutes);
        let waits = happened.given_out.iter().chain(&happened.left);
        let longest = |minutes: f64, longest: f64| longest.max(minutes);
        let heads = float(happened.left.len() + happened.sent_away.len()) / self.pieces_each.min(1.0);
        One {
            up,
            without: round_index(heads).min(visitors),
            whole_at: happened.up.get(self.count().wrapping_sub(1)).copied().filter(|at| *at <= self.minutes),
            longest_wait: waits.fold(0.0, |so_far, wait| longest(wait.minutes(), so_far)),
            longest_wait_to_hang: happened
                .taken_to_hang
                .iter()
                .fold(0.0, |so_far, wait| longest(wait.minutes(), so_far)),
            seats_taken: happened.seats_taken,
        }
    }
}

/// What counts of one evening.
struct One {
    up: usize,
    without: usize,
    whole_at: Option<f64>,
    longest_wait: f64,
    longest_wait_to_hang: f64,
    seats_taken: usize,
}

impl Expected {
    /// Of evenings, those with the fewest visitors first.
    fn of(evenings: &[One]) -> Self {
        let count = |of: fn(&One) -> usize| sorted(evenings.iter().map(of).map(float).collect());
        let wholes = sorted(evenings.iter().filter_map(|one| one.whole_at).collect());
        let quarter = evenings.len().div_ceil(4);
        let mean = |part: &[One]| {
            float(part.iter().map(|one| one.without).sum::<usize>()) / float(part.len().max(1))
        };
        Self {
            whole: float(wholes.len()) / float(evenings.len()),
            up: Usual::of(&count(|one| one.up)),
            mean_up: float(evenings.iter().map(|one| one.up).sum::<usize>()) / float(evenings.len().max(1)),
            without: Usual::of(&count(|one| one.without)),
            without_at_ends: [mean(&evenings[..quarter]), mean(&evenings[evenings.len() - quarter..])],
            longest_wait: at(&sorted(evenings.iter().map(|one| one.longest_wait).collect()), 0.5),
            longest_wait_to_hang: at(
                &sorted(evenings.iter().map(|one| one.longest_wait_to_hang).collect()),
                0.5,
            ),
            whole_at: (!wholes.is_empty()).then(|| at(&wholes, 0.5)),
            seats_taken: floor_index(at(&count(|one| one.seats_taken), 0.95)),
        }
    }
}

impl Usual {
    /// As a table has it: `72–78`, or one number.
    #[must_use]
    pub fn shown(&self) -> String {
        if self.low == self.high { self.usual.to_string() } else { format!("{}–{}", self.low, self.high) }
    }

    fn of(sorted: &[f64]) -> Self {
        let [low, usual, high] = [0.05, 0.5, 0.95].map(|part| floor_index(at(sorted, part)));
        Self { low, usual, high }
    }
}

pub(super) fn sorted(mut values: Vec<f64>) -> Vec<f64> {
    values.sort_by(f64::total_cmp);
    values
}

/// The value that `part` of all do not exceed (nearest rank); 0 where there is none.
pub(super) fn at(sorted: &[f64], part: f64) -> f64 {
    let rank = ceil_index(part * float(sorted.len())).saturating_sub(1);
    sorted.get(rank).copied().unwrap_or(0.0)
}

/// A normal deviate with mean 0 and standard deviation 1 (Box and Muller, 1958).
#[must_use]
pub fn normal(rng: &mut ChaCha8Rng) -> f64 {
    let (u, v): (f64, f64) = (rng.random(), rng.random());
    (-2.0 * (1.0 - u).ln()).sqrt() * (TAU * v).cos()
}
