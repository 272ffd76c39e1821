//! Drawings on paper as this program takes them out of photos, for `tools/outside/paper.py`: `paper PHOTO INTO.png …` writes each drawing as
//! PNG and says on one line where the sheet's corners are, or why there is none.

#![allow(clippy::print_stdout, reason = "a tool's answers")]

use std::error::Error;

use everysquare::picture::Picture;
use everysquare::picture::from_paper::from_paper;
use everysquare::words::in_english;

fn main() -> Result<(), Box<dyn Error>> {
    let words: Vec<String> = std::env::args().skip(1).collect();
    for pair in words.chunks_exact(2) {
        let photo = Picture::open(&std::fs::read(&pair[0])?)?;
        match from_paper(&photo.pixels, None) {
            Ok(found) => {
                std::fs::write(&pair[1], found.picture.to_png()?)?;
                let corners = found.corners.map(|corner| format!("{:.2},{:.2}", corner.x, corner.y));
                println!("{} {:.4}", corners.join(" "), found.shape);
            }
            Err(error) => println!("{}", in_english(&error)),
        }
    }
    Ok(())
}
