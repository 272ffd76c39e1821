//! Who gets in, and what goes out with every answer.
//!
//! In this order: without one of the two secrets as the first part of the path there is nothing, whatever else is asked, and the
//! answer is always the same; a `Host` that was not shown to anybody is misdirected (that is how a foreign page would reach this
//! server through a name of its own); what is sent has to come from the page itself (`Origin`). No path that a client asks for
//! ever becomes a path of a file.

use std::net::IpAddr;

use axum::Router;
use axum::body::Body;
use axum::http::uri::PathAndQuery;
use axum::http::{HeaderMap, HeaderName, HeaderValue, Method, Request, StatusCode, Uri};
use axum::response::Response;
use tower::Service;

use super::secret::Secrets;
use super::shrink;

/// Goes out with every answer. Scripts and styles come from here or not at all; nobody frames, caches or is told the link.
const HEADERS: [(&str, &str); 8] = [
    (
        "content-security-policy",
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; font-src 'self'; connect-src 'self'; base-uri 'none'; \
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
}

impl Doors {
    /// Answers a request.
    pub async fn enter(&self, request: Request<Body>, peer: Peer) -> Response {
        let small = shrink::understood(request.headers());
        let mut response = match self.router(&request) {
            Ok((router, uri)) => through(router, request, uri, peer).await,
            Err(status) => {
                let mut refused = Response::new(Body::empty());
                *refused.status_mut() = status;
                refused
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
    fn router(&self, request: &Request<Body>) -> Result<(Router, Uri), StatusCode> {
        let path = request.uri().path().strip_prefix('/').unwrap_or_default();
        let (secret, rest) = path.split_once('/').unwrap_or((path, ""));
        // both are compared whatever the first one says
        let router = match (self.secrets.helpers.is(secret), self.secrets.room.is(secret)) {
            (true, _) => &self.helpers,
            (_, true) => &self.room,
            _ => return Err(StatusCode::NOT_FOUND),
        };
        let host = one(request.headers(), "host").filter(|host| self.hosts.iter().any(|own| own == host));
        let Some(host) = host else { return Err(StatusCode::MISDIRECTED_REQUEST) };
        let changes = !matches!(*request.method(), Method::GET | Method::HEAD);
        if changes && one(request.headers(), "origin") != Some(format!("http://{host}").as_str()) {
            return Err(StatusCode::FORBIDDEN);
        }
        if !path.contains('/') {
            return Err(StatusCode::NOT_FOUND); // links end with a slash, so that what the page asks for lies below it
        }
        let rest = PathAndQuery::try_from(format!("/{rest}")).map_err(|_| StatusCode::NOT_FOUND)?;
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
