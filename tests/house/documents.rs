//! Documents name what exists: every path and every command in `README.md` and `DEVELOPERS.md`.

use std::collections::BTreeSet;

use super::{file, none, root, sources};

const DOCUMENTS: [&str; 2] = ["README.md", "DEVELOPERS.md"];
/// Where the project's paths begin.
const TOPS: [&str; 5] = ["src/", "tests/", "tools/", "samples/", ".ci/"];

/// What stands between backticks, in fenced blocks and in links: there paths and commands are named.
fn spoken(document: &str) -> Vec<String> {
    let mut words = Vec::new();
    let mut fenced = false;
    for line in document.lines() {
        if line.starts_with("```") {
            fenced = !fenced;
        } else if fenced {
            words.push(line.to_owned());
        } else {
            words.extend(line.split('`').skip(1).step_by(2).map(str::to_owned));
            words
                .extend(line.split("](").skip(1).filter_map(|rest| Some(rest.split_once(')')?.0.to_owned())));
        }
    }
    words
}

/// Whether a word is a path of the project: below one of its folders, or a file at its top.
fn is_path(word: &str) -> bool {
    let at_the_top = ["Cargo.toml", "Cargo.lock"].contains(&word)
        || word.starts_with("LICENSE-")
        || word.strip_suffix(".md").is_some_and(|name| name.chars().all(|c| c.is_ascii_uppercase()));
    let pattern = word.contains(['<', '*', '…']);
    !pattern && (at_the_top || TOPS.iter().any(|top| word.starts_with(top)))
}

fn paths(document: &str) -> BTreeSet<String> {
    let signs = |c: char| c.is_whitespace() || "(),;:\"'".contains(c);
    let words = spoken(document);
    let words =
        words.iter().flat_map(|words| words.split(signs)).map(|word| word.trim_end_matches(['.', '/']));
    words.filter(|word| is_path(word)).map(str::to_owned).collect()
}

fn missing(name: &str, document: &str, exists: &dyn Fn(&str) -> bool) -> Vec<String> {
    let paths = paths(document);
    let missing = paths.iter().filter(|path| !exists(path));
    missing.map(|path| format!("{name} names {path}, which does not exist")).collect()
}

/// The commands that a document has people type, `everysquare new …`.
fn commands(document: &str) -> BTreeSet<String> {
    let words = spoken(document);
    let typed = words.iter().flat_map(|words| words.split(&[';', '&', '|'][..]));
    typed
        .filter_map(|line| {
            let line = line.trim().trim_start_matches("$ ");
            let rest = line
                .strip_prefix("everysquare ")
                .or_else(|| line.split_once("cargo run --release -- ").map(|p| p.1))?;
            let first = rest.split_whitespace().next()?;
            first.chars().all(|c| c.is_ascii_lowercase()).then(|| first.to_owned())
        })
        .collect()
}

/// Whether the program knows a command.
fn is_command(name: &str) -> bool {
    let console = (Box::new(std::io::sink()), Box::new(std::io::sink()));
    let mut console = everysquare::cli::Console::new(console.0, console.1, everysquare::cli::Screen::plain());
    everysquare::cli::run(["everysquare", name, "--help"].map(Into::into), &mut console) == 0
}

#[test]
fn every_path_in_the_documents_exists() {
    let exists = |path: &str| root().join(path).exists();
    none(&DOCUMENTS.iter().flat_map(|name| missing(name, &file(name), &exists)).collect::<Vec<_>>());
    for name in DOCUMENTS {
        assert!(paths(&file(name)).len() >= 2, "{name} names no paths: is the search still right?");
    }
}

#[test]
fn every_command_in_the_documents_is_known() {
    let all: BTreeSet<String> = DOCUMENTS.iter().flat_map(|name| commands(&file(name))).collect();
    assert!(all.contains("check") && all.contains("tour"), "the documents name too few commands: {all:?}");
    none(&all.iter().filter(|name| !is_command(name)).cloned().collect::<Vec<_>>());
}

#[test]
fn every_module_is_explained_to_developers() {
    let explained = paths(&file("DEVELOPERS.md"));
    let modules: BTreeSet<String> = sources()
        .iter()
        .filter_map(|source| super::imports::home(&source.path))
        .map(|module| format!("src/{module}"))
        .collect();
    none(
        &modules
            .difference(&explained)
            .map(|module| format!("DEVELOPERS.md is silent about {module}"))
            .collect::<Vec<_>>(),
    );
}

#[test]
fn a_path_that_is_gone_and_a_command_that_is_unknown_are_seen() {
    let document = "See `src/frame/map.rs`, `src/gone.rs` and [the licence](LICENSE-MIT).\n`tests/<name>.rs` is a pattern.\n\
        ```\ntools/gone --quick\n$ everysquare check FOLDER PHOTO\ncargo run --release -- tour\n```\n`everysquare sing`, `event.toml`";
    let exists = |path: &str| !path.contains("gone");
    assert_eq!(paths(document).len(), 4);
    assert_eq!(missing("X.md", document, &exists).len(), 2);
    assert_eq!(commands(document).into_iter().collect::<Vec<_>>(), ["check", "sing", "tour"]);
    assert!(is_command("check") && !is_command("sing"));
}
