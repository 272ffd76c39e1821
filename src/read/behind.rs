//! Cells where no code was named: does the wall behind show, or does a square hang there that cannot be read?
//!
//! Told apart by what the same photo shows elsewhere. Beside the wall and above it no square hangs: what a cell must look
//! like to be empty is seen there. Where that cannot be seen, a cell counts as empty only if it is much smoother than every
//! square that was read. Colour is compared as hue, whatever the light; pencil shows as grain; and brightness is compared
//! with the white paper around the nearest codes, so that a grey ladder in front of the wall is no grey wall.

use image::RgbImage;

use super::pose::{HALF, Pose};
use super::reading::{Camera, Sight};
use crate::frame::{PhotoPx, Point, WallMm, float, floor_index};
use crate::plan::{Cell, Grid};

/// Places looked at along a cell's side, over its middle part.
const ALONG: usize = 30;
/// The middle part of a cell that is looked at, as a share of its side: neighbours and tape may reach beyond.
const MIDDLE: std::ops::Range<f64> = 0.12..0.88;
/// How far beyond the wall its surroundings are looked at, in mm.
const BESIDE_MM: std::ops::Range<f64> = 8.0..40.0;
/// How far in hue a cell may lie from the surroundings: shares of red and green. A camera's own shading makes 0.01.
const HUE: f64 = 0.022;
/// How much grainier a cell may be than the surroundings, for the median and for the grainiest fifth.
const GRAINIER: [f64; 2] = [1.7, 2.2];
/// A cell is bare where its grain is below this share of the smoothest tenth of the squares that were read.
const BARE: f64 = 0.6;
/// Less of a cell than this in the photo, and it was not seen.
const SEEN: f64 = 0.5;
/// More of a cell than this share darker than [`DARK`] of its median: something was drawn or printed there.
const MARKED: f64 = 0.006;
const DARK: f64 = 0.62;
/// How much brighter or darker a cell may be than the surroundings, both against the nearest white.
const BRIGHTER: f64 = 1.22;
/// So many of the nearest whites are taken together.
const WHITES: usize = 4;
/// Grey levels below the brightest that count as drowned in light.
const CLIPPED: f64 = 4.0;

/// What a part of the photo looks like, whatever the light.
#[derive(Copy, Clone, Debug, PartialEq)]
struct Look {
    /// Shares of red and green in the colour, medians.
    hue: [f64; 2],
    /// Difference between pixels two apart, over the brightness: median and four fifths' bound.
    grain: [f64; 2],
    /// Brightness, median.
    level: f64,
    /// Brightness against the nearest white paper, median.
    white: f64,
    /// Share of places much darker than the median.
    dark: f64,
}

/// Tells cells without a code apart.
#[derive(Debug)]
pub struct Behind<'a> {
    colour: &'a RgbImage,
    camera: &'a Camera,
    grid: Grid,
    /// Brightness of white paper, and where.
    whites: Vec<(Point<WallMm>, f64)>,
    surroundings: Option<Look>,
    smoothest: Option<[f64; 2]>,
    brightest: f64,
}

impl<'a> Behind<'a> {
    /// Looks at the surroundings of the wall, and at the cells where squares were read; `poses` are their codes'.
    #[must_use]
    pub fn new(colour: &'a RgbImage, camera: &'a Camera, grid: Grid, read: &[(Cell, Pose)]) -> Self {
        let brightest = brightest(colour);
        let mut behind =
            Self { colour, camera, grid, whites: Vec::new(), surroundings: None, smoothest: None, brightest };
        behind.whites =
            read.iter().filter_map(|(cell, pose)| Some((grid.centre(*cell), white(colour, pose)?))).collect();
        behind.surroundings = behind.look(beside(&grid));
        let looks: Vec<Look> =
            read.iter().filter_map(|(cell, _)| behind.look(places(&grid, *cell))).collect();
        if looks.len() >= 5 {
            let tenth = |of: fn(&Look) -> f64| quantile(looks.iter().map(of).collect(), 0.1);
            behind.smoothest = Some([tenth(|l| l.grain[0]), tenth(|l| l.grain[1])]);
        }
        behind
    }

    /// What is to be said of a cell without a named code, and how surely.
    #[must_use]
    pub fn judge(&self, cell: Cell) -> (Sight, f64) {
        let (width, height) = (f64::from(self.colour.width()), f64::from(self.colour.height()));
        let inside = |p: &&Point<PhotoPx>| p.x >= 0.0 && p.y >= 0.0 && p.x < width && p.y < height;
        let seen_places = places(&self.grid, cell).map(|p| self.camera.wall_to_photo(p));
        let seen = float(seen_places.filter(|p| inside(&p)).count()) / float(ALONG * ALONG);
        if seen < SEEN {
            return (Sight::Unseen, 1.0 - seen);
        }
        let Some(look) = self.look(places(&self.grid, cell)) else { return (Sight::Unseen, 0.5) };
        if look.level > self.brightest - CLIPPED || look.dark > MARKED {
            return (Sight::Unread, 0.8);
        }
        match (self.surroundings.map(|s| like(&look, &s)), self.smoothest.map(|s| bare(&look, s))) {
            (Some(true), _) => (Sight::Empty, 0.95),
            (_, Some(true)) => (Sight::Empty, 0.8),
            _ => (Sight::Unread, 0.8),
        }
    }

    /// The brightness of white paper near a place on the wall; `None` where no code was read.
    fn white_near(&self, place: Point<WallMm>) -> Option<f64> {
        let mut near: Vec<(f64, f64)> =
            self.whites.iter().map(|(at, white)| (at.distance(place).value(), *white)).collect();
        near.sort_by(|a, b| a.0.total_cmp(&b.0));
        near.truncate(WHITES);
        let weight = |away: f64| 1.0 / (away + self.grid.square_mm / 2.0);
        let sum: f64 = near.iter().map(|(away, white)| white * weight(*away)).sum();
        let weights: f64 = near.iter().map(|(away, _)| weight(*away)).sum();
        (weights > 0.0).then(|| sum / weights)
    }

    /// The look of the places that lie in the photo; `None` where those are too few.
    fn look(&self, places: impl Iterator<Item = Point<WallMm>>) -> Option<Look> {
        let (mut reds, mut greens, mut grains) = (Vec::new(), Vec::new(), Vec::new());
        let (mut levels, mut whites) = (Vec::new(), Vec::new());
        for (i, place) in places.enumerate() {
            let p = self.camera.wall_to_photo(place);
            let at = |dx: f64, dy: f64| pixel(self.colour, p.x + dx, p.y + dy);
            let (Some(here), Some(right), Some(below)) = (at(0.0, 0.0), at(2.0, 0.0), at(0.0, 2.0)) else {
                continue;
            };
            let sum = here.iter().sum::<f64>().max(1.0);
            let apart =
                |other: [f64; 3]| other.iter().zip(here).map(|(o, h)| (o - h).abs()).sum::<f64>() / sum;
            reds.push(here[0] / sum);
            greens.push(here[1] / sum);
            levels.push(sum / 3.0);
            grains.push(apart(right).max(apart(below)));
            if i % 16 == 0 {
                whites.push(sum / 3.0 / self.white_near(place).unwrap_or(255.0).max(1.0));
            }
        }
        if levels.len() < ALONG * ALONG / 4 {
            return None;
        }
        let level = quantile(levels.clone(), 0.5);
        let dark = float(levels.iter().filter(|l| **l < DARK * level).count()) / float(levels.len());
        Some(Look {
            hue: [quantile(reds, 0.5), quantile(greens, 0.5)],
            grain: [quantile(grains.clone(), 0.5), quantile(grains, 0.8)],
            level,
            white: quantile(whites, 0.5),
            dark,
        })
    }
}

/// Places spread over the middle part of a cell.
fn places(grid: &Grid, cell: Cell) -> impl Iterator<Item = Point<WallMm>> + use<> {
    let ([corner, ..], side) = (grid.corners(cell), grid.square_mm);
    let along = move |i: usize| {
        let t = float(i) / float(ALONG - 1);
        side * (MIDDLE.start + (MIDDLE.end - MIDDLE.start) * t)
    };
    (0..ALONG * ALONG).map(move |i| Point::new(corner.x + along(i % ALONG), corner.y + along(i / ALONG)))
}

/// The brightness of the paper around a code: the upper quartile along a line 2 modules outside of it.
fn white(colour: &RgbImage, pose: &Pose) -> Option<f64> {
    let out = 2.0;
    let end = 2.0 * HALF + out;
    let levels: Vec<f64> = (0..24)
        .flat_map(|i| {
            let t = -out + (end + out) * float(i) / 23.0;
            [(t, -out), (t, end), (-out, t), (end, t)]
        })
        .map(|(x, y)| pose.module_to_photo(Point::new(x, y)))
        .filter_map(|p| Some(pixel(colour, p.x, p.y)?.iter().sum::<f64>() / 3.0))
        .collect();
    (!levels.is_empty()).then(|| quantile(levels, 0.75))
}

/// Whether a cell looks like the surroundings.
fn like(cell: &Look, surroundings: &Look) -> bool {
    let away = (cell.hue[0] - surroundings.hue[0]).hypot(cell.hue[1] - surroundings.hue[1]);
    // in less light the sensor's noise is a larger share of the brightness
    let dimmer = (surroundings.level / cell.level.max(1.0)).clamp(1.0, 4.0);
    let smooth = |k: usize| cell.grain[k] <= surroundings.grain[k] * GRAINIER[k] * dimmer;
    let brighter = cell.white / surroundings.white.max(1e-6);
    away < HUE && smooth(0) && smooth(1) && (1.0 / BRIGHTER..BRIGHTER).contains(&brighter)
}

/// Whether a cell is much smoother than the smoothest squares.
fn bare(cell: &Look, smoothest: [f64; 2]) -> bool {
    cell.grain[0] < BARE * smoothest[0] && cell.grain[1] < BARE * smoothest[1]
}

/// Places above the wall and to its right, where neither squares nor cards hang.
fn beside(grid: &Grid) -> impl Iterator<Item = Point<WallMm>> {
    let size = grid.size();
    let deep = 10;
    (0..400 * deep).flat_map(move |i| {
        let along = float(i % 400) / 399.0;
        let away = BESIDE_MM.start + (BESIDE_MM.end - BESIDE_MM.start) * float(i / 400) / float(deep);
        [Point::new(along * size.x, -away), Point::new(size.x + away, along * size.y)]
    })
}

fn quantile(mut values: Vec<f64>, share: f64) -> f64 {
    values.sort_by(f64::total_cmp);
    values.get(floor_index(float(values.len().saturating_sub(1)) * share)).copied().unwrap_or(0.0)
}

/// The brightness that hardly a pixel of the photo exceeds: where the sensor clips, if it does.
fn brightest(colour: &RgbImage) -> f64 {
    let levels = colour.pixels().step_by(101).map(|p| p.0.iter().map(|v| f64::from(*v)).sum::<f64>() / 3.0);
    quantile(levels.collect(), 0.998)
}

fn pixel(colour: &RgbImage, x: f64, y: f64) -> Option<[f64; 3]> {
    if !(x >= 0.0 && y >= 0.0) {
        return None;
    }
    let (x, y) = (u32::try_from(floor_index(x)).ok()?, u32::try_from(floor_index(y)).ok()?);
    Some(colour.get_pixel_checked(x, y)?.0.map(f64::from))
}
