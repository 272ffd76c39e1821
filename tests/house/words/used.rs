//! What the program asks of the words, read in its sources.

use std::collections::BTreeSet;

use super::composed::{KINDS, composed};
use super::file::by_id;
use super::literals::{Literal, literals};

/// Whether a text looks like the id of a sentence and is the name of a document, of a kind of question, or of something filled in.
fn is_a_name(text: &str) -> bool {
    let filled_in = by_id("en").into_values().any(|message| message.variables.contains(text));
    let on_request = everysquare::print::ON_REQUEST;
    let mut documents =
        everysquare::print::names().chain(on_request).chain(everysquare::print::comparison::names());
    filled_in || KINDS.contains(&text) || documents.any(|name| name == text)
}

struct Source {
    path: String,
    literals: Vec<Literal>,
}

fn sources() -> Vec<Source> {
    let read = |file: crate::Text| Source { literals: literals(&file.text), path: file.path };
    crate::sources().into_iter().map(read).collect()
}

/// Whether a text is written as ids are: small letters and digits, with at least one hyphen.
fn like_an_id(text: &str) -> bool {
    text.contains('-')
        && text.starts_with(|c: char| c.is_ascii_lowercase())
        && text.split('-').all(|part| {
            !part.is_empty() && part.chars().all(|c| c.is_ascii_lowercase() || c.is_ascii_digit())
        })
}

/// A text with gaps, as [`composed`] names it; it begins with a word of its own.
fn with_gap(text: &str) -> Option<String> {
    let mut named = String::new();
    let mut rest = text;
    while let Some((before, inside)) = rest.split_once('{') {
        named += before;
        named += "{}";
        rest = inside.split_once('}')?.1;
    }
    named += rest;
    (named.contains("{}") && !named.starts_with('{') && like_an_id(&named.replace("{}", "x")))
        .then_some(named)
}

/// The ids of a list that is told to have so many sentences: `list("guide-room", 4)`.
fn counted(literal: &Literal) -> Vec<String> {
    let called = ["list(", "steps(", "boxes(", "part("].iter().any(|call| literal.before.ends_with(call));
    let count = literal.after.strip_prefix(", ").and_then(|after| after.split_once(')')?.0.parse().ok());
    let count: usize = count.filter(|_| called).unwrap_or(0);
    (1..=count).map(|number| format!("{}-{number}", literal.text)).collect()
}

/// The beginnings of all ids, up to the first hyphen.
fn sections(ids: &BTreeSet<String>) -> BTreeSet<&str> {
    ids.iter().filter_map(|id| id.split('-').next()).collect()
}

fn ids() -> BTreeSet<String> {
    by_id("en").into_keys().collect()
}

#[test]
fn every_sentence_that_is_asked_for_is_there() {
    let ids = ids();
    let sections = sections(&ids);
    let mut complaints = Vec::new();
    for source in sources() {
        for literal in &source.literals {
            let (text, line) = (literal.text.as_str(), literal.line);
            let asked = [".say(", "Sentence::new("].iter().any(|call| literal.before.ends_with(call));
            let of_a_section =
                like_an_id(text) && text.split('-').next().is_some_and(|first| sections.contains(first));
            if (asked || of_a_section) && !ids.contains(text) && !is_a_name(text) && with_gap(text).is_none()
            {
                complaints.push(format!("{}:{line}: there is no sentence {text}", source.path));
            }
            let lacking = counted(literal).into_iter().filter(|id| !ids.contains(id));
            complaints.extend(lacking.map(|id| format!("{}:{line}: there is no sentence {id}", source.path)));
        }
    }
    assert!(complaints.is_empty(), "\n{}", complaints.join("\n"));
}

#[test]
fn ids_that_are_put_together_are_listed_with_all_that_comes_of_them() {
    let ids = ids();
    let sections = sections(&ids);
    let composed = composed();
    let mut seen = BTreeSet::new();
    let mut complaints = Vec::new();
    for source in sources() {
        for literal in &source.literals {
            let Some(gap) = with_gap(&literal.text) else { continue };
            let said = ["say(&format!(", "say_with(&format!(", "text(&format!("];
            let said = said.iter().any(|call| literal.before.ends_with(call));
            if said || gap.split('-').next().is_some_and(|first| sections.contains(first)) {
                if !composed.iter().any(|(own, _)| *own == gap) {
                    complaints.push(format!(
                        "{}:{}: {gap} is not listed in composed.rs",
                        source.path, literal.line
                    ));
                }
                seen.insert(gap);
            }
        }
    }
    for (gap, made) in &composed {
        if !seen.contains(*gap) {
            complaints.push(format!("{gap} is listed, but nobody puts it together"));
        }
        let lacking = made.iter().filter(|id| !ids.contains(*id));
        complaints.extend(lacking.map(|id| format!("there is no sentence {id}")));
    }
    assert!(complaints.is_empty(), "\n{}", complaints.join("\n"));
}

/// The ids that the pages for phone and projector ask for: in their HTML between double braces, in their scripts in quotes.
fn asked_by_pages() -> BTreeSet<String> {
    let folder = crate::root().join("src/serve/assets");
    let files = std::fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().path());
    let pages =
        files.filter(|path| path.extension().is_some_and(|ending| ending == "html" || ending == "js"));
    let texts: Vec<String> = pages.map(|path| std::fs::read_to_string(path).unwrap()).collect();
    assert!(texts.len() >= 4, "the pages lie elsewhere");
    let id = |rest: &str| -> String {
        rest.chars().take_while(|c| c.is_ascii_lowercase() || c.is_ascii_digit() || *c == '-').collect()
    };
    let starts = ["{{", "\"", "'", "`"];
    let found = texts.iter().flat_map(|text| {
        starts.iter().flat_map(move |start| text.split(start).skip(1).map(id).collect::<Vec<_>>())
    });
    found.filter(|id| id.starts_with("serve-")).collect()
}

#[test]
fn every_sentence_that_the_pages_ask_for_is_there() {
    let ids = ids();
    let lacking: Vec<String> =
        asked_by_pages().into_iter().filter(|id| !id.ends_with('-') && !ids.contains(id)).collect();
    assert!(lacking.is_empty(), "there is no sentence {lacking:?}");
}

#[test]
fn every_sentence_is_used() {
    let asked: BTreeSet<String> = sources()
        .into_iter()
        .flat_map(|source| source.literals)
        .flat_map(|literal| counted(&literal).into_iter().chain([literal.text.clone()]).collect::<Vec<_>>())
        .collect();
    let composed: BTreeSet<String> = composed().into_iter().flat_map(|(_, made)| made).collect();
    let on_pages = asked_by_pages();
    // the help is asked for by the names of commands and arguments; src/cli/mod.rs compares the two
    let of_help = |id: &String| id == "help" || id.starts_with("help-");
    let unused: Vec<String> = ids()
        .into_iter()
        .filter(|id| !of_help(id) && ![&asked, &composed, &on_pages].iter().any(|some| some.contains(id)))
        .collect();
    assert!(unused.is_empty(), "nobody says these:\n{}", unused.join("\n"));
}

#[test]
fn every_kind_of_question_has_its_words() {
    let of_questions = |source: &Source| source.path.contains("questions");
    let texts: Vec<Literal> =
        sources().into_iter().filter(of_questions).flat_map(|source| source.literals).collect();
    let asked = texts.iter().filter(|text| text.before.trim_end_matches([' ', ',']).contains("ask(true"));
    let unknown: Vec<&str> = asked
        .map(|text| text.text.as_str())
        .filter(|kind| kind.contains('-') && !KINDS.contains(kind))
        .collect();
    assert!(unknown.is_empty(), "not listed in composed.rs: {unknown:?}");
    let unused: Vec<&&str> =
        KINDS.iter().filter(|kind| !texts.iter().any(|text| text.text == **kind)).collect();
    assert!(unused.is_empty(), "nobody asks these: {unused:?}");
}

#[test]
fn no_sentence_stands_in_the_sources() {
    let mut complaints = Vec::new();
    for source in sources() {
        for literal in &source.literals {
            let given = literal.before.ends_with("Sentence::given(") && literal.text.contains(' ');
            if given || literal.before.ends_with("#[error(") {
                complaints.push(format!(
                    "{}:{}: “{}” is not in the words",
                    source.path, literal.line, literal.text
                ));
            }
        }
    }
    assert!(complaints.is_empty(), "\n{}", complaints.join("\n"));
}

#[test]
fn ids_are_told_from_other_texts() {
    assert!(like_an_id("print-card-corner-1") && like_an_id("a-b"));
    for other in ["print", "Print-x", "--language", "a_b-c", "x-", "a-b c", "picture.png-x"] {
        assert!(!like_an_id(other), "{other}");
    }
    assert_eq!(with_gap("print-paper-{}").as_deref(), Some("print-paper-{}"));
    assert_eq!(with_gap("steps-{step}").as_deref(), Some("steps-{}"));
    assert_eq!(with_gap("questions-{part}-{}").as_deref(), Some("questions-{}-{}"));
    for other in ["{}-{}", "marked-{number}.jpg", "a {x}", "{read} is", "x"] {
        assert_eq!(with_gap(other), None, "{other}");
    }
}
