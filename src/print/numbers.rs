//! The evening's numbers as sentences name them: what helpers' pages and the organiser's guide have in common.

use super::Sources;
use super::blocks::{Block, Writer};
use super::camera_place::CameraPlace;
use super::lengths::both;
use super::pencils::Sets;
use super::piece_back::level_word;
use super::room::SEATS_A_TABLE;
use super::table_card::cards_for;
use crate::frame::{MM_PER_INCH, ceil_index, float, floor_index, round_index};
use crate::plan::cell::column_letters;
use crate::plan::crowd::{Evening, Means, People, RowHeight, STOOL_MM};
use crate::plan::settings::{Choice, Units};
use crate::plan::{Cell, Level};
use crate::words::{FluentValue, Words};

/// A short roll of tape, in mm: 80 feet. Common practice, no source.
const ROLL_MM: f64 = 80.0 * MM_PER_FOOT;

/// Every number that a sentence may name.
pub(super) fn numbers(sources: &Sources, evening: &Evening) -> Vec<(&'static str, FluentValue<'static>)> {
    let Sources { settings, printed, .. } = *sources;
    let (grid, of_picture) = (&printed.grid, printed.grid.within_border());
    let (given, wall, supplies) = (&evening.given, &evening.wall, &evening.supplies);
    let length = |mm: f64| FluentValue::from(both(sources, mm));
    let count = |count: usize| FluentValue::from(count);
    let place = CameraPlace::of(settings, wall.hang_mm);
    let scale = grid.square_mm / grid.piece_mm;
    let (sets, label) = (Sets::of(sources, evening), Example::of(sources));
    vec![
        ("event", settings.name.clone().into()),
        ("columns", count(of_picture.columns)),
        ("rows", count(of_picture.rows)),
        ("squares", count(grid.asked())),
        ("border", count(grid.border_count())),
        ("colours", count(sources.facts.pencils.len())),
        ("square", length(grid.square_mm)),
        ("piece", length(grid.piece_mm)),
        ("scale", decimals(round_index(scale * 10.0), 10).into()),
        ("width", length(wall.width_mm)),
        ("height", length(wall.height_mm)),
        ("width-with-cards", length(wall.width_with_cards_mm)),
        ("height-with-cards", length(wall.height_with_cards_mm)),
        ("hang", length(wall.hang_mm)),
        ("top", length(wall.hang_mm + wall.height_mm)),
        ("visitors", given.visitors.shown().into()),
        ("minutes", count(round_index(given.minutes))),
        ("start", given.moment(0.0, sources.words).into()),
        ("end", given.moment(given.minutes, sources.words).into()),
        ("giving-out", count(evening.scene.giving_out.most())),
        ("hanging", count(evening.scene.hanging.most())),
        ("seats", count(given.seats)),
        ("tables", count(given.seats.div_ceil(SEATS_A_TABLE))),
        ("step-cards", count(cards_for(given.seats))),
        ("up", evening.expected.up.shown().into()),
        ("tape", about(sources, supplies.tape_mm).into()),
        ("rolls", count(ceil_index(supplies.tape_mm / ROLL_MM))),
        ("cards", count(supplies.cards)),
        ("paper-area", paper_area(sources, supplies.paper_m2).into()),
        ("sharpeners", count(supplies.sharpeners)),
        ("erasers", count(supplies.erasers)),
        ("pencils-in-all", count(supplies.pencils_in_all())),
        ("pencils-in-sets", count(sets.pencils_in_all())),
        ("sets", count(sets.tables)),
        ("stool", length(STOOL_MM)),
        ("roll", about(sources, ROLL_MM).into()),
        ("label", label.label),
        ("label-column", label.column),
        ("label-row", label.row),
        ("rows-from", grid.rows_from.word().into()),
        ("distance", about(sources, place.distance_mm).into()),
        ("phone-height", about(sources, place.height_mm).into()),
        ("photos", count(place.photos)),
        ("held", if place.sideways { "sideways" } else { "upright" }.into()),
        ("easy-minutes", count(round_index(given.minutes_a_piece[Level::Easy.index()]))),
    ]
}

/// Square feet in a square metre.
pub(super) const FEET2_A_M2: f64 = 10.763_910_4;

/// A label of this wall as an example, with what it says.
pub(super) struct Example {
    pub label: FluentValue<'static>,
    pub column: FluentValue<'static>,
    pub row: FluentValue<'static>,
}

impl Example {
    /// That of a square that is on no edge, where there is one.
    pub fn of(sources: &Sources) -> Self {
        let grid = &sources.printed.grid;
        let cell = Cell { column: grid.columns / 3, row: grid.rows / 3 };
        Self {
            label: grid.label(cell).into(),
            column: column_letters(cell.column).into(),
            row: grid.row_number(cell.row).to_string().into(),
        }
    }
}

/// Paper on the wall, in both units, rounded up.
fn paper_area(sources: &Sources, m2: f64) -> String {
    let (metres, feet) = (decimals(ceil_index(m2 * 10.0), 10), ceil_index(m2 * FEET2_A_M2));
    let id = match sources.settings.print.units {
        Units::Inch => "paper-feet",
        Units::Mm => "paper-metres",
    };
    sources.words.say(id, &[("feet", feet.into()), ("metres", metres.into())])
}

/// A length for which half a foot is near enough, rounded up, in both units.
pub(super) fn about(sources: &Sources, mm: f64) -> String {
    let feet = ceil_index(mm / MM_PER_FOOT * 2.0 - SLACK);
    let (metres, feet) = (decimals(ceil_index(mm / 100.0 - SLACK), 10), decimals(feet, 2));
    let id = match sources.settings.print.units {
        Units::Inch => "about-feet",
        Units::Mm => "about-metres",
    };
    sources.words.say(id, &[("feet", feet.into()), ("metres", metres.into())])
}

/// How high somebody reaches, in both units, rounded down.
fn reach(sources: &Sources, mm: f64) -> String {
    let (inches, metres) = (floor_index(mm / MM_PER_INCH), decimals(floor_index(mm / 10.0), 100));
    let id = match sources.settings.print.units {
        Units::Inch => "reach-inches",
        Units::Mm => "reach-metres",
    };
    sources.words.say(id, &[("inches", inches.into()), ("metres", metres.into())])
}

/// Millimetres in a foot of twelve inches.
pub(super) const MM_PER_FOOT: f64 = 12.0 * MM_PER_INCH;
/// A part of a step that is the last bits of a sum.
const SLACK: f64 = 1e-6;

/// A number of parts of one as a decimal number without zeros behind: 127 hundredths are `1.27`, 130 are `1.3`.
pub(super) fn decimals(count: usize, of: usize) -> String {
    (float(count) / float(of)).to_string()
}

/// The levels that pieces have: name, how many pieces, minutes a piece, and the minute from the start up to which one is handed
/// out.
pub(super) fn level_table(w: &Writer, evening: &Evening) -> Block {
    let given = &evening.given;
    let on_the_clock = given.start.is_some();
    let last = if on_the_clock { "helpers-last-clock" } else { "helpers-last" };
    let row = |level: Level| {
        let index = level.index();
        let last = evening.last_call(level);
        vec![
            level_word(w.sources, level),
            evening.pieces[index].to_string(),
            decimals(round_index(evening.given.minutes_a_piece[index] * 10.0), 10),
            if on_the_clock { given.moment(last, w.sources.words) } else { floor_index(last).to_string() },
        ]
    };
    Block::Table {
        heads: w.heads(&["helpers-level", "helpers-pieces", "helpers-minutes", last]),
        widths: vec![1.0, 1.0, 1.0, 1.6],
        rows: Level::ALL.into_iter().filter(|level| evening.pieces[level.index()] > 0).map(row).collect(),
    }
}

/// Who reaches which rows: who, from the floor, and how the higher ones are hung. Only the adults' line names a stool or a ladder.
pub(super) fn reach_table(w: &Writer, evening: &Evening) -> Block {
    let words = w.sources.words;
    let row = |(at, who): (usize, &People)| {
        let reached = |means: Means| {
            let rows: Vec<&RowHeight> =
                evening.wall.rows.iter().filter(|row| row.means()[at] == means).collect();
            span(&rows, words)
        };
        let said = words
            .say(&format!("people-{}", who.word()), &[("reach", reach(w.sources, who.reach_mm()).into())]);
        let by_another = if who.are_children() { "reach-adult-hangs" } else { "reach-other-hangs" };
        let higher = [
            (by_another, Means::Helper),
            ("reach-step-stool", Means::Stool),
            ("reach-stepladder", Means::Ladder),
        ];
        let higher: Vec<String> = higher
            .into_iter()
            .filter_map(|(id, means)| Some(words.say(id, &[("rows", reached(means)?.into())])))
            .collect();
        let none = || words.say("span-none", &[]);
        let higher = if higher.is_empty() { none() } else { higher.join("; ") };
        vec![said, reached(Means::Floor).unwrap_or_else(none), higher]
    };
    Block::Table {
        heads: w.heads(&["helpers-who", "helpers-floor", "helpers-help-needed"]),
        widths: vec![2.2, 1.0, 2.0],
        rows: People::ALL.iter().enumerate().map(row).collect(),
    }
}

/// “1 to 5”: rows that are neighbours; nothing where there is none.
fn span(rows: &[&RowHeight], words: &Words) -> Option<String> {
    let numbers = || rows.iter().map(|row| row.number);
    match (numbers().min(), numbers().max()) {
        (Some(first), Some(last)) if first < last => {
            Some(words.say("span", &[("first", first.into()), ("last", last.into())]))
        }
        (Some(only), _) => Some(words.say("span-one", &[("row", only.into())])),
        _ => None,
    }
}

/// Rows side by side, so that a long table takes `across` times less height: each line has row 1 of every part, then row 2 …
pub(super) fn side_by_side<const N: usize>(rows: &[[String; N]], across: usize) -> Vec<Vec<String>> {
    let height = rows.len().div_ceil(across.max(1)).max(1);
    let parts: Vec<&[[String; N]]> = rows.chunks(height).collect();
    let line = |at: usize| {
        let cells =
            |part: &&[[String; N]]| part.get(at).map_or_else(|| vec![String::new(); N], |row| row.to_vec());
        parts.iter().flat_map(cells).collect()
    };
    (0..height.min(rows.len())).map(line).collect()
}

/// How many parts [`side_by_side`] makes of so many rows so that none has more than `most`, but not more than `across`.
pub(super) fn parts(rows: usize, most: usize, across: usize) -> usize {
    ceil_index(float(rows) / float(most.max(1))).clamp(1, across)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_long_table_is_divided_and_read_downwards() {
        let rows: Vec<[String; 1]> = (1..=5).map(|number: usize| [number.to_string()]).collect();
        assert_eq!(side_by_side(&rows, 2), [["1", "4"], ["2", "5"], ["3", ""]]);
        assert_eq!(side_by_side(&rows, 1).len(), 5);
        assert!(side_by_side::<1>(&[], 2).is_empty());
        assert_eq!([parts(12, 12, 2), parts(13, 12, 2), parts(99, 12, 2), parts(0, 12, 2)], [1, 2, 2, 1]);
    }

    #[test]
    fn decimals_have_no_zeros_behind() {
        assert_eq!([decimals(127, 100), decimals(130, 100), decimals(4, 2)], ["1.27", "1.3", "2"]);
    }
}
