//! What is typed about the crowd and the time, for `plan` and for `new`.

use super::CliError;
use super::mistyped::{Refused, within};
use crate::frame::float;
use crate::plan::Clock;
use crate::plan::settings::{
    Arrivals, Choice, EveningSettings, HELPERS, MINUTES, NewValue, PIECES_EACH, SEATS, Visitors,
};
use crate::words::Sentence;

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
    /// Whether an end that was typed can be used with what was typed or is in event.toml.
    ///
    /// # Errors
    /// Where there is no start, or too little time between the two.
    pub fn check(&self, evening: &EveningSettings) -> Result<(), CliError> {
        let Some(end) = self.end else { return Ok(()) };
        let Some(start) = self.start.or(evening.start) else {
            return Err(CliError::new(Sentence::new("error-plan-end-alone")));
        };
        let fits = MINUTES.contains(&float(start.until(end)));
        if fits { Ok(()) } else { Err(CliError::new(Sentence::new("error-plan-end"))) }
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
