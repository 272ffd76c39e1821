//! What an evening comes to, in sentences: for the terminal and for the organiser's guide.

use super::{Assumed, Evening, Expected, Given, Lack, Staff, Verdict};
use super::{PATIENCE_MINUTES, RUNS, paper_m2};
use crate::frame::{float, floor_index, round_index};
use crate::plan::settings::Settings;
use crate::words::Words;

/// Share of visitors that goes without a piece when many come, from which it is said.
const MANY_WITHOUT: f64 = 0.2;

impl Given {
    /// A moment of the evening, so many minutes from its start: a time of day where the start is known.
    #[must_use]
    pub fn moment(&self, minutes: f64, words: &Words) -> String {
        match self.start {
            Some(start) => start.after(minutes).say(words),
            // the last minute at which something may be done is over before it is rounded up
            None => words.say("crowd-minute", &[("minute", floor_index(minutes).to_string().into())]),
        }
    }
}

/// Helpers from a moment on.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct ShiftSaid {
    /// From when.
    pub from: String,
    /// How many hand out.
    pub giving_out: usize,
    /// How many hang.
    pub hanging: usize,
}

impl Evening {
    /// Whether the numbers of helpers are the program's own.
    fn suggests_helpers(&self) -> bool {
        [Assumed::GivingOut, Assumed::Hanging].iter().all(|own| self.given.assumed.contains(own))
    }

    /// Whether the grid suits the crowd, how much is up at the end, who waits and who goes without.
    #[must_use]
    pub fn told(&self, words: &Words) -> Vec<String> {
        let (expected, visitors) = (&self.expected, self.given.visitors);
        let count = |count: usize| count.into();
        let verdict = [
            ("chance", percent(expected.whole, words).into()),
            ("when", self.given.moment(expected.whole_at.unwrap_or(self.given.minutes), words).into()),
            ("least", count(visitors.least())),
            ("without", count(round_index(expected.without_at_ends[0]))),
        ];
        let id = match self.verdict {
            Verdict::TooSmall if !visitors.is_exact() => "crowd-too-small-always".to_owned(),
            // nobody is told to find more than what was proposed
            Verdict::TooLarge(Lack::Helpers) if self.suggests_helpers() => {
                "crowd-too-large-for-suggested".to_owned()
            }
            verdict => format!("crowd-{}", verdict.word()),
        };
        let up = expected.up;
        let pieces = [("up", count(up.usual)), ("pieces", count(self.scene.count()))];
        let mut said = vec![words.say(&id, &verdict), words.say("crowd-up", &pieces)];
        if up.low < up.high {
            let range = [("low", up.low.to_string().into()), ("high", up.high.to_string().into())];
            said.push(words.say("crowd-up-range", &range));
        }
        if matches!(self.verdict, Verdict::TooLarge(_)) {
            said.push(words.say("crowd-chance", &verdict[..1]));
        }
        said.extend(self.without(words));
        let wait = round_index(expected.longest_wait);
        if wait > 0 {
            said.push(words.say("crowd-wait", &[("wait", count(wait))]));
        }
        said.extend(self.reserve(words));
        said
    }

    /// What a border in reserve is for, in numbers of the evenings to which most visitors come.
    fn reserve(&self, words: &Words) -> Option<String> {
        let reserve = self.reserve.as_ref()?;
        let [without, with] =
            [&self.expected, &reserve.expected].map(|own| round_index(own.without_at_ends[1]));
        let id = if with < without { "crowd-border-helps" } else { "crowd-border" };
        let numbers = [("pieces", reserve.pieces.into()), ("without", without.into()), ("with", with.into())];
        Some(words.say(id, &numbers))
    }

    /// Who goes without a piece, where it is worth a word.
    fn without(&self, words: &Words) -> Option<String> {
        let (visitors, expected) = (self.given.visitors, &self.expected);
        let [_, when_many] = expected.without_at_ends;
        if !visitors.is_exact() && when_many > MANY_WITHOUT * float(visitors.most()) {
            let numbers = [("most", visitors.most().into()), ("without", round_index(when_many).into())];
            return Some(words.say("crowd-if-many", &numbers));
        }
        let without = expected.without.usual;
        let is_said = self.verdict == Verdict::TooSmall || self.verdict == Verdict::TooLarge(Lack::Visitors);
        (without > 0 && !is_said).then(|| words.say("crowd-without", &[("without", without.into())]))
    }

    /// Helpers over time: one line a change.
    #[must_use]
    pub fn shifts_told(&self, words: &Words) -> Vec<ShiftSaid> {
        let (giving_out, hanging) = (&self.needed.giving_out, &self.needed.hanging);
        let starts = |staff: &Staff| staff.shifts().iter().map(|(from, _)| *from).collect::<Vec<f64>>();
        let mut from = [starts(giving_out), starts(hanging)].concat();
        from.sort_by(f64::total_cmp);
        from.dedup();
        let shift = |from: f64| ShiftSaid {
            from: self.given.moment(from, words),
            giving_out: giving_out.at(from),
            hanging: hanging.at(from),
        };
        from.into_iter().map(shift).collect()
    }

    /// What one helper fewer costs.
    #[must_use]
    pub fn one_fewer_told(&self, words: &Words) -> Vec<String> {
        let say = |id: &str, then: &Expected, wait: f64| {
            let fewer = self.expected.up.usual.saturating_sub(then.up.usual);
            words.say(id, &[("wait", round_index(wait).into()), ("fewer", fewer.into())])
        };
        let giving_out = self.one_fewer.giving_out.as_ref();
        let hanging = self.one_fewer.hanging.as_ref();
        let giving_out = giving_out.map(|then| say("crowd-one-fewer-giving-out", then, then.longest_wait));
        let hanging = hanging.map(|then| say("crowd-one-fewer-hanging", then, then.longest_wait_to_hang));
        giving_out.into_iter().chain(hanging).collect()
    }

    /// What is assumed about people, so that it can be doubted.
    #[must_use]
    pub fn assumptions_told(&self, settings: &Settings, words: &Words) -> String {
        let evening = &settings.evening;
        let numbers = [
            ("evenings", RUNS.into()),
            ("giving-out", evening.giving_out_seconds.into()),
            ("hanging", evening.hanging_seconds.into()),
            ("patience", round_index(PATIENCE_MINUTES).into()),
        ];
        words.say("crowd-assumptions", &numbers)
    }
}

/// How much of its board the paper of each part covers; `None` where no board's size is known.
#[must_use]
pub fn boards_told(settings: &Settings, words: &Words) -> Option<String> {
    let told = settings.parts.iter().filter_map(|part| {
        let board = part.board?;
        let covered = paper_m2(&settings.grid, part) / (board.width_mm * board.height_mm / 1e6);
        let (from, to) = part.ends(&settings.grid);
        let named =
            [("percent", percent(covered.min(1.0), words).into()), ("from", from.into()), ("to", to.into())];
        Some(words.say("plan-fire-board", &named))
    });
    let told: Vec<String> = told.collect();
    (!told.is_empty()).then(|| told.join(", "))
}

/// A part as a percentage, never rounded down to nothing or up to all.
#[must_use]
pub fn percent(part: f64, words: &Words) -> String {
    let (id, number) = match part * 100.0 {
        small if small > 0.0 && small < 1.0 => ("part-less", "1".to_owned()),
        large if large > 99.0 && large < 100.0 => ("part-percent", "99".to_owned()),
        more => ("part-percent", format!("{more:.0}")),
    };
    words.say(id, &[("percent", number.into())])
}
