//! What goes wrong, in the page's language: every refusal of a photo, and what to do.

use axum::http::{HeaderValue, StatusCode};
use axum::response::Response;
use serde_json::json;

use crate::photo::PhotoError;
use crate::plan::folder::FolderError;
use crate::read::ReadError;
use crate::words::Words;

use super::limits::{MOST_BYTES, MOST_PIXELS};
use super::refusal::{NotUndone, Refusal};
use super::reply;
use super::together::Conflict;

/// One sentence as an answer.
pub(super) fn answer(status: StatusCode, sentence: &str) -> Response {
    reply::json(status, &json!({ "say": sentence }))
}

/// Come again later.
pub(super) fn busy(words: &Words, seconds: u32) -> Response {
    let mut response = answer(StatusCode::SERVICE_UNAVAILABLE, &words.say("serve-busy", &[]));
    response.headers_mut().insert("retry-after", HeaderValue::from(seconds));
    response
}

/// More bytes than a photo has.
pub(super) fn too_large(words: &Words) -> String {
    words.say("serve-photo-too-heavy", &[("most", (MOST_BYTES >> 20).into())])
}

/// Why a photo gives no answer, and what to do.
pub(super) fn refusal(refused: &Refusal, words: &Words) -> String {
    let say = |id: &str| words.say(id, &[]);
    match refused {
        Refusal::Photo(error) => photo(error, words),
        Refusal::Copy(width, height) => copy((*width, *height), words),
        Refusal::Read(ReadError::NoCodes) => say("serve-photo-no-codes"),
        Refusal::Read(ReadError::Foreign(tags)) => {
            words.say("serve-photo-foreign", &[("tags", tags.join(", ").into())])
        }
        Refusal::Read(ReadError::Other(texts)) => {
            words.say("serve-photo-other", &[("texts", texts.join(", ").into())])
        }
        Refusal::Read(ReadError::TooDark) => say("serve-photo-too-dark"),
        Refusal::Read(ReadError::CannotPlace) => say("serve-photo-cannot-place"),
        Refusal::Read(ReadError::TooSmall) => say("serve-photo-codes-small"),
        Refusal::Practice => say("serve-photo-practice"),
        Refusal::Draw(_) | Refusal::Stumble => say("serve-photo-stumble"),
    }
}

/// Why a photo of a table gives no answer, and what to do.
pub(super) fn no_squares(refused: &Refusal, words: &Words) -> String {
    match refused {
        Refusal::Read(ReadError::Foreign(tags)) => {
            words.say("serve-find-foreign", &[("tags", tags.join(", ").into())])
        }
        Refusal::Read(ReadError::TooDark) | Refusal::Photo(_) => refusal(refused, words),
        Refusal::Read(_) => words.say("serve-find-none", &[]),
        _ => words.say("serve-photo-stumble", &[]),
    }
}

/// That a photo is a small copy, and what to send instead.
pub(super) fn copy((width, height): (u32, u32), words: &Words) -> String {
    let size = [("width", width.to_string().into()), ("height", height.to_string().into())];
    words.say("serve-photo-copy", &size)
}

/// Why something was not marked.
pub(super) fn conflict(conflict: Conflict, words: &Words) -> String {
    let id = match conflict {
        Conflict::Taken => "serve-step-taken",
        Conflict::Gone => "serve-step-gone",
        Conflict::PieceTaken => "serve-piece-taken",
        Conflict::PieceUp => "serve-piece-up",
    };
    words.say(id, &[])
}

/// Why the last photo was not taken back.
pub(super) fn not_undone(why: NotUndone, words: &Words) -> String {
    let id = match why {
        NotUndone::Changed => "serve-undo-changed",
        NotUndone::Nothing => "serve-undo-nothing",
        NotUndone::Unkept => "serve-undo-unkept",
    };
    words.say(id, &[])
}

fn photo(error: &PhotoError, words: &Words) -> String {
    let sized = |id: &str, width: &usize, height: &usize| {
        let most = MOST_PIXELS / 1_000_000;
        let named = [
            ("width", width.to_string().into()),
            ("height", height.to_string().into()),
            ("most", most.to_string().into()),
        ];
        words.say(id, &named)
    };
    match error {
        PhotoError::TooLarge { width, height } => sized("serve-photo-too-large", width, height),
        PhotoError::TooSmall { width, height } => sized("serve-photo-too-small", width, height),
        PhotoError::Empty | PhotoError::File(_) => words.say("serve-photo-empty", &[]),
        PhotoError::Heic(_) => words.say("serve-photo-heic", &[]),
        PhotoError::Video => words.say("serve-photo-video", &[]),
        PhotoError::Unknown | PhotoError::Avif => words.say("serve-photo-unknown", &[]),
        PhotoError::Truncated => words.say("serve-photo-truncated", &[]),
        PhotoError::Damaged(_) => words.say("serve-photo-damaged", &[]),
    }
}

/// Why the answer could not be kept.
pub(super) fn unkept(error: &FolderError, words: &Words) -> String {
    let id = match error {
        FolderError::Full { .. } => "serve-unkept-full",
        _ => "serve-unkept",
    };
    words.say(id, &[])
}
