//! Colours as people see them: sRGB to Oklab and CIELAB, and colour differences.
//!
//! Pixels are compared in Oklab (Björn Ottosson, 2020: "A perceptual color space for image processing"),
//! which is quick and even in hue; names and warnings use CIEDE2000 (CIE 142-2001; Sharma, Wu & Dalal, 2005,
//! Color Research & Application 30:21), the standard's measure. Both come from the crate `palette` and are
//! compared with another library in `tools/outside/colours.py`.
//!
//! ```
//! use everysquare::picture::colour::ciede2000;
//! assert_eq!(ciede2000([200, 30, 30], [200, 30, 30]), 0.0);
//! assert!(ciede2000([0, 0, 0], [255, 255, 255]) > 99.9);
//! ```

use palette::color_difference::Ciede2000;
use palette::white_point::D65;
use palette::{FromColor, IntoColor, Lab, LinSrgb, Oklab, Srgb};

use crate::frame::{narrow, round_byte};

/// Weight of a step of hue or chroma against an equal step of lightness in Oklab.
///
/// Oklab's own author says that its a and b are small against its lightness for large differences; 2 is
/// common practice, no source.
const WEIGHT_OF_HUE: f32 = 2.0;

/// Constants of the curve that brings Oklab's lightness to that of CIELAB (Ottosson, 2021: "Okhsv and Okhsl"): without it the
/// darkest colours lie as far apart as light ones do.
const TOE: (f32, f32) = (0.206, 0.03);
const SCALE_OF_TOE: f32 = (1.0 + TOE.0) / (1.0 + TOE.1);

fn lightness_of(l: f32) -> f32 {
    let x = SCALE_OF_TOE * l - TOE.0;
    0.5 * (x + (x * x + 4.0 * TOE.1 * SCALE_OF_TOE * l).sqrt())
}

fn l_of(lightness: f32) -> f32 {
    lightness * (lightness + TOE.0) / (SCALE_OF_TOE * (lightness + TOE.1))
}

/// A colour in Oklab with its dark end brought to CIELAB's, hue and chroma stretched twofold, so that plain distance
/// is what people see: lightness 0 … 1, then green to red, then blue to yellow.
#[derive(Copy, Clone, Debug, PartialEq, Default)]
pub struct Seen(pub [f32; 3]);

impl Seen {
    /// Colour of linear light: red, green, blue, 0 … 1.
    #[must_use]
    pub fn of_light([red, green, blue]: [f32; 3]) -> Self {
        let Oklab { l, a, b } = Oklab::from_color(LinSrgb::new(red, green, blue));
        Self([lightness_of(l), a * WEIGHT_OF_HUE, b * WEIGHT_OF_HUE])
    }

    /// Colour of a pixel in sRGB.
    #[must_use]
    pub fn of(srgb: [u8; 3]) -> Self {
        let light: LinSrgb<f32> = Srgb::from(srgb).into_linear();
        Self::of_light([light.red, light.green, light.blue])
    }

    /// Nearest pixel in sRGB.
    #[must_use]
    pub fn to_srgb(self) -> [u8; 3] {
        let Self([l, a, b]) = self;
        let light: LinSrgb<f32> = Oklab::new(l_of(l), a / WEIGHT_OF_HUE, b / WEIGHT_OF_HUE).into_color();
        let shown: Srgb<f32> = Srgb::from_linear(light);
        [shown.red, shown.green, shown.blue].map(|part| round_byte(f64::from(part.clamp(0.0, 1.0)) * 255.0))
    }

    /// Squared Euclidean distance.
    #[must_use]
    pub fn apart_squared(self, other: Self) -> f32 {
        let [l, a, b] = self.0;
        let [m, c, d] = other.0;
        (l - m) * (l - m) + (a - c) * (a - c) + (b - d) * (b - d)
    }

    /// Euclidean distance: 1 from black to white.
    #[must_use]
    pub fn apart(self, other: Self) -> f32 {
        self.apart_squared(other).sqrt()
    }

    /// Mixture with a share, 0 … 1, of this colour and the rest of the other.
    #[must_use]
    pub fn mixed(self, other: Self, share: f32) -> Self {
        let mut mixed = self.0;
        mixed.iter_mut().zip(other.0).for_each(|(own, theirs)| *own = *own * share + theirs * (1.0 - share));
        Self(mixed)
    }
}

/// Linear light of each level of sRGB (IEC 61966-2-1).
#[must_use]
pub fn light_of_levels() -> [f32; 256] {
    let mut table = [0.0; 256];
    for (level, light) in (0..=u8::MAX).zip(&mut table) {
        let linear: LinSrgb<f32> = Srgb::new(level, level, level).into_linear();
        *light = linear.red;
    }
    table
}

/// Level of sRGB of linear light, 0 … 1 (IEC 61966-2-1).
#[must_use]
pub fn level_of_light(light: f64) -> u8 {
    let level = if light <= 0.003_130_8 { 12.92 * light } else { 1.055 * light.powf(1.0 / 2.4) - 0.055 };
    round_byte(255.0 * level)
}

/// Oklab coordinates of a pixel, L, a, b, as its author defines them.
#[must_use]
pub fn oklab(srgb: [u8; 3]) -> [f64; 3] {
    let light: LinSrgb<f64> = Srgb::from(srgb).into_linear();
    let Oklab { l, a, b } = Oklab::from_color(light);
    [l, a, b]
}

/// CIELAB coordinates of a pixel, L*, a*, b*, under the standard's daylight, D65.
#[must_use]
pub fn cielab(srgb: [u8; 3]) -> [f64; 3] {
    let light: LinSrgb<f64> = Srgb::from(srgb).into_linear();
    let lab: Lab<D65, f64> = Lab::from_color(light);
    [lab.l, lab.a, lab.b]
}

/// Colour difference of two pixels, CIEDE2000. About 1 can just be told apart side by side under good light.
#[must_use]
pub fn ciede2000(one: [u8; 3], other: [u8; 3]) -> f64 {
    ciede2000_of_lab(cielab(one), cielab(other))
}

/// Colour difference of two colours in CIELAB, CIEDE2000.
#[must_use]
pub fn ciede2000_of_lab(one: [f64; 3], other: [f64; 3]) -> f64 {
    let lab = |[l, a, b]: [f64; 3]| Lab::<D65, f64>::new(l, a, b);
    lab(one).difference(lab(other))
}

/// Relative luminance of a colour, 0 … 1 (WCAG 2.2; IEC 61966-2-1).
#[must_use]
pub fn luminance(srgb: [u8; 3]) -> f64 {
    let [r, g, b] = srgb.map(|channel| {
        let value = f64::from(channel) / 255.0;
        if value <= 0.04045 { value / 12.92 } else { ((value + 0.055) / 1.055).powf(2.4) }
    });
    0.2126 * r + 0.7152 * g + 0.0722 * b
}

/// Contrast ratio of two colours, 1 … 21 (WCAG 2.2).
#[must_use]
pub fn contrast(one: [u8; 3], other: [u8; 3]) -> f64 {
    let (one, other) = (luminance(one), luminance(other));
    (one.max(other) + 0.05) / (one.min(other) + 0.05)
}

/// Segment between two colours, for those mixed of them.
#[derive(Copy, Clone, Debug)]
pub struct Between {
    one: [f32; 3],
    other: [f32; 3],
}

impl Between {
    /// Segment between two pixels.
    #[must_use]
    pub fn of(one: [u8; 3], other: [u8; 3]) -> Self {
        Self { one: one.map(f32::from), other: other.map(f32::from) }
    }

    /// Share of the first colour in a pixel mixed of the two, 0 … 1, and the pixel's distance from the
    /// segment, in levels of sRGB.
    ///
    /// Programs that draw mix in sRGB far more often than in light.
    #[must_use]
    pub fn share(&self, pixel: [u8; 3]) -> (f32, f32) {
        let pixel = pixel.map(f32::from);
        let dot = |a: [f32; 3], b: [f32; 3]| a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
        let minus = |a: [f32; 3], b: [f32; 3]| [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
        let along = minus(self.one, self.other);
        let own = minus(pixel, self.other);
        let share = (dot(own, along) / dot(along, along).max(narrow(1e-6))).clamp(0.0, 1.0);
        let off = minus(own, along.map(|part| part * share));
        (share, dot(off, off).sqrt())
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn a_pixel_is_seen_and_shown_again(srgb: [u8; 3]) {
            let again = Seen::of(srgb).to_srgb();
            prop_assert!(again.iter().zip(srgb).all(|(a, b)| a.abs_diff(b) <= 1), "{srgb:?} {again:?}");
        }

        #[test]
        fn a_mixture_tells_its_share(one: [u8; 3], other: [u8; 3], share in 0.0_f32..=1.0) {
            let apart: i32 = one.iter().zip(other).map(|(a, b)| i32::from(a.abs_diff(b))).sum();
            prop_assume!(apart > 60);
            let mixed = [0, 1, 2].map(|i| f32::from(one[i]) * share + f32::from(other[i]) * (1.0 - share));
            let (told, off) = Between::of(one, other).share(mixed.map(|part| round_byte(f64::from(part))));
            prop_assert!((told - share).abs() < 0.05 && off < 1.0, "{told} {off}");
        }
    }
}
