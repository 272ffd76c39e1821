//! Questions, workings and answers in words.

use super::super::Sources;
use crate::picture::questions::{Answer, Measure, Question, Unit, Value};
use crate::plan::Turn;
use crate::words::{FluentValue, Words};

/// The question, or its working, as a sentence.
pub(super) fn said(part: &str, question: &Question, sources: &Sources) -> String {
    let mut filled: Vec<(&str, FluentValue<'static>)> =
        question.values.iter().map(|(name, value)| (*name, filled_in(value, sources))).collect();
    filled.push(("answer", answered(question.answer, sources.words).into()));
    if question.value("by").is_some() {
        let counted = sources.words.say("questions-sum", &filled);
        filled.push(("counted", counted.into()));
    }
    let sentence = sources.words.say(&format!("questions-{part}-{}", question.kind), &filled);
    grouped(&sentence, sources.words)
}

/// An answer with its unit.
pub(super) fn answered(answer: Answer, words: &Words) -> String {
    let count = |count: usize| [("count", FluentValue::from(count))];
    let said = match answer {
        Answer::Count(number) => number.to_string(),
        Answer::Percent(number) => words.say("questions-percent", &count(number)),
        Answer::OnePart(number) => words.say("questions-one-part", &count(number)),
        Answer::Length(measure) => measured(measure, words),
        Answer::Area(Measure { count: number, unit }) => {
            let id = match unit {
                Unit::Inch => "questions-inch2",
                Unit::Mm => "questions-mm2",
            };
            words.say(id, &count(number))
        }
        Answer::Letter(at) => letter(at),
        Answer::Turn(at, back) => {
            let way = if back == Turn::Quarter { "right" } else { "left" };
            words.say("questions-turned-back", &[("letter", letter(at).into()), ("way", way.into())])
        }
    };
    grouped(&said, words)
}

/// What a piece to choose from is called: a, b, c …
pub(super) fn letter(at: usize) -> String {
    ('a'..='z').nth(at).map_or_else(|| at.to_string(), String::from)
}

/// What a sentence is filled in with.
fn filled_in(value: &Value, sources: &Sources) -> FluentValue<'static> {
    let Sources { printed, words, .. } = *sources;
    let name = |pencil: usize| sources.facts.pencils.get(pencil).map_or_else(String::new, |p| p.name.clone());
    match value {
        Value::Number(count) => (*count).into(),
        Value::Pencil(pencil) => name(*pencil).into(),
        Value::Pencils(pencils) => listed(pencils.iter().map(|pencil| name(*pencil)).collect(), words).into(),
        Value::Cell(cell) => printed.grid.label(*cell).into(),
        Value::Cells(cells) => {
            listed(cells.iter().map(|cell| printed.grid.label(*cell)).collect(), words).into()
        }
        Value::Sum(terms) => sum(terms, words).into(),
        Value::Length(length) => measured(*length, words).into(),
        Value::Choice(word) => (*word).into(),
    }
}

fn measured(Measure { count, unit }: Measure, words: &Words) -> String {
    let id = match unit {
        Unit::Inch => "questions-inch",
        Unit::Mm => "questions-mm",
    };
    words.say(id, &[("count", count.into())])
}

/// “3 + 0 + 5 = 8”; one number alone as it is.
fn sum(terms: &[usize], words: &Words) -> String {
    let total: usize = terms.iter().sum();
    if terms.len() < 2 {
        return total.to_string();
    }
    let terms: Vec<String> = terms.iter().map(usize::to_string).collect();
    words.say("questions-sum-total", &[("terms", terms.join(" + ").into()), ("total", total.into())])
}

/// “A1, B1 and C1”.
fn listed(mut names: Vec<String>, words: &Words) -> String {
    let Some(last) = names.pop() else { return words.say("questions-none", &[]) };
    if names.is_empty() {
        return last;
    }
    words.say("questions-and", &[("first", names.join(", ").into()), ("last", last.into())])
}

/// A sentence whose whole numbers are divided by thousands: “1,016” in English; in Spanish by a space from five digits on,
/// as the Ortografía de la lengua española (2010) has it.
fn grouped(sentence: &str, words: &Words) -> String {
    let (least, between) = if words.language() == "es" { (5, '\u{a0}') } else { (4, ',') };
    let mut said = String::with_capacity(sentence.len() + 4);
    let mut rest = sentence;
    while let Some(at) = rest.find(|letter: char| letter.is_ascii_digit()) {
        let (before, from) = rest.split_at(at);
        let end = from.find(|letter: char| !letter.is_ascii_digit()).unwrap_or(from.len());
        let (digits, after) = from.split_at(end);
        said.push_str(before);
        // what follows a letter is a label, what follows a point a fraction
        let is_count = !before.ends_with(|letter: char| letter.is_alphanumeric() || letter == '.');
        for (place, digit) in digits.chars().enumerate() {
            let left = digits.len() - place;
            if is_count && digits.len() >= least && place > 0 && left.is_multiple_of(3) {
                said.push(between);
            }
            said.push(digit);
        }
        rest = after;
    }
    said + rest
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn thousands_are_set_apart_and_labels_are_left_alone() {
        let (english, spanish) = (Words::english(), Words::of("es"));
        assert_eq!(grouped("8 × 127 mm = 1016 mm, 1234567", &english), "8 × 127 mm = 1,016 mm, 1,234,567");
        assert_eq!(grouped("A1000 and 25.4000 and 999", &english), "A1000 and 25.4000 and 999");
        assert_eq!(grouped("1016 mm, 10160", &spanish), "1016 mm, 10\u{a0}160");
        assert_eq!(answered(Answer::Length(Measure { count: 1016, unit: Unit::Mm }), &english), "1,016 mm");
        assert_eq!(answered(Answer::Length(Measure { count: 50, unit: Unit::Inch }), &english), "50 inches");
        assert_eq!(answered(Answer::Percent(30), &english), "30%");
    }
}
