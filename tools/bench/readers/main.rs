//! rqrr and rxing on one photo of a wall, as `tools/bench/readers/readers.py` has the others do it: `readers PEER PHOTO SHEET`.
//!
//! One line of JSON for each way of looking: the photo whole, in pieces, cell by cell; each plain and enlarged 2, 3 and 4 times. What
//! was read stays read; only pieces and cells with a code that is still missing are looked at.

use std::collections::{BTreeSet, HashSet};
use std::error::Error;
use std::panic::{AssertUnwindSafe, catch_unwind};

use image::imageops::{FilterType, crop_imm, resize};
use image::{GrayImage, ImageReader};
use rxing::common::HybridBinarizer;
use rxing::multi::MultipleBarcodeReader;
use rxing::multi::qrcode::QRCodeMultiReader;
use rxing::qrcode::QRCodeReader;
use rxing::{BarcodeFormat, BinaryBitmap, DecodeHints, Luma8LuminanceSource, Reader};
use serde::Deserialize;
use serde_json::json;

#[derive(Deserialize)]
struct Code {
    text: String,
    cell: [[f64; 2]; 4],
}

#[derive(Deserialize)]
struct Sheet {
    px_per_module: f64,
    codes: Vec<Code>,
}

/// Pixels of a module beyond which nothing is enlarged.
const MODULE_PX: f64 = 6.2;

/// x, y, width, height in pixels.
type Part = [u32; 4];

fn main() -> Result<(), Box<dyn Error>> {
    let words: Vec<String> = std::env::args().skip(1).collect();
    let [peer, photo, sheet] = words.as_slice() else { return Err("readers PEER PHOTO SHEET".into()) };
    // a reader that panics has read nothing, and is counted
    std::panic::set_hook(Box::new(|_| {}));
    let grey = ImageReader::open(photo)?.decode()?.into_luma8();
    let sheet: Sheet = serde_json::from_slice(&std::fs::read(sheet)?)?;
    let mut missing: BTreeSet<&str> = sheet.codes.iter().map(|code| code.text.as_str()).collect();
    for (way, parts) in ways(&grey, &sheet) {
        for times in 1..=4 {
            if times > 1 && f64::from(times) * sheet.px_per_module > MODULE_PX {
                continue;
            }
            let mut texts = Vec::new();
            let mut panics = 0;
            for part in &parts {
                if !sheet.codes.iter().any(|code| missing.contains(code.text.as_str()) && holds(*part, code))
                {
                    continue;
                }
                let [x, y, width, height] = *part;
                let mut own = crop_imm(&grey, x, y, width, height).to_image();
                if times > 1 {
                    own = resize(&own, width * times, height * times, FilterType::CatmullRom);
                }
                match catch_unwind(AssertUnwindSafe(|| read(peer, &own, way == "cell"))) {
                    Ok(read) => texts.extend(read),
                    Err(_) => panics += 1,
                }
                missing.retain(|text| !texts.iter().any(|read| read == text));
            }
            println!("{}", json!({ "way": way, "times": times, "texts": texts, "crashes": panics }));
        }
    }
    Ok(())
}

/// The corners' bounds of a code's cell.
fn bounds(code: &Code) -> [f64; 4] {
    let of = |axis: usize, pick: fn(f64, f64) -> f64, start: f64| {
        code.cell.iter().fold(start, |so_far, corner| pick(so_far, corner[axis]))
    };
    [of(0, f64::min, f64::MAX), of(1, f64::min, f64::MAX), of(0, f64::max, 0.0), of(1, f64::max, 0.0)]
}

/// Whether a part holds the middle of a code's cell.
fn holds([x, y, width, height]: Part, code: &Code) -> bool {
    let [left, top, right, bottom] = bounds(code);
    let inside =
        |middle: f64, from: u32, length: u32| (f64::from(from)..f64::from(from + length)).contains(&middle);
    inside((left + right) / 2.0, x, width) && inside((top + bottom) / 2.0, y, height)
}

fn ways(grey: &GrayImage, sheet: &Sheet) -> Vec<(&'static str, Vec<Part>)> {
    let (width, height) = grey.dimensions();
    let side: f64 = sheet.codes.iter().map(|code| bounds(code)[2] - bounds(code)[0]).sum::<f64>()
        / sheet.codes.len() as f64;
    let piece = ((2.2 * side) as u32).min(width).min(height);
    let starts = |length: u32| {
        (0..)
            .map(move |k| k * piece / 2)
            .take_while(move |at| at + piece / 2 < length)
            .map(move |at| at.min(length - piece))
    };
    let pieces = starts(height).flat_map(|y| starts(width).map(move |x| [x, y, piece, piece])).collect();
    let cells = sheet.codes.iter().map(|code| {
        let [left, top, right, bottom] = bounds(code);
        let (margin, clip) = (0.06 * side, |v: f64, most: u32| v.clamp(0.0, f64::from(most)) as u32);
        let (x, y) = (clip(left - margin, width), clip(top - margin, height));
        [x, y, clip(right + margin, width) - x, clip(bottom + margin, height) - y]
    });
    vec![("whole", vec![[0, 0, width, height]]), ("pieces", pieces), ("cell", cells.collect())]
}

fn read(peer: &str, grey: &GrayImage, single: bool) -> Vec<String> {
    match peer {
        "rqrr" => {
            let mut prepared = rqrr::PreparedImage::prepare_from_greyscale(
                grey.width() as usize,
                grey.height() as usize,
                |x, y| grey.get_pixel(x as u32, y as u32).0[0],
            );
            prepared.detect_grids().iter().filter_map(|grid| Some(grid.decode().ok()?.1)).collect()
        }
        _ => {
            let hints = DecodeHints {
                TryHarder: Some(true),
                PossibleFormats: Some(HashSet::from([BarcodeFormat::QR_CODE])),
                ..DecodeHints::default()
            };
            let Ok(source) = Luma8LuminanceSource::new(grey.as_raw().clone(), grey.width(), grey.height())
            else {
                return Vec::new();
            };
            let mut bitmap = BinaryBitmap::new(HybridBinarizer::new(source));
            let mut reader = QRCodeMultiReader::new();
            let several = reader.decode_multiple_with_hints(&mut bitmap, &hints).unwrap_or_default();
            let mut texts: Vec<String> = several.iter().map(|result| result.getText().to_owned()).collect();
            if single && texts.is_empty() {
                texts.extend(
                    QRCodeReader::new()
                        .decode_with_hints(&mut bitmap, &hints)
                        .ok()
                        .map(|r| r.getText().to_owned()),
                );
            }
            texts
        }
    }
}
