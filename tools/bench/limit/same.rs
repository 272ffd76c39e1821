//! Fingerprints of readings: whether a change of the reader changes what it reads, bit by bit.

use std::path::{Path, PathBuf};
use std::time::Instant;

use everysquare::photo::Photo;
use everysquare::picture::Picture;
use everysquare::plan::{Manifest, Printed, RowsFrom};
use everysquare::read::Reader;
use rayon::prelude::*;

use super::{CONDITIONS, Outcome, made, plan};

/// FNV-1a (G. Fowler, L. Noll, K.-P. Vo, 1991) over all that is known of a photo, as text.
fn fingerprint(jpeg: &[u8], printed: &Printed) -> Outcome<u64> {
    let reading = format!("{:?}", Reader::new(printed).read(&Photo::open(jpeg)?));
    let step = |hash: u64, byte: u8| (hash ^ u64::from(byte)).wrapping_mul(0x0000_0100_0000_01b3);
    Ok(reading.bytes().fold(0xcbf2_9ce4_8422_2325, step))
}

/// Prints a line for each made wall FIRST … FIRST + COUNT − 1 of every condition: its name and its reading's fingerprint.
pub fn walls(first: u64, count: u64, picture: &Picture) -> Outcome<()> {
    for condition in &CONDITIONS {
        let lines: Outcome<Vec<String>> = (first..first + count)
            .into_par_iter()
            .map(|seed| {
                let printed = plan(seed)?;
                let (jpeg, _) = made(seed, condition, &printed, picture)?;
                Ok(format!("{}-{seed} {:016x}", condition.name, fingerprint(&jpeg, &printed)?))
            })
            .collect();
        lines?.iter().for_each(|line| println!("{line}"));
    }
    Ok(())
}

/// The same for every photo in the folder `photos` of these events' folders; the seconds that reading took go to standard error.
#[allow(clippy::print_stderr, reason = "times differ from run to run, fingerprints must not")]
pub fn photos(events: &[String]) -> Outcome<()> {
    for event in events {
        let event = Path::new(event);
        let manifest = Manifest::from_json(&std::fs::read(event.join("print/manifest.json"))?)?;
        let printed = manifest.printed(RowsFrom::Bottom)?;
        let mut photos: Vec<PathBuf> = std::fs::read_dir(event.join("photos"))?
            .map(|entry| Ok(entry?.path()))
            .collect::<Outcome<_>>()?;
        photos.retain(|path| path.extension().is_some_and(|ending| ending == "jpg"));
        photos.sort();
        for photo in photos {
            let jpeg = std::fs::read(&photo)?;
            let start = Instant::now();
            let print = fingerprint(&jpeg, &printed)?;
            println!("{} {print:016x}", photo.display());
            eprintln!("{} {:.2} s", photo.display(), start.elapsed().as_secs_f64());
        }
    }
    Ok(())
}
