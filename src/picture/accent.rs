//! The event's accent: one colour from its own pencils, for titles, rules and buttons of all that it shows and prints.
//!
//! The pencil nearest to a warm orange and full of colour lends its hue, where none is warm the fullest of colour; an event in greys has a
//! dark grey. How light it is follows from what it stands on: letters have a contrast of 4.5 at least (WCAG 2.2, 1.4.3). Relative
//! luminance and contrast as in WCAG 2.2.

use super::colour::{contrast, luminance};
use crate::frame::round_index;
use crate::plan::settings::Pencil;

/// Hue in degrees to which the warmest pencil is nearest: orange.
const WARM: f64 = 30.0;
/// Largest distance of a warm hue from [`WARM`], in degrees.
const WARM_REACH: f64 = 75.0;
/// Hue, saturation where no pencil has a colour: a grey.
const GREY: (f64, f64) = (0.0, 0.0);
/// Least saturation and least difference of the channels of a pencil that lends its hue; below it is a grey or a cream.
const COLOURED: f64 = 0.25;
/// Contrast of letters, and of grey ones: what has no colour to stand out by is darker.
const CONTRAST: f64 = 4.6;
const CONTRAST_OF_GREY: f64 = 9.0;
/// A hue that an event's pencils lend, at any lightness.
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct Accent {
    /// Hue in degrees.
    hue: f64,
    /// Saturation of HSL, 0 … 1.
    saturation: f64,
}

impl Accent {
    /// That of the pencil that is warmest.
    #[must_use]
    pub fn of(pencils: &[Pencil]) -> Self {
        let (hue, saturation) = warmest(&pencils.iter().map(|pencil| pencil.srgb).collect::<Vec<_>>());
        Self { hue, saturation }
    }

    /// The colour of letters and lines on paper of a colour.
    #[must_use]
    pub fn on(self, paper: [u8; 3]) -> [u8; 3] {
        readable(self.hue, self.saturation, paper)
    }

    /// The colour of areas beneath ink, of a lightness between 0 and 1.
    #[must_use]
    pub fn wash(self, lightness: f64) -> [u8; 3] {
        rgb(self.hue, self.saturation.min(0.7), lightness)
    }
}

/// Hue in degrees and saturation of the pencil that is warmest.
fn warmest(pencils: &[[u8; 3]]) -> (f64, f64) {
    let coloured = pencils
        .iter()
        .map(|srgb| hue_saturation(*srgb))
        .filter(|(_, saturation, spread)| *saturation >= COLOURED && *spread >= COLOURED);
    let far = |hue: f64| {
        let apart = (hue - WARM).abs() % 360.0;
        apart.min(360.0 - apart)
    };
    let warmest = coloured.clone().min_by(|(a, ..), (b, ..)| far(*a).total_cmp(&far(*b)));
    let fullest = || coloured.max_by(|(.., a), (.., b)| a.total_cmp(b));
    let chosen = warmest.filter(|(hue, ..)| far(*hue) < WARM_REACH).or_else(fullest);
    chosen.map_or(GREY, |(hue, saturation, _)| (hue, saturation.max(0.45)))
}

/// Hue in degrees, saturation of HSL, difference of the largest and the smallest channel.
fn hue_saturation(srgb: [u8; 3]) -> (f64, f64, f64) {
    let [r, g, b] = srgb.map(|channel| f64::from(channel) / 255.0);
    let (most, least) = (r.max(g).max(b), r.min(g).min(b));
    let spread = most - least;
    if spread <= 0.0 {
        return (0.0, 0.0, 0.0);
    }
    let sixth = if r >= most {
        ((g - b) / spread).rem_euclid(6.0)
    } else if g >= most {
        (b - r) / spread + 2.0
    } else {
        (r - g) / spread + 4.0
    };
    (sixth * 60.0, spread / (1.0 - (most + least - 1.0).abs()).max(1e-6), spread)
}

/// The colour of a hue that stands out from a paper by [`CONTRAST`] (a grey by [`CONTRAST_OF_GREY`]), as near to the middle of its
/// lightness as that lets it be.
fn readable(hue: f64, saturation: f64, paper: [u8; 3]) -> [u8; 3] {
    let by_day = luminance(paper) > 0.5;
    let lightness = |step: u8| {
        let far = f64::from(step) / 100.0;
        if by_day { 0.5 - far } else { 0.5 + far }
    };
    let colours = (0..=50).map(|step| rgb(hue, saturation, lightness(step)));
    let least = if saturation > 0.0 { CONTRAST } else { CONTRAST_OF_GREY };
    let fallback = if by_day { [0; 3] } else { [255; 3] };
    colours.into_iter().find(|colour| contrast(*colour, paper) >= least).unwrap_or(fallback)
}

fn rgb(hue: f64, saturation: f64, lightness: f64) -> [u8; 3] {
    let reach = saturation * lightness.min(1.0 - lightness);
    [0.0, 8.0, 4.0].map(|offset: f64| {
        let at = (offset + hue / 30.0) % 12.0;
        let value = lightness - reach * (at - 3.0).min(9.0 - at).clamp(-1.0, 1.0);
        u8::try_from(round_index(value * 255.0)).unwrap_or(u8::MAX)
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn the_warmest_pencil_lends_its_hue_else_the_fullest() {
        let orange = [240, 140, 30];
        let (hue, _) = warmest(&[[20, 60, 200], orange, [40, 120, 60], [250, 244, 230]]);
        assert!((hue - hue_saturation(orange).0).abs() < 1e-9);
        let blue = [20, 60, 200];
        assert!(
            (warmest(&[blue, [128; 3], [250, 244, 230], [60, 110, 80]]).0 - hue_saturation(blue).0).abs()
                < 1e-9
        );
        assert_eq!(warmest(&[[128; 3], [30; 3]]), GREY);
        assert_eq!(warmest(&[]), GREY);
    }

    #[test]
    fn colours_agree_with_the_definition() {
        assert_eq!(rgb(0.0, 1.0, 0.5), [255, 0, 0]);
        assert_eq!(rgb(120.0, 1.0, 0.25), [0, 128, 0]);
        assert_eq!(rgb(240.0, 0.5, 0.5), [64, 64, 191]);
        assert!((contrast([0; 3], [255; 3]) - 21.0).abs() < 1e-9);
        assert!((contrast([0x76; 3], [255; 3]) - 4.54).abs() < 0.01, "WCAG's best-known grey");
    }

    proptest! {
        #[test]
        fn letters_can_be_read_whatever_the_pencils_are(pencils in proptest::collection::vec(any::<[u8; 3]>(), 0..12)) {
            let (hue, saturation) = warmest(&pencils);
            for paper in [[0xff; 3], [0x14, 0x12, 0x10]] {
                prop_assert!(contrast(readable(hue, saturation, paper), paper) >= 4.5);
            }
        }
    }
}
