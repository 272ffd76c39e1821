//! Preview of the picture: as it came, and beside that as it will hang, with its grid, the pieces' labels and the pencils beneath.

use image::imageops::{FilterType, replace, resize};
use image::{Rgb, RgbImage};

use super::drawing::{Canvas, Pen};
use crate::frame::{DisplayPx, Point, float, floor_index};
use crate::picture::{Crop, FewColours};
use crate::plan::{Cell, Grid};

/// Name of the file that it is written to.
pub const PREVIEW: &str = "picture-preview.png";
/// Maximum number of pixels along a piece's side; fewer where the picture would exceed [`LONGEST_PX`].
const PIECE_PX: usize = 120;
/// Maximum number of pixels along the longer side of the grid.
const LONGEST_PX: usize = 3_000;
/// Minimum number of pixels along a piece's side for every piece to be labelled: below, letters would be too
/// low for screens.
const LABELLED_PIECE_PX: usize = 40;
/// Height of a label as a share of the piece's side.
const LABEL: f64 = 0.2;
/// Margin around the picture, in pixels.
const MARGIN_PX: usize = 24;
/// Side of a pencil's patch, in pixels.
const PATCH_PX: usize = 44;
/// Height of a pencil's name, in pixels.
const NAME_PX: f64 = 26.0;
/// Width of a pencil's column in pixels.
const COLUMN_PX: usize = 300;
const PAPER: Rgb<u8> = Rgb([255; 3]);
const INK: Rgb<u8> = Rgb([20, 24, 30]);

/// Draws the preview of a picture over a grid; `before` is what it was made of, without a border around it.
#[must_use]
pub fn preview(few: &FewColours, grid: &Grid, before: &RgbImage) -> RgbImage {
    let piece = (LONGEST_PX / grid.columns.max(grid.rows)).clamp(1, PIECE_PX);
    let (wide, high) = (piece * grid.columns, piece * grid.rows);
    let pencils_across = ((wide + MARGIN_PX) / COLUMN_PX).max(1);
    let pencil_rows = few.pencils.len().div_ceil(pencils_across);
    let own = grid.within_border();
    let beside = Beside {
        left: MARGIN_PX + wide.max(COLUMN_PX) + MARGIN_PX,
        wide: piece * own.columns,
        high: piece * own.rows,
    };
    let size = (
        px(beside.left + beside.wide + MARGIN_PX),
        px(high + 2 * MARGIN_PX + pencil_rows * (PATCH_PX + MARGIN_PX)),
    );
    let mut page = RgbImage::from_pixel(size.0, size.1, PAPER);
    let margin = i64::from(px(MARGIN_PX));
    replace(&mut page, &taken(few, grid, wide, high), margin, margin);
    let came = resize(before, px(beside.wide), px(beside.high), FilterType::Triangle);
    replace(
        &mut page,
        &came,
        i64::from(px(beside.left)),
        i64::from(px(MARGIN_PX + (high - beside.high) / 2)),
    );
    let patches = few.pencils.iter().enumerate().map(|(number, pencil)| {
        let left = MARGIN_PX + number % pencils_across * COLUMN_PX;
        let top = 2 * MARGIN_PX + high + number / pencils_across * (PATCH_PX + MARGIN_PX);
        (pencil, left, top)
    });
    for (pencil, left, top) in patches.clone() {
        let patch = RgbImage::from_pixel(px(PATCH_PX), px(PATCH_PX), Rgb(pencil.srgb));
        replace(&mut page, &patch, i64::from(px(left)), i64::from(px(top)));
    }
    let mut canvas = Canvas::<DisplayPx>::on(&mut page);
    lines(&mut canvas, grid, piece);
    labels(&mut canvas, grid, piece);
    for (pencil, left, top) in patches {
        let (left, top, side) = (float(left), float(top), float(PATCH_PX));
        let corner = |x: f64, y: f64| Point::new(left + x * side, top + y * side);
        canvas.outline(&[corner(0.0, 0.0), corner(1.0, 0.0), corner(1.0, 1.0), corner(0.0, 1.0)], FINE);
        let room = float(COLUMN_PX - PATCH_PX - MARGIN_PX);
        canvas.beside(Point::new(left + side + 10.0, top + side / 2.0), &pencil.name, NAME_PX, room, INK);
    }
    page
}

/// Where the picture as it came stands on the page, in pixels.
struct Beside {
    left: usize,
    wide: usize,
    high: usize,
}

const FINE: Pen = Pen { colour: INK, width: 1.0, dash: None };
/// Pen of the halo under a fine line, so that it shows on dark colours too.
const HALO: Pen = Pen { colour: PAPER, width: 3.0, dash: None };

/// Part of the picture that the grid takes, `wide` × `high` pixels.
fn taken(few: &FewColours, grid: &Grid, wide: usize, high: usize) -> RgbImage {
    let crop = Crop::of(few.size(), grid);
    let whole = |value: f64| px(floor_index(value + 0.5));
    let (left, top) = (whole(crop.top_left.x), whole(crop.top_left.y));
    let pixels = few.to_picture().pixels;
    let (across, down) = (whole(crop.size.x).max(1), whole(crop.size.y).max(1));
    let part = image::imageops::crop_imm(&pixels, left, top, across, down).to_image();
    resize(&part, px(wide), px(high), FilterType::Triangle)
}

fn lines(canvas: &mut Canvas<DisplayPx>, grid: &Grid, piece: usize) {
    let at = |column: usize, row: usize| {
        Point::new(float(MARGIN_PX + column * piece), float(MARGIN_PX + row * piece))
    };
    for pen in [HALO, FINE] {
        for column in 0..=grid.columns {
            canvas.line(at(column, 0), at(column, grid.rows), pen);
        }
        for row in 0..=grid.rows {
            canvas.line(at(0, row), at(grid.columns, row), pen);
        }
    }
}

fn labels(canvas: &mut Canvas<DisplayPx>, grid: &Grid, piece: usize) {
    // where pieces are too small for their labels, every second one, every third … is labelled, larger than itself
    let every = LABELLED_PIECE_PX.div_ceil(piece);
    let room = float(piece * every);
    let high = (room * LABEL).max(11.0);
    for cell in grid.cells().filter(|cell| cell.column % every == 0 && cell.row % every == 0) {
        let label = grid.label(cell);
        let Cell { column, row } = cell;
        let from = Point::new(
            float(MARGIN_PX + column * piece) + 0.12 * high + 2.0,
            float(MARGIN_PX + row * piece) + 0.58 * high + 2.0,
        );
        canvas.beside(from, &label, high, room * 0.9, INK);
    }
}

fn px(count: usize) -> u32 {
    u32::try_from(count).unwrap_or(u32::MAX)
}
