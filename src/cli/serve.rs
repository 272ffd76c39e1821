//! `everysquare serve FOLDER`: the helper's page, for phones in the room's network.

use std::io::{BufRead, IsTerminal};
use std::net::{IpAddr, Ipv4Addr};
use std::path::PathBuf;
use std::process::{Command, Stdio};
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use std::time::{Duration, SystemTime, UNIX_EPOCH};

use tokio::time::timeout;

use super::check::CHECK_NAME;
use super::language::words_for;
use super::mistyped::{Refused, within};
use super::{CliError, Console, Outcome};
use crate::plan::Folder;
use crate::plan::code::{LinkCode, QUIET_ZONE};
use crate::serve::address::{AddressError, Lan, chosen, lans};
use crate::serve::secret::Secrets;
use crate::serve::{Clock, Evening, Server};
use crate::words::{Tell, Words};

/// Where it is served unless another port is asked for: free for anybody's use (IANA lists nobody), and the same each time, so that
/// a phone's page finds the program again after it was started anew.
const PORT: u16 = 8417;
/// A check is gone on from if it is not older than this: an evening with its preparation. Yesterday's rehearsal is not.
const SAME_EVENING: Duration = Duration::from_secs(12 * 3_600);
/// After so long without a phone it is said what may be the matter.
const QUIET: Duration = Duration::from_secs(60);
/// How long the last photo may take when the program is told to end.
const LAST_PHOTO: Duration = Duration::from_secs(10);

/// What is typed after `everysquare serve`.
#[derive(Debug, clap::Args)]
pub struct Args {
    /// The event folder.
    #[arg(value_name = "FOLDER")]
    pub(super) folder: PathBuf,
    /// For phones too.
    #[arg(long)]
    lan: bool,
    /// Which address.
    #[arg(long, value_name = "ADDRESS")]
    address: Option<IpAddr>,
    /// Which port.
    #[arg(long, value_name = "PORT", default_value_t = PORT, value_parser = port)]
    port: u16,
    /// The photos as well.
    #[arg(long)]
    keep_photos: bool,
    /// With an empty wall.
    #[arg(long)]
    fresh: bool,
    /// With another secret.
    #[arg(long)]
    new_link: bool,
    /// No browser.
    #[arg(long)]
    no_browser: bool,
}

/// Serves until it is told to end.
pub fn run(args: &Args, console: &mut Console) -> Result<Outcome, CliError> {
    let folder = Folder::at(&args.folder);
    let evening = open(args, &folder, words_for(&folder, console.words())?)?;
    let lan = room_address(args, console)?;
    let secrets = secrets(args, &folder)?;
    let runtime = tokio::runtime::Builder::new_multi_thread().worker_threads(2).enable_all().build()?;
    runtime
        .block_on(async {
            let server =
                Server::bind(Arc::clone(&evening), lan.as_ref().map(|lan| lan.ip), args.port, secrets)
                    .await?;
            explain(&server, lan.as_ref(), &evening, console);
            if !args.no_browser && console.screen().terminal {
                browse(server.room_link());
            }
            watch(server, lan.is_some(), &evening, console).await;
            Ok(())
        })
        .map_err(|error: crate::serve::ServeError| CliError::from(error))?;
    runtime.shutdown_background();
    Ok(Outcome::Right)
}

fn open(args: &Args, folder: &Folder, words: Words) -> Result<Arc<Evening>, CliError> {
    let clock = Clock { now, name };
    let since = jiff::ZonedDateTime::now().saturating_sub(SAME_EVENING).strftime(CHECK_NAME).to_string();
    let since = if args.fresh { None } else { Some(since.as_str()) };
    Ok(Arc::new(Evening::open(folder.clone(), words, clock, since, args.keep_photos)?))
}

fn now() -> u64 {
    SystemTime::now().duration_since(UNIX_EPOCH).map_or(0, |since| since.as_secs())
}

fn name() -> String {
    jiff::ZonedDateTime::now().strftime(CHECK_NAME).to_string()
}

/// The secrets of last time where they still hold, so that phones need not be shown the new code; else new ones, kept.
fn secrets(args: &Args, folder: &Folder) -> Result<Secrets, CliError> {
    let kept = folder.kept_link().and_then(|bytes| Secrets::kept(&bytes, now()));
    if let Some(kept) = kept.filter(|_| !args.new_link) {
        return Ok(kept);
    }
    let made = Secrets::new(now());
    folder.keep_link(&made.to_json())?;
    Ok(made)
}

/// The address for phones; `None` where the page is for this computer only.
fn room_address(args: &Args, console: &mut Console) -> Result<Option<Lan>, CliError> {
    if !args.lan && args.address.is_none() {
        return Ok(None);
    }
    let lans = lans()?;
    match chosen(args.address, &lans) {
        Err(AddressError::Several(several))
            if std::io::stdin().is_terminal() && console.screen().terminal =>
        {
            ask(&several, console).map(Some)
        }
        chosen => Ok(Some(chosen?)),
    }
}

/// Lets the person at the keyboard choose.
fn ask(several: &[Lan], console: &mut Console) -> Result<Lan, CliError> {
    console.say("serve-cli-several", &[]);
    for (number, lan) in (1..).zip(several) {
        console.line(&format!("  {number}. {} ({})", lan.ip, lan.network));
    }
    console.say("serve-cli-which", &[("count", several.len().into())]);
    let mut typed = String::new();
    std::io::stdin().lock().read_line(&mut typed)?;
    let typed = typed.trim();
    let number: usize = if typed.is_empty() { 1 } else { typed.parse().unwrap_or(0) };
    let choice = number.checked_sub(1).and_then(|at| several.get(at));
    choice.cloned().ok_or_else(|| CliError::from(AddressError::Several(several.to_vec())))
}

fn explain(server: &Server, lan: Option<&Lan>, evening: &Evening, console: &mut Console) {
    if let Some(check) = &evening.standing().name {
        console.say("serve-cli-continues", &[("check", check.as_str().into())]);
    }
    if evening.set_aside() {
        console.say("serve-cli-set-aside", &[]);
    }
    match lan {
        Some(lan) => {
            if let Some(code) = LinkCode::new(server.link()) {
                let colour = console.screen().colour;
                console.line(&drawn(&code, colour));
            }
            console.say("serve-cli-link", &[("link", server.link().into())]);
            console.say("serve-cli-network", &[("network", lan.network.as_str().into())]);
            console.say("serve-cli-secret", &[]);
        }
        None => {
            console.say("serve-cli-here", &[("link", server.link().into())]);
            console.say("serve-cli-lan", &[]);
        }
    }
    console.say("serve-cli-room", &[("link", server.room_link().into())]);
    console.say("serve-cli-end", &[]);
}

/// A code in characters of half a line each: dark on light by its own colours where colours may be used; else light is inked, as most
/// terminals are dark.
fn drawn(code: &LinkCode, colour: bool) -> String {
    let whole = code.side() + 2 * QUIET_ZONE;
    let dark = |x: usize, y: usize| match (x.checked_sub(QUIET_ZONE), y.checked_sub(QUIET_ZONE)) {
        (Some(x), Some(y)) => code.dark(x, y),
        _ => false,
    };
    let line = |y: usize| -> String {
        let half = |x: usize| match (dark(x, y) == colour, y + 1 < whole && dark(x, y + 1) == colour) {
            (false, false) => ' ',
            (true, false) => '▀',
            (false, true) => '▄',
            (true, true) => '█',
        };
        let line: String = (0..whole).map(half).collect();
        if colour { format!("  \u{1b}[30;107m{line}\u{1b}[0m") } else { format!("  {line}") }
    };
    (0..whole).step_by(2).map(line).collect::<Vec<_>>().join("\n")
}

/// Opens the room's page in this computer's browser where that is simple; the link is printed in any case.
fn browse(link: &str) {
    let opener = match std::env::consts::OS {
        "macos" => "open",
        "windows" => "explorer",
        _ if std::env::var_os("DISPLAY").or(std::env::var_os("WAYLAND_DISPLAY")).is_some() => "xdg-open",
        _ => return,
    };
    let nothing = Stdio::null;
    let _ = Command::new(opener).arg(link).stdin(nothing()).stdout(nothing()).stderr(nothing()).spawn();
}

/// Says what happens until somebody ends it.
async fn watch(server: Server, for_phones: bool, evening: &Evening, console: &mut Console) {
    let phone_came = Arc::new(AtomicBool::new(false));
    let came = Arc::clone(&phone_came);
    let note = move |from: IpAddr| {
        if from != IpAddr::V4(Ipv4Addr::LOCALHOST) {
            came.store(true, Ordering::Relaxed);
        }
    };
    let work = server.work();
    let mut standing = evening.watch();
    standing.mark_unchanged();
    let mut serving = tokio::spawn(server.run(Arc::new(note)));
    let quiet = tokio::time::sleep(QUIET);
    tokio::pin!(quiet);
    let mut waits = for_phones;
    loop {
        tokio::select! {
            _ = tokio::signal::ctrl_c() => break,
            _ = &mut serving => break,
            () = &mut quiet, if waits => {
                waits = false;
                if !phone_came.load(Ordering::Relaxed) {
                    console.say("serve-cli-quiet", &[]);
                }
            }
            changed = standing.changed() => {
                if changed.is_err() {
                    break;
                }
                standing.mark_unchanged();
                tell(evening, console);
            }
        }
    }
    serving.abort();
    let _ = timeout(LAST_PHOTO, work.finish()).await;
    console.say("serve-cli-ended", &[]);
}

fn tell(evening: &Evening, console: &mut Console) {
    let standing = evening.standing();
    let summary = standing.check.report.summary;
    let numbers = [
        ("photo", standing.known.count().into()),
        ("right", summary.right.into()),
        ("wrong", (summary.wrong + summary.turned).into()),
        ("cells", summary.cells.into()),
    ];
    console.say("serve-cli-photo", &numbers);
    if let Some(error) = &standing.unkept {
        let told = CliError::new(error.sentence()).line(console.words());
        console.complain(&told);
    }
}

/// A port that anybody may use; 0 lets the system choose.
fn port(text: &str) -> Result<u16, Refused> {
    within("typed-whole-from", text, &(0..=u16::MAX))
}
