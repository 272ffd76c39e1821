//! The photo with what is the matter marked in it.
//!
//! Only the wall and its cards are kept, with a small margin; whatever else the photo held, the room and who
//! is in it, is blank. The edge follows the lens's curvature, since each pixel is asked for its place on the
//! wall. Each cell that is not right gets an outline of its own kind (whole, dashed, dotted) and words, so
//! nothing depends on colour.

use image::{Rgb, RgbImage};
use rayon::prelude::*;

use crate::frame::{DisplayPx, Map, PhotoPx, Point, StraightPx, WallMm, ceil_index, float, floor_index};
use crate::judge::{JudgedCell, Judgement, State, is_spare};
use crate::photo::Photo;
use crate::plan::cards::RING_MM;
use crate::plan::{Grid, Turn};
use crate::read::{Camera, PhotoReading};
use crate::words::{FluentValue, Words};

use super::drawing::{Canvas, Pen};
use super::sample::{Sampler, mean, spread};
use super::straighten::LONGEST_PX;

/// How far around the ring of cards the photo is kept, in mm: cards hang a little askew.
pub const MARGIN_MM: f64 = 10.0;
/// What stands where the photo is not kept.
pub const BLANK: Rgb<u8> = Rgb([255; 3]);
/// In steps of so many pixels the photo is searched for the wall; a wall that shows less is not seen at all.
const STEP_PX: usize = 8;
/// Letters' heights as shares of a cell's side: the cell's name and what is to be done; a label of seven
/// signs just fits.
const LETTERS: (f64, f64) = (0.17, 0.27);
/// Smallest height of letters in pixels; below it no screen shows them.
const SMALLEST_LETTERS_PX: f64 = 9.0;
const INK: Rgb<u8> = Rgb([20, 24, 30]);

/// What is marked.
#[derive(Copy, Clone, Debug)]
pub struct Marking<'a> {
    /// The photo.
    pub photo: &'a Photo,
    /// What was read in it.
    pub reading: &'a PhotoReading,
    /// Which of the check's photos it is, from 0.
    pub index: usize,
    /// The wall, judged.
    pub judgement: &'a Judgement,
    /// The language of the marks.
    pub words: &'a Words,
}

/// Draws the marked photo: as fine as the photo itself where that is at most [`LONGEST_PX`] on its longer
/// side, cropped to what is kept.
#[must_use]
pub fn marked(marking: &Marking<'_>) -> RgbImage {
    let Some(kept) = Kept::find(marking) else { return RgbImage::from_pixel(1, 1, BLANK) };
    let mut picture = kept.picture(marking.photo);
    let mut canvas = Canvas::<DisplayPx>::on(&mut picture);
    for at in marking.judgement.cells.iter().filter(|at| at.state != State::Right) {
        if let Some(corners) = corners_here(at, marking) {
            mark(&mut canvas, at, corners.map(|corner| kept.photo_to_display.apply(corner)), marking);
        }
    }
    picture
}

/// The part of the photo that is kept.
struct Kept<'a> {
    camera: &'a Camera,
    straight_to_wall: Map<StraightPx, WallMm>,
    grid: &'a Grid,
    photo_to_display: Map<PhotoPx, DisplayPx>,
    display_to_photo: Map<DisplayPx, PhotoPx>,
    /// Width and height of the picture.
    size: (usize, usize),
    /// Samples a side of one pixel.
    per_side: usize,
}

impl<'a> Kept<'a> {
    /// `None` where the photo shows nothing of the wall.
    fn find(marking: &Marking<'a>) -> Option<Self> {
        let camera = &marking.reading.camera;
        let mut kept = Self {
            camera,
            straight_to_wall: camera.wall_to_straight.inverse()?,
            grid: &marking.judgement.grid,
            photo_to_display: Map::scale_then_shift(1.0, 0.0, 0.0),
            display_to_photo: Map::scale_then_shift(1.0, 0.0, 0.0),
            size: (0, 0),
            per_side: 1,
        };
        let (width, height) = (marking.reading.width, marking.reading.height);
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
        let (wide, tall) = (float(right - left), float(lower - upper));
        let shrink = (float(LONGEST_PX) / wide.max(tall)).min(1.0);
        kept.photo_to_display = Map::scale_then_shift(shrink, -float(left) * shrink, -float(upper) * shrink);
        kept.display_to_photo = kept.photo_to_display.inverse()?;
        kept.size = (floor_index(wide * shrink).max(1), floor_index(tall * shrink).max(1));
        kept.per_side = ceil_index(1.0 / shrink - 0.25).max(1);
        Some(kept)
    }

    /// Whether the wall, its cards or the margin are seen there.
    fn keeps(&self, p: Point<PhotoPx>) -> bool {
        let Some(straight) = self.camera.lens.photo_to_straight(p) else { return false };
        let at = self.straight_to_wall.apply(straight);
        let size = self.grid.size();
        let around = RING_MM + MARGIN_MM;
        at.x > -around && at.y > -around && at.x < size.x + around && at.y < size.y + around
    }

    fn picture(&self, photo: &Photo) -> RgbImage {
        let (width, height) = self.size;
        let sampler = Sampler::new(photo);
        let mut pixels = vec![0; width * height * 3];
        pixels.par_chunks_mut(width * 3).enumerate().for_each(|(y, row)| {
            for (x, pixel) in row.chunks_exact_mut(3).enumerate() {
                let place = |x: f64, y: f64| self.display_to_photo.apply(Point::new(x, y));
                let (x, y) = (float(x), float(y));
                let keep = self.keeps(place(x + 0.5, y + 0.5));
                let places = spread(x, y, if keep { self.per_side } else { 0 });
                let colour = mean(places.map(|(x, y)| sampler.at(place(x, y))));
                pixel.copy_from_slice(&colour.unwrap_or(BLANK).0);
            }
        });
        let side = |pixels: usize| u32::try_from(pixels).unwrap_or(u32::MAX);
        RgbImage::from_raw(side(width), side(height), pixels).unwrap_or_default() // the sides and the pixels agree
    }
}

/// Where a cell is in this photo: the paper's own corners where they were found in it, else the cell's.
/// `None` where its middle is outside.
fn corners_here(at: &JudgedCell, marking: &Marking<'_>) -> Option<[Point<PhotoPx>; 4]> {
    if at.state == State::Unseen {
        return None;
    }
    let own = at.corners.filter(|_| at.photo == marking.index);
    let grid = &marking.judgement.grid;
    let camera = &marking.reading.camera;
    let corners = own.unwrap_or_else(|| grid.corners(at.cell).map(|corner| camera.wall_to_photo(corner)));
    let middle = camera.wall_to_photo(grid.centre(at.cell));
    let (width, height) = (float(marking.reading.width), float(marking.reading.height));
    let inside = middle.x >= 0.0 && middle.y >= 0.0 && middle.x < width && middle.y < height;
    (inside && corners.iter().all(|corner| corner.is_finite())).then_some(corners)
}

/// Outline and words.
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
    canvas.outline(&inward, Pen { colour: Rgb([255; 3]), width: width * 1.8, dash: None });
    canvas.outline(&inward, pen);
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
        State::Unread | State::Unseen => ([98, 48, 148], Some((0.0, 2.2))),
    };
    Pen { colour: Rgb(colour), width, dash }
}

/// What is to be done about a cell, in as few signs as possible.
fn words_for(at: &JudgedCell, marking: &Marking<'_>) -> String {
    let square = |id: &str, home| {
        marking.words.say(id, &[("square", FluentValue::from(marking.judgement.grid.label(home)))])
    };
    let plain = |id: &str| marking.words.say(id, &[]);
    match (at.state, at.found) {
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
        (State::Right | State::Unseen, _) => String::new(),
    }
}
