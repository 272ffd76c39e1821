//! What this program makes of colours and drawings that another one made: `tools/outside/colours.py` writes problems to standard
//! input, one JSON object a line, and compares the answers, one a line, with those of other libraries.
//!
//! ```text
//!   {"srgb": [r,g,b]}                        ▶ {"oklab": [l,a,b], "cielab": [l,a,b], "again": [r,g,b], "name": "…"}
//!   {"pair": [[l,a,b], [l,a,b]]}             ▶ {"ciede2000": …}
//!   {"named": true}                          ▶ {"names": {"aliceblue": [r,g,b], …}, "survey": {"teal": [r,g,b], …}}
//!   {"svg": "…", "size": [w,h]}              ▶ {"pixels": [[r,g,b] …]}   row by row, shrunk to that size
//! ```

#![allow(clippy::print_stdout, reason = "a tool's answers")]

use std::collections::BTreeMap;
use std::error::Error;
use std::io;

use everysquare::picture::Picture;
use everysquare::picture::colour::{Seen, ciede2000_of_lab, cielab, oklab};
use everysquare::picture::css::CSS_COLOURS;
use everysquare::picture::name::css_colour;
use everysquare::picture::survey::SURVEY;
use image::imageops::{FilterType, resize};
use serde::Deserialize;
use serde_json::json;

#[derive(Deserialize)]
#[serde(untagged)]
enum Problem {
    Srgb { srgb: [u8; 3] },
    Pair { pair: [[f64; 3]; 2] },
    Named { named: bool },
    Svg { svg: String, size: [u32; 2] },
}

impl Problem {
    fn answer(&self) -> Result<serde_json::Value, Box<dyn Error>> {
        Ok(match self {
            Self::Srgb { srgb } => json!({
                "oklab": oklab(*srgb),
                "cielab": cielab(*srgb),
                "again": Seen::of(*srgb).to_srgb(),
                "name": css_colour(*srgb).name,
            }),
            Self::Pair { pair: [one, other] } => json!({ "ciede2000": ciede2000_of_lab(*one, *other) }),
            Self::Named { named } => {
                let names = CSS_COLOURS.iter().filter(|_| *named).map(|css| (css.name, css.srgb));
                let survey =
                    SURVEY.iter().flat_map(|own| own.colours.iter().map(|(name, _)| *name).zip(own.srgb()));
                json!({ "names": names.collect::<BTreeMap<_, _>>(), "survey": survey.collect::<BTreeMap<_, _>>() })
            }
            Self::Svg { svg, size: [width, height] } => {
                let pixels =
                    resize(&Picture::open(svg.as_bytes())?.pixels, *width, *height, FilterType::Triangle);
                json!({ "pixels": pixels.pixels().map(|pixel| pixel.0).collect::<Vec<_>>() })
            }
        })
    }
}

fn main() -> Result<(), Box<dyn Error>> {
    for line in io::stdin().lines() {
        println!("{}", serde_json::from_str::<Problem>(&line?)?.answer()?);
    }
    Ok(())
}
