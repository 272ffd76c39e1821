//! What several comparison prints show: the original and the wall, thinned once, and the head that all of them bear.

use image::RgbImage;
use rayon::prelude::*;
use serde::Serialize;

use super::{Comparison, Pair};
use crate::display::evenly;
use crate::display::measure::{Measured, Quantity};
use crate::frame::{MM_PER_INCH, ceil_index, float};
use crate::picture::PieceFacts;
use crate::plan::settings::Paper;
use crate::plan::{Cell, Grid};
use crate::print::PrintError;
use crate::print::Sources;
use crate::print::cut_out::Part;
use crate::print::drawn::drawn;
use crate::print::marks::Box;
use crate::print::page::{Foot, Reading, Set, TILE_MM, reading_room, tiles_across};
use crate::print::typeset::Image;

/// Finest picture printed, in pixels a mm (150 an inch): what is looked at from a step away shows no more.
const FINEST_PX_PER_MM: f64 = 150.0 / MM_PER_INCH;

/// What is shown, and what several prints need of it.
pub(super) struct Exhibit<'a> {
    pub input: &'a Comparison<'a>,
    /// What was measured, where every number of it is one.
    pub measured: Option<&'a Measured>,
    /// Squares to be shown whose cell the wall has.
    pub pairs: Vec<&'a Pair>,
    /// The original, as wide as a page to read at most.
    pub original: Image,
    /// The wall, as wide.
    pub wall: Image,
    /// Pieces for the top of pages: the picture is out.
    tiles: Vec<Image>,
}

/// The head of a print: what it is, the event, and whether the photo is a made one.
#[derive(Serialize)]
pub(super) struct Head {
    title: String,
    event: String,
    made: Option<String>,
}

impl Head {
    /// With the event as the title: for a print that hangs where nobody asks what kind of print it is.
    pub fn with_event_first(self) -> Self {
        Self { title: self.event, event: self.title, ..self }
    }
}

impl<'a> Exhibit<'a> {
    /// Thins what is shown.
    pub fn of(input: &'a Comparison<'a>) -> Self {
        let grid = &input.sources.settings.grid;
        let [width, _] = room(&input.sources);
        let all = original(input, grid);
        let whole = |of: &RgbImage| Part {
            left: 0.0,
            top: 0.0,
            width: f64::from(of.width()),
            height: f64::from(of.height()),
        };
        let high = width * float(grid.rows) / float(grid.columns);
        let thin = |picture: &RgbImage, part: Part| shown(picture, part, [width, high]).0;
        let (original, wall) = rayon::join(
            || original_at(&input.sources, all, [width, high]).0,
            || thin(input.wall, whole(input.wall)),
        );
        let fits = |pair: &&Pair| grid.holds(pair.cell) && !pair.square.is_empty();
        Self {
            input,
            measured: input.measured.filter(|measured| is_sound(measured)),
            pairs: input.pairs.iter().filter(fits).collect(),
            original,
            wall,
            tiles: tiles(&input.sources),
        }
    }

    /// Lays out the pages of a print to read, with pieces of the picture at their top.
    ///
    /// # Errors
    /// [`PrintError::Typeset`].
    pub fn set<C: Serialize>(&self, print: Reading<C>) -> Result<Set, PrintError> {
        print.set_below(self.sources(), &self.tiles)
    }

    /// Whether a print has something to show.
    pub fn has(&self, name: &str) -> bool {
        match name {
            "pairs" => !self.pairs.is_empty(),
            "making-of" => !self.input.checks.is_empty(),
            _ => true,
        }
    }

    /// The wall's division.
    pub fn grid(&self) -> &'a Grid {
        &self.input.sources.settings.grid
    }

    /// The event.
    pub fn sources(&self) -> &'a Sources<'a> {
        &self.input.sources
    }

    /// A sentence that nothing is filled into.
    pub fn say(&self, id: &str) -> String {
        self.input.sources.words.say(id, &[])
    }

    /// How many times as long a length is planned to be on the wall.
    pub fn planned_scale(&self) -> f64 {
        self.grid().square_mm / self.grid().piece_mm
    }

    /// Width and height of the original on paper in true size, in mm.
    pub fn original_mm(&self) -> [f64; 2] {
        original_mm(self.grid())
    }

    /// Width and height of the wall as planned, in mm.
    pub fn wall_mm(&self) -> [f64; 2] {
        wall_mm(self.grid())
    }

    /// What of the wall's division is counted and measured: not a border in reserve of which nothing hangs.
    pub fn counted(&self) -> Grid {
        let picture = self.grid().within_border();
        if self.input.counts.cells == self.grid().asked() { picture } else { *self.grid() }
    }

    /// That the photo is a made one, where it is.
    pub fn made(&self) -> Option<String> {
        self.input.made.then(|| self.say("report-made"))
    }

    /// The head of a print.
    pub fn head(&self, name: &str) -> Head {
        Head {
            title: self.say(&format!("print-{name}")),
            event: self.sources().settings.name.clone(),
            made: self.made(),
        }
    }

    /// A part of the original that is given in pieces from the top left, as large as `mm` on paper, and where it lies.
    pub fn original_part(&self, pieces: Part, mm: [f64; 2]) -> (Image, Box) {
        let crop = self.sources().picture.crop(self.grid());
        let side = crop.piece.value();
        let part = Part {
            left: crop.top_left.x + pieces.left * side,
            top: crop.top_left.y + pieces.top * side,
            width: pieces.width * side,
            height: pieces.height * side,
        };
        original_at(self.sources(), part, mm)
    }

    /// A piece, as wide and high as `mm` on paper.
    pub fn piece(&self, cell: Cell, mm: f64) -> Image {
        piece(self.sources(), cell, mm)
    }

    /// A part of the wall that is given in squares from the top left, as large as `mm` on paper, and where it lies.
    pub fn wall_part(&self, squares: Part, mm: [f64; 2]) -> (Image, Box) {
        let (wall, grid) = (self.input.wall, self.grid());
        let across = f64::from(wall.width()) / float(grid.columns);
        let down = f64::from(wall.height()) / float(grid.rows);
        let part = Part {
            left: squares.left * across,
            top: squares.top * down,
            width: squares.width * across,
            height: squares.height * down,
        };
        shown(wall, part, mm)
    }
}

fn piece(sources: &Sources, cell: Cell, mm: f64) -> Image {
    let grid = &sources.settings.grid;
    let part = Part::of_piece(&sources.picture.crop(grid), cell);
    drawn(sources, &part).unwrap_or_else(|| at_size(sources.picture.piece(grid, cell).pixels, [mm; 2]))
}

/// Pieces from all over the picture, in the order of cells, as many as stand side by side: of those with something to draw, where there are
/// any.
fn tiles(sources: &Sources) -> Vec<Image> {
    let own: Vec<&PieceFacts> = sources.facts.own().collect();
    let varied: Vec<&PieceFacts> = own.iter().copied().filter(|piece| piece.regions > 1).collect();
    let shown = if varied.is_empty() { own } else { varied };
    let across = tiles_across(sources.settings.print.paper);
    let chosen: Vec<usize> = if shown.len() < across {
        (0..shown.len()).cycle().take(across).collect()
    } else {
        evenly(shown.len(), across).collect()
    };
    chosen.par_iter().map(|at| piece(sources, shown[*at].cell, TILE_MM)).collect()
}

/// How many times as large letters, and what has to do with them, are as on letter paper: `templates/exhibits.typ` has the same.
pub(super) fn wider(sources: &Sources) -> f64 {
    let (width, _) = sources.settings.print.paper.size_mm();
    let (letter, _) = Paper::Letter.size_mm();
    (width / letter).max(1.0)
}

/// Width and height that a page without a ruler leaves for text and pictures, in mm.
pub(super) fn room(sources: &Sources) -> [f64; 2] {
    reading_room(sources.settings.print.paper, Foot::Line)
}

/// A part of the original as it is printed `mm` wide and high, and where it lies: curves, or pixels.
pub(super) fn original_at(sources: &Sources, part: Part, mm: [f64; 2]) -> (Image, Box) {
    match drawn(sources, &part) {
        Some(drawn) => (drawn, Box { x: 0.0, y: 0.0, width: mm[0], height: mm[1] }),
        None => shown(&sources.picture.pixels, part, mm),
    }
}

/// The part of the picture that the grid covers.
fn original(input: &Comparison, grid: &Grid) -> Part {
    let crop = input.sources.picture.crop(grid);
    Part { left: crop.top_left.x, top: crop.top_left.y, width: crop.size.x, height: crop.size.y }
}

/// A part of a picture as it is printed `mm` wide and high, and where its pixels lie.
pub(super) fn shown(picture: &RgbImage, part: Part, mm: [f64; 2]) -> (Image, Box) {
    let (pixels, lies) = part.cut_out(picture, mm);
    (at_size(pixels, [lies.width, lies.height]), lies)
}

/// A picture as it is printed `mm` wide and high.
pub(super) fn at_size(pixels: RgbImage, mm: [f64; 2]) -> Image {
    let [width, height] = mm.map(|mm| u32::try_from(ceil_index(mm * FINEST_PX_PER_MM)).unwrap_or(u32::MAX));
    Image::to_look_at(pixels, width, height)
}

/// A picture as it is printed at most `mm` wide and high, whole.
pub(super) fn whole_at_size(pixels: &RgbImage, mm: [f64; 2]) -> Image {
    at_size(pixels.clone(), mm)
}

/// Whether every number that was measured is one.
fn is_sound(measured: &Measured) -> bool {
    let Measured { pitch, scale_factor, width, height, .. } = measured;
    let runs = measured.rows.iter().chain(&measured.columns).flat_map(|run| [&run.drift, &run.lean]);
    let between = measured.widest_gap.iter().chain(&measured.largest_overlap).map(|between| &between.mm);
    let is_number = |quantity: &Quantity| quantity.value.is_finite() && quantity.within.is_finite();
    [pitch, scale_factor, width, height].into_iter().chain(runs).chain(between).all(is_number)
}

/// Width and height of a grid's picture on paper in true size, in mm.
pub(super) fn original_mm(grid: &Grid) -> [f64; 2] {
    [float(grid.columns) * grid.piece_mm, float(grid.rows) * grid.piece_mm]
}

/// Width and height of a grid's wall as planned, in mm.
pub(super) fn wall_mm(grid: &Grid) -> [f64; 2] {
    let size = grid.size();
    [size.x, size.y]
}
