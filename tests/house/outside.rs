//! Only some modules touch the world outside: files, clock, network, standard output.

use super::imports::home;
use super::paths::{paths, tokens};
use super::{Text, none, sources};

/// The modules that touch the world.
const COMMANDS: [&str; 2] = ["cli", "serve"];

/// A part of `std`, the modules that may use it, and the files in them, where it is not all.
const WORLD: &[(&str, &[&str])] = &[
    ("fs", &["src/cli/", "src/serve/", "src/plan/folder/", "src/photo/"]),
    ("time", &["src/cli/", "src/serve/"]),
    ("net", &["src/cli/", "src/serve/"]),
    ("env", &["src/cli/", "src/serve/", "src/main.rs"]),
    ("process", &["src/cli/", "src/serve/", "src/main.rs"]),
];
const STREAMS: [&str; 3] = ["stdin", "stdout", "stderr"];
const PRINTING: [&str; 5] = ["print", "println", "eprint", "eprintln", "dbg"];

fn touched(source: &Text) -> Vec<String> {
    let mut complaints = Vec::new();
    for path in paths(&source.text).iter().filter(|path| path.parts[0] == "std") {
        let part = path.parts[1].as_str();
        let allowed = WORLD.iter().find(|(name, _)| *name == part).map(|(_, places)| *places);
        if allowed.is_some_and(|places| !places.iter().any(|place| source.path.starts_with(place))) {
            complaints.push(format!("{}:{}: std::{part} is not used here", source.path, path.line));
        }
    }
    let command = home(&source.path).is_none_or(|home| COMMANDS.contains(&home.as_str()));
    let tokens = tokens(&source.text);
    for pair in tokens.windows(2).filter(|_| !command) {
        let (word, next) = (pair[0].text.as_str(), pair[1].text.as_str());
        let printed = PRINTING.contains(&word) && next == "!";
        let stream = STREAMS.contains(&word) && next == "(";
        if printed || stream {
            complaints.push(format!("{}:{}: {word} writes to standard output", source.path, pair[0].line));
        }
    }
    complaints
}

#[test]
fn only_some_modules_touch_the_world() {
    none(&sources().iter().flat_map(touched).collect::<Vec<_>>());
}

#[test]
fn a_touch_of_the_world_is_seen() {
    let seen = |path: &str, text: &str| touched(&Text { path: path.to_owned(), text: text.to_owned() }).len();
    assert_eq!(seen("src/read/reader.rs", "fn f() { std::fs::read(\"x\") }"), 1);
    assert_eq!(seen("src/plan/cell.rs", "use std::{fmt, fs::File};"), 1);
    assert_eq!(seen("src/plan/folder/whole.rs", "use std::fs::File;"), 0);
    assert_eq!(seen("src/report/json.rs", "let now = std::time::SystemTime::now();"), 1);
    assert_eq!(seen("src/cli/check.rs", "let now = std::time::SystemTime::now(); println!();"), 0);
    assert_eq!(seen("src/report/json.rs", "println!(\"x\"); let s = io::stdout();"), 2);
    assert_eq!(seen("src/report/json.rs", "// println!(\"x\")\nlet stdout = 1;"), 0);
}
