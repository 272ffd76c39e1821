//! Templates of all codes of the event, in every way a photo may show them.
//!
//! A code is compared on a lattice of two places a module, without its quiet zone. A `Templates` holds the
//! templates of all codes in one view: after one blur, bleached by the sun or not, locally normalised or not.
//! What all codes share (finder patterns, timing, the first letters of the text) says *whether and where*
//! there is a code; the rest says
//! *which*:
//!
//! ```text
//!   seen = light · (1, x, y) + contrast · (shared part + own part) + noise
//! ```
//!
//! Light and shared part are projected out; a code's score is the correlation of its own part with what is
//! left. No error correction is needed: two codes of an event differ in at least 50 of 441 modules.

use std::ops::Range;
use std::sync::OnceLock;

use rayon::prelude::*;

use super::template::{LATTICE, PER_MODULE};
use super::templates::{Rendering, Seen, Templates};
use crate::plan::code::SIDE;
use crate::plan::{Cell, Modules, Printed};

const fn plain(blur: f64, drowned: f32) -> Rendering {
    Rendering { blur, drowned, evened: false }
}

const fn evened(blur: f64, drowned: f32) -> Rendering {
    Rendering { blur, drowned, evened: true }
}

/// Views in which codes are compared: blur in modules, bleaching as a share of full dark.
///
/// A phone's 0.7–1.0 px, its pixels and the interpolation make a blur of 1.25 modules at 0.8 px a module and
/// 0.2 at 6. In full sun the sensor clips: of a bleached code only those places show that are darker than
/// that share.
const VIEWS: [Rendering; 18] = [
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
/// Number of views, the first of [`VIEWS`], that are neither bleached nor normalised.
const PLAIN: usize = 6;
/// Maximum number of views in which one place is compared with the codes: those whose shared part fits best.
const VIEWS_TRIED: usize = 3;

/// Preparation of the samples under a pose before they are compared.
#[derive(Copy, Clone, Debug, PartialEq, Eq)]
pub enum Light {
    /// Samples as the photo has them.
    AsSeen,
    /// Local normalisation of light and contrast: for shadow edges across a code.
    Evened,
}

impl Light {
    fn views(self) -> Range<usize> {
        match self {
            Self::AsSeen => 0..13,
            Self::Evened => 13..VIEWS.len(),
        }
    }

    /// Index of the view for the first alignment: blurred enough to pull a pose in from a module away.
    pub(super) fn first_view(self) -> usize {
        match self {
            Self::AsSeen => 2,
            Self::Evened => 14,
        }
    }
}

/// Owner of a code.
#[derive(Copy, Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Owner {
    /// Square, by the cell where it belongs.
    Square(Cell),
    /// Card, by its index in [`Printed::cards`].
    Card(usize),
}

/// Codebook: all codes of an event, and their templates in every view.
#[derive(Debug)]
pub struct Codebook {
    owner: Vec<Owner>,
    modules: Vec<Modules>,
    sheets: [OnceLock<Templates>; VIEWS.len()],
    by_module: [OnceLock<Vec<f32>>; VIEWS.len()],
}

impl Codebook {
    /// Codebook of all squares, then of all cards, in the order of `printed`; computes all templates, in parallel.
    #[must_use]
    pub fn new(printed: &Printed) -> Self {
        let squares = printed.squares.iter().map(|s| (Owner::Square(s.cell), s.modules.clone()));
        let cards = printed.cards.iter().enumerate().map(|(i, c)| (Owner::Card(i), c.modules.clone()));
        let (owner, modules) = squares.chain(cards).unzip();
        let codebook = Self { owner, modules, sheets: Default::default(), by_module: Default::default() };
        (0..VIEWS.len()).into_par_iter().for_each(|view| {
            codebook.sheet(view);
        });
        codebook
    }

    /// Owner of the code at an index of the codebook.
    #[must_use]
    pub fn owner(&self, at: usize) -> Owner {
        self.owner[at]
    }

    /// Modules of the code at an index of the codebook.
    pub(super) fn modules(&self, at: usize) -> &Modules {
        &self.modules[at]
    }

    /// Blur of a view, in modules, and the darkness below which nothing shows in it, as a share of full dark.
    pub(super) fn view(&self, view: usize) -> (f64, f32) {
        (VIEWS[view].blur, VIEWS[view].drowned)
    }

    /// Templates of all codes in one view, computed at the first call.
    pub(super) fn sheet(&self, view: usize) -> &Templates {
        self.sheets[view].get_or_init(|| Templates::new(VIEWS[view], &self.modules))
    }

    /// Shared part in one view: 21 × 21 levels, one a module, row by row, light projected out; computed at the first call.
    pub(super) fn shared_by_module(&self, view: usize) -> &[f32] {
        self.by_module[view].get_or_init(|| {
            let fine = &self.sheet(view).shared;
            let level = |module: usize| {
                let at = module / SIDE * PER_MODULE * LATTICE + module % SIDE * PER_MODULE;
                [at, at + 1, at + LATTICE, at + LATTICE + 1].map(|at| fine[at]).iter().sum::<f32>() / 4.0
            };
            (0..SIDE * SIDE).map(level).collect()
        })
    }

    /// Index of the plain view whose blur, in modules, is nearest to `blur` by ratio.
    pub(super) fn view_near(&self, blur: f64) -> usize {
        let away = |view: &usize| (VIEWS[*view].blur / blur).ln().abs();
        (0..PLAIN).min_by(|a, b| away(a).total_cmp(&away(b))).unwrap_or(0)
    }

    /// Views whose shared part fits best what is seen, as correlation and index, best first.
    pub(super) fn views_of(&self, seen: &Seen<'_>, light: Light) -> Vec<(f32, usize)> {
        let mut views: Vec<(f32, usize)> =
            light.views().map(|view| (self.sheet(view).shared_fit(seen), view)).collect();
        views.sort_by(|a, b| b.0.total_cmp(&a.0));
        views.truncate(VIEWS_TRIED);
        views
    }

    /// Template of one code in one view, light projected out, of length 1; lattice places, row by row.
    pub(super) fn drawn(&self, at: usize, view: usize) -> Vec<f32> {
        self.sheet(view).drawn(&self.modules[at])
    }
}
