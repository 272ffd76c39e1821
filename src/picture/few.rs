//! The picture in a few pencil colours: for every pixel the number of its pencil.

use image::RgbImage;

use super::choose::choose;
use super::clean::{Least, clean};
use super::colour::Seen;
use super::label::votes_of_drawing;
use super::raster::Raster;
use super::vote::{Place, settle};
use super::{Picture, name};
use crate::plan::settings::{Pencil, PictureSettings};
use crate::words::Words;

/// The picture in a few pencil colours.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct FewColours {
    /// The pencils, at least one.
    pub pencils: Vec<Pencil>,
    /// Pixels side by side and one above the other.
    size: (u32, u32),
    /// The number of each pixel's pencil, row by row.
    index: Vec<u8>,
}

/// Blur of the votes of a picture that was put into the folder by hand, and the least width of what stays, in pixels: only
/// the mixed rims of its areas go. What `new` writes is cleaned by the size of its pieces.
const SMOOTH_PX: f64 = 0.6;
const LEAST_PX: f64 = 3.0;

impl FewColours {
    /// The picture in the settings' pencils; without any, in its own colours, as many as the settings say. Without pencils
    /// in the settings they bear the names of CSS's colours: see [`FewColours::named`].
    #[must_use]
    pub fn chosen(picture: &Picture, settings: &PictureSettings) -> Self {
        if !settings.pencils.is_empty() {
            return Self::of(picture, &settings.pencils);
        }
        let pencils: Vec<Pencil> =
            choose(&picture.pixels, settings.colours).into_iter().map(name::unnamed).collect();
        Self::of(picture, &pencils)
    }

    /// Each pixel in the pencil that looks most like it, pixels mixed at edges in that of the area they belong to. A picture
    /// in the pencils' own colours stays as it is.
    #[must_use]
    pub fn of(picture: &Picture, pencils: &[Pencil]) -> Self {
        let colours: Vec<[u8; 3]> = pencils.iter().map(|pencil| pencil.srgb).collect();
        let width = usize::try_from(picture.pixels.width()).unwrap_or(0);
        let known = |pixel: &image::Rgb<u8>| {
            colours.iter().position(|colour| *colour == pixel.0).and_then(|number| u8::try_from(number).ok())
        };
        let exact: Option<Vec<u8>> = picture.pixels.pixels().map(known).collect();
        let numbers = exact.map_or_else(|| drawn(picture, &colours), |values| Raster { width, values });
        Self::from_numbers(pencils.to_vec(), numbers)
    }

    /// From numbers of pencils.
    #[must_use]
    pub(super) fn from_numbers(pencils: Vec<Pencil>, numbers: Raster<u8>) -> Self {
        let px = |count| u32::try_from(count).unwrap_or(0);
        Self { pencils, size: (px(numbers.width), px(numbers.height())), index: numbers.values }
    }

    /// The same with the pencil for the largest area first, and without those that no pixel needs.
    #[must_use]
    pub fn in_order_of_area(self) -> Self {
        let areas = self.areas();
        let mut order: Vec<usize> = (0..areas.len()).filter(|number| areas[*number] > 0).collect();
        order.sort_by_key(|number| std::cmp::Reverse(areas[*number]));
        let place = |old: &u8| order.iter().position(|number| *number == usize::from(*old)).unwrap_or(0);
        let index = self.index.iter().map(|old| u8::try_from(place(old)).unwrap_or(0)).collect();
        let pencils = order.iter().map(|number| self.pencils[*number].clone()).collect();
        Self { pencils, size: self.size, index }
    }

    /// The same with the pencils named in words.
    #[must_use]
    pub fn named(mut self, words: &Words) -> Self {
        let colours: Vec<[u8; 3]> = self.pencils.iter().map(|pencil| pencil.srgb).collect();
        self.pencils
            .iter_mut()
            .zip(name::names(&colours, words))
            .for_each(|(pencil, name)| pencil.name = name);
        self
    }

    /// Pixels side by side and one above the other.
    #[must_use]
    pub fn size(&self) -> (u32, u32) {
        self.size
    }

    /// The number of each pixel's pencil, row by row.
    #[must_use]
    pub fn index(&self) -> &[u8] {
        &self.index
    }

    /// How many pixels each pencil has.
    #[must_use]
    pub fn areas(&self) -> Vec<usize> {
        let mut areas = vec![0; self.pencils.len()];
        for number in &self.index {
            areas[usize::from(*number)] += 1;
        }
        areas
    }

    /// The pencils that somebody has to have: those that cover something and are not the white of the paper.
    pub fn needed(&self) -> impl Iterator<Item = &Pencil> {
        let pencils = self.pencils.iter().zip(self.areas());
        pencils.filter(|(own, area)| *area > 0 && !own.is_paper()).map(|(own, _)| own)
    }

    /// As a picture in the pencils' colours.
    #[must_use]
    pub fn to_picture(&self) -> Picture {
        let mut pixels = RgbImage::new(self.size.0, self.size.1);
        for (pixel, number) in pixels.pixels_mut().zip(&self.index) {
            pixel.0 = self.pencils[usize::from(*number)].srgb;
        }
        Picture { pixels }
    }
}

/// The pencils' numbers for a picture of any colours.
fn drawn(picture: &Picture, colours: &[[u8; 3]]) -> Raster<u8> {
    let votes = votes_of_drawing(&picture.pixels, colours);
    let place = Place { start: (0.0, 0.0), step: 1.0, size: (votes.width, votes.height()) };
    let mut numbers = settle(&votes, colours.len(), &place, SMOOTH_PX);
    let seen: Vec<Seen> = colours.iter().map(|srgb| Seen::of(*srgb)).collect();
    clean(&mut numbers, &seen, Least { width_px: LEAST_PX, area_px: 0.0 });
    numbers
}
