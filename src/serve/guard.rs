//! Who gets in, and what goes out with every answer.
//!
//! In this order: without one of the two secrets as the first part of the path there is one page that says nothing but that the link
//! does not work, whatever else is asked, always the same; a `Host` that was not shown to anybody is misdirected (that is how a
//! foreign page would reach this server through a name of its own); what is sent has to come from the page itself (`Origin`). No path
//! that a client asks for ever becomes a path of a file.

use std::net::IpAddr;

use axum::Router;
use axum::body::Body;
use axum::http::uri::PathAndQuery;
use axum::http::{HeaderMap, HeaderName, HeaderValue, Method, Request, StatusCode, Uri};
use axum::response::Response;
use tower::Service;

use super::reply;
use super::secret::Secrets;
use super::shrink;

/// Goes out with every answer. Scripts and styles come from here or not at all; nobody frames, caches or is told the link.
const HEADERS: [(&str, &str); 8] = [
    (
        "content-security-policy",
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' blob:; font-src 'self'; connect-src 'self'; base-uri 'none'; \
         form-action 'none'; frame-ancestors 'none'; require-trusted-types-for 'script'; trusted-types 'none'",
    ),
    ("x-frame-options", "DENY"),
    ("x-content-type-options", "nosniff"),
    ("referrer-policy", "no-referrer"),
    ("cache-control", "no-store"),
    ("cross-origin-resource-policy", "same-origin"),
    ("permissions-policy", "camera=(), microphone=(), geolocation=()"),
    ("x-robots-tag", "noindex"),
];

/// Whose computer asks.
#[derive(Copy, Clone, Debug, PartialEq, Eq)]
pub struct Peer(pub IpAddr);

/// The two doors.
#[derive(Clone, Debug)]
pub struct Doors {
    /// What opens them.
    pub secrets: Secrets,
    /// What may stand in `Host`, with the port: the addresses that were shown.
    pub hosts: Vec<String>,
    /// Behind the helpers' door.
    pub helpers: Router,
    /// Behind the room's.
    pub room: Router,
    /// The page that is all there is without a secret.
    pub nowhere: String,
}

/// What is answered instead of what was asked for.
enum Instead {
    /// A status and nothing else.
    Refused(StatusCode),
    /// The link with its last slash.
    Moved(String),
}

impl Doors {
    /// Answers a request.
    pub async fn enter(&self, request: Request<Body>, peer: Peer) -> Response {
        let small = shrink::understood(request.headers());
        let mut response = match self.router(&request) {
            Ok((router, uri)) => through(router, request, uri, peer).await,
            Err(Instead::Refused(StatusCode::NOT_FOUND)) => {
                reply::bytes(StatusCode::NOT_FOUND, "text/html; charset=utf-8", self.nowhere.clone())
            }
            Err(Instead::Refused(status)) => reply::bytes(status, "text/plain", ""),
            Err(Instead::Moved(to)) => {
                let mut moved = reply::bytes(StatusCode::PERMANENT_REDIRECT, "text/plain", "");
                if let Ok(to) = HeaderValue::from_str(&to) {
                    moved.headers_mut().insert("location", to);
                }
                moved
            }
        };
        if small {
            response = shrink::shrunk(response).await;
        }
        for (name, value) in HEADERS {
            response.headers_mut().insert(HeaderName::from_static(name), HeaderValue::from_static(value));
        }
        response
    }

    /// Which router answers, and what it is asked; or what is answered instead.
    fn router(&self, request: &Request<Body>) -> Result<(Router, Uri), Instead> {
        let path = request.uri().path().strip_prefix('/').unwrap_or_default();
        let (secret, rest) = path.split_once('/').unwrap_or((path, ""));
        // both are compared whatever the first one says
        let router = match (self.secrets.helpers.is(secret), self.secrets.room.is(secret)) {
            (true, _) => &self.helpers,
            (_, true) => &self.room,
            _ => return Err(Instead::Refused(StatusCode::NOT_FOUND)),
        };
        let host = one(request.headers(), "host").filter(|host| self.hosts.iter().any(|own| own == host));
        let Some(host) = host else {
            return Err(Instead::Refused(StatusCode::MISDIRECTED_REQUEST));
        };
        let changes = !matches!(*request.method(), Method::GET | Method::HEAD);
        if changes && one(request.headers(), "origin") != Some(format!("http://{host}").as_str()) {
            return Err(Instead::Refused(StatusCode::FORBIDDEN));
        }
        if !path.contains('/') {
            return Err(Instead::Moved(format!("/{secret}/"))); // messengers and typing drop the slash, below which all of the page lies
        }
        let rest = PathAndQuery::try_from(format!("/{rest}"))
            .map_err(|_| Instead::Refused(StatusCode::NOT_FOUND))?;
        Ok((router.clone(), Uri::from(rest)))
    }
}

async fn through(mut router: Router, mut request: Request<Body>, uri: Uri, peer: Peer) -> Response {
    *request.uri_mut() = uri;
    request.extensions_mut().insert(peer);
    match Service::call(&mut router, request).await {
        Ok(response) => response,
        Err(never) => match never {},
    }
}

/// A header that stands there exactly once.
fn one<'a>(headers: &'a HeaderMap, name: &str) -> Option<&'a str> {
    let mut values = headers.get_all(name).iter();
    let only = values.next()?.to_str().ok()?;
    values.next().is_none().then_some(only)
}
