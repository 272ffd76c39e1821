//! Likeness: does the drawing belong to its square? Each is compared with all pieces of the picture in all
//! four turns.
//!
//! In goes a drawing, rectified, upright by its code, its light corrected; out comes whether it is its
//! paper's piece ([`Belongs`]), or, where the code cannot be read, which of the missing pieces it may be
//! ([`Pieces::suggest`]). Either is a hint to look and changes nothing by itself. What looks the same cannot
//! be told apart, and nothing is said of it.
//!
//! ```text
//!   FewColours, Printed ─▶ Pieces      every piece in 8 × 8 and 32 × 32 places
//!                            │
//!   drawing ─▶ 32 × 32 ──────┤        the code's box and 4 mm at the edges do not count
//!                            ▼
//!                         coarse      8 × 8, all pieces, four turns: the 32 that fit best go on, and the paper's own
//!                            ▼
//!                        compare      32 × 32: shapes with 4 mm of play, in the colours that this visitor used
//!                            ▼
//!               lead = how much better · how many times better: beyond a bound somebody should look
//! ```
//!
//! Pencils in a room are not the colours of a picture: [`Pieces::in_colours_of`] takes from the whole wall what each pencil really
//! looks like there. [`Pieces::judge_all`] does it first, and asks for more where a wall is
//! drawn freely.
//!
//! The constants come from made walls (`tools/likeness/main.rs`, which prints the figures), nothing from photographs. Twenty walls,
//! seeds 105 to 124, five pictures, 44 to 300 pixels a square, 2,210 drawings on their own paper; of wrong ones those of pieces that
//! are neither plain nor like the paper's own:
//!
//! | hands | found and rightly named | misnamed | right ones called wrong |
//! |---|---|---|---|
//! | as rehearsed: lines off by 1 to 4 mm, colours by 10 %; as [`Pieces::judge_all`] tells | 83.3 % of 287 | 0 | 0 |
//! | the same without asking for more where a wall is drawn freely | 89.5 % | 1 | 0 |
//! | twice that, without asking for more | 87.2 % of 281 | 1 | 1 |
//!
//! On nine photos by another simulator (`tests/photos/walls/straightened.rs`), where people leave drawings unfinished and take other pencils, and
//! the sun throws shadows: without asking for more 72 of 961 right ones called wrong, as it is told now 2 of 893.
//!
//! What limits it: pieces with little on them, such as one strip at an edge where tape and neighbours lie, and pale pencils beside
//! white ones on small photos. A wall in a room has fewer wrong drawings than these had; with one in a hundred, a right one called
//! wrong weighs more: under twice untrue hands about one find in twenty.

mod coarse;
mod compare;
mod piece;
mod plane;
mod say;

use image::RgbImage;
use image::imageops::thumbnail;
use rayon::prelude::*;

use crate::frame::{float, median_by, narrow};
use crate::picture::FewColours;
use crate::plan::code::{QUIET_ZONE, SIDE as CODE_SIDE};
use crate::plan::{Cell, Grid, Printed, Turn};

use compare::{Misfit, View};
use piece::Piece;
use plane::{Ink, PLACES, Plane, SIDE, turned_back};

pub use say::{about, about_unread};

/// Level of white paper in a drawing whose light is corrected. Where it is 10 off, plain paper counts as a
/// pale tint.
pub const PAPER_LEVEL: u8 = 245;
/// Number of pieces and turns that are compared finely, those best in the coarse comparison.
///
/// With 24 one in a hundred right ones is lost on photos of 40 pixels a square; half as many lose three.
const FINALISTS: usize = 32;
/// Minimum variance of a piece's ink; below it the piece is plain.
///
/// A drawing of a plain piece is mostly one colour, whatever it was to be.
const MUCH: f32 = 0.02;
/// Maximum misfit of one piece, drawn without fault, to another for the two to look the same.
const SAME: f32 = 0.006;
/// Misfit that a good drawing leaves anyway, added to misfits before they are divided.
const USUAL: f32 = 0.002;
/// Minimum lead over the paper's own piece for another to be told; see [`lead`].
///
/// The least of those tried without a false alarm on 20 made walls, seeds 5 to 24 of the example; there it
/// finds 91.0 % of 277. Half of it finds 94.9 % and calls 1 of 2,210 right ones wrong. On other seeds: the
/// head.
const ASKED: f32 = 0.0051;
/// Minimum lead over all others where no code says anything: less, since it is over the next best of all
/// pieces.
const ASKED_UNREAD: f32 = 0.0015;
/// Minimum lead of a piece over the next best but the paper's own for it to be named. Without it one name in
/// ninety was another's.
const ASKED_NAME: f32 = 0.0005;
/// Misfit to their own piece that, exceeded by one in seven of the squares that seem at home, marks a wall as
/// drawn freely.
///
/// Unfinished, in pencils of other colours, with hearts, or in the sun. Made walls: 0.0059 at most by
/// `rehearse`, 0.0073 and more on the photos of `tests/photos/walls/mod.rs`.
const FREE: f32 = 0.0072;
/// Maximum misfit of another piece for it to be told on a wall that is drawn freely.
const CLOSE: f32 = 0.008;
/// Maximum ratio of that misfit to the next best piece's.
///
/// On those photos, 961 squares on their own paper, that leaves two false alarms of 72.
const CLOSER: f32 = 0.6;
/// Maximum number of squares that the room's pencils are taken from.
const SAMPLE: usize = 48;
/// Minimum number of places of one pencil's own for a drawing to tell its colour, and of drawings that must
/// tell it.
const TELLING: (f32, usize) = (40.0, 5);

/// Verdict on whether a drawing is its paper's piece.
#[derive(Copy, Clone, Debug, PartialEq)]
pub enum Belongs {
    /// It looks like its piece, and like no other.
    Here,
    /// It looks clearly more like this piece; that may be the paper's own, turned.
    Elsewhere(Likeness),
    /// Too plain, too much like several pieces, or like none.
    CannotTell,
}

/// Piece that a drawing looks like: a suggestion, to be looked at by a person.
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct Likeness {
    /// Piece, by its cell.
    pub piece: Cell,
    /// Turn of the drawing, as it was given, clockwise.
    pub turn: Turn,
    /// Lead over what else the drawing may be, as a multiple of what is asked for: from 1 on it is told.
    pub lead: f64,
}

/// All pieces of a picture, ready to be compared with drawings.
#[derive(Clone, Debug)]
pub struct Pieces {
    grid: Grid,
    inks: Vec<Ink>,
    pieces: Vec<Piece>,
    /// Weight of each place of an upright paper.
    weight: Plane,
    /// Weight of each place of a paper whose code may be in any corner.
    weight_unread: Plane,
    coarse: coarse::Weights,
    /// Whether the wall is drawn freely, so that only what is very like another piece is told.
    free: bool,
}

/// Candidate of what a drawing shows: index of a piece, and a turn.
type Guess = (usize, Turn);
/// Candidate with its misfit.
type Fit = (Guess, Misfit);

impl Pieces {
    /// Pieces of a picture, prepared for comparison.
    #[must_use]
    pub fn of(few: &FewColours, printed: &Printed) -> Self {
        let grid = printed.grid;
        let inks: Vec<Ink> = few.pencils.iter().map(|pencil| pencil.srgb.map(ink)).collect();
        let weight = weights(printed);
        let mut weight_unread = weight;
        for quarters in 1..4 {
            let turned = turned_back(&weight, quarters);
            weight_unread.iter_mut().zip(&turned).for_each(|(own, other)| *own *= other);
        }
        let coarse = coarse::weights(&weight);
        let cells: Vec<Cell> = grid.cells().collect();
        let pieces = cells.par_iter().map(|cell| Piece::of(few, &grid, *cell, &inks, &coarse)).collect();
        Self { grid, inks, pieces, weight, weight_unread, coarse, free: false }
    }

    /// Whether a piece is so plain that nothing is said of drawings of it.
    #[must_use]
    pub fn is_plain(&self, cell: Cell) -> bool {
        self.piece(cell).is_none_or(|index| self.pieces[index].variety < MUCH)
    }

    /// Whether two pieces, turned, look so different that their drawings can be told apart.
    #[must_use]
    pub fn distinct(&self, one: (Cell, Turn), other: (Cell, Turn)) -> bool {
        let (Some(a), Some(b)) = (self.piece(one.0), self.piece(other.0)) else { return false };
        self.apart((a, one.1), (b, other.1))
    }

    /// Whether a drawing belongs to the paper that it is on.
    #[must_use]
    pub fn judge(&self, drawing: &RgbImage, printed_for: Cell) -> Belongs {
        self.judged(drawing, printed_for).map_or(Belongs::CannotTell, |judged| judged.on_a_wall(self.free))
    }

    fn judged(&self, drawing: &RgbImage, printed_for: Cell) -> Option<Judged> {
        let (all, own, of_own) = self.compared(drawing, printed_for)?;
        let judged = |belongs, clear| Some(Judged { belongs, clear, of_own: of_own.all });
        if let Some((other, clear)) = self.first_of(&all, own, of_own) {
            let told = if other.lead >= 1.0 { Belongs::Elsewhere(other) } else { Belongs::CannotTell };
            return judged(told, clear);
        }
        let rival = all.iter().find(|(guess, _)| self.apart(*guess, own));
        let clear = rival.is_none_or(|(_, rival)| lead(*rival, of_own) >= ASKED);
        let here = clear && self.pieces[own.0].variety >= MUCH;
        judged(if here { Belongs::Here } else { Belongs::CannotTell }, true)
    }

    /// Piece that fits a drawing better than the paper's own, however small its lead.
    ///
    /// `None` where nothing does that could be told from the paper's piece.
    #[must_use]
    pub fn closest(&self, drawing: &RgbImage, printed_for: Cell) -> Option<Likeness> {
        let (all, own, of_own) = self.compared(drawing, printed_for)?;
        self.first_of(&all, own, of_own).filter(|(_, clear)| *clear || !self.free).map(|(other, _)| other)
    }

    /// Candidates, best first; the paper's own, and its misfit.
    fn compared(&self, drawing: &RgbImage, printed_for: Cell) -> Option<(Vec<Fit>, Guess, Misfit)> {
        let own = (self.piece(printed_for)?, Turn::None);
        let mut look = Look::at(drawing, self, &self.weight);
        let mut guesses = look.first(self, |_| true);
        guesses.extend(Turn::ALL.map(|turn| (own.0, turn)));
        Some((look.ranked(self, guesses), own, look.misfit(self, own)))
    }

    /// Best candidate, if it is neither the paper's own nor a plain piece, and whether it is clear enough for
    /// a wall that is drawn freely. Where another fits about as well its lead stays small.
    fn first_of(&self, all: &[Fit], own: Guess, of_own: Misfit) -> Option<(Likeness, bool)> {
        let (guess, best) = all.first().copied()?;
        if self.pieces[guess.0].variety < MUCH || !self.apart(guess, own) {
            return None;
        }
        let next = all.iter().find(|(other, _)| self.apart(*other, guess) && *other != own);
        let clear = is_clear(best, next.map(|(_, next)| *next));
        let over_next = next.map_or(f32::INFINITY, |(_, next)| lead(*next, best) / ASKED_NAME);
        Some((self.likeness(guess, (lead(of_own, best) / ASKED).min(over_next)), clear))
    }

    fn likeness(&self, (index, turn): Guess, lead: f32) -> Likeness {
        Likeness { piece: self.pieces[index].cell, turn, lead: lead.into() }
    }

    /// Verdicts on all squares of a wall whose code was read, in their order, given the room's pencils and
    /// how freely people drew.
    #[must_use]
    pub fn judge_all(&self, squares: &[(Cell, &RgbImage)]) -> Vec<Belongs> {
        self.on_this_wall(squares).1
    }

    /// Pieces as this wall's squares show them, and the verdicts on those squares, in their order.
    #[must_use]
    pub fn on_this_wall(&self, squares: &[(Cell, &RgbImage)]) -> (Self, Vec<Belongs>) {
        let mut here = self.in_colours_of(squares);
        let judged: Vec<Option<Judged>> =
            squares.par_iter().map(|(cell, drawing)| here.judged(drawing, *cell)).collect();
        let at_home = judged.iter().flatten().filter(|own| !matches!(own.belongs, Belongs::Elsewhere(_)));
        let mut misfits: Vec<f32> = at_home.map(|own| own.of_own).collect();
        misfits.sort_by(f32::total_cmp);
        here.free = misfits.get(misfits.len() * 17 / 20).is_some_and(|misfit| *misfit > FREE);
        let told =
            |judged: Option<Judged>| judged.map_or(Belongs::CannotTell, |own| own.on_a_wall(here.free));
        let told = judged.into_iter().map(told).collect();
        (here, told)
    }

    /// Missing piece that a drawing may be whose code was not read, however it is turned.
    ///
    /// `None` where the drawing is plain, like two of them, or about as much like a piece that hangs
    /// elsewhere.
    #[must_use]
    pub fn suggest(&self, drawing: &RgbImage, missing: &[Cell]) -> Option<Likeness> {
        self.closest_of(drawing, missing).filter(|own| own.lead >= 1.0)
    }

    /// Missing piece that fits a drawing best whose code was not read, however small its lead.
    #[must_use]
    pub fn closest_of(&self, drawing: &RgbImage, missing: &[Cell]) -> Option<Likeness> {
        let mut asked: Vec<bool> = vec![false; self.pieces.len()];
        missing.iter().filter_map(|cell| self.piece(*cell)).for_each(|index| asked[index] = true);
        let mut look = Look::at(drawing, self, &self.weight_unread);
        let mut guesses = look.first(self, |_| true);
        guesses.extend(look.first(self, |index| asked[index]));
        let all = look.ranked(self, guesses);
        let (best, fits) = all.iter().find(|((index, _), _)| asked[*index]).copied()?;
        let alike = |other: &Guess| other.0 != best.0 && asked[other.0] && !self.apart(*other, best);
        if self.pieces[best.0].variety < MUCH || all.iter().any(|(other, _)| alike(other)) {
            return None;
        }
        let (_, rival) = all.iter().find(|(other, _)| self.apart(*other, best))?;
        if self.free && !is_clear(fits, Some(*rival)) {
            return None;
        }
        Some(self.likeness(best, lead(*rival, fits) / ASKED_UNREAD))
    }

    /// Pieces in the colours that the pencils have on a wall: for each the median over squares that clearly
    /// are what their paper says.
    ///
    /// A pencil that too few of them show keeps the picture's colour.
    #[must_use]
    pub fn in_colours_of(&self, squares: &[(Cell, &RgbImage)]) -> Self {
        let every = squares.len().div_ceil(SAMPLE).max(1);
        let sample: Vec<_> = squares.iter().step_by(every).collect();
        let seen: Vec<Vec<(usize, Ink)>> =
            sample.par_iter().map(|(cell, drawing)| self.pencils_of(drawing, *cell)).collect();
        let mut inks = self.inks.clone();
        for (pencil, ink) in inks.iter_mut().enumerate() {
            let own: Vec<Ink> =
                seen.iter().flatten().filter(|(which, _)| *which == pencil).map(|(_, ink)| *ink).collect();
            if own.len() >= TELLING.1 {
                *ink = [0, 1, 2].map(|i| {
                    median_by(own.iter().map(|ink| ink[i]).collect(), f32::total_cmp).unwrap_or(0.0)
                });
            }
        }
        let mut pieces = self.clone();
        pieces.pieces.par_iter_mut().for_each(|piece| piece.recolour(&inks, &self.coarse));
        pieces.inks = inks;
        pieces
    }

    /// Pencils of a drawing, by index, with their ink, where it clearly is its paper's piece.
    fn pencils_of(&self, drawing: &RgbImage, cell: Cell) -> Vec<(usize, Ink)> {
        let (Belongs::Here, Some(own)) = (self.judge(drawing, cell), self.piece(cell)) else {
            return Vec::new();
        };
        let mut look = Look::at(drawing, self, &self.weight);
        look.view(0).pencils(&self.pieces[own], &self.inks, TELLING.0)
    }

    fn piece(&self, cell: Cell) -> Option<usize> {
        self.grid.holds(cell).then(|| self.grid.index(cell))
    }

    /// Whether drawings of two candidates can be told apart: neither, drawn without fault, fits the other.
    fn apart(&self, one: Guess, other: Guess) -> bool {
        one != other && self.differs(one, other) && self.differs(other, one)
    }

    fn differs(&self, drawn: Guess, from: Guess) -> bool {
        let ink = self.pieces[drawn.0].in_colours(|pencil| self.inks[pencil]);
        let quarters = 4 + from.1.quarters() - drawn.1.quarters();
        let ink = ink.map(|plane| turned_back(&plane, quarters));
        let view = View::of(ink, &turned_back(&self.weight, from.1.quarters()));
        view.misfit(&self.pieces[from.0], &self.inks).all > SAME
    }
}

/// Verdict on one drawing, before what the whole wall says.
struct Judged {
    belongs: Belongs,
    /// Whether another piece fits well enough to be told even on a wall that is drawn freely.
    clear: bool,
    /// Misfit to its paper's piece.
    of_own: f32,
}

impl Judged {
    fn on_a_wall(self, free: bool) -> Belongs {
        match self.belongs {
            Belongs::Elsewhere(_) if free && !self.clear => Belongs::CannotTell,
            belongs => belongs,
        }
    }
}

/// Whether a candidate fits well enough to be told on a wall that is drawn freely.
fn is_clear(best: Misfit, next: Option<Misfit>) -> bool {
    best.all <= CLOSE && next.is_none_or(|next| best.all <= CLOSER * next.all)
}

/// Lead of one misfit over another: their difference times their ratio.
///
/// Both shapes alone and all together must say so: colours alone are the pencils' doing.
fn lead(worse: Misfit, better: Misfit) -> f32 {
    (worse.all - better.all).min(worse.shape - better.shape) * worse.all / (better.all + USUAL)
}

/// One drawing, in the four turns that are needed.
struct Look {
    ink: [Plane; 3],
    weight: Plane,
    views: [Option<Box<View>>; 4],
    coarse: Vec<coarse::View>,
}

impl Look {
    fn at(drawing: &RgbImage, pieces: &Pieces, weight: &Plane) -> Self {
        let side = u32::try_from(SIDE).unwrap_or(1);
        let small = thumbnail(drawing, side, side);
        let ink = [0, 1, 2].map(|channel| {
            let mut plane = [0.0; PLACES];
            plane.iter_mut().zip(small.pixels()).for_each(|(own, pixel)| *own = ink(pixel.0[channel]));
            plane::smoothed(&plane)
        });
        let turned = |quarters: u32| ink.map(|plane| turned_back(&plane, quarters));
        let coarse =
            (0..).zip(&pieces.coarse).map(|(q, weights)| coarse::View::of(&turned(q), weights)).collect();
        Self { ink, weight: *weight, views: [None, None, None, None], coarse }
    }

    /// Candidates with the smallest coarse misfit, in no order.
    fn first(&self, pieces: &Pieces, asked: impl Fn(usize) -> bool) -> Vec<Guess> {
        let mut all: Vec<(f32, Guess)> = Vec::with_capacity(4 * pieces.pieces.len());
        for (quarters, (turn, view)) in Turn::ALL.iter().zip(&self.coarse).enumerate() {
            let own = pieces.pieces.iter().enumerate().filter(|(index, _)| asked(*index));
            all.extend(own.map(|(index, piece)| (piece.coarse.misfit(view, quarters), (index, *turn))));
        }
        if all.len() > FINALISTS {
            all.select_nth_unstable_by(FINALISTS, |a, b| a.0.total_cmp(&b.0).then(a.1.cmp(&b.1)));
            all.truncate(FINALISTS);
        }
        all.into_iter().map(|(_, guess)| guess).collect()
    }

    /// Candidates with their fine misfit, best first.
    fn ranked(&mut self, pieces: &Pieces, mut guesses: Vec<Guess>) -> Vec<Fit> {
        guesses.sort_unstable();
        guesses.dedup();
        let mut all: Vec<Fit> =
            guesses.into_iter().map(|guess| (guess, self.misfit(pieces, guess))).collect();
        all.sort_by(|a, b| a.1.all.total_cmp(&b.1.all).then(a.0.cmp(&b.0)));
        all
    }

    fn misfit(&mut self, pieces: &Pieces, (index, turn): Guess) -> Misfit {
        self.view(turn.quarters()).misfit(&pieces.pieces[index], &pieces.inks)
    }

    fn view(&mut self, quarters: u32) -> &View {
        let (ink, weight) = (&self.ink, &self.weight);
        let new = || {
            Box::new(View::of(ink.map(|plane| turned_back(&plane, quarters)), &turned_back(weight, quarters)))
        };
        let index = usize::try_from(quarters % 4).unwrap_or(0);
        self.views[index].get_or_insert_with(new)
    }
}

/// Ink of a level, 0 white … 1 black.
fn ink(level: u8) -> f32 {
    (1.0 - f32::from(level) / f32::from(PAPER_LEVEL)).max(0.0)
}

/// Weight of each place of a paper, 0 or 1: not the outermost, where tick marks, tape and neighbours are, nor
/// the code's box.
fn weights(printed: &Printed) -> Plane {
    let side = printed.grid.square_mm;
    let step = side / float(SIDE);
    let quiet = float(QUIET_ZONE) * printed.module_mm;
    let (x, y) = (printed.code_top_left.x - quiet, printed.code_top_left.y - quiet);
    let long = float(CODE_SIDE) * printed.module_mm + 2.0 * quiet;
    let meets = |place: usize, from: f64| float(place + 1) * step > from && float(place) * step < from + long;
    std::array::from_fn(|i| {
        let (column, row) = (i % SIDE, i / SIDE);
        let edge = column.min(row) == 0 || column.max(row) == SIDE - 1;
        narrow(if edge || (meets(column, x) && meets(row, y)) { 0.0 } else { 1.0 })
    })
}
