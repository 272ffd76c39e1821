//! Metadata of a photo's file: orientation, time, whether it was made. Nothing else is looked at.

use std::io::Cursor;

use exif::{In, Tag, Value};

use super::turn::Orientation;

/// Words in `ImageDescription` or `Software` by which a made picture is known.
pub const MADE_WORDS: &str = "made picture, not a photo";

/// Facts from a photo's metadata. The rest, place and owner among it, is never looked at.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct About {
    /// Orientation of the stored pixels.
    pub orientation: Orientation,
    /// Time when it was taken, `YYYY-MM-DDTHH:MM:SS` by the camera's clock.
    pub taken: Option<String>,
    /// Whether the file says that it was made by a program.
    pub made: bool,
}

impl About {
    /// Reads the metadata of a file; whatever is missing or makes no sense is left at its default.
    #[must_use]
    pub fn read(bytes: &[u8]) -> Self {
        let mut reader = exif::Reader::new();
        reader.continue_on_error(true);
        let found = reader.read_from_container(&mut Cursor::new(bytes));
        let Ok(fields) = found.or_else(|error| error.distill_partial_result(|_| ())) else {
            return Self::default();
        };
        let text = |tag| match fields.get_field(tag, In::PRIMARY).map(|field| &field.value) {
            Some(Value::Ascii(lines)) => {
                lines.first().map(|line| String::from_utf8_lossy(line).into_owned()).unwrap_or_default()
            }
            _ => String::new(),
        };
        let orientation =
            fields.get_field(Tag::Orientation, In::PRIMARY).and_then(|field| field.value.get_uint(0));
        Self {
            orientation: Orientation::from_exif(orientation.unwrap_or(1)),
            taken: iso_time(&text(Tag::DateTimeOriginal)).or_else(|| iso_time(&text(Tag::DateTime))),
            made: [Tag::ImageDescription, Tag::Software].map(text).iter().any(|t| t.contains(MADE_WORDS)),
        }
    }
}

/// EXIF's `2026:11:24 18:30:05` as `2026-11-24T18:30:05`; `None` where it is anything else.
fn iso_time(exif: &str) -> Option<String> {
    let bytes = exif.as_bytes();
    let shape = b"0000:00:00 00:00:00";
    let fits = bytes.len() == shape.len()
        && bytes.iter().zip(shape).all(|(b, s)| if *s == b'0' { b.is_ascii_digit() } else { b == s });
    fits.then(|| format!("{}-{}-{}T{}", &exif[..4], &exif[5..7], &exif[8..10], &exif[11..]))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn times_are_read_or_left_out() {
        assert_eq!(iso_time("2026:11:24 18:30:05").as_deref(), Some("2026-11-24T18:30:05"));
        for odd in ["", "    :  :     :  :  ", "2026:11:24", "2026-11-24 18:30:05", "2026:11:24 18:30:0é"] {
            assert_eq!(iso_time(odd), None, "{odd}");
        }
    }

    #[test]
    fn bytes_without_metadata_say_nothing() {
        assert_eq!(About::read(b"\xff\xd8\xff\xe1\x00\x08Exif\0\0"), About::default());
    }
}
