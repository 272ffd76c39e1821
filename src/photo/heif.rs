//! HEIC, as iPhones store photos: High Efficiency Image File Format (ISO/IEC 23008-12) with HEVC inside.
//!
//! ```text
//!   bytes ─▶ brand ─▶ declared size within limits? ─▶ primary item: tiles of a grid, put together ─▶ clap, irot,
//!             │                                        imir ─▶ sRGB
//!             └─▶ AVIF, a video: one sentence
//! ```
//!
//! Thumbnails, depth maps, gain maps and bursts are passed over. The decoder is heifer (safe Rust). A file's
//! own `irot` and `imir` turn the picture upright; the EXIF orientation beside them says so once more and is
//! left alone (ISO/IEC 23000-22, 7.3.6.7: the properties count).

use heifer::heifer_isobmff::HeifFile;
use heifer::{Error, Options};
use image::RgbImage;

/// Family of a file that begins with an `ftyp` box (ISO/IEC 14496-12, 4.3).
#[derive(Copy, Clone, Debug, PartialEq, Eq)]
pub enum Family {
    /// Pictures coded by HEVC: HEIC.
    Heic,
    /// Pictures coded by AV1: AVIF.
    Avif,
    /// Video, or any other file with an `ftyp` box.
    Video,
}

/// Brands of pictures coded by HEVC, in `ftyp` as the major brand or a compatible one.
const HEIC: [&[u8]; 8] = [b"heic", b"heix", b"heim", b"heis", b"hevc", b"hevx", b"hevm", b"hevs"];
/// Brands of pictures and picture sequences that leave open how they are coded.
const ANY_PICTURE: [&[u8]; 3] = [b"mif1", b"mif2", b"msf1"];
/// Brands of pictures coded by AV1.
const AVIF: [&[u8]; 2] = [b"avif", b"avis"];

/// Family of a file by its brands; `None` where it has no `ftyp` box.
#[must_use]
pub fn family(bytes: &[u8]) -> Option<Family> {
    if bytes.get(4..8) != Some(b"ftyp") {
        return None;
    }
    let size = bytes.first_chunk().map_or(0, |size| u32::from_be_bytes(*size));
    let end = usize::try_from(size).unwrap_or(0).clamp(12, 256);
    let body = bytes.get(8..end.min(bytes.len())).unwrap_or_default();
    // the major brand, four bytes of version, then compatible brands
    let brands: Vec<&[u8]> =
        body.chunks_exact(4).enumerate().filter(|(at, _)| *at != 1).map(|(_, brand)| brand).collect();
    let has = |known: &[&[u8]]| brands.iter().any(|brand| known.contains(brand));
    Some(match () {
        () if has(&HEIC) => Family::Heic,
        () if has(&AVIF) => Family::Avif,
        () if has(&ANY_PICTURE) => Family::Heic,
        () => Family::Video,
    })
}

/// Reason why a HEIC file gives no picture.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum HeicError {
    /// It ends early.
    Short,
    /// Size, width and height in pixels, beyond what is wanted.
    Large(u32, u32),
    /// A kind of coding that is not read: a burst as a film, layers, ten thousand tiles.
    Kind(String),
    /// Damaged.
    Damaged(String),
}

/// Size in pixels, width and height, that a HEIC file declares for its primary picture, before `clap`, `irot`
/// and `imir`.
///
/// # Errors
/// [`HeicError`] where the container cannot be read.
pub fn declared_size(bytes: &[u8]) -> Result<(u32, u32), HeicError> {
    let file = HeifFile::parse(bytes).map_err(|error| container(bytes, &error.into()))?;
    let size = file.image_size(file.primary_id).map_err(|error| container(bytes, &error.into()))?;
    size.ok_or_else(|| HeicError::Damaged("no ispe property".to_owned()))
}

/// Primary picture of a HEIC file, upright, in sRGB, of at most `most_pixels` pixels.
///
/// A picture for bright screens (PQ, HLG) comes as it is coded.
///
/// # Errors
/// [`HeicError`], before anything large is held in memory where the size is at fault.
pub fn decode(bytes: &[u8], most_pixels: u64) -> Result<RgbImage, HeicError> {
    let (width, height) = declared_size(bytes)?;
    if u64::from(width) * u64::from(height) > most_pixels {
        return Err(HeicError::Large(width, height));
    }
    let options = Options { max_pixels: most_pixels, ..Options::default() };
    let decoded = match heifer::decode_srgb_rgba8(bytes, &options) {
        Err(Error::Unsupported(_)) => heifer::decode_rgba8(bytes, &options),
        other => other,
    };
    let picture = decoded.map_err(|error| container(bytes, &error))?;
    let mut pixels = picture.data;
    drop_alpha(&mut pixels);
    RgbImage::from_raw(picture.width, picture.height, pixels)
        .ok_or_else(|| HeicError::Damaged("pixels and size differ".to_owned()))
}

/// Drops alpha: red, green, blue, alpha as red, green, blue, in the same memory.
fn drop_alpha(pixels: &mut Vec<u8>) {
    let count = pixels.len() / 4;
    for at in 1..count {
        pixels.copy_within(4 * at..4 * at + 3, 3 * at);
    }
    pixels.truncate(3 * count);
    pixels.shrink_to_fit();
}

fn container(bytes: &[u8], error: &Error) -> HeicError {
    if ends_early(bytes) {
        return HeicError::Short;
    }
    match error {
        Error::Unsupported(what) => HeicError::Kind(what.clone()),
        other => HeicError::Damaged(other.to_string()),
    }
}

/// Whether the file's top-level boxes reach beyond its end.
fn ends_early(bytes: &[u8]) -> bool {
    let mut at = 0;
    while let Some(head) = bytes.get(at..at + 8) {
        let Some(size) = head.first_chunk().map(|size| u32::from_be_bytes(*size)) else { return true };
        let size = match size {
            0 => return false, // to the end of the file
            1 => bytes
                .get(at + 8..at + 16)
                .and_then(|size| size.first_chunk())
                .map(|size| u64::from_be_bytes(*size)),
            size => Some(u64::from(size)),
        };
        let Some(size) = size.and_then(|size| usize::try_from(size).ok()).filter(|size| *size >= 8) else {
            return false; // nonsense, which is damage of another kind
        };
        let Some(next) = at.checked_add(size) else { return true };
        if next > bytes.len() {
            return true;
        }
        at = next;
    }
    at != bytes.len()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn ftyp(brands: &[&[u8; 4]]) -> Vec<u8> {
        let size = u32::try_from(12 + 4 * brands.len()).unwrap();
        let mut bytes = size.to_be_bytes().to_vec();
        bytes.extend(b"ftyp");
        bytes.extend(*brands[0]);
        bytes.extend([0; 4]);
        brands[1..].iter().for_each(|brand| bytes.extend(*brand));
        bytes
    }

    #[test]
    fn brands_tell_pictures_from_films() {
        assert_eq!(family(&ftyp(&[b"heic", b"mif1", b"heic"])), Some(Family::Heic));
        assert_eq!(family(&ftyp(&[b"mif1", b"heic", b"miaf"])), Some(Family::Heic));
        assert_eq!(family(&ftyp(&[b"mif1", b"avif", b"miaf"])), Some(Family::Avif));
        assert_eq!(family(&ftyp(&[b"avif", b"mif1"])), Some(Family::Avif));
        assert_eq!(family(&ftyp(&[b"msf1", b"hevc"])), Some(Family::Heic));
        assert_eq!(family(&ftyp(&[b"qt  ", b"qt  "])), Some(Family::Video));
        assert_eq!(family(&ftyp(&[b"isom", b"mp42"])), Some(Family::Video));
        assert_eq!(family(b"\xff\xd8\xff\xe0"), None);
        assert_eq!(family(b"\0\0\0\x18ftyp"), Some(Family::Video));
    }

    #[test]
    fn alpha_goes_and_colours_stay() {
        let mut pixels = vec![1, 2, 3, 255, 4, 5, 6, 255, 7, 8, 9, 0];
        drop_alpha(&mut pixels);
        assert_eq!(pixels, [1, 2, 3, 4, 5, 6, 7, 8, 9]);
    }

    #[test]
    fn a_container_that_ends_early_is_told_from_one_that_is_damaged() {
        let whole = ftyp(&[b"heic", b"mif1", b"heic"]);
        assert!(!ends_early(&whole));
        assert!(ends_early(&whole[..whole.len() - 1]));
        assert_eq!(declared_size(&whole[..20]), Err(HeicError::Short));
        assert!(matches!(declared_size(&whole), Err(HeicError::Damaged(_))));
    }
}
