//! What this program makes of points that another one made: `tools/outside/camera.py` writes problems to standard input, one
//! JSON object a line, and compares the answers, one a line, with OpenCV's.
//!
//! ```text
//!   {"map": {"from": [[x,y] × 4], "to": [[x,y] × 4], "at": [[x,y] …]}}        ▶ {"there": [[x,y] …], "back": [[x,y] …]}
//!   {"lens": {"size": [w,h], "k1": …, "k2": …, "at": [[x,y] …]}}              ▶ {"bent": [[x,y] …], "straight": [[x,y] …]}
//!   {"camera": {"size": [w,h], "wall": [[[x,y] × 4] …], "photo": […], "at": [[x,y] …]}}  ▶ {"seen": [[x,y] …], "k1": …, "k2": …}
//! ```

#![allow(clippy::print_stdout, reason = "a tool's answers")]

use std::error::Error;
use std::io;

use everysquare::frame::{Frame, Map, PhotoPx, Point, StraightPx, WallMm};
use everysquare::read::camera::Correspondence;
use everysquare::read::consensus::consensus;
use everysquare::read::lens::Lens;
use serde::Deserialize;
use serde_json::json;

type Pair = [f64; 2];

#[derive(Deserialize)]
#[serde(rename_all = "lowercase")]
enum Problem {
    Map { from: [Pair; 4], to: [Pair; 4], at: Vec<Pair> },
    Lens { size: Pair, k1: f64, k2: f64, at: Vec<Pair> },
    Camera { size: Pair, wall: Vec<[Pair; 4]>, photo: Vec<[Pair; 4]>, at: Vec<Pair> },
}

fn point<F: Frame>(at: Pair) -> Point<F> {
    Point::new(at[0], at[1])
}

fn pair<F: Frame>(p: Point<F>) -> Pair {
    [p.x, p.y]
}

impl Problem {
    fn answer(&self) -> Option<serde_json::Value> {
        Some(match self {
            Self::Map { from, to, at } => {
                let map = Map::<WallMm, StraightPx>::from_four(from.map(point), to.map(point))?;
                let back = map.inverse()?;
                let there: Vec<Pair> = at.iter().map(|p| pair(map.apply(point(*p)))).collect();
                let again: Vec<Pair> = there.iter().map(|p| pair(back.apply(point(*p)))).collect();
                json!({ "there": there, "back": again })
            }
            Self::Lens { size, k1, k2, at } => {
                let lens = Lens { k1: *k1, k2: *k2, ..Lens::straight(size[0], size[1]) };
                let bent: Vec<Pair> = at.iter().map(|p| pair(lens.straight_to_photo(point(*p)))).collect();
                let straight: Option<Vec<Pair>> =
                    at.iter().map(|p| lens.photo_to_straight(point(*p)).map(pair)).collect();
                json!({ "bent": bent, "straight": straight? })
            }
            Self::Camera { size, wall, photo, at } => {
                let anchors: Vec<Correspondence> = wall
                    .iter()
                    .zip(photo)
                    .map(|(wall, photo)| Correspondence { wall: wall.map(point), photo: photo.map(point) })
                    .collect();
                let (camera, _) = consensus(&anchors, Lens::straight(size[0], size[1]))?;
                let camera = camera.fitted(&anchors);
                let seen: Vec<Pair> =
                    at.iter().map(|p| pair::<PhotoPx>(camera.wall_to_photo(point(*p)))).collect();
                json!({ "seen": seen, "k1": camera.lens.k1, "k2": camera.lens.k2 })
            }
        })
    }
}

fn main() -> Result<(), Box<dyn Error>> {
    for line in io::stdin().lines() {
        let problem: Problem = serde_json::from_str(&line?)?;
        println!("{}", problem.answer().ok_or("a problem without an answer")?);
    }
    Ok(())
}
