//! The file: pixels turned as the EXIF orientation says, JPEG, and an EXIF segment that says that the picture is made.

use image::imageops::{flip_horizontal, flip_vertical, rotate90, rotate180, rotate270};
use image::{ImageEncoder, RgbImage, codecs::jpeg::JpegEncoder};

use super::RehearseError;
use super::options::Options;
use crate::photo::MADE_WORDS;

/// The program's name in the file.
const SOFTWARE: &str = "everysquare rehearse";

/// The pixels as a file of an EXIF orientation stores them (Exif 2.32, tag 0x0112): the way back from upright.
///
/// ```text
///   upright   2 mirrored   3 half turn   4 upside    5 transposed   6 turned left   7 other      8 turned right
///                                        down                                       diagonal
///    A B        B A          D C           C D          A C             B D            D B            C A
///    C D        D C          B A           A B          B D             A C            C A            D B
/// ```
#[must_use]
pub fn stored_from_upright(upright: &RgbImage, orientation: u16) -> RgbImage {
    match orientation {
        2 => flip_horizontal(upright),
        3 => rotate180(upright),
        4 => flip_vertical(upright),
        5 => flip_horizontal(&rotate90(upright)),
        6 => rotate270(upright),
        7 => flip_horizontal(&rotate270(upright)),
        8 => rotate90(upright),
        _ => upright.clone(),
    }
}

/// The whole file.
pub(super) fn jpeg(upright: &RgbImage, options: &Options) -> Result<Vec<u8>, RehearseError> {
    let sensor = &options.sensor;
    let stored = stored_from_upright(upright, sensor.orientation);
    let mut bytes = Vec::new();
    let failed = |error: &dyn std::fmt::Display| RehearseError::Jpeg(error.to_string());
    let mut encoder = JpegEncoder::new_with_quality(&mut bytes, sensor.jpeg_quality);
    encoder.set_exif_metadata(exif(sensor.orientation, sensor.taken.as_deref())).map_err(|e| failed(&e))?;
    encoder
        .write_image(stored.as_raw(), stored.width(), stored.height(), image::ExtendedColorType::Rgb8)
        .map_err(|e| failed(&e))?;
    Ok(bytes)
}

/// One entry of a TIFF directory.
enum Value {
    Short(u16),
    Long(u32),
    Text(Vec<u8>),
}

/// A TIFF structure, little-endian, as an EXIF segment holds it (TIFF 6.0, Exif 2.32): one directory, and one for the
/// date.
fn exif(orientation: u16, taken: Option<&str>) -> Vec<u8> {
    let text = |words: &str| Value::Text(words.bytes().chain([0]).collect());
    let mut main = vec![
        (0x010e, text(&format!("{MADE_WORDS} ({SOFTWARE})"))), // ImageDescription
        (0x0112, Value::Short(orientation)),                   // Orientation
        (0x0131, text(SOFTWARE)),                              // Software
    ];
    let Some(taken) = taken else { return [header(), directory(8, &main)].concat() };
    let date = [(0x9003, text(taken))]; // DateTimeOriginal
    main.push((0x8769, Value::Long(0))); // the second directory's place, which depends on the first one's length only
    let second = 8 + directory(8, &main).len();
    main.pop();
    let second = u32::try_from(second).unwrap_or(0);
    main.push((0x8769, Value::Long(second)));
    [header(), directory(8, &main), directory(second, &date)].concat()
}

fn header() -> Vec<u8> {
    let mut header = b"II".to_vec();
    header.extend(42_u16.to_le_bytes());
    header.extend(8_u32.to_le_bytes());
    header
}

/// A directory that begins `offset` bytes into the structure, with what does not fit its entries behind it.
fn directory(offset: u32, entries: &[(u16, Value)]) -> Vec<u8> {
    let count = u16::try_from(entries.len()).unwrap_or(0);
    let mut out = count.to_le_bytes().to_vec();
    let mut behind = Vec::new();
    let after = offset + 2 + 12 * u32::from(count) + 4;
    for (tag, value) in entries {
        out.extend(tag.to_le_bytes());
        match value {
            Value::Short(short) => {
                out.extend(3_u16.to_le_bytes());
                out.extend(1_u32.to_le_bytes());
                out.extend(short.to_le_bytes());
                out.extend([0, 0]);
            }
            Value::Long(long) => {
                out.extend(4_u16.to_le_bytes());
                out.extend(1_u32.to_le_bytes());
                out.extend(long.to_le_bytes());
            }
            Value::Text(text) => {
                out.extend(2_u16.to_le_bytes());
                out.extend(u32::try_from(text.len()).unwrap_or(0).to_le_bytes());
                out.extend((after + u32::try_from(behind.len()).unwrap_or(0)).to_le_bytes());
                behind.extend(text);
                if behind.len() % 2 == 1 {
                    behind.push(0);
                }
            }
        }
    }
    out.extend(0_u32.to_le_bytes());
    out.extend(behind);
    out
}
