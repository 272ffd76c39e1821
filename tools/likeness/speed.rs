//! How long it takes.

use std::error::Error;
use std::fmt;
use std::time::Instant;

use everysquare::display::likeness::{Belongs, Pieces};
use everysquare::display::overlap::overlap;
use everysquare::picture::structure::{ssim, wall_likeness};
use everysquare::plan::{Cell, Grid, Settings, Tag};
use image::RgbImage;
use image::imageops::{FilterType, resize};

use crate::walls;

/// Pixels of the pictures whose likeness is timed: two million.
const PICTURE: (u32, u32) = (1600, 1250);

/// What a piece of work takes.
struct Spent {
    /// The median of five, in milliseconds.
    wall: f64,
    /// Of all threads together, the mean of five, in milliseconds: what others do on the machine weighs less on it.
    cpu: f64,
}

impl fmt::Display for Spent {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{:.0} ms ({:.0} ms of processor)", self.wall, self.cpu)
    }
}

fn timed<T>(work: impl Fn() -> T) -> Spent {
    let before = processor_ms();
    let mut spent: Vec<f64> = (0..5)
        .map(|_| {
            let start = Instant::now();
            std::hint::black_box(work());
            start.elapsed().as_secs_f64() * 1000.0
        })
        .collect();
    spent.sort_by(f64::total_cmp);
    Spent { wall: spent[2], cpu: (processor_ms() - before) / 5.0 }
}

/// Processor time so far, from `/proc/self/stat` (Linux; elsewhere not a number), whose ticks are 10 ms.
fn processor_ms() -> f64 {
    let stat = std::fs::read_to_string("/proc/self/stat").unwrap_or_default();
    let fields = stat.rsplit(')').next().unwrap_or_default().split_whitespace().skip(11).take(2);
    let ticks = fields.filter_map(|field| field.parse::<f64>().ok());
    ticks.reduce(|a, b| a + b).map_or(f64::NAN, |ticks| ticks * 10.0)
}

/// Times both walls and both pictures.
pub fn run() -> Result<(), Box<dyn Error>> {
    println!("{} threads, median of five", rayon::current_num_threads());
    for (columns, rows) in [(16, 12), (60, 50)] {
        let grid = Grid::usual(columns, rows);
        let printed = Settings::new("Made".to_owned(), Tag::new("K7M").ok_or("no tag")?, grid).printed()?;
        let few = walls::picture("balloons", &grid)?;
        let picture = few.to_picture();
        let drawn: Vec<(Cell, RgbImage)> = grid
            .cells()
            .map(|cell| (cell, resize(&picture.piece(&grid, cell).pixels, 96, 96, FilterType::Triangle)))
            .collect();
        let squares: Vec<(Cell, &RgbImage)> = drawn.iter().map(|(cell, own)| (*cell, own)).collect();
        let prepared = timed(|| Pieces::of(&few, &printed));
        let pieces = Pieces::of(&few, &printed);
        let judged = timed(|| pieces.judge_all(&squares));
        let found = pieces.judge_all(&squares);
        let here = found.iter().filter(|own| **own == Belongs::Here).count();
        println!("{} drawings: pieces prepared {prepared}, all judged {judged}; {here} belong", found.len());
        if columns == 16 {
            let wall = resize(&picture.pixels, PICTURE.0, PICTURE.1, FilterType::Triangle);
            println!("SSIM of 2 MP {}", timed(|| ssim(&wall, &wall)));
            println!("likeness of a 2 MP wall {}", timed(|| wall_likeness(&wall, &picture.pixels)));
            println!("overlap on a 2 MP wall {}", timed(|| overlap(&wall, &few, &grid, 0.0)));
        }
    }
    Ok(())
}
