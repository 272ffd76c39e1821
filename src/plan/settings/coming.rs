//! How visitors come: how many, and when.

use super::choice::Choice;
use crate::words::Sentence;

/// Visitors that an evening may have.
pub const VISITORS: std::ops::RangeInclusive<usize> = 1..=10_000;

/// Expected number of visitors: a range, or one number twice.
///
/// ```
/// use everysquare::plan::settings::Visitors;
/// assert_eq!(Visitors::read("60-120"), Visitors::new(60, 120));
/// assert_eq!(Visitors::read("80"), Visitors::new(80, 80));
/// assert_eq!(Visitors::read("120-60"), None);
/// ```
#[derive(Copy, Clone, Debug, PartialEq, Eq)]
pub struct Visitors {
    least: usize,
    most: usize,
}

impl Visitors {
    /// From `least` to `most`; `None` where they are turned round or outside [`VISITORS`].
    #[must_use]
    pub fn new(least: usize, most: usize) -> Option<Self> {
        let fits = least <= most && VISITORS.contains(&least) && VISITORS.contains(&most);
        fits.then_some(Self { least, most })
    }

    /// One number, kept in [`VISITORS`].
    #[must_use]
    pub fn exactly(count: usize) -> Self {
        let count = count.clamp(*VISITORS.start(), *VISITORS.end());
        Self { least: count, most: count }
    }

    /// Reads `80`, `60-120`, `60 to 120` or `60–120`.
    #[must_use]
    pub fn read(written: &str) -> Option<Self> {
        let number = |digits: &str| -> Option<usize> {
            let digits = digits.trim();
            digits.parse().ok().filter(|_| digits.bytes().all(|byte| byte.is_ascii_digit()))
        };
        let parts = ["-", "–", "to", ".."].iter().find_map(|between| written.split_once(between));
        match parts {
            Some((least, most)) => Self::new(number(least)?, number(most)?),
            None => number(written).and_then(|only| Self::new(only, only)),
        }
    }

    /// What is allowed, for whoever is refused.
    #[must_use]
    pub fn allowed() -> Sentence {
        let (least, most) = (VISITORS.start().to_string(), VISITORS.end().to_string());
        Sentence::new("error-settings-visitors").with("least", least).with("most", most)
    }

    /// The fewest.
    #[must_use]
    pub fn least(self) -> usize {
        self.least
    }

    /// The most.
    #[must_use]
    pub fn most(self) -> usize {
        self.most
    }

    /// Whether it is one number.
    #[must_use]
    pub fn is_exact(self) -> bool {
        self.least == self.most
    }

    /// As event.toml has it: `80`, or `"60-120"`.
    #[must_use]
    pub fn written(self) -> String {
        if self.is_exact() { self.least.to_string() } else { format!("\"{}-{}\"", self.least, self.most) }
    }

    /// As a table or sentence has it: `80`, or `60–120`.
    #[must_use]
    pub fn shown(self) -> String {
        if self.is_exact() { self.least.to_string() } else { format!("{}–{}", self.least, self.most) }
    }
}

/// How visitors arrive.
#[derive(Copy, Clone, Debug, PartialEq, Eq, Default)]
pub enum Arrivals {
    /// All within the first minutes.
    AtOnce,
    /// One by one or in families, most of them in the first half.
    #[default]
    Drifting,
    /// In classes, one after another over the whole time.
    InClasses,
}

impl Choice for Arrivals {
    const ALL: &'static [(Self, &'static str)] =
        &[(Self::AtOnce, "at-once"), (Self::Drifting, "drifting"), (Self::InClasses, "in-classes")];
}
