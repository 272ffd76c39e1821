//! Answers in fewer bytes: text is compressed (gzip, RFC 1952) for whoever says that it understands that. A page's secret stands in no
//! answer, so the length of one gives nothing away.

use std::io::Write;

use axum::body::Body;
use axum::http::header::{ACCEPT_ENCODING, CONTENT_ENCODING, CONTENT_LENGTH, CONTENT_TYPE, VARY};
use axum::http::{HeaderMap, HeaderValue};
use axum::response::Response;
use flate2::Compression;
use flate2::write::GzEncoder;
use http_body_util::BodyExt;

/// Kinds of answers that are text and have an end.
const KINDS: [&str; 5] = ["text/html", "text/css", "text/javascript", "application/json", "image/svg+xml"];

/// Whether whoever asks understands gzip.
pub(super) fn understood(headers: &HeaderMap) -> bool {
    let all = headers.get_all(ACCEPT_ENCODING).iter().filter_map(|value| value.to_str().ok());
    let mut codings = all.flat_map(|value| value.split(','));
    codings.any(|coding| {
        let mut parts = coding.split(';').map(str::trim);
        let gzip = parts.next() == Some("gzip");
        let refused = parts.any(|weight| weight.strip_prefix("q=").is_some_and(|q| q.parse() == Ok(0.0)));
        gzip && !refused
    })
}

/// The same answer, compressed where it is text.
pub(super) async fn shrunk(response: Response) -> Response {
    let kind = response.headers().get(CONTENT_TYPE).and_then(|kind| kind.to_str().ok()).unwrap_or_default();
    if !KINDS.iter().any(|text| kind.starts_with(text)) || response.headers().contains_key(CONTENT_ENCODING) {
        return response;
    }
    let (mut head, body) = response.into_parts();
    let Ok(whole) = body.collect().await.map(http_body_util::Collected::to_bytes) else {
        return Response::from_parts(head, Body::empty()); // answers of text are in memory: they do not break off
    };
    let mut encoder = GzEncoder::new(Vec::new(), Compression::default());
    let Ok(small) = encoder.write_all(&whole).and_then(|()| encoder.finish()) else {
        return Response::from_parts(head, Body::from(whole));
    };
    head.headers.insert(CONTENT_ENCODING, HeaderValue::from_static("gzip"));
    head.headers.insert(VARY, HeaderValue::from_static("accept-encoding"));
    head.headers.remove(CONTENT_LENGTH);
    Response::from_parts(head, Body::from(small))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn gzip_is_sent_to_whoever_asks_for_it() {
        let asked = |value: &'static str| {
            let mut headers = HeaderMap::new();
            headers.insert(ACCEPT_ENCODING, HeaderValue::from_static(value));
            understood(&headers)
        };
        assert!(asked("gzip") && asked("br, gzip;q=0.5") && asked("deflate,gzip"));
        assert!(!asked("br") && !asked("gzip;q=0") && !asked("") && !asked("xgzip"));
        assert!(!understood(&HeaderMap::new()));
    }
}
