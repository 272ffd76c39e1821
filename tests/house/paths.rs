//! The paths in a Rust file, `a::b::c`, wherever they stand, with groups taken apart.

/// One path, as written.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Written {
    pub line: usize,
    pub parts: Vec<String>,
}

/// A word or a sign of the source; `::` is one sign.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Token {
    pub line: usize,
    pub text: String,
}

/// The source without comments, strings and characters in quotes.
pub fn tokens(source: &str) -> Vec<Token> {
    let bare = without_words(source);
    let mut tokens = Vec::new();
    for (number, line) in bare.lines().enumerate() {
        let mut rest = line.trim_start();
        while let Some(first) = rest.chars().next() {
            let is_word = |c: char| c.is_alphanumeric() || c == '_';
            let length = match first {
                c if is_word(c) => rest.find(|c| !is_word(c)).unwrap_or(rest.len()),
                ':' if rest.starts_with("::") => 2,
                c => c.len_utf8(),
            };
            tokens.push(Token { line: number + 1, text: rest[..length].to_owned() });
            rest = rest[length..].trim_start();
        }
    }
    tokens
}

/// Comments and what stands in quotes, replaced by nothing; lines stay lines.
fn without_words(source: &str) -> String {
    let mut bare = String::new();
    let mut rest = source;
    while let Some(first) = rest.chars().next() {
        let length = match first {
            '/' if rest.starts_with("//") => rest.find('\n').unwrap_or(rest.len()),
            '/' if rest.starts_with("/*") => rest.find("*/").map_or(rest.len(), |end| end + 2),
            'r' if !ends_in_word(&bare) && (rest.starts_with("r\"") || rest.starts_with("r#\"")) => {
                raw_string(rest)
            }
            '"' => string(rest),
            '\'' => character(rest),
            other => {
                bare.push(other);
                rest = &rest[other.len_utf8()..];
                continue;
            }
        };
        bare.extend(rest[..length].chars().filter(|c| *c == '\n'));
        rest = &rest[length..];
    }
    bare
}

fn ends_in_word(text: &str) -> bool {
    text.ends_with(|c: char| c.is_alphanumeric() || c == '_')
}

/// Length of the raw text in quotes that the source goes on with.
pub fn raw_string(rest: &str) -> usize {
    let end = if rest.starts_with("r#") { "\"#" } else { "\"" };
    let start = end.len() + 1;
    rest[start..].find(end).map_or(rest.len(), |at| start + at + end.len())
}

/// Length of the text in quotes that the source goes on with; of all that is left where it has no end.
pub fn string(rest: &str) -> usize {
    let mut escaped = false;
    for (at, c) in rest.char_indices().skip(1) {
        match c {
            _ if escaped => escaped = false,
            '\\' => escaped = true,
            '"' => return at + 1,
            _ => {}
        }
    }
    rest.len()
}

/// A character in quotes; of a lifetime only the quote.
pub fn character(rest: &str) -> usize {
    let inside = &rest[1..];
    if let Some(escaped) = inside.strip_prefix('\\') {
        return escaped.char_indices().skip(1).find(|(_, c)| *c == '\'').map_or(1, |(at, _)| at + 3);
    }
    let length = inside.chars().next().map_or(0, char::len_utf8);
    if inside[length..].starts_with('\'') { length + 2 } else { 1 }
}

/// Every path with at least two parts.
pub fn paths(source: &str) -> Vec<Written> {
    let tokens = tokens(source);
    let mut paths = Vec::new();
    let mut at = 0;
    while at < tokens.len() {
        let starts = is_word(&tokens[at]) && (at == 0 || tokens[at - 1].text != "::");
        if starts && tokens.get(at + 1).is_some_and(|next| next.text == "::") {
            at = follow(&tokens, at, &[], &mut paths);
        } else {
            at += 1;
        }
    }
    paths
}

fn is_word(token: &Token) -> bool {
    ends_in_word(&token.text)
}

/// Reads the path that begins at `at`, after `before`, and gives the place behind it.
fn follow(tokens: &[Token], mut at: usize, before: &[String], paths: &mut Vec<Written>) -> usize {
    let mut parts = before.to_vec();
    let line = tokens[at].line;
    while let Some(token) = tokens.get(at) {
        if token.text == "{" {
            return group(tokens, at + 1, &parts, paths);
        }
        if !is_word(token) && token.text != "*" {
            break; // `Vec::<u8>`, `<T as X>::Y`
        }
        parts.push(token.text.clone());
        at += 1;
        if tokens.get(at).is_none_or(|next| next.text != "::") {
            break;
        }
        at += 1;
    }
    paths.push(Written { line, parts });
    at
}

fn group(tokens: &[Token], mut at: usize, before: &[String], paths: &mut Vec<Written>) -> usize {
    while let Some(token) = tokens.get(at) {
        match token.text.as_str() {
            "}" => return at + 1,
            "as" => at += 2,
            _ if is_word(token) || token.text == "*" => at = follow(tokens, at, before, paths),
            _ => at += 1,
        }
    }
    at
}

fn written(source: &str) -> Vec<String> {
    paths(source).iter().map(|path| path.parts.join("::")).collect()
}

#[test]
fn groups_are_taken_apart() {
    assert_eq!(
        written("use crate::{plan::{Cell, cell as c}, read::*};"),
        ["crate::plan::Cell", "crate::plan::cell", "crate::read::*"]
    );
    assert_eq!(written("use std::fs::{self, File};"), ["std::fs::self", "std::fs::File"]);
    assert_eq!(written("use super::super::frame::Point as P;"), ["super::super::frame::Point"]);
}

#[test]
fn paths_are_seen_wherever_they_stand() {
    assert_eq!(
        written("fn f(a: &crate::plan::Cell) -> Vec<u8> { std::fs::read(x)?; Vec::<u8>::new() }"),
        ["crate::plan::Cell", "std::fs::read", "Vec"]
    );
    assert_eq!(
        written("#[error(transparent)] Code(#[from] crate::plan::CodeError),"),
        ["crate::plan::CodeError"]
    );
    assert_eq!(written("pub(in crate::rehearse) struct Kind;"), ["crate::rehearse"]);
}

#[test]
fn comments_and_strings_hold_no_paths() {
    assert!(
        written("// crate::cli\n/// [`crate::cli`]\n/* crate::cli */ let a = \"crate::cli\";").is_empty()
    );
    assert!(written("let a = r#\"crate::\"cli\"#; let b = '\"'; let c = '\\''; // std::fs").is_empty());
    assert_eq!(written("fn f<'a>(x: &'a str) { \"\\\"\"; std::fs::read(x) }"), ["std::fs::read"]);
    assert_eq!(tokens("\"a\nb\" x")[0].line, 2, "lines stay lines");
}
