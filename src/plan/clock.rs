//! Times of day, as people write and read them.
//!
//! ```
//! use everysquare::plan::Clock;
//! use everysquare::words::Words;
//! let start = Clock::read("6:30 pm").ok_or("no time")?;
//! assert_eq!(start, Clock::read("18:30").ok_or("no time")?);
//! assert_eq!(start.after(330.4).say(&Words::english()), "12:00 AM");
//! assert_eq!(start.until(Clock::read("0:15").ok_or("no time")?), 345); // minutes, over midnight
//! # Ok::<(), &str>(())
//! ```

use crate::frame::round_index;
use crate::words::Words;

/// Minutes in a day.
const DAY: usize = 24 * 60;

/// A time of day to the minute, in whatever time zone its clock hangs in.
#[derive(Copy, Clone, Debug, PartialEq, Eq)]
pub struct Clock {
    /// Minutes after midnight, below [`DAY`].
    minute: usize,
}

impl Clock {
    /// A time of day; `None` where there is none such.
    #[must_use]
    pub fn new(hour: usize, minute: usize) -> Option<Self> {
        (hour < 24 && minute < 60).then_some(Self { minute: 60 * hour + minute })
    }

    /// Reads `18:30`, `6:30 pm` or `6pm`; `None` where it is something else.
    #[must_use]
    pub fn read(written: &str) -> Option<Self> {
        let plain: String =
            written.to_lowercase().chars().filter(|c| !c.is_whitespace() && *c != '.').collect();
        let (time, half) =
            match plain.strip_suffix('m').map(|rest| rest.split_at(rest.len().saturating_sub(1))) {
                Some((time, half @ ("a" | "p"))) => (time, Some(half)),
                Some(_) => return None,
                None => (plain.as_str(), None),
            };
        let number = |digits: &str| -> Option<usize> {
            let fits = (1..=2).contains(&digits.len()) && digits.bytes().all(|byte| byte.is_ascii_digit());
            digits.parse().ok().filter(|_| fits)
        };
        let (hour, minute) = match (time.split_once(':'), half) {
            (Some((hour, minute)), _) if minute.len() == 2 => (number(hour)?, number(minute)?),
            (None, Some(_)) => (number(time)?, 0),
            _ => return None,
        };
        let hour = match half {
            None => hour,
            Some(_) if !(1..=12).contains(&hour) => return None,
            Some(half) => hour % 12 + if half == "p" { 12 } else { 0 },
        };
        Self::new(hour, minute)
    }

    /// The time of day in a date and time such as `2026-11-24_18.30.05` or `2026-11-24T18:30:05`.
    #[must_use]
    pub fn of_stamp(stamp: &str) -> Option<Self> {
        Self::new(stamp.get(11..13)?.parse().ok()?, stamp.get(14..16)?.parse().ok()?)
    }

    /// The time so many minutes later, to the nearest minute, past midnight where it comes to that.
    #[must_use]
    pub fn after(self, minutes: f64) -> Self {
        Self { minute: (self.minute + round_index(minutes.max(0.0))) % DAY }
    }

    /// Minutes from this time to the next `end` on the clock, over midnight where that is earlier; 0 where it is the same.
    #[must_use]
    pub fn until(self, end: Self) -> usize {
        (end.minute + DAY - self.minute) % DAY
    }

    /// As event.toml has it: `18:30`.
    #[must_use]
    pub fn written(self) -> String {
        format!("{}:{:02}", self.minute / 60, self.minute % 60)
    }

    /// As people of a language read it: `6:30 PM` or `18:30`.
    #[must_use]
    pub fn say(self, words: &Words) -> String {
        let hour = self.minute / 60;
        let of_twelve = words.say("clock-hours", &[]) == "12";
        let shown = if of_twelve { (hour + 11) % 12 + 1 } else { hour };
        let numbers = [
            ("hour", shown.to_string().into()),
            ("minute", format!("{:02}", self.minute % 60).into()),
            ("half", if hour < 12 { "morning" } else { "afternoon" }.into()),
        ];
        if of_twelve { words.say("clock-of-12", &numbers) } else { words.say("clock-of-24", &numbers[..2]) }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_time_is_read_as_people_write_it_and_nothing_else_is() {
        let read = |text: &str| Clock::read(text).map(Clock::written);
        for (text, is) in [
            ("18:30", "18:30"),
            ("6:30pm", "18:30"),
            ("6:30 p.m.", "18:30"),
            (" 9 AM", "9:00"),
            ("12am", "0:00"),
            ("12:05 pm", "12:05"),
            ("00:00", "0:00"),
        ] {
            assert_eq!(read(text).as_deref(), Some(is), "{text}");
        }
        for text in [
            "", "6", "18:3", "24:00", "18:60", "13pm", "0am", "m", "pm", "6:30 xm", "1:2:3", "-1:00", "+6:30",
        ] {
            assert_eq!(read(text), None, "{text}");
        }
    }

    #[test]
    fn the_time_of_a_check_and_of_a_photo_is_read() {
        for stamp in ["2026-11-24_18.30.05", "2026-11-24T18:30:05", "2026-11-24_18.30.05-2"] {
            assert_eq!(Clock::of_stamp(stamp), Clock::new(18, 30), "{stamp}");
        }
        for stamp in ["", "2026-11-24", "2026-11-24Tab:cd", "2026-11-24T25:00:00"] {
            assert_eq!(Clock::of_stamp(stamp), None, "{stamp}");
        }
    }

    #[test]
    fn every_minute_of_a_day_is_read_as_it_is_written_and_said() {
        for minute in 0..DAY {
            let clock = Clock { minute };
            assert_eq!(Clock::read(&clock.written()), Some(clock));
            assert_eq!(Clock::read(&clock.say(&Words::english())), Some(clock));
            assert_eq!(clock.until(clock.after(90.0)), 90);
        }
    }
}
