//! Levels: how hard a piece is to redraw, and which score has which level.
//!
//! ```
//! use everysquare::plan::level::Level;
//! use everysquare::plan::settings::LevelSettings;
//! let usual = LevelSettings::default(); // easy from 0.5, medium from 3.5, hard from 9
//! assert_eq!(usual.levels_of(&[0.0, 1.0, 9.5]), [Level::Plain, Level::Easy, Level::Hard]);
//! ```

use serde::Serialize;

use crate::frame::{float, floor_index};

/// Level of how hard a piece is to redraw, the easiest first.
#[derive(Copy, Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Level {
    /// One colour all over.
    Plain,
    /// A shape or two.
    Easy,
    /// Several shapes or colours.
    Medium,
    /// Many small shapes, or long and winding edges.
    Hard,
}

impl Level {
    /// All of them, the easiest first.
    pub const ALL: [Self; 4] = [Self::Plain, Self::Easy, Self::Medium, Self::Hard];

    /// Index in [`Level::ALL`].
    #[must_use]
    pub fn index(self) -> usize {
        match self {
            Self::Plain => 0,
            Self::Easy => 1,
            Self::Medium => 2,
            Self::Hard => 3,
        }
    }
}

/// Level of each score, by bounds: the least score of easy, medium and hard.
#[must_use]
pub fn bounded(scores: &[f64], bounds: [f64; 3]) -> Vec<Level> {
    let level = |score: &f64| Level::ALL[bounds.iter().filter(|bound| score >= bound).count()];
    scores.iter().map(level).collect()
}

/// Level of each score: all from `least` on is divided into three parts as equal as ties allow. Equal scores have equal levels, and a higher
/// score never a lower one.
#[must_use]
pub fn balanced(scores: &[f64], least: f64) -> Vec<Level> {
    let mut drawn: Vec<f64> = scores.iter().copied().filter(|score| *score >= least).collect();
    drawn.sort_by(f64::total_cmp);
    let level = |score: &f64| {
        if *score < least {
            return Level::Plain;
        }
        // where the middle of all pieces of this score lies among the drawn ones, 0 … 1
        let below = drawn.partition_point(|other| other < score);
        let not_above = drawn.partition_point(|other| other <= score);
        let place = float(below + not_above) / 2.0 / float(drawn.len());
        Level::ALL[1 + floor_index(place * 3.0).min(2)]
    };
    scores.iter().map(level).collect()
}
