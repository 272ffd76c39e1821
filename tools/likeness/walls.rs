//! Made walls whose drawings are known: what `tests/photos/likeness.rs` and the long figures are taken from.
//!
//! ```text
//!   scene ─▶ reduce ─▶ rehearse ─▶ photo ─▶ each paper straightened by its true corners ─▶ its light evened out by the
//!                                           (homography through four points)               paper's white around the codes
//! ```
//!
//! The white of a square is that of the quiet zones around its own code and its neighbours': per channel the upper quartile, so
//! that those who drew into the box do not count. What is left of a cast is what a real evening-out leaves; more can be put on top.

use std::error::Error;

use everysquare::cli::sample;
use everysquare::frame::{DisplayPx, Map, PhotoPx, Point, float, floor_index, round_byte};
use everysquare::picture::{FewColours, Fit, Pencils, Picture, Wanted, reduce};
use everysquare::plan::code::{QUIET_ZONE, SIDE};
use everysquare::plan::{Cell, Grid, Printed, Settings, Tag, Turn};
use everysquare::rehearse::{CellTruth, Options, make};
use everysquare::words::Words;
use image::{Rgb, RgbImage};

use crate::scenes;

/// Pixels along a side of a straightened drawing.
pub const SIDE_PX: u32 = 96;
/// Level of white after the light is evened out.
const WHITE: f64 = 245.0;

/// The pictures that walls are made of; none has another's pieces.
pub const SCENES: [&str; 5] = ["balloons", "lighthouse", "photo", "harbour", "quilt"];

/// One straightened drawing and what it is.
pub struct Drawn {
    /// The paper's cell: what its code says.
    pub paper: Cell,
    /// The piece that was drawn on it.
    pub piece: Cell,
    /// How far clockwise the drawing is turned against the paper.
    pub turn: Turn,
    /// It, upright by its code.
    pub pixels: RgbImage,
}

/// A wall: what was printed, the picture in few colours, what hangs.
pub struct Wall {
    /// What was printed.
    pub printed: Printed,
    /// The picture.
    pub few: FewColours,
    /// Pixels of the photo along a square's side, at the median.
    pub px: f64,
    /// Every square that is wholly in the photo.
    pub drawn: Vec<Drawn>,
}

/// One of [`SCENES`] in few colours, for a grid.
pub fn picture(scene: &str, grid: &Grid) -> Result<FewColours, Box<dyn Error>> {
    let (width, height) = (1200, 960);
    let (picture, colours) = match scene {
        "balloons" => (Picture::open(sample::PICTURE_PNG)?, 6),
        "lighthouse" => (Picture { pixels: scenes::drawing(width, height, 4) }, 7),
        "photo" => (Picture { pixels: scenes::photo(width, height) }, 8),
        "harbour" => (Picture::open(scenes::SVG.as_bytes())?, 8),
        _ => (Picture { pixels: quilt(width, height) }, 6),
    };
    let wanted = Wanted { grid, fit: Fit::Crop, pencils: Pencils::Chosen(colours) };
    Ok(reduce(picture, &wanted, &Words::english())?.few)
}

/// Patches of few kinds, many of them alike: rings, slopes and stripes.
fn quilt(width: u32, height: u32) -> RgbImage {
    const COLOURS: [[u8; 3]; 6] =
        [[236, 222, 180], [178, 60, 70], [52, 98, 120], [232, 168, 60], [96, 140, 80], [70, 52, 84]];
    RgbImage::from_fn(width, height, |px, py| {
        let (x, y) = (f64::from(px) / 133.0, f64::from(py) / 121.0);
        let (column, row) = (floor_index(x), floor_index(y));
        let (u, v) = (x.fract() - 0.5, y.fract() - 0.5);
        let kind = (column * 7 + row * 5) % 4;
        let marked = match kind {
            0 => u.hypot(v) < 0.35,
            1 => u + v > 0.0,
            2 => ((u + 0.5) * 3.0).fract() < 0.5,
            _ => u.abs().max(v.abs()) > 0.3,
        };
        let one = (column + 2 * row) % 6;
        Rgb(COLOURS[if marked { (one + 1 + kind) % 6 } else { one }])
    })
}

/// Makes a wall and takes its drawings out of the photo.
///
/// `off` is how far the pencils in the room may differ from the picture's colours, in levels, each channel by chance.
pub fn wall(
    scene: &str,
    (columns, rows): (usize, usize),
    options: &Options,
    off: u8,
) -> Result<Wall, Box<dyn Error>> {
    let grid = Grid::usual(columns, rows);
    let tag = Tag::new("K7M").ok_or("no tag")?;
    let printed = Settings::new("Made".to_owned(), tag, grid).printed()?;
    let few = picture(scene, &grid)?;
    let made = make(&printed, &other_pencils(&few, options.seed, off).to_picture(), options)?;
    let maps: Vec<_> = made.truth.cells.iter().map(|cell| to_photo(cell, grid.square_mm)).collect();
    let whites: Vec<Vec<Rgb<u8>>> = maps
        .iter()
        .map(|map| map.as_ref().map_or_else(Vec::new, |map| around_code(&made.image, map, &printed)))
        .collect();
    let mut drawn = Vec::new();
    let mut sides = Vec::new();
    for (truth, map) in made.truth.cells.iter().zip(&maps) {
        let (Some(map), Some(hung)) = (map, truth.hung.as_deref()) else { continue };
        let paper = grid.cell(hung).ok_or("no such cell")?;
        let piece =
            truth.drawn.as_deref().map_or(Some(paper), |label| grid.cell(label)).ok_or("no such piece")?;
        let turn = Turn::from_quarters(truth.drawn_turn.unwrap_or(0) / 90);
        let near = neighbours(&grid, Cell { row: truth.row, column: truth.column });
        let white = upper_quartiles(near.flat_map(|cell| whites[grid.index(cell)].iter().copied()));
        sides.push(map.scale_at(Point::new(grid.square_mm / 2.0, grid.square_mm / 2.0)) * grid.square_mm);
        drawn.push(Drawn { paper, piece, turn, pixels: straight(&made.image, map, grid.square_mm, white) });
    }
    sides.sort_by(f64::total_cmp);
    let px = sides.get(sides.len() / 2).copied().unwrap_or(0.0);
    Ok(Wall { printed, few, px, drawn })
}

/// The same picture in other pencils.
fn other_pencils(few: &FewColours, seed: u64, off: u8) -> FewColours {
    let mut few = few.clone();
    for (i, pencil) in (1..).zip(&mut few.pencils) {
        // chance enough: the high bits of a product
        let mut lot = seed.wrapping_add(i).wrapping_mul(0x9e37_79b9_7f4a_7c15);
        for level in &mut pencil.srgb {
            lot = lot.wrapping_mul(0xd134_2543_de82_ef95).wrapping_add(1);
            let part = float(usize::try_from(lot >> 40).unwrap_or(0)) / float(1 << 24) * 2.0 - 1.0;
            *level = round_byte(f64::from(*level) + part * f64::from(off));
        }
    }
    few
}

/// From mm on the paper, which have the display's axes, into the photo.
fn to_photo(cell: &CellTruth, side: f64) -> Option<Map<DisplayPx, PhotoPx>> {
    let corners = cell.corners_px?.map(|[x, y]| Point::new(x, y));
    let [a, b, c, d] = [(0.0, 0.0), (side, 0.0), (side, side), (0.0, side)].map(|(x, y)| Point::new(x, y));
    Map::from_four([a, b, c, d], corners)
}

/// The photo's colours in the quiet zone of a paper's code.
fn around_code(photo: &RgbImage, map: &Map<DisplayPx, PhotoPx>, printed: &Printed) -> Vec<Rgb<u8>> {
    let (code, module) = (printed.code_top_left, printed.module_mm);
    let outer = float(SIDE + QUIET_ZONE);
    let along = (0..SIDE).map(float);
    along
        .flat_map(|i| [(i, -2.0), (i, outer - 2.0), (-2.0, i), (outer - 2.0, i)])
        .filter_map(|(x, y)| at(photo, map.apply(Point::new(code.x + x * module, code.y + y * module))))
        .map(|colour| Rgb(colour.map(round_byte)))
        .collect()
}

fn neighbours(grid: &Grid, cell: Cell) -> impl Iterator<Item = Cell> + use<> {
    let grid = *grid;
    grid.cells()
        .filter(move |other| other.row.abs_diff(cell.row) <= 1 && other.column.abs_diff(cell.column) <= 1)
}

fn upper_quartiles(colours: impl Iterator<Item = Rgb<u8>>) -> [f64; 3] {
    let colours: Vec<[u8; 3]> = colours.map(|colour| colour.0).collect();
    [0, 1, 2].map(|channel| {
        let mut levels: Vec<u8> = colours.iter().map(|colour| colour[channel]).collect();
        levels.sort_unstable();
        levels.get(levels.len() * 3 / 4).map_or(WHITE, |level| f64::from((*level).max(1)))
    })
}

/// Between the four nearest pixels; `None` outside.
fn at(photo: &RgbImage, p: Point<PhotoPx>) -> Option<[f64; 3]> {
    let (x, y) = (p.x - 0.5, p.y - 0.5);
    let (width, height) = photo.dimensions();
    if !(x >= 0.0 && y >= 0.0 && x < f64::from(width) - 1.0 && y < f64::from(height) - 1.0) {
        return None;
    }
    let (left, upper) = (u32::try_from(floor_index(x)).ok()?, u32::try_from(floor_index(y)).ok()?);
    let (a, b) = (x.fract(), y.fract());
    let pixel = |i: u32, j: u32| photo.get_pixel(left + i, upper + j).0.map(f64::from);
    let corners = [
        (pixel(0, 0), (1.0 - a) * (1.0 - b)),
        (pixel(1, 0), a * (1.0 - b)),
        (pixel(0, 1), (1.0 - a) * b),
        (pixel(1, 1), a * b),
    ];
    Some([0, 1, 2].map(|i| corners.iter().map(|(colour, weight)| colour[i] * weight).sum()))
}

/// A paper as seen straight from the front: the mean of 3 × 3 places a pixel, white made white.
fn straight(photo: &RgbImage, map: &Map<DisplayPx, PhotoPx>, side: f64, white: [f64; 3]) -> RgbImage {
    let step = side / f64::from(SIDE_PX);
    RgbImage::from_fn(SIDE_PX, SIDE_PX, |x, y| {
        let places = (0..9_u32).filter_map(|i| {
            let part = |at: u32, i: u32| (f64::from(at) + (f64::from(i) + 0.5) / 3.0) * step;
            at(photo, map.apply(Point::new(part(x, i % 3), part(y, i / 3))))
        });
        let (mut sum, mut count) = ([0.0; 3], 0.0);
        for colour in places {
            [0, 1, 2].iter().for_each(|i| sum[*i] += colour[*i]);
            count += 1.0;
        }
        let level = |i: usize| if count > 0.0 { sum[i] / count / white[i] * WHITE } else { WHITE };
        Rgb([level(0), level(1), level(2)].map(round_byte))
    })
}
