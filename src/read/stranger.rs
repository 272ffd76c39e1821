//! Codes that are none of this event's: what they say.

use rqrr::{Grid, SimpleGrid};

use super::pose::Pose;
use crate::photo::Luma;
use crate::plan::code::SIDE;

/// What the code with this pose says, decoded the ordinary way with error correction; `None` where that fails.
#[must_use]
pub fn text(luma: &Luma, pose: &Pose) -> Option<String> {
    let levels = pose.modules(luma);
    let half = threshold(&levels);
    let grid =
        SimpleGrid::from_func(SIDE, |x, y| levels.get(y * SIDE + x).is_some_and(|level| *level < half));
    let (_, text) = Grid::new(grid).decode().ok()?;
    Some(text)
}

/// The middle between the means of dark and light, found by four rounds of dividing the levels by it.
fn threshold(levels: &[f32]) -> f32 {
    let mean = |of: &mut dyn Iterator<Item = f32>| {
        let (sum, count) = of.fold((0.0, 0.0_f32), |(s, n), level| (s + level, n + 1.0));
        sum / count.max(1.0)
    };
    let mut half = mean(&mut levels.iter().copied());
    for _ in 0..4 {
        let dark = mean(&mut levels.iter().copied().filter(|level| *level < half));
        let light = mean(&mut levels.iter().copied().filter(|level| *level >= half));
        half = (dark + light) / 2.0;
    }
    half
}
