//! What helpers tell each other: `POST step`, `POST piece`, `POST undo`. Bodies are JSON of one kind each and small.
//!
//! | body | |
//! |---|---|
//! | `{"key", "seen", "state": "open" \| "mine" \| "done"}` | a step; `key` and `seen` as the wall's JSON has them |
//! | `{"place", "state": "here" \| "out" \| "back"}` | a piece |
//! | `{"number"}` | takes the photo of that standing back |
//!
//! | answer | when |
//! |---|---|
//! | 200 | done; the wall as it stands now |
//! | 400 | no such body, or no token in `X-Helper` |
//! | 408, 413 | a body that does not come, or is too large |
//! | 409 | another phone was first, or the list is another by now; a sentence |

use std::sync::Arc;
use std::time::Duration;

use axum::body::{Body, to_bytes};
use axum::extract::State;
use axum::http::{HeaderMap, StatusCode};
use axum::response::Response;
use serde::Deserialize;
use serde::de::DeserializeOwned;
use tokio::time::timeout;

use super::answer::wall_json;
use super::reply::{bytes, json};
use super::said;
use super::shared::Shared;
use super::together::{Conflict, PieceState, StepState, Who};

/// Largest body in bytes: a step names a row of 60 cells at most.
const MOST_BYTES: usize = 2_048;
/// Longest time for a body.
const WHOLE: Duration = Duration::from_secs(10);

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct StepMark {
    key: String,
    seen: u64,
    state: StepState,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct PieceMark {
    place: usize,
    state: PieceState,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Undo {
    number: u64,
}

/// Which phone asks, where it says so.
pub(super) fn who(headers: &HeaderMap) -> Option<Who> {
    Who::try_from(headers.get("x-helper")?.to_str().ok()?.to_owned()).ok()
}

/// Marks a step.
pub(super) async fn step(State(shared): State<Arc<Shared>>, headers: HeaderMap, body: Body) -> Response {
    let (who, mark) = match asked::<StepMark>(&headers, body).await {
        Ok(asked) => asked,
        Err(status) => return refused(status),
    };
    marked(shared, who, move |shared, who| shared.evening.mark((&mark.key, mark.seen), mark.state, who)).await
}

/// Marks a piece.
pub(super) async fn piece(State(shared): State<Arc<Shared>>, headers: HeaderMap, body: Body) -> Response {
    let (who, mark) = match asked::<PieceMark>(&headers, body).await {
        Ok(asked) => asked,
        Err(status) => return refused(status),
    };
    marked(shared, who, move |shared, who| shared.evening.hand(mark.place, mark.state, who)).await
}

/// Takes the last photo back.
pub(super) async fn undo(State(shared): State<Arc<Shared>>, headers: HeaderMap, body: Body) -> Response {
    let (who, undo) = match asked::<Undo>(&headers, body).await {
        Ok(asked) => asked,
        Err(status) => return refused(status),
    };
    match shared.work.undo(Arc::clone(&shared.evening), undo.number).await {
        Ok(standing) => json(StatusCode::OK, &wall_json(&shared.evening, &standing, Some(&who))),
        Err(why) => said::answer(StatusCode::CONFLICT, &said::not_undone(why, &shared.evening.words)),
    }
}

/// Marks something, away from the threads that answer, as the disk is waited for.
async fn marked<F>(shared: Arc<Shared>, who: Who, mark: F) -> Response
where
    F: FnOnce(&Shared, &Who) -> Result<(), Conflict> + Send + 'static,
{
    let done = tokio::task::spawn_blocking(move || match mark(&shared, &who) {
        Ok(()) => json(StatusCode::OK, &wall_json(&shared.evening, &shared.evening.standing(), Some(&who))),
        Err(why) => said::answer(StatusCode::CONFLICT, &said::conflict(why, &shared.evening.words)),
    });
    done.await.unwrap_or_else(|_| refused(StatusCode::INTERNAL_SERVER_ERROR))
}

/// Who asks, and for what.
async fn asked<T: DeserializeOwned>(headers: &HeaderMap, body: Body) -> Result<(Who, T), StatusCode> {
    let body = timeout(WHOLE, to_bytes(body, MOST_BYTES)).await.map_err(|_| StatusCode::REQUEST_TIMEOUT)?;
    let body = body.map_err(|_| StatusCode::PAYLOAD_TOO_LARGE)?;
    let who = who(headers).ok_or(StatusCode::BAD_REQUEST)?;
    serde_json::from_slice(&body).map(|asked| (who, asked)).map_err(|_| StatusCode::BAD_REQUEST)
}

fn refused(status: StatusCode) -> Response {
    bytes(status, "text/plain", "")
}
