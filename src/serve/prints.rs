//! Pages of one spot, printed from the helpers' page when they are needed: `GET print/17/square`.

use std::sync::Arc;

use axum::extract::{Path, State};
use axum::http::{HeaderValue, StatusCode};
use axum::response::Response;

use crate::plan::settings::Choice;
use crate::print::one::One;

use super::desk::NotPrinted;
use super::reply::{bytes, nothing};
use super::shared::{Shared, at};

/// Answers with the page, to be shown and printed by the browser.
pub(super) async fn print(
    State(shared): State<Arc<Shared>>,
    Path((place, kind)): Path<(String, String)>,
) -> Response {
    let (Some(cell), Some(one)) = (at(&shared, &place), One::named(&kind)) else { return nothing() };
    let for_page = Arc::clone(&shared);
    let made = tokio::task::spawn_blocking(move || for_page.evening.page(cell, one)).await;
    let words = &shared.evening.words;
    let told = |status: StatusCode, told: String| bytes(status, "text/plain; charset=utf-8", told);
    match made {
        Ok(Ok(document)) => {
            let mut response = bytes(StatusCode::OK, "application/pdf", document.bytes);
            let name = format!("inline; filename=\"{}-{kind}.pdf\"", shared.evening.printed.grid.label(cell));
            if let Ok(name) = HeaderValue::from_str(&name) {
                response.headers_mut().insert("content-disposition", name);
            }
            response
        }
        Ok(Err(NotPrinted::Because(sentence))) => told(StatusCode::CONFLICT, sentence.tell(words)),
        Ok(Err(NotPrinted::Busy)) => {
            told(StatusCode::SERVICE_UNAVAILABLE, words.say("serve-print-busy", &[]))
        }
        Ok(Err(NotPrinted::Nothing)) => nothing(),
        // whatever made it stumble is said to nobody, as for photos
        Err(_) => told(StatusCode::INTERNAL_SERVER_ERROR, words.say("serve-print-busy", &[])),
    }
}
