//! Squares that nobody has drawn on: they hang, and are white where their piece has colours.
//!
//! ```text
//!   tile seen, light evened out ─┐
//!   colour expected there ───────┴─▶ along (expected − paper): 0 is white paper, 1 full colour ─▶ mean over the square
//! ```
//!
//! Whatever is unsure counts as drawn: what is told to be white is white. Nothing is said of pieces that are white by themselves.
//!
//! Where somebody asks for it, squares that are only begun are told too: of what their piece colours, much is still paper.

use crate::frame::{float, median_by};
use crate::plan::{Cell, Printed, Turn};
use crate::read::{PhotoReading, Sight};

use super::looks::{Looks, PAPER, away};
use super::{Expected, TILES, is_code, turned};

/// Tiles at each side of a square that are not looked at: tape, neighbours, and the margin that hands leave.
const EDGE: usize = 2;
/// Greatest distance from paper, in levels, of the tile that nine tenths of a white square's tiles are lighter than: bent paper, soft
/// shadows. Pencil all over a tile lies farther away.
const WHITE: f64 = 34.0;
/// Greatest difference, in levels of any channel, between the median of a white square's tiles and the white paper in its own code; and
/// greatest difference of those differences between channels. Light blue pencil, lightly pressed, differs by more.
const AS_PAPER: (i16, i16) = (20, 8);
/// Least distance of an expected colour from paper, in levels, for a tile to tell white from drawn.
const TELLING: f64 = 80.0;
/// Least share of a square's tiles that must tell.
const ENOUGH: f64 = 0.12;
/// Greatest mean, along the way from paper to the expected colours, of a white square. A child that presses lightly covers 0.3 of the
/// paper.
const DRAWN: f64 = 0.1;
/// Range of grey levels within a tile, as a part of their mean, that nine tenths of a white square's tiles stay below: a noisy photo
/// reaches 0.15, pencil bleached by glare 0.23.
const GRAIN: f64 = 0.18;
/// Greatest difference in chromaticity, as a share of red, green or blue in the whole, between the paper in a square's own code and the
/// median of all codes: where a visitor coloured the code's box too, that paper is no measure of white.
const TINTED: f64 = 0.02;
/// Greatest share of tiles at the top of the sensor's range: in glare, drawings look white.
const GLARE: f64 = 0.1;

/// Greatest part of the way from paper to the expected colour of a tile that nobody has drawn on.
const BARE: f64 = 0.12;
/// Least share of the tiles that tell that are bare in a square that is only begun: a margin that was left white, a shape that was drawn
/// smaller leave fewer.
const BEGUN: f64 = 0.5;
/// Greatest share of the tiles that are asked to stay white, and have colour, of a square that is only begun: where more of them have, it
/// is another drawing.
const ASTRAY: f64 = 0.3;

/// The cells whose squares nobody has drawn on. `expected` is asked only where a square looks white.
pub(super) fn white(
    looks: &Looks,
    covered: &[bool],
    reading: &PhotoReading,
    printed: &Printed,
    expected: &(dyn Fn() -> Option<Expected> + Sync),
) -> Vec<Cell> {
    let usable = usable(printed, looks.tiles.side_mm);
    let on_grid = reading.cells.iter().filter(|seen| printed.grid.holds(seen.cell));
    let mut pale = on_grid
        .filter_map(|seen| {
            let Sight::Square { home, turn } = &seen.sight else { return None };
            let tiles = inner(looks, covered, &usable, seen.cell);
            let is_pale = looks_white(&tiles) && is_as_paper(&tiles, looks, seen.cell);
            is_pale.then_some(Pale { cell: seen.cell, home: *home, turn: *turn, tiles })
        })
        .peekable();
    if pale.peek().is_none() {
        return Vec::new();
    }
    let Some(expected) = expected() else { return Vec::new() };
    pale.filter(|pale| pale.is_undrawn(&expected, printed)).map(|pale| pale.cell).collect()
}

/// The cells whose squares are only begun; none of those that are `white`.
pub(super) fn begun(
    (looks, covered): (&Looks, &[bool]),
    white: &[Cell],
    reading: &PhotoReading,
    printed: &Printed,
    expected: &Expected,
) -> Vec<Cell> {
    let usable = usable(printed, looks.tiles.side_mm);
    let on_grid = reading.cells.iter().filter(|seen| printed.grid.holds(seen.cell));
    let named = on_grid.filter(|seen| !white.contains(&seen.cell)).filter_map(|seen| {
        let Sight::Square { home, turn } = &seen.sight else { return None };
        let tiles = inner(looks, covered, &usable, seen.cell);
        let square = Pale { cell: seen.cell, home: *home, turn: *turn, tiles };
        square.is_begun(looks, expected, printed).then_some(seen.cell)
    });
    named.collect()
}

/// A square, as it looks.
struct Pale {
    cell: Cell,
    home: Cell,
    turn: Turn,
    tiles: Vec<Tile>,
}

impl Pale {
    /// Each tile with how far the colour that is expected there is from paper, and how far along the way there its own is, times that
    /// squared.
    fn compared<'a>(
        &'a self,
        expected: &'a Expected,
        printed: &Printed,
    ) -> impl Iterator<Item = (&'a Tile, f64, f64)> {
        let home = printed.grid.index(self.home);
        let quarters = (4 - self.turn.quarters()) % 4;
        self.tiles.iter().map(move |tile| {
            let (column, row) = turned((tile.column, tile.row), quarters);
            let wanted = expected.at(home, column, row);
            let part = |i: usize| {
                (f64::from(tile.colour[i]) - f64::from(PAPER[i]))
                    * (f64::from(wanted[i]) - f64::from(PAPER[i]))
            };
            (tile, away(wanted, PAPER), part(0) + part(1) + part(2))
        })
    }

    /// Whether its piece has colours that tell, and hardly anything of them shows.
    fn is_undrawn(&self, expected: &Expected, printed: &Printed) -> bool {
        let (mut along, mut weights, mut telling) = (0.0, 0.0, 0);
        for (_, far, way) in self.compared(expected, printed).filter(|(_, far, _)| *far >= TELLING) {
            along += way;
            weights += far * far;
            telling += 1;
        }
        float(telling) >= ENOUGH * float(TILES * TILES) && along < DRAWN * weights
    }

    /// Whether much of what its piece colours is still paper, and hardly anything has colour that should be paper.
    fn is_begun(&self, looks: &Looks, expected: &Expected, printed: &Printed) -> bool {
        let clipped = self.tiles.iter().filter(|tile| tile.clipped).count();
        if 2 * self.tiles.len() <= TILES * TILES / 2 || float(clipped) > GLARE * float(self.tiles.len()) {
            return false;
        }
        let is_paper =
            |tile: &Tile| away(tile.colour, PAPER) <= WHITE && tile.grain <= GRAIN && !tile.clipped;
        let (mut telling, mut bare, mut pale, mut astray) = (0, Vec::new(), 0, 0);
        for (tile, far, way) in self.compared(expected, printed) {
            if far >= TELLING {
                telling += 1;
                if is_paper(tile) && way < BARE * far * far {
                    bare.push(*tile);
                }
            } else if far <= WHITE {
                pale += 1;
                astray += usize::from(!is_paper(tile));
            }
        }
        float(telling) >= ENOUGH * float(TILES * TILES)
            && float(bare.len()) >= BEGUN * float(telling)
            && float(astray) <= ASTRAY * float(pale)
            && is_as_paper(&bare, looks, self.cell)
    }
}

/// A tile of a square as it hangs.
#[derive(Copy, Clone)]
struct Tile {
    column: usize,
    row: usize,
    colour: [u8; 3],
    clipped: bool,
    grain: f64,
}

/// Which tiles of any square are looked at, row by row: those that are neither at its edge nor, whichever way it hangs, at its code.
fn usable(printed: &Printed, side_mm: f64) -> Vec<bool> {
    let within = EDGE..TILES - EDGE;
    let at = |i: usize| (i % TILES, i / TILES);
    let near_code = |i: usize| {
        (0..4).any(|quarters| {
            let (column, row) = turned(at(i), quarters);
            is_code(printed, side_mm, column, row)
        })
    };
    let is_inner = |i: usize| within.contains(&at(i).0) && within.contains(&at(i).1);
    (0..TILES * TILES).map(|i| is_inner(i) && !near_code(i)).collect()
}

/// The usable tiles of a cell that are in the photo and not covered.
fn inner(looks: &Looks, covered: &[bool], usable: &[bool], cell: Cell) -> Vec<Tile> {
    let own = looks.tiles.of_cell(cell).enumerate().zip(usable).filter(|(_, usable)| **usable);
    own.filter_map(|((at, tile), _)| {
        let colour =
            looks.colours.get(tile).copied().flatten().filter(|_| covered.get(tile) != Some(&true))?;
        Some(Tile {
            column: at % TILES,
            row: at / TILES,
            colour,
            clipped: looks.clipped.get(tile) == Some(&true),
            grain: looks.grain.get(tile).copied().unwrap_or(0.0),
        })
    })
    .collect()
}

/// Whether nearly all tiles are as white as paper, and few of them in glare.
fn looks_white(tiles: &[Tile]) -> bool {
    let dark = tiles.iter().filter(|tile| away(tile.colour, PAPER) > WHITE).count();
    let clipped = tiles.iter().filter(|tile| tile.clipped).count();
    let grainy = tiles.iter().filter(|tile| tile.grain > GRAIN).count();
    2 * tiles.len() > TILES * TILES / 2
        && 10 * dark <= tiles.len()
        && 10 * grainy <= tiles.len()
        && float(clipped) <= GLARE * float(tiles.len())
}

/// Whether the tiles are of the colour of the white paper in the square's own code.
fn is_as_paper(tiles: &[Tile], looks: &Looks, cell: Cell) -> bool {
    let Some((paper, _)) = looks.papers.get(&cell).filter(|(_, tint)| *tint <= TINTED) else { return false };
    let off = [0, 1, 2].map(|i| {
        let median = median_by(tiles.iter().map(|tile| tile.colour[i]).collect(), u8::cmp).unwrap_or(0);
        i16::from(median) - i16::from(paper[i])
    });
    let (least, most) =
        off.iter().fold((i16::MAX, i16::MIN), |(least, most), by| (least.min(*by), most.max(*by)));
    least >= -AS_PAPER.0 && most <= AS_PAPER.0 && most - least <= AS_PAPER.1
}
