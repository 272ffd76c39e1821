//! What no file of the project holds, and how long a source may be.

use super::{Text, none, texts};

/// A file holds one idea: from 400 lines it is looked at again, and it never has more than this.
const MOST_LINES: usize = 600;

/// Places of somebody's machine, and hosts of package registries, split so that this file may be looked at too.
const NOWHERE: [(&str, &str); 10] = [
    ("/ho", "me/"),
    ("/ro", "ot/"),
    ("/wo", "rk/"),
    ("/t", "mp/"),
    ("/Us", "ers/"),
    (":\\Us", "ers"),
    ("index.crat", "es.io"),
    ("static.crat", "es.io"),
    ("pythonhos", "ted.org"),
    ("py", "pi.org"),
];

fn machine_places(file: &Text) -> Vec<String> {
    let lines = file.text.lines().enumerate();
    let named =
        |line: &str| NOWHERE.iter().map(|(a, b)| format!("{a}{b}")).find(|place| line.contains(place));
    lines
        .filter_map(|(number, line)| Some(format!("{}:{}: names {}", file.path, number + 1, named(line)?)))
        .collect()
}

/// The program's packages, and those of the tools that are packages of their own.
pub const LOCKS: [&str; 3] = ["Cargo.lock", "tools/fuzz/Cargo.lock", "tools/bench/readers/Cargo.lock"];

/// Packages come from the usual registry and from nowhere else.
fn strange_sources(lock: &str) -> Vec<String> {
    const USUAL: &str = "source = \"registry+https://github.com/rust-lang/crates.io-index\"";
    let sources = lock.lines().filter(|line| line.starts_with("source = "));
    sources.filter(|line| *line != USUAL).map(|line| format!("Cargo.lock: {line}")).collect()
}

fn too_long(file: &Text) -> Vec<String> {
    let lines = file.text.lines().count();
    let long = file.path.ends_with(".rs") && lines > MOST_LINES;
    long.then(|| format!("{}: {lines} lines, at most {MOST_LINES}", file.path)).into_iter().collect()
}

fn not_safe(file: &Text) -> Vec<String> {
    let word = ["un", "safe"].concat();
    let rust = file.path.ends_with(".rs");
    let found = super::paths::tokens(&file.text).into_iter().filter(|token| rust && token.text == word);
    found.map(|token| format!("{}:{}: {word}", file.path, token.line)).collect()
}

#[test]
fn no_file_names_somebody_s_machine_or_a_registry_s_host() {
    none(&texts().iter().flat_map(machine_places).collect::<Vec<_>>());
}

#[test]
fn packages_come_from_the_usual_registry() {
    none(&LOCKS.iter().flat_map(|lock| strange_sources(&super::file(lock))).collect::<Vec<_>>());
}

#[test]
fn sources_are_not_too_long_and_safe() {
    let texts = texts();
    none(&texts.iter().flat_map(too_long).chain(texts.iter().flat_map(not_safe)).collect::<Vec<_>>());
}

#[test]
fn each_of_these_is_seen() {
    let text = |text: String| Text { path: "src/x.rs".to_owned(), text };
    for (a, b) in NOWHERE {
        assert_eq!(machine_places(&text(format!("fine\nlook at {a}{b}x"))).len(), 1, "{a}{b}");
    }
    assert!(machine_places(&text("see src/frame/ and https://example.org".to_owned())).is_empty());
    assert_eq!(strange_sources("source = \"git+https://example.org\"\nversion = \"1\"").len(), 1);
    assert_eq!(too_long(&text("x\n".repeat(MOST_LINES + 1))).len(), 1);
    assert!(too_long(&text("x\n".repeat(MOST_LINES))).is_empty());
    assert_eq!(not_safe(&text(["un", "safe {}"].concat())).len(), 1);
}
