//! Foreign codes: what codes say that are none of this event's.

use super::pose::Pose;
use crate::photo::Luma;
use crate::plan::Tag;
use crate::plan::code::{self, SIDE};

/// Text of the code with this pose, decoded the ordinary way with error correction; `None` where that fails.
#[must_use]
pub fn text(luma: &Luma, pose: &Pose) -> Option<String> {
    decoded(&pose.modules(luma), SIDE)
}

/// Text of a code from the levels of its modules, side × side, row by row; `None` where error correction
/// fails.
///
/// Without control characters: whoever printed it may mean the terminal that shows it. Dark and light are
/// told apart by one threshold for the whole code, and if that fails by thresholds nearer to the mean around
/// each module.
pub(super) fn decoded(levels: &[f32], side: usize) -> Option<String> {
    let half = threshold(levels);
    let around = around(levels, side);
    let decode = |dark: &dyn Fn(usize) -> bool| code::decoded(side, |x, y| dark(y * side + x));
    let text = decode(&|i| levels[i] < half)
        .or_else(|| decode(&|i| levels[i] < (half + around[i]) / 2.0))
        .or_else(|| decode(&|i| levels[i] < around[i]))?;
    Some(text.chars().map(|c| if c.is_control() { ' ' } else { c }).collect())
}

/// Tag in the text of a square's or a card's code of any event, `K7M-D7`, `K7M/D`, `K7M.1`; `None` for codes
/// of other kinds.
#[must_use]
pub fn tag(text: &str) -> Option<&str> {
    let (tag, rest) = text.split_at_checked(3)?;
    let ours = Tag::new(tag).is_some() && rest.len() > 1 && rest.starts_with(['-', '/', '.']);
    ours.then_some(tag)
}

/// Mean of the 5 × 5 modules around each, clipped to the code; side × side, row by row.
fn around(levels: &[f32], side: usize) -> Vec<f32> {
    let span = |k: usize| k.saturating_sub(2)..(k + 3).min(side);
    (0..levels.len())
        .map(|i| {
            let near = span(i / side).flat_map(|y| span(i % side).map(move |x| levels[y * side + x]));
            let (sum, count) = near.fold((0.0, 0.0_f32), |(s, n), level| (s + level, n + 1.0));
            sum / count.max(1.0)
        })
        .collect()
}

/// Threshold between dark and light: the midpoint of their means, found in four rounds of splitting the
/// levels by it.
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

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn codes_of_other_kinds_have_no_tag() {
        for ours in ["K7M-D7", "K7M/12", "K7M.1"] {
            assert_eq!(tag(ours), Some("K7M"));
        }
        for other in ["", "K7", "K7M", "K7M-", "SHELF 12", "HTTP://X.Y", "I0O-A1", "é7M-A1"] {
            assert_eq!(tag(other), None, "{other}");
        }
    }
}
