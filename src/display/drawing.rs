//! Lines and letters on a picture, in the picture's own frame: antialiased strokes with a pen, labels centred or beside a point.

use ab_glyph::{FontRef, PxScale};
use image::{Rgb, RgbImage};
use imageproc::drawing::{draw_text_mut, text_size};

use crate::frame::{Frame, Point, float, floor_index, round_byte, round_index, round_signed};

/// DejaVu Sans Condensed Bold; its licence lies beside it.
const FONT: &[u8] = include_bytes!("fonts/DejaVuSansCondensed-Bold.ttf");

/// Style of a line.
#[derive(Copy, Clone, Debug, PartialEq)]
pub struct Pen {
    /// Its colour.
    pub colour: Rgb<u8>,
    /// Width in pixels.
    pub width: f64,
    /// Lengths of dashes and of gaps, in widths; `None` for a solid line.
    pub dash: Option<(f64, f64)>,
}

/// A picture to draw on, whose pixels are those of frame `F`.
#[derive(Debug)]
pub struct Canvas<'a, F: Frame> {
    picture: &'a mut RgbImage,
    font: Option<FontRef<'static>>,
    frame: std::marker::PhantomData<F>,
}

impl<'a, F: Frame> Canvas<'a, F> {
    /// Draws on `picture`.
    #[must_use]
    pub fn on(picture: &'a mut RgbImage) -> Self {
        Self { picture, font: FontRef::try_from_slice(FONT).ok(), frame: std::marker::PhantomData }
    }

    /// Draws a straight line with round ends. Parts outside the picture are left out.
    pub fn line(&mut self, from: Point<F>, to: Point<F>, pen: Pen) {
        let along = to - from;
        let length = along.length().value();
        if !length.is_finite() {
            return;
        }
        let reach = pen.width / 2.0 + 1.0;
        let columns = self.range(from.x.min(to.x) - reach, from.x.max(to.x) + reach, self.picture.width());
        let rows = self.range(from.y.min(to.y) - reach, from.y.max(to.y) + reach, self.picture.height());
        for y in rows {
            for x in columns.clone() {
                let here = Point::<F>::new(f64::from(x) + 0.5, f64::from(y) + 0.5) - from;
                let at = if length > 0.0 { (here.dot(along) / length).clamp(0.0, length) } else { 0.0 };
                let nearest = if length > 0.0 { along * (on_dash(at, pen) / length) } else { along };
                let away = (here - nearest).length().value();
                self.blend(x, y, pen.colour, (pen.width / 2.0 + 0.5 - away).clamp(0.0, 1.0));
            }
        }
    }

    /// Draws a closed line through some points.
    pub fn outline(&mut self, corners: &[Point<F>], pen: Pen) {
        for (i, from) in corners.iter().enumerate() {
            self.line(*from, corners[(i + 1) % corners.len()], pen);
        }
    }

    /// Writes lines of text one below the other about a middle, on a light plate.
    ///
    /// Each line comes with its height in pixels; all are shrunk by one factor where one is wider than
    /// `widest`.
    pub fn label(&mut self, middle: Point<F>, lines: &[(&str, f64)], widest: f64, ink: Rgb<u8>) {
        let Some(font) = self.font.clone() else { return };
        let width_of = |text: &str, high: f64| f64::from(text_size(scale(high), &font, text).0);
        let wide = lines.iter().map(|(text, high)| width_of(text, *high)).fold(1.0, f64::max);
        let shrink = (widest / wide).min(1.0);
        let tall: f64 = lines.iter().map(|(_, high)| high * shrink).sum();
        let wide = lines.iter().map(|(text, high)| width_of(text, high * shrink)).fold(1.0, f64::max);
        self.plate(middle, wide + 0.12 * tall, tall * 1.08);
        let mut top = middle.y - tall / 2.0;
        for (text, high) in lines {
            let high = high * shrink;
            let left = middle.x - width_of(text, high) / 2.0;
            draw_text_mut(self.picture, ink, pixel(left), pixel(top), scale(high), &font, text);
            top += high;
        }
    }

    /// Writes one line of text on a light plate that begins at `from`, centred on its height; shrunk where it
    /// is wider than `widest`.
    pub fn beside(&mut self, from: Point<F>, text: &str, high: f64, widest: f64, ink: Rgb<u8>) {
        let Some(font) = self.font.clone() else { return };
        let width_of = |high: f64| f64::from(text_size(scale(high), &font, text).0);
        let high = high * (widest / width_of(high).max(1.0)).min(1.0);
        let middle = Point::new(from.x + width_of(high) / 2.0, from.y);
        self.label(middle, &[(text, high)], widest, ink);
    }

    /// Draws a light rectangle through which a little of the picture shows.
    fn plate(&mut self, middle: Point<F>, wide: f64, tall: f64) {
        let columns = self.range(middle.x - wide / 2.0, middle.x + wide / 2.0, self.picture.width());
        let rows = self.range(middle.y - tall / 2.0, middle.y + tall / 2.0, self.picture.height());
        for y in rows {
            for x in columns.clone() {
                self.blend(x, y, Rgb([255; 3]), 0.88);
            }
        }
    }

    fn range(&self, from: f64, to: f64, end: u32) -> std::ops::Range<u32> {
        let within = |value: f64| u32::try_from(floor_index(value)).unwrap_or(u32::MAX).min(end);
        within(from)..within(to + 1.0)
    }

    fn blend(&mut self, x: u32, y: u32, colour: Rgb<u8>, share: f64) {
        if share <= 0.0 {
            return;
        }
        let pixel = self.picture.get_pixel_mut(x, y);
        for (value, wanted) in pixel.0.iter_mut().zip(colour.0) {
            *value = round_byte(f64::from(*value) * (1.0 - share) + f64::from(wanted) * share);
        }
    }
}

/// Nearest place on a dash to a place along the line, in pixels.
fn on_dash(at: f64, pen: Pen) -> f64 {
    let Some((dash, gap)) = pen.dash else { return at };
    let (dash, period) = (dash * pen.width, (dash + gap) * pen.width);
    let start = float(floor_index(at / period)) * period;
    let within = at - start;
    if within <= dash {
        at
    } else if within - dash < period - within {
        start + dash
    } else {
        start + period
    }
}

/// Font scale of letters `high` pixels from line to line; whole pixels are fine enough.
fn scale(high: f64) -> PxScale {
    PxScale::from(f32::from(u16::try_from(round_index(high)).unwrap_or(u16::MAX)))
}

fn pixel(value: f64) -> i32 {
    i32::try_from(round_signed(value)).unwrap_or(0)
}

#[cfg(test)]
mod tests {
    use super::*;
    use ab_glyph::Font;

    #[test]
    fn the_font_is_read_and_has_every_sign_that_is_drawn() {
        let font = FontRef::try_from_slice(FONT).unwrap();
        for sign in "ABCXYZabcxyz0123456789→↻↺✕°?".chars() {
            assert_ne!(font.glyph_id(sign).0, 0, "{sign}");
        }
    }
}
