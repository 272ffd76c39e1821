//! Photos as this program opens them, for `tools/outside/heic.py`: `photo FILE INTO.png …` writes each photo's upright pixels as PNG,
//! or says on one line why there are none.

#![allow(clippy::print_stdout, reason = "a tool's answers")]

use std::error::Error;

use everysquare::photo::Photo;
use everysquare::words::in_english;
use image::ImageFormat;

fn main() -> Result<(), Box<dyn Error>> {
    let words: Vec<String> = std::env::args().skip(1).collect();
    for pair in words.chunks_exact(2) {
        match Photo::open(&std::fs::read(&pair[0])?) {
            Ok(photo) => {
                photo.colour.save_with_format(&pair[1], ImageFormat::Png)?;
                println!("{} {}", photo.colour.width(), photo.colour.height());
            }
            Err(error) => println!("{}", in_english(&error)),
        }
    }
    Ok(())
}
