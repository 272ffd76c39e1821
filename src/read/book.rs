//! The codes of the event as a photo shows them, and the comparison of what is seen with all of them at once.
//!
//! A code is compared on a lattice of two places a module, without its quiet zone. A `Sheet` holds every
//! code of the event as it looks there in one view: after a blur, and bleached by the sun or not. What all codes share (finder
//! patterns, timing, the first letters of the text) says *whether and where* there is a code; the rest says *which*:
//!
//! ```text
//!   seen = light · (1, x, y) + contrast · (shared part + what is this code's own) + noise
//! ```
//!
//! Light and shared part are projected out; the correlation of what is left with each code's own part is its score.
//! No error correction is needed: two codes of an event differ in at least 50 of 441 modules.

use std::ops::Range;
use std::sync::OnceLock;

use rayon::prelude::*;

use super::sheet::{Sheet, View};
use crate::plan::{Cell, Modules, Printed};

const fn plain(blur: f64, drowned: f32) -> View {
    View { blur, drowned, evened: false }
}

const fn evened(blur: f64, drowned: f32) -> View {
    View { blur, drowned, evened: true }
}

/// How a photo may show a code.
///
/// A phone's 0.7–1.0 px, its pixels and the interpolation make a blur of 1.25 modules at 0.8 px a module and 0.2 at 6. In
/// full sun the sensor clips: of a bleached code only those places show that are darker than a share of full dark.
const VIEWS: [View; 18] = [
    plain(0.2, 0.0),
    plain(0.35, 0.0),
    plain(0.5, 0.0),
    plain(0.7, 0.0),
    plain(0.95, 0.0),
    plain(1.25, 0.0),
    plain(0.4, 0.25),
    plain(0.6, 0.25),
    plain(0.5, 0.5),
    plain(0.7, 0.5),
    plain(0.5, 0.7),
    plain(0.7, 0.7),
    plain(0.7, 0.82),
    evened(0.35, 0.0),
    evened(0.5, 0.0),
    evened(0.7, 0.0),
    evened(0.95, 0.0),
    evened(0.5, 0.5),
];
/// Number of views, the first ones, that are neither bleached nor evened.
const PLAIN: usize = 6;
/// Number of views compared in full.
const VIEWS_TRIED: usize = 3;
/// Number of best codes kept in a match.
pub(super) const RANKED: usize = 5;

/// How what is seen is prepared before it is compared.
#[derive(Copy, Clone, Debug, PartialEq, Eq)]
pub enum Light {
    /// As it is.
    AsSeen,
    /// Light and contrast evened out from place to place: for shadow edges across a code.
    Evened,
}

impl Light {
    fn views(self) -> Range<usize> {
        match self {
            Self::AsSeen => 0..13,
            Self::Evened => 13..VIEWS.len(),
        }
    }

    /// The view for finding the way: blurred enough to pull a pose in from a module away.
    pub(super) fn first_view(self) -> usize {
        match self {
            Self::AsSeen => 2,
            Self::Evened => 14,
        }
    }
}

/// Whose code it is.
#[derive(Copy, Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Whose {
    /// The square that belongs in a cell.
    Square(Cell),
    /// A card, by its place in [`Printed::cards`].
    Card(usize),
}

/// All codes of an event.
#[derive(Debug)]
pub struct Book {
    whose: Vec<Whose>,
    modules: Vec<Modules>,
    sheets: [OnceLock<Sheet>; VIEWS.len()],
}

/// How a code does against the photo's own pixels.
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct Weight {
    /// The share of what is seen, light taken out, that the code leaves unexplained.
    pub left: f32,
    /// Ratio of the residual where codes differ to that where all codes of the world are the same.
    pub rest: f32,
    /// Log-likelihood ratio (natural) to the second best code.
    pub lead: f32,
    /// Standard deviation of the blur in pixels.
    pub blur: f32,
    /// Standard deviation of the blur in modules.
    pub blur_modules: f32,
    /// Ratio of the residual that looks like flipped modules to what noise alone would give: 1 where all is noise.
    pub flips: f32,
    /// How dark its dark modules are, as a share of the paper's brightness.
    pub ink: f32,
}

/// The outcome of one comparison.
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct Match {
    /// Place in the book of the best code.
    pub best: usize,
    /// Correlation of what is seen with the best code's own part, −1 … 1.
    pub score: f32,
    /// Correlation of the second best code.
    pub second: f32,
    /// Correlation of what is seen with what all codes share, −1 … 1.
    pub shared: f32,
    /// The best code's own part as strong as it is seen, over what the shared part's strength lets expect: 1 for that very
    /// code, less for one that is only like it.
    pub strength: f32,
    /// Whether the view it was compared in is a bleached one.
    pub bleached: bool,
    /// How the best code does against the photo's own pixels.
    pub weight: Option<Weight>,
    /// The best codes, best first.
    pub(super) ranked: [usize; RANKED],
}

impl Book {
    /// The codes of all squares, then of all cards.
    #[must_use]
    pub fn new(printed: &Printed) -> Self {
        let squares = printed.squares.iter().map(|s| (Whose::Square(s.cell), s.modules.clone()));
        let cards = printed.cards.iter().enumerate().map(|(i, c)| (Whose::Card(i), c.modules.clone()));
        let (whose, modules) = squares.chain(cards).unzip();
        Self { whose, modules, sheets: Default::default() }
    }

    /// Works out all views, many at a time; without it that is done when the first photo is read.
    pub fn prepare(&self) {
        (0..VIEWS.len()).into_par_iter().for_each(|view| {
            self.sheet(view);
        });
    }

    /// Whose the code at a place in the book is.
    #[must_use]
    pub fn whose(&self, at: usize) -> Whose {
        self.whose[at]
    }

    /// A code's modules.
    pub(super) fn modules(&self, at: usize) -> &Modules {
        &self.modules[at]
    }

    /// The blur, in modules, and the darkness below which nothing shows, of one of the views.
    pub(super) fn view(&self, view: usize) -> (f64, f32) {
        (VIEWS[view].blur, VIEWS[view].drowned)
    }

    /// The sheet of one of the views.
    pub(super) fn sheet(&self, view: usize) -> &Sheet {
        self.sheets[view].get_or_init(|| Sheet::new(VIEWS[view], &self.modules))
    }

    /// The plain view whose blur, in modules, is nearest.
    pub(super) fn view_near(&self, blur: f64) -> usize {
        let away = |view: &usize| (VIEWS[*view].blur / blur).ln().abs();
        (0..PLAIN).min_by(|a, b| away(a).total_cmp(&away(b))).unwrap_or(0)
    }

    /// The views whose shared part fits best what is seen, best first, and how well it does.
    pub(super) fn views_of(&self, seen: &[f32], light: Light) -> Vec<(f32, usize)> {
        let mut views: Vec<(f32, usize)> =
            light.views().map(|view| (self.sheet(view).shared_fit(seen), view)).collect();
        views.sort_by(|a, b| b.0.total_cmp(&a.0));
        views.truncate(VIEWS_TRIED);
        views
    }

    /// A code in one of the views, without light, of length 1.
    pub(super) fn drawn(&self, at: usize, view: usize) -> Vec<f32> {
        self.sheet(view).drawn(&self.modules[at])
    }
}
