//! What the program asks of the words, read in its sources.

use std::collections::BTreeSet;
use std::path::{Path, PathBuf};

use super::composed::composed;
use super::file::by_id;
use super::literals::{Literal, literals};

/// Whether a text looks like the id of a sentence and is the name of a document.
fn names_a_document(text: &str) -> bool {
    everysquare::print::names().any(|name| name == text)
}

struct Source {
    path: String,
    literals: Vec<Literal>,
}

fn sources() -> Vec<Source> {
    fn collect(folder: &Path, files: &mut Vec<PathBuf>) {
        for entry in std::fs::read_dir(folder).unwrap() {
            let path = entry.unwrap().path();
            match path.is_dir() {
                true => collect(&path, files),
                false if path.extension().is_some_and(|ending| ending == "rs") => files.push(path),
                false => {}
            }
        }
    }
    let mut files = Vec::new();
    collect(&Path::new(env!("CARGO_MANIFEST_DIR")).join("src"), &mut files);
    files.sort();
    let read = |path: &PathBuf| Source {
        path: path.strip_prefix(env!("CARGO_MANIFEST_DIR")).unwrap().display().to_string(),
        literals: literals(&std::fs::read_to_string(path).unwrap()),
    };
    files.iter().map(read).collect()
}

/// Whether a text is written as ids are: small letters and digits, with at least one hyphen.
fn like_an_id(text: &str) -> bool {
    text.contains('-')
        && text.starts_with(|c: char| c.is_ascii_lowercase())
        && text.split('-').all(|part| {
            !part.is_empty() && part.chars().all(|c| c.is_ascii_lowercase() || c.is_ascii_digit())
        })
}

/// A text with a gap, as [`composed`] names it.
fn with_gap(text: &str) -> Option<String> {
    let (before, rest) = text.split_once('{')?;
    let (_, after) = rest.split_once('}')?;
    let one_gap = !after.contains('{') && !before.contains([' ', '.', '/']);
    (one_gap && like_an_id(&format!("{before}x{after}"))).then(|| format!("{before}{{}}{after}"))
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
            let asked = ["say(", "Sentence::new("].iter().any(|call| literal.before.ends_with(call));
            let of_a_section =
                like_an_id(text) && text.split('-').next().is_some_and(|first| sections.contains(first));
            if (asked || of_a_section)
                && !ids.contains(text)
                && !names_a_document(text)
                && with_gap(text).is_none()
            {
                complaints.push(format!("{}:{line}: there is no sentence {text}", source.path));
            }
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
            if gap.split('-').next().is_some_and(|first| sections.contains(first)) {
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
    for (gap, parts) in &composed {
        if !seen.contains(*gap) {
            complaints.push(format!("{gap} is listed, but nobody puts it together"));
        }
        let lacking = parts.iter().map(|part| gap.replace("{}", part)).filter(|id| !ids.contains(id));
        complaints.extend(lacking.map(|id| format!("there is no sentence {id}")));
    }
    assert!(complaints.is_empty(), "\n{}", complaints.join("\n"));
}

#[test]
fn every_sentence_is_used() {
    let asked: BTreeSet<String> =
        sources().into_iter().flat_map(|source| source.literals).map(|literal| literal.text).collect();
    let composed: BTreeSet<String> =
        composed().iter().flat_map(|(gap, parts)| parts.iter().map(|part| gap.replace("{}", part))).collect();
    // the help is asked for by the names of commands and arguments; src/cli/mod.rs compares the two
    let of_help = |id: &String| id == "help" || id.starts_with("help-");
    let unused: Vec<String> = ids()
        .into_iter()
        .filter(|id| !of_help(id) && !asked.contains(id) && !composed.contains(id))
        .collect();
    assert!(unused.is_empty(), "nobody says these:\n{}", unused.join("\n"));
}

#[test]
fn ids_are_told_from_other_texts() {
    assert!(like_an_id("print-card-corner-1") && like_an_id("a-b"));
    for other in ["print", "Print-x", "--language", "a_b-c", "x-", "a-b c", "picture.png-x"] {
        assert!(!like_an_id(other), "{other}");
    }
    assert_eq!(with_gap("print-paper-{}").as_deref(), Some("print-paper-{}"));
    assert_eq!(with_gap("steps-{step}").as_deref(), Some("steps-{}"));
    for other in ["{}-{}", "marked-{number}.jpg", "a {x}", "{read} is", "x"] {
        assert_eq!(with_gap(other), None, "{other}");
    }
}
