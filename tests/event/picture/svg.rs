//! SVG drawings: as large as a wall needs, nothing from outside, hostile ones refused.

use everysquare::picture::{Opened, Picture, PictureError};
use image::Rgb;

use crate::common::scenes;

fn svg(inside: &str) -> String {
    format!(
        "<svg xmlns='http://www.w3.org/2000/svg' xmlns:xlink='http://www.w3.org/1999/xlink' width='100' height='80'>{inside}</svg>"
    )
}

fn refused(text: &str) -> PictureError {
    Picture::open(text.as_bytes()).unwrap_err()
}

#[test]
fn a_drawing_gets_the_pixels_of_a_large_wall() {
    let opened = Opened::from(scenes::SVG.as_bytes()).unwrap();
    let (width, height) = opened.picture.size();
    assert!(opened.text_in_our_font);
    assert!(
        (f64::from(width) / f64::from(height) - 1.25).abs() < 0.001 && width > 3800,
        "{width} × {height}"
    );
    let at = |x: f64, y: f64| {
        opened
            .picture
            .pixels
            .get_pixel((x * f64::from(width) / 500.0) as u32, (y * f64::from(width) / 500.0) as u32)
    };
    assert_eq!(*at(370.0, 220.0), Rgb([0xff, 0xd7, 0x5e]), "the sun");
    assert_eq!(*at(20.0, 380.0), Rgb([0x2f, 0x6f, 0x86]), "the sea");
    let letters = (160..340)
        .flat_map(|x| (355..386).map(move |y| (x, y)))
        .filter(|(x, y)| at(f64::from(*x), f64::from(*y)).0 == [0xfb, 0xf4, 0xe2]);
    assert!(letters.count() > 500, "the word is there");
    let empty = Opened::from(svg("").as_bytes()).unwrap();
    assert!(
        !empty.text_in_our_font && empty.picture.pixels.pixels().all(|pixel| pixel.0 == [255; 3]),
        "white where nothing is"
    );
    let narrow = "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 100000 1'/>";
    assert_eq!(Picture::open(narrow.as_bytes()).unwrap().size().0, 20_000);
}

#[test]
fn nothing_is_loaded_from_outside() {
    let place = tempfile::tempdir().unwrap();
    let file = place.path().join("beside.png");
    Picture { pixels: image::RgbImage::new(4, 4) }.save_for_test(&file);
    let file = file.to_str().unwrap();
    let outside = [
        (format!("<image href='{file}' width='50' height='50'/>"), "beside.png"),
        (format!("<image xlink:href='file://{file}' width='50' height='50'/>"), "beside.png"),
        ("<image href='http://example.org/a.png' width='9' height='9'/>".to_owned(), "example.org"),
        ("<use href='other.svg#boat'/>".to_owned(), "other.svg#boat"),
        ("<filter id='f'><feImage href='texture.png'/></filter><rect filter='url(#f)' width='9' height='9'/>".to_owned(), "texture.png"),
        ("<style>@import url('theme.css'); rect { fill: red }</style>".to_owned(), "theme.css"),
        ("<style>@font-face { src: url(https://example.org/f.woff) }</style>".to_owned(), "example.org"),
        ("<rect style='fill: url(paints.svg#p)' width='9' height='9'/>".to_owned(), "paints.svg#p"),
    ];
    for (inside, named) in outside {
        let error = refused(&svg(&inside));
        assert!(
            matches!(&error, PictureError::Outside(outside) if outside.contains(named)),
            "{inside}: {error:?}"
        );
        assert!(error.to_string().contains("never load that"), "{error}");
    }
    let entity = "<!DOCTYPE svg [<!ENTITY secret SYSTEM 'file:///etc/hostname'>]><svg xmlns='http://www.w3.org/2000/svg' width='9' height='9'><text>&secret;</text></svg>";
    assert!(matches!(refused(entity), PictureError::Svg(_)), "an entity from outside is none");
    let within = "<a href='http://example.org'><rect id='r' width='9' height='9' fill='url(#g)'/></a><use href='#r' x='20'/>";
    assert!(Picture::open(svg(within).as_bytes()).is_ok(), "links lead out and show nothing");
}

trait Saved {
    fn save_for_test(&self, path: &std::path::Path);
}

impl Saved for Picture {
    fn save_for_test(&self, path: &std::path::Path) {
        std::fs::write(path, self.to_png().unwrap()).unwrap();
    }
}

#[test]
fn broken_and_hostile_drawings_get_a_sentence() {
    let deep = "<g>".repeat(200_000) + &"</g>".repeat(200_000);
    let doubling: String = (1..40)
        .map(|i| format!("<g id='g{i}'><use href='#g{}'/><use href='#g{}'/></g>", i - 1, i - 1))
        .collect();
    let laughs: String =
        (1..12).map(|i| format!("<!ENTITY l{i} '{}'>", format!("&l{};", i - 1).repeat(20))).collect();
    let cases = [
        svg("<rect"),
        "<svg".to_owned(),
        "<svg xmlns='http://www.w3.org/2000/svg' width='0' height='80'/>".to_owned(),
        "<html xmlns='http://www.w3.org/1999/xhtml'><svg/></html>".to_owned(),
        svg(&deep),
        svg(&format!("<g id='g0'><rect width='9' height='9'/></g>{doubling}")),
        format!(
            "<!DOCTYPE svg [<!ENTITY l0 'ha'>{laughs}]><svg xmlns='http://www.w3.org/2000/svg' width='9' height='9'><text>&l11;</text></svg>"
        ),
        svg(
            "<filter id='f'><feTurbulence numOctaves='1000000000'/></filter><rect width='90' height='70' filter='url(#f)'/>",
        ),
        svg(
            "<filter id='f'><feMorphology operator='dilate' radius='90 2'/></filter><rect width='90' height='70' filter='url(#f)'/>",
        ),
    ];
    for case in cases {
        let error = refused(&case);
        let shown: String = case.chars().take(90).collect();
        assert!(matches!(error, PictureError::Svg(_)), "{shown}: {error:?}");
        assert_eq!(error.to_string().lines().count(), 1, "{error}");
    }
    assert_eq!(refused(&svg("<text y='40'>a \u{4e2d}</text>")), PictureError::Letter('\u{4e2d}'));
    assert!(matches!(Picture::open(b"\x1f\x8b\x08\x00damaged"), Err(PictureError::Svg(_))), "a packed one");
}
