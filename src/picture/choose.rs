//! Choice of the few colours that a picture is drawn with.
//!
//! A drawing's own colours stay exactly as they are: those of its *solid* pixels, all of whose neighbours are
//! alike. What lies at the edges of its areas is mixed of two colours and does not count. Where there are
//! more colours than pencils, and in photos, like colours are clustered (k-means; Stuart Lloyd, 1982): the
//! first centres are chosen far apart, then each moves to the mean of its cluster until none moves. A large
//! even area counts for more than a small one, but not in proportion, so that a small red boat on a wide sea
//! keeps its red.
//!
//! A picture may have even areas and be no drawing: a photographed drawing on white paper, an overexposed photo. Where much of what is not
//! at edges looks like none of the even areas, these are not all of its colours.

use std::cell::OnceCell;

use image::RgbImage;

use super::colour::Seen;
use crate::frame::{float, narrow};

/// Minimum share of solid pixels in a drawing; photos have 5 % at most unless they are overexposed.
const SOLID_IN_A_DRAWING: f64 = 0.4;
/// Minimum share of a picture that a drawing's colour covers: on 80 pieces of an inch, 8 mm².
const LEAST_OF_A_COLOUR: f64 = 1.5e-4;
/// Exponent of an area's weight by its size: 1 would be by area, 0 each colour alike. Common practice, no
/// source.
const POWER_OF_AREA: f64 = 0.5;
/// Maximum distance of like colours, in the unit of [`Seen`]: a step that shows on paper.
const LIKE: f32 = 0.08;
/// Minimum share of a cluster that one colour has to be its pencil, so that flat areas keep their own colour.
const FLAT: f64 = 0.3;
/// Difference to a neighbour at which a pixel of a photo counts half, in the unit of [`Seen`]: an edge.
const EDGE: f32 = 0.04;
/// Maximum number of rounds of clustering.
const MOST_ROUNDS: usize = 60;
/// Distance to all even colours, in the unit of [`Seen`], from which a pixel away from edges is of another colour, and the share of such
/// pixels from which a picture is no drawing: what [`SHARE_TO_SHOW`] says has to be shown.
const UNLIKE: f32 = 0.12;
const MOST_UNLIKE: f64 = SHARE_TO_SHOW;
/// Share of the picture from which an area of like colour has to be shown.
pub const SHARE_TO_SHOW: f64 = 0.01;
/// Bits a channel of the colour histogram's cells: of 256 levels, each 8th.
const CELL_BITS: u8 = 5;

/// Colour with its weight.
#[derive(Copy, Clone, Debug)]
pub struct Swatch {
    /// Colour as it is seen.
    pub seen: Seen,
    /// Weight in the clustering.
    pub weight: f64,
}

/// Colours of a picture, by area: of a drawing its own, of a photo those of its histogram.
#[derive(Clone, Debug)]
pub struct Colours {
    /// The colours of a drawing, those of the largest areas first; none of a photo.
    own: Vec<[u8; 3]>,
    /// What they look like, with the number of pixels that have them; edges count for little.
    swatches: Vec<Swatch>,
    /// The same where large areas count for less than their size.
    evened: Vec<Swatch>,
    /// Whether the picture has even areas and is no drawing.
    pub is_mixed: bool,
    /// See [`Colours::areas`]; worked out when they are first asked for.
    areas: OnceCell<Vec<(Seen, f64)>>,
}

/// Number of clusters that stand for the colours of a photo: many against the pencils, few enough that each is an area to be seen.
const CLUSTERS_OF_A_PHOTO: usize = 32;

impl Colours {
    /// Colours of a picture.
    #[must_use]
    pub fn of(pixels: &RgbImage) -> Self {
        let (even, seen) = (even_colours(pixels), all_seen(pixels));
        let wide = usize::try_from(pixels.width()).unwrap_or(0);
        let is_mixed = !even.is_empty() && share_unlike(&seen, wide, &even) > MOST_UNLIKE;
        let own = if is_mixed { Vec::new() } else { even };
        let swatch =
            |(srgb, count): &([u8; 3], usize)| Swatch { seen: Seen::of(*srgb), weight: float(*count) };
        let swatches = if own.is_empty() { cells(pixels, &seen) } else { own.iter().map(swatch).collect() };
        let evened = evened(&swatches);
        Self {
            own: own.into_iter().map(|(srgb, _)| srgb).collect(),
            swatches,
            evened,
            is_mixed,
            areas: OnceCell::new(),
        }
    }

    /// The few that the picture is drawn with, `count` at most; of a drawing that has no more, those of the largest areas first.
    #[must_use]
    pub fn choose(&self, count: usize) -> Vec<[u8; 3]> {
        if !self.own.is_empty() && self.own.len() <= count {
            return self.own.clone();
        }
        let middles = gather(&self.evened, count);
        if self.own.is_empty() {
            return middles.into_iter().map(Seen::to_srgb).collect();
        }
        middles.iter().map(|middle| flattest(*middle, &middles, &self.swatches).to_srgb()).collect()
    }

    /// The areas of like colour, each with its share of the picture, 0 … 1.
    #[must_use]
    pub fn areas(&self) -> &[(Seen, f64)] {
        self.areas.get_or_init(|| self.measured())
    }

    fn measured(&self) -> Vec<(Seen, f64)> {
        // an even area in changing light is many colours, each of them small
        let middles = match (1..=CLUSTERS_OF_A_PHOTO).contains(&self.own.len()) {
            true => self.swatches.iter().map(|swatch| swatch.seen).collect(),
            false => gather(&self.evened, CLUSTERS_OF_A_PHOTO),
        };
        let mut weights = vec![0.0; middles.len()];
        self.swatches.iter().for_each(|swatch| weights[nearest(swatch.seen, &middles)] += swatch.weight);
        let all: f64 = weights.iter().sum();
        middles.into_iter().zip(weights).map(|(seen, weight)| (seen, weight / all.max(1.0))).collect()
    }
}

/// Colours of a picture, `count` at most; of a drawing that has no more, those of the largest areas first.
#[must_use]
pub fn choose(pixels: &RgbImage, count: usize) -> Vec<[u8; 3]> {
    Colours::of(pixels).choose(count)
}

/// Colour of a drawing that makes up enough of a cluster; else the cluster's centre.
fn flattest(middle: Seen, middles: &[Seen], swatches: &[Swatch]) -> Seen {
    let own = |swatch: &&Swatch| middles[nearest(swatch.seen, middles)] == middle;
    let all: f64 = swatches.iter().filter(own).map(|swatch| swatch.weight).sum();
    let most = swatches.iter().filter(own).max_by(|a, b| a.weight.total_cmp(&b.weight));
    most.filter(|most| most.weight >= FLAT * all).map_or(middle, |most| most.seen)
}

/// Swatches with weights by which large areas count less for their size.
///
/// What is like counts as one area, whether it is even or grainy.
fn evened(swatches: &[Swatch]) -> Vec<Swatch> {
    let like = |own: &Swatch, other: &&Swatch| own.seen.apart_squared(other.seen) < LIKE * LIKE;
    let area = |own: &Swatch| {
        swatches.iter().filter(|other| like(own, other)).map(|other| other.weight).sum::<f64>()
    };
    let weight = |own: &Swatch| own.weight * area(own).max(own.weight).powf(POWER_OF_AREA - 1.0);
    swatches.iter().map(|own| Swatch { seen: own.seen, weight: weight(own) }).collect()
}

/// Colours of a picture's solid areas, the largest first, each with its number of pixels; none where these are
/// a small part of it.
fn even_colours(pixels: &RgbImage) -> Vec<([u8; 3], usize)> {
    let (solid, all) = (solid(pixels), float(pixels.as_raw().len() / 3));
    let own = pixels.pixels().zip(&solid).filter(|(_, solid)| **solid).map(|(pixel, _)| pixel.0);
    let mut own: Vec<[u8; 3]> = own.collect();
    if float(own.len()) < SOLID_IN_A_DRAWING * all {
        return Vec::new();
    }
    own.sort_unstable();
    let runs = own.chunk_by(|a, b| a == b).map(|run| (run[0], run.len()));
    let mut colours: Vec<_> = runs.filter(|(_, count)| float(*count) >= LEAST_OF_A_COLOUR * all).collect();
    colours.sort_by_key(|(srgb, count)| (std::cmp::Reverse(*count), *srgb));
    colours
}

/// Each pixel as it is seen, row by row; of a run of one colour only the first is worked out.
fn all_seen(pixels: &RgbImage) -> Vec<Seen> {
    let mut last: Option<([u8; 3], Seen)> = None;
    let seen = |srgb: [u8; 3]| match last {
        Some((own, seen)) if own == srgb => seen,
        _ => last.insert((srgb, Seen::of(srgb))).1,
    };
    pixels.pixels().map(|pixel| pixel.0).map(seen).collect()
}

/// Share of the pixels, each as it is seen, that look like none of some colours and lie at no edge, 0 … 1.
fn share_unlike(seen: &[Seen], wide: usize, colours: &[([u8; 3], usize)]) -> f64 {
    let known: Vec<Seen> = colours.iter().map(|(srgb, _)| Seen::of(*srgb)).collect();
    let mut last: Option<(Seen, bool)> = None;
    let mut is_unlike = |own: Seen| match last {
        Some((other, unlike)) if other == own => unlike,
        _ => {
            let apart = own.apart_squared(known[nearest(own, &known)]);
            last.insert((own, apart > UNLIKE * UNLIKE)).1
        }
    };
    let unlike = (0..seen.len()).filter(|i| is_unlike(seen[*i]) && change(seen, wide, *i) < EDGE * EDGE);
    float(unlike.count()) / float(seen.len().max(1))
}

/// Largest squared difference of a pixel to one beside, above or below it.
fn change(seen: &[Seen], wide: usize, i: usize) -> f32 {
    let beside = (i % wide + 1 < wide).then_some(i + 1).into_iter();
    let around = beside
        .chain((!i.is_multiple_of(wide)).then(|| i - 1))
        .chain(i.checked_sub(wide))
        .chain(Some(i + wide));
    around.filter_map(|j| seen.get(j)).map(|other| seen[i].apart_squared(*other)).fold(0.0, f32::max)
}

/// Whether each pixel, row by row, has only neighbours of its own colour, of the eight around it.
#[must_use]
pub fn solid(pixels: &RgbImage) -> Vec<bool> {
    let wide = usize::try_from(pixels.width()).unwrap_or(0);
    let all: Vec<[u8; 3]> = pixels.pixels().map(|pixel| pixel.0).collect();
    // a row's pixels that equal those on their left and right, then the same with the rows above and below
    let alike_in_row: Vec<bool> = (0..all.len())
        .map(|i| (i % wide == 0 || all[i - 1] == all[i]) && (i % wide + 1 == wide || all[i + 1] == all[i]))
        .collect();
    let alike = |i: usize, other: Option<usize>| {
        other
            .filter(|other| *other < all.len())
            .is_none_or(|other| alike_in_row[other] && all[other] == all[i])
    };
    (0..all.len())
        .map(|i| alike_in_row[i] && alike(i, i.checked_sub(wide)) && alike(i, Some(i + wide)))
        .collect()
}

/// Histogram of a picture's colours: the mean and weight of each cell; pixels at edges count for little.
fn cells(pixels: &RgbImage, seen: &[Seen]) -> Vec<Swatch> {
    let wide = usize::try_from(pixels.width()).unwrap_or(0);
    let mut sums = vec![([0.0_f64; 3], 0.0_f64); 1 << (3 * CELL_BITS)];
    for (i, pixel) in pixels.pixels().enumerate() {
        let own = seen[i];
        let weight = f64::from(1.0 / (1.0 + change(seen, wide, i) / (EDGE * EDGE)));
        let cell =
            pixel.0.iter().fold(0, |cell, level| cell << CELL_BITS | usize::from(level >> (8 - CELL_BITS)));
        let (sum, count) = &mut sums[cell];
        sum.iter_mut().zip(own.0).for_each(|(sum, part)| *sum += weight * f64::from(part));
        *count += weight;
    }
    let filled = sums.into_iter().filter(|(_, count)| *count > 0.0);
    filled
        .map(|(sum, count)| Swatch { seen: Seen(sum.map(|sum| narrow(sum / count))), weight: count })
        .collect()
}

/// Centres of at most `count` clusters (k-means).
#[must_use]
pub fn gather(swatches: &[Swatch], count: usize) -> Vec<Seen> {
    let mut middles = first_middles(swatches, count);
    let mut last = Vec::new();
    for _ in 0..MOST_ROUNDS {
        let belongs: Vec<usize> = swatches.iter().map(|swatch| nearest(swatch.seen, &middles)).collect();
        if belongs == last {
            break;
        }
        let mut sums = vec![([0.0_f64; 3], 0.0_f64); middles.len()];
        for (swatch, to) in swatches.iter().zip(&belongs) {
            let (sum, weight) = &mut sums[*to];
            sum.iter_mut().zip(swatch.seen.0).for_each(|(sum, part)| *sum += swatch.weight * f64::from(part));
            *weight += swatch.weight;
        }
        for (middle, (sum, weight)) in middles.iter_mut().zip(sums).filter(|(_, (_, weight))| *weight > 0.0) {
            *middle = Seen(sum.map(|sum| narrow(sum / weight)));
        }
        last = belongs;
    }
    middles
}

/// First centres: the heaviest colour, then again and again the one farthest from all chosen, times its
/// weight.
fn first_middles(swatches: &[Swatch], count: usize) -> Vec<Seen> {
    let mut far = vec![f64::INFINITY; swatches.len()];
    let mut middles: Vec<Seen> = Vec::new();
    while middles.len() < count {
        let badness =
            |i: &usize| if middles.is_empty() { swatches[*i].weight } else { swatches[*i].weight * far[*i] };
        // of equals the first
        let next = (0..swatches.len()).rev().max_by(|a, b| badness(a).total_cmp(&badness(b)));
        let Some(next) = next.filter(|i| far[*i] > 0.0) else { break };
        let chosen = swatches[next].seen;
        middles.push(chosen);
        for (far, swatch) in far.iter_mut().zip(swatches) {
            *far = far.min(f64::from(swatch.seen.apart_squared(chosen)));
        }
    }
    middles
}

/// Index of the nearest colour, the first of equals.
#[must_use]
pub fn nearest(seen: Seen, colours: &[Seen]) -> usize {
    let mut best = (0, f32::INFINITY);
    for (number, colour) in colours.iter().enumerate() {
        let apart = seen.apart_squared(*colour);
        if apart < best.1 {
            best = (number, apart);
        }
    }
    best.0
}
