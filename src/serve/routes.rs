//! What there is behind a secret.
//!
//! | path | helpers | room | answer |
//! |---|---|---|---|
//! | `/` | yes | yes | the page |
//! | `/phone.js` … | yes | yes | its styles and script |
//! | `/wall.json` | all that is to be done | counts | the wall as it stands |
//! | `/live` | yes | yes | the number of the standing, for helpers that of their list too, whenever one changes; for helpers, as `reading`, how far a photo is (server-sent events) |
//! | `/wall.jpg` | yes | yes | the wall as it looks |
//! | `/marked.jpg`, `/marked-large.jpg` | yes | | the last photo, marked |
//! | `/accent.css` | yes | | the evening's warm colour |
//! | `/cell/17`, `/piece/17` | yes | | what hangs in a cell; what belongs there |
//! | `/print/17/square` | yes | | a page of that spot to print: see `prints` |
//! | `/picture.jpg` | | yes | the picture that is being drawn |
//! | `/code.svg` | where phones are let in | this computer only | the helpers' link as a code |
//! | `POST /photo` | yes | | see [`super::upload`] |
//! | `POST /table`, `/table/7` | yes | | squares that lie somewhere, and their picture: see `table` |
//! | `POST /step`, `/piece`, `/undo` | yes | | see `marks` |

use std::convert::Infallible;
use std::sync::Arc;
use std::time::Duration;

use axum::Router;
use axum::extract::{Extension, Path, State};
use axum::http::{HeaderMap, StatusCode};
use axum::response::sse::{Event, KeepAlive, Sse};
use axum::response::{IntoResponse, Response};
use axum::routing::{get, post};
use tokio_stream::StreamExt;
use tokio_stream::wrappers::WatchStream;

use crate::plan::code::{LinkCode, QUIET_ZONE};
use crate::report::letters::LETTERS;

use super::answer::{room_json, wall_json};
use super::evening::Progress;
use super::guard::Peer;
use super::limits::MOST_BYTES;
use super::marks;
use super::pages;
use super::prints;
use super::reply::{bytes, json, nothing};
use super::shared::{Shared, at};
use super::table;
use super::upload::{self, JPEG};

const WOFF2: &str = "font/woff2";
const HTML: &str = "text/html; charset=utf-8";
/// So often a line goes to pages that wait: phones that went away are noticed, and nothing in between closes the connection.
const ALIVE: Duration = Duration::from_secs(15);

/// What helpers get.
pub(super) fn helpers(shared: Arc<Shared>) -> Router {
    let page = pages::phone(&shared.evening.printed.name, &shared.evening.words, shared.evening.keep_photos);
    both(page)
        .route("/live", get(live_list))
        .route("/marked.jpg", get(marked))
        .route("/marked-large.jpg", get(marked_large))
        .route("/accent.css", get(accent))
        .route("/code.svg", get(code_for_helpers))
        .route("/step", post(marks::step))
        .route("/piece", post(marks::piece))
        .route("/undo", post(marks::undo))
        .route("/wall.json", get(helpers_wall))
        .route("/cell/{place}", get(cell))
        .route("/piece/{place}", get(piece))
        .route("/print/{place}/{kind}", get(prints::print))
        .route("/photo", post(upload::photo))
        .route("/table", post(table::table))
        .route("/table/{number}", get(table::picture))
        .with_state(shared)
}

/// What the room gets.
pub(super) fn room(shared: Arc<Shared>) -> Router {
    let page = pages::room(&shared.evening.printed.name, &shared.evening.words);
    both(page)
        .route("/live", get(live))
        .route("/wall.json", get(room_wall))
        .route("/picture.jpg", get(original))
        .route("/code.svg", get(code))
        .with_state(shared)
}

fn both(page: String) -> Router<Arc<Shared>> {
    let page: Arc<str> = page.replace("{most-bytes}", &MOST_BYTES.to_string()).into();
    let mut router = Router::new()
        .route("/", get(move || async move { bytes(StatusCode::OK, HTML, page.to_string()) }))
        .route("/wall.jpg", get(wall_picture));
    for (name, kind, text) in pages::FILES {
        router =
            router.route(&format!("/{name}"), get(move || async move { bytes(StatusCode::OK, kind, text) }));
    }
    for (name, file) in LETTERS {
        router =
            router.route(&format!("/{name}"), get(move || async move { bytes(StatusCode::OK, WOFF2, file) }));
    }
    router
}

async fn helpers_wall(State(shared): State<Arc<Shared>>, headers: HeaderMap) -> Response {
    let mut told = wall_json(&shared.evening, &shared.evening.standing(), marks::who(&headers).as_ref());
    told["code"] = shared.for_phones.into();
    json(StatusCode::OK, &told)
}

async fn room_wall(State(shared): State<Arc<Shared>>, Extension(peer): Extension<Peer>) -> Response {
    let mut told = room_json(&shared.evening, &shared.evening.standing());
    told["code"] = shows_code(&shared, peer).into();
    json(StatusCode::OK, &told)
}

/// Whether the helpers' code is shown: to this computer's own screen only, where whoever reads the room's link elsewhere gets
/// nothing more by it.
fn shows_code(shared: &Shared, peer: Peer) -> bool {
    shared.for_phones && peer.0.is_loopback()
}

async fn wall_picture(State(shared): State<Arc<Shared>>) -> Response {
    let standing = shared.evening.standing();
    let drawn = tokio::task::spawn_blocking(move || standing.map().to_vec()).await.unwrap_or_default();
    bytes(StatusCode::OK, JPEG, drawn)
}

async fn original(State(shared): State<Arc<Shared>>) -> Response {
    bytes(StatusCode::OK, JPEG, shared.evening.original.clone())
}

async fn marked(State(shared): State<Arc<Shared>>) -> Response {
    let standing = shared.evening.standing();
    let drawn = tokio::task::spawn_blocking(move || standing.marked_small().to_vec()).await;
    picture(drawn.unwrap_or_default())
}

async fn marked_large(State(shared): State<Arc<Shared>>) -> Response {
    picture(shared.evening.standing().marked.clone())
}

/// A JPEG file, if there is one.
fn picture(bytes_of_it: Vec<u8>) -> Response {
    if bytes_of_it.is_empty() { nothing() } else { bytes(StatusCode::OK, JPEG, bytes_of_it) }
}

async fn accent(State(shared): State<Arc<Shared>>) -> Response {
    bytes(StatusCode::OK, "text/css; charset=utf-8", shared.evening.accent.clone())
}

async fn cell(State(shared): State<Arc<Shared>>, Path(place): Path<String>) -> Response {
    let standing = shared.evening.standing();
    let picture = at(&shared, &place).and_then(|cell| standing.picture.cell(cell).ok());
    picture.map_or_else(nothing, |picture| bytes(StatusCode::OK, JPEG, picture))
}

async fn piece(State(shared): State<Arc<Shared>>, Path(place): Path<String>) -> Response {
    let index = at(&shared, &place).map(|cell| shared.evening.printed.grid.index(cell));
    let picture = index.and_then(|index| shared.evening.pieces.get(index).cloned());
    picture.map_or_else(nothing, |picture| bytes(StatusCode::OK, JPEG, picture))
}

/// Tells the number of the standing whenever it changes.
async fn live(State(shared): State<Arc<Shared>>) -> Response {
    let numbers = WatchStream::new(shared.evening.watch());
    let events = numbers.map(|number| Ok::<_, Infallible>(Event::default().data(number.to_string())));
    Sse::new(events).keep_alive(KeepAlive::new().interval(ALIVE)).into_response()
}

/// Tells the numbers of the standing and of the helpers' list whenever one changes, and how far the photo is that is being read.
async fn live_list(State(shared): State<Arc<Shared>>) -> Response {
    let numbers = WatchStream::new(shared.evening.watch_shared());
    let numbers = numbers.map(|(number, list)| Event::default().data(format!("{number}.{list}")));
    let parts = WatchStream::from_changes(shared.evening.watch_progress());
    let parts = parts.map(|Progress { photo, percent }| {
        Event::default().event("reading").data(format!("{photo} {percent}"))
    });
    let events = numbers.merge(parts).map(Ok::<_, Infallible>);
    Sse::new(events).keep_alive(KeepAlive::new().interval(ALIVE)).into_response()
}

/// The helpers' link on the room's page.
async fn code(State(shared): State<Arc<Shared>>, Extension(peer): Extension<Peer>) -> Response {
    if shows_code(&shared, peer) { code_of(&shared) } else { nothing() }
}

/// The helpers' link for the next helper: whoever asks has it.
async fn code_for_helpers(State(shared): State<Arc<Shared>>) -> Response {
    if shared.for_phones { code_of(&shared) } else { nothing() }
}

fn code_of(shared: &Shared) -> Response {
    LinkCode::new(&shared.link)
        .map_or_else(nothing, |code| bytes(StatusCode::OK, "image/svg+xml", svg(&code)))
}

/// A code as a picture, black on white, with its quiet zone.
fn svg(code: &LinkCode) -> String {
    let side = code.side();
    let dark = (0..side * side).map(|at| (at % side, at / side)).filter(|(x, y)| code.dark(*x, *y));
    let path: String = dark.map(|(x, y)| format!("M{} {}h1v1h-1z", x + QUIET_ZONE, y + QUIET_ZONE)).collect();
    let whole = side + 2 * QUIET_ZONE;
    format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {whole} {whole}\" shape-rendering=\"crispEdges\">\
         <path fill=\"#fff\" d=\"M0 0h{whole}v{whole}H0z\"/><path d=\"{path}\"/></svg>"
    )
}
