//! What is printed for helpers and children is read in a hurry: it is short, and nothing in it is unsafe, unkind or wrong.

use super::file::messages;

/// Sentences of the printed documents, by the beginnings of their ids; questions have rules of their own.
const PRINTED: [&str; 14] = [
    "print-",
    "checklist-",
    "pencils-",
    "wall-map-",
    "comparison-",
    "filling-",
    "steps-",
    "people-",
    "reach-",
    "span",
    "about-",
    "paper-",
    "helpers-",
    "guide-",
];
/// Most words in a sentence that is read in a hurry.
const MOST_WORDS: usize = 25;
/// Most letters of the words about the size: the strip beside the ruler has no room for more on letter and A4 paper.
const STRIP_LETTERS: usize = 55;
/// Flesch-Kincaid grades that are not passed.
const HELPERS_GRADE: f64 = 5.0;
const TABLE_CARD_GRADE: f64 = 2.0;

/// Words that no printed page says, in both languages, and why.
const NEVER: &[(&str, &str)] = &[
    ("nicer", "nothing is ranked"),
    ("nicest", "nothing is ranked"),
    ("best square", "nothing is ranked"),
    ("más bonito", "nothing is ranked"),
    ("mejor cuadro", "nothing is ranked"),
    ("spoilt", "squares start fresh"),
    ("spoiled", "squares start fresh"),
    ("se echa a perder", "squares start fresh"),
    ("per cent", "percent or %"),
    ("times more", "5 times more can mean 6 times"),
    ("times as many more", "5 times more can mean 6 times"),
    ("grows { ", "5 times more can mean 6 times"),
    ("veces más", "5 veces más can mean 6 times"),
    ("crece {", "5 veces más can mean 6 times"),
    ("blank spare", "the kit prints no blanks"),
    ("de repuesto", "the kit prints no blanks"),
    ("use the flash", "flash glares"),
    ("likeness", "nothing is graded"),
    ("similarity", "nothing is graded"),
    ("similitud", "nothing is graded"),
    ("ledger", "it is a checklist; ledger is a size of paper"),
    ("evening’s", "it is an event"),
    ("velada", "it is an evento"),
    ("colour", "US spelling"),
    ("neighbour", "US spelling"),
    ("centre", "US spelling"),
    ("grey", "US spelling"),
    ("maths", "US spelling"),
    ("spirit level", "a level"),
    ("queue", "a line"),
];

fn printed(code: &str) -> Vec<(String, Vec<String>)> {
    messages(code)
        .into_iter()
        .filter(|(id, _)| PRINTED.iter().any(|beginning| id.starts_with(beginning)))
        .map(|(id, message)| (id, message.ways))
        .collect()
}

/// The sentences of a text. What is filled in counts as one word.
fn sentences(text: &str) -> Vec<Vec<String>> {
    text.replace("{}", " seven ")
        .split(['.', '?', '!'])
        .map(|sentence| {
            sentence
                .split(|c: char| !c.is_alphanumeric() && c != '’')
                .filter(|word| word.chars().any(char::is_alphanumeric))
                .map(str::to_lowercase)
                .collect()
        })
        .filter(|words: &Vec<String>| !words.is_empty())
        .collect()
}

/// Runs of vowels, without a silent e at the end; at least one.
fn syllables(word: &str) -> usize {
    let is_vowel = |c: char| "aeiouyáéíóúü".contains(c);
    let mut count = 0;
    let mut before = false;
    for c in word.chars() {
        count += usize::from(is_vowel(c) && !before);
        before = is_vowel(c);
    }
    let is_silent = word.ends_with('e') && !word.ends_with("le") && !word.ends_with("ee");
    (count - usize::from(is_silent && count > 1)).max(1)
}

/// The Flesch-Kincaid grade (Kincaid, Fishburne, Rogers and Chissom 1975).
fn grade(texts: &[String]) -> f64 {
    let sentences: Vec<Vec<String>> = texts.iter().flat_map(|text| sentences(text)).collect();
    let words: usize = sentences.iter().map(Vec::len).sum();
    let spoken: usize = sentences.iter().flatten().map(|word| syllables(word)).sum();
    let (sentences, words, spoken) = (sentences.len() as f64, words as f64, spoken as f64);
    0.39 * words / sentences + 11.8 * spoken / words - 15.59
}

/// What the texts whose ids begin so say, each way.
fn texts(beginning: &str) -> Vec<String> {
    let all = printed("en").into_iter().filter(|(id, _)| id.starts_with(beginning));
    all.flat_map(|(_, ways)| ways).collect()
}

fn none(complaints: &[String]) {
    assert!(complaints.is_empty(), "\n{}", complaints.join("\n"));
}

#[test]
fn the_grade_is_that_of_the_formula() {
    assert_eq!(["code", "table", "see", "picture", "area"].map(syllables), [1, 2, 1, 2, 2]);
    let text = ["The cat sat on the mat.".to_owned()];
    assert!((grade(&text) - (0.39 * 6.0 + 11.8 - 15.59)).abs() < 1e-9, "{}", grade(&text));
}

#[test]
fn helpers_read_at_grade_5_and_children_at_grade_2() {
    let (helpers, card) = (grade(&texts("helpers-")), grade(&texts("steps-")));
    assert!(helpers <= HELPERS_GRADE, "helpers’ pages: grade {helpers:.1}");
    assert!(card <= TABLE_CARD_GRADE, "table card: grade {card:.1}");
}

#[test]
fn no_sentence_for_helpers_or_children_is_long() {
    let mut complaints = Vec::new();
    for (id, ways) in printed("en") {
        if !["helpers-", "steps-"].iter().any(|beginning| id.starts_with(beginning)) {
            continue;
        }
        for sentence in ways.iter().flat_map(|way| sentences(way)) {
            if sentence.len() > MOST_WORDS {
                complaints.push(format!("{id}: {} words: {}", sentence.len(), sentence.join(" ")));
            }
        }
    }
    none(&complaints);
}

#[test]
fn the_words_about_the_size_are_not_cut_off() {
    for code in ["en", "es"] {
        let all = printed(code);
        let (_, ways) =
            all.iter().find(|(id, _)| id == "print-actual-size").expect("a sentence of the strip");
        let letters = ways[0].chars().count();
        assert!(letters <= STRIP_LETTERS, "{code}: {letters} letters: {}", ways[0]);
    }
}

#[test]
fn no_printed_page_says_what_is_never_said() {
    let mut complaints = Vec::new();
    for code in ["en", "es"] {
        for (id, ways) in printed(code) {
            for way in ways {
                let said = way.replace("{}", "{ }").to_lowercase();
                let faults = NEVER.iter().filter(|(never, _)| said.contains(never));
                complaints
                    .extend(faults.map(|(never, why)| format!("{code}: {id}: “{never}” ({why}): {way}")));
            }
        }
    }
    none(&complaints);
}

#[test]
fn no_printed_sentence_puts_a_child_on_a_stool_or_a_ladder() {
    let mut complaints = Vec::new();
    let (children, climbing) = (["child", "niñ"], ["stool", "ladder", "banquito", "escalera"]);
    let about = |sentence: &str, words: &[&str]| words.iter().any(|word| sentence.contains(word));
    let mut forbidden = 0;
    for code in ["en", "es"] {
        for (id, ways) in printed(code) {
            for sentence in ways.iter().flat_map(|way| sentences(way)).map(|words| words.join(" ")) {
                if about(&sentence, &children) && about(&sentence, &climbing) {
                    complaints.push(format!("{code}: {id}: {sentence}"));
                }
                let is_rule = sentence.contains("only adults") || sentence.contains("únicamente");
                forbidden += usize::from(about(&sentence, &climbing) && is_rule);
            }
        }
    }
    none(&complaints);
    assert!(forbidden >= 2, "that only adults climb is said in each language");
}
