//! A small event, photos of its wall, and a server for it that answers over real connections.

use std::io::{Read, Write};
use std::net::{Ipv4Addr, SocketAddr, TcpStream};
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::sync::atomic::{AtomicU64, Ordering};
use std::time::Duration;

use everysquare::cli::sample;
use everysquare::plan::Folder;
use everysquare::serve::secret::Secrets;
use everysquare::serve::{Clock, Evening, Server};
use everysquare::words::Words;
use serde_json::Value;
use tokio::runtime::Runtime;

use crate::common::everysquare;

/// Seconds since 1970 as these tests have it; every check gets a name of its own.
static NOW: AtomicU64 = AtomicU64::new(1_800_000_000);

pub fn clock() -> Clock {
    Clock { now: || NOW.fetch_add(1, Ordering::Relaxed), name: || "2027-01-15_08.00.00".to_owned() }
}

/// A small event: the sample's picture cut 5 × 4, printed.
pub fn event(place: &Path) -> PathBuf {
    let picture = place.join("balloons.png");
    std::fs::write(&picture, sample::PICTURE_PNG).unwrap();
    let folder = place.join("evening");
    let (at, picture) = (folder.to_str().unwrap(), picture.to_str().unwrap());
    let made =
        everysquare(&["new", at, "--picture", picture, "--columns", "5", "--rows", "4", "--tag", "K7M"]);
    assert_eq!(made.0, 0, "{}", made.2);
    assert_eq!(everysquare(&["print", at]).0, 0);
    folder
}

/// A JPEG file without its metadata (APP1, ITU-T T.81, B.2.4.6), by which a made photo is known: for the program it is a real one.
pub fn as_real(made: &[u8]) -> Vec<u8> {
    let mut bytes = made[..2].to_vec();
    let mut at = 2;
    while made[at + 1] != 0xda {
        let end = at + 2 + usize::from(u16::from_be_bytes([made[at + 2], made[at + 3]]));
        if made[at + 1] != 0xe1 {
            bytes.extend(&made[at..end]);
        }
        at = end;
    }
    bytes.extend(&made[at..]);
    bytes
}

/// A made photo of its wall that passes for a real one.
pub fn photo(folder: &Path, seed: &str, more: &[&str]) -> Vec<u8> {
    as_real(&practice_photo(folder, seed, more))
}

/// A practice photo of its wall.
pub fn practice_photo(folder: &Path, seed: &str, more: &[&str]) -> Vec<u8> {
    let at = folder.to_str().unwrap();
    let words = [&["rehearse", at, "--seed", seed, "--width", "2400", "--height", "1800"], more].concat();
    let (code, _, err) = everysquare(&words);
    assert_eq!(code, 0, "{err}");
    std::fs::read(folder.join(format!("rehearsals/{seed}.jpg"))).unwrap()
}

/// A server that runs until it is dropped.
pub struct Running {
    pub _runtime: Runtime,
    pub at: SocketAddr,
    pub helpers: String,
    pub room: String,
}

/// What came back.
pub struct Answer {
    pub status: u16,
    pub head: String,
    pub body: Vec<u8>,
}

impl Answer {
    pub fn json(&self) -> Value {
        serde_json::from_slice(&self.body).unwrap()
    }

    pub fn say(&self) -> String {
        self.json()["say"].as_str().unwrap().to_owned()
    }
}

impl Running {
    pub fn start(folder: &Path, since: Option<&str>, keep_photos: bool) -> Self {
        Self::start_at(folder, None, since, keep_photos)
    }

    pub fn start_at(folder: &Path, lan: Option<Ipv4Addr>, since: Option<&str>, keep_photos: bool) -> Self {
        let evening =
            Evening::open(Folder::at(folder), Words::english(), clock(), since, keep_photos).unwrap();
        let runtime = Runtime::new().unwrap();
        let server =
            runtime.block_on(Server::bind(Arc::new(evening), lan, 0, Secrets::new(1_800_000_000))).unwrap();
        let (link, room) = (server.link().to_owned(), server.room_link().to_owned());
        let parts: Vec<&str> = link.split('/').collect();
        let at = parts[2].parse().unwrap();
        let secret = |link: &str| link.split('/').nth(3).unwrap().to_owned();
        let (helpers, room) = (secret(&link), secret(&room));
        runtime.spawn(server.run(Arc::new(|_| {})));
        Self { _runtime: runtime, at, helpers, room }
    }

    pub fn connect(&self) -> TcpStream {
        let stream = TcpStream::connect(self.at).unwrap();
        stream.set_read_timeout(Some(Duration::from_secs(120))).unwrap();
        stream
    }

    /// Sends a request's beginning and its body, and reads until the connection is closed.
    pub fn ask(&self, head: &str, body: &[u8]) -> Answer {
        let mut stream = self.connect();
        let lengths =
            if body.is_empty() { String::new() } else { format!("content-length: {}\r\n", body.len()) };
        stream.write_all(format!("{head}\r\n{lengths}connection: close\r\n\r\n").as_bytes()).unwrap();
        stream.write_all(body).unwrap();
        answer(stream)
    }

    pub fn get(&self, path: &str) -> Answer {
        self.ask(&format!("GET {path} HTTP/1.1\r\nhost: {}", self.at), b"")
    }

    pub fn wall(&self) -> Value {
        self.get(&format!("/{}/wall.json", self.helpers)).json()
    }

    /// Posts JSON as the phone `who`.
    pub fn post(&self, path: &str, who: &str, body: &str) -> Answer {
        let (helpers, at) = (&self.helpers, self.at);
        let head = format!(
            "POST /{helpers}/{path} HTTP/1.1\r\nhost: {at}\r\norigin: http://{at}\r\nx-helper: {who}"
        );
        self.ask(&head, body.as_bytes())
    }

    pub fn wall_of(&self, who: &str) -> Value {
        self.ask(
            &format!("GET /{}/wall.json HTTP/1.1\r\nhost: {}\r\nx-helper: {who}", self.helpers, self.at),
            b"",
        )
        .json()
    }

    pub fn send(&self, photo: &[u8], more: &str) -> Answer {
        let (helpers, at) = (&self.helpers, self.at);
        self.ask(&format!("POST /{helpers}/photo HTTP/1.1\r\nhost: {at}\r\norigin: http://{at}{more}"), photo)
    }
}

pub fn answer(mut stream: TcpStream) -> Answer {
    let mut all = Vec::new();
    stream.read_to_end(&mut all).unwrap();
    let end = all.windows(4).position(|four| four == b"\r\n\r\n").unwrap();
    let head = String::from_utf8(all[..end].to_vec()).unwrap();
    let status = head.split(' ').nth(1).unwrap().parse().unwrap();
    Answer { status, head: head.to_lowercase(), body: all[end + 4..].to_vec() }
}

pub fn checks(folder: &Path) -> Vec<PathBuf> {
    let found = std::fs::read_dir(folder.join("checks")).into_iter().flatten();
    let mut checks: Vec<PathBuf> = found.map(|entry| entry.unwrap().path()).collect();
    checks.sort();
    checks
}

pub fn states(wall: &Value) -> Vec<String> {
    let cells = wall["cells"].as_array().unwrap().iter();
    cells
        .map(|cell| format!("{} {} {} {}", cell["label"], cell["state"], cell["found"], cell["turn"]))
        .collect()
}
