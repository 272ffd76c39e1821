//! What this program makes of shapes and crowds: `tools/outside/crowd.py` writes problems to standard input, one JSON object a
//! line, and compares the answers, one a line, with scipy's, scikit-image's and shapely's.
//!
//! ```text
//!   {"binomial": {"n": 30, "p": 0.2, "k": 7, "sure": 0.95}}         ▶ {"cumulative": …, "quantile": …}
//!   {"shapes": {"width": 9, "height": 4, "colours": [0, 1, …]}}     ▶ {"regions": [{"colour","pixels","perimeter","complexity"} …],
//!                                                                      "edge": …, "score": …}
//!   {"evening": {"giving_out": 2, "seats": 24, "hanging": 2, "pieces": 80, "visitors": [[comes, patience], …],
//!                "giving_out_times": […], "drawing_times": […], "hanging_times": […], "stays": […]}}
//!                                                             ▶ {"given_out","left","sent_away","taken_to_hang": [[since, until] …],
//!                                                                "up": […]}   all in minutes; patience null for ever
//!   {"forecast": {"visitors": [60, 120], "arrivals": "drifting", "seats": 24, "minutes": 90, "giving_out": 2, "hanging": 2,
//!                 "pieces": [10, 30, 30, 10], "minute": 45, "up": [12, 30, …]}}
//!                                        ▶ {"up": mean at that minute, "strength": κ, "forecasts": [[low, usual, high] …]}
//!   {"losses": {"width": 64, "columns": 4, "rgb": [r, g, b, …]}}  ▶ {"losses": [ … ]}   16 pixels to a piece's side
//!   {"pencils": {"seats": 30, "chances": [0.5, 0.3, 0.2]}}          ▶ {"counts": [ … ]}
//! ```

#![allow(clippy::print_stdout, reason = "a tool's answers")]

use std::error::Error;
use std::io;

use everysquare::picture::complexity::Shapes;
use everysquare::picture::order::losses;
use everysquare::plan::crowd::binomial::{cumulative, quantile};
use everysquare::plan::crowd::{
    Forecast, PATIENCE_MINUTES, Played, Scene, Stations, Trace, Wait, pencils, play,
};
use everysquare::plan::settings::{Arrivals, Choice, USUAL_MINUTES_A_PIECE, Visitors};
use image::RgbImage;
use serde::Deserialize;
use serde_json::{Value, json};

#[derive(Deserialize)]
#[serde(rename_all = "lowercase")]
enum Problem {
    Binomial { n: usize, p: f64, k: usize, sure: f64 },
    Shapes { width: usize, height: usize, colours: Vec<u8> },
    Pencils { seats: usize, chances: Vec<f64> },
    Evening(Asked),
    Forecast(Running),
    Losses { width: u32, columns: usize, rgb: Vec<u8> },
}

/// An evening that is on, and squares that are up at a minute on several such evenings.
#[derive(Deserialize)]
struct Running {
    visitors: (usize, usize),
    arrivals: String,
    seats: usize,
    minutes: f64,
    giving_out: usize,
    hanging: usize,
    pieces: [usize; 4],
    minute: f64,
    up: Vec<usize>,
}

impl Running {
    fn told(&self) -> Option<Value> {
        let scene = Scene {
            visitors: Visitors::new(self.visitors.0, self.visitors.1)?,
            arrivals: Arrivals::named(&self.arrivals)?,
            pieces_each: 1.0,
            minutes: self.minutes,
            seats: self.seats,
            giving_out: self.giving_out.into(),
            hanging: self.hanging.into(),
            giving_out_minutes: 1.2,
            hanging_minutes: 1.2,
            patience_minutes: PATIENCE_MINUTES,
            pieces: self.pieces,
            minutes_a_piece: USUAL_MINUTES_A_PIECE,
        };
        let played = Played::of(&scene, self.minute);
        let forecast = |up: &usize| {
            let Forecast { low, usual, high, .. } = played.forecast(&scene, *up);
            [low, usual, high]
        };
        let forecasts: Vec<[usize; 3]> = self.up.iter().map(forecast).collect();
        Some(json!({ "up": played.up, "strength": played.strength, "forecasts": forecasts }))
    }
}

/// An evening at its stations.
#[derive(Deserialize)]
struct Asked {
    giving_out: usize,
    seats: usize,
    hanging: usize,
    pieces: usize,
    visitors: Vec<(f64, Option<f64>)>,
    giving_out_times: Vec<f64>,
    drawing_times: Vec<f64>,
    hanging_times: Vec<f64>,
    stays: Vec<bool>,
}

impl Asked {
    fn played(&self) -> Value {
        let stations = Stations {
            giving_out: self.giving_out.into(),
            seats: self.seats,
            hanging: self.hanging.into(),
            last_calls: vec![f64::INFINITY; self.pieces],
        };
        let patience = |patience: Option<f64>| patience.unwrap_or(f64::INFINITY);
        let happened = play(
            &stations,
            &Trace {
                visitors: self.visitors.iter().map(|(comes, left)| (*comes, patience(*left))).collect(),
                giving_out: self.giving_out_times.clone(),
                drawing: self.drawing_times.clone(),
                hanging: self.hanging_times.clone(),
                stays: self.stays.clone(),
            },
        );
        let waits = |waits: &[Wait]| waits.iter().map(|wait| [wait.since, wait.until]).collect::<Vec<_>>();
        json!({
            "given_out": waits(&happened.given_out), "left": waits(&happened.left),
            "sent_away": waits(&happened.sent_away), "taken_to_hang": waits(&happened.taken_to_hang),
            "up": happened.up,
        })
    }
}

impl Problem {
    fn answer(&self) -> Value {
        match self {
            Self::Binomial { n, p, k, sure } => {
                json!({ "cumulative": cumulative(*n, *p, *k), "quantile": quantile(*n, *p, *sure) })
            }
            Self::Shapes { width, height, colours } => {
                let shapes = Shapes::of(colours, *width, *height);
                let region = |region: &everysquare::picture::complexity::Region| {
                    json!({
                        "colour": region.colour, "pixels": region.pixels, "perimeter": region.perimeter,
                        "complexity": region.complexity(),
                    })
                };
                let regions: Vec<Value> = shapes.regions.iter().map(region).collect();
                json!({ "regions": regions, "edge": shapes.edge, "score": shapes.score() })
            }
            Self::Evening(asked) => asked.played(),
            Self::Forecast(running) => running.told().unwrap_or_default(),
            Self::Losses { width, columns, rgb } => {
                let height = u32::try_from(rgb.len()).unwrap_or(0) / 3 / width;
                let picture = RgbImage::from_raw(*width, height, rgb.clone()).unwrap_or_default();
                json!({ "losses": losses(&picture, *columns) })
            }
            Self::Pencils { seats, chances } => {
                let counts: Vec<usize> = pencils(chances, *seats).iter().map(|need| need.count).collect();
                json!({ "counts": counts })
            }
        }
    }
}

fn main() -> Result<(), Box<dyn Error>> {
    for line in io::stdin().lines() {
        let problem: Problem = serde_json::from_str(&line?)?;
        println!("{}", problem.answer());
    }
    Ok(())
}
