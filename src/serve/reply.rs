//! Answers as bytes.

use axum::body::Body;
use axum::http::{HeaderValue, StatusCode};
use axum::response::Response;
use serde_json::Value;

/// An answer in JSON.
pub(super) fn json(status: StatusCode, value: &Value) -> Response {
    bytes(status, "application/json", value.to_string().into_bytes())
}

/// An answer of bytes of a kind.
pub(super) fn bytes(status: StatusCode, kind: &'static str, bytes: impl Into<Body>) -> Response {
    let mut response = Response::new(bytes.into());
    *response.status_mut() = status;
    response.headers_mut().insert("content-type", HeaderValue::from_static(kind));
    response
}

/// That there is nothing.
pub(super) fn nothing() -> Response {
    bytes(StatusCode::NOT_FOUND, "text/plain", "")
}
