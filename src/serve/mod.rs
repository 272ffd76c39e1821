//! The helper's page: a phone photographs the wall and reads what to do; a projector shows the wall grow.
//!
//! ```text
//!   phone ─▶ connect ─▶ guard ─▶ routes ─┬─▶ pages                      written by hand, embedded
//!            how many,  secret,          ├─▶ answer, pictures           the wall as it stands
//!            how long   host, origin     ├─▶ live                       whenever it changes
//!                                        ├─▶ upload ─▶ work ─▶ evening ─▶ keep     photo, reading, check, folder
//!                                        │                       known: what each cell last showed; list: what is to be done
//!                                        ├─▶ table                      squares that lie somewhere
//!                                        └─▶ marks ─▶ together                      ticks, claims, pieces handed out
//! ```
//!
//! Promised:
//! - Nothing without the secret in the link ([`secret`], [`guard`]), nothing from elsewhere, no photo that leaves the room; photos are not
//!   kept unless that is asked for, and then without what the camera wrote beside the picture.
//! - Memory and time are bounded whatever is sent (`connect`, [`upload`], [`work`]).
//! - Every accepted photo is a whole check in the folder before its answer goes out, so a restart continues from it (`keep`).
//! - The newest photo of a cell wins, whoever took it ([`known`]).
//!
//! The link is plain http: whoever listens in the same Wi-Fi can read along. What is there to read are pictures of a wall.
//!
//! This module has no clock of its own: the caller gives one.

pub mod address;
mod answer;
mod connect;
pub mod desk;
pub mod evening;
pub mod guard;
mod keep;
pub mod known;
pub mod levels;
pub mod limits;
pub mod list;
pub mod lying;
mod marks;
mod pages;
pub mod pictures;
mod prints;
pub mod refusal;
mod reply;
pub mod routes;
mod said;
pub mod secret;
pub mod shared;
mod shrink;
mod table;
pub mod together;
pub mod upload;
pub mod work;

use std::net::{IpAddr, Ipv4Addr, SocketAddr};
use std::sync::Arc;

use thiserror::Error;
use tokio::net::TcpListener;

use crate::display::JpegError;
use crate::picture::PictureError;
use crate::plan::folder::FolderError;
use crate::words::{Sentence, Tell, told_in_english};

pub use evening::Evening;
use guard::Doors;
use lying::Tables;
use secret::Secrets;
use shared::Shared;
use work::Work;

/// The port that links need not name (RFC 9110, 4.2.1).
const HTTP_PORT: u16 = 80;

/// What tells the time.
#[derive(Copy, Clone, Debug)]
pub struct Clock {
    /// Seconds since 1970.
    pub now: fn() -> u64,
    /// The name of a check's folder made now.
    pub name: fn() -> String,
}

/// Why the page cannot be served.
#[derive(Debug, Error)]
pub enum ServeError {
    /// The folder.
    Folder(#[from] FolderError),
    /// The picture.
    Picture(#[from] PictureError),
    /// A piece that cannot be drawn.
    Piece(#[from] JpegError),
    /// Somebody listens there already.
    PortTaken(u16),
    /// The system refuses.
    Refused(SocketAddr, String),
}

told_in_english!(ServeError);

impl Tell for ServeError {
    fn sentence(&self) -> Sentence {
        match self {
            Self::Folder(error) => error.sentence(),
            Self::Picture(error) => error.sentence(),
            Self::Piece(error) => error.sentence(),
            Self::PortTaken(port) => Sentence::new("serve-error-port-taken").with("port", port.to_string()),
            Self::Refused(at, said) => {
                Sentence::new("serve-error-refused").with("at", at.to_string()).with("said", said.as_str())
            }
        }
    }
}

/// A server that has its ports and answers once it runs.
pub struct Server {
    listeners: Vec<TcpListener>,
    doors: Arc<Doors>,
    shared: Arc<Shared>,
    room_link: String,
}

impl Server {
    /// Takes the port on this computer itself and, where there is one, at its address in the room's network. Port 0 takes any.
    ///
    /// # Errors
    /// [`ServeError`] where the port is taken or refused.
    pub async fn bind(
        evening: Arc<Evening>,
        lan: Option<Ipv4Addr>,
        port: u16,
        secrets: Secrets,
    ) -> Result<Self, ServeError> {
        let inner = listen(SocketAddr::new(Ipv4Addr::LOCALHOST.into(), port)).await?;
        let port = inner.local_addr().map_or(port, |own| own.port());
        let mut listeners = vec![inner];
        if let Some(lan) = lan {
            listeners.push(listen(SocketAddr::new(lan.into(), port)).await?);
        }
        let outer = lan.unwrap_or(Ipv4Addr::LOCALHOST);
        let mut hosts = vec![format!("{}:{port}", Ipv4Addr::LOCALHOST), format!("localhost:{port}")];
        hosts.extend(lan.map(|lan| format!("{lan}:{port}")));
        if port == HTTP_PORT {
            let bare: Vec<String> =
                hosts.iter().filter_map(|host| Some(host.rsplit_once(':')?.0.to_owned())).collect();
            hosts.extend(bare); // browsers leave it out
        }
        let link = format!("http://{outer}:{port}/{}/", secrets.helpers.shown());
        let room_link = format!("http://{}:{port}/{}/", Ipv4Addr::LOCALHOST, secrets.room.shown());
        let shared = Arc::new(Shared {
            evening,
            work: Work::default(),
            tables: Tables::default(),
            link,
            for_phones: lan.is_some(),
        });
        let (helpers, room) = (routes::helpers(Arc::clone(&shared)), routes::room(Arc::clone(&shared)));
        let doors = Arc::new(Doors { secrets, hosts, helpers, room, nowhere: pages::nowhere() });
        Ok(Self { listeners, doors, shared, room_link })
    }

    /// The link for helpers' phones.
    #[must_use]
    pub fn link(&self) -> &str {
        &self.shared.link
    }

    /// The link for this computer's own screen.
    #[must_use]
    pub fn room_link(&self) -> &str {
        &self.room_link
    }

    /// Who works for it, to wait for the last photo.
    #[must_use]
    pub fn work(&self) -> Work {
        self.shared.work.clone()
    }

    /// Answers for ever; ends when it is dropped. `came` is told the address of everyone who connects.
    pub async fn run(self, came: Arc<dyn Fn(IpAddr) + Send + Sync>) {
        connect::accept(self.listeners, self.doors, came).await;
    }
}

impl std::fmt::Debug for Server {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str("Server")
    }
}

async fn listen(at: SocketAddr) -> Result<TcpListener, ServeError> {
    TcpListener::bind(at).await.map_err(|error| match error.kind() {
        std::io::ErrorKind::AddrInUse => ServeError::PortTaken(at.port()),
        _ => ServeError::Refused(at, error.to_string()),
    })
}
