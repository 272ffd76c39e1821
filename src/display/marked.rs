//! Marked photo: the photo with what is the matter marked in it.
//!
//! Only the wall and its cards are kept, with a small margin; whatever else the photo held, the room and who
//! is in it, is blank. The edge follows the lens's curvature, since each pixel is asked for its place on the
//! wall. Each cell that is not right gets an outline of its own kind (whole, dashed, dotted) and words, so
//! nothing depends on colour.

use image::{Rgb, RgbImage};
use rayon::prelude::*;

use crate::frame::{DisplayPx, Map, PhotoPx, Point, StraightPx, WallMm, float};
use crate::judge::{JudgedCell, Judgement, State, is_spare};
use crate::photo::Photo;
use crate::plan::cards::RING_MM;
use crate::plan::{Grid, Turn};
use crate::read::PhotoReading;
use crate::words::{FluentValue, Words};

use super::cover::{Cover, MARGIN_MM};
use super::drawing::{Canvas, Pen};
use super::sample::Source;
use super::straighten::LONGEST_PX;

/// Colour where the photo is not kept.
pub const BLANK: Rgb<u8> = Rgb([255; 3]);
/// Step, in pixels, with which the photo is searched for the wall, and side of the blocks that are drawn.
const STEP_PX: usize = 8;
/// Heights of the letters of the cell's name and of what is to be done, as shares of a cell's side; a label
/// of seven signs just fits.
const LETTERS: (f64, f64) = (0.17, 0.27);
/// Minimum height of letters, in pixels; below it no screen shows them.
const SMALLEST_LETTERS_PX: f64 = 9.0;
const INK: Rgb<u8> = Rgb([20, 24, 30]);

/// Photo, reading and judgement that a marked photo is drawn from.
#[derive(Copy, Clone, Debug)]
pub struct Marking<'a> {
    /// The photo.
    pub photo: &'a Photo,
    /// The parts of the wall that it shows.
    pub parts: &'a [MarkedPart<'a>],
    /// Judgement of the wall.
    pub judgement: &'a Judgement,
    /// Words of the marks, in one language.
    pub words: &'a Words,
}

/// Part of the wall in a photo, or all of it.
#[derive(Copy, Clone, Debug)]
pub struct MarkedPart<'a> {
    /// Reading of it.
    pub reading: &'a PhotoReading,
    /// Index of that among the check's readings, from 0.
    pub index: usize,
    /// Cover of it; `None` where nothing was looked for.
    pub cover: Option<&'a Cover>,
}

impl MarkedPart<'_> {
    fn hides(&self, at: &JudgedCell) -> bool {
        self.cover.is_some_and(|cover| cover.hides(at.cell))
    }
}

/// Draws the marked photo, cropped to what is kept.
///
/// The photo's own pixels where those are at most [`LONGEST_PX`] on their longer side, else the means of 2 ×
/// 2, 3 × 3, …
#[must_use]
pub fn marked(marking: &Marking<'_>) -> RgbImage {
    let Some(kept) = Kept::find(marking) else { return RgbImage::from_pixel(1, 1, BLANK) };
    let mut picture = kept.picture(marking.photo);
    let mut canvas = Canvas::<DisplayPx>::on(&mut picture);
    for part in marking.parts {
        let reached = |at: &&JudgedCell| part.reading.apart.reaches(at.cell);
        let is_told = |at: &&JudgedCell| !is_unasked(at) && (at.state != State::Right || part.hides(at));
        for at in marking.judgement.cells.iter().filter(reached).filter(is_told) {
            if let Some(corners) = corners_here(at, part, &marking.judgement.grid) {
                mark(&mut canvas, at, corners.map(|corner| kept.photo_to_display.apply(corner)), marking);
            }
        }
    }
    picture
}

/// Part of the photo that is kept.
struct Kept<'a> {
    /// Each part with the way back to the wall.
    parts: Vec<(&'a PhotoReading, Map<StraightPx, WallMm>)>,
    grid: &'a Grid,
    photo_to_display: Map<PhotoPx, DisplayPx>,
    /// Left upper corner in the photo's pixels, a multiple of `thin`.
    corner: (usize, usize),
    /// Width and height in the picture's pixels.
    size: (usize, usize),
    /// Side, in photo pixels, of what becomes one pixel of the picture.
    thin: usize,
}

impl<'a> Kept<'a> {
    /// Part of a photo that shows the wall, its cards or the margin; `None` where it shows nothing of them.
    fn find(marking: &Marking<'a>) -> Option<Self> {
        let part =
            |part: &MarkedPart<'a>| Some((part.reading, part.reading.camera.wall_to_straight.inverse()?));
        let mut kept = Self {
            parts: marking.parts.iter().filter_map(part).collect(),
            grid: &marking.judgement.grid,
            photo_to_display: Map::scale_then_shift(1.0, 0.0, 0.0),
            corner: (0, 0),
            size: (0, 0),
            thin: 1,
        };
        let first = marking.parts.first()?.reading;
        let (width, height) = (first.width, first.height);
        let (mut left, mut upper, mut right, mut lower) = (width, height, 0, 0);
        for y in (0..height).step_by(STEP_PX) {
            for x in (0..width).step_by(STEP_PX) {
                if kept.keeps(Point::new(float(x) + 0.5, float(y) + 0.5)) {
                    (left, upper) = (left.min(x), upper.min(y));
                    (right, lower) = (right.max(x), lower.max(y));
                }
            }
        }
        if left > right {
            return None;
        }
        (left, upper) = (left.saturating_sub(STEP_PX), upper.saturating_sub(STEP_PX));
        (right, lower) = ((right + STEP_PX).min(width), (lower + STEP_PX).min(height));
        let thin = (right - left).max(lower - upper).div_ceil(LONGEST_PX).max(1);
        (left, upper) = (left / thin * thin, upper / thin * thin);
        let shrink = 1.0 / float(thin);
        kept.photo_to_display = Map::scale_then_shift(shrink, -float(left) * shrink, -float(upper) * shrink);
        kept.corner = (left, upper);
        kept.size = ((right - left).div_ceil(thin), (lower - upper).div_ceil(thin));
        kept.thin = thin;
        Some(kept)
    }

    /// Whether the wall, its cards or the margin are seen there.
    fn keeps(&self, p: Point<PhotoPx>) -> bool {
        let size = self.grid.size();
        let around = RING_MM + MARGIN_MM;
        self.parts.iter().any(|(reading, straight_to_wall)| {
            let Some(straight) = reading.camera.lens.photo_to_straight(p) else { return false };
            let at = straight_to_wall.apply(straight);
            let is_near =
                at.x > -around && at.y > -around && at.x < size.x + around && at.y < size.y + around;
            is_near && reading.apart.reaches(self.grid.nearest(at))
        })
    }

    /// Picture of the photo's pixels where they are kept, blank elsewhere.
    fn picture(&self, photo: &Photo) -> RgbImage {
        let (width, height) = self.size;
        let source = Source::new(photo, self.thin);
        let (pixels, across) = source.pixels();
        let (left, upper) = (self.corner.0 / self.thin, self.corner.1 / self.thin);
        let mut picture = vec![BLANK.0[0]; width * height * 3];
        picture.par_chunks_mut(width * 3 * STEP_PX).enumerate().for_each(|(band, rows)| {
            let top = band * STEP_PX;
            let blocks = self.kept_blocks(top);
            for (y, row) in (top..).zip(rows.chunks_exact_mut(width * 3)) {
                let first = ((upper + y) * across + left) * 3;
                if let Some(from) = pixels.get(first..first + width * 3) {
                    self.copy_row(y, &blocks, from, row);
                }
            }
        });
        let side = |pixels: usize| u32::try_from(pixels).unwrap_or(u32::MAX);
        RgbImage::from_raw(side(width), side(height), picture).unwrap_or_default() // the sides and the pixels agree
    }

    /// Whether each block of the row that begins at `top` is kept as a whole, not at all, or in part
    /// (`None`).
    ///
    /// What is kept of each part is all but convex, so the corners tell.
    fn kept_blocks(&self, top: usize) -> Vec<Option<bool>> {
        let count = self.size.0.div_ceil(STEP_PX);
        let edge = |y: usize| -> Vec<bool> {
            (0..=count).map(|i| self.keeps(self.place(float(i * STEP_PX), float(y)))).collect()
        };
        let (upper, lower) = (edge(top), edge(top + STEP_PX));
        let corners = upper.windows(2).zip(lower.windows(2));
        corners
            .map(|(upper, lower)| match [upper, lower].concat().iter().filter(|kept| **kept).count() {
                0 => Some(false),
                4 => Some(true),
                _ => None,
            })
            .collect()
    }

    /// Copies what is kept of one row of pixels.
    fn copy_row(&self, y: usize, blocks: &[Option<bool>], from: &[u8], into: &mut [u8]) {
        let pairs = into.chunks_mut(STEP_PX * 3).zip(from.chunks(STEP_PX * 3));
        for (block, (kept, (into, from))) in blocks.iter().zip(pairs).enumerate() {
            match kept {
                Some(true) => into.copy_from_slice(from),
                Some(false) => {}
                None => {
                    let pixels = into.chunks_exact_mut(3).zip(from.chunks_exact(3));
                    for (x, (into, from)) in (block * STEP_PX..).zip(pixels) {
                        if self.keeps(self.place(float(x) + 0.5, float(y) + 0.5)) {
                            into.copy_from_slice(from);
                        }
                    }
                }
            }
        }
    }

    /// Place in the photo of a place in the picture.
    fn place(&self, x: f64, y: f64) -> Point<PhotoPx> {
        let (left, upper) = self.corner;
        Point::new(x * float(self.thin) + float(left), y * float(self.thin) + float(upper))
    }
}

/// Whether no square is asked for here, and none was read.
fn is_unasked(at: &JudgedCell) -> bool {
    matches!(at.state, State::Reserve | State::Free)
}

/// Corners of a cell in this photo: the paper's own where they were found in it, else the cell's. `None`
/// where its middle is outside.
fn corners_here(at: &JudgedCell, part: &MarkedPart<'_>, grid: &Grid) -> Option<[Point<PhotoPx>; 4]> {
    if (at.state == State::Unseen || is_unasked(at)) && !part.hides(at) {
        return None;
    }
    let own = at.corners.filter(|_| at.photo == part.index);
    let camera = &part.reading.camera;
    let corners = own.unwrap_or_else(|| grid.corners(at.cell).map(|corner| camera.wall_to_photo(corner)));
    let middle = camera.wall_to_photo(grid.centre(at.cell));
    let (width, height) = (float(part.reading.width), float(part.reading.height));
    let inside = middle.x >= 0.0 && middle.y >= 0.0 && middle.x < width && middle.y < height;
    (inside && corners.iter().all(|corner| corner.is_finite())).then_some(corners)
}

/// Draws the outline and the words of a cell.
fn mark(
    canvas: &mut Canvas<'_, DisplayPx>,
    at: &JudgedCell,
    corners: [Point<DisplayPx>; 4],
    marking: &Marking<'_>,
) {
    let side =
        (0..4).map(|i| corners[i].distance(corners[(i + 1) % 4]).value()).fold(f64::INFINITY, f64::min);
    let middle = corners[0].towards(corners[2], 0.5);
    let inward = corners.map(|corner| corner.towards(middle, 0.06));
    let width = (side * 0.035).max(2.0);
    let pen = pen(at.state, width);
    if at.state != State::Right {
        canvas.outline(&inward, Pen { colour: Rgb([255; 3]), width: width * 1.8, dash: None });
        canvas.outline(&inward, pen);
    }
    let (small, large) = LETTERS;
    let high = |share: f64| (share * side).max(SMALLEST_LETTERS_PX);
    let said = words_for(at, marking);
    canvas.label(middle, &[(&at.label, high(small)), (&said, high(large))], 0.8 * side, INK);
}

fn pen(state: State, width: f64) -> Pen {
    let (colour, dash) = match state {
        State::Right | State::Wrong => ([178, 34, 26], None),
        State::Turned => ([176, 98, 0], Some((6.0, 3.0))),
        State::Empty => ([0, 92, 150], Some((2.5, 2.5))),
        State::Unread | State::Unseen | State::Reserve | State::Free => ([98, 48, 148], Some((0.0, 2.2))),
    };
    Pen { colour: Rgb(colour), width, dash }
}

/// Words for what is to be done about a cell, in as few signs as possible.
fn words_for(at: &JudgedCell, marking: &Marking<'_>) -> String {
    let square = |id: &str, home| {
        marking.words.say(id, &[("square", FluentValue::from(marking.judgement.grid.label(home)))])
    };
    let plain = |id: &str| marking.words.say(id, &[]);
    match (at.state, at.found) {
        (State::Wrong, Some(home)) if marking.judgement.grid.is_kept_free(home) => plain("mark-spare"),
        (State::Wrong, Some(_)) if is_spare(marking.judgement, at) => plain("mark-spare"),
        (State::Wrong, Some(home)) if at.turn == Turn::None => square("mark-wrong", home),
        (State::Wrong, Some(home)) => square("mark-wrong-turned", home),
        (State::Wrong, None) => plain("mark-stranger"),
        (State::Turned, _) => {
            let back = Turn::from_quarters(4 - at.turn.quarters()).degrees();
            marking.words.say("mark-turned", &[("degrees", back.into())])
        }
        (State::Empty, _) => plain("mark-empty"),
        (State::Unread, _) => plain("mark-unread"),
        (State::Right | State::Unseen | State::Reserve | State::Free, _) => {
            marking.words.say(&format!("state-{}", at.state.name()), &[])
        }
    }
}
