//! Made photos: their faults, their geometry, their files, and what is refused.

mod command;
mod faults;
mod file;
mod geometry;

use everysquare::frame::Point;
use everysquare::picture::Picture;
use everysquare::plan::cards::all_cards;
use everysquare::plan::settings::{CodeSettings, Corner};
use everysquare::plan::{Grid, Modules, Printed, PrintedSquare, Tag};
use everysquare::rehearse::{Hanging, Light, Made, Options, Pose, Sensor, make};

/// What is printed for a wall of `columns` × `rows` squares with modules of `module_mm`.
fn printed(columns: usize, rows: usize, module_mm: f64) -> Printed {
    let grid = Grid::usual(columns, rows);
    let tag = Tag::new("K7M").unwrap();
    let code = CodeSettings { module_mm, corner: Corner::BottomRight, inset_mm: 8.0 };
    let (x, y) = code.top_left_mm(grid.square_mm);
    let square = |cell| {
        let label = grid.label(cell);
        let text = tag.square(&label);
        PrintedSquare { cell, modules: Modules::encode(&text).unwrap(), label, text }
    };
    Printed {
        parts: Vec::new(),
        stub_mm: None,
        name: "Harbour evening".to_owned(),
        tag: tag.to_string(),
        units: everysquare::plan::settings::Units::default(),
        grid,
        module_mm,
        code_top_left: Point::new(x, y),
        squares: grid.cells().map(square).collect(),
        cards: all_cards(&grid, tag).unwrap(),
    }
}

/// Sea, sky and a sun.
fn picture() -> Picture {
    let pixels = image::RgbImage::from_fn(120, 90, |x, y| {
        let (x, y) = (f64::from(x) / 120.0, f64::from(y) / 90.0);
        match () {
            () if (x - 0.7).hypot(y - 0.3) < 0.15 => image::Rgb([248, 196, 40]),
            () if y > 0.6 + 0.1 * (x * 8.0).sin() => image::Rgb([40, 110, 170]),
            () => image::Rgb([172, 214, 240]),
        }
    });
    Picture { pixels }
}

/// A small photo, quickly made.
fn small(seed: u64) -> Options {
    Options { seed, width: 800, height: 600, ..Options::default() }
}

/// Neither noise nor blur, neither bend nor tape, even light: what is left is geometry.
fn bare(seed: u64) -> Options {
    Options {
        seed,
        hanging: Hanging { bend_mm: 0.0, tape: false, ..Hanging::default() },
        light: Light { gradient: 0.0, shadow: 0.0, vignetting: 0.0, ..Light::default() },
        sensor: Sensor { blur_px: 0.0, noise: 0.0, sharpen: 0.0, ..Sensor::default() },
        pose: Pose { yaw_degrees: 17.0, pitch_degrees: -9.0, roll_degrees: 4.0, ..Pose::default() },
        ..small(seed)
    }
}

fn made(printed: &Printed, options: &Options) -> Made {
    make(printed, &picture(), options).unwrap()
}
