//! The texts in quotes of a Rust file.

use crate::paths::{character, raw_string, string};

/// A text in quotes and the line it begins on.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Literal {
    pub line: usize,
    pub text: String,
    /// What stands before it, down to 40 characters.
    pub before: String,
    /// What stands behind it, up to 40 characters.
    pub after: String,
}

/// Every text in quotes before the file's own tests; escapes are kept as they stand there.
pub fn literals(source: &str) -> Vec<Literal> {
    let source = source.split("\n#[cfg(test)]").next().unwrap_or_default();
    let mut found = Vec::new();
    let (mut at, mut rest) = (0, source);
    while let Some(first) = rest.chars().next() {
        let length = match first {
            '/' if rest.starts_with("//") => rest.find('\n').unwrap_or(rest.len()),
            'r' if rest.starts_with("r\"") || rest.starts_with("r#\"") => raw_string(rest),
            '"' => {
                let length = string(rest);
                assert!(
                    length > 1 && rest[..length].ends_with('"'),
                    "a text without an end: {}",
                    &rest[..length]
                );
                found.push(Literal {
                    line: source[..at].matches('\n').count() + 1,
                    text: rest[1..length - 1].to_owned(),
                    before: source[..at]
                        .trim_end()
                        .chars()
                        .rev()
                        .take(40)
                        .collect::<Vec<_>>()
                        .into_iter()
                        .rev()
                        .collect(),
                    after: source[at + length..].trim_start().chars().take(40).collect(),
                });
                length
            }
            '\'' => character(rest),
            other => other.len_utf8(),
        };
        at += length;
        rest = &source[at..];
    }
    found
}

#[test]
fn texts_are_found_and_comments_and_characters_left_out() {
    let source = "// \"no\"\nsay(\"a-b\", '\"', '\\'', 'x');\nlet s: &'static str = \"c \\\" d\"; r#\"no\"#;\n#[cfg(test)]\n\"no\"";
    let found: Vec<(usize, String)> = literals(source).into_iter().map(|own| (own.line, own.text)).collect();
    assert_eq!(found, [(2, "a-b".to_owned()), (3, "c \\\" d".to_owned())]);
    assert!(literals(source)[0].before.ends_with("say("));
}
