//! What somebody may have meant who mistyped a name.

use strsim::levenshtein;

/// Letters of a name that are looked at for a guess.
const LONGEST: usize = 60;

/// The known name that is meant, if one is near enough: off by one letter, and one more for every four letters it has.
///
/// ```
/// use everysquare::words::nearest;
/// assert_eq!(nearest("colums", ["columns", "rows"]), Some("columns"));
/// assert_eq!(nearest("qwertz", ["columns", "rows"]), None);
/// ```
#[must_use]
pub fn nearest<'a>(name: &str, known: impl IntoIterator<Item = &'a str>) -> Option<&'a str> {
    let name: String = name.to_lowercase().chars().take(LONGEST).collect();
    let near = known.into_iter().map(|own| (levenshtein(&name, own), own)).min()?;
    (near.0 <= 1 + near.1.len() / 4).then_some(near.1)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_typing_error_is_guessed_and_nonsense_is_not() {
        let known = ["columns", "rows", "tile_mm"];
        assert_eq!(nearest("colums", known), Some("columns"));
        assert_eq!(nearest("tile", known), None);
        assert_eq!(nearest("Rows", known), Some("rows"));
        assert_eq!(nearest("", []), None);
    }
}
