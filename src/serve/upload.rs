//! `POST photo`: the body is the photo's file. What it is, its bytes say; no name of it is asked for.
//!
//! | answer | when |
//! |---|---|
//! | 200 | read; the wall as it stands now |
//! | 400 | the connection broke off |
//! | 408 | nothing came for [`IDLE`], or all of it took longer than [`WHOLE`] |
//! | 413 | larger than [`MOST_BYTES`] |
//! | 422 | no photo of this wall; why, and what to do |
//! | 503 | too many at once; `Retry-After` says when to come again |
//!
//! Browsers report a broken connection where an answer comes before they have sent everything, so what is refused is received all
//! the same, within limits, and thrown away.

use std::sync::Arc;
use std::time::Duration;

use axum::body::{Body, Bytes};
use axum::extract::State;
use axum::http::{HeaderMap, StatusCode};
use axum::response::Response;
use http_body_util::BodyExt;
use tokio::time::{Instant, timeout, timeout_at};

use super::answer::wall_json;
use super::limits::MOST_BYTES;
use super::marks;
use super::reply::json;
use super::said::{self, refusal};
use super::shared::Shared;
use super::work::{Hand, Place};

/// What a photo is called on its way back.
pub(super) const JPEG: &str = "image/jpeg";
/// What is thrown away of a body at most before the connection is closed.
const MOST_THROWN: usize = 2 * MOST_BYTES;
/// How long a phone may send nothing: Wi-Fi in a crowded hall has gaps of seconds.
pub const IDLE: Duration = Duration::from_secs(15);
/// How long a whole photo may take: 40 MB in 3 minutes are 2 Mbit/s.
pub const WHOLE: Duration = Duration::from_secs(180);
/// How long anybody waits for a hand.
const WAIT: Duration = Duration::from_secs(120);
/// Seconds after which to come again: two or three photos are read in that time.
const COME_AGAIN_S: u32 = 5;
/// The oldest age of a photo that is believed, in seconds: an evening. Beyond that a phone's clock or a file's date is wrong.
const OLDEST_S: u64 = 12 * 3_600;

/// Why a body was not received.
enum Broken {
    Off,
    Slow,
    Large,
}

/// Takes a photo.
pub async fn photo(State(shared): State<Arc<Shared>>, headers: HeaderMap, body: Body) -> Response {
    let words = &shared.evening.words;
    let taken = (shared.evening.clock.now)().saturating_sub(age(&headers)); // sending it takes its time
    let (sent, held) = match received(&shared, &headers, body).await {
        Ok(received) => received,
        Err(refused) => return refused,
    };
    let (evening, id) = (Arc::clone(&shared.evening), number(&headers));
    match shared.work.read(held, move || evening.take(sent, taken, id)).await {
        Ok(standing) => {
            let mut told = wall_json(&shared.evening, &standing, marks::who(&headers).as_ref());
            if standing.newest == 0 {
                told["note"] = words.say("serve-photo-older", &[]).into();
            } else if let Some(size) = standing.copy {
                told["note"] = said::copy(size, words).into();
            }
            json(StatusCode::OK, &told)
        }
        Err(refused) => said::answer(StatusCode::UNPROCESSABLE_ENTITY, &refusal(&refused, words)),
    }
}

/// A photo's file, with the place and the hand that it takes until it is read; or the answer to whoever sent none.
pub(super) async fn received(
    shared: &Shared,
    headers: &HeaderMap,
    body: Body,
) -> Result<(Vec<u8>, (Place, Hand)), Response> {
    let words = &shared.evening.words;
    if announced(headers).is_some_and(|length| length > MOST_BYTES) {
        throw_away(body).await;
        return Err(said::answer(StatusCode::PAYLOAD_TOO_LARGE, &said::too_large(words)));
    }
    let Some(place) = shared.work.place() else {
        throw_away(body).await;
        return Err(said::busy(words, COME_AGAIN_S));
    };
    let Ok(Some(hand)) = timeout(WAIT, shared.work.hand()).await else {
        throw_away(body).await;
        return Err(said::busy(words, COME_AGAIN_S));
    };
    let say = |id: &str| words.say(id, &[]);
    match receive(body, announced(headers)).await {
        Ok(bytes) => Ok((bytes, (place, hand))),
        Err(Broken::Off) => Err(said::answer(StatusCode::BAD_REQUEST, &say("serve-photo-broke-off"))),
        Err(Broken::Slow) => Err(said::answer(StatusCode::REQUEST_TIMEOUT, &say("serve-photo-slow"))),
        Err(Broken::Large) => Err(said::answer(StatusCode::PAYLOAD_TOO_LARGE, &said::too_large(words))),
    }
}

/// How many bytes the request says it has.
fn announced(headers: &HeaderMap) -> Option<usize> {
    headers.get("content-length")?.to_str().ok()?.parse().ok()
}

/// The phone's own number for the photo; 0 where it gives none.
fn number(headers: &HeaderMap) -> u64 {
    headers.get("x-photo").and_then(|value| value.to_str().ok()?.parse().ok()).unwrap_or(0)
}

/// How many seconds ago the photo was made, by the phone's own clock, so that it does not matter whether that is right.
fn age(headers: &HeaderMap) -> u64 {
    let said: Option<u64> = headers.get("x-photo-age").and_then(|value| value.to_str().ok()?.parse().ok());
    said.filter(|age| *age <= OLDEST_S).unwrap_or(0)
}

/// The whole body.
async fn receive(mut body: Body, announced: Option<usize>) -> Result<Vec<u8>, Broken> {
    let end = Instant::now() + WHOLE;
    let mut bytes = Vec::new();
    while let Some(part) = next(&mut body, end).await? {
        if bytes.len() + part.len() > MOST_BYTES {
            throw_away(body).await;
            return Err(Broken::Large);
        }
        if bytes.is_empty() {
            bytes.reserve_exact(announced.unwrap_or(0).clamp(part.len(), MOST_BYTES)); // only once something has come
        }
        bytes.extend_from_slice(&part);
    }
    Ok(bytes)
}

/// The next part of a body; `None` at its end.
async fn next(body: &mut Body, end: Instant) -> Result<Option<Bytes>, Broken> {
    let idle = (Instant::now() + IDLE).min(end);
    match timeout_at(idle, body.frame()).await {
        Err(_) => Err(Broken::Slow),
        Ok(Some(Err(_))) => Err(Broken::Off),
        Ok(None) => Ok(None),
        Ok(Some(Ok(frame))) => Ok(Some(frame.into_data().unwrap_or_default())),
    }
}

/// Receives what is refused, as far as anybody would send it.
async fn throw_away(mut body: Body) {
    let end = Instant::now() + WHOLE / 3;
    let mut left = MOST_THROWN;
    while let Ok(Some(part)) = next(&mut body, end).await {
        left = left.saturating_sub(part.len());
        if left == 0 {
            return;
        }
    }
}
