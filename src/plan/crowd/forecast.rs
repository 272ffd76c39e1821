//! While it runs: how many squares will be up at the end, from how many are up now.
//!
//! The plan is the prior. Evenings are played as for the plan, but each with visitors, drawing and helpers somewhat more or fewer, faster
//! or slower than thought: on the average of them `m` squares are up at the time of a check and `M` at the end. An evening goes `θ` times
//! as fast as that, and squares come up as a Poisson process of that rate. With θ ~ Gamma(κ, κ) before and `n` squares up at the check,
//!
//! ```text
//!   θ | n ~ Gamma(κ + n, κ + m)          E[up at the end | n] = n + (κ + n) / (κ + m) · (M − m)
//! ```
//!
//! (the conjugate prior of a Poisson rate, for example A. Gelman et al., Bayesian Data Analysis, 3rd edition, 2.6). How much the plan is
//! worth against what is seen, κ, is what predicts the played evenings best. Squares come up more evenly than a Poisson process has it, for
//! helpers hang one after another: so how far off the mean may be is taken from the same evenings, not from the process.

use rand::{RngExt, SeedableRng};
use rand_chacha::ChaCha8Rng;

use super::simulated::{Scene, at, normal, sorted};
use super::{Given, scene};
use crate::frame::{float, round_index};
use crate::plan::clock::Clock;
use crate::plan::level::Level;
use crate::plan::settings::{Settings, Visitors};
use crate::words::Words;

/// Number of evenings that are played.
const RUNS: usize = 400;
/// Spread of what nobody knows beforehand, as a standard deviation of its logarithm: how many come, how fast they draw, how fast helpers
/// are. Common practice, no source.
const SPREAD_OF_VISITORS: f64 = 0.25;
const SPREAD_OF_DRAWING: f64 = 0.2;
const SPREAD_OF_HELPERS: f64 = 0.25;
/// Values of κ that are tried, in squares: from what is seen alone to the plan alone.
const STRENGTHS: [f64; 11] = [0.5, 1.0, 2.0, 4.0, 8.0, 16.0, 32.0, 64.0, 128.0, 256.0, 512.0];
/// Part of all evenings that ends within the range.
const SURE: f64 = 0.9;
/// Stream of random numbers that nothing else uses.
const STREAM: u64 = 99;

/// What is to be expected at the end, once some squares are up.
#[derive(Copy, Clone, Debug, PartialEq, Eq)]
pub struct Forecast {
    /// Squares that are up now.
    pub now: usize,
    /// Squares that will usually be up at the end.
    pub usual: usize,
    /// Nine times out of ten there will be at least so many …
    pub low: usize,
    /// … and at most so many.
    pub high: usize,
    /// All squares.
    pub all: usize,
}

impl Forecast {
    /// From `up` squares that are up `minute` minutes after the start. `None` before the start and after the end.
    #[must_use]
    pub fn of(scene: &Scene, minute: f64, up: usize) -> Option<Self> {
        if !(0.0..scene.minutes).contains(&minute) {
            return None;
        }
        Some(Played::of(scene, minute).forecast(scene, up))
    }
}

/// What a forecast needs of an event: when it begins and how it is planned.
#[derive(Clone, Debug, PartialEq)]
pub struct Outlook {
    given: Given,
    scene: Scene,
}

impl Outlook {
    /// Of an event with so many pieces of each level, the easiest first; `None` where nobody said when it begins.
    #[must_use]
    pub fn of(settings: &Settings, pieces: [usize; 4]) -> Option<Self> {
        settings.evening.start?;
        let given = Given::of(settings);
        let (scene, _) = scene(settings, &given, pieces);
        Some(Self { given, scene })
    }

    /// What to expect, in a sentence or two, from `up` squares that were up at `stamp`, a date and time such as `2026-11-24_18.30.05`;
    /// `None` outside the event's hours.
    #[must_use]
    pub fn told(&self, stamp: &str, up: usize, words: &Words) -> Option<String> {
        let minute = float(self.given.start?.until(Clock::of_stamp(stamp)?));
        let forecast = Forecast::of(&self.scene, minute, up)?;
        let end = self.given.moment(self.given.minutes, words);
        let numbers = [
            ("usual", forecast.usual.into()),
            ("all", forecast.all.into()),
            ("low", forecast.low.to_string().into()),
            ("high", forecast.high.to_string().into()),
            ("end", end.into()),
        ];
        if forecast.low >= forecast.all {
            return Some(words.say("forecast-whole", &numbers));
        }
        let pace = words.say("forecast-pace", &numbers);
        if forecast.usual >= forecast.all {
            return Some(pace);
        }
        let minutes = self.given.minutes_a_piece;
        let last_call = self.scene.last_call(minutes[Level::Easy.index()]);
        let advice = if minute <= last_call {
            words.say("forecast-second", &[("last", self.given.moment(last_call, words).into())])
        } else {
            words.say("forecast-late", &[])
        };
        Some(format!("{pace} {advice}"))
    }
}

/// Evenings as they may go, at the time of a check.
#[derive(Clone, Debug, PartialEq)]
pub struct Played {
    /// Squares that are up at the check on the average.
    pub up: f64,
    /// Squares that are up at the end on the average.
    pub up_at_end: f64,
    /// κ: how many squares the plan is worth.
    pub strength: f64,
    /// By how many times the spread each of them ends with more than is expected, ascending.
    off: Vec<f64>,
}

impl Played {
    /// Plays evenings of a scene that may go otherwise than thought.
    #[must_use]
    pub fn of(scene: &Scene, minute: f64) -> Self {
        let pairs: Vec<(f64, f64)> = (0..RUNS)
            .map(|run| {
                let happened = scene.varied(run).evening(run);
                (float(happened.up_by(minute)), float(happened.up_by(scene.minutes)))
            })
            .collect();
        let all = float(scene.count());
        let mean = |of: fn(&(f64, f64)) -> f64| pairs.iter().map(of).sum::<f64>() / float(RUNS);
        let mut played =
            Self { up: mean(|pair| pair.0), up_at_end: mean(|pair| pair.1), strength: 0.0, off: Vec::new() };
        let wrong = |strength: f64, played: &Self| -> f64 {
            let tried = Self { strength, ..played.clone() };
            pairs.iter().map(|(up, end)| (end - up - tried.more(*up, all)).powi(2)).sum()
        };
        let best = STRENGTHS.into_iter().min_by(|a, b| wrong(*a, &played).total_cmp(&wrong(*b, &played)));
        played.strength = best.unwrap_or(STRENGTHS[0]);
        let off = pairs.iter().map(|(up, end)| {
            let mean = played.more(*up, all);
            (end - up - mean) / Self::spread(mean)
        });
        played.off = sorted(off.collect());
        played
    }

    /// Squares that come up after the check on the average, where `up` of `all` are up.
    #[must_use]
    pub fn more(&self, up: f64, all: f64) -> f64 {
        (self.rate(up) * (self.up_at_end - self.up)).min(all - up).max(0.0)
    }

    /// What is to be expected where `up` squares are up.
    #[must_use]
    pub fn forecast(&self, scene: &Scene, up: usize) -> Forecast {
        let all = scene.count();
        let left = float(all.saturating_sub(up));
        let mean = self.more(float(up), float(all));
        let [low, high] = [0.5 - SURE / 2.0, 0.5 + SURE / 2.0]
            .map(|part| (mean + at(&self.off, part) * Self::spread(mean)).clamp(0.0, left));
        let squares = |more: f64| up + round_index(more);
        Forecast {
            now: up,
            usual: squares(mean.clamp(low, high)),
            low: squares(low),
            high: squares(high),
            all,
        }
    }

    /// Mean of θ where `up` squares are up.
    #[must_use]
    pub fn rate(&self, up: f64) -> f64 {
        (self.strength + up) / (self.strength + self.up)
    }

    /// What a difference from the mean is counted in.
    fn spread(mean: f64) -> f64 {
        (mean + 1.0).sqrt()
    }
}

impl Scene {
    /// The same evening with somewhat more or fewer visitors, faster or slower.
    fn varied(&self, run: usize) -> Self {
        let mut rng = ChaCha8Rng::seed_from_u64(u64::try_from(run).unwrap_or_default());
        rng.set_stream(STREAM);
        let mut times = |spread: f64| (spread * normal(&mut rng)).exp();
        let (visitors, drawing, helpers) =
            (times(SPREAD_OF_VISITORS), times(SPREAD_OF_DRAWING), times(SPREAD_OF_HELPERS));
        let (least, most) = (float(self.visitors.least()), float(self.visitors.most()));
        let come = (least + (most - least) * rng.random::<f64>()) * visitors;
        Self {
            visitors: Visitors::exactly(round_index(come)),
            minutes_a_piece: self.minutes_a_piece.map(|minutes| minutes * drawing),
            giving_out_minutes: self.giving_out_minutes * helpers,
            hanging_minutes: self.hanging_minutes * helpers,
            ..self.clone()
        }
    }
}
