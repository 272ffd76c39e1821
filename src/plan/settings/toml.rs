//! Lines of event.toml.

use toml_edit::Value;

use super::choice::Choice;

pub(super) fn text(value: &str) -> String {
    Value::from(value).to_string()
}

pub(super) fn number(value: f64) -> String {
    format!("{value:?}")
}

/// One setting with what it means.
pub(super) fn line(name: &str, value: &str, means: &str) -> String {
    format!("{name} = {value}   # {means}\n")
}

/// The same, left out: what it could be.
pub(super) fn example(name: &str, value: &str, means: &str) -> String {
    format!("# {}", line(name, value, means))
}

/// All words of a choice, as they are typed.
pub(super) fn quoted<T: Choice>() -> String {
    let words: Vec<String> = T::ALL.iter().map(|(_, word)| format!("\"{word}\"")).collect();
    words.join(", ")
}
