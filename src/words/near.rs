//! What somebody may have meant who mistyped a name.

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
    let name = name.to_lowercase();
    let near = known.into_iter().map(|own| (edits(&name, own), own)).min()?;
    (near.0 <= 1 + near.1.len() / 4).then_some(near.1)
}

/// How many letters must be put in, left out or replaced to make `b` of `a` (Levenshtein's distance).
fn edits(a: &str, b: &str) -> usize {
    let b: Vec<char> = b.chars().collect();
    let mut row: Vec<usize> = (0..=b.len()).collect();
    for (i, from) in a.chars().take(LONGEST).enumerate() {
        let mut corner = row[0];
        row[0] = i + 1;
        for (j, to) in b.iter().enumerate() {
            let replaced = corner + usize::from(from != *to);
            corner = row[j + 1];
            row[j + 1] = replaced.min(row[j] + 1).min(corner + 1);
        }
    }
    row.last().copied().unwrap_or(0)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn a_typing_error_is_guessed_and_nonsense_is_not() {
        let known = ["columns", "rows", "tile_mm"];
        assert_eq!(nearest("colums", known), Some("columns"));
        assert_eq!(nearest("tile", known), None);
        assert_eq!(nearest("Rows", known), Some("rows"));
        assert_eq!(nearest("", []), None);
    }

    proptest! {
        #[test]
        fn edits_are_a_distance(a in "[abc]{0,6}", b in "[abc]{0,6}", c in "[abc]{0,6}") {
            prop_assert_eq!(edits(&a, &b), edits(&b, &a));
            prop_assert_eq!(edits(&a, &b) == 0, a == b);
            prop_assert!(edits(&a, &c) <= edits(&a, &b) + edits(&b, &c));
        }
    }
}
