//! One language beside the other.

use std::collections::{BTreeMap, BTreeSet};

use everysquare::words::{FluentValue, Words};

use super::file::{Message, by_id, messages};

/// Sentences without a word that could be translated: names, marks, units, what is filled in.
const SAME: &[&str] = &[
    "length-mm",
    "plan-head-size",
    "comparison-cm2",
    "unit-mm",
    "unit-inch",
    "questions-mm",
    "questions-mm2",
    "questions-working-larger",
    "questions-working-smaller",
    "questions-working-larger-patch",
    "questions-working-inches-to-mm",
    "questions-working-millimetres",
    "guide-colour",
    "print-ruler-mm",
    "print-ruler-inch",
    "error-line",
    "help-value-mm",
    "help-value-px",
];
/// English words that no Spanish sentence has; what stands in “…” is typed or read as it is.
const ENGLISH: [&str; 14] = [
    "the", "of", "and", "is", "are", "to", "with", "this", "that", "for", "not", "your", "square", "picture",
];

fn both() -> Vec<(String, Message, Message)> {
    let mut spanish = by_id("es");
    messages("en")
        .into_iter()
        .filter_map(|(id, english)| Some((id.clone(), english, spanish.remove(&id)?)))
        .collect()
}

fn none(complaints: &[String]) {
    assert!(complaints.is_empty(), "\n{}", complaints.join("\n"));
}

#[test]
fn both_have_the_same_sentences_in_the_same_order_each_once() {
    for code in ["en", "es"] {
        let mut seen = BTreeSet::new();
        let twice: Vec<String> =
            messages(code).into_iter().map(|(id, _)| id).filter(|id| !seen.insert(id.clone())).collect();
        assert!(twice.is_empty(), "{code}.ftl has twice: {twice:?}");
    }
    let (english, spanish) = (by_id("en"), by_id("es"));
    let lacking = |from: &BTreeMap<String, Message>, other: &BTreeMap<String, Message>| -> Vec<String> {
        from.keys().filter(|id| !other.contains_key(*id)).cloned().collect()
    };
    assert_eq!(lacking(&english, &spanish), Vec::<String>::new(), "es.ftl lacks these");
    assert_eq!(lacking(&spanish, &english), Vec::<String>::new(), "en.ftl lacks these");
    let order = |code| messages(code).into_iter().map(|(id, _)| id).collect::<Vec<_>>();
    let (english, spanish) = (order("en"), order("es"));
    let other = english.iter().zip(&spanish).find(|(a, b)| a != b);
    assert_eq!(other, None, "here the files part; whoever translates reads them side by side");
}

#[test]
fn both_fill_in_the_same() {
    let differ = |(id, english, spanish): &(String, Message, Message)| {
        (english.variables != spanish.variables)
            .then(|| format!("{id}: {:?} in English, {:?} in Spanish", english.variables, spanish.variables))
    };
    none(&both().iter().filter_map(differ).collect::<Vec<_>>());
}

#[test]
fn counts_have_one_and_other_and_other_choices_are_the_same() {
    // a number as a key, such as [0], stands for itself in every language
    let plural = |keys: &BTreeSet<String>| keys.contains("one");
    let is_right = |keys: &BTreeSet<String>| {
        let words = keys.iter().filter(|key| key.parse::<u32>().is_err());
        words.eq(["*other", "one"])
    };
    let mut complaints = Vec::new();
    for (id, english, spanish) in both() {
        for (code, message) in [("en", &english), ("es", &spanish)] {
            for (name, keys) in &message.choices {
                if plural(keys) && !is_right(keys) {
                    complaints
                        .push(format!("{code}: {id}: ${name} chooses among {keys:?}, not one and *other"));
                }
            }
        }
        let bare = |keys: &BTreeSet<String>| -> BTreeSet<String> {
            keys.iter().map(|key| key.trim_start_matches('*').to_owned()).collect()
        };
        for (name, keys) in &english.choices {
            match spanish.choices.get(name) {
                None => complaints.push(format!("{id}: English chooses by ${name}, Spanish does not")),
                Some(own) if !plural(keys) && bare(own) != bare(keys) => {
                    complaints
                        .push(format!("{id}: ${name} chooses among {keys:?}, in Spanish among {own:?}"));
                }
                Some(_) => {}
            }
        }
    }
    none(&complaints);
}

#[test]
fn no_sentence_is_empty_or_has_a_gap() {
    for code in ["en", "es"] {
        let words = Words::of(code);
        let mut complaints = Vec::new();
        for (id, message) in messages(code) {
            for count in [0_usize, 1, 2, 1_000_000] {
                let named: Vec<(&str, FluentValue<'_>)> = message
                    .variables
                    .iter()
                    .map(|name| {
                        (
                            name.as_str(),
                            if message.choices.contains_key(name) { count.into() } else { "X".into() },
                        )
                    })
                    .collect();
                let said = words.say(&id, &named);
                // a name that is not filled in shows as {$name}; examples of how to write one have a space
                if said.trim().is_empty() || said.contains("{$") {
                    complaints.push(format!("{code}: {id}: “{said}”"));
                }
            }
        }
        none(&complaints);
    }
}

#[test]
fn no_english_is_left_in_the_spanish() {
    let mut complaints = Vec::new();
    for (id, english, spanish) in both() {
        let same = english.ways == spanish.ways;
        let has_words = english.text.chars().filter(|c| c.is_alphabetic()).count() > 1;
        match (same && has_words, SAME.contains(&id.as_str())) {
            (true, false) => complaints.push(format!("{id} is the same in both: {}", english.text)),
            (false, true) => complaints.push(format!("{id} is not the same in both: it need not be listed")),
            _ => {}
        }
        let spoken = without_quoted(&spanish.text);
        let words =
            spoken.split(|c: char| !c.is_alphabetic() && c != '_' && c != '-' && c != '.' && c != '/');
        complaints.extend(
            words
                .filter(|word| ENGLISH.contains(word))
                .map(|word| format!("{id}: “{word}” is English: {}", spanish.text)),
        );
    }
    none(&complaints);
}

/// A sentence without what stands in “…”.
fn without_quoted(text: &str) -> String {
    text.split('“')
        .enumerate()
        .map(|(at, part)| if at == 0 { part } else { part.split_once('”').map_or("", |(_, rest)| rest) })
        .collect()
}

#[test]
fn signs_stand_in_pairs_and_no_space_is_lost_or_doubled() {
    let mut complaints = Vec::new();
    let mut complain = |fault: bool, id: &str, way: &str, what: &str| {
        if fault {
            complaints.push(format!("{id}: {what}: {way}"));
        }
    };
    for code in ["en", "es"] {
        for (id, message) in messages(code) {
            for way in &message.ways {
                let count = |sign: char| way.matches(sign).count();
                complain(count('“') != count('”'), &id, way, "quotation marks in pairs");
                complain(count('(') != count(')'), &id, way, "brackets in pairs");
                let spaces = !way.contains('\n') && !way.starts_with("everysquare") && way.contains("  ");
                complain(spaces, &id, way, "two spaces");
                complain(way.trim_matches(' ') != way, &id, way, "a space at an end");
                let marks = way.matches('?').count();
                let alone = way.trim() == "?";
                complain(code == "es" && !alone && count('¿') != marks, &id, way, "¿ and ?");
                complain(code == "es" && count('¡') != count('!'), &id, way, "¡ and !");
                complain(way.contains(" ,") || way.contains(" ."), &id, way, "a space before a sign");
            }
        }
    }
    none(&complaints);
}

#[test]
fn sentences_end_alike() {
    let mut complaints = Vec::new();
    for (id, english, spanish) in both() {
        if english.text.split_whitespace().count() < 3 {
            continue; // a heading or an abbreviation
        }
        let stops = |message: &Message| message.ways.iter().all(|way| way.ends_with(['.', '?', '!', '”']));
        if stops(&english) != stops(&spanish) {
            complaints.push(format!("{id}: “{}”, “{}”", english.text, spanish.text));
        }
    }
    none(&complaints);
}
