//! Colours of every tile of the wall and its rim, light corrected, and of the bare wall.

use std::collections::BTreeMap;

use rayon::prelude::*;

use crate::frame::{Point, float, floor_index};
use crate::photo::Photo;
use crate::plan::{Cell, Printed};
use crate::read::PhotoReading;

use super::super::light::Light;
use super::Tiles;

/// Paper, evened out; see [`crate::display::light::PAPER`].
pub(super) const PAPER: [u8; 3] = [245; 3];
/// Level from which a tile is at the top of the sensor's range in its three channels together.
const CLIPPED: u8 = 250;
/// Samples along a tile's side; their mean is its colour.
const PLACES: usize = 3;
/// Minimum number of tiles from which the bare wall's colour is taken.
const FEWEST: usize = 24;
/// Share of the rim's tiles, as a fraction, that must lie closest together to give the bare wall's colour: a person's shirt may take
/// the larger part of the rim, but not in one colour.
const OWN: (usize, usize) = (2, 5);
/// Maximum number of the rim's tiles that are tried as the middle of these, spread over it: each is compared with all, and a wall of
/// 3,000 cells has 14,000.
const MIDDLES: usize = 256;
/// Maximum distance of a tile from the bare wall's colour, in levels: minimum, multiple of the spread of the tiles that gave it, maximum.
/// Beyond the maximum two thirds of all colours would be the wall's.
const AWAY: (f64, f64, f64) = (26.0, 6.0, 90.0);

/// Colours of a photo, tile by tile, row by row.
pub(super) struct Looks {
    pub tiles: Tiles,
    /// Mean colours; `None` outside the photo, and where its camera does not reach.
    pub colours: Vec<Option<[u8; 3]>>,
    /// Whether a tile is at the top of the sensor's range.
    pub clipped: Vec<bool>,
    /// Range of the grey levels of a tile's places, as a part of their mean.
    pub grain: Vec<f64>,
    /// The white paper in the code of each square that was read, and how far its chromaticity lies from the median of all codes.
    pub papers: BTreeMap<Cell, ([u8; 3], f64)>,
    /// The bare wall's colour and how far from it a tile of it may lie; `None` where it is not seen.
    backing: Option<([u8; 3], f64)>,
    /// Whether each tile belongs to a card that is in sight.
    pub cards: Vec<bool>,
}

impl Looks {
    pub fn of(photo: &Photo, reading: &PhotoReading, printed: &Printed, tiles: Tiles) -> Self {
        let light = Light::of(photo, &reading.cells, &reading.camera, printed);
        let rows: Vec<Vec<Seen>> = (0..tiles.rows)
            .into_par_iter()
            .map(|row| {
                let mut seen: Vec<Seen> =
                    (0..tiles.columns).map(|column| tile(photo, reading, tiles, column, row)).collect();
                let mut bytes: Vec<u8> =
                    seen.iter().flat_map(|tile| tile.colour.unwrap_or_default()).collect();
                if let Some(light) = &light {
                    let middle = float(row) + 0.5;
                    light.even_row(
                        &mut bytes,
                        tiles.wall(0.0, middle),
                        tiles.wall(float(tiles.columns), middle),
                    );
                }
                for (tile, even) in seen.iter_mut().zip(bytes.chunks_exact(3)) {
                    tile.clipped = tile.colour.is_some_and(|own| own.iter().all(|level| *level >= CLIPPED));
                    tile.colour = tile.colour.map(|_| [even[0], even[1], even[2]]);
                }
                seen
            })
            .collect();
        let seen: Vec<Seen> = rows.into_iter().flatten().collect();
        let colours: Vec<Option<[u8; 3]>> = seen.iter().map(|tile| tile.colour).collect();
        let clipped = seen.iter().map(|tile| tile.clipped).collect();
        let grain = seen.iter().map(|tile| tile.grain).collect();
        let papers = light.as_ref().map(Light::papers).unwrap_or_default();
        let backing = backing(&colours, tiles);
        let cards = super::cards::in_sight(photo, reading, printed, tiles);
        Self { tiles, colours, clipped, grain, papers, backing, cards }
    }

    /// Whether a colour is that of the bare wall; also where that is not known.
    pub fn is_backing(&self, colour: [u8; 3]) -> bool {
        self.backing.is_none_or(|(backing, most)| away(colour, backing) <= most)
    }
}

/// One tile.
#[derive(Copy, Clone, Debug, Default)]
struct Seen {
    colour: Option<[u8; 3]>,
    clipped: bool,
    grain: f64,
}

/// The mean colour of a tile and its grain; no colour where a part of it is outside the photo.
fn tile(photo: &Photo, reading: &PhotoReading, tiles: Tiles, column: usize, row: usize) -> Seen {
    if !reading.apart.reaches(tiles.nearest(column, row)) {
        return Seen::default();
    }
    let mut sum = [0_usize; 3];
    let (mut least, mut most) = (usize::MAX, 0);
    for i in 0..PLACES * PLACES {
        let part = |i: usize| (float(i) + 0.5) / float(PLACES);
        let place = tiles.wall(float(column) + part(i % PLACES), float(row) + part(i / PLACES));
        let p: Point<_> = reading.camera.wall_to_photo(place);
        if !(p.x >= 0.0 && p.y >= 0.0) {
            return Seen::default();
        }
        let at = |value: f64| u32::try_from(floor_index(value)).ok();
        let pixel = at(p.x).zip(at(p.y)).and_then(|(x, y)| photo.colour.get_pixel_checked(x, y));
        let Some(pixel) = pixel else { return Seen::default() };
        sum.iter_mut().zip(pixel.0).for_each(|(sum, level)| *sum += usize::from(level));
        let grey: usize = pixel.0.iter().map(|level| usize::from(*level)).sum();
        (least, most) = (least.min(grey), most.max(grey));
    }
    let colour = sum.map(|sum| u8::try_from(sum / (PLACES * PLACES)).unwrap_or(u8::MAX));
    let mean = float(sum.iter().sum::<usize>()) / float(PLACES * PLACES);
    Seen { colour: Some(colour), clipped: false, grain: float(most - least) / mean.max(1.0) }
}

/// Colour of the bare wall: the middle of the densest part of the rim's tiles above the wall and to its right, where no cards hang.
fn backing(colours: &[Option<[u8; 3]>], tiles: Tiles) -> Option<([u8; 3], f64)> {
    let (rim, right, bottom) = (tiles.rim, tiles.columns - tiles.rim, tiles.rows - tiles.rim);
    let beside = |tile: usize| {
        let (x, y) = (tile % tiles.columns, tile / tiles.columns);
        let above = (rim..right).contains(&x) && (1..rim.saturating_sub(1)).contains(&y);
        above || ((rim..bottom).contains(&y) && x > right && x + 1 < tiles.columns)
    };
    let seen: Vec<[u8; 3]> =
        (0..colours.len()).filter(|tile| beside(*tile)).filter_map(|tile| *colours.get(tile)?).collect();
    if seen.len() < FEWEST {
        return None;
    }
    // the colour with the least distance within which the share OWN of all tiles lies
    let own = (seen.len() * OWN.0).div_ceil(OWN.1);
    let spread = |middle: &[u8; 3]| {
        let mut away: Vec<f64> = seen.iter().map(|colour| away(*colour, *middle)).collect();
        let (_, most, _) = away.select_nth_unstable_by(own - 1, f64::total_cmp);
        *most
    };
    let every = seen.len().div_ceil(MIDDLES);
    let spreads = seen.iter().step_by(every).map(|middle| (*middle, spread(middle)));
    let (middle, spread) = spreads.min_by(|one, other| one.1.total_cmp(&other.1))?;
    Some((middle, AWAY.0.max(AWAY.1 * spread).min(AWAY.2)))
}

/// Euclidean distance of two colours, in levels.
pub(super) fn away(one: [u8; 3], other: [u8; 3]) -> f64 {
    let part = |i: usize| f64::from(one[i]) - f64::from(other[i]);
    (part(0).powi(2) + part(1).powi(2) + part(2).powi(2)).sqrt()
}
