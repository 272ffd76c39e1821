//! The pages themselves: written by hand, embedded, their sentences filled in from the words.
//!
//! In a page `{{id}}` stands for a sentence, `{{=name}}` for the evening's name, `{{=language}}` for the language, `{{=private}}` for
//! what becomes of photos, and `{{=words}}` for the sentences that its script needs, as JSON that cannot end the element it stands in.

use maud::{DOCTYPE, html};
use serde_json::{Map, Value};

use crate::report::html::shown;
use crate::words::{FluentValue, LANGUAGES, Words};

/// The pages' styles and scripts: name, kind, text.
pub(super) const FILES: [(&str, &str, &str); 11] = [
    ("icon.svg", "image/svg+xml", include_str!("assets/icon.svg")),
    ("base.css", "text/css; charset=utf-8", include_str!("assets/base.css")),
    ("phone.css", "text/css; charset=utf-8", include_str!("assets/phone.css")),
    ("room.css", "text/css; charset=utf-8", include_str!("assets/room.css")),
    ("phone.js", "text/javascript; charset=utf-8", include_str!("assets/phone.js")),
    ("common.js", "text/javascript; charset=utf-8", include_str!("assets/common.js")),
    ("wall.js", "text/javascript; charset=utf-8", include_str!("assets/wall.js")),
    ("pieces.js", "text/javascript; charset=utf-8", include_str!("assets/pieces.js")),
    ("find.js", "text/javascript; charset=utf-8", include_str!("assets/find.js")),
    ("photos.js", "text/javascript; charset=utf-8", include_str!("assets/photos.js")),
    ("room.js", "text/javascript; charset=utf-8", include_str!("assets/room.js")),
];
const PHONE: &str = include_str!("assets/phone.html");
const ROOM: &str = include_str!("assets/room.html");

/// The sentences that the phone page's script says.
const PHONE_WORDS: &[&str] = &[
    "serve-after",
    "serve-again",
    "serve-all-missing",
    "serve-back",
    "serve-back-since",
    "serve-cell-belongs",
    "serve-cell-nothing-seen",
    "serve-check-again",
    "serve-connection-lost",
    "serve-dismiss",
    "serve-done",
    "serve-find-reading",
    "serve-find-start",
    "serve-give-out",
    "serve-given",
    "serve-last-photo",
    "serve-link-old",
    "serve-mine",
    "serve-mine-on",
    "serve-new-photo",
    "serve-next-how",
    "serve-next-none",
    "serve-no-answer",
    "serve-not-back",
    "serve-not-sent",
    "serve-out-since",
    "serve-photo-too-heavy-here",
    "serve-piece-back",
    "serve-piece-out",
    "serve-print",
    "serve-queue",
    "serve-reading",
    "serve-reading-of",
    "serve-retry",
    "serve-sending",
    "serve-sending-of",
    "serve-shaded",
    "serve-show-spot",
    "serve-show-step",
    "serve-show-where",
    "serve-step-all-ticked",
    "serve-take",
    "serve-theirs",
    "serve-undo",
    "serve-undo-ask",
];
/// What scripts fill in themselves: in a sentence for a script `{ $time }` becomes `{time}`.
const FILLED: [&str; 7] = ["time", "done", "left", "at", "of", "label", "minutes"];
/// The sentences that the room page's script says.
const ROOM_WORDS: &[&str] = &[
    "serve-link-old",
    "serve-room-complete",
    "serve-room-full",
    "serve-room-full-end",
    "serve-room-lost",
    "serve-room-next-keep",
    "serve-room-next-show",
    "serve-room-since",
];

/// The helper's page; it says whether photos are kept.
pub(super) fn phone(name: &str, words: &Words, photos_kept: bool) -> String {
    let private = if photos_kept { "serve-help-private-kept" } else { "serve-help-private" };
    filled(&PHONE.replace("{{=private}}", &format!("{{{{{private}}}}}")), name, words, PHONE_WORDS)
}

/// The page without a secret, in every language: it tells nobody anything.
pub(super) fn nowhere() -> String {
    let page = html! {
        (DOCTYPE)
        html lang="en" {
            head {
                meta charset="utf-8";
                meta name="viewport" content="width=device-width, initial-scale=1";
                title { (Words::english().say("serve-title", &[])) }
            }
            body {
                @for (code, _) in LANGUAGES { p lang=(code) { (Words::of(code).say("serve-nowhere", &[])) } }
            }
        }
    };
    page.into_string()
}

/// The room's page.
pub(super) fn room(name: &str, words: &Words) -> String {
    filled(ROOM, name, words, ROOM_WORDS)
}

/// Text for between tags and for quoted attributes.
fn safe(text: &str) -> String {
    html! { (shown(text)) }.into_string()
}

fn filled(page: &str, name: &str, words: &Words, script: &[&str]) -> String {
    let mut parts = page.split("{{");
    let mut text = parts.next().unwrap_or_default().to_owned();
    for part in parts {
        let Some((id, rest)) = part.split_once("}}") else {
            text.push_str(part);
            continue;
        };
        match id {
            "=name" => text.push_str(&safe(name)),
            "=language" => text.push_str(&safe(&words.say("report-language", &[]))),
            "=words" => text.push_str(&script_words(words, script)),
            id => text.push_str(&safe(&words.say(id, &[]))),
        }
        text.push_str(rest);
    }
    text
}

/// JSON for between `<script type="application/json">` and its end.
fn script_words(words: &Words, ids: &[&str]) -> String {
    let gaps = FILLED.map(|name| (name, format!("{{{name}}}")));
    let left: Vec<(&str, FluentValue<'_>)> =
        gaps.iter().map(|(name, gap)| (*name, gap.as_str().into())).collect();
    let said: Map<String, Value> =
        ids.iter().map(|id| ((*id).to_owned(), words.say(id, &left).into())).collect();
    Value::Object(said).to_string().replace('<', "\\u003c")
}

#[cfg(test)]
mod tests {
    use super::*;

    fn ids_in<'a>(text: &'a str, before: &str, after: &str) -> Vec<&'a str> {
        text.split(before).skip(1).filter_map(|part| part.split(after).next()).collect()
    }

    #[test]
    fn every_sentence_of_a_page_is_written() {
        let words = Words::english();
        for page in [true, false]
            .map(|kept| phone("An <evening> & more", &words, kept))
            .into_iter()
            .chain([room("An <evening> & more", &words)])
        {
            assert!(page.contains("An &lt;evening&gt; &amp; more") && page.contains("lang=\"en\""));
            assert!(!page.contains("[serve-") && !page.contains("{{"), "{page}");
        }
    }

    #[test]
    fn scripts_say_what_they_are_given_and_nothing_else() {
        let scripts = FILES.iter().filter(|(name, ..)| name.ends_with(".js"));
        type Files = Vec<&'static (&'static str, &'static str, &'static str)>;
        let (room, phone): (Files, Files) = scripts.partition(|(name, ..)| *name == "room.js");
        for (scripts, words) in [(phone, PHONE_WORDS), (room, ROOM_WORDS)] {
            let texts = scripts.iter().map(|(.., text)| *text);
            let mut used: Vec<&str> = texts.flat_map(|text| ids_in(text, "\"", "\"")).collect();
            used.retain(|text| text.starts_with("serve-"));
            used.sort_unstable();
            used.dedup();
            let mut given = words.to_vec();
            given.sort_unstable();
            assert_eq!(used, given);
        }
    }

    #[test]
    fn gaps_that_a_script_fills_in_stay_open() {
        for language in ["en", "es"] {
            let told = script_words(&Words::of(language), &["serve-new-photo", "serve-sending-of"]);
            for gap in ["{time}", "{done}", "{left}", "{at}", "{of}"] {
                assert!(told.contains(gap), "{told}");
            }
        }
    }

    #[test]
    fn without_a_secret_every_language_says_the_same() {
        let page = nowhere();
        assert!(
            page.contains("lang=\"en\"") && page.contains("lang=\"es\"") && !page.contains("[serve"),
            "{page}"
        );
    }

    #[test]
    fn nothing_is_asked_for_elsewhere_and_nothing_stands_inline() {
        for text in FILES.iter().map(|(.., text)| *text).chain([PHONE, ROOM]) {
            assert!(
                !text.contains("//cdn")
                    && !text.contains("https:")
                    && !text.replace("http://www.w3.org/2000/svg", "").contains("http://"),
                "{text}"
            );
            assert!(
                !text.contains(" style=\"") && !text.contains(" onclick=") && !text.contains("innerHTML")
            );
        }
    }
}
