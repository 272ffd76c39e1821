//! What a pencil is called: in words that a child knows, no two alike.
//!
//! A colour is called as people called the nearest colour of a survey, by CIEDE2000, in the words of a box of pencils. Where two pencils
//! would be called alike, the lighter becomes the light one, the darker the dark one; up to five of them are very light, light,
//! plain, dark and very dark, and more, or more than two greys, are numbered from light to dark.
//!
//! ```
//! use everysquare::picture::name::names;
//! use everysquare::words::Words;
//! let told = names(&[[0xd2, 0x47, 0x3c], [0x1f, 0x4e, 0x8c], [0xa6, 0xd8, 0xee], [0x3f, 0x96, 0x58]], &Words::english());
//! assert_eq!(told, ["red", "dark blue", "light blue", "green"]);
//! ```

use super::colour::{Seen, ciede2000, cielab};
use super::css::{CSS_COLOURS, CssColour};
use super::survey::SURVEY;
use super::word::{Shade, Word};
use crate::plan::settings::Pencil;
use crate::words::Words;

/// The shades of some colours of one word whose own do not tell them apart, the lightest first; none where they are too many.
fn shades(own: &[Shade]) -> Option<&'static [Shade]> {
    use Shade::{Dark, Light, Plain, VeryDark, VeryLight};
    match own {
        [Light, Light] => Some(&[VeryLight, Light]),
        [Dark, Dark] => Some(&[Dark, VeryDark]),
        [_, _] => Some(&[Light, Dark]),
        [_, _, _] => Some(&[Light, Plain, Dark]),
        [_, _, _, _] => Some(&[VeryLight, Light, Dark, VeryDark]),
        [_, _, _, _, _] => Some(&[VeryLight, Light, Plain, Dark, VeryDark]),
        _ => None,
    }
}

/// The named colour of CSS that is nearest by CIEDE2000.
#[must_use]
pub fn css_colour(srgb: [u8; 3]) -> &'static CssColour {
    let apart = |css: &CssColour| ciede2000(srgb, css.srgb);
    CSS_COLOURS.iter().min_by(|a, b| apart(a).total_cmp(&apart(b))).unwrap_or(&CSS_COLOURS[0])
}

/// A pencil of a colour that nobody has named yet: it bears the name of CSS's nearest, see [`names`] for the words of a language.
pub(super) fn unnamed(srgb: [u8; 3]) -> Pencil {
    Pencil { name: css_colour(srgb).name.to_owned(), srgb }
}

/// Chroma in CIELAB from which nobody calls a colour grey, black or white, though one of these may be the nearest of the survey: its
/// browns are darker or stronger than dull ones, which lie nearer to a grey. Common practice, no source.
const COLOURFUL: f64 = 12.0;

/// Word and shade of the survey's nearest colour.
fn called(srgb: [u8; 3]) -> (Word, Shade) {
    let [_, a, b] = cielab(srgb);
    let colourful = a.hypot(b) > COLOURFUL;
    let fits = |word: Word| !colourful || !matches!(word, Word::Grey | Word::Black | Word::White);
    let near = SURVEY.iter().filter(|called| fits(called.word)).map(|called| {
        let apart = called.srgb().map(|own| ciede2000(srgb, own)).fold(f64::INFINITY, f64::min);
        (apart, (called.word, called.shade))
    });
    near.min_by(|a, b| a.0.total_cmp(&b.0)).map_or((Word::Grey, Shade::Plain), |(_, called)| called)
}

/// Greys beside black and white that are a light and a dark one; more are numbered, as on the pencils themselves.
const MOST_SHADED_GREYS: usize = 2;

/// The names of an event's pencils, no two alike.
#[must_use]
pub fn names(pencils: &[[u8; 3]], words: &Words) -> Vec<String> {
    let called = pencils.iter().map(|srgb| called(*srgb)).collect();
    let called = one_black_one_white(pencils, called);
    let mut names = vec![String::new(); pencils.len()];
    for (first, (own, _)) in called.iter().enumerate() {
        let mut alike: Vec<usize> = (0..called.len()).filter(|other| called[*other].0 == *own).collect();
        if alike[0] != first {
            continue; // named together with the first of them
        }
        // the lightest first; of equals the first
        alike.sort_by(|a, b| lightness(pencils[*b]).total_cmp(&lightness(pencils[*a])));
        let word = words.say(own.id(), &[]);
        let their_own: Vec<Shade> = alike.iter().map(|number| called[*number].1).collect();
        let differ = their_own.windows(2).all(|pair| pair[0] < pair[1]);
        let shades = match own {
            // "very dark gray" is nothing that one finds in a box
            Word::Grey if alike.len() > MOST_SHADED_GREYS => None,
            _ if differ => Some(their_own.as_slice()),
            _ => shades(&their_own),
        };
        for (rank, number) in alike.into_iter().enumerate() {
            names[number] = match shades.map(|shades| shades[rank]) {
                Some(shade) => shaded(&word, shade, words),
                None => words.say(
                    "colour-numbered",
                    &[("colour", word.as_str().into()), ("number", (rank + 1).into())],
                ),
            };
        }
    }
    names
}

fn lightness(srgb: [u8; 3]) -> f32 {
    Seen::of(srgb).0[0]
}

/// Words and shades of which only the darkest black is black and only the lightest white white: the others are dark and light
/// greys, since nobody says light black.
fn one_black_one_white(pencils: &[[u8; 3]], called: Vec<(Word, Shade)>) -> Vec<(Word, Shade)> {
    let places = |word: Word| {
        (0..called.len()).filter(|place| called[*place].0 == word).collect::<Vec<_>>().into_iter()
    };
    let light = |place: &usize| lightness(pencils[*place]);
    let black = places(Word::Black).min_by(|a, b| light(a).total_cmp(&light(b)));
    let white = places(Word::White).min_by(|a, b| light(b).total_cmp(&light(a)));
    let told = called.into_iter().enumerate().map(|(place, own)| match own.0 {
        Word::Black if black != Some(place) => (Word::Grey, Shade::Dark),
        Word::White if white != Some(place) => (Word::Grey, Shade::Light),
        _ => own,
    });
    told.collect()
}

fn shaded(word: &str, shade: Shade, words: &Words) -> String {
    let id = match shade {
        Shade::VeryLight => "colour-very-light",
        Shade::Light => "colour-light",
        Shade::Plain => return word.to_owned(),
        Shade::Dark => "colour-dark",
        Shade::VeryDark => "colour-very-dark",
    };
    words.say(id, &[("colour", word.into())])
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;
    use std::collections::BTreeSet;

    #[test]
    fn every_named_colour_is_its_own_nearest() {
        for css in &CSS_COLOURS {
            assert_eq!(css_colour(css.srgb).srgb, css.srgb, "{}", css.name);
        }
        for own in &SURVEY {
            own.srgb().for_each(|srgb| assert_eq!(called(srgb), (own.word, own.shade), "{srgb:?}"));
        }
    }

    #[test]
    fn a_word_and_a_shade_that_a_child_would_choose() {
        let words = Words::english();
        let told = |srgb| names(&[srgb], &words).remove(0);
        assert_eq!(told([0xf7, 0xbc, 0x3b]), "yellow");
        assert_eq!(told([0xff, 0xf3, 0xd6]), "cream");
        assert_eq!(told([0xff; 3]), "white");
        assert_eq!(told([10; 3]), "black");
        assert_eq!(told([128; 3]), "gray");
        assert_eq!(told([0x12, 0x2a, 0x5c]), "dark blue");
        assert_eq!(told([0x8a, 0x4f, 0x2b]), "brown");
        assert_eq!(told([96, 74, 62]), "brown");
        assert_eq!(told([118, 72, 44]), "brown");
        assert_eq!(told([0x65, 0x2d, 0x22]), "brown");
        assert_eq!(told([0xd5, 0x63, 0x41]), "orange");
        assert_eq!(told([0xd9, 0x4f, 0x70]), "pink");
        assert_eq!(told([0xc9, 0xd6, 0x6b]), "lime green");
        assert_eq!(told([0x2a, 0x75, 0x8f]), "teal");
    }

    #[test]
    fn like_colours_are_told_apart_from_light_to_dark() {
        let greens = [[20, 60, 30], [60, 150, 80], [150, 220, 160], [200, 30, 30]];
        assert_eq!(names(&greens, &Words::english()), ["dark green", "green", "light green", "red"]);
        let two = [[60, 150, 80], [50, 140, 70]];
        assert_eq!(names(&two, &Words::english()), ["light green", "dark green"]);
        let ends = [[2; 3], [20; 3], [250; 3], [255; 3], [128; 3]];
        assert_eq!(names(&ends, &Words::english()), ["black", "gray 3", "gray 1", "white", "gray 2"]);
        let many: Vec<[u8; 3]> = (0..8).map(|i| [0, 0, 255 - i]).collect();
        assert_eq!(names(&many, &Words::english())[7], "blue 8");
    }

    proptest! {
        #[test]
        fn no_two_pencils_are_called_alike(pencils in proptest::collection::vec(any::<[u8; 3]>(), 1..25)) {
            let told = names(&pencils, &Words::english());
            prop_assert_eq!(told.iter().collect::<BTreeSet<_>>().len(), pencils.len(), "{:?}", told);
            prop_assert!(told.iter().all(|name| !name.contains('[') && !name.is_empty()));
        }
    }
}
