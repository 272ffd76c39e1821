//! Squares that lie on a table or a floor: `POST table`, the body is a photo's file as for `POST photo`; `GET table/7`, its picture.
//!
//! | header | |
//! |---|---|
//! | `X-Helper` | the phone's token: each phone has a table of its own |
//! | `X-Table: first` | forgets the photos before this one |
//!
//! | answer | when |
//! |---|---|
//! | 200 | what lies in this phone's photos so far |
//! | 400 | no token, or the connection broke off |
//! | 422 | no squares; why, and what to do |
//! | 408, 413, 503 | as for `POST photo` |
//!
//! Nothing of it is kept when the program ends, and nothing changes on the wall.

use std::sync::Arc;

use axum::body::Body;
use axum::extract::{Path, State};
use axum::http::{HeaderMap, StatusCode};
use axum::response::Response;
use serde_json::{Value, json};

use crate::check::lying::Seen;
use crate::judge::found::Found;
use crate::photo::Photo;
use crate::plan::Cell;
use crate::plan::groups::Groups;
use crate::report::found::{amiss, how_many, of_groups};

use super::evening::Evening;
use super::limits::MOST_PIXELS;
use super::refusal::Refusal;
use super::reply::{self, bytes, nothing};
use super::shared::Shared;
use super::upload::{JPEG, received};
use super::{marks, said};

/// Takes a photo of squares that lie somewhere.
pub(super) async fn table(State(shared): State<Arc<Shared>>, headers: HeaderMap, body: Body) -> Response {
    let (sent, held) = match received(&shared, &headers, body).await {
        Ok(received) => received,
        Err(refused) => return refused,
    };
    let Some(who) = marks::who(&headers) else { return bytes(StatusCode::BAD_REQUEST, "text/plain", "") };
    let evening = Arc::clone(&shared.evening);
    let first = headers.get("x-table").is_some_and(|value| value == "first");
    match shared.work.read(held, move || evening.lying(&sent)).await {
        Ok(seen) => {
            let small = seen.small;
            let (number, photos) = shared.tables.add(who, first, seen);
            reply::json(StatusCode::OK, &told(&shared.evening, number, &photos, small))
        }
        Err(refused) => {
            let said = said::no_squares(&refused, &shared.evening.words);
            said::answer(StatusCode::UNPROCESSABLE_ENTITY, &said)
        }
    }
}

/// Answers with the picture of a phone's last photo.
pub(super) async fn picture(State(shared): State<Arc<Shared>>, Path(number): Path<String>) -> Response {
    let picture = number.parse().ok().and_then(|number| shared.tables.picture(number));
    picture.map_or_else(nothing, |picture| bytes(StatusCode::OK, JPEG, picture))
}

impl Evening {
    /// Squares that lie anywhere in a photo's file.
    fn lying(&self, file: &[u8]) -> Result<Seen, Refusal> {
        let photo = Photo::open_within(file, MOST_PIXELS).map_err(Refusal::Photo)?;
        let read = self.reader.scattered(&photo.luma).map_err(Refusal::Read)?;
        Seen::of(&photo, &read, &self.printed.grid).map_err(Refusal::Draw)
    }
}

/// What lies here, for a phone: how many, what is amiss, and the places of those that are here: what of
/// that waits to be hung, the page knows from the wall as it stands.
fn told(evening: &Evening, number: u64, photos: &[Vec<Cell>], small: bool) -> Value {
    let (grid, words) = (&evening.printed.grid, &evening.words);
    let found = Found::of(photos, grid);
    let shared = evening.folder.groups_text().and_then(|text| Groups::from_json(&text, grid).ok());
    let mut lines = amiss(&found, grid, words);
    lines.extend(shared.iter().flat_map(|shared| of_groups(&found, shared, grid, words)));
    if small && !found.lacking.is_empty() {
        lines.push(words.say("serve-find-closer", &[]));
    }
    json!({
        "number": number,
        "photos": words.say("serve-find-photos", &[("count", photos.len().into())]),
        "say": how_many(&found, words),
        "lines": lines,
        "here": found.here.iter().map(|home| grid.index(*home)).collect::<Vec<_>>(),
    })
}
