//! What is typed about the crowd and the time, for `plan` and for `new`.

use std::io::BufRead;

use super::mistyped::{Refused, within};
use super::{CliError, Console};
use crate::frame::float;
use crate::plan::Clock;
use crate::plan::settings::{
    Arrivals, Choice, EveningSettings, HELPERS, LONGEST_BY_CLOCK, MINUTES, NewValue, PIECES_EACH, SEATS,
    Visitors,
};
use crate::words::{Sentence, Tell};

/// Names of all that is typed here.
pub(super) const NAMES: [&str; 9] =
    ["visitors", "arrivals", "each", "start", "end", "minutes", "seats", "giving-out", "hanging"];

/// Numbers about the crowd and the time.
#[derive(Clone, Debug, Default, clap::Args)]
pub(super) struct CrowdArgs {
    /// How many visitors.
    #[arg(long, value_name = "N", allow_negative_numbers = true, value_parser = visitors)]
    visitors: Option<Visitors>,
    /// How they come.
    #[arg(long, value_name = "HOW", value_parser = arrivals)]
    arrivals: Option<Arrivals>,
    /// How many pieces a visitor draws.
    #[arg(long, value_name = "N", allow_negative_numbers = true, value_parser = |text: &str| within("typed-number-from", text, &PIECES_EACH))]
    each: Option<f64>,
    /// When they begin.
    #[arg(long, value_name = "TIME", value_parser = clock)]
    start: Option<Clock>,
    /// When they stop.
    #[arg(long, value_name = "TIME", value_parser = clock, conflicts_with = "minutes")]
    end: Option<Clock>,
    /// How long they draw.
    #[arg(long, value_name = "MINUTES", allow_negative_numbers = true, value_parser = |text: &str| within("typed-number-from", text, &MINUTES))]
    minutes: Option<f64>,
    /// How many can draw at once.
    #[arg(long, value_name = "N", allow_negative_numbers = true, value_parser = |text: &str| within("typed-whole-from", text, &SEATS))]
    seats: Option<usize>,
    /// How many hand out pieces.
    #[arg(long, value_name = "N", allow_negative_numbers = true, value_parser = |text: &str| within("typed-whole-from", text, &HELPERS))]
    giving_out: Option<usize>,
    /// How many hang squares.
    #[arg(long, value_name = "N", allow_negative_numbers = true, value_parser = |text: &str| within("typed-whole-from", text, &HELPERS))]
    hanging: Option<usize>,
}

impl CrowdArgs {
    /// Whether nothing was typed.
    pub fn is_empty(&self) -> bool {
        self.given(&EveningSettings::default()).iter().all(|(_, value)| value.is_none()) && self.end.is_none()
    }

    /// Asks for what decides the grid, one line each. An empty line leaves a number out; one that cannot be read is asked for again,
    /// and left out after that.
    pub fn asked(console: &mut Console, input: &mut dyn BufRead) -> Self {
        console.say("new-ask", &[]);
        let visitors = question(console, input, "new-ask-visitors", visitors);
        if visitors.is_none() {
            return Self::default(); // nothing follows from the rest without it
        }
        Self {
            visitors,
            each: question(console, input, "new-ask-each", |text| {
                within("typed-number-from", text, &PIECES_EACH)
            }),
            minutes: question(console, input, "new-ask-minutes", |text| {
                within("typed-number-from", text, &MINUTES)
            }),
            seats: question(console, input, "new-ask-seats", |text| within("typed-whole-from", text, &SEATS)),
            ..Self::default()
        }
    }

    /// Whether an end that was typed can be used with what was typed or is in event.toml.
    ///
    /// # Errors
    /// Where there is no start, or too little time between the two.
    pub fn check(&self, evening: &EveningSettings) -> Result<(), CliError> {
        let Some(end) = self.end else { return Ok(()) };
        let Some(start) = self.start.or(evening.start) else {
            return Err(CliError::new(Sentence::new("error-plan-end-alone")));
        };
        match float(start.until(end)) {
            minutes if minutes > LONGEST_BY_CLOCK => Err(CliError::new(Sentence::new("error-plan-end-long"))),
            minutes if MINUTES.contains(&minutes) => Ok(()),
            _ => Err(CliError::new(Sentence::new("error-plan-end"))),
        }
    }

    /// Minutes, as they were typed or from the start to the end that was.
    fn minutes(&self, evening: &EveningSettings) -> Option<f64> {
        let to_end = self.end.zip(self.start.or(evening.start)).map(|(end, start)| float(start.until(end)));
        self.minutes.or(to_end)
    }

    /// What was typed, under its names in event.toml; minutes follow from an end, with the start of `evening` where none was typed.
    pub fn given(&self, evening: &EveningSettings) -> [(&'static str, Option<NewValue>); 8] {
        let text = |text: String| NewValue::Text(text);
        let visitors = |visitors: Visitors| match visitors.is_exact() {
            true => NewValue::Whole(visitors.least()),
            false => NewValue::Text(format!("{}-{}", visitors.least(), visitors.most())),
        };
        [
            ("evening.visitors", self.visitors.map(visitors)),
            ("evening.arrivals", self.arrivals.map(|how| text(how.word().to_owned()))),
            ("evening.pieces_each", self.each.map(NewValue::Number)),
            ("evening.start", self.start.map(|start| text(start.written()))),
            ("evening.minutes", self.minutes(evening).map(NewValue::Number)),
            ("evening.seats", self.seats.map(NewValue::Whole)),
            ("evening.giving_out", self.giving_out.map(NewValue::Whole)),
            ("evening.hanging", self.hanging.map(NewValue::Whole)),
        ]
    }

    /// What was typed counts instead of what event.toml says.
    pub fn override_in(&self, evening: &mut EveningSettings) {
        evening.minutes = self.minutes(evening).or(evening.minutes);
        evening.visitors = self.visitors.or(evening.visitors);
        evening.arrivals = self.arrivals.or(evening.arrivals);
        evening.pieces_each = self.each.or(evening.pieces_each);
        evening.start = self.start.or(evening.start);
        evening.seats = self.seats.or(evening.seats);
        evening.giving_out = self.giving_out.or(evening.giving_out);
        evening.hanging = self.hanging.or(evening.hanging);
    }
}

fn visitors(text: &str) -> Result<Visitors, Refused> {
    Visitors::read(text).ok_or_else(|| Refused::new(Visitors::allowed()))
}

fn arrivals(text: &str) -> Result<Arrivals, Refused> {
    Arrivals::named(text).ok_or_else(Refused::choice::<Arrivals>)
}

fn clock(text: &str) -> Result<Clock, Refused> {
    Clock::read(text).ok_or_else(|| Refused::new(Sentence::new("error-settings-clock")))
}

/// Asks one question, twice at the most.
pub(super) fn question<T>(
    console: &mut Console,
    input: &mut dyn BufRead,
    id: &str,
    read: impl Fn(&str) -> Result<T, Refused>,
) -> Option<T> {
    for _ in 0..2 {
        console.say(id, &[]);
        let mut typed = String::new();
        if input.read_line(&mut typed).unwrap_or(0) == 0 || typed.trim().is_empty() {
            return None;
        }
        match read(typed.trim()) {
            Ok(value) => return Some(value),
            Err(refused) => console.tell(refused.tell(console.words())),
        }
    }
    None
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::cli::console::Screen;

    fn asked(typed: &str) -> CrowdArgs {
        let mut console = Console::new(Box::new(std::io::sink()), Box::new(std::io::sink()), Screen::plain());
        CrowdArgs::asked(&mut console, &mut typed.as_bytes())
    }

    #[test]
    fn what_is_asked_for_is_read_and_what_is_left_empty_is_left_out() {
        let all = asked("60-120\n1\n90\n24\n");
        assert_eq!(
            (all.visitors, all.each, all.minutes, all.seats),
            (Visitors::new(60, 120), Some(1.0), Some(90.0), Some(24))
        );
        let some = asked("many\n80\n\n\n30\n");
        assert_eq!(
            (some.visitors, some.each, some.minutes, some.seats),
            (Visitors::new(80, 80), None, None, Some(30))
        );
        assert!(asked("\n").is_empty() && asked("").is_empty() && asked("many\nmore\n").is_empty());
    }
}
