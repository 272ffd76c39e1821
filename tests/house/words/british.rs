//! British English beside the English of the USA: it says only what differs, and nothing that differs is left out.

use everysquare::words::{VARIANTS, Words};

use super::file::{by_id, read};

/// Words of the USA, lower case, which British English spells or says otherwise.
const AMERICAN: [&str; 39] = [
    "color",
    "colors",
    "colored",
    "coloring",
    "colorful",
    "gray",
    "grays",
    "center",
    "centered",
    "neighbor",
    "neighboring",
    "neighbors",
    "millimeter",
    "millimeters",
    "centimeters",
    "meter",
    "meters",
    "organizer",
    "organize",
    "recognized",
    "eraser",
    "erasers",
    "trash",
    "marshal",
    "hallway",
    "hallways",
    "principal",
    "labeled",
    "counterclockwise",
    "math",
    "percent",
    "markers",
    "cellular",
    "afterward",
    "anymore",
    "cardstock",
    "cleanup",
    "dialog",
    "farther",
];
/// What the USA says in several words, lower case, and British English in others.
const AMERICAN_PHRASES: [&str; 16] = [
    "across from",
    "age 5 and up",
    "age 9 and up",
    "butcher paper",
    "check a box",
    "check “",
    "kid scissors",
    "lines of people",
    "one fourth",
    "painter’s tape",
    "plan on ",
    "right away",
    "right side up",
    "trade places",
    "usb drive",
    "utility knife",
];

fn differing() -> Vec<(String, super::file::Message)> {
    let (code, _, text) = VARIANTS[0];
    assert_eq!(code, "en-GB");
    read(code, text)
}

/// The words of a text that only the USA uses. Options such as --colors are typed as they are.
fn american(text: &str) -> Vec<&str> {
    let words = text.split_whitespace().filter(|word| !word.contains("--"));
    let letters = |c: char| !c.is_alphabetic();
    words
        .flat_map(|word| word.split(letters))
        .filter(|word| AMERICAN.contains(&word.to_lowercase().as_str()))
        .collect()
}

#[test]
fn each_british_sentence_is_another_than_the_american_and_fills_in_the_same() {
    let american = by_id("en");
    for (id, own) in differing() {
        let other = american.get(&id).unwrap_or_else(|| panic!("en.ftl has no {id}"));
        assert_ne!(own.ways, other.ways, "{id} need not be said again");
        assert_eq!(own.variables, other.variables, "{id}");
        assert_eq!(own.choices, other.choices, "{id}");
    }
}

#[test]
fn no_british_sentence_is_spelled_as_in_the_usa() {
    let mut faults = Vec::new();
    for (id, own) in by_id("en-GB") {
        let mut found: Vec<&str> = own.ways.iter().flat_map(|way| american(way)).collect();
        let says = |phrase: &&str| own.ways.iter().any(|way| way.to_lowercase().contains(phrase));
        found.extend(AMERICAN_PHRASES.into_iter().filter(|phrase| says(phrase)));
        if !found.is_empty() {
            faults.push(format!("{id}: {found:?}"));
        }
    }
    assert!(faults.is_empty(), "\n{}", faults.join("\n"));
}

#[test]
fn what_does_not_differ_is_said_as_in_the_usa() {
    let (british, american) = (Words::of("en-GB"), Words::english());
    assert_eq!(british.language(), "en-GB");
    assert_eq!(british.say("legend-right", &[]), american.say("legend-right", &[]));
    assert_eq!(british.say("level-plain", &[]), "one colour");
    assert_eq!(american.say("level-plain", &[]), "one color");
}
