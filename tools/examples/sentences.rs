//! Every sentence for people as it is shown, in each language, for other people's programs to look at: a JSON object a line,
//! `{"language": "en", "group": "fixes", "id": "fix-move", "text": "Move the square in D7 to E4."}`. What is filled in comes from
//! `tests/house/words/values.rs`; a sentence that chooses between words has a line for each way. A card's question is in the group of
//! its rung, such as `questions-see`.

#![allow(
    clippy::print_stdout,
    clippy::panic,
    clippy::expect_used,
    reason = "a program, and words that cannot be read end it"
)]
#![allow(dead_code, reason = "the tests of the words use more of their readers")]

#[path = "../../tests/house/words/file.rs"]
mod file;
#[path = "../../tests/house/words/filled.rs"]
mod filled;
#[path = "../../tests/house/words/values.rs"]
mod values;

use everysquare::picture::questions::Rung;
use everysquare::words::{LANGUAGES, VARIANTS};
use serde_json::json;

/// What the words hold for the program, not for people: the code of the language, which word of a color says most.
const NOT_SHOWN: [&str; 2] = ["report-language", "print-main-word"];

/// The sources that ask the questions of each rung.
fn asked(rung: Rung) -> &'static str {
    match rung {
        Rung::See => include_str!("../../src/picture/questions/see.rs"),
        Rung::Count => include_str!("../../src/picture/questions/count.rs"),
        Rung::Compare => include_str!("../../src/picture/questions/compare.rs"),
        Rung::Explain => include_str!("../../src/picture/questions/explain.rs"),
    }
}

/// Whether a rung asks a kind of question, which it names or calls a function for.
fn asks(rung: Rung, kind: &str) -> bool {
    let (named, called) = (format!("\"{kind}\""), format!(".{}(", kind.replace('-', "_")));
    asked(rung).contains(&named) || asked(rung).contains(&called)
}

/// The groups of a sentence: its heading, or the rungs that ask it.
fn groups(id: &str, heading: String) -> Vec<String> {
    let Some(kind) = id.strip_prefix("questions-ask-") else { return vec![heading] };
    let own = Rung::ALL.into_iter().filter(|rung| asks(*rung, kind));
    own.map(|rung| format!("questions-{}", rung.word())).collect()
}

fn main() {
    let languages = LANGUAGES.map(|(code, _)| code).into_iter().chain(VARIANTS.map(|(code, ..)| code));
    for language in languages {
        let sentences = filled::shown(language).unwrap_or_else(|faults| panic!("{}", faults.join("\n")));
        for sentence in sentences.into_iter().filter(|own| !NOT_SHOWN.contains(&own.id.as_str())) {
            let groups = groups(&sentence.id, sentence.group);
            assert!(!groups.is_empty(), "{}: nobody asks this", sentence.id);
            for (group, text) in
                groups.iter().flat_map(|group| sentence.texts.iter().map(move |text| (group, text)))
            {
                println!(
                    "{}",
                    json!({ "language": language, "group": group, "id": sentence.id, "text": text })
                );
            }
        }
    }
}
