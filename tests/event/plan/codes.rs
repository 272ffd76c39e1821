//! Codes against ISO/IEC 18004, and how far apart the codes of one event are.

use everysquare::plan::settings::Settings;
use everysquare::plan::{Grid, Modules, Tag};
use proptest::prelude::*;

fn printed(columns: usize, rows: usize, tag: &str) -> Vec<Modules> {
    let grid = Grid::usual(columns, rows);
    let printed = Settings::new("x".to_owned(), Tag::new(tag).unwrap(), grid).printed().unwrap();
    let cards = printed.cards.into_iter().map(|card| card.modules);
    printed.squares.into_iter().map(|square| square.modules).chain(cards).collect()
}

/// The three finder patterns with their separators: the largest of the distances from the middle, 4 beyond its ring.
fn finder_and_separator(modules: &Modules, (cx, cy): (usize, usize)) {
    for y in 0..21_usize {
        for x in 0..21_usize {
            let away = x.abs_diff(cx).max(y.abs_diff(cy));
            if away <= 4 {
                assert_eq!(modules.dark(x, y), [0, 1, 3].contains(&away), "({x}, {y})\n{modules:?}");
            }
        }
    }
}

/// The fifteen bits of the format, level H, for each mask, from the standard's table of masked sequences.
const FORMAT_H: [u32; 8] = [
    0b001_0110_1000_1001,
    0b001_0011_1011_1110,
    0b001_1100_1110_0111,
    0b001_1001_1101_0000,
    0b000_0111_0110_0010,
    0b000_0010_0101_0101,
    0b000_1101_0000_1100,
    0b000_1000_0011_1011,
];

#[test]
fn every_code_has_the_standards_parts() {
    let codes = printed(16, 12, "K7M");
    for modules in &codes {
        for middle in [(3, 3), (17, 3), (3, 17)] {
            finder_and_separator(modules, middle);
        }
        for i in 8..13 {
            assert_eq!(modules.dark(i, 6), i % 2 == 0, "timing along the row");
            assert_eq!(modules.dark(6, i), i % 2 == 0, "timing down the column");
        }
        assert!(modules.dark(8, 13), "the dark module");
        // Bit 14 first: (0,8) … (5,8), (7,8), (8,8), (8,7), (8,5) … (8,0).
        let xs = [0, 1, 2, 3, 4, 5, 7, 8, 8, 8, 8, 8, 8, 8, 8];
        let ys = [8, 8, 8, 8, 8, 8, 8, 8, 7, 5, 4, 3, 2, 1, 0];
        let format = xs.iter().zip(ys).fold(0, |bits, (x, y)| bits << 1 | u32::from(modules.dark(*x, y)));
        assert!(FORMAT_H.contains(&format), "{format:015b}\n{modules:?}");
    }
    let masks = codes.iter().map(|m| [(2, 8), (3, 8), (4, 8)].map(|(x, y)| m.dark(x, y)));
    assert!(masks.collect::<std::collections::BTreeSet<_>>().len() > 4, "masks are chosen code by code");
}

#[test]
fn no_code_shows_a_fourth_finder_pattern() {
    let codes = printed(60, 50, "R2D");
    assert_eq!(codes.iter().map(Modules::false_finders).sum::<usize>(), 0);
}

/// The smallest number of modules in which two codes differ.
fn least_difference(codes: &[Modules]) -> usize {
    let differ =
        |a: &Modules, b: &Modules| a.as_slice().iter().zip(b.as_slice()).filter(|(a, b)| a != b).count();
    let pairs = codes.iter().enumerate().flat_map(|(i, a)| codes[..i].iter().map(move |b| differ(a, b)));
    pairs.min().unwrap()
}

#[test]
fn any_two_codes_of_an_event_differ_widely() {
    for (tag, columns, rows) in
        [("K7M", 10, 8), ("K7M", 16, 12), ("K7M", 60, 50), ("222", 16, 12), ("ZZZ", 16, 12), ("H4X", 54, 55)]
    {
        let least = least_difference(&printed(columns, rows, tag));
        println!("{tag}, {columns} × {rows} squares and their cards: at least {least} of 441 modules differ");
        assert!(least >= 50, "{least}");
    }
}

proptest! {
    #[test]
    fn what_is_encoded_is_read_back(text in "[0-9A-Z $%*+\\-./:]{1,10}") {
        prop_assert_eq!(Modules::encode(&text).unwrap().text(), Some(text));
    }

    #[test]
    fn texts_that_do_not_fit_are_refused(text in "\\PC{0,14}") {
        let fits = (1..=10).contains(&text.len()) && text.chars().all(|c| "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:".contains(c));
        prop_assert_eq!(Modules::encode(&text).is_ok(), fits);
    }

    #[test]
    fn hex_leads_there_and_back(text in "[0-9A-Z]{1,10}") {
        let modules = Modules::encode(&text).unwrap();
        prop_assert_eq!(modules.to_hex().len(), 111);
        prop_assert_eq!(Modules::from_hex(&modules.to_hex()), Ok(modules));
    }
}
