//! Cells without a named code: does the bare wall show, or does a square hang there that cannot be read?
//!
//! Told apart by what the same photo shows elsewhere. Beside the wall no square hangs: what a cell must look
//! like to be empty is seen there. Where that cannot be seen, two cells count as empty if they look the same
//! and are much smoother than every square that was read. Colour is compared as hue, whatever the light;
//! pencil shows as grain; and brightness is compared with the white paper in the nearest codes, so that a
//! grey ladder in front of the wall is no grey wall.

use image::RgbImage;
use rayon::prelude::*;

use super::pose::Pose;
use super::reading::{Apart, Camera, Sight};
use crate::frame::{PhotoPx, Point, WallMm, float, floor_index};
use crate::plan::code::SIDE;
use crate::plan::{Cell, Grid};

/// Samples along a cell's side, over its middle part.
const ALONG: usize = 30;
/// Range of a cell's side that is sampled, as a share of it: neighbours and tape may reach into the rest.
const MIDDLE: std::ops::Range<f64> = 0.12..0.88;
/// Range beyond the wall's edge in which its surroundings are sampled, in mm.
const BESIDE_MM: std::ops::Range<f64> = 8.0..40.0;
/// Maximum difference in chromaticity (shares of red and green) between an empty cell and the surroundings. Empty cells of the
/// simulator's walls lie 0.000 to 0.022 away.
const HUE: f64 = 0.022;
/// Maximum difference in chromaticity of an empty cell without another that looks the same. A torn square in light blue lay 0.016 away from
/// a white wall, a scribbled one 0.021 from a grey one.
const SAME_HUE: f64 = 0.014;
/// Maximum ratio of an empty cell's grain to that of the surroundings, for the median and for the grainiest fifth.
const GRAINIER: [f64; 2] = [1.7, 2.2];
/// Maximum ratio of a bare cell's grain to that of the smoothest tenth of the squares that were read.
const BARE: f64 = 0.6;
/// Minimum share of a cell inside the photo for it to count as seen.
const SEEN: f64 = 0.5;
/// Maximum share of an empty cell's samples darker than [`DARK`] of its median: beyond it something was drawn or printed there.
const MARKED: f64 = 0.008;
/// Brightness below which a sample is dark, as a share of the cell's median.
const DARK: f64 = 0.62;
/// Minimum chromaticity difference from grey of a coloured wall, and maximum difference of its shadows from it, as a share of that: ink is
/// grey, a shadow between boards keeps their colour.
const COLOURED: f64 = 0.03;
const SHADOW: f64 = 0.5;
/// Maximum brightness of such a wall against white paper: in lamplight white paper is coloured too, and ink on it with it (simulator's phone-3).
const DARKER: f64 = 0.85;
/// Maximum ratio of brightness between an empty cell and the surroundings, each against the nearest white.
const BRIGHTER: f64 = 1.24;
/// Maximum differences between two cells that are empty together: in chromaticity, and the ratio of brightness and of grain.
const ALIKE: (f64, f64) = (0.008, 1.25);
/// Number of nearest whites that are averaged.
const WHITES: usize = 4;
/// Grey level up to which nothing can be seen: a part of the photo that is black, by a stitching program or a finger.
const BLACK: f64 = 8.0;
/// Difference from the photo's brightest grey level within which a cell counts as clipped.
const CLIPPED: f64 = 4.0;
/// Maximum median grain of a clipped cell: where light drowns the sensor there is no noise. White paper that is well lit has 0.004 and more.
const FLAT: f64 = 0.002;

/// Statistics of a part of the photo, whatever the light.
#[derive(Copy, Clone, Debug, PartialEq)]
struct PatchStats {
    /// Hue: shares of red and of green in the colour, medians.
    hue: [f64; 2],
    /// Grain: difference between pixels two apart, as a share of the brightness; median and 80th percentile.
    grain: [f64; 2],
    /// Brightness in grey levels, median.
    level: f64,
    /// Ratio of the brightness to that of the nearest white paper, median.
    white: f64,
    /// Share of samples darker than [`DARK`] of the median.
    dark: f64,
    /// Chromaticity of those places, mean; that of all where there are none.
    dark_hue: [f64; 2],
}

/// What else hangs where, besides squares in their cells.
#[derive(Copy, Clone, Debug)]
pub struct HangingBeside<'a> {
    /// Whether cards hang to the left and below.
    pub cards: bool,
    /// What hangs apart, and which cells are not reached.
    pub apart: &'a Apart,
    /// Stubs that may hang out over cells.
    pub stubs: &'a [Stub],
}

/// The stub of a square, left on and hanging out over a neighbouring cell.
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct Stub {
    /// Cell over which it hangs.
    pub over: Cell,
    /// Corners on the wall, in order around it.
    pub corners: [Point<WallMm>; 4],
}

/// Classifier of cells without a named code.
#[derive(Debug)]
pub struct EmptyCells<'a> {
    colour: &'a RgbImage,
    camera: &'a Camera,
    grid: Grid,
    /// Whites: place and brightness, in grey levels, of the paper in each code that was read.
    whites: Vec<(Point<WallMm>, f64)>,
    /// Stubs of squares that may hang out over cells.
    stubs: &'a [Stub],
    /// Statistics of the strips above the wall and to its right; where neither is in the photo and no cards
    /// hang there, of those below and to its left.
    surroundings: Vec<PatchStats>,
    /// Grain (median and 80th percentile) of the smoothest tenth of the squares that were read; `None` for
    /// fewer than 5.
    smoothest: Option<[f64; 2]>,
    /// Cells without a named code, with their statistics; row by row.
    others: Vec<(Cell, PatchStats)>,
    /// Brightness, in grey levels, at which the photo clips.
    brightest: f64,
}

impl<'a> EmptyCells<'a> {
    /// Classifier for one photo, from its pixels and camera.
    ///
    /// `read` are the cells where squares were read, with their codes' poses. Nothing is taken from beside cells that are not reached.
    #[must_use]
    pub fn new(
        (colour, camera): (&'a RgbImage, &'a Camera),
        grid: Grid,
        read: &[(Cell, Pose)],
        hanging: HangingBeside<'a>,
    ) -> Self {
        let whites = read
            .par_iter()
            .filter_map(|(cell, pose)| Some((grid.centre(*cell), white(colour, pose)?)))
            .collect();
        let mut behind = Self {
            colour,
            camera,
            grid,
            whites,
            surroundings: Vec::new(),
            stubs: hanging.stubs,
            smoothest: None,
            others: Vec::new(),
            brightest: brightest(colour),
        };
        // above and to the right nothing of the evening's own hangs; the floor or a ladder is likelier below
        let reached = |cell: Cell| hanging.apart.reaches(cell);
        let sides = [0..2, if hanging.cards { 2..2 } else { 2..4 }];
        let own = |place: &Point<WallMm>| reached(grid.nearest(*place));
        let look = |side| behind.look(beside(&grid, side).filter(own));
        let looks = sides.map(|sides| sides.filter_map(look).collect());
        behind.surroundings =
            looks.into_iter().find(|looks: &Vec<PatchStats>| !looks.is_empty()).unwrap_or_default();
        let looks: Vec<PatchStats> =
            read.par_iter().filter_map(|(cell, _)| behind.look(places(&grid, *cell))).collect();
        if looks.len() >= 5 {
            let tenth = |of: fn(&PatchStats) -> f64| quantile(looks.iter().map(of).collect(), 0.1);
            behind.smoothest = Some([tenth(|l| l.grain[0]), tenth(|l| l.grain[1])]);
        }
        let is_unread = |cell: &Cell| read.iter().all(|(other, _)| other != cell);
        let unread: Vec<Cell> = grid.cells().filter(|cell| reached(*cell)).filter(is_unread).collect();
        behind.others =
            unread.par_iter().filter_map(|cell| Some((*cell, behind.look(behind.open(*cell))?))).collect();
        behind
    }

    /// Sight of a cell without a named code, and its certainty, 0 … 1.
    #[must_use]
    pub fn judge(&self, cell: Cell) -> (Sight, f64) {
        let (width, height) = (f64::from(self.colour.width()), f64::from(self.colour.height()));
        let inside = |p: &&Point<PhotoPx>| p.x >= 0.0 && p.y >= 0.0 && p.x < width && p.y < height;
        let places: Vec<Point<PhotoPx>> = self.open(cell).map(|p| self.camera.wall_to_photo(p)).collect();
        let seen = float(places.iter().filter(|p| inside(p)).count()) / float(places.len().max(1));
        if seen < SEEN {
            return (Sight::Unseen, 1.0 - seen);
        }
        let Some((_, look)) = self.others.iter().find(|(other, _)| *other == cell) else {
            return (Sight::Unseen, 0.5);
        };
        if look.level <= BLACK {
            return (Sight::Unseen, 0.8);
        }
        let usual_dark = self.surroundings.iter().map(|s| s.dark).fold(0.0, f64::max);
        let marked = look.dark > MARKED + 2.0 * usual_dark && !is_shadow(look);
        let drowned = look.level > self.brightest - CLIPPED && look.grain[0] < FLAT;
        if drowned || marked {
            return (Sight::Unread, 0.8);
        }
        let bare_wall =
            |look: &PatchStats, hue| self.surroundings.iter().any(|around| like(look, around, hue));
        let twin = |is_right: &dyn Fn(&PatchStats) -> bool| {
            self.others.iter().any(|(other, twin)| *other != cell && alike(look, twin) && is_right(twin))
        };
        // pale pencil on white lies as far from the wall's colour as bare wall in another light; bare wall has its like
        let paired = || twin(&|twin| bare_wall(twin, HUE));
        if bare_wall(look, SAME_HUE) || (bare_wall(look, HUE) && paired()) {
            (Sight::Empty, 0.95)
        } else if self.surroundings.is_empty()
            && self.smoothest.is_some_and(|s| bare(look, s))
            && twin(&|_| true)
        {
            (Sight::Empty, 0.8)
        } else {
            (Sight::Unread, 0.8)
        }
    }

    /// Places of a cell over which no stub can hang; all of them where that would leave too few.
    fn open(&self, cell: Cell) -> impl Iterator<Item = Point<WallMm>> + use<> {
        let stubs: Vec<&Stub> = self.stubs.iter().filter(|stub| stub.over == cell).collect();
        let is_open = |place: &Point<WallMm>| !stubs.iter().any(|stub| place.is_within(&stub.corners));
        let open: Vec<Point<WallMm>> = places(&self.grid, cell).filter(is_open).collect();
        let enough = open.len() >= ALONG * ALONG / 3;
        if enough { open.into_iter() } else { places(&self.grid, cell).collect::<Vec<_>>().into_iter() }
    }

    /// Whites that can be among the [`WHITES`] nearest of any of these places: on a wall of thousands of
    /// squares few are.
    fn whites_about(&self, places: &[Point<WallMm>]) -> Vec<(Point<WallMm>, f64)> {
        let (Some(first), Some(last)) = (places.first(), places.last()) else { return Vec::new() };
        let middle = first.towards(*last, 0.5);
        let reach = places.iter().map(|place| place.distance(middle).value()).fold(0.0, f64::max);
        let away = |(at, _): &(Point<WallMm>, f64)| at.distance(middle).value();
        if self.whites.len() <= WHITES {
            return self.whites.clone();
        }
        let mut nearest: Vec<f64> = self.whites.iter().map(away).collect();
        let (_, nearest, _) = nearest.select_nth_unstable_by(WHITES - 1, f64::total_cmp);
        // whoever is nearest to the middle is at most so far from every place
        let most = *nearest + 2.0 * reach;
        self.whites.iter().filter(|white| away(white) <= most).copied().collect()
    }

    /// Brightness of white paper near a place on the wall, in grey levels; `None` where no code was read.
    fn white_near(&self, place: Point<WallMm>, whites: &[(Point<WallMm>, f64)]) -> Option<f64> {
        let mut near: Vec<(f64, f64)> =
            whites.iter().map(|(at, white)| (at.distance(place).value(), *white)).collect();
        near.sort_by(|a, b| a.0.total_cmp(&b.0));
        near.truncate(WHITES);
        let weight = |away: f64| 1.0 / (away + self.grid.square_mm / 2.0);
        let sum: f64 = near.iter().map(|(away, white)| white * weight(*away)).sum();
        let weights: f64 = near.iter().map(|(away, _)| weight(*away)).sum();
        (weights > 0.0).then(|| sum / weights)
    }

    /// Statistics of the places that lie in the photo; `None` where those are too few.
    fn look(&self, places: impl Iterator<Item = Point<WallMm>>) -> Option<PatchStats> {
        let (mut reds, mut greens, mut grains) = (Vec::new(), Vec::new(), Vec::new());
        let (mut levels, mut whites) = (Vec::new(), Vec::new());
        let places: Vec<Point<WallMm>> = places.collect();
        let near = self.whites_about(&places);
        for (i, place) in places.into_iter().enumerate() {
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
            if i % 7 == 0 {
                whites.push(sum / 3.0 / self.white_near(place, &near).unwrap_or(255.0).max(1.0));
            }
        }
        if levels.len() < ALONG * ALONG / 4 {
            return None;
        }
        let level = quantile(levels.clone(), 0.5);
        let is_dark: Vec<bool> = levels.iter().map(|own| *own < DARK * level).collect();
        let darks = is_dark.iter().filter(|dark| **dark).count();
        let dark = float(darks) / float(levels.len());
        let mean = |of: &[f64]| {
            let own = of.iter().zip(&is_dark).filter(|(_, dark)| **dark);
            own.map(|(share, _)| share).sum::<f64>() / float(darks)
        };
        let dark_hue = [mean(&reds), mean(&greens)];
        let hue = [quantile(reds, 0.5), quantile(greens, 0.5)];
        Some(PatchStats {
            dark_hue: if darks == 0 { hue } else { dark_hue },
            hue,
            grain: [quantile(grains.clone(), 0.5), quantile(grains, 0.8)],
            level,
            white: quantile(whites, 0.5),
            dark,
        })
    }
}

/// Places spread over the middle part of a cell, row by row.
fn places(grid: &Grid, cell: Cell) -> impl Iterator<Item = Point<WallMm>> + use<> {
    let ([corner, ..], side) = (grid.corners(cell), grid.square_mm);
    let along = move |i: usize| {
        let t = float(i) / float(ALONG - 1);
        side * (MIDDLE.start + (MIDDLE.end - MIDDLE.start) * t)
    };
    (0..ALONG * ALONG).map(move |i| Point::new(corner.x + along(i % ALONG), corner.y + along(i / ALONG)))
}

/// Brightness of the paper in a code, in grey levels: the 85th percentile of its modules.
fn white(colour: &RgbImage, pose: &Pose) -> Option<f64> {
    let along = |i: usize| float(i) + 0.5;
    let levels: Vec<f64> = (0..SIDE * SIDE)
        .map(|i| pose.module_to_photo(Point::new(along(i % SIDE), along(i / SIDE))))
        .filter_map(|p| Some(pixel(colour, p.x, p.y)?.iter().sum::<f64>() / 3.0))
        .collect();
    (!levels.is_empty()).then(|| quantile(levels, 0.85))
}

/// Distance of two colours in chromaticity: shares of red and green.
fn hue_apart(one: [f64; 2], other: [f64; 2]) -> f64 {
    (one[0] - other[0]).hypot(one[1] - other[1])
}

/// Whether a cell looks like the surroundings.
fn like(cell: &PatchStats, surroundings: &PatchStats, hue: f64) -> bool {
    let away = hue_apart(cell.hue, surroundings.hue);
    // in less light the sensor's noise is a larger share of the brightness
    let dimmer = (surroundings.level / cell.level.max(1.0)).clamp(1.0, 4.0);
    let smooth = |k: usize| cell.grain[k] <= surroundings.grain[k] * GRAINIER[k] * dimmer;
    let brighter = cell.white / surroundings.white.max(1e-6);
    away < hue && smooth(0) && smooth(1) && (1.0 / BRIGHTER..BRIGHTER).contains(&brighter)
}

/// Whether what is dark in a cell is the cell's own colour in shadow, as between boards, and no ink: told on coloured walls only.
fn is_shadow(look: &PatchStats) -> bool {
    let from_grey = hue_apart(look.hue, [1.0 / 3.0; 2]);
    look.white < DARKER && from_grey > COLOURED && hue_apart(look.dark_hue, look.hue) < SHADOW * from_grey
}

/// Whether a cell is much smoother than the smoothest squares.
fn bare(cell: &PatchStats, smoothest: [f64; 2]) -> bool {
    cell.grain[0] < BARE * smoothest[0] && cell.grain[1] < BARE * smoothest[1]
}

/// Whether two cells look the same.
fn alike(a: &PatchStats, b: &PatchStats) -> bool {
    let ratio = |a: f64, b: f64| (1.0 / ALIKE.1..ALIKE.1).contains(&(a / b.max(1e-6)));
    hue_apart(a.hue, b.hue) < ALIKE.0
        && ratio(a.white, b.white)
        && ratio(a.grain[0], b.grain[0])
        && ratio(a.grain[1], b.grain[1])
}

/// Places beside the wall: 0 above it, 1 to its right, 2 below, 3 to its left.
fn beside(grid: &Grid, side: usize) -> impl Iterator<Item = Point<WallMm>> + use<> {
    let size = grid.size();
    let (long, deep) = (200, 10);
    (0..long * deep).map(move |i| {
        let along = float(i % long) / float(long - 1);
        let away = BESIDE_MM.start + (BESIDE_MM.end - BESIDE_MM.start) * float(i / long) / float(deep);
        match side {
            0 => Point::new(along * size.x, -away),
            1 => Point::new(size.x + away, along * size.y),
            2 => Point::new(along * size.x, size.y + away),
            _ => Point::new(-away, along * size.y),
        }
    })
}

fn quantile(mut values: Vec<f64>, share: f64) -> f64 {
    values.sort_by(f64::total_cmp);
    values.get(floor_index(float(values.len().saturating_sub(1)) * share)).copied().unwrap_or(0.0)
}

/// Brightness, in grey levels, that 2 pixels in 1,000 exceed: where the sensor clips, if it does.
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
