//! How well drawings on the wrong paper are found (`display::likeness`): `cargo run --release --example likeness -- [FIRST] [WALLS] [OFF]`
//!
//! `… -- time` tells how long it takes.
//!
//! Makes `WALLS` walls (20) from the seed `FIRST` (1) on, in turn of each picture, of 80 and of 192 squares, on photos that give a
//! square 40 to 300 pixels, with lights, casts, blurs and backings from the seed; the hands as usual and twice as untrue. `OFF` (0) is
//! by how many levels the pencils in the room differ from the picture's. On each wall one square in eight bears another piece's
//! drawing and one in sixteen its own turned; no wall in a room has so many, so precision is also told for one in a hundred.
//!
//! Drawings are cut from the photo by the truth's corners, a homography through four points, and whitened by the quiet zones around;
//! no reading is in between, see `walls.rs`. All is made, nothing was measured on a real wall. The lead that the module asks for was
//! chosen on seeds 5 to 24; its head has the figures of seeds 105 to 124.
//!
//! Counted is what the module says it can tell: drawings of pieces with something on them, distinct from the paper's own
//! ([`Pieces::is_plain`], [`Pieces::distinct`]). A find that names a piece which cannot be told from the true one is right.

#![allow(clippy::print_stdout, reason = "a tool's answers")]

#[allow(dead_code, reason = "shared with tests")]
#[path = "../../tests/common/scenes.rs"]
mod scenes;
mod speed;
mod tally;
mod walls;

use std::error::Error;
use std::time::Instant;

use everysquare::rehearse::{Faults, Options};
use rayon::prelude::*;

use tally::Tally;

fn main() -> Result<(), Box<dyn Error>> {
    if std::env::args().nth(1).is_some_and(|word| word == "time") {
        return speed::run();
    }
    let typed: Vec<u64> =
        std::env::args().skip(1).map(|word| word.parse()).collect::<Result<_, std::num::ParseIntError>>()?;
    let number = |i: usize, usual: u64| typed.get(i).copied().unwrap_or(usual);
    let (first, walls, off) = (number(0, 1), number(1, 20), u8::try_from(number(2, 0))?);
    for unsteady in [1.0, 2.0] {
        let told: Vec<(Tally, String)> = (first..first + walls)
            .into_par_iter()
            .map(|seed| one(seed, unsteady, off).map_err(|error| error.to_string()))
            .collect::<Result<_, String>>()?;
        let mut all = Tally::default();
        for (tally, line) in &told {
            println!("{line}");
            all.add(tally);
        }
        println!("\nhands × {unsteady}, pencils off by {off}\n{all}");
    }
    Ok(())
}

/// One wall: what was found on it, and a line about it.
fn one(seed: u64, unsteady: f64, off: u8) -> Result<(Tally, String), Box<dyn Error>> {
    const GRIDS: [((usize, usize), usize); 4] =
        [((10, 8), 4032), ((16, 12), 4032), ((10, 8), 1200), ((16, 12), 1000)];
    let which = usize::try_from(seed)?;
    let scene = walls::SCENES[which % walls::SCENES.len()];
    let (grid, width) = GRIDS[which / walls::SCENES.len() % GRIDS.len()];
    let squares = grid.0 * grid.1;
    let faults = Faults { misdrawn: squares / 8, drawn_turned: squares / 16, ..Faults::default() };
    let options = Options { width, height: width * 3 / 4, faults, unsteady, ..Options::varied(seed) };
    let wall = walls::wall(scene, grid, &options, off)?;
    let start = Instant::now();
    let tally = Tally::of(&wall);
    let line = format!(
        "seed {seed:4} {scene:10} {:2} × {:2}, {:3.0} px a square: {} ({:.1} s)",
        grid.0,
        grid.1,
        wall.px,
        tally.short(),
        start.elapsed().as_secs_f64()
    );
    Ok((tally, line))
}
