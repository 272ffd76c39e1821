//! The mark that stands for a cell wherever the wall is drawn with characters: each state has its own, so
//! none needs a colour.

use crate::judge::State;
use crate::words::Words;

use super::json::{Report, ReportCell};

/// What one cell shows; the order is the order of the legend.
#[derive(Copy, Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum Kind {
    Right,
    Wrong,
    WrongShort,
    WrongTurned,
    Stranger,
    Turned,
    Empty,
    Unread,
    Unseen,
    Reserve,
    Free,
}

impl Kind {
    const ALL: [Self; 11] = [
        Self::Right,
        Self::Wrong,
        Self::WrongShort,
        Self::WrongTurned,
        Self::Stranger,
        Self::Turned,
        Self::Empty,
        Self::Unread,
        Self::Unseen,
        Self::Reserve,
        Self::Free,
    ];

    /// The state it belongs to.
    pub(super) fn state(self) -> State {
        match self {
            Self::Right => State::Right,
            Self::Wrong | Self::WrongShort | Self::WrongTurned | Self::Stranger => State::Wrong,
            Self::Turned => State::Turned,
            Self::Empty => State::Empty,
            Self::Unread => State::Unread,
            Self::Unseen => State::Unseen,
            Self::Reserve => State::Reserve,
            Self::Free => State::Free,
        }
    }

    /// The id of its words in the legend.
    fn words(self) -> &'static str {
        match self {
            Self::Right => "legend-right",
            Self::Wrong => "legend-wrong",
            Self::WrongShort => "legend-wrong-short",
            Self::WrongTurned => "legend-wrong-turned",
            Self::Stranger => "legend-stranger",
            Self::Turned => "legend-turned",
            Self::Empty => "legend-empty",
            Self::Unread => "legend-unread",
            Self::Unseen => "legend-unseen",
            Self::Reserve => "legend-reserve",
            Self::Free => "legend-free",
        }
    }
}

/// How cells are marked in one medium.
#[derive(Copy, Clone, Debug)]
pub(super) struct Marks {
    /// Characters a cell, one of them for the gap to the next.
    pub room: usize,
    /// Where the top of a turned square points: right, down, left.
    pub arrows: [&'static str; 3],
}

/// One line of a legend.
pub(super) struct Entry {
    /// What it explains.
    pub kind: Kind,
    /// The mark, or an example of it.
    pub mark: String,
    /// What it means.
    pub said: String,
}

impl Marks {
    /// The kind and the mark of a cell. All but `[ ]` are shorter than `room`.
    pub(super) fn of(self, cell: &ReportCell) -> (Kind, String) {
        let [right, down, left] = self.arrows;
        let arrow = match cell.turn_degrees {
            90 => right,
            180 => down,
            270 => left,
            _ => "",
        };
        match (cell.state, &cell.found) {
            (State::Right, _) => (Kind::Right, "·".into()),
            (State::Turned, _) => (Kind::Turned, arrow.into()),
            (State::Empty, _) => (Kind::Empty, "[ ]".into()),
            (State::Unread, _) => (Kind::Unread, "?".into()),
            (State::Unseen, _) => (Kind::Unseen, "-".into()),
            (State::Reserve, _) => (Kind::Reserve, "+".into()),
            (State::Free, _) => (Kind::Free, "/".into()),
            (State::Wrong, None) => (Kind::Stranger, "!".into()),
            (State::Wrong, Some(found)) if !arrow.is_empty() && found.len() + 1 < self.room => {
                (Kind::WrongTurned, format!("{found}{arrow}"))
            }
            (State::Wrong, Some(found)) if found.len() < self.room => (Kind::Wrong, found.clone()),
            (State::Wrong, Some(_)) => (Kind::WrongShort, "x".into()),
        }
    }

    fn example(self, kind: Kind) -> String {
        match kind {
            Kind::Right => "·".into(),
            Kind::Wrong => "B2".into(),
            Kind::WrongTurned => format!("B2{}", self.arrows[1]),
            Kind::WrongShort => "x".into(),
            Kind::Stranger => "!".into(),
            Kind::Turned => self.arrows.join(" "),
            Kind::Empty => "[ ]".into(),
            Kind::Unread => "?".into(),
            Kind::Unseen => "-".into(),
            Kind::Reserve => "+".into(),
            Kind::Free => "/".into(),
        }
    }
}

/// The marks that are on this wall, explained.
pub(super) fn legend(report: &Report, marks: Marks, words: &Words) -> Vec<Entry> {
    let used: Vec<Kind> = report.cells.iter().map(|cell| marks.of(cell).0).collect();
    let kinds = Kind::ALL.into_iter().filter(|kind| used.contains(kind));
    kinds.map(|kind| Entry { kind, mark: marks.example(kind), said: words.say(kind.words(), &[]) }).collect()
}

/// The digits of a label.
pub(super) fn row_number(cell: &ReportCell) -> &str {
    cell.label.trim_start_matches(|c: char| !c.is_ascii_digit())
}
