//! What this program makes of shapes and crowds: `tools/outside/crowd.py` writes problems to standard input, one JSON object a
//! line, and compares the answers, one a line, with scipy's, scikit-image's and shapely's.
//!
//! ```text
//!   {"binomial": {"n": 30, "p": 0.2, "k": 7, "sure": 0.95}}         ▶ {"cumulative": …, "quantile": …}
//!   {"shapes": {"width": 9, "height": 4, "colours": [0, 1, …]}}     ▶ {"regions": [{"colour","pixels","perimeter","complexity"} …],
//!                                                                      "edge": …, "score": …}
//!   {"pencils": {"seats": 30, "chances": [0.5, 0.3, 0.2]}}          ▶ {"counts": [ … ]}
//! ```

#![allow(clippy::print_stdout, reason = "a tool's answers")]

use std::error::Error;
use std::io;

use everysquare::picture::complexity::Shapes;
use everysquare::plan::crowd::binomial::{cumulative, quantile};
use everysquare::plan::crowd::pencils;
use serde::Deserialize;
use serde_json::{Value, json};

#[derive(Deserialize)]
#[serde(rename_all = "lowercase")]
enum Problem {
    Binomial { n: usize, p: f64, k: usize, sure: f64 },
    Shapes { width: usize, height: usize, colours: Vec<u8> },
    Pencils { seats: usize, chances: Vec<f64> },
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
