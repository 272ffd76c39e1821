//! The texts in quotes of a Rust file.

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
            'r' if rest.starts_with("r\"") || rest.starts_with("r#\"") => raw(rest),
            '"' => {
                let length = quoted(rest);
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

fn raw(rest: &str) -> usize {
    let end = if rest.starts_with("r#") { "\"#" } else { "\"" };
    let start = end.len() + 1;
    rest[start..].find(end).map_or(rest.len(), |at| start + at + end.len())
}

fn quoted(rest: &str) -> usize {
    let mut escaped = false;
    for (at, c) in rest.char_indices().skip(1) {
        match c {
            _ if escaped => escaped = false,
            '\\' => escaped = true,
            '"' => return at + 1,
            _ => {}
        }
    }
    panic!("a text without an end: {}", &rest[..40.min(rest.len())]);
}

/// A character in quotes; of a lifetime only the quote.
fn character(rest: &str) -> usize {
    let inside = &rest[1..];
    if inside.starts_with('\\') {
        return inside.char_indices().skip(2).find(|(_, c)| *c == '\'').map_or(1, |(at, _)| at + 2);
    }
    let length = inside.chars().next().map_or(0, char::len_utf8);
    if inside[length..].starts_with('\'') { length + 2 } else { 1 }
}

#[test]
fn texts_are_found_and_comments_and_characters_left_out() {
    let source = "// \"no\"\nsay(\"a-b\", '\"', '\\'', 'x');\nlet s: &'static str = \"c \\\" d\"; r#\"no\"#;\n#[cfg(test)]\n\"no\"";
    let found: Vec<(usize, String)> = literals(source).into_iter().map(|own| (own.line, own.text)).collect();
    assert_eq!(found, [(2, "a-b".to_owned()), (3, "c \\\" d".to_owned())]);
    assert!(literals(source)[0].before.ends_with("say("));
}
