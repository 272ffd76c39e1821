//! The pages' accent as a style sheet, by day and by night.

use crate::picture::Accent;
use crate::plan::settings::{Pencil, hex};

/// The pages' paper by day and by night.
const PAPERS: [[u8; 3]; 2] = [[0xff; 3], [0x14, 0x12, 0x10]];

/// A style sheet that sets `--accent`, for letters and lines on paper, and `--accent-wash`, for areas beneath ink.
#[must_use]
pub fn accent(pencils: &[Pencil]) -> String {
    let accent = Accent::of(pencils);
    let [day, night] = PAPERS.map(|paper| hex(accent.on(paper)));
    let wash = |lightness: f64| hex(accent.wash(lightness));
    format!(
        ":root {{ --accent: {day}; --accent-wash: {}; }}\n@media (prefers-color-scheme: dark) {{ :root {{ --accent: {night}; \
         --accent-wash: {}; }} }}\n",
        wash(0.93),
        wash(0.17)
    )
}
