//! The file of a language as a whole, where it says only what differs from another one.

use std::collections::BTreeMap;

use super::{LANGUAGES, VARIANTS};

/// The sentences of a language as one file: of a variant, the other language's with those that differ in their places. `None` for a
/// language that does not come with the program.
#[must_use]
pub fn whole(code: &str) -> Option<String> {
    let text = |code: &str| LANGUAGES.iter().find(|(own, _)| *own == code).map(|(_, text)| *text);
    let Some((_, other, differing)) = VARIANTS.iter().find(|(own, ..)| *own == code) else {
        return text(code).map(str::to_owned);
    };
    let own: BTreeMap<&str, &str> = messages(differing).filter_map(|part| Some((id(part)?, part))).collect();
    let said = |part| id(part).and_then(|id| own.get(id).copied()).unwrap_or(part);
    text(other).map(|text| messages(text).map(said).collect())
}

/// The file in parts: each sentence with the lines that go on with it; lines between sentences one by one.
fn messages(text: &str) -> impl Iterator<Item = &str> {
    let mut rest = text;
    std::iter::from_fn(move || {
        let mut end = rest.find('\n').map_or(rest.len(), |at| at + 1);
        if end == 0 {
            return None;
        }
        if id(rest).is_some() {
            // a sentence goes on in lines that are indented or close a brace
            while rest[end..].starts_with([' ', '}']) {
                end += rest[end..].find('\n').map_or(rest.len() - end, |at| at + 1);
            }
        }
        let (part, after) = rest.split_at(end);
        rest = after;
        Some(part)
    })
}

/// The id with which a part begins, if it is a sentence.
fn id(part: &str) -> Option<&str> {
    let (id, _) = part.lines().next()?.split_once(" =")?;
    let is_id = |c: char| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '-';
    (!id.is_empty() && id.chars().all(is_id)).then_some(id)
}

#[cfg(test)]
mod tests {
    use super::super::Words;
    use super::*;

    #[test]
    fn a_language_of_its_own_is_its_file() {
        assert_eq!(whole("es").as_deref(), Some(LANGUAGES[1].1));
        assert_eq!(whole("xx"), None);
    }

    #[test]
    fn a_variant_has_every_sentence_once() {
        let british = whole("en-GB").unwrap();
        let ids = |text: &str| messages(text).filter_map(id).map(str::to_owned).collect::<Vec<_>>();
        assert_eq!(ids(&british), ids(LANGUAGES[0].1));
        let words = Words::english().with_overrides(&british).unwrap();
        for own in ["level-plain", "guide-tape", "fix-swap"] {
            assert_eq!(words.say(own, &[]), Words::of("en-GB").say(own, &[]));
        }
    }
}
