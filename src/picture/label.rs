//! Which pencil each pixel votes for.
//!
//! In a drawing, pixels at the edge of two areas are mixed of both, and the nearest pencil to such a mixture may be a third one:
//! grey between black and white. So a pixel whose own pencil shows pure nowhere near votes for the two areas whose mixture it
//! is, with their shares.

use image::RgbImage;

use super::choose::nearest;
use super::colour::{Between, Seen};
use super::raster::Raster;
use super::vote::Vote;
use crate::frame::narrow;

/// How far from the exact mixture of two pencils a pixel may be to count as one, in levels of sRGB. Blurs in light instead of
/// sRGB, and JPEG, are within it.
const MOST_OFF: f32 = 40.0;
/// Pixels on every side that are looked at for the two areas: an edge is mixed over one or two.
const NEARBY: usize = 2;
/// How far from a pencil a pixel may be that shows it pure, in the unit of [`Seen`]: what JPEG makes of an even area.
const PURE: f32 = 0.03;
// Advance over the second nearest pencil from which a pixel's whole vote goes to the nearest, in the unit of [`Seen`]. Below it
// the vote is parted, so that grain where two pencils are equally near is averaged away.
/// A drawing has no grain.
const SURE_IN_A_DRAWING: f32 = 0.03;
/// A photo has: this is three times that of a phone's photo indoors, some 5 % of the lightness.
const SURE_IN_A_PHOTO: f32 = 0.15;

/// The votes of a photo's pixels, each for itself.
#[must_use]
pub fn votes_of_photo(pixels: &RgbImage, pencils: &[[u8; 3]]) -> Raster<Vote> {
    each(pixels, pencils, SURE_IN_A_PHOTO).map(|(vote, _)| vote)
}

/// The votes of a drawing's pixels, those that are mixed given to the areas they are mixed of.
#[must_use]
pub fn votes_of_drawing(pixels: &RgbImage, pencils: &[[u8; 3]]) -> Raster<Vote> {
    let each = each(pixels, pencils, SURE_IN_A_DRAWING);
    let pixels = pixels.pixels().enumerate();
    let votes = pixels.map(|(place, pixel)| match each.values[place] {
        (vote, true) => Vote::whole(vote.first),
        (vote, false) => {
            let (areas, count) = pure_near(&each, place);
            let areas = &areas[..count];
            if areas.contains(&vote.first) { vote } else { mixture(pixel.0, areas, pencils).unwrap_or(vote) }
        }
    });
    Raster { width: each.width, values: votes.collect() }
}

/// Each pixel's vote, and whether it shows its pencil pure.
fn each(pixels: &RgbImage, pencils: &[[u8; 3]], sure: f32) -> Raster<(Vote, bool)> {
    let seen: Vec<Seen> = pencils.iter().map(|srgb| Seen::of(*srgb)).collect();
    let width = usize::try_from(pixels.width()).unwrap_or(0);
    let mut last = None;
    let values = pixels.pixels().map(|pixel| match last {
        Some((srgb, vote)) if srgb == pixel.0 => vote,
        _ => {
            let vote = between_nearest(Seen::of(pixel.0), &seen, sure);
            last = Some((pixel.0, vote));
            vote
        }
    });
    Raster { width, values: values.collect() }
}

/// For the nearest pencil; where the second is as near, for both. And whether the nearest is met.
fn between_nearest(own: Seen, pencils: &[Seen], sure: f32) -> (Vote, bool) {
    let first = nearest(own, pencils);
    let (mut second, mut apart) = (first, f32::INFINITY);
    for (number, pencil) in pencils.iter().enumerate().filter(|(number, _)| *number != first) {
        let own = own.apart(*pencil);
        if own < apart {
            (second, apart) = (number, own);
        }
    }
    let number = |place: usize| u8::try_from(place).unwrap_or(0);
    let off = own.apart(pencils[first]);
    let share = narrow(0.5) + ((apart - off) / sure).min(1.0) / 2.0;
    (Vote { first: number(first), second: number(second), share }, off < PURE)
}

/// The pencils that show pure near a place, and how many they are: the first four that are found.
fn pure_near(each: &Raster<(Vote, bool)>, place: usize) -> ([u8; 4], usize) {
    let (wide, x, y) = (each.width, place % each.width, place / each.width);
    let (mut found, mut count) = ([0; 4], 0);
    for row in y.saturating_sub(NEARBY)..(y + NEARBY + 1).min(each.height()) {
        let from = row * wide + x.saturating_sub(NEARBY);
        let to = row * wide + (x + NEARBY + 1).min(wide);
        for (vote, _) in each.values[from..to].iter().filter(|(_, pure)| *pure) {
            if count < found.len() && !found[..count].contains(&vote.first) {
                found[count] = vote.first;
                count += 1;
            }
        }
    }
    (found, count)
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
