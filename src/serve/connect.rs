//! Connections: how many, and how patient one is with each.

use std::collections::HashMap;
use std::convert::Infallible;
use std::net::{IpAddr, SocketAddr};
use std::sync::{Arc, Mutex, PoisonError};
use std::time::Duration;

use axum::body::Body;
use axum::http::Request;
use hyper::body::Incoming;
use hyper::server::conn::http1;
use hyper::service::service_fn;
use hyper_util::rt::{TokioIo, TokioTimer};
use tokio::net::{TcpListener, TcpStream};
use tokio::time::sleep;

use super::guard::{Doors, Peer};

/// Connections at once: thirty phones with six each, which is what browsers open.
const MOST: usize = 192;
/// Connections at once from one address: two browsers' worth, and a few that are just closing.
const MOST_OF_ONE: usize = 32;
/// How long the beginning of a request may take, and how long a connection may wait for the next one.
const HEAD: Duration = Duration::from_secs(10);
/// Bytes of a request's beginning; browsers send one or two thousand.
const MOST_HEAD: usize = 16 << 10;
/// Lines of a request's beginning.
const MOST_HEADERS: usize = 64;
/// Pause where the system gives no more connections.
const PAUSE: Duration = Duration::from_millis(100);

/// How many connections there are, by address.
#[derive(Clone, Debug, Default)]
struct Counts(Arc<Mutex<HashMap<IpAddr, usize>>>);

/// One connection that counts until it is dropped.
struct Counted {
    counts: Counts,
    from: IpAddr,
}

impl Counts {
    fn one_more(&self, from: IpAddr) -> Option<Counted> {
        let mut counts = self.0.lock().unwrap_or_else(PoisonError::into_inner);
        if counts.values().sum::<usize>() >= MOST {
            return None;
        }
        let own = counts.entry(from).or_default();
        if *own >= MOST_OF_ONE {
            return None;
        }
        *own += 1;
        Some(Counted { counts: self.clone(), from })
    }
}

impl Drop for Counted {
    fn drop(&mut self) {
        let mut counts = self.counts.0.lock().unwrap_or_else(PoisonError::into_inner);
        if let Some(own) = counts.get_mut(&self.from) {
            *own -= 1;
            if *own == 0 {
                counts.remove(&self.from);
            }
        }
    }
}

/// Answers whoever comes, for ever. `came` is told every address that asks.
pub(super) async fn accept(
    listeners: Vec<TcpListener>,
    doors: Arc<Doors>,
    came: Arc<dyn Fn(IpAddr) + Send + Sync>,
) {
    let counts = Counts::default();
    let mut tasks = tokio::task::JoinSet::new();
    for listener in listeners {
        tasks.spawn(accept_on(listener, Arc::clone(&doors), counts.clone(), Arc::clone(&came)));
    }
    while tasks.join_next().await.is_some() {}
}

async fn accept_on(
    listener: TcpListener,
    doors: Arc<Doors>,
    counts: Counts,
    came: Arc<dyn Fn(IpAddr) + Send + Sync>,
) {
    loop {
        match listener.accept().await {
            Ok((stream, from)) => {
                if let Some(counted) = counts.one_more(from.ip()) {
                    came(from.ip());
                    tokio::spawn(serve(stream, from, Arc::clone(&doors), counted));
                }
            }
            Err(_) => sleep(PAUSE).await, // too many open files, or a phone that went away again
        }
    }
}

async fn serve(stream: TcpStream, from: SocketAddr, doors: Arc<Doors>, counted: Counted) {
    let _ = stream.set_nodelay(true);
    let answer = service_fn(|request: Request<Incoming>| {
        let doors = Arc::clone(&doors);
        async move { Ok::<_, Infallible>(doors.enter(request.map(Body::new), Peer(from.ip())).await) }
    });
    let mut http = http1::Builder::new();
    http.timer(TokioTimer::new()).header_read_timeout(HEAD).max_headers(MOST_HEADERS).max_buf_size(MOST_HEAD);
    let _ = http.serve_connection(TokioIo::new(stream), answer).await; // who breaks off is not told
    drop(counted);
}
