//! Names cut short so that they fit beside a swatch and still tell each other apart: `light green` becomes `lig. green`.

/// How many letters of a word that is not the main one are kept, the most first.
const OTHER_LETTERS: [usize; 4] = [4, 3, 2, 1];
/// How many letters of the main word are kept at least.
const LEAST_MAIN_LETTERS: usize = 3;

/// Which word of a name says most: in `light green` the last, in `verde claro` the first.
#[derive(Copy, Clone, Debug, PartialEq, Eq)]
pub(super) enum MainWord {
    /// The first.
    First,
    /// The last.
    Last,
}

impl MainWord {
    /// As a language's words say it: `first`, or else the last.
    pub fn named(word: &str) -> Self {
        if word == "first" { Self::First } else { Self::Last }
    }
}

/// The names, each whole if `fits` says so, else cut; no two the same unless the names were.
pub(super) fn short_names(names: &[&str], main: MainWord, fits: impl Fn(&str) -> bool) -> Vec<String> {
    let mut taken: Vec<String> = Vec::with_capacity(names.len());
    for name in names {
        let all = ways_to_cut(name, main);
        let fitting: Vec<&String> = all.iter().filter(|way| fits(way)).collect();
        let best = fitting.iter().find(|way| !taken.contains(way)).or(fitting.first());
        taken.push(best.map_or_else(String::new, |way| (*way).clone()));
    }
    taken
}

/// A name and its shorter forms, the best first.
fn ways_to_cut(name: &str, main: MainWord) -> Vec<String> {
    let words: Vec<&str> = name.split_whitespace().collect();
    let main_at = if main == MainWord::First { 0 } else { words.len().saturating_sub(1) };
    let most = words.get(main_at).map_or(0, |word| word.chars().count());
    let mut ways = vec![name.to_owned()];
    for main_letters in (LEAST_MAIN_LETTERS..=most.max(LEAST_MAIN_LETTERS)).rev() {
        for other_letters in OTHER_LETTERS {
            let cut_word = |(at, word): (usize, &&str)| {
                cut(word, if at == main_at { main_letters } else { other_letters })
            };
            ways.push(words.iter().enumerate().map(cut_word).collect::<Vec<_>>().join(" "));
        }
    }
    let letters: Vec<char> = name.chars().collect();
    ways.extend((1..letters.len()).rev().map(|n| letters.iter().take(n).chain(&['…']).collect::<String>()));
    ways
}

/// A word of at most so many letters, with a full stop where some are gone.
fn cut(word: &str, letters: usize) -> String {
    // a full stop takes about as much room as a letter, so that cutting off one alone gains nothing
    if word.chars().count() <= letters + 1 {
        return word.to_owned();
    }
    word.chars().take(letters).chain(['.']).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_word_that_says_most_stays_whole() {
        let fits = |name: &str| name.chars().count() <= 8;
        let of = |names: &[&str], main| short_names(names, main, fits);
        assert_eq!(of(&["red", "dark green"], MainWord::Last), ["red", "d. green"]);
        assert_eq!(of(&["verde oscuro"], MainWord::First), ["verde o."]);
        assert_eq!(of(&["ultramarine"], MainWord::Last), ["ultrama."]);
    }

    #[test]
    fn names_stay_apart() {
        let fits = |name: &str| name.chars().count() <= 8;
        let short = short_names(&["light green", "leafy green", "lucid green"], MainWord::Last, fits);
        assert!(short[0] != short[1] && short[1] != short[2] && short[0] != short[2], "{short:?}");
        assert!(short.iter().all(|name| fits(name)), "{short:?}");
    }

    #[test]
    fn what_nothing_fits_is_empty() {
        assert_eq!(short_names(&["red"], MainWord::Last, |_| false), [""]);
    }
}
