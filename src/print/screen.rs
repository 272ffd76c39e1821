//! A printed page as a picture for a screen, drawn from the same pages as the PDF.

use image::RgbImage;
use typst::utils::Scalar;
use typst_layout::PagedDocument;
use typst_render::{RenderOptions, render};

use super::PrintError;
use crate::display::jpeg;

/// Longest side in pixels: fills a projector's or a laptop's screen, and goes into a message.
pub const LONGEST_PX: f64 = 1600.0;

/// The first page as a JPEG.
///
/// # Errors
/// [`PrintError::Typeset`] where there is no page.
pub(super) fn first_page(document: &PagedDocument) -> Result<Vec<u8>, PrintError> {
    let empty = || PrintError::Typeset("no page".to_owned());
    let page = document.pages().first().ok_or_else(empty)?;
    let longest = page.frame.width().to_pt().max(page.frame.height().to_pt());
    let options = RenderOptions { pixel_per_pt: Scalar::new(LONGEST_PX / longest), render_bleed: false };
    let drawn = render(page, &options);
    // the page is white below everything, so that no pixel is translucent
    let opaque = drawn.data().chunks_exact(4).flat_map(|pixel| pixel.iter().take(3)).copied().collect();
    let pixels = RgbImage::from_raw(drawn.width(), drawn.height(), opaque).ok_or_else(empty)?;
    jpeg(&pixels).map_err(|error| PrintError::Typeset(error.to_string()))
}
