//! Light correction: every printed code says what white and black look like just there.
//!
//! ```text
//!   Photo, CellReading ─▶ reference ─▶ white and black beside each code ─▶ field ─▶ smooth over the wall ─▶ even
//!                         ink known module by module,                      robust: glare and drawn-over     each pixel
//!                         blur found from the photo                        codes lose their weight
//! ```
//!
//! Computed in linear light (sRGB undone), for red, green and blue apart: that takes out lamps that are
//! yellow, the end of the wall that is darker, and haze in the lens. Two references a channel are all that a
//! code gives, so a camera's own tone curve in between stays. White paper comes out as [`PAPER`], printer's
//! black as [`INK`].

mod field;
mod reference;

use std::collections::BTreeMap;

use crate::frame::{Point, WallMm, float, floor_index, median};
use crate::photo::Photo;
use crate::picture::colour::{level_of_light, light_of_levels};
use crate::plan::{Cell, Printed};
use crate::read::{Camera, CellReading};

use field::Field;
use reference::references;

/// Reflectance of white office paper, 0 … 1; from memory, no source.
///
/// sRGB 245: a drawing's own white is a little darker than the screen's.
pub const PAPER: f64 = 0.913;
/// Reflectance of printer's black, 0 … 1; from memory, no source. sRGB 33.
pub const INK: f64 = 0.015;
/// Number of entries of the table from light to levels; at its dark end 0.8 of a level each.
const STEPS: usize = 4096;
/// Number of pixels of a row between two look-ups in the field; interpolated linearly between them.
const RUN: usize = 16;
const RUN_AS_PART: f32 = 16.0;

/// Light on the wall in one photo, and its correction.
#[derive(Clone, Debug)]
pub struct Light {
    field: Field,
    /// The white paper in each code, as light, with where that is.
    whites: Vec<(Cell, Point<WallMm>, [f64; 3])>,
    light_of_level: [f32; 256],
    level_of_light: Vec<u8>,
}

/// Light correction at one place on the wall: for each channel what is subtracted first, then the factor.
#[derive(Copy, Clone, Debug, PartialEq)]
pub(super) struct Evening([[f32; 2]; 3]);

impl Light {
    /// Measures the light in a photo from the codes that were read in it; `cells` are that photo's own. `None` where
    /// no code says anything of it.
    #[must_use]
    pub fn of(photo: &Photo, cells: &[CellReading], camera: &Camera, printed: &Printed) -> Option<Self> {
        let references = references(photo, cells, camera, printed);
        let field = Field::of(&references, &printed.grid)?;
        let shown = |step: usize| level_of_light(float(step) / float(STEPS - 1));
        let level_of_light = (0..STEPS).map(shown).collect();
        let whites = references.iter().map(|own| (own.cell, own.at, own.white)).collect();
        Some(Self { field, whites, light_of_level: light_of_levels(), level_of_light })
    }

    /// What the white paper in the code of each square that was read looks like in even light, in levels, and the greatest difference of its
    /// shares of red, green and blue from the medians over all codes.
    #[must_use]
    pub fn papers(&self) -> BTreeMap<Cell, ([u8; 3], f64)> {
        let share = |white: &[f64; 3], i: usize| white[i] / white.iter().sum::<f64>();
        let usual = [0, 1, 2].map(|i| {
            median(self.whites.iter().map(|(.., white)| share(white, i)).collect()).unwrap_or_default()
        });
        let paper = |(cell, at, white): &(Cell, Point<WallMm>, [f64; 3])| {
            let Evening(how) = self.field.at(*at);
            let level = |i: usize| self.level_of((white[i] - f64::from(how[i][0])) * f64::from(how[i][1]));
            let tint = |i: usize| (share(white, i) - usual[i]).abs();
            (*cell, ([level(0), level(1), level(2)], tint(0).max(tint(1)).max(tint(2))))
        };
        self.whites.iter().map(paper).collect()
    }

    /// Corrects a row of pixels, three bytes each, that runs straight over the wall from one place to
    /// another.
    pub(super) fn even_row(&self, row: &mut [u8], from: Point<WallMm>, to: Point<WallMm>) {
        let count = row.len() / 3;
        let place = |pixel: usize| from.towards(to, float(pixel) / float(count.max(1)));
        for (run, pixels) in row.chunks_mut(3 * RUN).enumerate() {
            let (start, end) = (self.field.at(place(run * RUN)), self.field.at(place((run + 1) * RUN)));
            for (i, pixel) in (0_u8..).zip(pixels.chunks_exact_mut(3)) {
                self.even(pixel, start.towards(&end, (f32::from(i) + 0.5) / RUN_AS_PART));
            }
        }
    }

    /// The level of light that adds up, 0 … 1.
    #[inline]
    fn level_of(&self, light: f64) -> u8 {
        self.level_of_light[floor_index(light * float(STEPS - 1) + 0.5).min(STEPS - 1)]
    }

    /// Corrects one pixel to what even light would show.
    #[inline]
    fn even(&self, pixel: &mut [u8], Evening(how): Evening) {
        for (level, [away, factor]) in pixel.iter_mut().zip(how) {
            let light = (self.light_of_level[usize::from(*level)] - away) * factor;
            *level = self.level_of(f64::from(light));
        }
    }
}

impl Evening {
    /// Linear interpolation, a share `t` of the way to another correction.
    #[inline]
    fn towards(&self, other: &Self, t: f32) -> Self {
        let mut mixed = self.0;
        for (own, others) in mixed.iter_mut().zip(&other.0) {
            own.iter_mut().zip(others).for_each(|(own, other)| *own += (other - *own) * t);
        }
        Self(mixed)
    }
}
