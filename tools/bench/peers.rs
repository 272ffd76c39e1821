//! What is compared with: the bare decoding of the JPEG, and a general reader.

use everysquare::photo::Photo;
use zune_jpeg::JpegDecoder;
use zune_jpeg::zune_core::bytestream::ZCursor;

use super::Outcome;
use super::table::{Told, timed};

/// zune-jpeg, to colours as it gives them.
pub fn decode(bytes: &[u8], rounds: usize) -> Outcome<Told> {
    let (seconds, pixels) = timed(rounds, || JpegDecoder::new(ZCursor::new(bytes)).decode());
    let pixels = pixels.ok_or("no pixels")?.map_err(|error| format!("{error:?}"))?;
    let remarks = vec![format!("{} bytes of JPEG, {} of pixels", bytes.len(), pixels.len())];
    Ok(Told::now(vec![("bare decoding (zune-jpeg)".to_owned(), seconds)], remarks))
}

/// rqrr, given the whole photo's brightness.
pub fn general(bytes: &[u8]) -> Outcome<Told> {
    let luma = Photo::open(bytes)?.luma;
    let (width, height) = (luma.width, luma.height);
    let (seconds, read) = timed(1, || {
        let grey = |x: usize, y: usize| luma.grey.get(y * width + x).copied().unwrap_or(0);
        let mut prepared = rqrr::PreparedImage::prepare_from_greyscale(width, height, grey);
        let grids = prepared.detect_grids();
        let read = grids.iter().filter(|grid| grid.decode().is_ok()).count();
        (grids.len(), read)
    });
    let (grids, read) = read.unwrap_or_default();
    let remarks = vec![format!("read {read} codes of {grids} that it took for codes")];
    Ok(Told::now(vec![("general reader, whole photo (rqrr)".to_owned(), seconds)], remarks))
}
