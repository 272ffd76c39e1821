//! The straight picture of a wall that another program straightens too: `tools/outside/warp.py` writes a photo and problems, one JSON
//! object a line, to standard input; each answer is the name of the picture that was written.
//!
//! ```text
//!   {"photo": "photo.png", "into": "straight.png", "wall": [[x,y] × 4], "seen": [[x,y] × 4], "k1": …, "k2": …,
//!    "columns": …, "rows": …, "square_mm": …, "px_per_mm": …}
//! ```

#![allow(clippy::print_stdout, reason = "a tool's answers")]

use std::error::Error;
use std::io;

use everysquare::display::{Frontal, LONGEST_PX, Shot, straighten};
use everysquare::frame::{Frame, Map, Point};
use everysquare::photo::{Luma, Photo};
use everysquare::plan::{Grid, KeptFree, RowsFrom};
use everysquare::read::lens::Lens;
use everysquare::read::{Apart, Camera};
use serde::Deserialize;

type Pair = [f64; 2];

#[derive(Deserialize)]
struct Problem {
    photo: String,
    into: String,
    wall: [Pair; 4],
    seen: [Pair; 4],
    k1: f64,
    k2: f64,
    columns: usize,
    rows: usize,
    square_mm: f64,
    px_per_mm: f64,
}

fn point<F: Frame>(at: Pair) -> Point<F> {
    Point::new(at[0], at[1])
}

impl Problem {
    fn answer(&self) -> Result<(), Box<dyn Error>> {
        let colour = image::open(&self.photo)?.into_rgb8();
        let photo = Photo { luma: Luma::of(&colour), colour, taken: None, made: true };
        let (width, height) = photo.colour.dimensions();
        let lens = Lens { k1: self.k1, k2: self.k2, ..Lens::straight(f64::from(width), f64::from(height)) };
        let wall_to_straight =
            Map::from_four(self.wall.map(point), self.seen.map(point)).ok_or("four corners on a line")?;
        let camera = Camera { wall_to_straight, lens };
        let grid = Grid {
            columns: self.columns,
            rows: self.rows,
            square_mm: self.square_mm,
            piece_mm: 25.4,
            rows_from: RowsFrom::Bottom,
            border: false,
            kept_free: KeptFree::NONE,
        };
        let frontal = Frontal { margin_mm: 0.0, px_per_mm: Some(self.px_per_mm), longest_px: LONGEST_PX };
        let shot = Shot { photo: &photo, camera: &camera, light: None, apart: &Apart::default() };
        straighten(&[shot], &[], &grid, frontal).save(&self.into)?;
        Ok(())
    }
}

fn main() -> Result<(), Box<dyn Error>> {
    for line in io::stdin().lines() {
        let problem: Problem = serde_json::from_str(&line?)?;
        problem.answer()?;
        println!("{}", serde_json::to_string(&problem.into)?);
    }
    Ok(())
}
