//! Text to modules: all eight masks are drawn, the best is kept and read back.

use qrcode::bits::Bits;
use qrcode::canvas::{Canvas, MaskPattern};
use qrcode::ec::construct_codewords;
use qrcode::types::{Color, EcLevel, Version};

use super::{CAPACITY, CodeError, Modules, SIDE};

const VERSION: Version = Version::Normal(1);
const MASKS: [MaskPattern; 8] = [
    MaskPattern::Checkerboard,
    MaskPattern::HorizontalLines,
    MaskPattern::VerticalLines,
    MaskPattern::DiagonalLines,
    MaskPattern::LargeCheckerboard,
    MaskPattern::Fields,
    MaskPattern::Diamonds,
    MaskPattern::Meadow,
];

impl Modules {
    /// Encodes a text, reads it back, and chooses the mask: of those that show no finder pattern but the three true ones, that
    /// of least penalty (ISO/IEC 18004, evaluation of masks), the first of equals.
    ///
    /// # Errors
    /// [`CodeError::Text`] where it is too long or not alphanumeric.
    ///
    /// ```
    /// use everysquare::plan::Modules;
    /// let modules = Modules::encode("K7M-D7")?;
    /// assert!(modules.dark(0, 0), "a finder pattern begins dark");
    /// assert_eq!(modules.text().as_deref(), Some("K7M-D7"));
    /// assert_eq!(Modules::from_hex(&modules.to_hex())?, modules);
    /// # Ok::<(), everysquare::plan::code::CodeError>(())
    /// ```
    pub fn encode(text: &str) -> Result<Self, CodeError> {
        let refuse = || CodeError::Text(text.to_owned());
        let fits = |b: u8| b.is_ascii_digit() || b.is_ascii_uppercase() || b" $%*+-./:".contains(&b);
        if text.is_empty() || text.len() > CAPACITY || !text.bytes().all(fits) {
            return Err(refuse());
        }
        let unmasked = unmasked(text).ok_or_else(refuse)?;
        MASKS
            .iter()
            .filter_map(|mask| drawn(&unmasked, *mask))
            .min_by_key(|modules| (modules.false_finders(), modules.penalty()))
            .filter(|modules| modules.text().as_deref() == Some(text))
            .ok_or_else(refuse)
    }
}

/// The code before its mask is laid over it.
fn unmasked(text: &str) -> Option<Canvas> {
    let mut bits = Bits::new(VERSION);
    bits.push_alphanumeric_data(text.as_bytes()).ok()?;
    bits.push_terminator(EcLevel::H).ok()?;
    let (data, correction) = construct_codewords(&bits.into_bytes(), VERSION, EcLevel::H).ok()?;
    let mut canvas = Canvas::new(VERSION, EcLevel::H);
    canvas.draw_all_functional_patterns();
    canvas.draw_data(&data, &correction);
    Some(canvas)
}

fn drawn(unmasked: &Canvas, mask: MaskPattern) -> Option<Modules> {
    let mut canvas = unmasked.clone();
    canvas.apply_mask(mask);
    let dark: Vec<bool> = canvas.into_colors().into_iter().map(|colour| colour == Color::Dark).collect();
    <[bool; SIDE * SIDE]>::try_from(dark).ok().map(Modules)
}
