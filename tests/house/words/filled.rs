//! Sentences as they are shown: what the program fills in is filled in with something of its kind, a label for a label and a
//! length for a length, and a sentence that chooses between words is said each way.

use std::collections::{BTreeMap, BTreeSet};

use everysquare::words::{FluentValue, Words};

use super::file::{Message, by_id, messages};
use super::values::VALUES;

/// A count that is neither 1 nor one that a sentence has words of its own for.
const SEVERAL: usize = 12;

/// A sentence of a language as a person sees it.
#[derive(Clone, Debug)]
pub struct Shown {
    /// Its name.
    pub id: String,
    /// The heading under which it stands in its file.
    pub group: String,
    /// Each way it may run, none twice.
    pub texts: Vec<String>,
}

/// The sentences of a language in the order of the English file; those that it lacks are English.
///
/// # Errors
/// The names of what is filled in and has no value here, as `id/name`, and the values that no sentence asks for.
pub fn shown(code: &str) -> Result<Vec<Shown>, Vec<String>> {
    let (words, own) = (Words::of(code), by_id(code));
    let mut sentences = Vec::new();
    let mut complaints = Vec::new();
    let mut asked = BTreeSet::new();
    for (id, english) in messages("en") {
        let message = own.get(&id).unwrap_or(&english);
        let mut texts: Vec<String> = Vec::new();
        for chosen in choices(&id, message) {
            let text = said(&id, message, &chosen, &words, &own, &mut asked);
            match text {
                Ok(text) if texts.contains(&text) => {}
                Ok(text) => texts.push(text),
                Err(lacking) => complaints.push(lacking),
            }
        }
        sentences.push(Shown { id, group: english.group, texts });
    }
    let unused = VALUES.iter().filter(|(name, _)| !asked.contains(name));
    complaints.extend(unused.map(|(name, _)| format!("{name}: no sentence asks for this")));
    if complaints.is_empty() { Ok(sentences) } else { Err(complaints) }
}

/// What a sentence chooses by: each combination of its choices.
fn choices(id: &str, message: &Message) -> Vec<BTreeMap<String, FluentValue<'static>>> {
    let mut all = vec![BTreeMap::new()];
    for (name, keys) in &message.choices {
        let values = keys_as_values(id, name, keys);
        all = all
            .iter()
            .flat_map(|chosen: &BTreeMap<String, FluentValue<'static>>| {
                values.iter().map(move |value| {
                    let mut more = chosen.clone();
                    more.insert(name.clone(), value.clone());
                    more
                })
            })
            .collect();
    }
    all
}

/// Values that lead to each of the keys of one choice: counts where it is one by number, else the words themselves.
fn keys_as_values(id: &str, name: &str, keys: &BTreeSet<String>) -> Vec<FluentValue<'static>> {
    let bare: BTreeSet<&str> = keys.iter().map(|key| key.trim_start_matches('*')).collect();
    let numbers: Vec<usize> =
        bare.iter().filter_map(|key| if *key == "one" { Some(1) } else { key.parse().ok() }).collect();
    if numbers.is_empty() {
        // beside words of its own, “other” only stands for those of them that are not listed
        let listed = |key: &&&str| **key != "other" || bare.len() == 1;
        return bare.iter().filter(listed).map(|key| (*key).to_owned().into()).collect();
    }
    let several = value(id, name).and_then(|(_, text)| text.parse().ok()).unwrap_or(SEVERAL);
    let several = bare.contains("other").then_some(several);
    numbers.into_iter().chain(several).map(FluentValue::from).collect()
}

/// The sentence with one choice of its words.
fn said(
    id: &str,
    message: &Message,
    chosen: &BTreeMap<String, FluentValue<'static>>,
    words: &Words,
    own: &BTreeMap<String, Message>,
    asked: &mut BTreeSet<&'static str>,
) -> Result<String, String> {
    let is_one = chosen.values().any(|value| *value == FluentValue::from(1_usize));
    let mut filled: Vec<(&str, FluentValue<'_>)> = Vec::new();
    for name in &message.variables {
        let of_table = value(id, name);
        asked.extend(of_table.map(|(key, _)| key));
        let value = match (chosen.get(name), of_table) {
            (Some(choice), _) => choice.clone(),
            (None, Some((_, text))) => {
                let (one, several) = text.split_once(" ¦ ").unwrap_or((text, text));
                spelled(if is_one { one } else { several }, words, own, asked)?.into()
            }
            (None, None) => return Err(format!("{id}/{name}: nothing to fill in")),
        };
        filled.push((name, value));
    }
    Ok(words.say(id, &filled))
}

/// A value of the table, with the sentences in it said: `[colour-blue]` is “blue”.
fn spelled(
    text: &str,
    words: &Words,
    own: &BTreeMap<String, Message>,
    asked: &mut BTreeSet<&'static str>,
) -> Result<String, String> {
    let Some((before, rest)) = text.split_once('[') else { return Ok(text.to_owned()) };
    let (id, after) = rest.split_once(']').ok_or_else(|| format!("{text}: a bracket is missing"))?;
    let english;
    let message = match own.get(id) {
        Some(message) => message,
        None => {
            english = by_id("en").remove(id).ok_or_else(|| format!("{text}: there is no sentence {id}"))?;
            &english
        }
    };
    let chosen = choices(id, message).pop().unwrap_or_default();
    let part = said(id, message, &chosen, words, own, asked)?;
    Ok(format!("{before}{part}{}", spelled(after, words, own, asked)?))
}

/// What fills in a name: the value for this sentence, else the one for the longest beginning of its id, else the usual one.
fn value(id: &str, name: &str) -> Option<(&'static str, &'static str)> {
    let fits = |key: &str| match key.rsplit_once('/') {
        Some((of, own)) => own == name && (of == id || (of.ends_with('-') && id.starts_with(of))),
        None => key == name,
    };
    VALUES.iter().filter(|(key, _)| fits(key)).max_by_key(|(key, _)| key.len()).copied()
}

#[test]
fn all_that_is_filled_in_has_a_value_of_its_kind() {
    for code in ["en", "en-GB", "es"] {
        let sentences = shown(code).unwrap_or_else(|lacking| panic!("{code}:\n{}", lacking.join("\n")));
        let open = sentences.iter().flat_map(|sentence| &sentence.texts).find(|text| text.contains("{$"));
        assert_eq!(open, None, "{code}");
    }
}

#[test]
fn a_sentence_is_said_each_way_it_may_run() {
    let sentences = shown("en").unwrap();
    let texts = |id: &str| &sentences.iter().find(|sentence| sentence.id == id).unwrap().texts;
    assert!(
        sentences
            .iter()
            .any(|sentence| (sentence.id.as_str(), sentence.group.as_str()) == ("fix-turn", "fixes"))
    );
    assert_eq!(*texts("new-squares"), ["1 square", "80 squares"]);
    assert_eq!(texts("fix-turn").len(), 3);
    assert!(texts("advice-step-back").len() >= 24, "{:?}", texts("advice-step-back"));
    assert!(texts("fix-look").contains(&"Check D7 yourself. We can’t read its code.".to_owned()));
    assert!(texts("fix-look").contains(&"Check D7 and E4 yourself. We can’t read their codes.".to_owned()));
}
