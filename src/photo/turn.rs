//! EXIF orientation: turning stored pixels upright.

use image::{RgbImage, imageops};

use crate::frame::{PhotoPx, Point, TakenPx};

/// Orientation of the stored pixels, by EXIF 2.3's tag 0x0112: what must be done to see them upright.
#[derive(Copy, Clone, Debug, PartialEq, Eq, Default)]
pub enum Orientation {
    /// 1: as they are.
    #[default]
    Upright,
    /// 2: mirrored left to right.
    Mirrored,
    /// 3: upside down.
    HalfTurn,
    /// 4: mirrored top to bottom.
    MirroredHalfTurn,
    /// 5: rows and columns exchanged.
    Transposed,
    /// 6: turn a quarter clockwise.
    QuarterClockwise,
    /// 7: rows and columns exchanged, then upside down.
    Transversed,
    /// 8: turn a quarter anticlockwise.
    QuarterAnticlockwise,
}

impl Orientation {
    /// Orientation with EXIF's number; 1 for numbers that EXIF does not define, which cameras write all the
    /// same.
    #[must_use]
    pub fn from_exif(number: u32) -> Self {
        match number {
            2 => Self::Mirrored,
            3 => Self::HalfTurn,
            4 => Self::MirroredHalfTurn,
            5 => Self::Transposed,
            6 => Self::QuarterClockwise,
            7 => Self::Transversed,
            8 => Self::QuarterAnticlockwise,
            _ => Self::Upright,
        }
    }

    /// Stored picture, turned upright.
    #[must_use]
    pub fn upright(self, stored: RgbImage) -> RgbImage {
        match self {
            Self::Upright => stored,
            Self::Mirrored => imageops::flip_horizontal(&stored),
            Self::HalfTurn => imageops::rotate180(&stored),
            Self::MirroredHalfTurn => imageops::flip_vertical(&stored),
            Self::Transposed => imageops::flip_horizontal(&imageops::rotate90(&stored)),
            Self::QuarterClockwise => imageops::rotate90(&stored),
            Self::Transversed => imageops::flip_horizontal(&imageops::rotate270(&stored)),
            Self::QuarterAnticlockwise => imageops::rotate270(&stored),
        }
    }

    /// Place in the upright picture of a place in a stored picture of `width` × `height` pixels.
    #[must_use]
    pub fn taken_to_photo(self, p: Point<TakenPx>, width: f64, height: f64) -> Point<PhotoPx> {
        let (x, y, w, h) = (p.x, p.y, width, height);
        let (x, y) = match self {
            Self::Upright => (x, y),
            Self::Mirrored => (w - x, y),
            Self::HalfTurn => (w - x, h - y),
            Self::MirroredHalfTurn => (x, h - y),
            Self::Transposed => (y, x),
            Self::QuarterClockwise => (h - y, x),
            Self::Transversed => (h - y, w - x),
            Self::QuarterAnticlockwise => (y, w - x),
        };
        Point::new(x, y)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::frame::{float, floor_index};

    #[test]
    fn pixels_and_points_turn_the_same_way() {
        let (width, height) = (5_u32, 3_u32);
        let stored = RgbImage::from_fn(width, height, |x, y| {
            image::Rgb([u8::try_from(x).unwrap(), u8::try_from(y).unwrap(), 7])
        });
        for number in 0..=9 {
            let orientation = Orientation::from_exif(number);
            let upright = orientation.upright(stored.clone());
            for (x, y, pixel) in stored.enumerate_pixels() {
                let at = Point::new(f64::from(x) + 0.5, f64::from(y) + 0.5);
                let to = orientation.taken_to_photo(at, f64::from(width), f64::from(height));
                let found = upright.get_pixel(
                    u32::try_from(floor_index(to.x)).unwrap(),
                    u32::try_from(floor_index(to.y)).unwrap(),
                );
                assert_eq!(found, pixel, "orientation {number} at {x}, {y}");
                assert_eq!(to.x, float(floor_index(to.x)) + 0.5);
            }
        }
    }

    #[test]
    fn orientation_six_is_a_quarter_turn_clockwise() {
        // EXIF 2.3: 6 means that row 0 of the file is the right hand side of the scene.
        let stored = RgbImage::from_fn(2, 1, |x, _| image::Rgb([u8::try_from(x).unwrap(), 0, 0]));
        let upright = Orientation::from_exif(6).upright(stored);
        assert_eq!(upright.dimensions(), (1, 2));
        assert_eq!((upright.get_pixel(0, 0)[0], upright.get_pixel(0, 1)[0]), (0, 1));
    }
}
