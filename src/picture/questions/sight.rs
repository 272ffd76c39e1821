//! What is plainly seen in each piece: the colours of its inner part, since a line is drawn along its edge.

use std::collections::BTreeMap;

use crate::frame::{PicturePx, Point, float, floor_index};
use crate::picture::Picture;
use crate::picture::colour::ciede2000;
use crate::plan::settings::Pencil;
use crate::plan::{Cell, Grid};

/// Part of a piece's side that is left out along each edge: half a millimetre of the smallest pieces on cards.
const EDGE: f64 = 0.06;
/// Number of places a side at which a piece is looked at, evenly spread.
const PLACES: usize = 40;
/// Largest CIEDE2000 between a pixel and a pencil that look the same.
const SAME: f64 = 10.0;
/// Least part of the picture that must look like its pencils before anyone is asked to count colours by eye.
const FLAT: f64 = 0.95;

/// What is plainly seen in each piece.
pub(super) struct Sight {
    /// For each piece, in the grid's order, and for each pencil the part of the inner places that show it.
    shares: Vec<Vec<f64>>,
    /// Whether the picture shows its pencils' colours and nothing between them, as what `new` writes does and a photo does
    /// not.
    pub is_flat: bool,
}

impl Sight {
    pub fn of(picture: &Picture, pencils: &[Pencil], grid: &Grid) -> Self {
        let crop = picture.crop(grid);
        let side = crop.piece.value();
        let mut known: BTreeMap<[u8; 3], Option<usize>> = BTreeMap::new();
        let mut shares = Vec::with_capacity(grid.count());
        for cell in grid.cells() {
            let mut own = vec![0.0; pencils.len()];
            for at in places(crop.piece_top_left(cell), side) {
                let pixel = pixel(picture, at);
                let pencil = *known.entry(pixel).or_insert_with(|| alike(pixel, pencils));
                if let Some(share) = pencil.and_then(|pencil| own.get_mut(pencil)) {
                    *share += 1.0 / float(PLACES * PLACES);
                }
            }
            shares.push(own);
        }
        let seen: f64 = shares.iter().flatten().sum();
        let is_flat = seen >= FLAT * float(grid.count());
        Self { shares, is_flat }
    }

    /// The part of a piece's inner places that show a pencil.
    pub fn share(&self, grid: &Grid, cell: Cell, pencil: usize) -> f64 {
        let own = self.shares.get(grid.index(cell));
        own.and_then(|own| own.get(pencil)).copied().unwrap_or(0.0)
    }
}

/// The inner places of a piece.
fn places(corner: Point<PicturePx>, side: f64) -> impl Iterator<Item = Point<PicturePx>> {
    let along = move |place: usize| {
        let part = (float(place) + 0.5) / float(PLACES);
        side * (EDGE + part * (1.0 - 2.0 * EDGE))
    };
    let all = (0..PLACES).flat_map(|down| (0..PLACES).map(move |across| (across, down)));
    all.map(move |(across, down)| Point::new(corner.x + along(across), corner.y + along(down)))
}

/// The pencil that a pixel looks like.
fn alike(pixel: [u8; 3], pencils: &[Pencil]) -> Option<usize> {
    let apart = |pencil: &Pencil| ciede2000(pencil.srgb, pixel);
    let nearest = pencils.iter().enumerate().min_by(|(_, a), (_, b)| apart(a).total_cmp(&apart(b)));
    nearest.filter(|(_, pencil)| apart(pencil) <= SAME).map(|(number, _)| number)
}

/// The colour at a place of the picture.
pub(super) fn pixel(picture: &Picture, at: Point<PicturePx>) -> [u8; 3] {
    let (width, height) = picture.size();
    let within = |value: f64, pixels: u32| {
        u32::try_from(floor_index(value)).unwrap_or(u32::MAX).min(pixels.saturating_sub(1))
    };
    picture.pixels.get_pixel(within(at.x, width), within(at.y, height)).0
}
