//! The picture in a few pencil colours: for every pixel the number of its pencil.

use std::collections::BTreeMap;

use super::Picture;
use crate::plan::settings::{Pencil, PictureSettings};

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

impl FewColours {
    /// The picture in the settings' pencils; without any, in its own most frequent colours, as many as the settings say.
    #[must_use]
    pub fn chosen(picture: &Picture, settings: &PictureSettings) -> Self {
        if !settings.pencils.is_empty() {
            return Self::of(picture, &settings.pencils);
        }
        let mut counts = BTreeMap::<[u8; 3], usize>::new();
        for pixel in picture.pixels.pixels() {
            *counts.entry(pixel.0).or_default() += 1;
        }
        let mut colours: Vec<_> = counts.into_iter().collect();
        colours.sort_by_key(|(_, count)| std::cmp::Reverse(*count));
        let named = |(number, (srgb, _)): (usize, &([u8; 3], usize))| Pencil {
            name: format!("colour {}", number + 1),
            srgb: *srgb,
        };
        let pencils: Vec<Pencil> = colours.iter().take(settings.colours).enumerate().map(named).collect();
        Self::of(picture, &pencils)
    }

    /// Each pixel in the pencil whose colour is nearest.
    #[must_use]
    pub fn of(picture: &Picture, pencils: &[Pencil]) -> Self {
        let nearest = |pixel: &image::Rgb<u8>| {
            let apart = |pencil: &Pencil| -> u32 {
                pixel.0.iter().zip(pencil.srgb).map(|(a, b)| u32::from(a.abs_diff(b)).pow(2)).sum()
            };
            (0u8..).zip(pencils).min_by_key(|(_, pencil)| apart(pencil)).map_or(0, |(number, _)| number)
        };
        Self {
            pencils: pencils.to_vec(),
            size: picture.size(),
            index: picture.pixels.pixels().map(nearest).collect(),
        }
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
}
