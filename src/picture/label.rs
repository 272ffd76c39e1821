//! Which pencil each pixel votes for.
//!
//! In a drawing, pixels at the edge of two areas are mixed of both, and the nearest pencil to such a mixture may be a third one:
//! grey between black and white. So a pixel that is not solid, whose own pencil fills no area nearby, votes for the two areas
//! whose mixture it is, with their shares.

use image::RgbImage;

use super::choose::{nearest, solid};
use super::colour::{Between, Seen};
use super::raster::Raster;
use super::vote::Vote;
use crate::frame::narrow;

/// How far from the exact mixture of two pencils a pixel may be to count as one, in levels of sRGB. Blurs in light instead of
/// sRGB, and JPEG, are within it.
const MOST_OFF: f32 = 40.0;
/// Pixels on every side that are looked at for the two areas: an edge is mixed over one or two.
const NEARBY: usize = 2;
/// Advance over the second nearest pencil from which a pixel's whole vote goes to the nearest, in the unit of [`Seen`].
const SURE: f32 = 0.03;

/// The votes of all pixels.
#[must_use]
pub fn votes(pixels: &RgbImage, pencils: &[[u8; 3]]) -> Raster<Vote> {
    let seen: Vec<Seen> = pencils.iter().map(|srgb| Seen::of(*srgb)).collect();
    let width = usize::try_from(pixels.width()).unwrap_or(0);
    let mut last: Option<([u8; 3], Vote)> = None;
    let plain = pixels.pixels().map(|pixel| match last {
        Some((srgb, vote)) if srgb == pixel.0 => vote,
        _ => {
            let vote = between_nearest(Seen::of(pixel.0), &seen);
            last = Some((pixel.0, vote));
            vote
        }
    });
    let plain = Raster { width, values: plain.collect() };
    unmixed(pixels, plain, pencils)
}

/// For the nearest pencil; where the second is as near, for both.
fn between_nearest(own: Seen, pencils: &[Seen]) -> Vote {
    let first = nearest(own, pencils);
    let (mut second, mut apart) = (first, f32::INFINITY);
    for (number, pencil) in pencils.iter().enumerate().filter(|(number, _)| *number != first) {
        let own = own.apart(*pencil);
        if own < apart {
            (second, apart) = (number, own);
        }
    }
    let number = |place: usize| u8::try_from(place).unwrap_or(0);
    let ahead = ((apart - own.apart(pencils[first])) / SURE).min(1.0);
    Vote { first: number(first), second: number(second), share: narrow(0.5) + ahead / 2.0 }
}

/// The votes with those of mixed pixels given to the areas they are mixed of.
fn unmixed(pixels: &RgbImage, plain: Raster<Vote>, pencils: &[[u8; 3]]) -> Raster<Vote> {
    let solid = solid(pixels);
    let wide = plain.width;
    let own = |i: usize| (solid[i], plain.values[i]);
    let votes = pixels.pixels().enumerate().map(|(i, pixel)| {
        let (is_solid, vote) = own(i);
        if is_solid {
            return Vote::whole(vote.first);
        }
        let (x, y) = (i % wide, i / wide);
        let rows = y.saturating_sub(NEARBY)..(y + NEARBY + 1).min(plain.height());
        let mut areas = [0_u8; 4];
        let mut count = 0;
        for row in rows {
            let from = row * wide + x.saturating_sub(NEARBY);
            let to = (row * wide + x + NEARBY + 1).min((row + 1) * wide);
            for (solid, near) in solid[from..to].iter().zip(&plain.values[from..to]) {
                if *solid && count < areas.len() && !areas[..count].contains(&near.first) {
                    areas[count] = near.first;
                    count += 1;
                }
            }
        }
        let areas = &areas[..count];
        if areas.contains(&vote.first) { vote } else { mixture(pixel.0, areas, pencils).unwrap_or(vote) }
    });
    Raster { width: wide, values: votes.collect() }
}

/// A vote for the two of these pencils whose mixture a pixel is, if it is one.
fn mixture(pixel: [u8; 3], areas: &[u8], pencils: &[[u8; 3]]) -> Option<Vote> {
    let colour = |number: u8| pencils.get(usize::from(number)).copied();
    let pairs =
        areas.iter().enumerate().flat_map(|(i, one)| areas[..i].iter().map(move |other| (*one, *other)));
    let mixtures = pairs.filter_map(|(first, second)| {
        let (share, off) = Between::of(colour(first)?, colour(second)?).share(pixel);
        Some((off, Vote { first, second, share }))
    });
    let best = mixtures.min_by(|a, b| a.0.total_cmp(&b.0))?;
    (best.0 <= MOST_OFF).then_some(best.1)
}
