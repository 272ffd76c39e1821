//! `[evening]`: the crowd, the time, the room. What is left out is assumed, and said to be.

use std::ops::RangeInclusive;

use super::choice::Choice;
use super::coming::{Arrivals, Visitors};
use super::error::SettingsError;
use super::section::Section;
use super::toml::{example, line, number, quoted, text};
use crate::frame::{MM_PER_INCH, float};
use crate::plan::clock::Clock;
use crate::words::{Sentence, Words};

/// How long visitors may draw, in minutes: up to a whole day.
pub const MINUTES: RangeInclusive<f64> = 5.0..=1_440.0;
/// Seats that a room may have.
pub const SEATS: RangeInclusive<usize> = 1..=500;
/// Number of pieces a visitor draws: below 1 where families share one.
pub const PIECES_EACH: RangeInclusive<f64> = 0.1..=5.0;
/// Number of helpers at a station.
pub const HELPERS: RangeInclusive<usize> = 1..=50;
/// Time that a helper takes for one visitor or square, in seconds.
pub const SECONDS: RangeInclusive<usize> = 5..=900;
/// The height of the wall's lower edge over the floor, in mm.
pub const HANG_MM: RangeInclusive<f64> = 0.0..=3_000.0;
/// Width or height that the place for the wall may have, in mm: from a noticeboard to a gymnasium.
pub const ROOM_MM: RangeInclusive<f64> = 200.0..=50_000.0;
/// How long a visitor may need for a piece, in minutes.
pub const MINUTES_A_PIECE: RangeInclusive<f64> = 0.5..=240.0;
/// How long a visitor needs for a plain, an easy, a medium and a hard piece where nothing is said, in minutes, on squares of about
/// 127 mm. Common practice, no source: an organiser who has held one evening writes her own.
pub const USUAL_MINUTES_A_PIECE: [f64; 4] = [6.0, 10.0, 15.0, 22.0];
/// How long it takes to hand out a piece with its square, and to hang a square, in seconds, where nothing is said. Common practice,
/// no source: an hour with a stop-watch tells better.
pub const USUAL_SECONDS: usize = 72;

/// `[evening]`: the crowd, the time, the room.
#[derive(Clone, Debug, PartialEq)]
pub struct EveningSettings {
    /// How many visitors are expected.
    pub visitors: Option<Visitors>,
    /// How they come.
    pub arrivals: Option<Arrivals>,
    /// How many pieces a visitor draws.
    pub pieces_each: Option<f64>,
    /// When they begin.
    pub start: Option<Clock>,
    /// How long they draw, in minutes.
    pub minutes: Option<f64>,
    /// How many can sit and draw at once.
    pub seats: Option<usize>,
    /// How many helpers hand out pieces.
    pub giving_out: Option<usize>,
    /// How many helpers hang squares.
    pub hanging: Option<usize>,
    /// How long a helper takes to hand out a piece, in seconds.
    pub giving_out_seconds: usize,
    /// How long a helper takes to hang a square, in seconds.
    pub hanging_seconds: usize,
    /// The height of the wall's lower edge over the floor, in mm.
    pub hang_mm: Option<f64>,
    /// The place there is for the wall and its cards.
    pub wall: Option<Room>,
    /// How long a visitor needs for a plain, an easy, a medium and a hard piece, in minutes; never falling.
    pub minutes_a_piece: [f64; 4],
}

impl Default for EveningSettings {
    fn default() -> Self {
        Self {
            visitors: None,
            arrivals: None,
            pieces_each: None,
            start: None,
            minutes: None,
            seats: None,
            giving_out: None,
            hanging: None,
            giving_out_seconds: USUAL_SECONDS,
            hanging_seconds: USUAL_SECONDS,
            hang_mm: None,
            wall: None,
            minutes_a_piece: USUAL_MINUTES_A_PIECE,
        }
    }
}

/// A place on a wall of the building.
///
/// ```
/// use everysquare::plan::settings::Room;
/// assert_eq!(Room::read("2.4x1.8m"), Some(Room { width_mm: 2400.0, height_mm: 1800.0 }));
/// assert_eq!(Room::read("8 x 6 ft"), Some(Room { width_mm: 2438.4, height_mm: 1828.8 }));
/// assert_eq!(Room::read("3"), None);
/// ```
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct Room {
    /// Its width.
    pub width_mm: f64,
    /// Its height.
    pub height_mm: f64,
}

/// Longest time in minutes between a start and an end; what is longer by the clock has the two swapped.
pub const LONGEST_BY_CLOCK: f64 = 16.0 * 60.0;
/// A length that is the last bits of a sum, in mm.
const ROUNDING_MM: f64 = 1e-6;
/// Units of a room, in mm.
const UNITS: [(&str, f64); 5] =
    [("mm", 1.0), ("cm", 10.0), ("m", 1_000.0), ("in", MM_PER_INCH), ("ft", 12.0 * MM_PER_INCH)];
/// What people write for a unit, a cross or a decimal point.
const SPELLINGS: [(&str, &str); 16] = [
    ("feet", "ft"),
    ("foot", "ft"),
    ("pies", "ft"),
    ("inches", "in"),
    ("pulg", "in"),
    ("meters", "m"),
    ("metres", "m"),
    ("metros", "m"),
    ("\u{2019}", "ft"),
    ("'", "ft"),
    ("\u{201d}", "in"),
    ("\"", "in"),
    ("by", "x"),
    ("por", "x"),
    ("×", "x"),
    (",", "."),
];

/// A number and the letters behind it.
fn measured(text: &str) -> Option<(f64, &str)> {
    let end = text.find(|c: char| !c.is_ascii_digit() && c != '.').unwrap_or(text.len());
    let (digits, unit) = text.split_at(end);
    Some((digits.parse().ok()?, unit))
}

impl Room {
    /// What is allowed, for whoever is refused.
    #[must_use]
    pub fn allowed() -> Sentence {
        Sentence::new("error-settings-room")
    }

    /// Reads width, `x`, height and a unit: m, cm, mm, ft or in, behind the height or behind both, spelled out or with marks for feet and
    /// inches; a decimal point or comma. `None` where it is something else or outside [`ROOM_MM`].
    ///
    /// ```
    /// use everysquare::plan::settings::Room;
    /// let room = Room::read("8x6ft");
    /// for other in ["8 FT x 6 FT", "8' × 6'", "8 by 6 feet", "96x72in", "2438,4 x 1828,8 mm"] {
    ///     assert_eq!(Room::read(other), room, "{other}");
    /// }
    /// ```
    #[must_use]
    pub fn read(written: &str) -> Option<Self> {
        let mut plain: String = written.to_lowercase().chars().filter(|c| !c.is_whitespace()).collect();
        for (other, own) in SPELLINGS {
            plain = plain.replace(other, own);
        }
        let (width, height) = plain.split_once('x')?;
        let (height, unit) = measured(height)?;
        let (width, own) = measured(width)?;
        let side = |value: f64, unit: &str| -> Option<f64> {
            let mm = UNITS.iter().find(|(name, _)| *name == unit)?.1;
            let rounded = (value * mm * 1e4).round() / 1e4; // 8 ft are 2438.4 mm and not 2438.3999999999996
            ROOM_MM.contains(&rounded).then_some(rounded)
        };
        let own = if own.is_empty() { unit } else { own };
        Some(Self { width_mm: side(width, own)?, height_mm: side(height, unit)? })
    }

    /// Whether something so wide and high fits, but for the last bits of a sum.
    #[must_use]
    pub fn holds(&self, width_mm: f64, height_mm: f64) -> bool {
        width_mm <= self.width_mm + ROUNDING_MM && height_mm <= self.height_mm + ROUNDING_MM
    }

    /// As event.toml has it: in whole feet or inches where both sides are, else in mm.
    ///
    /// ```
    /// use everysquare::plan::settings::Room;
    /// let written = |read: &str| Room::read(read).unwrap().written();
    /// assert_eq!([written("4x6ft"), written("30x40in"), written("2.4x1.8m")], ["4x6ft", "30x40in", "2400x1800mm"]);
    /// ```
    #[must_use]
    pub fn written(&self) -> String {
        let sides = [self.width_mm, self.height_mm];
        let rounded = |mm: f64| (mm * 1e4).round() / 1e4; // 5 × 127.2 are 636 and not 636.0000000000001
        let whole = |unit_mm: f64| {
            let counts = sides.map(|mm| rounded(mm / unit_mm));
            counts.iter().all(|count| count.fract() == 0.0 && *count > 0.0).then_some(counts)
        };
        let units = [("ft", 12.0 * MM_PER_INCH), ("in", MM_PER_INCH)];
        let told = units.iter().find_map(|(unit, mm)| Some((*unit, whole(*mm)?)));
        let (unit, [width, height]) = told.unwrap_or(("mm", sides.map(rounded)));
        format!("{width}x{height}{unit}")
    }
}

pub(super) fn read(section: &Section) -> Result<EveningSettings, SettingsError> {
    let (least, most) = (MINUTES_A_PIECE.start(), MINUTES_A_PIECE.end());
    let allowed = Sentence::new("error-settings-minutes-a-piece").with("least", *least).with("most", *most);
    let minutes_a_piece = section.numbers("minutes_a_piece", allowed, |minutes: &[f64; 4]| {
        minutes.iter().all(|one| MINUTES_A_PIECE.contains(one)) && minutes.is_sorted()
    })?;
    let start = section.clock("start")?;
    Ok(EveningSettings {
        visitors: section.visitors("visitors")?,
        arrivals: section.choice("arrivals")?,
        pieces_each: section.number("pieces_each", &PIECES_EACH, "error-settings-number")?,
        start,
        minutes: minutes(section, start)?,
        seats: section.whole("seats", &SEATS)?,
        giving_out: section.whole("giving_out", &HELPERS)?,
        hanging: section.whole("hanging", &HELPERS)?,
        giving_out_seconds: section.whole("giving_out_seconds", &SECONDS)?.unwrap_or(USUAL_SECONDS),
        hanging_seconds: section.whole("hanging_seconds", &SECONDS)?.unwrap_or(USUAL_SECONDS),
        hang_mm: section.millimetres("hang_mm", &HANG_MM)?,
        wall: section.text("wall", Room::allowed(), Room::read)?,
        minutes_a_piece: minutes_a_piece.unwrap_or(USUAL_MINUTES_A_PIECE),
    })
}

/// Minutes of drawing: as they are given, or from start to end.
fn minutes(section: &Section, start: Option<Clock>) -> Result<Option<f64>, SettingsError> {
    let minutes = section.number("minutes", &MINUTES, "error-settings-minutes")?;
    let Some(end) = section.clock("end")? else { return Ok(minutes) };
    let refuse = |why: &'static str| Err(section.refuse("end", Sentence::new(why)));
    match (start, minutes) {
        (_, Some(_)) => refuse("error-settings-end-and-minutes"),
        (None, None) => refuse("error-settings-end-alone"),
        (Some(start), None) => match float(start.until(end)) {
            minutes if minutes > LONGEST_BY_CLOCK => refuse("error-settings-end-long"),
            minutes if MINUTES.contains(&minutes) => Ok(Some(minutes)),
            _ => refuse("error-settings-end"),
        },
    }
}

pub(super) fn written(evening: &EveningSettings, words: &Words) -> String {
    let own = |name: &str, value: Option<String>, usual: &str, means: &str| {
        let means = words.say(means, &[("choices", quoted::<Arrivals>().into())]);
        match value {
            Some(value) => line(name, &value, &means),
            None => example(name, usual, &means),
        }
    };
    let whole = |value: Option<usize>| value.map(|count| count.to_string());
    let but = |value: usize, usual: usize| (value != usual).then(|| value.to_string());
    let minutes = format!("[{}]", evening.minutes_a_piece.map(number).join(", "));
    let usual_seconds = USUAL_SECONDS.to_string();
    [
        "[evening]\n".to_owned(),
        own("visitors", evening.visitors.map(Visitors::written), "\"60-120\"", "event-visitors"),
        own("arrivals", evening.arrivals.map(|how| text(how.word())), "\"drifting\"", "event-arrivals"),
        own("pieces_each", evening.pieces_each.map(number), "1.0", "event-pieces-each"),
        own("start", evening.start.map(|start| text(&start.written())), "\"18:30\"", "event-start"),
        own("minutes", evening.minutes.map(number), "90", "event-minutes"),
        own("seats", whole(evening.seats), "30", "event-seats"),
        own("giving_out", whole(evening.giving_out), "1", "event-giving-out"),
        own("hanging", whole(evening.hanging), "2", "event-hanging"),
        own(
            "giving_out_seconds",
            but(evening.giving_out_seconds, USUAL_SECONDS),
            &usual_seconds,
            "event-giving-out-seconds",
        ),
        own(
            "hanging_seconds",
            but(evening.hanging_seconds, USUAL_SECONDS),
            &usual_seconds,
            "event-hanging-seconds",
        ),
        own("wall", evening.wall.map(|room| text(&room.written())), "\"2.4x1.8m\"", "event-room"),
        own("hang_mm", evening.hang_mm.map(number), "600", "event-hang-mm"),
        line("minutes_a_piece", &minutes, &words.say("event-minutes-a-piece", &[])),
    ]
    .concat()
}
