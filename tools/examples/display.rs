//! What this program makes of pictures beside each other, as another one asks for it: `tools/outside/display.py` writes problems to
//! standard input, one JSON object a line, and compares the answers, one a line, with scikit-image's.
//!
//! ```text
//!   {"size": [w,h], "one": [r,g,b, r,g,b …], "other": […]}   ▶ {"ssim": …, "map": […]}     row by row
//! ```

#![allow(clippy::print_stdout, reason = "a tool's answers")]

use std::error::Error;
use std::io;

use everysquare::picture::structure::ssim;
use image::RgbImage;
use serde::Deserialize;
use serde_json::json;

#[derive(Deserialize)]
struct Problem {
    size: [u32; 2],
    one: Vec<u8>,
    other: Vec<u8>,
}

fn main() -> Result<(), Box<dyn Error>> {
    for line in io::stdin().lines() {
        let Problem { size: [width, height], one, other } = serde_json::from_str(&line?)?;
        let picture = |bytes| RgbImage::from_raw(width, height, bytes).ok_or("pixels and size disagree");
        let alike = ssim(&picture(one)?, &picture(other)?).ok_or("sizes differ")?;
        println!("{}", json!({ "ssim": alike.mean, "map": alike.map }));
    }
    Ok(())
}
